"""Where a conversation stands: the open question, and which message is the line of which lift."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date, datetime
from typing import Any

from engine.values.ids import AthleteId, ExerciseName
from storage.envelopes import OutboxId
from storage.records import LiftLine, Question, QuestionId, QuestionState
from storage.work import Work


class Questions:
    """At most one question is open with a person."""

    def __init__(self, work: Work) -> None:
        self._work = work

    def ask(
        self, athlete: AthleteId, payload: Mapping[str, Any], *, at: datetime, expires_at: datetime, message: int = 0
    ) -> Question:
        """The question, open; one that was open before is dropped."""
        raise NotImplementedError

    def open(self, athlete: AthleteId, at: datetime) -> Question | None:
        """The open question that has not expired at `at`."""
        raise NotImplementedError

    def get(self, athlete: AthleteId, question: QuestionId) -> Question | None:
        """A question by its id, whatever became of it (a button of an old question may still be tapped)."""
        raise NotImplementedError

    def about_message(self, athlete: AthleteId, message: int) -> Question | None:
        """The latest question about one of her messages."""
        raise NotImplementedError

    def update(self, question: Question, payload: Mapping[str, Any]) -> Question:
        """The same question with another payload."""
        raise NotImplementedError

    def close(self, question: Question, state: QuestionState) -> Question:
        """The question, answered or dropped."""
        raise NotImplementedError


class LiftLines:
    def __init__(self, work: Work) -> None:
        self._work = work

    def put(self, athlete: AthleteId, on: date, exercise: ExerciseName, outbox: OutboxId) -> None:
        """Nothing; this outgoing message is the line of the lift on that day from now on."""
        raise NotImplementedError

    def get(self, athlete: AthleteId, on: date, exercise: ExerciseName) -> LiftLine | None:
        """The line of a lift, with how many messages the bot has sent to her since."""
        raise NotImplementedError

    def of_day(self, athlete: AthleteId, on: date) -> tuple[LiftLine, ...]:
        """All lines of a day, in the order of their messages."""
        raise NotImplementedError

    def drop(self, athlete: AthleteId, on: date, exercise: ExerciseName) -> None:
        """Nothing; the lift has no line on that day (its next set gets a new message)."""
        raise NotImplementedError
