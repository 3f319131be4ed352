"""Sets of a message beside those read, which were taken as talk: said in the answer, so that none is lost unseen.

"leg press 3x12 150, bench 3x5 60 tomorrow" saves the leg press and says what was left out. Words ahead of the numbers
tell at once that they are nobody's sets of today ("my brother did 3x5"); lines of a paste are quoted by `pastes.py`.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from engine.reading.talk.clauses_of_talk import AHEAD
from engine.reading.values import Unread
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece

LEAST_NUMBERS = 2
TELLING_WHOSE = AHEAD | {K.ASKS, K.EARLIER, K.UNRELATED, K.PLAIN}
AROUND = frozenset((K.COMMA, K.STOP, K.THEN, K.AND, K.DASH, K.LINE))
TAKEN_AS_TALK = "a plan or a story, I think; if you did them, send these sets alone"


def sets_left_out(pieces: Sequence[Piece], kept: Sequence[Piece], cleaned: str) -> tuple[Unread, ...]:
    """What was said of a lift and its numbers in the clauses of a line that are not among those kept."""
    if any(piece.kind is K.LINE for piece in pieces):
        return ()
    runs = _runs(pieces, {piece.start for piece in kept})
    return tuple(Unread(cleaned[run[0].start : run[-1].end].strip(), TAKEN_AS_TALK) for run in runs if _tells_sets(run))


def _runs(pieces: Sequence[Piece], kept: set[int]) -> Iterator[list[Piece]]:
    run: list[Piece] = []
    for piece in pieces:
        if piece.start not in kept:
            run.append(piece)
            continue
        if run:
            yield _bare(run)
        run = []
    if run:
        yield _bare(run)


def _bare(run: list[Piece]) -> list[Piece]:
    """The run without the signs and joining words at its ends."""
    start, end = 0, len(run)
    while start < end - 1 and run[start].kind in AROUND:
        start += 1
    while end > start + 1 and run[end - 1].kind in AROUND:
        end -= 1
    return run[start:end]


def _tells_sets(run: Sequence[Piece]) -> bool:
    kinds = [piece.kind for piece in run]
    numbers = kinds.count(K.NUMBER)
    ahead = kinds[: kinds.index(K.NUMBER)] if numbers else kinds
    if K.PLAIN in ahead and (TELLING_WHOSE - {K.PLAIN}).isdisjoint(ahead):
        return numbers >= LEAST_NUMBERS and K.TIMES in kinds  # "tove did 105x5", "psyched did 105x5"
    if not TELLING_WHOSE.isdisjoint(ahead):
        return False
    return K.NAME in kinds and (numbers >= LEAST_NUMBERS or (numbers > 0 and K.TIMES in kinds))
