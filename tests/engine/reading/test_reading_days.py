"""The day of sets, wherever and however it is told."""

from __future__ import annotations

import pytest

from engine.reading import read
from engine.reading.values import Asked, Doubt, Logged, NoSets
from tests.engine.reading.saying import KNOWN, said, situation


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        pytest.param(
            "bench yesterday 60 3x5", "barbell bench press 3×5 at 60 kg on 2025-03-13", id="bench yesterday 60 3x5"
        ),
        pytest.param(
            "bench 60 3x5 yesterday", "barbell bench press 3×5 at 60 kg on 2025-03-13", id="bench 60 3x5 yesterday"
        ),
        pytest.param(
            "squat monday 100 5 5 5", "barbell back squat 3×5 at 100 kg on 2025-03-10", id="squat monday 100 5 5 5"
        ),
        pytest.param(
            "squat 3x5 100 on 12/03", "barbell back squat 3×5 at 100 kg on 2025-03-12", id="squat 3x5 100 on 12/03"
        ),
        pytest.param(
            "squat 3x5 100 on 3 march", "barbell back squat 3×5 at 100 kg on 2025-03-03", id="squat 3x5 100 on 3 march"
        ),
        pytest.param(
            "squat 3x5 100 on 12.03.", "barbell back squat 3×5 at 100 kg on 2025-03-12", id="squat 3x5 100 on 12.03."
        ),
        pytest.param("17.2\nbench 3x5 80", "barbell bench press 3×5 at 80 kg on 2025-02-17", id="17.2 / bench 3x5 80"),
        pytest.param(
            "squat 100x5, bench 80x5 yesterday",
            "barbell back squat 5 at 100 kg; barbell bench press 5 at 80 kg on 2025-03-13",
            id="squat 100x5, bench 80x5 yesterday",
        ),
    ],
)
def test_a_day_counts_wherever_it_is_told(text: str, meant: str) -> None:
    assert said(text) == meant


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        pytest.param(
            "squat 3x5 100\nyesterday", "barbell back squat 3×5 at 100 kg on 2025-03-13", id="a day on the last line"
        ),
        pytest.param("squat 3x5 100\n31/02", "no sets", id="a day that cannot be on the last line"),
        pytest.param("squat 3x5 100\non 9999-12-31", "no sets", id="a day ahead on the last line"),
    ],
)
def test_a_day_told_last_is_that_of_the_sets_above(text: str, meant: str) -> None:
    assert said(text) == meant


@pytest.mark.parametrize(
    "text",
    [
        pytest.param("{day} squat 3x5 100", id="first"),
        pytest.param("oh and {day} squat 3x5 100", id="behind oh and"),
        pytest.param("oh and {day} squat too, 3x5 at 100", id="with too behind the lift"),
        pytest.param("plus {day} squat 3x5 100", id="behind plus"),
        pytest.param("and i did {day} squat 3x5 100", id="behind what i did"),
        pytest.param("add {day} squat 3x5 100", id="behind what asks to add"),
        pytest.param("log {day} squat 3x5 100", id="behind what asks to log"),
        pytest.param("please log {day}: squat 3x5 100", id="behind what asks to log, a colon"),
        pytest.param("oh yeah {day} squat 3x5 100", id="behind oh yeah"),
        pytest.param("oh i also did {day} squat 3x5 100", id="behind oh, i also did"),
        pytest.param("sorry {day} squat 3x5 100", id="behind an excuse"),
        pytest.param("at the gym {day} squat 3x5 100", id="behind a place"),
        pytest.param("with tom {day} squat 3x5 100", id="behind company"),
        pytest.param("for {day} squat 3x5 100", id="behind for"),
        pytest.param("squat {day} 3x5 100", id="between lift and numbers"),
        pytest.param("squat from {day} 3x5 100", id="from, between lift and numbers"),
    ],
)
@pytest.mark.parametrize(
    ("day", "on"), [("yesterday", "2025-03-13"), ("tuesday", "2025-03-11"), ("last thursday", "2025-03-13")]
)
def test_words_that_open_a_message_leave_it_its_day(text, day, on):
    assert said(text.format(day=day)) == f"barbell back squat 3×5 at 100 kg on {on}"


