"""A day or a week that does not fit the plan, in words: what can be sent."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta

from bot.messages import Button
from bot.replies.names import listed
from bot.replies.reply import Reply, row
from engine.values.ids import ExerciseName


def short(left: Sequence[ExerciseName]) -> Reply:
    """Today's lifts in the plan's order; the last is the first to leave out."""
    lines = [f"Short on time: go in this order and stop when time is up: {listed(left)}."]
    if len(left) > 1:
        lines.append(f"To leave one out, send: skip {left[-1]}")
    return Reply("\n".join(lines))


def lighten(weeks: Sequence[int]) -> Reply:
    """Where a lighter week is told: in the plan."""
    stands = f"Your plan has its deload in week {listed(list(map(str, weeks)))}." if weeks else NO_DELOAD
    return Reply(
        f"{stands} Loads change with the plan alone: put a line like deload week 4 under its name and send it again.\n"
        "Lifting less today is fine: log what you did. To leave the session out: skip today"
    )


NO_DELOAD = "Your plan has no deload week."


def elsewhere(left: Sequence[ExerciseName]) -> Reply:
    """How the lifts of today are swapped; the plan stays."""
    return Reply(
        f"Today: {listed(left)}. What is not there, swap for today. The plan stays as it is.\nSend: swap {left[0]}"
    )


def cannot(today: date) -> Reply:
    """How today's session is moved or left out."""
    tomorrow = (today + timedelta(days=1)).strftime("%a").lower()
    return Reply(
        f"Nothing changed yet. To do it another day, send: move to {tomorrow}. To leave it out: skip today",
        row(Button("Skip today", "v1:skip-day")),
    )
