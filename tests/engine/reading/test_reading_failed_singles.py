"""A failure mark on a single, and a miss of "the last one" behind reps that were told."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import readings, said, situation


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    readings("""
bench 115x1 F => barbell bench press 0 at 115 kg missed
bench 115x1 fail => barbell bench press 0 at 115 kg missed
bench 115 single fail => barbell bench press 0 at 115 kg missed
bench 115 for 1 fail => barbell bench press 0 at 115 kg missed
bench 115x1 fail 110x1 => barbell bench press 0 at 115 kg missed, 1 at 110 kg
squat 145x1 échec => barbell back squat 0 at 145 kg missed
squat 145x1 fallo => barbell back squat 0 at 145 kg missed
squat 145x1 falha => barbell back squat 0 at 145 kg missed
squat 145x1 Versagen => barbell back squat 0 at 145 kg missed
squat 145x1 falen => barbell back squat 0 at 145 kg missed
squat 145x1 отказ => barbell back squat 0 at 145 kg missed
squat 145x1 cedimento => barbell back squat 0 at 145 kg missed
squat 145x1 upadek => barbell back squat 0 at 145 kg missed
squat 145x1 muskelversagen => barbell back squat 0 at 145 kg missed
squat 145x1 до отказа => barbell back squat 1 at 145 kg to failure
squat 145x1 a cedimento => barbell back squat 1 at 145 kg to failure
squat 145x1 do upadku => barbell back squat 1 at 145 kg to failure
squat 100x5 отказ => barbell back squat 5 at 100 kg to failure
squat 100x5 upadek => barbell back squat 5 at 100 kg to failure
bench 115x1 to failure => barbell bench press 1 at 115 kg to failure
squat 145x1 al fallo => barbell back squat 1 at 145 kg to failure
bench 100x5 F => barbell bench press 5 at 100 kg to failure
bench 1x8 80 F => barbell bench press 8 at 80 kg to failure
pull ups 1 F => pull-up 1 to failure
ohp 40 5 5 3 missed the last one => barbell overhead press 2×5 at 40 kg, 3 at 40 kg missed
ohp 40 5 5 3 letzten nicht geschafft => barbell overhead press 2×5 at 40 kg, 3 at 40 kg missed
ohp 40 5 5 3 fallita l'ultima => barbell overhead press 2×5 at 40 kg, 3 at 40 kg missed
ohp 40 5 5 3 missed the last rep => barbell overhead press 2×5 at 40 kg, 2 at 40 kg missed
deadlift 145x1 missed the last one => conventional deadlift 0 at 145 kg missed
"""),
)
def test_of_a_failed_single_nothing_was_made_and_told_reps_were(text, context, meant) -> None:
    assert said(text, context) == meant


OPEN = """
bench 3x1 115 F
bench 1x115 fail
deadlift 145x5 missed the last one
deadlift 145x5 niet gehaald laatste
ohp 40 5 5 5 missed the last one
"""


@pytest.mark.parametrize("text", OPEN.strip().splitlines())
def test_which_try_was_missed_is_asked(text) -> None:
    assert said(text, situation()).startswith("ask")


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        (
            "squat 120 1 1 1 F",
            "ask: barbell back squat 2×1 at 120 kg, 0 at 120 kg missed | "
            "barbell back squat 2×1 at 120 kg, 1 at 120 kg to failure",
        ),
        ("snatch 60, 65, 70 F", "ask: snatch 1 at 60 kg, 1 at 65 kg, 1 at 70 kg to failure"),
        ("squat 120 3 2 1 F", "barbell back squat 3 at 120 kg, 2 at 120 kg, 1 at 120 kg to failure"),
        ("push ups 40 35 31 F", "push-up 40, 35, 31 to failure"),
        ("squat 120 1 1 1 to failure", "barbell back squat 2×1 at 120 kg, 1 at 120 kg to failure"),
    ],
)
def test_a_mark_behind_several_singles_may_be_a_miss(text, meant) -> None:
    assert said(text) == meant
