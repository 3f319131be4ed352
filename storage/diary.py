"""What stands beside the sets: notes (pain among them) and body weights."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import date, datetime
from typing import Any

from sqlalchemy import Row, Select, select

from engine.values.ids import AthleteId, ExerciseName
from engine.values.load import Load
from storage.facts import add_fact, standing, supersede
from storage.mapping import load_columns, load_of
from storage.records import BodyWeight, Change, Note, NoteId
from storage.tables.log import BODY_WEIGHTS, NOTES
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
        return self._add(change, Note(NoteId(0), text, on, at, exercise, pain, shared, message))

    def remove(self, change: Change, notes: Sequence[NoteId]) -> int:
        """How many of the notes stood and no longer stand."""
        return supersede(self._work, NOTES, change, NOTES.c.id.in_(notes)) if notes else 0

    def share(self, change: Change, note: Note) -> Note:
        """The note, superseded by one that a coach may see."""
        self.remove(change, [note.id])
        return self._add(change, replace(note, shared=True))

    def of_message(self, athlete: AthleteId, message: int) -> tuple[Note, ...]:
        """The notes that came from one of her messages."""
        query = self._standing(athlete).where(NOTES.c.message == message)
        return self._notes(query.order_by(NOTES.c.id))

    def between(self, athlete: AthleteId, first: date, last: date, *, pain: bool | None = None) -> tuple[Note, ...]:
        """The notes of a range of days, both ends included, oldest first; all, or only (no) pain."""
        query = self._standing(athlete).where(NOTES.c.on_day.between(first, last))
        if pain is not None:
            query = query.where(NOTES.c.pain == pain)
        return self._notes(query.order_by(NOTES.c.on_day, NOTES.c.id))

    def latest(self, athlete: AthleteId, count: int = 5) -> tuple[Note, ...]:
        """The last notes, newest first."""
        return self._notes(self._standing(athlete).order_by(NOTES.c.id.desc()).limit(count))

    def _add(self, change: Change, note: Note) -> Note:
        row = {
            "text": note.text,
            "on_day": note.on,
            "at": note.at,
            "exercise": note.exercise,
            "pain": note.pain,
            "shared": note.shared,
            "message": note.message,
        }
        return replace(note, id=NoteId(add_fact(self._work, NOTES, change, row)))

    def _standing(self, athlete: AthleteId) -> Select[Any]:
        return select(NOTES).where(standing(NOTES, athlete))

    def _notes(self, query: Select[Any]) -> tuple[Note, ...]:
        return tuple(_note(row) for row in self._work.connection.execute(query))


class BodyWeights:
    def __init__(self, work: Work) -> None:
        self._work = work

    def add(self, change: Change, load: Load, *, on: date, at: datetime) -> BodyWeight:
        """The body weight as recorded."""
        add_fact(self._work, BODY_WEIGHTS, change, {**load_columns(load), "on_day": on, "at": at})
        return BodyWeight(load, on, at)

    def at(self, athlete: AthleteId, on: date) -> BodyWeight | None:
        """The latest body weight known on a day."""
        query = self._standing(athlete).where(BODY_WEIGHTS.c.on_day <= on)
        newest = query.order_by(BODY_WEIGHTS.c.on_day.desc(), BODY_WEIGHTS.c.id.desc()).limit(1)
        row = self._work.connection.execute(newest).one_or_none()
        return None if row is None else _body_weight(row)

    def between(self, athlete: AthleteId, first: date, last: date) -> tuple[BodyWeight, ...]:
        """The body weights of a range of days, both ends included, oldest first."""
        query = self._standing(athlete).where(BODY_WEIGHTS.c.on_day.between(first, last))
        rows = self._work.connection.execute(query.order_by(BODY_WEIGHTS.c.on_day, BODY_WEIGHTS.c.id))
        return tuple(_body_weight(row) for row in rows)

    def _standing(self, athlete: AthleteId) -> Select[Any]:
        return select(BODY_WEIGHTS).where(standing(BODY_WEIGHTS, athlete))


def _note(row: Row[Any]) -> Note:
    return Note(
        id=NoteId(row.id),
        text=row.text,
        on=row.on_day,
        at=row.at,
        exercise=None if row.exercise is None else ExerciseName(row.exercise),
        pain=row.pain,
        shared=row.shared,
        message=row.message,
    )


def _body_weight(row: Row[Any]) -> BodyWeight:
    return BodyWeight(load_of(row.thousandths, row.unit, row.basis), row.on_day, row.at)
