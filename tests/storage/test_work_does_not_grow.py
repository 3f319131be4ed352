"""An answer costs the same after ten years as after a month: counted in steps of SQLite's machine, not in seconds."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from datetime import timedelta
from pathlib import Path

import pytest

from engine.values.ids import AthleteId, ExerciseName
from engine.values.sets import SetDone
from storage.connections import connect
from storage.database import open_database
from storage.records import ChangeKind
from storage.store import Store
from storage.work import Work
from tests.storage.stories import AT, MONDAY, answer, kg, log, row, said

EXERCISES = tuple(ExerciseName(f"exercise {n}") for n in range(8))
A_WEEK_AGO = MONDAY - timedelta(days=7)
A_MONTH, TEN_YEARS = 12, 1500
STEPS_AT_ONCE = 10

Ask = Callable[[Store, AthleteId], object]


@contextmanager
def opened(path: Path, days: int) -> Iterator[Store]:
    """A log of some training days, the last of them MONDAY, beside those of a few others."""
    url = f"sqlite:///{path}"
    database = open_database(url)
    with database.transaction() as store:
        for chat in range(1, 4):
            athlete = store.people.create("telegram", chat, f"person {chat}", AT).id
            for day in range(days if chat == 2 else A_MONTH):
                sets = [SetDone(name, 8, kg(str(50 + day % 40))) for name in EXERCISES]
                log(store, athlete, *sets, on=MONDAY - timedelta(days=2 * day), message=day)
                event = store.inbox.put([said("row", f"{chat} {day}", chat=chat, message=day)], AT)[0]
                store.inbox.done(event, AT)
                store.outbox.mark_sent(store.outbox.add(athlete, answer("row"), AT, inbound=event), event, AT)
    database.close()
    engine = connect(url)
    with engine.begin() as connection:
        yield Store(Work(connection))
    engine.dispose()


def steps(store: Store, ask: Ask) -> int:
    """How many steps SQLite's machine took for the second of two equal questions (the first warms up)."""
    athlete = store.people.find("telegram", 2)
    assert athlete is not None
    ask(store, athlete.id)
    driver = store.people._work.connection.connection.driver_connection
    assert driver is not None
    taken = 0

    def count() -> int:
        nonlocal taken
        taken += STEPS_AT_ONCE
        return 0

    driver.set_progress_handler(count, STEPS_AT_ONCE)
    ask(store, athlete.id)
    driver.set_progress_handler(None, 0)
    return taken


@pytest.fixture(scope="module")
def stores(tmp_path_factory: pytest.TempPathFactory) -> Iterator[tuple[Store, Store]]:
    folder = tmp_path_factory.mktemp("logs")
    with opened(folder / "month.db", A_MONTH) as short, opened(folder / "years.db", TEN_YEARS) as long:
        yield short, long


def log_and_undo(store: Store, athlete: AthleteId) -> None:
    log(store, athlete, row())
    store.changes.undo(athlete, AT)


def correct(store: Store, athlete: AthleteId) -> None:
    change = store.changes.begin(athlete, ChangeKind.CORRECTION, "correction", AT)
    store.sets.replace(change, [(record, row()) for record in store.sets.of_message(athlete, 3)])


def send(store: Store, athlete: AthleteId) -> None:
    store.outbox.add(athlete, answer("row"), AT)
    for one in store.outbox.claim("telegram", AT, lease=timedelta(minutes=1)):
        store.outbox.mark_sent(one.id, one.id, AT)


@pytest.mark.parametrize(
    "ask",
    [
        pytest.param(lambda s, a: s.sets.of_message(a, 3), id="sets of a message"),
        pytest.param(lambda s, a: s.sets.of_day(a, MONDAY), id="sets of a day"),
        pytest.param(lambda s, a: s.sets.recent(a, MONDAY), id="recent sets"),
        pytest.param(lambda s, a: s.sets.latest(a), id="latest set"),
        pytest.param(lambda s, a: s.sets.history(a, EXERCISES[0], days=5), id="last days of an exercise"),
        pytest.param(lambda s, a: s.sets.between(a, A_WEEK_AGO, MONDAY), id="a week"),
        pytest.param(lambda s, a: s.sets.between(a, A_WEEK_AGO, MONDAY, EXERCISES[:2]), id="a week of two"),
        pytest.param(lambda s, a: s.sets.of_athletes([a], A_WEEK_AGO, MONDAY), id="weeks of clients"),
        pytest.param(lambda s, a: s.sets.last_loads(a), id="last loads"),
        pytest.param(lambda s, a: s.sets.best_loads(a), id="best loads"),
        pytest.param(lambda s, a: s.sets.last_day(a), id="last day"),
        pytest.param(lambda s, a: s.sets.last_day(a, EXERCISES[0]), id="last day of an exercise"),
        pytest.param(lambda s, a: s.changes.latest(a, 3), id="latest changes"),
        pytest.param(log_and_undo, id="log and undo"),
        pytest.param(correct, id="a correction"),
        pytest.param(send, id="a message out"),
        pytest.param(lambda s, a: s.inbox.take_next("telegram", 2), id="nothing to handle"),
        pytest.param(lambda s, a: s.inbox.waiting(), id="no chat waits"),
        pytest.param(lambda s, a: s.inbox.of_message("telegram", 2, 3), id="versions of a message"),
        pytest.param(lambda s, a: s.outbox.of_platform("telegram", 2, 30), id="the message of a button"),
        pytest.param(lambda s, a: s.outbox.latest(a, 3), id="last messages"),
        pytest.param(lambda s, a: s.people.gone(a), id="blocked"),
    ],
)  # fmt: skip
def test_the_length_of_the_log_does_not_matter(stores: tuple[Store, Store], ask: Ask) -> None:
    short, long = stores

    assert steps(long, ask) <= 1.5 * steps(short, ask) + 5 * STEPS_AT_ONCE
