"""No file makes the reader of documents raise, and a plan's rows are read as its lines are."""

import csv
import io

from hypothesis import given, settings
from hypothesis import strategies as st

from engine.catalogue.catalogue import catalogue
from engine.plan.columns import FIELD_OF
from engine.plan.sheet import parse_sheet
from engine.values.load import Unit

names = st.sampled_from(["plan.csv", "plan.tsv", "plan.xlsx", "plan.txt", "plan.md", "plan.pages", "plan", ".csv", ""])
headers = st.lists(st.sampled_from(sorted(FIELD_OF)), max_size=12)
cells = st.sampled_from(
    [
        "",
        "3",
        "8-12",
        "max",
        "A",
        "mon",
        "barbell row",
        "row",
        "42,5",
        "2026-08-12",
        "12-Aug",
        "-",
        "nan",
        "1e9",
        "rest",
    ]
) | st.text(max_size=12)


@settings(max_examples=300)
@given(names, st.binary(max_size=400) | st.binary(max_size=100).map(lambda tail: b"PK\x03\x04" + tail))
def test_no_bytes_make_it_raise(name, content):
    read = parse_sheet(name, content, catalogue(), Unit.KG)

    assert (read.plan is None) == bool(read.errors)


@settings(max_examples=300)
@given(headers, st.lists(st.lists(cells, max_size=12), max_size=8), st.sampled_from(",;\t"))
def test_no_rows_make_it_raise(header, rows, delimiter):
    text = io.StringIO()
    csv.writer(text, delimiter=delimiter).writerows([header, *rows])
    read = parse_sheet("plan.csv", text.getvalue().encode("utf-8", "replace"), catalogue(), Unit.KG)

    assert (read.plan is None) == bool(read.errors)
