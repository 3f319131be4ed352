"""Sets told in sentences: names in the middle, steps from set to set, what was planned and what came of it."""

from __future__ import annotations

import pytest

from engine.reading import read
from engine.reading.values import Asked
from tests.engine.reading.saying import KNOWN, said, situation

SQUATS = "barbell back squat 5 at 100 kg"


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        pytest.param("squat 100x5, then hit 105 for 3", f"{SQUATS}, 3 at 105 kg", id="then"),
        pytest.param("squat 100 for 5, hit 105 for 3", f"{SQUATS}, 3 at 105 kg", id="a load of its own"),
        pytest.param("squat 100x5 and got 4 at 105", f"{SQUATS}, 4 at 105 kg", id="and"),
        pytest.param("got 5 at 100 on squats, then got 4", f"{SQUATS}, 4 at 100 kg", id="got twice"),
        pytest.param("got 5 reps at 100 on squats, then added five kilos and got 4", f"{SQUATS}, 4 at 105 kg",
                     id="weight added"),
        pytest.param("squat 100 for 5, up 5 kg for 4", f"{SQUATS}, 4 at 105 kg", id="up"),
        pytest.param("squat 100 for 5, went up 5 kg and got 4", f"{SQUATS}, 4 at 105 kg", id="went up"),
        pytest.param("squat 100 for 5, went up to 105 and got 4", f"{SQUATS}, 4 at 105 kg", id="went up to"),
        pytest.param("squat 100x5, got 4", "barbell back squat 4 at 100 kg", id="a result stays one"),
        pytest.param("squat 100x5+ got 8", "barbell back squat 8 at 100 kg", id="of an open set"),
        pytest.param("was supposed to do 5 at 120 on squat, got 4", "barbell back squat 4 at 120 kg",
                     id="supposed to"),
        pytest.param("wanted to do 5 at 120 on squat, only got 4", "barbell back squat 4 at 120 kg", id="only got"),
    ],
)  # fmt: skip
def test_another_set_or_the_result_of_one(text: str, meant: str) -> None:
    assert said(text) == meant


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        pytest.param("pull ups for 8, 7 and 6", "pull-up 8, 7, 6", id="for ahead of a list"),
        pytest.param("bench 5 at 80, then 4 and 3", "barbell bench press 5 at 80 kg, 4 at 80 kg, 3 at 80 kg",
                     id="the load is carried on"),
        pytest.param("first set 10 reps on cable row with 50, second set 10, third set 8",
                     "seated cable row 2×10 at 50 kg, 8 at 50 kg", id="through numbered sets"),
        pytest.param("squat 130 for 2, then 3 sets of 4 at 115", "barbell back squat 2 at 130 kg, 3×4 at 115 kg",
                     id="a group with a load of its own"),
        pytest.param("meadows row 10 reps 35kg, 3 times", "meadows row 3×10 at 35 kg", id="times of reps and load"),
        pytest.param("two plates a side on the squat for five, three sets", "barbell back squat 3×5 at 100 kg",
                     id="plates, words, reps"),
        pytest.param("bench 85x3x5 = 5 triples", "barbell bench press 5×3 at 85 kg", id="told again behind ="),
        pytest.param("held a plank for a minute and a half, then another one for a minute", "plank 90 s, 60 s",
                     id="another one counts nothing"),
        pytest.param("warmed up with the empty bar for 10 and 50 for 5, then benched 70 for 8",
                     "barbell bench press 10 at 20 kg warmup, 5 at 50 kg warmup, 8 at 70 kg", id="the warm-up first"),
        pytest.param("chins ladder 2-3-5 x2", "chin-up 2, 3, 5, 2, 3, 5", id="a ladder"),
        pytest.param("i smashed squats 3x5 100", "barbell back squat 3×5 at 100 kg", id="a verb behind I"),
        pytest.param("squat 3 stes of 5 rpes wit 70 kiols", "barbell back squat 3×5 at 70 kg", id="little words"),
        pytest.param("squat 3x5 100, topped off with dips 3x9", "barbell back squat 3×5 at 100 kg; dip 3×9",
                     id="topped off with"),
    ],
)  # fmt: skip
def test_told_in_a_sentence(text: str, meant: str) -> None:
    assert said(text) == meant


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        pytest.param("both 3x15: rope pushdowns 20, hammers 10s",
                     "rope pushdown 3×15 at 20 kg; hammer curl 3×15 at 10 kg each", id="both"),
        pytest.param("3x12: leg press 120, leg extension 50", "leg press 3×12 at 120 kg; leg extension 3×12 at 50 kg",
                     id="a colon"),
        pytest.param("3 sets of 12 each of leg press 120, leg extension 50",
                     "leg press 3×12 at 120 kg; leg extension 3×12 at 50 kg", id="each of"),
        pytest.param("leg press 120, leg extension 50, both 3x12",
                     "leg press 3×12 at 120 kg; leg extension 3×12 at 50 kg", id="both behind"),
        pytest.param("leg press 120 and leg extension 50, 3 sets of 12 each",
                     "leg press 3×12 at 120 kg; leg extension 3×12 at 50 kg", id="each behind"),
        pytest.param("all 3x12\nleg press 120\nleg extension 50",
                     "leg press 3×12 at 120 kg; leg extension 3×12 at 50 kg", id="on lines"),
    ],
)  # fmt: skip
def test_sets_and_reps_told_once_for_several_lifts(text: str, meant: str) -> None:
    assert said(text) == meant


