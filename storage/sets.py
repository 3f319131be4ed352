"""The log: sets added, superseded, and asked for.

Every answer holds standing sets alone, in the order of the log (`place`), oldest first. Ranges of days include both
ends.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import date, datetime

from engine.values.ids import AthleteId, ExerciseName, SetId
from engine.values.load import Load
from engine.values.sets import SetDone, SetRecord
from storage.records import Change
from storage.work import Work


class Sets:
    def __init__(self, work: Work) -> None:
        self._work = work

    def add(
        self,
        change: Change,
        sets: Sequence[SetDone],
        *,
        on: date,
        at: datetime,
        message: int = 0,
        place: int | None = None,
    ) -> tuple[SetRecord, ...]:
        """The sets as recorded, at the end of the log, or from `place` on (the place of the first set they replace)."""
        raise NotImplementedError

    def remove(self, change: Change, sets: Sequence[SetId]) -> int:
        """How many of the sets stood and no longer stand."""
        raise NotImplementedError

    def replace(self, change: Change, pairs: Sequence[tuple[SetRecord, SetDone]]) -> tuple[SetRecord, ...]:
        """The corrected sets: same day, instant, message and place as the ones they supersede."""
        raise NotImplementedError

    def move(self, change: Change, sets: Sequence[SetRecord], on: date) -> tuple[SetRecord, ...]:
        """The same sets on another day."""
        raise NotImplementedError

    def get(self, athlete: AthleteId, sets: Sequence[SetId]) -> tuple[SetRecord, ...]:
        """The sets with these ids, standing or not (evidence that `why` prints)."""
        raise NotImplementedError

    def of_message(self, athlete: AthleteId, message: int) -> tuple[SetRecord, ...]:
        """The sets that came from one of her messages."""
        raise NotImplementedError

    def day_of_message(self, athlete: AthleteId, message: int) -> date | None:
        """The day that the sets of a message were first recorded for, also when none of them stands now."""
        raise NotImplementedError

    def of_day(self, athlete: AthleteId, on: date) -> tuple[SetRecord, ...]:
        """The sets of one day."""
        raise NotImplementedError

    def recent(self, athlete: AthleteId, since: date, least: int = 12) -> tuple[SetRecord, ...]:
        """The sets of all days from `since` on, and at least the last `least` sets where there are as many.

        Order: as logged, so a set logged today for last week comes last.
        """
        raise NotImplementedError

    def latest(self, athlete: AthleteId) -> SetRecord | None:
        """The set logged last."""
        raise NotImplementedError

    def history(
        self, athlete: AthleteId, exercise: ExerciseName, *, until: date | None = None, days: int | None = None
    ) -> tuple[SetRecord, ...]:
        """One exercise's sets by day, then place; of the last `days` training days of it up to `until`, or all."""
        raise NotImplementedError

    def between(
        self, athlete: AthleteId, first: date, last: date, exercises: Sequence[ExerciseName] | None = None
    ) -> tuple[SetRecord, ...]:
        """The sets of a range of days, by day, then place; of all exercises or of the ones given."""
        raise NotImplementedError

    def since(self, athlete: AthleteId, first: date) -> tuple[SetRecord, ...]:
        """The sets from a day on, by day, then place."""
        raise NotImplementedError

    def last_loads(self, athlete: AthleteId) -> Mapping[ExerciseName, Load]:
        """For each exercise the load of its latest set with a load, by day, then place."""
        raise NotImplementedError

    def best_loads(self, athlete: AthleteId) -> Mapping[ExerciseName, Load]:
        """For each exercise the heaviest load ever moved (sets missed with no rep made do not count)."""
        raise NotImplementedError

    def last_day(self, athlete: AthleteId, exercise: ExerciseName | None = None) -> date | None:
        """The latest day with a set, of any exercise or of this one."""
        raise NotImplementedError

    def count(self, athlete: AthleteId) -> int:
        """How many sets stand."""
        raise NotImplementedError

    def days(self, athlete: AthleteId, first: date, last: date) -> tuple[date, ...]:
        """The days trained in a range."""
        raise NotImplementedError

    def of_athletes(
        self, athletes: Sequence[AthleteId], first: date, last: date
    ) -> Mapping[AthleteId, tuple[SetRecord, ...]]:
        """Several athletes' sets of a range of days, in one query; every athlete asked for has an entry."""
        raise NotImplementedError