@pytest.mark.parametrize(
    "text",
    [
        "bench 3x8 60 // oh and {day} squat 3x5 100",
        "bench 3x8 60 // sorry {day} squat 3x5 100",
        "bench 3x8 60, sorry {day} squat 3x5 100",
        "bench 3x8 60, the squat from {day} 3x5 100",
        "bench 3x8 60. from {day} squat 3x5 100",
        "bench 3x8 60. for {day}: squat 3x5 100",
        "bench 3x8 60 and also {day} squat 3x5 100",
        "bench 3x8 60 squat {day} 3x5 100",
        "bench 3x8 60, squat {day} 3x5 100",
    ],
)
def test_a_day_ahead_of_the_second_lift_is_that_of_it_alone(text):
    outcome = read(text.format(day="yesterday").replace(" // ", "\n"), situation(), KNOWN)

    assert isinstance(outcome, Logged)
    assert [day and f"{day:%m-%d}" for day in outcome.days] == [None] * 3 + ["03-13"] * 3


@pytest.mark.parametrize(
    ("text", "on"),
    [
        pytest.param("fri 7th squat 3x5 100", "2025-03-07", id="a week before today"),
        pytest.param("on monday the 3rd: squat 3x5 100", "2025-03-03", id="the"),
        pytest.param("squat 3x5 100 fri 7th", "2025-03-07", id="behind the sets"),
        pytest.param("catch up from fri 7th: squat 3x5 100", "2025-03-07", id="behind words"),
        pytest.param("late entry sat squat 3x5 100", "2025-03-08", id="a weekday alone"),
    ],
)
def test_a_weekday_with_its_day_of_the_month_is_that_day(text, on):
    assert said(text) == f"barbell back squat 3×5 at 100 kg on {on}"


@pytest.mark.parametrize("text", ["squat 12/03 3x5 100", "squat 12/03: 3x5 100", "and 12/03 squat 3x5 100"])
def test_a_date_with_a_zero_in_front_is_no_pair_of_reps(text):
    assert said(text) == "barbell back squat 3×5 at 100 kg on 2025-03-12"


@pytest.mark.parametrize(
    "text",
    [
        "squat (yesterday) 3x5 100",
        "squat - yesterday - 3x5 100",
        "squat 100kg yesterday 3x5",
        "3x5 squat yesterday at 100",
        "last nights squat 3x5 100",
    ],
)
def test_a_day_amid_the_sets_is_theirs(text):
    assert said(text) == "barbell back squat 3×5 at 100 kg on 2025-03-13"


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        pytest.param("squat on mon and tue 3x5 100", "ask: ", id="of two days"),
        pytest.param(
            "mon squat 3x5 100 tue bench 3x8 60",
            "ask: ",
            id="between two lifts",
        ),
    ],
)
def test_a_day_that_may_be_of_either_is_asked_about(text, meant):
    assert said(text) == meant


@pytest.mark.parametrize("text", ["slept badly yesterday squat 3x5 100", "knackered on monday squat 3x5 100"])
def test_a_day_that_may_be_of_the_sets_or_of_how_one_was_is_asked_about(text):
    assert said(text) == "ask: barbell back squat 3×5 at 100 kg"


@pytest.mark.parametrize("text", ["slept badly yesterday, squat 3x5 100", "rest day yesterday, squat 3x5 100"])
def test_a_day_that_ends_words_of_sleep_or_rest_is_none_of_the_sets(text):
    assert said(text) == "barbell back squat 3×5 at 100 kg"


@pytest.mark.parametrize("text", ["sore from yesterday squat 3x5 100", "tired after yesterday squat 3x5 100"])
def test_a_day_that_something_else_is_from_is_none_of_the_sets(text):
    assert said(text) == "barbell back squat 3×5 at 100 kg"


