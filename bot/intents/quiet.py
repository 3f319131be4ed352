"""quiet 22:00 7:30, no messages after 21:00: when nothing unprompted is sent."""

from __future__ import annotations

from datetime import time

from bot.intents.pause import pause
from bot.preferences import QUIET
from bot.replies.reminders import needs_quiet, quiet_set
from bot.replies.rest import stopped
from bot.schedule import cancel_all, replan
from bot.scheduled.rest_over import REST
from bot.turn import Turn
from bot.words import CLOCK, time_named
from engine.reading.values import Act
from storage.records import ChangeKind

AFTER, BEFORE = "after ", "before "
"""How the reader says an hour on its own: the other end of the quiet stays as it is."""


def quiet(turn: Turn, act: Act) -> None:
    """Nothing; the quiet hours are set, or without any it is quiet from now on."""
    if not act.text.strip():
        silence(turn)
        return
    told = _hours(turn, act.text)
    if told is None:
        turn.say(needs_quiet(*turn.preferences.quiet))
        return
    change = turn.begin(ChangeKind.SETTING, "the quiet hours")
    turn.store.settings.put(change, QUIET, [one.isoformat() for one in told])
    replan(turn)
    turn.say(quiet_set(*told))


def _hours(turn: Turn, text: str) -> tuple[time, time] | None:
    """From when to when, where that can be told and is not the whole day."""
    times = [time_named(found.group()) for found in CLOCK.finditer(text)]
    told = [one for one in times if one is not None]
    start, end = turn.preferences.quiet
    if len(told) == 1 and text.startswith(AFTER):
        start = told[0]
    elif len(told) == 1 and text.startswith(BEFORE):
        end = told[0]
    elif len(told) == len((start, end)):
        start, end = told
    else:
        return None
    return (start, end) if start != end else None


def silence(turn: Turn) -> None:
    """Nothing; a rest that runs is stopped, else nothing unprompted is sent until she resumes."""
    if cancel_all(turn, REST):
        turn.say(stopped())
    else:
        pause(turn, Act("pause"))
