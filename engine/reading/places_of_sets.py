"""Sets that are told by their place behind those that stand: "2: 5" and "2) 5" behind one set of the lift.

place = NUMBER ( ":" | ")" | "." ) NUMBER      the number of the next set and its reps; any other is asked about
same  = ORDINAL "same" ORDINAL NUMBER         "second set same third set 4": both of them
"""

from __future__ import annotations

from dataclasses import replace

from engine.reading.asking import question_of
from engine.reading.prepare import Prepared
from engine.reading.values import Asked, Context, Doubt, Logged, Reading
from engine.reading.wording import label_of
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role, may_count_reps
from engine.values.sets import SetDone, SetKind, SetRecord

SIGNS = frozenset((K.COLON, K.CLOSE, K.STOP))
BESIDE = frozenset((K.FILLER, K.SETS, K.COMMA, K.STOP, K.AND, K.COLON, K.REPS, K.THEN))
SAME_THEN = [K.ORDINAL, K.SAME, K.ORDINAL, K.NUMBER]
PLACED = frozenset((K.COLON, K.CLOSE, K.STOP, K.NUMBER, K.REPS))
MOST_PLACES = 10
"""Sets of a lift that are counted so. Common practice, no source."""


def in_their_places(logged: Logged, prepared: Prepared, context: Context) -> Logged | Asked:
    """The sets as read; or those that are told by their place, or the question whether a number is one."""
    if len(logged.sets) > 2 or not context.recent:
        return logged
    if K.SAME in prepared.told:
        return _same_then(logged, prepared, context)
    if not prepared.told <= PLACED or prepared.told.isdisjoint(SIGNS):
        return logged
    return _placed(logged, prepared, context)


def _placed(logged: Logged, prepared: Prepared, context: Context) -> Logged | Asked:
    pieces = [piece for piece in prepared.spoken if piece.kind is not K.REPS]
    kinds = [piece.kind for piece in pieces]
    if len(pieces) != 3 or kinds[0] is not K.NUMBER or kinds[2] is not K.NUMBER or kinds[1] not in SIGNS:
        return logged
    place, reps = pieces[0], pieces[2]
    standing, by_place = _standing(context), place.role is Role.BARE and place.value <= MOST_PLACES
    two = [one.reps for one in logged.sets] == [place.value, reps.value]
    if not standing or not by_place or not two or not may_count_reps(reps):
        return logged
    told = (_with_reps(standing[-1].done, reps),)
    if place.value == len(standing) + 1:
        return replace(logged, sets=told, why="the next set, by its place")
    both = (told, logged.sets)
    readings = tuple([Reading(sets, 0.5, label_of(sets, both)) for sets in both])
    asked = question_of(Doubt.NUMBERS, "", readings)
    typed = prepared.cleaned.strip()
    return Asked(asked, readings, Doubt.NUMBERS, "", logged.on, logged.note, logged.pain, typed=typed)


def _same_then(logged: Logged, prepared: Prepared, context: Context) -> Logged:
    """ "second set same third set 4": the first of them was no less done than the other."""
    pieces = [piece for piece in prepared.spoken if piece.kind not in BESIDE]
    if [piece.kind for piece in pieces] != SAME_THEN or not (standing := _standing(context)):
        return logged
    first, _, second, reps = pieces
    follow = first.told == len(standing) + 1 and second.told == first.told + 1
    if not follow or len(logged.sets) != 1 or not may_count_reps(reps):
        return logged
    done = standing[-1].done
    return replace(logged, sets=(replace(done, effort=None), _with_reps(done, reps)), why="sets told by their place")


def _standing(context: Context) -> list[SetRecord]:
    """Today's working sets of the lift of the latest set."""
    last = context.recent[-1]
    if context.now is not None and last.on != context.now.date():
        return []
    lift = last.done.exercise
    sets = [one for one in context.recent if one.on == last.on and one.done.exercise == lift]
    return [one for one in sets if one.done.kind is not SetKind.WARMUP]


def _with_reps(done: SetDone, reps: Piece) -> SetDone:
    return SetDone(done.exercise, int(reps.value), done.load, kind=done.kind, side=done.side)
