"""A planned deload: a share of the sets, a share of the load.

Half the sets, half a set rounded up, at least one; the load rounded to the nearest that can be loaded. Common practice,
no source for the shares.
What athletes change: fewer sets and reps, less load, the same exercises on the same days (Rogerson et al. 2024, Sports
Med Open, doi 10.1186/s40798-024-00691-y).

Decided: a session in a deload week proves nothing: the rules do not see it, and the week after goes on from the session
before it. Where there is no load to lower, reps, seconds or metres are taken down by the load's share instead.
"""

from __future__ import annotations

from dataclasses import replace
from decimal import ROUND_DOWN, ROUND_HALF_UP, Decimal
from typing import assert_never

from engine.values.plan import MaxReps, Metres, RepRange, Reps, Seconds, Target
from engine.values.prescription import SetTarget

WHOLE = Decimal(1)


def deload_sets(sets: int, share: Decimal) -> int:
    """How many sets a deload keeps: the share, half a set rounded up, at least one."""
    return max(1, int((sets * share).quantize(WHOLE, ROUND_HALF_UP)))


def without_load(one: SetTarget, share: Decimal) -> SetTarget:
    """A set without a load, made lighter by what it counts."""
    return replace(one, target=_less(one.target, share))


def _less(target: Target, share: Decimal) -> Target:
    match target:
        case Reps(count):
            return Reps(max(1, int(count * share)))
        case RepRange(low, _):
            return Reps(low)
        case Seconds(count):
            return Seconds(_down(count * share))
        case Metres(count):
            return Metres(_down(count * share))
        case MaxReps():
            return target
        case _:
            assert_never(target)


def _down(amount: Decimal) -> Decimal:
    return max(WHOLE, amount.quantize(WHOLE, ROUND_DOWN))
