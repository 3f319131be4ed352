"""What one process keeps between turns to save work: never truth, always thrown away when its key moves on."""

from __future__ import annotations

import secrets
from collections import OrderedDict
from collections.abc import Callable, Hashable, Mapping
from typing import Any, TypeVar

from engine.catalogue.catalogue import Catalogue, catalogue
from engine.values.exercise import Exercise
from engine.values.ids import AthleteId, ExerciseName
from storage.store import Store

T = TypeVar("T")
MOST = 2_000


class Memory:
    """Least recently used first out; safe because every key holds all that its value depends on."""

    def __init__(self, most: int = MOST, secret: bytes | None = None) -> None:
        self.secret = secret or secrets.token_bytes(32)
        """What invitation codes are made with; a story brings its own, so that its codes can be written down."""
        self._kept: OrderedDict[Hashable, Any] = OrderedDict()
        self._most = most

    def recall(self, key: Hashable, work_out: Callable[[], T]) -> T:
        """What was worked out for this key before, or is now."""
        if key in self._kept:
            self._kept.move_to_end(key)
            known: T = self._kept[key]
            return known
        fresh = work_out()
        self._kept[key] = fresh
        if len(self._kept) > self._most:
            self._kept.popitem(last=False)
        return fresh

    def known(self, key: Hashable) -> Any | None:
        """What was worked out for this key before, or None."""
        return self._kept.get(key)

    def catalogue_of(self, store: Store, athlete: AthleteId) -> Catalogue:
        """The catalogue with one athlete's own exercises and shorthands."""
        own, shorthands = self.own_of(store, athlete)
        if not own and not shorthands:
            return catalogue()
        return self.recall(("catalogue", own, shorthands), lambda: catalogue().with_own(own, dict(shorthands)))

    def settings_of(self, store: Store, athlete: AthleteId) -> Mapping[str, Any]:
        """One person's stored settings, looked up once a transaction."""
        key = f"settings {athlete}"
        if key not in store.kept:
            store.kept[key] = store.settings.all(athlete)
        settings: Mapping[str, Any] = store.kept[key]
        return settings

    def bring_in(self, store: Store, athlete: AthleteId) -> None:
        """Nothing; what the last message of hers looked up is known, where nothing in her records changed since."""
        version, looked_up = self._kept.get(("looked up", athlete), (None, {}))
        if looked_up and version == store.people.version(athlete):
            store.kept.update(looked_up)

    def take_out(self, store: Store, athlete: AthleteId) -> tuple[int, dict[str, Any]]:
        """What a message looked up of her own records, with their version; to be kept once it is committed."""
        own = {key: found for key, found in store.kept.items() if key.split(" ")[1] == str(athlete)}
        return store.people.version(athlete), own

    def keep_looked_up(self, athlete: AthleteId, looked_up: tuple[int, dict[str, Any]] | None) -> None:
        """Nothing; the next message of hers need not look these up again. None: it must."""
        self._kept.pop(("looked up", athlete), None)
        if looked_up is not None:
            self.recall(("looked up", athlete), lambda: looked_up)

    def own_of(
        self, store: Store, athlete: AthleteId
    ) -> tuple[tuple[Exercise, ...], tuple[tuple[str, ExerciseName], ...]]:
        """One athlete's own exercises and shorthands, looked up once a transaction."""
        key = f"own {athlete}"
        if key not in store.kept:
            shorthands = store.taught.shorthands(athlete)
            store.kept[key] = (store.taught.own_exercises(athlete), tuple(sorted(shorthands.items())))
        own: tuple[tuple[Exercise, ...], tuple[tuple[str, ExerciseName], ...]] = store.kept[key]
        return own
