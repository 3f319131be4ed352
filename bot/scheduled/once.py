"""A reminder asked for once, and one that was snoozed."""

from __future__ import annotations

from datetime import timedelta

from bot.due_kind import Kind, Moment
from bot.replies.reminders import plain_reminder
from storage.records import Due

ONCE, SNOOZED = "once", "snoozed"


def _run(moment: Moment, due: Due) -> bool:
    moment.send(plain_reminder(), silent=False)
    return True


KIND = Kind(ONCE, _run, None, timedelta(hours=2))
SNOOZE_KIND = Kind(SNOOZED, _run, None, timedelta(hours=2))
