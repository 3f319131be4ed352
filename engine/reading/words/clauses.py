"""The clauses of a message: what stands between two separators, with the places of its names and counts."""

from __future__ import annotations

from typing import NamedTuple

from engine.reading.words.kinds import K
from engine.reading.words.modifiers import COUNTS
from engine.reading.words.pieces import Piece, kinds_in_order, places_in, places_of

CUTS = frozenset((K.LINE, K.STOP, K.THEN, K.SUPERSET, K.COMMA, K.AND, K.QUESTION))


class Clause(NamedTuple):
    cut: Piece | None
    pieces: list[Piece]
    names: list[int]
    counts: list[int]

    @property
    def name_last(self) -> bool:
        return (
            bool(self.names)
            and bool(self.counts)
            and self.names[-1] > self.counts[-1]
            and self.counts[0] < self.names[0]
        )


def clauses(pieces: list[Piece]) -> list[Clause]:
    """The message at its separators; a slash or a plus cuts only where it stands between words."""
    found: list[Clause] = []
    cut: Piece | None = None
    start = 0
    names: list[int] = []
    counts: list[int] = []
    kinds = kinds_in_order(pieces)
    for at in places_in(TOLD_OF_A_CLAUSE, kinds):
        kind = kinds[at]
        if kind in COUNTS:
            counts.append(at - start)
        elif kind is K.NAME:
            names.append(at - start)
        elif kind in CUTS or (_speaks_of_another(pieces, at) if kind is K.OPEN else _is_loose(pieces, at)):
            found.append(tuple.__new__(Clause, (cut, pieces[start:at], names, counts)))
            cut, start, names, counts = pieces[at], at + 1, [], []
    found.append(tuple.__new__(Clause, (cut, pieces[start:], names, counts)))
    return found


PERHAPS_CUTS = frozenset((K.SLASH, K.PLUS, K.DASH))
TOLD_OF_A_CLAUSE = CUTS | PERHAPS_CUTS | COUNTS | {K.NAME, K.OPEN}
SAID_OF_A_LIFT = frozenset((K.NOTE, K.PLAIN, K.UNRELATED, K.NOT_DATE, K.FUTURE, K.TOMORROW, K.NEVER, K.DENY, K.SORE))
LONGEST_REMARK = 12


def _speaks_of_another(pieces: list[Piece], at: int) -> bool:
    """ "80x8, 8, 7 (squats felt easier)": a remark in brackets about a lift, which has no numbers of its own."""
    kinds = kinds_in_order(pieces[at + 1 : at + 1 + LONGEST_REMARK])
    inside = kinds[: kinds.index(K.CLOSE)] if K.CLOSE in kinds else kinds
    return K.NAME in inside and COUNTS.isdisjoint(inside) and not SAID_OF_A_LIFT.isdisjoint(inside)


def _is_loose(pieces: list[Piece], at: int) -> bool:
    after = pieces[at + 1] if at + 1 < len(pieces) else None
    if after is None:
        return True
    if pieces[at].kind is K.SLASH:
        return not pieces[at].glued or after.kind is K.NAME
    return after.kind is K.NAME or (pieces[at].kind is K.DASH and not pieces[at].glued and after.kind is not K.NUMBER)


def clause_of(cut: Piece | None, held: list[Piece]) -> Clause:
    """A clause of these pieces behind that separator."""
    kinds = kinds_in_order(held)
    names = places_of(K.NAME, kinds)
    counts = [at for at, kind in enumerate(kinds) if kind in COUNTS]
    return Clause(cut, held, names, counts)
