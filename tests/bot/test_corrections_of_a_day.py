"""A correction that names a day reaches the sets of that day, and no others."""

from __future__ import annotations

from datetime import date, timedelta

import pytest

from tests.bot.chatting import said

MONDAY, FRIDAY = date(2026, 3, 2), date(2026, 3, 6)


@pytest.fixture
def friday(chats):
    chats.says("ana", "squat 3x5 90", "bench 2x8 60")
    chats.at += timedelta(days=4)
    chats.says("ana", "squat 3x5 100")
    return chats


def squats(chats):
    return {
        on: [(reps, load) for name, reps, load, day in chats.dated("ana") if "squat" in name and day == on]
        for on in (MONDAY, FRIDAY)
    }


@pytest.mark.parametrize(
    "words",
    [
        "the squat on monday was 91",
        "monday's squat was 91",
        "squat monday was 91",
        "squat on monday was 91 not 90",
        "the squat on Monday was 91 kg, sorry",
    ],
)
def test_the_sets_of_the_day_named_are_changed(friday, words):
    friday.says("ana", words)

    assert squats(friday) == {MONDAY: [(5, "91 kg")] * 3, FRIDAY: [(5, "100 kg")] * 3}


def test_a_part_of_the_day_named_is_changed(friday):
    friday.says("ana", "the second squat set on monday was 3 reps")

    assert squats(friday) == {MONDAY: [(5, "90 kg"), (3, "90 kg"), (5, "90 kg")], FRIDAY: [(5, "100 kg")] * 3}


@pytest.mark.parametrize("words", ["the squat on friday was 101", "today's squat was 101", "squat today was 101"])
def test_today_may_be_named_too(friday, words):
    friday.says("ana", words)

    assert squats(friday) == {MONDAY: [(5, "90 kg")] * 3, FRIDAY: [(5, "101 kg")] * 3}


@pytest.mark.parametrize(
    "words",
    [
        "the squat on wednesday was 101",
        "squat on wednesday was 101 not 100",
        "the squat yesterday was 101",
        "the last set on wednesday was 4 not 5",
        "delete the last set on wednesday",
        "on wednesday squat was 4 reps",
        "wednesday squat was 4",
        "wednesday's front squat was 60 kg",
        "delete wednesday's squat",
    ],
)
def test_a_day_without_such_sets_is_said_so_and_nothing_changes(friday, words):
    before = friday.dated("ana")
    out = said(friday.says("ana", words))

    assert friday.dated("ana") == before
    assert "no such sets stand on that day" in out


def test_a_day_to_move_to_is_no_day_to_look_in(friday):
    friday.says("ana", "the squats were on thursday")

    assert {day for name, _, load, day in friday.dated("ana") if load == "100 kg"} == {date(2026, 3, 5)}


@pytest.mark.parametrize(
    "words",
    [
        "delete monday's squat",
        "remove the squat from monday",
        "drop monday's squats",
        "take out monday's squats",
        "lösche die kniebeugen vom montag",
        "borra la sentadilla del lunes",
    ],
)
def test_a_lift_of_the_day_named_goes(friday, words):
    friday.says("ana", words)

    assert squats(friday) == {MONDAY: [], FRIDAY: [(5, "100 kg")] * 3}
    assert len(friday.dated("ana")) == 5, "the bench of monday stays"


@pytest.mark.parametrize(
    "words", ["delete monday's session", "remove everything from monday", "delete all monday's sets"]
)
def test_all_of_the_day_named_goes(friday, words):
    friday.says("ana", words)

    assert {day for _, _, _, day in friday.dated("ana")} == {FRIDAY}


def test_one_set_of_the_day_named_goes(friday):
    friday.says("ana", "delete monday's last squat set")

    assert squats(friday) == {MONDAY: [(5, "90 kg")] * 2, FRIDAY: [(5, "100 kg")] * 3}


@pytest.mark.parametrize(
    "words", ["squat on wednesday was 3x5 at 95", "squat wednesday was 95 for 5", "squats on wednesday were 95x5 95x5"]
)
def test_whole_sets_of_a_day_without_any_are_new_ones_of_that_day(friday, words):
    friday.says("ana", words)

    assert {(load, day) for name, _, load, day in friday.dated("ana") if "squat" in name} == {
        ("90 kg", MONDAY),
        ("95 kg", date(2026, 3, 4)),
        ("100 kg", FRIDAY),
    }


@pytest.mark.parametrize("words", ["the squat on monday was 91", "delete monday's squat"])
def test_a_day_further_back_than_the_latest_sets_is_reached(friday, words):
    friday.says("ana", "bench 10x8 62.5", "row 3x12 55", "barbell row")
    friday.says("ana", words)

    assert squats(friday)[MONDAY] != [(5, "90 kg")] * 3
    assert squats(friday)[FRIDAY] == [(5, "100 kg")] * 3


@pytest.mark.parametrize("words", ["bench was only 1 set", "delete the bench"])
def test_no_set_of_days_ago_goes_where_its_day_is_not_named(friday, words):
    out = friday.says("ana", words)

    assert "Nothing changed" in said(out)
    assert sum("bench" in name for name, *_ in friday.dated("ana")) == 2


def test_a_set_more_and_another_day_told_at_once_are_one_step(friday):
    told = said(friday.says("ana", "squat was 4 sets not 3, and that was yesterday"))
    thursday = FRIDAY - timedelta(days=1)

    assert [row for row in friday.dated("ana") if row[3] == thursday] == [
        ("barbell back squat", 5, "100 kg", thursday)
    ] * 4
    assert "4×5 at 100 kg yesterday" in told

    assert said(friday.says("ana", "undo")).startswith("Undone: the correction of barbell back squat.")
    assert squats(friday) == {MONDAY: [(5, "90 kg")] * 3, FRIDAY: [(5, "100 kg")] * 3}


def test_two_lifts_moved_to_two_days_at_once_are_one_step(friday):
    friday.says("ana", "bench 2x8 62.5", "move the squat to tuesday and the bench to wednesday")
    moved = sorted({(row[0], row[3]) for row in friday.dated("ana") if row[3] > MONDAY})

    assert moved == [("barbell back squat", date(2026, 3, 3)), ("barbell bench press", date(2026, 3, 4))]

    friday.says("ana", "undo")

    assert {row[3] for row in friday.dated("ana")} == {MONDAY, FRIDAY}


def test_sets_put_right_are_shown_in_the_order_they_were_done(friday):
    friday.says("ana", "deadlift 60x8", "60x7")

    assert "9, 6 at 60 kg" in said(friday.says("ana", "that was 6, and the first one 9"))
