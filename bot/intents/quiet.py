"""quiet 22:00 7:30: when nothing unprompted is sent."""

from __future__ import annotations

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


def quiet(turn: Turn, act: Act) -> None:
    """Nothing; the quiet hours are set, or without any it is quiet from now on."""
    if not act.text.strip():
        silence(turn)
        return
    times = [time_named(found.group()) for found in CLOCK.finditer(act.text)]
    told = [one for one in times if one is not None]
    if len(told) != 2:
        turn.say(needs_quiet())
        return
    change = turn.begin(ChangeKind.SETTING, "the quiet hours")
    turn.store.settings.put(change, QUIET, [one.isoformat() for one in told])
    replan(turn)
    turn.say(quiet_set(told[0], told[1]))


def silence(turn: Turn) -> None:
    """Nothing; a rest that runs is stopped, else nothing unprompted is sent until she resumes."""
    if cancel_all(turn, REST):
        turn.say(stopped())
    else:
        pause(turn, Act("pause"))
