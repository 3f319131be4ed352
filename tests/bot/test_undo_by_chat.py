"""Undo and redo, as they are said in the chat: exactly one thing back, whatever it was; talk between is no step."""

from __future__ import annotations

from datetime import timedelta

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.bot.chatting import PLAN, Chats, said, texts, to
from tests.databases import in_memory

ONE_EACH = [
    pytest.param(["squat 3x5 90"], id="sets"),
    pytest.param(["squat 90x5, leg extension 50x12"], id="sets of two lifts at once"),
    pytest.param(["press 3x8 40", "overhead"], id="an answer"),
    pytest.param(["that was 4 not 5"], id="a correction"),
    pytest.param(["edit: squat 95x5"], id="an edit"),
    pytest.param(["edit: wrong chat, sorry"], id="an edit into talk"),
    pytest.param(["delete set 1"], id="a deletion"),
    pytest.param(["move it to yesterday"], id="a move"),
    pytest.param([PLAN.replace("3x5", "4x5")], id="a plan"),
    pytest.param(["/plan from monday"], id="a plan's start"),
    pytest.param(["skip leg extension"], id="a skip"),
    pytest.param(["skip today"], id="a skipped day"),
    pytest.param(["swap leg extension for leg press"], id="a swap"),
    pytest.param(["move to fri"], id="a session moved"),
    pytest.param(["note: slept badly"], id="a note"),
    pytest.param(["bodyweight 82"], id="a body weight"),
    pytest.param(["units lb"], id="a unit"),
    pytest.param(["/settings zone Berlin"], id="a clock"),
    pytest.param(["remind me 18:00 mon wed"], id="reminders"),
    pytest.param(["remind me at 20:00"], id="a reminder for once"),
    pytest.param(["quiet 22:00 7:30"], id="quiet hours"),
    pytest.param(["pause until friday"], id="a pause"),
    pytest.param(["/settings summary off"], id="a switch"),
    pytest.param(["bp means close grip bench press"], id="a shorthand"),
    pytest.param(["new exercise: cable hip flexion, like leg extension"], id="an exercise"),
    pytest.param(["as planned"], id="the rest as planned"),
    pytest.param(["same"], id="the same again"),
]


def begun(database):
    chats = Chats(database)
    chats.says("ana", "/start", "London", "kg", PLAN, "squat 90x5")
    return chats


def do(chats, steps):
    for step in steps:
        if step.startswith("edit: "):
            chats.edits("ana", step.removeprefix("edit: "))
        else:
            chats.says("ana", step)


@pytest.mark.parametrize("steps", ONE_EACH)
def test_undo_takes_back_exactly_this_and_redo_brings_it_again(database, steps):
    chats = begun(database)
    before = chats.standing("ana")
    do(chats, steps)
    after = chats.standing("ana")
    assert after != before

    undone = chats.says("ana", "undo")
    assert chats.standing("ana") == before
    assert texts(undone)[0].startswith("Undone: ")

    redone = chats.says("ana", "redo")
    assert chats.standing("ana") == after
    assert texts(redone)[0].startswith("Back again: ")

    chats.says("ana", "undo", "undo")
    assert chats.log("ana") == []


@pytest.mark.parametrize(
    "between",
    [
        pytest.param("queue at the rack again", id="talk"),
        pytest.param("today", id="a look at the session"),
        pytest.param("week", id="a look at the week"),
        pytest.param("why", id="a question"),
        pytest.param("row 3x12 5", id="a question of the bot's"),
        pytest.param("invite", id="an invitation"),
        pytest.param("rest 2 min", id="a rest"),
        pytest.param("more quads", id="a proposal not taken"),
        pytest.param("bench 80x", id="a slip"),
    ],
)
def test_what_changes_no_record_is_no_step(chats, between):
    chats.says("ana", "/start", "skip", "kg", PLAN, "squat 90x5", "squat 90x4", between, "undo")

    assert chats.log("ana") == [("barbell back squat", 5, "90 kg")]


