"""The one door: an event counts once, whole or not at all, in its chat's order, and a fault never blocks a chat."""

from __future__ import annotations

import json
from collections.abc import Callable, Hashable
from typing import Any

import pytest

from bot.envelopes import wrap_inbound
from bot.memory import Memory
from bot.messages import InboundKind
from storage.database import open_database
from tests.bot.chatting import PLAN, SOURCE, Chats, buttons, said, texts, to
from tests.bot.stories import play_story


class Failing(Memory):
    """What a process remembers, on a machine that gives up at its `left`-th next look."""

    def __init__(self) -> None:
        super().__init__(secret=b"test")
        self.left = 0

    def _look(self) -> None:
        self.left -= 1
        if self.left == 0:
            raise OSError("the machine gave up")

    def recall(self, key: Hashable, work_out: Callable[[], Any]) -> Any:
        self._look()
        return super().recall(key, work_out)

    def own_of(self, store: Any, athlete: Any) -> Any:
        self._look()
        return super().own_of(store, athlete)


@pytest.mark.parametrize(
    "words",
    [
        pytest.param("squat 3x5 90", id="sets"),
        pytest.param("note: slept badly", id="a note"),
        pytest.param("undo", id="undo"),
        pytest.param("units lb", id="a setting"),
        pytest.param("skip squat", id="a skip"),
        pytest.param("invite", id="an invitation"),
        pytest.param("remind me at 19:30", id="a reminder"),
    ],
)
def test_an_event_delivered_again_changes_nothing_and_gets_the_same_reply(either, words):
    chats = Chats(either)
    chats.says("ana", PLAN, "squat 90x5")
    event = chats.inbound("ana", InboundKind.MESSAGE, words)
    first = chats.product.receive(event)
    before, out = chats.standing("ana"), chats.fresh()

    again = [chats.product.receive(event) for _ in range(3)]

    assert first
    assert again == [first] * 3
    assert chats.standing("ana") == before
    assert chats.fresh() == []
    assert [one.id for one in to(out, 1)] == list(first)


def test_a_tap_delivered_again_records_once(chats):
    asked = chats.says("ana", "press 3x8 40")
    pick = next(iter(buttons(asked).values()))
    event = chats.inbound("ana", InboundKind.TAP, pick, 1)
    chats.product.receive(event)

    chats.product.receive(event)

    assert [(reps, load) for _, reps, load in chats.log("ana")] == [(8, "40 kg")] * 3


@pytest.mark.parametrize("look", [1, 2, 3, 5, 8])
@pytest.mark.parametrize("words", ["squat 3x5 90 knee hurts", "skip squat", PLAN])
def test_wherever_handling_fails_nothing_is_half_saved_and_the_chat_goes_on(database, words, look):
    memory = Failing()
    chats = Chats(database, memory=memory)
    chats.says("ana", PLAN, "leg extension 50x12")
    before = chats.standing("ana")
    memory.left = look

    out = chats.says("ana", words)
    failed = memory.left <= 0
    memory.left = 0

    if failed:
        assert said(out).startswith("Not saved: ")
        assert chats.standing("ana") == before
    chats.says("ana", "leg extension 50x11")
    assert chats.log("ana")[-1] == ("leg extension", 11, "50 kg")


def test_a_failed_event_is_kept_for_the_operator_and_a_redelivery_of_it_gets_the_same_words(database):
    memory = Failing()
    chats = Chats(database, memory=memory)
    chats.says("ana", PLAN)
    event = chats.inbound("ana", InboundKind.MESSAGE, "squat 90x5")
    memory.left = 1
    first = chats.product.receive(event)

    again = chats.product.receive(event)

    with chats.store() as store:
        assert [one.text for one in store.inbox.failures()] == ["squat 90x5"]
    assert again == first
    assert chats.log("ana") == []


def stored(chats, *events):
    """Events put into the inbox, as an adapter does before it confirms them."""
    with chats.store() as store:
        store.inbox.put([wrap_inbound(event, place) for place, event in events], chats.at)


