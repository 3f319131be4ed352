"""Names in a coach's chat and a client's: whom words are to, whose sets they tell, and what is said of strangers."""

from __future__ import annotations

import pytest

from tests.bot.chatting import said, texts, to
from tests.bot.test_coaching_by_chat import linked


@pytest.fixture
def coaching(chats):
    linked(chats, "ann")
    return chats


@pytest.mark.parametrize("words", ["digest ben", "ben: week", "tell ben hi", "plan for ben", "message zoe: hi"])
def test_a_name_that_no_client_has_is_said_to_be_none(coaching, words):
    out = coaching.says("kit", words)

    assert "no single client goes by" in said(out)
    assert "Clients: ann" in said(out)
    assert not to(out, coaching.parties["ann"].chat)


@pytest.mark.parametrize(
    "words",
    ["digest of the week", "tell me a joke", "plan for monday", "message from the gym: closed", "note: gym closed"],
)
def test_words_that_are_no_names_are_none(coaching, words):
    assert "no single client" not in said(coaching.says("kit", words))


@pytest.mark.parametrize(
    "words", ["log ann bench 3x8 60", "ann bench 3x8 60", "bench 3x8 60 ann", "bench 3x8 60 for ann"]
)
def test_a_clients_sets_are_never_the_coachs(coaching, words):
    out = coaching.says("kit", words)

    assert "only from ann" in said(out)
    assert coaching.log("kit") == coaching.log("ann") == []


@pytest.mark.parametrize("words", ["bench 3x8 60", "bench 3x8 60 with ann", "monday: bench 3x8 60"])
def test_the_coachs_own_sets_are_recorded(coaching, words):
    coaching.says("kit", words)

    assert len(coaching.log("kit")) == len(["set"] * 3)


def test_a_clients_name_at_the_first_contact_is_no_town(coaching):
    out = said(coaching.says("kit", "ann"))

    assert "clock" not in out
    assert out.startswith("ann")


@pytest.mark.parametrize("words", ["tell kit the gym was packed", "tell my coach the gym was packed"])
def test_words_to_the_coach_by_name_are_shared(coaching, words):
    coaching.says("ann", words)

    assert "the gym was packed" in said(coaching.says("kit", "digest ann"))


@pytest.mark.parametrize("words", ["tell kit my knee hurts on squats", "tell my coach my knee hurts on squats"])
def test_pain_told_to_the_coach_is_answered_and_shared(coaching, words):
    out = texts(coaching.says("ann", words))

    assert "see a doctor" in out[0]
    assert "Only you" not in out[0]
    assert "Shared with kit" in out[-1]
    assert ("my knee hurts on squats", True, True) in coaching.standing("ann")["notes"]


def test_words_to_somebody_else_are_shared_with_nobody(coaching):
    coaching.says("ann", "tell tom the gym was packed")

    assert [shared for _, shared, _ in coaching.standing("ann")["notes"]] == [False]


@pytest.mark.parametrize(
    "words",
    ["ann's squat was 90 not 85", "change ann's squat to 90", "ann only did 2 sets", "delete ann's last set"],
)
def test_a_clients_sets_are_put_right_by_nobody_else_and_the_coachs_own_stand(coaching, words):
    coaching.says("kit", "squat 100x5")
    before, hers = coaching.log("kit"), coaching.log("ann")
    out = said(coaching.says("kit", words))

    assert "ann's sets are put right only by ann" in out
    assert (coaching.log("kit"), coaching.log("ann")) == (before, hers)


def test_a_coach_without_sets_of_his_own_is_told_so_too(coaching):
    hers = coaching.log("ann")
    out = said(coaching.says("kit", "ann's squat was 90 not 85"))

    assert "ann's sets are put right only by ann" in out
    assert (coaching.log("kit"), coaching.log("ann")) == ([], hers)


def test_a_client_who_is_named_behind_the_numbers_leaves_a_correction_the_coachs_own(coaching):
    coaching.says("kit", "squat 100x5", "97.5 not 100, ann talked to me")

    assert coaching.log("kit")[-1][2] == "97.5 kg"
