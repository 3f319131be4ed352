"""Several days told for the same sets: nobody can say which sets are of which day, so none is recorded.

together = day ( "and" | "/" | "," ) day         tue and thu bench 3x8 70
shared   = day sets day sets name                mon 100x5 wed 105x5 squat
inside   = day sets name day sets                 mon 100x5 squat wed 105x5
behind   = sets day [ name ] sets day            squat 105x5 today 100x5 monday
nameless = day sets day sets, of the lift in hand  monday 3x5 100, wednesday 3x5 105; squat today 105x5 monday 100x5
"""

from __future__ import annotations

from datetime import date
from itertools import pairwise

from engine.reading.days.calendar_days import WORD_DAYS
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece

TWO_DAYS = 5
"""What a DATE piece's `told` says where it stands beside another day."""
JOINING = frozenset((K.AND, K.SLASH, K.COMMA, K.PLUS, K.FILLER, K.DASH))
PARTING = frozenset((K.COMMA, K.STOP, K.SLASH, K.AND, K.THEN, K.NUMBER, K.REPS, K.NAME, K.DASH, K.KG, K.LB))
PAIRING = frozenset((K.TIMES, K.AT, K.SLASH, K.FOR, K.KG, K.LB))


def with_days_apart(pieces: list[Piece], today: date) -> list[Piece]:
    """The pieces, each day that stands in the way of another marked so."""
    days = [_day_of(piece, today) for piece in pieces]
    told = [at for at, day in enumerate(days) if day is not None]
    if len(told) < 2 or not any(pieces[at].kind is K.DATE for at in told):
        return pieces
    clash: set[int] = set()
    for one, at in pairwise(told):
        if days[one] != days[at] and (_clashes(pieces, one, at) or (one in clash and _heads_sets(pieces, at))):
            clash.add(at)
    if not clash:
        return pieces
    first = min(clash)
    return [
        piece._replace(kind=K.DATE, day=None, told=TWO_DAYS) if at in clash or (at in told and at < first) else piece
        for at, piece in enumerate(pieces)
    ]


def _day_of(piece: Piece, today: date) -> date | None:
    if piece.kind is K.DATE:
        return piece.day
    told = WORD_DAYS.get(piece.kind)
    return told(piece, today, False) if told is not None else None


def _clashes(pieces: list[Piece], one: int, other: int) -> bool:
    """Whether the two days, different ones, are told of the same sets."""
    between = [piece.kind for piece in pieces[one + 1 : other]]
    if between and JOINING.issuperset(between) and not {K.AND, K.SLASH, K.COMMA, K.PLUS}.isdisjoint(between):
        return True
    if _both_have_the_sets(pieces, one, other, between) or _each_is_behind(pieces, one, other, between):
        return True
    if K.DATE not in (pieces[one].kind, pieces[other].kind) or not _heads_sets(pieces, other):
        return False
    if K.NAME in between:
        named = between.index(K.NAME)
        if named == 0 and between.count(K.NAME) == 1 and pieces[other - 1].kind in ENDS_OF_SETS:
            return not _is_named(pieces, other)  # "today squat 105x5 monday 100x5"
        return named == len(between) - 1 and between[max(0, named - 1)] is K.NUMBER and not _is_named(pieces, other)
    ahead = [piece.kind for piece in pieces[:one]]
    last = other - 1 - (pieces[other - 1].kind is K.COMMA)
    first = K.NUMBER not in ahead and pieces[last].kind in ENDS_OF_SETS  # "squat today 105x5 monday 100x5"
    if first and K.NAME not in ahead and K.LINE not in between and not PAIRING.isdisjoint(between):
        return True  # "mon 100x5 wed 105x5 squat"
    first = first and last == other - 1
    return K.NUMBER in between and (K.NAME not in ahead or first) and not _is_named(pieces, other)


def _both_have_the_sets(pieces: list[Piece], one: int, other: int, between: list[K]) -> bool:
    """ "for today: squat 3x5 100, from yesterday", "sunday catch up: squat on the 8th 3x5 100": a day ahead of the only
    lift, and another behind its name or its sets.
    """
    if {pieces[one].kind, pieces[other].kind} != {K.DATE} or between.count(K.NAME) != 1 or K.LINE in between:
        return False
    apart = other
    while pieces[apart - 1].kind in LEADING:
        apart -= 1
    behind = pieces[other + 1].kind if other + 1 < len(pieces) else None
    if pieces[apart - 1].kind is K.NAME:
        return behind in (K.NUMBER, K.COLON)
    return K.NUMBER in between and pieces[apart - 1].kind in ENDS_OF_SETS and behind in ENDS


def _each_is_behind(pieces: list[Piece], one: int, other: int, between: list[K]) -> bool:
    """ "squat 105x5 today 100x5 monday": sets in front of each day, and none behind the last."""
    behind = pieces[other + 1].kind if other + 1 < len(pieces) else None
    before = [piece.kind for piece in pieces[max(0, one - MOST_LEADING) : one]]
    if behind not in ENDS or K.LINE in between or PAIRING.isdisjoint(between):
        return False
    first = next((kind for kind in between if kind not in LEADING_TO_SETS), None)
    return first in SETS_BEGIN and _last_of(before) in ENDS_OF_SETS and _last_of(between) in ENDS_OF_SETS


LEADING_TO_SETS = frozenset((K.CLOSE,))
SETS_BEGIN = frozenset((K.NUMBER, K.NAME))
MOST_LEADING = 3


def _last_of(kinds: list[K]) -> K | None:
    """The last kind but for what leads to a day: "100x5 on monday", "100x5 (monday)"."""
    return next((kind for kind in reversed(kinds) if kind not in (K.FILLER, K.OPEN, K.LAST)), None)


LEADING = frozenset((K.COMMA, K.STOP, K.OPEN, K.DASH, K.FILLER, K.NOT_DATE, K.LAST))
ENDS_OF_SETS = frozenset((K.NUMBER, K.KG, K.LB, K.REPS, K.EFFORT))
ENDS = (None, K.LINE, K.STOP, K.CLOSE, K.COMMA)


def _heads_sets(pieces: list[Piece], at: int) -> bool:
    """ "wed 105x5", "today: 105x5"."""
    ahead = at + 1
    while ahead < len(pieces) and pieces[ahead].kind in (K.COLON, K.FILLER, K.LINE):
        ahead += 1
    paired = [piece.kind for piece in pieces[ahead : ahead + 2]]
    parted = pieces[at - 1].kind in PARTING or pieces[at - 1].kind is K.LINE
    return parted and paired[:1] == [K.NUMBER] and not PAIRING.isdisjoint(paired[1:])


def _is_named(pieces: list[Piece], at: int) -> bool:
    """ "wednesday 80x5 bench"."""
    start = at + 1
    while start < len(pieces) and pieces[start].kind in (K.LINE, K.COLON):
        start += 1
    for piece in pieces[start:]:
        if piece.kind is K.NAME:
            return True
        if piece.kind in (K.COMMA, K.STOP, K.LINE, K.THEN, K.DATE):
            return False
    return False
