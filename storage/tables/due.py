"""What is due, and the ledger of what was done."""

from __future__ import annotations

from datetime import date, datetime
from typing import Any

from sqlalchemy import JSON, BigInteger, ForeignKeyConstraint, Index
from sqlmodel import Field

from storage.tables.base import Row, table_of


class DueRow(Row, table=True):
    __tablename__ = "due"
    __table_args__ = (
        ForeignKeyConstraint(["athlete_id"], ["person.id"]),
        Index("ix_due_state", "state", "due_at"),
        {"sqlite_with_rowid": False},
    )

    athlete_id: int = Field(primary_key=True, sa_type=BigInteger)
    kind: str = Field(primary_key=True)
    local_date: date = Field(primary_key=True)
    due_at: datetime
    payload: dict[str, Any] = Field(sa_type=JSON)
    state: str
    attempts: int = 0
    claimed_until: datetime | None = None
    done_at: datetime | None = None


DUE = table_of(DueRow)
