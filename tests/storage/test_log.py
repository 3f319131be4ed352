"""The questions put to the log."""

from __future__ import annotations

from datetime import date, timedelta
from decimal import Decimal

import pytest

from engine.values.ids import AthleteId, ExerciseName
from engine.values.load import Basis, Load, Unit
from engine.values.sets import SetDone
from storage.database import Database
from storage.records import ChangeKind
from tests.storage.stories import AT, BENCH, MONDAY, ROW, bench, kg, log, row

TUESDAY, WEDNESDAY = MONDAY + timedelta(days=1), MONDAY + timedelta(days=2)


def test_sets_of_a_message_and_of_a_day(database: Database, ana: AthleteId, ben: AthleteId) -> None:
    with database.transaction() as store:
        first = log(store, ana, row(), row(11), message=7)
        second = log(store, ana, bench(), message=8)
        third = log(store, ana, row(), on=TUESDAY, message=9)
        log(store, ben, row(), message=7)

        assert store.sets.of_message(ana, 7) == first
        assert store.sets.of_day(ana, MONDAY) == (*first, *second)
        assert store.sets.between(ana, TUESDAY, WEDNESDAY) == third
        assert store.sets.between(ana, MONDAY, WEDNESDAY, [ROW]) == (*first, *third)
        assert store.sets.since(ana, TUESDAY) == third
        assert store.sets.days(ana, MONDAY, WEDNESDAY) == (MONDAY, TUESDAY)
        assert store.sets.last_day(ana) == TUESDAY
        assert store.sets.last_day(ana, BENCH) == MONDAY
        assert store.sets.last_day(ana, ExerciseName("plank")) is None
        assert store.sets.count(ana) == 4


def test_recent_sets_come_in_the_order_logged(database: Database, ana: AthleteId) -> None:
    with database.transaction() as store:
        old = [log(store, ana, row(reps)) for reps in range(1, 6)]
        today = log(store, ana, bench(), on=WEDNESDAY)
        late = log(store, ana, bench(6), on=TUESDAY)

        assert store.sets.recent(ana, WEDNESDAY, least=3) == (*old[-1], *today, *late)
        assert store.sets.recent(ana, MONDAY, least=1) == (*(r for one in old for r in one), *today, *late)
        assert store.sets.latest(ana) == late[0]


def test_history_of_an_exercise_by_training_days(database: Database, ana: AthleteId) -> None:
    with database.transaction() as store:
        first = log(store, ana, row(), row())
        log(store, ana, bench(), on=TUESDAY)
        second = log(store, ana, row(10), on=WEDNESDAY)
        late = log(store, ana, row(8), on=MONDAY)

        assert store.sets.history(ana, ROW) == (*first, *late, *second)
        assert store.sets.history(ana, ROW, days=1) == second
        assert store.sets.history(ana, ROW, until=TUESDAY, days=1) == (*first, *late)
        assert store.sets.history(ana, ExerciseName("plank"), days=3) == ()


def test_last_and_best_loads(database: Database, ana: AthleteId, ben: AthleteId) -> None:
    pull_up = ExerciseName("pull-up")
    helped = Load(Decimal(-20), Unit.KG, Basis.BODY)
    with database.transaction() as store:
        log(store, ana, bench(5, "100"), row(12, "60"))
        log(store, ana, SetDone(BENCH, 5, Load(Decimal(225), Unit.LB)), on=TUESDAY)  # 102.06 kg
        log(store, ana, SetDone(BENCH, 0, kg("110"), missed=True), SetDone(BENCH, 8, None), on=WEDNESDAY)
        log(store, ana, row(12, "50"), on=MONDAY - timedelta(days=1))  # told late, done before
        log(store, ana, SetDone(pull_up, 8, helped))
        log(store, ben, bench(1, "200"))

        assert store.sets.last_loads(ana) == {BENCH: kg("110"), ROW: kg("60"), pull_up: helped}
        assert store.sets.best_loads(ana) == {BENCH: Load(Decimal(225), Unit.LB), ROW: kg("60"), pull_up: helped}


