"""A bare number that tells an hour or an age in a remark of its own: "10 8 7, got here at 7", "60s, i'm 61".

hour = ( start | separator ) word* CAME word* "at" NUMBER ( end | separator )       up to 24; without a set or a lift
     | "at" NUMBER "in" "the" PART-OF-THE-DAY
     | ( start | separator ) "at" [ "half" ] NUMBER BEGUN ( end | separator )
     | start [ day ] ( "at" NUMBER | HOURS "." MINUTES ) lift sets "x" reps       "18.30 squat 3x5 100"
session = separator SESSION NUMBER ( end | separator )                        "5 5 5, session 12"
age  = ( start | separator ) "I'm" NUMBER ( end | separator )
Where the word may as well tell of a load ("started at 7"), it is asked.
"""

from __future__ import annotations

from engine.reading.words.ahead import aside, kind_at
from engine.reading.words.cues import any_cued, cues_told, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role, kinds_in_order, places_of, texts_in_order

PARTING = frozenset((None, K.COMMA, K.STOP, K.LINE, K.OPEN, K.CLOSE, K.DASH, K.COLON))
PARTING_SETS = PARTING | {K.NUMBER}
""" "10 8 7 got here at 7": the words begin right behind the reps."""
OF_A_SET = frozenset((K.NUMBER, K.NAME, K.TIMES))
ATHOUR, CAME, BEGUN, ONESELF = (frozenset((cue,)) for cue in ("athour", "clocked", "begun", "oneself"))
SAYING_WHEN = ATHOUR | ONESELF | {"daycounted"}
NO_WORD = PARTING | OF_A_SET | {K.AT, K.SLASH, K.PLUS}
EARLIEST, LAST_HOUR, LAST_MINUTE, LAST_MONTH = 4, 24, "59", "12"
DAYS = frozenset((K.DATE, K.TODAY, K.WEEKDAY))
MOST_AHEAD = 5
"""Pieces up to the lift that an hour stands ahead of. Common practice, no source."""
MOST_WORDS = 6


def with_hour_ahead(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with an hour ahead of the first lift and its sets made a remark."""
    if not pieces or pieces[0].kind is K.NAME:
        return pieces
    at = next((place for place, piece in enumerate(pieces[:MOST_AHEAD]) if piece.kind is K.NUMBER), -1)
    if at < 0 or [piece.kind for piece in pieces[at + 1 : at + 4]] != [K.NAME, K.NUMBER, K.TIMES]:
        return pieces
    told = at > 0 and is_cued(pieces[at - 1].text, ATHOUR)
    if not told and kind_at(pieces, at + 5) is not K.NUMBER:
        return pieces  # "22.50 curl 3x10"
    start = at - 1 if told else at
    start -= start > 0 and is_cued(pieces[start - 1].text, ATHOUR)  # "a las 8"
    if not DAYS.issuperset([piece.kind for piece in pieces[:start]]) or not _is_an_hour(pieces[at], whole=told):
        return pieces
    return [*(piece._replace(kind=K.FILLER) for piece in pieces[:at]), aside(pieces[at]), *pieces[at + 1 :]]


def _is_an_hour(number: Piece, *, whole: bool) -> bool:
    """ "18", "18.30"; a number of hours alone must be led by a word."""
    _, sign, minutes = number.text.partition(".")
    clock = sign != "" and len(minutes) == len(LAST_MINUTE) and minutes <= LAST_MINUTE
    clock = clock and (whole or minutes > LAST_MONTH)  # "12.03 squat 3x5 100" tells a day
    return number.role is Role.BARE and (clock or (whole and not sign)) and EARLIEST <= number.value <= LAST_HOUR


def with_hours_beside(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with such numbers made part of the remark."""
    pieces = with_hour_ahead(pieces)
    return pieces if SAYING_WHEN.isdisjoint(cues_told(texts_in_order(pieces))) else _with_hours(pieces)


def _with_hours(pieces: list[Piece]) -> list[Piece]:
    numbers = places_of(K.NUMBER, kinds_in_order(pieces))
    worded = [at for at in numbers if at and pieces[at - 1].kind not in NO_WORD and pieces[at].role is Role.BARE]
    out = list(pieces) if worded else pieces
    for at in worded:
        piece = pieces[at]
        if (of_the_day := _is_of_the_day(pieces, at)) or _is_an_age_now(pieces, at):
            out[at] = aside(piece)
            out[at - 1] = pieces[at - 1]._replace(kind=K.FILLER) if of_the_day else out[at - 1]
            continue
        if kind_at(pieces, at + 1) not in PARTING:
            out[at] = piece._replace(kind=K.UNCLEAR) if _is_begun_at(pieces, at) else piece
            continue
        words = _words_before(pieces, at)
        beside = kind_at(pieces, at - 2) in BESIDE_SETS or (at == len(pieces) - 1 and kind_at(pieces, at - 2) is K.LINE)
        counted = beside and is_cued(pieces[at - 1].text, COUNTED)  # "session 12"
        if len(words) == 1 and (counted or is_cued(words[0].text, ONESELF)):
            out[at] = aside(piece)
        elif len(words) > 1 and is_cued(words[-1].text, ATHOUR) and piece.value <= LAST_HOUR:
            told = [word.text for word in words[:-1]]
            if any_cued(told, CAME):
                out[at - 1 : at + 1] = [words[-1]._replace(kind=K.FILLER), aside(piece)]
            elif any_cued(told, BEGUN) or any(word.kind is K.PLAIN for word in words):
                out[at] = piece._replace(kind=K.UNCLEAR)  # "(stopped at 8)"
    return out


def _is_an_age_now(pieces: list[Piece], at: int) -> bool:
    """ "i'm 40 now"."""
    now = kind_at(pieces, at + 1) is K.FILLER and kind_at(pieces, at + 2) in PARTING
    return now and is_cued(pieces[at - 1].text, ONESELF) and kind_at(pieces, at - 2) in PARTING


BESIDE_SETS = frozenset((K.COMMA, K.STOP, K.DASH, K.OPEN, K.NUMBER))
COUNTED = frozenset(("daycounted",))


def _is_of_the_day(pieces: list[Piece], at: int) -> bool:
    """ "at 7 in the morning"."""
    if not is_cued(pieces[at - 1].text, ATHOUR) or pieces[at].value > LAST_HOUR:
        return False
    behind = at + 1
    while kind_at(pieces, behind) is K.FILLER:
        behind += 1
    return at + 1 < behind < len(pieces) and is_cued(pieces[behind].text, PART_OF_THE_DAY)


PART_OF_THE_DAY = frozenset(("partofday",))


def _is_begun_at(pieces: list[Piece], at: int) -> bool:
    """ "om half 7 begonnen", "war um 7 da": an hour or a load, with the word for beginning behind it."""
    if not any_cued([pieces[at + 1].text], BEGUN) or kind_at(pieces, at + 2) not in PARTING:
        return False
    words = _words_before(pieces, at)
    words = words[:-1] if words and words[-1].kind is K.HALF else words
    return bool(words) and is_cued(words[-1].text, ATHOUR) and pieces[at].value <= LAST_HOUR


def _words_before(pieces: list[Piece], at: int) -> list[Piece]:
    """The words between a separator and the number here; none where a set or a lift is among them."""
    start = at
    while start and pieces[start - 1].kind not in PARTING_SETS and at - start < MOST_WORDS:
        start -= 1
    words = pieces[start:at]
    parted = start == 0 or pieces[start - 1].kind in PARTING_SETS
    return words if parted and OF_A_SET.isdisjoint([word.kind for word in words]) else []
