"""resume: ends a pause."""

from __future__ import annotations

from bot.preferences import PAUSED_FROM, PAUSED_UNTIL
from bot.replies.reminders import not_paused, resumed
from bot.schedule import plan_person
from bot.turn import Turn
from engine.reading.values import Act
from storage.records import ChangeKind


def resume(turn: Turn, act: Act) -> None:
    """Nothing; reminders and summaries go on."""
    if turn.preferences.paused_until is None:
        turn.say(not_paused())  # no change, so that undo still takes back the last set
        return
    change = turn.begin(ChangeKind.SETTING, "ending the pause")
    turn.store.settings.clear(change, PAUSED_UNTIL)
    if turn.preferences.paused_from is not None:
        turn.store.settings.clear(change, PAUSED_FROM)
    turn.forget_lookups()
    plan_person(turn.store, turn.memory, turn.me, turn.preferences, turn.at)
    turn.say(resumed())
