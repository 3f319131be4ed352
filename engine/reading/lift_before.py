"""A set told without a name that is like the latest one of the lift before, and far from those of the lift in hand.

"60x8" behind "bench 60x8" and "leg press 100x10" may be of either, as when two lifts are done in turn: it is asked.
So it is where the word for the lift may say what is to be done with the set: "log 85x6" behind bench sets.
Thresholds are common practice, no source.
"""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal

from engine.reading.asking import question_of
from engine.reading.prepare import Prepared
from engine.reading.values import Asked, Context, Doubt, Logged, Reading
from engine.reading.wording import label_of
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.values.load import Load
from engine.values.sets import SetDone

PLAIN = frozenset((K.NUMBER, K.TIMES, K.FILLER, K.COMMA, K.STOP, K.KG, K.LB, K.FOR, K.AT, K.REPS, K.NOTE, K.EFFORT))
FAR_FROM_THE_LIFT, APART_FROM_THE_LIFT = Decimal("1.33"), Decimal("1.15")
NEAR_THE_OTHER, MOST_REPS_APART = Decimal("1.05"), 2


def asked_if_other_lift(logged: Logged, prepared: Prepared, context: Context) -> Logged | Asked:
    """The sets, or the question whether they are of the lift before."""
    if context.recent and K.NAME in prepared.told:
        return _asked_if_a_verb(logged, prepared, context)
    if not context.recent or context.named or K.NUMBER not in prepared.told or not prepared.told <= PLAIN:
        return logged
    before = _before(context)
    latest, first = context.recent[-1].done, logged.sets[0]
    if before is None or {one.exercise for one in logged.sets} != {latest.exercise} or latest.exercise != context.doing:
        return logged
    if not _is_like(first, before, latest):
        return logged
    others = tuple(replace(one, exercise=before.exercise, load=_on_its_basis(one, before)) for one in logged.sets)
    return _which(logged, others)


def _which(logged: Logged, others: tuple[SetDone, ...]) -> Asked:
    told = (logged.sets, others)
    readings = tuple(Reading(sets, 1 / len(told), label_of(sets, told)) for sets in told)
    question = question_of(Doubt.EXERCISE, "", readings)
    return Asked(question, readings, Doubt.EXERCISE, "", logged.on, logged.note, logged.pain)


def _asked_if_a_verb(logged: Logged, prepared: Prepared, context: Context) -> Logged | Asked:
    """ "log 85x6" behind sets of the bench: that lift, or what is to be done with the set."""
    first, latest = prepared.spoken[0], context.recent[-1]
    if first.kind is not K.NAME or not is_cued(first.text, SETTING) or context.now is None:
        return logged
    named = {one.exercise for one in logged.sets}
    planned = any(slot.exercise in named for slot in context.plan)
    if planned or len(named) > 1 or latest.done.exercise in named or latest.on != context.now.date():
        return logged
    before = latest.done
    others = tuple(
        replace(one, exercise=before.exercise, load=_on_its_basis(one, before) or before.load) for one in logged.sets
    )
    return _which(logged, others)


SETTING = frozenset(("settingto",))


def _before(context: Context) -> SetDone | None:
    """The latest set of today of another lift."""
    latest = context.recent[-1]
    today = (one for one in reversed(context.recent) if one.on == latest.on)
    return next((one.done for one in today if one.done.exercise != latest.done.exercise), None)


def _is_like(told: SetDone, before: SetDone, latest: SetDone) -> bool:
    if told.seconds is not None or told.metres is not None or before.seconds is not None or before.metres is not None:
        return False
    loads = [_kilograms(one.load) for one in (told, before, latest)]
    if not all(loads):
        return False
    new, other, in_hand = loads
    exactly = new == other and told.reps == before.reps
    apart = max(new / in_hand, in_hand / new)
    near = max(new / other, other / new) <= NEAR_THE_OTHER and abs(told.reps - before.reps) <= MOST_REPS_APART
    return (exactly and apart >= APART_FROM_THE_LIFT) or (near and apart >= FAR_FROM_THE_LIFT)


def _kilograms(load: Load | None) -> Decimal:
    return abs(load.kilograms()) if load is not None else Decimal(0)


def _on_its_basis(done: SetDone, before: SetDone) -> Load | None:
    return replace(done.load, basis=before.load.basis) if done.load is not None and before.load is not None else None
