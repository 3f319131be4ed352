"""Plans as documents: columns met by the meaning of their headers, whatever the delimiter, encoding and gaps."""

import io
from datetime import date, time

import pytest
from openpyxl import Workbook

from engine.catalogue.catalogue import catalogue
from engine.plan import parse_plan
from engine.plan.sheet import parse_sheet
from engine.values.load import Unit
from engine.values.problem import Severity

LINES = """plan: back, 6 weeks, deload week 6
week A: heavy
mon: pull
A1 barbell row 3x8 at 42.5 kg, rir 2, +2.5 kg when all reps are made, rest 90 s, cue: flat back, swap seated cable row
A2 chin-up 2x max, +1 rep each set, standard: chin over the bar
thu: arms
barbell curl 3x8-12 at 20 kg, then +1 kg, rest 60 s
week B: light
mon: pull
plank 3x45 s, no progression"""

HEADER = (
    "Week",
    "Day",
    "Superset",
    "Exercise",
    "Sets",
    "Reps",
    "Load (kg)",
    "RIR",
    "Progression",
    "Rest (s)",
    "Cues",
    "Swaps",
    "Standard",
)
ROWS = (
    (
        "A: heavy",
        "mon: pull",
        "A",
        "Barbell row",
        3,
        "8",
        42.5,
        2,
        "+2.5 kg when all reps are made",
        90,
        "flat back",
        "seated cable row",
        "",
    ),
    ("", "", "A", "Chin-ups", 2, "max", "", "", "+1 rep each set", "", "", "", "chin over the bar"),
    ("", "thu: arms", "", "BB curl", 3, "8-12", 20, "", "then +1 kg", 60, "", "", ""),
    ("B: light", "mon: pull", "", "Plank", 3, "45 s", "", "", "no progression", "", "", "", ""),
)


def expected():
    plan = parse_plan(LINES, catalogue(), Unit.KG).plan

    assert plan is not None
    return plan


def as_csv(delimiter, comma=False):
    lines = [["plan: back, 6 weeks, deload week 6"], HEADER, *ROWS]
    cells = [
        [str(cell).replace(".", ",") if comma and isinstance(cell, float) else str(cell) for cell in line]
        for line in lines
    ]
    return "\r\n".join(delimiter.join(f'"{cell}"' if delimiter in cell else cell for cell in line) for line in cells)


def as_workbook(*lines):
    book = Workbook()
    sheet = book.create_sheet(index=0)
    for line in lines:
        sheet.append(list(line))
    kept = io.BytesIO()
    book.save(kept)
    return kept.getvalue()


def read(name, content):
    return parse_sheet(name, content, catalogue(), Unit.KG)


@pytest.mark.parametrize(
    ("name", "content"),
    [
        pytest.param("plan.csv", as_csv(",").encode(), id="commas"),
        pytest.param("plan.csv", as_csv(";", comma=True).encode("cp1252"), id="semicolons and decimal commas"),
        pytest.param("plan.tsv", as_csv("\t").encode("utf-16"), id="tabs in utf-16"),
        pytest.param("PLAN.CSV", as_csv(",").encode("utf-8-sig"), id="a byte order mark"),
        pytest.param(
            "plan.xlsx", as_workbook(["plan: back, 6 weeks, deload week 6"], [], HEADER, *ROWS), id="a workbook"
        ),
        pytest.param("plan.txt", LINES.encode(), id="plain text"),
        pytest.param("plan.md", LINES.replace("week A", "# week A").encode(), id="markdown"),
    ],
)
def test_a_document_is_the_plan_that_its_lines_would_be(name, content):
    found = read(name, content)

    assert [str(problem) for problem in found.errors] == []
    assert found.plan == expected()


def test_a_table_in_text_is_read_like_a_sheet():
    table = "\n".join("| " + " | ".join(map(str, row)) + " |" for row in (HEADER, ["---"] * len(HEADER), *ROWS))
    found = parse_plan(f"plan: back, 6 weeks, deload week 6\n\n{table}", catalogue(), Unit.KG)

    assert found.plan == expected()


