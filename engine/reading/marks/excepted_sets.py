"""What one set of a group came to, pointed at from ahead: "5x5 95 except the 4th where i got 3", "set 4 only 3".

told  = excepted | only
excepted = EXCEPT { word } place { word | ONLY | GOT } REPS
only     = place ONLY { word } REPS                          where the place is a number behind "set", or the first
place    = "last" | "4th" | "first" | "set" NUMBER
It is told on as the place, "only" and the reps, which the grammar of results takes; whether the group has such a set is
found there.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.ahead import kind_at
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, MOST_SETS, Piece, Role, kinds_in_order

FIRST_OF_ALL = 1
POINTING = frozenset((K.LAST, K.ORDINAL, K.FIRST, K.SETS))
TELLING_PLACES = frozenset((K.EXCEPT, K.ONLY))
BESIDE = frozenset((K.FILLER, K.PLAIN, K.OF, K.SETS, K.COMMA, K.COLON, K.DASH, K.OPEN, K.EQUALS))
RESULTS = frozenset((K.ONLY, K.GOT))
BEHIND = frozenset((None, K.COMMA, K.STOP, K.LINE, K.THEN, K.CLOSE, K.FILLER, K.REPS, K.NOTE))
MOST_WORDS = 4
"""Words between the exception, the place and the reps. Common practice, no source."""


def with_excepted_sets(pieces: list[Piece], kinds: set[K]) -> list[Piece]:
    """The pieces, which are of these kinds, with such a set told as its place, "only" and its reps."""
    if TELLING_PLACES.isdisjoint(kinds) or POINTING.isdisjoint(kinds):
        return pieces
    out: list[Piece] = []
    start = 0
    in_order = kinds_in_order(pieces)
    counted = (at for at, piece in enumerate(pieces) if piece.kind is K.TIMES or piece.role is Role.SETS)
    for at in range(next(counted, len(pieces)), len(pieces)):
        if at < start or in_order[at] not in STARTING:
            continue
        excepted = in_order[at] is K.EXCEPT
        placed = _past(pieces, at + 1, BESIDE - {K.SETS}) if excepted else at
        place, behind = _place(pieces, placed)
        reps = _reps(pieces, behind, excepted) if place is not None else None
        if place is None or reps is None or (not excepted and place.kind is in_order[at]):
            continue
        only = Piece(K.ONLY, place.end, place.end, True, "only")
        comma = Piece(K.COMMA, pieces[at].start, pieces[at].start, True, ",")
        out += [*pieces[start:at], comma, place, only, pieces[reps]]
        start = reps + 1 + (kind_at(pieces, reps + 1) is K.CLOSE and K.OPEN in in_order[at:reps])
    return [*out, *pieces[start:]] if start else pieces


STARTING = POINTING | {K.EXCEPT}


def _past(pieces: Sequence[Piece], at: int, kinds: frozenset[K]) -> int:
    """The place behind the few words of these kinds."""
    end = at
    while end - at < MOST_WORDS and kind_at(pieces, end) in kinds:
        end += 1
    return end


def _place(pieces: Sequence[Piece], at: int) -> tuple[Piece | None, int]:
    """The place that is told there, as one piece, and where what is behind it begins; None where none is told."""
    kind = kind_at(pieces, at)
    if kind is K.LAST or kind is K.ORDINAL:
        return pieces[at], at + 1
    if kind is K.FIRST:
        return pieces[at]._replace(kind=K.ORDINAL, told=FIRST_OF_ALL), at + 1
    number = pieces[at + 1] if kind is K.SETS and kind_at(pieces, at + 1) is K.NUMBER else None
    if number is None or number.role is not Role.BARE or not FIRST_OF_ALL <= number.value <= MOST_SETS:
        return None, at
    return number._replace(kind=K.ORDINAL, told=int(number.value)), at + 2


def _reps(pieces: Sequence[Piece], at: int, excepted: bool) -> int | None:
    """The place of the reps of that set; None where no such reps are told."""
    end = _past(pieces, at, BESIDE | RESULTS if excepted else RESULTS)
    if not excepted:
        end = _past(pieces, end, frozenset((K.FILLER,))) if end > at else len(pieces)
    if kind_at(pieces, end) is not K.NUMBER or kind_at(pieces, end + 1) not in BEHIND:
        return None
    number = pieces[end]
    return end if number.role in (Role.BARE, Role.REPS) and number.value <= MOST_LOADED_REPS else None
