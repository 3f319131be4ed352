"""How many of so many tries were made: "100, 3 of 4 made", "made 3/5", "3 of 5 attempts", "150, 4 attempts": asked.

made  = GOT NUMBER OF NUMBER | NUMBER OF NUMBER ( GOT | "good" | TRIES ) | ( "for" | "x" ) NUMBER "of" NUMBER
tries = NUMBER TRIES          TRIES: "attempts"; of how many reps each was nobody says
The first may count reps of one set or singles that were made, so it stays a number and the rest is unclear. "3 of 8"
with nothing beside it is sets of reps, as in other languages.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role, kinds_in_order, places_in, places_of

OF = frozenset((K.OF, K.OUT_OF, K.SLASH))
PAIRING = frozenset((K.FOR, K.TIMES))
TRIES, GOOD = frozenset(("tries",)), frozenset(("counted",))
MOST = 10
"""So many tries at one load somebody may have. Common practice, no source."""


def with_tries_in_doubt(pieces: list[Piece], kinds: set[K]) -> list[Piece]:
    """The pieces, which are of these kinds, with the numbers that count tries made unclear."""
    if K.NUMBER not in kinds or (OF.isdisjoint(kinds) and K.PLAIN not in kinds):
        return pieces
    out: list[Piece] | None = None
    order = kinds_in_order(pieces)
    for at in places_in(OF, order):
        if _counts(pieces, at - 1) and _counts(pieces, at + 1) and _tells_made(pieces, at):
            out = list(pieces) if out is None else out
            out[at] = pieces[at]._replace(kind=K.UNCLEAR)
            out[at + 1] = pieces[at + 1]._replace(kind=K.FILLER)
    for at in places_of(K.PLAIN, order):
        if is_cued(pieces[at].text, TRIES) and _counts(pieces, at - 1) and kind_at(pieces, at - 2) not in OF | PAIRING:
            out = list(pieces) if out is None else out
            out[at] = pieces[at]._replace(kind=K.UNCLEAR)
    return pieces if out is None else out


def _counts(pieces: Sequence[Piece], at: int) -> bool:
    if kind_at(pieces, at) is not K.NUMBER:
        return False
    number = pieces[at]
    return number.role in (Role.BARE, Role.REPS) and number.value <= MOST and number.value == int(number.value)


def _tells_made(pieces: Sequence[Piece], at: int) -> bool:
    """Whether a word beside "3 of 4" says that they were tries, or reps of one set."""
    made, tried = pieces[at - 1], pieces[at + 1]
    before, behind = kind_at(pieces, at - 2), pieces[at + 2] if at + 2 < len(pieces) else None
    if made.value > tried.value:
        return False
    if before is K.GOT or (before in PAIRING and pieces[at].kind is not K.SLASH):
        return True
    good = (
        behind is not None and behind.kind is K.NOTE and is_cued(behind.text, GOOD) and pieces[at].kind is not K.SLASH
    )
    return behind is not None and (behind.kind is K.GOT or good or is_cued(behind.text, TRIES))
