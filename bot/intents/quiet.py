"""quiet 22:00 7:30: when nothing unprompted is sent."""

from __future__ import annotations

from bot.preferences import QUIET
from bot.replies.reminders import needs_quiet, quiet_set
from bot.turn import Turn
from bot.words import CLOCK, time_named
from engine.reading.values import Act
from storage.records import ChangeKind


def quiet(turn: Turn, act: Act) -> None:
    """Nothing; the quiet hours are set."""
    times = [time_named(found.group()) for found in CLOCK.finditer(act.text)]
    told = [one for one in times if one is not None]
    if len(told) != 2:
        turn.say(needs_quiet())
        return
    change = turn.begin(ChangeKind.SETTING, "the quiet hours")
    turn.store.settings.put(change, QUIET, [one.isoformat() for one in told])
    turn.say(quiet_set(told[0], told[1]))
