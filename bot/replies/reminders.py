"""Reminders, pauses and quiet hours in words."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import date, datetime, time

from bot.messages import Button
from bot.replies.dates import DAYS, clock, day, near
from bot.replies.names import listed, title
from bot.replies.reply import UNDO, Reply, row
from engine.values.ids import ExerciseName
from engine.values.plan import PlannedDay, Weekday

STOP = Button("Stop these", "v1:stop-reminders")


def reminders_set(times: Mapping[Weekday, time], zone: str, now: datetime, zone_known: bool) -> Reply:
    """On which days and when, and by which clock."""
    days = ", ".join(DAYS[one.value] for one in times)
    at = clock(next(iter(times.values())))
    lines = [f"Reminders at {at}: {days}.", f"Your clock: {zone}, now {clock(now)}."]
    if not zone_known:
        lines.append("If that is not your time, send: zone London")
    return Reply("\n".join(lines), row(UNDO, STOP))


def one_reminder(when: datetime, today: date) -> Reply:
    """One reminder, once."""
    return Reply(f"I'll remind you {near(when.date(), today)} at {clock(when)}.", row(STOP))


def needs_time() -> Reply:
    """No time of day was told."""
    return Reply("No reminder set: I need a time. Send: remind me 18:00 mon wed fri")


def reminders_stopped() -> Reply:
    """No reminders any more."""
    return Reply("Reminders stopped. To start again: remind me 18:00 mon wed fri", row(UNDO))


def reminder(planned: PlannedDay, lifts: Sequence[ExerciseName]) -> Reply:
    """Today's session is due. The first words hold the point: that is what a lock screen shows."""
    buttons = row(Button("Snooze 1 h", "v1:snooze"), Button("Skip today", "v1:skip-day"), STOP)
    return Reply(f"{title(planned.day.label)} today: {listed(lifts, 4)}", buttons)


def plain_reminder() -> Reply:
    """The one reminder she asked for."""
    return Reply("Time to train, as you asked. today shows the session.", row(Button("Snooze 1 h", "v1:snooze")))


def snoozed(until: datetime, today: date) -> Reply:
    """The reminder comes again."""
    return Reply(f"I'll remind you again {near(until.date(), today)} at {clock(until)}.")


def paused(start: date | None, until: date | None, today: date) -> Reply:
    """Nothing unprompted until a day, from now on or from another."""
    when = f"until {day(until, today)}, your first day back" if until else "until you send resume"
    begins = f"from {day(start, today)} " if start else ""
    kept = "Your plan waits; sets you send are logged."
    return Reply(f"Paused {begins}{when}: no reminders, summaries or digests. {kept}", row(UNDO))


def resumed() -> Reply:
    """Back from a pause."""
    return Reply("Welcome back. Reminders and summaries go on.", row(UNDO))


def not_paused() -> Reply:
    """Back, and nothing waited."""
    return Reply("Welcome back. Nothing was paused, so nothing changes. today shows what is on.")


def quiet_set(start: time, end: time) -> Reply:
    """Quiet hours."""
    return Reply(f"Nothing unprompted between {clock(start)} and {clock(end)}.", row(UNDO))


def needs_quiet(start: time, end: time) -> Reply:
    """Two times are needed; which hours are quiet now."""
    now = f"it is quiet between {clock(start)} and {clock(end)}"
    return Reply(f"Nothing changed: {now}, the same every day. For other hours, send: quiet 22:00 7:30")
