"""The shapes that the tokens of a text have."""

from __future__ import annotations

from enum import Enum
from typing import TYPE_CHECKING

from engine.reading.words.members import members_of


class TokenShape(Enum):
    __hash__ = object.__hash__

    NUMBER = "number"
    CLOCK = "clock"
    HOURS = "hours"
    ORDINAL = "ordinal"
    WORD = "word"
    SIGN = "sign"
    LINE = "line"


if TYPE_CHECKING:
    Shape = TokenShape
else:
    Shape = members_of(TokenShape)
