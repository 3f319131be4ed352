"""What a coach sends with a client's name: done after a yes, answered, or told what can be sent; never kept unseen."""

from __future__ import annotations

import pytest

from tests.bot.chatting import said, to

BASE = """plan: base, 8 weeks
day mon: push
barbell bench press 3x5 at 60 kg, then +2.5 kg
dumbbell lateral raise 3x12-15 at 8 kg, then +1 kg
day thu: legs
barbell back squat 3x5 at 80 kg, then +2.5 kg
hammer curl 3x10 at 12 kg, then +1 kg"""
TABLE = "Exercise | Sets | Reps | Weight\nSquat | 3 | 5 | 85\nBench | 3 | 8 | 60"


@pytest.fixture
def coached(chats):
    chats.says("kit", "/start")
    code = said(chats.says("kit", "invite")).split("/start ")[1].split()[0]
    chats.says("anna", "/start", f"/start {code}", "yes")
    chats.says("kit", "plan for anna", BASE)
    return chats


def plan(chats):
    return chats.standing("anna")["plans"][-1][0]


@pytest.mark.parametrize(
    ("words", "proposed", "line"),
    [
        pytest.param("anna: -1 set squat", "-1 set barbell back squat", "barbell back squat 2x5", id="fewer sets"),
        pytest.param("anna: - 1 set squat", "-1 set barbell back squat", "barbell back squat 2x5", id="a spaced sign"),
        pytest.param("anna: +1 set bench", "+1 set barbell bench press", "barbell bench press 4x5", id="more sets"),
        pytest.param("ann: add 2 sets of squat", "+2 sets barbell back squat", "squat 5x5", id="a name cut short"),
        pytest.param(
            "anna: swap squat for leg press", "leg press instead of barbell back squat", "leg press 3x5", id="swap"
        ),
        pytest.param(
            "swap squat for leg press for anna", "leg press instead of", "leg press 3x5", id="the name behind"
        ),
        pytest.param(
            "-1 set squat for anna", "-1 set barbell back squat", "barbell back squat 2x5", id="behind a number"
        ),
        pytest.param("anna: more squats", "+1 set barbell back squat", "barbell back squat 4x5", id="more of a lift"),
        pytest.param("anna: fewer squats", "-1 set barbell back squat", "barbell back squat 2x5", id="fewer of a lift"),
        pytest.param("anna: move thu to fri", "Thursday to Friday", "day fri", id="a day moved"),
    ],
)
def test_a_change_of_a_clients_plan_is_made_after_a_yes(coached, words, proposed, line):
    before = plan(coached)
    out = said(coached.says("kit", words))
    waiting = plan(coached)
    told = coached.says("kit", "yes")

    assert out.startswith(f"For anna: {proposed}")
    assert out.endswith("Not saved yet.")
    assert waiting == before
    assert line in plan(coached)
    assert "kit changed your plan" in said(to(told, coached.parties["anna"].chat))


def test_a_lift_is_taken_out_by_the_name_that_only_one_lift_of_the_plan_has(coached):
    coached.says("kit", "anna: drop curls", "ja")

    assert "hammer curl" not in plan(coached)


@pytest.mark.parametrize(
    ("words", "reply"),
    [
        pytest.param("anna: deload", "anna has no deload week in the plan", id="deload"),
        pytest.param("deload anna", "anna has no deload week in the plan", id="deload, the name behind"),
        pytest.param("anna: great week", "To write: note to anna: great week", id="words"),
        pytest.param("anna: leg day was great", "To write: note to anna: leg day was great", id="words with a muscle"),
        pytest.param("anna: skip squat", "Nothing changed, nothing sent to anna", id="a day's choice of hers"),
        pytest.param("anna: change squat to 3x8", "To change the plan: anna: swap squat for leg press", id="a scheme"),
        pytest.param("anna: add face pulls", "Try: anna: add 2 sets of face pull", id="no number of sets"),
        pytest.param("anna: squat 3x5 85", "I record anna's sets only from anna", id="sets"),
        pytest.param("anna squat 3x5 85", "I record anna's sets only from anna", id="sets, no colon"),
        pytest.param("squat 3x5 85 for anna", "I record anna's sets only from anna", id="sets, the name behind"),
        pytest.param("amna: deload", "no single client goes by “amna”", id="a name with a slip in it"),
        pytest.param("anna, great week", "To write: note to anna: great week", id="a comma behind the name"),
        pytest.param("anna: swap squat", "expected the lift to do instead", id="a swap for nothing"),
        pytest.param(
            "is anna training today?", "I do not know what “is anna training today?” asks for", id="a question"
        ),
        pytest.param("send anna great week", "To anna: note to anna: great week", id="sent without a colon"),
        pytest.param("note anna the row was light", "To anna: note to anna: the row was light", id="to whom?"),
    ],
)
def test_what_can_not_be_done_for_a_client_says_what_can_be_sent(coached, words, reply):
    before = coached.standing("kit"), coached.standing("anna")
    out = coached.says("kit", words)

    assert reply in said(out)
    assert to(out, coached.parties["anna"].chat) == []
    assert (coached.standing("kit"), coached.standing("anna")) == before


@pytest.mark.parametrize(
    "words",
    [
        "note anna: keep the row at 55",
        "tell anna keep the row at 55",
        "msg anna: keep the row at 55",
        "dm anna: keep the row at 55",
        "anna: note: keep the row at 55",
    ],
)
def test_words_told_to_a_client_reach_her(coached, words):
    out = coached.says("kit", words)

    assert said(to(out, coached.parties["anna"].chat)) == "From kit: keep the row at 55"


