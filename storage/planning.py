"""Plans in force, and what was decided for single days of them."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, datetime
from typing import Any

from sqlalchemy import Row, bindparam, or_, select

from engine.values.ids import AthleteId, ExerciseName
from storage.facts import add_fact, all_standing, supersede
from storage.records import Change, Choice, ChoiceId, ChoiceKind, PlanId, StoredPlan
from storage.tables.planning import CHOICES, PLANS
from storage.work import Work

NEWEST_PLAN = (
    all_standing(PLANS).where(PLANS.c.starts_on <= bindparam("on")).order_by(None).order_by(PLANS.c.id.desc()).limit(1)
)
CHOICES_BETWEEN = all_standing(CHOICES).where(
    or_(
        CHOICES.c.on_day.between(bindparam("first"), bindparam("last")),
        CHOICES.c.to_day.between(bindparam("first"), bindparam("last")),
    )
)


class Plans:
    def __init__(self, work: Work) -> None:
        self._work = work

    def assign(
        self, change: Change, name: str, text: str, *, starts_on: date, at: datetime, coach: AthleteId | None = None
    ) -> StoredPlan:
        """The plan, in force from `starts_on` on until one assigned later starts."""
        row = {"name": name, "text": text, "starts_on": starts_on, "at": at, "coach": coach}
        return StoredPlan(PlanId(add_fact(self._work, PLANS, change, row)), name, text, starts_on, at, coach)

    def end(self, change: Change, *, on: date, at: datetime) -> None:
        """Nothing; from `on` no plan is in force."""
        self.assign(change, "", "", starts_on=on, at=at)

    def at(self, athlete: AthleteId, on: date) -> StoredPlan | None:
        """The plan in force on a day: of those that have started, the one assigned last."""
        row = self._work.connection.execute(NEWEST_PLAN, {"athlete": athlete, "on": on}).one_or_none()
        return None if row is None or not row.text else _plan(row)

    def newest(self, athlete: AthleteId) -> StoredPlan | None:
        """The plan assigned last, also when it has not started yet; None after `end`."""
        return self.at(athlete, date.max)

    def all(self, athlete: AthleteId) -> tuple[StoredPlan, ...]:
        """Every plan she was given, oldest first (those that end a plan have an empty text)."""
        return tuple(_plan(row) for row in self._work.connection.execute(all_standing(PLANS), {"athlete": athlete}))

    def get(self, athlete: AthleteId, plan: PlanId) -> StoredPlan | None:
        """A plan by its id, standing or not."""
        query = select(PLANS).where(PLANS.c.athlete_id == athlete, PLANS.c.id == plan)
        row = self._work.connection.execute(query).one_or_none()
        return None if row is None else _plan(row)


class Choices:
    def __init__(self, work: Work) -> None:
        self._work = work

    def add(
        self,
        change: Change,
        kind: ChoiceKind,
        *,
        on: date,
        at: datetime,
        exercise: ExerciseName | None = None,
        to: ExerciseName | None = None,
        to_day: date | None = None,
    ) -> Choice:
        """The choice as recorded; an earlier one for the same day and exercise is superseded."""
        same = CHOICES.c.exercise.is_(None) if exercise is None else CHOICES.c.exercise == exercise
        supersede(self._work, CHOICES, change, (CHOICES.c.on_day == on) & same)
        row = {
            "on_day": on,
            "kind": kind.value,
            "at": at,
            "exercise": exercise,
            "to_exercise": to,
            "to_day": to_day,
        }
        return Choice(ChoiceId(add_fact(self._work, CHOICES, change, row)), on, kind, at, exercise, to, to_day)

    def remove(self, change: Change, choices: Sequence[ChoiceId]) -> int:
        """How many of the choices stood and no longer stand."""
        return supersede(self._work, CHOICES, change, CHOICES.c.id.in_(choices)) if choices else 0

    def between(self, athlete: AthleteId, first: date, last: date) -> tuple[Choice, ...]:
        """The choices for a range of days (planned on them, or moved onto them), both ends included, oldest first."""
        rows = self._work.connection.execute(CHOICES_BETWEEN, {"athlete": athlete, "first": first, "last": last})
        return tuple(_choice(row) for row in rows)


def _plan(row: Row[Any]) -> StoredPlan:
    coach = None if row.coach is None else AthleteId(row.coach)
    return StoredPlan(PlanId(row.id), row.name, row.text, row.starts_on, row.at, coach)


def _choice(row: Row[Any]) -> Choice:
    return Choice(
        id=ChoiceId(row.id),
        on=row.on_day,
        kind=ChoiceKind(row.kind),
        at=row.at,
        exercise=None if row.exercise is None else ExerciseName(row.exercise),
        to=None if row.to_exercise is None else ExerciseName(row.to_exercise),
        to_day=row.to_day,
    )
