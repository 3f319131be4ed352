"""How long today's session takes from ten years of log: assignment, exposures, six prescriptions, the next set.

Run: python tests/bench/progression_session.py
"""

from __future__ import annotations

import sys
from datetime import UTC, date, datetime, time, timedelta
from decimal import Decimal
from pathlib import Path
from statistics import median
from time import perf_counter

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

from bisect import bisect_left

from engine.catalogue.catalogue import catalogue
from engine.loading import loadable_for
from engine.progression.sessions import Athlete, assign, progress, session_for
from engine.values.ids import ExerciseName, SetId
from engine.values.load import Basis, Load, Unit
from engine.values.plan import Block, PlannedDay, RepRange, Reps, Slot, Target, TrainingDay, Weekday, WeekKind
from engine.values.schemes import DoubleProgression, LoadStep, Scheme, SetWave, TopSetBackOff
from engine.values.sets import SetDone, SetRecord

BOUND_MS = 2.0
YEARS, WEEKS = 10, 12
STEP = Load(Decimal("2.5"), Unit.KG)


def main() -> int:
    known = catalogue().exercises
    lifts = tuple(name for name in known if known[name].loading.value == "bar")[:6]
    block = _block(lifts)
    start = date(2026, 1, 5)
    planned = _days(block, start)
    today = start + timedelta(weeks=WEEKS - 1, days=4)
    log = _log(lifts, today)
    due = next(day for day in planned if day.on == today)
    loadables = {name: loadable_for(known[name], None, Unit.KG) for name in lifts}
    since = bisect_left(log, start, key=lambda record: record.on)

    def whole() -> object:
        records = log[since:]
        sessions = assign(planned, records)
        slots = session_for(due, sessions, today, Athlete(log, loadables.__getitem__))
        return progress(slots, [record for record in records if record.on == today])

    parts = {
        "assign the block's log": lambda: assign(planned, log[since:]),
        "the whole session": whole,
        "what can be loaded, six lifts": lambda: [loadable_for(known[name], None, Unit.KG) for name in lifts],
    }
    print(f"{len(log)} sets in {YEARS} years, {len(log) - since} in {WEEKS} weeks, {len(lifts)} lifts today")
    times = {name: _median_ms(part) for name, part in parts.items()}
    for name, taken in times.items():
        print(f"{name}: {taken:.3f} ms at the median")
    print(f"bound for the whole session: {BOUND_MS} ms")
    return 0 if times["the whole session"] <= BOUND_MS else 1


def _block(lifts: tuple[ExerciseName, ...]) -> Block:
    schemes: tuple[tuple[Scheme, Target], ...] = (
        (SetWave(5, STEP), Reps(6)),
        (DoubleProgression(STEP), RepRange(8, 12)),
        (LoadStep(STEP), Reps(5)),
        (DoubleProgression(STEP), RepRange(6, 10)),
        (TopSetBackOff(STEP, 3), Reps(5)),
        (LoadStep(STEP), Reps(8)),
    )
    load = Load(Decimal(60), Unit.KG, Basis.TOTAL)
    slots = tuple(
        Slot(name, 1 if isinstance(scheme, TopSetBackOff) else 3, target, scheme, load)
        for name, (scheme, target) in zip(lifts, schemes, strict=True)
    )
    days = tuple(TrainingDay(day.name.lower(), day, slots) for day in (Weekday.MON, Weekday.WED, Weekday.FRI))
    return Block("one", WEEKS, (WeekKind("usual", days),))


def _days(block: Block, start: date) -> tuple[PlannedDay, ...]:
    kind = block.kinds[0]
    return tuple(
        PlannedDay(first + timedelta(days=day.weekday.value), block, week + 1, kind, day, None, first)
        for week in range(WEEKS)
        for first in (start + timedelta(weeks=week),)
        for day in kind.days
        if day.weekday is not None
    )


def _log(lifts: tuple[ExerciseName, ...], today: date) -> tuple[SetRecord, ...]:
    """Three sessions a week of four sets of each lift, climbing slowly; today's begun."""
    first = today - timedelta(days=365 * YEARS)
    first -= timedelta(days=first.weekday())
    found: list[SetRecord] = []
    on = first
    while on <= today:
        if on.weekday() in (0, 2, 4):
            base = 60 + Decimal("2.5") * (((on - first).days // 60) % 20)
            for name in lifts[:1] if on == today else lifts:
                for at in range(4):
                    done = SetDone(name, 5 + (on.toordinal() + at) % 8, Load(base, Unit.KG))
                    at_six = datetime.combine(on, time(18), UTC)
                    found.append(SetRecord(SetId(len(found)), done, on, at_six, len(found)))
        on += timedelta(days=1)
    return tuple(found)


def _median_ms(work: object, rounds: int = 300) -> float:
    times = []
    for _ in range(rounds):
        start = perf_counter()
        work()  # type: ignore[operator]
        times.append(1000 * (perf_counter() - start))
    return median(times)


if __name__ == "__main__":
    raise SystemExit(main())
