"""What a number was, told behind it: "55 was the weight", "10 is the reps"; or the reps of a load: "on the 80 i got 4".

value first = NUMBER [ unit ] "was" [ "the" ] ( load word | "reps" )
of a load   = "the" NUMBER ... GOT [ "only" ] NUMBER | GOT [ "only" ] NUMBER "on" "the" NUMBER       one that a set has
"""

from __future__ import annotations

from engine.catalogue.catalogue import Catalogue
from engine.reading.corrections.said_to_be import is_be
from engine.reading.prepare import Prepared, prepare
from engine.reading.values import Context
from engine.reading.words.cues import any_cued, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, Role

THE, LOAD = frozenset(("the",)), frozenset(("loadword",))
SHORTEST, LONGEST = 3, 4


def with_value_behind(prepared: Prepared, context: Context, catalogue: Catalogue) -> Prepared:
    """The message as "the weight was 55" tells it; as it is where it is no such message."""
    pieces = prepared.spoken
    if K.GOT in prepared.told:
        return _of_a_load(prepared, context, catalogue)
    if not SHORTEST <= len(pieces) <= LONGEST or pieces[0].kind is not K.NUMBER or not is_be(pieces[1]):
        return prepared
    named = pieces[-1].kind is K.REPS or is_cued(pieces[-1].text, LOAD)
    if not named or (len(pieces) == LONGEST and not is_cued(pieces[2].text, THE)):
        return prepared
    number = prepared.cleaned[pieces[0].start : pieces[0].end]
    said = prepared.cleaned[pieces[1].start : pieces[1].end]
    what = prepared.cleaned[pieces[2].start : pieces[-1].end]
    return prepare(f"{what} {said} {number}", context, catalogue)


def _of_a_load(prepared: Prepared, context: Context, catalogue: Catalogue) -> Prepared:
    """The message as "the 155 was 4" tells it."""
    pieces = prepared.spoken
    numbers = [at for at, piece in enumerate(pieces) if piece.kind is K.NUMBER]
    if len(numbers) != TWO or not OF_A_LOAD.issuperset([piece.kind for piece in pieces]) or not context.recent:
        return prepared
    pointed = [at for at in numbers if at and any_cued(pieces[at - 1].text.split()[-1:], THE)]
    if len(pointed) != 1:
        return prepared
    load, reps = pieces[pointed[0]], pieces[next(at for at in numbers if at not in pointed)]
    latest = context.recent[-1].done.exercise
    alike = [one.done.load for one in context.recent if one.done.exercise == latest and one.done.load is not None]
    stands = any(abs(one.amount) == load.value for one in alike)
    if not stands or reps.role is not Role.BARE or reps.value > MOST_LOADED_REPS:
        return prepared
    return prepare(f"the {load.value} was {reps.value}", context, catalogue)


TWO = 2
OF_A_LOAD = frozenset((K.NUMBER, K.FILLER, K.GOT, K.ONLY, K.KG, K.LB, K.FOR, K.WITH, K.AT, K.STOP, K.REPS))
