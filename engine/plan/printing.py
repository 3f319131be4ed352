"""A plan as text: one form for each thing, and `parse_plan` reads back the plan that was printed."""

from __future__ import annotations

import re
from collections.abc import Iterator
from decimal import Decimal
from typing import assert_never

from engine.catalogue.catalogue import Catalogue, catalogue
from engine.plan.amounts import SECONDS_A_MINUTE
from engine.plan.defaults import basis_of
from engine.plan.finish import DAY_NAMES, EVERY_WEEK, LETTERS
from engine.plan.free_words import quoted
from engine.plan.heading_words import WEEKDAY, is_rest, reads_as_clause
from engine.progression.words import target as told
from engine.values.effort import Effort
from engine.values.exercise import Exercise, Measure
from engine.values.load import Basis, Load, plain
from engine.values.muscles import Muscle
from engine.values.plan import (
    Block,
    Deload,
    FindIt,
    MaxReps,
    Plan,
    Reps,
    Seconds,
    Slot,
    Target,
    TrainingDay,
    VolumeTarget,
    WeekKind,
)
from engine.values.schemes import (
    DoubleProgression,
    EffortTarget,
    Hold,
    LoadStep,
    PercentageWave,
    RepGoal,
    RepTotal,
    Scheme,
    SetWave,
    TimeOrDistance,
    TopSetBackOff,
)

PLACE = re.compile(r"day (?:\d{1,2}|[A-Z])")


def print_plan(plan: Plan, known: Catalogue | None = None) -> str:
    """The plan as lines a coach could have typed.

    Shape: `known` is the athlete's catalogue, so that her own exercises print as shortly as all others.
    """
    exercises = known or catalogue()
    return "\n".join(_plan_lines(plan, exercises))


def print_slot(slot: Slot, known: Catalogue, place: int = 1) -> str:
    """The line of one slot; `place` is its place in its superset, from 1."""
    exercise = known.get(slot.exercise)
    tag = f"{slot.group}{place} " if slot.group else ""
    first = f"{tag}{slot.exercise} {slot.sets}x{_target(slot.target, exercise)}{_load(slot, exercise)}"
    parts = [first, _effort(slot.effort) if slot.effort else "", _scheme(slot, exercise), _rest(slot.rest_seconds)]
    parts.extend(f"cue: {quoted(cue)}" for cue in slot.cues)
    parts.append(f"swap {' or '.join(slot.swaps)}" if slot.swaps else "")
    parts.append(f"standard: {quoted(slot.standard)}" if slot.standard else "")
    return ", ".join(part for part in parts if part)


def _plan_lines(plan: Plan, known: Catalogue) -> Iterator[str]:
    lone = plan.blocks[0] if len(plan.blocks) == 1 and plan.blocks[0].label == plan.name else None
    yield f"plan: {_label(plan.name)}{_length(lone) if lone else ''}"
    yield from (_volume(muscle, target) for muscle, target in plan.targets.items())
    for block in plan.blocks:
        if lone is None:
            yield f"block: {_label(block.label)}{_length(block)}"
        for place, kind in enumerate(block.kinds):
            if len(block.kinds) > 1 or kind.label != EVERY_WEEK:
                yield _week(kind, place)
            for day in kind.days:
                yield _day(day)
                yield from _slots(day, known)


def _slots(day: TrainingDay, known: Catalogue) -> Iterator[str]:
    counted: dict[str, int] = {}
    for slot in day.slots:
        group = slot.group or ""
        counted[group] = counted.get(group, 0) + 1
        yield print_slot(slot, known, counted[group])


def _label(label: str) -> str:
    return f'"{label}"' if reads_as_clause(label) else quoted(label)


def _length(block: Block) -> str:
    parts = [f"{block.weeks} week{'s' * (block.weeks != 1)}"]
    if block.deload_weeks:
        weeks = " and ".join(map(str, block.deload_weeks))
        parts.append(f"deload week{'s' * (len(block.deload_weeks) > 1)} {weeks}")
    if block.deload != Deload():
        sets, load = _percent(block.deload.sets_share), _percent(block.deload.load_share)
        parts.append(f"deload at {sets} of sets and {load} of load")
    return "".join(f", {part}" for part in parts)


def _volume(muscle: Muscle, target: VolumeTarget) -> str:
    return f"target {muscle.value} {plain(target.low)}-{plain(target.high)}"


