"""A plan with broken lines waits; sets, requests and talk go their own way meanwhile."""

from __future__ import annotations

from datetime import timedelta

import pytest

from tests.bot.chatting import buttons, said

BROKEN = """plan: base, 4 weeks
day mon: legs
barbell back squat 3x5 at 80 kg, then +2.5 kg
leg curl 3x10 at 30 kg, then +2.5 kg"""
NO_SETS = """plan: base, 4 weeks
day mon: push
bench press at 50 kg"""
MANY = "plan: base, 4 weeks\nday mon: x\n" + "\n".join(f"flying monkey {word} 3x10" for word in "abcdef")


def waits(chats) -> bool:
    return "I can't read" in said(chats.says("ana", "plan"))


@pytest.mark.parametrize(
    "words",
    [
        pytest.param("lying leg curl 3x10 at 30 kg, then +2.5 kg", id="the whole line"),
        pytest.param("line 4: lying leg curl 3x8 at 30 kg", id="by its number"),
        pytest.param("Line 4 seated leg curl 3x8", id="by its number without a colon"),
        pytest.param("lying leg curl", id="the name alone"),
        pytest.param("lying leg curl 3x8-12 at 30 kg", id="a range no set has"),
        pytest.param("lying leg curl 3x10 at 30 kg, then +1 kg", id="with plan words"),
    ],
)
def test_the_mended_line_puts_the_plan_in_force(chats, words):
    chats.says("ana", "hello", BROKEN)
    out = said(chats.says("ana", words))

    assert "Plan saved: base" in out
    assert chats.log("ana") == []


def test_what_a_line_lacks_mends_it(chats):
    chats.says("ana", "hello", NO_SETS)
    out = said(chats.says("ana", "3x8"))

    assert "Plan saved: base" in out


@pytest.mark.parametrize(
    ("words", "sets"),
    [
        pytest.param("squat 80 5 5 5", 3, id="sets of a lift that the plan has"),
        pytest.param("bench 60 8 8 8", 3, id="sets of another lift"),
        pytest.param("seated cable row 3x12 40", 3, id="in the form of a plan"),
        pytest.param("lying leg curl 30 10 10 10", 3, id="sets of the broken line's lift"),
    ],
)
def test_sets_are_never_swallowed(chats, words, sets):
    chats.says("ana", "hello", BROKEN)
    chats.says("ana", words)

    assert len(chats.log("ana")) == sets
    assert waits(chats)


@pytest.mark.parametrize(
    ("words", "answer"),
    [
        pytest.param("today", "No plan yet", id="today"),
        pytest.param("done", "", id="done"),
        pytest.param("check", "No plan", id="check"),
        pytest.param("felt easy", "note", id="talk"),
        pytest.param("rack taken", "", id="a busy rack"),
        pytest.param("/help", "Log: ", id="a slash command"),
        pytest.param("/week", "This week", id="another slash command"),
        pytest.param("my knee hurts", "medical", id="pain"),
        pytest.param("undo", "Nothing to undo", id="undo"),
        pytest.param("help", "Log: ", id="help"),
    ],
)
def test_requests_and_talk_go_their_own_way_and_the_plan_waits(chats, words, answer):
    chats.says("ana", "hello", BROKEN)
    out = said(chats.says("ana", words))

    assert answer.casefold() in out.casefold()
    assert "Plan saved" not in out
    assert waits(chats)
    assert "Plan saved" in said(chats.says("ana", "line 4: lying leg curl 3x10"))


def test_that_the_plan_waits_is_said_once(chats):
    chats.says("ana", "hello", BROKEN)
    first = said(chats.says("ana", "squat 80 5"))
    second = said(chats.says("ana", "squat 80 5"))

    assert "waits for line 4" in first
    assert "waits" not in second


def test_a_question_asked_over_it_leaves_the_draft_waiting(chats):
    chats.says("ana", "hello", BROKEN, "curls 12 3x12")
    out = said(chats.says("ana", "barbell curl", "line 4: lying leg curl 3x10"))

    assert "Plan saved" in out


