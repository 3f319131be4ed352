"""Bring a database to the newest schema, without importing the migration tool where there is nothing to do."""

from __future__ import annotations

from pathlib import Path

from sqlalchemy import Connection, Engine, inspect, text

from storage.errors import DatabaseTooNew
from storage.tables import METADATA

HEAD = "0001"
"""The newest revision in `storage/migrations/versions`."""

VERSION = text("SELECT version_num FROM alembic_version")
STAMPS = (
    "CREATE TABLE alembic_version (version_num VARCHAR(32) NOT NULL,"
    " CONSTRAINT alembic_version_pkc PRIMARY KEY (version_num))",
    f"INSERT INTO alembic_version (version_num) VALUES ('{HEAD}')",
)
ONE_AT_A_TIME = text("SELECT pg_advisory_xact_lock(1129991243, 1)")
"""Two workers that start at once on an empty PostgreSQL database: the second waits."""


def bring_up(engine: Engine, for_migrations: Engine) -> None:
    """Nothing; the database is at HEAD.

    `for_migrations` is an engine to the same database that does not enforce foreign keys on SQLite: a migration that
    rebuilds a table there would delete what refers to it.
    Errors: DatabaseTooNew for a revision that this version does not know.
    """
    with engine.begin() as connection:
        if connection.dialect.name == "postgresql":
            connection.execute(ONE_AT_A_TIME)
        revision = _revision(connection)
        if revision == HEAD:
            return
        if revision is None:
            _create(connection)
            return
    with for_migrations.begin() as connection:
        if connection.dialect.name == "postgresql":
            connection.execute(ONE_AT_A_TIME)
        upgrade(connection)


def _revision(connection: Connection) -> str | None:
    if not inspect(connection).has_table("alembic_version"):
        return None
    revision: str | None = connection.execute(VERSION).scalar_one_or_none()
    return revision


def _create(connection: Connection) -> None:
    """An empty database gets the tables as they are now; a test holds that the migrations lead to the same."""
    METADATA.create_all(connection, checkfirst=False)
    for statement in STAMPS:
        connection.execute(text(statement))


def upgrade(connection: Connection, revision: str = "head") -> None:
    """Nothing; the migrations up to a revision have run in the connection's transaction."""
    from alembic import command  # imported here: it costs a quarter of a second
    from alembic.config import Config
    from alembic.util import CommandError

    config = Config()
    config.set_main_option("script_location", str(Path(__file__).parent / "migrations"))
    config.attributes["connection"] = connection
    try:
        command.upgrade(config, revision)
    except CommandError as error:
        raise DatabaseTooNew(str(_revision(connection))) from error
