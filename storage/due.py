"""What is due for whom and when, each once for its kind and local day: the row is also the ledger of what was done."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date, datetime, timedelta
from typing import Any

from engine.values.ids import AthleteId
from storage.records import Due
from storage.work import Work


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
        """Whether it is planned now: False when it was done (or cancelled as too late) for that local day before.

        Planned again before it is done, the new instant and payload replace the old.
        """
        raise NotImplementedError

    def cancel(self, athlete: AthleteId, kind: str | None = None) -> int:
        """How many rows waited and are gone, of one kind or of all."""
        raise NotImplementedError

    def planned(self, athlete: AthleteId, kind: str | None = None) -> tuple[Due, ...]:
        """What waits for a person, soonest first."""
        raise NotImplementedError

    def was_done(self, athlete: AthleteId, kind: str, local_date: date) -> bool:
        """Whether it was done for that local day."""
        raise NotImplementedError

    def claim(self, now: datetime, *, limit: int = 50, lease: timedelta) -> tuple[Due, ...]:
        """What is due now, soonest first; no other worker gets it until the lease ends. Commit before working on it."""
        raise NotImplementedError

    def take(self, due: Due) -> bool:
        """Whether a claimed row still waits, locked until the transaction ends: do the work and mark it done in it."""
        raise NotImplementedError

    def done(self, due: Due, at: datetime) -> None:
        """Nothing; it is done for its local day and can never be planned for it again."""
        raise NotImplementedError

    def skip(self, due: Due, at: datetime) -> None:
        """Nothing; it came too late to be of use, and can never be planned for its local day again."""
        raise NotImplementedError

    def retry_at(self, due: Due, due_at: datetime) -> None:
        """Nothing; it will be due again then."""
        raise NotImplementedError

    def next_at(self) -> datetime | None:
        """When the soonest row is due; None when nothing waits."""
        raise NotImplementedError
