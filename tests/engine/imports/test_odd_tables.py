"""Tables that invite a wrong reading: totals, times of day, plans beside results, sheets without a column of names."""

import io
from datetime import date, time

import pytest
from openpyxl import Workbook

from tests.engine.imports.old_logs import in_short, left_out, log_of, said, sheet, workbook

SQUAT, BENCH = "barbell back squat", "barbell bench press"


@pytest.mark.parametrize(
    "row",
    [
        pytest.param("Total||3|15|1500", id="under the dates"),
        pytest.param("|Total|3|15|1500", id="under the names"),
        pytest.param("2024-03-06|Summe|3|15|", id="German, on a day of its own"),
        pytest.param("|Итого|3|15|1500", id="Russian"),
    ],
)
def test_a_row_that_says_total_is_no_set(row):
    table = sheet("date|exercise|sets|reps|weight", "2024-03-05|squat|1|5|100", row, "2024-03-06|squat|1|5|105")
    log = log_of("log.tsv", table)

    assert said(log) == [f"5.3. {SQUAT} 5@100kg", f"6.3. {SQUAT} 5@105kg"]
    assert left_out(log) == [(3, "a row of totals, no set")]


@pytest.mark.parametrize(
    "rows",
    [
        pytest.param(["2024-03-05|squat|5|100", "2024-03-05|squat|4|110", "||9|210"], id="of a lift"),
        pytest.param(["2024-03-05|squat|5|100", "2024-03-05|bench press|8|60", "||13|160"], id="of a day"),
        pytest.param(["2024-03-05|squat|5|100", "|||", "2024-03-06|squat|5|90", "||10|190"], id="of all"),
        pytest.param(["2024-03-05|squat|5|100", "||5|100", "||10|1000"], id="the volume"),
    ],
)
def test_numbers_that_are_the_sums_of_those_above_are_no_set(rows):
    log = log_of("log.tsv", sheet("date|exercise|reps|weight", *rows))

    assert len(log.sets) == 2
    assert left_out(log) == [(len(rows) + 1, "no name, and its numbers are the sums of the rows above: a total?")]


@pytest.mark.parametrize(
    "rows",
    [
        pytest.param(["2024-03-05|pull up|1|", "||2|", "||3|", "||4|"], id="a ladder"),
        pytest.param(["2024-03-05|squat|5|100", "||5|100", "||10|60"], id="a lighter set of twice the reps"),
        pytest.param(["2024-03-05|squat|5|100", "||5|100"], id="the same set again"),
    ],
)
def test_sets_under_one_name_stay_sets(rows):
    log = log_of("log.tsv", sheet("date|exercise|reps|weight", *rows))

    assert len(log.sets) == len(rows)


@pytest.mark.parametrize(
    ("header", "cells", "found"),
    [
        pytest.param("weight in kg|reps", "20|5", ["5@20kg"], id="a unit behind a small word"),
        pytest.param("вес (кг)|повторения", "20|5", ["5@20kg"], id="a unit in Russian"),
        pytest.param("gewicht [pfund]|wdh", "25|5", ["5@25lb"], id="a unit in German"),
        pytest.param("weight x reps", "10x12", ["12@10kg"], id="the order that the header says"),
        pytest.param("reps x weight", "12 x 10", ["12@10kg"], id="the other order"),
        pytest.param("weight x reps", "25x8, 30x6", ["8@25kg", "6@30kg"], id="several under such a header"),
        pytest.param("reps x sets|weight", "12x2|10", ["12@10kg"] * 2, id="reps ahead of sets"),
        pytest.param("scheme|weight", "2x12|10", ["12@10kg"] * 2, id="sets x reps by another name"),
    ],
)
def test_headers_say_what_their_numbers_are(header, cells, found):
    log = log_of("log.tsv", sheet(f"date|exercise|{header}", f"2024-03-05|dumbbell lateral raise|{cells}"))

    assert ([in_short(one.done) for one in log.sets], left_out(log)) == (found, [])


def test_what_was_planned_is_not_what_was_done():
    rows = ["2024-03-05|squat|3x8|8,8,6|100", "2024-03-07|squat|3x8|8|100"]
    log = log_of("log.tsv", sheet("date|exercise|scheme|reps|weight", *rows))

    assert said(log) == [f"7.3. {SQUAT} 8@100kg"] * 3
    assert left_out(log) == [(2, "“3x8”, or reps 8,8,6?")]


def test_a_time_beside_all_rows_is_not_how_long_a_hold_was():
    rows = ((date(2024, 3, 5), time(18, 30), "squat", 5), (date(2024, 3, 5), time(18, 30), "plank", 1))
    log = log_of("log.xlsx", workbook((("date", "time", "exercise", "reps"), *rows)))

    assert said(log) == [f"5.3. {SQUAT} 5"]
    assert left_out(log) == [(3, "is 18:30 how long it was held, or a time of the session?")]


@pytest.mark.parametrize(
    ("name", "found"),
    [
        pytest.param("Assisted dips", "dip 8@-20kg", id="ahead"),
        pytest.param("Pull-up (assisted)", "pull-up 8@-20kg", id="behind"),
        pytest.param("machine assisted pull-up", "pull-up 8@-20kg", id="with the machine's name"),
        pytest.param("dominadas asistidas", "pull-up 8@-20kg", id="Spanish"),
    ],
)
def test_a_name_that_tells_of_help(name, found):
    assert said(log_of("log.tsv", sheet("date|exercise|reps|weight", f"2024-03-05|{name}|8|20"))) == [f"5.3. {found}"]


def test_a_sheet_for_each_exercise():
    book = Workbook()
    for name, load in (("Squat", 100), ("Bench press", 80)):
        page = book.create_sheet(name)
        page.append(["Date", "Reps", "Weight"])
        page.append([date(2024, 3, 5), 5, load])
    kept = io.BytesIO()
    book.save(kept)

    assert said(log_of("log.xlsx", kept.getvalue())) == [f"5.3. {SQUAT} 5@100kg", f"5.3. {BENCH} 5@80kg"]


def test_a_column_for_each_day():
    rows = (("Exercise", date(2024, 3, 4), "6 March 2024"), ("Squat", "2x5 100", ""), ("Bench press", "", "60x8,7"))
    log = log_of("log.xlsx", workbook(rows))

    assert said(log) == [*[f"4.3. {SQUAT} 5@100kg"] * 2, f"6.3. {BENCH} 8@60kg", f"6.3. {BENCH} 7@60kg"]


def test_columns_that_are_not_read_are_told():
    table = sheet("date|exercise|reps|poundage shifted|mood|left empty", "2024-03-05|squat|5|100|fine|")

    assert log_of("log.tsv", table).not_read == ("poundage shifted", "mood")
    assert log_of("log.tsv", sheet("date|squat|mood", "2024-03-05|100x5|fine")).not_read == ("mood",)


def test_a_log_whose_dates_cannot_be_read_says_so():
    log = log_of("log.tsv", sheet("date|exercise|reps|weight", "some day|squat|5|100"))

    assert left_out(log) == [(2, "no date that I can read: some day")]
