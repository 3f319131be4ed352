"""Hold: nothing ever advances. For rehabilitation and technique.

A miss, an extra set, a heavier or a lighter day change nothing. "Find it" takes the first session's working load.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from engine.progression.asked import Ask, started, straight
from engine.progression.load_step import anchor_of
from engine.progression.terms import Terms, least_reps
from engine.progression.words import day, stated
from engine.progression.work import Session, reaches, session_of
from engine.values.load import Load
from engine.values.prescription import Exposure, Verdict
from engine.values.schemes import Hold

NEXT_STEP = "Nothing advances here by itself: the plan holds it."


@dataclass(frozen=True, slots=True)
class State:
    scheme: Hold
    terms: Terms
    load: Load | None
    last: Session | None = None


def start(scheme: Hold, terms: Terms) -> State:
    """The state before any session."""
    return State(scheme, terms, terms.start_load)


def advance(state: State, exposure: Exposure) -> State:
    """The state after one more session: the same, but for a load that was to be found."""
    session = session_of(exposure, state.terms)
    if session is None:
        return state
    found = state.terms.nearest(session.working_load(state.terms.slot.sets)) if state.load is None else state.load
    return replace(state, load=found, last=session)


def ask(state: State) -> Ask:
    """What to do next."""
    terms, last, load = state.terms, state.last, state.load
    slot = terms.slot
    sets = straight(terms, slot.sets, slot.target, load)
    if last is None or load is None:
        return replace(started(terms, sets, NEXT_STEP))
    reason = f"The plan holds this at {stated(load)}; last done on {day(last.on)}."
    came = last.came(slot.sets, reaches(least_reps(slot.target)))
    return Ask(sets, Verdict.HOLD, reason, NEXT_STEP, last.evidence, anchor_of(last, slot.sets, came))