@pytest.mark.parametrize(
    ("text", "on"),
    [
        pytest.param("on the 12th: squat 3x5 100", "2025-03-12", id="on and a colon"),
        pytest.param("the 12th: squat 3x5 100", "2025-03-12", id="a colon"),
        pytest.param("on the 2nd squat 3x5 100", "2025-03-02", id="on"),
        pytest.param("the 30th\nsquat 3x5 100", "2025-01-30", id="a line, a month without that day"),
        pytest.param("the 15th: squat 3x5 100", "2025-02-15", id="still ahead this month"),
        pytest.param("12th march: squat 3x5 100", "2025-03-12", id="a month behind"),
        pytest.param("on the 12th of march: squat 3x5 100", "2025-03-12", id="of a month"),
    ],
)
def test_an_ordinal_in_figures_is_a_day(text: str, on: str) -> None:
    assert said(text) == f"barbell back squat 3×5 at 100 kg on {on}"


@pytest.mark.parametrize("text", ["3rd set of squat 100x5", "2nd set: squat 100x5", "the 3rd squat 100x5"])
def test_an_ordinal_of_a_set_is_no_day(text: str) -> None:
    assert said(text) == "barbell back squat 5 at 100 kg"


@pytest.mark.parametrize(
    "heading", ["16/9", "mon 16/9", "legs 16/09", "16.9.", "Pull day - 16/09", "16/9 push", "16/9: legs"]
)
def test_a_date_alone_on_the_first_line_heads_the_sets_below(heading: str) -> None:
    assert said(f"{heading}\nsquat 3x5 100") == "barbell back squat 3×5 at 100 kg on 2024-09-16"


@pytest.mark.parametrize(
    ("first", "second"),
    [("10/3", "12/3"), ("Mon 10/3", "Wed 12/3"), ("10.3.", "12.3."), ("Mo 10.3.", "Mi 12.3."), ("monday", "wednesday"),
     ("lunes", "miércoles"), ("lundi", "mercredi"), ("3/10/25", "3/12/25"), ("2025-03-10", "2025-03-12"),
     ("10 march", "12 march")],
)  # fmt: skip
@pytest.mark.parametrize("between", ["\n", "\n\n"])
def test_each_day_of_a_paste_keeps_its_date(first: str, second: str, between: str) -> None:
    context = situation(unit="lb") if first == "3/10/25" else situation()
    read_as = read(f"{first}\nsquat 3x5 100{between}{second}\nbench 2x5 80", context, KNOWN)

    assert isinstance(read_as, Logged)
    assert [str(day) for day in read_as.days] == ["2025-03-10"] * 3 + ["2025-03-12"] * 2


@pytest.mark.parametrize("end", [" 12/03", ", 12/03", " (12/03)"])
def test_a_date_with_a_zero_in_it_behind_the_sets(end: str) -> None:
    assert said(f"squat 3x5 100{end}") == "barbell back squat 3×5 at 100 kg on 2025-03-12"


def test_reps_under_a_name_are_no_date() -> None:
    assert said("squat 80\n10/8\nbench 60\n8/8") == (
        "barbell back squat 10 at 80 kg, 8 at 80 kg; barbell bench press 2×8 at 60 kg"
    )


@pytest.mark.parametrize(
    ("typed", "on"),
    [("yestreday", "2025-03-13"), ("yesteday", "2025-03-13"), ("mondya", "2025-03-10"), ("wensdey", "2025-03-12"),
     ("gesten", "2025-03-13"), ("mitwoch", "2025-03-12"), ("mercerdi", "2025-03-12"), ("miercloes", "2025-03-12"),
     ("western", None)],
)  # fmt: skip
def test_a_slip_in_the_name_of_a_day(typed: str, on: str | None) -> None:
    read_as = read(f"{typed}: squat 3x5 100", situation(), KNOWN)

    assert (str(read_as.on) if isinstance(read_as, Logged) and read_as.on else None) == on


