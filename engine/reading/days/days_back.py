"""Days told by how many have gone by: "3 days ago", "vor 3 tagen", "2 weeks ago" are words for a day as "yesterday" is.

Whatever else is told of that day ("sick 4 days ago") is then told apart as with any other day (`told_of.py`).
"""

from __future__ import annotations

from engine.reading.days.calendar_days import DAYS_OF_A_WEEK
from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role, is_one_word, kinds_in_order, places_in

AHEAD_OF_NO_NUMBER = frozenset((K.LINE, K.FILLER, K.COMMA, K.STOP))
BACK = {K.AGO: 1, K.WEEKS_AGO: DAYS_OF_A_WEEK}
MOST_DAYS = 400
"""More are long past, whatever their number. Common practice, no source."""


def with_days_back(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with each number of days that have gone by as one word for that day."""
    out: list[Piece] = []
    behind = 0
    for at in places_in(BACK, kinds_in_order(pieces)):
        number = pieces[at - 1] if at else None
        if number is not None and number.kind is K.NUMBER and number.role is Role.BARE:
            days = min(int(number.value) * BACK[pieces[at].kind], MOST_DAYS)
            start = at - 1 - (at - 1 > behind and "agoahead" in CUES_OF[pieces[at - 2].text])  # Spanish "hace 3 días"
            day = number._replace(  # its text is that of the number: "6, 4 4 days ago" counts no four days
                kind=K.DAYS_AGO, start=pieces[start].start, end=pieces[at].end, glued=pieces[start].glued, told=days
            )
            out += [*pieces[behind:start], day]
            behind = at + 1
        elif number is None or number.kind in AHEAD_OF_NO_NUMBER:
            out += [*pieces[behind:at], _without_a_number(pieces[at])]
            behind = at + 1
    return out + pieces[behind:] if behind else pieces


def _without_a_number(piece: Piece) -> Piece:
    """ "week ago" is seven days; nobody can say when "weeks ago" was."""
    if piece.kind is K.WEEKS_AGO and "aweek" in CUES_OF[piece.text]:
        return piece._replace(kind=K.DAYS_AGO, told=DAYS_OF_A_WEEK)
    return piece if is_one_word(piece) else piece._replace(kind=K.STORY)
