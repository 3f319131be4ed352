"""How much fits on the screen of a small phone, keyboard closed.

Text wraps at about 34 characters and a row of buttons takes two lines, by our own estimate for 360 by 640 points.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from textwrap import wrap

WIDTH = 34
CARD_LINES, CARD_CHARACTERS = 14, 420
ROW_OF_BUTTONS = 2


def fits_card(lines: Sequence[str], rows_of_buttons: int = 0) -> bool:
    """Whether the lines, with their buttons, are a card that is read without scrolling."""
    wrapped = sum(max(1, len(wrap(line, WIDTH))) for line in lines)
    length = sum(len(line) + 1 for line in lines)
    return wrapped + ROW_OF_BUTTONS * rows_of_buttons <= CARD_LINES and length <= CARD_CHARACTERS


def fitting(told: Callable[[int], Sequence[str]], rows_of_buttons: int = 0, most: int = 3) -> Sequence[str]:
    """The fullest of a card's versions that fits the screen; `told(n)` names at most n of each kind of thing."""
    versions = (told(count) for count in range(most, 0, -1))
    return next((lines for lines in versions if fits_card(lines, rows_of_buttons)), told(1))
