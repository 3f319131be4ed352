"""What another day came to, told to compare: "beat yesterday's 100x5 with bench 105x5", "up from monday's 100x5".

compared = THAN [ word ] [ "last" ] DAY sets [ "with" ]      and other sets beside it: a remark, and no day of theirs
         | sets ( THAN | "was" ) sets [ "on" ] DAY           105x5, up from 100x5 on monday; 105x5 (was 100x5 monday)
THAN: "up from", "vs", "than", or a word for doing better.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.ahead import aside, kind_at
from engine.reading.words.cues import CUES_OF, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, is_one_word, kinds_in_order, places_in

DAYS = frozenset((K.YESTERDAY, K.WEEKDAY, K.LAST_WEEKDAY, K.DAYS_AGO, K.ORDINAL))
"""The Portuguese "segunda" is Monday, and the second."""
WAS = frozenset(("was", "were"))
ENDS = frozenset((None, K.COMMA, K.STOP, K.CLOSE, K.LINE))
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
        if (start := _told_with_its_day(pieces, at)) > 0:
            out = [*out[:start], aside(pieces[start])._replace(end=pieces[at].end), *out[at + 1 :]]
            continue
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
    return at if _says_than(pieces[at]) else -1


def _says_than(word: Piece) -> bool:
    """ "up from", "vs", "than", "better than", "beat"."""
    if word.kind is K.EARLIER:
        return word.told == COMPARES
    better = "better" in CUES_OF[word.text] and not is_one_word(word)
    return better or is_cued(word.text, BETTERING)


def _told_with_its_day(pieces: Sequence[Piece], day: int) -> int:
    """The place of the word that compares the sets in front of that day with others before it; 0 for none."""
    end = day - 1
    while end > 0 and pieces[end].kind is K.FILLER:
        end -= 1
    start = end
    while start > 0 and pieces[start].kind in OF_SETS:
        start -= 1
    told = K.TIMES in [piece.kind for piece in pieces[start : end + 1]] and kind_at(pieces, day + 1) in ENDS
    word = pieces[start]
    than = _says_than(word) or (word.kind is K.FILLER and is_cued(word.text, WAS))
    return start if told and than and any(piece.kind is K.TIMES for piece in pieces[:start]) else 0


def _other_sets(pieces: Sequence[Piece], start: int, end: int) -> bool:
    return any(piece.kind is K.TIMES for piece in (*pieces[:start], *pieces[end:]))
