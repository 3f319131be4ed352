"""A document that cannot be read, with what was read, what was expected and what to send instead."""

from __future__ import annotations

from engine.values.problem import Problem


class Unreadable(Exception):
    def __init__(self, read: str, expected: str, try_instead: str) -> None:
        super().__init__(read)
        self.problem = Problem(0, read, expected, try_instead)
