"""Where each value these tests compare with comes from.

Published: seen in the source, in a copy of it or in a page that reports it. From memory: the source exists, the value
was written down without seeing it again. Common practice: the trade does it so; no source.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

import pytest


class Mark(Enum):
    PUBLISHED = "published"
    MEMORY = "from memory"
    PRACTICE = "common practice, no source"


@dataclass(frozen=True)
class Source:
    """Author, year and place of a value, and how it is known."""

    author: str
    year: int | None
    place: str
    mark: Mark

    def __str__(self) -> str:
        return " ".join(str(part) for part in (self.author, self.year, self.place, f"[{self.mark.value}]") if part)


def published(author: str, year: int | None, place: str) -> Source:
    return Source(author, year, place, Mark.PUBLISHED)


def from_memory(author: str, year: int | None, place: str) -> Source:
    return Source(author, year, place, Mark.MEMORY)


PRACTICE = Source("the trade", None, "", Mark.PRACTICE)
ALGEBRA = Source("algebra", None, "worked out from the published form", Mark.PUBLISHED)


def row(key: str, source: Source, *values: object):
    """One line of a table: its key, its source, then what the test takes."""
    return pytest.param(source, *values, id=f"{key} {source.mark.value}: {source.author} {source.year or ''}".strip())
