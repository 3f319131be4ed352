"""What an open question keeps comes back equal, and what a receipt says can be read back."""

from __future__ import annotations

from decimal import Decimal

import pytest

from bot.replies.sets import sets_text, targets_text
from bot.set_json import asked_from_json, asked_to_json, from_json, to_json
from engine.catalogue.catalogue import catalogue
from engine.reading import read
from engine.reading.values import Asked, Context, Doubt, Logged, Reading
from engine.values.effort import Effort
from engine.values.ids import ExerciseName
from engine.values.load import Basis, Load, Unit
from engine.values.plan import MaxReps, RepRange, Reps
from engine.values.prescription import SetTarget
from engine.values.sets import SetDone, SetKind, Side


def kg(amount, basis=Basis.TOTAL):
    return Load(Decimal(str(amount)), Unit.KG, basis)


SQUAT, CURL, PULL_UP, PLANK = map(ExerciseName, ("barbell back squat", "dumbbell curl", "pull-up", "plank"))
ODD = SetDone(CURL, 9, kg("12.5", Basis.PER_HAND), Effort(Decimal("1.5"), as_rpe=True), failure=True, side=Side.LEFT)
BODY = kg(0, Basis.BODY)


def test_an_odd_set_comes_back_equal():
    assert from_json(to_json(ODD)) == ODD


def test_a_question_comes_back_equal():
    asked = Asked("which?", (Reading((ODD,), 0.5, "left"),), Doubt.NUMBERS, "12x9", note="heavy", pain=True)

    assert asked_from_json(asked_to_json(asked)) == asked


@pytest.mark.parametrize(
    ("sets", "words"),
    [
        pytest.param([SetDone(SQUAT, 5, kg(100))] * 3, "3×5 at 100 kg", id="alike"),
        pytest.param([SetDone(SQUAT, n, kg("42.5")) for n in (6, 6, 5)], "6, 6, 5 at 42.5 kg", id="one load"),
        pytest.param(
            [SetDone(SQUAT, 5, kg(100)), SetDone(SQUAT, 3, kg(110))], "5 at 100 kg, then 3 at 110 kg", id="two loads"
        ),
        pytest.param([SetDone(PULL_UP, n, BODY) for n in (8, 7)], "8, 7", id="body weight"),
        pytest.param([SetDone(PULL_UP, 6, kg(10, Basis.BODY))], "6 with +10 kg", id="added"),
        pytest.param([SetDone(PLANK, 1, BODY, seconds=Decimal(45))] * 2, "2×45 s", id="timed"),
        pytest.param(
            [SetDone(SQUAT, 10, kg(20), kind=SetKind.WARMUP), SetDone(SQUAT, 5, kg(80))],
            "10 at 20 kg, warm-up, then 5 at 80 kg",
            id="a warm-up says so",
        ),
    ],
)
def test_sets_in_words(sets, words):
    assert sets_text(sets) == words


@pytest.mark.parametrize(
    "sets",
    [
        pytest.param((SetDone(SQUAT, 5, kg(100)),) * 3, id="sets by reps"),
        pytest.param(tuple(SetDone(SQUAT, n, kg("42.5")) for n in (6, 6, 5)), id="a list at one load"),
        pytest.param(tuple(SetDone(PULL_UP, n, BODY) for n in (8, 7, 6)), id="body weight"),
        pytest.param((SetDone(PULL_UP, 6, kg(10, Basis.BODY)),) * 2, id="added"),
        pytest.param((SetDone(PLANK, 1, BODY, seconds=Decimal(45)),) * 3, id="timed"),
    ],
)
def test_what_a_receipt_says_can_be_read_back(sets):
    outcome = read(f"{sets[0].exercise} {sets_text(sets)}", Context(), catalogue())

    assert isinstance(outcome, Logged)
    assert outcome.sets == sets


def test_a_prescription_in_words():
    assert targets_text([SetTarget(RepRange(8, 12), kg(55))] * 3) == "3×8-12 at 55 kg"
    assert targets_text([SetTarget(Reps(15), None), SetTarget(Reps(12), None)]) == "15/12"
    assert targets_text([SetTarget(MaxReps(), None)] * 2) == "2×max"
