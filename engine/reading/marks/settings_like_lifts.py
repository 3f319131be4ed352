"""Settings of a bench or a cable called as a lift is: "bench 3x5 80, incline 30", "cable fly 3x12 15, pulley 8".

setting = sets [ sign ] NAME NUMBER, at the end of a clause        NAME: the cues "settinglift" and "benchlift"
A bench is set from fifteen degrees on: "squat 3x5 100, bench 5" tells reps. What is open is read both ways, and asked.
"""

from __future__ import annotations

from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import SETTING_OR_LIFT, Piece, Role, kinds_in_order, places_of

SET, BENCH = frozenset(("settinglift",)), frozenset(("benchlift",))
LOWEST_BENCH, HIGHEST = 15, 90
"""Degrees. Common practice, no source."""
SETS = frozenset((K.NUMBER, K.KG, K.LB, K.EFFORT))
SIGNS = frozenset((K.COMMA, K.STOP, K.LINE, K.OPEN))
ENDS = frozenset((None, K.COMMA, K.STOP, K.LINE, K.CLOSE))


def with_settings_in_doubt(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with names that may tell a setting marked so."""
    out = pieces
    for at in places_of(K.NAME, kinds_in_order(pieces))[1:]:
        if _may_be_a_setting(pieces, at):
            out = list(pieces) if out is pieces else out
            out[at] = pieces[at]._replace(told=SETTING_OR_LIFT)
    return out


def _may_be_a_setting(pieces: list[Piece], at: int) -> bool:
    if kind_at(pieces, at + 1) is not K.NUMBER or not is_cued(pieces[at].text, SET | BENCH):
        return False
    number, before = pieces[at + 1], at - 1 - (kind_at(pieces, at - 1) in SIGNS)
    ended = kind_at(pieces, at + 2) in ENDS and kind_at(pieces, at + 3) is not K.NUMBER
    if number.role is not Role.BARE or not ended or kind_at(pieces, before) not in SETS:
        return False
    lowest = LOWEST_BENCH if is_cued(pieces[at].text, BENCH) else 1
    return lowest <= number.value <= HIGHEST
