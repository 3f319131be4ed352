"""rest 2: a rest that ends with one message."""

from __future__ import annotations

from datetime import timedelta

from bot.replies.rest import resting, stopped
from bot.replies.trouble import needs
from bot.schedule import cancel_all, plan_one
from bot.scheduled.rest_over import REST
from bot.sessions import session_of
from bot.turn import Turn
from bot.words import seconds_named
from engine.reading.values import Act

DEFAULT = 120


def rest(turn: Turn, act: Act) -> None:
    """Nothing; the rest is running, or stopped."""
    if "stop" in act.text.casefold():
        skips = turn.inbound.text.casefold().strip().startswith("skip")
        left = skips and session_of(turn).next_up() is not None
        turn.say(stopped(ran=bool(cancel_all(turn, REST)), lifts_left=left))
        return
    seconds = seconds_named(act.text) if act.text.strip() else _planned(turn)
    if seconds is None:
        turn.say(needs("how long", "rest 2 min", "No rest set."))
        return
    rest_for(turn, seconds)


def rest_for(turn: Turn, seconds: int) -> None:
    """Nothing; the rest is running."""
    plan_one(turn, REST, turn.at + timedelta(seconds=seconds))
    turn.say(resting(seconds, turn.now + timedelta(seconds=seconds)))


def _planned(turn: Turn) -> int:
    session = session_of(turn)
    slot = session.slot_of(session.latest_exercise) if session.latest_exercise else None
    return slot.rest_seconds if slot is not None and slot.rest_seconds else DEFAULT
