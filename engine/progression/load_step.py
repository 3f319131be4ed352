"""Load step: all prescribed reps made, and the load goes up.

advances   every prescribed set reached its reps (of a range: the top): heavier by the step
a miss     a set short of them (of a range: under the bottom): the same load again; after so many running misses down by
           a share (stall.py). Inside a range is neither: the same load again, and the run of misses ends
skipped    fewer sets than asked, all good: the same again, and no miss
extra      the best sets count, as many as were asked for; more of them change nothing
"""

from __future__ import annotations

from functools import partial
from typing import NamedTuple

from engine.progression.asked import Anchor, Ask, started, straight
from engine.progression.ceiling import heavier
from engine.progression.moved import Moved, same_reason, stands_at, up_reason, verdict_of
from engine.progression.rounding import rounded
from engine.progression.stall import after_miss, reset
from engine.progression.terms import Terms, least_reps, top_reps
from engine.progression.words import day, percent, sets_of, stated
from engine.progression.work import Came, Session, reaches, session_of
from engine.values.load import Load
from engine.values.plan import Reps
from engine.values.prescription import Exposure, Verdict
from engine.values.schemes import LoadStep


class State(NamedTuple):
    """`missed` holds the loads of the running misses, oldest first."""

    scheme: LoadStep
    terms: Terms
    load: Load | None
    missed: tuple[Load, ...] = ()
    moved: Moved | None = None


def start(scheme: LoadStep, terms: Terms) -> State:
    """The state before any session."""
    return State(scheme, terms, terms.start_load)


def advance(state: State, exposure: Exposure) -> State:
    """The state after one more session."""
    session = session_of(exposure, state.terms)
    return state if session is None else after_session(state, session)


def after_session(state: State, session: Session) -> State:
    """The state after one more session, its sets already sorted out."""
    terms, scheme = state.terms, state.scheme
    sets = terms.slot.sets
    before = stands_at(state.load, session, sets, terms, first=state.moved is None)
    found = state.moved is None and before != state.load
    made = session.made_at(sets, reaches(top_reps(terms.slot.target)))
    came = session.came(sets, reaches(least_reps(terms.slot.target))) if made is None else Came.MADE
    if made is not None:
        step = heavier(made, scheme.step, terms)
        after = max(before, step.load)
        return State(scheme, terms, after, (), Moved(session, came, before, after, made, step, found))
    if came is not Came.MISSED:
        return State(scheme, terms, before, (), Moved(session, came, before, before, found=found))
    missed = after_miss(state.missed, session.working_load(sets), scheme.misses)
    after = reset(before, missed, scheme.misses, scheme.reset_share, terms)
    return State(scheme, terms, after, missed, Moved(session, came, before, after, found=found))


def ask(state: State) -> Ask:
    """What to do next."""
    terms, moved, load = state.terms, state.moved, state.load
    slot = terms.slot
    sets = straight(terms, slot.sets, slot.target, load)
    if moved is None or load is None:
        return started(terms, sets, _next_step(state))
    return Ask(
        sets,
        Verdict.RESET if moved.after < moved.before else verdict_of(moved, slot.sets),
        partial(_reason, state, moved),
        partial(_next_step, state),
        moved.session.evidence,
        anchor_of(moved.session, slot.sets, moved.came),
        moved.taken.notes if moved.taken else (),
    )


def anchor_of(session: Session, sets: int, came: Came) -> Anchor:
    """What the ceiling is measured from."""
    return Anchor(session.working_load(sets), came)


def _reason(state: State, moved: Moved) -> str:
    need, sets = str(top_reps(state.terms.slot.target)), state.terms.slot.sets
    if moved.up:
        return up_reason(moved, sets, need)
    if moved.after < moved.before:
        missed = f"{state.scheme.misses} sessions in a row missed, the last on {day(moved.session.on)}"
        most, share = max(state.missed), state.scheme.reset_share
        told = rounded(most.amount - abs(most.amount) * share, moved.after, state.terms)
        return f"{missed}, so the load comes down {percent(share)} from {stated(most)} to {stated(moved.after)}{told}."
    return same_reason(moved, sets, need)


def _next_step(state: State) -> str:
    slot, load = state.terms.slot, state.load
    make = f"Make {sets_of(slot.sets, Reps(top_reps(slot.target)))}"
    if load is None:
        return f"{make}, and the load goes up {state.terms.step(state.scheme.step)} from there."
    up = heavier(load, state.scheme.step, state.terms).load
    left = state.scheme.misses - len(state.missed)
    risk = " One more miss brings a lighter restart." if left == 1 else ""
    return f"{make} at {stated(load)} to go to {stated(up)}.{risk}"
