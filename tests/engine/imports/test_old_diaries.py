"""Diaries in plain text: days, names above numbers, notes. Nothing in doubt is taken, or goes to the wrong lift."""

from textwrap import dedent

import pytest

from engine.values.load import Unit
from tests.engine.imports.old_logs import in_short, left_out, log_of, read, said

SQUAT = "barbell back squat"
BENCH = "barbell bench press"


def diary(text, **known):
    return log_of("diary.txt", dedent(text), **known)


@pytest.mark.parametrize(
    "heading",
    [
        "2024-03-05",
        "## 2024-03-05",
        "**5 March 2024**",
        "Tue 5 Mar 2024 - leg day",
        "5.3.2024",
        "05/03/2024:",
        "Date: 5/3/2024",
        "5 Mar 24, session 2",
        "Dienstag, 5. März 2024",
    ],
)
def test_a_line_that_opens_with_a_date_opens_a_day(heading):
    assert said(diary(f"{heading}\nsquat 3x5 100\n")) == [f"5.3. {SQUAT} 5@100kg"] * 3


@pytest.mark.parametrize(
    "heading",
    [
        pytest.param("WEEK 1 DAY 2 (05/03/2024)", id="in brackets behind a label"),
        pytest.param("Leg day, 5 March 2024", id="behind words"),
        pytest.param("# Session 12 - 5.3.24", id="behind a heading"),
    ],
)
def test_a_date_may_stand_behind_the_label_of_a_session(heading):
    assert said(diary(f"{heading}\nsquat 3x5 100\n")) == [f"5.3. {SQUAT} 5@100kg"] * 3


@pytest.mark.parametrize(
    "text",
    [
        pytest.param("5/3/24\nsquat 100x5\n7/3/24\nsquat 105x5\n", id="at the top, then close below sets"),
        pytest.param("my diary\n5/3/24\nsquat 100x5\n7/3/24\nsquat 105x5\n", id="no line marked at all"),
        pytest.param("5.3.24\nsquat 100x5\n7.3.24\nsquat 105x5\n", id="points"),
    ],
)
def test_what_opens_one_day_opens_the_next(text):
    assert said(diary(text)) == [f"5.3. {SQUAT} 5@100kg", f"7.3. {SQUAT} 5@105kg"]


def test_a_bare_pair_that_may_be_a_day_or_reps_stops_the_day_before_it():
    log = diary("5/3\nsquat 100x5\n7/3\nsquat 105x5\n")

    assert said(log) == [f"5.3. {SQUAT} 5@100kg"]
    assert left_out(log) == [(4, "the date is not told: 7/3")]


def test_sets_may_stand_behind_the_date():
    assert said(diary("2024-03-05: squat 100x5\n2024-03-07 squat 105x5\n")) == [
        f"5.3. {SQUAT} 5@100kg",
        f"7.3. {SQUAT} 5@105kg",
    ]


def test_names_above_their_numbers():
    log = diary(
        """
        2024-03-05 legs

        Squat:
        1) 100x5
        2) 100 x 5 (felt heavy)
        x4
        - 90: 8,8

        Bench press
        80x5 85x3
        """
    )

    assert left_out(log) == []
    assert said(log) == [
        *[f"5.3. {SQUAT} {one}" for one in ("5@100kg", "5@100kg", "4@100kg", "8@90kg", "8@90kg")],
        *[f"5.3. {BENCH} {one}" for one in ("5@80kg", "3@85kg")],
    ]
    assert [(note.text, note.exercise) for note in log.notes] == [("felt heavy", SQUAT)]


def test_sets_below_the_word_are_warm_ups_until_the_work():
    log = diary("2024-03-05\nsquat\nwarm-up\n60x5\nwork sets\n100x5\nbench press 60x5\n")

    assert [in_short(one.done) for one in log.sets] == ["5@60kg warmup", "5@100kg", "5@60kg"]


@pytest.mark.parametrize(
    ("name", "why"),
    [
        pytest.param("glorp machine", "unknown exercise “glorp machine”", id="an unknown name"),
        pytest.param("row", "which row: barbell row or", id="an open name"),
    ],
)
def test_numbers_below_a_name_in_doubt_are_no_ones(name, why):
    log = diary(f"2024-03-05\nsquat\n100x5\n{name}\n3x8 40\n8 8 8\nbench press\n80x5\n")

    assert said(log) == [f"5.3. {SQUAT} 5@100kg", f"5.3. {BENCH} 5@80kg"]
    assert [line for line, _ in left_out(log)] == [5, 6]
    assert all(reason.startswith(why) for _, reason in left_out(log))
    assert [(one.written, one.lines) for one in log.names if len(one.meant) != 1] == [(name, 2)]


