"""The clauses of a message: what stands between two separators, with the places of its names and counts."""

from __future__ import annotations

from collections.abc import Iterator
from typing import NamedTuple

from engine.reading.kinds import K
from engine.reading.modifiers import COUNTS
from engine.reading.pieces import Piece

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


def clauses(pieces: list[Piece]) -> Iterator[Clause]:
    """The message at its separators; a slash or a plus cuts only where it stands between words."""
    cut: Piece | None = None
    held: list[Piece] = []
    names: list[int] = []
    counts: list[int] = []
    for at, piece in enumerate(pieces):
        kind = piece.kind
        if kind in CUTS or (kind in PERHAPS_CUTS and _is_loose(pieces, at)):
            yield Clause(cut, held, names, counts)
            cut, held, names, counts = piece, [], [], []
            continue
        if kind in COUNTS:
            counts.append(len(held))
        elif kind is K.NAME:
            names.append(len(held))
        held.append(piece)
    yield Clause(cut, held, names, counts)


PERHAPS_CUTS = frozenset((K.SLASH, K.PLUS, K.DASH))


def _is_loose(pieces: list[Piece], at: int) -> bool:
    after = pieces[at + 1] if at + 1 < len(pieces) else None
    if after is None:
        return True
    if pieces[at].kind is K.SLASH:
        return not pieces[at].glued or after.kind is K.NAME
    return after.kind is K.NAME or (pieces[at].kind is K.DASH and not pieces[at].glued and after.kind is not K.NUMBER)


def clause_of(cut: Piece | None, held: list[Piece]) -> Clause:
    """A clause of these pieces behind that separator."""
    names = [at for at, piece in enumerate(held) if piece.kind is K.NAME]
    counts = [at for at, piece in enumerate(held) if piece.kind in COUNTS]
    return Clause(cut, held, names, counts)
