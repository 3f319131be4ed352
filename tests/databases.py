"""Databases in memory for tests, which hand on to each other what is not the product's work but costs most of a test.

An engine keeps the SQL it has compiled, and each new one compiles every statement anew: here an engine goes from one
test to the next. The tables are copied from a database that `open_database` made. What a test stored is gone with its
connection, and what the product remembers with its `Database`.
"""

from __future__ import annotations

from functools import cache
from sqlite3 import Connection, connect
from typing import cast

from sqlalchemy import Engine

from storage import connections
from storage.database import Database, open_database

SPARE: list[Engine] = []
"""Engines that no open database has."""


class Lent(Database):
    """A database in memory whose engine serves another test once it is closed."""

    _is_open = True

    def close(self) -> None:
        """Nothing; what was stored is gone."""
        if self._is_open:
            self._is_open = False
            super().close()
            SPARE.append(self._engine)


def in_memory() -> Database:
    """An empty database, its tables as `open_database("sqlite://")` makes them."""
    engine = SPARE.pop() if SPARE else connections.connect("sqlite://")
    _tables().backup(_driver(engine))
    return Lent(engine)


@cache
def _tables() -> Connection:
    """A copy of an empty database."""
    database, copy = open_database("sqlite://"), connect(":memory:")
    _driver(database._engine).backup(copy)
    database.close()
    return copy


def _driver(engine: Engine) -> Connection:
    """The one connection of an engine to a database in memory."""
    pooled = engine.raw_connection()
    try:
        return cast(Connection, pooled.driver_connection)
    finally:
        pooled.close()
