"""A warm-up that is only told of: "warmed up with the bar, squat 3x5 100", "short warm-up, bench 3x8 60".

told = [ name ] ... WARM-UP ... END      no number in it; "warmed up", or what it was done with or was like beside it
A word alone ("warm-up, squat 60x5") and one with a colon head what stands behind them and are left so. Those that tell
what was done are cues of the language files ("warmed"), and so are the words for how ("warmedhow").
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.pieces import COUNTED, Piece, kinds_in_order, kinds_of, places_in

ENDS = frozenset((K.COMMA, K.STOP, K.LINE, K.THEN, K.DASH, K.OPEN, K.CLOSE))
MAY_END = ENDS | {K.AND}
DONE_WITH = frozenset((K.WITH, K.BAR, K.BAND, K.NOTE, K.UNRELATED))


def tells_what_was_done(piece: Piece) -> bool:
    """Whether the word says that somebody has warmed up, and so heads nothing."""
    return piece.kind is K.WARMUP and "warmed" in CUES_OF[piece.text]


def without_warm_ups_told(pieces: list[Piece]) -> list[Piece]:
    """The pieces with each warm-up that is only told of made a remark, and the empty bar that it was done with."""
    out: list[Piece] = []
    start = 0
    for at in places_in(MAY_END, kinds_in_order(pieces)):
        if pieces[at].kind in ENDS or _goes_on_to_work(pieces, at):
            out += [*_told(pieces[start:at]), pieces[at]]
            start = at + 1
    return out + pieces[start:]


def _goes_on_to_work(pieces: Sequence[Piece], at: int) -> bool:
    """ "warmed up with the bar and did squat 3x5"."""
    behind = [piece for piece in pieces[at + 1 : at + 3] if piece.kind is not K.FILLER]
    return pieces[at].kind is K.AND and bool(behind) and behind[0].kind in (K.NAME, K.GOT)


def _told(clause: list[Piece]) -> list[Piece]:
    kinds = kinds_of(clause)
    if K.WARMUP not in kinds or not COUNTED.isdisjoint(kinds) or clause[-1].kind is K.COLON:
        return clause
    if K.COLON in kinds and K.BAR not in kinds:
        return clause  # "warm-up: easy, 60x5"
    described = not DONE_WITH.isdisjoint(kinds) or any("warmedhow" in CUES_OF[piece.text] for piece in clause)
    if not described and not any(map(tells_what_was_done, clause)):
        return clause
    return [piece._replace(kind=K.NOTE) if piece.kind in (K.WARMUP, K.BAR) else piece for piece in clause]
