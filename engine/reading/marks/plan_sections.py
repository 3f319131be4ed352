"""What was planned, under a heading of its own, with what was done under another one below: the plan is no sets.

sections = PLANNED-HEAD list ... DONE-HEAD list         planned: / squat 3x5 100 / done: / squat 3x5 95
         | PLANNED ":" sets LINE DONE ":" sets          target: squat 3x5 100 / actual: 3x5 95
A head is words alone up to a colon or the end of its line. A plan without what was done is left to the rules of talk.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.cues import any_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import COUNTED, Piece, kinds_in_order, places_of

PLANS = frozenset(("planhead", "markedplanned"))
DONE = frozenset(("donehead", "did", "didso", "finished"))
DOING = frozenset((K.GOT,))
WISHING = frozenset((K.FUTURE,))
TOLD = COUNTED | {K.NAME, K.TIMES}
ENDS = frozenset((K.COLON, K.LINE))
LONGEST_HEAD = 6
"""Words of a heading. Common practice, no source."""


def without_planned_sections(pieces: list[Piece]) -> list[Piece]:
    """The pieces without the lines of a plan that stand above those of what was done."""
    starts = [0, *[at + 1 for at in places_of(K.LINE, kinds_in_order(pieces))]]
    heads = [(start, head_of(pieces, start, LONGEST_HEAD)) for start in starts]
    done = next((start for start, head in heads if head and _heads_done(head)), 0)
    plan = next((start for start, head in heads if start < done and head and _heads_a_plan(head)), done)
    if plan == done or not any(piece.kind in COUNTED for piece in pieces[done:]):
        return pieces
    head = head_of(pieces, done, LONGEST_HEAD)
    told = pieces[done + len(head) + 1 :]
    if all(piece.kind is not K.NAME for piece in told):
        names = [piece for piece in pieces[plan:done] if piece.kind is K.NAME]
        if len(names) > 1:  # whose the sets are that were done nobody can say
            return [*pieces[:done], pieces[done]._replace(kind=K.UNCLEAR), *pieces[done + 1 :]]
        told = [*names, *told]
    return [*pieces[:plan], *told]


def head_of(pieces: Sequence[Piece], start: int, longest: int) -> Sequence[Piece]:
    """The words from here to a colon, or that are a line alone; none where a lift or a number stands among them."""
    for at in range(start, min(start + longest + 1, len(pieces))):
        if pieces[at].kind in ENDS:
            return pieces[start:at]
        if pieces[at].kind in TOLD and not pieces[at].spelled:
            return ()
    return ()


def _heads_a_plan(head: Sequence[Piece]) -> bool:
    return any(piece.kind in WISHING for piece in head) or any_cued([piece.text for piece in head], PLANS)


def _heads_done(head: Sequence[Piece]) -> bool:
    return any(piece.kind in DOING for piece in head) or any_cued([piece.text for piece in head], DONE)
