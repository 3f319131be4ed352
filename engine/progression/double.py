"""Double progression: first the reps climb through the range, then the load goes up and the reps start at the bottom.

advances   every prescribed set reached the top of the range: heavier by the step, back to the bottom
a miss     a set under the bottom of the range: the load stays; it never comes down by itself
skipped    fewer sets than asked, all in the range: the same again, and no miss
extra      the best sets count, as many as were asked for
heavier    made inside the range at more than was asked: the slot goes on from there
"""

from __future__ import annotations

from functools import partial
from typing import NamedTuple

from engine.progression.asked import Ask, started, straight
from engine.progression.ceiling import heavier
from engine.progression.load_step import anchor_of
from engine.progression.moved import Moved, lighter_reason, same_reason, stands_at, stays, up_reason, verdict_of
from engine.progression.stall import STALL
from engine.progression.terms import Terms, least_reps, top_reps
from engine.progression.words import day, reps, sets_of, stated
from engine.progression.work import Came, reaches, session_of
from engine.values.load import Load
from engine.values.plan import Reps
from engine.values.prescription import Exposure, Verdict
from engine.values.schemes import DoubleProgression


class State(NamedTuple):
    """`missed` counts the running sessions with a set under the bottom."""

    scheme: DoubleProgression
    terms: Terms
    load: Load | None
    missed: int = 0
    moved: Moved | None = None


def start(scheme: DoubleProgression, terms: Terms) -> State:
    """The state before any session."""
    return State(scheme, terms, terms.start_load)


def advance(state: State, exposure: Exposure) -> State:
    """The state after one more session."""
    terms = state.terms
    session = session_of(exposure, terms)
    if session is None:
        return state
    sets, bottom = terms.slot.sets, reaches(least_reps(terms.slot.target))
    before = stands_at(state.load, session, sets, terms, first=state.moved is None)
    held, made = session.made_at(sets, bottom), session.made_at(sets, reaches(top_reps(terms.slot.target)))
    came = session.came(sets, bottom) if held is None else Came.MADE
    after, step = before if held is None else max(before, held), None
    if made is not None:
        step = heavier(made, state.scheme.step, terms)
        after = max(after, step.load)
    missed = state.missed + 1 if came is Came.MISSED else 0
    found = state.moved is None and before != state.load
    return State(state.scheme, terms, after, missed, Moved(session, came, before, after, made, step, found))


def ask(state: State) -> Ask:
    """What to do next."""
    terms, moved, load = state.terms, state.moved, state.load
    slot = terms.slot
    sets = straight(terms, slot.sets, slot.target, load)
    if moved is None or load is None:
        return started(terms, sets, _next_step(state))
    return Ask(
        sets,
        verdict_of(moved, slot.sets, Verdict.ADD_REPS if moved.came is Came.MADE else Verdict.REPEAT),
        partial(_reason, state, moved),
        partial(_next_step, state),
        moved.session.evidence,
        anchor_of(moved.session, slot.sets, moved.came),
        moved.taken.notes if moved.taken else (),
    )


def _reason(state: State, moved: Moved) -> str:
    sets, bottom, top = state.terms.slot.sets, least_reps(state.terms.slot.target), top_reps(state.terms.slot.target)
    if moved.up:
        back = f" Back to {bottom} reps." if moved.made is not None and bottom < top else ""
        return up_reason(moved, sets, str(top)) + back
    session = moved.session
    if moved.comes_back(session.working_load(sets)):
        return lighter_reason(moved, session.working_load(sets), f"{reps(session.works)} on {day(session.on)}")
    if moved.came is Came.MADE and moved.made is None and session.working_load(sets) >= moved.before:
        done = f"{reps(session.works)} on {day(session.on)}"
        return f"{done}: not every set reached {top} yet, so {stays(moved, moved.after)}."
    return same_reason(moved, sets, str(bottom))


def _next_step(state: State) -> str:
    slot, load = state.terms.slot, state.load
    make = f"Make {sets_of(slot.sets, Reps(top_reps(state.terms.slot.target)))}"
    if load is None:
        return f"{make}, and the load goes up {state.terms.step(state.scheme.step)} from there."
    stuck = f" {state.missed} sessions under the range: a lighter load may fit better." if state.missed >= STALL else ""
    return f"{make} to go to {stated(heavier(load, state.scheme.step, state.terms).load)}.{stuck}"
