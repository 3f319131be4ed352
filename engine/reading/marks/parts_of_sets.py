"""Numbers that say how many of the sets were done, or when the next one began.

part  = NUMBER "of" NUMBER "sets"             3 of the 4 sets: three were done
clock = "every" TIME                          every 90s 8x2 60: from set to set; with no count of sets it is asked
"""

from __future__ import annotations

from engine.reading.words.ahead import aside, is_amount, kind_at
from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role

TIMED = frozenset((Role.SECONDS, Role.PLURAL))
PART_OF = frozenset((K.OF, K.OUT_OF))

REACH = 40
"""How many pieces from such a time the count of its sets may stand. Common practice, no source."""


def part_of_the_sets(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    """The place behind such a number, with what it comes to put on `out`; 0 where none starts here."""
    if _by_the_clock(pieces, at, out):
        return at + 1
    behind = _of_the_sets(pieces, at)
    if behind > at:
        out.append(pieces[at]._replace(role=Role.SETS))
    return behind if behind > at else 0


def _of_the_sets(pieces: list[Piece], at: int) -> int:
    """The place behind "of the 4 sets": so many of them were done; `at` where none were told so."""
    end = at + 2
    while kind_at(pieces, end) is K.FILLER:
        end += 1
    told = at + 1 < len(pieces) and (pieces[at + 1].kind in PART_OF or "of" in CUES_OF[pieces[at + 1].text])
    told = told and is_amount(pieces, end) and pieces[end].role is Role.SETS
    return end + 1 if told and pieces[at].role is Role.BARE and 0 < pieces[at].value <= pieces[end].value else at


def _by_the_clock(pieces: list[Piece], at: int, out: list[Piece]) -> bool:
    """ "every 90s": the time from one set to the next; without a count of sets, how many they were is not known."""
    if not out or pieces[at].role not in TIMED or "interval" not in CUES_OF[out[-1].text]:
        return False
    near = pieces[max(at - REACH, 0) : at + REACH]
    counted = K.TIMES in [piece.kind for piece in near] or Role.SETS in [piece.role for piece in near]
    out[-1] = aside(out[-1]) if counted else out[-1]._replace(kind=K.ALTERED)
    return True
