"""Sets found by their numbers: those at a load, the only one with these reps, the heaviest, the lightest."""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.pieces import Piece, Role
from engine.values.sets import SetRecord


def having(number: Piece, group: Sequence[SetRecord]) -> list[SetRecord]:
    """The sets at this load, or the only one with these reps."""
    at_load = [
        record
        for record in group
        if record.done.load is not None
        and abs(record.done.load.amount) == number.value != 0
        and number.unit in (None, record.done.load.unit)
    ]
    if at_load or number.role in (Role.LOAD, Role.SETS):
        return at_load
    alike = [record for record in group if number.value in (record.done.reps, record.done.seconds, record.done.metres)]
    return alike if len(alike) == 1 or number.role is Role.PLURAL else []


def at_the_extreme(group: Sequence[SetRecord], *, heaviest: bool) -> list[SetRecord]:
    """The sets at the greatest load, or at the least; none where a load is not known."""
    loads = [record.done.load.kilograms() for record in group if record.done.load is not None]
    wanted = (max(loads) if heaviest else min(loads)) if len(loads) == len(group) and loads else None
    return [record for record in group if record.done.load is not None and record.done.load.kilograms() == wanted]
