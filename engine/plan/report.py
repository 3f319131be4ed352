"""The parts of one line, by kind, and the problems collected while they are put together."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from typing import TypeVar

from engine.plan.parts import Part, Slip, Taken
from engine.values.problem import Problem, Severity

P = TypeVar("P")


@dataclass(frozen=True, slots=True)
class Placed:
    """A part, and the character of the line at which it begins."""

    part: Part
    at: int


@dataclass(slots=True)
class Report:
    """`line_of` answers which line of the plan a character of this line came from."""

    text: str
    line_of: Callable[[int], int]
    problems: list[Problem] = field(default_factory=list)

    @property
    def has_errors(self) -> bool:
        return any(problem.severity is Severity.ERROR for problem in self.problems)

    def error(self, at: int, read: str, expected: str, try_instead: str) -> None:
        self._add(at, read, expected, try_instead, Severity.ERROR)

    def warn(self, at: int, read: str, expected: str, try_instead: str) -> None:
        self._add(at, read, expected, try_instead, Severity.WARNING)

    def note(self, at: int, read: str, expected: str, try_instead: str) -> None:
        self._add(at, read, expected, try_instead, Severity.NOTE)

    def _add(self, at: int, read: str, expected: str, try_instead: str, severity: Severity) -> None:
        self.problems.append(Problem(self.line_of(at), read, expected, try_instead, severity))


@dataclass(slots=True)
class Bag:
    """The parts of one line. What is asked for once and stands twice is reported."""

    placed: Sequence[Placed]
    report: Report

    def every(self, kind: type[P]) -> list[tuple[P, int]]:
        """All parts of a kind, with their places."""
        return [(placed.part, placed.at) for placed in self.placed if isinstance(placed.part, kind)]

    def one(self, what: str, *kinds: type[P]) -> tuple[P, int] | None:
        """The one part of these kinds; None where there is none, or where there are two that disagree."""
        found = [(placed.part, placed.at) for placed in self.placed if isinstance(placed.part, kinds)]
        if len(found) > 1 and found[1][0] != found[0][0]:
            at = found[1][1]
            read = self.report.text[at : at + 40].split(",")[0].strip()
            self.report.error(at, read, f"one {what}, and there is one before it", f"leave one {what} on the line")
            return None
        return found[0] if found else None

    def has(self, *kinds: type) -> bool:
        return any(isinstance(placed.part, kinds) for placed in self.placed)

    def report_slips(self) -> None:
        """Report what could not be used, and what was used otherwise than typed."""
        for slip, at in self.every(Slip):
            self.report.error(at, slip.read, slip.expected, slip.try_instead)
        for taken, at in self.every(Taken):
            self.report.warn(at, taken.read, f"one number; it is kept as {taken.taken_as}", taken.taken_as)
