"""Rows to engine values and back, by hand. What is stored comes back equal.

Units: a load is kept as whole thousandths of its own unit. `mass` orders loads of both units: 1 kg is 100,000,000 and
1 lb is 45,359,237 of its smallest step in thousandths, so both are whole numbers and no rounding can reorder them.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import UTC, datetime
from decimal import Decimal
from functools import lru_cache
from typing import Any

from engine.values.effort import Effort
from engine.values.ids import ExerciseName, SetId
from engine.values.load import Basis, Load, Unit
from engine.values.sets import SetDone, SetKind, SetRecord, Side
from storage.tables.log import SETS

THOUSAND = Decimal(1000)
MASS_STEPS = {Unit.KG: 100_000_000, Unit.LB: 45_359_237}

SET_COLUMNS = tuple(
    SETS.c[name]
    for name in (
        *("id", "on_day", "at", "place", "message"),
        *("exercise", "reps", "thousandths", "unit", "basis", "rir", "as_rpe", "seconds", "metres", "kind"),
        *("failure", "missed", "side"),
    )
)
"""What `set_record` reads, in its order."""


def instant(at: datetime) -> datetime:
    """The same instant as it comes back from the database: in UTC.

    Errors: ValueError for a time without a zone.
    """
    if at.utcoffset() is None:
        raise ValueError(f"{at} has no timezone: give an aware instant, e.g. datetime.now(UTC)")
    return at.astimezone(UTC)


def load_columns(load: Load | None) -> dict[str, Any]:
    """The columns of a load."""
    if load is None:
        return {"thousandths": None, "unit": None, "basis": None}
    return {"thousandths": int(load.amount * THOUSAND), "unit": load.unit.value, "basis": load.basis.value}


@lru_cache(maxsize=4096)
def load_of(thousandths: int, unit: str, basis: str) -> Load:
    """The load of a row's columns."""
    whole, rest = divmod(thousandths, 1000)
    amount = Decimal(whole) if rest == 0 else (Decimal(thousandths) / THOUSAND).normalize()
    return Load(amount, Unit(unit), Basis(basis))


def mass_of(load: Load | None) -> int | None:
    """The load as a whole number that orders loads of both units."""
    return None if load is None else int(load.amount * THOUSAND) * MASS_STEPS[load.unit]


def set_columns(done: SetDone) -> dict[str, Any]:
    """The columns of a performed set."""
    return {
        "exercise": done.exercise,
        "reps": done.reps,
        **load_columns(done.load),
        "mass": mass_of(done.load),
        "rir": None if done.effort is None else str(done.effort.rir),
        "as_rpe": done.effort is not None and done.effort.as_rpe,
        "seconds": None if done.seconds is None else str(done.seconds),
        "metres": None if done.metres is None else str(done.metres),
        "kind": done.kind.value,
        "failure": done.failure,
        "missed": done.missed,
        "side": None if done.side is None else done.side.value,
    }


def set_record(row: Sequence[Any]) -> SetRecord:
    """The set of a row with SET_COLUMNS first."""
    id, on_day, at, place, message = row[:5]
    return SetRecord(SetId(id), _set_done(*row[5:18]), on_day, at, place, message)


@lru_cache(maxsize=4096)
def _set_done(
    exercise: str,
    reps: int,
    thousandths: int | None,
    unit: str,
    basis: str,
    rir: str | None,
    as_rpe: bool,
    seconds: str | None,
    metres: str | None,
    kind: str,
    failure: bool,
    missed: bool,
    side: str | None,
) -> SetDone:
    """A performed set of its columns. Kept: the same set is done again and again, and building one is slow."""
    return SetDone(
        exercise=ExerciseName(exercise),
        reps=reps,
        load=None if thousandths is None else load_of(thousandths, unit, basis),
        effort=None if rir is None else Effort(Decimal(rir), as_rpe),
        seconds=None if seconds is None else Decimal(seconds),
        metres=None if metres is None else Decimal(metres),
        kind=SetKind(kind),
        failure=failure,
        missed=missed,
        side=None if side is None else Side(side),
    )
