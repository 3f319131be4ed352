"""Sets that were read before are recalled as they are in the database, and never as they nearly were."""

from __future__ import annotations

import json
from datetime import date

import pytest

from engine.values.ids import AthleteId
from engine.values.sets import SetRecord
from storage.database import Database, open_database
from storage.recall import Recall
from tests.storage.stories import AT, MONDAY, log, row


def all_sets(database: Database, athlete: AthleteId) -> tuple[SetRecord, ...]:
    with database.reading() as store:
        return store.sets.between(athlete, date.min, date.max)


def test_recalled_sets_equal_the_ones_read(url: str, database: Database, ana: AthleteId) -> None:
    with database.transaction() as store:
        log(store, ana, *[row(reps) for reps in range(1, 30)] * 50)
    recalled = all_sets(database, ana)
    fresh = open_database(url)

    assert len(recalled) == 29 * 50  # more than one statement reads
    assert all_sets(fresh, ana) == recalled == all_sets(fresh, ana)
    fresh.close()


def test_sets_of_a_transaction_rolled_back_are_not_recalled_under_their_numbers(
    database: Database, ana: AthleteId
) -> None:
    def roll_back() -> None:
        with database.transaction() as store:
            log(store, ana, row(1))
            assert store.sets.of_day(ana, MONDAY)[0].done.reps == 1
            raise RuntimeError

    with pytest.raises(RuntimeError):
        roll_back()
    with database.transaction() as store:
        log(store, ana, row(2))

    assert [record.done.reps for record in all_sets(database, ana)] == [2]


def test_what_another_process_logged_is_seen(url: str, database: Database, ana: AthleteId) -> None:
    other = open_database(url)
    for reps, writer in ((1, database), (2, other), (3, database)):
        with writer.transaction() as store:
            log(store, ana, row(reps))
        assert all_sets(database, ana) == all_sets(other, ana)
    other.close()


def test_nothing_of_an_erased_person_is_recalled_for_the_one_brought_back(database: Database, ana: AthleteId) -> None:
    with database.transaction() as store:
        log(store, ana, row(12))
        export = json.loads(store.belongings.as_json(ana))
    export["tables"]["set_record"][0]["reps"] = 10
    assert all_sets(database, ana)[0].done.reps == 12
    with database.transaction() as store:
        store.belongings.erase(ana)
        assert store.sets.of_day(ana, MONDAY) == ()
        back = store.belongings.bring_back(json.dumps(export))
        assert store.sets.of_day(back, MONDAY)[0].done.reps == 10

    assert back != ana  # an id is never given to two
    assert [record.done.reps for record in all_sets(database, back)] == [10]


def test_room_is_bounded_and_the_one_not_asked_for_longest_goes_first() -> None:
    recall = Recall(most=5)
    records = [SetRecord(id, row(), MONDAY, AT, id) for id in range(6)]  # type: ignore[arg-type]
    recall.keep(1, records[:2])
    recall.keep(2, records[:2])
    recall.of(1)
    recall.keep(3, records[:2])
    assert [len(recall.of(athlete)) for athlete in (1, 2, 3)] == [2, 0, 2]
    recall.forget(1)
    recall.keep(2, records[:3])
    assert [len(recall.of(athlete)) for athlete in (1, 2, 3)] == [0, 3, 2]
    recall.keep(4, records)  # too many for all the room: kept by nobody
    assert [len(recall.of(athlete)) for athlete in (1, 2, 3, 4)] == [0, 0, 0, 0]