def test_pain_told_last_is_taken_back_alone_and_what_is_undone_next_is_named(chats):
    out = chats.says("ana", "/start", "skip", "kg", PLAN, "squat 90x5", "left knee hurts a bit", "undo")

    assert chats.log("ana") == [("barbell back squat", 5, "90 kg")]
    assert chats.standing("ana")["notes"] == []
    assert "undo again takes back barbell back squat" in said(out)

    chats.says("ana", "redo")
    assert [pain for _, _, pain in chats.standing("ana")["notes"]] == [True]

    chats.says("ana", "undo", "undo")
    assert chats.log("ana") == []


@pytest.mark.parametrize("behind", [["90x4"], ["90x4", "90x3", "undo"]])
def test_pain_told_before_other_sets_is_no_step(chats, behind):
    chats.says("ana", "/start", "skip", "kg", PLAN, "squat 90x5", "left knee hurts a bit", *behind, "undo", "undo")

    assert chats.log("ana") == []
    assert [pain for _, _, pain in chats.standing("ana")["notes"]] == [True]


def test_a_note_after_undo_leaves_redo_possible(chats):
    chats.says("ana", "squat 90x5", "undo", "what a day", "redo")

    assert chats.log("ana") == [("barbell back squat", 5, "90 kg")]


def test_a_set_after_undo_ends_redo(chats):
    out = chats.says("ana", "squat 90x5", "undo", "squat 80x5", "redo")

    assert "Nothing" in said(out)
    assert chats.log("ana") == [("barbell back squat", 5, "80 kg")]


def test_nothing_to_undo_is_said_so(chats):
    assert "Nothing to undo" in said(chats.says("ana", "undo"))


def coached(chats):
    code = said(chats.says("kit", "/start", "invite")).split("/start ")[1].split()[0]
    chats.says("ana", f"/start {code}", "yes", "squat 90x5")
    chats.says("kit", "bench 60x5", f"plan for ana\n{PLAN}")


def test_a_coach_undoes_the_plan_he_gave_and_she_her_own_set(chats):
    coached(chats)
    given = len(chats.standing("ana")["plans"])

    out = chats.says("kit", "undo")
    taken_back = chats.standing("ana")
    chats.says("kit", "redo")
    given_again = len(chats.standing("ana")["plans"])
    chats.says("ana", "undo")

    assert (given, len(taken_back["plans"]), given_again) == (1, 0, 1)
    assert "took back" in said(to(out, chats.parties["ana"].chat))
    assert len(taken_back["sets"]) == 1
    assert chats.log("ana") == []
    assert len(chats.standing("ana")["plans"]) == 1
    assert len(chats.log("kit")) == 1


def test_after_his_client_left_a_coach_undoes_nothing_of_hers(chats):
    coached(chats)
    chats.says("ana", "/accept leave coach")
    chats.says("kit", "undo")

    assert len(chats.standing("ana")["plans"]) == 1
    assert chats.log("kit") == []


SET = st.tuples(st.just("set"), st.integers(3, 12), st.sampled_from((60, 62.5, 80)))
DEEDS = st.lists(st.one_of(SET, st.just(("undo",)), st.just(("redo",)), st.just(("talk",))), max_size=14)


@settings(max_examples=15, deadline=None, derandomize=True)
@given(DEEDS)
def test_any_conversation_of_sets_undo_and_redo_leaves_what_a_list_would_hold(deeds):
    database = in_memory()
    chats = Chats(database)
    chats.says("ana", "hello")
    log: list[tuple[int, str]] = []
    taken_back: list[tuple[int, str]] = []
    for deed in deeds:
        match deed:
            case ("set", reps, load):
                chats.says("ana", f"bench {load}x{reps}")
                log.append((reps, f"{load} kg"))
                taken_back.clear()
            case ("undo",):
                chats.says("ana", "undo")
                if log:
                    taken_back.append(log.pop())
            case ("redo",):
                chats.says("ana", "redo")
                if taken_back:
                    log.append(taken_back.pop())
            case _:
                chats.says("ana", "what a day")

    left = [(reps, load) for _, reps, load in chats.log("ana")]
    database.close()
    assert left == log


