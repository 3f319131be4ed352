"""What stands beside the sets: notes (pain among them) and body weights."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, datetime

from engine.values.ids import AthleteId, ExerciseName
from engine.values.load import Load
from storage.records import BodyWeight, Change, Note, NoteId
from storage.work import Work


class Notes:
    def __init__(self, work: Work) -> None:
        self._work = work

    def add(
        self,
        change: Change,
        text: str,
        *,
        on: date,
        at: datetime,
        exercise: ExerciseName | None = None,
        pain: bool = False,
        shared: bool = False,
        message: int = 0,
    ) -> Note:
        """The note as recorded."""
        raise NotImplementedError

    def remove(self, change: Change, notes: Sequence[NoteId]) -> int:
        """How many of the notes stood and no longer stand."""
        raise NotImplementedError

    def share(self, change: Change, note: Note) -> Note:
        """The note, superseded by one that a coach may see."""
        raise NotImplementedError

    def of_message(self, athlete: AthleteId, message: int) -> tuple[Note, ...]:
        """The notes that came from one of her messages."""
        raise NotImplementedError

    def between(self, athlete: AthleteId, first: date, last: date, *, pain: bool | None = None) -> tuple[Note, ...]:
        """The notes of a range of days, both ends included, oldest first; all, or only (no) pain."""
        raise NotImplementedError

    def latest(self, athlete: AthleteId, count: int = 5) -> tuple[Note, ...]:
        """The last notes, newest first."""
        raise NotImplementedError


class BodyWeights:
    def __init__(self, work: Work) -> None:
        self._work = work

    def add(self, change: Change, load: Load, *, on: date, at: datetime) -> BodyWeight:
        """The body weight as recorded."""
        raise NotImplementedError

    def at(self, athlete: AthleteId, on: date) -> BodyWeight | None:
        """The latest body weight known on a day."""
        raise NotImplementedError

    def between(self, athlete: AthleteId, first: date, last: date) -> tuple[BodyWeight, ...]:
        """The body weights of a range of days, both ends included, oldest first."""
        raise NotImplementedError
