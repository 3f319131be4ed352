"""A whole set told again: "sorry 45x5", "it was 8 7 6", "should be 4x6"."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace

from engine.catalogue.catalogue import Catalogue
from engine.reading.corrections.correcting import Told
from engine.reading.corrections.parts import Part, part_told, sets_of
from engine.reading.corrections.said_to_be import is_be
from engine.reading.entries.segments import entries
from engine.reading.latest_sets import latest_of_it, run_of_it
from engine.reading.values import Context
from engine.reading.weighing.deciding import part_of
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role
from engine.values.ids import ExerciseName
from engine.values.load import Basis, Load
from engine.values.sets import SetDone, SetKind, SetRecord

MOST_SETS = 20


def restated(told: Told, clause: Sequence[Piece], part: Part) -> bool:
    """Whether the sets meant are as told again now, their number too."""
    exercise = part.named or told.context.recent[-1].done.exercise
    new = sets_read([piece for piece in clause if piece not in part.used], exercise, told.context, told.catalogue)
    if part.both and new:
        reached = part.reached(told.context)
        names = list(dict.fromkeys(record.done.exercise for record in reached))
        return all(become(told, [one for one in reached if one.done.exercise == name], new) for name in names)
    group = _group(told, part, len(new))
    if not new or part.places or _is_of_all(clause, part, group, new):
        return bool(new) and become(told, group, new, True)
    if len(new) == 1 and len(group) > 1:
        group = _one_told(told, part, group, new[0])
        return become(told, group, new, True)
    return become(told, group, new)


def _one_told(told: Told, part: Part, group: list[SetRecord], new: SetDone) -> list[SetRecord]:
    """Which of several sets "it was 97.5x5" puts right: all equal ones of one message whose load alone was wrong, the
    only one with its reps, the latest where only reps were wrong or each was sent alone; none where it is open.
    """
    together = len({record.message for record in group}) == 1
    if together and len({record.done for record in group}) == 1 and group[-1].done.reps == new.reps:
        return group
    same_reps = [record for record in group if record.done.reps == new.reps]
    if len(same_reps) == 1:
        return same_reps
    same_load = new.load is None or new.load == group[-1].done.load
    going_on = not together and group[-1] is told.context.recent[-1]
    slipped = told.slipped and part.named is None and not any(map(is_be, told.pieces))  # "sorry 97.5x4"
    return group[-1:] if same_load or going_on or slipped or part.single else []


def is_of_one_of_several(told: Told) -> bool:
    """ "the squat was 97.5x4" where several squats stand: of which of them nobody can say, and no set more."""
    kinds = told.kinds()
    if not {K.TIMES, K.NUMBER} <= kinds <= OF_ONE or len(told.numbers()) != PAIR:
        return False
    part = part_told(told.pieces, told.context)
    verb = next((at for at, piece in enumerate(told.pieces) if is_be(piece)), None)
    ahead = {piece.kind for piece in told.pieces[:verb]} if verb is not None else {K.NUMBER}
    return ahead <= {K.NAME, K.FILLER} and not part.named_unknown and len(_group(told, part, 1)) > 1


def _is_of_all(clause: Sequence[Piece], part: Part, group: Sequence[SetRecord], new: Sequence[SetDone]) -> bool:
    """ "the squat was 97.5 and 4 reps" behind 3x5: a lift named, and a load told for the equal sets of it."""
    spoken = K.TIMES not in {piece.kind for piece in clause} and part.named is not None
    alike = len({record.done for record in group}) == 1 and len({record.message for record in group}) == 1
    return spoken and alike and len(new) == 1 and new[0].load is not None and new[0].load.basis is not Basis.BODY


def sets_read(
    pieces: Sequence[Piece], exercise: ExerciseName, context: Context, catalogue: Catalogue
) -> tuple[SetDone, ...]:
    """The sets that these numbers are for this exercise; a load of None was not told. Empty where they are in doubt."""
    first = next((at for at, piece in enumerate(pieces) if piece.kind is K.NUMBER), len(pieces))
    left_out = (K.NAME, K.ONLY, K.TOTAL) if any(piece.kind is K.TIMES for piece in pieces) else (K.NAME, K.ONLY)
    kept = [piece for piece in pieces[first:] if piece.kind not in left_out and not is_be(piece)]
    known = [record.done.load for record in context.recent if record.done.exercise == exercise]
    loads = dict((exercise, load) for load in known[-1:] if load is not None)
    nothing: dict[ExerciseName, Load] = {}
    for last in (nothing, loads):
        bare = replace(context, doing=exercise, plan=(), recent=(), last=last, best={})
        told = entries(list(kept))
        if len(told) != 1 or told[0].unknown:
            return ()
        part = part_of(told[0], bare, catalogue)
        if part.readings and part.doubt is None:
            return _with_loads_told(part.readings[0].sets, kept, last)
    return ()


def _with_loads_told(
    sets: tuple[SetDone, ...], pieces: Sequence[Piece], known: Mapping[ExerciseName, Load]
) -> tuple[SetDone, ...]:
    """The sets without the load that was only taken from the latest one: each set that stands keeps its own."""
    told = {piece.value for piece in pieces if piece.kind is K.NUMBER}
    taken = [load for load in known.values() if abs(load.amount) not in told]
    return tuple(replace(one, load=None) if one.load in taken else one for one in sets)


def _group(told: Told, part: Part, count: int) -> list[SetRecord]:
    if part.places:
        return part.places
    if part.named:
        return sets_of(part, told.context)
    latest = latest_of_it(told.context)
    choices = (latest, run_of_it(told.context), sets_of(part, told.context))
    return next((group for group in choices if len(group) == count), latest)


def become(told: Told, group: Sequence[SetRecord], new: Sequence[SetDone], fixed: bool = False) -> bool:
    """Whether these sets take the new values: one each, one for the latest, or more or fewer equal ones."""
    if not group or not new:
        return False
    if len(new) == 1 and not fixed:
        group = group[-1:]
    elif len(new) == 1:
        new = tuple(new) * len(group)
    if len(new) != len(group) and (fixed or len(set(new)) > 1 or len(new) > MOST_SETS):
        return False
    for record, done in zip(group, new, strict=False):
        told.set_to(record, taking(told.now(record), done))
    told.removed += group[len(new) :]
    told.added += [taking(group[-1].done, done) for done in new[len(group) :]]
    return True


def taking(old: SetDone, new: SetDone) -> SetDone:
    """The old set with what was told of the new one."""
    untold = new.load is None or (new.load.basis is Basis.BODY and new.load.amount == 0)
    load = old.load if untold or new.load is None else new.load
    if load is not None and old.load is not None and not untold:
        load = replace(load, basis=old.load.basis, unit=load.unit)
    return replace(
        old,
        reps=new.reps,
        seconds=new.seconds,
        metres=new.metres,
        load=load,
        effort=new.effort or old.effort,
        failure=new.failure or old.failure,
        missed=new.missed,
        kind=old.kind if new.kind is SetKind.WORK else new.kind,
    )


def tells_the_whole(told: Told) -> bool:
    """ "i only did 2x5", "did 5x5 in total" behind 3x5: a count of the sets that stand, and none of its own."""
    kinds, numbers, latest = told.kinds(), told.numbers(), latest_of_it(told.context)
    if not kinds <= OF_THE_WHOLE or K.TIMES not in kinds or len(numbers) != PAIR or len(latest) < PAIR:
        return False
    sets, reps = numbers
    alike = {record.done.reps for record in latest} == {reps.value} and sets.role is Role.BARE
    fewer = K.ONLY in kinds and sets.value < len(latest)
    return alike and (fewer or (K.TOTAL in kinds and len(latest) < sets.value <= MOST_SETS))


PAIR = 2
OF_ONE = frozenset((K.NAME, K.FILLER, K.NUMBER, K.TIMES, K.KG, K.LB, K.FOR, K.REPS, K.AT, K.STOP))
OF_THE_WHOLE = frozenset((K.FILLER, K.ONLY, K.GOT, K.TOTAL, K.NUMBER, K.TIMES, K.STOP, K.TODAY))
