"""Rep total: all sets together reach a number of reps, in as many reps a set as it takes.

advances   the sum reached the total: heavier by the step; without a step, the total grows past what was reached
a miss     the same total again, and no load comes off
skipped    nothing special: the sum decides, however few the sets
extra      they count: the sum is over all work sets at the load asked or more
heavier    a total reached at more than was asked: the slot goes on from there
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import partial

from engine.progression.asked import Ask, started, straight
from engine.progression.ceiling import heavier
from engine.progression.load_step import anchor_of
from engine.progression.moved import Moved, lighter_reason, rises, stands_at, stays, verdict_of
from engine.progression.terms import Terms
from engine.progression.words import counted, day, stated
from engine.progression.work import Came, Session, session_of
from engine.values.load import Load
from engine.values.prescription import Exposure, Verdict
from engine.values.schemes import RepTotal


@dataclass(frozen=True, slots=True)
class State:
    """`total` is what is asked next; `goal` and `reached` what the last session asked and did."""

    scheme: RepTotal
    terms: Terms
    load: Load | None
    total: int
    goal: int = 0
    reached: int = 0
    moved: Moved | None = None


def start(scheme: RepTotal, terms: Terms) -> State:
    """The state before any session."""
    return State(scheme, terms, terms.start_load, scheme.total)


def advance(state: State, exposure: Exposure) -> State:
    """The state after one more session."""
    terms, step = state.terms, state.scheme.step
    session = session_of(exposure, terms)
    if session is None:
        return state
    before = stands_at(state.load, session, terms.slot.sets, terms, first=state.moved is None)
    reached = _sum(session, before)
    made = _total_at(session, state.total)
    after, up, total = before, None, state.total
    if made is not None and step is not None:
        up = heavier(made, step, terms)
        after = max(before, up.load)
    elif made is not None and before <= made:
        total = max(state.total, reached) + state.scheme.gain
    moved = Moved(session, Came.MADE, before, after, made, up, state.moved is None and before != state.load)
    return replace(state, load=after, total=total, goal=state.total, reached=reached, moved=moved)


def ask(state: State) -> Ask:
    """What to do next."""
    terms, moved, load = state.terms, state.moved, state.load
    slot = terms.slot
    sets = straight(terms, slot.sets, slot.target, load)
    if moved is None or load is None:
        return replace(started(terms, sets, _next_step(state)), total=state.total)
    longer = Verdict.ADD_REPS if state.total > state.goal else Verdict.REPEAT
    return Ask(
        sets,
        verdict_of(moved, slot.sets, longer),
        partial(_reason, state, moved),
        partial(_next_step, state),
        moved.session.evidence,
        anchor_of(moved.session, slot.sets, Came.MADE),
        moved.taken.notes if moved.taken else (),
        total=state.total,
    )


def _sum(session: Session, load: Load) -> int:
    return sum(work.reps for work in session.works if load <= work.load)


def _total_at(session: Session, total: int) -> Load | None:
    """The heaviest load at which, or above which, the sets add up to the total."""
    loads = sorted({work.load.amount for work in session.works}, reverse=True)
    by_amount = {work.load.amount: work.load for work in session.works}
    return next((by_amount[amount] for amount in loads if _sum(session, by_amount[amount]) >= total), None)


def _reason(state: State, moved: Moved) -> str:
    on, session = day(moved.session.on), moved.session
    done = f"{counted(state.reached, 'rep')} in all on {on}"
    if moved.up and moved.made is not None:
        return (
            f"{counted(_sum(session, moved.made), 'rep')} in all on {on}, so the load {rises(moved.made, moved.after)}."
        )
    if state.total > state.goal:
        return f"{done}, so {state.total} are asked next."
    if moved.made is not None and moved.made < moved.before:
        return lighter_reason(moved, moved.made, f"{counted(_sum(session, moved.made), 'rep')} in all made on {on}")
    lifted = session.working_load(state.terms.slot.sets)
    at = f" at {stated(lifted)}" if lifted < moved.before else ""
    done = f"{counted(_sum(session, min(lifted, moved.before)), 'rep')} in all{at} on {on}"
    return f"{done} of the {state.goal} asked, so {stays(moved, lifted)}."


def _next_step(state: State) -> str:
    reach, step = f"Reach {state.total} reps in all", state.scheme.step
    if step is None:
        return f"{reach}, and the total goes up {counted(state.scheme.gain, 'rep')}."
    if state.load is None:
        return f"{reach}, and the load goes up {state.terms.step(step)} from there."
    return f"{reach} to go to {stated(heavier(state.load, step, state.terms).load)}."
