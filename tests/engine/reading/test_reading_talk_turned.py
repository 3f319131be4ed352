"""Sentences that turn: what was wished, left out or done by others, and what she did herself beside it."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import said, situation

SQUATTING = situation(doing="barbell back squat")

NOTHING_DONE = (
    "couldn't train today, had 5x5 squats on the list",
    "didn't make it today: squat 5x5 100, bench 5x5 80",
    "no gym today, should have been squat 5x5 100",
    "on the schedule: squat 5x5 100",
    "today's plan: squat 5x5 100",
    "friday is 5x3 at 140",
    "next is bench 5x5 80",
    "meant to be 3x8 at 60",
    "dreamt i squatted 200x5",
    "by summer: bench 100x5",
    "aim: squat 140x5",
    "tom did bench 3x8 60",
    "my gym buddy benched 100 for 8",
    "squat pr was 150x1 in march",
    "reckon i could do 100x5",
    "plan für freitag: 5x3 140",
    "konnte heute nicht trainieren, 5x5 kniebeuge stand auf dem plan",
    "no pude entrenar, tocaba 5x5 sentadilla",
    "prévu vendredi: squat 5x3 140",
    "in programma venerdì: squat 5x3 140",
    "gepland vrijdag: squat 5x3 140",
    "plan na piątek: przysiad 5x3 140",
    "plano para sexta: agachamento 5x3 140",
    "план на пятницу: присед 5x3 140",
)


@pytest.mark.parametrize("text", NOTHING_DONE)
def test_plans_and_other_people_are_no_sets(text: str) -> None:
    assert said(text, SQUATTING) == "no sets"


TURNED = (
    ("skipped the leg extensions but did leg press, 4 sets of 12 at 160", "leg press 4×12 at 160 kg"),
    ("didn't do squats, did leg press 3x12 160", "leg press 3×12 at 160 kg"),
    ("skipped squats, leg press 3x12 160 instead", "leg press 3×12 at 160 kg"),
    (
        "my friend did 100 but i stuck with 70 on the bench, 3 sets of 8",
        "barbell bench press 3×8 at 70 kg",
    ),
    (
        "wanted 3x8 on bench at 80 but only got 8 7 6",
        "barbell bench press 8 at 80 kg, 7 at 80 kg, 6 at 80 kg",
    ),
    ("bench 80x5 and my mate did 100x5", "barbell bench press 5 at 80 kg"),
    ("squat 5x5 100 but next week 105", "barbell back squat 5×5 at 100 kg"),
    ("could only do bench 3x5 80", "barbell bench press 3×5 at 80 kg"),
    ("back in the gym: bench 3x5 60", "barbell bench press 3×5 at 60 kg"),
    ("ok thats 5 at 122.5", "barbell back squat 5 at 122.5 kg"),
)


@pytest.mark.parametrize(("text", "meant"), [pytest.param(*row, id=row[0]) for row in TURNED])
def test_what_she_did_herself_is_read(text: str, meant: str) -> None:
    assert said(text, SQUATTING) == meant
