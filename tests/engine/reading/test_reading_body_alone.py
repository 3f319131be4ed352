"""Lifts done with the body alone that are loaded otherwise, and numbers that tell which of several lifts it was."""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import readings, said

ALONE = """
standing calf raises bw 4x15 => standing calf raise 4×15
{last: standing calf raise 70} standing calf raises bw 4x15 => standing calf raise 4×15
standing calf raises bodyweight 22 20 17 => standing calf raise 22, 20, 17
standing calf raises bw+15 4x12 => standing calf raise 4×12 at +15 kg
hip thrusts unweighted 3x20 => barbell hip thrust 3×20
squats bw 3x25 => bodyweight squat 3×25
body weight squats 25 20 18 => bodyweight squat 25, 20, 18
rows bw 3x9 => inverted row 3×9
lunges bw 3x14 => ask: dumbbell lunge 3×14 | walking lunge 3×14
{last: barbell bench press 80} bench bw x 4 => ask:
{last: lat pulldown 55} lat pulldown bodyweight 3x8 => ask:
bw 79.4, squat 3x5 90 => barbell back squat 3×5 at 90 kg
"""
PLURAL = """
press 24s 3x11 => ask: dumbbell bench press 3×11 at 24 kg each | dumbbell shoulder press 3×11 at 24 kg each
{doing: dumbbell bench press} press 24s 3x11 => dumbbell bench press 3×11 at 24 kg each
{plan: dumbbell bench press 3 11 24} press 24s 3x11 => dumbbell bench press 3×11 at 24 kg each
row 28s 3x9 => dumbbell row 3×9 at 28 kg each
fly 14s 3x12 => dumbbell fly 3×12 at 14 kg each
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(ALONE))
def test_body_weight_told_is_no_load_where_the_lift_goes_without(text, context, meant) -> None:
    assert said(text, context).strip() == meant


def test_no_load_is_taken_from_the_last_time_for_a_lift_of_the_body() -> None:
    from engine.reading import read
    from engine.reading.values import Logged
    from engine.values.load import Basis
    from tests.engine.reading.saying import KNOWN, situation

    outcome = read("standing calf raises bw 4x15", situation(last={"standing calf raise": "70"}), KNOWN)

    assert isinstance(outcome, Logged)
    assert {(one.load.amount, one.load.basis) for one in outcome.sets if one.load} == {(0, Basis.BODY)}


@pytest.mark.parametrize(("text", "context", "meant"), readings(PLURAL))
def test_a_pair_of_dumbbells_is_asked_among_all_lifts_of_the_name_with_dumbbells(text, context, meant) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    readings("""
dips 3x8 on the machine with 20 kg assistance => dip 3×8 at −20 kg
Dips 3x8 an der Maschine mit 20 kg Unterstützung => dip 3×8 at −20 kg
dips à la machine avec 20 kg d'aide 3x8 => dip 3×8 at −20 kg
dips 3x10 then 2x6 with +10 => dip 3×10, 2×6 at +10 kg
dips 3x12 then +10 2x8 => dip 3×12, 2×8 at +10 kg
dips 3x12, +10 2x8 => dip 3×12, 2×8 at +10 kg
dips 3x12 +10, 2x8 => dip 3×12 at +10 kg, 2×8
dips 12 12 then +10 8 8 => dip 2×12, 2×8 at +10 kg
pull ups 8, 8, then 6 with 10kg => pull-up 2×8, 6 at +10 kg
fondos 3x10 y luego 2x6 con +10 => dip 3×10, 2×6 at +10 kg
dip 3x10 poi 2x6 con +10 => dip 3×10, 2×6 at +10 kg
подтягивания 3х8, потом 2х5 +10 => pull-up 3×8, 2×5 at +10 kg
assisted pull ups 3x8 then 2x5 -20 => pull-up 3×8, 2×5 at −20 kg
"""),
)
def test_what_is_added_behind_then_is_not_of_the_sets_before(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant
