"""What another day came to, told to compare: "beat yesterday's 100x5 with bench 105x5", "up from monday's 100x5".

compared = THAN [ word ] [ "last" ] DAY sets [ "with" ]      and other sets beside it: a remark, and no day of theirs
THAN: "up from", "vs", "than", or a word for doing better.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.ahead import aside, kind_at
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, kinds_in_order, places_in

DAYS = frozenset((K.YESTERDAY, K.WEEKDAY, K.LAST_WEEKDAY, K.DAYS_AGO))
BETTERING = frozenset(("beats", "compared", "betters"))
COMPARES = 2
"""What an EARLIER piece's `told` says of "up from" and "vs"."""
WORDS = frozenset((K.LAST, K.FILLER, K.NOT_DATE))
OF_SETS = frozenset((K.NUMBER, K.TIMES, K.KG, K.LB, K.AT))
MOST_WORDS = 3


def without_days_bettered(pieces: list[Piece], kinds: set[K]) -> list[Piece]:
    """The pieces, which are of these kinds, with such sets and their day as remarks."""
    if K.TIMES not in kinds or kinds.isdisjoint(DAYS):
        return pieces
    out = pieces
    for at in reversed(places_in(DAYS, kinds_in_order(pieces))):
        start = _compared_from(pieces, at)
        end = at + 1
        while end < len(pieces) and pieces[end].kind in OF_SETS:
            end += 1
        if start < 0 or K.TIMES not in [piece.kind for piece in pieces[at:end]] or not _other_sets(pieces, start, end):
            continue
        remark = aside(pieces[start])._replace(end=pieces[end - 1].end)
        out = [*out[:start], remark, *out[end + (kind_at(pieces, end) is K.WITH) :]]
    return out


def _compared_from(pieces: Sequence[Piece], day: int) -> int:
    """The place of the word that compares with that day; -1 where none does."""
    at = day - 1
    while at > max(0, day - MOST_WORDS) and pieces[at].kind in WORDS and not is_cued(pieces[at].text, BETTERING):
        at -= 1
    if at < 0:
        return -1
    than = pieces[at].kind is K.EARLIER and pieces[at].told == COMPARES
    return at if than or is_cued(pieces[at].text, BETTERING) else -1


def _other_sets(pieces: Sequence[Piece], start: int, end: int) -> bool:
    return any(piece.kind is K.TIMES for piece in (*pieces[:start], *pieces[end:]))
