"""Weight put on the body or taken off it in a word ahead of its number, behind the reps."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import said


@pytest.mark.parametrize(
    ("text", "sets"),
    [
        ("dips 8 8 8 weighted 15", "dip 3×8 at +15 kg"),
        ("dips 8 8 8, weighted 15", "dip 3×8 at +15 kg"),
        ("dips 8 8 8 with extra 15", "dip 3×8 at +15 kg"),
        ("dips 3x8 weighted 20", "dip 3×8 at +20 kg"),
        ("dips 3x8 added 5", "dip 3×8 at +5 kg"),
        ("dips 3 sets of 8 weighted 15", "dip 3×8 at +15 kg"),
        ("push ups 20 20 20 weighted 10", "push-up 3×20 at +10 kg"),
        ("dips 12 12, weighted 20 8 8", "dip 2×12, 2×8 at +20 kg"),
        ("dips 12, 12, weighted 20x8", "dip 2×12, 8 at +20 kg"),
        ("chin ups 5 assisted 20", "chin-up 5 at −20 kg"),
        ("chin ups 3x8 assisted 20", "chin-up 3×8 at −20 kg"),
        ("dips 8 assisted by 15", "dip 8 at −15 kg"),
        ("pull ups 8 8 7 assisted 15", "pull-up 2×8 at −15 kg, 7 at −15 kg"),
        ("pull ups 8 8 7 assisted 15, rest 2 min", "pull-up 2×8 at −15 kg, 7 at −15 kg"),
        ("klimmzüge 3x5 zusatz 10", "pull-up 3×5 at +10 kg"),
        ("dominadas 5 5 5 lastre 10", "pull-up 3×5 at +10 kg"),
        ("tractions 3x5 lesté 10", "pull-up 3×5 at +10 kg"),
        ("barra fixa 5 5 5 com ajuda 20", "pull-up 3×5 at −20 kg"),
        ("trazioni 5 5 4 zavorra 12", "pull-up 2×5 at +12 kg, 4 at +12 kg"),
        ("подтягивания 3x5 отягощение 10", "pull-up 3×5 at +10 kg"),
        ("optrekken 5 5 5 met hulp 20", "pull-up 3×5 at −20 kg"),
        ("chins 3x5 extravikt 10", "chin-up 3×5 at +10 kg"),
        ("podciąganie 5 5 5 z obciążeniem 10", "pull-up 3×5 at +10 kg"),
    ],
)
def test_it_is_the_weight_of_the_sets(text: str, sets: str) -> None:
    assert said(text) == sets


@pytest.mark.parametrize(
    "text",
    [
        "pull ups 8, 7, assisted 6",
        "pull ups 8 7 assisted 6",
        "pull ups 8 7 then assisted 6 5",
        "pull ups 5 5, assisted 10 8",
        "push ups 20, 20, 20, weighted 10",
        "push ups 20, 20, weighted 10, 10",
    ],
)
def test_where_it_may_be_reps_of_more_sets_it_is_asked(text: str) -> None:
    assert said(text).startswith("ask: ")


@pytest.mark.parametrize(
    ("text", "sets"),
    [
        ("pull ups assisted 20 8 8 7", "pull-up 2×8 at −20 kg, 7 at −20 kg"),
        ("dips weighted 20 8 8 8", "dip 3×8 at +20 kg"),
        ("dips 3x8 added chalk", "dip 3×8"),
        ("pull ups with 10 assist 8 8 7", "pull-up 2×8 at −10 kg, 7 at −10 kg"),
        ("pull ups 8 8 7 with 15 assistance", "pull-up 2×8 at −15 kg, 7 at −15 kg"),
    ],
)
def test_what_is_told_otherwise_stays(text: str, sets: str) -> None:
    assert said(text) == sets


@pytest.mark.parametrize(
    ("text", "sets"),
    [
        ("weighted dips 20x8", "dip 8 at +20 kg"),
        ("dips weighted 20x8", "dip 8 at +20 kg"),
        ("weighted dips 7.5x8", "dip 8 at +7.5 kg"),
        ("weighted dips 20x8 @9", "dip 8 at +20 kg RPE 9"),
        ("weighted dips 20x8, 20x7", "dip 8 at +20 kg, 7 at +20 kg"),
        ("weighted dips 20x8, 8, 7", "dip 2×8 at +20 kg, 7 at +20 kg"),
        ("weighted dips 3x8 20", "dip 3×8 at +20 kg"),
        ("weighted dips 8x3 20", "dip 8×3 at +20 kg"),
        ("weighted dips 8x3 @20", "dip 8×3 at +20 kg"),
        ("assisted pull ups 20x8", "pull-up 8 at −20 kg"),
        ("dominadas lastradas 20x8", "pull-up 8 at +20 kg"),
        ("dominadas lastradas 20 8 8", "pull-up 2×8 at +20 kg"),
        ("tractions lestées 20x8", "pull-up 8 at +20 kg"),
        ("weighted dips 5x8", "dip 5×8"),
        ("dips off the bench 20x8", "bench dip 8×20"),
    ],
)
def test_a_lift_named_for_its_weight_tells_it_ahead_of_the_reps(text: str, sets: str) -> None:
    assert said(text) == sets


@pytest.mark.parametrize("text", ["weighted dips 8x5", "assisted pull ups 8x8"])
def test_as_many_sets_as_may_be_done_are_asked_about(text: str) -> None:
    assert said(text).startswith("ask: ")
