"""Inbox, outbox, and what is known of each source of messages."""

from __future__ import annotations

from datetime import datetime
from typing import Any

from sqlalchemy import JSON, BigInteger, ForeignKeyConstraint, Index, UniqueConstraint
from sqlmodel import Field

from storage.tables.base import COUNTED, Row, table_of


class SourceRow(Row, table=True):
    """`poll_offset`: stored up to here. `held_until`: the platform asked for a pause."""

    __tablename__ = "source"

    source: str = Field(primary_key=True)
    poll_offset: int | None = Field(default=None, sa_type=BigInteger)
    held_until: datetime | None = None


class InboundRow(Row, table=True):
    """`athlete_id` is empty until the chat belongs to somebody."""

    __tablename__ = "inbound"
    __table_args__ = (
        UniqueConstraint("source", "key"),
        Index("ix_inbound_state", "state", "source", "chat", "place", "id"),
        Index("ix_inbound_message", "source", "chat", "message"),
        {"sqlite_autoincrement": True},
    )

    athlete_id: int | None = Field(default=None, sa_type=BigInteger)
    id: int | None = Field(default=None, primary_key=True, sa_type=COUNTED)
    source: str
    key: str
    chat: int = Field(sa_type=BigInteger)
    kind: str
    message: int = Field(sa_type=BigInteger)
    text: str
    at: datetime
    received_at: datetime
    name: str
    document_name: str | None = None
    document: bytes | None = None
    document_trouble: str = ""
    document_reference: str = ""
    place: int = Field(default=0, sa_type=BigInteger)
    state: str
    error: str = ""
    handled_at: datetime | None = None


class BroadcastRow(Row, table=True):
    __tablename__ = "broadcast"
    __table_args__ = ({"sqlite_autoincrement": True},)

    id: int | None = Field(default=None, primary_key=True, sa_type=COUNTED)
    text: str
    at: datetime


class OutboxRow(Row, table=True):
    __tablename__ = "outbox"
    __table_args__ = (
        ForeignKeyConstraint(["athlete_id"], ["person.id"]),
        UniqueConstraint("athlete_id", "dedupe_key"),
        Index("ix_outbox_athlete", "athlete_id", "id"),
        Index("ix_outbox_about", "about", "id"),
        Index("ix_outbox_state", "state", "source", "lane", "id"),
        Index("ix_outbox_chat", "source", "chat", "state", "lane", "id"),
        Index("ix_outbox_platform", "source", "chat", "platform_message"),
        Index("ix_outbox_inbound", "inbound"),
        Index("ix_outbox_broadcast", "broadcast_id", "state"),
        {"sqlite_autoincrement": True},
    )

    athlete_id: int = Field(sa_type=BigInteger)
    id: int | None = Field(default=None, primary_key=True, sa_type=COUNTED)
    about: int | None = Field(default=None, sa_type=BigInteger)
    source: str
    chat: int = Field(sa_type=BigInteger)
    kind: str
    text: str
    buttons: list[Any] = Field(sa_type=JSON)
    extras: dict[str, Any] = Field(sa_type=JSON)
    edits: int | None = Field(default=None, sa_type=BigInteger)
    message: int | None = Field(default=None, sa_type=BigInteger)
    silent: bool = False
    attachment_name: str | None = None
    attachment: bytes | None = None
    attachment_is_picture: bool = False
    lane: int
    dedupe_key: str | None = None
    broadcast_id: int | None = Field(default=None, sa_type=BigInteger)
    inbound: int | None = Field(default=None, sa_type=BigInteger)
    at: datetime
    state: str
    attempts: int = 0
    not_before: datetime | None = None
    claimed_until: datetime | None = None
    platform_message: int | None = Field(default=None, sa_type=BigInteger)
    sent_at: datetime | None = None
    error: str = ""


SOURCES = table_of(SourceRow)
INBOUND = table_of(InboundRow)
BROADCASTS = table_of(BroadcastRow)
OUTBOX = table_of(OutboxRow)
