"""One transaction's view of everything stored, topic by topic.

    with database.transaction() as store:
        person = store.people.find("telegram", 42)
        change = store.changes.begin(person.id, ChangeKind.SETS, "3 sets of bench press", at)
        store.sets.add(change, sets, on=day, at=at, message=7)
        store.outbox.add(person.id, outgoing, at, inbound=event.id)

All of it is committed when the block ends, none of it when the block raises. Nothing here reads a clock.
"""

from __future__ import annotations

from typing import Any

from storage.belongings import Belongings
from storage.broadcasts import Broadcasts
from storage.changes import Changes
from storage.coaching import Coaching
from storage.dialogue import LiftLines, Questions
from storage.diary import BodyWeights, Notes
from storage.due import DueRows
from storage.habits import Settings, Taught
from storage.inbox import Inbox
from storage.outbox import Outbox
from storage.people import People
from storage.planning import Choices, Plans
from storage.sets import Sets
from storage.work import Work


class Store:
    """The topics; each is described where its class is."""

    def __init__(self, work: Work) -> None:
        self.kept: dict[str, Any] = {}
        """What the user of this transaction looked up and need not look up again in it."""
        self.people = People(work)
        self.changes = Changes(work)
        self.sets = Sets(work)
        self.notes = Notes(work)
        self.body_weights = BodyWeights(work)
        self.plans = Plans(work)
        self.choices = Choices(work)
        self.settings = Settings(work)
        self.taught = Taught(work)
        self.questions = Questions(work)
        self.lift_lines = LiftLines(work)
        self.coaching = Coaching(work)
        self.inbox = Inbox(work)
        self.outbox = Outbox(work)
        self.due = DueRows(work)
        self.broadcasts = Broadcasts(work)
        self.belongings = Belongings(work)
