"""Tables of sets: any sensible columns, whatever the delimiter, language and gaps; nothing in doubt is taken."""

from datetime import date, datetime

import pytest

from engine.imports.values import DateOrder, NameMatch
from engine.values.load import Unit
from tests.engine.imports.old_logs import in_short, left_out, log_of, read, said, sheet, workbook

BENCH = "barbell bench press"
SQUAT = "barbell back squat"
THREE = ["8@60kg", "8@60kg", "8@60kg"]


def sets_of(header, *rows, unit=Unit.KG):
    log = log_of("log.tsv", sheet(header, *rows), unit)

    assert left_out(log) == []
    return [in_short(one.done) for one in log.sets]


@pytest.mark.parametrize(
    ("header", "row"),
    [
        pytest.param("Date|Exercise|Sets|Reps|Weight", "2024-03-05|bench press|3|8|60", id="plain"),
        pytest.param("date|lift|sets|reps|load (kg)", "2024-03-05|bench press|3|8|60", id="a unit in the header"),
        pytest.param("Workout Date|Movement|Reps|kg|Sets", "2024-03-05|bench press|8|60|3", id="any order"),
        pytest.param("date|exercise|sets x reps|weight", "2024-03-05|bench press|3x8|60", id="sets x reps"),
        pytest.param("date|exercise|result", "2024-03-05|bench press|3x8 60", id="all in one cell"),
        pytest.param("date|exercise|reps|weight", "2024-03-05|bench press|8,8,8|60", id="a list of reps"),
        pytest.param(
            "date|exercise|sets|reps|weight", "2024-03-05|bench press|3|8-8-8|60", id="dashes that are a list"
        ),
        pytest.param("date|exercise|reps|weight", "2024-03-05|bench press|8|60/60/60", id="a load for each set"),
        pytest.param("date|exercise|set 1|set 2|set 3|weight", "2024-03-05|bench press|8|8|8|60", id="a column a set"),
        pytest.param(
            "date|exercise|set 1|set 2|set 3",
            "2024-03-05|bench press|60x8|60x8|60x8",
            id="load and reps in the cell of a set",
        ),
        pytest.param(
            "date|exercise|reps 1|weight 1|reps 2|weight 2|reps 3|weight 3",
            "2024-03-05|bench press|8|60|8|60|8|60",
            id="numbered pairs of columns",
        ),
        pytest.param(
            "date|exercise|weight|reps|weight|reps|weight|reps",
            "2024-03-05|bench press|60|8|60|8|60|8",
            id="repeated pairs of columns",
        ),
        pytest.param("Datum|Übung|Sätze|Wdh|Gewicht", "05.03.2024|Bankdrücken|3|8|60", id="German"),
        pytest.param("fecha|ejercicio|series|repeticiones|peso", "05/03/2024|press banca|3|8|60", id="Spanish"),
        pytest.param("date|exercice|séries|répétitions|charge", "05/03/2024|développé couché|3|8|60", id="French"),
        pytest.param("data|esercizio|serie|ripetizioni|carico", "05/03/2024|panca piana|3|8|60", id="Italian"),
        pytest.param("data|exercício|séries|repetições|carga", "05/03/2024|supino|3|8|60", id="Portuguese"),
        pytest.param("datum|oefening|aantal sets|herhalingen|gewicht", "05-03-2024|bankdrukken|3|8|60", id="Dutch"),
        pytest.param("datum|övning|antal set|reps|vikt", "2024-03-05|bänkpress|3|8|60", id="Swedish"),
        pytest.param("дата|упражнение|подходы|повторения|вес", "05.03.2024|жим лежа|3|8|60", id="Russian"),
    ],
)
def test_a_row_of_an_exercise_is_its_sets(header, row):
    log = log_of("log.tsv", sheet(header, row))

    assert left_out(log) == []
    assert said(log) == [f"5.3. {BENCH} {one}" for one in THREE]


