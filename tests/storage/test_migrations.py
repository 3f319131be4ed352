"""The migrations lead from nothing to the tables of the program, and the program knows where its database stands."""

from __future__ import annotations

import subprocess
import sys
from collections.abc import Mapping
from pathlib import Path

import pytest
from alembic.autogenerate import compare_metadata
from alembic.config import Config
from alembic.migration import MigrationContext
from alembic.script import ScriptDirectory
from sqlalchemy import Connection, inspect, text

import storage.migrations
from storage.connections import connect
from storage.database import open_database
from storage.errors import DatabaseTooNew
from storage.migrate import HEAD, upgrade
from storage.tables import METADATA


def schema(connection: Connection) -> Mapping[str, object]:
    """Everything the database says of its tables."""
    if connection.dialect.name == "sqlite":
        rows = connection.execute(text("SELECT name, sql FROM sqlite_master WHERE name != 'alembic_version'"))
        return {name: " ".join((sql or "").replace('"', "").split()) for name, sql in rows}
    seen = inspect(connection)
    return {
        table: (
            [(c["name"], str(c["type"]), c["nullable"], c["default"]) for c in seen.get_columns(table)],
            seen.get_pk_constraint(table),
            sorted(seen.get_foreign_keys(table), key=str),
            sorted(seen.get_indexes(table), key=str),
            sorted(seen.get_unique_constraints(table), key=str),
        )
        for table in seen.get_table_names()
        if table != "alembic_version"
    }


def test_migrations_from_nothing_give_the_tables_of_the_program(url: str) -> None:
    engine = connect(url)
    with engine.begin() as connection:
        upgrade(connection)
        migrated = schema(connection)
        differences = compare_metadata(MigrationContext.configure(connection), METADATA)
        connection.execute(text("DROP TABLE alembic_version"))
        METADATA.drop_all(connection)
    open_database(url).close()
    with engine.connect() as connection:
        created = schema(connection)
    engine.dispose()

    assert differences == []
    assert migrated == created


def test_the_program_knows_the_newest_revision() -> None:
    config = Config()
    config.set_main_option("script_location", str(Path(storage.migrations.__path__[0])))

    assert ScriptDirectory.from_config(config).get_heads() == [HEAD]


def test_a_database_made_by_migrations_is_opened_as_it_is(url: str) -> None:
    engine = connect(url)
    with engine.begin() as connection:
        upgrade(connection)
    engine.dispose()
    database = open_database(url)

    with database.transaction() as store:
        assert store.people.everyone() == ()
    database.close()


def test_an_older_database_is_brought_up(url: str, monkeypatch: pytest.MonkeyPatch) -> None:
    opened: list[str] = []
    open_database(url).close()
    engine = connect(url)
    # As if this program were one revision further: it must hand over to the migration tool.
    monkeypatch.setattr("storage.migrate.HEAD", "newer")
    monkeypatch.setattr("storage.migrate.upgrade", lambda connection: opened.append(connection.dialect.name))
    open_database(url).close()

    assert opened == [engine.dialect.name]
    engine.dispose()


def test_a_database_of_a_newer_version_is_refused_with_what_to_do(url: str) -> None:
    open_database(url).close()
    engine = connect(url)
    with engine.begin() as connection:
        connection.execute(text("UPDATE alembic_version SET version_num = 'from the future'"))
    engine.dispose()

    with pytest.raises(DatabaseTooNew, match="start the newer version"):
        open_database(url)


def test_opening_an_up_to_date_database_leaves_the_migration_tool_alone(tmp_path: Path) -> None:
    url = f"sqlite:///{tmp_path}/log.db"
    open_database(url).close()
    code = (
        f"import sys; from storage.database import open_database; open_database({url!r});"
        " print('alembic' in sys.modules)"
    )
    ran = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)

    assert ran.stdout.strip() == "False"
