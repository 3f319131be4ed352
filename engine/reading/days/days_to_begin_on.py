"""Days of the week that something is to begin on, with the words beside them: a time to come, and none of the past.

day = STARTS word* WEEKDAY | FROM WEEKDAY ONWARD | FROM "and" "with" WEEKDAY
    | WEEKDAY word* BEGINS | BEGINS word* WEEKDAY
"ab montag", "à partir de lundi", "starting monday", "from monday on", "från och med måndag"; "monday i start 5x5", "el
lunes empiezo". Parts in capitals are cues of the language files; what begins is a verb of the first person, or stands
beside "i" or "we", and sets may stand between it and the day.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import any_cued, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.lexicon import lexicon, plain_word
from engine.reading.words.pieces import TEXT, Piece, kinds_in_order, places_in

STARTS, ONWARD, FROM = frozenset(("startson",)), frozenset(("onward",)), frozenset(("startingon", "fromwhen"))
BEGINS, MAY_BEGIN, PERSON = frozenset(("begins",)), frozenset(("maybegin",)), frozenset(("me", "we"))
CUES = STARTS | FROM | BEGINS | MAY_BEGIN
LITTLE = frozenset((K.FILLER, K.OF, K.WITH, K.FOR, K.NOT_DATE, K.PLAIN, K.LAST))
TOLD_BETWEEN = LITTLE | {K.NUMBER, K.TIMES, K.NAME, K.SETS, K.REPS, K.KG, K.LB, K.AT}
PAIR = [K.NUMBER, K.TIMES, K.NUMBER]
REACH, FAR = 3, 8
OF_A_WEEK = frozenset((K.WEEKDAY, K.ORDINAL))


def with_days_to_begin_on(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with each such day and the words that lead to it made one word of a time to come."""
    if not any_cued(map(TEXT, pieces), CUES):
        return pieces
    out = list(pieces)
    for at in reversed(places_in(OF_A_WEEK, kinds_in_order(pieces))):
        start, end = _begins_on(pieces, at) if _is_a_day(pieces[at]) else (0, 0)
        if not end and _is_a_day(pieces[at]) and _is_begun_then(pieces, at):
            start, end = at, at + 1
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


def _is_begun_then(pieces: Sequence[Piece], at: int) -> bool:
    """ "monday i start 5x5", "i start 5x5 on monday", "el lunes empiezo con 5x5"."""
    if _starts_with_a_pair(pieces, at):
        return True
    return _begins_within(pieces, range(at - 1, max(-1, at - 1 - FAR), -1)) or _begins_within(
        pieces, range(at + 1, min(len(pieces), at + 1 + REACH))
    )


def _starts_with_a_pair(pieces: Sequence[Piece], at: int) -> bool:
    """ "starting 5x5 monday", "starting with 5x5 on monday": sets and reps without a load."""
    behind = at - (kind_at(pieces, at - 1) is K.FILLER)
    first = behind - len(PAIR)
    if first < 1 or kinds_in_order(pieces[first:behind]) != PAIR:
        return False
    return is_cued(pieces[first - 1 - (pieces[first - 1].kind is K.WITH and first > 1)].text, STARTS)


def _begins_within(pieces: Sequence[Piece], places: range) -> bool:
    """Whether such a verb stands in reach, and nothing but words and sets ahead of it."""
    for at in places:
        if is_cued(pieces[at].text, BEGINS) or (is_cued(pieces[at].text, MAY_BEGIN) and _of_a_person(pieces, at)):
            return True
        if pieces[at].kind not in TOLD_BETWEEN and not is_cued(pieces[at].text, PERSON):
            return False
    return False


def _of_a_person(pieces: Sequence[Piece], at: int) -> bool:
    """ "i start", "begin ik": the person on either side."""
    beside = [*pieces[max(0, at - 1) : at], *pieces[at + 1 : at + 2]]
    return any(is_cued(piece.text, PERSON) for piece in beside)
