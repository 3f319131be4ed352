"""The tables. None of these classes leaves storage: `storage.mapping` and the topics turn rows into values.

Every table of a person's records leads with her id, in its columns and in its primary key, so that a distributed
database can keep all of one person in one place. Four tables are the directory and the queues around it: `person`,
`inbound`, `outbox` and `source` have ids over the whole database.
"""

from storage.tables.base import METADATA
from storage.tables.changes import CHANGES
from storage.tables.coaching import COACH_LINKS, INVITATIONS
from storage.tables.dialogue import LIFT_LINES, QUESTIONS
from storage.tables.due import DUE
from storage.tables.habits import OWN_EXERCISES, SETTINGS, SETTLED, SHORTHANDS
from storage.tables.log import BODY_WEIGHTS, NOTES, SETS
from storage.tables.people import PEOPLE
from storage.tables.planning import CHOICES, PLANS
from storage.tables.queues import BROADCASTS, INBOUND, OUTBOX, SOURCES

FACTS = (SETS, NOTES, BODY_WEIGHTS, PLANS, CHOICES, SETTINGS, SHORTHANDS, OWN_EXERCISES, SETTLED)
"""What undo and redo reach."""

__all__ = [
    "BODY_WEIGHTS",
    "BROADCASTS",
    "CHANGES",
    "CHOICES",
    "COACH_LINKS",
    "DUE",
    "FACTS",
    "INBOUND",
    "INVITATIONS",
    "LIFT_LINES",
    "METADATA",
    "NOTES",
    "OUTBOX",
    "OWN_EXERCISES",
    "PEOPLE",
    "PLANS",
    "QUESTIONS",
    "SETS",
    "SETTINGS",
    "SETTLED",
    "SHORTHANDS",
    "SOURCES",
]