@pytest.mark.parametrize("text", ["squat and bench 3x5 100", "squats & bench, 3x5 at 100", "curls and dips 3x12"])
def test_numbers_behind_the_second_of_two_names_are_asked(text: str) -> None:
    assert said(text).startswith("ask: ")


@pytest.mark.parametrize("text", ["bench 20 8 times", "rowed 60 for 3x10"])
def test_what_may_be_meant_otherwise_is_asked(text: str) -> None:
    assert said(text).startswith("ask: ")


@pytest.mark.parametrize(
    "text",
    [
        "i hope i can deadlift 2x bodyweight one day",
        "hoping to squat 3x5 140 someday",
        "ich hoffe ich schaffe kreuzheben 200x1",
        "espero hacer sentadilla 140x5",
        "надеюсь присесть присед 140x5",
    ],
)
def test_hopes_are_no_sets(text: str) -> None:
    assert said(text) == "no sets"


def test_the_question_names_the_word_that_is_not_known() -> None:
    asked = read("zigzag squat 3x5 100", situation(), KNOWN)

    assert isinstance(asked, Asked)
    assert "“zigzag”" in asked.question


@pytest.mark.parametrize(
    "text",
    [
        "squat 100x5 (last week 95x5)",
        "squat 100x5, last week 95x5",
        "squat 100x5 vs 95x5 last week",
        "squat 100x5 up from 95x5",
        "squat 100x5 (up from 95x5 last time)",
        "squat 100x5 (was 95x5)",
        "squat 100x5 (95x5 last time)",
        "squat 100x5 (prev 95x5, 95x4)",
        "Kniebeugen 100x5 (letzte Woche 95x5)",
        "sentadilla 100x5 (la semana pasada 95x5)",
        "squat 100x5 (la semaine dernière 95x5)",
        "squat 100x5, la settimana scorsa 95x5",
        "squat 100x5 (vorige week 95x5)",
        "przysiad 100x5 (w zeszłym tygodniu 95x5)",
        "agachamento 100x5 (semana passada 95x5)",
        "присед 100x5 (на прошлой неделе 95x5)",
        "knäböj 100x5 (förra veckan 95x5)",
    ],
)
def test_what_an_earlier_session_came_to_is_no_set(text: str) -> None:
    assert said(text) == SQUATS


@pytest.mark.parametrize("text", ["squat 95x5 last week", "last week squat 95x5", "squat 95x5 last time"])
def test_sets_of_an_earlier_week_are_not_of_today(text: str) -> None:
    assert said(text) == "no sets"


