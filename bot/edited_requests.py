"""An edited message that asked for something: what it did is taken back, before its new words are read.

"skip squat" edited to "skip row" leaves only the row out. Reminders and rests that it planned go too.
"""

from __future__ import annotations

from collections.abc import Sequence

from bot.scheduled.once import ONCE, SNOOZED
from bot.scheduled.rest_over import REST
from bot.steps import settled
from bot.turn import Turn
from storage.records import Change, ChangeKind

REQUESTS = (
    ChangeKind.SKIP,
    ChangeKind.SWAP,
    ChangeKind.RESCHEDULE,
    ChangeKind.BODY_WEIGHT,
    ChangeKind.SETTING,
    ChangeKind.TEACH,
    ChangeKind.EXERCISE,
)
SINGLE = (ONCE, SNOOZED, REST)
"""Messages planned one by one: their due rows carry the event they came from."""


def made(turn: Turn) -> bool:
    """Whether the edited message asked for something that is still in force."""
    return bool(_changes(turn) or _planned(turn))


def take_back(turn: Turn) -> Sequence[str]:
    """What was taken back, in the words of undo."""
    labels = []
    for change in _changes(turn):
        settled(turn, turn.store.changes.take_back(change, turn.at))
        labels.append(change.label)
    for kind in _planned(turn):
        turn.store.due.cancel(turn.athlete, kind)
        labels.append("the rest" if kind.startswith(REST) else "the reminder")
    turn.forget_lookups()
    return labels


def _events(turn: Turn) -> Sequence[int]:
    versions = turn.store.inbox.of_message(turn.inbound.source, turn.inbound.chat, turn.inbound.message)
    return [version.id for version in versions if version.id != turn.event]


def _changes(turn: Turn) -> Sequence[Change]:
    """The changes in force that the message made, the latest first."""
    done = [change for event in _events(turn) for change in turn.store.changes.of_inbound(turn.athlete, event)]
    return [one for one in reversed(done) if one.undone_at is None and one.kind in REQUESTS]


def _planned(turn: Turn) -> Sequence[str]:
    events = {str(event) for event in _events(turn)}
    waiting = (due.kind.partition(" ") for due in turn.store.due.planned(turn.athlete))
    return [f"{name} {event}" for name, _, event in waiting if name in SINGLE and event in events]
