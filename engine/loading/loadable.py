"""What an athlete can load for one exercise, as the rest of the engine sees it."""

from __future__ import annotations

from typing import Protocol

from engine.values.load import Load


class Loadable(Protocol):
    """The loadable masses of one exercise with one athlete's equipment."""

    def at_most(self, target: Load) -> Load | None:
        """The heaviest loadable mass not above `target`, in the target's unit; None when even the least is above."""

    def at_least(self, target: Load) -> Load | None:
        """The lightest loadable mass not below `target`, in the target's unit; None above the heaviest."""

    def nearest(self, target: Load) -> Load:
        """The loadable mass nearest to `target`; the lighter of two equally near."""
