"""`chalkwire read`: how a message would be read, for a person or as JSON lines."""

from __future__ import annotations

import argparse
import gc
import json
import sys
from collections.abc import Mapping, Sequence
from dataclasses import replace
from datetime import date, datetime
from decimal import Decimal, InvalidOperation
from typing import Any, TextIO, assert_never

from bot import clock, zones
from bot.intents.bodyweight import weight_in
from bot.read_explained import explanation
from engine.catalogue.catalogue import Catalogue, catalogue
from engine.reading import read
from engine.reading.said_apart import said_apart
from engine.reading.values import Act, Asked, Context, Correction, Logged, NoSets, Outcome, Planned
from engine.reading.weighing.resolve import BASES
from engine.values.exercise import Loading
from engine.values.ids import ExerciseName
from engine.values.load import Basis, Load, Unit, plain
from engine.values.plan import MaxReps, RepRange, Reps, Target
from engine.values.sets import SetDone, SetKind


def context_from(raw: Mapping[str, Any]) -> Context:
    """The context that a JSON object states.

    Errors: ValueError naming what is wrong.
    """
    unit = Unit(raw.get("unit", "kg"))
    doing = raw.get("doing")
    return Context(
        unit=unit,
        now=datetime.fromisoformat(raw["now"]) if raw.get("now") else None,
        doing=ExerciseName(doing) if doing else None,
        plan=tuple(_planned(slot, unit) for slot in raw.get("plan", ())),
        last={ExerciseName(name): _load(amount, unit, name) for name, amount in raw.get("last", {}).items()},
    )


def _planned(slot: Mapping[str, Any], unit: Unit) -> Planned:
    load = slot.get("load")
    name = slot["exercise"]
    return Planned(
        ExerciseName(name),
        int(slot["sets"]),
        _target(slot.get("reps")),
        None if load is None else _load(load, unit, name),
    )


def _target(reps: object) -> Target:
    match reps:
        case int():
            return Reps(reps)
        case [int() as low, int() as high]:
            return RepRange(low, high)
        case "max" | None:
            return MaxReps()
        case _:
            raise ValueError(f'read {reps!r} for reps, expected a number, [low, high] or "max"')


def _load(amount: object, unit: Unit, name: str) -> Load:
    exercise = catalogue().get(ExerciseName(name))
    basis = Basis.TOTAL
    if exercise is not None:
        basis = BASES.get(exercise.loading, Basis.TOTAL)
    try:
        return Load(Decimal(str(amount)), unit, basis)
    except InvalidOperation as slip:
        raise ValueError(f"read {amount!r} for a load, expected a number") from slip


def answer_of(outcome: Outcome, unit: Unit = Unit.KG) -> dict[str, Any]:
    """The outcome as the contract's JSON object; `unit` is that of bare numbers.

    A body weight told is no set and asks for nothing: it is "no-sets" with the weight beside it.
    """
    match outcome:
        case Logged():
            told = {"date": _iso(outcome.on), "note": outcome.note, "pain": outcome.pain}
            return {"outcome": "log", "sets": [set_json(one) for one in outcome.sets], **_given(told)}
        case Asked():
            readings = [[set_json(one) for one in reading.sets] for reading in outcome.readings[:3]]
            return {
                "outcome": "ask",
                "question": outcome.question,
                "readings": readings,
                **_given({"pain": outcome.pain}),
            }
        case NoSets():
            return {"outcome": "no-sets", **_given({"pain": outcome.pain})}
        case Act(name="bodyweight") if (weight := weight_in(outcome.text, unit)) is not None:
            return {"outcome": "no-sets", "bodyweight": number(weight.amount), "unit": weight.unit.value}
        case Act():
            return _act_json(outcome)
        case Correction():
            return {"outcome": "action", "action": "correct"}
        case _:
            assert_never(outcome)


def _act_json(act: Act) -> dict[str, Any]:
    when = act.when.isoformat(timespec="minutes") if isinstance(act.when, datetime) else _iso(act.when)
    told = {
        "exercise": act.exercise,
        "to": act.to,
        "when": when,
        "count": act.count,
        "as_planned": act.as_planned,
        "text": act.text,
    }
    return {"outcome": "action", "action": act.name, **_given(told)}


