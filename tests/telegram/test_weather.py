"""What goes wrong between the bot and the platform, and what becomes of the messages."""

from __future__ import annotations

import socket
import threading
import time
from itertools import pairwise
from pathlib import Path

import pytest

from tests.telegram.running import BotProcess
from tests.telegram.standin import StandIn
from tests.telegram.standin_values import TOKEN, Fault, Refusal

IRIS, OLE = 7, 8
TOO_MANY = Refusal(429, "Too Many Requests: retry after 1", retry_after=1)


@pytest.mark.parametrize(
    ("token", "words"),
    [
        pytest.param("", "CHALKWIRE_TOKEN is not set. Ask @BotFather", id="no token"),
        pytest.param("sesame", "CHALKWIRE_TOKEN is no bot token", id="not the shape of a token"),
        pytest.param("1:AAwrong-TOKEN_0123456789abcdefghijkl", "Telegram does not know the bot", id="a wrong token"),
    ],
)
def test_without_a_good_token_one_line_says_what_to_do(server: StandIn, tmp_path: Path, token: str, words: str) -> None:
    with BotProcess(server, tmp_path, "--token", token) as bot:
        assert bot.exit_code() == 2

    assert words in bot.output
    assert len(bot.output.strip().splitlines()) == 1
    assert not token or token not in bot.output


def test_a_token_taken_back_ends_the_process(server: StandIn, bot: BotProcess) -> None:
    server.says(IRIS, "one")
    server.wait(lambda: server.sent(IRIS))
    server.token = "1:another"
    server.says(IRIS, "two")

    assert bot.exit_code(45) == 2
    assert "Telegram does not know the bot" in bot.output


def test_two_processes_for_one_bot_end_with_a_line(server: StandIn, bot: BotProcess) -> None:
    server.refuse("getUpdates", 409, "Conflict: terminated by other getUpdates request", times=10)

    assert bot.exit_code() == 3
    assert "Another process fetches this bot's messages" in bot.output
    assert "Traceback" not in bot.output


def test_a_short_conflict_at_a_restart_is_waited_out(server: StandIn, bot: BotProcess) -> None:
    server.refuse("getUpdates", 409, "Conflict: terminated by other getUpdates request", times=2)
    server.says(IRIS, "row 3x12 55")
    server.wait(lambda: server.sent(IRIS))


def test_it_waits_for_a_network_that_is_down_at_the_start(tmp_path: Path) -> None:
    with socket.socket() as reserved:
        reserved.bind(("127.0.0.1", 0))
        port = reserved.getsockname()[1]
    with StandIn() as server, BotProcess(server, tmp_path, api=f"http://127.0.0.1:{port}") as bot:
        bot.wait_for_output("cannot reach Telegram yet")
        time.sleep(2.5)
        assert bot.output.count("cannot reach Telegram yet") == 1
        server.says(IRIS, "row 3x12 55")
        with _forward(port, server):
            server.wait(lambda: server.sent(IRIS), 20)


class _forward:  # noqa: N801 (a with block)
    """A port that leads to the server, as when the network comes up."""

    def __init__(self, port: int, server: StandIn) -> None:
        self._listening = socket.create_server(("127.0.0.1", port))
        self._target = ("127.0.0.1", int(server.url.rpartition(":")[2]))

    def __enter__(self) -> None:
        threading.Thread(target=self._accept, daemon=True).start()

    def __exit__(self, *_: object) -> None:
        self._listening.close()

    def _accept(self) -> None:
        while True:
            try:
                near, _ = self._listening.accept()
            except OSError:
                return
            far = socket.create_connection(self._target)
            for one, other in ((near, far), (far, near)):
                threading.Thread(target=_pump, args=(one, other), daemon=True).start()


def _pump(one: socket.socket, other: socket.socket) -> None:
    try:
        while part := one.recv(65536):
            other.sendall(part)
        other.shutdown(socket.SHUT_WR)
    except OSError:
        pass


