"""Moving from a SQLite file to PostgreSQL loses nothing, changes nothing, and gives no id twice."""

from __future__ import annotations

import importlib.util
import os
from collections.abc import Iterator
from datetime import UTC, date, datetime
from decimal import Decimal
from pathlib import Path
from types import ModuleType
from uuid import uuid4

import pytest
from sqlalchemy import create_engine, func, make_url, select, text

from engine.values.ids import ExerciseName
from engine.values.load import Load, Unit
from engine.values.sets import SetDone
from storage.connections import connect
from storage.database import open_database
from storage.records import ChangeKind
from storage.tables import METADATA

POSTGRES = os.environ.get("CHALKWIRE_TEST_POSTGRES", "")
AT = datetime(2026, 3, 2, 18, 5, tzinfo=UTC)
DAY = date(2026, 3, 2)
ROW = SetDone(ExerciseName("barbell row"), 12, Load(Decimal("52.5"), Unit.KG))


def script() -> ModuleType:
    path = Path(__file__).parents[2] / "deploy" / "copy_database.py"
    spec = importlib.util.spec_from_file_location("copy_database", path)
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


@pytest.fixture
def target() -> Iterator[str]:
    """An empty place on the PostgreSQL server."""
    if not POSTGRES:
        pytest.skip("CHALKWIRE_TEST_POSTGRES is not set")
    schema = f"move_{uuid4().hex}"
    server = create_engine(POSTGRES)
    with server.begin() as connection:
        connection.execute(text(f"CREATE SCHEMA {schema}"))
    here = make_url(POSTGRES).update_query_dict({"options": f"-csearch_path={schema}"})
    yield here.render_as_string(hide_password=False)
    with server.begin() as connection:
        connection.execute(text(f"DROP SCHEMA {schema} CASCADE"))
    server.dispose()


@pytest.fixture
def source(tmp_path: Path) -> str:
    """A file with two people, a set that stands and one that was undone, and a third person who is erased again."""
    url = f"sqlite:///{tmp_path}/old.db"
    database = open_database(url)
    with database.transaction() as store:
        ana = store.people.create("telegram", 1, "Ana", AT).id
        store.people.create("telegram", 2, "Ben", AT)
        gone = store.people.create("telegram", 3, "Cleo", AT).id
        first = store.changes.begin(ana, ChangeKind.SETS, "1 set of barbell row", AT)
        store.sets.add(first, [ROW], on=DAY, at=AT, message=7)
        second = store.changes.begin(ana, ChangeKind.SETS, "1 set of barbell row", AT)
        store.sets.add(second, [ROW], on=DAY, at=AT, message=8)
        store.changes.undo(ana, AT)
        store.belongings.erase(gone)
    database.close()
    return url


def rows(url: str) -> dict[str, list[tuple[object, ...]]]:
    engine = connect(url)
    with engine.begin() as connection:
        found = {
            table.name: [
                # What is empty is told apart from a JSON null.
                tuple(row) + tuple(row_is_null)
                for row, row_is_null in zip(
                    connection.execute(select(table).order_by(*table.primary_key.columns)).all(),
                    connection.execute(
                        select(*(column.is_(None) for column in table.columns)).order_by(*table.primary_key.columns)
                    ).all(),
                    strict=True,
                )
            ]
            for table in METADATA.sorted_tables
        }
    engine.dispose()
    return found


def test_every_row_arrives_equal(source: str, target: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert script().main([source, target]) == 0

    assert rows(target) == rows(source)
    assert "person: 2" in capsys.readouterr().out


def test_the_next_person_gets_an_id_that_nobody_had(source: str, target: str) -> None:
    script().main([source, target])

    moved, old = open_database(target), open_database(source)
    with moved.transaction() as store:
        dora = store.people.create("telegram", 4, "Dora", AT).id
    with old.transaction() as store:
        as_it_would_have_been = store.people.create("telegram", 4, "Dora", AT).id
    moved.close()
    old.close()
    assert dora == as_it_would_have_been


def test_a_database_with_people_in_it_is_not_written_to(
    source: str, target: str, capsys: pytest.CaptureFixture[str]
) -> None:
    script().main([source, target])
    before = rows(target)

    assert script().main([source, target]) == 1
    assert rows(target) == before
    assert "not empty" in capsys.readouterr().err


def test_the_other_way_round_is_refused(source: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert script().main([source, source]) == 2
    assert "sqlite:///" in capsys.readouterr().err


def test_the_old_file_stays_as_it_was(source: str, target: str) -> None:
    before = rows(source)
    script().main([source, target])

    assert rows(source) == before
    engine = connect(source)
    with engine.begin() as connection:
        people = connection.execute(select(func.count()).select_from(METADATA.tables["person"])).scalar_one()
    engine.dispose()
    assert people == 2
