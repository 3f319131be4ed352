"""Rep goal: on sets of maximum reps, more on each set than on the same set last time.

advances   set by set: each set that met its goal gets a new one, the reps done and the gain
a miss     the same goal again for that set; the other sets advance
skipped    a set not done keeps its goal
extra      sets beyond the slot's have no goal and change none
lighter    a set below the slot's load (or with help, where none is planned) sets no goal
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import partial
from itertools import zip_longest

from engine.progression.asked import Ask, started, told
from engine.progression.load_step import anchor_of
from engine.progression.moved import stands_at
from engine.progression.terms import Terms
from engine.progression.words import counted, day, reps, stated
from engine.progression.work import Came, Session, reaches, session_of
from engine.values.load import Load
from engine.values.plan import Reps
from engine.values.prescription import Exposure, SetTarget, Verdict
from engine.values.schemes import RepGoal


@dataclass(frozen=True, slots=True)
class State:
    """`goals` holds one number for each set done so far; `met` the sets that met theirs in the last session."""

    scheme: RepGoal
    terms: Terms
    load: Load | None
    goals: tuple[int, ...] = ()
    met: tuple[bool, ...] = ()
    last: Session | None = None


def start(scheme: RepGoal, terms: Terms) -> State:
    """The state before any session."""
    return State(scheme, terms, terms.start_load)


def advance(state: State, exposure: Exposure) -> State:
    """The state after one more session."""
    terms = state.terms
    session = session_of(exposure, terms)
    if session is None:
        return state
    sets = terms.slot.sets
    load = stands_at(state.load, session, sets, terms, first=state.last is None)
    done = [work.reps for work in session.works if load <= work.load][:sets]
    goals = tuple(_goal(goal, reached, state.scheme.gain) for goal, reached in zip_longest(state.goals, done))
    met = tuple(goal is None or (reached or 0) >= goal for goal, reached in zip_longest(state.goals, done))
    return replace(state, load=load, goals=goals, met=met, last=session)


def ask(state: State) -> Ask:
    """What to do next."""
    terms, last = state.terms, state.last
    slot, load = terms.slot, told(terms, state.load)
    sets = tuple(
        SetTarget(Reps(goal) if goal else slot.target, load, slot.effort)
        for goal in (*state.goals, *(None,) * (slot.sets - len(state.goals)))
    )
    if last is None:
        return started(
            terms, sets, f"Whatever you reach, next time asks {counted(state.scheme.gain, 'rep')} more on each set."
        )
    verdict = Verdict.ADD_REPS if any(state.met) else Verdict.REPEAT
    # A set of maximum reps cannot be too heavy for its reps: only a set with none at all was.
    anchor = anchor_of(last, slot.sets, Came.MADE if all(map(reaches(1), last.works)) else Came.MISSED)
    return Ask(sets, verdict, partial(_reason, state, last), partial(_next_step, state), last.evidence, anchor)


def _goal(goal: int | None, reached: int | None, gain: int) -> int:
    if goal is None:
        return (reached or 0) + gain
    # At least the old goal: a set that fell short is asked for the same reps again.
    return goal if reached is None or reached < goal else reached + gain


def _reason(state: State, last: Session) -> str:
    done, gain = f"{reps(last.works)} on {day(last.on)}", counted(state.scheme.gain, "rep")
    lifted = last.working_load(state.terms.slot.sets)
    if state.load is not None and all(work.load < state.load for work in last.works):
        return _lighter(last, lifted, state.load)
    short = [str(at) for at, met in enumerate(state.met, 1) if not met]
    if not short:
        return f"{done}, so each set asks {gain} more."
    if len(short) == len(state.met):
        return f"{done}, short of every goal, so the same goals stand."
    sets = "set " + short[0] if len(short) == 1 else f"sets {', '.join(short)}"
    return (
        f"{done}: {sets} missed the goal and {'keeps' if len(short) == 1 else 'keep'} it; the others ask {gain} more."
    )


def _lighter(last: Session, lifted: Load, load: Load) -> str:
    on = day(last.on)
    if last.asked is not None and last.asked <= lifted:
        return f"{reps(last.works)} on {on} at the {stated(last.asked)} asked, so the goals at {stated(load)} stand."
    asked = stated(last.asked or load)
    return f"The sets on {on} were lighter than the {asked} asked ({stated(lifted)}), so the same goals stand."


def _next_step(state: State) -> str:
    goals = "/".join(str(goal) for goal in state.goals)
    return f"Reach {goals} and each set asks {counted(state.scheme.gain, 'rep')} more."
