"""Found by talking to it: what goes to a coach, a session moved as "it", all of it by the plan, a ramp, kit at hand."""

from __future__ import annotations

from datetime import date, timedelta

import pytest

from tests.bot.chatting import PLAN, said, to


@pytest.fixture
def ana(chats):
    chats.says("ana", "/start", "skip", "skip", PLAN)
    return chats


@pytest.fixture
def coached(ana):
    code = said(ana.says("kit", "invite")).split("/start ")[1].split()[0]
    ana.says("ana", f"/start {code}", "yes")
    return ana


@pytest.mark.parametrize(
    "words",
    [
        "tell my coach my knee hurts",
        "note to my coach: my knee hurts",
        "note to kit: my knee hurts",
        "tell coach my knee hurts",
    ],
)
def test_words_to_her_coach_are_shared_and_no_older_note(coached, words):
    coached.says("ana", "sharp pain in my left elbow")
    out = said(coached.says("ana", words))

    assert out.endswith("Shared with kit: “my knee hurts”")
    assert [text for text, is_shared, _ in coached.standing("ana")["notes"] if is_shared] == ["my knee hurts"]


def test_it_is_the_session_where_no_sets_are_of_today(ana):
    ana.says("ana", "squat 3x5 90")
    ana.at += timedelta(days=7)
    out = said(ana.says("ana", "move it to wednesday"))

    assert out.startswith("Legs moved to Wed")
    assert [on for _, _, _, on in ana.dated("ana")] == [date(2026, 3, 2)] * 3


def test_it_is_the_sets_where_some_are_of_today(ana):
    ana.says("ana", "squat 3x5 90", "move it to sunday")

    assert [on for _, _, _, on in ana.dated("ana")] == [date(2026, 3, 1)] * 3


def test_all_as_planned_is_every_lift_whose_reps_the_plan_fixes(ana):
    ana.says("ana", "all done as planned")

    assert ana.log("ana") == [("barbell back squat", 5, "90 kg")] * 3 + [("leg extension", 12, "50 kg")] * 3


def test_all_as_planned_amid_a_lift_is_that_lift(ana):
    ana.says("ana", "squat 90x5", "all as planned")

    assert ana.log("ana") == [("barbell back squat", 5, "90 kg")] * 3


@pytest.mark.parametrize("words", ["warm up 60", "warmup to 60 kg", "warm up 60 for squat"])
def test_a_ramp_to_a_load_of_her_own(ana, words):
    out = said(ana.says("ana", words))

    assert out.startswith("Warm up for barbell back squat at 60 kg:")
    assert ana.log("ana") == []


def test_only_dumbbells_offers_dumbbells(ana):
    out = said(ana.says("ana", "only dumbbells today"))

    assert "goblet squat and dumbbell squat" in out


def test_what_else_for_a_lift_that_is_not_on_is_told(ana):
    out = said(ana.says("ana", "rower's broken, what else for rows"))

    assert out.startswith("Much the same work as barbell row:")
    assert "not on for today (barbell back squat and leg extension), so nothing changed" in out


@pytest.mark.parametrize(
    ("words", "reply"),
    [
        pytest.param("add face pulls today", "log it and it counts, for instance face pull 3x12 20", id="a lift added"),
        pytest.param("less squat", "Kept as a note", id="no word of another language"),
        pytest.param("1rm squat", "No sets of barbell back squat yet", id="a maximum"),
        pytest.param("timer off", "No rest is running", id="no timer runs"),
    ],
)
def test_it_says_what_it_takes(ana, words, reply):
    assert reply in said(ana.says("ana", words))


def test_nothing_goes_to_a_coach_whom_she_has_not(ana):
    out = ana.says("ana", "tell my coach my knee hurts")

    assert to(out, ana.parties["ana"].chat)
    assert "No coach" in said(out) or "no coach" in said(out)


@pytest.mark.parametrize("words", ["85x3", "forgot 80 for 8", "oh and a back off set 80x8"])
def test_a_load_of_the_last_lift_is_asked_about_where_another_is_next(ana, words):
    """The plan's squats are in, so leg extensions are next, at far less."""
    ana.says("ana", "leg extension 12 30", "squat 3x5 90")
    before = ana.log("ana")
    out = said(ana.says("ana", words))

    assert out.startswith("Which “")
    assert ana.log("ana") == before


@pytest.mark.parametrize("words", ["wake me at 6", "make it 6", "no 25", "that was 27.5"])
def test_bare_words_days_later_change_no_set(ana, words):
    ana.says("ana", "squat 3x5 90")
    before = ana.log("ana")
    ana.at += timedelta(days=3)
    ana.says("ana", words)

    assert ana.log("ana") == before


def test_a_lift_that_is_named_days_later_is_set_right(ana):
    ana.says("ana", "squat 3x5 90")
    ana.at += timedelta(days=3)
    ana.says("ana", "squat was 92.5")

    assert ana.log("ana") == [("barbell back squat", 5, "92.5 kg")] * 3


@pytest.mark.parametrize(
    "words",
    [
        "no bench today",
        "no squats today",
        "no leg press here",
        "leg press instead",
        "drop a set of squat",
        "what if i drop a set of bench",
    ],
)
def test_what_is_said_of_today_changes_no_set_of_days_ago(ana, words):
    ana.says("ana", "leg press 3x12 135", "bench 3x8 60")
    before = ana.standing("ana")["sets"]
    ana.at += timedelta(days=3)
    ana.says("ana", words)

    assert ana.standing("ana")["sets"] == before


@pytest.mark.parametrize("words", ["what if i drop a set of bench", "should i drop a set of bench?"])
def test_a_question_takes_no_set_away(ana, words):
    ana.says("ana", "bench 3x8 60")
    before = ana.standing("ana")["sets"]
    ana.says("ana", words)

    assert ana.standing("ana")["sets"] == before


def test_a_sign_stays_with_the_number_of_what_would_be(ana):
    fewer = said(ana.says("ana", "what if I -1 set barbell row"))

    assert fewer.startswith("If I -1 set barbell row (nothing is saved):")
    assert "lats: 3 to 2 sets a week" in fewer
