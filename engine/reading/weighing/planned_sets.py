"""Sets told by the plan: "as planned except last set 9"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from engine.catalogue.catalogue import Catalogue
from engine.reading.entries.names import narrowed
from engine.reading.values import Act, Asked, Context, Doubt, Logged, Outcome, Planned
from engine.reading.weighing.planned_changes import with_changes
from engine.reading.weighing.resolve import BASES
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role
from engine.values.exercise import Loading
from engine.values.ids import ExerciseName
from engine.values.load import HEAVIEST, Basis, Load
from engine.values.plan import Metres, Reps, Seconds
from engine.values.sets import SetDone, SetKind


def as_planned(pieces: Sequence[Piece], context: Context, catalogue: Catalogue) -> Outcome | None:
    """The plan's sets of the exercise meant, changed as told; None where the message does not speak of the plan."""
    if not any(piece.kind is K.PLANNED for piece in pieces):
        return None
    named = [narrowed(piece.names, context)[0] for piece in pieces if piece.kind is K.NAME]
    exercise = named[0] if named else context.doing
    if len(set(named)) > 1:
        return _several_by_the_plan(pieces, context, catalogue)
    slot = _slot(exercise, context)
    numbers = [piece for piece in pieces if piece.kind is K.NUMBER]
    kinds = {piece.kind for piece in pieces}
    if exercise is None or slot is None:
        told = bool(numbers) or not kinds.isdisjoint(CHANGING) or K.EXCEPT in kinds
        return _ask_which() if told else None
    if not numbers and kinds.isdisjoint(CHANGING):
        return Act("done", exercise=exercise, as_planned=True) if len(pieces) <= 6 else None
    sets = _planned_sets(slot, context, catalogue)
    if sets is None:
        return None
    if not numbers and kinds <= BESIDE_ONE_MORE and (K.ANOTHER in kinds or K.EXTRA in kinds):
        return Logged((*sets, sets[-1]), why="as planned, and one more")
    standing = _standing(exercise, context)
    changed = _changed(sets, pieces, numbers, standing)
    left = _without_done(changed, sets, standing) if changed else ()
    return Logged(left, why="as planned, with what was said changed") if left else _ask_which()


def _standing(exercise: ExerciseName, context: Context) -> int:
    """How many sets of the lift stand today, warm-ups apart."""
    today = context.now.date() if context.now is not None else None
    done = [one for one in context.recent if one.done.exercise == exercise and one.on == today]
    return sum(one.done.kind is SetKind.WORK for one in done)


def _without_done(changed: Sequence[SetDone], planned: Sequence[SetDone], standing: int) -> tuple[SetDone, ...]:
    """The sets that are still to log; none where what is told changes one that stands."""
    told = changed[:standing] != tuple(planned[:standing]) or len(changed) != len(planned)
    return () if standing and told else tuple(changed[standing:])


def _several_by_the_plan(pieces: Sequence[Piece], context: Context, catalogue: Catalogue) -> Logged | None:
    """ "bench and squat as planned"; None where other words or numbers stand there, which tell each lift apart."""
    if not {piece.kind for piece in pieces} <= LISTING:
        return None
    lifts = [sets_of_the_plan(piece.names, context, catalogue) for piece in pieces if piece.kind is K.NAME]
    return Logged(tuple(one for sets in lifts for one in sets), why="as planned") if all(lifts) else None


LISTING = frozenset((K.NAME, K.PLANNED, K.COMMA, K.AND, K.THEN, K.LINE, K.FILLER, K.BOTH, K.STOP))


def _ask_which() -> Asked:
    return Asked("What was different from the plan? Write the sets out, for instance 3x8 60.", (), Doubt.NUMBERS)


def _slot(exercise: ExerciseName | None, context: Context) -> Planned | None:
    """What is planned of the lift today; None where nothing is."""
    return next((one for one in context.plan if one.exercise == exercise), None)


