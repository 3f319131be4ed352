"""Tries told in words, totals with a load, reasons ahead of sets, decimal commas ahead of a group, plans for a day."""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import readings, said, situation

BENCHED = situation(doing="barbell bench press")
BENCH_KNOWN = situation(doing="barbell bench press", last={"barbell bench press": "80"})


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    [
        pytest.param(
            "failed 145 bench three times", situation(), "barbell bench press 3×0 at 145 kg missed", id="misses alone"
        ),
        pytest.param(
            "missed power clean 85, then nailed it",
            situation(),
            "power clean 0 at 85 kg missed, 1 at 85 kg",
            id="a miss and a made one",
        ),
        pytest.param(
            "snatch 65: miss, miss, made it",
            situation(),
            "snatch 2×0 at 65 kg missed, 1 at 65 kg",
            id="tries in a list",
        ),
        pytest.param(
            "missed 150 deadlift twice, got it on the third",
            situation(),
            "conventional deadlift 2×0 at 150 kg missed, 1 at 150 kg",
            id="the try that was made agrees",
        ),
        pytest.param(
            "squat attempts 150, 160, 165 miss",
            situation(),
            "barbell back squat 1 at 150 kg, 1 at 160 kg, 0 at 165 kg missed",
            id="attempts are singles",
        ),
        pytest.param(
            "max out log: 90 good, 95 good, 100 no lift",
            situation(),
            "log press 1 at 90 kg, 1 at 95 kg, 0 at 100 kg missed",
            id="loads judged one by one",
        ),
        pytest.param("bench 100, 105 miss", situation(), "ask: ", id="a load that nobody judged"),
        pytest.param(
            "bench 90 5 5 4 miss",
            situation(),
            "barbell bench press 2×5 at 90 kg, 4 at 90 kg missed",
            id="reps, no tries",
        ),
        pytest.param("triple @8", BENCH_KNOWN, "barbell bench press 3 at 80 kg RPE 8", id="a count rated by its sign"),
        pytest.param("triple @85", BENCH_KNOWN, "barbell bench press 3 at 85 kg", id="a count at its load"),
        pytest.param(
            "bench 95x4+1 miss", situation(), "barbell bench press 4 at 95 kg missed", id="reps told beside a miss"
        ),
        pytest.param(
            "swings 16k: 80 total in sets of 20", situation(), "kettlebell swing 4×20 at 16 kg", id="a total at a load"
        ),
        pytest.param("chins +5kg, 24 in sets of 6", situation(), "chin-up 4×6 at +5 kg", id="a total at a load added"),
        pytest.param(
            "bench 55kg 40 reps total in 4 sets",
            situation(),
            "ask: barbell bench press 4×10 at 55 kg",
            id="a total in so many sets is asked",
        ),
        pytest.param("kids awake so only 2x8 60", BENCHED, "barbell bench press 2×8 at 60 kg", id="a reason ahead"),
        pytest.param("slept badly so 3x8 60", BENCHED, "barbell bench press 3×8 at 60 kg", id="talk that is a reason"),
        pytest.param("zumba 3x8 60", BENCHED, "ask: ", id="unknown words that are no reason"),
        pytest.param(
            "barbell curl 22,5 3x10", situation(), "barbell curl 3×10 at 22.5 kg", id="comma ahead of a group"
        ),
        pytest.param(
            "barbell row 57,5: 9,9,8",
            situation(),
            "barbell row 2×9 at 57.5 kg, 8 at 57.5 kg",
            id="comma ahead of a colon",
        ),
        pytest.param(
            "lateral raise 7,5 12/12/10",
            situation(),
            "dumbbell lateral raise 2×12 at 7.5 kg each, 10 at 7.5 kg each",
            id="comma ahead of a list",
        ),
        pytest.param(
            "bench 10,8 3x5", situation(), "ask: barbell bench press 10, 8, 3×5", id="no step of plates: a list, asked"
        ),
        pytest.param(
            "squat 75 3x8 ez", situation(), "barbell back squat 3×8 at 75 kg", id="ez behind the numbers is easy"
        ),
        pytest.param(
            "ez curl 22.5 3x8", situation(), "ez-bar curl 3×8 at 22.5 kg", id="ez in front of a curl is its bar"
        ),
        pytest.param("tomorrow is legs, 4x6 with 90", situation(), "no sets", id="a plan for a day"),
        pytest.param("morgen Beine, 4x6 mit 90", situation(), "no sets", id="a plan for a day in German"),
        pytest.param("mañana toca pecho, 4x6 con 90", situation(), "no sets", id="a plan for a day in Spanish"),
        pytest.param(
            "tomorrow legs, bench 4x6 70", situation(), "barbell bench press 4×6 at 70 kg", id="a lift named is today's"
        ),
        pytest.param(
            "first proper pull ups: 3 2 2", situation(), "pull-up 3, 2×2", id="an adjective that changes nothing"
        ),
    ],
)
def test_what_is_told(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


CROSSED = """
squat 100x5 ✅ 105x5 ✅ 110x5 ❌ => barbell back squat 5 at 100 kg, 5 at 105 kg, 5 at 110 kg missed
squat 100x5 ✓, 110x5 ✗, 110x3 ✗ => barbell back squat 5 at 100 kg, 5 at 110 kg missed, 3 at 110 kg missed
bench // 100x5 ✔️ // 105x5 ❌ // 105x3 ✔️ => barbell bench press 5 at 100 kg, 5 at 105 kg missed, 3 at 105 kg
squat 180x1 (❌) => barbell back squat 0 at 180 kg missed
squat 100: 5 ✅ 5 ✅ 4 ❌ => barbell back squat 2×5 at 100 kg, 4 at 100 kg missed
✅ squat 3x5 100 ✅ bench 3x8 60 => barbell back squat 3×5 at 100 kg; barbell bench press 3×8 at 60 kg
squat 3x5 100 ❌ => ask:
❌ squat 100x5 => ask: barbell back squat 5 at 100 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(CROSSED))
def test_a_cross_behind_a_set_says_that_it_was_missed(text: str, context: Context, meant: str) -> None:
    assert said(text, context).strip() == meant


SET_MISSED = """
missed the third set of squats, 85x5 twice => ask: barbell back squat 2×5 at 85 kg
squats 85x5 twice, failed the third set => ask: barbell back squat 2×5 at 85 kg
bench 80 5 5 missed the second rep of the third set => barbell bench press 2×5 at 80 kg, 1 at 80 kg missed
bench 80x5, missed the third rep => barbell bench press 2 at 80 kg missed
deadlift 200 no lift x2, 190x1 => conventional deadlift 2×0 at 200 kg missed, 1 at 190 kg
deadlift 200x1 miss x2 => conventional deadlift 2×0 at 200 kg missed
bench 110x5 miss x3 => ask: barbell bench press 3×5 at 110 kg missed
жим лежа 100х1 не смог, 95х3 => barbell bench press 0 at 100 kg missed, 3 at 95 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(SET_MISSED))
def test_a_missed_set_named_by_its_place_is_no_rep(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant
