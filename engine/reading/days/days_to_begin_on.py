"""Days of the week that something is to begin on, with the words beside them: a time to come, and none of the past.

day = STARTS word* WEEKDAY | FROM WEEKDAY ONWARD | FROM "and" "with" WEEKDAY
"ab montag", "à partir de lundi", "starting monday", "from monday on", "från och med måndag". Parts in capitals are cues
of the language files.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import any_cued, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.lexicon import lexicon, plain_word
from engine.reading.words.pieces import TEXT, Piece, kinds_in_order, places_in

STARTS, ONWARD, FROM = frozenset(("startson",)), frozenset(("onward",)), frozenset(("startingon", "fromwhen"))
CUES = STARTS | FROM
LITTLE = frozenset((K.FILLER, K.OF, K.WITH, K.FOR, K.NOT_DATE, K.PLAIN, K.LAST))
REACH = 3
OF_A_WEEK = frozenset((K.WEEKDAY, K.ORDINAL))


def with_days_to_begin_on(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with each such day and the words that lead to it made one word of a time to come."""
    if not any_cued(map(TEXT, pieces), CUES):
        return pieces
    out = list(pieces)
    for at in reversed(places_in(OF_A_WEEK, kinds_in_order(pieces))):
        start, end = _begins_on(pieces, at) if _is_a_day(pieces[at]) else (0, 0)
        if end:
            out[start:end] = [pieces[start]._replace(kind=K.FUTURE, told=0, end=pieces[end - 1].end)]
    return out


def _is_a_day(piece: Piece) -> bool:
    """ "a partir de segunda": an ordinal that is a day of the week, too."""
    return piece.kind is K.WEEKDAY or plain_word(piece.text) in lexicon().also_weekdays


def _begins_on(pieces: Sequence[Piece], at: int) -> tuple[int, int]:
    """Where the words about the day begin and end; twice 0 where it is none to begin on."""
    start = at
    while start and at - start < REACH and pieces[start - 1].kind in LITTLE:
        start -= 1
        if is_cued(pieces[start].text, STARTS):
            return start, at + 1
    if at and is_cued(pieces[at - 1].text, FROM):
        behind = next((end for end in (at + 1, at + 2) if _says_onward(pieces, end)), 0)
        return (at - 1, behind + 1) if behind else (0, 0)
    linked = [piece.kind for piece in pieces[max(0, at - 2) : at]] == [K.AND, K.WITH]
    return (at - REACH, at + 1) if linked and at >= REACH and is_cued(pieces[at - REACH].text, FROM) else (0, 0)


def _says_onward(pieces: Sequence[Piece], at: int) -> bool:
    return kind_at(pieces, at) is not None and is_cued(pieces[at].text, ONWARD)
