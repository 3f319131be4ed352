"""Every rule by the value that states it. A rule is three functions: start, advance, ask.

A new rule is one file beside these, one value in `engine/values/schemes.py`, and one line here: mypy names this match
until it is there.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from functools import reduce
from typing import TypeVar, assert_never

from engine.progression import (
    double,
    effort_target,
    hold,
    load_step,
    percentage_wave,
    rep_goal,
    rep_total,
    set_wave,
    time_distance,
    top_set,
)
from engine.progression.asked import Ask
from engine.progression.terms import Terms
from engine.values.prescription import Exposure
from engine.values.schemes import (
    DoubleProgression,
    EffortTarget,
    Hold,
    LoadStep,
    PercentageWave,
    RepGoal,
    RepTotal,
    SetWave,
    TimeOrDistance,
    TopSetBackOff,
)

State = TypeVar("State")


AsAsked = Callable[[Exposure, Ask], Exposure]
"""The last exposure with what it was really asked, given what the rule asked of it."""


@dataclass(frozen=True, slots=True)
class Asked:
    """What a rule asked of its last session, and what it asks now; the same where there was none."""

    before: Ask
    now: Ask


def asked(  # noqa: C901 - one case a rule, all alike
    terms: Terms, exposures: Sequence[Exposure], as_asked: AsAsked = lambda last, ask: last
) -> Asked:
    """What the slot's rule asks for after these exposures, oldest first, before anything that lies over the rules."""
    match terms.slot.scheme:
        case SetWave() as scheme:
            return _fold(set_wave.start(scheme, terms), set_wave.advance, set_wave.ask, exposures, as_asked)
        case DoubleProgression() as scheme:
            return _fold(double.start(scheme, terms), double.advance, double.ask, exposures, as_asked)
        case LoadStep() as scheme:
            return _fold(load_step.start(scheme, terms), load_step.advance, load_step.ask, exposures, as_asked)
        case RepGoal() as scheme:
            return _fold(rep_goal.start(scheme, terms), rep_goal.advance, rep_goal.ask, exposures, as_asked)
        case Hold() as scheme:
            return _fold(hold.start(scheme, terms), hold.advance, hold.ask, exposures, as_asked)
        case RepTotal() as scheme:
            return _fold(rep_total.start(scheme, terms), rep_total.advance, rep_total.ask, exposures, as_asked)
        case PercentageWave() as scheme:
            return _fold(
                percentage_wave.start(scheme, terms), percentage_wave.advance, percentage_wave.ask, exposures, as_asked
            )
        case EffortTarget() as scheme:
            return _fold(
                effort_target.start(scheme, terms), effort_target.advance, effort_target.ask, exposures, as_asked
            )
        case TopSetBackOff() as scheme:
            return _fold(top_set.start(scheme, terms), top_set.advance, top_set.ask, exposures, as_asked)
        case TimeOrDistance() as scheme:
            return _fold(
                time_distance.start(scheme, terms), time_distance.advance, time_distance.ask, exposures, as_asked
            )
        case _:
            assert_never(terms.slot.scheme)


def _fold(
    state: State,
    advance: Callable[[State, Exposure], State],
    ask: Callable[[State], Ask],
    exposures: Sequence[Exposure],
    as_asked: AsAsked,
) -> Asked:
    if not exposures:
        first = ask(state)
        return Asked(first, first)
    before = reduce(advance, exposures[:-1], state)
    asked_then = ask(before)
    return Asked(asked_then, ask(advance(before, as_asked(exposures[-1], asked_then))))
