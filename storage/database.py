"""Open a database and run transactions in it."""

from __future__ import annotations

from contextlib import AbstractContextManager

from storage.store import Store


class Database:
    """A database at its newest schema. Safe to share between threads; each transaction belongs to one."""

    def transaction(self) -> AbstractContextManager[Store]:
        """One transaction: committed when the block ends, rolled back when it raises.

        Errors: Contended when another worker was in the way (a deadlock on PostgreSQL): run the whole block again.
        """
        raise NotImplementedError

    def close(self) -> None:
        """Nothing; all connections are closed."""
        raise NotImplementedError


def open_database(url: str) -> Database:
    """The database at a SQLAlchemy URL, created and brought to the newest schema where needed.

    ``sqlite:///path/to/file.db``, ``sqlite://`` (in memory, for one process), or
    ``postgresql+psycopg://user@host/name``.
    """
    raise NotImplementedError
