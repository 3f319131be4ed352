"""A database in memory for each test, and for those that ask for `url` a PostgreSQL schema too where one is named."""

from __future__ import annotations

import os
from collections.abc import Iterator
from uuid import uuid4

import pytest
from sqlalchemy import create_engine, make_url, text

from storage.database import Database, open_database
from tests.bot.chatting import Chats
from tests.databases import in_memory

POSTGRES = os.environ.get("CHALKWIRE_TEST_POSTGRES", "")


@pytest.fixture
def database() -> Iterator[Database]:
    opened = in_memory()
    yield opened
    opened.close()


@pytest.fixture
def chats(database: Database) -> Chats:
    return Chats(database)


@pytest.fixture
def begun(chats: Chats) -> Chats:
    """A chat in which Ana has begun, in kilograms."""
    chats.says("ana", "/start", "skip", "kg")
    return chats


@pytest.fixture
def postgres_url() -> Iterator[str]:
    """An empty schema on the PostgreSQL server for tests."""
    if not POSTGRES:
        pytest.skip("CHALKWIRE_TEST_POSTGRES is not set")
    schema = f"test_{uuid4().hex}"
    server = create_engine(POSTGRES)
    with server.begin() as connection:
        connection.execute(text(f"CREATE SCHEMA {schema}"))
    yield make_url(POSTGRES).update_query_dict({"options": f"-csearch_path={schema}"}).render_as_string(False)
    with server.begin() as connection:
        connection.execute(text(f"DROP SCHEMA {schema} CASCADE"))
    server.dispose()


@pytest.fixture(params=["sqlite", "postgres"])
def either(request: pytest.FixtureRequest) -> Iterator[Database]:
    """A fresh database of each kind."""
    opened = in_memory() if request.param == "sqlite" else open_database(request.getfixturevalue("postgres_url"))
    yield opened
    opened.close()
