"""Every test here runs on SQLite and, where CHALKWIRE_TEST_POSTGRES names a server, on PostgreSQL too.

There each test has a schema of its own.
"""

from __future__ import annotations

import os
from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path
from uuid import uuid4

import pytest
from sqlalchemy import create_engine, make_url, text

from engine.values.ids import AthleteId
from storage.database import Database, open_database

POSTGRES = os.environ.get("CHALKWIRE_TEST_POSTGRES", "")
AT = datetime(2026, 3, 2, 18, 5, tzinfo=UTC)


@pytest.fixture(params=["sqlite", "postgres"])
def url(request: pytest.FixtureRequest, tmp_path: Path) -> Iterator[str]:
    """An empty database."""
    if request.param == "sqlite":
        yield f"sqlite:///{tmp_path}/log.db"
        return
    if not POSTGRES:
        pytest.skip("CHALKWIRE_TEST_POSTGRES is not set")
    schema = f"test_{uuid4().hex}"
    server = create_engine(POSTGRES)
    with server.begin() as connection:
        connection.execute(text(f"CREATE SCHEMA {schema}"))
    here = make_url(POSTGRES).update_query_dict({"options": f"-csearch_path={schema}"})
    yield here.render_as_string(hide_password=False)
    with server.begin() as connection:
        connection.execute(text(f"DROP SCHEMA {schema} CASCADE"))
    server.dispose()


@pytest.fixture
def database(url: str) -> Iterator[Database]:
    opened = open_database(url)
    yield opened
    opened.close()


@pytest.fixture
def other_database(tmp_path: Path) -> Iterator[Database]:
    """A second, empty database to bring things into."""
    opened = open_database(f"sqlite:///{tmp_path}/other.db")
    yield opened
    opened.close()


@pytest.fixture
def ana(database: Database) -> AthleteId:
    with database.transaction() as store:
        return store.people.create("telegram", 1, "Ana", AT).id


@pytest.fixture
def ben(database: Database) -> AthleteId:
    with database.transaction() as store:
        return store.people.create("telegram", 2, "Ben", AT).id
