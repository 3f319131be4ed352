"""Pasted workouts: headings, days above the sets, clocks, and rounds."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import said

SQUATS = "barbell back squat 3×5 at 100 kg"


@pytest.mark.parametrize(
    "heading",
    [
        "superset 1:",
        "Superset 1",
        "Session 23",
        "Session #23:",
        "workout 4",
        "Week 3, Day 1:",
        "Block 2 week 4",
        "Exercise 1:",
        "Day 2 (legs)",
        "Einheit 7",
        "Séance 7 :",
        "Entrenamiento 12",
        "Trening 5",
        "Тренировка 12",
        "18:10 start",
        "end: 19:05",
        "début 18:10",
    ],
)
def test_the_number_of_a_heading_is_no_set(heading: str) -> None:
    assert said(f"{heading}\nsquat 100 5 5 5") == SQUATS
    assert said(f"bench 80 8 8\n{heading}\nsquat 100 5 5 5") == f"barbell bench press 2×8 at 80 kg; {SQUATS}"


@pytest.mark.parametrize("text", ["19:05 end", "end 19:05", "19:05 fertig", "fin 19:05"])
def test_a_clock_below_the_sets_that_says_when_they_ended(text: str) -> None:
    assert said(f"squat 100 5 5 5\nbench 80 8 8\n{text}") == f"{SQUATS}; barbell bench press 2×8 at 80 kg"


def test_a_clock_on_its_own_below_a_hold_is_a_hold() -> None:
    assert said("plank\n4:30\n4:10") == "plank 270 s, 250 s"


@pytest.mark.parametrize(
    "heading",
    [
        "Sat 8 March",
        "Sat, 8 March",
        "Saturday, March 8",
        "Sat 8th of March 2025:",
        "Legs, Sat 8 Mar",
        "Legs (8 Mar)",
        "8 Mar - legs",
        "Session 23 - 08/03",
        "Sa 8. März",
        "sáb 8 marzo",
        "sam 8 mars",
        "sab 8 marzo",
        "sáb 8 março",
        "sob 8 marca",
        "сб 8 марта",
        "lör 8 mars",
        "za 8 maart",
    ],
)
def test_a_day_above_the_sets(heading: str) -> None:
    assert said(f"{heading}\nsquat 100 5 5 5") == f"{SQUATS} on 2025-03-08"


@pytest.mark.parametrize("listed", ["42.5-6-6-5", "42,5-6-6-5", "42.5kg-6-6-5"])
def test_a_load_with_its_reps_behind_dashes_is_no_date(listed: str) -> None:
    assert said(f"ohp {listed}") == "barbell overhead press 2×6 at 42.5 kg, 5 at 42.5 kg"


SWINGS = "kettlebell swing 3×15 at 24 kg; push-up 3×10"
BENCH = "barbell bench press 2×8 at 60 kg"


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        pytest.param("3 rounds of\nswings 24kg x 15\npush ups x 10\nthen bench 60 8 8", f"{SWINGS}; {BENCH}",
                     id="then begins a line"),
        pytest.param("3 rounds: swings 24kg x 15, push ups x 10. Then bench 60 8 8", f"{SWINGS}; {BENCH}",
                     id="then begins a sentence"),
        pytest.param("3 rounds:\nswings 24kg x 15\npush ups x 10\n\nbench 60 8 8", f"{SWINGS}; {BENCH}",
                     id="an empty line"),
        pytest.param("bench 60 8 8\n3 rounds:\nswings 24kg x 15\npush ups x 10", f"{BENCH}; {SWINGS}",
                     id="what stands ahead of the rounds"),
        pytest.param("squat 100 5, then 3 rounds of swings 24kg x 15 and push ups x 10",
                     f"barbell back squat 5 at 100 kg; {SWINGS}", id="a single set ahead"),
        pytest.param("swings 24kg x 15, push ups x 10, 3 rounds", SWINGS, id="told last"),
    ],
)  # fmt: skip
def test_rounds_reach_over_their_own_exercises(text: str, meant: str) -> None:
    assert said(text) == meant


@pytest.mark.parametrize(
    "heading",
    [
        "Entreno 5 - lunes 10 de marzo",
        "Séance 5 - lundi 10 mars",
        "Training 5 vom 10.3.",
        "Trening 5, 10.03",
        "Тренировка 5, 10 марта",
        "Pass 5, måndag 10 mars",
        "Treino 5 (10/03)",
    ],
)
def test_a_day_behind_the_number_of_the_session(heading: str) -> None:
    assert said(f"{heading}\nsquat 100 5 5 5\nbench 80 8 8") == (
        f"{SQUATS}; barbell bench press 2×8 at 80 kg on 2025-03-10"
    )


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        pytest.param("Circuit x3:\npush ups 10\npull ups 5", "push-up 3×10; pull-up 3×5", id="a circuit so many times"),
        pytest.param("superset x3\nbench 60 x 10\npull ups 8", "barbell bench press 3×10 at 60 kg; pull-up 3×8",
                     id="a superset so many times"),
        pytest.param("EMOM 10\n5 pull ups", "ask: pull-up 5", id="every minute"),
        pytest.param("AMRAP 12 min\n5 pull ups\n10 push ups", "ask: pull-up 5; push-up 10", id="by the clock"),
        pytest.param("Squat\nW: 60x5, 80x3\n100x5", "barbell back squat 5 at 60 kg warmup, 3 at 80 kg warmup,"
                     " 5 at 100 kg", id="a letter for the warm-up"),
        pytest.param("Set 1: squat 100x5\nSet 2: squat 100x4", "barbell back squat 5 at 100 kg, 4 at 100 kg",
                     id="numbered sets that repeat the name"),
        pytest.param("squat 100 5 5 5\nbench 60 8 8\nTotal volume: 2700 kg", f"{SQUATS}; {BENCH}", id="a sum"),
        pytest.param("squat 100 5 5 5\nbench 60 8 8\n412 kcal", f"{SQUATS}; {BENCH}", id="energy"),
        pytest.param("squat 100 5 5 5 (next time 102.5)\nbench 60 8 8", f"{SQUATS}; {BENCH}", id="what is to come"),
    ],
)  # fmt: skip
def test_lines_beside_the_sets(text: str, meant: str) -> None:
    assert said(text) == meant
