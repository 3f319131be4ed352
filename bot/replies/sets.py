"""Sets in words that the reader can read back: 3×12 at 55 kg, or 6, 6, 5 at 42.5 kg.

Sets that share a load are one group; what holds for a whole group is said once behind it.
"""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from itertools import groupby
from typing import assert_never

from engine.progression.words import target
from engine.values.effort import Effort
from engine.values.load import Basis, Load, plain
from engine.values.prescription import Prescription, SetTarget
from engine.values.sets import SetDone, SetKind, Side

LONGEST_LIST = 12

TENTH = Decimal("0.1")


def load_text(load: Load | None) -> str:
    """55 kg, 20 kg each hand, +10 kg, 20 kg help; empty for body weight alone or no load known."""
    if load is None or (load.basis is Basis.BODY and load.amount == 0):
        return ""
    match load.basis:
        case Basis.TOTAL | Basis.STACK:
            return str(load)
        case Basis.PER_HAND:
            return f"{load} each hand"
        case Basis.BODY:
            return f"+{load}" if load.amount > 0 else f"-{plain(-load.amount)} {load.unit.value} assisted"
        case _:
            assert_never(load.basis)


def count_text(done: SetDone) -> str:
    """What was done in one set: 12, 45 s, 40 m."""
    if done.seconds is not None and done.metres is not None:
        return f"{plain(done.metres)} m in {plain(done.seconds)} s"
    if done.seconds is not None:
        return f"{plain(done.seconds)} s"
    if done.metres is not None:
        return f"{plain(done.metres)} m"
    return str(done.reps)


def effort_text(effort: Effort) -> str:
    """RPE 8, or RIR 2, as the lifter said it."""
    return f"RPE {plain(effort.rpe)}" if effort.as_rpe else f"RIR {plain(effort.rir)}"


def sets_text(sets: Sequence[SetDone]) -> str:
    """All sets of one exercise: groups of one load, in order, commas between."""
    groups = [list(group) for _, group in groupby(sets, key=_together)]
    return ", then ".join(_group(group) for group in groups)


def _together(done: SetDone) -> tuple[object, ...]:
    return (done.load, done.kind, done.side)


def _group(sets: Sequence[SetDone]) -> str:
    first = sets[0]
    counts = [count_text(done) for done in sets]
    same = len(set(counts)) == 1
    words = f"{len(sets)}×{counts[0]}" if same and len(sets) > 1 else ", ".join(_runs(_marked(sets, counts)))
    load = load_text(first.load)
    if load:
        words += f" with {load}" if first.load and first.load.basis is Basis.BODY else f" at {load}"
    if first.side is not None:
        words += " left" if first.side is Side.LEFT else " right"
    return words + _behind(sets, same)


def _runs(counts: Sequence[str]) -> list[str]:
    """The counts one by one, or, where they would fill the screen, runs of equal ones as 12×5."""
    if len(counts) <= LONGEST_LIST:
        return list(counts)
    runs = [(count, len(list(alike))) for count, alike in groupby(counts)]
    return [count if times == 1 else f"{times}×{count}" for count, times in runs]


def _marked(sets: Sequence[SetDone], counts: Sequence[str]) -> list[str]:
    """Each count with what holds for it alone."""
    shared = _shared(sets)
    return [
        count + "".join(f" {mark}" for mark in _marks(done) if mark not in shared)
        for done, count in zip(sets, counts, strict=True)
    ]


def _marks(done: SetDone) -> list[str]:
    marks = []
    if done.effort is not None:
        marks.append(effort_text(done.effort))
    if done.failure:
        marks.append("to failure")
    if done.missed:
        marks.append("missed")
    return marks


def _marked_places(sets: Sequence[SetDone]) -> list[str]:
    """What holds for some of alike sets: set 3 RPE 9; last 3 to failure; set 2 and 4 missed."""
    words = []
    for mark in dict.fromkeys(mark for done in sets for mark in _marks(done)):
        places = [place for place, done in enumerate(sets, start=1) if mark in _marks(done)]
        if len(places) == len(sets):
            continue
        if len(places) > 1 and places == list(range(len(sets) - len(places) + 1, len(sets) + 1)):
            words.append(f"last {len(places)} {mark}")
        else:
            words.append(f"set {' and '.join(map(str, places))} {mark}")
    return words


def _shared(sets: Sequence[SetDone]) -> list[str]:
    first = _marks(sets[0])
    return [mark for mark in first if all(mark in _marks(done) for done in sets)]


def _behind(sets: Sequence[SetDone], same: bool) -> str:
    first = sets[0]
    words = [f"{mark}" for mark in _shared(sets)]
    if same and len(sets) > 1:
        words += _marked_places(sets)
    match first.kind:
        case SetKind.WORK:
            pass
        case SetKind.WARMUP:
            words.append("warm-up")
        case SetKind.DROP:
            words.append("drop")
        case SetKind.REST_PAUSE:
            words.append("rest-pause")
        case _:
            assert_never(first.kind)
    return "".join(f", {word}" for word in words)


def targets_text(targets: Sequence[SetTarget]) -> str:
    """A prescription's sets in one line: 3×12 at 55 kg, RIR 2."""
    groups = [list(group) for _, group in groupby(targets, key=lambda one: (one.load, one.effort))]
    return ", then ".join(_target_group(group) for group in groups)


def asked_text(prescription: Prescription) -> str:
    """All that a lift asks in one line; under a rep total what the sets are to reach together: 3×max, 25 in all."""
    sets = targets_text(prescription.sets)
    return sets if prescription.total is None else f"{sets}, {prescription.total} in all"


def _target_group(targets: Sequence[SetTarget]) -> str:
    counts = [target(one.target) for one in targets]
    words = f"{len(targets)}×{counts[0]}" if len(set(counts)) == 1 else "/".join(counts)
    load = load_text(targets[0].load)
    body = targets[0].load is not None and targets[0].load.basis is Basis.BODY
    if load:
        words += f" with {load}" if body else f" at {load}"
    if targets[0].effort is not None:
        words += f", {effort_text(targets[0].effort)}"
    return words


def change_text(before: Load, after: Load) -> str:
    """+2.5 kg, or -5 kg: how a load moved, in the unit it has now; to a tenth where it had another."""
    moved: Decimal = after.amount - before.in_unit(after.unit).amount
    if before.unit is not after.unit:
        moved = moved.quantize(TENTH)
    return f"{'+' if moved >= 0 else '-'}{plain(abs(moved))} {after.unit.value}"
