"""Words for getting warm behind several sets are of all of them; elsewhere a remark. Common practice, no source."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import readings, said

TOLD = """
leg press 40 for 10, 60 for 5 getting warm, then 80 for 5 => leg press 10 at 40 kg warmup, 5 at 60 kg warmup, 5 at 80 kg
rdl 40x8 then 60x8 to warm up then 90x8 => romanian deadlift 8 at 40 kg warmup, 8 at 60 kg warmup, 8 at 90 kg
squat 3x5 100 then 60x8 to warm up then 90x8 => barbell back squat 3×5 at 100 kg, 8 at 60 kg warmup, 8 at 90 kg
beinpresse 50x5, 80x3 um warm zu werden, dann 105x5 => leg press 5 at 50 kg warmup, 3 at 80 kg warmup, 5 at 105 kg
leg press 50x5, 80x3 pour chauffer, puis 105x5 => leg press 5 at 50 kg warmup, 3 at 80 kg warmup, 5 at 105 kg
panca 40x5, 60x3 per scaldarmi, poi 80x5 => barbell bench press 5 at 40 kg warmup, 3 at 60 kg warmup, 5 at 80 kg
leg press 50x5, 80x3 om op te warmen, dan 105x5 => leg press 5 at 50 kg warmup, 3 at 80 kg warmup, 5 at 105 kg
leg press 50x5, 80x3 na rozgrzanie, potem 105x5 => leg press 5 at 50 kg warmup, 3 at 80 kg warmup, 5 at 105 kg
leg press 50х5, 80х3 для разминки, потом 105х5 => leg press 5 at 50 kg warmup, 3 at 80 kg warmup, 5 at 105 kg
benpress 50x5, 80x3 för att bli varm, sedan 105x5 => leg press 5 at 50 kg warmup, 3 at 80 kg warmup, 5 at 105 kg
prensa 50x5, 80x3 para entrar en calor, luego 105x5 => leg press 5 at 50 kg warmup, 3 at 80 kg warmup, 5 at 105 kg
leg press 50x5, 80x3 para esquentar, depois 105x5 => leg press 5 at 50 kg warmup, 3 at 80 kg warmup, 5 at 105 kg
took ages to get warm, squat 3x5 100 => barbell back squat 3×5 at 100 kg
finally getting warm, squat 3x5 100 => barbell back squat 3×5 at 100 kg
squat 3x5 100 took ages to get warm => barbell back squat 3×5 at 100 kg
hard to get warm in this cold gym: squat 3x5 100 => barbell back squat 3×5 at 100 kg
warmed up with 60x8 and 70x5 on leg press then 85 for 6 => leg press 8 at 60 kg warmup, 5 at 70 kg warmup, 6 at 85 kg
aufgewärmt mit 60x8 und 70x5 beinpresse dann 85x6 => leg press 8 at 60 kg warmup, 5 at 70 kg warmup, 6 at 85 kg
warmed up with 60x5, squat 3x5 100 then 110x3 => barbell back squat 5 at 60 kg warmup, 3×5 at 100 kg, 3 at 110 kg
warmed up with 60x8 on bench then 85 for 6, twice => barbell bench press 8 at 60 kg warmup, 2×6 at 85 kg
bench 60x8, 85x6, twice => ask: barbell bench press 8 at 60 kg, 2×6 at 85 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(TOLD))
def test_words_for_getting_warm_speak_of_the_sets_before_them(text, context, meant) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("squat riscaldamento bilanciere x10, 50x5, poi 75x6", "10 at 20 kg warmup, 5 at 50 kg warmup, 6 at 75 kg"),
        (
            "squat riscaldamento con bilanciere vuoto x10, 50x5, poi 75x6",
            "10 at 20 kg warmup, 5 at 50 kg warmup, 6 at 75 kg",
        ),
        ("przysiad rozgrzewka sztanga x10, 50x5, potem 75x6", "10 at 20 kg warmup, 5 at 50 kg warmup, 6 at 75 kg"),
        ("riscaldamento squat bilanciere 40x10, poi 60x8", "10 at 40 kg warmup, 8 at 60 kg"),
        ("squat bilanciere 60x8", "8 at 60 kg"),
    ],
)
def test_a_barbell_behind_a_word_for_warming_up_is_the_empty_bar(text: str, meant: str) -> None:
    assert said(text) == f"barbell back squat {meant}"
