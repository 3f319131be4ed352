"""What the bot remembers of a person's ways: settings, shorthands, exercises of her own, settled ambiguities."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from engine.values.exercise import Exercise
from engine.values.ids import AthleteId, ExerciseName
from storage.records import Change, Settled
from storage.work import Work


class Settings:
    """Key and JSON-able value; keys are the bot's. A change of a setting can be undone like everything else."""

    def __init__(self, work: Work) -> None:
        self._work = work

    def put(self, change: Change, key: str, value: Any) -> None:
        """Nothing; the setting has this value from now on."""
        raise NotImplementedError

    def clear(self, change: Change, key: str) -> bool:
        """Whether the setting was there; it is back at its default."""
        raise NotImplementedError

    def get(self, athlete: AthleteId, key: str, default: Any = None) -> Any:
        """The value of a setting, or the default."""
        raise NotImplementedError

    def all(self, athlete: AthleteId) -> Mapping[str, Any]:
        """Every setting that was ever put and not cleared."""
        raise NotImplementedError


class Taught:
    def __init__(self, work: Work) -> None:
        self._work = work

    def shorthand(self, change: Change, shorthand: str, exercise: ExerciseName) -> None:
        """Nothing; the (normalised) shorthand means this exercise for this athlete from now on."""
        raise NotImplementedError

    def forget(self, change: Change, shorthand: str) -> bool:
        """Whether the shorthand was known; it no longer is."""
        raise NotImplementedError

    def shorthands(self, athlete: AthleteId) -> Mapping[str, ExerciseName]:
        """All her shorthands."""
        raise NotImplementedError

    def own_exercise(self, change: Change, exercise: Exercise) -> None:
        """Nothing; the athlete has this exercise of her own, in place of an earlier one of that name."""
        raise NotImplementedError

    def drop_exercise(self, change: Change, name: ExerciseName) -> bool:
        """Whether she had such an exercise; it is gone from her catalogue (its sets stay)."""
        raise NotImplementedError

    def own_exercises(self, athlete: AthleteId) -> tuple[Exercise, ...]:
        """All exercises of her own, by name."""
        raise NotImplementedError

    def settle(self, change: Change, doubt: str, term: str, answer: str) -> None:
        """Nothing; the same doubt about the same term is answered so from now on."""
        raise NotImplementedError

    def unsettle(self, change: Change, doubt: str, term: str) -> bool:
        """Whether it was settled; it will be asked again."""
        raise NotImplementedError

    def settled(self, athlete: AthleteId) -> tuple[Settled, ...]:
        """All that her answers settled, oldest first."""
        raise NotImplementedError
