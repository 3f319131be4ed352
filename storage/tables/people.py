"""Who is behind a chat."""

from __future__ import annotations

from datetime import datetime

from sqlalchemy import BigInteger, UniqueConstraint
from sqlmodel import Field

from storage.tables.base import COUNTED, Row, table_of


class PersonRow(Row, table=True):
    """`last_id` is the last id given out within this person's records."""

    __tablename__ = "person"
    __table_args__ = (UniqueConstraint("source", "chat"), {"sqlite_autoincrement": True})

    id: int | None = Field(default=None, primary_key=True, sa_type=COUNTED)
    source: str
    chat: int = Field(sa_type=BigInteger)
    name: str
    roles: str
    since: datetime
    reachable: bool = True
    last_id: int = Field(default=0, sa_type=BigInteger)


PEOPLE = table_of(PersonRow)