def test_what_waits_in_the_inbox_is_handled_in_the_order_of_the_platform_and_not_of_arrival(chats):
    one, two, three = (chats.inbound("ana", InboundKind.MESSAGE, f"squat 100x{reps}") for reps in (5, 4, 3))
    stored(chats, (30, three), (10, one))
    stored(chats, (20, two))

    while chats.product.handle_next(SOURCE, 1):
        pass

    assert [reps for _, reps, _ in chats.log("ana")] == [5, 4, 3]


def test_a_message_that_cannot_be_handled_holds_up_neither_its_chat_nor_another(database):
    memory = Failing()
    chats = Chats(database, memory=memory)
    chats.says("ana", "squat 100x5")
    chats.says("ben", "squat 60x5")
    stored(chats, (1, chats.inbound("ana", InboundKind.MESSAGE, "squat 100x4")))
    stored(chats, (2, chats.inbound("ana", InboundKind.MESSAGE, "squat 100x3")))
    stored(chats, (3, chats.inbound("ben", InboundKind.MESSAGE, "squat 60x4")))
    memory.left = 1

    handled = [chats.product.handle_next(SOURCE, chat) for chat in (1, 1, 2, 1, 2)]

    assert handled == [True, True, True, False, False]
    assert [reps for _, reps, _ in chats.log("ana")] == [5, 3]
    assert [reps for _, reps, _ in chats.log("ben")] == [5, 4]
    assert "Not saved: " in said(to(chats.fresh(), 1))


def test_two_chats_do_not_see_each_others_lift_in_hand_plan_or_undo(chats):
    chats.says("ana", "squat 100x5")
    chats.says("ben", "bench 60x8")
    chats.says("ana", "4")
    chats.says("ben", "7")
    out = chats.says("ana", "undo")

    assert chats.log("ana") == [("barbell back squat", 5, "100 kg")]
    assert chats.log("ben") == [("barbell bench press", 8, "60 kg"), ("barbell bench press", 7, "60 kg")]
    assert {one.chat for one in out} == {1}


@pytest.mark.parametrize(
    ("kind", "text"),
    [
        pytest.param(InboundKind.TAP, "v1:undo", id="a tap"),
        pytest.param(InboundKind.TAP, "v9:dance", id="a tap of another version"),
        pytest.param(InboundKind.TAP, "", id="an empty tap"),
        pytest.param(InboundKind.TAP, "v1:pick:1:1", id="a tap on a question that never was"),
        pytest.param(InboundKind.TAP, "v1:pick:x:y", id="a tap with words for numbers"),
        pytest.param(InboundKind.TAP, "v1:swap-to:²", id="a tap with a superscript"),
        pytest.param(InboundKind.EDIT, "squat 5x5", id="an edit of a message never seen"),
        pytest.param(InboundKind.DOCUMENT, "", id="a document without content"),
        pytest.param(InboundKind.MESSAGE, "", id="an empty message"),
        pytest.param(InboundKind.MESSAGE, "\u200b\u202e\x01 \n", id="control characters"),
    ],
)
def test_an_event_from_nowhere_is_answered_and_breaks_nothing(chats, kind, text):
    out = chats.give(chats.inbound("ana", kind, text, 99))

    assert "something went wrong" not in said(out)
    with chats.store() as store:
        assert store.inbox.failures() == ()
    assert texts(out)


def test_a_character_that_one_database_cannot_keep_costs_no_set_on_either(either):
    chats = Chats(either)

    chats.says("ana", "squat 100x5\x00")

    assert chats.log("ana") == [("barbell back squat", 5, "100 kg")]


def test_the_same_story_leaves_the_same_records_on_both_databases(postgres_url):
    left = []
    for url in ("sqlite://", postgres_url):
        database = open_database(url)
        play_story(database, "four_weeks")
        with database.transaction() as store:
            people = [person.id for person in store.people.everyone()]
        left.append([rows_of(database, person) for person in people])
        database.close()

    assert left[0] == left[1]
    assert any(rows["set_record"] for rows in left[0])


def rows_of(database, person):
    """Every row of a person as her export has it."""
    with database.transaction() as store:
        return json.loads(store.belongings.as_json(person))["tables"]
