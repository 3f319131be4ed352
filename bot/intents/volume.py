"""volume: this week's sets, or last week's, for each muscle against target; or for one muscle where it is named."""

from __future__ import annotations

from bot.coachs_clients import asked_about
from bot.intents.week import day_of
from bot.replies.week import volume_card
from bot.turn import Turn
from bot.weeks import week_of
from engine.reading.values import Act
from engine.values.muscles import Muscle


def volume(turn: Turn, act: Act) -> None:
    """Nothing; the sets for each muscle are said."""
    person, text = asked_about(turn, act.text)
    on = day_of(turn, act)
    turn.say(volume_card(week_of(turn.store, turn.memory, person, on), muscle_named(text), on == turn.today))


def muscle_named(text: str) -> Muscle | None:
    """The muscle that the words name, or None."""
    said = text.casefold()
    named = [muscle for muscle in Muscle if muscle.value in said]
    return max(named, key=lambda muscle: len(muscle.value), default=None)
