"""What the four weeks' story prescribes, in numbers worked out by hand; the wording stands in replies.txt.

The rules are common practice, no source: a set wave, double progression, a load step, one more rep on maximum sets.
"""

from __future__ import annotations

import pytest

from tests.conversations.playing import HERE, Played


@pytest.fixture(scope="module")
def played():
    return Played(HERE / "four_weeks" / "story.txt")


def asked(played, day, exercise):
    """Reps and loads of an exercise in the first card of a day's session that states it."""
    for line in played.to("ida"):
        for one in line.get("prescribes", []):
            if line["at"].startswith(day) and one["exercise"] == exercise:
                return [(target["reps"], target["load"]) for target in one["sets"]]
    raise AssertionError(f"nothing prescribed for {exercise} on {day}")


@pytest.mark.parametrize(
    ("day", "sets", "load"),
    [
        pytest.param("2026-03-02", 3, 42.5, id="week 1 three sets"),
        pytest.param("2026-03-09", 4, 42.5, id="week 2 four sets"),
        pytest.param("2026-03-16", 5, 42.5, id="week 3 five sets"),
        pytest.param("2026-03-23", 3, 45, id="week 4 three sets, heavier"),
    ],
)
def test_the_set_wave_goes_three_four_five_then_heavier(played, day, sets, load):
    assert asked(played, day, "barbell overhead press") == [(6, load)] * sets


@pytest.mark.parametrize(
    ("day", "load"),
    [
        pytest.param("2026-03-02", 8, id="starts at 8"),
        pytest.param("2026-03-09", 8, id="13, 12, 12 hold the load"),
        pytest.param("2026-03-16", 9, id="15, 15, 15 raise it"),
        pytest.param("2026-03-23", 9, id="13, 13, 12 hold it"),
    ],
)
def test_double_progression_crosses_its_range(played, day, load):
    assert asked(played, day, "dumbbell lateral raise") == [([12, 15], load)] * 3


@pytest.mark.parametrize(
    ("day", "load"),
    [
        pytest.param("2026-03-05", 55, id="starts at 55"),
        pytest.param("2026-03-12", 57.5, id="all made: up"),
        pytest.param("2026-03-19", 57.5, id="edited to 12, 12, 9: repeat"),
        pytest.param("2026-03-26", 60, id="all made: up"),
    ],
)
def test_an_edit_in_week_2_changes_what_week_3_asks(played, day, load):
    assert asked(played, day, "seated cable row") == [(12, load)] * 3


@pytest.mark.parametrize(
    ("day", "reps"),
    [
        pytest.param("2026-03-12", [15, 12], id="14, 11 ask 15, 12"),
        pytest.param("2026-03-19", [16, 13], id="15, 12 ask 16, 13"),
        pytest.param("2026-03-26", [17, 14], id="16, 13 ask 17, 14"),
    ],
)
def test_the_rep_goal_asks_one_more_on_each_set(played, day, reps):
    assert [count for count, _ in asked(played, day, "push-up")] == reps


def test_reminders_come_at_her_training_time_and_only_then(played):
    reminders = [line["at"] for line in played.to("ida") if "today: " in line["text"]]

    assert reminders == [f"2026-03-{day:02d}T17:30" for day in (2, 5, 9, 12, 16, 19, 23, 26)]


def test_every_sunday_evening_by_her_clock_brings_one_silent_summary(played):
    summaries = [line for line in played.to("ida") if line["text"].startswith("Week ")]

    assert [line["at"] for line in summaries] == [f"2026-03-{day:02d}T19:00" for day in (8, 15, 22, 29)]
    assert all(line["silent"] for line in summaries)


def test_the_summary_tallies_hard_sets_against_the_plans_target(played):
    first = next(line for line in played.to("ida") if line["text"].startswith("Week "))

    # By hand: 3 lateral raises count 1 each; 3 overhead presses count half for the side delts.
    assert first["volume"]["side delts"] == {"direct": 3, "fractional": 4.5, "target": [3, 8]}


def test_the_coach_gets_a_digest_of_her_client_each_week(played):
    digests = [line["at"] for line in played.to("rolf") if line["text"].startswith("Week ")]

    assert digests == [f"2026-03-{day:02d}T20:00" for day in (8, 15, 22, 29)]
