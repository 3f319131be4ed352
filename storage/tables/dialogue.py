"""Where a conversation stands."""

from __future__ import annotations

from datetime import date, datetime
from typing import Any

from sqlalchemy import JSON, BigInteger, ForeignKeyConstraint, Index
from sqlmodel import Field

from storage.tables.base import Owned, Row, table_of


class QuestionRow(Owned, table=True):
    __tablename__ = "question"
    __table_args__ = (
        ForeignKeyConstraint(["athlete_id"], ["person.id"]),
        Index("ix_question_state", "athlete_id", "state"),
        Index("ix_question_message", "athlete_id", "message"),
        {"sqlite_with_rowid": False},
    )

    payload: dict[str, Any] = Field(sa_type=JSON)
    asked_at: datetime
    expires_at: datetime
    message: int = Field(default=0, sa_type=BigInteger)
    state: str


class LiftLineRow(Row, table=True):
    __tablename__ = "lift_line"
    __table_args__ = (
        ForeignKeyConstraint(["athlete_id"], ["person.id"]),
        ForeignKeyConstraint(["outbox"], ["outbox.id"]),
        {"sqlite_with_rowid": False},
    )

    athlete_id: int = Field(primary_key=True, sa_type=BigInteger)
    on_day: date = Field(primary_key=True)
    exercise: str = Field(primary_key=True)
    outbox: int = Field(sa_type=BigInteger)


QUESTIONS = table_of(QuestionRow)
LIFT_LINES = table_of(LiftLineRow)
