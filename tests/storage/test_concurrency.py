"""Several threads, several workers: nobody fails, nobody does the same thing twice."""

from __future__ import annotations

import threading
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from datetime import timedelta

from engine.values.ids import AthleteId
from storage.database import Database, open_database
from storage.records import ChangeKind
from tests.storage.stories import AT, MONDAY, SEVERAL_WRITERS, answer, log, row, said

LEASE = timedelta(seconds=30)


def at_once(workers: int, work: Callable[[int], object]) -> list[object]:
    """What `work` gave in each of several threads started together; its first error is raised."""
    start = threading.Barrier(workers)

    def run(worker: int) -> object:
        start.wait()
        return work(worker)

    with ThreadPoolExecutor(workers) as pool:
        return [future.result() for future in [pool.submit(run, worker) for worker in range(workers)]]


def test_four_threads_that_read_and_then_write_all_succeed(database: Database, ana: AthleteId) -> None:
    def work(worker: int) -> None:
        for n in range(15):
            with database.transaction() as store:
                seen = store.sets.count(ana)
                log(store, ana, row(), message=100 * worker + n)
                assert store.sets.count(ana) == seen + 1 or store.sets.count(ana) > seen

    at_once(4, work)
    with database.reading() as store:
        sets = store.sets.of_day(ana, MONDAY)
    assert len({record.id for record in sets}) == len({record.message for record in sets}) == 60


def test_two_databases_open_on_one_file_do_not_lose_each_others_work(
    url: str, database: Database, ana: AthleteId
) -> None:
    other = open_database(url)

    def work(worker: int) -> None:
        for _ in range(15):
            with (database, other)[worker].transaction() as store:
                log(store, ana, row())

    at_once(2, work)
    with other.reading() as store:
        assert store.sets.count(ana) == 30
    other.close()


def test_two_workers_that_start_at_once_on_an_empty_database(url: str) -> None:
    opened = at_once(2, lambda worker: open_database(url))
    for database in opened:
        assert isinstance(database, Database)
        with database.transaction() as store:
            assert store.people.everyone() == ()
        database.close()


def test_an_event_is_handled_by_one_worker_alone_and_in_order(database: Database, ana: AthleteId) -> None:
    with database.transaction() as store:
        store.inbox.put([said(str(n), str(n), place=n) for n in range(30)], AT)

    def work(worker: int) -> None:
        waits = True
        while waits:
            with database.transaction() as store:
                event = store.inbox.take_next("telegram", 1)
                waits = event is not None
                if event is not None:
                    log(store, ana, row(int(event.text) + 1))
                    store.inbox.done(event.id, AT)

    at_once(3, work)
    with database.reading() as store:
        assert [record.done.reps for record in store.sets.of_day(ana, MONDAY)] == list(range(1, 31))


def test_two_senders_never_claim_the_same_message_nor_two_of_one_chat(database: Database) -> None:
    with database.transaction() as store:
        for chat in range(20):
            person = store.people.create("telegram", chat, f"person {chat}", AT)
            for n in range(3):
                store.outbox.add(person.id, answer(str(n)), AT)
    sent: dict[int, list[str]] = {chat: [] for chat in range(20)}

    def work(worker: int) -> list[int]:
        mine = []
        for _ in range(60):
            with database.transaction() as store:
                claimed = store.outbox.claim("telegram", AT, limit=3, lease=LEASE)
            for one in claimed:
                sent[one.chat].append(one.outgoing.text)
                mine.append(one.id)
            with database.transaction() as store:
                for one in claimed:
                    store.outbox.mark_sent(one.id, one.id, AT)
        return mine  # type: ignore[return-value]

    first, second = at_once(2, work)
    assert isinstance(first, list)
    assert isinstance(second, list)
    assert not set(first) & set(second)
    assert sent == {chat: ["0", "1", "2"] for chat in range(20)}


@SEVERAL_WRITERS
def test_claims_are_disjoint_while_both_transactions_are_open(database: Database) -> None:
    with database.transaction() as store:
        for chat in range(4):
            person = store.people.create("telegram", chat, f"person {chat}", AT)
            store.outbox.add(person.id, answer("hello"), AT)
            store.due.plan(person.id, "reminder", MONDAY, AT)
    with database.transaction() as one, database.transaction() as other:
        mine = {d.chat for d in one.outbox.claim("telegram", AT, limit=2, lease=LEASE)}
        theirs = {d.chat for d in other.outbox.claim("telegram", AT, limit=9, lease=LEASE)}
        my_due = {d.athlete for d in one.due.claim(AT, limit=2, lease=LEASE)}
        their_due = {d.athlete for d in other.due.claim(AT, limit=9, lease=LEASE)}

    assert (len(mine), len(theirs), mine & theirs) == (2, 2, set())
    assert (len(my_due), len(their_due), my_due & their_due) == (2, 2, set())


def test_a_due_row_is_done_by_one_of_two_workers(database: Database, ana: AthleteId) -> None:
    with database.transaction() as store:
        for n in range(20):
            store.due.plan(ana, "reminder", MONDAY + timedelta(days=n), AT)

    def work(worker: int) -> int:
        done = 0
        for _ in range(20):
            with database.transaction() as store:
                claimed = store.due.claim(AT, limit=2, lease=timedelta(0))  # a lease that ends at once: the worst case
            for due in claimed:
                with database.transaction() as store:
                    if store.due.take(due):
                        store.outbox.add(ana, answer(str(due.local_date)), AT)
                        store.due.done(due, AT)
                        done += 1
        return done

    assert sum(int(str(done)) for done in at_once(2, work)) == 20
    with database.reading() as store:
        assert len({one.outgoing.text for one in store.outbox.latest(ana, 99)}) == 20


def test_people_locked_together_in_any_order_never_wait_for_ever(
    database: Database, ana: AthleteId, ben: AthleteId
) -> None:
    def work(worker: int) -> None:
        for _ in range(10):
            with database.transaction() as store:
                store.people.lock(*((ana, ben) if worker else (ben, ana)))
                for athlete in (ana, ben) if worker else (ben, ana):
                    store.changes.begin(athlete, ChangeKind.SETS, "sets", AT)

    at_once(2, work)
    with database.reading() as store:
        assert len(store.changes.latest(ana, 99)) == len(store.changes.latest(ben, 99)) == 20


def test_a_reader_waits_for_no_writer(database: Database, ana: AthleteId) -> None:
    with database.transaction() as writer:
        log(writer, ana, row())
        with database.reading() as reader:
            assert reader.sets.count(ana) == 0