def test_one_row_a_set_with_its_number():
    rows = ["2024-03-05|squat|1|60|5|warm-up", "||2|100|5|", "||3|100|5|", "|bench press|1|80|5|", "||2|80|5|drop"]
    log = log_of("log.tsv", sheet("date|exercise|set|weight|reps|set type", *rows))

    assert said(log) == [
        f"5.3. {SQUAT} 5@60kg warmup",
        f"5.3. {SQUAT} 5@100kg",
        f"5.3. {SQUAT} 5@100kg",
        f"5.3. {BENCH} 5@80kg",
        f"5.3. {BENCH} 5@80kg drop",
    ]


def test_set_numbers_of_lifts_done_in_turns_are_numbers_still():
    rows = [f"2024-03-05|{lift}|{number}|60|8" for number in (1, 2, 3) for lift in ("bench press", "barbell row")]

    assert len(sets_of("date|exercise|set|weight|reps", *rows)) == 6


def test_a_column_that_may_number_or_count_is_not_guessed():
    rows = ["2024-03-05|squat|1|60|5", "2024-03-05|squat|2|100|5", "2024-03-07|squat|3|100|5"]
    log = log_of("log.tsv", sheet("date|exercise|set|weight|reps", *rows))

    assert said(log) == [f"5.3. {SQUAT} 5@60kg"]
    assert [why for _, why in left_out(log)] == [
        "is 2 the number of sets, or which set it was?",
        "is 3 the number of sets, or which set it was?",
    ]


@pytest.mark.parametrize(
    ("exercise", "cell", "found"),
    [
        pytest.param("bench press", "82,5", "8@82.5kg", id="a decimal comma"),
        pytest.param("bench press", "82.5 kg", "8@82.5kg", id="its own unit"),
        pytest.param("bench press", "185lbs", "8@185lb", id="pounds"),
        pytest.param("bench press", "", "8", id="nothing known"),
        pytest.param("bench press", "0", "8", id="a bar of nothing is no load"),
        pytest.param("pull-up", "", "8@0kg", id="body weight alone"),
        pytest.param("pull-up", "BW", "8@0kg", id="body weight in words"),
        pytest.param("pull-up", "0", "8@0kg", id="body weight as nothing"),
        pytest.param("pull-up", "BW+10", "8@10kg", id="body weight and more"),
        pytest.param("pull-up", "+10 kg", "8@10kg", id="added"),
        pytest.param("pull-up", "-20", "8@-20kg", id="help"),
        pytest.param("assisted pull ups", "20", "8@-20kg", id="help by the name"),
        pytest.param("dumbbell row", "24", "8@24kg", id="one of two"),
        pytest.param("dumbbell row", "2x24", "8@24kg", id="two of them"),
        pytest.param("dumbbell row", "24 each", "8@24kg", id="each"),
    ],
)
def test_a_load_as_people_write_it(exercise, cell, found):
    assert sets_of("date|exercise|reps|weight", f"2024-03-05|{exercise}|8|{cell}") == [found]


@pytest.mark.parametrize(
    ("header", "cells", "found"),
    [
        pytest.param("reps|rpe", "8|8,5", "8 rir 1.5", id="RPE"),
        pytest.param("reps|rir", "8|2", "8 rir 2", id="RIR"),
        pytest.param("reps|effort", "8|RPE 9", "8 rir 1", id="the scale in the cell"),
        pytest.param("reps|effort", "8|9/10", "8 rir 1", id="out of ten"),
        pytest.param("reps|effort", "8|2", "8 rir 2", id="a low effort column is reps in reserve"),
        pytest.param("reps|failure", "8|yes", "8 failure", id="failure in its column"),
        pytest.param("reps|kind", "8F|", "8 failure", id="failure behind the reps"),
        pytest.param("reps|warm-up", "8|x", "8 warmup", id="warm-up ticked"),
        pytest.param("reps|set type", "8|Rest-pause", "8 rest-pause", id="rest-pause"),
        pytest.param("reps|missed", "0|yes", "0 missed", id="a miss that is said"),
    ],
)
def test_effort_and_marks(header, cells, found):
    assert sets_of(f"date|exercise|{header}", f"2024-03-05|bench press|{cells}") == [found]


