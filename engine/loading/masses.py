"""Loadable masses as one sorted row: whatever the equipment, the three questions are answered by bisection."""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from dataclasses import dataclass

from engine.loading.mass import counts, load_of, slack
from engine.values.load import Load


@dataclass(frozen=True, slots=True)
class Masses:
    """A `Loadable` over its masses.

    Shape: `row` holds counts (see `mass.py`), rising, at least one. Below zero is help with body weight.
    """

    row: tuple[int, ...]

    def __post_init__(self) -> None:
        if not self.row:
            raise ValueError("nothing to load with: expected at least one loadable mass")

    def at_most(self, target: Load) -> Load | None:
        """The heaviest loadable mass not above `target`, in the target's unit; None when even the least is above."""
        wanted = counts(target)
        place = bisect_right(self.row, wanted + slack(target.unit))
        return self._told(place - 1, wanted, target) if place else None

    def at_least(self, target: Load) -> Load | None:
        """The lightest loadable mass not below `target`, in the target's unit; None above the heaviest."""
        wanted = counts(target)
        place = bisect_left(self.row, wanted - slack(target.unit))
        return self._told(place, wanted, target) if place < len(self.row) else None

    def nearest(self, target: Load) -> Load:
        """The loadable mass nearest to `target`; the lighter of two equally near."""
        wanted, row = counts(target), self.row
        place = bisect_left(row, wanted)
        above = place < len(row)
        if above and (place == 0 or row[place] - wanted < wanted - row[place - 1]):
            return self._told(place, wanted, target)
        return self._told(place - 1, wanted, target)

    def _told(self, place: int, wanted: int, target: Load) -> Load:
        found = self.row[place]
        return target if found == wanted else load_of(found, target.unit, target.basis)
