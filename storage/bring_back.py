"""Bring an exported person into a database where some of her ids may be taken.

Ids that count within her records stay as they are. Ids over the whole database (hers, and those of her messages in and
out) stay where they are higher than any given out here; otherwise she gets new ones, and every column that refers to
them follows: an id is never given to two, not even after an erasure.

Nothing ties her to other people afterwards: the numbers in a file do not prove who they are, nor that they consent.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from sqlalchemy import Table, TextClause, insert, select, text

from engine.values.ids import AthleteId
from storage.errors import PersonExists
from storage.portable import read_export
from storage.tables import CHANGES, COACH_LINKS, INBOUND, INVITATIONS, LIFT_LINES, METADATA, OUTBOX, PEOPLE, PLANS
from storage.work import NOBODY, Work

REFERS_TO = {
    (CHANGES, "inbound"): INBOUND,
    (OUTBOX, "inbound"): INBOUND,
    (OUTBOX, "edits"): OUTBOX,
    (LIFT_LINES, "outbox"): OUTBOX,
}
"""Columns that hold an id over the whole database, beside `athlete_id`."""

NewIds = Mapping[Table, Mapping[int, int]]


def bring_back(work: Work, export: str) -> AthleteId:
    """The person, in this database again.

    Errors: NotOurs, PersonExists.
    """
    rows = read_export(export)
    (person,) = rows[PEOPLE]
    if _taken(work, PEOPLE, source=person["source"], chat=person["chat"]):
        raise PersonExists(person["source"], person["chat"])
    new_ids = {table: _new_ids(work, table, rows.get(table, ())) for table in (PEOPLE, INBOUND, OUTBOX)}
    for table in METADATA.sorted_tables:
        found = [_renumbered(table, row, new_ids) for row in rows.get(table, ()) if _is_hers_alone(work, table, row)]
        if found:
            work.connection.execute(insert(table), found)
    if work.is_postgres:
        _count_on(work)
    athlete = AthleteId(new_ids[PEOPLE][person["id"]])
    work.forget(athlete)
    return athlete


def _new_ids(work: Work, table: Table, rows: Sequence[Mapping[str, Any]]) -> dict[int, int]:
    """The id here of each id in the export: the same where none of them was ever given out here."""
    ids = sorted(row["id"] for row in rows)
    last = work.connection.execute(_last_given(work, table)).scalar_one()
    if not ids or ids[0] > last:
        return {id: id for id in ids}
    return {id: last + n for n, id in enumerate(ids, start=1)}


def _last_given(work: Work, table: Table) -> TextClause:
    """The question for the last id a table gave out, rows that are gone included."""
    if work.is_postgres:
        return text(f"SELECT CASE WHEN is_called THEN last_value ELSE 0 END FROM {table.name}_id_seq")
    return text(f"SELECT coalesce(max(seq), 0) FROM sqlite_sequence WHERE name = '{table.name}'")


def _renumbered(table: Table, row: Mapping[str, Any], new_ids: NewIds) -> dict[str, Any]:
    changed = dict(row)
    if "athlete_id" in changed:
        changed["athlete_id"] = new_ids[PEOPLE][row["athlete_id"]]
    if table in new_ids:
        changed["id"] = new_ids[table][row["id"]]
    if table is CHANGES:
        changed["by"] = new_ids[PEOPLE].get(row["by"], NOBODY)
    if table is PLANS:
        changed["coach"] = None
    for (referring, column), referred in REFERS_TO.items():
        if referring is table:
            changed[column] = new_ids[referred].get(row[column])
    return changed


def _is_hers_alone(work: Work, table: Table, row: Mapping[str, Any]) -> bool:
    """Whether a row ties her to nobody else and its key is free."""
    if table is COACH_LINKS:
        return False
    if table is OUTBOX:
        return row["about"] is None
    if table is INVITATIONS:
        return not _taken(work, INVITATIONS, code=row["code"])
    if table is INBOUND:
        return not _taken(work, INBOUND, source=row["source"], key=row["key"])
    return True


def _taken(work: Work, table: Table, **values: Any) -> bool:
    query = select(table.c[next(iter(values))]).filter_by(**values).limit(1)
    return work.connection.execute(query).first() is not None


def _count_on(work: Work) -> None:
    """Let PostgreSQL's counters go on after the highest id that was brought in."""
    for table in (PEOPLE, INBOUND, OUTBOX):
        work.connection.execute(
            text(
                f"SELECT setval(pg_get_serial_sequence('{table.name}', 'id'), max(id)) FROM {table.name}"
                " HAVING max(id) IS NOT NULL"
            )
        )
