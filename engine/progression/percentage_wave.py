"""Percentage wave: session by session a share of a training maximum; each turn of the wave moves the maximum.

advances   at the turn's end, by the last set at the working load: its reps made, the maximum goes up by the step
a miss     those reps short: the maximum comes down 10 %, rounded; common practice, no source
skipped    fewer sets, the last of them good: the wave goes on, the maximum stays
extra      lighter sets after the last heavy one are not looked at
heavier    changes nothing: the maximum climbs by its step alone
lighter    the maximum climbs no higher than what was lifted vouches for

The wave goes on by sessions done, not by the calendar: a week missed repeats nothing and skips nothing.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from decimal import Decimal
from functools import partial

from engine.progression.asked import Ask, straight
from engine.progression.ceiling import above
from engine.progression.load_step import anchor_of
from engine.progression.stall import eased
from engine.progression.terms import Terms, least_reps
from engine.progression.words import day, percent, sets_of, stated
from engine.progression.work import Session, reaches, session_of
from engine.values.load import Load
from engine.values.prescription import Exposure, Verdict
from engine.values.schemes import PercentageWave

DOWN = Decimal("0.10")


@dataclass(frozen=True, slots=True)
class State:
    """`place` counts the sessions done; `was` is the maximum before the last session, where that ended a turn."""

    scheme: PercentageWave
    terms: Terms
    maximum: Load
    place: int = 0
    was: Load | None = None
    last: Session | None = None

    @property
    def share(self) -> Decimal:
        """The share of the session to come."""
        return self.scheme.shares[self.place % len(self.scheme.shares)]

    @property
    def ends_turn(self) -> bool:
        """Whether the session to come is the last of its turn."""
        return (self.place + 1) % len(self.scheme.shares) == 0


def start(scheme: PercentageWave, terms: Terms) -> State:
    """The state before any session."""
    maximum = scheme.training_maximum
    # In the plan's own unit a maximum stands as written; in another it is the nearest that can be loaded.
    return State(scheme, terms, terms.of(maximum) if maximum.unit is terms.unit else terms.nearest(terms.of(maximum)))


def advance(state: State, exposure: Exposure) -> State:
    """The state after one more session."""
    session = session_of(exposure, state.terms)
    if session is None:
        return state
    moved = _moved(state, session) if state.ends_turn else state.maximum
    was = state.maximum if state.ends_turn else None
    return replace(state, maximum=moved, place=state.place + 1, was=was, last=session)


def ask(state: State) -> Ask:
    """What to do next."""
    terms, last = state.terms, state.last
    slot = terms.slot
    sets = straight(terms, slot.sets, slot.target, _asked_load(state))
    verdict = Verdict.START if last is None else _verdict(state)
    if last is None:
        return Ask(sets, verdict, partial(_reason, state), partial(_next_step, state), by_plan=True)
    anchor = anchor_of(last, slot.sets, last.came(slot.sets, reaches(least_reps(slot.target))))
    return Ask(sets, verdict, partial(_reason, state), partial(_next_step, state), last.evidence, anchor, by_plan=True)


def _asked_load(state: State) -> Load:
    return state.terms.nearest(state.terms.load(state.maximum.amount * state.share))


def _moved(state: State, session: Session) -> Load:
    terms, maximum, sets = state.terms, state.maximum, state.terms.slot.sets
    final = session.last_heavy(sets)
    if final.reps < least_reps(terms.slot.target) or final.missed:
        return eased(maximum, DOWN, terms)
    if len(session.works) < sets:
        return maximum
    # Loads are rounded, so the load lifted vouches for any maximum whose share is rounded to it.
    over = above(final.load, terms)
    vouched = maximum
    if over is not None:
        vouched = min(maximum, terms.load((final.load.amount + over.amount) / 2 / state.share))
    return max(maximum, vouched + terms.step(state.scheme.step))


def _verdict(state: State) -> Verdict:
    if state.was is None or state.was == state.maximum:
        return Verdict.FOLLOW
    return Verdict.ADD_LOAD if state.was < state.maximum else Verdict.RESET


def _reason(state: State) -> str:
    shares = state.scheme.shares
    here = f"Session {state.place % len(shares) + 1} of {len(shares)} in the wave: {percent(state.share)}"
    of = f"{here} of a training maximum of {stated(state.maximum)}."
    if state.last is None or state.was is None:
        return of
    final = state.last.last_heavy(state.terms.slot.sets)
    done = f"The last set made {final.reps} on {day(state.last.on)}"
    if state.was < state.maximum:
        return f"{done}, so the training maximum goes up to {stated(state.maximum)}. {of}"
    if state.maximum < state.was:
        return f"{done}, short of {least_reps(state.terms.slot.target)}, so the training maximum comes down. {of}"
    if len(state.last.works) < state.terms.slot.sets:
        return f"Too few sets on {day(state.last.on)}, so the training maximum stays. {of}"
    return f"{done}, at {stated(final.load)}: too light to raise the training maximum. {of}"


def _next_step(state: State) -> str:
    slot, step = state.terms.slot, state.terms.step(state.scheme.step)
    if state.ends_turn:
        return (
            f"Make {sets_of(slot.sets, slot.target)}, the last set above all, and the training maximum goes up {step}."
        )
    following = state.scheme.shares[(state.place + 1) % len(state.scheme.shares)]
    return f"Next time {percent(following)} of {stated(state.maximum)}."
