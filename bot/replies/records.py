"""Records in words: each names its kind."""

from __future__ import annotations

from decimal import Decimal
from typing import assert_never

from bot.replies.sets import load_text
from engine.strength.current import CurrentStrength
from engine.strength.records import Record, RecordKind
from engine.strength.stall import Direction, Trend
from engine.values.ids import ExerciseName
from engine.values.load import Load, plain

TENTH = Decimal("0.5")


def record_text(name: ExerciseName, record: Record) -> str:
    """One record: barbell row, load: 60 kg (before 57.5 kg)."""
    match record.kind:
        case RecordKind.LOAD:
            return f"{name}, load: {_load(record.load)} (before {_load(record.previous_load)})"
        case RecordKind.REPS:
            at = _load(record.load)
            return f"{name}, reps{f' at {at}' if at else ''}: {record.reps} (before {record.previous_reps})"
        case RecordKind.ESTIMATED_MAXIMUM:
            return f"{name}, estimated maximum: {_about(record.load)} (before {_about(record.previous_load)})"
        case RecordKind.SESSION_VOLUME:
            return f"{name}, session volume: {_kilograms(record.volume)} (before {_kilograms(record.previous_volume)})"
        case _:
            assert_never(record.kind)


def _load(load: Load | None) -> str:
    return load_text(load)


def _about(load: Load | None) -> str:
    """An estimate is no finer than half a unit."""
    if load is None:
        return ""
    halves = (load.amount / TENTH).to_integral_value() * TENTH
    return f"{plain(halves)} {load.unit.value}"


def _kilograms(volume: Decimal | None) -> str:
    return "" if volume is None else f"{plain(volume.quantize(Decimal(1)))} kg"


def strength_text(current: CurrentStrength) -> str:
    """The estimated maximum with the range it lies in, nine times of ten."""
    return (
        f"Estimated maximum: {_about(current.one_rep_max)} (likely {_about(current.low)} to {_about(current.high)}), "
        "an estimate, no test. Never try a maximum alone."
    )


def trend_text(name: ExerciseName, trend: Trend) -> str | None:
    """A stall or a fall, and how sure that is; None where a lift rises or nothing is sure."""
    match trend.direction:
        case Direction.STALLED:
            return f"{name} has stood still for {trend.days // 7} weeks ({round(100 * trend.sure)} % sure)"
        case Direction.FALLING:
            return f"{name} has fallen in {trend.days // 7} weeks ({round(100 * trend.sure)} % sure)"
        case Direction.RISING | Direction.UNSURE:
            return None
        case _:
            assert_never(trend.direction)
