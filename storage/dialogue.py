"""Where a conversation stands: the open question, and which message is the line of which lift."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from datetime import date, datetime
from typing import Any

from sqlalchemy import ColumnElement, Row, and_, bindparam, delete, func, insert, select, update

from engine.values.ids import AthleteId, ExerciseName
from storage.envelopes import SEND, OutboxId
from storage.records import LiftLine, Question, QuestionId, QuestionState
from storage.tables.dialogue import LIFT_LINES, QUESTIONS
from storage.tables.queues import OUTBOX
from storage.work import Work

OPEN_QUESTION = (
    select(QUESTIONS)
    .where(
        QUESTIONS.c.athlete_id == bindparam("athlete"),
        QUESTIONS.c.state == QuestionState.OPEN.value,
        QUESTIONS.c.expires_at > bindparam("at"),
    )
    .order_by(QUESTIONS.c.id.desc())
    .limit(1)
)


class Questions:
    """At most one question is open with a person."""

    def __init__(self, work: Work) -> None:
        self._work = work

    def ask(
        self, athlete: AthleteId, payload: Mapping[str, Any], *, at: datetime, expires_at: datetime, message: int = 0
    ) -> Question:
        """The question, open; one that was open before is dropped."""
        self._work.connection.execute(
            update(QUESTIONS)
            .where(QUESTIONS.c.athlete_id == athlete, QUESTIONS.c.state == QuestionState.OPEN.value)
            .values(state=QuestionState.DROPPED.value)
        )
        id = QuestionId(self._work.take_ids(athlete))
        question = Question(id, athlete, dict(payload), at, expires_at, message)
        self._work.connection.execute(
            insert(QUESTIONS),
            {
                "athlete_id": athlete,
                "id": question.id,
                "payload": question.payload,
                "asked_at": at,
                "expires_at": expires_at,
                "message": message,
                "state": question.state.value,
            },
        )
        return question

    def open(self, athlete: AthleteId, at: datetime) -> Question | None:
        """The open question that has not expired at `at`."""
        row = self._work.connection.execute(OPEN_QUESTION, {"athlete": athlete, "at": at}).one_or_none()
        return None if row is None else _question(row)

    def since(self, athlete: AthleteId, first: datetime, most: int = 50) -> tuple[Question, ...]:
        """The latest questions asked after an instant, the newest first, whatever became of them."""
        asked = select(QUESTIONS).where(QUESTIONS.c.athlete_id == athlete, QUESTIONS.c.asked_at > first)
        rows = self._work.connection.execute(asked.order_by(QUESTIONS.c.id.desc()).limit(most))
        return tuple(_question(row) for row in rows)

    def get(self, athlete: AthleteId, question: QuestionId) -> Question | None:
        """A question by its id, whatever became of it (a button of an old question may still be tapped)."""
        return self._newest(athlete, QUESTIONS.c.id == question)

    def about_message(self, athlete: AthleteId, message: int) -> Question | None:
        """The latest question about one of her messages."""
        return self._newest(athlete, QUESTIONS.c.message == message)

    def update(self, question: Question, payload: Mapping[str, Any]) -> Question:
        """The same question with another payload."""
        self._update(question, payload=dict(payload))
        return replace(question, payload=dict(payload))

    def close(self, question: Question, state: QuestionState) -> Question:
        """The question, answered or dropped."""
        self._update(question, state=state.value)
        return replace(question, state=state)

    def _newest(self, athlete: AthleteId, which: ColumnElement[bool]) -> Question | None:
        query = select(QUESTIONS).where(QUESTIONS.c.athlete_id == athlete, which)
        row = self._work.connection.execute(query.order_by(QUESTIONS.c.id.desc()).limit(1)).one_or_none()
        return None if row is None else _question(row)

    def _update(self, question: Question, **values: Any) -> None:
        self._work.connection.execute(
            update(QUESTIONS)
            .where(QUESTIONS.c.athlete_id == question.athlete, QUESTIONS.c.id == question.id)
            .values(values)
        )


_LATER = OUTBOX.alias("later")
_BURIED = (
    select(func.count())
    .select_from(_LATER)
    .where(_LATER.c.athlete_id == bindparam("athlete"), _LATER.c.id > LIFT_LINES.c.outbox, _LATER.c.kind == SEND)
    .scalar_subquery()
)
LINES = (
    select(LIFT_LINES, _BURIED.label("buried"))
    .where(LIFT_LINES.c.athlete_id == bindparam("athlete"), LIFT_LINES.c.on_day == bindparam("on"))
    .order_by(LIFT_LINES.c.outbox)
)


class LiftLines:
    def __init__(self, work: Work) -> None:
        self._work = work

    def put(self, athlete: AthleteId, on: date, exercise: ExerciseName, outbox: OutboxId) -> None:
        """Nothing; this outgoing message is the line of the lift on that day from now on."""
        self.drop(athlete, on, exercise)
        self._work.connection.execute(
            insert(LIFT_LINES), {"athlete_id": athlete, "on_day": on, "exercise": exercise, "outbox": outbox}
        )

    def get(self, athlete: AthleteId, on: date, exercise: ExerciseName) -> LiftLine | None:
        """The line of a lift, with how many messages the bot has sent to her since."""
        return next(iter(self._lines(athlete, on, LIFT_LINES.c.exercise == exercise)), None)

    def of_day(self, athlete: AthleteId, on: date) -> tuple[LiftLine, ...]:
        """All lines of a day, in the order of their messages."""
        return self._lines(athlete, on)

    def drop(self, athlete: AthleteId, on: date, exercise: ExerciseName) -> None:
        """Nothing; the lift has no line on that day (its next set gets a new message)."""
        self._work.connection.execute(delete(LIFT_LINES).where(_line(athlete, on), LIFT_LINES.c.exercise == exercise))

    def _lines(self, athlete: AthleteId, on: date, *which: ColumnElement[bool]) -> tuple[LiftLine, ...]:
        rows = self._work.connection.execute(LINES.where(*which), {"athlete": athlete, "on": on})
        return tuple(LiftLine(row.on_day, ExerciseName(row.exercise), row.outbox, row.buried) for row in rows)


def _line(athlete: AthleteId, on: date) -> ColumnElement[bool]:
    return and_(LIFT_LINES.c.athlete_id == athlete, LIFT_LINES.c.on_day == on)


def _question(row: Row[Any]) -> Question:
    return Question(
        id=QuestionId(row.id),
        athlete=AthleteId(row.athlete_id),
        payload=row.payload,
        asked_at=row.asked_at,
        expires_at=row.expires_at,
        message=row.message,
        state=QuestionState(row.state),
    )
