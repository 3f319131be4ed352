"""Set wave: a set more each time at one load, then the first number of sets again, heavier.

advances   every set of this turn made at the load asked or more: one set more; past the most, heavier by the step
a miss     the same turn again, and no load comes off
skipped    fewer sets than this turn asks: the same turn again, and no miss
extra      sets beyond this turn's do not skip a turn: one turn a session
heavier    the first number of sets made at more than was asked: the wave goes on from that load
lighter    the turn was not done: the same turn again
"""

from __future__ import annotations

from functools import partial
from typing import NamedTuple

from engine.progression.asked import Ask, started, straight
from engine.progression.ceiling import heavier
from engine.progression.load_step import anchor_of
from engine.progression.moved import Moved, same_reason, stands_at, up_reason, verdict_of
from engine.progression.terms import Terms, least_reps
from engine.progression.words import all_sets, counted, day, sets_of, stated
from engine.progression.work import Good, Session, reaches, session_of
from engine.values.load import Load
from engine.values.prescription import Exposure, Verdict
from engine.values.schemes import SetWave


class State(NamedTuple):
    """`sets` is what this turn asks; `asked` what the last session was measured against."""

    scheme: SetWave
    terms: Terms
    load: Load | None
    sets: int
    asked: int
    moved: Moved | None = None


def start(scheme: SetWave, terms: Terms) -> State:
    """The state before any session."""
    return State(scheme, terms, terms.start_load, terms.slot.sets, terms.slot.sets)


def advance(state: State, exposure: Exposure) -> State:
    """The state after one more session."""
    terms = state.terms
    session = session_of(exposure, terms)
    if session is None:
        return state
    first, good = terms.slot.sets, reaches(least_reps(terms.slot.target))
    before = stands_at(state.load, session, first, terms, first=state.moved is None)
    here = (before, state.sets)
    turn = _after(state, *here) if _made(session, *here, good) else here
    climbed = session.made_at(first, good)
    if climbed is not None:
        turn = max(turn, _after(state, climbed, first))
    came = session.came(state.sets, good)
    # The step's share is told of the load it went up from: this turn's, or the heavier one that was made.
    made = None if turn == here else max(before, climbed or before)
    step = heavier(made, state.scheme.step, terms) if made is not None and made < turn[0] else None
    moved = Moved(session, came, before, turn[0], made, step, state.moved is None and before != state.load)
    return State(state.scheme, terms, *turn, state.sets, moved)


def ask(state: State) -> Ask:
    """What to do next."""
    terms, moved, load = state.terms, state.moved, state.load
    slot = terms.slot
    sets = straight(terms, state.sets, slot.target, load)
    if moved is None or load is None:
        return started(terms, sets, _next_step(state))
    # The ceiling asks only whether the first number of sets was made: a fourth set that fails is no sign of overload.
    came = moved.session.came(slot.sets, reaches(least_reps(slot.target)))
    return Ask(
        sets,
        _verdict(state, moved),
        partial(_reason, state, moved),
        partial(_next_step, state),
        moved.session.evidence,
        anchor_of(moved.session, slot.sets, came),
        moved.taken.notes if moved.taken else (),
    )


def _made(session: Session, load: Load, sets: int, good: Good) -> bool:
    at = session.made_at(sets, good)
    return at is not None and load <= at


def _after(state: State, load: Load, sets: int) -> tuple[Load, int]:
    """The turn after one that was made; the same turn where nothing heavier can be loaded."""
    if sets < state.scheme.most:
        return load, sets + 1
    up = heavier(load, state.scheme.step, state.terms).load
    return (up, state.terms.slot.sets) if load < up else (load, sets)


def _verdict(state: State, moved: Moved) -> Verdict:
    if state.sets > state.asked and not moved.up:
        return Verdict.ADD_SET
    return verdict_of(moved, state.asked)


def _reason(state: State, moved: Moved) -> str:
    need, asked, first = least_reps(state.terms.slot.target), state.asked, state.terms.slot.sets
    on, load = day(moved.session.on), stated(moved.after)
    if moved.up and moved.made is not None and moved.after <= moved.made:
        done = f"{counted(first, 'set')} of {need} made at {load} on {on}"
        return f"{done}, more than asked, so the wave goes on from there."
    if moved.up:
        back = f" and the sets go back to {first}" if state.sets < asked else ""
        return f"{up_reason(moved, asked, str(need))[:-1]}{back}."
    if state.sets > asked:
        return f"{all_sets(asked)} of {need} made on {on}, so one set more at {load}."
    return same_reason(moved, asked, str(need))


def _next_step(state: State) -> str:
    slot, load = state.terms.slot, state.load
    make = f"Make {sets_of(state.sets, slot.target)}"
    if state.sets < state.scheme.most:
        return f"{make} to go to {sets_of(state.sets + 1, slot.target)}."
    if load is None:
        return f"{make}, and the load goes up {state.terms.step(state.scheme.step)}."
    up, sets = _after(state, load, state.sets)
    return f"{make} to go to {sets_of(sets, slot.target)} at {stated(up)}."
