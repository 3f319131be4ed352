"""Adding and superseding facts, the same for every table of them."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from functools import cache
from typing import Any

from sqlalchemy import ColumnElement, Select, Table, and_, bindparam, insert, select, update

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
    # Not `standing`: told to look among standing facts, SQLite looks at all of them.
    still = and_(table.c.athlete_id == change.athlete, table.c.stands.is_not(False))
    values = {"removed_by": change.id, "stands": False}
    result = work.connection.execute(update(table).where(still, which).values(values))
    return result.rowcount


@cache
def all_standing(table: Table) -> Select[Any]:
    """The statement for all standing facts of an `athlete`, oldest first."""
    mine = and_(table.c.athlete_id == bindparam("athlete"), table.c.stands == True)  # noqa: E712  # a column
    return select(table).where(mine).order_by(table.c.id)


def standing(table: Table, athlete: int) -> ColumnElement[bool]:
    """The condition that a row is a standing fact of this athlete's."""
    return and_(table.c.athlete_id == athlete, table.c.stands == True)  # noqa: E712  # a column, not a value
