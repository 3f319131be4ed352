"""Old logs in words: what was read, shown before anything is saved; what was taken over; what was left out and why."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from bot.messages import Attachment, Button
from bot.replies.dates import MONTHS
from bot.replies.names import title
from bot.replies.reply import UNDO, Reply, row
from bot.replies.screen import fits_card
from bot.replies.trouble import quoted
from engine.catalogue.catalogue import normalise
from engine.imports.values import DateOrder, NameMatch, OldLog, OldNote, OldSet, WrittenName
from engine.progression.words import counted
from engine.values.load import Unit
from engine.values.problem import Problem

CHECK_FILE = "old-log-check.txt"
MOST_NAMES = 4
MOST_COLUMNS = 3
OTHERWISE = {DateOrder.DAY_FIRST: "month first", DateOrder.MONTH_FIRST: "day first"}
SHORT = 24
QUOTED = 24
QUOTED_LINE = 17
NAME_ORDER = (NameMatch.MENDED, NameMatch.REORDERED, NameMatch.AS_WRITTEN)


def unreadable(problem: Problem) -> Reply:
    """A file that is neither a plan nor an old log to us."""
    return Reply(f"Not saved: {problem}")


def preview(name: str, log: OldLog, sets: Sequence[OldSet], notes: Sequence[OldNote], number: int) -> Reply:
    """What would be taken over, for approval; what does not fit the screen goes into a file beside it."""
    lines = [f"{_short(name)}, not saved yet: {_extent(sets, notes)}."]
    held = len(log.sets) - len(sets)
    if held:
        lines.append(f"{counted(held, 'set')} of it {'is' if held == 1 else 'are'} in your log already.")
    lines += _read_as(log)
    lines += _not_read(log)
    other = _other_names(log.names)
    most = 1 if log.left_out else MOST_NAMES
    lines += _names(other, most)
    shown = _fill(lines, _left_out(log))
    buttons = row(Button("Take over", f"v1:import-yes:{number}"), Button("Cancel", f"v1:import-no:{number}"))
    whole = shown.whole and len(other) <= most
    attachment = None if whole else Attachment(CHECK_FILE, check_text(name, log, sets, notes).encode("utf-8"))
    return Reply("\n".join(shown.lines), buttons, attachment=attachment)


@dataclass(frozen=True, slots=True)
class _Shown:
    """Lines fit for the screen; `whole`: all of them."""

    lines: Sequence[str]
    whole: bool


def _fill(lines: list[str], more: Sequence[str]) -> _Shown:
    """As many of the lines as fit; where not all do, the last says how many are in the file."""
    if fits_card([*lines, *more], 1):
        return _Shown([*lines, *more], True)
    taken = 0
    while taken < len(more) and fits_card([*lines, *more[: taken + 1], _rest(len(more) - taken - 1)], 1):
        taken += 1
    return _Shown([*lines, *more[:taken], _rest(len(more) - taken)], False)


def _rest(count: int) -> str:
    return f"and {count} more: see the file"


def _extent(sets: Sequence[OldSet], notes: Sequence[OldNote]) -> str:
    """512 sets, 48 days, 12 lifts, 3 Jan 2023 to 5 Mar 2024."""
    days = sorted({one.on for one in sets} | {note.on for note in notes})
    parts = [
        counted(len(sets), "set"),
        counted(len(days), "day"),
        counted(len({one.done.exercise for one in sets}), "lift"),
    ]
    if notes:
        parts.append(counted(len(notes), "note"))
    return ", ".join([*parts, _span(days[0], days[-1])])


def _span(first: date, last: date) -> str:
    """5 Mar 2024; 5 Mar to 14 Apr 2024; 5 Mar 2023 to 14 Apr 2024."""
    ends = f"{last.day} {MONTHS[last.month - 1]} {last.year}"
    if first == last:
        return ends
    begins = f"{first.day} {MONTHS[first.month - 1]}"
    return f"{begins} to {ends}" if first.year == last.year else f"{begins} {first.year} to {ends}"


def _read_as(log: OldLog) -> list[str]:
    """How numbers were read that could have been meant otherwise, and what to say where they were."""
    told, else_say = [], []
    if log.order is not None:
        told.append(f"dates {log.order.value}")
    if log.order_assumed and log.order in OTHERWISE:
        else_say.append(OTHERWISE[log.order])
    if log.assumed_unit is not None:
        told.append(f"bare loads {log.assumed_unit.value}")
        else_say.append(Unit.LB.value if log.assumed_unit is Unit.KG else Unit.KG.value)
    otherwise = f"; else say {' or '.join(else_say)}" if else_say else ""
    return [f"{title(', '.join(told))}{otherwise}."] if told else []


def _not_read(log: OldLog) -> list[str]:
    """The columns that hold something and were passed over: what they tell is not taken."""
    if not log.not_read:
        return []
    shown = ", ".join(header[:SHORT] for header in log.not_read[:MOST_COLUMNS])
    more = len(log.not_read) - MOST_COLUMNS
    return [f"Columns not read: {shown}{f' and {more} more' if more > 0 else ''}."]


def _other_names(names: Sequence[WrittenName]) -> list[WrittenName]:
    """The names that stand for an exercise called otherwise, the boldest matches first."""
    other = [name for name in names if len(name.meant) == 1 and normalise(name.written) != normalise(name.meant[0])]
    return sorted(other, key=lambda name: NAME_ORDER.index(name.match))


def _names(other: Sequence[WrittenName], most: int) -> list[str]:
    said = [f"{name.written[:SHORT]} = {name.meant[0]}" for name in other[:most]]
    if len(other) > most:
        said.append(f"{len(other) - most} more in the file")
    return [f"Names: {'; '.join(said)}."] if said else []


def _left_out(log: OldLog) -> list[str]:
    """What is left out: names in doubt with their number of lines, then lines with their reasons."""
    if not log.left_out:
        return []
    doubtful = Counter(normalise(one.name) for one in log.left_out if one.name)
    meant = {normalise(name.written): name for name in log.names}
    lines = [f"Left out: {counted(len(log.left_out), 'line')}."]
    lines += [_doubtful(meant[name], count) for name, count in doubtful.items()]
    return lines + [
        f"Line {one.line} {quoted(one.text, QUOTED_LINE)}: {one.why}" for one in log.left_out if not one.name
    ]


def _doubtful(name: WrittenName, count: int) -> str:
    """A name in doubt and, where it is open, the words that settle it."""
    written = f"{quoted(name.written, QUOTED)} ×{count}"
    if not name.meant:
        return f"{written}: unknown exercise"
    return f"{written} is open. Send: {name.written[:SHORT]} means {name.meant[0]}"


def check_text(name: str, log: OldLog, sets: Sequence[OldSet], notes: Sequence[OldNote]) -> str:
    """All of the preview as plain text: each name with its exercise, each line left out with its reason."""
    lines = [f"{name}: {_extent(sets, notes)}", *_read_as(log), *_columns(log), "", "Names"]
    lines += [
        f"{one.written}: {' or '.join(one.meant) or 'unknown'} ({counted(one.lines, 'line')})" for one in log.names
    ]
    lines += ["", f"Left out: {counted(len(log.left_out), 'line')}"]
    lines += [f"line {one.line}: {one.text}: {one.why}" for one in log.left_out]
    return "\n".join(lines) + "\n"


def _columns(log: OldLog) -> list[str]:
    return [f"Columns not read: {', '.join(log.not_read)}"] if log.not_read else []


def taken_over(name: str, sets: Sequence[OldSet], notes: Sequence[OldNote], held: int, left_out: int) -> Reply:
    """The old log is in the log."""
    lines = [f"Taken over from {_short(name)}: {_extent(sets, notes)}."]
    if held:
        lines.append(
            f"{counted(held, 'set')} {'was' if held == 1 else 'were'} in your log already; nothing is doubled."
        )
    if left_out:
        lines.append(f"{counted(left_out, 'line')} left out.")
    return Reply("\n".join(lines), row(UNDO))


def nothing_new(name: str, log: OldLog) -> Reply:
    """The same document, or the same rows, once more."""
    lines = [f"Nothing new in {_short(name)}: all {counted(len(log.sets), 'set')} are in your log. Nothing is doubled."]
    return _with_rest(lines, name, log)


def nothing_read(name: str, log: OldLog) -> Reply:
    """A log of which no line can be taken."""
    return _with_rest([f"Not saved: no sets in {_short(name)} that I can take over."], name, log)


def _with_rest(lines: list[str], name: str, log: OldLog) -> Reply:
    shown = _fill(lines, _left_out(log))
    if shown.whole:
        return Reply("\n".join(shown.lines))
    left_out = "\n".join(f"line {one.line}: {one.text}: {one.why}" for one in log.left_out)
    return Reply("\n".join(shown.lines), attachment=Attachment(CHECK_FILE, f"{name}\n{left_out}\n".encode()))


def cancelled(name: str) -> Reply:
    """The old log was declined."""
    return Reply(f"Cancelled: nothing of {_short(name)} is saved.")


def settled_before(name: str) -> Reply:
    """A button of an old log that was taken over or cancelled."""
    return Reply(f"That is settled already: {_short(name)}. Nothing changed. Send the file again to look anew.")


def gone(name: str) -> Reply:
    """The document is no longer kept."""
    return Reply(f"Not saved: I no longer have {_short(name)}. Send the file again.")


def _short(name: str) -> str:
    return name if len(name) <= SHORT else f"{name[: SHORT - 1]}…"
