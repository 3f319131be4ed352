"""Sets as they were read before, so that a message does not build the same thousand of them again.

A recorded set never changes and its number is never given to another, so what is kept here cannot go stale; whether a
set stands is asked of the database each time. Only committed sets may be kept: the numbers of a transaction that is
rolled back are given out again.
"""

from __future__ import annotations

import threading
from collections import OrderedDict
from collections.abc import Iterable

from engine.values.sets import SetRecord

MOST_SETS = 50_000
"""About 20 MB."""


class Recall:
    """Shared by all transactions of a database. Safe to use from several threads."""

    def __init__(self, most: int = MOST_SETS) -> None:
        self._most = most
        self._count = 0
        self._of_athletes: OrderedDict[int, dict[int, SetRecord]] = OrderedDict()
        self._lock = threading.Lock()

    def of(self, athlete: int) -> dict[int, SetRecord]:
        """The athlete's known sets by id, to read from; they stay in hand even when they are let go here."""
        with self._lock:
            known = self._of_athletes.setdefault(athlete, {})
            self._of_athletes.move_to_end(athlete)
            return known

    def keep(self, athlete: int, records: Iterable[SetRecord]) -> None:
        """Nothing; these committed sets are known. The athletes not asked for longest are let go where room ends."""
        known = self.of(athlete)
        with self._lock:
            before = len(known)
            known.update((record.id, record) for record in records)
            if self._of_athletes.get(athlete) is known:
                self._count += len(known) - before
            while self._count > self._most:
                _, dropped = self._of_athletes.popitem(last=False)
                self._count -= len(dropped)

    def forget(self, athlete: int) -> None:
        """Nothing; nothing is known of the athlete."""
        with self._lock:
            self._count -= len(self._of_athletes.pop(athlete, {}))
