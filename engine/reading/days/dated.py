"""A message with the days that are told gathered into one piece each, where anything in it may tell a day."""

from __future__ import annotations

from engine.reading.days.dates import with_dates
from engine.reading.days.day_starts import DATE_KINDS
from engine.reading.days.days_of_what_was import without_days_of_what_was
from engine.reading.days.days_to_begin_on import OF_A_WEEK, with_days_to_begin_on
from engine.reading.days.halves_of_days import without_halves
from engine.reading.days.headed_days import TOLD_LATE, heads_a_lift
from engine.reading.days.weekday_dates import with_weekdays_dated, with_years_by_weekdays
from engine.reading.values import Context
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece


def dated(pieces: list[Piece], kinds: set[K], context: Context) -> list[Piece]:
    """The pieces, which are of these kinds, with the days that are told gathered into one piece each."""
    dotted = bool(pieces) and heads_a_lift(pieces, 0)
    if dotted or not kinds.isdisjoint(MAY_TELL_A_DAY) or (K.LINE in kinds and _heads_with_a_number(pieces)):
        pieces = without_halves(pieces if kinds.isdisjoint(OF_A_WEEK) else with_days_to_begin_on(pieces))
        pieces = without_days_of_what_was(pieces, kinds) if K.COMMA in kinds else pieces
        if K.ORDINAL in kinds and K.WEEKDAY in kinds and context.now is not None:
            pieces = with_weekdays_dated(pieces, context.now.date())
        told = with_dates(pieces, context.now, context.unit)
        if K.WEEKDAY in kinds and context.now is not None:
            told = with_years_by_weekdays(told, pieces, context.now.date())
        if _may_be_reps_in_hand(pieces, told, context):
            return [*pieces[:3], *dated(pieces[3:], kinds, context)]
        return told
    return pieces


def _may_be_reps_in_hand(pieces: list[Piece], told: list[Piece], context: Context) -> bool:
    """ "10/8" above another lift, while one is being done: its reps, where the day would be long ago."""
    if context.doing is None or context.now is None or [piece.kind for piece in pieces[:4]] != LONE_PAIR:
        return False
    padded = any(piece.text[0] == "0" for piece in pieces[:3])
    day = told[0].day if told[0].kind is K.DATE else None
    return day is not None and not padded and context.now.date() - day > TOLD_LATE


LONE_PAIR = [K.NUMBER, K.SLASH, K.NUMBER, K.LINE]


def _heads_with_a_number(pieces: list[Piece]) -> bool:
    """ "17.9", "session 5, 10.03" on a line of its own."""
    head = pieces[: LONGEST_HEADING + 1]
    end = next((at for at, piece in enumerate(head) if piece.kind is K.LINE), 0)
    return end > 0 and head[end - 1].kind is K.NUMBER and "." in head[end - 1].text


LONGEST_HEADING = 8


MAY_TELL_A_DAY = DATE_KINDS | {K.SLASH, K.DASH, K.STOP, K.ORDINAL}
