"""How long a pause is asked for: until when and, where it does not begin at once, from when.

pause = { link } time { link time }
time  = day | NUMBER span | ONE span | "next week" | "next month"
span  = DAYS | WEEKS | MONTHS | FORTNIGHTS         for 1,5 weeks; a week and a half
link  = FROM, in front of the day it begins         three weeks from monday, from 12 dec until 20 dec
      | UNTIL in front of the day it ends               "until friday" goes on on Friday; "mon-fri" and "through friday"
                                                        hold the day, too

Each part in capitals is a cue of the language files. Every day and every number must have its part, and nothing may be
left out of it ("except sunday"): a pause of which one part is not understood is none.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import date, timedelta
from itertools import pairwise
from math import ceil
from typing import NamedTuple

from engine.reading.days.when import NEXT_MONTH, NEXT_WEEK, day_told
from engine.reading.values import Context
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import Phrasebook, spoken
from engine.reading.words.pieces import Piece

A_WEEK = 7
LONGEST = 400
SPANS = (("spandays", 1), ("spanweeks", A_WEEK), ("spanfortnights", 2 * A_WEEK), ("spanmonths", 30))
OF_A_TIME = frozenset((K.WEEKDAY, K.TOMORROW, K.TODAY, K.MONTH, K.ORDINAL, K.NUMBER, K.DATE, K.FUTURE, K.SLASH, K.HALF))
LEFT_OUT = frozenset((K.EXCEPT, K.ONLY, K.TIMES, K.YESTERDAY))


class Pause(NamedTuple):
    """`start` None: from now on; `until` None: until she is back. On the day `until` it is over."""

    start: date | None
    until: date | None


class _Time(NamedTuple):
    """A day, a number of days, or both: next week is a day and how long from there; with the words ahead of it."""

    day: date | None
    days: int
    ahead: Sequence[str]


def pause_told(pieces: Sequence[Piece], context: Context, book: Phrasebook, ahead: Sequence[str] = ()) -> Pause | None:
    """The pause that the pieces behind a word for it tell (`ahead`: that word); None where they tell none in full."""
    pieces = [piece for at, piece in enumerate(pieces) if not at or not _counts_a_day(pieces[at - 1], piece)]
    kinds = [piece.kind for piece in pieces]
    if context.now is None or not LEFT_OUT.isdisjoint(kinds) or _takes_out(pieces, book):
        return None
    times = list(_times(pieces, context, book, ahead))
    told = [one for one in times if one is not None]
    dated = not DATED.isdisjoint([piece.kind for piece in pieces])
    if not told or None in times or (dated and _is_lone(told, book)):
        return None
    return _put_together(told, context.now.date(), book)


def denies_a_pause(pieces: Sequence[Piece]) -> bool:
    """ "no belt, no pause": how the sets were done, and no pause from training."""
    return any(one.kind is K.DENY and two.kind is K.PAUSE for one, two in pairwise(pieces))


DATED = frozenset((K.NUMBER, K.ORDINAL))


def _counts_a_day(piece: Piece, stop: Piece) -> bool:
    """ "20. dezember": the stop ends no sentence."""
    return piece.kind is K.NUMBER and stop.kind is K.STOP and stop.glued


def rest_of_the_week(words: Sequence[str], context: Context, book: Phrasebook) -> Pause | None:
    """ "this week": until Monday. (The two words are one piece.)"""
    now, cues = context.now, book.cues
    told = len(words) == len(("this", "week")) and words[0] in cues["thisspan"] and words[1] in cues["spanweeks"]
    return Pause(None, now.date() + timedelta(days=A_WEEK - now.weekday())) if told and now is not None else None


def _takes_out(pieces: Sequence[Piece], book: Phrasebook) -> bool:
    """Whether something is taken out of it again: "but keep summaries", "every sunday"."""
    words = {word for piece in pieces for word in spoken(piece.text).split()}
    return not book.cues["but"].isdisjoint(words) or not book.cues["everyday"].isdisjoint(words)


def _times(pieces: Sequence[Piece], context: Context, book: Phrasebook, ahead: Sequence[str]) -> Iterator[_Time | None]:
    """Each time that is told; None for one that cannot be read."""
    words = list(ahead)
    run: list[Piece] = []
    for at, piece in enumerate(pieces):
        days = _days_of(piece, book)
        halved = at > 0 and piece.kind is K.HALF and _days_of(pieces[at - 1], book) > 0
        if days:
            half = at + 1 < len(pieces) and pieces[at + 1].kind is K.HALF
            yield _spanned(run, days, words, half=half, context=context, book=book)
            run, words = [], []
        elif not halved and (_tells_a_time(piece) or _joins_numbers(pieces, at)):
            run.append(piece)
        elif not halved and not (run and _dates_on(pieces, at)):
            if run:
                yield _dated(_with_month(run, pieces), context, words)
                run, words = [], []
            words.append(DASH if piece.kind is K.DASH else spoken(piece.text))
    if run:
        yield _dated(_with_month(run, pieces), context, words)


def _with_month(run: list[Piece], pieces: Sequence[Piece]) -> list[Piece]:
    """ "12-20 december": a day without its month is of the only month told."""
    months = [piece for piece in pieces if piece.kind is K.MONTH]
    alone = len(run) == len(months) == 1 and run[0].kind in (K.NUMBER, K.ORDINAL)
    return [*run, *months] if alone else run


DASH = "-"


def _tells_a_time(piece: Piece) -> bool:
    """Whether it is a day, a number or a part of them; "the plan" is of the future, and no day."""
    return piece.kind in OF_A_TIME and (piece.kind is not K.FUTURE or bool(piece.told))


def _dates_on(pieces: Sequence[Piece], at: int) -> bool:
    """Whether the word stands within a date: "monday the 24th", "1st of april"."""
    date_behind = at + 1 < len(pieces) and pieces[at + 1].kind in (K.ORDINAL, K.MONTH)
    return date_behind and pieces[at].kind in (K.FILLER, K.OF) and pieces[at - 1].kind in (K.WEEKDAY, K.ORDINAL)


def _joins_numbers(pieces: Sequence[Piece], at: int) -> bool:
    """ "1,5 weeks", "2026-03-12": one number or day, and no list."""
    around = [piece.kind for piece in pieces[at - 1 : at + 2]] if at else []
    dashed = K.DASH in [piece.kind for piece in (*pieces[max(0, at - 2) : at], *pieces[at + 1 : at + 3])]
    signed = around == [K.NUMBER, K.COMMA, K.NUMBER] or (dashed and around == [K.NUMBER, K.DASH, K.NUMBER])
    return signed and pieces[at].glued and pieces[at + 1].glued


def _days_of(piece: Piece, book: Phrasebook) -> int:
    """How many days the word is: 7 for "weeks"; 0 for any other."""
    if piece.kind is K.FUTURE:
        return 0  # "semana que vem" is a day
    word = spoken(piece.text)
    return next((days for cue, days in SPANS if word in book.cues[cue]), 0)


def _spanned(
    run: Sequence[Piece], days: int, words: Sequence[str], *, half: bool, context: Context, book: Phrasebook
) -> _Time | None:
    """ "two weeks", "a week and a half"; "the week" is over on Monday."""
    before = words[-1] if words else ""
    if not run and not half and days == A_WEEK and before in book.cues["thisspan"] and context.now is not None:
        today = context.now.date()
        return _Time(today + timedelta(days=A_WEEK - today.weekday()), 0, [*words, UNTIL])
    if not run and not book.cues["acouple"].isdisjoint(words):
        return _Time(None, 2 * days, words)
    if not run and not book.cues["vaguely"].isdisjoint(words):
        return _Time(None, UNTOLD, words)
    one = not run and (half or not before or before in book.cues["onespan"])
    amount = (1.0 if one else _amount(run)) + (0.5 if half else 0)
    whole = ceil(amount * days)
    return _Time(None, whole, words) if (one or run) and amount >= 1 and whole <= LONGEST else None


UNTIL, UNTOLD = "until", 0
"""How many days "a few days" are, nobody can say: the day on which they are over does."""


def _dated(run: Sequence[Piece], context: Context, words: Sequence[str]) -> _Time | None:
    """ "monday", "monday the 24th", "20 dec", "next week"."""
    day = day_told(run, context)
    named = [piece for piece in run if piece.kind in (K.WEEKDAY, K.TOMORROW, K.TODAY, K.FUTURE)]
    months = [piece for piece in run if piece.kind is K.MONTH]
    numbers = [piece for piece in run if piece.kind in (K.NUMBER, K.ORDINAL)]
    lone = len(numbers) <= (1 if months or named else MOST_NUMBERS)
    if day is None or not lone or len(named) > 1 or len(months) > 1:
        return None
    return _Time(day, _window(run[0], day), words)


MOST_NUMBERS = 3


def _amount(counted: Sequence[Piece]) -> float:
    """How many: 2, "two and a half", "1,5"; 0 where that cannot be told."""
    numbers = [piece for piece in counted if piece.kind is K.NUMBER]
    if len(numbers) == len(counted) == 1:
        return float(numbers[0].value)
    whole, tenth = (numbers[0], numbers[-1]) if numbers else (None, None)
    if len(counted) == MOST_NUMBERS and whole is not None and tenth is not None and counted[1].kind is K.COMMA:
        return float(f"{int(whole.value)}.{tenth.text}")
    return 0


def _window(piece: Piece, day: date) -> int:
    """How many days "next week", "next month", "tomorrow" are by themselves; 0 for a day that only ends something."""
    if piece.kind in (K.TOMORROW, K.TODAY):
        return 1
    if piece.kind is not K.FUTURE or piece.told not in (NEXT_WEEK, NEXT_MONTH):
        return 0
    if piece.told == NEXT_WEEK:
        return A_WEEK
    return ((day.replace(day=1) + timedelta(days=31)).replace(day=1) - day).days


def _put_together(times: Sequence[_Time], today: date, book: Phrasebook) -> Pause | None:
    """The pause that the times make; None where two would be the same part of it, or it would be over already."""
    starts: list[date] = []
    ends: list[date] = []
    spans: list[int] = []
    ends_told = any(one.day is not None and not one.days and not _is_from(one, book) for one in times)
    for at, one in enumerate(times):
        begins = _is_from(one, book) or _is_linked(times, at, book)
        if one.day is None:
            spans += [one.days] if one.days or not ends_told else []
        elif begins or (one.days and book.cues["untilday"].isdisjoint(one.ahead)):
            starts.append(one.day)
            spans += [one.days] if one.days and not begins else []
        else:
            ends.append(one.day + timedelta(days=_holds_its_last_day(times, at, book)))
    if max(len(starts), len(ends) + len(spans)) > 1 or UNTOLD in spans:
        return None
    start = next(iter(starts), None)
    until = next(iter(ends), None) or ((start or today) + timedelta(days=spans[0]) if spans else None)
    if (start is not None and start < today) or (until is not None and until <= max(start or today, today)):
        return None
    return Pause(None if start == today else start, until)


def _holds_its_last_day(times: Sequence[_Time], at: int, book: Phrasebook) -> bool:
    """Whether the pause goes on through the day that ends it: "through friday", "mon-fri", "12 to 20 dec"."""
    ahead = times[at].ahead
    spanned = at > 0 and times[at - 1].days <= 1 and (_is_from(times[at - 1], book) or _is_linked(times, at - 1, book))
    return not book.cues["lastdayin"].isdisjoint(ahead) or (
        spanned and (DASH in ahead or not book.cues["upto"].isdisjoint(ahead))
    )


def _is_lone(times: Sequence[_Time], book: Phrasebook) -> bool:
    """ "pause 20 dec": the day that it begins as well as the one that it ends."""
    one = times[0]
    linked = any(not book.cues[cue].isdisjoint(one.ahead) for cue in ("untilday", "fromday", "lastdayin"))
    return len(times) == 1 and one.day is not None and not one.days and not linked


def _is_from(one: _Time, book: Phrasebook) -> bool:
    return not book.cues["fromday"].isdisjoint(one.ahead)


def _is_linked(times: Sequence[_Time], at: int, book: Phrasebook) -> bool:
    """Whether the day is the first of "monday to friday", "mon-fri"."""
    behind = times[at + 1].ahead if at + 1 < len(times) else ()
    linked = DASH in behind or not book.cues["untilday"].isdisjoint(behind)
    return linked and times[at].day is not None and times[at + 1].day is not None
