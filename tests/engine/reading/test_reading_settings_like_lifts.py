"""A name with a number alone behind whole sets may be the setting of a bench or a cable. Common practice, no source."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import readings, said

BENCH = "barbell bench press 3×5 at 80 kg"
MAYBE = """
bench 3x5 80, incline 30
bench 3x5 80; incline 30
bench 3x5 80, decline 15
bench 3x5 80, bench 30
bankdrücken 3x5 80, schrägbank 30
press banca 3x5 80, inclinado 30
développé couché 3x5 80, incliné 30
panca piana 3x5 80, panca 30
supino 3x5 80, inclinado 30
bänkpress 3x5 80, bänk 30
"""


@pytest.mark.parametrize("text", MAYBE.strip().splitlines())
def test_the_angle_of_a_bench_is_no_second_lift_unasked(text) -> None:
    told = said(text)

    assert told.startswith(f"ask: {BENCH} | ")


TOLD = """
cable fly 3x12 15, pulley 8 => ask: cable fly 3×12 at 15 kg | cable fly 3×12 at 15 kg; seated cable row 8
face pull 3x15 20 rope 8 => ask: face pull 3×15 at 20 kg | face pull 3×15 at 20 kg; rope pushdown 8
squat 3x5 100, bench 5 => barbell back squat 3×5 at 100 kg; barbell bench press 5
bench 3x5 80, incline 60x8 => barbell bench press 3×5 at 80 kg; incline barbell bench press 8 at 60 kg
bench 3x5 80, incline 60 8 8 => barbell bench press 3×5 at 80 kg; incline barbell bench press 2×8 at 60 kg
leg press 3x10 150 seat 4 => leg press 3×10 at 150 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(TOLD))
def test_settings_and_lifts_are_told_apart_or_asked(text, context, meant) -> None:
    assert said(text, context) == meant
