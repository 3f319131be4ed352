"""Which planned day a date's sets belong to. Decisions of this project; common practice, no source."""

from __future__ import annotations

import pytest

from engine.progression.sessions import Choices, Swap, assign
from engine.values.ids import ExerciseName
from tests.engine.progression.planned_week import (
    CURL,
    DIP,
    PRESS,
    PUSH_UP,
    ROW,
    SQUAT,
    log,
    on,
    told,
    undated,
    weeks,
)

Entry = tuple[int, ExerciseName, str]
MON, TUE, WED, THU, FRI, SAT, SUN, NEXT_MON = range(8)


@pytest.mark.parametrize(
    ("entries", "sessions"),
    [
        pytest.param([(MON, PRESS, "42.5: 6 6 6")], ["0 press and pull: 3"], id="on its own day"),
        pytest.param([(MON, PRESS, "42.5: 6")], ["0 press and pull: 1"], id="on its own day, however little"),
        pytest.param([(TUE, PRESS, "42.5: 6"), (TUE, ROW, "55: 8")], ["1 press and pull: 2"], id="a day late"),
        pytest.param([(TUE, SQUAT, "100: 5")], ["1 legs: 1"], id="a day early"),
        pytest.param([(SUN, SQUAT, "100: 5")], ["6 legs: 1"], id="at the end of its week"),
        pytest.param([(NEXT_MON, SQUAT, "100: 5")], ["7 legs: 1"], id="a week later it is that week's"),
        pytest.param([(MON, SQUAT, "100: 5 5 5")], ["0 legs: 3"], id="another day's session on a planned date"),
        pytest.param([(TUE, ROW, "55: 8")], ["1 press and pull: 1"], id="two days would do: the nearest"),
        pytest.param([(SAT, ROW, "50: 12"), (SAT, CURL, "25: 8")], ["5 arms: 2"], id="the larger overlap"),
        pytest.param([(TUE, ExerciseName("calf raise"), "60: 15")], ["1 extra: 1"], id="nothing planned: extra"),
        pytest.param(
            [(FRI, CURL, "25: 8 8 8"), (SAT, ROW, "50: 12 12"), (SAT, PRESS, "42.5: 6")],
            ["4 arms: 3", "5 press and pull: 3"],
            id="what is left of two days: the larger part",
        ),
        pytest.param(
            [(MON, PRESS, "42.5: 6"), (MON, ROW, "55: 8"), (MON, PUSH_UP, "body: 9"), (SAT, ROW, "50: 12")],
            ["0 press and pull: 3", "5 arms: 1"],
            id="a day fully trained takes no more",
        ),
        pytest.param(
            [(FRI, CURL, "25: 8 8 8"), (SAT, ROW, "50: 12 12")],
            ["4 arms: 3", "5 arms: 2"],
            id="a session split over two dates",
        ),
        pytest.param(
            [(TUE, SQUAT, "100: 5 5 5"), (WED, SQUAT, "100: 5 5 5")],
            ["1 extra: 3", "2 legs: 3"],
            id="the day's own date comes before a session moved onto it",
        ),
        pytest.param(
            [(MON, PRESS, "42.5: 6 6 6"), (MON, SQUAT, "100: 5 5 5")],
            ["0 press and pull: 3", "0 legs: 3"],
            id="two sessions in a day",
        ),
        pytest.param(
            [(MON, PRESS, "42.5: 6 6 6"), (MON, CURL, "25: 8"), (WED, SQUAT, "100: 5")],
            ["0 press and pull: 3", "0 arms: 1", "2 legs: 1"],
            id="half of another day's exercises on top is a second session",
        ),
        pytest.param(
            [(WED, SQUAT, "100: 5"), (WED, PUSH_UP, "body: 20")],
            ["2 legs: 2"],
            id="less than half of another day's on top is an extra of the first",
        ),
        pytest.param([(MON, DIP, "body: 10 9 8")], ["0 press and pull: 3"], id="a swap the plan names"),
        pytest.param([], [], id="a week missed is no session"),
    ],
)
def test_assigned(entries: list[Entry], sessions: list[str]) -> None:
    assert told(assign(weeks(1, 2), log(*entries))) == sessions


@pytest.mark.parametrize(
    ("entries", "sessions"),
    [
        pytest.param([(MON, PRESS, "42.5: 6")], ["0 press and pull: 1"], id="the first"),
        pytest.param(
            [
                (MON, PRESS, "42.5: 6"),
                (9, SQUAT, "100: 5"),
                (30, CURL, "25: 8"),
                (31, ROW, "55: 8"),
                (31, PRESS, "45: 6"),
            ],
            ["0 press and pull: 1", "9 legs: 1", "30 arms: 1", "31 press and pull: 2"],
            id="in order, whatever the calendar says",
        ),
        pytest.param(
            [(MON, SQUAT, "100: 5"), (WED, PRESS, "42.5: 6"), (WED, ROW, "55: 8")],
            ["0 legs: 1", "2 press and pull: 2"],
            id="out of order inside a week",
        ),
        pytest.param(
            [(MON, PRESS, "42.5: 6"), (WED, SQUAT, "100: 5"), (FRI, SQUAT, "105: 5")],
            ["0 press and pull: 1", "2 legs: 1", "4 legs: 1"],
            id="a day again is the next week's",
        ),
    ],
)
def test_days_without_a_date_go_in_order(entries: list[Entry], sessions: list[str]) -> None:
    assert told(assign(undated(1, 2, 3), log(*entries))) == sessions


def test_a_later_week_begun_finishes_the_weeks_before_it() -> None:
    entries = [(MON, PRESS, "42.5: 6"), (TUE, PRESS, "42.5: 6"), (TUE, PUSH_UP, "body: 9"), (WED, SQUAT, "100: 5")]

    sessions = assign(undated(1, 2, 3), log(*entries))

    assert [session.planned.week for session in sessions if session.planned] == [1, 2, 2]


def test_a_swap_chosen_for_the_date_counts_for_its_day() -> None:
    lunge = ExerciseName("lunge")
    entries = log((WED, lunge, "40: 10 10 10"))

    assert told(assign(weeks(1), entries)) == ["2 extra: 3"]
    assert told(assign(weeks(1), entries, Choices(swaps=(Swap(on(WED), SQUAT, lunge),)))) == ["2 legs: 3"]


def test_a_day_the_athlete_named_comes_first() -> None:
    entries = log((MON, ROW, "50: 12 12"))

    assert told(assign(weeks(1), entries, Choices(days={on(MON): "arms"}))) == ["0 arms: 2"]


def test_every_set_belongs_to_exactly_one_session() -> None:
    entries = log((MON, PRESS, "42.5: 6 6"), (MON, SQUAT, "100: 5"), (MON, DIP, "body: 8"), (SUN, CURL, "25: 9"))

    sessions = assign(weeks(1, 2), entries)

    assert sorted(r.id for session in sessions for r in session.records) == sorted(record.id for record in entries)
