"""An edited request takes back what it did; a mistyped one says what it was read as, or asks first."""

from __future__ import annotations

from datetime import date, timedelta

import pytest

from storage.records import ChoiceKind
from tests.bot.chatting import PLAN, said


def skipped(chats, who="ana"):
    person = chats.person(who).id
    with chats.store() as store:
        choices = store.choices.between(person, date(2026, 3, 2), date(2026, 3, 2))
    return [one.exercise for one in choices if one.kind is ChoiceKind.SKIP]


@pytest.fixture
def ana(chats):
    chats.says("ana", "/start", "skip", "skip", PLAN)
    return chats


def test_an_edited_skip_leaves_only_the_new_lift_out(ana):
    ana.says("ana", "skip squat")
    out = said(ana.edits("ana", "skip leg extension"))

    assert skipped(ana) == ["leg extension"]
    assert "Taken back: skipping barbell back squat." in out
    assert "Leg extension skipped for today" in out


def test_a_request_edited_to_chat_is_taken_back(ana):
    ana.says("ana", "skip squat")
    out = said(ana.edits("ana", "feeling good today"))

    assert skipped(ana) == []
    assert "Taken back: skipping barbell back squat." in out


def test_a_request_edited_to_sets_is_taken_back_and_the_sets_saved(ana):
    ana.says("ana", "skip squat")
    out = said(ana.edits("ana", "squat 90x5"))

    assert skipped(ana) == []
    assert "Added: barbell back squat 5 at 90 kg" in out


def test_an_edit_that_cannot_be_read_leaves_the_request(ana):
    ana.says("ana", "skip squat")
    out = said(ana.edits("ana", "bodyweight 1e309"))

    assert skipped(ana) == ["barbell back squat"]
    assert "Can't read the edit" in out


def test_an_edited_reminder_comes_once(ana):
    ana.says("ana", "remind me at 19:00")
    ana.edits("ana", "remind me at 20:00")

    out = ana.until(ana.at.replace(hour=19, minute=30))
    assert "Reminder" not in said(out)
    assert ana.until(ana.at.replace(hour=20, minute=1))


def test_a_mended_request_says_what_it_was_read_as(ana):
    assert said(ana.says("ana", "skpi squat")).startswith("Read as: skip squat\n")


def test_a_mistyped_request_that_takes_away_is_asked(ana):
    ana.says("ana", "squat 90x5")
    out = ana.says("ana", "earse everything")

    assert "Did you mean" in said(out)
    assert ana.log("ana") == [("barbell back squat", 5, "90 kg")]


@pytest.mark.parametrize("text", ["udno", "undop"])
def test_a_mistyped_undo_is_done_says_so_and_can_be_redone(ana, text):
    ana.says("ana", "squat 90x5")
    out = ana.says("ana", text)

    assert said(out).startswith("Read as: undo\n")
    assert ana.log("ana") == []
    ana.says("ana", "redo")
    assert ana.log("ana") == [("barbell back squat", 5, "90 kg")]


def test_a_rest_ends_with_the_next_set(ana):
    ana.says("ana", "squat 90x5", "rest 3 min", "squat 90x5")

    assert not ana.until(ana.at + timedelta(minutes=5))


def test_a_rest_without_a_set_sounds(ana):
    ana.says("ana", "squat 90x5", "rest 3 min")

    assert "Rest over" in said(ana.until(ana.at + timedelta(minutes=5)))


def test_moving_to_the_weekday_of_today_is_asked(ana):
    out = said(ana.says("ana", "move to mon"))
    assert "today is Monday" in out
    assert "move to 9 mar" in out

    assert "Mon 9 Mar" in said(ana.says("ana", "move to 9 mar"))


def test_several_lifts_are_skipped_in_one_step(ana):
    out = said(ana.says("ana", "skip squats and leg extensions"))
    assert sorted(skipped(ana)) == ["barbell back squat", "leg extension"]
    assert "Barbell back squat and leg extension skipped" in out

    ana.says("ana", "undo")
    assert skipped(ana) == []
