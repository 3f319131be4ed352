"""Sets beside a day that may be theirs, or of something else that is told: asked, and never today's in silence.

Behind sets of today a day of the week that comes sooner than it was last is rather ahead, "squat 3x5 100. bench friday
3x5 80" on a Thursday: those sets are left out, and the answer says so.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import date

from engine.reading.asking import SAY_IT_AGAIN
from engine.reading.days.day_pieces import PERHAPS
from engine.reading.prepare import Prepared
from engine.reading.talk.on_for_a_day import may_be_on_for_a_day
from engine.reading.values import Asked, Context, Doubt, Logged, Outcome, Reading, Unread
from engine.reading.wording import label_of
from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, kinds_in_order, places_of


def asked_if_that_day(outcome: Outcome, prepared: Prepared) -> Outcome:
    """The outcome, or the question whether the sets are of the day that is told beside them."""
    if isinstance(outcome, Logged) and outcome.days and may_be_on_for_a_day(prepared.spoken):
        return _asked_which(outcome, prepared)
    places = places_of(K.DATE, kinds_in_order(prepared.pieces))
    days = [prepared.pieces[at] for at in places]
    told = next((prepared.pieces[at] for at in places if _may_be_of_else(prepared.pieces, at)), None)
    if told is None or not isinstance(outcome, Logged | Asked):
        return outcome
    if outcome.on is None and (isinstance(outcome, Asked) or (not outcome.days and told.day is not None)):
        return outcome  # of today, whatever else is told of that day
    day = prepared.cleaned[told.start : told.end]
    readings = outcome.readings if isinstance(outcome, Asked) else (_reading(outcome),)
    lifts = {done.exercise for one in readings for done in one.sets}
    if len(days) > 1 or len(lifts) > 1 or len(readings) > 1 or outcome.on is None:
        question = f"Which sets are of {day}? Nothing is saved yet. {SAY_IT_AGAIN}"
        return Asked(question, (), Doubt.NUMBERS, "", None, outcome.note, outcome.pain, typed=day)
    question = f"Are these sets of {day}? {readings[0].label}. Nothing is saved yet."
    return Asked(question, readings, Doubt.DAY, "", outcome.on, outcome.note, outcome.pain, typed=day)


def _may_be_of_else(pieces: list[Piece], at: int) -> bool:
    """Whether the day may be of something else: it is marked so, or what is like such days stands behind it, "monday
    blues".
    """
    return pieces[at].told == PERHAPS or (at + 1 < len(pieces) and MOOD in CUES_OF[pieces[at + 1].text])


MOOD = "daymood"


def _asked_which(logged: Logged, prepared: Prepared) -> Asked:
    """ "squat 3x5 100, saturday i'm benching 100x2": which of the sets were done."""
    question = f"Which of these sets did you do? Nothing is saved yet. {SAY_IT_AGAIN}"
    return Asked(question, (), Doubt.NUMBERS, "", None, logged.note, logged.pain, typed=prepared.cleaned.strip())


def _reading(logged: Logged) -> Reading:
    return Reading(logged.sets, 1.0, label_of(logged.sets))


def without_a_day_ahead(logged: Logged, prepared: Prepared, context: Context) -> Logged:
    """The sets, without those at the end of the message whose day of the week is rather the next than the last one."""
    at = _day_of_the_week(prepared) if K.WEEKDAY in prepared.told else 0
    start = at
    while start and prepared.spoken[start - 1].kind not in CLAUSE_ENDS:
        start -= 1
    if not start:
        return logged
    today = context.now.date() if context.now else None
    kept = (
        _before_that_day(logged, prepared, at, today) if today else _before_its_lifts(logged, prepared.spoken[start:])
    )
    if not kept:
        return logged
    told = prepared.cleaned[prepared.spoken[start].start :].strip()
    left = Unread(told, f"{prepared.cleaned[prepared.spoken[at].start : prepared.spoken[at].end]} {STILL_TO_COME}")
    on = today if today is not None and logged.days[0] == today else None
    return replace(logged, sets=logged.sets[:kept], days=(), on=on, unread=(*logged.unread, left))


def _before_that_day(logged: Logged, prepared: Prepared, at: int, today: date) -> int:
    """How many sets stand before those of a day that comes sooner than it was; 0 where none are of such a day."""
    kept = next((place for place, day in enumerate(logged.days) if day not in (None, today)), 0)
    others = set(logged.days[kept:])
    if not kept or len(others) > 1 or not _comes_sooner(others.pop(), today):
        return 0
    # "today: squat 3x5 100", and on the next line "wed: bench 3x5 80"
    return 0 if logged.days[0] == today and _heads_a_line(prepared.spoken, at) else kept


def _before_its_lifts(logged: Logged, told: list[Piece]) -> int:
    """How many sets stand before those of the lifts that are told with a day, where no clock tells which day it is."""
    names = {name for piece in told if piece.kind is K.NAME for name in piece.names}
    kept = next((place for place, one in enumerate(logged.sets) if one.exercise in names), 0)
    return kept if kept and all(one.exercise in names for one in logged.sets[kept:]) else 0


OVER = frozenset((K.LAST, K.LAST_WEEKDAY, K.LAST_TIME, K.EARLIER))
CLAUSE_ENDS = frozenset((K.COMMA, K.STOP, K.LINE, K.THEN, K.AND))
LATE = frozenset(("did", "didso", "was", "were", "leftbehind"))
DAYS_OF_A_WEEK = 7
STILL_TO_COME = "may be still to come; if you did them, send these sets alone"


def _heads_a_line(pieces: list[Piece], at: int) -> bool:
    return pieces[at - 1].kind is K.LINE and kind_at(pieces, at + 1) in HEADING


HEADING = frozenset((K.COLON, K.LINE))


def _comes_sooner(day: date | None, today: date) -> bool:
    """Whether a day of last week is nearer as one of this week to come."""
    back = (today - day).days if day is not None else 0
    return DAYS_OF_A_WEEK // 2 < back < DAYS_OF_A_WEEK


def _day_of_the_week(prepared: Prepared) -> int:
    """The place of the only day of the week told, where no word says that its sets were done; 0 for none or more."""
    pieces = prepared.spoken
    places = [at for at, piece in enumerate(pieces) if piece.kind is K.WEEKDAY]
    if len(places) != 1 or places[0] == 0 or pieces[places[0] - 1].kind in OVER:
        return 0
    if "'" in prepared.cleaned[pieces[places[0]].start : pieces[places[0]].end]:
        return 0  # "friday's bench"
    told = [cue for piece in pieces[max(places[0] - NEAR, 0) : places[0] + NEAR] for cue in CUES_OF[piece.text]]
    return places[0] if LATE.isdisjoint(told) else 0


NEAR = 4
"""Words around a day that may say how late its sets are told. Common practice, no source."""