def _given(fields: Mapping[str, Any]) -> dict[str, Any]:
    return {key: field for key, field in fields.items() if field}


def _iso(day: date | None) -> str | None:
    return day.isoformat() if day else None


def number(amount: Decimal) -> int | float:
    """A plain JSON number: 55, 62.5."""
    return int(amount) if amount == int(amount) else float(plain(amount))


def set_json(one: SetDone) -> dict[str, Any]:
    """One set as the contract's JSON object."""
    told: dict[str, Any] = {"exercise": one.exercise, "reps": one.reps, "load": None, "unit": None}
    if one.load is not None:
        told["load"], told["unit"] = number(one.load.amount), one.load.unit.value
    told |= _given(_marks(one))
    if one.effort is not None:
        scale = ("rpe", one.effort.rpe) if one.effort.as_rpe else ("rir", one.effort.rir)
        told[scale[0]] = number(scale[1])
    return told


def _marks(one: SetDone) -> dict[str, Any]:
    basis = one.load.basis if one.load else None
    return {
        "seconds": None if one.seconds is None else number(one.seconds),
        "metres": None if one.metres is None else number(one.metres),
        "kind": None if one.kind is SetKind.WORK else one.kind.value,
        "failure": one.failure,
        "per_hand": basis is Basis.PER_HAND,
        "body": basis is Basis.BODY or (basis is None and _is_body_lift(one)),
        "side": one.side.value if one.side else None,
        "missed": one.missed,
    }


def _is_body_lift(one: SetDone) -> bool:
    """Whether the body is what this lift moves: a set without a known load says so too ("with a green band")."""
    exercise = catalogue().get(one.exercise)
    return exercise is not None and exercise.loading is Loading.BODY


def _answer_line(line: str, known: Catalogue) -> dict[str, Any]:
    try:
        asked = json.loads(line)
        context = context_from(asked.get("context") or {})
        return {"id": asked.get("id"), **answer_of(_read(str(asked["text"]), context, known), context.unit)}
    except (ValueError, KeyError, TypeError, AttributeError) as slip:
        return {"error": f"{type(slip).__name__}: {slip}"}


def _read(text: str, context: Context, known: Catalogue) -> Outcome:
    """What the message means; of several things, the sets."""
    parts = said_apart(text, read(text, context, known), context, known)
    return next((part for part in parts if isinstance(part, Logged | Asked)), parts[0])


def read_lines(source: TextIO, sink: TextIO) -> None:
    """Answers each JSON line of `source` with one on `sink`, at once."""
    known = catalogue()
    read("squat 3x5 100", Context(), known)  # loads the words of all languages
    gc.freeze()  # what is loaded once need not be walked by each full collection
    for line in source:
        if line.strip():
            sink.write(json.dumps(_answer_line(line, known), ensure_ascii=False) + "\n")
            sink.flush()


def run(argv: Sequence[str]) -> int:
    """The command; returns its exit status."""
    parser = argparse.ArgumentParser(prog="chalkwire read", description="Shows how a message would be read.")
    parser.add_argument("text", nargs="?", help="the message")
    parser.add_argument("--jsonl", action="store_true", help="read JSON lines on standard input")
    parser.add_argument("--context", default="{}", metavar="JSON", help="what is known: unit, now, doing, plan, last")
    options = parser.parse_args(argv)
    if options.jsonl:
        read_lines(sys.stdin, sys.stdout)
        return 0
    if options.text is None:
        parser.error("a message, or --jsonl")
    try:
        context = context_from(json.loads(options.context))
    except (ValueError, KeyError, TypeError, AttributeError) as slip:
        parser.error(f"--context: {slip}")
    if context.now is None:
        context = replace(context, now=zones.local(clock.now(), clock.machine_zone()))
    known = catalogue()
    print(explanation(options.text, _read(options.text, context, known), known, context))
    return 0


if __name__ == "__main__":
    sys.exit(run(sys.argv[1:]))
