"""Clauses that open a plan, and those that go it on: "tomorrow squat 5x5, bench 5x5", "tomorrow is legs, 4x8 at 65"."""

from __future__ import annotations

from engine.reading.talk.clauses_of_talk import BEHIND, counted, tells_a_whole_set
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece

HEADINGS = frozenset((K.HEADING, K.MUSCLE, K.JOINT))


def opens_plans(clause: list[Piece]) -> bool:
    """Whether the clauses behind this one are part of the same plan: "tomorrow squat 5x5, bench 5x5"."""
    cues = {piece.kind for piece in clause if piece.kind in BEHIND}
    left_out = cues == {K.NEVER} and not counted(clause)  # "didn't do squats, leg press 3x12 160"
    return bool(cues) and not left_out and any(piece.kind is K.NAME for piece in clause)


def may_be_behind_a_plan(plan: list[Piece], clause: list[Piece]) -> bool:
    """ "rows tomorrow, squat 3x5 100": a lift of another day and nothing more; the sets behind it may be of now."""
    return (
        bool(plan)
        and not counted(plan)
        and plan[-1].kind in BEHIND - {K.NEVER}
        and any(piece.kind is K.NAME for piece in plan)
        and tells_a_whole_set(clause)
    )


def ends_a_planned_load(plan: list[Piece], clause: list[Piece]) -> bool:
    """ "next time 7,5": the digits behind the comma of a planned load."""
    digits = len(clause) == 2 and clause[0].kind is K.COMMA and clause[0].glued and clause[1].glued
    return digits and bool(plan) and plan[-1].kind is K.NUMBER and not BEHIND.isdisjoint([piece.kind for piece in plan])


def heads_a_plan(clause: list[Piece]) -> bool:
    """ "tomorrow is legs, 4x8 with 65": what a day ahead is for, and its numbers, which name no lift."""
    kinds = {piece.kind for piece in clause}
    return K.TOMORROW in kinds and not HEADINGS.isdisjoint(kinds) and K.NAME not in kinds and not counted(clause)
