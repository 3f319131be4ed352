"""Reps behind a load that was moved, and nobody said to what: asked at which load.

moved = "heavier now", then "4" | "heavier, 3 reps" | "lighter set of 10" | "added weight, got 3"
"""

from __future__ import annotations

from engine.reading.asking import question_of
from engine.reading.prepare import Prepared
from engine.reading.values import Asked, Context, Doubt, Logged, Reading
from engine.reading.wording import label_of
from engine.reading.words.cues import NO_CUES, cues_told
from engine.reading.words.kinds import K

AT_WHICH_LOAD = "at which load? Send it with its reps, as in 82.5x5"
OWN_LOAD = frozenset((K.TIMES, K.NAME, K.KG, K.LB, K.AT, K.WITH, K.SAME, K.BODY))


def asked_at_which_load(logged: Logged, prepared: Prepared, context: Context) -> Logged | Asked:
    """The sets, or the question at which load they were, where they would be at the one that no longer is."""
    if not context.recent or not OWN_LOAD.isdisjoint(prepared.told):
        return logged
    if not context.moved and not (K.NUMBER in prepared.told and _is_moved_beside(prepared)):
        return logged
    before = context.recent[-1].done
    carried = all(one.exercise == before.exercise and one.load == before.load for one in logged.sets)
    if not carried or before.load is None:
        return logged
    reading = (Reading(logged.sets, 1.0, label_of(logged.sets)),)
    asked = question_of(Doubt.WHICH_LOAD, "", reading)
    return Asked(
        asked, reading, Doubt.WHICH_LOAD, "", logged.on, logged.note, logged.pain, typed=prepared.cleaned.strip()
    )


def _is_moved_beside(prepared: Prepared) -> bool:
    """ "heavier, 3 reps", "a lighter one for 10", "more weight, 4": the load moved beside the reps, and to what is not
    said; how heavy it felt moves none.
    """
    pieces = prepared.spoken
    if len(pieces) > MOST_PIECES:
        return False
    told = [cues_told(prepared.cleaned[piece.start : piece.end].lower().split()) for piece in pieces]
    cues = NO_CUES.union(*told)
    by_weight = not cues.isdisjoint(OF_ITS_WEIGHT) and not cues.isdisjoint(CHANGED)
    return (by_weight or not cues.isdisjoint(BY_WORD)) and all(
        piece.kind in BESIDE or not of_it.isdisjoint(SAYING_SO) for piece, of_it in zip(pieces, told, strict=True)
    )


MOST_PIECES = 10
BY_WORD = frozenset(("heavier", "lighter"))
OF_ITS_WEIGHT = frozenset(("loadword", "weightword", "heavyword", "lightword"))
CHANGED = frozenset(("raised", "more", "fewer", "add", "loadlowered"))
SAYING_SO = BY_WORD | OF_ITS_WEIGHT | CHANGED
BESIDE = frozenset(
    (K.NUMBER, K.FILLER, K.COMMA, K.STOP, K.AND, K.THEN, K.FOR, K.GOT, K.REPS, K.SETS, K.OF, K.COLON, K.LINE, K.DASH)
)
