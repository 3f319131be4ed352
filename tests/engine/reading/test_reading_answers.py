"""Answers in words to open questions."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import log_after


@pytest.mark.parametrize(
    ("messages", "standing"),
    [
        pytest.param(("row 3x12 60", "2nd"), "dumbbell row 3×12 at 60 kg each", id="row 3x12 60 | 2nd"),
        pytest.param(
            ("row 3x12 60", "dumbbell please"), "dumbbell row 3×12 at 60 kg each", id="row 3x12 60 | dumbbell please"
        ),
        pytest.param(
            ("row 3x12 60", "teh barbell oen"), "barbell row 3×12 at 60 kg", id="row 3x12 60 | teh barbell oen"
        ),
        pytest.param(("row 3x12 60", "machine row"), "machine row 3×12 at 60 kg", id="row 3x12 60 | machine row"),
        pytest.param(("row 3x12 60", "t bar"), "t-bar row 3×12 at 60 kg", id="row 3x12 60 | t bar"),
        pytest.param(
            ("row 3x12 60", "forget it", "squat 3x5 95"),
            "barbell back squat 3×5 at 95 kg",
            id="row 3x12 60 | forget it | squat 3x5 95",
        ),
        pytest.param(
            ("row 3x12 60", "squat 3x5 95"), "barbell back squat 3×5 at 95 kg", id="row 3x12 60 | squat 3x5 95"
        ),
        pytest.param(("row 3x12 60", "why?", "cable"), "", id="row 3x12 60 | why? | cable"),
        pytest.param(
            ("row 3x12 60", "bb row 3x10 62.5"), "barbell row 3×10 at 62.5 kg", id="row 3x12 60 | bb row 3x10 62.5"
        ),
        pytest.param(
            ("lateral raise 14x12", "12 reps"),
            "dumbbell lateral raise 12 at 14 kg each",
            id="lateral raise 14x12 | 12 reps",
        ),
        pytest.param(
            ("lateral raise 14x12", "12kg"), "dumbbell lateral raise 14 at 12 kg each", id="lateral raise 14x12 | 12kg"
        ),
        pytest.param(("bench 3x6-9 60", "8"), "barbell bench press 3×8 at 60 kg", id="bench 3x6-9 60 | 8"),
        pytest.param(
            ("bench 3x6-9 60", "9 8 7"),
            "barbell bench press 9 at 60 kg, 8 at 60 kg, 7 at 60 kg",
            id="bench 3x6-9 60 | 9 8 7",
        ),
        pytest.param(("bench 3x6-9 60", "all 9"), "barbell bench press 3×9 at 60 kg", id="bench 3x6-9 60 | all 9"),
        pytest.param(("lateral raise 15@9", "rpe"), "dumbbell lateral raise 15 RPE 9", id="lateral raise 15@9 | rpe"),
        pytest.param(
            ("lateral raise 15@9", "kilos"), "dumbbell lateral raise 15 at 9 kg each", id="lateral raise 15@9 | kilos"
        ),
        pytest.param(
            ("lateral raise 15@9", "weight"), "dumbbell lateral raise 15 at 9 kg each", id="lateral raise 15@9 | weight"
        ),
        pytest.param(
            ("bench 72.5x6", "bench 3x5 800", "yes"),
            "barbell bench press 6 at 72.5 kg, 3×5 at 800 kg",
            id="bench 72.5x6 | bench 3x5 800 | yes",
        ),
        pytest.param(
            ("bench 72.5x6", "bench 3x5 800", "80"),
            "barbell bench press 6 at 72.5 kg, 3×5 at 80 kg",
            id="bench 72.5x6 | bench 3x5 800 | 80",
        ),
        pytest.param(
            ("bench 72.5x6", "bench 3x5 800", "no"),
            "barbell bench press 6 at 72.5 kg",
            id="bench 72.5x6 | bench 3x5 800 | no",
        ),
        pytest.param(("glorp 3x10 45", "leg press"), "leg press 3×10 at 45 kg", id="glorp 3x10 45 | leg press"),
        pytest.param(
            ("curl 3x12 16", "hm let me think", "dumbells"),
            "dumbbell curl 3×12 at 16 kg each",
            id="curl 3x12 16 | hm let me think | dumbells",
        ),
        pytest.param(
            ("squat 105x3x5", "5 sets of 3"), "barbell back squat 5×3 at 105 kg", id="squat 105x3x5 | 5 sets of 3"
        ),
        pytest.param(("squat 105x3x5", "triples"), "barbell back squat 5×3 at 105 kg", id="squat 105x3x5 | triples"),
        pytest.param(
            ("squat 105x3x5", "three fives"), "barbell back squat 3×5 at 105 kg", id="squat 105x3x5 | three fives"
        ),
        pytest.param(("4x5 95", "squat"), "barbell back squat 4×5 at 95 kg", id="4x5 95 | squat"),
    ],
)
def test_answers(messages: tuple[str, ...], standing: str) -> None:
    assert log_after(*messages) == standing


@pytest.mark.parametrize(
    "words",
    [
        "today leg press",
        "plan leg press",
        "tomorrow leg press",
        "leg press is stuck",
        "i hate leg press",
        "what about leg press",
        "my plan says leg press",
        "leg press day today",
    ],
)
@pytest.mark.parametrize("open_", ["3x12 60", "row 3x12 60"], ids=["no lift named", "one of many"])
def test_talk_that_names_another_lift_answers_nothing(open_, words):
    assert log_after(open_, words) == ""


@pytest.mark.parametrize(
    "words",
    [
        "leg press",
        "it was leg press",
        "no, leg press",
        "sorry i meant the leg press",
        "leg press actually",
        "on the leg press",
    ],
)
@pytest.mark.parametrize("open_", ["3x12 60", "row 3x12 60"], ids=["no lift named", "one of many"])
def test_another_lift_named_as_answers_are_is_the_answer(open_, words):
    assert log_after(open_, words) == "leg press 3×12 at 60 kg"


@pytest.mark.parametrize("text", ["12", "10", "15", "make it 15", "make that 14"])
def test_a_number_that_settles_nothing_is_no_set_of_its_own(text):
    assert log_after("leg press 12x10", text) == ""
    assert log_after("leg press 12x10", text, "12 kg") == "leg press 10 at 12 kg"
