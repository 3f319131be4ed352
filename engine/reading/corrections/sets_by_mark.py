"""Sets pointed at by a mark that they carry: "the miss was 187.5", "the last drop was 7", "only 7 on the second drop".

by mark = [ "last" | "first" | ORDINAL ] MARK      in front of "was", or behind a place; where such a set stands

A place beside the mark counts among the sets that carry it, and one mark alone is one set: of several nobody can say
which, and nothing is changed. "Drops" are all of them.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from typing import NamedTuple

from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece
from engine.values.sets import SetDone, SetKind, SetRecord

MARKED_SO: Mapping[K, Callable[[SetDone], bool]] = {
    K.MISS: lambda done: done.missed,
    K.DROP: lambda done: done.kind is SetKind.DROP,
}
PLACES = frozenset((K.LAST, K.FIRST, K.ORDINAL))
SEVERAL = 2
"""What a word for several drops tells: "drops", "drop sets"."""


class ByMark(NamedTuple):
    """The sets meant, the piece of the place beside the mark, and whether it says which of several is meant."""

    sets: list[SetRecord]
    place: Piece | None
    missing: bool


def by_mark(pieces: Sequence[Piece], at: int, group: Sequence[SetRecord]) -> ByMark | None:
    """What the mark here points at, in front of a verb or behind a place; None where no set carries it."""
    mark = pieces[at]
    marked = [record for record in group if MARKED_SO[mark.kind](record.done)]
    place = pieces[at - 1] if at and pieces[at - 1].kind in PLACES else None
    if not marked:
        return None
    if place is not None:
        number = len(marked) if place.kind is K.LAST else 1 if place.kind is K.FIRST else place.told
        found = marked[number - 1 : number]
        return ByMark(found, place, not found)
    several = mark.told == SEVERAL or mark.text.endswith("s")
    return ByMark(marked, None, len(marked) > 1 and mark.kind is K.DROP and not several)
