"""One session's sets of a slot as the rules see them.

Decided here, for every rule:
- Warm-up, drop and rest-pause sets are left out: a prescription asks for work sets, and a set that continues another
  proves nothing of its own.
- Left and right of a one-sided exercise make one set, as good as the weaker side.
- A set whose load was not told is left out where the slot has a load: nothing is proved by a guess.
- A load counts as the loadable one not above it; told in another unit than the slot's, as the loadable one nearest
  to it (132 lb for 60 kg, 180 lb for 82.5 kg).
- Extra sets count: a session is as good as its best sets, as many as were asked for. So a ramp that nobody marked as
  warm-up takes nothing away.
- Fewer sets than asked, all of them good, are neither a success nor a miss.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import date
from decimal import Decimal
from enum import Enum
from operator import attrgetter
from typing import NamedTuple

from engine.progression.terms import Terms
from engine.values.ids import SetId
from engine.values.load import Load
from engine.values.prescription import Exposure
from engine.values.sets import SetKind, Side

NOTHING = Decimal(0)


class Work(NamedTuple):
    """One work set; a named tuple, for a prescription makes hundreds of them and a dataclass takes three times as long.

    Units: those of the slot; body weight alone is 0. `load` is what it counts as, `lifted` what was told.
    """

    load: Load
    lifted: Load
    reps: int
    seconds: Decimal = NOTHING
    metres: Decimal = NOTHING
    missed: bool = False
    rir: Decimal | None = None


AMOUNT = attrgetter("load.amount")
"""Loads of one slot are in one unit, so their amounts order them."""

Good = Callable[[Work], bool]
"""Whether a set met what was asked of it, its load aside."""


class Came(Enum):
    """How a session came out against what was asked."""

    MADE = "made"
    FEWER = "fewer sets, all good"
    MISSED = "missed"


class Session(NamedTuple):
    """One session of a slot as rules see it; a named tuple, as one is made for each session of each rule's fold.

    Shape: `works` in the order done. `asked` as in an exposure."""

    on: date
    works: tuple[Work, ...]
    evidence: tuple[SetId, ...]
    asked: Load | None = None

    def made_at(self, sets: int, good: Good) -> Load | None:
        """The heaviest load at which so many sets were good; None when fewer were."""
        made = [work for work in self.works if good(work)]
        return sorted(made, key=AMOUNT, reverse=True)[sets - 1].load if len(made) >= sets else None

    def working_load(self, sets: int) -> Load:
        """The load that so many sets reached, or the lightest where fewer were done; reps do not matter to it."""
        return sorted(self.works, key=AMOUNT, reverse=True)[min(sets, len(self.works)) - 1].load

    def last_heavy(self, sets: int) -> Work:
        """The last set at the working load or more."""
        heavy = self.working_load(sets)
        return next(work for work in reversed(self.works) if heavy <= work.load)

    def came(self, sets: int, good: Good) -> Came:
        """How the session came out, its load aside."""
        if sum(map(good, self.works)) >= sets:
            return Came.MADE
        fewer = len(self.works) < sets and all(map(good, self.works))
        return Came.FEWER if fewer else Came.MISSED


def reaches(reps: int) -> Good:
    """Good: at least so many reps, and not told as missed."""
    return lambda work: work.reps >= reps and not work.missed


def session_of(exposure: Exposure, terms: Terms) -> Session | None:
    """The session as rules see it; None where nothing of it counts."""
    left: list[Work] = []
    right: list[Work] = []
    works: list[Work] = []
    told: Load | None = None
    counts: tuple[Load, Load] | None = None
    for record in exposure.sets:
        done = record.done
        if done.kind is SetKind.WORK and (done.load is not None or terms.slot.load is None):
            # The sets of a session mostly share their load.
            if counts is None or (done.load is not told and done.load != told):
                told, counts = done.load, _counted(done.load, terms)
            side = works if done.side is None else left if done.side is Side.LEFT else right
            rir = NOTHING if done.failure or done.missed else None if done.effort is None else done.effort.rir
            seconds, metres = done.seconds or NOTHING, done.metres or NOTHING
            side.append(Work(counts[0], counts[1], done.reps, seconds, metres, done.missed, rir))
    if left or right:
        works.extend(_paired(left, right))
    return Session(exposure.on, tuple(works), exposure.evidence, exposure.asked) if works else None


def loads_of(exposure: Exposure, terms: Terms) -> list[Load]:
    """What was lifted in each work set that counts, heaviest first; without its reps, so quicker than a session."""
    if any(record.done.side is not None for record in exposure.sets):
        session = session_of(exposure, terms)
        found = [] if session is None else [work.lifted for work in session.works]
    else:
        told = [
            record.done.load
            for record in exposure.sets
            if record.done.kind is SetKind.WORK and (record.done.load is not None or terms.slot.load is None)
        ]
        found = [terms.load(NOTHING) if load is None else _meant(load, terms) for load in told]
    return sorted(found, key=attrgetter("amount"), reverse=True)


def _paired(left: list[Work], right: list[Work]) -> Iterator[Work]:
    for at in range(max(len(left), len(right))):
        sides = [side[at] for side in (left, right) if at < len(side)]
        yield Work(
            min(work.load for work in sides),
            min(work.lifted for work in sides),
            min(work.reps for work in sides),
            min(work.seconds for work in sides),
            min(work.metres for work in sides),
            any(work.missed for work in sides),
            min((work.rir for work in sides if work.rir is not None), default=None),
        )


def _counted(told: Load | None, terms: Terms) -> tuple[Load, Load]:
    """What a load counts as, and what was lifted."""
    if told is None:
        nothing = terms.load(NOTHING)
        return nothing, nothing
    lifted = _meant(told, terms)
    return terms.down(lifted), lifted


def _meant(told: Load, terms: Terms) -> Load:
    load = terms.of(told)
    return load if told.unit is terms.unit else terms.nearest(load)
