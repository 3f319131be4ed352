"""snooze 1h: the reminder once more, later."""

from __future__ import annotations

from datetime import datetime, timedelta

from bot import zones
from bot.replies.reminders import snoozed
from bot.schedule import plan_one
from bot.scheduled.once import SNOOZED
from bot.turn import Turn
from bot.words import seconds_named
from engine.reading.values import Act

AN_HOUR = 3600


def snooze(turn: Turn, act: Act) -> None:
    """Nothing; a reminder comes again later, after a while or at the hour told."""
    if isinstance(act.when, datetime):
        until = zones.instant(act.when, turn.preferences.zone)
    else:
        until = turn.at + timedelta(seconds=(seconds_named(act.text) if act.text.strip() else None) or AN_HOUR)
    local = zones.local(until, turn.preferences.zone)
    plan_one(turn, SNOOZED, until)
    turn.say(snoozed(local, turn.today))
