"""The chat in a terminal: its own words, people by turns, and the demo of the README on every day of the week."""

from __future__ import annotations

import io
from datetime import UTC, datetime, timedelta

import pytest

from bot import cli
from bot.demo import DEMO_ATHLETE, seed
from bot.handle import Product
from bot.memory import Memory
from bot.terminal import Terminal
from tests.databases import in_memory

START = datetime(2026, 3, 2, 17, 0, tzinfo=UTC)


class Desk:
    """A terminal and a clock that moves a minute with each line."""

    def __init__(self, database, name="ana", at=START):
        self.at = at
        self.database = database
        self.product = Product(database, "Europe/London", Memory(secret=b"desk"))
        self.terminal = Terminal(database, self.product, name, lambda: self.at)

    def type(self, *lines: str) -> str:
        shown: list[str] = []
        for line in lines:
            self.at += timedelta(minutes=1)
            shown = list(self.terminal.enter(line))
        return "\n".join(shown)


@pytest.fixture
def desk(database):
    return Desk(database)


def test_a_set_and_its_edit(desk):
    desk.type("hello")

    assert "squat 5 at 100 kg" in desk.type("squat 100x5").lower().replace("1 set of ", "")
    edited = desk.type(":edit squat 100x4")
    assert "Now: barbell back squat 4 at 100 kg" in edited
    assert "Was: barbell back squat 5 at 100 kg" in edited


def test_a_number_taps_the_button_shown_under_it(desk):
    shown = desk.type("hello", "press 3x8 40")

    assert "[:1 " in shown
    assert "Saved" in desk.type(":1")


def test_a_button_that_is_not_there_is_said_so(desk):
    desk.type("hello", "squat 100x5")

    assert "No button 9" in desk.type(":9")
    assert "No button 0" in desk.type(":0")


@pytest.mark.parametrize(
    "line",
    [
        pytest.param(":dance", id="no such word"),
        pytest.param(":", id="the colon alone"),
        pytest.param(":as", id="nobody named"),
        pytest.param(":edit squat 100x5", id="nothing to edit"),
        pytest.param(":²", id="a number that is no button"),
    ],
)
def test_what_it_does_not_know_brings_the_hint_and_changes_nothing(desk, line):
    assert ":edit" in desk.type(line) or "No button" in desk.type(line)


def test_a_file_is_sent_and_a_missing_one_named(desk, tmp_path):
    plan = tmp_path / "plan.txt"
    plan.write_text("plan: one, 2 weeks\nday mon: legs\nbarbell back squat 3x5 at 90 kg\n")

    assert "Plan saved: one" in desk.type(f":send {plan}")
    assert "No file" in desk.type(":send nowhere.txt")


def test_people_take_turns_and_each_sees_her_own_messages(desk):
    desk.type(":as kit", "/start")
    code = desk.type("invite").split("/start ")[1].split()[0]
    desk.type(":as ana", f"/start {code}", "yes")
    shown = desk.type(":as kit")

    assert "You are kit now." in shown
    assert "ana accepted" in shown
    assert "You are ana now." in desk.type(":as Ana").replace("Ana", "ana")


def test_a_button_of_another_person_is_not_tapped_by_accident(desk):
    desk.type("hello", "squat 100x5", ":as kit", "hello")
    desk.type("bench 60x5")
    as_ana = desk.type(":as ana", ":1")
    as_kit = desk.type(":as kit", ":1")

    assert "No button 1" in as_ana
    assert "No button 1" in as_kit
    with desk.database.transaction() as store:
        left = [store.sets.count(person.id) for person in store.people.everyone()]
    assert left == [1, 1]


def test_news_is_shown_once_and_what_falls_due_comes_by_the_tick(desk):
    desk.type("hello", "squat 100x5", "rest 2 min")
    desk.at += timedelta(minutes=3)
    first, second = list(desk.terminal.tick()), list(desk.terminal.tick())

    assert "Rest over." in first[0]
    assert second == []


def test_another_process_goes_on_where_the_last_one_stopped(database):
    first = Desk(database)
    first.type("hello", "squat 100x5")
    second = Desk(database, at=first.at)

    assert "squat 2" not in second.type("history squat")
    assert "5 at 100 kg" in second.type("history squat")
    assert "4 at 100 kg" in second.type("squat 100x4")


def test_a_line_break_is_written_as_one(desk):
    assert "Plan saved" in desk.type("plan: one, 2 weeks\\nday mon: legs\\nbarbell back squat 3x5 at 90 kg")


def piped(monkeypatch, capsys, text, *options):
    monkeypatch.setattr("sys.stdin", io.StringIO(text))
    status = cli.main(["chat", *options])
    return status, capsys.readouterr().out


def test_with_standard_input_piped_it_reads_lines_and_prints_replies(monkeypatch, capsys, tmp_path):
    where = str(tmp_path / "log.db")
    status, out = piped(monkeypatch, capsys, "hello\nsquat 3x5 100\n\n:quit\nbench 60x5\n", "--db", where)
    again = piped(monkeypatch, capsys, "history squat\nhistory bench", "--db", where, "--as", "me")[1]

    assert status == 0
    assert "3×5 at 100 kg. Saved." in out
    assert "3×5 at 100 kg" in again
    assert "No sets of barbell bench press yet." in again


def demo_of(monday: datetime):
    database = in_memory()
    seed(database, monday, "Europe/London")
    return database


@pytest.mark.parametrize("away", range(7), ids=["mon", "tue", "wed", "thu", "fri", "sat", "sun"])
def test_the_demo_keeps_what_the_readme_promises_on_any_day(away):
    now = START + timedelta(days=away)
    database = demo_of(now)
    desk = Desk(database, DEMO_ATHLETE, now)

    today = desk.type("today")
    assert "squat and press" in today
    assert "1 Barbell back squat 3×5 at 85 kg" in today
    assert "Next set: 5 at 85 kg" in desk.type("squat 85 5")
    assert "2×5 at 85 kg" in desk.type("5")
    assert "Now: barbell back squat 4 at 85 kg" in desk.type(":edit 4")
    assert desk.type("undo").lstrip().startswith("Undone: the edit")
    assert "85" in desk.type("why squat")
    assert "squat" in desk.type("next").lower()
    assert "overhead press" in desk.type("ohp 3x6 40").lower()
    assert "cable lateral raise" in desk.type("swap lateral raise for cable lateral raise").lower()
    assert "Not saved yet" in desk.type("row 3x12 55")
    assert "Saved" in desk.type(":1")
    assert "This week so far" in desk.type("week")
    assert "Session saved" in desk.type("done")
    assert "You are kit now." in desk.type(":as kit")
    assert "tove, week" in desk.type("digest tove")
    with database.transaction() as store:
        assert store.inbox.failures() == ()
    database.close()


@pytest.mark.parametrize("word", ["quit", "Exit", ":quit"])
def test_a_word_that_leaves_a_prompt_leaves_and_pauses_nothing(monkeypatch, capsys, tmp_path, word):
    status, out = piped(monkeypatch, capsys, f"hello\n{word}\nsquat 3x5 100\n", "--db", str(tmp_path / "log.db"))

    assert status == 0
    assert "Paused" not in out
    assert "Saved" not in out


def test_the_command_opens_the_demo_and_keeps_nothing(monkeypatch, capsys, tmp_path):
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path))
    status, out = piped(monkeypatch, capsys, "today\n:quit\n", "--demo")

    assert status == 0
    assert "squat and press" in out
    assert list(tmp_path.rglob("*.db")) == []
