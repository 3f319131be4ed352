"""How much one message may hold: more than fits into a week's training, pasted."""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.token_shapes import Shape
from engine.reading.words.tokens import SHAPE, Token

MOST_NAMES = 100
"""Lifts that one message may name: more than fits into a week's training, pasted. Common practice, no source."""
MOST_DAYS = 100
"""Days that one message may tell, with a lift each. Common practice, no source."""
MOST_NUMBERS, MOST_SIGNS, MOST_LINES, MOST_WORDS, MOST_TOKENS = 900, 1_200, 500, 1_000, 2_000
"""Common practice, no source. A dense week of a platform's longest message comes to some 1,600 in all."""


def too_many(tokens: Sequence[Token]) -> bool:
    """Whether a message holds more numbers, signs, lines or words, or more of all."""
    if len(tokens) > MOST_TOKENS:
        return True
    shapes = list(map(SHAPE, tokens))
    numbers = shapes.count(Shape.NUMBER) + shapes.count(Shape.CLOCK)
    signs, lines = shapes.count(Shape.SIGN), shapes.count(Shape.LINE)
    words = len(shapes) - numbers - signs - lines
    return numbers > MOST_NUMBERS or signs > MOST_SIGNS or lines > MOST_LINES or words > MOST_WORDS
