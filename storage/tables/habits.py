"""Settings, shorthands, exercises of one's own, settled ambiguities. The row that stands last counts."""

from __future__ import annotations

from typing import Any

from sqlalchemy import JSON
from sqlmodel import Field

from storage.tables.base import Fact, fact_arguments, table_of


class SettingRow(Fact, table=True):
    __tablename__ = "setting"
    __table_args__ = fact_arguments("setting")

    key: str
    content: Any = Field(sa_type=JSON)


class ShorthandRow(Fact, table=True):
    __tablename__ = "shorthand"
    __table_args__ = fact_arguments("shorthand")

    shorthand: str
    exercise: str


class OwnExerciseRow(Fact, table=True):
    __tablename__ = "own_exercise"
    __table_args__ = fact_arguments("own_exercise")

    name: str
    content: dict[str, Any] = Field(sa_type=JSON)


class SettledRow(Fact, table=True):
    __tablename__ = "settled"
    __table_args__ = fact_arguments("settled")

    doubt: str
    term: str
    answer: str


SETTINGS = table_of(SettingRow)
SHORTHANDS = table_of(ShorthandRow)
OWN_EXERCISES = table_of(OwnExerciseRow)
SETTLED = table_of(SettledRow)
