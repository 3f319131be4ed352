"""What stands around the sets: several lifts, headings, labels, dates, notes, pain."""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import said, situation


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    [
        pytest.param(
            "squat 3x5 100; bench 3x5 80 | row 3x8 60",
            situation(plan=[("barbell row", 3, 8, "60")]),
            "barbell back squat 3×5 at 100 kg; barbell bench press 3×5 at 80 kg; barbell row 3×8 at 60 kg",
            id="squat 3x5 100; bench 3x5 80 | row 3x8 60",
        ),
        pytest.param(
            "bench 80x5 80x5 + dips 10 8 & chins 6 5",
            situation(),
            "barbell bench press 2×5 at 80 kg; dip 10, 8; chin-up 6, 5",
            id="bench 80x5 80x5 + dips 10 8 & chins 6 5",
        ),
        pytest.param(
            "Push day\n- bench 80x5\n- ohp 40x8\n* dips 12 10",
            situation(),
            "barbell bench press 5 at 80 kg; barbell overhead press 8 at 40 kg; dip 12, 10",
            id="Push day / - bench 80x5 / - ohp 40x8 / * dips 12 10",
        ),
        pytest.param(
            "week 2 day 3\n1. squat 5x5 90\n2. leg press 3x10 150\n3. plank 60s",
            situation(),
            "barbell back squat 5×5 at 90 kg; leg press 3×10 at 150 kg; plank 60 s",
            id="week 2 day 3 / 1. squat 5x5 90 / 2. leg press 3x10 150 / 3. plank 60s",
        ),
        pytest.param("3x10 60 bench", situation(), "barbell bench press 3×10 at 60 kg", id="3x10 60 bench"),
        pytest.param(
            "3x10 60 bench, 3x12 40 lat pulldown",
            situation(),
            "barbell bench press 3×10 at 60 kg; lat pulldown 3×12 at 40 kg",
            id="3x10 60 bench, 3x12 40 lat pulldown",
        ),
        pytest.param(
            "A1 pull ups 8 8 8\nA2 dips 10 10 10",
            situation(),
            "pull-up 3×8; dip 3×10",
            id="A1 pull ups 8 8 8 / A2 dips 10 10 10",
        ),
        pytest.param(
            "A1) bench 3x8 60\nB1) curls 3x12 12",
            situation(doing="dumbbell curl"),
            "barbell bench press 3×8 at 60 kg; dumbbell curl 3×12 at 12 kg each",
            id="A1) bench 3x8 60 / B1) curls 3x12 12",
        ),
        pytest.param(
            "superset bench 3x8 60 with pull ups 8 7 6",
            situation(),
            "barbell bench press 3×8 at 60 kg; pull-up 8, 7, 6",
            id="superset bench 3x8 60 with pull ups 8 7 6",
        ),
        pytest.param(
            "bench 60x8, pull ups 8, bench 60x8, pull ups 7",
            situation(),
            "barbell bench press 8 at 60 kg; pull-up 8; barbell bench press 8 at 60 kg; pull-up 7",
            id="bench 60x8, pull ups 8, bench 60x8, pull ups 7",
        ),
        pytest.param(
            "curls and pushdowns both 3x15 20",
            situation(plan=[("cable curl", 3, 15, "20")]),
            "cable curl 3×15 at 20 kg; triceps pushdown 3×15 at 20 kg",
            id="curls and pushdowns both 3x15 20",
        ),
        pytest.param(
            "bench 80x5, pendlay same weight 5 5",
            situation(),
            "barbell bench press 5 at 80 kg; pendlay row 2×5 at 80 kg",
            id="bench 80x5, pendlay same weight 5 5",
        ),
    ],
)
def test_several_lifts(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    [
        pytest.param(
            "yesterday bench 3x5 80",
            situation(),
            "barbell bench press 3×5 at 80 kg on 2025-03-13",
            id="yesterday bench 3x5 80",
        ),
        pytest.param(
            "bench 3x5 80 yesterday",
            situation(),
            "barbell bench press 3×5 at 80 kg on 2025-03-13",
            id="bench 3x5 80 yesterday",
        ),
        pytest.param(
            "tue: squat 3x5 100", situation(), "barbell back squat 3×5 at 100 kg on 2025-03-11", id="tue: squat 3x5 100"
        ),
        pytest.param(
            "sunday's session: deadlift 150x3",
            situation(),
            "conventional deadlift 3 at 150 kg on 2025-03-09",
            id="sunday's session: deadlift 150x3",
        ),
        pytest.param(
            "2 days ago squat 5x5 95",
            situation(),
            "barbell back squat 5×5 at 95 kg on 2025-03-12",
            id="2 days ago squat 5x5 95",
        ),
        pytest.param(
            "12/03 bench 3x5 80", situation(), "barbell bench press 3×5 at 80 kg on 2025-03-12", id="12/03 bench 3x5 80"
        ),
        pytest.param(
            "13.3. bench 3x5 80", situation(), "barbell bench press 3×5 at 80 kg on 2025-03-13", id="13.3. bench 3x5 80"
        ),
        pytest.param(
            "2025-03-10 bench 3x5 80",
            situation(),
            "barbell bench press 3×5 at 80 kg on 2025-03-10",
            id="2025-03-10 bench 3x5 80",
        ),
        pytest.param(
            "03/12 bench 3x5 175",
            situation(unit="lb"),
            "barbell bench press 3×5 at 175 lb on 2025-03-12",
            id="03/12 bench 3x5 175",
        ),
        pytest.param(
            "10.03.2025 bench 3x5 80",
            situation(),
            "barbell bench press 3×5 at 80 kg on 2025-03-10",
            id="10.03.2025 bench 3x5 80",
        ),
        pytest.param(
            "date: 3 march bench 3x5 80",
            situation(),
            "barbell bench press 3×5 at 80 kg on 2025-03-03",
            id="date: 3 march bench 3x5 80",
        ),
        pytest.param(
            "last monday squat 5x5 90",
            situation(),
            "barbell back squat 5×5 at 90 kg on 2025-03-10",
            id="last monday squat 5x5 90",
        ),
        pytest.param(
            "on wednesday i did squats 3x5 100",
            situation(),
            "barbell back squat 3×5 at 100 kg on 2025-03-12",
            id="on wednesday i did squats 3x5 100",
        ),
    ],
)
def test_days(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    [
        pytest.param(
            "legs sore from monday, squat 3x5 90",
            situation(),
            "barbell back squat 3×5 at 90 kg",
            id="legs sore from monday, squat 3x5 90",
        ),
        pytest.param(
            "felt better than yesterday, bench 3x5 80",
            situation(),
            "barbell bench press 3×5 at 80 kg",
            id="felt better than yesterday, bench 3x5 80",
        ),
        pytest.param("same once more", situation(doing="barbell bench press"), "request: repeat", id="same once more"),
        pytest.param("ditto", situation(doing="barbell bench press"), "request: repeat", id="ditto"),
        pytest.param(
            "same weight, 9 9 8",
            situation(doing="barbell bench press", last={"barbell bench press": "70"}),
            "barbell bench press 2×9 at 70 kg, 8 at 70 kg",
            id="same weight, 9 9 8",
        ),
        pytest.param(
            "+2.5 8 8 7",
            situation(doing="barbell bench press", last={"barbell bench press": "70"}),
            "barbell bench press 2×8 at 72.5 kg, 7 at 72.5 kg",
            id="+2.5 8 8 7",
        ),
        pytest.param(
            "bench 80x5 elbow twinge on last rep",
            situation(),
            "barbell bench press 5 at 80 kg, pain",
            id="bench 80x5 elbow twinge on last rep",
        ),
        pytest.param(
            "squat 3x5 100 knees felt great, no pain",
            situation(),
            "barbell back squat 3×5 at 100 kg",
            id="squat 3x5 100 knees felt great, no pain",
        ),
        pytest.param(
            "squat 100x5 lower back numb",
            situation(),
            "barbell back squat 5 at 100 kg, pain",
            id="squat 100x5 lower back numb",
        ),
        pytest.param("felt light-headed after that", situation(), "no sets, pain", id="a warning sign behind felt"),
        pytest.param("thursday i'm trying 120x2 on squat", situation(), "no sets", id="what is going to be tried"),
        pytest.param("felt dizzy after that", situation(), "no sets, pain", id="felt dizzy after that"),
        pytest.param("short of breath today", situation(), "no sets, pain", id="short of breath today"),
        pytest.param(
            "quads sore from tuesday, squat 90x5",
            situation(),
            "barbell back squat 5 at 90 kg",
            id="quads sore from tuesday, squat 90x5",
        ),
        pytest.param("chest pain", situation(), "no sets, pain", id="chest pain"),
        pytest.param("my knee hurts", situation(), "no sets, pain", id="my knee hurts"),
        pytest.param("no pain at all today", situation(), "no sets", id="no pain at all today"),
    ],
)
def test_carried_on_and_pain(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        pytest.param(
            "date: the 3rd of march\nbench 3x5 81",
            "barbell bench press 3×5 at 81 kg on 2025-03-03",
            id="a marked day may be told freely",
        ),
        pytest.param("date: whenever\nbench 3x5 81", "barbell bench press 3×5 at 81 kg", id="a marked word is no day"),
        pytest.param(
            "date: the 3rd of december\nbench 3x5 81",
            "barbell bench press 3×5 at 81 kg on 2024-12-03",
            id="a marked day is never in the future",
        ),
    ],
)
def test_a_marked_day(text: str, meant: str) -> None:
    assert said(text) == meant
