"""When something cannot be done: what was read, what to send instead, and whether anything was saved."""

from __future__ import annotations

from collections.abc import Sequence

from bot.replies.reply import Reply
from engine.reading.corrections.nothing_changed import UNCLEAR
from engine.reading.values import Unread

SHOWN = 3
WHICH = "Say which set and what it was: last was 4, or set 2 was 57.5"
MOST_UNREAD = 12


def broke() -> Reply:
    """An unforeseen fault of ours."""
    return Reply(
        "Not saved: something went wrong on my side, sorry. Nothing of that message was recorded. Send it again."
    )


def not_read(unread: Sequence[Unread], example: str) -> Reply:
    """Words that look like sets and could not be read; nothing was saved. `example`: what a set looks like."""
    if all(one.of_a_request for one in unread):
        return Reply("\n".join(f"Nothing changed: {quoted(one.text)}: {one.why}" for one in unread[:SHOWN]))
    if all(one.why == UNCLEAR for one in unread):
        return Reply("\n".join([*(f"Nothing changed: {quoted(one.text)}: {one.why}" for one in unread), WHICH]))
    lines = [f"Not saved: {quoted(one.text)}: {one.why}" for one in unread[:SHOWN]]
    if len(unread) > SHOWN:
        lines.append(f"and {len(unread) - SHOWN} more")
    return Reply("\n".join([*lines, f"A set looks like {example}"]))


def unread_lines(unread: Sequence[Unread]) -> list[str]:
    """The lines of a paste that were not read, each with its reason."""
    lines = [f"Not read: {quoted(one.text)}: {one.why}" for one in unread[:MOST_UNREAD]]
    if len(unread) > MOST_UNREAD:
        lines.append(f"and {len(unread) - MOST_UNREAD} more not read")
    return lines


def quoted(text: str, most: int = 40) -> str:
    """Her words in quotation marks, cut to fit a line."""
    flat = " ".join(text.split())
    return f"“{flat[: most - 1]}…”" if len(flat) > most else f"“{flat}”"


def needs(what: str, example: str, saved: str = "Nothing changed.") -> Reply:
    """A word that needs more behind it."""
    return Reply(f"{saved} I need {what}. Send: {example}")


def stale_button() -> Reply:
    """A button whose question is settled, or that is from another time."""
    return Reply("That button is out of date. Nothing changed. Type what you want, or /help.")


def document_trouble(name: str, trouble: str) -> Reply:
    """A file that did not arrive whole."""
    why = trouble or "it could not be fetched"
    return Reply(f"Not saved: {name or 'the file'}: {why}. Send it again, or paste it as text.")
