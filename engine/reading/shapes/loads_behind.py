"""Loads behind the sets that they are of: "8 +10, 6 +15", "32s 40m, 24s 60m". Of several sets it may be all: asked."""

from __future__ import annotations

from engine.reading.shapes.adding import Adding
from engine.reading.words.pieces import Piece, Role


class LoadedBehind(Adding):
    """Which sets a load is of that stands right behind reps, or ahead of a distance."""

    def _stands_behind(self, number: Piece) -> bool:
        """ "8 +10, 6 +15", "8, 8, 5 +10": no sign between the load and the reps ahead of it, but one behind it."""
        if not self.drafts:
            return False
        at = self._place_of(number)
        found = self.chunks.found
        waits = self.drafts[-1].load is None and found[at - 1].size == 1 and not found[at - 1].at
        return waits and found[at].before is None and (at + 1 == len(found) or found[at + 1].before is not None)

    def _load_those_before(self, number: Piece) -> None:
        """The load of the set ahead of it; of several since the latest load it may be that of all."""
        waiting = [draft for draft in self.drafts[self.closed :] if draft.load is None]
        run = max(self.run_from, len(self.drafts) - len(waiting))
        if len(waiting) > 1 and not self.chunks.of_all:
            self.unplaced = self.unplaced or run == len(self.drafts) - len(waiting)  # "8 8 5 +10"
            self.saw_load_behind = True
            waiting = waiting if self.choice.load_for_all else self.drafts[run:]
        for draft in waiting:
            draft.load = number
        self.last_load, self.touched, self.filled = number, waiting, True
        self.loaded_behind = True

    def _place_of(self, number: Piece) -> int:
        found = self.chunks.found
        return next(at for at, chunk in enumerate(found) if any(number in factor for factor in chunk.factors))

    def _heads_a_way(self, number: Piece) -> bool:
        """ "32s 40m, 24s 60m": behind a sign and ahead of a distance, as the pair of implements before it stood."""
        found, place = self.chunks.found, self._place_of(number)
        heads = found[0].factors[:1]  # none where the first set is told as the one before it
        first, ahead = heads[0][:1] if heads else (), found[place + 1 : place + 2]
        alike = bool(first) and first[0].role is Role.PLURAL and found[place].before is not None and place != 0
        far = bool(ahead) and ahead[0].before is None and ahead[0].size == 1
        return alike and far and ahead[0].factors[0][0].role is Role.METRES

    def _times_a_way(self) -> bool:
        """ "40m in 24s", "32s 40m 14s", and "45s" where no distance is told; "40m 24s" tells a pair of implements, as
        "24s 40 secs" does.
        """
        return self.in_passing or self.last_load is not None or not (self._distance_told() or self._heads_a_time())

    def _heads_a_time(self) -> bool:
        """ "24s 40 secs": the time of the set is told in words, right behind."""
        heads = [chunk.factors[-1][-1].role for chunk in self.chunks.found[:2] if chunk.factors and chunk.factors[-1]]
        return heads == [Role.PLURAL, Role.SECONDS] and self.chunks.found[1].before is None

    def _distance_told(self) -> bool:
        return any(n.role is Role.METRES for c in self.chunks.found for factor in c.factors for n in factor)
