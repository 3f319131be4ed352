"""A lifter's slip, as data: what was read, what was expected, what to write instead."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum


class Severity(Enum):
    ERROR = "error"  # the line is not used
    WARNING = "warning"  # used; worth a look
    NOTE = "note"


@dataclass(frozen=True, slots=True)
class Problem:
    """Shape: `line` counts from 1 in the text or sheet; 0 where the problem belongs to no line."""

    line: int
    read: str
    expected: str
    try_instead: str
    severity: Severity = Severity.ERROR

    def __str__(self) -> str:
        where = f"Line {self.line}: " if self.line else ""
        read = f"read “{self.read}”, " if self.read else ""
        return f"{where}{read}expected {self.expected}. Try: {self.try_instead}"
