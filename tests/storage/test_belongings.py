"""A person takes everything along, brings it back equal, or is really gone."""

from __future__ import annotations

import csv
import io
import json
from datetime import timedelta
from decimal import Decimal
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from sqlalchemy import func, select

from engine.values.effort import Effort
from engine.values.ids import AthleteId
from engine.values.load import Load, Unit
from engine.values.sets import SetDone
from storage.belongings import tables_of_a_person
from storage.connections import connect
from storage.database import Database, open_database
from storage.errors import NotOurs, PersonExists
from storage.records import ChangeKind, ChoiceKind, Permission
from storage.store import Store
from storage.tables import METADATA
from tests.databases import in_memory
from tests.property.strategies import days, instants, sets_done
from tests.storage.stories import AT, BENCH, MONDAY, ROW, all_that_stands, answer, bench, kg, log, row, said
from tests.storage.test_undo import a_life_before


def a_whole_life(store: Store, athlete: AthleteId, chat: int) -> None:
    """At least one row of this person in every table that has rows of people."""
    a_life_before(store, athlete)
    log(store, athlete, bench(3, "90"), message=3)
    store.changes.undo(athlete, AT)
    change = store.changes.begin(athlete, ChangeKind.SKIP, "skip", AT)
    store.choices.add(change, ChoiceKind.SKIP, on=MONDAY, at=AT, exercise=BENCH)
    (event,) = store.inbox.put([said("row 3x12 55", f"event {chat}", chat=chat, document=b"\x00\xff")], AT)
    line = store.outbox.add(athlete, answer("barbell row: 12"), AT, inbound=event, dedupe_key="once")
    store.lift_lines.put(athlete, MONDAY, ROW, line)
    store.questions.ask(athlete, {"readings": []}, at=AT, expires_at=AT)
    store.due.plan(athlete, "reminder", MONDAY, AT, {"why": "monday"})
    store.coaching.invite(athlete, f"code {chat}", AT)


@pytest.fixture
def lives(database: Database, ana: AthleteId, ben: AthleteId) -> tuple[AthleteId, AthleteId]:
    with database.transaction() as store:
        a_whole_life(store, ana, 1)
        a_whole_life(store, ben, 2)
    return ana, ben


def test_a_person_brought_into_an_empty_database_makes_an_equal_one(
    database: Database, other_database: Database, lives: tuple[AthleteId, AthleteId]
) -> None:
    for athlete in lives:
        with database.reading() as store:
            export, stood = store.belongings.as_json(athlete), all_that_stands(store, athlete)
        with other_database.transaction() as store:
            assert store.belongings.bring_back(export) == athlete
        with other_database.reading() as store:
            assert store.belongings.as_json(athlete) == export
            assert all_that_stands(store, athlete) == stood


def test_undo_and_new_messages_go_on_where_they_were(
    database: Database, other_database: Database, lives: tuple[AthleteId, AthleteId]
) -> None:
    with database.transaction() as store:
        export = store.belongings.as_json(lives[1])
    with other_database.transaction() as store:
        ben = store.belongings.bring_back(export)
        assert store.changes.undo(ben, AT) is not None
        assert store.changes.redo(ben) is not None
        log(store, ben, row())
        (event,) = store.inbox.put([said("new", "new", chat=2)], AT)
        store.outbox.add(ben, answer("new"), AT, inbound=event)
        assert store.people.create("telegram", 3, "Cleo", AT).id > ben


