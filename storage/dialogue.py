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

UNSETTLED = (QuestionState.OPEN.value, QuestionState.WAITING.value)
CURRENT = (
    select(QUESTIONS)
    .where(
        QUESTIONS.c.athlete_id == bindparam("athlete"),
        QUESTIONS.c.state.in_(UNSETTLED),
        QUESTIONS.c.expires_at > bindparam("at"),
    )
    .order_by(QUESTIONS.c.id.desc())
)
LAPSED = select(QUESTIONS).where(
    QUESTIONS.c.athlete_id == bindparam("athlete"),
    QUESTIONS.c.state == QuestionState.WAITING.value,
    QUESTIONS.c.expires_at <= bindparam("at"),
)


class Questions:
    """At most one question is open with a person."""

    def __init__(self, work: Work) -> None:
        self._work = work
        self._seen: tuple[AthleteId, datetime, tuple[Question, ...]] | None = None

    def ask(
        self, athlete: AthleteId, payload: Mapping[str, Any], *, at: datetime, expires_at: datetime, message: int = 0
    ) -> Question:
        """The question, open; one that was open before is dropped."""
        self._work.connection.execute(
            update(QUESTIONS)
            .where(QUESTIONS.c.athlete_id == athlete, QUESTIONS.c.state == QuestionState.OPEN.value)
            .values(state=QuestionState.DROPPED.value)
        )
        return self._add(Question(self._next(athlete), athlete, dict(payload), at, expires_at, message))

    def keep_waiting(
        self, athlete: AthleteId, payload: Mapping[str, Any], *, at: datetime, expires_at: datetime
    ) -> Question:
        """A question that waits beside the open one, whatever is asked meanwhile."""
        waiting = QuestionState.WAITING
        return self._add(Question(self._next(athlete), athlete, dict(payload), at, expires_at, 0, waiting))

    def open(self, athlete: AthleteId, at: datetime) -> Question | None:
        """The open question that has not expired at `at`."""
        return next((one for one in self._current(athlete, at) if one.state is QuestionState.OPEN), None)

    def waiting(self, athlete: AthleteId, at: datetime) -> tuple[Question, ...]:
        """The questions that wait at `at`, the newest first."""
        return tuple(one for one in self._current(athlete, at) if one.state is QuestionState.WAITING)

    def lapsed(self, athlete: AthleteId, at: datetime) -> tuple[Question, ...]:
        """The questions that waited until they expired, and are not settled."""
        rows = self._work.connection.execute(LAPSED, {"athlete": athlete, "at": at})
        return tuple(_question(row) for row in rows)

    def _current(self, athlete: AthleteId, at: datetime) -> tuple[Question, ...]:
        """What is open or waits, looked up once until something changes: each message asks for both."""
        if self._seen is None or self._seen[:2] != (athlete, at):
            rows = self._work.connection.execute(CURRENT, {"athlete": athlete, "at": at})
            self._seen = (athlete, at, tuple(_question(row) for row in rows))
        return self._seen[2]

    def _next(self, athlete: AthleteId) -> QuestionId:
        return QuestionId(self._work.take_ids(athlete))

    def _add(self, question: Question) -> Question:
        self._seen = None
        self._work.connection.execute(
            insert(QUESTIONS),
            {
                "athlete_id": question.athlete,
                "id": question.id,
                "payload": question.payload,
                "asked_at": question.asked_at,
                "expires_at": question.expires_at,
                "message": question.message,
                "state": question.state.value,
            },
        )
        return question

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
        self._seen = None
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
