"""The bot over real HTTP: what people do arrives, what it answers arrives, in order, once."""

from __future__ import annotations

import signal
import time
from pathlib import Path

import pytest

from tests.telegram.running import BotProcess
from tests.telegram.standin import StandIn
from tests.telegram.standin_values import Fault, Refusal

IRIS, OLE = 7, 8


def test_a_conversation_in_order(server: StandIn, bot: BotProcess) -> None:
    said = [f"row 3x12 {load}" for load in range(40, 60)]
    for text in said:
        server.says(IRIS, text)
        server.says(OLE, f"{text} too")
    server.wait(lambda: len(server.sent(IRIS)) == 20 and len(server.sent(OLE)) == 20)

    assert server.sent(IRIS) == [f"heard: {text}" for text in said]
    assert server.sent(OLE) == [f"heard: {text} too" for text in said]
    assert [text for text, _ in bot.notes()] == said + [f"{text} too" for text in said]


def test_words_that_look_like_markup_arrive_as_typed(server: StandIn, bot: BotProcess) -> None:
    server.says(IRIS, "a<b & *c* _d_ </b> &lt; 😀")
    server.wait(lambda: server.sent(IRIS))

    assert server.sent(IRIS) == ["heard: a<b & *c* _d_ </b> &lt; 😀"]


def test_an_edit_changes_the_bots_message(server: StandIn, bot: BotProcess) -> None:
    message = server.says(IRIS, "row 3x12 55")
    server.wait(lambda: server.sent(IRIS))
    server.edits(IRIS, message, "row 3x12 57.5")
    server.wait(lambda: "again" in server.sent(IRIS)[0])

    assert server.sent(IRIS) == ["heard again: row 3x12 57.5"]
    assert bot.notes() == [("row 3x12 55", message), ("edit: row 3x12 57.5", message)]


def test_a_tap_is_answered_and_names_the_message_it_was_on(server: StandIn, bot: BotProcess) -> None:
    server.says(IRIS, "one")
    server.says(IRIS, "two")
    server.wait(lambda: len(server.sent(IRIS)) == 2)
    tap = server.taps(IRIS, "Keep", message=server.chats[IRIS][0].id)
    server.wait(lambda: "kept" in server.sent(IRIS)[0])

    assert server.sent(IRIS) == ["heard: one\nkept", "heard: two"]
    assert server.chats[IRIS][0].buttons == []
    assert tap in server.answered_taps


def test_a_tap_whose_answer_comes_too_late_still_counts(server: StandIn, bot: BotProcess) -> None:
    server.says(IRIS, "one")
    server.wait(lambda: server.sent(IRIS))
    server.refuse("answerCallbackQuery", 400, "Bad Request: query is too old and response timeout expired")
    server.taps(IRIS, "Keep")
    server.wait(lambda: "kept" in server.sent(IRIS)[0])


def test_a_document_is_fetched(server: StandIn, bot: BotProcess) -> None:
    server.sends_file(IRIS, "plan.csv", b"day,exercise\nmon,row\n")
    server.wait(lambda: server.sent(IRIS))

    assert server.sent(IRIS) == ["plan.csv: 21 bytes"]


@pytest.mark.parametrize(
    ("name", "size", "answer"),
    [
        pytest.param("plan.csv", 21 * 2**20, "21 MB", id="too large"),
        pytest.param("plan.pages", 10, "I can't read .pages files", id="a kind nobody reads"),
    ],
)
def test_a_document_that_cannot_be_used_is_not_even_fetched(
    server: StandIn, bot: BotProcess, name: str, size: int, answer: str
) -> None:
    server.sends_file(IRIS, name, b"x", size=size)
    server.wait(lambda: server.sent(IRIS))

    assert answer in server.sent(IRIS)[0]
    assert not server.made("getFile")


def test_a_slow_document_holds_up_its_own_chat_alone(server: StandIn, bot: BotProcess) -> None:
    server.fault("download", Fault(seconds=2.0, refusal=Refusal(502, "Bad Gateway")))
    server.sends_file(IRIS, "plan.csv", b"abc")
    server.says(IRIS, "after the plan")
    server.says(OLE, "row 3x12 55")
    server.wait(lambda: server.sent(OLE))

    assert not server.sent(IRIS)
    server.wait(lambda: len(server.sent(IRIS)) == 2)
    assert server.sent(IRIS) == ["plan.csv: 3 bytes", "heard: after the plan"]


def test_a_document_that_is_gone_is_asked_for_again(server: StandIn, bot: BotProcess) -> None:
    server.refuse("getFile", 400, "Bad Request: invalid file_id")
    server.sends_file(IRIS, "plan.csv", b"abc")
    server.wait(lambda: server.sent(IRIS))

    assert "Send it again" in server.sent(IRIS)[0]


def test_voice_and_pictures_are_told_what_to_send(server: StandIn, bot: BotProcess) -> None:
    server.says(IRIS, "", voice={"file_id": "v"})
    server.wait(lambda: server.sent(IRIS))

    assert server.sent(IRIS)[0].startswith("I can't read voice messages.")


