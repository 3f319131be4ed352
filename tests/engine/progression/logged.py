"""Sessions written as a lifter would: ``logged("40: 12 12 11")`` is one session at 40 kg.

Parts go by ``;``. Before a number of reps: w warm-up, d drop, r rest-pause, L left, R right, x missed. Loads are
kilograms unless they say lb; ``body`` is body weight, ``body+10`` or ``body-20`` more or less of it, ``?`` a load not
told. ``@2`` is reps in reserve. A number with s or m is a hold or a carry.
"""

from __future__ import annotations

from datetime import UTC, date, datetime, time, timedelta
from decimal import Decimal
from itertools import count

from engine.loading.exercises import _loadable
from engine.loading.gym import KG_GYM
from engine.loading.loadable import Loadable
from engine.progression import prescribe
from engine.progression.explain import prescribed
from engine.values.effort import Effort
from engine.values.exercise import Equipment, Loading
from engine.values.ids import ExerciseName, SetId
from engine.values.load import Basis, Load, Unit
from engine.values.plan import FindIt, RepRange, Reps, Slot, Target
from engine.values.prescription import Exposure, Prescription
from engine.values.schemes import Scheme
from engine.values.sets import SetDone, SetKind, SetRecord, Side

MONDAY = date(2026, 3, 2)
WEEK = timedelta(days=7)
LIFT = ExerciseName("barbell row")
BARBELL: Loadable = _loadable(Loading.BAR, Equipment.BARBELL, KG_GYM, Unit.KG)
DUMBBELLS: Loadable = _loadable(Loading.PER_HAND, Equipment.DUMBBELL, KG_GYM, Unit.KG)
BODY: Loadable = _loadable(Loading.BODY, Equipment.BODY_WEIGHT, KG_GYM, Unit.KG)

_serial = count(1)
_KINDS = {"w": SetKind.WARMUP, "d": SetKind.DROP, "r": SetKind.REST_PAUSE}
_SIDES = {"L": Side.LEFT, "R": Side.RIGHT}


def kg(amount: str | int) -> Load:
    return Load(Decimal(amount), Unit.KG)


def slot(scheme: Scheme, sets: int = 3, target: Target | int = 5, load: str | FindIt | None = "100") -> Slot:
    """A slot of the row; a whole number of reps may stand for its target, text for its load."""
    reps = Reps(target) if isinstance(target, int) else target
    return Slot(LIFT, sets, reps, scheme, kg(load) if isinstance(load, str) else load)


def between(low: int, high: int) -> RepRange:
    return RepRange(low, high)


def records(text: str, on: date = MONDAY, exercise: str = LIFT) -> tuple[SetRecord, ...]:
    """The sets of one session."""
    found = []
    for part in filter(None, map(str.strip, text.split(";"))):
        load, _, sets = part.partition(":")
        for one in sets.split():
            serial = next(_serial)
            at = datetime.combine(on, time(18), UTC)
            found.append(SetRecord(SetId(serial), _done(one, _load(load.strip()), exercise), on, at, serial))
    return tuple(found)


def logged(text: str, on: date = MONDAY, *, deload: bool = False) -> Exposure:
    """One session."""
    return Exposure(on, records(text, on), deload)


def weekly(*texts: str) -> tuple[Exposure, ...]:
    """Sessions a week apart from the first Monday on; ``deload`` before one puts it in a deload week."""
    return tuple(
        logged(text.removeprefix("deload "), MONDAY + at * WEEK, deload=text.startswith("deload "))
        for at, text in enumerate(texts)
    )


def after(planned: Slot, *texts: str, loadable: Loadable = BARBELL, **over: object) -> Prescription:
    """What the slot asks a week after these weekly sessions."""
    sessions = weekly(*texts)
    today = over.pop("today", MONDAY + len(texts) * WEEK)
    return prescribe(planned, sessions, today=today, loadable=loadable, **over)  # type: ignore[arg-type]


def asks(planned: Slot, *texts: str, loadable: Loadable = BARBELL) -> str:
    """The same on one line: ``3×5 at 100 kg``."""
    return prescribed(after(planned, *texts, loadable=loadable))


def _load(text: str) -> Load | None:
    if text == "?":
        return None
    if text.startswith("body"):
        return Load(Decimal(text.removeprefix("body") or 0), Unit.KG, Basis.BODY)
    unit = Unit.LB if text.endswith("lb") else Unit.KG
    return Load(Decimal(text.removesuffix("lb")), unit)


def _done(text: str, load: Load | None, exercise: str) -> SetDone:
    text, _, rir = text.partition("@")
    mark = text[0] if not text[0].isdigit() else ""
    number = text.removeprefix(mark)
    seconds = Decimal(number[:-1]) if number.endswith("s") else None
    metres = Decimal(number[:-1]) if number.endswith("m") else None
    return SetDone(
        ExerciseName(exercise),
        1 if seconds or metres else int(number),
        load,
        effort=Effort(Decimal(rir)) if rir else None,
        seconds=seconds,
        metres=metres,
        kind=_KINDS.get(mark, SetKind.WORK),
        missed=mark == "x",
        side=_SIDES.get(mark),
    )
