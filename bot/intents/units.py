"""units lb: what a bare number means from now on; what stands keeps its unit."""

from __future__ import annotations

from bot.preferences import UNIT
from bot.replies.small import unit_is, unit_set
from bot.turn import Turn
from bot.words import UNIT_WORDS
from engine.reading.values import Act
from engine.values.load import Unit
from storage.records import ChangeKind


def units(turn: Turn, act: Act) -> None:
    """Nothing; later bare numbers are in this unit."""
    named = [UNIT_WORDS[word] for word in act.text.casefold().replace(",", " ").split() if word in UNIT_WORDS]
    if not named:
        turn.say(unit_is(turn.unit))
        return
    set_unit(turn, named[0])


def set_unit(turn: Turn, unit: Unit) -> None:
    """Nothing; the setting is changed and said."""
    change = turn.begin(ChangeKind.SETTING, f"units {unit.value}")
    turn.store.settings.put(change, UNIT, unit.value)
    turn.forget_lookups()
    turn.say(unit_set(unit))
