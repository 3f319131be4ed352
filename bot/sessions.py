"""The session of the day, looked up once a turn and again whenever the turn changes the log."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta
from zoneinfo import ZoneInfo

from bot.day_sessions import Session, session_at
from bot.turn import Turn
from engine.values.ids import ExerciseName
from engine.volume.session_work import FAMILIAR_DAYS, familiar, sessions_done, work_planned
from engine.volume.session_work import Session as Bout
from engine.volume.spacing import cautions_for
from engine.volume.swap_spacing import swap_advice

__all__ = ["Session", "forget_plan", "forget_session", "session_of", "session_on", "spacing_cautions", "swap_cautions"]

KEY = "session"
LOOK_BACK = timedelta(days=3)


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
    today = Bout("today", turn.at, work_planned(session.planned.day.slots, known=known))
    return [f"{one.reason} {one.remedy}" for one in cautions_for(today, bouts, turn.catalogue.exercises)]


def swap_cautions(turn: Turn, exercise: ExerciseName, to: ExerciseName) -> Sequence[str]:
    """What a swap would bring too close to the days before, in words; empty where nothing."""
    session = session_of(turn)
    if session.planned is None:
        return ()
    bouts, known = _days_before(turn)
    today = Bout("today", turn.at, work_planned(session.planned.day.slots, known=known))
    exercises = turn.catalogue.exercises
    candidates = exercises[exercise].swaps if exercise in exercises else ()
    advice = swap_advice([*bouts, today], len(bouts), exercise, to, exercises, candidates, known)
    return (advice.text,) if advice.text else ()


def _days_before(turn: Turn) -> tuple[Sequence[Bout], frozenset[ExerciseName]]:
    """The sessions of the last days as done, and the exercises she is used to."""
    yesterday = turn.today - timedelta(days=1)
    log = turn.store.sets.between(turn.athlete, turn.today - timedelta(days=FAMILIAR_DAYS), yesterday)
    known = familiar(log, turn.today)
    past = [record for record in log if record.on >= turn.today - LOOK_BACK]
    return sessions_done(past, ZoneInfo(turn.preferences.zone), known=known), known
