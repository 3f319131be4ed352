"""What is stored comes back equal."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from datetime import date, datetime
from decimal import Decimal
from typing import Any
from uuid import uuid4

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from engine.values.exercise import Equipment, Exercise, FailureGuard, Length, Loading, Measure, Pattern
from engine.values.ids import AthleteId, ExerciseName
from engine.values.load import KG_PER_LB, Load, Unit
from engine.values.muscles import Muscle
from engine.values.sets import SetDone
from storage.database import Database
from storage.envelopes import SEND, OutboxState, StoredInbound, StoredOutgoing
from storage.exercise_mapping import exercise_content, exercise_of
from storage.mapping import load_columns, load_of, mass_of
from storage.records import ChangeKind
from tests.property.strategies import days, instants, loads, sets_done, words
from tests.storage.stories import AT, MONDAY

ON_ONE_DATABASE = settings(max_examples=25, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture])

json_values: st.SearchStrategy[Any] = st.recursive(
    st.none() | st.booleans() | st.integers(-(2**53), 2**53) | words,
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(words, inner, max_size=3),
    max_leaves=8,
)
json_objects: st.SearchStrategy[Mapping[str, Any]] = st.dictionaries(words, json_values, max_size=3)
ids = st.integers(-(2**62), 2**62)


@ON_ONE_DATABASE
@given(
    sets=st.lists(sets_done(), min_size=1, max_size=5).map(tuple),
    on=days,
    at=instants,
    message=ids,
)
def test_sets(
    database: Database, ana: AthleteId, sets: tuple[SetDone, ...], on: date, at: datetime, message: int
) -> None:
    with database.transaction() as store:
        change = store.changes.begin(ana, ChangeKind.SETS, "sets", at)
        recorded = store.sets.add(change, sets, on=on, at=at, message=message)
    with database.reading() as store:
        assert store.sets.get(ana, [record.id for record in recorded]) == recorded
    assert tuple(record.done for record in recorded) == sets
    assert [record.place for record in recorded] == sorted({record.place for record in recorded})


@given(loads())
def test_loads_and_no_binary_fraction_in_between(load: Load) -> None:
    columns = load_columns(load)

    assert isinstance(columns["thousandths"], int)
    assert load_of(**columns) == load


@given(loads(), loads())
def test_masses_order_loads_of_both_units_exactly(left: Load, right: Load) -> None:
    def exact(load: Load) -> Decimal:
        return load.amount * (Decimal(1) if load.unit is Unit.KG else KG_PER_LB)

    left_mass, right_mass = mass_of(left), mass_of(right)
    assert left_mass is not None
    assert right_mass is not None

    assert (left_mass < right_mass) == (exact(left) < exact(right))
    assert (left_mass == right_mass) == (exact(left) == exact(right))


@ON_ONE_DATABASE
@given(
    event=st.builds(
        StoredInbound,
        source=st.just("telegram"),
        chat=ids,
        key=st.just(""),
        kind=st.sampled_from(["message", "edit", "tap", "document"]),
        message=ids,
        text=words,
        at=instants,
        name=words,
        document_name=st.none() | words,
        document=st.none() | st.binary(max_size=50),
        document_trouble=words,
        document_reference=words,
        place=ids,
    )
)
def test_inbound(database: Database, event: StoredInbound) -> None:
    with database.transaction() as store:
        (id,) = store.inbox.put([replace(event, key=str(uuid4()))], AT)
    with database.reading() as store:
        stored = store.inbox.get(id)
    assert stored is not None

    assert {name: getattr(stored, name) for name in StoredInbound.__slots__ if name not in ("id", "key")} == {
        name: getattr(event, name) for name in StoredInbound.__slots__ if name not in ("id", "key")
    }


buttons = st.lists(st.lists(st.tuples(words, words), max_size=3).map(tuple), max_size=3).map(tuple)


@ON_ONE_DATABASE
@given(
    outgoing=st.builds(
        StoredOutgoing,
        kind=st.just(SEND),
        text=words,
        buttons=buttons,
        extras=json_objects,
        message=st.none() | ids,
        silent=st.booleans(),
        attachment_name=st.none() | words,
        attachment=st.none() | st.binary(max_size=50),
        attachment_is_picture=st.booleans(),
    )
)
def test_outgoing(database: Database, ana: AthleteId, outgoing: StoredOutgoing) -> None:
    with database.transaction() as store:
        id = store.outbox.add(ana, outgoing, AT)
    with database.reading() as store:
        stored = store.outbox.get(id)
    assert stored is not None

    assert (stored.outgoing, stored.chat, stored.state) == (outgoing, 1, OutboxState.NEW)


@ON_ONE_DATABASE
@given(key=words, value=json_values)
def test_settings(database: Database, ana: AthleteId, key: str, value: Any) -> None:
    with database.transaction() as store:
        store.settings.put(store.changes.begin(ana, ChangeKind.SETTING, key, AT), key, value)
    with database.reading() as store:
        assert store.settings.all(ana)[key] == value
        assert store.settings.get(ana, key, "default") == value


def own_exercise(name: str = "band curl") -> Exercise:
    return Exercise(
        name=ExerciseName(name),
        prime=(Muscle.BICEPS,),
        secondary=(Muscle.FOREARMS,),
        pattern=Pattern.ISOLATION,
        equipment=Equipment.BAND,
        loading=Loading.BAND,
        measure=Measure.REPS,
        one_sided=True,
        length=Length.SHORTENED,
        body_share=Decimal("0.05"),
        guard=FailureGuard.NONE,
        swaps=(ExerciseName("cable curl"),),
        cues=("elbows still",),
    )


def test_own_exercises(database: Database, ana: AthleteId) -> None:
    mine = own_exercise()
    with database.transaction() as store:
        store.taught.own_exercise(store.changes.begin(ana, ChangeKind.EXERCISE, "band curl", AT), mine)
    with database.reading() as store:
        assert store.taught.own_exercises(ana) == (mine,)
    assert exercise_of(exercise_content(mine)) == mine


@pytest.mark.parametrize(
    ("typed", "kept"),
    [
        pytest.param("row\x003x12", "row�3x12", id="no database keeps a NUL"),
        pytest.param("row \ud83d 3x12", "row ? 3x12", id="half an emoji is no text"),
        pytest.param("row 3x12 ‏55 🏋️", "row 3x12 ‏55 🏋️", id="direction marks and emoji stay"),
    ],
)
def test_text_that_no_database_keeps(database: Database, typed: str, kept: str) -> None:
    event = StoredInbound("terminal", 1, "1", "message", 1, typed, AT)
    with database.transaction() as store:
        (id,) = store.inbox.put([event], AT)
        stored = store.inbox.get(id)
    assert stored is not None

    assert stored.text == kept


def test_an_instant_without_a_zone_is_refused(database: Database, ana: AthleteId) -> None:
    nowhere = datetime(2026, 3, 2)  # noqa: DTZ001  # the point of it
    with pytest.raises(Exception, match="timezone"), database.transaction() as store:
        store.changes.begin(ana, ChangeKind.SETS, "sets", nowhere)
    with database.transaction() as store:
        change = store.changes.begin(ana, ChangeKind.SETS, "sets", AT)
        with pytest.raises(ValueError, match="timezone"):
            store.sets.add(change, [SetDone(ExerciseName("row"), 5, None)], on=MONDAY, at=nowhere)


def test_instants_come_back_in_utc(database: Database, ana: AthleteId) -> None:
    abroad = datetime.fromisoformat("2026-03-02T20:00:00+05:00")
    with database.transaction() as store:
        change = store.changes.begin(ana, ChangeKind.SETS, "sets", abroad)
        store.sets.add(change, [SetDone(ExerciseName("row"), 5, None)], on=MONDAY, at=abroad)
        latest = store.sets.latest(ana)
    assert latest is not None

    assert latest.at.isoformat() == "2026-03-02T15:00:00+00:00"