@pytest.mark.parametrize("words", ["im back", "i'm back from holiday", "resume"])
def test_back_where_nothing_was_paused_is_no_step_of_undo(chats, words):
    chats.says("ana", "/start", "bench 3x8 60")
    out = said(chats.says("ana", words))
    chats.says("ana", "undo")

    assert "nothing changes" in out
    assert chats.log("ana") == []


def test_back_from_a_pause_can_be_undone(chats):
    chats.says("ana", "/start", "bench 3x8 60", "pause until friday")
    paused = chats.standing("ana")
    chats.says("ana", "im back")
    resumed = chats.standing("ana")
    chats.says("ana", "undo")

    assert resumed != paused
    assert chats.standing("ana") == paused


@pytest.mark.parametrize("again", ["delete it", "remove that", "bin it"])
def test_delete_it_goes_no_further_than_the_last_message(chats, again):
    out = chats.says("ana", "squat 90x5", "bench 60x5", "delete it", again)

    assert "Nothing of the last message is left" in said(out)
    assert chats.log("ana") == [("barbell back squat", 5, "90 kg")]


def test_delete_it_brings_no_deleted_set_back(chats):
    out = chats.says("ana", "squat 90 5 5 4", "delete the last set", "delete it")

    assert "Deleted already" in said(out)
    assert [reps for _, reps, _ in chats.log("ana")] == [5, 5]


def test_delete_it_takes_nothing_of_an_earlier_day(chats):
    chats.says("ana", "squat 90x5")
    chats.at += timedelta(days=1)

    chats.says("ana", "delete it")

    assert chats.log("ana") == [("barbell back squat", 5, "90 kg")]


@pytest.mark.parametrize("back", ["put it back", "restore the set", "no keep it"])
def test_a_deletion_is_put_back_in_words(chats, back):
    chats.says("ana", "squat 90 5 5 4", "delete set 2", back)

    assert [reps for _, reps, _ in chats.log("ana")] == [5, 5, 4]


@pytest.mark.parametrize("fine", ["actually 2 was fine", "set 2 was good after all", "put set 2 back"])
def test_whether_a_deleted_set_is_wanted_back_is_asked(chats, fine):
    out = chats.says("ana", "squat 90 5 5 4", "delete set 2", fine)

    assert "Should it come back?" in said(out)
    chats.says("ana", "undo")
    assert [reps for _, reps, _ in chats.log("ana")] == [5, 5, 4]


@pytest.mark.parametrize("right", ["wait no it was right", "nah that was correct", "no wait it was ok"])
def test_what_was_right_after_all_is_put_back(chats, right):
    chats.says("ana", "squat 90x5", "delete it", right)

    assert chats.log("ana") == [("barbell back squat", 5, "90 kg")]


@pytest.mark.parametrize("words", ["scrap the last set", "delete the last set", "undo the last set", "remove last set"])
def test_where_no_set_stands_none_is_scrapped_and_nothing_else_is_taken_back(chats, words):
    out = said(chats.says("ana", "bodyweight 82", words))

    assert "Nothing of the last message is left" in out
    assert chats.standing("ana")["weights"] == ["82 kg"]


def test_undo_on_another_day_names_the_day_of_what_it_takes_back(chats):
    chats.says("ana", "/start", "London", "kg", "squat 90x5")
    chats.at += timedelta(days=1)

    assert said(chats.says("ana", "done", "undo")).startswith("Undone: barbell back squat 5 at 90 kg, yesterday.")
    chats.says("ana", "squat on friday 80x5")
    assert said(chats.says("ana", "undo")).startswith("Undone: barbell back squat 5 at 80 kg, Fri 27 Feb.")


@pytest.mark.parametrize("words", ["undo undo", "undo, undo", "annule annule"])
def test_undo_told_over_takes_back_one_step(chats, words):
    chats.says("ana", "/start", "squat 90x5", "90x4", words)
    assert chats.log("ana") == [("barbell back squat", 5, "90 kg")]


def test_undo_told_over_behind_an_undo_is_the_undo_undone(chats):
    chats.says("ana", "/start", "squat 90x5", "90x4", "undo", "undo undo")

    assert [reps for _, reps, _ in chats.log("ana")] == [5, 4]
