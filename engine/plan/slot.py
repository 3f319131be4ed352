"""A slot, put together from the parts of its line."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass
from decimal import Decimal

from engine.catalogue.catalogue import Catalogue
from engine.plan.limits import LONGEST_REST_SECONDS, MOST_SETS, can_be
from engine.plan.names import Named, Unsure, exercise_named, exercises_listed
from engine.plan.parts import (
    Aim,
    BackOffs,
    Cue,
    Exertion,
    Partner,
    Rest,
    Sets,
    Standard,
    Swap,
    Tag,
    TopSet,
    TotalReps,
    Wave,
    Words,
)
from engine.plan.report import Bag, Report
from engine.plan.slot_line import read_parts
from engine.plan.slot_load import loads_of, settle_signs
from engine.plan.slot_scheme import SchemeReader
from engine.values.exercise import Exercise, Measure
from engine.values.ids import ExerciseName
from engine.values.load import Unit
from engine.values.plan import MaxReps, Metres, Reps, Seconds, Slot, Target
from engine.values.problem import Problem

EXAMPLE = "dumbbell row 3x8-12 at 20 kg, then +2 kg, rest 90 s"
ANY_PROGRESSION = "+2.5 kg when all reps are made, or another line of: help plan"
REMEDIES = (
    (re.compile(r"^(?:then |and |add )*\+|^(?:plus|add|step|increase)\b"), "how much to add", "then +2.5 kg"),
    (
        re.compile(r"\bback ?offs?\b|\bbackdowns?\b"),
        "how many back-offs, of how many reps, at which share",
        "top set then 2 back-offs of 8 at 85 %, then +2.5 kg",
    ),
    (re.compile(r"\btop set\b"), "a top set and its back-offs", "top set then 2 back-offs of 8 at 85 %, then +2.5 kg"),
    (re.compile(r"\btotal\b|\bin all\b"), "a number of reps in all", "3 sets, 30 reps in all, then +2.5 kg"),
    (
        re.compile(r"\b(?:wave|percent\w*|training max\w*|1rm|max)\b"),
        "weekly shares of a training maximum",
        "75/85/95 % of 140 kg, then +2.5 kg",
    ),
    (re.compile(r"\bup to\b|\buntil\b|\blonger\b"), "how much longer each time, and up to where", "+5 s up to 60 s"),
    (re.compile(r"\b(?:rpe|rir|reserve|effort)\b"), "the effort as a number", "load for rpe 8"),
    (
        re.compile(r"\b(?:progress\w*|increas\w*|heavier|overload|linear|deload)\b"),
        "what goes up, and when",
        ANY_PROGRESSION,
    ),
)
"""What words that say something of progression could have meant: no cue is made of them."""


@dataclass(frozen=True, slots=True)
class SlotRead:
    """`slot` None: the line has an error. `partner`: the exercise it is a superset with, "" the one above."""

    slot: Slot | None
    problems: tuple[Problem, ...]
    partner: ExerciseName | str | None = None


def read_slot(text: str, line_of: Callable[[int], int], catalogue: Catalogue, unit: Unit) -> SlotRead:
    """The slot that a clean line plans, or its problems.

    Shape: `line_of` answers which line of the plan a character of `text` came from.
    """
    report = Report(text, line_of)
    bag = Bag(read_parts(text, catalogue), report)
    exercise = _exercise(bag, catalogue)
    bag.report_slips()
    if exercise is None:
        return SlotRead(None, tuple(report.problems))
    bag = settle_signs(bag, exercise, unit)
    slot = _slot(bag, exercise, catalogue, unit)
    partner = _partner(bag, catalogue)
    return SlotRead(None if report.has_errors else slot, tuple(report.problems), partner)


def _slot(bag: Bag, exercise: Exercise, catalogue: Catalogue, unit: Unit) -> Slot | None:
    sets, target = _sets(bag, exercise), _target(bag, exercise)
    loads = loads_of(bag, exercise, unit)
    swaps = _swaps(bag, catalogue)
    effort, rest, standard, tag = (
        bag.one("effort", Exertion),
        bag.one("rest", Rest),
        bag.one("standard", Standard),
        bag.one("superset letter", Tag),
    )
    if rest and not 0 < rest[0].seconds <= LONGEST_REST_SECONDS:
        bag.report.error(rest[1], f"rest {rest[0].seconds} s", "a rest up to an hour", "rest 90 s")
    if sets is None or target is None or bag.report.has_errors:
        return None
    ruled = SchemeReader(bag, exercise, loads, sets, target).read()
    if ruled is None:
        return None
    return Slot(
        exercise=exercise.name,
        sets=sets,
        target=ruled[1],
        scheme=ruled[0],
        load=loads.load,
        effort=effort[0].effort if effort else None,
        rest_seconds=rest[0].seconds if rest else None,
        cues=tuple(cue.text for cue, _ in bag.every(Cue)),
        swaps=swaps,
        standard=standard[0].text if standard else None,
        group=tag[0].letter if tag else None,
    )


def _exercise(bag: Bag, catalogue: Catalogue) -> Exercise | None:
    words = bag.every(Words)
    if not words:
        bag.report.error(0, bag.report.text[:60], "an exercise", EXAMPLE)
        return None
    spoken = [(exercise_named(word.text, catalogue), word.text, at) for word, at in words]
    named = next((entry for entry in spoken if isinstance(entry[0], Named)), spoken[0])
    for _, text, at in (entry for entry in spoken if entry is not named):
        _unread(bag.report, text, at)
    exercise = _settled(named[0], named[1], named[2], bag.report)
    return catalogue.get(exercise) if exercise else None


def _unread(report: Report, text: str, at: int) -> None:
    if "%" in report.text[at : at + len(text) + 2]:
        report.error(at, f"{text.rstrip('% ')} %", "a share of a training maximum", "85 % of 140 kg, then +2.5 kg")
        return
    plain = " ".join(text.casefold().replace("-", " ").split())
    for words, expected, remedy in REMEDIES:
        if words.search(plain):
            report.error(at, text, expected, remedy)
            return
    has_digits = any(sign.isdigit() for sign in text)
    remedy = "at 40 kg, rpe 8, then +2.5 kg, rest 2 min" if has_digits else f"cue: {text}"
    report.error(at, text, "sets, load, effort, rest, progression, swap or a cue", remedy)


def _settled(found: Named | Unsure, words: str, at: int, report: Report) -> ExerciseName | None:
    """The exercise, or None and a report that names the candidates."""
    match found:
        case Named(exercise, typo):
            if typo:
                report.warn(at, words, f"a known name; taken as {exercise}", exercise)
            return exercise
        case Unsure(candidates=()):
            remedy = f"another name for it, or first: new exercise: {words}, like leg press"
            report.error(at, words, "an exercise I know", remedy)
        case Unsure(candidates=candidates, inside=True):
            remedy = _in_its_place(report, words, candidates[0])
            report.error(at, words, f"an exercise I know, such as {' or '.join(candidates)}", remedy)
        case Unsure(candidates=candidates):
            report.error(at, words, f"one of: {', '.join(candidates)}", _in_its_place(report, words, candidates[0]))
    return None


def _in_its_place(report: Report, words: str, name: str) -> str:
    """The whole line with a name that is known; with sets and reps where the line tells no number at all."""
    line = report.text.replace(words, name, 1)
    return line if any(sign.isdigit() for sign in report.text.replace(words, "", 1)) else f"{line} 3x8"


def _sets(bag: Bag, exercise: Exercise) -> int | None:
    told, back_offs = bag.one("number of sets", Sets), bag.one("progression", BackOffs)
    top = bag.one("top set", TopSet)
    if top and not back_offs:
        remedy = f"{exercise.name} top set of {top[0].reps or 5}, then 3 back-offs at 90 %, then +2.5 kg"
        bag.report.error(top[1], "top set", "its back-offs too", remedy)
        return 1
    if told is None:
        if back_offs:
            return 1
        bag.report.error(0, bag.report.text[:60], *_sets_missing(bag, exercise))
        return None
    sets, at = told[0].count, told[1]
    if not 1 <= sets <= MOST_SETS:
        bag.report.error(at, f"{sets} sets", f"1 to {MOST_SETS} sets", f"{exercise.name} 3x8")
        return None
    if back_offs is None or sets == 1:
        return sets
    if sets != back_offs[0].count + 1:
        example = f"1x5, top set then {back_offs[0].count} back-offs at 90 %"
        bag.report.error(at, f"{sets} sets", "one top set, the back-offs counted apart", example)
        return None
    return 1


def _sets_missing(bag: Bag, exercise: Exercise) -> tuple[str, str]:
    """What a line without a number of sets lacks, and the line with it."""
    total, wave = bag.one("progression", TotalReps), bag.one("progression", Wave)
    if total is not None:
        return "how many sets", f"{exercise.name} 3 sets, {total[0].total} reps in all"
    aim = bag.one("target", Aim)
    if wave is not None:
        return "sets and reps", f"{exercise.name} 3x5"
    if aim is not None and isinstance(aim[0].target, MaxReps):
        return "how many sets", f"{exercise.name} 2x max"
    if aim is not None and isinstance(aim[0].target, Reps):
        return "how many sets", f"{exercise.name} 3x{aim[0].target.count}"
    words = next((word.text for word, _ in bag.every(Words)), "")
    return "sets and reps", bag.report.text.replace(
        words, f"{exercise.name} 3x8", 1
    ) if aim is None else f"{exercise.name} 3x8"


def _target(bag: Bag, exercise: Exercise) -> Target | None:
    told, top = bag.one("target", Aim), bag.one("top set", TopSet)
    if told is None and top and top[0].reps:
        told = Aim(Reps(top[0].reps), counted=True), top[1]
    if told is None and bag.has(TotalReps):
        return MaxReps()
    if told is None:
        if not bag.report.has_errors:
            bag.report.error(0, bag.report.text[:60], "how many reps", f"{exercise.name} 3x8")
        return None
    aim, at = told
    target = aim.target
    if isinstance(target, Reps) and not aim.counted and exercise.measure is not Measure.REPS:
        target = (Seconds if exercise.measure is Measure.TIME else Metres)(Decimal(target.count))
    if not can_be(target):
        bag.report.error(
            at, bag.report.text[at : at + 20].split(",")[0], "a target that can be done", f"{exercise.name} 3x8"
        )
        return None
    return target


def _swaps(bag: Bag, catalogue: Catalogue) -> tuple[ExerciseName, ...]:
    found: list[ExerciseName] = []
    for swap, at in bag.every(Swap):
        for named in exercises_listed(swap.names, catalogue):
            words = named.words if isinstance(named, Unsure) else swap.names
            exercise = _settled(named, words, at, bag.report)
            found.extend([exercise] if exercise else [])
    return tuple(dict.fromkeys(found))


def _partner(bag: Bag, catalogue: Catalogue) -> ExerciseName | str | None:
    told = bag.one("superset", Partner)
    if told is None or not told[0].name:
        return told[0].name if told else None
    return _settled(exercise_named(told[0].name, catalogue), told[0].name, told[1], bag.report)
