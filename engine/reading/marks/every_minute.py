"""One lift every minute on the minute: as many sets as minutes, "squat emom 10 min 3 reps 70"; common practice.

told = EMOM [ "for" ] MINUTES | MINUTES EMOM           in a line of one lift, with or without a colon
Above other lines, and with several lifts in turn, how many sets each had is not known: that is left to be asked. For as
many reps as possible the minutes count nothing.
"""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal

from engine.reading.words.ahead import aside, kind_at
from engine.reading.words.kinds import K
from engine.reading.words.pieces import (
    MOST_LOADED_REPS,
    MOST_SETS,
    NOTHING,
    SIXTY,
    Piece,
    Role,
    kinds_in_order,
    places_in,
    places_of,
)

EVERY_MINUTE = "emom"
HEADS = frozenset((K.HEADING, K.MAX))
BETWEEN = frozenset((K.FILLER, K.FOR))
MOST_MINUTES = 60
COUNTING_ON = frozenset((K.TIMES, K.SETS, K.SLASH, K.DASH))


def with_every_minute(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with such minutes made the sets of their lift, or a remark beside as many reps as possible."""
    kinds = kinds_in_order(pieces)
    for at in reversed(places_in(HEADS, kinds)):
        if pieces[at].kind is K.MAX or pieces[at].text == EVERY_MINUTE:
            place = _minutes_beside(pieces, at)
            if place >= 0:
                pieces = _with_minutes(pieces, at, place)
    return pieces


def _minutes_beside(pieces: Sequence[Piece], at: int) -> int:
    """The place of the minutes behind the word there, or ahead of it; -1 for none."""
    behind = at + 1
    while kind_at(pieces, behind) in BETWEEN:
        behind += 1
    timed = pieces[at].kind is K.MAX
    if _tells_minutes(pieces, behind, timed=timed):
        return behind
    return at - 1 if _tells_minutes(pieces, at - 1, timed=True) else -1


def _tells_minutes(pieces: Sequence[Piece], at: int, *, timed: bool) -> bool:
    if kind_at(pieces, at) is not K.NUMBER or kind_at(pieces, at + 1) in COUNTING_ON:
        return False
    number = pieces[at]
    if number.role is Role.SECONDS:
        return SIXTY <= number.value <= SIXTY * MOST_MINUTES
    return not timed and number.role is Role.BARE and number.text.isdigit() and 1 < number.value <= MOST_MINUTES


def _with_minutes(pieces: list[Piece], at: int, place: int) -> list[Piece]:
    """The pieces without the word and its minutes, whose lift has so many sets; the number that was read with them
    stands for itself, "emom 10 min 5".
    """
    told = pieces[place]
    minutes, more = divmod(told.value, SIXTY) if told.role is Role.SECONDS else (told.value, NOTHING)
    split = [told._replace(value=Decimal(more), role=Role.BARE, text=str(more))] if more else []
    first, last = min(at, place), max(at, place)
    if pieces[at].kind is K.MAX:
        if kind_at(pieces, place + 1) in (K.LINE, K.COLON):
            return pieces  # heads the lifts below it
        return [*pieces[:place], aside(told), *split, *pieces[place + 1 :]]
    kinds = kinds_in_order(pieces)
    if kinds.count(K.NAME) != 1 or K.LINE in kinds:
        return pieces
    if _counts_sets(pieces, kinds):
        return [*pieces[:at], pieces[at]._replace(kind=K.FILLER), *pieces[at + 1 :]]  # "5x3 emom 60": the load
    last += kind_at(pieces, last + 1) is K.COLON
    sets = told._replace(value=Decimal(minutes), role=Role.SETS, text=str(minutes))
    rest = [*pieces[:first], *split, *pieces[last + 1 :]]
    name = next(place for place, piece in enumerate(rest) if piece.kind is K.NAME)
    return [*rest[: name + 1], sets, *rest[name + 1 :]]


def _counts_sets(pieces: Sequence[Piece], kinds: Sequence[K]) -> bool:
    """Whether sets are counted beside, "5x3 emom 60"."""
    if any(piece.role is Role.SETS for piece in pieces):
        return True
    pairs = [
        (pieces[at - 1].value, pieces[at + 1].value) for at in places_of(K.TIMES, kinds) if 0 < at < len(pieces) - 1
    ]
    return any(sets <= MOST_SETS and reps <= MOST_LOADED_REPS for sets, reps in pairs)