@pytest.mark.parametrize(
    ("answer", "sets", "saved"),
    [
        pytest.param("tap: Plan line 4", 0, True, id="the plan by tap"),
        pytest.param("tap: Sets I did", 3, False, id="sets by tap"),
        pytest.param("plan", 0, True, id="the plan by word"),
        pytest.param("sets", 3, False, id="sets by word"),
    ],
)
def test_what_could_be_a_line_or_sets_is_asked(chats, answer, sets, saved):
    chats.says("ana", "hello", BROKEN)
    asked = chats.says("ana", "lying leg curl 3x12 at 25 kg")
    assert "line 4 of the plan, or sets you did?" in said(asked)
    assert chats.log("ana") == []
    choice = answer.removeprefix("tap: ")
    out = chats.taps("ana", buttons(asked)[choice]) if choice != answer else chats.says("ana", answer)

    assert len(chats.log("ana")) == sets
    assert ("Plan saved" in said(out)) is saved


def test_cancel_drops_the_draft_and_nothing_else(chats):
    chats.says("ana", "hello", "squat 80 5", BROKEN)
    out = said(chats.says("ana", "/cancel"))

    assert "No plan saved" in out
    assert len(chats.log("ana")) == 1
    assert "Plan saved" not in said(chats.says("ana", "line 4: lying leg curl 3x10"))


def test_a_new_plan_replaces_the_draft(chats):
    chats.says("ana", "hello", BROKEN)
    chats.says("ana", "plan: other, 4 weeks\nday mon: a\nbarbell back squat 3x5 at 80 kg")
    out = said(chats.says("ana", "line 4: lying leg curl 3x10"))

    assert "Plan saved" not in out


def test_a_draft_lapses_after_a_day_and_says_so(chats):
    chats.says("ana", "hello", BROKEN)
    out = said(chats.until(chats.at + timedelta(days=1, hours=1)))

    assert "waited a day for line 4" in out
    assert "Plan saved" not in said(chats.says("ana", "line 4: lying leg curl 3x10"))


def test_a_draft_that_was_mended_does_not_lapse(chats):
    chats.says("ana", "hello", BROKEN, "line 4: lying leg curl 3x10")
    out = said(chats.until(chats.at + timedelta(days=1, hours=1)))

    assert "waited a day" not in out


@pytest.mark.parametrize(
    ("name", "content"),
    [
        pytest.param("empty.txt", b"", id="empty"),
        pytest.param("long.txt", b"plan: big\n" + b"squat 3x5\n" * 6000, id="too long"),
        pytest.param("broken.xlsx", b"PK no", id="broken"),
        pytest.param("photo.jpg", b"\xff\xd8", id="another kind"),
    ],
)
def test_a_file_that_is_no_plan_opens_no_draft(chats, name, content):
    chats.says("ana", "hello")
    out = said(chats.sends("ana", name, content))

    assert out.startswith("Not saved")
    assert "the rest is kept" not in out
    assert "No plan yet" in said(chats.says("ana", "plan"))


def test_all_problems_can_be_read(chats):
    chats.says("ana", "hello")
    first = chats.says("ana", MANY)
    again = chats.says("ana", "problems")

    for out in (first, again):
        text = next(one.outgoing.attachment for one in out if one.outgoing.attachment).decode()
        assert [f"Line {number}:" in text for number in range(3, 9)] == [True] * 6


def test_several_lines_are_mended_at_once(chats):
    chats.says("ana", "hello", MANY)
    out = said(chats.says("ana", "\n".join(f"line {number}: plank 3x40 s" for number in range(3, 9))))

    assert "Plan saved" in out


def test_the_line_that_the_reply_suggests_mends_the_plan(chats):
    chats.says("ana", "hello")
    out = said(chats.says("ana", "plan: base, 4 weeks\nday mon: x\nchin-up total 30 reps"))
    example = out.split("Send: ")[1].splitlines()[0]

    assert "Plan saved" in said(chats.says("ana", example))