def test_effort_in_words_is_kept_as_a_note():
    log = log_of("log.tsv", sheet("date|exercise|reps|effort|notes", "2024-03-05|squat|8|grindy|left knee hurt"))

    assert said(log) == [f"5.3. {SQUAT} 8"]
    assert [(note.text, note.pain) for note in log.notes] == [("left knee hurt", True), ("effort: grindy", False)]


@pytest.mark.parametrize(
    ("header", "cells", "found"),
    [
        pytest.param("sets|seconds", "2|60", ["1@0kg 60s"] * 2, id="seconds"),
        pytest.param("sets|duration", "1|1:30", ["1@0kg 90s"], id="minutes and seconds"),
        pytest.param("sets|time (min)", "1|2", ["1@0kg 120s"], id="minutes in the header"),
        pytest.param("sets|reps", "2|45", ["1@0kg 45s"] * 2, id="a hold's bare number is seconds"),
        pytest.param("sets|reps|seconds", "1|0|45", ["1@0kg 45s"], id="no reps beside its seconds"),
    ],
)
def test_a_hold_is_counted_in_seconds(header, cells, found):
    assert sets_of(f"date|exercise|{header}", f"2024-03-05|plank|{cells}") == found


def test_how_long_a_workout_took_is_nothing_of_a_set():
    assert sets_of("date|exercise|reps|weight|duration", "2024-03-05|squat|5|100|1:05:00") == ["5@100kg"]


def test_a_way_is_metres():
    assert sets_of("date|exercise|distance (yd)|weight", "2024-03-05|farmer carry|100|24") == ["1@24kg 91.44m"]


def test_a_column_for_each_exercise():
    rows = ["2024-03-05|100x5|8,8|3x8 60|fine", "2024-03-07||3x8 60||"]
    log = log_of("log.tsv", sheet("date|squat|bench press|row|mood", *rows))

    assert said(log) == [
        f"5.3. {SQUAT} 5@100kg",
        *[f"5.3. {BENCH} 8"] * 2,
        *[f"7.3. {BENCH} 8@60kg"] * 3,
    ]
    assert [line for line, _ in left_out(log)] == [2]
    assert log.assumed_unit is Unit.KG


@pytest.mark.parametrize(
    ("header", "cells"),
    [
        pytest.param("set 1 (lb)|set 2 (lb)", "225x5|225x5", id="in the header"),
        pytest.param("result|unit", "2x5 225|lbs", id="in a column"),
        pytest.param("result", "225lb 5,5", id="in the cell"),
    ],
)
def test_the_unit_of_sets_told_in_one_cell(header, cells):
    log = log_of("log.tsv", sheet(f"date|exercise|{header}", f"2024-03-05|squat|{cells}"))

    assert [in_short(one.done) for one in log.sets] == ["5@225lb", "5@225lb"]
    assert log.assumed_unit is None


def test_both_units_of_a_load_are_one_load():
    header, row = "date|exercise|reps|weight (kg)|weight (lb)", "2024-03-05|squat|5|100|220.5"

    assert sets_of(header, row) == ["5@100kg"]
    assert sets_of(header, row, unit=Unit.LB) == ["5@220.5lb"]


def test_a_column_of_units_goes_row_by_row():
    rows = ["2024-03-05|squat|5|100|kg", "2024-03-07|squat|5|225|lb"]
    log = log_of("log.tsv", sheet("date|exercise|reps|weight|unit", *rows))

    assert [in_short(one.done) for one in log.sets] == ["5@100kg", "5@225lb"]
    assert log.assumed_unit is None


