"""A load that was lowered or raised, told beside the sets: "95x4, dropped it a bit", "last was 95, lowered the weight".

remark = [ "," ] { "had to" } MOVED ( "it" | "the weight" | "a bit" ) ... at the end of its clause, behind a number

It is no drop set: the set that it speaks of stands as one of its own. "Dropped" alone, "a drop set" and "dropped to
60x12" are none of it.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.ahead import aside
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece

MOVED, OBJECT, AHEAD = frozenset(("loadlowered",)), frozenset(("ofitsload",)), frozenset(("loweredahead",))
ENDS = frozenset((K.COMMA, K.STOP, K.LINE, K.CLOSE))
OPENS = frozenset((K.COMMA, K.OPEN, K.DASH))


def with_loads_lowered(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with the drop of such a remark a note."""
    for start, end in _remarks(pieces):
        pieces = [
            aside(piece) if piece.kind is K.DROP and start <= at < end else piece for at, piece in enumerate(pieces)
        ]
    return pieces


def without_loads_lowered(pieces: list[Piece]) -> list[Piece]:
    """The pieces without such remarks, where they tell more than those."""
    for start, end in reversed(_remarks(pieces)):
        kept = [*pieces[:start], *pieces[end:]]
        pieces = kept or pieces
    return pieces


def _remarks(pieces: Sequence[Piece]) -> list[tuple[int, int]]:
    found = []
    counted = False
    for at, piece in enumerate(pieces):
        counted = counted or piece.kind is K.NUMBER
        if not counted or piece.kind in (K.NUMBER, K.NAME) or not is_cued(piece.text, MOVED):
            continue
        end = at + 1
        while end < len(pieces) and is_cued(pieces[end].text, OBJECT):
            end += 1
        if end == at + 1 or (end < len(pieces) and pieces[end].kind not in ENDS):
            continue
        start = at
        while start and is_cued(pieces[start - 1].text, AHEAD):
            start -= 1
        start -= start > 0 and pieces[start - 1].kind in OPENS
        end += end < len(pieces) and pieces[end].kind is K.CLOSE
        found.append((start, end))
    return found
