"""A row of seats, or of a car park, is no lift."""

from __future__ import annotations

import pytest

from engine.catalogue.catalogue import catalogue
from engine.reading import read
from engine.reading.values import Asked, Context, NoSets
from tests.engine.reading.saying import NOW, standing_after

SAID = ["parked in row 3, spot 45", "i'm in row 3 seat 12", "sitting in row 5", "my car is in row 12 level 2",
        "ich sitze in reihe 5", "estoy en la fila 3 asiento 12", "je suis au rang 5", "alla fila 4", "ik zit in rij 4",
        "w rzędzie 5", "na fila 3", "в ряду 5", "bänkrad 5"]  # fmt: skip


@pytest.mark.parametrize("text", SAID)
def test_a_place_tells_no_sets(text: str) -> None:
    outcome = read(text, Context(now=NOW), catalogue())

    assert isinstance(outcome, NoSets)
    assert outcome.unread == ()


@pytest.mark.parametrize("text", SAID)
def test_a_place_beside_sets_leaves_them_as_they_are(text: str) -> None:
    assert standing_after(f"bench 3x8 60 | {text}") == "barbell bench press 3×8 at 60 kg"


@pytest.mark.parametrize("text", ["in row 3x12 55", "pr in row 60x8", "in row 8 at 60", "row 5"])
def test_the_lift_is_still_the_lift(text: str) -> None:
    assert isinstance(read(text, Context(now=NOW), catalogue()), Asked)
