"""One step heavier, and how large one step may be.

Decided: a step lands on the loadable load nearest to the plan's step, at most 10 % above what was lifted. Where even
the smallest loadable step is more (a 12 kg dumbbell after 10 kg), that smallest step is taken all the same, for there
is no other way up. Where the plan's step is too small to load, the smallest loadable one stands in. Whatever is not the
plan's own step is said. A session cut short or missed is no ground for more load than it had. Load added to body weight
has no such share: the body weight beneath it is not known here.

Source: 2 to 10 % when the goal is beaten: American College of Sports Medicine 2009 (Ratamess et al.), Med Sci Sports
Exerc 41(3):687-708. The lower end is not enforced: a smaller step is slower, never unsafe.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from decimal import Decimal
from typing import NamedTuple

from engine.progression.asked import Anchor, Laid, each_load
from engine.progression.terms import Terms
from engine.progression.words import stated
from engine.progression.work import Came
from engine.values.load import SMALLEST_STEP, Basis, Load
from engine.values.prescription import Held

CEILING = Decimal("0.10")
STEEP = "That is more than the usual 10 %: nothing between can be loaded, so expect fewer reps at first."


class Step(NamedTuple):
    """A step up from a load; `steep`: more than the ceiling, because nothing lighter can be loaded.

    `notes`: what keeps it from being the plan's own step, each with its mark.
    """

    load: Load
    steep: bool = False
    notes: tuple[tuple[Held, str], ...] = ()


def heavier(load: Load, step: Load, terms: Terms) -> Step:
    """The next load after `load` was made; `load` itself where nothing heavier can be loaded."""
    wanted = terms.nearest(load + terms.of(step))
    if load < wanted and not is_steep(load, wanted):
        return Step(wanted)
    smallest = above(load, terms)
    if smallest is None:
        return Step(load)
    most = at_ceiling(load, terms)
    found = wanted if most is None or wanted <= most else max(most, smallest)
    found = max(found, smallest)
    return Step(found, is_steep(load, found), tuple(_notes(load, wanted, found, step, terms)))


def _notes(before: Load, wanted: Load, found: Load, step: Load, terms: Terms) -> Iterator[tuple[Held, str]]:
    if found < wanted:
        yield Held.CEILING, f"The plan's +{terms.step(step)} is more than 10 % of {stated(before)}."
    elif wanted <= before:
        yield Held.ROUNDING, f"The plan's +{terms.step(step)} cannot be loaded."
    if is_steep(before, found):
        yield Held.ROUNDING, STEEP


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
        top = max([one.load for one in ask.sets if one.load is not None], default=None)
        most = None if top is None or not _is_over(ask.anchor, top) else _most_after(ask.anchor, terms)
        if most is not None and top is not None and most < top:
            sets = each_load(ask.sets, lambda load: min(load, most))
            return laid.with_sets(sets, Held.CEILING, _held_back(ask.anchor, most))
    for held, note in ask.of_step:
        laid = laid.noted(held, note)
    return laid


def not_steep(laid: Laid) -> Laid:
    """The same without a word on how steep the step is: the session is made lighter than it."""
    notes = tuple(one for one in laid.ask.of_step if one[1] != STEEP)
    return laid if notes == laid.ask.of_step else replace(laid, ask=replace(laid.ask, of_step=notes))


def _held_back(anchor: Anchor, most: Load) -> str:
    lifted = stated(anchor.load)
    match anchor.came:
        case Came.MISSED:
            return f"No more than the {lifted} just missed."
        case Came.FEWER:
            return f"No more than the {lifted} of last time until all sets are made."
        case Came.MADE:
            return f"That would be more than 10 % over the {lifted} last lifted, so {stated(most)} for now."


def _is_over(anchor: Anchor, load: Load) -> bool:
    return is_steep(anchor.load, load) if anchor.came is Came.MADE else anchor.load < load


def _most_after(anchor: Anchor, terms: Terms) -> Load | None:
    if anchor.came is not Came.MADE:
        return terms.nearest(anchor.load)
    most, smallest = at_ceiling(anchor.load, terms), above(anchor.load, terms)
    return None if most is None or smallest is None else max(most, smallest)
