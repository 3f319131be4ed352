"""Effort, failure, a warm-up or a miss told after the set."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from engine.reading.correcting import Told, last_message
from engine.reading.kinds import K
from engine.reading.parts import Part, group_of, part_told
from engine.reading.pieces import Piece
from engine.reading.values import Correction
from engine.values.sets import SetDone, SetKind, SetRecord

MARKS = (K.EFFORT, K.FAILURE, K.WARMUP, K.MISS, K.DROP)


def marked_later(told: Told, slipped: bool) -> Correction | None:
    """Effort, failure, a warm-up or a miss told later, and no new numbers with it."""
    marks = [piece for piece in told.pieces if piece.kind in MARKS]
    part = part_told(told.pieces, told.context, told.catalogue) or Part()
    if len(marks) != 1 or any(p.kind in (K.TIMES, K.QUESTION, K.FUTURE, K.TOMORROW, K.ASKS) for p in told.pieces):
        return None
    if told.has("others") or len(told.numbers()) > part.used_numbers or not _only_marks(told.pieces):
        return None
    mark = marks[0]
    for record in _marked_sets(told, part, mark):
        told.set_to(record, _with_mark(record.done, mark))
    return told.correction()


def _only_marks(pieces: Sequence[Piece]) -> bool:
    return all(piece.kind in ABOUT_MARKS for piece in pieces)


ABOUT_MARKS = frozenset(
    (*MARKS, K.FILLER, K.NUMBER, K.LAST, K.FIRST, K.SETS, K.ORDINAL, K.NAME, K.STOP, K.COMMA, K.OF, K.REPS, K.NOTE,
     K.BOTH, K.AND, K.COLON, K.GOT, K.DASH, K.COUNT, K.ONLY, K.WITH, K.RESERVE_LEFT, K.WORKING)
)  # fmt: skip


def _marked_sets(told: Told, part: Part, mark: Piece) -> list[SetRecord]:
    if part.places:
        return part.places
    group = group_of(part, told.context) if part.named else last_message(told.context)
    if part.last or mark.kind in (K.FAILURE, K.MISS):
        return group[-1:]
    return group


def _with_mark(done: SetDone, mark: Piece) -> SetDone:
    if mark.kind is K.EFFORT:
        return replace(done, effort=mark.efforts[0])
    if mark.kind is K.FAILURE:
        return replace(done, failure=True)
    if mark.kind is K.MISS:
        return replace(done, missed=True)
    return replace(done, kind=SetKind.DROP if mark.kind is K.DROP else SetKind.WARMUP)
