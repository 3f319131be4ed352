"""What all tables share: names for constraints, 64-bit ids, and the columns of a fact."""

from __future__ import annotations

from typing import Any, ClassVar

from sqlalchemy import BigInteger, Boolean, ForeignKeyConstraint, Index, Integer, MetaData, Table
from sqlmodel import Field, SQLModel

METADATA = MetaData(
    # Unnamed constraints cannot be dropped by a later migration.
    naming_convention={
        "ix": "ix_%(table_name)s_%(column_0_N_name)s",
        "uq": "uq_%(table_name)s_%(column_0_N_name)s",
        "ck": "ck_%(table_name)s_%(constraint_name)s",
        "fk": "fk_%(table_name)s_%(column_0_N_name)s",
        "pk": "pk_%(table_name)s",
    }
)

COUNTED = BigInteger().with_variant(Integer, "sqlite")
"""A key that the database counts up: SQLite does so for INTEGER alone (which holds 64 bits there)."""


class Row(SQLModel):
    metadata: ClassVar[MetaData] = METADATA


class Owned(Row):
    """A row that belongs to one athlete and has an id counted within her records."""

    athlete_id: int = Field(primary_key=True, sa_type=BigInteger)
    id: int = Field(primary_key=True, sa_type=BigInteger)


class Fact(Owned):
    """A row that undo reaches. `stands` follows from the two changes and is kept beside them for the indexes."""

    added_by: int = Field(sa_type=BigInteger)
    removed_by: int | None = Field(default=None, sa_type=BigInteger)
    stands: bool = Field(default=True, sa_type=Boolean)


def fact_arguments(table: str, *more: Any) -> tuple[Any, ...]:
    """The keys and indexes of a table of facts: undo finds what a change added and what it removed."""
    return (
        ForeignKeyConstraint(["athlete_id", "added_by"], ["change.athlete_id", "change.id"]),
        ForeignKeyConstraint(["athlete_id", "removed_by"], ["change.athlete_id", "change.id"]),
        Index(f"ix_{table}_added_by", "athlete_id", "added_by"),
        Index(f"ix_{table}_removed_by", "athlete_id", "removed_by"),
        *more,
        # Clustered by athlete: one person's rows lie side by side.
        {"sqlite_with_rowid": False},
    )


def table_of(row: type[Row]) -> Table:
    """The table that a class describes; statements are written against it."""
    table = row.__table__  # type: ignore[attr-defined]  # SQLModel adds it to table classes at run time
    assert isinstance(table, Table)
    return table
