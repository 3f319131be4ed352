"""Which plates make a load: an exact search over the pairs at hand.

Largest-first is not enough: with one pair of 25 and two pairs of 20, a bar of 20 and a target of 100, it takes the
25s and is stuck, where 20 + 20 a side is exact. Of several ways the one with the fewest plates stands, then the one
with the larger plates inside.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import lru_cache

from engine.loading.gym import Bar, Plates
from engine.loading.mass import COUNTS_PER_KG, counts, slack
from engine.values.load import Load

HEAVIEST_SIDE = 300 * COUNTS_PER_KG
"""More than any sleeve holds: it bounds the search."""

Side = tuple[Load, ...]
"""The plates of one side, largest first."""


@dataclass(frozen=True, slots=True)
class Loaded:
    """A bar with plates on it: the load in all, and one side's plates, largest first."""

    load: Load
    side: Side


@dataclass(frozen=True, slots=True)
class PlateAnswer:
    """How to load a target: exactly, or the nearest below and above it (None: there is none)."""

    exact: Loaded | None
    below: Loaded | None
    above: Loaded | None


def plates_for(target: Load, bar: Bar, plates: Plates) -> PlateAnswer:
    """Which plates load `target` on this bar, or come nearest on either side.

    Units: the loads told are in the target's unit, the plates in their own.
    """
    row = _totals(bar, plates)
    wanted, near = counts(target), slack(target.unit)
    at_or_below = max((total for total in row if total <= wanted + near), default=None)
    if at_or_below is not None and abs(at_or_below - wanted) <= near:
        return PlateAnswer(Loaded(target, row[at_or_below]), None, None)
    above = min((total for total in row if total > wanted + near), default=None)
    return PlateAnswer(None, _loaded(at_or_below, row, bar, target), _loaded(above, row, bar, target))


def bar_totals(bar: Bar, plates: Plates) -> tuple[int, ...]:
    """Every total this bar can be loaded to, in counts, rising; the empty bar first."""
    return tuple(sorted(_totals(bar, plates)))


def _loaded(total: int | None, row: Mapping[int, Side], bar: Bar, target: Load) -> Loaded | None:
    if total is None:
        return None
    side = row[total]
    load = bar.empty().in_unit(target.unit)
    for plate in side:
        load = load + Load(2 * plate.amount, plate.unit).in_unit(target.unit)
    return Loaded(Load(load.amount, load.unit, target.basis), side)


@lru_cache(maxsize=256)
def _totals(bar: Bar, plates: Plates) -> Mapping[int, Side]:
    empty = counts(bar.empty())
    return {empty + 2 * side: sizes for side, sizes in side_sums(plates.pairs, HEAVIEST_SIDE).items()}


@lru_cache(maxsize=256)
def side_sums(stock: tuple[tuple[Load, int], ...], most: int) -> Mapping[int, Side]:
    """Every sum the stock can make up to `most` counts, each with the plates of its best way."""
    best: dict[int, Side] = {0: ()}
    for size, held in sorted(stock, key=lambda kind: counts(kind[0]), reverse=True):
        mass = counts(size)
        reached = dict(best)
        for start, sizes in best.items():
            for more in range(1, held + 1):
                total = start + more * mass
                if total > most:
                    break
                way = (*sizes, *(size,) * more)
                if total not in reached or _better(way, reached[total]):
                    reached[total] = way
        best = reached
    return best


def _better(way: Side, known: Side) -> bool:
    if len(way) != len(known):
        return len(way) < len(known)
    return [counts(size) for size in way] > [counts(size) for size in known]
