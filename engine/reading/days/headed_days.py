"""Dates that stand apart from the sets: at the head of a line of their own, behind its words, or at the very end.

heading = [ words ] d/m [ words ] on the first line or behind an empty one     16/9     legs 11/03     16/9 push
        | words d [ "." | "of" ] MONTH                                          za 8 maart     push day, 8 march
end     = d/m with a zero in front, behind the sets                            squat 3x5 100 12/03
amid    = d.m. between a lift or its sets and numbers or the end               lat pulldown 13.3. 12 10 9
opening = words ( d/m | d.m. ) ":" lift                                        at the gym 12/3: squat 3x5 100
"""

from __future__ import annotations

from datetime import timedelta

from engine.reading.days.day_places import MOST_WORDS_OF_AN_OPENING, SAID
from engine.reading.days.headings import counts_headings
from engine.reading.words.ahead import kind_at
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role, kinds_in_order

WORDS_OF_A_HEADING = frozenset(
    (K.HEADING, K.MUSCLE, K.NOTE, K.FILLER, K.PLAIN, K.DASH, K.AND, K.VARIANT, K.WEEKDAY)
) | {K.COMMA, K.OPEN}
BELOW_A_DAY = frozenset((K.NAME, K.WARMUP, K.HEADING))
PADDED = 2


def stands_apart(pieces: list[Piece], at: int) -> bool:
    """Whether the number here begins a date that its place tells, and no sign in front of it."""
    return (
        ends_a_heading(pieces, at)
        or _is_padded_apart(pieces, at)
        or _is_dotted_apart(pieces, at)
        or _ends_an_opening(pieces, at)
        or ends_the_message(pieces, at)
        or _closes_with_a_month(pieces, at)
    )


def ends_the_message(pieces: list[Piece], at: int) -> bool:
    """ "squat 100 5 5 5 14/3": the only pair at a slash, which ends the message behind its sets."""
    pair = pieces[at : at + 3]
    if [piece.kind for piece in pair] != [K.NUMBER, K.SLASH, K.NUMBER] or not (pair[1].glued and pair[2].glued):
        return False
    before = kind_at(pieces, at - 1)
    behind = at + 3 + (before is K.OPEN and kind_at(pieces, at + 3) is K.CLOSE)
    if behind < len(pieces) or before not in BEFORE_A_DAY_AMID or not (before is K.OPEN or not pair[0].glued):
        return False
    a_day = max(pair[0].value, pair[2].value) <= LAST_DAY_OF_A_MONTH and min(pair[0].value, pair[2].value) > 0
    padded = any(one.text[0] == "0" for one in (pair[0], pair[2]))
    return a_day and not padded and kinds_in_order(pieces).count(K.SLASH) == 1


def _closes_with_a_month(pieces: list[Piece], at: int) -> bool:
    """ "squat 3x5 100 14 mar", "squat 3x5 100, 14 march 2025"."""
    worded = _before_month(pieces, at)
    return (
        worded > 0 and kind_at(pieces, at + worded) in (None, K.LINE) and kind_at(pieces, at - 1) in BEFORE_A_DAY_AMID
    )


def heads_a_lift(pieces: list[Piece], at: int) -> bool:
    """ "14.03 squat 3x5 100", "fri 14.3 squat 3x5 100": a month with a zero, or a weekday in front."""
    if not _is_a_day(pieces[at].text) or kind_at(pieces, at + 1) not in (K.NAME, K.COLON):
        return False
    _, _, month = pieces[at].text.partition(".")
    return len(month) == PADDED or kind_at(pieces, at - 1) is K.WEEKDAY


def opens_plainly(first: Piece) -> bool:
    """Whether neither a day nor an hour nor a sign opens the message: "14.03 squat 3x5", "18.30 squat 3x5 100"."""
    return first.kind is not K.TIMES and "." not in first.text


def day_and_month(text: str) -> tuple[int, int] | None:
    """The two numbers of "13.3", whether there is such a day or not; None for "3.5°", "3o.1", "13.3.3"."""
    day, _, month = text.partition(".")
    return (int(day), int(month)) if day.isdecimal() and month.isdecimal() else None


def _is_a_day(text: str) -> bool:
    day, month = day_and_month(text) or (0, 0)
    return 0 < day <= LAST_DAY_OF_A_MONTH and 0 < month <= MONTHS_OF_A_YEAR


def _is_dotted_apart(pieces: list[Piece], at: int) -> bool:
    """ "lat pulldown 13.3. 12 10 9", "squat 3x5 100 13.3.": a day and a month, and no load that plates make."""
    if pieces[at].text.count(".") != 1 or kind_at(pieces, at + 1) is not K.STOP or not pieces[at + 1].glued:
        return False
    a_day = _is_a_day(pieces[at].text) and pieces[at].role is Role.BARE
    halved = pieces[at].value * 2 % 1 == 0
    before = kind_at(pieces, at - 1)
    ends = not halved and before in BEFORE_A_DAY_AMID and (before is K.OPEN or not pieces[at].glued)
    return a_day and ends and kind_at(pieces, at + 2) in BEHIND_A_DAY_AMID


LAST_DAY_OF_A_MONTH, MONTHS_OF_A_YEAR = 31, 12
BEFORE_A_DAY_AMID = frozenset((K.NAME, K.NUMBER, K.KG, K.LB, K.REPS, K.COMMA, K.DASH, K.OPEN, K.WEEKDAY))
BEHIND_A_DAY_AMID = frozenset((None, K.NUMBER, K.COMMA, K.COLON, K.DASH, K.LINE, K.CLOSE))


