"""A pair behind "@" whose numbers may be two things: "80@8x5" and "5@70x3".

80@8x5 = eight sets of five at 80, or a set of five at 80 that was an eight
5@70x3 = five sets of three, or three of five
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.chunks.chunks import Chunk, Chunks
from engine.reading.words.pieces import MOST_LOADED_REPS, Role
from engine.values.effort import Effort

PAIR = 2


def ways_of_at_pairs(chunks: Chunks) -> tuple[Chunks, Chunks]:
    """The chunks with the number of sets in front, ahead of the x or of the sign; and with what else it may be."""
    ways = [chunks.with_found(_joined_at(chunks.found, chunks.at_pairs, sets_first)) for sets_first in (True, False)]
    for one in ways:
        one.at_pairs = ()
    return ways[0], ways[1]


def _joined_at(found: Sequence[Chunk], places: Sequence[int], sets_first: bool) -> list[Chunk]:
    """The chunks with those at the places and the pairs behind them made one each, where they tell one thing."""
    out = list(found)
    for at in reversed(places):
        head, pair = out[at : at + 2]
        if pair.size != PAIR:
            continue  # three factors, or one, behind the sign
        number = head.factors[0][0]
        heavy = number.role is Role.LOAD or number.value > MOST_LOADED_REPS
        if not heavy or not sets_first:
            out[at : at + 2] = [_joined(head, pair, heavy=heavy, sets_first=sets_first)]
    return out


def _joined(head: Chunk, pair: Chunk, *, heavy: bool, sets_first: bool) -> Chunk:
    one = pair.copy()
    first, second = pair.factors
    one.before, one.x_apart = head.before, False
    if heavy:
        one.factors = [head.factors[0], second]
        one.efforts = (Effort.from_rpe(first[0].value), *pair.efforts)
    elif sets_first:
        one.factors, one.at = [head.factors[0], second], first
    else:
        one.factors, one.times = [first, head.factors[0]], int(second[0].value)
    return one
