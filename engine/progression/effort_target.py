"""Effort target: the load for the target reps at the target effort, from the current estimate of strength.

advances   as the estimate does, and so comes down with it too
a miss     lowers the estimate, nothing else
skipped, extra sets   the best estimate of the session counts, however many sets it took
heavier, lighter      the estimate takes any load

The estimate is the steady one of `engine/strength/working.py`, never lower for a repetition more. Without one given,
the last session's best set stands in: load times the mean of seven published equations at its reps and those told in
reserve (`engine/strength/one_rep_max.py`). Reps in reserve count up to 3, for past that calls miss by more than two; an
untold effort counts as none in reserve, which says too little rather than too much.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from decimal import Decimal
from functools import lru_cache

from engine.progression.asked import Ask, started, told
from engine.progression.load_step import anchor_of
from engine.progression.terms import Terms, least_reps, top_reps
from engine.progression.words import day, stated, target
from engine.progression.work import Session, Work, reaches, session_of
from engine.strength.one_rep_max import MOST_REPS, multiples
from engine.values.effort import Effort
from engine.values.load import Basis, Load, plain
from engine.values.prescription import Exposure, SetTarget, Verdict
from engine.values.schemes import EffortTarget

MOST_RIR = Decimal(3)
"""Source: Hackett et al. 2017: calls miss by more than two reps at 7 to 10 in reserve; the cut is common practice."""

MISSED_SINGLE = Decimal("0.95")
"""What a session in which no rep was made says of the maximum, as a share of its lightest load.

Source: after a failed attempt 2.5 to 5 % less for the upper body, 5 to 10 % for the lower: NSCA one-repetition-maximum
protocol, read in a secondary source."""

NEXT_STEP = "The load follows your strength: tell how hard the sets were (RPE or reps in reserve)."


@dataclass(frozen=True, slots=True)
class State:
    scheme: EffortTarget
    terms: Terms
    last: Session | None = None


def start(scheme: EffortTarget, terms: Terms) -> State:
    """The state before any session."""
    return State(scheme, terms)


def advance(state: State, exposure: Exposure) -> State:
    """The state after one more session."""
    session = session_of(exposure, state.terms)
    return state if session is None else replace(state, last=session)


def ask(state: State) -> Ask:
    """What to do next."""
    terms, last, effort = state.terms, state.last, state.scheme.effort
    slot = terms.slot
    strength = _strength(state)
    if strength is None and last is not None:
        return _as_last_time(state, last)
    if strength is None:
        sets = (SetTarget(slot.target, terms.start_load if slot.load is not None else None, effort),) * slot.sets
        return started(terms, sets, NEXT_STEP)
    load = terms.nearest(terms.load(strength.amount / _multiple(_capped(top_reps(slot.target) + effort.rir))))
    asked = f"{target(slot.target)} at {_effort_told(effort)}"
    by = "By your sets of late" if terms.strength is not None or last is None else f"By your sets on {day(last.on)}"
    reason = f"{by} your one-rep maximum is about {_whole(strength)}, which gives {stated(load)} for {asked}."
    sets = (SetTarget(slot.target, load, effort),) * slot.sets
    if last is None:
        return Ask(sets, Verdict.FOLLOW, reason, NEXT_STEP)
    came = last.came(slot.sets, reaches(least_reps(slot.target)))
    return Ask(sets, Verdict.FOLLOW, reason, NEXT_STEP, last.evidence, anchor_of(last, slot.sets, came))


def _as_last_time(state: State, last: Session) -> Ask:
    """Work whose resistance is partly the body: a share of an unknown weight is not asked for."""
    terms = state.terms
    slot, load = terms.slot, told(terms, last.working_load(terms.slot.sets))
    sets = (SetTarget(slot.target, load, state.scheme.effort),) * slot.sets
    came = last.came(slot.sets, reaches(least_reps(slot.target)))
    reason = f"As on {day(last.on)}: with body weight in the lift, the load for an effort is yours to judge."
    return Ask(sets, Verdict.HOLD, reason, NEXT_STEP, last.evidence, anchor_of(last, slot.sets, came))


def _strength(state: State) -> Load | None:
    """The estimate given, or the last session's best; none for body weight, whose resistance is not known here."""
    terms = state.terms
    if terms.basis is Basis.BODY:
        return None
    if terms.strength is not None:
        return terms.of(terms.strength)
    if state.last is None:
        return None
    best = _best(state.last)
    return terms.load(best) if best > 0 else None


def _best(session: Session) -> Decimal:
    done = [_estimate(work) for work in session.works if work.reps > 0]
    return max(done) if done else min(work.lifted.amount for work in session.works) * MISSED_SINGLE


def _estimate(work: Work) -> Decimal:
    rir = Decimal(0) if work.rir is None else min(work.rir, MOST_RIR)
    return work.lifted.amount * _multiple(_capped(work.reps + rir))


def _capped(reps: Decimal) -> Decimal:
    return min(Decimal(reps), MOST_REPS)


@lru_cache(maxsize=128)
def _multiple(reps: Decimal) -> Decimal:
    return multiples(reps).mean


def _effort_told(effort: Effort) -> str:
    return f"RPE {plain(effort.rpe)}" if effort.as_rpe else f"{plain(effort.rir)} in reserve"


def _whole(load: Load) -> str:
    return f"{plain(load.amount.quantize(Decimal(1)))} {load.unit.value}"
