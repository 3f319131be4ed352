"""Tables pasted with their header: each row is a lift, or a set of one; a row that does not fit is never guessed at."""

from __future__ import annotations

import pytest

from engine.reading import read
from engine.reading.values import NoSets
from tests.engine.reading.saying import KNOWN, said, situation

PLAIN = situation()
TWO_LIFTS = "barbell front squat 4×6 at 70 kg; romanian deadlift 3×9 at 80 kg"


@pytest.mark.parametrize(
    "text",
    [
        "Exercise | Sets | Reps | Weight\nFront squat | 4 | 6 | 70 kg\nRDL | 3 | 9 | 80 kg",
        "| lift | sets | reps | load (kg) |\n|---|---|---|---|\n| front squat | 4 | 6 | 70 |\n| rdl | 3 | 9 | 80 |",
        "lift\treps\tsets\tkg\nfront squat\t6\t4\t70\nrdl\t9\t3\t80",
        "Übung;Sätze;Wdh;kg\nFrontkniebeuge;4;6;70\nRDL;3;9;80",
        "ejercicio, series, repeticiones, peso\nsentadilla frontal, 4, 6, 70\nrdl, 3, 9, 80",
        "today\nexercise;sets;reps;weight\nfront squat;4;6;70\nrdl;3;9;80\n\nfelt good",
    ],
)
def test_a_row_for_each_lift(text: str) -> None:
    assert said(text, PLAIN) == TWO_LIFTS


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        (
            "lift\tset\tkg\treps\nbench\t1\t65\t9\nbench\t2\t65\t8\nbench\t3\t65\t8",
            "barbell bench press 9 at 65 kg, 2×8 at 65 kg",
        ),
        ("lift | # | reps | kg\nbench | 1 | 9 | 65\n | 2 | 8 | 67,5", "barbell bench press 9 at 65 kg, 8 at 67.5 kg"),
        ("lift;reps;load (lb)\nbench;5;185\nbench;4;190", "barbell bench press 5 at 185 lb, 4 at 190 lb"),
        ("exercise | sets | reps\npull ups | 3 | 8/8/7", "pull-up 2×8, 7"),
        ("lift | sets | reps | kg | rpe\nsquat | 3 | 5 | 100 | 8", "barbell back squat 3×5 at 100 kg RPE 8"),
        ("lift | sets | reps | kg | rir\nsquat | 3 | 5 | 100 | -", "barbell back squat 3×5 at 100 kg"),
    ],
)
def test_a_row_for_each_set_and_columns_of_all_kinds(text: str, meant: str) -> None:
    assert said(text, PLAIN) == meant


@pytest.mark.parametrize(
    "text",
    [
        "lift | sets | reps | kg\nsquat | 3 | 5",
        "lift | sets | reps | kg\nsquat | three-ish | 5 | 100",
        "lift | sets | reps | kg\nsquat | 3 | 5 | 100\ntotal | 3 | | 1500",
        "lift | sets | reps | kg\n| 3 | 5 | 100",
    ],
)
def test_a_row_that_does_not_fit_saves_nothing_and_is_quoted(text: str) -> None:
    outcome = read(text, PLAIN, KNOWN)

    assert isinstance(outcome, NoSets)
    assert "no row is saved" in outcome.why
    assert outcome.unread


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("exercise,weight,reps\nhammer curl,5,10\nhammer curl,5,8", "hammer curl 10 at 5 kg each, 8 at 5 kg each"),
        (
            "lift | sets | reps | kg\nsquat | 3 | 5 | 80\n\nbench | 3 | 5 | 60",
            "barbell back squat 3×5 at 80 kg; barbell bench press 3×5 at 60 kg",
        ),
        (
            "lift;sets;reps;kg\nsquat;3;5;80\nlift;reps;sets;kg\nbench;6;4;60",
            "barbell back squat 3×5 at 80 kg; barbell bench press 4×6 at 60 kg",
        ),
        (
            "#,lift,weight,reps\n1,squat,80,5\n2,bench,60,8",
            "barbell back squat 5 at 80 kg; barbell bench press 8 at 60 kg",
        ),
    ],
)
def test_the_header_decides_in_each_table_of_a_message(text: str, meant: str) -> None:
    assert said(text, PLAIN) == meant


@pytest.mark.parametrize(
    "text",
    [
        "lift,reps,weight\nleg press,20,10",
        "lift | sets | reps | weight\nsquat | 30 | 5 | 80",
        "lift,sets,reps\npush up,3,20\npull up,20,3",
    ],
)
def test_unusual_numbers_of_a_table_are_asked(text: str) -> None:
    assert said(text, PLAIN).startswith("ask")


@pytest.mark.parametrize(
    ("text", "column"),
    [
        ("lift,sets,reps,weight,date\nsquat,3,5,80,25/11", "date"),
        ("lift;sets;reps;load;comment\nsquat;3;5;80;", "comment"),
        ("exercise,target reps,reps,weight\nsquat,5,4,80", "target reps"),
    ],
)
def test_a_column_that_is_not_known_is_named(text: str, column: str) -> None:
    outcome = read(text, PLAIN, KNOWN)

    assert isinstance(outcome, NoSets)
    assert [one.text for one in outcome.unread] == [column]


@pytest.mark.parametrize("text", ["squat, 3x5, 100\nbench, 3x8, 60", "squat 3x5 100 | bench 3x5 80\nrow 3x8 60"])
def test_lines_without_a_header_are_no_table(text: str) -> None:
    assert said(text, situation(plan=(("barbell row", 3, 8, "60"),))).startswith("barbell back squat 3×5 at 100 kg")
