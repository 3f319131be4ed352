"""The machine-readable side of replies: prescriptions, volume and sets in the shapes of the public contracts."""

from __future__ import annotations

from collections.abc import Mapping
from decimal import Decimal
from typing import Any, assert_never

from engine.values.load import Basis, Load
from engine.values.plan import MaxReps, Metres, RepRange, Reps, Seconds, Target
from engine.values.prescription import Prescription, SetTarget
from engine.values.sets import SetDone, SetKind


def number(amount: Decimal | None) -> int | float | None:
    """A decimal as a JSON number: whole where it is whole."""
    if amount is None:
        return None
    return int(amount) if amount == amount.to_integral_value() else float(amount)


def set_json(done: SetDone) -> dict[str, Any]:
    """One performed set; keys only where given or implied."""
    out: dict[str, Any] = {"exercise": done.exercise, "reps": done.reps}
    out |= _load_json(done.load)
    if done.effort is not None:
        out |= {"rpe": number(done.effort.rpe)} if done.effort.as_rpe else {"rir": number(done.effort.rir)}
    optional = {
        "seconds": number(done.seconds),
        "metres": number(done.metres),
        "kind": None if done.kind is SetKind.WORK else done.kind.value,
        "failure": done.failure or None,
        "missed": done.missed or None,
        "side": done.side.value if done.side else None,
    }
    return out | {key: told for key, told in optional.items() if told is not None}


def _load_json(load: Load | None) -> dict[str, Any]:
    if load is None:
        return {"load": None, "unit": None}
    out: dict[str, Any] = {"load": number(load.amount), "unit": load.unit.value}
    if load.basis is Basis.PER_HAND:
        out["per_hand"] = True
    if load.basis is Basis.BODY:
        out["body"] = True
    return out


def prescription_json(prescription: Prescription) -> dict[str, Any]:
    """A prescription as the replay contract states it."""
    return {
        "exercise": prescription.exercise,
        "sets": [_target_json(one) for one in prescription.sets],
        "reason": prescription.reason,
    }


def _target_json(one: SetTarget) -> dict[str, Any]:
    out: dict[str, Any] = _count_json(one.target)
    out |= {"load": number(one.load.amount) if one.load else None, "unit": one.load.unit.value if one.load else None}
    if one.effort is not None:
        out["rir"] = number(one.effort.rir)
    return out


def _count_json(target: Target) -> dict[str, Any]:
    match target:
        case Reps(count):
            return {"reps": count}
        case RepRange(low, high):
            return {"reps": [low, high]}
        case MaxReps():
            return {"reps": "max"}
        case Seconds(seconds):
            return {"reps": 1, "seconds": number(seconds)}
        case Metres(metres):
            return {"reps": 1, "metres": number(metres)}
        case _:
            assert_never(target)


Volume = Mapping[str, Any]