@pytest.mark.parametrize(
    "text",
    [
        "bench on monday was 82.5 for 4",
        "bench monday was 82.5x4",
        "bench on monday i did 82.5x4",
        "bench monday i got 82.5 for 4",
        "bankdrücken am montag war 82,5x4",
    ],
)
def test_a_day_between_a_lift_and_what_it_was_is_the_day_of_the_sets(text):
    assert said(text) == "barbell bench press 4 at 82.5 kg on 2025-03-10"


@pytest.mark.parametrize(
    ("text", "days"),
    [
        ("last week:\nmonday bench 60x8\nthursday squat 100x5", ["03-03", "03-06"]),
        ("Last week\n\nmon: bench 60x8\nsat: squat 100x5", ["03-03", "03-08"]),
        ("log from last week:\ntue bench 60x8\nfri squat 100x5", ["03-04", "03-07"]),
        ("2 weeks ago:\nmonday bench 60x8\nfriday squat 100x5", ["02-24", "02-28"]),
        ("last week:\nmonday bench 60x8\nthis week:\nmonday squat 100x5", ["03-03", "03-10"]),
        ("2 weeks ago\nmonday bench 60x8\nlast week\nmonday squat 100x5", ["02-24", "03-03"]),
        ("last week mon: bench 60x8, wed: squat 100x5", ["03-03", "03-05"]),
        ("letzte woche:\nmontag bankdrücken 60x8\ndonnerstag kniebeuge 100x5", ["03-03", "03-06"]),
        ("la semana pasada\nlunes press banca 60x8\njueves sentadilla 100x5", ["03-03", "03-06"]),
        ("mon bench 60x8, wed squat 100x5", ["03-10", "03-12"]),
        ("mon: bench 60x8; wed: squat 100x5", ["03-10", "03-12"]),
        ("monday bench 60x8 and wednesday squat 100x5", ["03-10", "03-12"]),
    ],
)
def test_the_weekdays_of_a_message_are_each_the_day_of_their_sets(text, days):
    outcome = read(text, situation(), KNOWN)

    assert isinstance(outcome, Logged)
    assert [f"{day:%m-%d}" for day in outcome.days] == days


@pytest.mark.parametrize(
    "text",
    [
        "last week monday bench 60x8",
        "monday last week bench 60x8",
        "bench 60x8 monday last week",
        "bench 60x8 on monday of last week",
        "last week's monday: bench 60x8",
        "bench 60x8 last week monday",
    ],
)
def test_a_weekday_of_last_week_is_that_day(text):
    assert said(text) == "barbell bench press 8 at 60 kg on 2025-03-03"


@pytest.mark.parametrize("text", ["last week:\nbench 60x8\nsquat 100x5", "last week\nsquat 100x5"])
def test_a_week_without_a_day_is_said_back(text):
    outcome = read(text, situation(), KNOWN)

    assert isinstance(outcome, NoSets)
    assert "which day of it" in outcome.unread[0].why


@pytest.mark.parametrize(
    "text",
    [
        "squat {day} with a belt 3x5 100",
        "squat {day} easy 3x5 100",
        "squat {day} paused 3x5 100",
        "squat at home {day} 3x5 100",
        "squat ({day}) with a belt 3x5 100",
        "quick one from {day}, squat 3x5 100",
        "quick session from {day}, squat 3x5 100",
        "squat {day} with my coach 3x5 100",
    ],
)
@pytest.mark.parametrize(
    ("day", "on"),
    [
        ("yesterday", "2025-03-13"),
        ("tue", "2025-03-11"),
        ("last friday", "2025-03-07"),
        ("monday night", "2025-03-10"),
        ("day before yesterday", "2025-03-12"),
        ("2 days ago", "2025-03-12"),
        ("dienstag abend", "2025-03-11"),
        ("lunes por la noche", "2025-03-10"),
    ],
)
def test_a_day_amid_other_words_of_the_sets_is_theirs(text, day, on):
    assert said(text.format(day=day)) == f"barbell back squat 3×5 at 100 kg on {on}"


