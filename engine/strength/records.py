"""Records of one lift, each by its kind: load, repetitions at a load, estimated maximum, session volume.

Only work sets count; drops and rest-pauses are continuations of a set. The first session of a lift sets marks and
breaks none. Loads are compared on one basis, in kilograms, and a gain smaller than the unit conversion shows is none.
Common practice, no source.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from enum import Enum
from math import log, sqrt

from engine.strength.current import current_strength
from engine.strength.likelihood import chance_above
from engine.strength.mass import load_told, resistance, volume_load
from engine.strength.session_evidence import LEVEL
from engine.strength.set_estimate import SetEstimate, estimate
from engine.values.exercise import Exercise
from engine.values.ids import SetId
from engine.values.load import Load
from engine.values.sets import SetKind, SetRecord

MARGIN_KG = Decimal("0.1")


class RecordKind(Enum):
    LOAD = "load"
    REPS = "reps at a load"
    ESTIMATED_MAXIMUM = "estimated maximum"
    SESSION_VOLUME = "session volume"


@dataclass(frozen=True, slots=True)
class Record:
    """A mark beaten.

    Shape: `evidence` are the sets it rests on. By kind: LOAD has `load` and `previous_load`; REPS has `reps`,
    `previous_reps` and the `load` they were done at; ESTIMATED_MAXIMUM has both loads and `sure`, the chance that the
    lifter really is stronger than the old mark; SESSION_VOLUME has `volume` and `previous_volume`.
    Units: volume in kilograms.
    """

    kind: RecordKind
    evidence: tuple[SetId, ...]
    load: Load | None = None
    previous_load: Load | None = None
    reps: int | None = None
    previous_reps: int | None = None
    volume: Decimal | None = None
    previous_volume: Decimal | None = None
    sure: float | None = None


def records_broken(
    before: Sequence[SetRecord], session: Sequence[SetRecord], exercise: Exercise, body_weight: Load | None = None
) -> tuple[Record, ...]:
    """The records that a session's sets of one lift broke, in the order of RecordKind.

    Shape: `before` is the log up to that session, `session` the session's sets; sets of other exercises are passed
    over. Sets with no load told break no record but one of repetitions in body-weight work.
    """
    old, new = _work(before, exercise), _work(session, exercise)
    if not old or not new:
        return ()
    found = (
        _load_record(old, new, exercise),
        _reps_record(old, new, exercise),
        _estimate_record(old, new, exercise, body_weight),
        _volume_record(before, session, exercise, body_weight),
    )
    return tuple(one for one in found if one is not None)


def heaviest(records: Sequence[SetRecord], exercise: Exercise) -> SetRecord | None:
    """The set with the most load of which at least one repetition was completed; the latest basis counts."""
    done = _work(records, exercise)
    if not done:
        return None
    basis = _load(done[-1], exercise).basis
    alike = [one for one in done if _load(one, exercise).basis is basis]
    return max(alike, key=lambda one: _load(one, exercise).kilograms())


def best_estimate(
    records: Sequence[SetRecord], exercise: Exercise, body_weight: Load | None = None
) -> tuple[SetRecord, SetEstimate] | None:
    """The set that points to the highest maximum, with what it points to; sets of low confidence are left out."""
    best: tuple[SetRecord, SetEstimate] | None = None
    for record in _work(records, exercise):
        found = estimate(record.done, exercise, body_weight)
        if isinstance(found, SetEstimate) and not found.low_confidence and (best is None or best[1].load < found.load):
            best = (record, found)
    return best


def most_volume(
    records: Sequence[SetRecord], exercise: Exercise, body_weight: Load | None = None
) -> tuple[date, Decimal] | None:
    """The day with the most load times repetitions in one lift; a day with a set of unknown mass is left out."""
    days: dict[date, Decimal | None] = {}
    for record in records:
        if record.done.exercise == exercise.name and record.done.counts_as_work:
            moved, so_far = volume_load(record.done, exercise, body_weight), days.get(record.on, Decimal(0))
            days[record.on] = None if moved is None or so_far is None else so_far + moved
    known = [(on, volume) for on, volume in days.items() if volume is not None]
    return max(known, key=lambda day: day[1], default=None)


def _load_record(old: Sequence[SetRecord], new: Sequence[SetRecord], exercise: Exercise) -> Record | None:
    best = heaviest(new, exercise)
    if best is None:
        return None
    load = _load(best, exercise)
    before = [_load(one, exercise) for one in old if _load(one, exercise).basis is load.basis]
    if not before:
        return None
    mark = max(before, key=Load.kilograms)
    if load.kilograms() <= mark.kilograms() + MARGIN_KG:
        return None
    return Record(RecordKind.LOAD, (best.id,), load=load, previous_load=mark)


def _reps_record(old: Sequence[SetRecord], new: Sequence[SetRecord], exercise: Exercise) -> Record | None:
    """The set that most beat the repetitions done before with as much or more; a load never lifted has no mark."""
    best: Record | None = None
    for record in new:
        load = _load(record, exercise)
        marks = [one.done.reps for one in old if _as_hard(one, record, load, exercise)]
        if not marks or record.done.reps <= max(marks):
            continue
        found = Record(RecordKind.REPS, (record.id,), load=load, reps=record.done.reps, previous_reps=max(marks))
        if best is None or _gain(found) > _gain(best):
            best = found
    return best


def _estimate_record(
    old: Sequence[SetRecord], new: Sequence[SetRecord], exercise: Exercise, body_weight: Load | None
) -> Record | None:
    before, best = best_estimate(old, exercise, body_weight), best_estimate(new, exercise, body_weight)
    if before is None or best is None or before[1].load.basis is not best[1].load.basis:
        return None
    mark, load = before[1].load, best[1].load
    if load.kilograms() <= mark.kilograms() + MARGIN_KG:
        return None
    sure = _sure([*old, *new], mark, exercise, body_weight)
    return Record(RecordKind.ESTIMATED_MAXIMUM, (best[0].id,), load=load, previous_load=mark, sure=sure)


def _sure(records: Sequence[SetRecord], mark: Load, exercise: Exercise, body_weight: Load | None) -> float | None:
    """The chance that strength as followed over all recent sessions lies above a mark."""
    current = current_strength(records, exercise, records[-1].on, body_weight)
    mass = resistance(mark, exercise, body_weight)
    if current is None or mass is None or mass <= 0:
        return None
    return chance_above(log(mass), current.belief.mean[LEVEL], sqrt(current.belief.cov[LEVEL][LEVEL]))


def _volume_record(
    before: Sequence[SetRecord], session: Sequence[SetRecord], exercise: Exercise, body_weight: Load | None
) -> Record | None:
    mark, most = most_volume(before, exercise, body_weight), most_volume(session, exercise, body_weight)
    if mark is None or most is None or most[1] <= mark[1] + MARGIN_KG:
        return None
    evidence = tuple(record.id for record in session if record.on == most[0] and record.done.exercise == exercise.name)
    return Record(RecordKind.SESSION_VOLUME, evidence, volume=most[1], previous_volume=mark[1])


def _as_hard(one: SetRecord, record: SetRecord, load: Load, exercise: Exercise) -> bool:
    """Whether an old set was done with at least this load, on the same basis and the same side."""
    mark = _load(one, exercise)
    same_side = None in (one.done.side, record.done.side) or one.done.side is record.done.side
    return same_side and mark.basis is load.basis and mark.kilograms() >= load.kilograms() - MARGIN_KG


def _gain(record: Record) -> int:
    return (record.reps or 0) - (record.previous_reps or 0)


def _load(record: SetRecord, exercise: Exercise) -> Load:
    told = load_told(record.done, exercise)
    assert told is not None, "_work leaves out sets with no load"
    return told


def _work(records: Sequence[SetRecord], exercise: Exercise) -> tuple[SetRecord, ...]:
    return tuple(
        record
        for record in records
        if record.done.exercise == exercise.name
        and record.done.kind is SetKind.WORK
        and record.done.reps > 0
        and load_told(record.done, exercise) is not None
    )
