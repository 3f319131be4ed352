"""Rounds: several exercises done in turn so many times, and which exercises of a message belong to them.

rounds = NUMBER "rounds" [ ":" | "of" ] exercises     up to an empty line, or a "then" that begins a line or sentence
       | ( "circuit" | "superset" ) "x" NUMBER exercises
       | exercises NUMBER "rounds"                    where the words end their line or sentence: what stands ahead
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from engine.reading.kinds import K
from engine.reading.pieces import Piece

MOST_ROUNDS = 20
TAKEN_IN_TURN = frozenset((K.ROUNDS, K.SUPERSET))
COUNTS = frozenset((K.NUMBER, K.COUNT, K.BAR))
SENTENCE_STARTS = frozenset((K.LINE, K.STOP))
ENDS = frozenset((K.LINE, K.STOP, K.COMMA, K.THEN, None))


class Rounds(NamedTuple):
    """How many rounds, and where in the message they begin and end."""

    times: int
    start: int
    end: int

    def of(self, pieces: Sequence[Piece]) -> int:
        """How often what these pieces tell was done."""
        place = next((piece.start for piece in pieces if piece.kind in COUNTS), -1)
        return self.times if self.start <= place < self.end else 1


def without_rounds(pieces: list[Piece]) -> tuple[list[Piece], Rounds | None]:
    """The pieces without "3 rounds of", and what it reaches over; None where no rounds are told."""
    for at, piece in enumerate(pieces):
        if piece.kind is K.ROUNDS and at and _counts_rounds(pieces[at - 1]):
            return _reaching(pieces, at)
        if piece.kind in TAKEN_IN_TURN and _is_multiplied(pieces, at):
            return _multiplied(pieces, at)
    return pieces, None


def _is_multiplied(pieces: list[Piece], at: int) -> bool:
    """ "circuit x3:", "superset x 4" on a line of its own."""
    behind = pieces[at + 1 : at + 4]
    shape = [piece.kind for piece in behind[:2]] == [K.TIMES, K.NUMBER] and _counts_rounds(behind[1])
    return shape and len(behind) > 2 and behind[2].kind in (K.COLON, K.LINE)


def _multiplied(pieces: list[Piece], at: int) -> tuple[list[Piece], Rounds]:
    ahead, behind = pieces[:at], pieces[at + 3 :]
    return ahead + behind, Rounds(int(pieces[at + 2].value), pieces[at].start, _end(behind))


def _counts_rounds(piece: Piece) -> bool:
    return piece.kind is K.NUMBER and 1 <= piece.value <= MOST_ROUNDS


def _reaching(pieces: list[Piece], at: int) -> tuple[list[Piece], Rounds]:
    count = int(pieces[at - 1].value)
    start = at - 1 - (at >= 2 and pieces[at - 2].kind is K.TIMES)
    end = at + 1
    if end < len(pieces) and pieces[end].kind is K.PLUS:
        pieces = [*pieces[:end], pieces[end]._replace(kind=K.ALTERED), *pieces[end + 1 :]]  # "7 rounds + 3"
    while end < len(pieces) and pieces[end].kind in (K.COLON, K.OF):
        end += 1
    ahead, behind = pieces[:start], pieces[end:]
    heads = not ahead or ahead[-1].kind in SENTENCE_STARTS or end > at + 1
    after = behind[0].kind if behind else None
    if not _holds_sets(behind) or (after in ENDS and not heads and _holds_sets(ahead)):
        return ahead + behind, Rounds(count, 0, pieces[start].start)
    return ahead + behind, Rounds(count, pieces[start].start, _end(behind))


def _holds_sets(pieces: Sequence[Piece]) -> bool:
    return any(piece.kind in COUNTS for piece in pieces)


def _end(behind: list[Piece]) -> int:
    """Where the rounds end: at an empty line or a "then" that begins a line or a sentence, once a set was told."""
    told = False
    for at, piece in enumerate(behind):
        told = told or piece.kind in COUNTS
        begins = at > 0 and behind[at - 1].kind in SENTENCE_STARTS
        if told and begins and piece.kind in (K.THEN, K.LINE):
            return piece.start
    return behind[-1].end + 1
