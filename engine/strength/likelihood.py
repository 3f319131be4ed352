"""Chances under a normal distribution."""

from __future__ import annotations

from math import erf, sqrt


def chance_above(mark: float, mean: float, sd: float) -> float:
    """The chance that something normal with this mean and SD lies above a mark."""
    if sd <= 0:
        return float(mean > mark)
    return 0.5 * (1 + erf((mean - mark) / (sd * sqrt(2))))
