"""The half of a day told behind its name: "monday night", "lunes por la noche", "montag früh" are that day."""

from __future__ import annotations

from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, kinds_in_order, places_in

NAMED = frozenset((K.WEEKDAY, K.LAST_WEEKDAY, K.YESTERDAY, K.DAYS_AGO))
HALVES = frozenset(("morning", "evening"))
LINKS = frozenset((K.BY, K.FILLER, K.PLAIN, K.WITH))
MOST_LINKS = 2


def without_halves(pieces: list[Piece]) -> list[Piece]:
    """The pieces, each day named with its half made one piece."""
    out: list[Piece] = []
    behind = 0
    for at in places_in(NAMED, kinds_in_order(pieces)):
        half = _half_behind(pieces, at)
        if half:
            out += [*pieces[behind:at], pieces[at]._replace(end=pieces[half].end)]
            behind = half + 1
    return [*out, *pieces[behind:]] if behind else pieces


def _half_behind(pieces: list[Piece], at: int) -> int:
    """The place of the word for the half, behind small words at most; 0 where there is none."""
    for half in range(at + 1, min(len(pieces), at + 2 + MOST_LINKS)):
        if is_cued(pieces[half].text, HALVES) and pieces[half].kind is not K.TODAY:
            return half
        if pieces[half].kind not in LINKS or len(pieces[half].text) > LONGEST_LINK:
            return 0
    return 0


LONGEST_LINK = 3
