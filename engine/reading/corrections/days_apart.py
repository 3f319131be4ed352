"""Lifts told each with its day: "the pull-ups were thursday, squats today", "rows today but the dips were on wed".

told = lift [ verb ] day ( "," | "and" | "but" ) lift [ verb ] day

Each may move; what is told of one that does not is so already.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from engine.reading.corrections.correcting import Told
from engine.reading.corrections.days import ABOUT_DAYS, day_in_words, is_move_word
from engine.reading.corrections.parts import part_told, sets_of
from engine.reading.corrections.said_to_be import is_be
from engine.reading.values import Correction
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece
from engine.values.sets import SetRecord

NOT_TOLD = frozenset((K.QUESTION, K.TOMORROW, K.TIMES, K.NUMBER, K.FUTURE, K.NOT))


def moved_apart(told: Told) -> Correction | None:
    """The sets of the one lift that stand on another day than she says."""
    if told.context.now is None or told.kinds() & NOT_TOLD or told.of_others() or not any(map(is_be, told.pieces)):
        return None
    clauses = _clauses(told.pieces)
    if len(clauses) < 2:
        return None
    moved: list[tuple[SetRecord, date]] = []
    for clause in clauses:
        moves = _moves(told, clause)
        if moves is None:
            return None
        moved += moves
    return Correction(moved=tuple(moved)) if moved and not _told_twice(moved) else None


def _told_twice(moved: Sequence[tuple[SetRecord, date]]) -> bool:
    return len({record.id for record, _ in moved}) < len(moved)


def _clauses(pieces: list[Piece]) -> list[list[Piece]]:
    """The pieces by lift, each up to its day."""
    found: list[list[Piece]] = [[]]
    for piece in pieces:
        if piece.kind is K.NAME and any(one.kind is K.NAME for one in found[-1]):
            found.append([])
        found[-1].append(piece)
    return found if len(found) > 1 else []


def _moves(told: Told, clause: list[Piece]) -> list[tuple[SetRecord, date]] | None:
    """What the clause moves and to which day, maybe nothing; None where it is no lift that stands with one day."""
    day = day_in_words(told, clause)
    part = part_told(clause, told.context)
    others = [piece for at, piece in enumerate(clause) if day is None or not day.start <= at < day.end]
    if day is None or part.named is None or part.named_unknown or part.missing or told.context.now is None:
        return None
    if not all(piece.kind in ABOUT_DAYS or is_be(piece) or is_move_word(piece, told) for piece in others):
        return None
    sets: list[SetRecord] = part.places or sets_of(part, told.context)
    on, today = day.day, told.context.now.date()  # a weekday that is today's says so, beside another day
    return [(one, on) for one in sets if one.on != on] if on <= today else None
