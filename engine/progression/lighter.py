"""What makes a session lighter than its rule asks: a deload week, time away, or both, whichever takes more off."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal

from engine.progression.asked import Laid
from engine.progression.deload import deload_sets, without_load
from engine.progression.layoff import FULL, layoff_share
from engine.progression.stall import lowered
from engine.progression.terms import Terms
from engine.values.load import plain
from engine.values.plan import Deload
from engine.values.prescription import Held, SetTarget


def lighter(laid: Laid, deload: Deload | None, days: int, terms: Terms) -> Laid:
    """The ask as a deload week takes it, or as the first session back after so many days does."""
    away = layoff_share(days)
    if deload is None:
        return _after_layoff(laid, days, away, terms)
    eased = _in_deload(laid, replace(deload, load_share=min(deload.load_share, away)), terms)
    return eased.noted(Held.LAYOFF, _back(days, away)) if away < deload.load_share else eased


def _in_deload(laid: Laid, deload: Deload, terms: Terms) -> Laid:
    kept = laid.ask.sets[: deload_sets(len(laid.ask.sets), deload.sets_share)]
    share = deload.load_share
    sets = tuple(without_load(one, share) if _bare(one) else _less(one, share, terms) for one in kept)
    note = f"Deload week: {percent(deload.sets_share)} of the sets, {percent(share)} of the load."
    return _floored(laid.with_sets(sets, Held.DELOAD, note), share, laid.ask.sets)


def _after_layoff(laid: Laid, days: int, share: Decimal, terms: Terms) -> Laid:
    if share == FULL or all(map(_bare, laid.ask.sets)):
        return laid
    sets = tuple(_less(one, share, terms) for one in laid.ask.sets)
    return _floored(laid.with_sets(sets, Held.LAYOFF, _back(days, share)), share, laid.ask.sets)


def _back(days: int, share: Decimal) -> str:
    return f"{days} days since you last trained it, so this first session back takes {percent(share)} of the load."


def percent(share: Decimal) -> str:
    """``90 %``."""
    return f"{plain(share * 100)} %"


def _bare(one: SetTarget) -> bool:
    return one.load is None or one.load.amount == 0


def _less(one: SetTarget, share: Decimal, terms: Terms) -> SetTarget:
    return one if one.load is None else replace(one, load=lowered(one.load, 1 - share, terms))


def _floored(laid: Laid, share: Decimal, before: tuple[SetTarget, ...]) -> Laid:
    """Say so where nothing as light can be loaded."""
    pairs = zip(before, laid.ask.sets, strict=False)
    held = [now.load for was, now in pairs if was.load and now.load and now.load.amount > was.load.amount * share > 0]
    return laid.noted(Held.EMPTY_BAR, f"Nothing lighter than {held[0]} can be loaded.") if held else laid
