"""What a reason claims of the session before is true, in weeks made, short, lighter, heavier, hurt or away."""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from datetime import date, timedelta
from decimal import Decimal

from hypothesis import given
from hypothesis import strategies as st

from engine.progression import prescribe
from engine.progression.change import Change, change_since
from engine.progression.circumstances import hurts, with_circumstances
from engine.values.load import Load
from engine.values.plan import Deload, FindIt, MaxReps, RepRange, Reps, Slot
from engine.values.prescription import Exposure, Held, Prescription, SetTarget
from engine.values.schemes import DoubleProgression, LoadStep, RepTotal, SetWave, TopSetBackOff
from engine.values.sets import SetRecord
from tests.engine.progression.logged import BARBELL, LIFT, MONDAY, between, kg, records, slot

SLOTS = (
    slot(LoadStep(kg("2.5"), misses=2), load="80"),
    slot(DoubleProgression(kg(5)), target=between(8, 12), load="45"),
    slot(SetWave(5, kg("2.5")), target=6, load="42.5"),
    slot(RepTotal(30, kg("2.5")), target=MaxReps(), load="60"),
    slot(TopSetBackOff(kg("2.5"), 2, Decimal("0.85"), 8), sets=1, load="70"),
    slot(LoadStep(kg("2.5")), load=FindIt()),
)
MODES = ("made", "made", "made", "short", "fewer", "lighter", "heavier", "lighter and short")


@dataclass
class Run:
    """One slot over the weeks: what was lifted, and what each session asked when it came."""

    planned: Slot
    on: date = MONDAY
    past: tuple[Exposure, ...] = ()
    spans: list[tuple[date, date]] = field(default_factory=list)
    shown: dict[date, Load | None] = field(default_factory=dict)

    def asks(self, deload: Deload | None) -> Prescription:
        log = [record for one in self.past for record in one.sets]
        told = [span for span in self.spans if span[0] < self.on]
        return prescribe(
            self.planned,
            with_circumstances(self.past, told, LIFT, log),
            today=self.on,
            loadable=BARBELL,
            deload=deload,
            pain=hurts(told, self.on),
            last_trained=self.past[-1].on if self.past else None,
        )

    def done(self, asked: Prescription, sets: tuple[SetRecord, ...], *, deload: bool) -> None:
        self.past += (Exposure(self.on, sets, deload),)
        self.shown[self.on] = asked.sets[0].load


def lifted(asked: Prescription, on: date, mode: str, reps: int) -> tuple[SetRecord, ...]:
    parts = []
    for at, one in enumerate(asked.sets):
        load = one.load or kg(60)
        off = {"lighter": "0.85", "lighter and short": "0.85", "heavier": "1.06"}.get(mode, "1")
        amount = max(Decimal(20), (load.amount * Decimal(off) / Decimal("2.5")).quantize(Decimal(1)) * Decimal("2.5"))
        short = "short" in mode and at == len(asked.sets) - 1
        parts.append(f"{amount}: {max(1, _reps(one, reps) - short * 6)}")
    kept = parts[:-1] if mode == "fewer" and len(parts) > 1 else parts
    return records("; ".join(kept), on)


def _reps(one: SetTarget, reps: int) -> int:
    match one.target:
        case Reps(count):
            return count
        case RepRange(low, high):
            return min(high, low + reps)
        case _:
            return 8 + reps


weeks = st.lists(
    st.tuples(
        st.sampled_from(MODES),
        st.integers(0, 4),
        st.sampled_from((7, 7, 7, 7, 21, 35)),
        st.sampled_from((None, None, None, None, 5, 12)),
        st.sampled_from((False, False, False, False, True)),
    ),
    min_size=2,
    max_size=9,
)


@given(st.sampled_from(SLOTS), weeks)
def test_what_a_reason_says_was_asked_and_lifted_was(
    planned: Slot, told: list[tuple[str, int, int, int | None, bool]]
) -> None:
    run = Run(planned)
    for mode, reps, days, hurt, eased in told:
        run.on += timedelta(days=days)
        asked = run.asks(Deload() if eased else None)
        check(asked, run)
        if hurt is not None:
            run.spans.append((run.on, run.on + timedelta(days=hurt)))
        run.done(asked, lifted(asked, run.on, mode, reps), deload=eased)


def check(asked: Prescription, run: Run) -> None:
    proving = [one for one in run.past if not one.deload]
    if not proving:
        return
    check_what_was_asked(asked.reason, run.shown[proving[-1].on])
    check_what_is_asked(asked)
    if not asked.held and proving[-1] is run.past[-1] and "so the load goes up" in asked.reason:
        assert change_since(asked) is Change.HEAVIER, asked.reason


def check_what_was_asked(reason: str, was: Load | None) -> None:
    for words in (r"lighter than the (\S+ kg) asked", r"at the (\S+ kg) asked, so", r"more than the (\S+ kg) asked"):
        for claimed in re.findall(words, reason):
            assert claimed == str(was), reason
    for claimed in re.findall(r"so (\S+ kg) stays", reason):
        assert claimed == str(was) or was is None, reason


def check_what_is_asked(asked: Prescription) -> None:
    now, reason = asked.sets[0].load, asked.reason
    if not asked.held:
        for claimed in re.findall(r"(?:so|on to|from|at) (\S+ kg)(?: stays)?\.$", reason):
            assert claimed == str(now), reason
    if not {Held.DELOAD, Held.LAYOFF} & set(asked.held):
        for claimed in re.findall(r"so (\S+ kg) for now|No more than the (\S+ kg) just missed", reason):
            assert str(now) in claimed, reason
