"""Open a database and run transactions in it."""

from __future__ import annotations

import threading
from collections.abc import Iterator
from contextlib import AbstractContextManager, contextmanager

from sqlalchemy import Engine
from sqlalchemy.exc import DBAPIError

from storage.connections import BUSY_MILLISECONDS, connect, is_contention, is_in_memory, wipe_traces
from storage.errors import Contended
from storage.migrate import bring_up
from storage.recall import Recall
from storage.store import Store
from storage.work import Work


class Database:
    """A database at its newest schema. Safe to share between threads; each transaction belongs to one."""

    def __init__(self, engine: Engine) -> None:
        self._engine = engine
        self._recall = Recall()
        # A database in memory has one connection, so one transaction at a time.
        self._turn = threading.Lock() if is_in_memory(engine) else None

    def transaction(self) -> AbstractContextManager[Store]:
        """One transaction: committed when the block ends, rolled back when it raises.

        Errors: Contended when another worker was in the way (a deadlock on PostgreSQL): run the whole block again.
        """
        return self._transaction(self._engine)

    def reading(self) -> AbstractContextManager[Store]:
        """A transaction that only reads: on SQLite it waits for no writer and holds none up."""
        return self._transaction(self._engine.execution_options(reading=True))

    @contextmanager
    def _transaction(self, engine: Engine) -> Iterator[Store]:
        with self._own_turn():
            try:
                with engine.begin() as connection:
                    work = Work(connection, self._recall)
                    yield Store(work)
                    work.finish()
                work.committed()
                if work.erased:
                    wipe_traces(engine)
            except DBAPIError as error:
                if is_contention(error):
                    raise Contended("another worker was in the way: run the transaction again") from error
                raise

    @contextmanager
    def _own_turn(self) -> Iterator[None]:
        if self._turn is None:
            yield
            return
        if not self._turn.acquire(timeout=BUSY_MILLISECONDS / 1000):
            raise Contended("another transaction is open in this database in memory: end it first")
        try:
            yield
        finally:
            self._turn.release()

    def close(self) -> None:
        """Nothing; all connections are closed."""
        self._engine.dispose()


def open_database(url: str) -> Database:
    """The database at a SQLAlchemy URL, created and brought to the newest schema where needed.

    ``sqlite:///path/to/file.db``, ``sqlite://`` (in memory, for one process), or
    ``postgresql+psycopg://user@host/name``.
    Errors: DatabaseTooNew when a newer version of the program has used it.
    """
    engine = connect(url)
    bring_up(engine, connect(url, foreign_keys=False))
    return Database(engine)
