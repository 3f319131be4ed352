"""Sets in few words: the labels that set one reading apart from another, fit for a button."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import groupby

from engine.values.load import Basis, plain
from engine.values.sets import SetDone, SetKind

LONGEST_LABEL = 40


def label_of(sets: Sequence[SetDone], rivals: Sequence[Sequence[SetDone]] = ()) -> str:
    """What sets this reading apart: the exercise where that is in doubt, else the numbers."""
    names = {one.exercise for reading in rivals for one in reading}
    if len(names) > 1 and len({one.exercise for one in sets}) == 1:
        same = len({tuple(map(_counted, reading)) for reading in rivals}) == 1
        if same:
            return sets[0].exercise[:LONGEST_LABEL]
    described = describe(sets, LONGEST_LABEL)
    return described if len(described) <= LONGEST_LABEL else described[: LONGEST_LABEL - 1] + "…"


def _counted(one: SetDone) -> tuple[object, ...]:
    return one.reps, one.seconds, one.metres, one.load.amount if one.load else None


def describe(sets: Sequence[SetDone], enough: int | None = None) -> str:
    """The sets in words: "barbell row 3×12 at 55 kg"; not all of them where `enough` characters are told before."""
    parts: list[str] = []
    for exercise, of_it in groupby(sets, key=lambda one: one.exercise):
        told = []
        for numbers, alike in groupby(of_it, key=numbers_of):
            count = len(list(alike))
            told.append(f"{count}×{numbers}" if count > 1 else numbers)
        parts.append(f"{exercise} {', '.join(told)}")
        if enough is not None and sum(map(len, parts)) > enough:
            break
    return "; ".join(parts)


def numbers_of(one: SetDone) -> str:
    """One set's numbers in words, without the exercise."""
    if one.seconds is not None and one.metres is not None:
        done = f"{plain(one.metres)} m in {plain(one.seconds)} s"
    elif one.seconds is not None:
        done = f"{plain(one.seconds)} s"
    elif one.metres is not None:
        done = f"{plain(one.metres)} m"
    else:
        done = str(one.reps)
    return " ".join(filter(None, (done, _load_of(one), *_marks(one))))


def _load_of(one: SetDone) -> str:
    load = one.load
    if load is None:
        return ""
    if load.basis is Basis.BODY:
        return (
            ""
            if load.amount == 0
            else f"at {'+' if load.amount > 0 else '−'}{plain(abs(load.amount))} {load.unit.value}"
        )
    each = " each" if load.basis is Basis.PER_HAND else ""
    return f"at {plain(load.amount)} {load.unit.value}{each}"


def _marks(one: SetDone) -> list[str]:
    marks = []
    if one.effort is not None:
        told = f"RPE {plain(one.effort.rpe)}" if one.effort.as_rpe else f"{plain(one.effort.rir)} in reserve"
        marks.append(told)
    if one.kind is not SetKind.WORK:
        marks.append(one.kind.value)
    if one.missed:
        marks.append("missed")
    if one.failure:
        marks.append("to failure")
    if one.side is not None:
        marks.append(one.side.value)
    return marks
