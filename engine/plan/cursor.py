"""A place in a line of a plan, moved on by tokens.

Tokens are anchored where the cursor stands, so a line is read once from left to right and in linear time.
"""

from __future__ import annotations

import re
from dataclasses import dataclass

SEPARATORS = re.compile(r"(?:[\s,;:.()\[\]|]|[-–—](?= ))+")


@dataclass(slots=True)
class Cursor:
    """Shape: `at` counts characters from 0 and never passes the end of `text`."""

    text: str
    at: int = 0

    @property
    def done(self) -> bool:
        return self.at >= len(self.text)

    @property
    def rest(self) -> str:
        return self.text[self.at :]

    def take(self, token: re.Pattern[str]) -> re.Match[str] | None:
        """The token, and the cursor behind it; None, and the cursor unmoved, where it does not stand here."""
        match = token.match(self.text, self.at)
        if match is None or match.end() == self.at:
            return None
        self.at = match.end()
        return match

    def sees(self, token: re.Pattern[str]) -> bool:
        """Whether the token stands here; the cursor does not move."""
        return token.match(self.text, self.at) is not None
