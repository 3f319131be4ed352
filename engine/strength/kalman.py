"""The linear-Gaussian filter in plain Python: a mean and its covariance, moved through time, corrected by what is seen.

Vectors and matrices are small tuples of floats. A transition is written as the identity with a few elementary steps,
each adding `times` one component to another (or scaling a component), so that moving costs next to nothing.
Source: Kalman 1960, J Basic Eng 82:35-45.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from operator import mul

Vector = tuple[float, ...]
Matrix = tuple[Vector, ...]


@dataclass(frozen=True, slots=True)
class Belief:
    """What is believed of a state: its mean and covariance."""

    mean: Vector
    cov: Matrix

    @classmethod
    def apart(cls, mean: Sequence[float], variances: Sequence[float]) -> Belief:
        """A belief whose components know nothing of each other."""
        size = range(len(mean))
        return cls(tuple(mean), tuple(tuple(variances[i] if i == j else 0.0 for j in size) for i in size))


@dataclass(frozen=True, slots=True)
class Step:
    """One elementary step of a transition: component `to` gains `times` the component `of`."""

    to: int
    of: int
    times: float


@dataclass(frozen=True, slots=True)
class Innovation:
    """How far an observation lies from what was expected, the variance of that distance, and how it corrects."""

    distance: float
    variance: float
    gain: Vector


def moved(belief: Belief, steps: Sequence[Step], noise: Sequence[float]) -> Belief:
    """The belief after a transition: the steps in order, then `noise` added to the variances."""
    mean, cov = list(belief.mean), [list(row) for row in belief.cov]
    for step in steps:
        mean[step.to] += step.times * mean[step.of]
        to, of, times = step.to, step.of, step.times
        cov[to] = [into + times * source for into, source in zip(cov[to], cov[of], strict=True)]
        for row in cov:
            row[to] += times * row[of]
    for place, variance in enumerate(noise):
        cov[place][place] += variance
    return Belief(tuple(mean), tuple(map(tuple, cov)))


def innovation(belief: Belief, loading: Sequence[float], distance: float, variance: float) -> Innovation:
    """What an observation brings: `distance` is observed less expected, `variance` its noise.

    Shape: `loading` is how much of each component the observation sees.
    """
    seen = [sum(map(mul, row, loading)) for row in belief.cov]
    total = sum(map(mul, seen, loading)) + variance
    return Innovation(distance, total, tuple([one / total for one in seen]))


def corrected(belief: Belief, seen: Innovation) -> Belief:
    """The belief after an observation; the covariance stays symmetric."""
    mean = tuple([m + k * seen.distance for m, k in zip(belief.mean, seen.gain, strict=True)])
    scaled = [k * seen.variance for k in seen.gain]
    rows = zip(belief.cov, seen.gain, strict=True)
    return Belief(mean, tuple([tuple([c - k * s for c, s in zip(row, scaled, strict=True)]) for row, k in rows]))


def corrected_in_part(belief: Belief, loading: Sequence[float], seen: Innovation, spared: int) -> Belief:
    """The belief after an observation that is not let move one component; right for any gain, not only the best.

    Source: Joseph's form of the covariance, Bucy & Joseph 1968, Filtering for Stochastic Processes.
    """
    gain = [0.0 if place == spared else k for place, k in enumerate(seen.gain)]
    mean = tuple([m + k * seen.distance for m, k in zip(belief.mean, gain, strict=True)])
    share = [sum(map(mul, row, loading)) for row in belief.cov]
    size = range(len(mean))
    cov = tuple(
        tuple(
            belief.cov[i][j] - gain[i] * share[j] - share[i] * gain[j] + gain[i] * gain[j] * seen.variance for j in size
        )
        for i in size
    )
    return Belief(mean, cov)


def spread(belief: Belief, loading: Sequence[float]) -> float:
    """The variance of a weighted sum of the components."""
    return sum(
        a * b * cell for a, row in zip(loading, belief.cov, strict=True) for b, cell in zip(loading, row, strict=True)
    )
