"""Plans, and choices for single days of them."""

from __future__ import annotations

from datetime import date, datetime

from sqlalchemy import BigInteger, Index
from sqlmodel import Field

from storage.tables.base import Fact, fact_arguments, table_of


class PlanRow(Fact, table=True):
    """An empty text: from that day on no plan is in force."""

    __tablename__ = "plan"
    __table_args__ = fact_arguments("plan")

    name: str
    text: str
    starts_on: date
    at: datetime
    coach: int | None = Field(default=None, sa_type=BigInteger)


class ChoiceRow(Fact, table=True):
    __tablename__ = "choice"
    __table_args__ = fact_arguments(
        "choice",
        Index("ix_choice_day", "athlete_id", "stands", "on_day"),
        Index("ix_choice_to_day", "athlete_id", "stands", "to_day"),
    )

    on_day: date
    kind: str
    at: datetime
    exercise: str | None = None
    to_exercise: str | None = None
    to_day: date | None = None


PLANS = table_of(PlanRow)
CHOICES = table_of(ChoiceRow)
