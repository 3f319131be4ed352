"""Forms mixed as people mix them, and numbers that must not be taken for sets."""

# ruff: noqa: E501 — the readings of a table stand on one line each

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import said, situation


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    [
        pytest.param("squat 100x5 x 3", situation(), "barbell back squat 3×5 at 100 kg", id="squat 100x5 x 3"),
        pytest.param("bench 3 x 5 @ 80kg", situation(), "barbell bench press 3×5 at 80 kg", id="bench 3 x 5 @ 80kg"),
        pytest.param("bench 5 reps 80kg", situation(), "barbell bench press 5 at 80 kg", id="bench 5 reps 80kg"),
        pytest.param(
            "5 reps at 80 on bench", situation(), "barbell bench press 5 at 80 kg", id="5 reps at 80 on bench"
        ),
        pytest.param(
            "bench 80 for 3 sets of 5", situation(), "barbell bench press 3×5 at 80 kg", id="bench 80 for 3 sets of 5"
        ),
        pytest.param("bench 80 for 5 reps", situation(), "barbell bench press 5 at 80 kg", id="bench 80 for 5 reps"),
        pytest.param("did 3 sets of 10 push ups", situation(), "push-up 3×10", id="did 3 sets of 10 push ups"),
        pytest.param("pull ups: 10, 8, 7", situation(), "pull-up 10, 8, 7", id="pull ups: 10, 8, 7"),
        pytest.param(
            "ohp 3x8, 3x6 40", situation(), "barbell overhead press 3×8 at 40 kg, 3×6 at 40 kg", id="ohp 3x8, 3x6 40"
        ),
        pytest.param(
            "bench 3x5 80, 2x3 85",
            situation(),
            "barbell bench press 3×5 at 80 kg, 2×3 at 85 kg",
            id="bench 3x5 80, 2x3 85",
        ),
        pytest.param(
            "bench 3x5 80, 1x12 60",
            situation(),
            "barbell bench press 3×5 at 80 kg, 12 at 60 kg",
            id="bench 3x5 80, 1x12 60",
        ),
        pytest.param(
            "squat 60x5, 80x3, 100 5 5 5",
            situation(),
            "barbell back squat 5 at 60 kg, 3 at 80 kg, 3×5 at 100 kg",
            id="squat 60x5, 80x3, 100 5 5 5",
        ),
        pytest.param("squat 5x5", situation(), "barbell back squat 5×5", id="squat 5x5"),
        pytest.param("lat raise 3x15", situation(), "dumbbell lateral raise 3×15", id="lat raise 3x15"),
        pytest.param("db curl 3x10", situation(), "dumbbell curl 3×10", id="db curl 3x10"),
        pytest.param(
            "bench 8 8 7 @ 70 rpe 9",
            situation(),
            "ask: barbell bench press 2×8 at 70 kg RPE 9, 7 at 70 kg RPE 9 | barbell bench press 2×8 at 70 kg, 7 at 70 kg RPE 9",
            id="bench 8 8 7 @ 70 rpe 9",
        ),
        pytest.param(
            "bench 70 8,8,7 rpe 9",
            situation(),
            "ask: barbell bench press 2×8 at 70 kg RPE 9, 7 at 70 kg RPE 9 | barbell bench press 2×8 at 70 kg, 7 at 70 kg RPE 9",
            id="bench 70 8,8,7 rpe 9",
        ),
        pytest.param(
            "bench 70x8 @9, 70x8 @9.5",
            situation(),
            "barbell bench press 8 at 70 kg RPE 9, 8 at 70 kg RPE 9.5",
            id="bench 70x8 @9, 70x8 @9.5",
        ),
        pytest.param(
            "squat 5 @ 120 rpe 8", situation(), "barbell back squat 5 at 120 kg RPE 8", id="squat 5 @ 120 rpe 8"
        ),
        pytest.param(
            "deadlift 180kg single", situation(), "conventional deadlift 1 at 180 kg", id="deadlift 180kg single"
        ),
        pytest.param(
            "deadlift single @ 180", situation(), "conventional deadlift 1 at 180 kg", id="deadlift single @ 180"
        ),
        pytest.param("bench 1x100", situation(), "barbell bench press 1 at 100 kg", id="bench 1x100"),
        pytest.param(
            "bench 100x1x5",
            situation(),
            "ask: barbell bench press 5 at 100 kg | barbell bench press 5×1 at 100 kg",
            id="bench 100x1x5",
        ),
        pytest.param("bench 5x1 100", situation(), "barbell bench press 5×1 at 100 kg", id="bench 5x1 100"),
        pytest.param("chins 5x5 +10", situation(), "chin-up 5×5 at +10 kg", id="chins 5x5 +10"),
        pytest.param("chins +10kg 5x5", situation(), "chin-up 5×5 at +10 kg", id="chins +10kg 5x5"),
        pytest.param("dips 12 12 10 bw", situation(), "dip 2×12, 10", id="dips 12 12 10 bw"),
        pytest.param("ring dips 3x8", situation(), "ring dip 3×8", id="ring dips 3x8"),
        pytest.param(
            "pull ups 8 8 6 assisted 20kg",
            situation(),
            "pull-up 2×8 at −20 kg, 6 at −20 kg",
            id="pull ups 8 8 6 assisted 20kg",
        ),
        pytest.param(
            "assisted pull ups 3x8 20kg", situation(), "pull-up 3×8 at −20 kg", id="assisted pull ups 3x8 20kg"
        ),
        pytest.param(
            "leg press 4 plates each side 10 10 10",
            situation(),
            "ask: leg press 3×10 | leg press 3×10 at 160 kg",
            id="leg press 4 plates each side 10 10 10",
        ),
        pytest.param(
            "bench 2pl x 5",
            situation(),
            "ask: barbell bench press 2, 5 | barbell bench press 5 at 2 kg",
            id="bench 2pl x 5",
        ),
        pytest.param(
            "farmers 2x32kg 3x20m", situation(), "farmer's walk 3×20 m at 32 kg each", id="farmers 2x32kg 3x20m"
        ),
        pytest.param(
            "suitcase carry 24kg 30m each side",
            situation(),
            "suitcase carry 30 m at 24 kg",
            id="suitcase carry 24kg 30m each side",
        ),
        pytest.param("sled push 4x20m 80kg", situation(), "sled push 4×20 m at 80 kg", id="sled push 4x20m 80kg"),
        pytest.param("plank 2:00, 1:30", situation(), "plank 120 s, 90 s", id="plank 2:00, 1:30"),
        pytest.param("plank 3 x 1 min", situation(), "plank 3×60 s", id="plank 3 x 1 min"),
        pytest.param("wall sit 45", situation(), "wall sit 45 s", id="wall sit 45"),
        pytest.param("side plank 30s", situation(), "side plank 30 s", id="side plank 30s"),
        pytest.param("dead hang max 62s", situation(), "dead hang 62 s", id="dead hang max 62s"),
        pytest.param("bike 20 min", situation(), "no sets", id="bike 20 min"),
        pytest.param("rowed 2k in 8:10", situation(), "no sets", id="rowed 2k in 8:10"),
        pytest.param(
            "squat 3x5 100kg (220lb)", situation(), "barbell back squat 3×5 at 100 kg", id="squat 3x5 100kg (220lb)"
        ),
        pytest.param("bench 135lb 3x5", situation(), "barbell bench press 3×5 at 135 lb", id="bench 135lb 3x5"),
        pytest.param("bench 135 3x5", situation(unit="lb"), "barbell bench press 3×5 at 135 lb", id="bench 135 3x5"),
        pytest.param(
            "squat 2 plates 3x5", situation(unit="lb"), "barbell back squat 3×5 at 225 lb", id="squat 2 plates 3x5"
        ),
        pytest.param(
            "hip thrust 100kg 3 x 10 , last set 8",
            situation(),
            "barbell hip thrust 2×10 at 100 kg, 8 at 100 kg",
            id="hip thrust 100kg 3 x 10 , last set 8",
        ),
        pytest.param(
            "bench 3x8 70 last set only 6",
            situation(),
            "barbell bench press 2×8 at 70 kg, 6 at 70 kg",
            id="bench 3x8 70 last set only 6",
        ),
        pytest.param(
            "bench 3x8 70 (8,8,6)",
            situation(),
            "barbell bench press 2×8 at 70 kg, 6 at 70 kg",
            id="bench 3x8 70 (8,8,6)",
        ),
        pytest.param(
            "bench 3x8 70 got 8 8 6",
            situation(),
            "barbell bench press 2×8 at 70 kg, 6 at 70 kg",
            id="bench 3x8 70 got 8 8 6",
        ),
        pytest.param(
            "bench 4x8 60, failed last rep",
            situation(),
            "barbell bench press 3×8 at 60 kg, 7 at 60 kg missed",
            id="bench 4x8 60, failed last rep",
        ),
        pytest.param(
            "squat 3x5 100, missed last rep",
            situation(),
            "barbell back squat 2×5 at 100 kg, 4 at 100 kg missed",
            id="squat 3x5 100, missed last rep",
        ),
        pytest.param(
            "bench 80x5 miss on 5th", situation(), "barbell bench press 4 at 80 kg missed", id="bench 80x5 miss on 5th"
        ),
        pytest.param("snatch 60 miss 60 60x1", situation(), "ask: ", id="snatch 60 miss 60 60x1"),
        pytest.param(
            "c&j 80x1 85x1 90x0",
            situation(),
            "clean and jerk 1 at 80 kg, 1 at 85 kg, 0 at 90 kg missed",
            id="c&j 80x1 85x1 90x0",
        ),
        pytest.param(
            "bench 80 x 5 x 5 x 4",
            situation(),
            "barbell bench press 2×5 at 80 kg, 4 at 80 kg",
            id="bench 80 x 5 x 5 x 4",
        ),
        pytest.param(
            "bench 80 x5 x5 x4", situation(), "barbell bench press 2×5 at 80 kg, 4 at 80 kg", id="bench 80 x5 x5 x4"
        ),
        pytest.param("row 3x10 @ 60", situation(doing="barbell row"), "barbell row 3×10 at 60 kg", id="row 3x10 @ 60"),
        pytest.param("3*10*60 bench", situation(), "barbell bench press 3×10 at 60 kg", id="3*10*60 bench"),
        pytest.param(
            "Bench: 3 sets, 5 reps, 80kg",
            situation(),
            "barbell bench press 3×5 at 80 kg",
            id="Bench: 3 sets, 5 reps, 80kg",
        ),
        pytest.param(
            "bench 3sets 5reps 80kg", situation(), "barbell bench press 3×5 at 80 kg", id="bench 3sets 5reps 80kg"
        ),
        pytest.param(
            "bench press 80kgx5x3", situation(), "barbell bench press 3×5 at 80 kg", id="bench press 80kgx5x3"
        ),
        pytest.param("bench 80kg*5*3", situation(), "barbell bench press 3×5 at 80 kg", id="bench 80kg*5*3"),
        pytest.param(
            "squat: 100 kg: 5, 5, 5", situation(), "barbell back squat 3×5 at 100 kg", id="squat: 100 kg: 5, 5, 5"
        ),
        pytest.param("squat 100kg - 5/5/5", situation(), "barbell back squat 3×5 at 100 kg", id="squat 100kg - 5/5/5"),
        pytest.param("squat - 100kg - 3x5", situation(), "barbell back squat 3×5 at 100 kg", id="squat - 100kg - 3x5"),
        pytest.param("squat, 100kg, 3x5", situation(), "barbell back squat 3×5 at 100 kg", id="squat, 100kg, 3x5"),
        pytest.param("squat|100|3x5", situation(), "barbell back squat 3×5 at 100 kg", id="squat|100|3x5"),
        pytest.param("bench 3x10(60kg)", situation(), "barbell bench press 3×10 at 60 kg", id="bench 3x10(60kg)"),
        pytest.param("bench (3x10) 60", situation(), "barbell bench press 3×10 at 60 kg", id="bench (3x10) 60"),
        pytest.param(
            "incline db press 24s 10, 10, 9",
            situation(),
            "incline dumbbell bench press 2×10 at 24 kg each, 9 at 24 kg each",
            id="incline db press 24s 10, 10, 9",
        ),
        pytest.param(
            "db lunges 12s 3x10 each", situation(), "dumbbell lunge 3×10 at 12 kg each", id="db lunges 12s 3x10 each"
        ),
        pytest.param(
            "hammer curl 2x14kg 12 10 10",
            situation(),
            "hammer curl 12 at 14 kg each, 2×10 at 14 kg each",
            id="hammer curl 2x14kg 12 10 10",
        ),
        pytest.param("goblet squat 24kg 3x12", situation(), "goblet squat 3×12 at 24 kg", id="goblet squat 24kg 3x12"),
        pytest.param("kb swings 16kg 4x20", situation(), "kettlebell swing 4×20 at 16 kg", id="kb swings 16kg 4x20"),
        pytest.param(
            "ez curl 30 12/10/8",
            situation(),
            "ez-bar curl 12 at 30 kg, 10 at 30 kg, 8 at 30 kg",
            id="ez curl 30 12/10/8",
        ),
        pytest.param("cable row 55, 60, 65 x 10", situation(), "ask: ", id="cable row 55, 60, 65 x 10"),
        pytest.param(
            "pulldown 50/55/60 x 12/10/8",
            situation(),
            "lat pulldown 12 at 50 kg, 10 at 55 kg, 8 at 60 kg",
            id="pulldown 50/55/60 x 12/10/8",
        ),
        pytest.param(
            "leg ext 40 15, 50 12, 60 10",
            situation(),
            "leg extension 15 at 40 kg, 12 at 50 kg, 10 at 60 kg",
            id="leg ext 40 15, 50 12, 60 10",
        ),
        pytest.param(
            "leg ext 40-15, 50-12, 60-10",
            situation(),
            "leg extension 15 at 40 kg, 12 at 50 kg, 10 at 60 kg",
            id="leg ext 40-15, 50-12, 60-10",
        ),
        pytest.param(
            "bench 60 - 10, 70 - 8, 80 - 6",
            situation(),
            "barbell bench press 10 at 60 kg, 8 at 70 kg, 6 at 80 kg",
            id="bench 60 - 10, 70 - 8, 80 - 6",
        ),
        pytest.param(
            "bench 10 @ 60, 8 @ 70, 6 @ 80",
            situation(),
            "barbell bench press 10 at 60 kg, 8 at 70 kg, 6 at 80 kg",
            id="bench 10 @ 60, 8 @ 70, 6 @ 80",
        ),
        pytest.param(
            "bench 10@60 8@70 6@80",
            situation(),
            "barbell bench press 10 at 60 kg, 8 at 70 kg, 6 at 80 kg",
            id="bench 10@60 8@70 6@80",
        ),
        pytest.param("squat 3x3 @ 80%", situation(), "ask: barbell back squat 3×3", id="squat 3x3 @ 80%"),
        pytest.param("squat 80% 3x3", situation(), "ask: barbell back squat 3×3", id="squat 80% 3x3"),
        pytest.param(
            "3x8 rows at 60, then 3x12 curls at 25",
            situation(plan=[("barbell row", 3, 8, "60"), ("ez-bar curl", 3, 12, "25")]),
            "barbell row 3×8 at 60 kg; ez-bar curl 3×12 at 25 kg",
            id="3x8 rows at 60, then 3x12 curls at 25",
        ),
        pytest.param(
            "bench 80x5\nsame\nsame", situation(), "barbell bench press 3×5 at 80 kg", id="bench 80x5 / same / same"
        ),
        pytest.param(
            "bench 80x5 same again x2", situation(), "barbell bench press 3×5 at 80 kg", id="bench 80x5 same again x2"
        ),
        pytest.param(
            "bench 3x5 80kg. felt good. knee ok",
            situation(),
            "barbell bench press 3×5 at 80 kg",
            id="bench 3x5 80kg. felt good. knee ok",
        ),
        pytest.param(
            "squat 100x5 - left knee a bit achy",
            situation(),
            "barbell back squat 5 at 100 kg, pain",
            id="squat 100x5 - left knee a bit achy",
        ),
        pytest.param(
            "squat 100x5, back tight", situation(), "barbell back squat 5 at 100 kg, pain", id="squat 100x5, back tight"
        ),
        pytest.param(
            "bench 3x5 80 shoulders sore from sunday",
            situation(),
            "barbell bench press 3×5 at 80 kg",
            id="bench 3x5 80 shoulders sore from sunday",
        ),
        pytest.param(
            "deadlift 140x5 grip failing",
            situation(),
            "conventional deadlift 5 at 140 kg",
            id="deadlift 140x5 grip failing",
        ),
        pytest.param(
            "bench 80x3 spotter helped on last",
            situation(),
            "barbell bench press 3 at 80 kg",
            id="bench 80x3 spotter helped on last",
        ),
        pytest.param(
            "squat 3x5 100 20 min total",
            situation(),
            "barbell back squat 3×5 at 100 kg",
            id="squat 3x5 100 20 min total",
        ),
        pytest.param(
            "bench 3x5 80 in 12 minutes",
            situation(),
            "barbell bench press 3×5 at 80 kg",
            id="bench 3x5 80 in 12 minutes",
        ),
        pytest.param(
            "ohp 40x5 2nd set felt better",
            situation(),
            "barbell overhead press 5 at 40 kg",
            id="ohp 40x5 2nd set felt better",
        ),
        pytest.param("bench 80x5 pr!!", situation(), "barbell bench press 5 at 80 kg", id="bench 80x5 pr!!"),
        pytest.param("bench pr 100x1", situation(), "barbell bench press 1 at 100 kg", id="bench pr 100x1"),
        pytest.param("new squat pr 150x1", situation(), "barbell back squat 1 at 150 kg", id="new squat pr 150x1"),
        pytest.param("my squat: 100x5", situation(), "barbell back squat 5 at 100 kg", id="my squat: 100x5"),
        pytest.param("my bench 3x5 80", situation(), "barbell bench press 3×5 at 80 kg", id="my bench 3x5 80"),
        pytest.param("he did 3x5 80", situation(), "no sets", id="he did 3x5 80"),
        pytest.param(
            "we did squats 3x5 100", situation(), "barbell back squat 3×5 at 100 kg", id="we did squats 3x5 100"
        ),
        pytest.param("db curl 20sx10", situation(), "dumbbell curl 10 at 20 kg each", id="db curl 20sx10"),
        pytest.param(
            "squat barx10, 60x5",
            situation(),
            "barbell back squat 10 at 20 kg warmup, 5 at 60 kg",
            id="squat barx10, 60x5",
        ),
        pytest.param("bench 80kg x5 x5", situation(), "ask: barbell bench press 5×5 at 80 kg", id="bench 80kg x5 x5"),
        pytest.param("bench 3x5@80kg@8", situation(), "barbell bench press 3×5 at 80 kg RPE 8", id="bench 3x5@80kg@8"),
        pytest.param("bench 3x5 @80 @8", situation(), "barbell bench press 3×5 at 80 kg RPE 8", id="bench 3x5 @80 @8"),
        pytest.param(
            "bench 80 3x5 rir 2", situation(), "barbell bench press 3×5 at 80 kg 2 in reserve", id="bench 80 3x5 rir 2"
        ),
        pytest.param(
            "bench 5x80kg, 5x80kg", situation(), "barbell bench press 2×5 at 80 kg", id="bench 5x80kg, 5x80kg"
        ),
        pytest.param(
            "bench 80kg 5+5+4",
            situation(),
            "barbell bench press 5 at 80 kg, 5 at 80 kg rest-pause, 4 at 80 kg rest-pause",
            id="bench 80kg 5+5+4",
        ),
        pytest.param(
            "bench 80kg 5 + 5 + 4",
            situation(),
            "barbell bench press 5 at 80 kg, 5 at 80 kg rest-pause, 4 at 80 kg rest-pause",
            id="bench 80kg 5 + 5 + 4",
        ),
        pytest.param("pull ups 8+7+6", situation(), "pull-up 8, 7 rest-pause, 6 rest-pause", id="pull ups 8+7+6"),
        pytest.param(
            "bench 80 5,5,5,4", situation(), "barbell bench press 3×5 at 80 kg, 4 at 80 kg", id="bench 80 5,5,5,4"
        ),
        pytest.param("squat 100 3,3,3", situation(), "barbell back squat 3×3 at 100 kg", id="squat 100 3,3,3"),
        pytest.param(
            "bench 8x60kg 8x60kg 7x60kg",
            situation(),
            "barbell bench press 2×8 at 60 kg, 7 at 60 kg",
            id="bench 8x60kg 8x60kg 7x60kg",
        ),
        pytest.param("squat 4x5x100", situation(), "barbell back squat 4×5 at 100 kg", id="squat 4x5x100"),
        pytest.param(
            "dl 1x180 1x190", situation(), "conventional deadlift 1 at 180 kg, 1 at 190 kg", id="dl 1x180 1x190"
        ),
        pytest.param(
            "curl 12,5 3x12",
            situation(doing="dumbbell curl"),
            "dumbbell curl 3×12 at 12.5 kg each",
            id="curl 12,5 3x12",
        ),
        pytest.param(
            "curl 12,5kg 12 10 10",
            situation(doing="dumbbell curl"),
            "dumbbell curl 12 at 12.5 kg each, 2×10 at 12.5 kg each",
            id="curl 12,5kg 12 10 10",
        ),
        pytest.param(
            "press banca 60x10, 62,5x8, 65x6",
            situation(),
            "barbell bench press 10 at 60 kg, 8 at 62.5 kg, 6 at 65 kg",
            id="press banca 60x10, 62,5x8, 65x6",
        ),
        pytest.param(
            "Bankdrücken 60 10/10/8",
            situation(),
            "barbell bench press 2×10 at 60 kg, 8 at 60 kg",
            id="Bankdrücken 60 10/10/8",
        ),
        pytest.param(
            "Kniebeuge: 100kg 5-5-5", situation(), "barbell back squat 3×5 at 100 kg", id="Kniebeuge: 100kg 5-5-5"
        ),
        pytest.param(
            "3 x 12 lat pulldown @ 50", situation(), "lat pulldown 3×12 at 50 kg", id="3 x 12 lat pulldown @ 50"
        ),
        pytest.param(
            "lat pulldown 3 x 12 x 50 kg", situation(), "lat pulldown 3×12 at 50 kg", id="lat pulldown 3 x 12 x 50 kg"
        ),
        pytest.param(
            "shoulder press machine 40 12 12 10",
            situation(),
            "machine shoulder press 2×12 at 40 kg, 10 at 40 kg",
            id="shoulder press machine 40 12 12 10",
        ),
        pytest.param(
            "leg press: 3 sets of 15 reps with 120 kg",
            situation(),
            "leg press 3×15 at 120 kg",
            id="leg press: 3 sets of 15 reps with 120 kg",
        ),
        pytest.param("two sets of ten dips", situation(), "dip 2×10", id="two sets of ten dips"),
        pytest.param("twenty push ups", situation(), "push-up 20", id="twenty push ups"),
        pytest.param("pull-ups: 5 sets of 5", situation(), "pull-up 5×5", id="pull-ups: 5 sets of 5"),
        pytest.param(
            "5 sets pull-ups: 8,7,6,6,5", situation(), "pull-up 8, 7, 2×6, 5", id="5 sets pull-ups: 8,7,6,6,5"
        ),
        pytest.param("10 pull ups", situation(), "pull-up 10", id="10 pull ups"),
        pytest.param("10 pull ups 3 sets", situation(), "pull-up 3×10", id="10 pull ups 3 sets"),
        pytest.param("push ups 3 sets 15", situation(), "push-up 3×15", id="push ups 3 sets 15"),
        pytest.param(
            "bench 60kg 3 sets 8 reps", situation(), "barbell bench press 3×8 at 60 kg", id="bench 60kg 3 sets 8 reps"
        ),
        pytest.param(
            "bench 60kg 8 reps 3 sets", situation(), "barbell bench press 3×8 at 60 kg", id="bench 60kg 8 reps 3 sets"
        ),
        pytest.param(
            "squat 100 kg x 5 reps x 3 sets",
            situation(),
            "barbell back squat 3×5 at 100 kg",
            id="squat 100 kg x 5 reps x 3 sets",
        ),
        pytest.param("100kg squat 3x5", situation(), "barbell back squat 3×5 at 100 kg", id="100kg squat 3x5"),
        pytest.param("80kg bench press x 5", situation(), "barbell bench press 5 at 80 kg", id="80kg bench press x 5"),
        pytest.param(
            "bench 80kgs for a double", situation(), "barbell bench press 2 at 80 kg", id="bench 80kgs for a double"
        ),
        pytest.param(
            "front squat 3 triples at 90",
            situation(),
            "barbell front squat 3×3 at 90 kg",
            id="front squat 3 triples at 90",
        ),
        pytest.param(
            "db row 30 10/10 each side", situation(), "dumbbell row 2×10 at 30 kg each", id="db row 30 10/10 each side"
        ),
        pytest.param(
            "split squat 3x8/leg 16s",
            situation(doing="bulgarian split squat"),
            "bulgarian split squat 3×8 at 16 kg each",
            id="split squat 3x8/leg 16s",
        ),
        pytest.param(
            "lunges 20 each leg bw", situation(doing="walking lunge"), "walking lunge 20", id="lunges 20 each leg bw"
        ),
        pytest.param(
            "russian twist 3x20 10kg", situation(), "russian twist 3×20 at +10 kg", id="russian twist 3x20 10kg"
        ),
        pytest.param("cable crunch 45 3x15", situation(), "cable crunch 3×15 at 45 kg", id="cable crunch 45 3x15"),
        pytest.param("plank 3x1min", situation(), "plank 3×60 s", id="plank 3x1min"),
        pytest.param("hollow hold 3 x 30 sec", situation(), "hollow hold 3×30 s", id="hollow hold 3 x 30 sec"),
        pytest.param("box jump 5x5", situation(), "box jump 5×5", id="box jump 5x5"),
        pytest.param(
            "kb snatch 20kg 10/10",
            situation(),
            "ask: kettlebell snatch 10 at 20 kg | kettlebell snatch 2×10 at 20 kg",
            id="kb snatch 20kg 10/10",
        ),
        pytest.param("tgu 16kg 3 each side", situation(), "turkish get-up 3 at 16 kg", id="tgu 16kg 3 each side"),
        pytest.param("snatch 3x2 50", situation(), "snatch 3×2 at 50 kg", id="snatch 3x2 50"),
        pytest.param("power clean 5x3 @ 60", situation(), "power clean 5×3 at 60 kg", id="power clean 5x3 @ 60"),
        pytest.param("log press 60 3 3 3", situation(), "log press 3×3 at 60 kg", id="log press 60 3 3 3"),
        pytest.param("yoke 120kg 20m", situation(), "yoke walk 20 m at 120 kg", id="yoke 120kg 20m"),
        pytest.param(
            "thruster 40kg 21-15-9",
            situation(),
            "thruster 21 at 40 kg, 15 at 40 kg, 9 at 40 kg",
            id="thruster 40kg 21-15-9",
        ),
        pytest.param("wall sit 3x45", situation(), "wall sit 3×45 s", id="wall sit 3x45"),
    ],
)
def test_mixed_forms(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant
