"""The log: sets, notes, body weights.

A load is an integer of thousandths of its unit, beside unit and basis. Effort, seconds and metres are exact decimals
as text: they have no smallest step.
"""

from __future__ import annotations

from datetime import date, datetime

from sqlalchemy import BigInteger, Index
from sqlmodel import Field

from storage.tables.base import Fact, fact_arguments, table_of


class SetRow(Fact, table=True):
    """`mass` is the load in units that kilograms and pounds are both whole multiples of, to order by."""

    __tablename__ = "set_record"
    __table_args__ = fact_arguments(
        "set_record",
        Index("ix_set_record_exercise", "athlete_id", "stands", "exercise", "on_day", "place"),
        Index("ix_set_record_day", "athlete_id", "stands", "on_day", "place"),
        Index("ix_set_record_place", "athlete_id", "stands", "place"),
        Index("ix_set_record_mass", "athlete_id", "stands", "exercise", "mass"),
        # One column more than the index by place, so that SQLite takes it for the sets of a message.
        Index("ix_set_record_message", "athlete_id", "message", "stands", "place"),
    )

    exercise: str
    on_day: date
    at: datetime
    place: int = Field(sa_type=BigInteger)
    message: int = Field(default=0, sa_type=BigInteger)
    reps: int
    thousandths: int | None = Field(default=None, sa_type=BigInteger)
    unit: str | None = None
    basis: str | None = None
    mass: int | None = Field(default=None, sa_type=BigInteger)
    rir: str | None = None
    as_rpe: bool = False
    seconds: str | None = None
    metres: str | None = None
    kind: str
    failure: bool = False
    missed: bool = False
    side: str | None = None


class NoteRow(Fact, table=True):
    __tablename__ = "note"
    __table_args__ = fact_arguments(
        "note",
        Index("ix_note_day", "athlete_id", "stands", "on_day"),
        Index("ix_note_message", "athlete_id", "message"),
    )

    text: str
    on_day: date
    at: datetime
    exercise: str | None = None
    pain: bool = False
    shared: bool = False
    message: int = Field(default=0, sa_type=BigInteger)


class BodyWeightRow(Fact, table=True):
    __tablename__ = "body_weight"
    __table_args__ = fact_arguments("body_weight", Index("ix_body_weight_day", "athlete_id", "stands", "on_day"))

    thousandths: int = Field(sa_type=BigInteger)
    unit: str
    basis: str
    on_day: date
    at: datetime


SETS = table_of(SetRow)
NOTES = table_of(NoteRow)
BODY_WEIGHTS = table_of(BodyWeightRow)
