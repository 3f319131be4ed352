"""Adding and superseding facts, the same for every table of them."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from sqlalchemy import ColumnElement, Table, and_, insert, update

from storage.records import Change
from storage.work import Work


def add_facts(work: Work, table: Table, change: Change, rows: Sequence[Mapping[str, Any]]) -> int:
    """The id of the first of the facts added; the others follow it by one each."""
    first = work.take_ids(change.athlete, len(rows))
    if rows:
        work.connection.execute(
            insert(table),
            [
                {"athlete_id": change.athlete, "id": first + n, "added_by": change.id, "stands": True, **row}
                for n, row in enumerate(rows)
            ],
        )
    return first


def add_fact(work: Work, table: Table, change: Change, row: Mapping[str, Any]) -> int:
    """The id of the fact added."""
    return add_facts(work, table, change, (row,))


def supersede(work: Work, table: Table, change: Change, which: ColumnElement[bool]) -> int:
    """How many standing facts no longer stand because of this change."""
    result = work.connection.execute(
        update(table).where(standing(table, change.athlete), which).values(removed_by=change.id, stands=False)
    )
    return result.rowcount


def standing(table: Table, athlete: int) -> ColumnElement[bool]:
    """The condition that a row is a standing fact of this athlete's."""
    return and_(table.c.athlete_id == athlete, table.c.stands == True)  # noqa: E712  # a column, not a value
