"""The latest step of a person: in her own records or, where a coach acted, in those of a client."""

from __future__ import annotations

from collections.abc import Callable

from bot.coachs_clients import clients_of
from bot.preferences import preferences
from bot.replies.coaching import changed_again
from bot.schedule import follow, plan_person
from bot.sessions import forget_plan
from bot.turn import Turn
from engine.values.ids import AthleteId
from storage.records import Change


def latest_undoable(turn: Turn) -> Change | None:
    """What undo takes back: the latest step still in force."""
    found = _of_each(turn, lambda whose: turn.store.changes.to_undo(whose, by=turn.athlete))
    return max(found, key=lambda change: change.at, default=None)


def latest_undone(turn: Turn) -> Change | None:
    """What redo brings back: the step of the latest undo."""
    found = _of_each(turn, lambda whose: turn.store.changes.to_redo(whose, by=turn.athlete))
    return max(found, key=lambda change: change.undone_at or change.at, default=None)


def _of_each(turn: Turn, find: Callable[[AthleteId], Change | None]) -> list[Change]:
    people = (turn.athlete, *(client.id for client in clients_of(turn)))
    return [change for change in map(find, people) if change is not None]


def settled(turn: Turn, change: Change) -> None:
    """Nothing; what followed from a step undone or redone is worked out anew, and a client is told."""
    forget_plan(turn)
    follow(turn, change)
    if change.athlete == turn.athlete:
        return
    own = preferences(turn.store.settings.all(change.athlete), turn.default_zone)
    plan_person(turn.store, turn.memory, turn.store.people.get(change.athlete), own, turn.at)
    turn.tell(change.athlete, changed_again(turn.me.name, change.label, undone=change.undone_at is not None))
