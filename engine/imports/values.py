"""An old log as read from a document: what would be recorded, under which names, and what is left out and why."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date
from enum import Enum

from engine.values.ids import ExerciseName
from engine.values.load import Unit
from engine.values.sets import SetDone


class DateOrder(Enum):
    """How dates of two bare numbers are read."""

    DAY_FIRST = "day/month"
    MONTH_FIRST = "month/day"
    MIXED = "mixed"  # both are written in one column: a date that fits both ways stays open


@dataclass(frozen=True, slots=True)
class Habits:
    """What is taken for granted of the writer.

    `unit` is that of a load without one; `today` her local day; `taught` maps normalised words to what she settled them
    to; `order` is what she said of this document's dates.
    """

    unit: Unit
    today: date
    taught: Mapping[str, ExerciseName] = field(default_factory=dict)
    order: DateOrder | None = None


@dataclass(frozen=True, slots=True)
class OldSet:
    """One set of an old log; `line` counts from 1 in the document."""

    line: int
    on: date
    done: SetDone


@dataclass(frozen=True, slots=True)
class OldNote:
    line: int
    on: date
    text: str
    exercise: ExerciseName | None = None
    pain: bool = False


class NameMatch(Enum):
    """How a written name was met."""

    AS_WRITTEN = "as written"  # a name or shorthand of the catalogue, or of hers
    REORDERED = "reordered"  # "row (barbell)"
    MENDED = "mended"  # a slip of the thumb
    OPEN = "open"  # several exercises go by it
    UNKNOWN = "unknown"


@dataclass(frozen=True, slots=True)
class WrittenName:
    """A name of the document with what it means: one exercise, several where it is open, none where it is unknown.

    `lines` counts the rows or lines that stand under it.
    """

    written: str
    match: NameMatch
    meant: tuple[ExerciseName, ...]
    lines: int


@dataclass(frozen=True, slots=True)
class LeftOut:
    """A row or line of which nothing is recorded. `name` is the written name, where that is what is in doubt."""

    line: int
    text: str
    why: str
    name: str = ""


@dataclass(frozen=True, slots=True)
class OldLog:
    """Shape: sets by day and then as written; names as first met; what is left out in the order of the document.

    `order` is None where no date needed one, `order_assumed` where none of them settles it; `assumed_unit` is None
    where every load names its unit or there is none. `not_read` are the headers of columns that hold something and
    were passed over.
    """

    sets: tuple[OldSet, ...]
    notes: tuple[OldNote, ...]
    names: tuple[WrittenName, ...]
    left_out: tuple[LeftOut, ...]
    order: DateOrder | None = None
    assumed_unit: Unit | None = None
    not_read: tuple[str, ...] = ()
    order_assumed: bool = False
