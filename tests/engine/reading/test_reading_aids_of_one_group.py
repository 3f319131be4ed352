"""Help, bands, sides, plates and times told beside one of several groups of sets: of that group, or asked."""

from __future__ import annotations

import pytest

from engine.reading import read
from engine.reading.values import Asked, Context, Logged
from tests.engine.reading.saying import KNOWN, readings, said, situation

NOTHING, UNTOLD = "0", None

AIDED = [
    ("dips 3x8, band 3x5", (NOTHING, UNTOLD)),
    ("dips 3x8, 3x5 band", (NOTHING, UNTOLD)),
    ("dips 3x8, 3x5 assisted", (NOTHING, UNTOLD)),
    ("dips 3x8, 3x5 with a red band", (NOTHING, UNTOLD)),
    ("pull ups 3x8, 3x5 with 20kg help", (NOTHING, "-20")),
    ("pull ups 8 8 8, band 5 5", (NOTHING, UNTOLD)),
    ("pull ups 5x5 +10, band 3x8", ("10", UNTOLD)),
    ("pull ups band 3x8, 3x5", (UNTOLD,)),
    ("pull ups 3x8 band", (UNTOLD,)),
    ("klimmzüge 3x8, mit gummiband 3x5", (NOTHING, UNTOLD)),
    ("dominadas 3x8, 3x5 con banda", (NOTHING, UNTOLD)),
    ("tractions 3x8, élastique 3x5", (NOTHING, UNTOLD)),
    ("trazioni 3x8, elastico 3x5", (NOTHING, UNTOLD)),
    ("подтягивания 3x8, с резинкой 3x5", (NOTHING, UNTOLD)),
]

OF_ONE_GROUP = """
farmers walk 32s 40m, 24s 60m => farmer's walk 40 m at 32 kg each, 60 m at 24 kg each
farmers walk 32s 40m 14s, 32s 40m 15s => farmer's walk 40 m in 14 s at 32 kg each, 40 m in 15 s at 32 kg each
farmers walk 40m in 24s => farmer's walk 40 m in 24 s
db row 24 10 8 left, 10 9 right => dumbbell row 10 at 24 kg each left, 8 at 24 kg each left, \
10 at 24 kg each right, 9 at 24 kg each right
side plank 30s 30s left, 25s 25s right => side plank 2×30 s left, 2×25 s right
side plank 30s left 30s right => side plank 30 s left, 30 s right
ring dips 8, 7, 5 plus 2 half ones => ring dip 8, 7, 5
squat 60x5 (w) 80x3 (w), 100x5 => barbell back squat 5 at 60 kg warmup, 3 at 80 kg warmup, 5 at 100 kg
squat 4x5 85 plates were cold => barbell back squat 4×5 at 85 kg
squat 3 plates x 5 => barbell back squat 5 at 140 kg
bench 80x8, drop 60x6 => barbell bench press 8 at 80 kg, 6 at 60 kg drop
"""
ASKED = (
    "pull ups 8 7 6 band 5",
    "side plank 30s 30s left",
    "leg press 3x10 20 plates a side",
    "leg press 20 plates x 10",
    "squat 30 plates x 5",
    "deadlift 3x5 40 per hand",
    "squat 60x5 80x3 (w), 100x5",
    "bench 80x8, 80x7, 80x6 drop set",
)


def _loads(text: str, known: Context) -> tuple[str | None, ...]:
    """The load of each group of sets, in turn."""
    outcome = read(text, known, KNOWN)
    assert isinstance(outcome, Logged)
    loads = [None if one.load is None else str(one.load.amount) for one in outcome.sets]
    return tuple(load for at, load in enumerate(loads) if at == 0 or load != loads[at - 1])


@pytest.mark.parametrize(("text", "loads"), AIDED)
def test_help_is_of_the_sets_that_it_is_told_with(text: str, loads: tuple[str | None, ...]) -> None:
    assert _loads(text, situation()) == loads


def test_a_band_takes_over_no_weight_that_was_added_last_time() -> None:
    known = situation(last={"pull-up": "10"})

    assert _loads("pull ups 8 8 8, band 5 5", known) == (NOTHING, UNTOLD)


@pytest.mark.parametrize(("text", "known", "meant"), readings(OF_ONE_GROUP))
def test_what_is_told_beside_one_group_changes_no_other(text: str, known: Context, meant: str) -> None:
    assert said(text, known) == meant


@pytest.mark.parametrize("text", ASKED)
def test_what_may_be_of_several_groups_is_asked_about(text: str) -> None:
    assert isinstance(read(text, situation(), KNOWN), Asked)
