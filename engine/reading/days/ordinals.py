"""Ordinals in figures amid a message: days of the month, or sets and reps told by their place.

day  = NAME "the 12th" numbers | sets "the 12th" ( end | separator | remark ) | "the 12th" [ word ] NAME
     | NAME "on the 3rd" NUMBER "x"               small ones only so: "4 on the 3rd" is of the third set
open = sets "on the 3rd" | sets remark "on the 12th"          the third set, the twelfth rep, or a day
"""

from __future__ import annotations

from engine.reading.days.day_places import ENDS_OF_SETS, FROM, ON_A_DAY
from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece

MOST_SETS_PLACED = 5
""" "4 on the 3rd" is of the third set; nobody tells of a sixth by its place. Common practice, no source."""
OF_A_PLACE = frozenset((K.SETS, K.REPS, K.COUNT, K.TIMES, K.OF, K.ORDINAL))
SIGNS = frozenset((K.COMMA, K.STOP, K.OPEN, K.DASH, K.COLON))
REMARKING = frozenset((K.PLAIN, K.NOTE, K.FILLER, K.ASKS, K.WITH))
SETS = ENDS_OF_SETS | {K.NAME}
MOST_LEADS = 4
REACH = 8
ON = "on"
WAS = frozenset(("was", "were"))


def is_a_day_amid(pieces: list[Piece], at: int) -> bool:
    """ "squat the 10th 3x5 100", "squat 3x5 100 (the 10th)", "the 10th i did squat 3x5 100"."""
    if not _is_said_so(pieces, at) or kind_at(pieces, at + 1) in OF_A_PLACE:
        return False
    before, behind = pieces[_lead(pieces, at)].kind, _behind(pieces, at + 1)
    if before is K.NAME:
        return True
    return before in ENDS_OF_SETS or behind is K.NAME or (behind is None and before is K.LINE)


def is_plainly_a_day(pieces: list[Piece], at: int) -> bool:
    """ "squat on the 3rd 3x5 100", "on the 3rd i did squat 3x5 100"."""
    if not _is_on(pieces, at) or kind_at(pieces, at + 1) in OF_A_PLACE:
        return False
    number, before = at + 1, pieces[_lead(pieces, at)]
    while kind_at(pieces, number) in (K.COLON, K.COMMA, K.CLOSE, K.FILLER):
        number += 1
    sets = kind_at(pieces, number) is K.NUMBER and K.TIMES in (kind_at(pieces, number + 1), kind_at(pieces, number + 2))
    heads = before.kind is K.LINE or _leads(before)
    if sets and before.kind in ENDS_OF_SETS and _another_is_ahead(pieces, at):
        return True
    return (sets and before.kind is K.NAME) or (heads and _behind(pieces, at + 1) in (K.NAME, None))


def _another_is_ahead(pieces: list[Piece], at: int) -> bool:
    """ "squat on the 2nd 100x5, on the 4th 105x5": behind sets of one day the next is as plainly one."""
    ahead = [place for place in range(at) if pieces[place].kind is K.ORDINAL]
    return bool(ahead) and is_plainly_a_day(pieces, ahead[-1])


def may_be_a_day(pieces: list[Piece], at: int, day: int) -> bool:
    """ "squat 3x5 100 on the 3rd", "squat 3x5 100 felt good on the 10th"."""
    if not _is_said_so(pieces, at) or kind_at(pieces, at + 1) in OF_A_PLACE:
        return False
    lead = _lead(pieces, at)
    if day <= MOST_SETS_PLACED:
        ahead = [piece.kind for piece in pieces[max(0, lead - 4) : lead + 1] if piece.kind not in (K.AT, K.KG, K.LB)]
        paired = ahead[-4:] == [K.NUMBER, K.TIMES, K.NUMBER, K.NUMBER] or ahead[-3:] == [K.NUMBER, K.TIMES, K.NUMBER]
        first = ENDS_OF_SETS.isdisjoint(piece.kind for piece in pieces[max(0, lead - REACH) : lead + 1])
        return _is_on(pieces, at) and (paired or first or is_cued(pieces[lead].text, WAS))
    return pieces[lead].kind in REMARKING and not SETS.isdisjoint(
        [one.kind for one in pieces[max(0, lead - REACH) : at]]
    )


def _is_said_so(pieces: list[Piece], at: int) -> bool:
    return at > 0 and pieces[at - 1].kind in (K.FILLER, K.OF) and is_cued(pieces[at - 1].text, ON_A_DAY)


def _is_on(pieces: list[Piece], at: int) -> bool:
    return any(piece.text == ON for piece in pieces[max(0, at - 2) : at])


def _lead(pieces: list[Piece], at: int) -> int:
    """The place in front of "(on the", "from the"."""
    lead = at - 1
    while lead > 0 and at - lead <= MOST_LEADS and _leads(pieces[lead]):
        lead -= 1
    return lead


def _leads(piece: Piece) -> bool:
    return piece.kind in SIGNS or (
        piece.kind in (K.FILLER, K.OF, K.NOT_DATE) and (is_cued(piece.text, FROM) or is_cued(piece.text, ON_A_DAY))
    )


def _behind(pieces: list[Piece], at: int) -> K | None:
    """What stands behind the day, but for small words: "the 10th i did squat"."""
    end = at + MOST_LEADS
    while at < min(end, len(pieces)) and pieces[at].kind in (K.FILLER, K.COMMA, K.HEADING, K.COLON):
        at += 1
    return kind_at(pieces, at)
