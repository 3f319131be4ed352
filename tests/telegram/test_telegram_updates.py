"""What each kind of update says. Field names and shapes: Telegram Bot API, Update, Message, CallbackQuery."""

from __future__ import annotations

from datetime import UTC, datetime
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.messages import Inbound, InboundKind
from bot.telegram_updates import Arrived, arrived

NOW = datetime(2026, 3, 2, 18, 5, tzinfo=UTC)
SENT = 1772474700  # 2026-03-02 18:05 UTC
SENDER = {"id": 7, "is_bot": False, "first_name": "Iris", "last_name": "Vale"}
CHAT = {"id": 7, "type": "private", "first_name": "Iris"}
GROUP = {"id": -1005, "type": "supergroup", "title": "Club"}


def message(**fields: Any) -> dict[str, Any]:
    return {"message_id": 31, "date": SENT, "chat": CHAT, "from": SENDER, **fields}


def read(**update: Any) -> Arrived:
    return arrived({"update_id": 900, **update}, now=NOW, username="chalk_bot")


def inbound(**update: Any) -> Inbound:
    found = read(**update).inbound
    assert found is not None
    return found


def test_a_message() -> None:
    assert inbound(message=message(text="row 3x12 55")) == Inbound(
        source="telegram",
        chat=7,
        key=f"900.{SENT}",
        kind=InboundKind.MESSAGE,
        message=31,
        text="row 3x12 55",
        at=NOW,
        name="Iris Vale",
    )


def test_an_edit_names_the_message_and_the_time_of_the_edit() -> None:
    edit = inbound(edited_message=message(text="row 3x12 57.5", edit_date=SENT + 60))

    assert (edit.kind, edit.message, edit.text) == (InboundKind.EDIT, 31, "row 3x12 57.5")
    assert edit.at == datetime(2026, 3, 2, 18, 6, tzinfo=UTC)
    assert edit.key != inbound(message=message(text="row")).key


def test_a_tap_names_the_bots_message_and_is_answered_by_its_id() -> None:
    query = {"id": "55", "from": SENDER, "data": "v1:undo", "message": {"message_id": 12, "date": 0, "chat": CHAT}}
    tap = read(callback_query=query)

    assert tap.tap == "55"
    assert tap.inbound is not None
    assert (tap.inbound.kind, tap.inbound.message, tap.inbound.text) == (InboundKind.TAP, 12, "v1:undo")
    assert tap.inbound.at == NOW


@pytest.mark.parametrize(
    ("fields", "text"),
    [
        pytest.param({"text": "/start k7Q2xw"}, "/start k7Q2xw", id="start with its payload"),
        pytest.param({"text": "/today@chalk_bot fri"}, "/today fri", id="a command addressed to us"),
        pytest.param({"text": "/today@Chalk_Bot"}, "/today", id="in any case of letters"),
        pytest.param({"text": "/today@other_bot"}, "/today@other_bot", id="a command addressed to another"),
        pytest.param({"text": "bench@60 5"}, "bench@60 5", id="an at sign in a set"),
        pytest.param({"photo": [{}], "caption": "bench 5x5 100"}, "bench 5x5 100", id="a picture's caption"),
        pytest.param(
            {"location": {"latitude": 53.8, "longitude": -1.55}}, "/location 53.800000 -1.550000", id="a place"
        ),
        pytest.param({"text": "a\x00b"}, "a\N{REPLACEMENT CHARACTER}b", id="a character no database takes"),
    ],
)
def test_what_counts_as_words(fields: dict[str, Any], text: str) -> None:
    said = inbound(message=message(**fields))

    assert (said.kind, said.text) == (InboundKind.MESSAGE, text)


@pytest.mark.parametrize(
    ("file", "reference", "trouble"),
    [
        pytest.param({"file_name": "plan.CSV", "file_size": 10}, "F1", "", id="a sheet is to be fetched"),
        pytest.param({"file_name": "plan", "mime_type": "text/plain"}, "F1", "", id="plain text without a suffix"),
        pytest.param({"file_name": "plan.pages"}, "", "I can't read .pages files", id="a kind we cannot read"),
        pytest.param({"file_name": "plan"}, "", "I can't read this kind of file", id="a kind nobody knows"),
        pytest.param({}, "", "I can't read this kind of file", id="no name at all"),
        pytest.param({"file_name": "a.csv", "file_size": 21 * 2**20}, "", "21 MB", id="too large to fetch"),
    ],
)
def test_documents_are_judged_before_they_are_fetched(file: dict[str, Any], reference: str, trouble: str) -> None:
    sent = inbound(message=message(document={"file_id": "F1", **file}, caption="my plan"))

    assert (sent.kind, sent.text) == (InboundKind.DOCUMENT, "my plan")
    assert sent.document is not None
    assert sent.document.reference == reference
    assert (trouble in sent.document.trouble) if trouble else not sent.document.trouble


