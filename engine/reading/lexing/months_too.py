"""The short name of a lift that is a month as well, "dec", beside a day.

month = ( "until" | "on" ) ( day name | name day )         until 20 dec, on dec 3: no lift of that short name
      | PAUSING [ day "-" ] ( day name | name day )        away 12-20 dec: nobody pauses a lift so
      | ( day name | name day ) [ ":" ] lift, at its head  20 dec: squat 3x5 100, dec 2 squat 3x5 100
      | ORDINAL [ "of" ] name | name ORDINAL               the 2nd of dec, dec 1st
      | ( day name | name day ) YEAR | "(" name day ")"    2 dec 2025
      | lift sets name day end                             squat 3x5 100 dec 2; behind a comma it is asked
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import is_cued
from engine.reading.words.kept import Kept
from engine.reading.words.kinds import K
from engine.reading.words.lexicon import lexicon
from engine.reading.words.pieces import Piece, Role

MOST_DAYS = 31
AHEAD_OF_A_DATE = frozenset((None, K.LINE, K.WEEKDAY))
BEHIND_A_DATE = frozenset((K.COLON, K.LINE, K.COMMA, K.DASH))
OF_SETS = frozenset((K.NUMBER, K.TIMES, K.WITH, K.AT, K.SLASH, K.COMMA, K.KG, K.LB, K.REPS, K.FOR, K.DASH))
LEADING_TO_A_DAY = frozenset(("onday", "upto", "untilday"))
ENDS = frozenset((None, K.LINE, K.STOP, K.CLOSE))
ENDS_OF_SETS = frozenset((K.NUMBER, K.KG, K.LB, K.EFFORT, K.REPS))
YEARS = ("19", "20")


def _month_of(word: str) -> int:
    meaning = lexicon().phrases.get(word)
    return meaning.value or 0 if meaning is not None and meaning.kind is K.MONTH else 0


MONTHS_TOO = Kept(_month_of)
"""The month that a lift's name is as well, "dec"; 0 for any other name."""


def tells_a_date(pieces: Sequence[Piece], at: int) -> bool:
    """Whether the word is the month of a date: a day beside it, where no sets of a lift of that name are told."""
    if kind_at(pieces, at - 1) is K.OF and kind_at(pieces, at - 2) is K.ORDINAL:
        return True
    if at and _is_a_day(pieces[at - 1]) and _behind_a_day(pieces, at):
        return True
    day = at + 1 + (kind_at(pieces, at + 1) is K.STOP and pieces[at + 1].glued)  # "dec. 2"
    return day < len(pieces) and _is_a_day(pieces[day]) and _ahead_of_a_day(pieces, at, day)


def _behind_a_day(pieces: Sequence[Piece], at: int) -> bool:
    ahead, behind = kind_at(pieces, at - 2), kind_at(pieces, at + 1)
    if ahead in AHEAD_OF_A_DATE and (behind is K.NAME or behind in BEHIND_A_DATE):
        return True
    if pieces[at - 1].kind is K.ORDINAL or _is_a_year(pieces, at + 1) or (ahead is K.OPEN and behind is K.CLOSE):
        return True
    return (at > 1 and _leads_to_a_day(pieces[at - 2])) or _pauses(pieces, at)


def _ahead_of_a_day(pieces: Sequence[Piece], at: int, day: int) -> bool:
    ahead, behind = kind_at(pieces, at - 1), kind_at(pieces, day + 1)
    if ahead is K.COMMA and kind_at(pieces, at - 2) is K.WEEKDAY:
        ahead = K.WEEKDAY  # "mon, dec 2: squat 3x5 100"
    if pieces[day].kind is K.ORDINAL:
        return behind is not K.SETS
    if _is_a_year(pieces, day + 1) or (ahead is K.OPEN and behind is K.CLOSE) or _pauses(pieces, at):
        return True
    if ahead in AHEAD_OF_A_DATE:
        named = behind is K.NAME and kind_at(pieces, day + 2) is K.NUMBER
        return named or (behind in BEHIND_A_DATE and kind_at(pieces, day + 2) is K.NAME)
    if ahead in ENDS_OF_SETS and behind in ENDS:
        return any(piece.kind is K.TIMES for piece in pieces[:at])  # "squat 3x5 100 dec 2"
    return at > 0 and _leads_to_a_day(pieces[at - 1]) and behind not in OF_SETS


def may_be_a_date(pieces: Sequence[Piece], at: int) -> bool:
    """ "squat 3x5 100, dec 2": a day, or the reps of that lift at a load known from before."""
    parted = kind_at(pieces, at - 1) is K.COMMA and kind_at(pieces, at + 2) in ENDS
    counted = parted and at + 1 < len(pieces) and _is_a_day(pieces[at + 1]) and pieces[at + 1].kind is K.NUMBER
    return counted and any(piece.kind is K.TIMES for piece in pieces[:at])


def _is_a_year(pieces: Sequence[Piece], at: int) -> bool:
    """ "2 dec 2025": four figures, and no load of a set."""
    four = kind_at(pieces, at) is K.NUMBER and len(pieces[at].text) == 4 and pieces[at].text.isdigit()
    return four and pieces[at].text.startswith(YEARS) and kind_at(pieces, at + 1) is not K.TIMES


def _pauses(pieces: Sequence[Piece], at: int) -> bool:
    """Whether a word for a pause stands in front, and no sets anywhere: "pause 20 dec", "off 12 to 20 dec"."""
    if len(pieces) > LONGEST_PAUSE:
        return False
    told = any(is_cued(piece.text, PAUSING) and not is_cued(piece.text, NOT_OFF) for piece in pieces[:at])
    return told and not any(_tells_of_sets(piece) for piece in pieces)


def _tells_of_sets(piece: Piece) -> bool:
    if piece.kind is K.NAME:
        return not MONTHS_TOO[piece.text]
    return piece.kind in COUNTING or (piece.kind is K.NUMBER and not _is_a_day(piece))


COUNTING = frozenset((K.TIMES, K.COUNT, K.AT, K.KG, K.LB, K.REPS, K.SETS, K.COMMA, K.LINE))
PAUSING, NOT_OFF = frozenset(("pausing",)), frozenset(("notoff",))
LONGEST_PAUSE = 14


def _is_a_day(piece: Piece) -> bool:
    bare = piece.kind is K.NUMBER and piece.role is Role.BARE and piece.text.isdigit()
    return piece.kind is K.ORDINAL or (bare and 1 <= piece.value <= MOST_DAYS)


def _leads_to_a_day(piece: Piece) -> bool:
    return piece.kind is K.NOT_DATE or (piece.kind is K.FILLER and is_cued(piece.text, LEADING_TO_A_DAY))