def sets_of_the_plan(names: Sequence[ExerciseName], context: Context, catalogue: Catalogue) -> tuple[SetDone, ...]:
    """The sets that are planned of the lift meant; empty where none are, or where the plan leaves a number open."""
    exercise = narrowed(tuple(names), context)[0] if names else None
    slot = _slot(exercise, context)
    return tuple(_planned_sets(slot, context, catalogue) or ()) if slot is not None else ()


def _planned_sets(slot: Planned, context: Context, catalogue: Catalogue) -> list[SetDone] | None:
    exercise = catalogue.get(slot.exercise)
    body = exercise is not None and exercise.loading is Loading.BODY
    load = slot.load or context.last.get(slot.exercise)
    if load is None and body:
        load = Load(Decimal(0), context.unit, BASES.get(Loading.BODY, Basis.BODY))
    match slot.target:
        case Reps(count):
            return [SetDone(slot.exercise, count, load)] * slot.sets
        case Seconds(count):
            return [SetDone(slot.exercise, 1, load, seconds=count)] * slot.sets
        case Metres(count):
            return [SetDone(slot.exercise, 1, load, metres=count)] * slot.sets
        case _:
            return None


def _changed(
    sets: list[SetDone], pieces: Sequence[Piece], numbers: Sequence[Piece], standing: int
) -> tuple[SetDone, ...] | None:
    """The sets as told: fewer or more of them, another load for all, or some of them changed."""
    fewer = numbers[0] if len(numbers) == 1 and numbers[0].role is Role.SETS else None
    if fewer is not None and 1 <= fewer.value < len(sets) and _counts_alone(pieces):
        return tuple(sets[: int(fewer.value)])
    if fewer is not None and 1 <= fewer.value <= 2 * len(sets) and _says_count(pieces):
        return (sets[0],) * int(fewer.value)
    instead = _instead(sets, pieces, numbers)
    if instead is not None:
        return tuple(replace(one, load=instead) for one in sets)
    return with_changes(sets, pieces, standing)


def _says_count(pieces: Sequence[Piece]) -> bool:
    """ "as planned except i did 4 sets": a count of sets, and not one of them."""
    return any(piece.kind is K.EXCEPT for piece in pieces) and not any(
        piece.kind in (K.LAST, K.FIRST, K.ORDINAL, K.MORE, K.ANOTHER) for piece in pieces
    )


def _instead(sets: list[SetDone], pieces: Sequence[Piece], numbers: Sequence[Piece]) -> Load | None:
    """ "82.5 instead of 80": another load for all, where the plan says the one that it stands for."""
    planned = sets[0].load
    if len(numbers) != 2 or planned is None or numbers[1].value != planned.amount or numbers[0].value <= 0:
        return None
    between = [piece.kind for piece in pieces[pieces.index(numbers[0]) + 1 : pieces.index(numbers[1])]]
    if K.NOT not in between or numbers[0].unit not in (None, planned.unit) or numbers[0].value >= HEAVIEST:
        return None
    return Load(numbers[0].value, planned.unit, planned.basis)


CHANGING = frozenset((K.EFFORT, K.FAILURE, K.ANOTHER, K.MORE, K.EXTRA, K.MISS, K.DROP, K.REST_PAUSE,
                      K.WARMUP, K.PARTIAL))  # fmt: skip
"""What changes planned sets with no number."""
BESIDE_ONE_MORE = frozenset((K.PLANNED, K.AND, K.PLUS, K.WITH, K.ANOTHER, K.EXTRA, K.SETS, K.FILLER, K.COMMA,
                             K.NAME, K.THEN))  # fmt: skip


def _counts_alone(pieces: Sequence[Piece]) -> bool:
    """ "as planned, only 2 sets", "as planned but 2 sets": nothing else is told."""
    return {piece.kind for piece in pieces} <= BESIDE_A_COUNT


BESIDE_A_COUNT = frozenset((K.NUMBER, K.PLANNED, K.ONLY, K.FILLER, K.COMMA, K.NAME, K.EXCEPT, K.NOTE, K.GOT, K.STOP))
