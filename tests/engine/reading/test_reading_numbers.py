"""The numbers of a set in every form that people write them."""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import said, situation


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    [
        pytest.param(
            "squat 85x3 90x3 95x1",
            situation(),
            "barbell back squat 3 at 85 kg, 3 at 90 kg, 1 at 95 kg",
            id="squat 85x3 90x3 95x1",
        ),
        pytest.param("ohp 5x5 42.5", situation(), "barbell overhead press 5×5 at 42.5 kg", id="ohp 5x5 42.5"),
        pytest.param(
            "front squat 3x5 w 70", situation(), "barbell front squat 3×5 at 70 kg", id="front squat 3x5 w 70"
        ),
        pytest.param("rdl 3x10 (80)", situation(), "romanian deadlift 3×10 at 80 kg", id="rdl 3x10 (80)"),
        pytest.param(
            "lat pulldown 4x10, 47.5", situation(), "lat pulldown 4×10 at 47.5 kg", id="lat pulldown 4x10, 47.5"
        ),
        pytest.param(
            "72.5kg 4x6", situation(doing="barbell bench press"), "barbell bench press 4×6 at 72.5 kg", id="72.5kg 4x6"
        ),
        pytest.param("squats, 95, 3x6", situation(), "barbell back squat 3×6 at 95 kg", id="squats, 95, 3x6"),
        pytest.param(
            "squat 4x110 2x120 1x130",
            situation(),
            "barbell back squat 4 at 110 kg, 2 at 120 kg, 1 at 130 kg",
            id="squat 4x110 2x120 1x130",
        ),
        pytest.param("12x 55lb", situation(doing="dumbbell curl"), "dumbbell curl 12 at 55 lb each", id="12x 55lb"),
        pytest.param("squat 5@90", situation(), "barbell back squat 5 at 90 kg", id="squat 5@90"),
        pytest.param(
            "bench 4/100 3/105", situation(), "barbell bench press 4 at 100 kg, 3 at 105 kg", id="bench 4/100 3/105"
        ),
        pytest.param("hack squat 60x12x3", situation(), "hack squat 3×12 at 60 kg", id="hack squat 60x12x3"),
        pytest.param("pushdown 4x15x22.5", situation(), "triceps pushdown 4×15 at 22.5 kg", id="pushdown 4x15x22.5"),
        pytest.param(
            "squat 3 x 6 x 90 kg @7", situation(), "barbell back squat 3×6 at 90 kg RPE 7", id="squat 3 x 6 x 90 kg @7"
        ),
        pytest.param(
            "bench 90x4x6",
            situation(),
            "ask: barbell bench press 4×6 at 90 kg | barbell bench press 6×4 at 90 kg",
            id="bench 90x4x6",
        ),
        pytest.param(
            "hammer curls 12x3 16kg", situation(), "hammer curl 3×12 at 16 kg each", id="hammer curls 12x3 16kg"
        ),
    ],
)
def test_sets_reps_and_load(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    [
        pytest.param(
            'rdl "10 reps x 3 sets" 75', situation(), "romanian deadlift 3×10 at 75 kg", id='rdl "10 reps x 3 sets" 75'
        ),
        pytest.param("push-ups 20x3", situation(), "push-up 3×20", id="push-ups 20x3"),
        pytest.param("leg press 15x3x140", situation(), "leg press 3×15 at 140 kg", id="leg press 15x3x140"),
        pytest.param(
            "bench 70x9/9/6", situation(), "barbell bench press 2×9 at 70 kg, 6 at 70 kg", id="bench 70x9/9/6"
        ),
        pytest.param("ohp 40x8,8,7", situation(), "barbell overhead press 2×8 at 40 kg, 7 at 40 kg", id="ohp 40x8,8,7"),
        pytest.param("row 60x10, 10", situation(doing="barbell row"), "barbell row 2×10 at 60 kg", id="row 60x10, 10"),
        pytest.param(
            "35 x11, x11, x9",
            situation(doing="dumbbell curl"),
            "dumbbell curl 2×11 at 35 kg each, 9 at 35 kg each",
            id="35 x11, x11, x9",
        ),
        pytest.param(
            "db press 65x9x8x8",
            situation(doing="dumbbell bench press", unit="lb"),
            "dumbbell bench press 9 at 65 lb each, 2×8 at 65 lb each",
            id="db press 65x9x8x8",
        ),
        pytest.param("bench 85-6-6-6", situation(), "barbell bench press 3×6 at 85 kg", id="bench 85-6-6-6"),
        pytest.param(
            "bench 60: 8,8,7", situation(), "barbell bench press 2×8 at 60 kg, 7 at 60 kg", id="bench 60: 8,8,7"
        ),
        pytest.param(
            "leg curl 14 12 9",
            situation(doing="seated leg curl"),
            "ask: seated leg curl 12 at 14 kg, 9 at 14 kg | seated leg curl 14, 12, 9",
            id="leg curl 14 12 9",
        ),
        pytest.param(
            "lying leg curl 14 12 9",
            situation(),
            "ask: lying leg curl 12 at 14 kg, 9 at 14 kg | lying leg curl 14, 12, 9",
            id="lying leg curl 14 12 9",
        ),
        pytest.param(
            "bench 10, 6, 4 @ 90",
            situation(),
            "barbell bench press 10 at 90 kg, 6 at 90 kg, 4 at 90 kg",
            id="bench 10, 6, 4 @ 90",
        ),
        pytest.param(
            "front squat 6 6 4 @ 72.5",
            situation(),
            "barbell front squat 2×6 at 72.5 kg, 4 at 72.5 kg",
            id="front squat 6 6 4 @ 72.5",
        ),
        pytest.param("bench 60/9 60/9", situation(), "barbell bench press 2×9 at 60 kg", id="bench 60/9 60/9"),
        pytest.param("bench 9/60 9/60", situation(), "barbell bench press 2×9 at 60 kg", id="bench 9/60 9/60"),
    ],
)
def test_reps_before_sets_and_lists_of_reps(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    [
        pytest.param("pec deck 20/10", situation(), "ask: pec deck 10 at 20 kg | pec deck 20, 10", id="pec deck 20/10"),
        pytest.param(
            "bench 70kg 9, 75kg 9", situation(), "barbell bench press 9 at 70 kg, 9 at 75 kg", id="bench 70kg 9, 75kg 9"
        ),
        pytest.param(
            "bench\n50 6\n55 5\n60 3",
            situation(),
            "barbell bench press 6 at 50 kg, 5 at 55 kg, 3 at 60 kg",
            id="bench / 50 6 / 55 5 / 60 3",
        ),
        pytest.param(
            "back for round 2. ghr 3x8", situation(), "glute-ham raise 3×8", id="which round it is, ahead of the lifts"
        ),
        pytest.param(
            "9 x2",
            situation(doing="barbell bench press", last={"barbell bench press": "82"}),
            "ask: barbell bench press 2×9 at 82 kg | barbell bench press 9×2 at 82 kg",
            id="9 x2 of the lift in hand",
        ),
        pytest.param(
            "squat 9 x3 at 62",
            situation(),
            "ask: barbell back squat 3×9 at 62 kg | barbell back squat 9×3 at 62 kg",
            id="squat 9 x3 at 62",
        ),
        pytest.param(
            "3 x9",
            situation(doing="barbell bench press", last={"barbell bench press": "82"}),
            "barbell bench press 3×9 at 82 kg",
            id="3 x9 of the lift in hand",
        ),
        pytest.param(
            "bench 60 8 x3",
            situation(),
            "ask: barbell bench press 3×8 at 60 kg | barbell bench press 8×3 at 60 kg",
            id="an x apart from the reps of a load",
        ),
        pytest.param(
            "squat 100 5x3", situation(), "barbell back squat 5×3 at 100 kg", id="sets and reps behind a load"
        ),
        pytest.param(
            "dips 8 +20kg x3",
            situation(),
            "ask: dip 3×8 at +20 kg | dip 8, 3 at +20 kg",
            id="a load between reps and x",
        ),
        pytest.param(
            "dips 10 +20kg x8 +20kg x6",
            situation(),
            "dip 10, 8 at +20 kg, 6 at +20 kg",
            id="loads with their reps behind a set without",
        ),
        pytest.param(
            "cable crunch 10x3 50",
            situation(),
            "ask: cable crunch 10×3 at 50 kg | cable crunch 3×10 at 50 kg",
            id="ten triples or three tens of a lift of one joint",
        ),
        pytest.param(
            "squat 10x3 100", situation(), "barbell back squat 10×3 at 100 kg", id="triples of a lift of many joints"
        ),
        pytest.param(
            "squat 10x3 100",
            situation(plan=[("barbell back squat", 3, 10, "100")]),
            "barbell back squat 3×10 at 100 kg",
            id="three tens by the plan",
        ),
        pytest.param(
            "seated ohp\n30 8\n35 6\n35 5",
            situation(),
            "seated barbell overhead press 8 at 30 kg, 6 at 35 kg, 5 at 35 kg",
            id="loads that might be reps, a line each",
        ),
        pytest.param(
            "bb curl 20 12, 25 10, 25 8 rpe 9",
            situation(),
            "barbell curl 12 at 20 kg, 10 at 25 kg, 8 at 25 kg RPE 9",
            id="loads that might be reps, between commas",
        ),
        pytest.param(
            "lat raise\n10 12\n10 10",
            situation(),
            "ask: dumbbell lateral raise 10, 12, 2×10 | dumbbell lateral raise 12 at 10 kg each, 10 at 10 kg each",
            id="pairs of which either may be the load",
        ),
        pytest.param(
            "squat 4 6 70",
            situation(),
            "ask: barbell back squat 4 at 70 kg, 6 at 70 kg | barbell back squat 4×6 at 70 kg",
            id="squat 4 6 70",
        ),
        pytest.param(
            "squat (70,75,80)x6",
            situation(),
            "barbell back squat 6 at 70 kg, 6 at 75 kg, 6 at 80 kg",
            id="squat (70,75,80)x6",
        ),
        pytest.param(
            "ohp 30/32.5/35 x6",
            situation(),
            "barbell overhead press 6 at 30 kg, 6 at 32.5 kg, 6 at 35 kg",
            id="ohp 30/32.5/35 x6",
        ),
        pytest.param(
            "bench 6s: 60 70 80",
            situation(),
            "barbell bench press 6 at 60 kg, 6 at 70 kg, 6 at 80 kg",
            id="bench 6s: 60 70 80",
        ),
        pytest.param(
            "deadlift doubles at 110, 115",
            situation(),
            "conventional deadlift 2 at 110 kg, 2 at 115 kg",
            id="deadlift doubles at 110, 115",
        ),
        pytest.param("squat 8x30/50", situation(), "barbell back squat 8 at 30 kg, 8 at 50 kg", id="squat 8x30/50"),
        pytest.param(
            "bench 3x10 40/45/50",
            situation(),
            "barbell bench press 10 at 40 kg, 10 at 45 kg, 10 at 50 kg",
            id="bench 3x10 40/45/50",
        ),
        pytest.param(
            "(50x9)x3", situation(doing="barbell bench press"), "barbell bench press 3×9 at 50 kg", id="(50x9)x3"
        ),
        pytest.param(
            "24 x 9 (x3)", situation(doing="dumbbell row"), "dumbbell row 3×9 at 24 kg each", id="24 x 9 (x3)"
        ),
        pytest.param(
            "(75 x7) 3x", situation(doing="barbell bench press"), "barbell bench press 3×7 at 75 kg", id="(75 x7) 3x"
        ),
        pytest.param(
            "4 x (6 @ 70)",
            situation(doing="barbell bench press"),
            "barbell bench press 4×6 at 70 kg",
            id="4 x (6 @ 70)",
        ),
        pytest.param("bench 92.5x4 x2", situation(), "barbell bench press 2×4 at 92.5 kg", id="bench 92.5x4 x2"),
        pytest.param("x2", situation(doing="barbell bench press"), "request: repeat 2", id="x2"),
    ],
)
def test_slashes_lists_of_loads_and_multipliers(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    [
        pytest.param("squat 65 x 4s x 6r", situation(), "barbell back squat 4×6 at 65 kg", id="squat 65 x 4s x 6r"),
        pytest.param("bench 9r @ 50", situation(), "barbell bench press 9 at 50 kg", id="bench 9r @ 50"),
        pytest.param("leg press 4s 12r 150", situation(), "leg press 4×12 at 150 kg", id="leg press 4s 12r 150"),
        pytest.param(
            "lat pulldown 3 sets of 12 at 55",
            situation(),
            "lat pulldown 3×12 at 55 kg",
            id="lat pulldown 3 sets of 12 at 55",
        ),
        pytest.param(
            "100 for 5, three times",
            situation(doing="barbell back squat"),
            "barbell back squat 3×5 at 100 kg",
            id="100 for 5, three times",
        ),
        pytest.param(
            "a dozen at 42, three times",
            situation(doing="rope pushdown"),
            "rope pushdown 3×12 at 42 kg",
            id="a dozen at 42, three times",
        ),
        pytest.param(
            "bench 8 mit 62, dreimal", situation(), "barbell bench press 3×8 at 62 kg", id="8 mit 62, dreimal"
        ),
        pytest.param(
            "hit 140 for a triple on squat",
            situation(),
            "barbell back squat 3 at 140 kg",
            id="hit 140 for a triple on squat",
        ),
        pytest.param(
            "60 kilos nine times",
            situation(doing="barbell bench press"),
            "barbell bench press 9 at 60 kg",
            id="60 kilos nine times",
        ),
        pytest.param("a dozen push ups", situation(), "push-up 12", id="a dozen push ups"),
        pytest.param(
            "leg curl 4 by 9 40",
            situation(doing="seated leg curl"),
            "seated leg curl 4×9 at 40 kg",
            id="leg curl 4 by 9 40",
        ),
        pytest.param("bench 4*9 60", situation(), "barbell bench press 4×9 at 60 kg", id="bench 4*9 60"),
        pytest.param(
            "bench set 1 100x5, set 2 100x4",
            situation(),
            "barbell bench press 5 at 100 kg, 4 at 100 kg",
            id="bench set 1 100x5, set 2 100x4",
        ),
        pytest.param(
            "bench S1 90x6 S2 90x5",
            situation(),
            "barbell bench press 6 at 90 kg, 5 at 90 kg",
            id="bench S1 90x6 S2 90x5",
        ),
        pytest.param(
            "1) 90x6\n2) 90x5\n3) 85x6",
            situation(doing="barbell bench press"),
            "barbell bench press 6 at 90 kg, 5 at 90 kg, 6 at 85 kg",
            id="1) 90x6 / 2) 90x5 / 3) 85x6",
        ),
        pytest.param(
            "bench 3 sets: 50x9, 55x8, 60x7",
            situation(),
            "barbell bench press 9 at 50 kg, 8 at 55 kg, 7 at 60 kg",
            id="bench 3 sets: 50x9, 55x8, 60x7",
        ),
        pytest.param(
            "bench 60x8, x8, x7", situation(), "barbell bench press 2×8 at 60 kg, 7 at 60 kg", id="bench 60x8, x8, x7"
        ),
        pytest.param(
            "snatch singles 45 50 55",
            situation(),
            "snatch 1 at 45 kg, 1 at 50 kg, 1 at 55 kg",
            id="snatch singles 45 50 55",
        ),
        pytest.param(
            "snatch 60, 65, 70 miss",
            situation(),
            "snatch 1 at 60 kg, 1 at 65 kg, 0 at 70 kg missed",
            id="snatch 60, 65, 70 miss",
        ),
        pytest.param("pull ups 2-3-5 x2", situation(), "pull-up 2, 3, 5, 2, 3, 5", id="pull ups 2-3-5 x2"),
        pytest.param(
            "3 rounds: pull ups 5, push ups 10, air squats 15",
            situation(),
            "pull-up 3×5; push-up 3×10; bodyweight squat 3×15",
            id="3 rounds: pull ups 5, push ups 10, air squats 15",
        ),
        pytest.param("40 total in sets of 8", situation(doing="push-up"), "push-up 5×8", id="40 total in sets of 8"),
        pytest.param(
            "bench 4x6-8 57.5",
            situation(),
            "ask: barbell bench press 4×6 at 57.5 kg | barbell bench press 4×8 at 57.5 kg",
            id="bench 4x6-8 57.5",
        ),
        pytest.param("bench 90x3+ got 6", situation(), "barbell bench press 6 at 90 kg", id="bench 90x3+ got 6"),
        pytest.param("push ups AMRAP 22", situation(), "push-up 22", id="push ups AMRAP 22"),
    ],
)
def test_letters_words_numbered_sets_and_totals(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant
