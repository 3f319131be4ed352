"""Body weight, dumbbells, sides, plates."""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import said, situation


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    [
        pytest.param("pull ups 9 8 8", situation(), "pull-up 9, 2×8", id="pull ups 9 8 8"),
        pytest.param("dips +15kg x 5", situation(), "dip 5 at +15 kg", id="dips +15kg x 5"),
        pytest.param(
            "weighted pull ups 15kg 5 5 4",
            situation(),
            "pull-up 2×5 at +15 kg, 4 at +15 kg",
            id="weighted pull ups 15kg 5 5 4",
        ),
        pytest.param("dips +17.5 4x6", situation(), "dip 4×6 at +17.5 kg", id="dips +17.5 4x6"),
        pytest.param(
            "bench +2.5 8 8 7",
            situation(last={"barbell bench press": "80"}),
            "barbell bench press 2×8 at 82.5 kg, 7 at 82.5 kg",
            id="bench +2.5 8 8 7",
        ),
        pytest.param("pull ups -15 x 8", situation(), "pull-up 8 at −15 kg", id="pull ups -15 x 8"),
        pytest.param("pull ups 15kg help 8 8", situation(), "pull-up 2×8 at −15 kg", id="pull ups 15kg help 8 8"),
        pytest.param(
            "pull ups with 10 assist 8 8 7",
            situation(),
            "pull-up 2×8 at −10 kg, 7 at −10 kg",
            id="pull ups with 10 assist 8 8 7",
        ),
        pytest.param("pull ups red band 10 8", situation(), "pull-up 10, 8", id="pull ups red band 10 8"),
        pytest.param("bw 77.2", situation(), "request: bodyweight", id="bw 77.2"),
        pytest.param(
            "weight 77.2 this morning, squat 3x5 100",
            situation(),
            "barbell back squat 3×5 at 100 kg",
            id="weight 77.2 this morning, squat 3x5 100",
        ),
        pytest.param(
            "lateral raises 15s x 12",
            situation(),
            "dumbbell lateral raise 12 at 15 kg each",
            id="lateral raises 15s x 12",
        ),
        pytest.param(
            "db press 36's x 8 8",
            situation(unit="lb"),
            "ask: dumbbell bench press 2×8 at 36 lb each | dumbbell shoulder press 2×8 at 36 lb each",
            id="db press 36's x 8 8",
        ),
        pytest.param(
            "KH-Schulterdrücken 28er 3x8",
            situation(),
            "dumbbell shoulder press 3×8 at 28 kg each",
            id="KH-Schulterdrücken 28er 3x8",
        ),
        pytest.param(
            "carries 24s 30m",
            situation(doing="farmer's walk"),
            "farmer's walk 30 m at 24 kg each",
            id="carries 24s 30m",
        ),
        pytest.param(
            "farmers walk 24s 30m x3", situation(), "farmer's walk 3×30 m at 24 kg each", id="farmers walk 24s 30m x3"
        ),
        pytest.param("bss 18e x 9", situation(), "bulgarian split squat 9 at 18 kg each", id="bss 18e x 9"),
        pytest.param(
            "db bench 27.5 each hand 3x8",
            situation(),
            "dumbbell bench press 3×8 at 27.5 kg each",
            id="db bench 27.5 each hand 3x8",
        ),
        pytest.param(
            "Seitheben 3x12 je 8kg", situation(), "dumbbell lateral raise 3×12 at 8 kg each", id="Seitheben 3x12 je 8kg"
        ),
        pytest.param(
            "curl con mancuernas 3x10 12kg por brazo",
            situation(),
            "dumbbell curl 3×10 at 12 kg each",
            id="curl con mancuernas 3x10 12kg por brazo",
        ),
        pytest.param(
            "db curl 2x20kg 10 9 8",
            situation(),
            "dumbbell curl 10 at 20 kg each, 9 at 20 kg each, 8 at 20 kg each",
            id="db curl 2x20kg 10 9 8",
        ),
        pytest.param("kb swing 2x24k x 10", situation(), "kettlebell swing 10 at 24 kg", id="kb swing 2x24k x 10"),
        pytest.param(
            "db bench 2x28 9/8/7",
            situation(),
            "dumbbell bench press 9 at 28 kg each, 8 at 28 kg each, 7 at 28 kg each",
            id="db bench 2x28 9/8/7",
        ),
        pytest.param(
            "db press total 48 (24s) 10 10",
            situation(doing="dumbbell bench press"),
            "dumbbell bench press 2×10 at 24 kg each",
            id="db press total 48 (24s) 10 10",
        ),
        pytest.param(
            "bss 3x8 per leg 20kg", situation(), "bulgarian split squat 3×8 at 20 kg each", id="bss 3x8 per leg 20kg"
        ),
        pytest.param(
            "lunge 3x10/side 16s",
            situation(doing="dumbbell lunge"),
            "dumbbell lunge 3×10 at 16 kg each",
            id="lunge 3x10/side 16s",
        ),
        pytest.param(
            "bss 20kg 10/10",
            situation(),
            "ask: bulgarian split squat 10 at 20 kg each | bulgarian split squat 2×10 at 20 kg each",
            id="bss 20kg 10/10",
        ),
        pytest.param("side plank 6L 6R", situation(), "side plank 6 s left, 6 s right", id="side plank 6L 6R"),
        pytest.param(
            "sa row 30kg 10L 9R",
            situation(doing="dumbbell row"),
            "dumbbell row 10 at 30 kg each left, 9 at 30 kg each right",
            id="sa row 30kg 10L 9R",
        ),
        pytest.param(
            "bss L 8 R 7 20kg",
            situation(),
            "bulgarian split squat 8 at 20 kg each left, 7 at 20 kg each right",
            id="bss L 8 R 7 20kg",
        ),
        pytest.param("bench 2 plates x 5", situation(), "barbell bench press 5 at 100 kg", id="bench 2 plates x 5"),
        pytest.param(
            "deadlift 3 plates a side x 5",
            situation(),
            "conventional deadlift 5 at 140 kg",
            id="deadlift 3 plates a side x 5",
        ),
        pytest.param(
            "bench 35 a side x 8",
            situation(),
            "ask: barbell bench press 8 at 35 kg | barbell bench press 8 at 90 kg",
            id="bench 35 a side x 8",
        ),
        pytest.param(
            "leg press 3 plates 3x10",
            situation(),
            "ask: leg press 3×10 | leg press 3×10 at 120 kg",
            id="leg press 3 plates 3x10",
        ),
        pytest.param("lat pulldown pin 5 3x12", situation(), "ask: lat pulldown 3×12", id="lat pulldown pin 5 3x12"),
        pytest.param("sit ups with a 10kg plate 3x12", situation(), "sit-up 3×12 at +10 kg", id="a plate, then counts"),
        pytest.param("russian twists kb 16kg 3x20", situation(), "russian twist 3×20 at +16 kg", id="what is held"),
        pytest.param("lat pulldown plate 9 x 10", situation(), "ask: lat pulldown 10", id="lat pulldown plate 9 x 10"),
    ],
)
def test_body_weight_dumbbells_and_sides(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(
    "told", ["(i weigh 79kg)", ", i'm 79 kg", "(i'm 79kg now)", "im 81.5kg", "bw 79kg", "weighed in at 80.2kg"]
)
def test_what_she_weighs_is_no_load(told: str) -> None:
    assert said(f"push ups 20 18 16 {told}") == "push-up 20, 18, 16"


def test_a_load_behind_i_am_stays_a_load() -> None:
    assert said("bench i'm at 80kg 3x5") == "barbell bench press 3×5 at 80 kg"
