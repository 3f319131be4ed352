"""The weekdays of a paste of several: Monday, Wednesday, Friday, sent on a Monday: the first is that of last week."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta
from itertools import pairwise

from engine.reading.words.kinds import K
from engine.reading.words.lexicon import lexicon
from engine.reading.words.pieces import Piece

A_WEEK = timedelta(days=7)
FEWEST = 2


def in_turn(pieces: list[Piece], today: date) -> list[Piece]:
    """The pieces, weekdays that are today taken a week back where the days of the message then go forward."""
    dated = [(place, piece.day) for place, piece in enumerate(pieces) if piece.kind is K.DATE and piece.day is not None]
    if len(dated) < FEWEST:
        return pieces
    days = [day for _, day in dated]
    lead = _leading_todays([pieces[place] for place, _ in dated], today)
    if not 0 < lead < len(days) or days[lead] >= today:
        return pieces
    earlier = [today - A_WEEK] * lead + days[lead:]
    newest_first = _goes_back(days) and today - days[lead] <= days[lead] - earlier[0]
    if newest_first or not _goes_on(earlier):
        return pieces
    out = list(pieces)
    for place, _ in dated[:lead]:
        out[place] = out[place]._replace(day=today - A_WEEK)
    return out


def _leading_todays(dated: Sequence[Piece], today: date) -> int:
    """How many days at the head of the message are today, told as a day of the week."""
    for count, piece in enumerate(dated):
        meaning = lexicon().phrases.get(piece.text)
        if piece.day != today or meaning is None or meaning.kind is not K.WEEKDAY:
            return count
    return len(dated)


def _goes_on(days: Sequence[date]) -> bool:
    return all(before <= after for before, after in pairwise(days))


def _goes_back(days: Sequence[date]) -> bool:
    return all(before >= after for before, after in pairwise(days))
