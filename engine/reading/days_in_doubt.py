"""Sets beside a day that may be theirs, or of something else that is told: asked, and never today's in silence."""

from __future__ import annotations

from engine.reading.asking import SAY_IT_AGAIN
from engine.reading.days.day_pieces import PERHAPS
from engine.reading.prepare import Prepared
from engine.reading.values import Asked, Doubt, Logged, Outcome, Reading
from engine.reading.wording import label_of
from engine.reading.words.kinds import K


def asked_if_that_day(outcome: Outcome, prepared: Prepared) -> Outcome:
    """The outcome, or the question whether the sets are of the day that is told beside them."""
    days = [piece for piece in prepared.pieces if piece.kind is K.DATE]
    told = next((one for one in days if one.told == PERHAPS), None)
    if told is None or not isinstance(outcome, Logged | Asked):
        return outcome
    if isinstance(outcome, Asked) and outcome.on is None:
        return outcome
    day = prepared.cleaned[told.start : told.end]
    readings = outcome.readings if isinstance(outcome, Asked) else (_reading(outcome),)
    lifts = {done.exercise for one in readings for done in one.sets}
    if len(days) > 1 or len(lifts) > 1 or len(readings) > 1 or outcome.on is None:
        question = f"Which sets are of {day}? Nothing is saved yet. {SAY_IT_AGAIN}"
        return Asked(question, (), Doubt.NUMBERS, "", None, outcome.note, outcome.pain, typed=day)
    question = f"Are these sets of {day}? {readings[0].label}. Nothing is saved yet."
    return Asked(question, readings, Doubt.DAY, "", outcome.on, outcome.note, outcome.pain, typed=day)


def _reading(logged: Logged) -> Reading:
    return Reading(logged.sets, 1.0, label_of(logged.sets))
