"""The log: sets added, superseded, and asked for.

Every answer holds standing sets alone, oldest first: in the order of the log (`place`), or by day and then place where
it says so. Ranges of days include both ends.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import date, datetime
from typing import Any

from sqlalchemy import func, select

from engine.values.ids import AthleteId, ExerciseName, SetId
from engine.values.load import Load
from engine.values.sets import SetDone, SetRecord
from storage import set_queries as queries
from storage.facts import standing, supersede
from storage.mapping import instant, load_of, set_columns, set_record
from storage.records import Change
from storage.tables.log import SETS
from storage.work import Work

PLACES_BETWEEN = 1000
"""Free places kept after each set, so that the sets that replace one can stand where it stood."""

AT_ONCE = 1000
"""Sets read by one statement: databases bound the number of its parameters."""


def was_changed(record: SetRecord) -> bool:
    """Whether the set took the place of another one, and was not told so at first."""
    return record.place != record.id * PLACES_BETWEEN


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
        first = self._work.take_ids(change.athlete, len(sets))
        at = instant(at)
        records = tuple(
            SetRecord(
                SetId(first + n), done, on, at, (first + n) * PLACES_BETWEEN if place is None else place + n, message
            )
            for n, done in enumerate(sets)
        )
        self._insert(change, records)
        return records

    def add_past(self, change: Change, sets: Sequence[tuple[SetDone, date, datetime]]) -> tuple[SetRecord, ...]:
        """The sets of an old log as recorded, ahead of all that was told in the chat: none of them is "the last set".

        Shape: each with its day and an instant on it, oldest first. They belong to no message.
        """
        first = self._work.take_ids(change.athlete, len(sets))
        last = first + len(sets) - 1
        records = tuple(
            SetRecord(SetId(first + n), done, on, at, (n - last) * PLACES_BETWEEN)
            for n, (done, on, at) in enumerate(sets)
        )
        self._insert(change, records)
        return records

    def remove(self, change: Change, sets: Sequence[SetId]) -> int:
        """How many of the sets stood and no longer stand."""
        return supersede(self._work, SETS, change, SETS.c.id.in_(sets)) if sets else 0

    def replace(self, change: Change, pairs: Sequence[tuple[SetRecord, SetDone]]) -> tuple[SetRecord, ...]:
        """The corrected sets: same day, instant, message and place as the ones they supersede."""
        self.remove(change, [old.id for old, _ in pairs])
        first = self._work.take_ids(change.athlete, len(pairs))
        records = tuple(
            SetRecord(SetId(first + n), done, old.on, old.at, old.place, old.message)
            for n, (old, done) in enumerate(pairs)
        )
        self._insert(change, records)
        return records

    def move(self, change: Change, sets: Sequence[SetRecord], on: date) -> tuple[SetRecord, ...]:
        """The same sets on another day."""
        self.remove(change, [old.id for old in sets])
        first = self._work.take_ids(change.athlete, len(sets))
        records = tuple(
            SetRecord(SetId(first + n), old.done, on, old.at, old.place, old.message) for n, old in enumerate(sets)
        )
        self._insert(change, records)
        return records

    def get(self, athlete: AthleteId, sets: Sequence[SetId]) -> tuple[SetRecord, ...]:
        """The sets with these ids, standing or not (evidence that `why` prints)."""
        return tuple(sorted(self._read(athlete, sets), key=lambda record: (record.place, record.id)))

    def of_message(self, athlete: AthleteId, message: int) -> tuple[SetRecord, ...]:
        """The sets that came from one of her messages."""
        return self._records(queries.OF_MESSAGE, athlete, message=message)

    def day_of_message(self, athlete: AthleteId, message: int) -> date | None:
        """The day that the sets of a message were first recorded for, also when none of them stands now."""
        query = select(SETS.c.on_day).where(SETS.c.athlete_id == athlete, SETS.c.message == message)
        day: date | None = self._work.connection.execute(query.order_by(SETS.c.id).limit(1)).scalar_one_or_none()
        return day

    def of_day(self, athlete: AthleteId, on: date) -> tuple[SetRecord, ...]:
        """The sets of one day."""
        return self._records(queries.OF_DAY, athlete, on=on)

    def recent(self, athlete: AthleteId, since: date, least: int = 12) -> tuple[SetRecord, ...]:
        """The sets of all days from `since` on, and at least the last `least` sets where there are as many.

        Order: as logged, so a set logged today for last week comes last.
        """
        return self._records(queries.RECENT, athlete, since=since, least=least)

    def latest(self, athlete: AthleteId) -> SetRecord | None:
        """The set logged last."""
        return next(iter(self._records(queries.LATEST, athlete)), None)

    def history(
        self, athlete: AthleteId, exercise: ExerciseName, *, until: date | None = None, days: int | None = None
    ) -> tuple[SetRecord, ...]:
        """One exercise's sets by day, then place; of the last `days` training days of it up to `until`, or all."""
        return self._records(
            queries.HISTORY,
            athlete,
            exercise=exercise,
            until=until or date.max,
            days=queries.ALL_DAYS if days is None else days,
        )

    def between(
        self, athlete: AthleteId, first: date, last: date, exercises: Sequence[ExerciseName] | None = None
    ) -> tuple[SetRecord, ...]:
        """The sets of a range of days, by day, then place; of all exercises or of the ones given."""
        if exercises is None:
            return self._records(queries.BETWEEN, athlete, first=first, last=last)
        return self._records(queries.BETWEEN_OF, athlete, first=first, last=last, exercises=list(exercises))

    def since(self, athlete: AthleteId, first: date) -> tuple[SetRecord, ...]:
        """The sets from a day on, by day, then place."""
        return self.between(athlete, first, date.max)

    def last_loads(self, athlete: AthleteId) -> Mapping[ExerciseName, Load]:
        """For each exercise the load of its latest set with a load, by day, then place."""
        return self._loads(queries.LAST_LOADS[self._work.is_postgres], athlete)

    def best_loads(self, athlete: AthleteId) -> Mapping[ExerciseName, Load]:
        """For each exercise the heaviest load ever moved (sets missed with no rep made do not count)."""
        return self._loads(queries.BEST_LOADS[self._work.is_postgres], athlete)

    def last_day(self, athlete: AthleteId, exercise: ExerciseName | None = None) -> date | None:
        """The latest day with a set, of any exercise or of this one."""
        query = select(func.max(SETS.c.on_day)).where(standing(SETS, athlete))
        if exercise is not None:
            query = query.where(SETS.c.exercise == exercise)
        day: date | None = self._work.connection.execute(query).scalar_one()
        return day

    def count(self, athlete: AthleteId) -> int:
        """How many sets stand."""
        query = select(func.count()).select_from(SETS).where(standing(SETS, athlete))
        return self._work.connection.execute(query).scalar_one()

    def stamp(self, athlete: AthleteId, first: date, last: date) -> tuple[int, ...]:
        """Numbers that change whenever the standing sets of a range of days change.

        Shape: count, largest id, sum of ids, sum of their squares (in floating point). What supersedes a set has a new,
        larger id, so two different logs would need all of these equal at once.
        """
        values = {"athlete": athlete, "first": first, "last": last}
        row = self._work.connection.execute(queries.STAMP, values).one()
        return tuple(int(number or 0) for number in row)

    def days(self, athlete: AthleteId, first: date, last: date) -> tuple[date, ...]:
        """The days trained in a range."""
        query = select(SETS.c.on_day).distinct().where(standing(SETS, athlete), SETS.c.on_day.between(first, last))
        return tuple(self._work.connection.execute(query.order_by(SETS.c.on_day)).scalars())

    def of_athletes(
        self, athletes: Sequence[AthleteId], first: date, last: date
    ) -> Mapping[AthleteId, tuple[SetRecord, ...]]:
        """Several athletes' sets of a range of days, in one query; every athlete asked for has an entry."""
        found: dict[AthleteId, list[SetRecord]] = {athlete: [] for athlete in athletes}
        rows = self._work.connection.execute(
            queries.OF_ATHLETES, {"athletes": list(athletes), "first": first, "last": last}
        )
        for row in rows:
            found[row.athlete_id].append(set_record(row))
        return {athlete: tuple(records) for athlete, records in found.items()}

    def _insert(self, change: Change, records: Sequence[SetRecord]) -> None:
        if records:
            self._work.connection.execute(queries.INSERT, [_columns(change, record) for record in records])
            self._work.own_sets.setdefault(change.athlete, {}).update((record.id, record) for record in records)

    def _records(self, query: Any, athlete: AthleteId, **values: Any) -> tuple[SetRecord, ...]:
        ids = self._work.connection.execute(query, {"athlete": athlete, **values}).scalars().all()
        own, recalled = self._work.own_sets.get(athlete, {}), self._work.recall.of(athlete)
        unknown = [id for id in ids if id not in recalled and id not in own]
        if unknown:
            read = self._read(athlete, unknown)
            self._work.recall.keep(athlete, read)
            recalled = {**recalled, **{record.id: record for record in read}}
        return tuple(recalled[id] if id in recalled else own[id] for id in ids)

    def _read(self, athlete: AthleteId, ids: Sequence[int]) -> list[SetRecord]:
        found: list[SetRecord] = []
        for start in range(0, len(ids), AT_ONCE):
            values = {"athlete": athlete, "ids": ids[start : start + AT_ONCE]}
            found += map(set_record, self._work.connection.execute(queries.BY_ID, values).all())
        return found

    def _loads(self, query: Any, athlete: AthleteId) -> Mapping[ExerciseName, Load]:
        rows = self._work.connection.execute(query, {"athlete": athlete, "yes": True})
        return {ExerciseName(name): load_of(amount, unit, basis) for name, amount, unit, basis in rows}


def _columns(change: Change, record: SetRecord) -> dict[str, Any]:
    return {
        "athlete_id": change.athlete,
        "id": record.id,
        "added_by": change.id,
        "stands": True,
        "on_day": record.on,
        "at": record.at,
        "place": record.place,
        "message": record.message,
        **set_columns(record.done),
    }
