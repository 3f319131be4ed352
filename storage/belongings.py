"""Everything that belongs to one person: take it along as CSV or JSON, bring it back, or erase it.

JSON holds every row of every table, so that bringing it into an empty database gives an equal one.
"""

from __future__ import annotations

from collections.abc import Mapping

from engine.values.ids import AthleteId
from storage.work import Work


class Belongings:
    def __init__(self, work: Work) -> None:
        self._work = work

    def as_json(self, athlete: AthleteId) -> str:
        """All rows of a person, what she undid included."""
        raise NotImplementedError

    def as_csv(self, athlete: AthleteId) -> Mapping[str, str]:
        """File name to CSV text, for a spreadsheet: her standing sets, notes, body weights, plans."""
        raise NotImplementedError

    def bring_back(self, text: str) -> AthleteId:
        """The person whose rows `as_json` wrote, in this database again, with the same id where it is free.

        Errors: NotOurs for text that is no such export; PersonExists when the chat is known here.
        """
        raise NotImplementedError

    def erase(self, athlete: AthleteId) -> int:
        """How many rows of the person were deleted: every one, messages in and out included. There is no undo."""
        raise NotImplementedError