@pytest.mark.parametrize("line", ["curls 3x10 12.5", "same again"])
def test_the_exercise_in_hand_settles_no_name_and_no_words(line):
    log = diary(f"2024-03-05\nbarbell curl 30 3x10\n{line}\n")

    assert {in_short(one.done) for one in log.sets} == {"10@30kg"}
    assert [number for number, _ in left_out(log)] == [3]


def test_numbers_below_a_set_line_in_doubt_are_no_ones():
    log = diary("2024-03-05\nsquat 100x5\nrow 3x8 50\n8 8 7\n")

    assert said(log) == [f"5.3. {SQUAT} 5@100kg"]
    assert [line for line, _ in left_out(log)] == [3, 4]


@pytest.mark.parametrize(
    ("heading", "why"),
    [
        pytest.param("31.2.2024", "no such day", id="no such day"),
        pytest.param("2027-01-01", "the date is in the future", id="to come"),
        pytest.param("Wednesday", "the date is not told: Wednesday", id="a weekday alone"),
    ],
)
def test_sets_below_a_day_that_cannot_be_do_not_go_to_the_day_before(heading, why):
    log = diary(f"2024-03-05\nsquat 100x5\n\n{heading}\nsquat 105x5\n")

    assert said(log) == [f"5.3. {SQUAT} 5@100kg"]
    assert left_out(log) == [(5, why)]


def test_the_weekday_of_the_date_above_it_is_no_other_day():
    assert len(diary("2024-03-05\nTuesday\nsquat 100x5\n").sets) == 1


@pytest.mark.parametrize(
    "line",
    [
        pytest.param("12/10/8", id="reps with slashes"),
        pytest.param("10-8-6 @ 100", id="reps with dashes"),
        pytest.param("100/5 100/5", id="loads with slashes"),
    ],
)
def test_numbers_with_signs_between_open_no_day(line):
    log = diary(f"2024-03-05\nsquat\n{line}\nbench press 80x5\n")

    assert {one.on.isoformat() for one in log.sets} == {"2024-03-05"}


def test_days_without_years_follow_the_ones_around_them():
    log = diary("28.12.2023\nsquat 100x5\n\n2.1.\nsquat 102.5x5\n")

    assert [one.on.isoformat() for one in log.sets] == ["2023-12-28", "2024-01-02"]


def test_words_are_kept_as_notes_of_their_day():
    log = diary("2024-03-05\nfelt strong today\nsquat 100x5\nleft knee hurt after\nslept 7 hours\nPush day\n")

    assert [(note.text, note.pain) for note in log.notes] == [
        ("felt strong today", False),
        ("left knee hurt after", True),
        ("slept 7 hours", False),
    ]


@pytest.mark.parametrize(
    "line",
    [
        pytest.param("squat 100x3x5", id="three numbers two ways"),
        pytest.param("squat 50000x5", id="absurd"),
        pytest.param("squat 3x5 100 yesterday", id="another day"),
        pytest.param("squat 0x5 100", id="no sets"),
    ],
)
def test_a_line_in_doubt_is_left_out_whole(line):
    log = diary(f"2024-03-05\nbench press 80x5\n{line}\n")

    assert said(log) == [f"5.3. {BENCH} 5@80kg"]
    assert [number for number, _ in left_out(log)] == [3]


def test_a_load_is_not_carried_over_from_another_day():
    log = diary("2024-03-05\nbench press 80x5\n2024-03-07\nbench press 8 8 7\n")

    assert [in_short(one.done) for one in log.sets] == ["5@80kg", "8", "8", "7"]


def test_pounds_go_with_month_first():
    log = log_of("diary.txt", "3/5/2024\nsquat 225x5\n", Unit.LB)

    assert said(log) == [f"5.3. {SQUAT} 5@225lb"]


@pytest.mark.parametrize(
    "text",
    [
        pytest.param("plan: x\nday mon: full body\nsquat 3x5 at 60 kg, then +2.5 kg\n", id="a plan"),
        pytest.param("plan: x, from 2024-03-05\n2024-03-05\nsquat 3x5\n", id="a plan with dates"),
        pytest.param("squat 3x5 100\nbench press 3x5 80\n", id="no dates"),
        pytest.param("2027-03-05\nsquat 3x5\n", id="days to come"),
        pytest.param("5 March 2024 was a fine day.\nNothing to report.\n", id="talk"),
    ],
)
def test_what_is_no_diary_is_left_to_others(text):
    assert read("note.txt", text) is None
