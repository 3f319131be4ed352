"""today: the session of the day, or of a day named, with loads; today all: every lift of a long one."""

from __future__ import annotations

from datetime import date, datetime

from bot.recording import lifts_in_order
from bot.replies.receipt import Lift, so_far
from bot.replies.session import no_session, not_worked_out, session_card
from bot.sessions import session_of, session_on, spacing_cautions
from bot.turn import Turn
from bot.words import day_named
from engine.reading.values import Act

ALL = ("all", "everything", "every", "whole", "full", "rest")


def today(turn: Turn, act: Act) -> None:
    """Nothing; the session is said."""
    on = _day(turn, act)
    session = session_of(turn) if on == turn.today else session_on(turn, on)
    if session.broken:
        turn.say(not_worked_out())
        return
    if not session.prescriptions and session.sets_today and on == turn.today:
        lifts = lifts_in_order(record.done for record in session.sets_today)
        ahead = no_session(session.coming, on, turn.today, has_plan=session.plan is not None)
        turn.say(so_far([Lift(exercise, sets) for exercise, sets in lifts.items()], ahead.text))
        return
    if not session.prescriptions:
        turn.say(no_session(session.coming, on, turn.today, has_plan=session.plan is not None))
        return
    cautions = spacing_cautions(turn) if on == turn.today else ()
    every = any(word in ALL for word in act.text.casefold().split())
    turn.say(session_card(session, on, turn.today, cautions, every=every))


def _day(turn: Turn, act: Act) -> date:
    if isinstance(act.when, datetime):
        return act.when.date()
    return act.when or day_named(act.text, turn.today) or turn.today