@pytest.mark.parametrize(
    "text",
    [
        "the 10th squat 3x5 100",
        "squat the 10th 3x5 100",
        "squat (the 10th) 3x5 100",
        "squat the 10th: 3x5 100",
        "squat 3x5 100 the 10th",
        "squat 3x5 100, from the 10th",
        "squat 3x5 100 the 10th, felt good",
        "squat 3x5 100 // the 10th",
        "the 10th i did squat 3x5 100",
    ],
)
def test_an_ordinal_in_figures_amid_the_sets_is_their_day(text):
    assert said(text.replace(" // ", "\n")) == "barbell back squat 3×5 at 100 kg on 2025-03-10"


@pytest.mark.parametrize("text", ["squat on the 3rd 3x5 100", "on the 3rd i did squat 3x5 100"])
def test_an_ordinal_that_may_count_sets_is_a_day_where_none_are_told_yet(text):
    assert said(text) == "barbell back squat 3×5 at 100 kg on 2025-03-03"


@pytest.mark.parametrize(
    "text",
    [
        "squat 3x5 100 on the 3rd",
        "squat 3x5 100 felt good on the 10th",
        "squat 3x5 100, shoulder hurt yesterday",
        "squat 3x5 100, gym was packed on monday",
        "gym was packed yesterday, squat 3x5 100",
        "squat 3x5 100 instead of monday",
        "squat 3x5 100, because i missed tuesday",
        "squat 3x5 100, did legs yesterday",
        "squat 3x5 100 at the house yesterday",
        "took the bus yesterday, squat 3x5 100",
        "yesterday slept badly, squat 3x5 100",
    ],
)
def test_sets_beside_a_day_that_may_be_theirs_are_asked_about_with_it(text):
    outcome = read(text, situation(), KNOWN)

    assert isinstance(outcome, Asked)
    assert outcome.doubt is Doubt.DAY
    assert outcome.on is not None


@pytest.mark.parametrize(
    "text",
    [
        "for today: squat 3x5 100, yesterday",
        "for today: squat 3x5 100 from yesterday",
        "today: squat yesterday 3x5 100",
        "sunday catch up: squat 3x5 100, on the 8th",
        "monday squat 3x5 100 (tuesday)",
    ],
)
def test_two_days_told_of_one_lift_are_asked_about(text):
    assert said(text) == "ask: "


@pytest.mark.parametrize(
    "text",
    [
        "squat 3x5 100, slept badly yesterday",
        "squat 3x5 100 slept badly yesterday",
        "squat 3x5 100, yesterday slept badly",
        "squat 3x5 100, rest day yesterday",
        "yesterday was a rest day, squat 3x5 100",
        "squat 3x5 100, same as last tuesday",
        "squat 3x5 100, sore from last friday",
        "squat 3x5 100 felt better than on monday",
        "squat 3x5 100, coach came by yesterday",
        "squat 3x5 100, see you on friday",
        "squat 3x5 100, rest day tomorrow",
        "squat 3x5 100, slept badly 2 days ago",
        "slept 6h last night, squat 3x5 100",
        "squat 3x5 100, gestern schlecht geschlafen",
    ],
)
def test_a_day_of_sleep_rest_people_or_another_time_is_none_of_the_sets(text):
    assert said(text) == "barbell back squat 3×5 at 100 kg"


@pytest.mark.parametrize(
    "text",
    [
        "at the gym 12/03: squat 3x5 100",
        "this is 12.3.: squat 3x5 100",
        "this is for 12/3: squat 3x5 100",
        "these are wednesday's: squat 3x5 100",
        "session 12/03: squat 3x5 100",
        "gym 12/03 squat 3x5 100",
        "missed logging 12/3: squat 3x5 100",
        "squat 12.3. 3x5 100",
        "squat 12.03. 100 5 5 5",
        "squat (12.3.) 100 5 5 5",
        "squat 100 5 5 5 12.3.",
    ],
)
def test_a_date_in_figures_counts_behind_words_and_amid_the_sets(text):
    assert said(text) == "barbell back squat 3×5 at 100 kg on 2025-03-12"


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("lat pulldown 12.5. 12 10 9", "lat pulldown 12 at 12.5 kg, 10 at 12.5 kg, 9 at 12.5 kg"),
        ("session 3/4: squat 3x5 100", "barbell back squat 3×5 at 100 kg"),
        ("8/10 mood, squat 3x5 100", "barbell back squat 3×5 at 100 kg"),
        ("12/3 felt good, squat 3x5 100", "barbell back squat 3×5 at 100 kg on 2025-03-12"),
    ],
)
def test_figures_that_are_no_date_stay_what_they_are(text, meant):
    assert said(text) == meant