@pytest.mark.parametrize("text", ["squat 100x5, last week 95x5, 90x5"])
def test_where_the_remark_ends_is_asked(text: str) -> None:
    assert said(text).startswith("ask: ")


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        pytest.param("managed 8, 8 and 6 on bench with 70", "barbell bench press 2×8 at 70 kg, 6 at 70 kg",
                     id="a list up to the name"),
        pytest.param("put 100 on the bar and squatted it for 5", SQUATS, id="a load and then the lift"),
        pytest.param("with 100 on the bar i squatted 5", SQUATS, id="on the bar"),
        pytest.param("100 on the squat for 5", SQUATS, id="words between load and reps"),
        pytest.param("did 5 reps of 100 on squat three times", "barbell back squat 3×5 at 100 kg", id="three times"),
        pytest.param("squat 100 5 times, then 90 8 times", f"{SQUATS}, 8 at 90 kg", id="times are reps"),
        pytest.param("my mate benched 100 for 5 and i did 80 for 5", "barbell bench press 5 at 80 kg", id="and i"),
        pytest.param("didn't do the squats but leg press 3x10 at 160", "leg press 3×10 at 160 kg", id="but a lift"),
        pytest.param("beim Bankdrücken hab ich 3x8 mit 70 gemacht", "barbell bench press 3×8 at 70 kg", id="beim"),
        pytest.param("maybe squat 3x5 100 later", "no sets", id="maybe"),
    ],
)  # fmt: skip
def test_where_the_numbers_stand(text: str, meant: str) -> None:
    assert said(text) == meant


@pytest.mark.parametrize("text", ["squat 100 for 5 or 6", "Kniebeuge 100x5 oder 6", "press banca 60 3x8 o 9"])
def test_one_number_or_another_is_asked(text: str) -> None:
    assert said(text).startswith("ask: ")


def test_things_counted_behind_the_sets_leave_them_be() -> None:
    assert said("squat 3x5 100, 2 spotters") == "barbell back squat 3×5 at 100 kg"


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        pytest.param("squat 3 heavy sets of 5 at 120", "barbell back squat 3×5 at 120 kg", id="a word between"),
        pytest.param("did 3 working sets of 5 at 120 on squat", "barbell back squat 3×5 at 120 kg", id="working sets"),
        pytest.param("4 good sets of 8 on bench with 70", "barbell bench press 4×8 at 70 kg", id="good sets"),
        pytest.param("after warming up i benched 80 3x5", "barbell bench press 3×5 at 80 kg", id="after the warm-up"),
        pytest.param("nach dem aufwärmen bankdrücken 80 3x5", "barbell bench press 3×5 at 80 kg", id="nach"),
        pytest.param("warmup 10 min treadmill, bench 80 3x5", "barbell bench press 3×5 at 80 kg",
                     id="the warm-up was something else"),
        pytest.param("dips and pull ups 3x8 each", "dip 3×8; pull-up 3×8", id="each of two names"),
        pytest.param("superset dips with pull ups 3x8 each", "dip 3×8; pull-up 3×8", id="each of a superset"),
    ],
)  # fmt: skip
def test_words_between_and_around(text: str, meant: str) -> None:
    assert said(text) == meant


@pytest.mark.parametrize(
    "text",
    [
        "bench 80 for 3 sets, 5 reps on the first two and 4 on the last",
        "couple of sets of 10 on dips",
        "superset dips with pull ups 3x8",
    ],
)
def test_sets_that_nobody_counted_out_are_asked(text: str) -> None:
    assert said(text).startswith("ask: ")


@pytest.mark.parametrize(
    "text",
    ["squat 100x5x3 but last set was 4", "squat 100x5x3, last set was 4", "squat 3x5 100, last set 4"],
)
def test_the_last_set_of_a_group_that_differs(text: str) -> None:
    assert said(text) == "barbell back squat 2×5 at 100 kg, 4 at 100 kg"


@pytest.mark.parametrize(
    "text",
    ["bench twice 80x5", "bench 5x80 two times, 6x75 once", "squats: 100 for 5, then 4, last set only 3"],
)
def test_how_often_and_which_is_asked_where_nobody_can_say(text: str) -> None:
    assert said(text).startswith("ask: ")
