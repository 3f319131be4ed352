"""What is due for whom and when, each once for its kind and local day: the row is also the ledger of what was done."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date, datetime, timedelta
from enum import Enum
from typing import Any

from sqlalchemy import ColumnElement, Row, Select, and_, delete, func, or_, select, tuple_, update
from sqlalchemy.dialects import postgresql, sqlite

from engine.values.ids import AthleteId
from storage.records import Due
from storage.tables.due import DUE
from storage.work import Work


class DueState(Enum):
    WAITING = "waiting"
    DONE = "done"
    SKIPPED = "skipped"


KEY = (DUE.c.athlete_id, DUE.c.kind, DUE.c.local_date)
WAITS = DUE.c.state == DueState.WAITING.value


class DueRows:
    def __init__(self, work: Work) -> None:
        self._work = work

    def plan(
        self,
        athlete: AthleteId,
        kind: str,
        local_date: date,
        due_at: datetime,
        payload: Mapping[str, Any] | None = None,
    ) -> bool:
        """Whether it is planned now: False when it was done or skipped for that local day before.

        Planned again before it is done, the new instant and payload replace the old.
        """
        insert = postgresql.insert if self._work.is_postgres else sqlite.insert
        new = {"due_at": due_at, "payload": dict(payload or {}), "claimed_until": None}
        statement = insert(DUE).values(
            athlete_id=athlete,
            kind=kind,
            local_date=local_date,
            state=DueState.WAITING.value,
            attempts=0,
            **new,
        )
        planned = self._work.connection.execute(
            statement.on_conflict_do_update(index_elements=list(KEY), set_=new, where=WAITS).returning(DUE.c.kind)
        )
        return planned.first() is not None

    def cancel(self, athlete: AthleteId, kind: str | None = None) -> int:
        """How many rows waited and are gone, of one kind or of all."""
        return self._work.connection.execute(delete(DUE).where(_waiting(athlete, kind))).rowcount

    def planned(self, athlete: AthleteId, kind: str | None = None) -> tuple[Due, ...]:
        """What waits for a person, soonest first."""
        return self._rows(select(DUE).where(_waiting(athlete, kind)).order_by(DUE.c.due_at, *KEY))

    def was_done(self, athlete: AthleteId, kind: str, local_date: date) -> bool:
        """Whether it was done for that local day."""
        query = select(DUE.c.state).where(
            DUE.c.athlete_id == athlete, DUE.c.kind == kind, DUE.c.local_date == local_date
        )
        state: str | None = self._work.connection.execute(query).scalar_one_or_none()
        return state == DueState.DONE.value

    def claim(self, now: datetime, *, limit: int = 50, lease: timedelta) -> tuple[Due, ...]:
        """What is due now, soonest first; no other worker gets it until the lease ends. Commit before working on it."""
        free = or_(DUE.c.claimed_until.is_(None), DUE.c.claimed_until <= now)
        query = select(*KEY).where(WAITS, DUE.c.due_at <= now, free).order_by(DUE.c.due_at, *KEY).limit(limit)
        if self._work.is_postgres:
            query = query.with_for_update(skip_locked=True)
        keys = [tuple(row) for row in self._work.connection.execute(query)]
        if not keys:
            return ()
        which = tuple_(*KEY).in_(keys)
        self._work.connection.execute(
            update(DUE).where(which).values(claimed_until=now + lease, attempts=DUE.c.attempts + 1)
        )
        return self._rows(select(DUE).where(which).order_by(DUE.c.due_at, *KEY))

    def take(self, due: Due) -> bool:
        """Whether a claimed row still waits as it was, its person locked until the transaction ends.

        Do the work and mark it done in the same transaction.
        """
        self._work.lock(due.athlete)
        query = select(DUE.c.due_at).where(_same(due), WAITS)
        return self._work.connection.execute(query).scalar_one_or_none() == due.due_at

    def done(self, due: Due, at: datetime) -> None:
        """Nothing; it is done for its local day and can never be planned for it again."""
        self._update(due, state=DueState.DONE.value, done_at=at, claimed_until=None)

    def skip(self, due: Due, at: datetime) -> None:
        """Nothing; it came too late to be of use, and can never be planned for its local day again."""
        self._update(due, state=DueState.SKIPPED.value, done_at=at, claimed_until=None)

    def retry_at(self, due: Due, due_at: datetime) -> None:
        """Nothing; it will be due again then."""
        self._update(due, due_at=due_at, claimed_until=None)

    def next_at(self) -> datetime | None:
        """When the soonest row is due; None when nothing waits."""
        soonest: datetime | None = self._work.connection.execute(select(func.min(DUE.c.due_at)).where(WAITS)).scalar()
        return soonest

    def _rows(self, query: Select[Any]) -> tuple[Due, ...]:
        return tuple(_due(row) for row in self._work.connection.execute(query))

    def _update(self, due: Due, **values: Any) -> None:
        self._work.connection.execute(update(DUE).where(_same(due)).values(values))


def _waiting(athlete: AthleteId, kind: str | None) -> ColumnElement[bool]:
    of_athlete = and_(DUE.c.athlete_id == athlete, WAITS)
    return of_athlete if kind is None else and_(of_athlete, DUE.c.kind == kind)


def _same(due: Due) -> ColumnElement[bool]:
    return and_(DUE.c.athlete_id == due.athlete, DUE.c.kind == due.kind, DUE.c.local_date == due.local_date)


def _due(row: Row[Any]) -> Due:
    return Due(AthleteId(row.athlete_id), row.kind, row.local_date, row.due_at, row.payload, row.attempts)
