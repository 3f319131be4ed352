"""Whether the signs between bare numbers set the first apart from the others, and so make it their load."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from itertools import pairwise

from engine.reading.chunks.chunks import Chunks, numbers_in
from engine.reading.words.kinds import K


def heads_a_list(chunks: Chunks) -> bool:
    """ "20 15,15", "20 15/15": a space behind the first number, and another sign between all that follow."""
    flat = numbers_in(chunks)
    parts = [chunk.before for chunk in chunks.found]
    if len(chunks.found) == 2 and len(chunks.found[0].factors[0]) == 1:
        return parts[1] is None and len(chunks.found[1].factors[0]) > 1 and chunks.found[1].joiner is not K.DASH
    listed = len(flat) == len(parts) > 2 and parts[1] is None
    return listed and parts[2] in (K.COMMA, K.SLASH) and set(parts[2:]) == {parts[2]}


FEWEST_RUNGS, HIGHEST_FIRST_RUNG = 3, 3


def is_ladder(numbers: Sequence[Decimal]) -> bool:
    """ "1-2-3-4", "2-3-5-10": reps that rise from a few, and no load ahead of them. Common practice, no source."""
    rises = len(numbers) >= FEWEST_RUNGS and all(low < high for low, high in pairwise(numbers))
    return rises and numbers[0] <= HIGHEST_FIRST_RUNG and numbers[1] <= 2 * numbers[0] + 1
