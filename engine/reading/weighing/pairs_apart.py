"""Loads that might be reps, each with its own reps and parted from the next pair: "30 8, 35 6, 35 5".

pairs = LOAD REPS ( separator LOAD REPS )+        none with a sign to it
They are clear where every load is well above all reps; "10 12, 10 10" may be a list of reps.
"""

from __future__ import annotations

from decimal import Decimal
from typing import NamedTuple

from engine.reading.chunks.choices import Traits, may_be_reps
from engine.reading.chunks.chunks import Chunk, Chunks
from engine.reading.words.pieces import Piece, Role
from engine.values.load import Unit

FEWEST = 4
LIGHTEST, ABOVE_REPS = Decimal(20), Decimal("1.6")
"""A number of a list this many times another, and from so much on, is the load of it. Common practice, no source."""
PLAIN = frozenset(("factors", "before", "counted"))


class Pairs(NamedTuple):
    """The chunks with each load put to its reps."""

    chunks: Chunks
    is_clear: bool
    """No list of reps can be meant."""


def pairs_apart(chunks: Chunks, traits: Traits, unit: Unit) -> Pairs | None:
    """The chunks with each load put to its reps; None where they are no such pairs."""
    found = chunks.found
    if len(found) < FEWEST or len(found) % 2 or traits.body or traits.timed or traits.carried:
        return None
    if not all(map(_is_one_number, found)) or not _are_parted(found):
        return None
    loads, reps = [_number(one).value for one in found[::2]], [_number(one).value for one in found[1::2]]
    if not all(may_be_reps(_number(one), traits) for one in found[1::2]):
        return None
    is_clear = min(loads) >= max(LIGHTEST, ABOVE_REPS * max(reps))
    if not is_clear and loads[0] not in loads[1:]:
        return None
    pairs = [_pair(*both, unit) for both in zip(found[::2], found[1::2], strict=True)]
    return Pairs(chunks.with_found(pairs), is_clear)


def _is_one_number(chunk: Chunk) -> bool:
    one = chunk.size == 1 and len(chunk.factors[0]) == 1 and not chunk.counted and not chunk.at
    return one and _number(chunk).role is Role.BARE


def _are_parted(found: list[Chunk]) -> bool:
    """Whether a separator stands between the pairs and none within them, and nothing is said of a load alone."""
    between = all(load.marks() <= PLAIN and load.before is not None for load in found[2::2])
    return between and found[0].marks() <= PLAIN and all(reps.before is None for reps in found[1::2])


def _pair(load: Chunk, reps: Chunk, unit: Unit) -> Chunk:
    """One chunk of both, with what was said of the reps."""
    pair = reps.copy()
    pair.factors = [(_number(load)._replace(role=Role.LOAD, unit=unit),), *reps.factors]
    pair.before = load.before
    return pair


def _number(chunk: Chunk) -> Piece:
    return chunk.factors[0][0]
