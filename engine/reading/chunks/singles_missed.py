"""A failure mark on a single: it was missed, where behind a set of more reps it says how hard the last one was."""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.chunks.chunks import Chunk
from engine.reading.words.pieces import MOST_LOADED_REPS, Role

PAIR = 2


def is_a_single(found: Sequence[Chunk], bracketed: bool) -> bool:
    """ "120x1 F", "120 single fail", "120 1 F", "155 (fail)"; "1 f" alone may be the one rep of a set to failure."""
    last = found[-1]
    if not all(last.factors):
        return False  # "x1"
    if bracketed and last.size == 1 and last.factors[0][-1].value > MOST_LOADED_REPS:
        return True
    if last.size == PAIR:
        return len(last.factors[1]) == 1 and last.factors[1][0].value == 1
    if last.size != 1 or last.factors[0][-1].value != 1:
        return False
    behind_its_load = len(found) == PAIR and found[0].size == 1 and found[0].factors[0][-1].value > MOST_LOADED_REPS
    return last.counted or behind_its_load


def may_be_a_single(found: Sequence[Chunk]) -> bool:
    """ "1x120 F", "3x1 120 F", "120 1 1 1 F", "60 65 70 F": a single that was missed, a set to failure, or which of
    several singles.
    """
    last = found[-1]
    if _ends_singles(found) or _ends_loads(found):
        return True
    if last.size == 1 and len(found) > 1 and found[-2].size == PAIR:
        return len(found[-2].factors[1]) == 1 and found[-2].factors[1][0].value == 1
    whole = last.size == PAIR and len(last.factors[0]) == 1 and bool(last.factors[1])
    if not whole or last.factors[0][0].value != 1 or last.factors[0][0].role is not Role.BARE:
        return False
    return last.factors[1][0].value > MOST_LOADED_REPS


def _ends_singles(found: Sequence[Chunk]) -> bool:
    """ "120 1 1 1"."""
    alike = [chunk.factors[0][-1].value for chunk in found[-PAIR:] if chunk.size == 1 and chunk.factors[0]]
    return alike == [1, 1]


def _ends_loads(found: Sequence[Chunk]) -> bool:
    """ "60 65 70": loads with no reps, which are singles and rise; "40 35 31" are reps of the body."""
    alone = [chunk.factors[0] for chunk in found[-PAIR:] if chunk.size == 1 and not chunk.at]
    if len(alone) < PAIR or any(len(one) != 1 for one in alone):
        return False
    return MOST_LOADED_REPS < alone[0][0].value < alone[1][0].value