def test_last_and_best_loads_follow_edits_and_undo(database: Database, ana: AthleteId) -> None:
    with database.transaction() as store:
        log(store, ana, bench(5, "80"))
        slip = log(store, ana, bench(5, "800"), on=TUESDAY)
        change = store.changes.begin(ana, ChangeKind.CORRECTION, "80 not 800", AT)
        store.sets.replace(change, [(slip[0], bench(5, "82.5"))])

        assert store.sets.best_loads(ana) == store.sets.last_loads(ana) == {BENCH: kg("82.5")}
        store.changes.undo(ana, AT)
        assert store.sets.best_loads(ana) == {BENCH: kg("800")}
        store.changes.undo(ana, AT)
        assert store.sets.best_loads(ana) == store.sets.last_loads(ana) == {BENCH: kg("80")}


def test_nobody_logged_anything(database: Database, ana: AthleteId) -> None:
    with database.transaction() as store:
        assert store.sets.last_loads(ana) == store.sets.best_loads(ana) == {}
        assert store.sets.recent(ana, MONDAY) == ()
        assert store.sets.latest(ana) is None


def test_several_athletes_weeks(database: Database, ana: AthleteId, ben: AthleteId) -> None:
    with database.transaction() as store:
        hers = log(store, ana, row(), on=TUESDAY)
        his = log(store, ben, bench(), bench())
        log(store, ben, bench(), on=MONDAY - timedelta(days=7))
        nobody = AthleteId(99)

        assert store.sets.of_athletes([ana, ben, nobody], MONDAY, WEDNESDAY) == {ana: hers, ben: his, nobody: ()}


def test_a_replaced_message_keeps_its_place_and_day(database: Database, ana: AthleteId) -> None:
    with database.transaction() as store:
        before = log(store, ana, row(12), row(11), message=7)
        after = log(store, ana, bench(), message=8)
        edit = store.changes.begin(ana, ChangeKind.EDIT, "row", AT)
        store.sets.remove(edit, [record.id for record in before])
        edited = store.sets.add(edit, [row(10)] * 30, on=MONDAY, at=AT, message=7, place=before[0].place)

        assert store.sets.of_day(ana, MONDAY) == (*edited, *after)
        assert store.sets.of_message(ana, 7) == edited
        assert store.sets.latest(ana) == after[0]


def test_moved_sets_keep_everything_but_the_day(database: Database, ana: AthleteId) -> None:
    with database.transaction() as store:
        before = log(store, ana, row(12), row(11), message=7)
        move = store.changes.begin(ana, ChangeKind.MOVE, "to Sunday", AT)
        moved = store.sets.move(move, before, MONDAY - timedelta(days=1))

        assert store.sets.of_day(ana, MONDAY) == ()
        assert store.sets.of_message(ana, 7) == moved
        assert [(m.done, m.at, m.place) for m in moved] == [(b.done, b.at, b.place) for b in before]
        assert store.sets.day_of_message(ana, 7) == MONDAY  # where the message was first for
        assert store.sets.day_of_message(ana, 8) is None
        assert store.sets.get(ana, [before[0].id]) == before[:1]  # evidence of old stays readable


def test_a_set_is_removed_once(database: Database, ana: AthleteId, ben: AthleteId) -> None:
    with database.transaction() as store:
        hers = log(store, ana, row())
        change = store.changes.begin(ben, ChangeKind.DELETE, "not his", AT)
        assert store.sets.remove(change, [hers[0].id]) == 0
        change = store.changes.begin(ana, ChangeKind.DELETE, "row", AT)
        assert store.sets.remove(change, [hers[0].id]) == 1
        assert store.sets.remove(change, [hers[0].id]) == 0
        assert store.sets.remove(change, []) == 0


@pytest.mark.parametrize(
    "raised", [pytest.param(ValueError, id="an error"), pytest.param(KeyboardInterrupt, id="a stop")]
)
def test_nothing_is_kept_of_a_transaction_that_raises(
    database: Database, ana: AthleteId, raised: type[BaseException]
) -> None:
    def half_done() -> None:
        with database.transaction() as store:
            log(store, ana, row())
            raise raised

    with pytest.raises(raised):
        half_done()
    with database.transaction() as store:
        assert store.sets.count(ana) == 0
        assert log(store, ana, row())[0].id == 2  # one for the change, one for the set: no number was used up


def test_the_far_ends_of_the_calendar(database: Database, ana: AthleteId) -> None:
    with database.transaction() as store:
        recorded = log(store, ana, row(), on=date.max)

        assert store.sets.between(ana, date.min, date.max) == recorded
