"""Reps alone behind a lift that was announced with its sets: of all of them, or of the first."""

from __future__ import annotations

from engine.reading.asking import question_of
from engine.reading.prepare import Prepared
from engine.reading.values import Asked, Context, Doubt, Logged, Reading
from engine.reading.wording import label_of
from engine.reading.words.kinds import K

REPS_ALONE = frozenset((K.NUMBER, K.REPS, K.OF, K.FILLER, K.STOP, K.AT, K.KG, K.LB, K.NAME, K.FOR))


def asked_how_many(logged: Logged, prepared: Prepared, context: Context) -> Logged | Asked:
    """The set; or, behind "bench 80kg, 3 sets", whether "8" tells the reps of all of them or of the first."""
    alone = len(logged.sets) == 1 and logged.sets[0].exercise == context.doing
    if context.to_come <= 1 or not alone or not prepared.told <= REPS_ALONE:
        return logged
    both = (logged.sets, logged.sets * context.to_come)
    readings = tuple(Reading(sets, 0.5, label_of(sets, both)) for sets in both)
    asked, typed = question_of(Doubt.NUMBERS, "", readings), prepared.cleaned.strip()
    return Asked(asked, readings, Doubt.NUMBERS, "", logged.on, logged.note, logged.pain, typed=typed)
