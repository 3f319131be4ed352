"""today: the session of the day, or of a day named, with loads."""

from __future__ import annotations

from datetime import date, datetime

from bot.replies.session import no_session, session_card
from bot.sessions import session_of, session_on, spacing_cautions
from bot.turn import Turn
from bot.words import day_named
from engine.reading.values import Act


def today(turn: Turn, act: Act) -> None:
    """Nothing; the session is said."""
    on = _day(turn, act)
    session = session_of(turn) if on == turn.today else session_on(turn, on)
    if not session.prescriptions:
        turn.say(no_session(session.coming, on, has_plan=session.plan is not None))
        return
    cautions = spacing_cautions(turn) if on == turn.today else ()
    turn.say(session_card(session, on, turn.today, cautions))


def _day(turn: Turn, act: Act) -> date:
    if isinstance(act.when, datetime):
        return act.when.date()
    return act.when or day_named(act.text, turn.today) or turn.today
