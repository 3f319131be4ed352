"""The logarithm of the multiple at any number of repetitions to failure, fast: the filter asks thousands of times.

The mean of the seven equations, tabulated once for each whole repetition and joined by straight lines, whose slope is
what one repetition more is worth. A single is the maximum itself; between one and two it rises to the equations.
"""

from __future__ import annotations

from bisect import bisect_right
from decimal import Decimal

from engine.strength.one_rep_max import MOST_REPS, multiples

MOST = int(MOST_REPS) + 4
"""A little past the last repetition estimated from, for a lifter who leaves more in reserve than he says."""
LOG_MULTIPLES: tuple[float, ...] = tuple(float(multiples(Decimal(reps)).mean.ln()) for reps in range(1, MOST + 1))


def log_multiple(reps: float) -> tuple[float, float]:
    """The logarithm of the multiple at `reps` repetitions to failure, and its slope there.

    Shape: under one repetition the first line goes on below zero: a load that would not go up once.
    """
    whole = min(max(int(reps), 1), MOST - 1)
    low, high = LOG_MULTIPLES[whole - 1], LOG_MULTIPLES[whole]
    return low + (reps - whole) * (high - low), high - low


def reps_for(log_share: float) -> float:
    """The repetitions to failure at which the logarithm of the multiple is `log_share`; undoes `log_multiple`.

    Shape: under one for a share below zero, a load that would not go up once; at most the last of the table.
    """
    whole = 1 if log_share <= 0 else min(bisect_right(LOG_MULTIPLES, log_share), MOST - 1)
    low, high = LOG_MULTIPLES[whole - 1], LOG_MULTIPLES[whole]
    return min(float(MOST), whole + (log_share - low) / (high - low))
