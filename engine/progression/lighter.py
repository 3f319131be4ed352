"""What makes a session lighter than its rule asks: a deload week, time away, or both, whichever takes more off.

Decided: a deload is a target, so it is rounded to the nearest load; time away is a matter of care, so it is rounded
down. Rounding that moves the load by more than half the smallest step is told.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from decimal import Decimal

from engine.progression.asked import Laid
from engine.progression.deload import deload_sets, without_load
from engine.progression.layoff import FULL, layoff_share
from engine.progression.rounding import rounded
from engine.progression.stall import eased, lowered
from engine.progression.terms import Terms
from engine.progression.words import percent, stated
from engine.values.load import Load
from engine.values.plan import Deload
from engine.values.prescription import Held, SetTarget


@dataclass(frozen=True, slots=True)
class _Share:
    """The share of a load that is taken; `down`: rounded down."""

    share: Decimal
    down: bool
    terms: Terms

    def of(self, one: SetTarget) -> SetTarget:
        if one.load is None:
            return one
        return replace(one, load=(lowered if self.down else eased)(one.load, 1 - self.share, self.terms))

    def told(self, sets: tuple[SetTarget, ...]) -> str:
        """``90 % of the load``, with the rounding of the first set where that is worth telling."""
        load = next((one.load for one in sets if one.load is not None and one.load.amount), None)
        words = f"{percent(self.share)} of the load"
        if load is None:
            return words
        taken = self.of(SetTarget(sets[0].target, load)).load
        return words + ("" if taken is None else rounded(self.exact(load), taken, self.terms))

    def exact(self, load: Load) -> Decimal:
        return load.amount - abs(load.amount) * (1 - self.share)


def lighter(laid: Laid, deload: Deload | None, days: int, terms: Terms) -> Laid:
    """The ask as a deload week takes it, or as the first session back after so many days does."""
    away = layoff_share(days)
    if deload is None:
        return _after_layoff(laid, days, _Share(away, True, terms))
    lower = away < deload.load_share
    return _in_deload(laid, deload, _Share(min(deload.load_share, away), lower, terms), days if lower else None)


def _in_deload(laid: Laid, deload: Deload, share: _Share, days: int | None) -> Laid:
    kept = laid.ask.sets[: deload_sets(len(laid.ask.sets), deload.sets_share)]
    sets = tuple(without_load(one, share.share) if _bare(one) else share.of(one) for one in kept)
    note = f"Deload week: {percent(deload.sets_share)} of the sets, {share.told(kept)}."
    eased_off = _floored(laid.with_sets(sets, Held.DELOAD, note), share, kept)
    return eased_off if days is None else eased_off.noted(Held.LAYOFF, _back(days, percent(share.share)))


def _after_layoff(laid: Laid, days: int, share: _Share) -> Laid:
    before = laid.ask.sets
    if share.share == FULL or all(map(_bare, before)):
        return laid
    sets = tuple(map(share.of, before))
    back = _back(days, share.told(before))
    return _floored(laid.with_sets(sets, Held.LAYOFF, back), share, before)


def _back(days: int, share: str) -> str:
    taken = share if share.endswith((")", "load")) else f"{share} of the load"
    return f"{days} days since you last trained it, so this first session back takes {taken}."


def _bare(one: SetTarget) -> bool:
    return one.load is None or one.load.amount == 0


def _floored(laid: Laid, share: _Share, before: tuple[SetTarget, ...]) -> Laid:
    """Say so where nothing as light can be loaded, or nothing nearer than the full load."""
    for was, now in zip(before, laid.ask.sets, strict=False):
        if was.load is None or now.load is None or now.load.amount <= share.exact(was.load):
            continue
        wanted = share.terms.load(share.exact(was.load))
        if share.terms.loadable.at_most(wanted) is None:
            return laid.noted(Held.EMPTY_BAR, f"Nothing lighter than {stated(now.load)} can be loaded.")
        if now.load == was.load:
            nearer = f"Nothing nearer to {stated(wanted)} than {stated(now.load)} can be loaded."
            return laid.noted(Held.ROUNDING, nearer)
    return laid
