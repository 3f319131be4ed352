"""Copy a SQLite database into an empty PostgreSQL database: the move from one machine to many.

    .venv/bin/python deploy/copy_database.py sqlite:///chalkwire.db postgresql+psycopg://chalkwire@db.example/chalkwire

Stop the bot first. The SQLite file is only read. Everything is copied in one transaction or nothing is.
"""

from __future__ import annotations

import sys
from collections.abc import Sequence
from typing import Any

from sqlalchemy import JSON, Column, Connection, Table, bindparam, func, insert, select, text
from sqlalchemy.exc import OperationalError
from sqlalchemy.types import TypeEngine

from storage.connections import connect
from storage.database import open_database
from storage.errors import DatabaseTooNew
from storage.tables import METADATA, PEOPLE

ROWS_AT_ONCE = 1_000


class NotEmpty(Exception):
    """The database to copy into holds people already."""


def main(arguments: Sequence[str]) -> int:
    """The exit status: 0 when all is copied."""
    match arguments:
        case [source, target] if source.startswith("sqlite:") and target.startswith("postgresql"):
            pass
        case _:
            print(__doc__, file=sys.stderr)
            return 2
    try:
        copied = copy(source, target)
    except (NotEmpty, OperationalError, DatabaseTooNew) as problem:
        print(f"Nothing was copied. {problem}", file=sys.stderr)
        return 1
    for table, rows in copied.items():
        print(f"{table}: {rows}")
    print("Copied. Set CHALKWIRE_DB to the new database and start the bot.")
    return 0


def copy(source: str, target: str) -> dict[str, int]:
    """The number of rows copied for each table.

    Errors: NotEmpty when `target` holds people already.
    """
    # Opening brings both to the same, newest schema.
    for url in (source, target):
        open_database(url).close()
    old, new = connect(source), connect(target)
    with old.execution_options(reading=True).begin() as reading, new.begin() as writing:
        if writing.execute(select(func.count()).select_from(PEOPLE)).scalar_one():
            raise NotEmpty("The database to copy into is not empty; expected a new one. Try: createdb chalkwire2")
        copied = {table.name: _copy_table(table, reading, writing) for table in METADATA.sorted_tables}
        _go_on_counting(reading, writing)
    old.dispose()
    new.dispose()
    return copied


def _copy_table(table: Table, reading: Connection, writing: Connection) -> int:
    rows = 0
    columns = {column.name: bindparam(column.name, type_=_empty_stays_empty(column)) for column in table.columns}
    for batch in reading.execute(select(table)).mappings().partitions(ROWS_AT_ONCE):
        writing.execute(insert(table).values(columns), [dict(row) for row in batch])
        rows += len(batch)
    return rows


def _empty_stays_empty(column: Column[Any]) -> TypeEngine[Any]:
    """A JSON column takes None for a JSON null; where it may be empty, None is that."""
    return JSON(none_as_null=bool(column.nullable)) if isinstance(column.type, JSON) else column.type


def _go_on_counting(reading: Connection, writing: Connection) -> None:
    """An id that was given once is never given again, also where its row is erased."""
    counters = reading.execute(text("SELECT name, seq FROM sqlite_sequence")).all()
    for table, last in counters:
        sequence = func.pg_get_serial_sequence(table, "id")
        writing.execute(select(func.setval(sequence, last)))


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
