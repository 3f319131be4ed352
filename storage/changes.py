"""Changes, undo and redo: every fact names the change that added it and the one that removed it.

A fact stands while the change that added it is in force and none that removed it is. Undo takes one change out of
force, redo puts it back; no fact is ever deleted. An athlete undoes her own steps, a coach his own.
"""

from __future__ import annotations

from datetime import datetime

from engine.values.ids import AthleteId
from storage.records import Change, ChangeId, ChangeKind, Touched
from storage.work import Work


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

        Begin one only when facts will follow: an empty change is still one step of undo.
        `by` is whoever acts when that is not the athlete (her coach).
        """
        raise NotImplementedError

    def relabel(self, change: Change, label: str) -> Change:
        """The change with other words for undo to say."""
        raise NotImplementedError

    def undo(self, athlete: AthleteId, at: datetime, *, by: AthleteId | None = None) -> Change | None:
        """The latest change still in force, now undone; None when there is none."""
        raise NotImplementedError

    def redo(self, athlete: AthleteId, *, by: AthleteId | None = None) -> Change | None:
        """The change of the latest undo, in force again; None when there is none or a new change came since."""
        raise NotImplementedError

    def get(self, athlete: AthleteId, change: ChangeId) -> Change | None:
        """A change by its id."""
        raise NotImplementedError

    def latest(self, athlete: AthleteId, count: int = 1) -> tuple[Change, ...]:
        """The last changes in force, newest first, whoever made them."""
        raise NotImplementedError

    def of_inbound(self, athlete: AthleteId, inbound: int) -> tuple[Change, ...]:
        """The changes that one inbound message made, oldest first, in force or undone."""
        raise NotImplementedError

    def touched(self, change: Change) -> Touched:
        """The sets that a change added and removed, in the order of the log."""
        raise NotImplementedError