@pytest.mark.parametrize(
    ("header", "row", "line"),
    [
        pytest.param("sets|reps|weight|unit", "3|8|100|lb", "3x8 at 100 lb", id="a column for the unit"),
        pytest.param("sets|reps|effort|weight", "3|8|8|60", "3x8 at 60 kg rpe 8", id="effort beside a load"),
        pytest.param("sets|reps|rest", "3|8|2 min", "3x8, rest 2 min", id="a rest with its unit"),
        pytest.param("sets|reps|rest (min)", "3|8|2", "3x8, rest 2 min", id="minutes in the header"),
        pytest.param("sets|seconds", "3|30", "3x30 s", id="seconds"),
        pytest.param("sets|load", "3x8|find it", "3x8, find it", id="sets and reps in one cell"),
        pytest.param("sets|reps|notes", "3|8|belt; chalk", "3x8, cue: belt, cue: chalk", id="notes are cues"),
        pytest.param("sets|reps|cues", "3|8|brace, rest 2 s", '3x8, cue: "brace, rest 2 s"', id="a cell is kept whole"),
    ],
)
def test_a_row_is_the_line_it_would_be(header, row, line):
    text = f"movement|{header}\nbarbell row|{row}".replace("|", "\t")
    found = read("p.csv", text.encode())

    assert found.plan is not None, [str(problem) for problem in found.problems]
    assert found.plan == parse_plan(f"barbell row {line}", catalogue(), Unit.KG).plan


def test_what_a_spreadsheet_made_of_a_rep_range_is_undone_with_a_warning():
    found = read("p.xlsx", as_workbook(("exercise", "sets", "reps"), ("barbell row", 3, date(2026, 8, 12))))

    assert found.plan == parse_plan("barbell row 3x8-12", catalogue(), Unit.KG).plan
    assert [problem.line for problem in found.problems if problem.severity is Severity.WARNING] == [2]
    assert read("p.csv", b"exercise,sets,reps\nbarbell row,3,12-Aug").plan == found.plan


def test_a_clock_in_a_cell_is_minutes_and_seconds():
    found = read("p.xlsx", as_workbook(("exercise", "sets", "reps", "rest"), ("barbell row", 3, 8, time(1, 30))))

    assert found.plan == parse_plan("barbell row 3x8, rest 90 s", catalogue(), Unit.KG).plan


def test_a_problem_names_the_row_of_the_sheet():
    found = read("p.csv", b"exercise,sets,reps\nbarbell row,3,8\n\nrow,3,8\nplank,3,45")

    assert [(problem.line, problem.read) for problem in found.errors] == [(4, "row")]


@pytest.mark.parametrize(
    ("name", "content", "words"),
    [
        pytest.param("plan.pages", b"PK", "can't read .pages files", id="another kind of file"),
        pytest.param("plan.xls", b"\xd0\xcf", "can't read .xls files", id="an old workbook"),
        pytest.param("plan.xlsx", b"PK\x03\x04 no more", "a whole .xlsx file", id="a broken workbook"),
        pytest.param("plan.xlsx", as_workbook(("hello", "world")), "a row of headers", id="no headers"),
        pytest.param("plan.csv", b"", "a plan or an old log", id="an empty file"),
        pytest.param(
            "plan.csv", b"exercise,sets,reps\n" + b"plank,3,45\n" * 2_001, "up to 2000 rows", id="too many rows"
        ),
        pytest.param("plan.csv", b"x" * 5_000_001, "up to 5000000 bytes", id="too large a file"),
    ],
)
def test_what_cannot_be_read_says_what_to_send(name, content, words):
    found = read(name, content)

    assert found.plan is None
    (problem,) = found.problems
    assert words in problem.expected
    assert problem.try_instead
