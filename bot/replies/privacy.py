"""Privacy, export and erasure in words."""

from __future__ import annotations

from bot.messages import Attachment, Button
from bot.replies.reply import Reply, row
from engine.progression.words import counted

CONFIRM = "erase all"


def privacy_card() -> Reply:
    """What is kept and why, who sees it, how long."""
    return Reply(
        "I keep: your chat's id and name, clock, plan, sets, notes, and our messages.\n"
        "Why: logging, what to lift next, reminders, summaries.\n"
        "Who sees it: you; your coach once you accept, but notes and pain only when shared.\n"
        "Never sold, never used to train AI.\n"
        "Kept until you erase it.",
        row(Button("Export", "v1:export"), Button("Erase", "v1:erase")),
    )


def exported(name: str, content: bytes, holds: str) -> Reply:
    """One file of what is kept."""
    return Reply(f"Your records: {name}, {holds}.", attachment=Attachment(name, content))


def confirm_erase(sets: int) -> Reply:
    """The one thing that asks before it is done: it cannot be undone."""
    return Reply(
        f"Erase everything: {counted(sets, 'set')}, notes, plan, settings? This can't be undone. Export first if you "
        f"want a copy.\nTo go on, type: {CONFIRM}",
        row(Button("Export", "v1:export"), Button("Keep my data", "v1:keep")),
    )


def kept() -> Reply:
    """Nothing was erased."""
    return Reply("Nothing erased.")


def erased() -> Reply:
    """All of it is gone."""
    return Reply("Erased, all of it. Messages stay in this chat until you clear it there. /start begins anew.")
