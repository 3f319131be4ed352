"""What is due comes once for its kind and local day, whatever the number of workers."""

from __future__ import annotations

from datetime import timedelta

from engine.values.ids import AthleteId
from storage.database import Database
from storage.records import Due
from tests.storage.stories import AT, MONDAY

LEASE = timedelta(minutes=2)
LATER = AT + timedelta(hours=1)


def test_due_rows_come_when_they_are_due_soonest_first(database: Database, ana: AthleteId, ben: AthleteId) -> None:
    with database.transaction() as store:
        assert store.due.next_at() is None
        store.due.plan(ana, "reminder", MONDAY, LATER, {"day": "press and pull"})
        store.due.plan(ben, "reminder", MONDAY, AT)
        store.due.plan(ana, "summary", MONDAY, AT - timedelta(minutes=1))
        assert store.due.next_at() == AT - timedelta(minutes=1)

        assert [(due.athlete, due.kind) for due in store.due.claim(AT, lease=LEASE)] == [
            (ana, "summary"),
            (ben, "reminder"),
        ]
        assert store.due.claim(AT, lease=LEASE) == ()
        assert store.due.claim(LATER, limit=1, lease=LEASE)[0].kind == "summary"  # its lease ended
        assert store.due.planned(ana, "reminder")[0].payload == {"day": "press and pull"}


def test_what_was_done_for_a_day_is_never_planned_for_it_again(database: Database, ana: AthleteId) -> None:
    with database.transaction() as store:
        assert store.due.plan(ana, "summary", MONDAY, AT)
        (due,) = store.due.claim(AT, lease=LEASE)
        assert store.due.take(due)
        store.due.done(due, AT)

        assert not store.due.take(due)
        assert store.due.was_done(ana, "summary", MONDAY)
        assert not store.due.plan(ana, "summary", MONDAY, LATER)
        assert store.due.plan(ana, "summary", MONDAY + timedelta(days=7), LATER)
        assert not store.due.was_done(ana, "summary", MONDAY + timedelta(days=7))


def test_what_came_too_late_is_not_planned_again_nor_counted_as_done(database: Database, ana: AthleteId) -> None:
    with database.transaction() as store:
        store.due.plan(ana, "reminder", MONDAY, AT)
        store.due.skip(store.due.planned(ana)[0], LATER)

        assert not store.due.plan(ana, "reminder", MONDAY, LATER)
        assert not store.due.was_done(ana, "reminder", MONDAY)


def test_planning_again_moves_it_and_a_claim_of_the_old_time_is_void(database: Database, ana: AthleteId) -> None:
    with database.transaction() as store:
        store.due.plan(ana, "reminder", MONDAY, AT)
        (due,) = store.due.claim(AT, lease=LEASE)
        assert store.due.plan(ana, "reminder", MONDAY, LATER, {"moved": True})

        assert not store.due.take(due)
        assert store.due.planned(ana) == (Due(ana, "reminder", MONDAY, LATER, {"moved": True}, attempts=1),)


def test_a_row_is_put_off_and_cancelled(database: Database, ana: AthleteId) -> None:
    with database.transaction() as store:
        store.due.plan(ana, "reminder", MONDAY, AT)
        store.due.plan(ana, "summary", MONDAY, AT)
        (due, *_) = store.due.claim(AT, lease=LEASE)
        store.due.retry_at(due, LATER)

        assert store.due.claim(AT, lease=LEASE) == ()
        assert store.due.cancel(ana, "summary") == 1
        assert [one.kind for one in store.due.claim(LATER, lease=LEASE)] == ["reminder"]
        assert store.due.cancel(ana) == 1
        assert store.due.plan(ana, "summary", MONDAY, AT)
