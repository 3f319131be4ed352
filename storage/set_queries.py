"""The questions put to the log. Each is answered from one index, whatever the length of the log.

Built once: building a statement costs more than running it. Parameters are named as in `storage.sets`.
"""

from __future__ import annotations

from sqlalchemy import Boolean, Select, bindparam, func, insert, or_, select, text

from storage.mapping import SET_COLUMNS
from storage.tables.log import SETS

ALL_DAYS = 1_000_000
"""More training days than anyone has."""

INSERT = insert(SETS)

_S = SETS.c
_STANDING = select(*SET_COLUMNS).where(_S.athlete_id == bindparam("athlete"), _S.stands == True)  # noqa: E712
_IN_ORDER_OF_LOG = (_S.place, _S.id)
_BY_DAY = (_S.on_day, _S.place, _S.id)
_IN_RANGE = _S.on_day.between(bindparam("first"), bindparam("last"))

OF_MESSAGE = _STANDING.where(_S.message == bindparam("message")).order_by(*_IN_ORDER_OF_LOG)
OF_DAY = _STANDING.where(_S.on_day == bindparam("on")).order_by(*_IN_ORDER_OF_LOG)
LATEST = _STANDING.order_by(_S.place.desc(), _S.id.desc()).limit(1)
BETWEEN = _STANDING.where(_IN_RANGE).order_by(*_BY_DAY)
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


def _recent() -> Select[tuple[object, ...]]:
    one = SETS.alias("one")
    of_athlete = (one.c.athlete_id == bindparam("athlete"), one.c.stands == True)  # noqa: E712
    by_day = select(one.c.id).where(*of_athlete, one.c.on_day >= bindparam("since"))
    last = select(one.c.id).where(*of_athlete).order_by(one.c.place.desc(), one.c.id.desc()).limit(bindparam("least"))
    return _STANDING.where(or_(_S.id.in_(by_day), _S.id.in_(last))).order_by(*_IN_ORDER_OF_LOG)


def _history() -> Select[tuple[object, ...]]:
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
_FOR_EACH_EXERCISE = """
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
FROM named JOIN set_record AS found ON found.athlete_id = :athlete AND found.id = (
    SELECT one.id FROM set_record AS one
    WHERE one.athlete_id = :athlete AND one.stands = :yes AND one.exercise = named.exercise AND {condition}
    ORDER BY {order} LIMIT 1
)
"""
_YES = bindparam("yes", type_=Boolean)
LAST_LOADS = text(
    _FOR_EACH_EXERCISE.format(condition="one.thousandths IS NOT NULL", order="one.on_day DESC, one.place DESC")
).bindparams(_YES)
BEST_LOADS = text(
    _FOR_EACH_EXERCISE.format(condition="one.mass IS NOT NULL AND one.reps > 0", order="one.mass DESC")
).bindparams(_YES)
