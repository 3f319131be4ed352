"""pause until monday: nothing unprompted, and the plan waits."""

from __future__ import annotations

from datetime import datetime

from bot.preferences import PAUSED_UNTIL
from bot.replies.reminders import paused
from bot.turn import Turn
from bot.words import day_named
from engine.reading.values import Act
from storage.records import ChangeKind

FAR = "9999-12-31"


def pause(turn: Turn, act: Act) -> None:
    """Nothing; nothing unprompted is sent until the day named, or until she resumes."""
    when = act.when.date() if isinstance(act.when, datetime) else act.when
    until = when or day_named(act.text, turn.today)
    change = turn.begin(ChangeKind.SETTING, "the pause")
    turn.store.settings.put(change, PAUSED_UNTIL, until.isoformat() if until else FAR)
    turn.say(paused(until, turn.today))