def test_pictures_and_files_go_out(server: StandIn, bot: BotProcess) -> None:
    server.says(IRIS, "picture Rows, four weeks: 50, 52.5, 55, 57.5 kg")
    server.says(IRIS, "export Your log.")
    server.wait(lambda: len(server.sent(IRIS)) == 2)

    files = [shown.file for shown in server.chats[IRIS]]
    assert [file and file[0] for file in files] == ["week.png", "log.csv"]
    assert server.sent(IRIS) == ["Rows, four weeks: 50, 52.5, 55, 57.5 kg", "Your log."]
    assert len(server.made("sendPhoto")) == 1


def test_a_long_text_arrives_whole_in_several_messages(server: StandIn, bot: BotProcess) -> None:
    server.says(IRIS, "long 1000")
    server.wait(lambda: "line 999" in "".join(server.sent(IRIS)))

    assert "\n".join(server.sent(IRIS)) == "\n".join(f"line {number}" for number in range(1000))
    assert len(server.sent(IRIS)) == 3


def test_a_reaction_marks_the_persons_message(server: StandIn, bot: BotProcess) -> None:
    message = server.says(IRIS, "react")
    server.wait(lambda: server.reactions)

    assert server.reactions == {(IRIS, message): "👍"}
    assert not server.sent(IRIS)


def test_a_reaction_that_fails_is_said_in_words(server: StandIn, bot: BotProcess) -> None:
    server.refuse("setMessageReaction", 400, "Bad Request: REACTION_INVALID")
    server.says(IRIS, "react Saved.")
    server.wait(lambda: server.sent(IRIS))

    assert server.sent(IRIS) == ["Saved."]


def test_an_update_that_comes_again_changes_nothing(server: StandIn, bot: BotProcess) -> None:
    server.says(IRIS, "row 3x12 55")
    server.wait(lambda: server.sent(IRIS) and server.idle)
    server.redeliver()
    server.says(IRIS, "row 3x12 60")
    server.wait(lambda: len(server.sent(IRIS)) == 2 and server.idle)

    assert [text for text, _ in bot.notes()] == ["row 3x12 55", "row 3x12 60"]
    assert server.sent(IRIS) == ["heard: row 3x12 55", "heard: row 3x12 60"]


def test_numbers_that_begin_anew_lower_lose_nothing(server: StandIn, tmp_path: Path) -> None:
    with BotProcess(server, tmp_path, "--poll-seconds", "0.5"):
        server.says(IRIS, "one")
        server.wait(lambda: server.sent(IRIS) and server.idle)
        server.wait(lambda: not server.made("getUpdates")[-1].params.get("offset"))
        server.push({"message": {**_message(2001), "text": "two"}}, number=5)
        server.wait(lambda: len(server.sent(IRIS)) == 2)

    assert server.sent(IRIS) == ["heard: one", "heard: two"]


def _message(number: int) -> dict[str, object]:
    person = {"id": IRIS, "type": "private", "is_bot": False, "first_name": "Iris"}
    return {"message_id": number, "date": int(time.time()), "chat": person, "from": person}


def test_one_senseless_update_stops_nothing(server: StandIn, bot: BotProcess) -> None:
    server.push({"message": {"message_id": "x", "entities": 3}})
    server.push({"message": {"chat": None}})
    server.says(IRIS, "row 3x12 55")
    server.wait(lambda: server.sent(IRIS))


def test_an_answer_that_is_no_json_stops_nothing(server: StandIn, bot: BotProcess) -> None:
    server.fault("getUpdates", Fault(garbage=True), Fault(garbage=True, done=True))
    server.says(IRIS, "row 3x12 55")
    server.wait(lambda: server.sent(IRIS))

    assert server.sent(IRIS) == ["heard: row 3x12 55"]


def test_the_bot_leaves_groups_with_a_word(server: StandIn, bot: BotProcess) -> None:
    server.joins_group(-1005)
    server.wait(lambda: server.left)

    assert server.left == [-1005]
    assert server.sent(-1005) == ["I only work in private chats: training logs are personal."]


def test_commands_are_shown_and_a_coach_sees_those_of_a_coach(server: StandIn, tmp_path: Path) -> None:
    with BotProcess(server, tmp_path) as bot:
        server.says(OLE, "coach")
        server.wait(lambda: server.sent(OLE))
        assert bot.stop() == 0
    assert [each["command"] for each in server.commands["default"]][:2] == ["today", "plan"]
    with BotProcess(server, tmp_path):
        server.wait(lambda: len(server.commands) == 2)

    (scope,) = server.commands.keys() - {"default"}
    assert str(OLE) in scope
    assert "digest" in [each["command"] for each in server.commands[scope]]


@pytest.mark.parametrize("name", [signal.SIGTERM, signal.SIGINT])
def test_told_to_stop_it_stops_at_once_and_well(server: StandIn, bot: BotProcess, name: int) -> None:
    server.says(IRIS, "row 3x12 55")
    server.wait(lambda: server.sent(IRIS))
    began = time.monotonic()

    assert bot.stop(name) == 0
    assert time.monotonic() - began < 5
    assert "Traceback" not in bot.output
