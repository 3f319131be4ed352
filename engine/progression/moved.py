"""What one session did to the load a slot stands at, kept so that the next prescription can say why.

Decided, for every rule whose load climbs by steps:
- The first session decides the start: lifted lighter than the plan states, the slot goes on from what was lifted. A
  plan's first load is a guess, the log is not. "Find it" starts at the first session's working load.
- Heavier than asked and made: the slot goes on from the heavier load.
- Lighter than asked and made: the load asked for stands. What was made is never taken back: a light day costs nothing.
- A load never comes down but by a reset. The ceiling over the rules keeps the next ask near what was really lifted.
"""

from __future__ import annotations

from dataclasses import dataclass

from engine.progression.terms import Terms
from engine.progression.words import all_sets, day, reps
from engine.progression.work import Came, Session
from engine.values.load import Basis, Load
from engine.values.prescription import Verdict


@dataclass(frozen=True, slots=True)
class Moved:
    """`before` was asked in the session, `after` is asked next; `made` is the load the step went up from."""

    session: Session
    came: Came
    before: Load
    after: Load
    made: Load | None = None
    steep: bool = False

    @property
    def up(self) -> bool:
        return self.before < self.after


def stands_at(load: Load | None, session: Session, sets: int, terms: Terms, *, first: bool) -> Load:
    """The load a session is measured against: what was asked, or in the first session what was lifted if lighter."""
    if load is not None and not first:
        return load
    lifted = terms.nearest(session.working_load(sets))
    return lifted if load is None else min(load, lifted)


def up_reason(moved: Moved, sets: int, need: str) -> str:
    """Why the load goes up."""
    on, made = day(moved.session.on), moved.made
    if made is None or moved.after <= made:
        return f"{moved.after} was lifted on {on}, more than the {moved.before} asked, so it goes on from there."
    at = "" if made == moved.before else f" at {made}"
    return f"{all_sets(sets)} of {need} made{at} on {on}, so the load {rises(made, moved.after)}."


def same_reason(moved: Moved, sets: int, need: str) -> str:
    """Why the load stays: too few sets, too few reps, all of it lighter than asked, or nothing heavier to load."""
    session, stays = moved.session, stated(moved.after)
    on, lifted = day(session.on), session.working_load(sets)
    match moved.came:
        case Came.FEWER:
            return f"{len(session.works)} of {sets} sets done on {on}, so {stays} stays."
        case Came.MISSED:
            return f"{reps(session.works)} on {on}, short of {need}, so {stays} stays."
        case Came.MADE:
            if moved.made is None or moved.made < moved.before:
                at = stated(moved.made or lifted)
                return f"The sets made on {on} were lighter than the {stays} asked ({at}), so {stays} is asked again."
            return f"{all_sets(sets)} of {need} made on {on}, and nothing heavier can be loaded, so {stays} stays."


def stated(load: Load) -> str:
    """A load in a sentence: body weight is not called 0 kg."""
    return "body weight" if load.basis is Basis.BODY and load.amount == 0 else str(load)


def verdict_of(moved: Moved, otherwise: Verdict = Verdict.REPEAT) -> Verdict:
    """Add load, or what the rule says when the load stays."""
    return Verdict.ADD_LOAD if moved.up else otherwise


def rises(before: Load, after: Load) -> str:
    """How a load rises: ``goes up 2.5 kg``, or with help: ``goes from -20 kg to -15 kg``."""
    return f"goes from {before} to {after}" if before.amount < 0 else f"goes up {after - before}"
