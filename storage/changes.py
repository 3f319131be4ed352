"""Changes, undo and redo: every fact names the change that added it and the one that removed it.

A fact stands while the change that added it is in force and none that removed it is. Undo takes one change out of
force, redo puts it back; no fact is ever deleted. An athlete undoes her own steps, a coach his own.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime
from typing import Any

from sqlalchemy import ColumnElement, Row, Table, and_, bindparam, exists, func, insert, or_, select, update

from engine.values.ids import AthleteId
from storage.mapping import SET_COLUMNS, set_record
from storage.records import Change, ChangeId, ChangeKind, Touched
from storage.tables import CHANGES, FACTS, SETS
from storage.work import Work

CHANGE = select(CHANGES).where(CHANGES.c.athlete_id == bindparam("athlete"))
STEP = CHANGES.c.kind != ChangeKind.ASIDE.value
LATEST_BY = (
    CHANGE.where(CHANGES.c.by == bindparam("by"), CHANGES.c.undone_place.is_(None), STEP)
    .order_by(CHANGES.c.id.desc())
    .limit(1)
)
LAST_UNDONE_BY = (
    CHANGE.where(CHANGES.c.by == bindparam("by"), CHANGES.c.undone_place.is_not(None))
    .order_by(CHANGES.c.undone_place.desc())
    .limit(1)
)


def _in_force(facts: Table, column: str) -> ColumnElement[bool]:
    """The condition that the change named in a column exists and is not undone."""
    change = CHANGES.alias()
    return exists().where(
        change.c.athlete_id == facts.c.athlete_id, change.c.id == facts.c[column], change.c.undone_place.is_(None)
    )


SETTLE = tuple(
    update(facts)
    .where(facts.c.athlete_id == bindparam("athlete"), facts.c[column] == bindparam("touched_by"))
    .values(stands=and_(_in_force(facts, "added_by"), ~_in_force(facts, "removed_by")))
    for facts in FACTS
    for column in ("added_by", "removed_by")
)


class Changes:
    def __init__(self, work: Work) -> None:
        self._work = work

    def begin(
        self,
        athlete: AthleteId,
        kind: ChangeKind,
        label: str,
        at: datetime,
        *,
        by: AthleteId | None = None,
        inbound: int | None = None,
    ) -> Change:
        """A new change in the records of `athlete`; whatever was undone before can no longer be redone.

        A change of kind ASIDE is no step: undo passes over it, and redo stays possible.

        Begin one only when facts will follow: an empty change is still one step of undo.
        `by` is whoever acts when that is not the athlete (her coach).
        """
        change = Change(ChangeId(self._work.take_ids(athlete)), athlete, by or athlete, kind, label, at, inbound)
        self._work.connection.execute(
            insert(CHANGES),
            {
                "athlete_id": athlete,
                "id": change.id,
                "by": change.by,
                "kind": kind.value,
                "label": label,
                "at": at,
                "inbound": inbound,
            },
        )
        return change

    def relabel(self, change: Change, label: str, kind: ChangeKind | None = None) -> Change:
        """The change with other words for undo to say, and of another kind where one is told."""
        kind = kind or change.kind
        self._update(change, label=label, kind=kind.value)
        return replace(change, label=label, kind=kind)

    def to_undo(self, athlete: AthleteId, *, by: AthleteId | None = None) -> Change | None:
        """The latest change still in force, which undo would take back; None when there is none."""
        row = self._work.connection.execute(LATEST_BY, {"athlete": athlete, "by": by or athlete}).one_or_none()
        return None if row is None else _change(row)

    def undo(self, athlete: AthleteId, at: datetime, *, by: AthleteId | None = None) -> Change | None:
        """The latest change still in force, now undone; None when there is none."""
        change = self.to_undo(athlete, by=by)
        if change is None:
            return None
        self._update(change, undone_at=at, undone_place=self._work.take_ids(athlete))
        self._settle(change)
        return replace(change, undone_at=at)

    def take_back(self, change: Change, at: datetime) -> Change:
        """The change, out of force wherever it stands among the later ones: the message that made it says otherwise."""
        self._update(change, undone_at=at, undone_place=self._work.take_ids(change.athlete))
        self._settle(change)
        return replace(change, undone_at=at)

    def to_redo(self, athlete: AthleteId, *, by: AthleteId | None = None) -> Change | None:
        """The change of the latest undo; None when there is none or a new change came since."""
        row = self._work.connection.execute(LAST_UNDONE_BY, {"athlete": athlete, "by": by or athlete}).one_or_none()
        if row is None:
            return None
        newest = self._work.connection.execute(
            select(func.max(CHANGES.c.id)).where(CHANGES.c.athlete_id == athlete, STEP)
        ).scalar_one()
        return None if newest > row.undone_place else _change(row)

    def redo(self, athlete: AthleteId, *, by: AthleteId | None = None) -> Change | None:
        """The change of the latest undo, in force again; None when there is none or a new change came since."""
        undone = self.to_redo(athlete, by=by)
        if undone is None:
            return None
        self._work.take_ids(athlete)  # nothing is numbered by it, but her records are not the version they were
        change = replace(undone, undone_at=None)
        self._update(change, undone_at=None, undone_place=None)
        self._settle(change)
        return change

    def get(self, athlete: AthleteId, change: ChangeId) -> Change | None:
        """A change by its id."""
        row = self._work.connection.execute(CHANGE.where(CHANGES.c.id == change), {"athlete": athlete}).one_or_none()
        return None if row is None else _change(row)

    def latest(self, athlete: AthleteId, count: int = 1) -> tuple[Change, ...]:
        """The last changes in force, newest first, whoever made them."""
        query = CHANGE.where(CHANGES.c.undone_place.is_(None)).order_by(CHANGES.c.id.desc()).limit(count)
        return tuple(_change(row) for row in self._work.connection.execute(query, {"athlete": athlete}))

    def in_force(self, athlete: AthleteId, kind: ChangeKind) -> tuple[Change, ...]:
        """The changes of one kind that are in force, oldest first."""
        query = CHANGE.where(CHANGES.c.undone_place.is_(None), CHANGES.c.kind == kind.value).order_by(CHANGES.c.id)
        return tuple(_change(row) for row in self._work.connection.execute(query, {"athlete": athlete}))

    def of_inbound(self, athlete: AthleteId, inbound: int) -> tuple[Change, ...]:
        """The changes that one inbound message made, oldest first, in force or undone."""
        query = CHANGE.where(CHANGES.c.inbound == inbound).order_by(CHANGES.c.id)
        return tuple(_change(row) for row in self._work.connection.execute(query, {"athlete": athlete}))

    def touched(self, change: Change) -> Touched:
        """The sets that a change added and removed, in the order of the log; those it did both to are left out."""
        return Touched(self._sets(change, "added_by", "removed_by"), self._sets(change, "removed_by", "added_by"))

    def _sets(self, change: Change, column: str, other: str) -> tuple[Any, ...]:
        query = (
            select(*SET_COLUMNS)
            .where(SETS.c.athlete_id == change.athlete, SETS.c[column] == change.id)
            .where(or_(SETS.c[other].is_(None), SETS.c[other] != change.id))
            .order_by(SETS.c.place, SETS.c.id)
        )
        return tuple(set_record(row) for row in self._work.connection.execute(query))

    def _update(self, change: Change, **values: Any) -> None:
        self._work.connection.execute(
            update(CHANGES).where(CHANGES.c.athlete_id == change.athlete, CHANGES.c.id == change.id).values(values)
        )

    def _settle(self, change: Change) -> None:
        """Work out anew which of the facts that a change touched stand."""
        for settle in SETTLE:
            self._work.connection.execute(settle, {"athlete": change.athlete, "touched_by": change.id})


def _change(row: Row[Any]) -> Change:
    return Change(
        id=ChangeId(row.id),
        athlete=AthleteId(row.athlete_id),
        by=AthleteId(row.by),
        kind=ChangeKind(row.kind),
        label=row.label,
        at=row.at,
        inbound=row.inbound,
        undone_at=row.undone_at,
    )
