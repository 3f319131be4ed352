"""A plan as a document: plain text, .csv, or .xlsx, whose columns carry the same fields as the lines of a plan."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from engine.catalogue.catalogue import Catalogue
from engine.plan.columns import Table, header_fields
from engine.plan.lines import PlanLine
from engine.plan.text import ParsedPlan, parse_plan, read_lines
from engine.sheets.document import DocumentKind, document_kind, sheets_of
from engine.sheets.rows import Rows, Sheet, has_header
from engine.sheets.text import DELIMITERS, decoded
from engine.sheets.unreadable import Unreadable
from engine.values.load import Unit
from engine.values.problem import Problem, Severity

MOST_ROWS = 2_000
MOST_ROWS_WITH_GAPS = MOST_ROWS * 5


def parse_sheet(file_name: str, content: bytes, catalogue: Catalogue, unit: Unit) -> ParsedPlan:
    """The plan that a document states, or its problems; the line of a problem is the row of the sheet.

    Errors: none; a document of another kind, too large or broken comes back as one problem.
    """
    try:
        kind = document_kind(file_name, content)
        if kind is DocumentKind.TEXT:
            return parse_plan(decoded(content), catalogue, unit)
        sheets = sheets_of(kind, content, _is_header, MOST_ROWS_WITH_GAPS)
        chosen = _with_header(sheets)
        parsed = _from_rows(chosen.rows if chosen is not None else (), catalogue, unit)
        left = _left_out(chosen, sheets)
        return replace(parsed, problems=(*parsed.problems, *left)) if left else parsed
    except Unreadable as unreadable:
        return ParsedPlan(None, (unreadable.problem,), ())


def is_pasted(text: str) -> bool:
    """Whether words are a table with its header, as a spreadsheet's cells are pasted: "Exercise | Sets | Reps"."""
    first, _, rows = text.strip().partition("\n")
    parted = [first.strip(" |").split(sign) for sign in DELIMITERS if sign in first]
    return bool(rows.strip()) and any(_is_header([cell.strip() for cell in cells]) for cells in parted)


def _is_header(cells: Sequence[str]) -> bool:
    return header_fields(cells) is not None


def _with_header(sheets: Sequence[Sheet]) -> Sheet | None:
    """The first sheet that has a header row, or else the first sheet."""
    with_header = (sheet for sheet in sheets if sheet.has_header(_is_header))
    return next(with_header, sheets[0] if sheets else None)


def _left_out(chosen: Sheet | None, sheets: Sequence[Sheet]) -> tuple[Problem, ...]:
    """A warning that names the sheets beside the one that was read."""
    others = [sheet.name for sheet in sheets if sheet is not chosen and sheet.rows]
    if chosen is None or not others:
        return ()
    expected = f"the whole plan on one sheet; only “{chosen.name}” is read"
    remedy = f"copy its rows below those of {chosen.name}"
    return (Problem(0, ", ".join(others), expected, remedy, Severity.WARNING),)


def _from_rows(rows: Rows, catalogue: Catalogue, unit: Unit) -> ParsedPlan:
    if len(rows) > MOST_ROWS:
        raise Unreadable(f"{len(rows)} rows", f"a sheet of up to {MOST_ROWS} rows", "send one block a file")
    if not has_header(rows, _is_header):
        expected = "a row of headers: for a plan exercise, sets and reps; for an old log a date, too"
        raise Unreadable(" | ".join(rows[0][1])[:60] if rows else "an empty sheet", expected, "exercise,sets,reps,load")
    table = Table()
    lines: list[PlanLine] = [line for number, cells in rows for line in table.lines(number, cells)]
    parsed = read_lines(lines, catalogue, unit)
    problems = sorted((*parsed.problems, *table.warnings), key=lambda problem: problem.line)
    return replace(parsed, problems=tuple(problems))
