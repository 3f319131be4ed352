"""Files as programs and people leave them: other code pages, renamed, locked, broken, made to harm; read or refused in
words, and never half."""

import io
import zipfile
from datetime import date

import pytest
from openpyxl import Workbook

from engine.sheets.unreadable import Unreadable
from tests.engine.imports.old_logs import in_short, left_out, log_of, read, said, sheet, workbook

SQUAT = "barbell back squat"
PLAIN = (("date", "exercise", "reps", "weight"), (date(2024, 3, 5), "squat", 5, 100))


@pytest.mark.parametrize(
    ("text", "encoding"),
    [
        pytest.param("Data;Ćwiczenie;Powtórzenia;Ciężar\n05.03.2024;Przysiad;5;82,5\n", "cp1250", id="Polish Windows"),
        pytest.param("Дата;Упражнение;Повторения;Вес\n05.03.2024;Присед;5;82,5\n", "cp1251", id="Russian Windows"),
        pytest.param("Datum;Övning;Reps;Vikt\n2024-03-05;Knäböj;5;82,5\n", "cp1252", id="Western Windows"),
        pytest.param("date\texercise\treps\tweight\n2024-03-05\tsquat\t5\t82.5\n", "utf-16-le", id="UTF-16 unmarked"),
        pytest.param("date\texercise\treps\tweight\n2024-03-05\tsquat\t5\t82.5\n", "utf-16-be", id="the other order"),
        pytest.param("date,exercise,reps,weight\r2024-03-05,squat,5,82.5\r", "ascii", id="lines of an old Macintosh"),
    ],
)
def test_encodings(text, encoding):
    assert said(log_of("log.csv", text.encode(encoding))) == [f"5.3. {SQUAT} 5@82.5kg"]


@pytest.mark.parametrize("words", ["5.3.2024\nprzysiad 5x100\nbyło ciężko, następnym razem więcej\n"])
def test_a_diary_in_another_code_page(words):
    assert [note.text for note in log_of("log.txt", words.encode("cp1250")).notes] == [words.splitlines()[2]]


@pytest.mark.parametrize("name", ["log.csv", "log.xlsx", "log.txt"])
def test_a_renamed_file_is_read_for_what_it_is(name):
    table = b"date,exercise,reps,weight\n2024-03-05,squat,5,100\n"

    assert said(log_of(name, workbook(PLAIN))) == [f"5.3. {SQUAT} 5@100kg"]
    assert said(log_of(name, table)) == [f"5.3. {SQUAT} 5@100kg"]


def packed(**parts: bytes) -> bytes:
    """A workbook with these parts put in, or in the place of its own."""
    kept = io.BytesIO()
    with (
        zipfile.ZipFile(io.BytesIO(workbook(PLAIN))) as whole,
        zipfile.ZipFile(kept, "w", zipfile.ZIP_DEFLATED) as archive,
    ):
        own = {name: whole.read(name) for name in whole.namelist()}
        for name, content in (own | {name.replace("__", "/"): content for name, content in parts.items()}).items():
            archive.writestr(name, content)
    return kept.getvalue()


def sheet_part(rows: bytes) -> bytes:
    opened = b'<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData>'
    return opened + rows + b"</sheetData></worksheet>"


@pytest.mark.parametrize(
    ("name", "content", "expected"),
    [
        pytest.param("log.csv", b"", "a plan or an old log", id="empty"),
        pytest.param("log.txt", b"\xef\xbb\xbf  \n\n", "a plan or an old log", id="blank"),
        pytest.param("log.pdf", b"%PDF-1.4", "I can't read .pdf files", id="another kind"),
        pytest.param("log.txt", bytes(range(256)) * 40, "text, or a table", id="no text"),
        pytest.param("log.csv", b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1" + b"x" * 99, "without a password", id="locked"),
        pytest.param("log.xlsx", b"PK\x03\x04 and no more", "a whole .xlsx file", id="broken off"),
        pytest.param("log.xlsx", packed(bomb=b"0" * 50_000_001), "up to 50000000 bytes", id="a bomb"),
        pytest.param(
            "log.xlsx",
            packed(**{"xl__worksheets__sheet1.xml": sheet_part(b"<row/>" * 200_001)}),
            "up to 200000 rows",
            id="a million rows of nothing",
        ),
        pytest.param(
            "log.xlsx",
            packed(**{"xl__worksheets__sheet1.xml": sheet_part(b"<row>" + b"<c/>" * 1_500_001 + b"</row>")}),
            "up to 1500000 cells",
            id="a row of cells without end",
        ),
        pytest.param("log.csv", b"date,exercise,reps\n" + b"a,b\n" * 200_001, "up to 200000 rows", id="many rows"),
        pytest.param(
            "log.csv", b"date,exercise,reps\n" + b"2024-03-05,squat,5\n" * 30_001, "up to 30000 at once", id="too long"
        ),
        pytest.param(
            "log.csv",
            b'date,exercise,reps,notes\n2024-03-05,squat,5,"fine\n2024-03-06,squat,5,\n2024-03-07,squat,5,"\n',
            "a quotation mark that closes",
            id="rows swallowed by a quotation mark",
        ),
        pytest.param("log.csv", b"date,exercise,reps\n2024-03-05," + b"a" * 200_000, "rows of cells", id="one cell"),
        pytest.param("log.txt", b"2024-03-05\nsquat 100x5\n" * 10_001, "up to 10000 at once", id="a long diary"),
        pytest.param("log.csv", b"a" * 5_000_001, "up to 5000000 bytes", id="a large file"),
    ],
)
def test_what_cannot_be_read_is_refused_in_words(name, content, expected):
    with pytest.raises(Unreadable) as refused:
        read(name, content)

    assert expected in str(refused.value.problem)
    assert refused.value.problem.try_instead


def test_what_programs_are_in_a_workbook_is_passed_over():
    assert said(log_of("log.xlsx", packed(**{"xl__vbaProject.bin": b"\x00" * 99}))) == [f"5.3. {SQUAT} 5@100kg"]


def formulas(*rows: tuple[object, ...]) -> bytes:
    """A workbook as a program leaves it that works no formulas out."""
    return workbook((PLAIN[0], *rows))


def test_a_formula_without_its_result_is_no_empty_cell():
    day = date(2024, 3, 5)
    log = log_of("log.xlsx", formulas((day, "squat", 5, "=50+50"), (day, "pull-up", 5, "=25-5"), (day, "dip", 5, 10)))

    assert [in_short(one.done) for one in log.sets] == ["5@10kg"]
    assert left_out(log) == [
        (2, "a formula without its result: =50+50"),
        (3, "a formula without its result: =25-5"),
    ]


def test_a_cell_far_below_the_rows_costs_none_of_them():
    book = Workbook()
    page = book.create_sheet("Log")
    for row in PLAIN:
        page.append(list(row))
    page["A1048576"] = "x"
    kept = io.BytesIO()
    book.save(kept)

    assert said(log_of("log.xlsx", kept.getvalue())) == [f"5.3. {SQUAT} 5@100kg"]


def test_headers_alone_are_a_log_without_sets():
    log = log_of("log.tsv", sheet("date|exercise|reps|weight"))

    assert (log.sets, log.left_out) == ((), ())
