"""Before and after: what a correction, an edit, an undo or a redo changed."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from datetime import date

from bot.replies.dates import near
from bot.replies.names import listed, title
from bot.replies.receipt import Following, following_text
from bot.replies.reply import UNDO, Reply, row
from bot.replies.sets import sets_text
from bot.replies.structured import prescription_json
from bot.replies.trouble import quoted, unread_lines
from engine.reading.values import Unread
from engine.values.ids import ExerciseName
from engine.values.sets import SetDone, SetRecord


def corrected(
    before: Sequence[SetRecord],
    after: Sequence[SetRecord],
    following: Following | None,
    today: date,
    unread: Sequence[Unread] = (),
    *,
    edited: bool = False,
) -> Reply:
    """Changed: what it is now, what it was, and what of an edit was not read. `edited`: an edit took the sets away."""
    if before:
        gone = "Deleted: the edited message tells no sets any more." if edited else "Deleted."
        lines = ["Changed." if after else gone, *difference(before, after, today)]
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


def undone(label: str, lines: Sequence[str], waits: str = "", of: str = "") -> Reply:
    """Undone: what was taken back, and what stands now. Typing redo brings it back. `waits`: what is still asked;
    `of`: the days it was of, where it is not today's.
    """
    what = f"{label}, {of}" if of else label
    return Reply("\n".join([f"Undone: {what}.", *lines, "redo brings it back.", *filter(None, (waits,))]))


def days_of(days: Iterable[date], today: date) -> str:
    """The days in words, the earliest first; empty where there is only today."""
    told = sorted(set(days))
    return "" if told in ([], [today]) else listed([near(one, today) for one in told])


def undo_again(label: str) -> str:
    """What the next undo would take back."""
    return f"undo again takes back {label}."


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


def nothing_left(latest: str) -> Reply:
    """ "delete it", and nothing of the last message is left. `latest`: what undo would take back."""
    further = f"undo goes on to: {latest}." if latest else ""
    return Reply("\n".join(filter(None, ["Nothing of the last message is left. Nothing changed.", further])))


def deleted_already(latest: str) -> Reply:
    """ "delete it" behind a deletion, which is not to be taken back by it."""
    return Reply(f"Deleted already. Nothing more changed.\nundo takes back {latest}; to delete more, name it.")


def changed_long_ago(latest: str, on: date, today: date) -> Reply:
    """ "delete it" days after the latest change."""
    return Reply(f"Nothing new since {near(on, today)}, so nothing changed.\nundo takes back {latest}.")


def wanted_back(label: str) -> Reply:
    """Sets were deleted, and what is said now may ask for them back."""
    return Reply(f"Should it come back? Nothing changed yet. Undo takes back: {label}.", row(UNDO))


def edit_unread(
    standing: Sequence[SetRecord], unread: Sequence[Unread] = (), *, nothing: str = "Nothing is saved for it."
) -> Reply:
    """An edit that cannot be read leaves what stood; `nothing` says what that comes to where no sets stood."""
    why = f": {quoted(unread[0].text)}: {unread[0].why}" if unread else "."
    return Reply("\n".join([f"Can't read the edit{why}", still_saved(standing) if standing else nothing]))


def no_sets_in_edit(text: str, standing: Sequence[SetRecord]) -> Reply:
    """An edit that names a lift and tells no sets: nobody can say whether the sets are to go."""
    read = f"No sets in the edit {quoted(text)}, so nothing changed." if text.strip() else "The edit is empty."
    how = "Edit it to the sets as they were, or to undo if they are to go."
    return Reply("\n".join([read, still_saved(standing), how]))


def plan_in_edit(standing: Sequence[SetRecord]) -> Reply:
    """A message that told sets was edited to a plan."""
    return Reply(f"The edit is a plan, so nothing changed.\n{still_saved(standing)}\nSend the plan as a new message.")


def same_sets(standing: Sequence[SetRecord], *, beside: bool = False) -> Reply:
    """An edit that tells the sets as they stand. `beside`: what is noted with them is another now."""
    noted = "Only the note with them was changed." if beside else "Nothing changed."
    return Reply(f"The same sets. {still_saved(standing)} {noted}", row(UNDO) if beside else ())


def still_saved(standing: Sequence[SetRecord]) -> str:
    """The sets of an edited message that stand as before, lift by lift."""
    told = [f"{exercise} {sets_text(sets)}" for (exercise, _), sets in _by_lift(standing).items()]
    return f"Still saved: {title('; '.join(told))}."


def taken_back(labels: Sequence[str]) -> str:
    """What an edited request no longer does, over the answer to its new words."""
    return f"Taken back: {', '.join(labels)}."
