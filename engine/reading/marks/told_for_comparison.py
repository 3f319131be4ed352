"""Sets that were planned, are usual or are the best, told right behind hers: no more of them, or perhaps none.

behind   = set NOT-DONE sets                 "100x5 planned 105x5", "100x5 usually 105x5": asked
bracket  = set "(" PLANNED sets ")"          "100x5 (planned 105x5)", "100x5 (usual 105x5)": a remark
         | set "(" BEST sets ")"             "100x5 (best 110x5)", "100x5 (pb 110x5)": asked
A comma or a word between makes a clause of its own, for which the rules of talk hold.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, kinds_in_order, places_in

ENDS_OF_SETS = frozenset((K.NUMBER, K.KG, K.LB, K.REPS))
LINKS = frozenset((K.COLON, K.EQUALS, K.FILLER))
CUES = ("notdone", "thebest")
WORDS = frozenset((K.PLAIN, K.FILLER, K.NOTE, K.PLANNED, K.FUTURE, K.STORY, K.HEADING))


def with_what_is_compared(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with such words as those of another time."""
    out = pieces
    for at in places_in(WORDS, kinds_in_order(pieces)):
        cues = CUES_OF[pieces[at].text]
        if at == 0 or cues.isdisjoint(CUES) or not _leads_to_sets(pieces, at + 1):
            continue
        out = list(pieces) if out is pieces else out
        bracketed = kind_at(pieces, at - 1) is K.OPEN
        if kind_at(pieces, at - 1 - bracketed) not in ENDS_OF_SETS:
            continue
        if bracketed and "notdone" in cues:
            out[at] = pieces[at]._replace(kind=K.EARLIER, told=0)
        elif bracketed:
            out[at - 1] = pieces[at - 1]._replace(kind=K.UNCLEAR)
        elif "notdone" in cues or pieces[at].kind in (K.PLAIN, K.FILLER):
            out[at] = pieces[at]._replace(kind=K.STORY, told=0)
    return out


def _leads_to_sets(pieces: Sequence[Piece], at: int) -> bool:
    at += kind_at(pieces, at) in LINKS
    return kind_at(pieces, at) is K.NUMBER and K.TIMES in (kind_at(pieces, at + 1), kind_at(pieces, at + 2))
