"""Why a prescription asks what it asks: its reason, the sets it rests on, what the next step takes, in five lines."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from datetime import date
from itertools import groupby

from engine.progression.words import day, loaded
from engine.progression.words import target as asked
from engine.values.load import Load, plain
from engine.values.prescription import Prescription
from engine.values.sets import SetDone, SetRecord

MOST_EVIDENCE = 2
"""Lines of evidence: the latest sessions a prescription rests on."""


def why(prescription: Prescription, records: Iterable[SetRecord]) -> tuple[str, ...]:
    """At most five plain lines: what is asked, why, the sets that say so, and the next step.

    Shape: `records` hold at least the sets named as evidence; others are passed over.
    """
    rests_on = set(prescription.evidence)
    sets = [record for record in records if record.id in rests_on]
    return (
        f"{prescription.exercise}: {prescribed(prescription)}",
        prescription.reason,
        *_evidence(sets),
        prescription.next_step
        if prescription.offer is None
        else f"{prescription.next_step} {prescription.offer.reason}",
    )


def prescribed(prescription: Prescription) -> str:
    """The sets asked for on one line: ``3×6 at 42.5 kg``, ``5 at 100 kg, 3×5 at 90 kg``, ``3×max, 25 in all``."""
    alike = groupby(prescription.sets, key=lambda one: (one.target, one.load))
    sets = ", ".join(_asked(len(list(group)), asked(target), load) for (target, load), group in alike)
    return sets if prescription.total is None else f"{sets}, {prescription.total} in all"


def _asked(sets: int, target: str, load: Load | None) -> str:
    times = f"{sets}×{target}" if sets > 1 else target
    return f"{times} {loaded(load)}".rstrip()


def _evidence(sets: Sequence[SetRecord]) -> tuple[str, ...]:
    dates: dict[date, list[SetDone]] = {}
    for record in sorted(sets, key=lambda record: (record.on, record.place)):
        dates.setdefault(record.on, []).append(record.done)
    lines = [f"{day(on)}: {_lifted(done)}" for on, done in dates.items()]
    return tuple(lines[-MOST_EVIDENCE:])


def _lifted(sets: Sequence[SetDone]) -> str:
    alike = groupby(sets, key=lambda done: done.load)
    return "; ".join(f"{', '.join(map(_counted, group))}{_behind(load)}" for load, group in alike)


def _counted(done: SetDone) -> str:
    if done.seconds is not None:
        return f"{plain(done.seconds)} s"
    if done.metres is not None:
        return f"{plain(done.metres)} m"
    return str(done.reps)


def _behind(load: Load | None) -> str:
    return f" {loaded(load)}".rstrip()
