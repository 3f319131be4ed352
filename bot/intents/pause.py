"""pause until monday, pause two weeks from monday: nothing unprompted meanwhile, and the plan waits."""

from __future__ import annotations

from datetime import datetime

from bot.preferences import PAUSED_FROM, PAUSED_UNTIL
from bot.replies.reminders import paused
from bot.turn import Turn
from bot.words import day_named
from engine.reading.values import Act
from storage.records import ChangeKind

FAR = "9999-12-31"


def pause(turn: Turn, act: Act) -> None:
    """Nothing; nothing unprompted is sent from the day named, or now, until the day named, or until she resumes."""
    when = act.when.date() if isinstance(act.when, datetime) else act.when
    until = when or (day_named(act.text, turn.today) if act.start is None else None)
    change = turn.begin(ChangeKind.SETTING, "the pause")
    turn.store.settings.put(change, PAUSED_UNTIL, until.isoformat() if until else FAR)
    if act.start is not None:
        turn.store.settings.put(change, PAUSED_FROM, act.start.isoformat())
    elif turn.preferences.paused_from is not None:
        turn.store.settings.clear(change, PAUSED_FROM)
    turn.say(paused(act.start, until, turn.today))