@pytest.mark.parametrize(
    "fault",
    [
        pytest.param(Fault(Refusal(502, "Bad Gateway")), id="the server fails"),
        pytest.param(Fault(Refusal(500, "Internal Server Error"), garbage=True), id="fails without JSON"),
        pytest.param(Fault(hang_up=True), id="the connection breaks"),
        pytest.param(Fault(TOO_MANY), id="flood control"),
        pytest.param(Fault(hang_up=True, done=True), id="the answer is lost"),
    ],
)
def test_a_failed_poll_loses_nothing(server: StandIn, bot: BotProcess, fault: Fault) -> None:
    server.says(IRIS, "one")
    server.wait(lambda: server.sent(IRIS))
    server.fault("getUpdates", fault)
    for text in ("two", "three"):
        server.says(IRIS, text)
    server.wait(lambda: len(server.sent(IRIS)) == 3)

    assert server.sent(IRIS) == ["heard: one", "heard: two", "heard: three"]
    assert [text for text, _ in bot.notes()] == ["one", "two", "three"]


@pytest.mark.parametrize(
    "fault",
    [
        pytest.param(Fault(TOO_MANY), id="flood control"),
        pytest.param(Fault(Refusal(502, "Bad Gateway")), id="the server fails"),
    ],
)
def test_a_message_refused_for_now_is_sent_again_in_its_place(server: StandIn, bot: BotProcess, fault: Fault) -> None:
    server.fault("sendMessage", fault)
    for text in ("one", "two", "three"):
        server.says(IRIS, text)
    server.wait(lambda: len(server.sent(IRIS)) == 3)

    assert server.sent(IRIS) == ["heard: one", "heard: two", "heard: three"]
    server.wait(lambda: {state for state, _ in bot.outbox()} == {"sent"})


def test_flood_control_holds_back_everybody_and_no_handling(server: StandIn, bot: BotProcess) -> None:
    server.says(OLE, "before")
    server.wait(lambda: server.sent(OLE))
    server.fault("sendMessage", Fault(Refusal(429, "Too Many Requests: retry after 2", retry_after=2)))
    server.says(IRIS, "one")
    server.wait(lambda: len(server.made("sendMessage")) == 2)
    refused = time.monotonic()
    server.says(OLE, "two")
    server.wait(lambda: "two" in [text for text, _ in bot.notes()])
    handled = time.monotonic()
    server.wait(lambda: server.sent(IRIS) and len(server.sent(OLE)) == 2)

    assert handled - refused < 1.0
    assert min(call.at for call in server.made("sendMessage")[2:]) - refused > 1.5


@pytest.mark.parametrize(
    "fault",
    [
        pytest.param(Fault(seconds=2.0, done=True), id="the answer comes too late"),
        pytest.param(Fault(hang_up=True, done=True), id="the answer is lost"),
    ],
)
def test_a_message_that_may_have_arrived_is_not_sent_twice(server: StandIn, tmp_path: Path, fault: Fault) -> None:
    with BotProcess(server, tmp_path, "--call-seconds", "1") as bot:
        server.says(IRIS, "zero")
        server.wait(lambda: server.sent(IRIS))
        server.fault("sendMessage", fault)
        server.says(IRIS, "one")
        server.says(IRIS, "two")
        server.wait(lambda: [state for state, _ in bot.outbox()] == ["sent", "unknown", "sent"])

    assert server.sent(IRIS) == ["heard: zero", "heard: one", "heard: two"]


def test_an_edit_is_safe_to_repeat(server: StandIn, bot: BotProcess) -> None:
    message = server.says(IRIS, "one")
    server.wait(lambda: server.sent(IRIS))
    server.fault("editMessageText", Fault(hang_up=True, done=True))
    server.edits(IRIS, message, "two")
    server.wait(lambda: len(server.made("editMessageText")) == 2)
    server.wait(lambda: bot.outbox()[-1][0] == "sent")

    assert server.chats[IRIS][0].versions == ["heard: one", "heard again: two"]


def test_an_edit_of_a_message_that_is_gone_becomes_a_new_one(server: StandIn, bot: BotProcess) -> None:
    message = server.says(IRIS, "one")
    server.wait(lambda: server.sent(IRIS))
    server.forgotten.add((IRIS, server.chats[IRIS][0].id))
    server.edits(IRIS, message, "two")
    server.wait(lambda: len(server.sent(IRIS)) == 2)

    assert server.sent(IRIS)[-1] == "heard again: two"


