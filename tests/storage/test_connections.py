"""What SQLite must be told so that a set answered as logged stays logged."""

from __future__ import annotations

import threading
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

import pytest
from sqlalchemy import text
from sqlalchemy.exc import IntegrityError

from engine.values.ids import AthleteId
from storage.connections import connect
from storage.database import open_database
from storage.errors import Contended
from tests.storage.stories import AT, SEVERAL_WRITERS, log, row


@pytest.mark.parametrize(
    ("pragma", "value"),
    [
        pytest.param("journal_mode", "wal", id="readers do not wait for the writer"),
        pytest.param("synchronous", 2, id="a commit is on the disk"),
        pytest.param("foreign_keys", 1, id="rows refer to rows that are there"),
    ],
)
def test_sqlite_is_set_up(tmp_path: Path, pragma: str, value: object) -> None:
    engine = connect(f"sqlite:///{tmp_path}/log.db")
    with engine.connect() as connection:
        assert connection.execute(text(f"PRAGMA {pragma}")).scalar_one() == value
    engine.dispose()


def test_the_folder_of_the_file_is_made(tmp_path: Path) -> None:
    open_database(f"sqlite:///{tmp_path}/not/yet/there/log.db").close()

    assert (tmp_path / "not/yet/there/log.db").exists()


def test_a_database_in_memory_lives_as_long_as_it_is_open() -> None:
    database = open_database("sqlite://")
    with database.transaction() as store:
        ana = store.people.create("terminal", 1, "Ana", AT).id
        log(store, ana, row())
    with database.reading() as store:
        assert store.sets.count(ana) == 1
    database.close()


def test_a_fact_of_nobodys_change_is_refused(url: str) -> None:
    open_database(url).close()
    engine = connect(url)
    with pytest.raises(IntegrityError), engine.begin() as connection:
        connection.execute(
            text(
                "INSERT INTO settled (athlete_id, id, added_by, stands, doubt, term, answer)"
                " VALUES (1, 1, 99, :yes, 'a', 'b', 'c')"
            ),
            {"yes": True},
        )
    engine.dispose()


def test_a_transaction_inside_another_does_not_hang_in_memory(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("storage.database.BUSY_MILLISECONDS", 10)
    database = open_database("sqlite://")
    with database.transaction(), pytest.raises(Contended), database.transaction():
        pass
    database.close()


@SEVERAL_WRITERS
def test_a_deadlock_is_told_as_contention(url: str) -> None:
    database = open_database(url)
    with database.transaction() as store:
        ana, ben = (store.people.create("telegram", chat, "someone", AT).id for chat in (1, 2))
    both_hold_one = threading.Barrier(2)

    def work(first: AthleteId, second: AthleteId) -> str:
        try:
            with database.transaction() as store:
                store.people.lock(first)
                both_hold_one.wait()
                store.people.lock(second)
        except Contended:
            return "again"
        return "done"

    with ThreadPoolExecutor(2) as pool:
        ends = [pool.submit(work, *pair) for pair in ((ana, ben), (ben, ana))]
        assert sorted(end.result() for end in ends) == ["again", "done"]
    database.close()
