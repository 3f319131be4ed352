"""Remarks of nine languages change no set: the sets are recorded as they stand, or it is asked."""

from __future__ import annotations

from pathlib import Path

import pytest

from engine.reading import read
from engine.reading.values import Asked, Logged
from tests.engine.reading.saying import KNOWN, said, situation


def banks() -> list[tuple[str, str]]:
    """Each remark with the bench press of its language."""
    found, lift = [], ""
    for line in (Path(__file__).parent / "remarks_in_languages.txt").read_text(encoding="utf-8").splitlines():
        if line.startswith("["):
            lift = line.strip("[]")
        elif line and not line.startswith("#"):
            found.append((lift, line))
    return found


EQUAL, LISTED = [8, 8, 8], [8, 8, 7]


def is_unchanged(text: str, reps: list[int]) -> bool:
    """Whether these reps at 80 kg are recorded, or it is asked."""
    outcome = read(text, situation(), KNOWN)
    if isinstance(outcome, Asked):
        return True
    found = (
        [(one.reps, one.load.amount if one.load else None) for one in outcome.sets]
        if isinstance(outcome, Logged)
        else []
    )
    return found == [(one, 80) for one in reps]


@pytest.mark.parametrize(("lift", "remark"), banks())
def test_a_remark_of_another_language_changes_no_set(lift: str, remark: str) -> None:
    for told in (f"{lift} 3x8 80, {remark}", f"{lift} 3x8 80 {remark}", f"{remark}, {lift} 3x8 80"):
        assert is_unchanged(told, EQUAL), told


@pytest.mark.parametrize(("lift", "remark"), banks())
def test_a_remark_behind_a_list_adds_no_set(lift: str, remark: str) -> None:
    assert is_unchanged(f"{lift} 80 8 8 7, {remark}", LISTED)


@pytest.mark.parametrize(
    "text",
    [
        "bench 80 8 8 7 bench 3 was taken", "bankdrücken 80 8 8 7 bank 3 war besetzt",
        "panca 80 8 8 7 panca 3 occupata",
        "bankdrukken 80 8 8 7 bank 3 was bezet", "bänkpress 80 8 8 7 bänk 3 upptagen",
        "wyciskanie leżąc 80 8 8 7 ławka 3 zajęta", "bankdrücken 80 8 8 7 hätte mehr gekonnt",
        "bin kaputt, bankdrücken 80 8 8 7", "press banca 80 8 8 7 a las 18", "développé couché 80 8 8 7 siège sur 4",
        "supino 80 8 8 7 banco no 4",
    ],
)  # fmt: skip
def test_a_numbered_bench_and_an_hour_are_no_reps(text: str) -> None:
    assert said(text) == "barbell bench press 2×8 at 80 kg, 7 at 80 kg"


@pytest.mark.parametrize("text", ["bench 80 8 8 7, cheated 2 times", "bankdrücken 80 8 8 7, 2 mal geschummelt"])
def test_what_else_was_done_so_often_is_asked_about(text: str) -> None:
    assert said(text).startswith("ask")
