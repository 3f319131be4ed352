"""What one session did to the load a slot stands at, kept so that the next prescription can say why.

Decided, for every rule whose load climbs by steps:
- The first session decides the start: lifted lighter than the plan states, the slot goes on from what was lifted. A
  plan's first load is a guess, the log is not. "Find it" starts at the first session's working load.
- Heavier than asked and made: the slot goes on from the heavier load.
- Lighter than asked and made: the load asked for stands. What was made is never taken back: a light day costs nothing.
- A load never comes down but by a reset. The ceiling over the rules keeps the next ask near what was really lifted.
"""

from __future__ import annotations

from typing import NamedTuple

from engine.progression.ceiling import Step
from engine.progression.terms import Terms
from engine.progression.words import all_sets, day, reps, stated
from engine.progression.work import Came, Session
from engine.values.load import Load
from engine.values.prescription import Verdict


class Moved(NamedTuple):
    """What a session moved; a named tuple, as one is made for each session of each rule's fold.

    `before` is what the session is measured against, `after` what the slot stands at since.

    `made` is the load the step went up from. `found`: it was the first session, and what was lifted took the place of
    the plan's load.
    """

    session: Session
    came: Came
    before: Load
    after: Load
    made: Load | None = None
    step: Step | None = None
    found: bool = False

    @property
    def up(self) -> bool:
        return self.before < self.after

    @property
    def taken(self) -> Step | None:
        """The step up, where that is what raised the load."""
        return self.step if self.up and self.step is not None and self.step.load == self.after else None

    def comes_back(self, lifted: Load) -> bool:
        """Whether the session asked less than the slot stands at (time away, the ceiling) and that was made."""
        asked = self.session.asked
        return self.came is Came.MADE and asked is not None and asked <= lifted < self.before


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
        more = f"more than the {stated(moved.session.asked or moved.before)} asked"
        return f"{stated(moved.after)} was lifted on {on}, {more}, so it goes on from there."
    at = "" if made == moved.before else f" at {stated(made)}"
    return f"{all_sets(sets)} of {need} made{at} on {on}, so the load {rises(made, moved.after)}."


def same_reason(moved: Moved, sets: int, need: str) -> str:
    """Why the load stays: too few sets, too few reps, all of it lighter than asked, or nothing heavier to load."""
    session, lifted = moved.session, moved.session.working_load(sets)
    on, at = day(session.on), "" if lifted == moved.before else f" at {stated(lifted)}"
    match moved.came:
        case Came.FEWER:
            return f"{len(session.works)} of {sets} sets done{at} on {on}, so {stays(moved, lifted)}."
        case Came.MISSED:
            return f"{reps(session.works)}{at} on {on}, short of {need}, so {stays(moved, lifted)}."
        case Came.MADE:
            done = f"{all_sets(sets)} of {need} made on {on}"
            if (moved.made or lifted) < moved.before:
                return lighter_reason(moved, moved.made or lifted, done)
            return f"{done}, and nothing heavier can be loaded, so {stated(moved.after)} stays."


def stays(moved: Moved, lifted: Load) -> str:
    """That a load stays; where less was lifted, only that nothing goes up, for the ceiling says what is asked."""
    if moved.found:
        return f"it goes on from {stated(moved.after)}"
    if moved.session.asked is not None and moved.after <= lifted:
        return f"it goes on at {stated(moved.after)}"
    return f"{stated(moved.after)} stays" if moved.after <= lifted else "nothing goes up"


def lighter_reason(moved: Moved, lifted: Load, done: str) -> str:
    """What follows from a session made lighter than the slot stands at, measured by what that session really asked."""
    on, stand, asked = day(moved.session.on), stated(moved.after), moved.session.asked
    if moved.comes_back(lifted):
        return f"{done} at the {stated(lifted)} {'asked' if asked == lifted else 'lifted'}, so it goes on to {stand}."
    lighter = f"The sets made on {on} were lighter than the {stated(asked or moved.after)} asked ({stated(lifted)})"
    return f"{lighter}, so {stand} is asked again." if asked is None else f"{lighter}; {stand} is still to come."


def verdict_of(moved: Moved, sets: int, otherwise: Verdict = Verdict.REPEAT) -> Verdict:
    """Add load, or what the rule says when the load stays."""
    back = moved.comes_back(moved.session.working_load(sets))
    return Verdict.ADD_LOAD if moved.up or back else otherwise


def rises(before: Load, after: Load) -> str:
    """How a load rises: ``goes up 2.5 kg``, or with help: ``goes from -20 kg to -15 kg``."""
    if before.amount < 0:
        return f"goes from {stated(before)} to {stated(after)}"
    return f"goes up {after - before}"