def _week(kind: WeekKind, place: int) -> str:
    letter = LETTERS[place] if place < len(LETTERS) else str(place + 1)
    if kind.label in (letter, str(place + 1)):
        return f"week {kind.label}"
    return f"week {letter}: {_behind_colon(kind.label)}"


def _day(day: TrainingDay) -> str:
    if day.weekday is not None:
        head = f"day {day.weekday.name.lower()}"
        return head if day.label == DAY_NAMES[day.weekday] else f"{head}: {_behind_colon(day.label)}"
    return day.label if PLACE.fullmatch(day.label) else f"day: {_behind_colon(day.label)}"


def _behind_colon(label: str) -> str:
    has_digits = any(sign.isdigit() for sign in label)
    needs = (
        has_digits
        or WEEKDAY.match(label)
        or is_rest(label)
        or label.lower().startswith(("day", "session", "workout", "deload"))
    )
    return f'"{label.replace(chr(34), chr(34) * 2)}"' if needs else quoted(label)


def _target(target: Target, exercise: Exercise | None) -> str:
    match target:
        case Reps(count):
            # On a timed exercise a bare number would be seconds.
            return f"{count}" if exercise is None or exercise.measure is Measure.REPS else f"{count} reps"
        case MaxReps():
            return " max"
        case _:
            return told(target)


def _load(slot: Slot, exercise: Exercise | None) -> str:
    match slot.load:
        case None:
            silent = exercise is None or exercise.goes_without_load or isinstance(slot.scheme, PercentageWave)
            return "" if silent else ", no load"
        case FindIt():
            return ", find the load"
        case Load():
            return f" at {_mass(slot.load, exercise)}"
        case _:
            assert_never(slot.load)


def _mass(load: Load, exercise: Exercise | None) -> str:
    implied = exercise is not None and basis_of(exercise) is load.basis
    match load.basis:
        case Basis.TOTAL:
            return f"{load}" if implied else f"{load} in all"
        case Basis.PER_HAND:
            return f"{load} per hand"
        case Basis.STACK:
            return f"{load}" if implied else f"{load} on the stack"
        case Basis.BODY:
            return f"{load}" if load.amount < 0 else f"+{load}"
        case _:
            assert_never(load.basis)


def _effort(effort: Effort) -> str:
    return f"rpe {plain(effort.rpe)}" if effort.as_rpe else f"{plain(effort.rir)} in reserve"


def _rest(seconds: int | None) -> str:
    if seconds is None:
        return ""
    minutes, rest = divmod(seconds, SECONDS_A_MINUTE)
    return f"rest {seconds} s" if rest else f"rest {minutes} min"


def _percent(share: Decimal) -> str:
    return f"{plain(share * 100)} %"


def _scheme(slot: Slot, exercise: Exercise | None) -> str:  # noqa: C901 - one case for each rule
    scheme: Scheme = slot.scheme
    match scheme:
        case SetWave(most, step):
            return f"add a set each week up to {most}, then +{step}"
        case DoubleProgression(step):
            return f"then +{step}"
        case LoadStep(step, misses, share):
            misses_in_words = "1 miss" if misses == 1 else f"{misses} misses"
            return f"+{step} when all reps are made, after {misses_in_words} down {_percent(share)}"
        case RepGoal(gain):
            return f"+{gain} rep{'s' * (gain != 1)} each set"
        case RepTotal(total, step, gain):
            grown = f"+{gain} rep{'s' * (gain != 1)} in all" if step is None else f"+{step}"
            return f"{total} reps in all, then {grown}"
        case PercentageWave(maximum, shares, step):
            weeks = "/".join(plain(share * 100) for share in shares)
            return f"{weeks} % of {maximum}, then +{step}"
        case EffortTarget(effort):
            return f"load for {_effort(effort)}"
        case TopSetBackOff():
            return _back_offs(scheme)
        case TimeOrDistance(gain, bound, step):
            sign = "s" if isinstance(slot.target, Seconds) else "m"
            grown = f"+{plain(gain)} {sign} up to {plain(bound)} {sign}"
            return f"{grown}, then +{step}" if step else grown
        case Hold():
            return "no progression"
        case _:
            assert_never(scheme)


def _back_offs(scheme: TopSetBackOff) -> str:
    reps = f" of {scheme.back_off_reps}" if scheme.back_off_reps is not None else ""
    return f"top set then {scheme.back_offs} back-offs{reps} at {_percent(scheme.share)}, then +{scheme.step}"
