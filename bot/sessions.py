"""The session of the day, looked up once a turn and again whenever the turn changes the log."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta
from zoneinfo import ZoneInfo

from bot.day_sessions import Session, session_at
from bot.moved_days import days_between
from bot.replies.choices import TODAY
from bot.replies.dates import day
from bot.session_frames import facts_of
from bot.turn import Turn
from engine.values.ids import ExerciseName
from engine.volume.session_work import FAMILIAR_DAYS, familiar, sessions_done, work_planned
from engine.volume.session_work import Session as Bout
from engine.volume.spacing import cautions_for
from engine.volume.swap_spacing import SwapAdvice, swap_advice

__all__ = ["Session", "forget_plan", "forget_session", "session_of", "session_on", "spacing_cautions", "swap_advice_on"]

KEY = "session"
LOOK_BACK = timedelta(days=3)
"""How far a session reaches, back and ahead: after three days nothing is left to be careful of."""


def session_of(turn: Turn) -> Session:
    """Today's session."""
    if KEY not in turn.kept:
        turn.kept[KEY] = session_on(turn, turn.today)
    found: Session = turn.kept[KEY]
    return found


def session_on(turn: Turn, on: date) -> Session:
    """Another day's session as the log stands now."""
    return session_at(turn.store, turn.memory, turn.athlete, on)


def forget_session(turn: Turn, *, earlier: bool = True) -> None:
    """Nothing; the log was changed, so the session is looked at anew; `earlier`: the log of days gone by too."""
    turn.kept.pop(KEY, None)
    if earlier:
        turn.store.kept.clear()


def forget_plan(turn: Turn) -> None:
    """Nothing; the plan, a choice, pain or a setting was changed, so all that follows from it is worked out anew."""
    turn.store.kept.clear()
    turn.forget_lookups()
    forget_session(turn)


def spacing_cautions(turn: Turn) -> Sequence[str]:
    """Where today's session comes too close to what the log says of the days before, the gravest first.

    Only what was really done counts: what the plan itself puts close together, `check` has told already.
    """
    session = session_of(turn)
    if session.planned is None or session.sets_today:
        return ()
    bouts, known = _days_before(turn)
    today = Bout(TODAY, turn.at, work_planned(session.planned.day.slots, known=known))
    return [f"{one.reason} {one.remedy}" for one in cautions_for(today, bouts, turn.catalogue.exercises)]


def swap_advice_on(turn: Turn, exercise: ExerciseName, to: ExerciseName) -> SwapAdvice:
    """What a swap today would bring too close to the days before, as done, or to the days ahead, as planned."""
    session = session_of(turn)
    if session.planned is None:
        return SwapAdvice((), ())
    bouts, known = _days_before(turn)
    today = Bout(TODAY, turn.at, work_planned(session.planned.day.slots, known=known))
    exercises = turn.catalogue.exercises
    candidates = [*(slot.swaps if (slot := session.slot_of(exercise)) is not None else ())]
    candidates += exercises[exercise].swaps if exercise in exercises else ()
    around = [*bouts, today, *_days_ahead(turn, session, known)]
    return swap_advice(around, len(bouts), exercise, to, exercises, tuple(dict.fromkeys(candidates)), known)


def _days_ahead(turn: Turn, session: Session, known: frozenset[ExerciseName]) -> Sequence[Bout]:
    """The sessions planned for the next days, at today's hour."""
    if session.in_force is None:
        return ()
    choices = facts_of(turn.store, turn.athlete, session.in_force, turn.today).choices
    ahead = days_between(session.in_force, choices, turn.today + timedelta(days=1), turn.today + LOOK_BACK)
    return [
        Bout(day(one.on, turn.today), turn.at + (one.on - turn.today), work_planned(one.day.slots, known=known))
        for one in ahead
        if one.on is not None
    ]


def _days_before(turn: Turn) -> tuple[Sequence[Bout], frozenset[ExerciseName]]:
    """The sessions of the last days as done, and the exercises she is used to."""
    yesterday = turn.today - timedelta(days=1)
    log = turn.store.sets.between(turn.athlete, turn.today - timedelta(days=FAMILIAR_DAYS), yesterday)
    known = familiar(log, turn.today)
    past = [record for record in log if record.on >= turn.today - LOOK_BACK]
    return sessions_done(past, ZoneInfo(turn.preferences.zone), known=known), known
