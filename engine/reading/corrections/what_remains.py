"""What a clause points at where one before it pointed at other sets: "the rest" is all but those."""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.corrections.parts import Part, part_told, sets_of
from engine.reading.values import Context
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece
from engine.values.sets import SetRecord


def part_of(clause: Sequence[Piece], context: Context, pointed: list[SetRecord], by_value: bool = False) -> Part:
    """What the clause points at; "the rest" is what none of the clauses before it pointed at."""
    part = part_told(clause, context, by_value=by_value)
    others = next((at for at, piece in enumerate(clause) if piece.kind is K.REMAINING), None)
    if others is not None:
        part.places = [record for record in sets_of(part, context) if record not in pointed]
        part.missing = not part.places
        counted = clause[others + 1 : others + 2]
        if counted and counted[0].kind is K.NUMBER and counted[0].spelled:
            part.used.append(counted[0])
            part.missing = part.missing or counted[0].value != len(part.places)
    pointed += part.places
    return part
