"""Words that count, repeat or compare, beside sets: those that are of the sets, and those that a remark says of other
things.
"""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import said

ONE, TWO = "barbell bench press 8 at 80 kg", "barbell bench press 2×8 at 80 kg"
LISTED = "barbell bench press 2×8 at 80 kg, 7 at 80 kg"
GROUP = "barbell back squat 3×5 at 100 kg"


@pytest.mark.parametrize(
    ("message", "reading"),
    [
        pytest.param("bench 80x8, another good day", ONE, id="another day is no set"),
        pytest.param("bench 80x8 another great session", ONE, id="another session is none, without a comma"),
        pytest.param("bench 80x8, one more session this week", ONE, id="one more session is none"),
        pytest.param("bench 80x8, another pr", ONE, id="another record is the set that was told"),
        pytest.param("bench 80x8, slow again", ONE, id="again says how it was"),
        pytest.param("bankdrücken 80x8, wieder müde", ONE, id="again in another language"),
        pytest.param("press banca 80x8, cansado otra vez", ONE, id="again in two words"),
        pytest.param("développé couché 80x8, deux fois plus fatigué", ONE, id="twice as much, by a word that adds"),
        pytest.param("жим лёжа 80x8, в два раза тяжелее", ONE, id="twice heavier"),
        pytest.param("panca piana 80x8, un'altra bella giornata", ONE, id="another day in another language"),
        pytest.param("bench 80x8, all sets felt the same", ONE, id="the same says how they felt"),
        pytest.param("bench 80x8, twice as tired", ONE, id="twice as much of something else"),
        pytest.param("bench 80x8, every single rep counted", ONE, id="every single one is no single"),
        pytest.param("bench 80x8, all the same", ONE, id="all of them alike"),
        pytest.param("bench 80x8, double bodyweight one day", ONE, id="twice what somebody weighs is no double"),
        pytest.param("bench 80x8, total mess", ONE, id="a total without a number"),
        pytest.param("bench 80x8, two thirds through the block", ONE, id="parts of something"),
        pytest.param("bench 80x8, out of breath", ONE, id="out of without numbers"),
        pytest.param("bench 80x8, first week done", ONE, id="the first of the weeks"),
        pytest.param("bench 80x8, half the gym was empty", ONE, id="half of something else"),
        pytest.param("squat 3x5 100 half asleep", GROUP, id="half of a word behind the number"),
        pytest.param("squat 3x5 100 second session today", GROUP, id="the second of the sessions is no unit"),
        pytest.param("bench 80kg 8 8 7 less tired than last week", LISTED, id="reps before a feel that is compared"),
        pytest.param("bench 80kg 8/8/7 heavier than last week", LISTED, id="reps of a list that are compared"),
        pytest.param("bench 80kg 8 8 7 (more tomorrow)", LISTED, id="in brackets what comes another day"),
    ],
)
def test_a_remark_counts_something_else(message: str, reading: str) -> None:
    assert said(message) == reading


@pytest.mark.parametrize(
    ("message", "reading"),
    [
        pytest.param("bench 80x8, another set", TWO, id="another set"),
        pytest.param("bench 80x8, another easy one", TWO, id="another one that is described"),
        pytest.param("bench 80x8, one more with belt", TWO, id="one more"),
        pytest.param("bench 80x8, did it again", TWO, id="done again"),
        pytest.param("bench 80x8 twice", TWO, id="twice"),
        pytest.param("press banca 80x8, otra vez", TWO, id="again in two words, alone"),
        pytest.param("bench 80x8 felt good, same again", TWO, id="the same again behind a remark"),
        pytest.param("squat 3x5 100 half", "barbell back squat 3×5 at 100.5 kg", id="a half behind a number"),
        pytest.param("plank 60 second hold", "plank 60 s", id="seconds"),
        pytest.param("bench 80 8 8 8, 2.5 heavier than last week", "barbell bench press 3×8 at 80 kg", id="a step"),
    ],
)
def test_the_same_words_of_sets_stay_what_they_are(message: str, reading: str) -> None:
    assert said(message) == reading


@pytest.mark.parametrize(
    "message",
    [
        pytest.param("bench 80x8, another sneaky", id="another, of a word that is not known"),
        pytest.param("bench 80x8 double shift at work", id="a double right behind a set"),
        pytest.param("bench 80x8, only one rep felt off", id="a rep of the set, or one more"),
        pytest.param("bench 80x8, three ibuprofen today", id="what an unknown word counts"),
        pytest.param("bench 80kg 8 8 7 heavier than last week", id="reps, or the load that was put on"),
    ],
)
def test_where_it_may_be_either_it_is_asked(message: str) -> None:
    assert said(message).startswith("ask:")
