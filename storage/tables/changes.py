"""The steps that undo and redo walk."""

from __future__ import annotations

from datetime import datetime

from sqlalchemy import BigInteger, ForeignKeyConstraint, Index
from sqlmodel import Field

from storage.tables.base import Owned, table_of


class ChangeRow(Owned, table=True):
    """`undone_place` is drawn from the same counter as ids, so it says what came after the undo."""

    __tablename__ = "change"
    __table_args__ = (
        ForeignKeyConstraint(["athlete_id"], ["person.id"]),
        Index("ix_change_undone", "athlete_id", "by", "undone_place", "id"),
        Index("ix_change_inbound", "athlete_id", "inbound"),
        {"sqlite_with_rowid": False},
    )

    by: int = Field(sa_type=BigInteger)
    kind: str
    label: str
    at: datetime
    inbound: int | None = Field(default=None, sa_type=BigInteger)
    undone_at: datetime | None = None
    undone_place: int | None = Field(default=None, sa_type=BigInteger)


CHANGES = table_of(ChangeRow)
