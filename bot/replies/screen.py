"""How much fits on the screen of a small phone, keyboard closed.

Text wraps at about 34 characters and a row of buttons takes two lines, by our own estimate for 360 by 640 points.
"""

from __future__ import annotations

from collections.abc import Sequence

WIDTH = 34
CARD_LINES, CARD_CHARACTERS = 14, 420
ROW_OF_BUTTONS = 2


def fits_card(lines: Sequence[str], rows_of_buttons: int = 0) -> bool:
    """Whether the lines, with their buttons, are a card that is read without scrolling."""
    wrapped = sum(max(1, -(-len(line) // WIDTH)) for line in lines)
    length = sum(len(line) + 1 for line in lines)
    return wrapped + ROW_OF_BUTTONS * rows_of_buttons <= CARD_LINES and length <= CARD_CHARACTERS
