"""Sets told by the plan with what was different: which of them, and their reps, load, effort or failure."""

from __future__ import annotations

import pytest

from engine.reading import read
from engine.reading.values import Context, Logged
from tests.engine.reading.saying import KNOWN, readings, said, situation

ROWING = situation("chest-supported row", plan=[("chest-supported row", 3, 9, "45")])
ROW = "chest-supported row"


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("as planned but only got 7 on set 2", "9 at 45 kg each, 7 at 45 kg each, 9 at 45 kg each"),
        ("as planned but last set 7", "2×9 at 45 kg each, 7 at 45 kg each"),
        ("first two as planned, last one 7", "2×9 at 45 kg each, 7 at 45 kg each"),
        ("as planned, 8 on the last, 7 on the second", "9 at 45 kg each, 7 at 45 kg each, 8 at 45 kg each"),
        ("as planned, set 2 8, set 3 7", "9 at 45 kg each, 8 at 45 kg each, 7 at 45 kg each"),
        ("all as planned but the last 2 at 7", "9 at 45 kg each, 2×7 at 45 kg each"),
        ("as planned but only 7 on the last two", "9 at 45 kg each, 2×7 at 45 kg each"),
        ("as planned, last set 8 @9", "2×9 at 45 kg each, 8 at 45 kg each RPE 9"),
        ("as planned but set 3 to failure", "2×9 at 45 kg each, 9 at 45 kg each to failure"),
        ("as planned, rpe 8", "3×9 at 45 kg each RPE 8"),
        ("as planned but at 47.5", "3×9 at 47.5 kg each"),
        ("as planned except the first with 40", "9 at 40 kg each, 2×9 at 45 kg each"),
        ("as planned but 2 sets", "2×9 at 45 kg each"),
        ("as planned plus one more set", "4×9 at 45 kg each"),
        ("as planned, 9 9 6", "2×9 at 45 kg each, 6 at 45 kg each"),
        ("wie geplant, letzter Satz nur 7", "2×9 at 45 kg each, 7 at 45 kg each"),
    ],
)
def test_what_was_different_is_read(text: str, meant: str) -> None:
    assert said(text, ROWING) == f"{ROW} {meant}"


@pytest.mark.parametrize(
    "text",
    [
        "done as planned, missed the last rep of set 3",
        "as planned, missed a rep",
        "as planned, 8 reps",
        "as planned but set 4 7",
        "first as planned, last 7",
        "as planned, last 2",
        "as planned but a dropset on the last",
        "as planned with one more rep",
    ],
)
def test_what_cannot_be_told_apart_is_asked(text: str) -> None:
    assert said(text, ROWING) == "ask: "


def test_pain_and_remarks_beside_the_plan_are_kept() -> None:
    outcome = read("as planned but 7 on set 2, left knee hurts", ROWING, KNOWN)
    assert isinstance(outcome, Logged)
    assert outcome.pain
    assert [one.reps for one in outcome.sets] == [9, 7, 9]


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    readings("""
{doing: barbell bench press; plan: barbell bench press 3 8 72} as planned, easy => \
request: done barbell bench press as planned
"""),
)
def test_a_remark_alone_changes_nothing(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(
    "text", ["as planned but rpe 8", "as planned but the last one to failure", "as planned except no shrugs"]
)
def test_what_was_different_is_asked_about_where_no_lift_is_in_hand(text: str) -> None:
    assert said(text, situation(plan=[(ROW, 3, 9, "45")])).startswith("ask")
