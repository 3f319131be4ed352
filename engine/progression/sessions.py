"""From the log and the plan's days to today's session, all of it pure: the one place to import it from.

assign       the log's dates to the plan's days                 (assignment.py)
due_on       the days to do on a date                           (due.py)
exposures    what a slot's rule folds over                      (exposures.py)
session_for  what each slot of a day asks for today             (today.py)
change_since what is heavier or lighter than last time          (change.py)
progress     what is done of it, and the set that is next       (inside.py)
"""

from engine.progression.assignment import SessionDone, assign
from engine.progression.change import Change, change_since
from engine.progression.choices import Choices, Skip, Swap
from engine.progression.due import due_on, next_in_order, slots_done
from engine.progression.exposures import exposures
from engine.progression.inside import NextSet, Progress, SlotProgress, progress
from engine.progression.today import Athlete, SlotToday, latest_sets, session_for
from engine.progression.two_for_two import taken

__all__ = [
    "Athlete",
    "Change",
    "Choices",
    "NextSet",
    "Progress",
    "SessionDone",
    "Skip",
    "SlotProgress",
    "SlotToday",
    "Swap",
    "assign",
    "change_since",
    "due_on",
    "exposures",
    "latest_sets",
    "next_in_order",
    "progress",
    "session_for",
    "slots_done",
    "taken",
]
