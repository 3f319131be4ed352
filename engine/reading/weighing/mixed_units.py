"""Which unit the loads without one have, where another of the same line tells its own: "225x5 then 105kg x 4".

A unit told once holds for the whole line, unless that makes a leap of it that the other unit does not: people change
the unit within a line. 225 beside 105 kg is pounds; 100 beside 225 lb is kilograms to whoever counts in them.
"""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from typing import NamedTuple

from engine.reading.chunks.chunks import Chunk, Chunks
from engine.reading.weighing.history import Known
from engine.reading.words.pieces import Piece, Role
from engine.values.load import KG_PER_LB, Unit

LEAST_LOAD = 30
"""A number up to this may count reps. Common practice, no source."""
LEAP = (Decimal("0.55"), Decimal("1.8"))
ALIKE = (Decimal("0.75"), Decimal("1.34"))
"""How many times the load beside it a load is, within one lift: outside of the first it is a leap, inside of the
second it is much the same. Common practice, no source.
"""
LAST_DIGIT_OF_A_BAR = 5
BARE_OR_LOAD = frozenset((Role.BARE, Role.LOAD))
SETTLED, OPEN = 1.0, 0.5


class Run(NamedTuple):
    """Loads without a unit that stand together, and those with one on either side of them."""

    bare: tuple[Piece, ...]
    beside: tuple[Piece, ...]
    ends: bool
    """Nothing heavier or lighter stands behind it: it may be what the sets before it led up to."""


def loads_in_mixed_units(chunks: Chunks) -> list[Piece]:
    """The loads, where one told its unit and another that can only be a load did not; none where all are alike."""
    if chunks.unit is None:
        return []
    loads = _loads(chunks)
    units = {one.unit for one in loads}
    return loads if len(units) > 1 and None in units else []


def with_units(chunks: Chunks, loads: Sequence[Piece], known: Known, unit: Unit) -> list[tuple[Chunks, float]]:
    """The chunks with a unit put to each of their loads, each with how likely it is; the writer counts in `unit`."""
    told = chunks.unit or unit
    changed: dict[int, Unit] = {}
    doubted: dict[int, Unit] = {}
    for run in _runs(loads):
        other = _other_unit(run, told, known)
        if other is not None:
            pounds = other is Unit.LB and all(map(_is_of_plates_in_pounds, run.bare))
            plain = other is unit or (pounds and not run.ends)
            (changed if plain else doubted).update((id(piece), other) for piece in run.bare)
    ways = [(_put(chunks, changed), OPEN if doubted else SETTLED)]
    if doubted:
        ways.append((_put(chunks, {**changed, **doubted}), OPEN))
    return ways


def _loads(chunks: Chunks) -> list[Piece]:
    """The numbers that can only be loads, in the order told."""
    told = [number for chunk in chunks.found for numbers in (*chunk.factors, chunk.at) for number in numbers]
    return [
        one
        for one in told
        if (one.value > LEAST_LOAD or (one.unit is not None and one.value > 0)) and one.role in BARE_OR_LOAD
    ]


def _runs(loads: Sequence[Piece]) -> list[Run]:
    runs: list[Run] = []
    at = 0
    while at < len(loads):
        end = at
        while end < len(loads) and loads[end].unit is None:
            end += 1
        beside = (*loads[max(0, at - 1) : at], *loads[end : end + 1])
        parts = _without_leaps(loads[at:end])
        ends = at > 0 and end >= len(loads)
        runs += [Run(tuple(part), beside, ends and part is parts[-1]) for part in parts]
        at = end + 1
    return runs


def _without_leaps(bare: Sequence[Piece]) -> list[list[Piece]]:
    """ "105kg x3, 225x5, 110x3": the 110 is no part of what the 225 is."""
    parts: list[list[Piece]] = []
    for piece in bare:
        if parts and piece.value >= parts[-1][-1].value * LEAP[0]:
            parts[-1].append(piece)
        else:
            parts.append([piece])
    return parts


def _other_unit(run: Run, told: Unit, known: Known) -> Unit | None:
    """The unit that the run has in spite of the one told beside it; None where it is that one."""
    heaviest = max(run.bare, key=lambda one: one.value).value
    other = Unit.LB if told is Unit.KG else Unit.KG
    beside = [_mass(one.value, one.unit or told) for one in run.beside]
    lifted = known.load.kilograms() if known.load is not None else Decimal(0)
    near = [*beside, lifted] if lifted > 0 else beside
    if any(LEAP[0] <= _mass(heaviest, told) / one <= LEAP[1] for one in near):
        return None
    return other if any(ALIKE[0] <= _mass(heaviest, other) / one <= ALIKE[1] for one in beside) else None


def _mass(amount: Decimal, unit: Unit) -> Decimal:
    """In kilograms; of any number, also of one that is no load."""
    return amount if unit is Unit.KG else amount * KG_PER_LB


def _is_of_plates_in_pounds(piece: Piece) -> bool:
    """135, 225, 315: a bar of 45 lb with plates in steps of five a side, and no load that kilograms come to."""
    return piece.value % 10 == LAST_DIGIT_OF_A_BAR


def _put(chunks: Chunks, units: dict[int, Unit]) -> Chunks:
    found = [_with_units(chunk, units) for chunk in chunks.found] if units else chunks.found
    other = chunks.with_found(found)
    other.mixed_units = False
    return other


def _with_units(chunk: Chunk, units: dict[int, Unit]) -> Chunk:
    def put(numbers: tuple[Piece, ...]) -> tuple[Piece, ...]:
        return tuple(one._replace(unit=units[id(one)]) if id(one) in units else one for one in numbers)

    other = chunk.copy()
    other.factors = [put(numbers) for numbers in chunk.factors]
    if chunk.at:
        other.at = put(chunk.at)
    return other
