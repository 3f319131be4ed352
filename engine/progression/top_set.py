"""Top set and back-offs: a top set that climbs like a load step, then back-off sets at a share of what was really done.

advances   the top set reached its reps: heavier by the step
a miss     the same again; after three running misses down 10 % (stall.py)
back-offs  planned from the top set asked; once today's top set is logged, from what was lifted, rounded to the nearest
skipped, extra back-offs   change nothing: the top set alone decides, the heaviest set of the session
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from engine.loading.loadable import Loadable
from engine.progression import load_step
from engine.progression.asked import Ask, said
from engine.progression.terms import Terms
from engine.progression.words import percent
from engine.progression.work import Session, session_of
from engine.values.load import SMALLEST_STEP, Load
from engine.values.plan import Reps
from engine.values.prescription import Exposure, Prescription, SetTarget
from engine.values.schemes import LoadStep, TopSetBackOff


@dataclass(frozen=True, slots=True)
class State:
    """`top` is the top set's own progression."""

    scheme: TopSetBackOff
    top: load_step.State


def start(scheme: TopSetBackOff, terms: Terms) -> State:
    """The state before any session."""
    return State(scheme, load_step.start(LoadStep(scheme.step), terms))


def advance(state: State, exposure: Exposure) -> State:
    """The state after one more session."""
    session = session_of(exposure, state.top.terms)
    if session is None:
        return state
    heaviest = session.working_load(1)
    tops = tuple(work for work in session.works if heaviest <= work.load)
    return State(
        state.scheme, load_step.after_session(state.top, Session(session.on, tops, session.evidence, session.asked))
    )


def ask(state: State) -> Ask:
    """What to do next: the top set, then the back-offs."""
    top = load_step.ask(state.top)
    terms = state.top.terms
    back = _back_off(state.scheme, top.sets[0], terms.loadable)
    return replace(top, sets=(*top.sets, *(back,) * state.scheme.back_offs), reason=lambda: _reason(state, top))


def after_top_set(asked: Prescription, scheme: TopSetBackOff, lifted: Load, loadable: Loadable) -> Prescription:
    """The prescription with its back-offs moved to a share of the top set as it was really lifted today."""
    top = asked.sets[0]
    if lifted == top.load or len(asked.sets) == 1:
        return asked
    done = replace(top, load=lifted)
    backs = (_back_off(scheme, done, loadable),) * (len(asked.sets) - 1)
    return replace(asked, sets=(top, *backs))


def _reason(state: State, top: Ask) -> str:
    return f"{said(top.reason)} Back-offs take {percent(state.scheme.share)} of the top set you do."


def _back_off(scheme: TopSetBackOff, top: SetTarget, loadable: Loadable) -> SetTarget:
    target = top.target if scheme.back_off_reps is None else Reps(scheme.back_off_reps)
    if top.load is None:
        return replace(top, target=target)
    share = replace(top.load, amount=(top.load.amount * scheme.share).quantize(SMALLEST_STEP))
    return replace(top, target=target, load=loadable.nearest(share))
