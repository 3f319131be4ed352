"""Loads without a unit behind sets of today that told another than the writer counts in: "185 lbs 3x8", then "190x6".

What is a leap up in her own unit and none in that of today's sets was meant in theirs; what is rather heavier in her
own, or a leap down, and less far in theirs is asked. All other loads stay in her own, whatever was told before.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from engine.reading.chunks.chunks import Chunks
from engine.reading.values import Context
from engine.reading.weighing.candidates import Candidate, candidates
from engine.reading.weighing.history import Known
from engine.reading.weighing.mixed_units import ALIKE, LEAP, OPEN
from engine.values.exercise import Exercise
from engine.values.load import Load, Unit


def told_in_another_unit(known: Known, context: Context) -> bool:
    """Whether today's latest load of the lift is in another unit than the writer counts in."""
    return known.today is not None and known.today.unit is not context.unit and known.today.amount > 0


def candidates_in_units_of_today(
    chunks: Chunks, exercise: Exercise, known: Known, context: Context
) -> tuple[list[Candidate], str]:
    """The ways to read these numbers for this exercise, and why the others do not fit; in the unit that is meant."""
    ways, why = candidates(chunks, exercise, known, context)
    if known.today is None or not told_in_another_unit(known, context):
        return ways, why
    usual = _times(ways, known.today)
    if usual is None or _is_likely(usual):
        return ways, why
    turned, _ = candidates(chunks, exercise, known, replace(context, unit=known.today.unit))
    other = _times(turned, known.today)
    if other is None or not _is_rather_in_the_other(usual, other):
        return ways, why
    if usual >= LEAP[1]:
        return turned, why
    return [one._replace(weight=OPEN, unplaced=True) for one in (*ways, *turned)], why


def unit_meant(amount: Decimal, today: Load | None, unit: Unit) -> Unit | None:
    """The unit of a load told alone by one who counts in `unit`, behind the load of today; None where it is open."""
    if today is None or today.unit is unit or today.amount <= 0 or amount <= 0:
        return unit
    usual, other = (Load(amount, one, today.basis).kilograms() / today.kilograms() for one in (unit, today.unit))
    if _is_likely(usual) or not _is_rather_in_the_other(usual, other):
        return unit
    return today.unit if usual >= LEAP[1] else None


def _is_likely(times: Decimal) -> bool:
    """Much the same, or less and no leap: people go back to lighter loads, and change the unit they count in."""
    return LEAP[0] < times <= ALIKE[1]


def _is_rather_in_the_other(usual: Decimal, other: Decimal) -> bool:
    """Whether it is no leap in the other unit, and less far from today's load than in the usual one."""
    return LEAP[0] <= other <= LEAP[1] and _far(other) < _far(usual)


def _far(times: Decimal) -> Decimal:
    """How far from today's load that is, up or down."""
    return max(times, 1 / times)


def _times(ways: Sequence[Candidate], today: Load) -> Decimal | None:
    """How many times today's load the heaviest of the likeliest way is; None where it has no load."""
    if not ways:
        return None
    likeliest = max(ways, key=lambda one: one.weight)
    loads = [done.load.kilograms() for done in likeliest.sets if done.load is not None]
    return max(loads) / today.kilograms() if loads and max(loads) > 0 else None