def test_markup_the_server_cannot_parse_goes_as_plain_words(server: StandIn, bot: BotProcess) -> None:
    server.refuse("sendMessage", 400, "Bad Request: can't parse entities: unsupported start tag")
    server.says(IRIS, "a < b")
    server.wait(lambda: server.sent(IRIS))

    assert server.sent(IRIS) == ["heard: a < b"]
    assert [call.params.get("parse_mode") for call in server.made("sendMessage")] == ["HTML", None]


def test_a_message_refused_for_good_holds_nobody_up(server: StandIn, bot: BotProcess) -> None:
    server.refuse("sendMessage", 400, "Bad Request: chat not found")
    server.says(IRIS, "one")
    server.says(IRIS, "two")
    server.wait(lambda: [state for state, _ in bot.outbox()] == ["failed", "sent"])

    assert server.sent(IRIS) == ["heard: two"]


def test_who_blocked_the_bot_gets_nothing_more_and_can_come_back(server: StandIn, bot: BotProcess) -> None:
    server.says(IRIS, "one")
    server.wait(lambda: server.sent(IRIS))
    server.blocked.add(IRIS)
    server.says(IRIS, "remind 3")
    server.wait(lambda: bot.outbox()[1:] and {state for state, _ in bot.outbox()[1:]} == {"failed", "dropped"})
    tried = len(server.made("sendMessage"))
    server.unblocks(IRIS)
    server.wait(lambda: len(server.sent(IRIS)) == 2)

    assert tried == 2
    assert server.sent(IRIS) == ["heard: one", "welcome back"]


def test_blocking_is_seen_when_it_happens(server: StandIn, bot: BotProcess) -> None:
    server.says(IRIS, "one")
    server.wait(lambda: server.sent(IRIS))
    server.blocks(IRIS)
    server.wait(lambda: bot.rows("SELECT reachable FROM person") == [(0,)])


def test_answers_come_at_once_and_what_nobody_asked_for_keeps_a_pause(server: StandIn, bot: BotProcess) -> None:
    server.says(IRIS, "remind 3")
    server.wait(lambda: server.sent(IRIS))
    for text in ("one", "two", "three"):
        server.says(OLE, text)
    server.wait(lambda: len(server.sent(IRIS)) == 3)
    reminders = [call.at for call in server.made("sendMessage") if "reminder" in call.params["text"]]
    answers = [call.at for call in server.made("sendMessage") if "heard" in call.params["text"]]

    assert all(later - earlier > 0.9 for earlier, later in pairwise(reminders))
    assert answers[-1] - answers[0] < 0.9
    assert all(shown.silent for shown in server.chats[IRIS])


def test_the_token_is_in_no_output_whatever_happens(server: StandIn, tmp_path: Path) -> None:
    with BotProcess(server, tmp_path, "--call-seconds", "1", "--poll-seconds", "2") as bot:
        broken, failing = Fault(hang_up=True), Fault(Refusal(502, "Bad Gateway"), garbage=True)
        server.fault("getUpdates", broken, failing, Fault(seconds=1.5))
        server.fault("sendMessage", failing)
        for method in ("getFile", "download"):
            server.fault(method, broken, failing)
        server.says(IRIS, "one")
        server.sends_file(IRIS, "plan.csv", b"abc")
        server.wait(lambda: "3 bytes" in "".join(server.sent(IRIS)), 60)
        server.token = "1:another"
        assert bot.exit_code(45) == 2

    assert "out of reach" in bot.output
    assert TOKEN not in bot.output
    assert TOKEN.partition(":")[2] not in bot.output


def test_told_to_stop_with_a_message_under_way_it_lets_it_arrive(server: StandIn, bot: BotProcess) -> None:
    server.latency = 1.0
    server.says(IRIS, "one")
    server.wait(lambda: server.made("sendMessage"), 30)

    assert bot.stop() == 0
    assert server.sent(IRIS) == ["heard: one"]
    assert bot.outbox() == [("sent", "heard: one")]
