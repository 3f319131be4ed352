"""Sets and reps told once more in words settle which of two numbers is which: "110x2x4, four doubles as written".

restated = LOAD "x" NUMBER "x" NUMBER [ "," | "(" ] words NUMBER ( COUNT | "sets of" NUMBER ) words
The words may tell who wanted it so; what speaks of another day, or tells of both ways, settles nothing.
"""

from __future__ import annotations

from decimal import Decimal

from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, Piece, Role

LEAST_LENGTH = 5
"""Pieces of "110x2x4"."""
ENDS = frozenset((K.LINE, K.STOP, K.NAME, K.TIMES, K.QUESTION))
WORDS = frozenset(
    (
        K.FILLER,
        K.COMMA,
        K.OPEN,
        K.CLOSE,
        K.DASH,
        K.OTHERS,
        K.SAYING,
        K.PLAIN,
        K.NOTE,
        K.NOT_DATE,
        K.PLANNED,
        K.AND,
        K.SETS,
    )
)


def with_restated_pairs(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with the two counts of "110x2x4" told apart where words behind them say which is which."""
    out = pieces
    for at in range(len(pieces) - LEAST_LENGTH):
        if pieces[at + 1].kind is not K.TIMES or not _is_open(pieces, at):
            continue
        first, second = pieces[at + 2].value, pieces[at + 4].value
        told = _told_behind(pieces, at + LEAST_LENGTH)
        if told in ((first, second), (second, first)):
            roles = (Role.SETS, Role.REPS) if told == (first, second) else (Role.REPS, Role.SETS)
            out = list(out)
            out[at + 2] = pieces[at + 2]._replace(role=roles[0])
            out[at + 4] = pieces[at + 4]._replace(role=roles[1])
    return out


def _is_open(pieces: list[Piece], at: int) -> bool:
    """Whether "110x2x4" stands there, a load and two counts that no role tells apart."""
    kinds = [piece.kind for piece in pieces[at : at + LEAST_LENGTH]]
    if kinds != [K.NUMBER, K.TIMES, K.NUMBER, K.TIMES, K.NUMBER] or (at and pieces[at - 1].kind is K.TIMES):
        return False
    load, first, second = pieces[at], pieces[at + 2], pieces[at + 4]
    heavy = load.role is Role.LOAD or (load.role is Role.BARE and load.value > MOST_LOADED_REPS)
    return heavy and first.role is second.role is Role.BARE and first.value != second.value


def _told_behind(pieces: list[Piece], at: int) -> tuple[Decimal, Decimal] | None:
    """The sets and reps that the sentence behind tells; None where it tells none, several, or speaks of another day."""
    found: set[tuple[Decimal, Decimal]] = set()
    while at < len(pieces) and pieces[at].kind not in ENDS and pieces[at].kind is not K.THEN:
        piece = pieces[at]
        if piece.kind is K.NUMBER:
            told, behind = _counted(pieces, at)
            if told is None:
                return None
            found.add(told)
            at = behind
        elif piece.kind in WORDS or (piece.kind is K.FUTURE and "wanted" in CUES_OF[piece.text.split()[0]]):
            at += 1
        else:
            return None
    return found.pop() if len(found) == 1 else None


def _counted(pieces: list[Piece], at: int) -> tuple[tuple[Decimal, Decimal] | None, int]:
    """The sets and reps of "four doubles", "5 sets of 3", and the place behind them."""
    sets = pieces[at]
    if at + 1 < len(pieces) and pieces[at + 1].kind is K.COUNT:
        return (sets.value, Decimal(pieces[at + 1].told)), at + 2
    end = at + 1
    while end < len(pieces) and pieces[end].kind in (K.SETS, K.OF):
        end += 1
    counted = sets.role is Role.SETS or any(piece.kind is K.SETS for piece in pieces[at + 1 : end])
    if not counted or end >= len(pieces) or pieces[end].kind is not K.NUMBER:
        return None, at
    return (sets.value, pieces[end].value), end + 1
