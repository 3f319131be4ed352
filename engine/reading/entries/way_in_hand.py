"""A way told with sets that name no lift, so that it is of the one in hand: "front 80x5" behind a squat.

way = ( WAY | "paused" ) sets | sets [ "(" ] WAY [ ")" ] [ remark | effort ]      80x5 front felt good; free 70x5
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.entries.entry import Entry
from engine.reading.lexing.name_words import tells_a_pause
from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece

WAYS_AHEAD = {K.EACH: frozenset(("sideways",)), K.DENY: frozenset(("freeweight",))}
BEHIND_A_WAY = frozenset((K.NOTE, K.AT, K.CLOSE, K.COMMA, K.STOP, K.EFFORT, K.FILLER))


def way_in_hand(entry: Entry) -> Piece | None:
    """The way that heads the sets or stands behind them; None where none is told."""
    head = entry.pieces[0]
    if head.kind is K.VARIANT or _is_a_way_ahead(head):
        return head
    if head.kind is K.NOTE and tells_a_pause(head.text) and kind_at(entry.pieces, 2) is K.TIMES:
        return head  # "paused 80x8"
    if entry.pieces[-1].kind is K.EACH:  # "30s side", "30s side each" may be of a side plank
        return next((piece for piece in entry.pieces[-2:] if piece.kind is K.EACH and _is_a_way_ahead(piece)), None)
    last = len(entry.pieces) - 1
    while last > 0 and _stands_behind_a_way(entry.pieces, last):
        last -= 1
    tail = entry.pieces[last]
    return tail if tail.kind is K.VARIANT else None


def _is_a_way_ahead(piece: Piece) -> bool:
    return piece.kind in WAYS_AHEAD and is_cued(piece.text, WAYS_AHEAD[piece.kind])


def _stands_behind_a_way(pieces: Sequence[Piece], at: int) -> bool:
    """ "80x5 front felt good", "80x5 (front)", "80x5 front @8"."""
    return pieces[at].kind in BEHIND_A_WAY or (pieces[at].kind is K.NUMBER and pieces[at - 1].kind is K.AT)
