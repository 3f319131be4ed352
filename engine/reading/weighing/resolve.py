"""Drafts to sets: units, the basis of a load, and the load that is meant where none was told.

Where neither plan nor log knows a load, the load stays None: nothing is made up.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from decimal import Decimal
from operator import attrgetter

from engine.reading.chunks.choices import DoesNotFit, Draft
from engine.reading.chunks.chunks import Chunks, numbers_in
from engine.reading.chunks.steps import tells_a_load
from engine.reading.marks.relative_loads import AGAINST_LAST
from engine.reading.shapes.plain import Group
from engine.reading.values import Context
from engine.reading.weighing.history import EMPTY_BAR, PLATE, Known
from engine.reading.weighing.shared_values import load_of, set_of
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role
from engine.values.exercise import Exercise, Loading, Pattern
from engine.values.load import Basis, Load, Unit
from engine.values.muscles import Muscle
from engine.values.sets import SetDone, SetKind

BASES = {
    Loading.PER_HAND: Basis.PER_HAND,
    Loading.BODY: Basis.BODY,
    Loading.BAND: Basis.BODY,
    Loading.STACK: Basis.STACK,
}
TOLD = attrgetter("reps", "seconds", "metres", "effort", "kind", "failure", "missed", "side", "carried")
ZERO = Decimal(0)
HELD = frozenset((Loading.PER_HAND, Loading.IMPLEMENT))
ON_THE_BAR = frozenset((Role.BARE, Role.LOAD))


def resolved(
    drafts: Sequence[Draft], chunks: Chunks, exercise: Exercise, known: Known, context: Context
) -> list[SetDone]:
    """The sets of these drafts.

    Errors: DoesNotFit for a load that cannot be.
    """
    loads: dict[int, Load | None] = {}
    sets: list[SetDone] = []
    before: Draft | None = None
    for draft in drafts:
        if before is not None and draft.load is before.load and TOLD(draft) == TOLD(before):
            sets.append(sets[-1])  # the sets of one group are one value
            continue
        before = draft
        key = id(draft.load)
        if key not in loads:
            load = _load(draft.load, chunks, exercise, _stepped_from(draft.load, sets, known), context)
            loads[key] = _its_own(load, loads)
        sets.append(_set(draft, loads[key], exercise))
    return _bar_as_warm_up(sets, drafts) if chunks.barred else sets


def resolved_groups(
    groups: Sequence[Group], chunks: Chunks, exercise: Exercise, known: Known, context: Context
) -> list[SetDone]:
    """The sets of these plain groups; equal ones in a row are one value.

    Errors: DoesNotFit for a load that cannot be.
    """
    loads: dict[int, Load | None] = {}
    sets: list[SetDone] = []
    before: Group | None = None
    for group in groups:
        if before is None or not group.is_like(before):
            key = id(group.load)
            if key not in loads:
                load = _load(group.load, chunks, exercise, _stepped_from(group.load, sets, known), context)
                loads[key] = _its_own(load, loads)
            one, before = _set_of_group(group, loads[key], exercise, sets), group
        sets += [one] * group.count
    return sets


def _its_own(load: Load | None, others: Mapping[int, Load | None]) -> Load | None:
    """The load, as a value of its own where another number came to the same: each load is weighed by itself."""
    if load is None or not others or True not in [load is other for other in others.values()]:
        return load
    return replace(load)


def _set_of_group(group: Group, load: Load | None, exercise: Exercise, before: Sequence[SetDone]) -> SetDone:
    """One of the equal sets of a group: no value of the sets before it, which were told apart."""
    if load is not None and group.effort is None:
        one = set_of(exercise.name, group.reps, load, group.kind, group.failure)
        if len(before) < 2 or True not in [one is other for other in before]:
            return one
    return SetDone(exercise.name, group.reps, load, group.effort, None, None, group.kind, group.failure)


def _stepped_from(piece: Piece | None, sets: Sequence[SetDone], known: Known) -> Known:
    """ "80x5, +5 for 4": a change behind a set counts from that set's load."""
    if piece is None or piece.role is not Role.CHANGE or not sets or sets[-1].load is None:
        return known
    return known._replace(load=sets[-1].load)


def _set(draft: Draft, load: Load | None, exercise: Exercise) -> SetDone:
    try:
        return SetDone(
            exercise.name,
            draft.reps,
            load,
            draft.effort,
            draft.seconds,
            draft.metres,
            draft.kind,
            draft.failure,
            draft.missed,
            draft.side,
        )
    except ValueError as slip:
        raise DoesNotFit(str(slip)) from slip


def _load(piece: Piece | None, chunks: Chunks, exercise: Exercise, known: Known, context: Context) -> Load | None:
    basis = BASES.get(exercise.loading, Basis.TOTAL)
    body = basis is Basis.BODY
    if piece is None or piece.role is Role.BODY:
        return _untold(chunks, known, context, exercise) if piece is None or not body else _no_load(context.unit)
    if piece.role is Role.BAR and body:
        return _no_load(context.unit)  # "pull ups 8 8 7 on the bar"
    if piece.role is Role.BAR:
        return Load(Decimal(EMPTY_BAR[context.unit]), context.unit, basis)
    if piece.text == "plates":
        return _plates(piece, exercise, context.unit, chunks.sled_is_nothing)
    if chunks.per_side and piece.role in ON_THE_BAR:
        bar = EMPTY_BAR[piece.unit or chunks.unit or context.unit] if exercise.loading is Loading.BAR else 0
        piece = piece._replace(value=bar + 2 * piece.value)
    amount = -piece.value if body and chunks.assisted and piece.value > 0 and _is_help(piece, chunks) else piece.value
    if piece.role is Role.CHANGE and (not body or piece.told == AGAINST_LAST):
        if not chunks.body or body or amount < 0 or not goes_with_the_body(exercise):
            return _change_of_known(piece, amount, known, body)
        basis = Basis.BODY  # "calf raises bw+20"
    return _told(amount, piece.unit or chunks.unit or context.unit, basis)


