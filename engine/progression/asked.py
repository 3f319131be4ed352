"""What a rule asks for before anything that lies over the rules has its say."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

from engine.progression.terms import Terms
from engine.progression.words import stated
from engine.progression.work import Came
from engine.values.ids import SetId
from engine.values.load import Load
from engine.values.plan import FindIt, Target
from engine.values.prescription import Held, SetTarget, Verdict

NOT_FOUND = "No load is planned: work up to one that fits the reps, and the log decides from then on."


@dataclass(frozen=True, slots=True)
class Anchor:
    """The load last really lifted, which pain and the ceiling are measured from, and how that session came out."""

    load: Load
    came: Came = Came.MADE

    @property
    def missed(self) -> bool:
        return self.came is Came.MISSED


Words = str | Callable[[], str]
"""What an ask has to say, or how to say it: of two asks that are compared one is never told."""


def said(words: Words) -> str:
    """The words themselves."""
    return words if isinstance(words, str) else words()


@dataclass(frozen=True, slots=True)
class Ask:
    """Shape: as in a prescription. `anchor` None: there was no session yet.

    `by_plan`: the loads rise and fall by the plan's own shares, so no ceiling is laid on them.
    `total`: the repetitions that all sets together are to reach, under a rep total.
    `of_step`: what the step up has to say for itself: held back, steep, or not to be loaded as the plan states it.
    """

    sets: tuple[SetTarget, ...]
    verdict: Verdict
    reason: Words
    next_step: Words
    evidence: tuple[SetId, ...] = ()
    anchor: Anchor | None = None
    of_step: tuple[tuple[Held, str], ...] = ()
    by_plan: bool = False
    total: int | None = None


@dataclass(frozen=True, slots=True)
class Laid:
    """An ask with what has been laid over it so far: the marks, and a sentence for each."""

    ask: Ask
    held: tuple[Held, ...] = ()
    notes: tuple[str, ...] = ()

    def with_sets(self, sets: tuple[SetTarget, ...], held: Held, note: str) -> Laid:
        """The same with other sets, marked and explained."""
        return Laid(replace(self.ask, sets=sets), (*self.held, held), (*self.notes, note))

    def noted(self, held: Held, note: str) -> Laid:
        """The same sets, marked and explained."""
        return self.with_sets(self.ask.sets, held, note)


def each_load(sets: Sequence[SetTarget], change: Callable[[Load], Load]) -> tuple[SetTarget, ...]:
    """The sets with every load changed; sets without a load stay."""
    changed: dict[int, SetTarget] = {}  # straight sets are one value, so it is changed once
    for one in sets:
        if id(one) not in changed:
            changed[id(one)] = one if one.load is None else replace(one, load=change(one.load))
    return tuple([changed[id(one)] for one in sets])


def straight(terms: Terms, sets: int, target: Target, load: Load | None) -> tuple[SetTarget, ...]:
    """So many sets alike."""
    return (SetTarget(target, told(terms, load), terms.slot.effort),) * sets


def told(terms: Terms, load: Load | None) -> Load | None:
    """The load of a set target: nothing where the plan has none and body weight alone does it."""
    return None if load is None or (terms.slot.load is None and load.amount == 0) else load


def started(terms: Terms, sets: Sequence[SetTarget], next_step: str) -> Ask:
    """What a slot without a session asks for."""
    if isinstance(terms.slot.load, FindIt):
        return Ask(tuple(sets), Verdict.FIND_LOAD, NOT_FOUND, next_step)
    planned = isinstance(terms.slot.load, Load)
    first = f"the plan starts at {_first(terms)}" if planned else "do what the plan states"
    return Ask(tuple(sets), Verdict.START, f"First session of this exercise in the block: {first}.", next_step)


def _first(terms: Terms) -> str:
    load = terms.start_load
    return "the load it states" if load is None else stated(load)