def _ends_an_opening(pieces: list[Piece], at: int) -> bool:
    """ "at the gym 12/3: squat 3x5 100", "this is 13.3.: squat": words alone in front, a colon and a lift behind."""
    slashed = [piece.kind for piece in pieces[at + 1 : at + 3]] == [K.SLASH, K.NUMBER] and pieces[at + 1].glued
    end = at + 3 if slashed else at + 2
    dotted = "." in pieces[at].text and kind_at(pieces, at + 1) is K.STOP
    if not (slashed or dotted) or kind_at(pieces, end) is not K.COLON or kind_at(pieces, end + 1) not in BELOW_A_DAY:
        return False
    start = at
    while start and pieces[start - 1].kind is not K.LINE and at - start <= MOST_WORDS_OF_AN_OPENING:
        start -= 1
    ahead = [piece.kind for piece in pieces[start:at]]
    return len(ahead) <= MOST_WORDS_OF_AN_OPENING and SAID.isdisjoint(ahead)


def _is_padded_apart(pieces: list[Piece], at: int) -> bool:
    """ "12/03" behind the sets, or between a lift and its sets: nobody counts reps with a zero in front."""
    pair = pieces[at : at + 3]
    if len(pair) < 3 or pair[1].kind is not K.SLASH or not (pair[1].glued and pair[2].glued) or not at:
        return False
    padded = any(len(one.text) == PADDED and one.text[0] == "0" for one in (pair[0], pair[2]))
    behind = pieces[at + 3].kind if at + 3 < len(pieces) else None
    apart = not pair[0].glued or pieces[at - 1].kind is K.OPEN
    between = pieces[at - 1].kind is K.NAME and behind in (K.NUMBER, K.COLON, K.COMMA)
    return padded and apart and (between or behind not in BEHIND_A_PAIR)


BEHIND_A_PAIR = frozenset((K.TIMES, K.SLASH, K.NUMBER, K.COUNT, K.KG, K.LB, K.REPS, K.AT, K.SETS))


def ends_a_heading(pieces: list[Piece], at: int) -> bool:
    """ "legs 11/03" on a line of its own: only words in front of the number, and more lines below."""
    sign = pieces[at + 1].kind if at + 1 < len(pieces) else None
    dotted = "." in pieces[at].text and sign in (K.STOP, K.LINE)
    worded = _before_month(pieces, at)
    if not dotted and not worded and not (sign is K.SLASH and pieces[at + 1].glued):
        return False
    start = at
    while start and (pieces[start - 1].kind in WORDS_OF_A_HEADING or counts_headings(pieces, start - 1)):
        start -= 1
    end = at + (1 if dotted else worded or 3)
    while end < len(pieces) and pieces[end].kind in ENDS_OF_A_HEADING:
        end += 1
    heads = start < at and (start == 0 or pieces[start - 1].kind is K.LINE)
    return heads and end + 1 < len(pieces) and pieces[end].kind is K.LINE


def is_before_a_month(piece: Piece) -> bool:
    """Whether this may stand between a day and its month: "8. März", "10 de marzo", "8 of march"."""
    return piece.kind in (K.STOP, K.OF) or piece.text in ("de", "di", "do")


def _before_month(pieces: list[Piece], at: int) -> int:
    """How many pieces "8 march", "8. März", "8 march 2025" has; 0 where it is none."""
    month = at + 1 + (at + 1 < len(pieces) and is_before_a_month(pieces[at + 1]))
    if month >= len(pieces) or pieces[month].kind is not K.MONTH:
        return 0
    year = month + 1 < len(pieces) and len(pieces[month + 1].text) == LENGTH_OF_A_YEAR
    return month + 1 + (year and pieces[month + 1].kind is K.NUMBER) - at


LENGTH_OF_A_YEAR = 4
ENDS_OF_A_HEADING = (K.STOP, K.COLON, K.CLOSE)


def heads_a_day(numbers: list[Piece], pieces: list[Piece], end: int) -> bool:
    """Whether "16/9", or "16/9 push", is a line of its own, the first or behind an empty one, with a lift on the next;
    or a weekday stands before it: "mon 16/9".
    """
    start = next(at for at in range(end - 1, -1, -1) if pieces[at] == numbers[0])
    before = pieces[start - 1].kind if start else None
    if before is K.WEEKDAY:
        return True
    at = end
    while at < len(pieces) and pieces[at].kind in WORDS_OF_A_HEADING:
        at += 1
    end = at
    while at < len(pieces) and pieces[at].kind is K.LINE:
        at += 1
    lone = before in (None, K.LINE) and at > end and at < len(pieces) and pieces[at].kind in BELOW_A_DAY
    return lone and (start == 0 or _opens_a_day(pieces, start))


def rates_a_state(numbers: list[Piece], pieces: list[Piece], end: int) -> bool:
    """ "8/10 mood, squat 3x5 100": out of ten, where that day would be long ago."""
    return len(numbers) == len(("8", "10")) and numbers[1].value == OUT_OF and kind_at(pieces, end) in RATED


OUT_OF, TOLD_LATE = 10, timedelta(days=14)
"""Within so many days a workout is still told by its date. Common practice, no source."""
RATED = frozenset((K.NOTE, K.PLAIN, K.UNRELATED))


def _opens_a_day(pieces: list[Piece], start: int) -> bool:
    """Whether an empty line stands above, or the message began with such a line itself."""
    empty = start > 1 and pieces[start - 2].kind is K.LINE
    head = [piece.kind for piece in pieces[:4]]
    return empty or head == [K.NUMBER, K.SLASH, K.NUMBER, K.LINE]