@pytest.mark.parametrize(
    ("words", "reply"),
    [
        pytest.param("anna: week", "anna, week", id="week"),
        pytest.param("anna", "anna, week", id="the name alone"),
        pytest.param("plan anna", "anna: base, week 1 of 8", id="plan"),
        pytest.param("anna's plan", "anna: base, week 1 of 8", id="her plan"),
        pytest.param("history squat anna", "Barbell back squat", id="history"),
        pytest.param("what did anna squat last time", "Barbell back squat, lately", id="her name within"),
        pytest.param("how did anna do this week", "anna, week", id="her week asked for"),
    ],
)
def test_a_question_about_a_client_is_answered(coached, words, reply):
    coached.says("anna", "squat 3x5 80")

    assert said(coached.says("kit", words)).startswith(reply)


def test_a_table_sent_for_the_plan_is_the_clients_plan_and_no_set_of_the_coachs(coached):
    coached.says("kit", "plan for anna")
    out = said(coached.says("kit", TABLE))

    assert "anna has the plan" in out
    assert "barbell back squat 3x5" in plan(coached)
    assert coached.log("kit") == []


def test_lines_of_sets_sent_for_the_plan_are_asked_about(coached):
    before = plan(coached)
    coached.says("kit", "plan for anna")
    out = said(coached.says("kit", "squat 3x5 85\nbench 3x8 60"))

    assert "is that the plan for anna, or sets of yours?" in out
    assert (coached.log("kit"), plan(coached)) == ([], before)

    coached.says("kit", "forget it", "squat 3x5 85\nbench 3x8 60")
    assert len(coached.log("kit")) == 6


def test_a_letter_that_begins_a_clients_name_is_a_label_of_the_coachs_own_lift(coached):
    coached.says("kit", "A: bench 80x8")

    assert coached.log("kit") == [("barbell bench press", 8, "80 kg")]


def test_words_with_a_clients_name_in_them_are_a_note_of_the_coachs_and_said_to_be(coached):
    out = coached.says("kit", "anna has knee pain again")

    assert said(out).startswith("Kept as a note of yours, nothing sent to anna.")
    assert coached.standing("kit")["notes"] == [("anna has knee pain again", False, False)]


def test_another_number_of_sets_of_a_lift_is_proposed_anew(coached):
    coached.says("kit", "anna: +2 sets squat")
    out = said(coached.says("kit", "make it 1"))
    coached.says("kit", "yes")

    assert out.startswith("For anna: +1 set barbell back squat")
    assert "barbell back squat 4x5" in plan(coached)


@pytest.mark.parametrize(
    "words",
    [
        "deadlift 150x3 (anna 80x3)",
        "squat 3x5 100 anna 3x5 60",
        "squat 3x5 100 anna bench 3x5 60",
        "squat 3x5 100 (anna got 3x5 60)",
        "squat 3x5 100 / anna 3x5 60",
        "squat 3x5 100 anna: 3x5 60",
    ],
)
def test_sets_of_a_client_among_the_coachs_own_are_not_saved_as_his(coached, words):
    out = said(coached.says("kit", words))

    assert "I record anna's sets only from anna" in out
    assert coached.log("kit") == []


def test_sets_of_a_client_whose_name_is_a_word_of_another_kind_are_not_saved_as_the_coachs(chats):
    chats.says("kit", "/start")
    code = said(chats.says("kit", "invite")).split("/start ")[1].split()[0]
    chats.says("mia", "/start", f"/start {code}", "yes")
    chats.says("kit", "kg")

    assert "I record mia's sets only from mia" in said(chats.says("kit", "squat 3x5 100 mia 3x5 60"))
    assert "Which “row”?" in said(chats.says("kit", "row 3x12 55, mia 3x12 60"))
    assert chats.log("kit") == []

    chats.says("kit", "forget it", "squat 3x5 100 (mia did 3x5 60)")
    assert chats.log("kit") == [("barbell back squat", 5, "100 kg")] * 3


def test_a_clients_sets_left_out_amid_the_coachs_own_leave_all_of_his(coached):
    coached.says("kit", "squat 100x5, anna did 60x5, squat 105x5")

    assert coached.log("kit") == [("barbell back squat", 5, "100 kg"), ("barbell back squat", 5, "105 kg")]


@pytest.mark.parametrize(
    "words",
    [
        "squat 3x5 100 anna did 3x5 60",
        "squat 3x5 100, anna did 3x5 60",
        "squat 3x5 100 with anna",
        "squat with anna 3x5 100",
    ],
)
def test_the_coachs_own_sets_are_saved_where_the_clients_are_left_out(coached, words):
    coached.says("kit", words)

    assert coached.log("kit") == [("barbell back squat", 5, "100 kg")] * 3


@pytest.mark.parametrize(
    "words",
    [
        "tell anna's mum thanks",
        "tell anna’s mum thanks",
        "msg anna's mum: thanks",
        "note to anna's mum: thanks",
        "tell anna-lee thanks",
    ],
)
def test_a_name_within_a_longer_word_is_no_address(coached, words):
    out = coached.says("kit", words)

    assert to(out, coached.parties["anna"].chat) == []
    assert "nothing sent" in said(out) or "no single client" in said(out)


def test_words_to_somebody_of_the_coachs_are_not_sent_to_the_coach(coached):
    out = coached.says("anna", "tell kit's wife thanks")

    assert to(out, coached.parties["kit"].chat) == []


def test_a_clients_digest_may_be_asked_for_as_hers(coached):
    assert said(coached.says("kit", "digest anna's week")).startswith("anna, week")