@pytest.mark.parametrize(
    ("header", "cells", "why"),
    [
        pytest.param("exercise|reps|weight", "row|8|60", "which one: barbell row or", id="an open name"),
        pytest.param("exercise|reps|weight", "glorp machine|8|60", "unknown exercise", id="an unknown name"),
        pytest.param("exercise|reps|weight", "squat||100", "no reps", id="no reps"),
        pytest.param("exercise|reps|weight", "squat|0|100", "0 reps", id="no rep made"),
        pytest.param("exercise|reps|weight", "squat|5000|100", "5000 reps", id="too many reps"),
        pytest.param("exercise|reps|weight", "squat|5.5|100", "", id="half a rep"),
        pytest.param("exercise|reps|weight", "squat|8-12|100", "reps 8-12: a range, or two sets?", id="a range"),
        pytest.param(
            "exercise|reps|weight", "squat|2024-08-12|100", "reps 2024-08-12: the sheet", id="a range turned date"
        ),
        pytest.param(
            "exercise|sets|reps|weight", "squat|3|8,7|100", "3 sets, but reps for 2", id="counts that disagree"
        ),
        pytest.param("exercise|sets|reps|weight", "squat|3|8|100/110", "2 loads for 3 sets", id="loads that disagree"),
        pytest.param("exercise|sets|reps|weight", "squat|99|8|100", "99 sets", id="too many sets"),
        pytest.param("exercise|reps|weight", "squat|5|9000", "load 9000: more than anyone lifts", id="impossible"),
        pytest.param("exercise|reps|weight", "squat|5|-20", "load “-20”", id="less than nothing"),
        pytest.param("exercise|reps|weight", "squat|5|heavy", "load “heavy”", id="a load in words"),
        pytest.param("exercise|reps|weight", "squat|5|1,250", "load “1,250”", id="a comma that may be two things"),
        pytest.param(
            "exercise|reps|weight", "dip|5|82", "load 82: added, or the body's own?", id="body weight or added"
        ),
        pytest.param("exercise|reps|weight|rpe", "squat|5|100|11", "RPE 11", id="off the scale"),
        pytest.param("exercise|reps|weight|unit", "squat|5|100|stone", "unit “stone”", id="another unit"),
        pytest.param("exercise|seconds", "squat|60", "no reps", id="seconds of a squat"),
    ],
)
def test_what_is_in_doubt_is_left_out_with_its_reason(header, cells, why):
    log = log_of("log.tsv", sheet(f"date|{header}", f"2024-03-05|{cells}", "2024-03-05|bench press" + "|" * 6))

    assert said(log) == []
    assert [line for line, _ in left_out(log)] == [2]
    assert left_out(log)[0][1].startswith(why)


@pytest.mark.parametrize(
    ("day", "why"),
    [
        pytest.param("2027-01-01", "the date is in the future", id="to come"),
        pytest.param("31.02.2024", "no such day", id="no such day"),
        pytest.param("spring", "no date that I can read: spring", id="no date"),
    ],
)
def test_a_row_on_no_day_is_left_out(day, why):
    log = log_of("log.tsv", sheet("date|exercise|reps", "2024-03-05|squat|5", "2024-03-06|squat|6", f"{day}|squat|7"))

    assert [in_short(one.done) for one in log.sets] == ["5", "6"]
    assert left_out(log) == [(4, why)]


def test_a_load_far_above_the_rest_is_a_slip():
    rows = [f"2024-03-0{day}|bench press|5|{load}" for day, load in enumerate((80, 82.5, 825, 85, 87.5), start=1)]
    log = log_of("log.tsv", sheet("date|exercise|reps|weight", *rows[:2], *rows[3:], "2024-03-09|bench press|5|270"))

    assert left_out(log) == [(6, f"more than 3 times the next heaviest {BENCH} here")]


def test_names_are_met_as_written_turned_round_or_mended():
    names = ["Row (Barbell)", "curl, barbell", "benhc press", "RDL", "bench-press", "Bench Press", "row"]
    rows = [f"2024-03-05|{name}|8" for name in names]
    log = log_of("log.tsv", sheet("date|exercise|reps", *rows))

    assert [(name.written, name.match, name.meant[:1], name.lines) for name in log.names] == [
        ("Row (Barbell)", NameMatch.REORDERED, ("barbell row",), 1),
        ("curl, barbell", NameMatch.REORDERED, ("barbell curl",), 1),
        ("benhc press", NameMatch.MENDED, (BENCH,), 1),
        ("RDL", NameMatch.AS_WRITTEN, ("romanian deadlift",), 1),
        ("bench-press", NameMatch.AS_WRITTEN, (BENCH,), 2),
        ("row", NameMatch.OPEN, ("barbell row",), 1),
    ]