@settings(max_examples=15, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(st.lists(st.tuples(st.lists(sets_done(), min_size=1, max_size=3), days, instants), max_size=4))
def test_whatever_was_logged_comes_back_equal(told: list[tuple[list[SetDone], object, object]]) -> None:
    here, there = in_memory(), in_memory()
    with here.transaction() as store:
        ana = store.people.create("terminal", 1, "Ana", AT).id
        for sets, on, at in told:
            log(store, ana, *sets, on=on, at=at)  # type: ignore[arg-type]
        export, stood = store.belongings.as_json(ana), all_that_stands(store, ana)
    with there.transaction() as store:
        store.belongings.bring_back(export)
        assert all_that_stands(store, ana) == stood
        assert store.belongings.as_json(ana) == export
    here.close()
    there.close()


def test_a_person_finds_room_where_her_numbers_are_taken(
    database: Database, other_database: Database, lives: tuple[AthleteId, AthleteId]
) -> None:
    with other_database.transaction() as store:
        a_whole_life(store, store.people.create("terminal", 9, "Someone else", AT).id, 9)
        someone = store.people.find("terminal", 9)
        assert someone is not None
        before = store.belongings.as_json(someone.id)
        with database.transaction() as home:
            export, stood = home.belongings.as_json(lives[0]), all_that_stands(home, lives[0])
        ana = store.belongings.bring_back(export)

        assert ana != someone.id
        assert all_that_stands(store, ana) == stood
        assert store.belongings.as_json(someone.id) == before
        event = store.inbox.find("telegram", "event 1")
        assert event is not None
        line = store.lift_lines.get(ana, MONDAY, ROW)
        assert line is not None
        assert [reply.id for reply in store.inbox.replies(event.id)] == [line.outbox]


def test_nobody_is_tied_to_others_by_a_file(
    database: Database, other_database: Database, lives: tuple[AthleteId, AthleteId]
) -> None:
    ana, ben = lives
    with database.transaction() as store:
        store.coaching.accept("code 2", ana, [Permission.SEE_LOG], AT)
        change = store.changes.begin(ana, ChangeKind.PLAN, "his plan", AT, by=ben)
        store.plans.assign(change, "his", "day mon", starts_on=MONDAY, at=AT, coach=ben)
        store.outbox.add(ben, answer("Ana: 3 sets"), AT, about=ana)
        hers, his = store.belongings.as_json(ana), store.belongings.as_json(ben)
    with other_database.transaction() as store:
        store.people.create("terminal", 8, "Someone with Ben's number", AT)
        stranger = store.people.create("terminal", 9, "Someone with Ben's number", AT).id
        assert stranger == ben
        at_home = store.belongings.bring_back(hers)
        coach = store.belongings.bring_back(his)

        assert store.coaching.coaches(at_home) == ()
        plan = store.plans.newest(at_home)
        assert plan is not None
        assert (plan.name, plan.coach) == ("his", None)
        assert store.changes.undo(at_home, AT, by=ben) is None
        assert "Ana" not in [one.outgoing.text.split(":")[0] for one in store.outbox.latest(coach, 9)]


def tables(**rows: object) -> str:
    return json.dumps({"format": "chalkwire person", "version": 1, "tables": rows})


@pytest.mark.parametrize(
    ("export", "why"),
    [
        pytest.param("row 3x12 55", "not JSON", id="some text"),
        pytest.param("[]", "format", id="other JSON"),
        pytest.param('{"format": "chalkwire person", "version": 2}', "version is 2", id="a later version"),
        pytest.param('{"format": "chalkwire person", "version": 1, "tables": 5}', "row", id="no tables"),
        pytest.param(tables(), "0 people", id="nobody"),
        pytest.param(tables(users=[]), "users", id="a table of others"),
        pytest.param(tables(source=[{"source": "telegram", "shoe": 1}]), "shoe", id="a column of others"),
        pytest.param(tables(source=[{"source": "telegram", "held_until": "noon"}]), "noon", id="no instant"),
        pytest.param(tables(source=[{"source": "telegram", "poll_offset": "5"}]), "poll_offset '5'", id="no number"),
        pytest.param(tables(person=[{"id": 1}]), "person without source", id="half a person"),
    ],
)
def test_files_that_are_no_export(database: Database, export: str, why: str) -> None:
    with pytest.raises(NotOurs, match=why), database.transaction() as store:
        store.belongings.bring_back(export)


def test_rows_of_other_people_in_a_file_are_refused(
    database: Database, other_database: Database, lives: tuple[AthleteId, AthleteId]
) -> None:
    with database.transaction() as store:
        export = json.loads(store.belongings.as_json(lives[0]))
    export["tables"]["set_record"][0]["athlete_id"] = 77

    with pytest.raises(NotOurs, match="77"), other_database.transaction() as store:
        store.belongings.bring_back(json.dumps(export))


def test_a_person_who_is_here_is_not_brought_back_over(database: Database, lives: tuple[AthleteId, AthleteId]) -> None:
    with database.transaction() as store:
        export = store.belongings.as_json(lives[0])
    with pytest.raises(PersonExists), database.transaction() as store:
        store.belongings.bring_back(export)


def test_erasure_leaves_no_row_and_the_others_as_they_were(
    url: str, database: Database, lives: tuple[AthleteId, AthleteId]
) -> None:
    ana, ben = lives
    with database.transaction() as store:
        his = store.belongings.as_json(ben)
        hers = json.loads(store.belongings.as_json(ana))["tables"]
        assert sorted(name for name, rows in hers.items() if not rows) == ["coach_link"]
        store.coaching.accept("code 2", ana, [Permission.SEE_LOG], AT)
        store.outbox.add(ben, answer("Ana: 3 sets"), AT, about=ana)
        change = store.changes.begin(ben, ChangeKind.PLAN, "her plan", AT, by=ana)
        store.plans.assign(change, "hers", "day mon", starts_on=MONDAY, at=AT, coach=ana)
    with database.transaction() as store:
        assert store.belongings.erase(ana) >= sum(map(len, hers.values())) + 2
    engine = connect(url)
    with engine.connect() as connection:
        for table in tables_of_a_person():
            for column in {"athlete_id", "id" if table.name == "person" else "", "by", "coach", "coach_id", "about"}:
                if column in table.c:
                    query = select(func.count()).select_from(table).where(table.c[column] == ana)
                    assert connection.execute(query).scalar_one() == 0, (table.name, column)
    engine.dispose()
    with database.transaction() as store:
        assert store.people.find("telegram", 1) is None
        assert store.inbox.find("telegram", "event 1") is None
        store.changes.undo(ben, AT, by=ana)
        kept = json.loads(store.belongings.as_json(ben))["tables"]
        was = json.loads(his)["tables"]
        assert kept["set_record"] == was["set_record"]
        assert kept["outbox"] == was["outbox"]


def test_every_table_with_an_athlete_is_exported_and_erased() -> None:
    assert {table.name for table in tables_of_a_person()} == set(METADATA.tables) - {"source", "broadcast"}


def test_an_id_is_not_given_to_the_next_person(database: Database, ana: AthleteId) -> None:
    with database.transaction() as store:
        store.belongings.erase(ana)
        assert store.people.create("telegram", 1, "Ana again", AT).id > ana


def test_the_words_of_an_erased_person_leave_the_disk(tmp_path: Path) -> None:
    database = open_database(f"sqlite:///{tmp_path}/log.db")
    words = "my left knee is a private matter"
    with database.transaction() as store:
        ana = store.people.create("telegram", 1, "Ana", AT).id
        change = store.changes.begin(ana, ChangeKind.NOTE, "note", AT)
        for _ in range(200):
            store.notes.add(change, words, on=MONDAY, at=AT)
        store.inbox.put([said(words, "1")], AT)
    with database.transaction() as store:
        store.belongings.erase(ana)

    left = b"".join(path.read_bytes() for path in tmp_path.iterdir())
    assert b"SQLite format" in left
    assert words.encode() not in left
    database.close()


def test_sheets_for_a_spreadsheet(database: Database, ana: AthleteId) -> None:
    with database.transaction() as store:
        told = (
            SetDone(ROW, 12, kg("52.5"), Effort.from_rpe(Decimal(8)), seconds=Decimal("30.5")),
            SetDone(BENCH, 5, Load(Decimal(135), Unit.LB), Effort(Decimal(2)), failure=True),
        )
        log(store, ana, *told)
        log(store, ana, row(), on=MONDAY - timedelta(days=1))
        log(store, ana, bench())
        store.changes.undo(ana, AT)
        change = store.changes.begin(ana, ChangeKind.NOTE, "note", AT)
        store.notes.add(change, "=1+1", on=MONDAY, at=AT, pain=True)
        store.body_weights.add(change, kg("81.4"), on=MONDAY, at=AT)
        store.plans.assign(change, "first", "day mon\nrow 3x12", starts_on=MONDAY, at=AT)
        files = store.belongings.as_csv(ana)

    rows = {name: list(csv.DictReader(io.StringIO(text))) for name, text in files.items()}
    assert [
        (r["date"], r["exercise"], r["reps"], r["load"], r["unit"], r["rpe"], r["rir"], r["seconds"], r["failure"])
        for r in rows["sets.csv"]
    ] == [
        ("2026-03-01", "barbell row", "12", "55", "kg", "", "", "", ""),
        ("2026-03-02", "barbell row", "12", "52.5", "kg", "8", "", "30.5", ""),
        ("2026-03-02", "bench press", "5", "135", "lb", "", "2", "", "yes"),
    ]
    assert rows["notes.csv"][0]["note"] == "'=1+1"
    assert rows["body-weights.csv"] == [{"date": "2026-03-02", "load": "81.4", "unit": "kg"}]
    assert rows["plans.csv"][0]["plan"] == "day mon\nrow 3x12"
