"""Sets of one group at several loads: "4x12, two at 160 and two at 170", "3 sets of 8, one with 60 and two with 65".

group = SETS "x" REPS | SETS-NUMBER [ "of" ] REPS
parts = part part ...     part = [ "first" | "last" | "and" | "," ] COUNT ( "at" | "with" ) LOAD
Where the counts of the parts come to the sets of the group, each part is so many sets of its reps.
"""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from typing import NamedTuple

from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, MOST_SETS, Piece, Role, kinds_in_order, places_in

BETWEEN = frozenset((K.COMMA, K.COLON, K.AND, K.FIRST, K.LAST, K.OPEN, K.DASH, K.PLUS))
LOADED = frozenset((K.AT, K.WITH))
CROSSED_LOADS = frozenset((K.OF, K.TIMES))
"""In front of a load that can be no reps they say so, too: "два по 60"."""
MAY_SHARE = LOADED | {K.OF, K.AND, K.FILLER}
CROSSED = frozenset((K.TIMES, K.OF))
ONE = frozenset(("an",))
LEAST_PARTS = 2


class _Part(NamedTuple):
    """So many sets at a load, and the place behind them."""

    sets: Piece
    load: Piece
    behind: int


def with_sets_shared_out(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with each part of such a group made a group of its own."""
    for at in places_in(CROSSED, kinds_in_order(pieces)):
        if _is_a_group(pieces, at):
            sets = pieces[at - 1].value
            parts = _parts(pieces, at + 2, sets)
            if len(parts) >= LEAST_PARTS and sum(part.sets.value for part in parts) == sets:
                return _told_apart(pieces, at, parts)
    return pieces


def _is_a_group(pieces: Sequence[Piece], at: int) -> bool:
    if kind_at(pieces, at - 1) is not K.NUMBER or kind_at(pieces, at + 1) is not K.NUMBER:
        return False
    sets, reps = pieces[at - 1], pieces[at + 1]
    counted = sets.role is Role.SETS or (pieces[at].kind is K.TIMES and sets.role is Role.BARE)
    return counted and 1 < sets.value <= MOST_SETS and reps.role in (Role.BARE, Role.REPS)


def _parts(pieces: Sequence[Piece], at: int, sets: Decimal) -> list[_Part]:
    """The parts from there on, up to the first that makes them more than so many sets."""
    found: list[_Part] = []
    left = sets
    while left >= 0 and (part := _part(pieces, at)) is not None:
        found.append(part)
        left -= part.sets.value
        at = part.behind
    return found


def _part(pieces: Sequence[Piece], at: int) -> _Part | None:
    while kind_at(pieces, at) in BETWEEN or (kind_at(pieces, at) is K.FILLER and not _is_loaded(pieces, at + 1)):
        at += 1
    if not _is_loaded(pieces, at + 1):
        return None
    count, load = pieces[at], pieces[at + 2]
    if count.kind is K.FILLER and is_cued(count.text, ONE):
        count = count._replace(kind=K.NUMBER, value=Decimal(1), spelled=True)
    counts = count.kind is K.NUMBER and count.role in (Role.BARE, Role.SETS) and 0 < count.value <= MOST_SETS
    loaded = load.role in (Role.BARE, Role.LOAD) and load.value > count.value
    crossed = kind_at(pieces, at + 3) is K.TIMES
    return _Part(count, load, at + 3) if counts and loaded and not crossed else None


def _is_loaded(pieces: Sequence[Piece], at: int) -> bool:
    if kind_at(pieces, at + 1) is not K.NUMBER:
        return False
    load = pieces[at + 1]
    heavy = load.role is Role.LOAD or load.value > MOST_LOADED_REPS
    return pieces[at].kind in LOADED or (pieces[at].kind in CROSSED_LOADS and heavy)


def _told_apart(pieces: list[Piece], at: int, parts: Sequence[_Part]) -> list[Piece]:
    """ "2 x 12 at 160, 2 x 12 at 170"."""
    reps = pieces[at + 1]
    out = pieces[: at - 1]
    for part in parts:
        start, end = part.sets.start, part.sets.end
        times = pieces[at]._replace(kind=K.TIMES, text="x", start=end, end=end)
        many = reps._replace(start=end, end=end, role=Role.BARE)
        parted = pieces[at]._replace(kind=K.COMMA, text=",", start=start, end=start, glued=False)
        with_it = pieces[at]._replace(kind=K.AT, text="@", start=end, end=end, glued=False)
        out += [] if part is parts[0] else [parted]
        out += [part.sets._replace(role=Role.BARE), times, many, with_it, part.load]
    return [*out, *pieces[parts[-1].behind :]]
