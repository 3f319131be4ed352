"""The published equations from a load and its repetitions to failure to the load that could be lifted once.

All are linear in the load, so each is one number, the multiple of the load. Repetitions in reserve are folded in by the
caller: repetitions to failure = repetitions done + repetitions in reserve, halves allowed.
Left out: Adams 1994, whose constant the copies disagree on (0.02 or 0.025), and Berger, from memory alone.
"""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from enum import Enum
from typing import assert_never

ONE = Decimal(1)
BRZYCKI_POLE = Decimal(37)
LANDER_POLE = Decimal("101.3") / Decimal("2.67123")
LINEAR_REPS = Decimal(10)
"""Past so many repetitions an estimate is of low confidence.

Source: linear equations hold to 10 repetitions: Reynolds et al. 2006, J Strength Cond Res 20(3):584-592."""
MOST_REPS = Decimal(20)
"""No equation here claims more: Mayhew et al. 1992 go to about 20."""


class Equation(Enum):
    """Equations by author. Constants of Lombardi, Mayhew, O'Conner and Wathen: from memory, papers exist."""

    EPLEY = "Epley 1985, Poundage Chart, University of Nebraska"
    BRZYCKI = "Brzycki 1993, J Phys Educ Recreat Dance 64(1):88-90"
    LOMBARDI = "Lombardi 1989, Beginning Weight Training"
    MAYHEW = "Mayhew et al. 1992, J Appl Sport Sci Res 6:200-206"
    OCONNER = "O'Conner et al. 1989, Weight Training Today"
    WATHEN = "Wathen 1994, in NSCA Essentials, 1st ed."
    LANDER = "Lander 1985, NSCA J 6(6):60-61"

    @property
    def most_reps(self) -> Decimal:
        """The most repetitions to failure its source vouches for (Brzycki: fewer than 10)."""
        match self:
            case Equation.BRZYCKI:
                return Decimal(9)
            case Equation.MAYHEW:
                return MOST_REPS
            case Equation.EPLEY | Equation.LOMBARDI | Equation.OCONNER | Equation.WATHEN | Equation.LANDER:
                return LINEAR_REPS
            case _:
                assert_never(self)


class PastPole(ValueError):
    """So many repetitions that the equation's multiple is infinite or negative there."""

    def __init__(self, equation: Equation, reps: Decimal) -> None:
        super().__init__(f"{equation.name} has no value at {reps} repetitions; expected fewer than 37")
        self.equation, self.reps = equation, reps


@dataclass(frozen=True, slots=True)
class Multiples:
    """The mean of the seven equations at one number of repetitions, with the lowest and the highest of them."""

    mean: Decimal
    low: Decimal
    high: Decimal


def multiple(equation: Equation, reps: Decimal) -> Decimal:
    """How many times the load could be lifted once, for a load lifted `reps` times to failure.

    Exactly 1 for a single, where several equations would add to a lift that was the maximum.
    Errors: ValueError below one repetition; PastPole where Brzycki and Lander run out.
    Source: the member of Equation.
    """
    if reps < 1:
        raise ValueError(f"no multiple for {reps} repetitions; expected 1 or more")
    return ONE if reps == 1 else raw_multiple(equation, reps)


def raw_multiple(equation: Equation, reps: Decimal) -> Decimal:
    """The equation as printed, singles included.

    Errors: PastPole where Brzycki and Lander run out.
    """
    match equation:
        case Equation.EPLEY:
            return 1 + reps / 30
        case Equation.BRZYCKI:
            return 36 / _above_zero(equation, reps, BRZYCKI_POLE - reps)
        case Equation.LOMBARDI:
            return reps ** Decimal("0.10")
        case Equation.MAYHEW:
            return 100 / (Decimal("52.2") + Decimal("41.9") * (Decimal("-0.055") * reps).exp())
        case Equation.OCONNER:
            return 1 + Decimal("0.025") * reps
        case Equation.WATHEN:
            return 100 / (Decimal("48.8") + Decimal("53.8") * (Decimal("-0.075") * reps).exp())
        case Equation.LANDER:
            return 100 / _above_zero(equation, reps, Decimal("101.3") - Decimal("2.67123") * reps)
        case _:
            assert_never(equation)


def multiples(reps: Decimal) -> Multiples:
    """All seven equations at once.

    Errors: ValueError below one repetition; PastPole from 37 on.
    """
    each = [multiple(equation, reps) for equation in Equation]
    return Multiples(sum(each, Decimal(0)) / len(each), min(each), max(each))


def brzycki_rounded(reps: Decimal) -> Decimal:
    """Brzycki's multiple in the decimal form his paper prints, 1 / (1.0278 - 0.0278 r).

    Errors: PastPole from 36.97 repetitions on.
    Source: Brzycki 1993, J Phys Educ Recreat Dance 64(1):88-90.
    """
    return 1 / _above_zero(Equation.BRZYCKI, reps, Decimal("1.0278") - Decimal("0.0278") * reps)


def _above_zero(equation: Equation, reps: Decimal, divisor: Decimal) -> Decimal:
    if divisor <= 0:
        raise PastPole(equation, reps)
    return divisor
