"""Examples of what can be said."""

from __future__ import annotations

from bot.replies.reply import Reply

ATHLETE = """Log: row 3x12 55, squat 100x5, 12 10 9, same
Fix: edit the message, that was 60, undo
Session: today, next, done, as planned
Busy or sore: skip row, swap row, move to fri
Ask: why, week, volume, history squat, best squat
Rest: rest 2 min
Plan: /plan shows how to send one
Remind: remind me 18:00 mon wed fri
More: units lb, bodyweight 82, bp means bench press
/settings /privacy /undo"""

COACH = """
Coach: clients, invite, digest, digest ann
plan for ann, ann: +2 sets side delts
note to ann: keep the row at 55"""


def help_text(*, coach: bool) -> Reply:
    """The examples; a coach's behind them for coaches."""
    return Reply(ATHLETE + (COACH if coach else ""))
