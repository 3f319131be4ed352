"""The questions put to the log. Each is answered from one index, whatever the length of the log.

Most give ids, in order: the sets themselves are recalled, or read with BY_ID. Built once: building a statement costs
more than running it. Parameters are named as in `storage.sets`.
"""

from __future__ import annotations

from typing import Any

from sqlalchemy import Boolean, Select, TextClause, and_, bindparam, func, insert, select, text, union

from storage.mapping import SET_COLUMNS
from storage.tables.log import SETS

ALL_DAYS = 1_000_000
"""More training days than anyone has."""

INSERT = insert(SETS)

_S = SETS.c
BY_ID = select(*SET_COLUMNS).where(_S.athlete_id == bindparam("athlete"), _S.id.in_(bindparam("ids", expanding=True)))
_STANDING = select(_S.id).where(_S.athlete_id == bindparam("athlete"), _S.stands == True)  # noqa: E712
_IN_ORDER_OF_LOG = (_S.place, _S.id)
_BY_DAY = (_S.on_day, _S.place, _S.id)
_IN_RANGE = _S.on_day.between(bindparam("first"), bindparam("last"))

OF_MESSAGE = _STANDING.where(_S.message == bindparam("message")).order_by(*_IN_ORDER_OF_LOG)
OF_DAY = _STANDING.where(_S.on_day == bindparam("on")).order_by(*_IN_ORDER_OF_LOG)
LATEST = _STANDING.order_by(_S.place.desc(), _S.id.desc()).limit(1)
BETWEEN = _STANDING.where(_IN_RANGE).order_by(*_BY_DAY)
STAMP = select(func.count(), func.max(_S.id), func.sum(_S.id), func.sum(_S.id * (_S.id * 1.0))).where(
    _S.athlete_id == bindparam("athlete"),
    _S.stands == True,  # noqa: E712  # a column, not a value
    _IN_RANGE,
)
BETWEEN_OF = _STANDING.where(_IN_RANGE, _S.exercise.in_(bindparam("exercises", expanding=True))).order_by(*_BY_DAY)
OF_ATHLETES = (
    select(*SET_COLUMNS, _S.athlete_id)
    .where(
        _S.athlete_id.in_(bindparam("athletes", expanding=True)),
        _S.stands == True,  # noqa: E712
        _IN_RANGE,
    )
    .order_by(_S.athlete_id, *_BY_DAY)
)


def _recent() -> Select[Any]:
    one = SETS.alias("one")
    of_athlete = (one.c.athlete_id == bindparam("athlete"), one.c.stands == True)  # noqa: E712
    by_day = select(one.c.id).where(*of_athlete, one.c.on_day >= bindparam("since"))
    last = select(one.c.id).where(*of_athlete).order_by(one.c.place.desc(), one.c.id.desc()).limit(bindparam("least"))
    wanted = union(by_day, select(last.subquery().c.id)).subquery()
    # Ids alone: a second condition on standing sets would tempt SQLite to walk the whole log in order.
    of_ids = (_S.athlete_id == bindparam("athlete"), _S.id == wanted.c.id)
    return select(_S.id).join_from(wanted, SETS, and_(*of_ids)).order_by(*_IN_ORDER_OF_LOG)


def _history() -> Select[Any]:
    of_exercise = (_S.exercise == bindparam("exercise"), _S.on_day <= bindparam("until"))
    one = SETS.alias("one")
    days = (
        select(one.c.on_day)
        .distinct()
        .where(
            one.c.athlete_id == bindparam("athlete"),
            one.c.stands == True,  # noqa: E712
            one.c.exercise == bindparam("exercise"),
            one.c.on_day <= bindparam("until"),
        )
        .order_by(one.c.on_day.desc())
        .limit(bindparam("days"))
        .subquery()
    )
    first = select(func.min(days.c.on_day)).scalar_subquery()
    return _STANDING.where(*of_exercise, _S.on_day >= first).order_by(*_BY_DAY)


RECENT = _recent()
HISTORY = _history()

# One step through the index for each exercise, not one for each set: the log of ten years has a hundred thousand sets
# of sixty exercises.
_EXERCISES = """
WITH RECURSIVE named(exercise) AS (
    SELECT min(first.exercise) FROM set_record AS first WHERE first.athlete_id = :athlete AND first.stands = :yes
    UNION ALL
    SELECT (
        SELECT min(next.exercise) FROM set_record AS next
        WHERE next.athlete_id = :athlete AND next.stands = :yes AND next.exercise > named.exercise
    )
    FROM named WHERE named.exercise IS NOT NULL
)
SELECT found.exercise, found.thousandths, found.unit, found.basis
"""
_FIRST_OF_EACH = """
    SELECT one.{columns} FROM set_record AS one
    WHERE one.athlete_id = :athlete AND one.stands = :yes AND one.exercise = named.exercise AND {condition}
    ORDER BY {order} LIMIT 1
"""


def _for_each_exercise(condition: str, order: str, *, is_postgres: bool) -> TextClause:
    columns = "exercise, one.thousandths, one.unit, one.basis" if is_postgres else "id"
    first = _FIRST_OF_EACH.format(columns=columns, condition=condition, order=order)
    if is_postgres:
        # Joined by id, it reads the whole log while it knows little of the table's contents yet.
        found = f"FROM named CROSS JOIN LATERAL ({first}) AS found"
    else:
        found = f"FROM named JOIN set_record AS found ON found.athlete_id = :athlete AND found.id = ({first})"
    return text(_EXERCISES + found).bindparams(bindparam("yes", type_=Boolean))


LAST_LOADS = {
    is_postgres: _for_each_exercise(
        "one.thousandths IS NOT NULL", "one.on_day DESC, one.place DESC", is_postgres=is_postgres
    )
    for is_postgres in (True, False)
}
BEST_LOADS = {
    is_postgres: _for_each_exercise("one.mass IS NOT NULL AND one.reps > 0", "one.mass DESC", is_postgres=is_postgres)
    for is_postgres in (True, False)
}
"""By whether the database is PostgreSQL."""