def test_what_she_settled_is_settled():
    taught = {"row": "seated cable row"}

    assert said(log_of("log.tsv", sheet("date|exercise|reps", "2024-03-05|Rows|8"), taught=taught)) == [
        "5.3. seated cable row 8@0kg"
    ] or said(log_of("log.tsv", sheet("date|exercise|reps", "2024-03-05|Rows|8"), taught=taught)) == [
        "5.3. seated cable row 8"
    ]


MESSY: tuple[list[object], ...] = (
    ["My log", None, None, None],
    [],
    ["Date", "Exercise", "Reps", "Weight (kg)"],
    [
        datetime(2024, 3, 5, 18, 30),  # noqa: DTZ001  # as a workbook keeps it
        "Squat",
        5,
        100,
    ],
    [None, None, 5, 102.5],
    [],
    ["Date", "Exercise", "Reps", "Weight (kg)"],
    [date(2024, 3, 7), None, None, None],
    [None, "Bench press", 8, 60],
    [None, "Total", None, None],
)


def test_a_workbook_with_merged_empty_and_repeated_rows():
    second = (["date", "exercise", "reps", "weight"], [45359, "squat", 3, 110])
    log = log_of("log.xlsx", workbook(MESSY, (["notes"], ["nothing here"]), second))

    assert left_out(log) == []
    assert said(log) == [
        f"5.3. {SQUAT} 5@100kg",
        f"5.3. {SQUAT} 5@102.5kg",
        f"7.3. {BENCH} 8@60kg",
        f"8.3. {SQUAT} 3@110kg",
    ]


@pytest.mark.parametrize(
    "content",
    [
        pytest.param(
            'date,exercise,reps,weight\n2024-03-05,squat,5,"82,5"\n'.encode("utf-8-sig"), id="a byte order mark"
        ),
        pytest.param("Datum;Übung;Wdh;Gewicht\r\n05.03.2024;Kniebeuge;5;82,5\r\n".encode("cp1252"), id="Windows"),
        pytest.param("date\texercise\treps\tweight\n2024-03-05\tsquat\t5\t82.5\n".encode("utf-16"), id="UTF-16"),
        pytest.param(b"sep=;\ndate;exercise;reps;weight\n5/3/2024;squat;5;82,5\n", id="a line for the spreadsheet"),
        pytest.param(
            b"| date | exercise | reps | weight |\n|---|---|---|---|\n| 2024-03-05 | squat | 5 | 82.5 |\n",
            id="a table in text",
        ),
    ],
)
def test_files_as_programs_write_them(content):
    name = "log.txt" if content.startswith(b"|") else "log.csv"

    assert said(log_of(name, content)) == [f"5.3. {SQUAT} 5@82.5kg"]


def test_dates_and_units_that_were_taken_for_granted_are_told():
    log = log_of("log.tsv", sheet("date|exercise|reps|weight", "5/3/2024|squat|5|100"))

    assert (log.order, log.assumed_unit) == (DateOrder.DAY_FIRST, Unit.KG)


@pytest.mark.parametrize(
    "content",
    [
        pytest.param(sheet("week|day|exercise|sets|reps", "1|mon|squat|3|5"), id="a plan by weekdays"),
        pytest.param(sheet("day|exercise|sets|reps|progression", "2024-03-05|squat|3|5|+2.5"), id="a plan by dates"),
        pytest.param(sheet("date|exercise|sets|reps", "2026-07-01|squat|3|5"), id="days to come"),
        pytest.param(sheet("a|b|c", "1|2|3"), id="something else"),
    ],
)
def test_what_is_no_log_is_left_to_others(content):
    assert read("log.tsv", content) is None
