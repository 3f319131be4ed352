"""Before and after: what a correction, an edit, an undo or a redo changed."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from bot.replies.dates import near
from bot.replies.names import title
from bot.replies.receipt import Following, following_text
from bot.replies.reply import UNDO, Reply, row
from bot.replies.sets import sets_text
from bot.replies.structured import prescription_json
from bot.replies.trouble import unread_lines
from engine.reading.values import Unread
from engine.values.ids import ExerciseName
from engine.values.sets import SetDone, SetRecord


def corrected(
    before: Sequence[SetRecord],
    after: Sequence[SetRecord],
    following: Following | None,
    today: date,
    unread: Sequence[Unread] = (),
) -> Reply:
    """Changed: what it is now, what it was, and what of an edit was not read."""
    if before:
        lines = ["Changed." if after else "Deleted.", *difference(before, after, today)]
    else:
        lines = difference((), after, today, now="Added")
    lines += unread_lines(unread)
    if following is None:
        return Reply("\n".join(lines), row(UNDO))
    lines.append(following_text(following))
    return Reply("\n".join(lines), row(UNDO), [prescription_json(following.prescription)])


def difference(before: Sequence[SetRecord], after: Sequence[SetRecord], today: date, *, now: str = "Now") -> list[str]:
    """One line for what was and one for what is, lift by lift; lifts of a paste that stayed as they were go unsaid."""
    was, stands = _by_lift(before), _by_lift(after)
    same = {lift for lift, sets in was.items() if stands.get(lift) == sets}
    if len(same) == len(was) == len(stands):
        same = set()
    lines = []
    for lifts, word in ((was, "Was"), (stands, now)):
        for (exercise, on), sets in lifts.items():
            when = "" if on == today else f" {near(on, today)}"
            if (exercise, on) not in same:
                lines.append(f"{word}: {exercise} {sets_text(sets)}{when}")
    return lines


def _by_lift(records: Sequence[SetRecord]) -> dict[tuple[ExerciseName, date], list[SetDone]]:
    found: dict[tuple[ExerciseName, date], list[SetDone]] = {}
    for record in records:
        found.setdefault((record.done.exercise, record.on), []).append(record.done)
    return found


def undone(label: str, lines: Sequence[str]) -> Reply:
    """Undone: what was taken back, and what stands now. Typing redo brings it back."""
    return Reply("\n".join([f"Undone: {label}.", *lines, "redo brings it back."]))


def redone(label: str, lines: Sequence[str]) -> Reply:
    """Back again."""
    return Reply("\n".join([f"Back again: {label}.", *lines]), row(UNDO))


def already_undone() -> Reply:
    """The button's change is out of force already."""
    return Reply("Already undone. Nothing changed.")


def not_the_latest(label: str, latest: str) -> Reply:
    """Something newer stands: undo goes one step at a time."""
    return Reply(f"Not undone: {label} is not the latest change, {latest} is. Type undo to go back step by step.")


def nothing_to_undo(word: str) -> Reply:
    """There is no change left to take back, or to bring back."""
    return Reply(f"Nothing to {word}. Nothing changed.")


def edit_unread(standing: Sequence[SetRecord], why: str) -> Reply:
    """An edit that cannot be read leaves what stood."""
    lines = [f"Can't read the edit: {why}" if why else "Can't read the edit."]
    if standing:
        exercise = standing[0].done.exercise
        lines.append(f"Still saved: {title(exercise)} {sets_text([record.done for record in standing])}.")
    return Reply("\n".join(lines))


def taken_back(labels: Sequence[str]) -> str:
    """What an edited request no longer does, over the answer to its new words."""
    return f"Taken back: {', '.join(labels)}."
