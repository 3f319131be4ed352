"""What was worked out of single words, numbers and signs, kept for the next message that has them."""

from __future__ import annotations

from collections.abc import Callable
from typing import TypeVar

T = TypeVar("T")
MOST_KEPT = 8_192
LONGEST_KEPT = 40
"""Letters; a longer word comes once, and is worked out anew where it comes again."""


class Kept(dict[str, T]):
    """Shape: `kept[text]` is what `work_out` comes to by this text; at MOST_KEPT texts it begins anew.

    A reading asks for some fifty of them, and a look-up takes half as long as the call of a cached function.
    """

    def __init__(self, work_out: Callable[[str], T]) -> None:
        super().__init__()
        self.work_out = work_out

    def __missing__(self, text: str) -> T:
        found = self.work_out(text)
        if len(text) <= LONGEST_KEPT:
            if len(self) >= MOST_KEPT:
                self.clear()
            self[text] = found
        return found