@pytest.mark.parametrize("kind", ["photo", "voice", "sticker", "video_note", "contact", "poll"])
def test_what_cannot_be_read_says_what_to_send_instead(kind: str) -> None:
    unread = inbound(message=message(**{kind: {"file_id": "F1"}})).document

    assert unread is not None
    assert unread.trouble.startswith("I can't read ")
    assert "row 3x12 55" in unread.trouble


def test_the_pictures_of_an_album_are_one_event() -> None:
    first = arrived({"update_id": 1, "message": message(photo=[{}], media_group_id="77")}, now=NOW)
    second = arrived({"update_id": 2, "message": message(photo=[{}], media_group_id="77", message_id=32)}, now=NOW)

    assert first.inbound is not None
    assert second.inbound is not None
    assert first.inbound.key == second.inbound.key


@pytest.mark.parametrize(
    ("status", "kind"),
    [pytest.param("kicked", InboundKind.GONE, id="blocked"), pytest.param("member", InboundKind.BACK, id="back")],
)
def test_blocking_and_coming_back(status: str, kind: InboundKind) -> None:
    change = {"chat": CHAT, "from": SENDER, "date": SENT, "new_chat_member": {"status": status}}

    assert inbound(my_chat_member=change).kind is kind


@pytest.mark.parametrize(
    ("update", "leaves"),
    [
        pytest.param({"message": message(chat=GROUP, text="row 3x12 55")}, True, id="a message in a group"),
        pytest.param(
            {"my_chat_member": {"chat": GROUP, "from": SENDER, "date": SENT, "new_chat_member": {"status": "member"}}},
            True,
            id="put into a group",
        ),
        pytest.param(
            {"my_chat_member": {"chat": GROUP, "from": SENDER, "date": SENT, "new_chat_member": {"status": "left"}}},
            False,
            id="out of a group",
        ),
    ],
)
def test_groups_are_left_and_nothing_in_them_is_read(update: dict[str, Any], leaves: bool) -> None:
    found = read(**update)

    assert found.inbound is None
    assert found.leave == (-1005 if leaves else None)


@pytest.mark.parametrize(
    "update",
    [
        pytest.param({"message": message(pinned_message={})}, id="a service message"),
        pytest.param({"edited_message": message(location={"latitude": 1, "longitude": 2})}, id="a moving location"),
        pytest.param({"edited_message": message(photo=[{}])}, id="a changed picture"),
        pytest.param({"message_reaction": {"chat": CHAT}}, id="a kind we did not ask for"),
        pytest.param({"message": {"chat": CHAT}}, id="a message without what every message has"),
        pytest.param({"message": "hello"}, id="no object at all"),
        pytest.param({"message": message(text="row", date=10**18)}, id="a date beyond every calendar"),
        pytest.param({"message": message(text="row", message_id=2**64)}, id="an id beyond every column"),
        pytest.param({"callback_query": {"id": "1", "from": SENDER, "game_short_name": "x"}}, id="a tap with no data"),
    ],
)
def test_what_says_nothing_is_passed_over(update: dict[str, Any]) -> None:
    assert read(**update).inbound is None


JSON = st.recursive(
    st.none() | st.booleans() | st.integers() | st.text(max_size=5),
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(st.text(max_size=5), inner, max_size=3),
    max_leaves=8,
)


@given(
    st.sampled_from(["message", "edited_message", "callback_query", "my_chat_member"]),
    st.fixed_dictionaries(
        {},
        optional={
            "message_id": JSON,
            "date": JSON,
            "chat": JSON,
            "from": JSON,
            "text": JSON,
            "document": JSON,
            "location": JSON,
            "id": JSON,
            "data": JSON,
            "message": JSON,
            "new_chat_member": JSON,
        },
    ),
)
def test_no_update_stops_the_ones_behind_it(kind: str, body: dict[str, Any]) -> None:
    assert arrived({"update_id": 5, kind: body}, now=NOW).update == 5
