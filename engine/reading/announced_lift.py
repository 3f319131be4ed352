"""A lift named with no sets of it: "bench", "on to rows now", "rdl 80". It is the one that what follows is about.

announced = [ MOVES-ON ] name [ "next" | "now" | load ] [ NUMBER "sets" ]
            and nothing that says how it was, or that it is no more
The load that the reps behind it are done with is read in `announced_load.py`.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.catalogue.catalogue import Catalogue
from engine.reading.entries.names import narrowed
from engine.reading.prepare import prepare
from engine.reading.values import Context
from engine.reading.words.cues import CUES_OF, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role, kinds_in_order
from engine.values.ids import ExerciseName

LONGEST = 60
"""Letters; whoever writes more says something of the lift. Common practice, no source."""
BESIDE = frozenset(
    (K.NAME, K.FILLER, K.THEN, K.AND, K.STOP, K.COLON, K.DASH, K.COMMA, K.TODAY, K.LINE, K.NUMBER, K.KG, K.LB, K.AT,
     K.WITH, K.FIRST, K.DUMBBELL, K.BARBELL, K.CABLE, K.MACHINE, K.KETTLEBELL)
)  # fmt: skip
MOVING_ON = frozenset(("next", "moveson"))


def lift_announced(text: str, context: Context, catalogue: Catalogue) -> tuple[ExerciseName, ...]:
    """The exercises that the message may announce: several where the name is open, none where it announces none."""
    if len(text) > LONGEST:
        return ()
    return _announced(without_a_count(prepare(text, context, catalogue).spoken), context)


def announces_a_lift(pieces: Sequence[Piece], context: Context) -> bool:
    """Whether the pieces of a message name a lift, and perhaps its load and how many sets are to come."""
    return bool(_announced(without_a_count(pieces), context))


def _announced(pieces: Sequence[Piece], context: Context) -> tuple[ExerciseName, ...]:
    kinds = kinds_in_order(pieces)
    if kinds.count(K.NAME) != 1 or kinds.count(K.NUMBER) > 1 or not all(map(may_stand_beside, pieces)):
        return ()
    return narrowed(pieces[kinds.index(K.NAME)].names, context)


def sets_to_come(text: str, context: Context, catalogue: Catalogue) -> int:
    """How many sets the message announces with its lift; 0 where it does not tell."""
    pieces = prepare(text, context, catalogue).spoken if len(text) <= LONGEST else []
    counts = [int(piece.value) for piece in pieces if piece.kind is K.NUMBER and piece.role is Role.SETS]
    return counts[0] if len(counts) == 1 else 0


def without_a_count(pieces: Sequence[Piece]) -> Sequence[Piece]:
    """The pieces without how many sets are to come: "bench 80kg, 3 sets"."""
    counts = [at for at, piece in enumerate(pieces) if piece.kind is K.NUMBER and piece.role is Role.SETS]
    return [piece for at, piece in enumerate(pieces) if at not in counts] if len(counts) == 1 else pieces


def may_stand_beside(piece: Piece) -> bool:
    """Whether the piece says nothing beside the lift or the load that is announced."""
    if piece.kind in (K.PLAIN, K.NOT_DATE, K.UNRELATED):
        return is_cued(piece.text, MOVING_ON)
    return piece.kind in BESIDE and "was" not in CUES_OF[piece.text]
