"""What a rule is given besides the log: the slot, what can be loaded, and an estimate of strength where there is one.

A rule works in one unit and on one basis, whatever unit the plan was written or the log told in: the athlete's unit
where it is given. The plan's loads are then the nearest that she can load, and its steps whole ones of her unit.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from decimal import Decimal
from typing import assert_never

from engine.loading.loadable import Loadable
from engine.values.load import SMALLEST_STEP, Basis, Load, Unit
from engine.values.plan import FindIt, MaxReps, Metres, RepRange, Reps, Seconds, Slot, Target
from engine.values.prescription import Exposure
from engine.values.schemes import PercentageWave

USUAL_STEPS = {
    Unit.KG: (Decimal("2.5"), Decimal("1.25"), Decimal("0.5")),
    Unit.LB: (Decimal(5), Decimal("2.5"), Decimal(1)),
}
ENOUGH = Decimal("0.85")
"""How much of a usual step a converted one must make to be told in it: 2.268 kg (5 lb) are 2.5 kg."""


@dataclass(frozen=True, slots=True)
class Terms:
    """`strength` is an estimated one-repetition maximum on the slot's basis."""

    slot: Slot
    loadable: Loadable
    unit: Unit
    basis: Basis
    strength: Load | None = None

    def load(self, amount: Decimal) -> Load:
        """A load in the slot's unit and on its basis, to a thousandth."""
        return Load(amount.quantize(SMALLEST_STEP), self.unit, self.basis)

    def of(self, load: Load) -> Load:
        """The same mass in the slot's unit and on its basis."""
        if load.unit is self.unit and load.basis is self.basis:
            return load
        return self.load(load.in_unit(self.unit).amount)

    def step(self, step: Load) -> Load:
        """A step of the plan in words: in another unit than the plan's, the usual one nearest to it.

        Source: 2.5 kg for 5 lb, 1.25 kg for 2.5 lb, 0.5 kg for 1 lb: common practice, no source.
        """
        if step.unit is self.unit:
            return step
        amount = abs(self.of(step).amount)
        grain = next((size for size in USUAL_STEPS[self.unit] if amount >= size * ENOUGH), USUAL_STEPS[self.unit][-1])
        return self.load(max(grain, (amount / grain).quantize(Decimal(1)) * grain).copy_sign(step.amount))

    def nearest(self, load: Load) -> Load:
        """The loadable load nearest to one."""
        return self.loadable.nearest(load)

    def down(self, load: Load) -> Load:
        """The heaviest loadable load not above one; under the least, the least (the empty bar)."""
        return self.loadable.at_most(load) or self.loadable.nearest(load)

    @property
    def start_load(self) -> Load | None:
        """The load a slot starts at, as it can be loaded; 0 for body weight alone; None where it is to be found."""
        match self.slot.load:
            case Load() as planned:
                return self.nearest(self.of(planned))
            case None:
                return self.load(Decimal(0))
            case FindIt():
                return None
            case _:
                assert_never(self.slot.load)


def terms_of(
    slot: Slot,
    exposures: Sequence[Exposure],
    loadable: Loadable,
    strength: Load | None = None,
    unit: Unit | None = None,
) -> Terms:
    """The terms of a slot.

    Units: the one given; without it that of the plan's load, else of its step or training maximum, else of the log.
    """
    logged = (record.done.load for exposure in exposures for record in exposure.sets)
    model = slot.load if isinstance(slot.load, Load) else next(_models(slot, logged), None)
    if model is None:
        return Terms(slot, loadable, unit or Unit.KG, Basis.BODY if slot.load is None else Basis.TOTAL, strength)
    return Terms(slot, loadable, unit or model.unit, _basis(slot, model, exposures), strength)


def least_reps(target: Target) -> int:
    """The fewest reps that meet a target; 1 where it is not counted in reps."""
    match target:
        case Reps(count):
            return count
        case RepRange(low, _):
            return low
        case MaxReps() | Seconds() | Metres():
            return 1
        case _:
            assert_never(target)


def top_reps(target: Target) -> int:
    """The reps at the top of a target: those of a range's upper end, else the fewest that meet it."""
    return target.high if isinstance(target, RepRange) else least_reps(target)


def _models(slot: Slot, logged: Iterable[Load | None]) -> Iterator[Load]:
    if isinstance(slot.scheme, PercentageWave):
        yield slot.scheme.training_maximum
    step = getattr(slot.scheme, "step", None)
    if isinstance(step, Load):
        yield step
    yield from (load for load in logged if load is not None)


def _basis(slot: Slot, model: Load, exposures: Sequence[Exposure]) -> Basis:
    if slot.load is None and not isinstance(slot.scheme, PercentageWave):
        return Basis.BODY
    if isinstance(slot.load, Load):
        return slot.load.basis
    first = next((r.done.load for e in exposures for r in e.sets if r.done.load is not None), model)
    return first.basis
