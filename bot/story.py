"""A transcript read line by line: what people did, and when by their own clocks.

line  = DATE TIME who ": " text          she says it (backslash n is a line break)
      | DATE TIME who " edits: " text    her last message, edited
      | DATE TIME who " edits " K ": " text   her K-th message, edited (/start and edits do not count)
      | DATE TIME who " taps: " label    a button of the last reply to her, by unique prefix of its label
      | DATE TIME who " sends " file     a document beside the transcript
      | DATE TIME "--"                   only time passes
      | "#" anything                     a comment

2026-03-02 18:05 ana: row 3x12 55
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime

STAMP = re.compile(r"(\d{4}-\d{2}-\d{2}) (\d{2}:\d{2}) ")
WHO = re.compile(r"([^\s:]+)(?=:| )")
SAYS = re.compile(r": ?")
EDITS = re.compile(r" edits(?: (\d+))?: ?")
TAPS = re.compile(r" taps: ?")
SENDS = re.compile(r" sends ")


class StoryError(ValueError):
    """A line that is no line of a transcript; names it, and says what was expected."""

    def __init__(self, line: int, read: str, expected: str) -> None:
        super().__init__(f"line {line}: read {read!r}, expected {expected}")
        self.line = line


@dataclass(frozen=True, slots=True)
class Says:
    text: str


@dataclass(frozen=True, slots=True)
class Edits:
    """`which` counts her messages from 1; None is her last."""

    text: str
    which: int | None


@dataclass(frozen=True, slots=True)
class Taps:
    label: str


@dataclass(frozen=True, slots=True)
class Sends:
    file: str


@dataclass(frozen=True, slots=True)
class Passes:
    pass


Deed = Says | Edits | Taps | Sends | Passes


@dataclass(frozen=True, slots=True)
class Event:
    """One line: `at` is naive, by the clock of the person named (`who` is empty where only time passes)."""

    line: int
    at: datetime
    who: str
    deed: Deed


def read_story(text: str) -> Iterator[Event]:
    """The events of a transcript in the order written.

    Errors: StoryError at the first line that cannot be parsed.
    """
    for number, line in enumerate(text.splitlines(), start=1):
        if line.strip() and not line.lstrip().startswith("#"):
            yield _event(number, line.rstrip("\r"))


def _event(number: int, line: str) -> Event:
    stamp = STAMP.match(line)
    if stamp is None:
        raise StoryError(number, line[:40], "a date and time, e.g. 2026-03-02 18:05 ana: row 3x12 55")
    try:
        at = datetime.strptime(f"{stamp[1]} {stamp[2]}", "%Y-%m-%d %H:%M")  # noqa: DTZ007 (local to a person)
    except ValueError:
        raise StoryError(number, stamp[0].strip(), "a date that exists, e.g. 2026-03-02 18:05") from None
    rest = line[stamp.end() :]
    if rest.strip() == "--":
        return Event(number, at, "", Passes())
    who = WHO.match(rest)
    if who is None:
        raise StoryError(number, rest[:40], "a name, then : or edits: or taps: or sends")
    return Event(number, at, who[1], _deed(number, rest[who.end() :]))


def _deed(number: int, rest: str) -> Deed:
    if found := EDITS.match(rest):
        return Edits(_unescape(rest[found.end() :]), int(found[1]) if found[1] else None)
    if found := TAPS.match(rest):
        return Taps(rest[found.end() :].strip())
    if found := SENDS.match(rest):
        return Sends(rest[found.end() :].strip())
    if found := SAYS.match(rest):
        return Says(_unescape(rest[found.end() :]))
    raise StoryError(number, rest[:40], "`: text`, ` edits: text`, ` taps: label` or ` sends file`")


def _unescape(text: str) -> str:
    return text.replace("\\n", "\n")
