"""The lines of a plan as sent, cleaned for reading: bullets, numbering, markdown and invisible signs are gone.

A line that goes on with the exercise above it is joined to it, and a place in the joined line still knows the line of
the plan that it came from.
"""

from __future__ import annotations

import re
from dataclasses import dataclass

INVISIBLE = re.compile("[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u00ad\u200b-\u200f\u202a-\u202e\u2060-\u2069\ufeff]")
SPACES = re.compile(r"\s+")
EMPHASIS = re.compile(r"\*\*|__|`|~~")
BULLET = re.compile(r"(?:[-–—•·*▪●◦‣>+] +(?:\[[ xX]?\] *)?|\d{1,2}[.)] +)")
HASHES = re.compile(r"#{1,6} +")
RULE = re.compile(r"[-=*_~ ]{3,}$")
HALF = re.compile(r"(?<=\d) ?½")
LINE_BREAK = re.compile(r"\r\n|[\n\r\u2028\u2029\u0085\u000b\u000c]")
LONGEST_TEXT = 200_000
LONGEST_LINE = 2_000
MOST_LINES = 5_000


@dataclass(frozen=True, slots=True)
class PlanLine:
    """One line as sent. `number` is the line of the text or the row of the sheet; rows may make several lines."""

    number: int
    text: str


@dataclass(frozen=True, slots=True)
class CleanLine:
    """`starts` pairs places in the text, ascending, with the numbers of the lines they came from."""

    text: str
    starts: tuple[tuple[int, int], ...]
    is_heading: bool = False

    @property
    def number(self) -> int:
        return self.starts[0][1]

    def line_of(self, at: int) -> int:
        """The number of the line that a place came from."""
        return max((start for start in self.starts if start[0] <= at), default=self.starts[0])[1]

    def with_more(self, more: CleanLine) -> CleanLine:
        """This line with another behind it."""
        joined = f"{self.text}, "
        return CleanLine(joined + more.text, (*self.starts, (len(joined), more.number)), self.is_heading)


def lines_of(text: str) -> tuple[PlanLine, ...]:
    """The lines of a text as sent, numbered from 1."""
    return tuple(PlanLine(place, line) for place, line in enumerate(LINE_BREAK.split(text), start=1))


def clean(line: PlanLine) -> CleanLine:
    """The line as it is read; its text is empty where nothing is left."""
    text = SPACES.sub(" ", INVISIBLE.sub("", line.text.replace("\t", " "))).strip()
    if RULE.match(text):
        return CleanLine("", ((0, line.number),))
    text = BULLET.sub("", text, count=1) if BULLET.match(text) else text
    hashes = HASHES.match(text)
    text = EMPHASIS.sub("", text[hashes.end() :] if hashes else text)
    text = HALF.sub(".5", text).replace("½", "0.5").strip()
    return CleanLine(text, ((0, line.number),), hashes is not None)
