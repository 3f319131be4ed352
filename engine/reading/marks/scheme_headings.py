"""Headings that name a day by its numbers: "5/5/5 day. squat ...", "8x3 week: bench ...", "tag 5x5: kniebeuge ...".

heading = numbers DAY [ NUMBER ] end | DAY numbers end | NUMBER "/" NUMBER "/" NUMBER ":"     at the start of a line
numbers = NUMBER ( ( "/" | "x" ) NUMBER )+ | plural NUMBER        all small and whole
end     = "." | ":" | "-" | "," | the end of the line, with a lift behind it that tells numbers of its own
The numbers say how the day is called, and count no sets. Common practice, no source.
"""

from __future__ import annotations

from engine.reading.words.ahead import aside
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role

CALLED = frozenset(("daycounted",))
JOINING = frozenset((K.SLASH, K.TIMES))
ENDS = frozenset((K.STOP, K.COLON, K.DASH, K.COMMA, K.LINE))
MOST_OF_A_NAME = 20
"""Common practice, no source."""
LEAST_OF_A_SLASHED_ONE = 5
"""Pieces of three numbers with slashes between them."""
FEWEST_OF_A_LIFT = 2


def without_scheme_headings(pieces: list[Piece]) -> list[Piece]:
    """The pieces without the numbers of such a heading; the word for the day stays."""
    out: list[Piece] = []
    at = 0
    while at < len(pieces):
        starts = at == 0 or pieces[at - 1].kind is K.LINE
        end, kept = _heading(pieces, at) if starts else _day_told_behind(pieces, at)
        out += kept if end > at else pieces[at : at + 1]
        at = max(end, at + 1)
    return out


def _day_told_behind(pieces: list[Piece], at: int) -> tuple[int, list[Piece]]:
    """ "80 8 8 7 (5/3/1 day)", "8 8 7, 5s week": how the day is called, behind its sets."""
    if pieces[at].kind is not K.NUMBER or pieces[at - 1].kind not in APART:
        return at, []
    end = _numbers(pieces, at)
    called = end - at >= LEAST_OF_A_SLASHED_ONE or (end == at + 1 and pieces[at].role is Role.PLURAL)
    return (end + 1, [aside(pieces[end])]) if called and _is_day(pieces, end) else (at, [])


APART = frozenset((K.COMMA, K.STOP, K.OPEN, K.DASH, K.NOTE, K.FILLER, K.PLAIN, K.NUMBER))


def _heading(pieces: list[Piece], at: int) -> tuple[int, list[Piece]]:
    """The place behind the heading here, and what stays of it; `at` where there is none."""
    day = [pieces[at]] if _is_day(pieces, at) else []
    first = at + len(day)
    end = _numbers(pieces, first)
    if end == first:
        return at, []
    slashed = end - first >= LEAST_OF_A_SLASHED_ONE and {piece.kind for piece in pieces[first:end]} <= SLASHED
    if not day and _is_day(pieces, end):
        day = [pieces[end]]
        end += 1
        end += end < len(pieces) and pieces[end].kind is K.NUMBER and pieces[end].role is Role.BARE
    headed = bool(day) or (slashed and end < len(pieces) and pieces[end].kind is K.COLON)
    if not headed or end >= len(pieces) or pieces[end].kind not in ENDS:
        return at, []
    return (end, day) if _tells_its_sets(pieces, end + 1) else (at, [])


SLASHED = frozenset((K.NUMBER, K.SLASH))


def _is_day(pieces: list[Piece], at: int) -> bool:
    return at < len(pieces) and pieces[at].kind is K.HEADING and is_cued(pieces[at].text, CALLED)


def _numbers(pieces: list[Piece], at: int) -> int:
    """The place behind the numbers here; `at` where none are told so."""
    if at < len(pieces) and pieces[at].kind is K.NUMBER and pieces[at].role is Role.PLURAL:
        return at + 1
    end = at
    while end < len(pieces) and _is_small(pieces[end]):
        if end + 1 >= len(pieces) or pieces[end + 1].kind not in JOINING:
            return end + 1 if end > at else at
        end += 2
    return at


def _is_small(piece: Piece) -> bool:
    bare = piece.kind is K.NUMBER and piece.role in (Role.BARE, Role.TIMES)
    return bare and 0 < piece.value <= MOST_OF_A_NAME and piece.value == int(piece.value)


def _tells_its_sets(pieces: list[Piece], at: int) -> bool:
    """Whether the first lift behind the heading has numbers of its own."""
    if at >= len(pieces) or pieces[at].kind is not K.NAME:
        return False
    numbers = 0
    for piece in pieces[at + 1 :]:
        if piece.kind is K.NAME:
            break
        numbers += piece.kind is K.NUMBER
    return numbers >= FEWEST_OF_A_LIFT
