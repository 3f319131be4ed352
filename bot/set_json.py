"""Readings kept in an open question: performed sets as JSON and back, nothing lost."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import date
from decimal import Decimal
from typing import Any

from engine.reading.values import Asked, Doubt, Reading
from engine.values.effort import Effort
from engine.values.ids import ExerciseName
from engine.values.load import Basis, Load, Unit
from engine.values.sets import SetDone, SetKind, Side


def to_json(done: SetDone) -> dict[str, Any]:
    """One set; decimals as text."""
    return {
        "exercise": done.exercise,
        "reps": done.reps,
        "load": [str(done.load.amount), done.load.unit.value, done.load.basis.value] if done.load else None,
        "effort": [str(done.effort.rir), done.effort.as_rpe] if done.effort else None,
        "seconds": _text(done.seconds),
        "metres": _text(done.metres),
        "kind": done.kind.value,
        "failure": done.failure,
        "missed": done.missed,
        "side": done.side.value if done.side else None,
    }


def _text(amount: Decimal | None) -> str | None:
    return None if amount is None else str(amount)


def from_json(stored: Mapping[str, Any]) -> SetDone:
    """The set that `to_json` wrote."""
    load, effort, side = stored["load"], stored["effort"], stored["side"]
    return SetDone(
        exercise=ExerciseName(stored["exercise"]),
        reps=stored["reps"],
        load=Load(Decimal(load[0]), Unit(load[1]), Basis(load[2])) if load else None,
        effort=Effort(Decimal(effort[0]), effort[1]) if effort else None,
        seconds=None if stored["seconds"] is None else Decimal(stored["seconds"]),
        metres=None if stored["metres"] is None else Decimal(stored["metres"]),
        kind=SetKind(stored["kind"]),
        failure=stored["failure"],
        missed=stored["missed"],
        side=Side(side) if side else None,
    )


def asked_to_json(asked: Asked) -> dict[str, Any]:
    """A question about sets."""
    return {
        "question": asked.question,
        "readings": _readings_to_json(asked.readings),
        "doubt": asked.doubt.value,
        "term": asked.term,
        "on": asked.on.isoformat() if asked.on else None,
        "note": asked.note,
        "pain": asked.pain,
        "text": asked.text,
        "typed": asked.typed,
        "behind": _readings_to_json(asked.behind),
        "unclear": asked.unclear,
        "learnt": [list(one) for one in asked.learnt],
    }


def _readings_to_json(readings: Sequence[Reading]) -> list[dict[str, Any]]:
    return [
        {"sets": [to_json(done) for done in reading.sets], "fit": reading.plausibility, "label": reading.label}
        for reading in readings
    ]


def asked_from_json(stored: Mapping[str, Any]) -> Asked:
    """The question that `asked_to_json` wrote."""
    return Asked(
        question=stored["question"],
        readings=_readings(stored["readings"]),
        doubt=Doubt(stored["doubt"]),
        term=stored["term"],
        on=date.fromisoformat(stored["on"]) if stored["on"] else None,
        note=stored["note"],
        pain=stored["pain"],
        text=stored.get("text", ""),
        typed=stored.get("typed", ""),
        behind=_readings(stored.get("behind", ())),
        unclear=stored.get("unclear", ""),
        learnt=tuple((term, ExerciseName(name)) for term, name in stored.get("learnt", ())),
    )


def _readings(stored: Sequence[Mapping[str, Any]]) -> tuple[Reading, ...]:
    return tuple(
        Reading(tuple(from_json(done) for done in reading["sets"]), reading["fit"], reading["label"])
        for reading in stored
    )
