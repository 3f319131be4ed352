"""Engines set up so that what is committed stays committed and writers wait for each other instead of failing."""

from __future__ import annotations

from pathlib import Path
from typing import Any

from sqlalchemy import Connection, Engine, create_engine, event, make_url
from sqlalchemy.exc import DBAPIError
from sqlalchemy.pool import StaticPool

BUSY_MILLISECONDS = 15_000
DEADLOCK_OR_SERIALIZATION = ("40P01", "40001")


def connect(url: str, *, foreign_keys: bool = True) -> Engine:
    """An engine for a SQLAlchemy URL; the folder of a SQLite file is made where it is missing."""
    where = make_url(url)
    if where.get_backend_name() != "sqlite":
        return create_engine(where, pool_pre_ping=True)
    if where.database in (None, "", ":memory:"):
        engine = create_engine(where, poolclass=StaticPool, connect_args={"check_same_thread": False})
    else:
        Path(str(where.database)).parent.mkdir(parents=True, exist_ok=True)
        engine = create_engine(where)
    _set_up_sqlite(engine, foreign_keys)
    return engine


def is_in_memory(engine: Engine) -> bool:
    """Whether the database lives in this process alone."""
    return isinstance(engine.pool, StaticPool)


def is_contention(error: DBAPIError) -> bool:
    """Whether another transaction was in the way and trying again may do."""
    if getattr(error.orig, "sqlstate", None) in DEADLOCK_OR_SERIALIZATION:
        return True
    return "database is locked" in str(error.orig)


def _set_up_sqlite(engine: Engine, foreign_keys: bool) -> None:
    @event.listens_for(engine, "connect")
    def _(connection: Any, _record: Any) -> None:
        # The driver begins transactions late and of the wrong kind; `begin` below does it instead.
        connection.isolation_level = None
        cursor = connection.cursor()
        cursor.execute(f"PRAGMA busy_timeout = {BUSY_MILLISECONDS}")
        cursor.execute("PRAGMA journal_mode = WAL")
        # FULL: a set that was answered as logged survives a power cut. NORMAL may lose the last commits.
        cursor.execute("PRAGMA synchronous = FULL")
        cursor.execute(f"PRAGMA foreign_keys = {'ON' if foreign_keys else 'OFF'}")
        cursor.close()

    @event.listens_for(engine, "begin")
    def _(connection: Connection) -> None:
        # A transaction that reads and then writes must hold the write lock from the start: taking it late fails at
        # once when another wrote in between, whatever the timeout.
        reading = connection.get_execution_options().get("reading", False)
        connection.exec_driver_sql("BEGIN" if reading else "BEGIN IMMEDIATE")


def wipe_traces(engine: Engine) -> None:
    """Nothing; on SQLite the log of changes beside the database file, which still holds what was erased, is emptied."""
    if engine.dialect.name == "sqlite":
        connection = engine.raw_connection()
        try:
            connection.cursor().execute("PRAGMA wal_checkpoint(TRUNCATE)")
        finally:
            connection.close()
