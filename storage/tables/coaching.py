"""Who coaches whom."""

from __future__ import annotations

from datetime import datetime

from sqlalchemy import BigInteger, ForeignKeyConstraint, Index, UniqueConstraint
from sqlmodel import Field

from storage.tables.base import Row, table_of


class InvitationRow(Row, table=True):
    __tablename__ = "invitation"
    __table_args__ = (
        ForeignKeyConstraint(["athlete_id"], ["person.id"]),
        UniqueConstraint("code"),
        {"sqlite_with_rowid": False},
    )

    athlete_id: int = Field(primary_key=True, sa_type=BigInteger)  # the coach who invites
    code: str = Field(primary_key=True)
    expires_at: datetime
    used_at: datetime | None = None


class CoachLinkRow(Row, table=True):
    __tablename__ = "coach_link"
    __table_args__ = (
        ForeignKeyConstraint(["athlete_id"], ["person.id"]),
        ForeignKeyConstraint(["coach_id"], ["person.id"]),
        Index("ix_coach_link_coach", "coach_id", "athlete_id"),
        {"sqlite_with_rowid": False},
    )

    athlete_id: int = Field(primary_key=True, sa_type=BigInteger)
    coach_id: int = Field(primary_key=True, sa_type=BigInteger)
    consented_at: datetime
    permissions: str


INVITATIONS = table_of(InvitationRow)
COACH_LINKS = table_of(CoachLinkRow)
