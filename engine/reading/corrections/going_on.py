"""A correction that goes on in the next message: "make that 45", then "and only 9 reps", "and 10 reps, cant type".

told = "and" [ "only" ] ( reps | load ) [ cut talk ]

It is of the set that was put right, as long as that is the latest; of several sets it is open which.
"""

from __future__ import annotations

from engine.reading.corrections.correcting import Told
from engine.reading.latest_sets import latest_of_it
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Role

CLAUSE_ENDS = frozenset((K.COMMA, K.STOP, K.DASH))
GOING_ON = frozenset((K.ONLY, K.NUMBER, K.REPS, K.FILLER, K.GOT, K.FOR, K.AT, K.KG, K.LB))
ASIDE = CLAUSE_ENDS | {K.PLAIN, K.FILLER, K.NOTE, K.UNRELATED, K.NEVER, K.TODAY, K.SAYING, K.ASKS}


def goes_on_with_it(told: Told) -> bool:
    """Whether the set that was put right is put right once more."""
    if not goes_on(told):
        return False
    latest = latest_of_it(told.context)
    counted = latest[-1].done.seconds is None and latest[-1].done.metres is None
    return K.ONLY in told.kinds() or (len(latest) == 1 and (counted or told.numbers()[0].role is not Role.REPS))


def goes_on(told: Told) -> bool:
    """Whether reps or a load are told with "and" behind a correction, and no set of their own."""
    if not (told.joined and told.context.amended) or len(told.numbers()) != 1:
        return False
    kinds = [piece.kind for piece in told.pieces]
    cut = next((at for at, kind in enumerate(kinds) if kind in CLAUSE_ENDS), len(kinds))
    said = kinds[:cut]
    counted = K.ONLY in said or K.REPS in said or told.numbers()[0].role in (Role.REPS, Role.LOAD)
    return counted and K.NUMBER in said and GOING_ON.issuperset(said) and ASIDE.issuperset(kinds[cut:])
