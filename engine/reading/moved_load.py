"""Reps behind a load that was moved, and nobody said to what: "heavier now", then "4": asked at which load."""

from __future__ import annotations

from engine.reading.asking import question_of
from engine.reading.prepare import Prepared
from engine.reading.values import Asked, Context, Doubt, Logged, Reading
from engine.reading.wording import label_of
from engine.reading.words.kinds import K

AT_WHICH_LOAD = "at which load? Send it with its reps, as in 82.5x5"
OWN_LOAD = frozenset((K.TIMES, K.NAME, K.KG, K.LB, K.AT, K.WITH, K.SAME, K.BODY))


def asked_at_which_load(logged: Logged, prepared: Prepared, context: Context) -> Logged | Asked:
    """The sets, or the question at which load they were, where they would be at the one that no longer is."""
    if not context.moved or not context.recent or not OWN_LOAD.isdisjoint(prepared.told):
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
