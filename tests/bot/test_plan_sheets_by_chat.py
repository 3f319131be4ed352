"""What a spreadsheet does to a plan is said back: dates for ranges, mended names, other sheets, unread columns."""

from __future__ import annotations

import io
from datetime import date

import openpyxl
import pytest

from tests.bot.chatting import said

HEADER = ["Day", "Exercise", "Sets", "Reps", "Load"]
DATE = date(2026, 8, 6)


def workbook(*sheets):
    book = openpyxl.Workbook()
    book.remove(book.worksheets[0])
    for name, rows in sheets:
        sheet = book.create_sheet(name)
        for row in rows:
            sheet.append(row)
    out = io.BytesIO()
    book.save(out)
    return out.getvalue()


def sent(chats, *sheets, name="winter block.xlsx"):
    chats.says("ana", "hello")
    out = chats.sends("ana", name, workbook(*sheets))
    files = [one.outgoing.attachment.decode() for one in out if one.outgoing.attachment]
    return "\n".join([said(out), *files])


@pytest.mark.parametrize(
    ("row", "told"),
    [
        pytest.param(["Mon", "bench press", 3, DATE, 60], "taken as 6-8", id="a range that became a date"),
        pytest.param(["Mon", "barbel sqat", 3, 5, 80], "taken as barbell back squat", id="a mended name"),
    ],
)
@pytest.mark.parametrize("broken", [False, True], ids=["whole", "with a broken line"])
def test_what_was_guessed_is_said_back(chats, row, told, broken):
    rows = [HEADER, row, *([["Mon", "unicorn lift", 3, 10, 20]] if broken else [])]

    assert told in sent(chats, ("plan", rows))


def test_what_was_guessed_is_said_again_when_the_plan_is_mended(chats):
    rows = [HEADER, ["Mon", "bench press", 3, DATE, 60], ["Mon", "unicorn lift", 3, 10, 20]]
    sent(chats, ("plan", rows))

    assert "taken as 6-8" in said(chats.says("ana", "line 3: leg press 3x10 at 20 kg"))


def test_every_problem_can_be_read(chats):
    rows = [HEADER, *(["Mon", f"unicorn {word}", 3, 10, 20] for word in "abcdef")]
    out = sent(chats, ("plan", rows))

    assert [f"Line {number}:" in out for number in range(2, 8)] == [True] * 6


def test_another_sheet_is_named(chats):
    rows = [HEADER, ["Mon", "bench press", 3, 8, 60]]

    assert "“week 2”" in sent(chats, ("plan", rows), ("week 2", rows))


def test_a_column_that_is_not_read_is_named(chats):
    rows = [[*HEADER, "Video"], ["Mon", "bench press", 3, 8, 60, "x"]]

    assert "“Video”" in sent(chats, ("plan", rows))


@pytest.mark.parametrize("header", ["sets x reps", "Sets × Reps", "sets and reps", "Sets/Reps"])
def test_sets_and_reps_in_one_column_are_read(chats, header):
    rows = [["day", "lift", header, "weight"], ["mon", "squat", "3x5", "80kg"], ["wed", "bench press", "3x8-12", 60]]
    sent(chats, ("plan", rows))
    out = said(chats.says("ana", "/plan text"))

    assert "barbell back squat 3x5 at 80 kg" in out
    assert "barbell bench press 3x8-12 at 60 kg" in out


def test_the_plan_has_the_name_of_its_file_and_no_day_is_named_twice(chats):
    out = sent(chats, ("Sheet1", [HEADER, ["Mon", "bench press", 3, 8, 60]]))

    assert "Plan saved: winter block" in out
    assert "Mon Monday" not in out
