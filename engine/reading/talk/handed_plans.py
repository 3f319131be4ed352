"""A line that heads sets and tells that they are a plan: whether they were done is asked, or they are none.

head   = words without a lift or a number, up to a colon or the end of the line
plan   = PLANHEAD in the head of a list          this week's plan:
       | PERSON ... HANDED in the head           coach sent me this:
none   = PERSON ... HANDED of a week, or with a question behind the sets, and nothing said to be done
Parts in capitals are cues; a word of what was done ("did", "finished") in the head makes it none of these.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.marks.plan_sections import head_of, without_planned_sections
from engine.reading.words.cues import CUES_OF, any_cued, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import COUNTED, Piece

LONGEST_HEAD = 14
"""Words of a line that heads others. Common practice, no source."""
HEADED = COUNTED | {K.COLON, K.NAME}
HANDED, DONE = frozenset(("handed",)), frozenset(("did", "didso", "finished"))
PLANS = frozenset(("planhead",))
OF_A_WEEK = frozenset(("week",))


def may_head_a_plan(pieces: list[Piece]) -> bool:
    """Whether what stands below the first line, or behind its colon, may be a plan: it is asked."""
    head = head_of(pieces, 0, LONGEST_HEAD)
    if not head or any_cued([piece.text for piece in head], DONE) or _heads_what_was_done(pieces):
        return False
    listed = any(piece.kind is K.LINE for piece in pieces)
    if listed and without_planned_sections(pieces) is not pieces:
        return False
    alone = len(head) == 1 and head[0].kind is K.FUTURE and K.LINE in [piece.kind for piece in pieces[1:3]]
    planned = alone or any_cued([piece.text for piece in head], PLANS)  # "todays plan" is one word of a wish
    return (listed and planned) or _is_handed(head)


def is_handed_for_later(pieces: Sequence[Piece]) -> bool:
    """Whether somebody handed a week of sets, or sets that are asked about, and nothing says that they are done."""
    head = head_of(pieces, 0, LONGEST_HEAD)
    if not head or not _is_handed(head) or any_cued([piece.text for piece in pieces if piece.kind is not K.NAME], DONE):
        return False
    asked = any(piece.kind is K.QUESTION for piece in pieces[len(head) :])
    return asked or any_cued([piece.text for piece in head], OF_A_WEEK)


def _heads_what_was_done(pieces: Sequence[Piece]) -> bool:
    """ "plan: squat 5x5 100", and below "done: squat 5x4 100": what was planned is told apart."""
    lines = [at for at, piece in enumerate(pieces[:-2]) if piece.kind in (K.LINE, K.STOP)]
    heads = [at + 1 for at in lines if pieces[at + 2].kind in HEADED and pieces[at + 1].kind is not K.NAME]
    return any(is_cued(pieces[at].text, DONE) for at in heads)


def _is_handed(head: Sequence[Piece]) -> bool:
    """ "coach sent me this": somebody, and behind them what they did, which was not done by oneself."""
    who = next((at for at, piece in enumerate(head) if piece.kind is K.OTHERS), len(head))
    behind = head[who + 1 :]
    handed = any(is_cued(piece.text, HANDED) for piece in behind)
    return handed and not any("me" in CUES_OF[piece.text] for piece in behind)