def _is_help(piece: Piece, chunks: Chunks) -> bool:
    """Whether a weight beside help is help, too; "4 with 15 kg help, then 3 with +5 kg" adds the five."""
    told = [*numbers_in(chunks), *[number for chunk in chunks.found for number in chunk.at]]
    helped = any(one.value < 0 or (one.role is Role.LOAD and one.value > 0) for one in told)
    return piece.role is not Role.CHANGE or not helped


def _no_load(unit: Unit) -> Load:
    return load_of(ZERO, unit, Basis.BODY)


def _told(amount: Decimal, unit: Unit, basis: Basis) -> Load:
    try:
        return load_of(amount, unit, basis)
    except ValueError as slip:
        raise DoesNotFit(str(slip)) from slip


def _change_of_known(piece: Piece, amount: Decimal, known: Known, body: bool) -> Load:
    """ "+2.5" counts from what is known, "2.5 more than last time" from the last time alone."""
    if piece.told != AGAINST_LAST:
        return _changed(amount, piece.unit, known.load)
    if body and piece.unit is None and amount == int(amount):
        raise DoesNotFit("so much more weight, or so many reps more")
    return _changed(amount, piece.unit, known.last)


def _untold(chunks: Chunks, known: Known, context: Context, exercise: Exercise) -> Load | None:
    if chunks.body and BASES.get(exercise.loading) is not Basis.BODY and not (chunks.added or chunks.assisted):
        return _body_alone(exercise, context)
    if BASES.get(exercise.loading) is not Basis.BODY:
        return known.load
    if chunks.unaided:
        return known.load if known.load is not None and known.load.amount < 0 else None  # those with help or a band
    changed = Role.CHANGE in chunks.roles and K.DROP not in chunks.kinds  # "dips 15 12 9 then +10kg 8 6"
    if changed or (chunks.added and tells_a_load(chunks.found)):
        return _no_load(context.unit)  # "pull ups 14 11 8, then with 5 kg on the belt 7 5"
    if chunks.assisted or chunks.band or chunks.added:
        helped = chunks.assisted or chunks.band
        other = known.load is None or known.load.amount == 0 or (helped and known.load.amount > 0)
        return None if other else known.load
    if chunks.body or known.load is None:
        return _no_load(context.unit)
    return known.load


def goes_with_the_body(exercise: Exercise) -> bool:
    """Whether a lift that is loaded otherwise is done with the body alone, too. Common practice, no source."""
    calves = exercise.prime[:1] == (Muscle.CALVES,)
    bridge = exercise.pattern is Pattern.HINGE and exercise.prime == (Muscle.GLUTES,)
    return exercise.loading in HELD or exercise.pattern is Pattern.LUNGE or calves or bridge


def _body_alone(exercise: Exercise, context: Context) -> Load:
    """ "walking lunges 3x12 bodyweight": nothing in the hands. "bench bw x 5" is a load, not told in numbers."""
    if goes_with_the_body(exercise):
        return _no_load(context.unit)
    raise DoesNotFit("how much your body weight comes to I do not know here; send the load in numbers")


def _plates(piece: Piece, exercise: Exercise, unit: Unit, sled_is_nothing: bool | None) -> Load | None:
    """So many plates on each side of the bar; what a sled or an odd bar weighs itself is not known."""
    plates = 2 * piece.value * PLATE[unit]
    if exercise.loading is Loading.BAR and "barbell" in exercise.equipment.value:
        return _told(EMPTY_BAR[unit] + plates, unit, Basis.TOTAL)
    if exercise.loading not in (Loading.PLATES, Loading.BAR) or sled_is_nothing is None:
        raise DoesNotFit("plates on something that is no plain bar")
    return _told(plates, unit, Basis.TOTAL) if sled_is_nothing else None


def _changed(by: Decimal, unit: Unit | None, load: Load | None) -> Load:
    if load is None or unit not in (None, load.unit):
        raise DoesNotFit("a change of a load that is not known")
    try:
        return Load(load.amount + by, load.unit, load.basis)
    except ValueError as slip:
        raise DoesNotFit(str(slip)) from slip


def _bar_as_warm_up(sets: list[SetDone], drafts: Sequence[Draft]) -> list[SetDone]:
    """The empty bar ahead of heavier sets is a warm-up."""
    if not any(draft.load is not None and draft.load.role is Role.BAR for draft in drafts):
        return sets
    heaviest = max((one.load.kilograms() for one in sets if one.load is not None), default=ZERO)
    return [
        _as_warm_up(one) if draft.load and draft.load.role is Role.BAR and _lighter(one, heaviest) else one
        for one, draft in zip(sets, drafts, strict=True)
    ]


def _lighter(one: SetDone, heaviest: Decimal) -> bool:
    return one.load is not None and one.load.kilograms() < heaviest and one.kind is SetKind.WORK


def _as_warm_up(one: SetDone) -> SetDone:
    return SetDone(
        one.exercise,
        one.reps,
        one.load,
        one.effort,
        one.seconds,
        one.metres,
        SetKind.WARMUP,
        one.failure,
        one.missed,
        one.side,
    )
