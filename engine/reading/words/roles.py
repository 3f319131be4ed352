"""What a number of a message counts, as far as its own spelling says."""

from __future__ import annotations

from enum import Enum
from typing import TYPE_CHECKING

from engine.reading.words.members import members_of


class Counted(Enum):
    """The roles of numbers; the values are what the parts of a reading are called by, where they are shown."""

    __hash__ = object.__hash__

    BARE = "bare"
    LOAD = "load"
    REPS = "reps"
    SETS = "sets"
    SECONDS = "seconds"
    METRES = "metres"
    PLURAL = "plural"  # 30s: a pair of dumbbells, or seconds
    CHANGE = "change"  # +2.5, -20
    TIMES = "times"
    BAR = "empty bar"
    BODY = "body weight"
    UNREADABLE = "unreadable"  # 1?5
    NOT_A_SET = "not a set"  # a percentage, a height, a distance run


if TYPE_CHECKING:
    Role = Counted
else:
    Role = members_of(Counted)
