"""What the bot remembers of a person's ways: settings, shorthands, exercises of her own, settled ambiguities."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from sqlalchemy import Row, Table

from engine.values.exercise import Exercise
from engine.values.ids import AthleteId, ExerciseName
from storage.exercise_mapping import exercise_content, exercise_of
from storage.facts import add_fact, all_standing, supersede
from storage.records import Change, Settled
from storage.tables.habits import OWN_EXERCISES, SETTINGS, SETTLED, SHORTHANDS
from storage.work import Work


class Settings:
    """Key and JSON-able value; keys are the bot's. A change of a setting can be undone like everything else."""

    def __init__(self, work: Work) -> None:
        self._work = work

    def put(self, change: Change, key: str, value: Any) -> None:
        """Nothing; the setting has this value from now on."""
        self.clear(change, key)
        add_fact(self._work, SETTINGS, change, {"key": key, "content": value})

    def clear(self, change: Change, key: str) -> bool:
        """Whether the setting was there; it is back at its default."""
        return supersede(self._work, SETTINGS, change, SETTINGS.c.key == key) > 0

    def get(self, athlete: AthleteId, key: str, default: Any = None) -> Any:
        """The value of a setting, or the default."""
        return self.all(athlete).get(key, default)

    def all(self, athlete: AthleteId) -> Mapping[str, Any]:
        """Every setting that was ever put and not cleared."""
        return {row.key: row.content for row in _standing(self._work, SETTINGS, athlete)}


class Taught:
    def __init__(self, work: Work) -> None:
        self._work = work

    def shorthand(self, change: Change, shorthand: str, exercise: ExerciseName) -> None:
        """Nothing; the (normalised) shorthand means this exercise for this athlete from now on."""
        self.forget(change, shorthand)
        add_fact(self._work, SHORTHANDS, change, {"shorthand": shorthand, "exercise": exercise})

    def forget(self, change: Change, shorthand: str) -> bool:
        """Whether the shorthand was known; it no longer is."""
        return supersede(self._work, SHORTHANDS, change, SHORTHANDS.c.shorthand == shorthand) > 0

    def shorthands(self, athlete: AthleteId) -> Mapping[str, ExerciseName]:
        """All her shorthands."""
        return {row.shorthand: ExerciseName(row.exercise) for row in _standing(self._work, SHORTHANDS, athlete)}

    def own_exercise(self, change: Change, exercise: Exercise) -> None:
        """Nothing; the athlete has this exercise of her own, in place of an earlier one of that name."""
        self.drop_exercise(change, exercise.name)
        add_fact(self._work, OWN_EXERCISES, change, {"name": exercise.name, "content": exercise_content(exercise)})

    def drop_exercise(self, change: Change, name: ExerciseName) -> bool:
        """Whether she had such an exercise; it is gone from her catalogue (its sets stay)."""
        return supersede(self._work, OWN_EXERCISES, change, OWN_EXERCISES.c.name == name) > 0

    def own_exercises(self, athlete: AthleteId) -> tuple[Exercise, ...]:
        """All exercises of her own, by name."""
        newest = {row.name: row.content for row in _standing(self._work, OWN_EXERCISES, athlete)}
        return tuple(exercise_of(newest[name]) for name in sorted(newest))

    def settle(self, change: Change, doubt: str, term: str, answer: str) -> None:
        """Nothing; the same doubt about the same term is answered so from now on."""
        self.unsettle(change, doubt, term)
        add_fact(self._work, SETTLED, change, {"doubt": doubt, "term": term, "answer": answer})

    def unsettle(self, change: Change, doubt: str, term: str) -> bool:
        """Whether it was settled; it will be asked again."""
        same = (SETTLED.c.doubt == doubt) & (SETTLED.c.term == term)
        return supersede(self._work, SETTLED, change, same) > 0

    def settled(self, athlete: AthleteId) -> tuple[Settled, ...]:
        """All that her answers settled, oldest first."""
        newest = {
            (row.doubt, row.term): Settled(row.doubt, row.term, row.answer)
            for row in _standing(self._work, SETTLED, athlete)
        }
        return tuple(newest.values())


def _standing(work: Work, table: Table, athlete: AthleteId) -> tuple[Row[Any], ...]:
    # Oldest first: where two stand for one thing (hers and her coach's, one undone), the newer overrides.
    return tuple(work.connection.execute(all_standing(table), {"athlete": athlete}))