@pytest.mark.parametrize(
    "words",
    ["next one thursday", "see you thursday", "see you on friday", "2 beers last night", "ran 5 km yesterday"],
)
def test_a_day_that_a_remark_behind_the_sets_has_is_not_theirs(words):
    assert said(f"squat 3x5 100, {words}") == "barbell back squat 3×5 at 100 kg"


@pytest.mark.parametrize(
    "words",
    [
        "exam monday",
        "half marathon on sunday",
        "off monday",
        "party last night",
        "travelling on wednesday",
        "back on thursday",
        "leg day yesterday",
    ],
)
def test_a_day_behind_words_of_something_else_is_asked_about(words):
    assert said(f"squat 3x5 100, {words}") == "ask: barbell back squat 3×5 at 100 kg"


@pytest.mark.parametrize(
    ("text", "on"),
    [
        ("sat session squat 3x5 100", "2025-03-08"),
        ("sun workout: squat 3x5 100", "2025-03-09"),
        ("12.03 squat 3x5 100", "2025-03-12"),
        ("12.03: squat 3x5 100", "2025-03-12"),
        ("fri 7.3 squat 3x5 100", "2025-03-07"),
        ("squat 3x5 100 12 mar", "2025-03-12"),
        ("squat 3x5 100, 12 march 2025", "2025-03-12"),
    ],
)
def test_a_day_ahead_of_a_lift_or_behind_its_sets_is_theirs_without_a_sign(text, on):
    assert said(text) == f"barbell back squat 3×5 at 100 kg on {on}"


@pytest.mark.parametrize("text", ["squat 100 5 5 5 12/3", "squat 3x5 100 (12/3)"])
def test_a_pair_behind_the_sets_that_may_be_a_day_of_late_is_asked_about(text):
    assert said(text) == "ask: barbell back squat 3×5 at 100 kg"


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("62.5 bench 3x8", "barbell bench press 3×8 at 62.5 kg"),
        ("bench 80 8 8 7 6/5", "barbell bench press 2×8 at 80 kg, 7 at 80 kg, 6 at 80 kg, 5 at 80 kg"),
    ],
)
def test_a_load_or_reps_in_the_place_of_a_day_stay_what_they_are(text, meant):
    assert said(text) == meant


@pytest.mark.parametrize("text", ["party last night, squat 3x5 100", "squat 3x5 100\npizza last night"])
def test_a_day_with_words_of_its_own_is_asked_about_on_either_side_of_the_sets(text):
    assert said(text) == "ask: barbell back squat 3×5 at 100 kg"


def test_words_for_an_entry_leave_the_sets_their_day():
    assert said("home workout yesterday, squat 3x5 100") == "barbell back squat 3×5 at 100 kg on 2025-03-13"


@pytest.mark.parametrize("text", ["bench 3x8 60, tuesday was rough", "kniebeuge 3x5 100, montag war hart"])
def test_a_day_of_which_it_is_said_what_it_was_like_is_asked_about(text: str) -> None:
    assert isinstance(read(text, situation(), KNOWN), Asked)


@pytest.mark.parametrize(
    ("first", "second"), [("on the 2nd", "on the 4th"), ("on the 2nd", "on the 12th"), ("on the 2nd", "on the 5th")]
)
def test_each_ordinal_keeps_the_sets_behind_it(first: str, second: str) -> None:
    read_as = read(f"squat {first} 100x5, {second} 105x5", situation(), KNOWN)

    assert isinstance(read_as, Logged)
    assert [day.day for day in read_as.days if day] == [2, int(second[7:-2])]
