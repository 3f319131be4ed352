"""What holds where a line of a plan says nothing. Common practice, no source, all of it.

load          a body-weight, banded or timed exercise: none; a line with a percentage wave: what the wave says;
              else it is to be found
progression   reps: a load step; a rep range: double progression; maximum reps, or reps without any load: one rep more
              on each set; seconds or metres: none
step          2.5 kg or 5 lb on a bar, on body weight or in plates; 2 kg or 5 lb per hand; 4 kg or 5 lb for one
              implement; 5 kg or 10 lb on a stack
misses        three in a row, then down 10 %
back-offs     at 90 % of the top set
plan          8 weeks, no deload
basis         what the exercise is loaded with: the bar in all, per hand, the stack, added to body weight
"""

from __future__ import annotations

from collections.abc import Mapping
from decimal import Decimal

from engine.values.exercise import Exercise, Loading
from engine.values.load import Basis, Load, Unit

WEEKS = 8
MISSES = 3
RESET_SHARE = Decimal("0.10")
BACK_OFF_SHARE = Decimal("0.90")

STEPS: Mapping[Loading, Mapping[Unit, Decimal]] = {
    Loading.BAR: {Unit.KG: Decimal("2.5"), Unit.LB: Decimal(5)},
    Loading.PER_HAND: {Unit.KG: Decimal(2), Unit.LB: Decimal(5)},
    Loading.IMPLEMENT: {Unit.KG: Decimal(4), Unit.LB: Decimal(5)},
    Loading.STACK: {Unit.KG: Decimal(5), Unit.LB: Decimal(10)},
    Loading.PLATES: {Unit.KG: Decimal("2.5"), Unit.LB: Decimal(5)},
    Loading.BODY: {Unit.KG: Decimal("2.5"), Unit.LB: Decimal(5)},
    Loading.BAND: {Unit.KG: Decimal("2.5"), Unit.LB: Decimal(5)},
}

BASES: Mapping[Loading, Basis] = {
    Loading.BAR: Basis.TOTAL,
    Loading.PER_HAND: Basis.PER_HAND,
    Loading.IMPLEMENT: Basis.TOTAL,
    Loading.STACK: Basis.STACK,
    Loading.PLATES: Basis.TOTAL,
    Loading.BODY: Basis.BODY,
    Loading.BAND: Basis.TOTAL,
}


def basis_of(exercise: Exercise) -> Basis:
    """What a bare number on this exercise counts."""
    return BASES[exercise.loading]


def step_of(exercise: Exercise, unit: Unit, basis: Basis) -> Load:
    """The step where a line names a rule and no step."""
    return Load(STEPS[exercise.loading][unit], unit, basis)
