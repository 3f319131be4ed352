"""Warm-up sets that lead to a work load.

The empty bar for ten, then 40 % for five, 60 % for three, 80 % for two, each rounded down; steps under the bar, at it
again, or at the work load fall out. Common practice, no source.
"""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal

from engine.loading.loadable import Loadable
from engine.values.load import SMALLEST_STEP, Load

BAR_REPS = 10
STEPS = ((Decimal("0.4"), 5), (Decimal("0.6"), 3), (Decimal("0.8"), 2))


@dataclass(frozen=True, slots=True)
class WarmUp:
    load: Load
    reps: int


def warm_ups(work: Load, loadable: Loadable, bar: Load | None = None) -> tuple[WarmUp, ...]:
    """The warm-up sets before `work`, lightest first; none for body weight or the empty bar.

    Units: in the work load's unit. `bar` is the empty bar, or None where there is none to begin with.
    """
    if work.amount <= 0:
        return ()
    ramp: list[WarmUp] = []
    if bar is not None and bar < work:
        ramp.append(WarmUp(Load(bar.in_unit(work.unit).amount, work.unit, work.basis), BAR_REPS))
    for share, reps in STEPS:
        load = loadable.at_most(Load((work.amount * share).quantize(SMALLEST_STEP), work.unit, work.basis))
        least = ramp[-1].load if ramp else None
        if load is not None and load.amount > 0 and load < work and (least is None or least < load):
            ramp.append(WarmUp(load, reps))
    return tuple(ramp)
