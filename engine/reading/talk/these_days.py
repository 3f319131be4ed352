"""Today and these days, told behind a plan or a story: "used to bench 100x5, today 80x5".

"Now" tells of a set as well as of what somebody can do these days, so that behind a story it is asked about.
"""

from __future__ import annotations

from engine.reading.talk.clauses_of_talk import AHEAD, CLAUSE_ENDS, counted
from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.pieces import TOLD_IN_FIGURES, Piece, kinds_of

DAYS = frozenset((K.DATE, K.TODAY))
BEFORE_THE_WORD = CLAUSE_ENDS | {K.NAME}
NEAR = 3


def turns_to_today(clause: list[Piece]) -> bool:
    """ "tomorrow deads, today bench 5x3 87.5": what was done, behind a plan."""
    kinds = [piece.kind for piece in clause]
    if DAYS.isdisjoint(kinds) or not AHEAD.isdisjoint(kinds):
        return False
    head = next((piece for piece in clause if piece.kind not in CLAUSE_ENDS and piece.kind is not K.FILLER), None)
    return head is not None and head.kind in DAYS and head.told == 0 and counted(clause) > 0


def turns_to_now(clause: list[Piece]) -> bool:
    """ "used to bench 100x5, now 80x5": what is done these days, behind a story."""
    told = [piece for piece in clause[:NEAR] if piece.kind not in BEFORE_THE_WORD]
    now = bool(told) and "nowadays" in CUES_OF[told[0].text]
    return now and AHEAD.isdisjoint([piece.kind for piece in clause]) and counted(clause) > 0


def turns_to_what_is_done(clause: list[Piece]) -> bool:
    """ "thinking of rows after this, just finished bench 3x8 60": what is done by now, behind a plan."""
    kinds = kinds_of(clause)
    if K.NAME not in kinds or not AHEAD.isdisjoint(kinds) or not counted(clause):
        return False
    words = [piece for piece in clause if piece.kind not in SAYING_NOTHING_OF_WHEN]
    doing = [CUES_OF[piece.text] for piece in words if piece.kind is not K.ONLY]
    if not any(not DONE.isdisjoint(told) for told in doing):
        return False
    return "finished" in doing[0] or any("justnow" in CUES_OF[piece.text] for piece in words)


DONE = frozenset(("finished", "did"))
SAYING_NOTHING_OF_WHEN = CLAUSE_ENDS | {K.NAME, K.NUMBER, K.TIMES}


def may_be_of_now(before: list[Piece], clause: list[Piece]) -> bool:
    """Whether the clause tells of now, behind one of another time, or goes on with that."""
    if turns_to_now(clause):
        return K.STORY in kinds_of(before) or _is_of_before(before)
    return _may_go_on(before, clause)


def _may_go_on(before: list[Piece], clause: list[Piece]) -> bool:
    """ "in high school i squatted 150x5, bench 100x5"."""
    long_done = counted(before) and any(piece.kind is K.STORY and piece.told in LONG_DONE for piece in before)
    kinds = kinds_of(clause)
    return bool(long_done) and K.NAME in kinds and DAYS.isdisjoint(kinds) and counted(clause) > 0


LONG_DONE = frozenset((1, TOLD_IN_FIGURES))
"""What a STORY piece's `told` says of a time that is past: "in high school", "before my injury", "ten years ago"."""


def _is_of_before(clause: list[Piece]) -> bool:
    """ "avant squat 120x5, maintenant 100x5": years ago, or a minute."""
    return bool(clause) and "formerly" in CUES_OF[clause[0].text]
