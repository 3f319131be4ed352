"""One step heavier, and how large one step may be.

Decided: a step lands on the loadable load nearest to the plan's step, at most 10 % above what was lifted. Where even
the smallest loadable step is more (a 12 kg dumbbell after 10 kg), that smallest step is taken all the same, for there
is no other way up, and the prescription says so. Where the plan's step is too small to load, the smallest loadable one
stands in. Load added to body weight has no such share: the body weight beneath it is not known here.

Source: 2 to 10 % when the goal is beaten: American College of Sports Medicine 2009 (Ratamess et al.), Med Sci Sports
Exerc 41(3):687-708. The lower end is not enforced: a smaller step is slower, never unsafe.
"""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal

from engine.progression.asked import Anchor, Laid, each_load
from engine.progression.terms import Terms
from engine.values.load import SMALLEST_STEP, Basis, Load
from engine.values.prescription import Held

CEILING = Decimal("0.10")
STEEP = "That is more than the usual 10 %: nothing between can be loaded, so expect fewer reps at first."


@dataclass(frozen=True, slots=True)
class Step:
    """A step up from a load; `steep`: more than the ceiling, because nothing lighter can be loaded."""

    load: Load
    steep: bool = False


def heavier(load: Load, step: Load, terms: Terms) -> Step:
    """The next load after `load` was made; `load` itself where nothing heavier can be loaded."""
    wanted = terms.nearest(load + terms.of(step))
    if load < wanted and not is_steep(load, wanted):
        return Step(wanted)
    smallest = above(load, terms)
    if smallest is None:
        return Step(load)
    most = at_ceiling(load, terms)
    if most is not None and most < wanted:
        wanted = most
    return Step(smallest, is_steep(load, smallest)) if wanted < smallest else Step(wanted)


def above(load: Load, terms: Terms) -> Load | None:
    """The lightest loadable load above one; None at the heaviest."""
    hair = SMALLEST_STEP * 2
    return terms.loadable.at_least(terms.load(load.amount + hair))


def at_ceiling(load: Load, terms: Terms) -> Load | None:
    """The heaviest loadable load within the ceiling over `load`; None where no ceiling holds."""
    if load.basis is Basis.BODY:
        return None
    return terms.down(terms.load(load.amount * (1 + CEILING)))


def is_steep(before: Load, after: Load) -> bool:
    """Whether a step is more than the ceiling."""
    return before.basis is not Basis.BODY and after.amount > before.amount * (1 + CEILING)


def under_ceiling(laid: Laid, terms: Terms) -> Laid:
    """The ask with no load too far above what was last lifted, nor above a load that was just missed."""
    ask = laid.ask
    if ask.anchor is not None and not ask.by_plan:
        loads = [one.load for one in ask.sets if one.load is not None]
        most = _most_after(ask.anchor, terms) if any(_is_over(ask.anchor, load) for load in loads) else None
        if most is not None and any(most < load for load in loads):
            why = "what was just missed" if ask.anchor.missed else f"10 % over the {ask.anchor.load} last lifted"
            sets = each_load(ask.sets, lambda load: min(load, most))
            return laid.with_sets(sets, Held.CEILING, f"No more than {why}.")
    return laid.noted(Held.ROUNDING, STEEP) if ask.steep else laid


def _is_over(anchor: Anchor, load: Load) -> bool:
    return anchor.load < load if anchor.missed else is_steep(anchor.load, load)


def _most_after(anchor: Anchor, terms: Terms) -> Load | None:
    if anchor.missed:
        return terms.nearest(anchor.load)
    most, smallest = at_ceiling(anchor.load, terms), above(anchor.load, terms)
    return None if most is None or smallest is None else max(most, smallest)
