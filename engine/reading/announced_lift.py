"""A lift named with no sets of it: "bench", "on to rows now", "rdl 80". It is the one that what follows is about.

announced = [ MOVES-ON ] name [ "next" | "now" | load ]        and nothing that says how it was, or that it is no more
load      = NUMBER, above what anyone does reps or with a unit  "105", "rdl 80": what the reps behind it are done with
"""

from __future__ import annotations

from engine.catalogue.catalogue import Catalogue
from engine.reading.entries.names import narrowed
from engine.reading.prepare import prepare
from engine.reading.values import Context
from engine.reading.words.cues import CUES_OF, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, Piece, Role, kinds_in_order
from engine.values.ids import ExerciseName
from engine.values.load import HEAVIEST, Load

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
    pieces = prepare(text, context, catalogue).spoken
    kinds = kinds_in_order(pieces)
    if kinds.count(K.NAME) != 1 or kinds.count(K.NUMBER) > 1 or not all(map(_may_stand_beside, pieces)):
        return ()
    return narrowed(pieces[kinds.index(K.NAME)].names, context)


def load_announced(text: str, context: Context, catalogue: Catalogue) -> Load | None:
    """The only number of such a message, or of one with nothing else in it, where it can be nothing but a load."""
    if len(text) > LONGEST:
        return None
    pieces = prepare(text, context, catalogue).spoken
    numbers = [piece for piece in pieces if piece.kind is K.NUMBER]
    if len(numbers) != 1 or not all(map(_may_stand_beside, pieces)):
        return None
    number = numbers[0]
    heavy = number.role is Role.LOAD or (number.role is Role.BARE and number.value > MOST_LOADED_REPS)
    return Load(number.value, number.unit or context.unit) if heavy and 0 < number.value < HEAVIEST else None


def _may_stand_beside(piece: Piece) -> bool:
    if piece.kind in (K.PLAIN, K.NOT_DATE, K.UNRELATED):
        return is_cued(piece.text, MOVING_ON)
    return piece.kind in BESIDE and "was" not in CUES_OF[piece.text]
