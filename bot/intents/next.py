"""next: the next set of the lift in hand, or the next lift."""

from __future__ import annotations

from bot.replies.session import all_done, next_set, no_session, not_worked_out
from bot.sessions import session_of
from bot.turn import Turn
from engine.reading.values import Act


def next_up(turn: Turn, act: Act) -> None:
    """Nothing; what comes next is said."""
    session = session_of(turn)
    following = session.following(session.latest_exercise)
    if following is not None:
        name = following.prescription.exercise
        turn.say(next_set(following, session.latest_exercise, session.slot_of(name), turn.catalogue.get(name)))
    elif session.broken:
        turn.say(not_worked_out())
    elif session.prescriptions:
        turn.say(all_done())
    else:
        turn.say(no_session(session.coming, turn.today, turn.today, has_plan=session.plan is not None))
