"""Time or distance: seconds or metres grow up to a bound, then the load goes up and they start over.

advances   every set reached what was asked: longer by the gain; every set at the bound: heavier by the step
a miss     the same again
skipped    fewer sets, all good: the same again
extra      the best sets count, as many as were asked for
heavier    the start reached on every set at more than was asked: the slot goes on from there
No step    at the bound it stays there
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from decimal import Decimal
from functools import partial

from engine.progression.asked import Ask, started, straight
from engine.progression.ceiling import heavier
from engine.progression.load_step import anchor_of
from engine.progression.moved import Moved, rises, same_reason, stands_at, verdict_of
from engine.progression.terms import Terms
from engine.progression.words import all_sets, day, loaded, sets_of, stated
from engine.progression.words import target as told
from engine.progression.work import Came, Good, Session, Work, session_of
from engine.values.load import Load
from engine.values.plan import Metres, Seconds, Target
from engine.values.prescription import Exposure, Verdict
from engine.values.schemes import TimeOrDistance


@dataclass(frozen=True, slots=True)
class State:
    """`goal` is what each set is asked for next, `asked` what the last session was; seconds or metres."""

    scheme: TimeOrDistance
    terms: Terms
    load: Load | None
    goal: Decimal
    asked: Decimal
    moved: Moved | None = None


def start(scheme: TimeOrDistance, terms: Terms) -> State:
    """The state before any session."""
    first = _first(terms)
    return State(scheme, terms, terms.start_load, first, first)


def advance(state: State, exposure: Exposure) -> State:
    """The state after one more session."""
    terms, scheme = state.terms, state.scheme
    session = session_of(exposure, terms)
    if session is None:
        return state
    sets, first = terms.slot.sets, _first(terms)
    before = stands_at(state.load, session, sets, terms, first=state.moved is None)
    came = session.came(sets, _lasts(terms, state.goal))
    after, goal = before, _longer(state, session, before, state.goal)
    held = session.made_at(sets, _lasts(terms, first))
    if held is not None and before < held:
        after, goal = held, _longer(state, session, held, first)
    made, step = session.made_at(sets, _lasts(terms, scheme.bound)), None
    if made is not None and scheme.step is not None:
        step = heavier(made, scheme.step, terms)
        if after < step.load:
            after, goal = step.load, first
    moved = Moved(session, came, before, after, made, step, state.moved is None and before != state.load)
    return replace(state, load=after, goal=goal, asked=state.goal, moved=moved)


def ask(state: State) -> Ask:
    """What to do next."""
    terms, moved, load = state.terms, state.moved, state.load
    slot = terms.slot
    sets = straight(terms, slot.sets, _target(terms, state.goal), load)
    if moved is None or load is None:
        return started(terms, sets, _next_step(state))
    longer = Verdict.ADD_REPS if state.goal > state.asked else Verdict.REPEAT
    return Ask(
        sets,
        verdict_of(moved, slot.sets, longer),
        partial(_reason, state, moved),
        partial(_next_step, state),
        moved.session.evidence,
        anchor_of(moved.session, slot.sets, Came.MADE),
        moved.taken.notes if moved.taken else (),
    )


def _first(terms: Terms) -> Decimal:
    target = terms.slot.target
    return target.count if isinstance(target, Seconds | Metres) else Decimal(1)


def _target(terms: Terms, goal: Decimal) -> Target:
    return Metres(goal) if isinstance(terms.slot.target, Metres) else Seconds(goal)


def _measure(terms: Terms, work: Work) -> Decimal:
    return work.metres if isinstance(terms.slot.target, Metres) else work.seconds


def _lasts(terms: Terms, least: Decimal) -> Good:
    return lambda work: _measure(terms, work) >= least and not work.missed


def _longer(state: State, session: Session, load: Load, goal: Decimal) -> Decimal:
    """What is asked next at this load: past what every set reached, at most the bound."""
    terms, sets = state.terms, state.terms.slot.sets
    lasted = sorted((_measure(terms, w) for w in session.works if load <= w.load and not w.missed), reverse=True)
    if len(lasted) < sets or lasted[sets - 1] < goal:
        return goal
    return max(goal, min(lasted[sets - 1] + state.scheme.gain, state.scheme.bound))


def _reason(state: State, moved: Moved) -> str:
    terms, sets, on = state.terms, state.terms.slot.sets, day(moved.session.on)
    if moved.up and moved.made is not None and moved.made < moved.after:
        bound = told(_target(terms, state.scheme.bound))
        return f"{all_sets(sets)} of {bound} made on {on}, so the load {rises(moved.made, moved.after)}."
    if moved.up:
        more = f"more than the {stated(moved.session.asked or moved.before)} asked"
        return f"{stated(moved.after)} was used on {on}, {more}, so it goes on from there."
    asked = told(_target(terms, state.asked))
    if state.goal > state.asked:
        return f"{all_sets(sets)} of {asked} made on {on}, so each set asks {told(_target(terms, state.goal))}."
    if moved.came is Came.MISSED:
        return f"{_lasted(state, moved)} on {on}, short of {asked}, so {asked} stays."
    if moved.came is Came.FEWER:
        return f"{len(moved.session.works)} of {sets} sets done on {on}, so {asked} stays."
    if state.scheme.step is None and moved.made is not None and moved.before <= moved.made:
        return f"{all_sets(sets)} of {asked} made on {on}: that is the bound, and it stays there."
    return same_reason(moved, sets, asked)


def _lasted(state: State, moved: Moved) -> str:
    return ", ".join(told(_target(state.terms, _measure(state.terms, work))) for work in moved.session.works)


def _next_step(state: State) -> str:
    terms, scheme, sets = state.terms, state.scheme, state.terms.slot.sets
    make = f"Make {sets_of(sets, _target(terms, state.goal))}"
    if state.goal < scheme.bound:
        longer = min(state.goal + scheme.gain, scheme.bound)
        return f"{make} to go to {told(_target(terms, longer))}."
    if scheme.step is None:
        return f"{make} again: that is the bound."
    if state.load is None:
        return f"{make}, and the load goes up {terms.step(scheme.step)}."
    up = heavier(state.load, scheme.step, terms).load
    if up <= state.load:
        return f"{make} again: nothing heavier can be loaded."
    return f"{make}, then it is {sets_of(sets, _target(terms, _first(terms)))} {loaded(up)}."
