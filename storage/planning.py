"""Plans in force, and what was decided for single days of them."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, datetime

from engine.values.ids import AthleteId, ExerciseName
from storage.records import Change, Choice, ChoiceId, ChoiceKind, PlanId, StoredPlan
from storage.work import Work


class Plans:
    def __init__(self, work: Work) -> None:
        self._work = work

    def assign(
        self, change: Change, name: str, text: str, *, starts_on: date, at: datetime, coach: AthleteId | None = None
    ) -> StoredPlan:
        """The plan, in force from `starts_on` on until one assigned later starts."""
        raise NotImplementedError

    def end(self, change: Change, *, on: date, at: datetime) -> None:
        """Nothing; from `on` no plan is in force."""
        raise NotImplementedError

    def at(self, athlete: AthleteId, on: date) -> StoredPlan | None:
        """The plan in force on a day: of those that have started, the one assigned last."""
        raise NotImplementedError

    def newest(self, athlete: AthleteId) -> StoredPlan | None:
        """The plan assigned last, also when it has not started yet; None after `end`."""
        raise NotImplementedError

    def all(self, athlete: AthleteId) -> tuple[StoredPlan, ...]:
        """Every plan she was given, oldest first (those that end a plan have an empty text)."""
        raise NotImplementedError

    def get(self, athlete: AthleteId, plan: PlanId) -> StoredPlan | None:
        """A plan by its id."""
        raise NotImplementedError


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
        raise NotImplementedError

    def remove(self, change: Change, choices: Sequence[ChoiceId]) -> int:
        """How many of the choices stood and no longer stand."""
        raise NotImplementedError

    def between(self, athlete: AthleteId, first: date, last: date) -> tuple[Choice, ...]:
        """The choices for a range of days (planned on them, or moved onto them), both ends included, oldest first."""
        raise NotImplementedError
