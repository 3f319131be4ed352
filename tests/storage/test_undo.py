"""Undo takes back exactly one thing, redo puts it back, and nothing is ever lost in between."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date, timedelta
from decimal import Decimal
from typing import Any

import pytest
from hypothesis import HealthCheck, settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, initialize, invariant, rule, run_state_machine_as_test

from engine.values.ids import AthleteId, ExerciseName
from engine.values.load import Load, Unit
from storage.database import Database
from storage.records import Change, ChangeKind, ChoiceKind
from storage.store import Store
from tests.databases import in_memory
from tests.property.strategies import sets_done
from tests.storage.stories import AT, BENCH, MONDAY, ROW, all_that_stands, bench, log, row
from tests.storage.test_round_trip import own_exercise

Doing = Callable[[Store, Change], object]

THINGS_TO_DO = [
    pytest.param(lambda s, c: s.sets.add(c, [row(), row(11)], on=MONDAY, at=AT, message=9), id="sets"),
    pytest.param(lambda s, c: s.notes.add(c, "felt heavy", on=MONDAY, at=AT, pain=True), id="a note"),
    pytest.param(lambda s, c: s.notes.remove(c, [s.notes.latest(c.athlete)[0].id]), id="a note removed"),
    pytest.param(lambda s, c: s.notes.share(c, s.notes.latest(c.athlete)[0]), id="a note shared"),
    pytest.param(
        lambda s, c: s.body_weights.add(c, Load(Decimal("81.4"), Unit.KG), on=MONDAY, at=AT), id="a body weight"
    ),
    pytest.param(lambda s, c: s.plans.assign(c, "new", "day mon", starts_on=MONDAY, at=AT), id="a plan"),
    pytest.param(lambda s, c: s.plans.end(c, on=MONDAY, at=AT), id="a plan ended"),
    pytest.param(
        lambda s, c: s.choices.add(c, ChoiceKind.SKIP, on=MONDAY, at=AT, exercise=BENCH), id="a choice over another"
    ),
    pytest.param(
        lambda s, c: s.choices.remove(c, [one.id for one in s.choices.between(c.athlete, MONDAY, MONDAY)]),
        id="a choice removed",
    ),
    pytest.param(lambda s, c: s.settings.put(c, "unit", "lb"), id="a setting changed"),
    pytest.param(lambda s, c: s.settings.clear(c, "unit"), id="a setting cleared"),
    pytest.param(lambda s, c: s.taught.shorthand(c, "bp", ROW), id="a shorthand over another"),
    pytest.param(lambda s, c: s.taught.forget(c, "bp"), id="a shorthand forgotten"),
    pytest.param(lambda s, c: s.taught.own_exercise(c, own_exercise("cable twist")), id="an exercise"),
    pytest.param(lambda s, c: s.taught.drop_exercise(c, ExerciseName("band curl")), id="an exercise dropped"),
    pytest.param(lambda s, c: s.taught.settle(c, "effort or load", "@8", "effort"), id="an ambiguity settled"),
    pytest.param(lambda s, c: s.taught.unsettle(c, "which exercise", "press"), id="an ambiguity open again"),
    pytest.param(lambda s, c: s.sets.remove(c, [one.id for one in s.sets.of_message(c.athlete, 1)]), id="sets removed"),
    pytest.param(
        lambda s, c: s.sets.move(c, s.sets.of_message(c.athlete, 1), MONDAY + timedelta(days=1)), id="sets moved"
    ),
    pytest.param(
        lambda s, c: s.sets.replace(c, [(one, bench()) for one in s.sets.of_message(c.athlete, 1)]), id="sets replaced"
    ),
]


def a_life_before(store: Store, athlete: AthleteId) -> None:
    log(store, athlete, row(), bench(), message=1)
    change = store.changes.begin(athlete, ChangeKind.SETTING, "all sorts of things", AT)
    store.notes.add(change, "sore", on=MONDAY, at=AT)
    store.body_weights.add(change, Load(Decimal(82), Unit.KG), on=MONDAY, at=AT)
    store.plans.assign(change, "old", "day tue", starts_on=MONDAY - timedelta(days=28), at=AT)
    store.choices.add(change, ChoiceKind.SWAP, on=MONDAY, at=AT, exercise=BENCH, to=ROW)
    store.settings.put(change, "unit", "kg")
    store.taught.shorthand(change, "bp", BENCH)
    store.taught.own_exercise(change, own_exercise())
    store.taught.settle(change, "which exercise", "press", "bench press")


@pytest.mark.parametrize("do", THINGS_TO_DO)
def test_undo_equals_never_having_done_it_and_redo_having_done_it(
    database: Database, ana: AthleteId, do: Doing
) -> None:
    with database.transaction() as store:
        a_life_before(store, ana)
        before = all_that_stands(store, ana)
        change = store.changes.begin(ana, ChangeKind.SETS, "the thing", AT)
        do(store, change)
        after = all_that_stands(store, ana)
        assert after != before

        undone = store.changes.undo(ana, AT)
        assert undone is not None
        assert (undone.id, undone.label, undone.undone_at) == (change.id, "the thing", AT)
        assert all_that_stands(store, ana) == before
        assert store.changes.redo(ana) == change
        assert all_that_stands(store, ana) == after


def test_each_undo_goes_one_step_further_and_each_redo_one_step_back(database: Database, ana: AthleteId) -> None:
    with database.transaction() as store:
        states = [all_that_stands(store, ana)]
        for reps in (1, 2, 3):
            log(store, ana, row(reps))
            states.append(all_that_stands(store, ana))
        for state in reversed(states[:-1]):
            store.changes.undo(ana, AT)
            assert all_that_stands(store, ana) == state
        assert store.changes.undo(ana, AT) is None
        for state in states[1:]:
            store.changes.redo(ana)
            assert all_that_stands(store, ana) == state
        assert store.changes.redo(ana) is None


def test_a_new_change_ends_redo(database: Database, ana: AthleteId) -> None:
    with database.transaction() as store:
        log(store, ana, row(1))
        log(store, ana, row(2))
        store.changes.undo(ana, AT)
        log(store, ana, row(3))

        assert store.changes.redo(ana) is None
        store.changes.undo(ana, AT)
        redone = store.changes.redo(ana)
        assert redone is not None
        assert [record.done.reps for record in store.sets.of_day(ana, MONDAY)] == [1, 3]


def test_undo_after_a_correction_brings_the_old_values_back_then_takes_the_message(
    database: Database, ana: AthleteId
) -> None:
    with database.transaction() as store:
        told = log(store, ana, row(12), message=1)
        change = store.changes.begin(ana, ChangeKind.CORRECTION, "12 not 10", AT)
        corrected = store.sets.replace(change, [(told[0], row(10))])
        assert store.changes.touched(change).added == corrected
        assert store.changes.touched(change).removed == told

        store.changes.undo(ana, AT)
        assert store.sets.of_message(ana, 1) == told
        store.changes.undo(ana, AT)
        assert store.sets.of_message(ana, 1) == ()


def test_what_one_change_adds_and_takes_away_again_never_stands(database: Database, ana: AthleteId) -> None:
    with database.transaction() as store:
        change = store.changes.begin(ana, ChangeKind.SETS, "sets", AT)
        (added,) = store.sets.add(change, [row()], on=MONDAY, at=AT)
        store.sets.remove(change, [added.id])
        for step in (store.changes.undo, lambda athlete, at: store.changes.redo(athlete)):
            assert store.sets.count(ana) == 0
            step(ana, AT)
        assert store.sets.count(ana) == 0


def test_a_coach_undoes_his_own_steps_and_she_hers(database: Database, ana: AthleteId, ben: AthleteId) -> None:
    def plan(by: AthleteId, name: str) -> Change:
        change = store.changes.begin(ana, ChangeKind.PLAN, name, AT, by=by)
        store.plans.assign(change, name, "day mon", starts_on=MONDAY, at=AT, coach=ben if by == ben else None)
        return change

    def in_force() -> str | None:
        found = store.plans.at(ana, MONDAY)
        return found.name if found else None

    with database.transaction() as store:
        hers, his = plan(ana, "hers"), plan(ben, "his")
        assert in_force() == "his"
        assert store.changes.latest(ana, 5) == (his, hers)
        undone = store.changes.undo(ana, AT)
        assert undone is not None
        assert undone.label == "hers"
        assert in_force() == "his"
        assert store.changes.undo(ana, AT) is None
        store.changes.undo(ana, AT, by=ben)
        assert in_force() is None
        assert store.changes.redo(ana, by=ben) == his
        assert in_force() == "his"


def test_changes_are_found_and_relabelled(database: Database, ana: AthleteId, ben: AthleteId) -> None:
    with database.transaction() as store:
        change = store.changes.begin(ana, ChangeKind.SETS, "sets", AT, inbound=5)
        better = store.changes.relabel(change, "3 sets of bench press")

        assert store.changes.get(ana, change.id) == better
        assert store.changes.of_inbound(ana, 5) == (better,)
        assert store.changes.get(ben, change.id) is None
        assert store.changes.of_inbound(ana, 6) == ()


class LogAgainstAList(RuleBasedStateMachine):
    """Any run of logging, correcting, deleting, undoing and redoing, against a plain list of states."""

    database: Database

    @initialize()
    def start(self) -> None:
        self.database = in_memory()
        with self.database.transaction() as store:
            self.ana = store.people.create("terminal", 1, "Ana", AT).id
        self.states: list[Any] = [()]
        self.now = 0

    def teardown(self) -> None:
        self.database.close()

    def standing(self) -> Any:
        with self.database.transaction() as store:
            return tuple((r.done, r.on, r.message) for r in store.sets.recent(self.ana, date.min))

    def changed(self) -> None:
        self.states = [*self.states[: self.now + 1], self.standing()]
        self.now += 1

    @rule(sets=st.lists(sets_done(), min_size=1, max_size=3), message=st.integers(1, 4))
    def tell(self, sets: list[Any], message: int) -> None:
        with self.database.transaction() as store:
            log(store, self.ana, *sets, message=message)
        self.changed()

    @rule(done=sets_done(), which=st.integers(0, 5))
    def correct(self, done: Any, which: int) -> None:
        with self.database.transaction() as store:
            standing = store.sets.of_day(self.ana, MONDAY)
            if not standing:
                return
            change = store.changes.begin(self.ana, ChangeKind.CORRECTION, "correction", AT)
            store.sets.replace(change, [(standing[which % len(standing)], done)])
        self.changed()

    @rule(message=st.integers(1, 4))
    def delete(self, message: int) -> None:
        with self.database.transaction() as store:
            standing = store.sets.of_message(self.ana, message)
            if not standing:
                return
            change = store.changes.begin(self.ana, ChangeKind.DELETE, "deletion", AT)
            store.sets.remove(change, [record.id for record in standing])
        self.changed()

    @rule()
    def undo(self) -> None:
        with self.database.transaction() as store:
            undone = store.changes.undo(self.ana, AT)
        assert (undone is None) == (self.now == 0)
        self.now = max(0, self.now - 1)

    @rule()
    def redo(self) -> None:
        with self.database.transaction() as store:
            redone = store.changes.redo(self.ana)
        assert (redone is None) == (self.now == len(self.states) - 1)
        self.now = min(len(self.states) - 1, self.now + 1)

    @invariant()
    def the_log_is_as_it_should_be(self) -> None:
        if hasattr(self, "states"):
            assert self.standing() == self.states[self.now]


def test_any_run_of_steps() -> None:
    run_state_machine_as_test(
        LogAgainstAList,
        settings=settings(
            max_examples=25, stateful_step_count=15, deadline=None, suppress_health_check=[HealthCheck.too_slow]
        ),
    )
