"""The text of an export: every row of one person, each cell in a form that comes back equal.

    {"format": "chalkwire person", "version": 1, "tables": {"person": [{"id": 7, ...}], "set_record": [...], ...}}

Days and instants are ISO 8601 text, bytes are base64, the rest is as JSON has it.
"""

from __future__ import annotations

import json
from base64 import b64decode, b64encode
from collections.abc import Mapping, Sequence
from datetime import date, datetime
from typing import Any

from sqlalchemy import JSON, Date, LargeBinary, Table
from sqlmodel import UTCDateTime

from storage.errors import NotOurs
from storage.tables import METADATA, PEOPLE

FORMAT, VERSION = "chalkwire person", 1

Rows = Mapping[Table, Sequence[Mapping[str, Any]]]


def write_export(rows: Rows) -> str:
    """The text of an export with these rows."""
    tables = {
        table.name: [{name: _cell(value) for name, value in row.items()} for row in found]
        for table, found in rows.items()
    }
    return json.dumps({"format": FORMAT, "version": VERSION, "tables": tables}, ensure_ascii=False, indent=1)


def read_export(text: str) -> Rows:
    """The rows of an export, ready to insert.

    Errors: NotOurs.
    """
    try:
        found = json.loads(text)
    except ValueError as error:
        raise NotOurs("it is not JSON") from error
    if not isinstance(found, dict) or found.get("format") != FORMAT:
        raise NotOurs(f"its format is not {FORMAT!r}")
    if found.get("version") != VERSION:
        raise NotOurs(f"its version is {found.get('version')!r}, not {VERSION}")
    try:
        tables = {METADATA.tables[name]: rows for name, rows in found["tables"].items()}
        rows = {table: [_row(table, row) for row in of_table] for table, of_table in tables.items()}
    except (KeyError, TypeError, ValueError, AttributeError) as error:
        raise NotOurs(f"a row is not as it was written: {error}") from error
    _check_owner(rows)
    return rows


def _check_owner(rows: Rows) -> None:
    people = [row["id"] for row in rows.get(PEOPLE, ())]
    if len(people) != 1:
        raise NotOurs(f"it holds {len(people)} people")
    owners = {row["athlete_id"] for table, found in rows.items() if "athlete_id" in table.c for row in found}
    if owners - set(people):
        raise NotOurs(f"it holds rows of others: {sorted(map(str, owners - set(people)))}")


def _cell(value: Any) -> Any:
    if isinstance(value, (date, datetime)):
        return value.isoformat()
    if isinstance(value, bytes):
        return b64encode(value).decode("ascii")
    return value


def _row(table: Table, row: Mapping[str, Any]) -> Mapping[str, Any]:
    for column in table.c:
        # A column that came later than the export takes its default.
        if column.name not in row and not column.nullable and column.default is None:
            raise ValueError(f"{table.name} without {column.name}")
    return {name: _value(table, name, cell) for name, cell in row.items()}


def _value(table: Table, name: str, cell: Any) -> Any:
    kind = table.c[name].type
    if cell is None or isinstance(kind, JSON):
        return cell
    if isinstance(kind, UTCDateTime):
        return datetime.fromisoformat(cell)
    if isinstance(kind, Date):
        return date.fromisoformat(cell)
    if isinstance(kind, LargeBinary):
        return b64decode(cell, validate=True)
    if not isinstance(cell, kind.python_type):
        raise ValueError(f"{table.name} {name} {cell!r} is no {kind.python_type.__name__}")
    return cell
