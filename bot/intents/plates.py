"""plates 102.5: what to put on each side of the bar; and the nearest that can be loaded where that cannot."""

from __future__ import annotations

import re
from decimal import Decimal

from bot.replies.loading import no_bar, plates_card
from bot.replies.trouble import needs
from bot.sessions import session_of
from bot.turn import Turn
from engine.loading.gym import default_gym
from engine.loading.gym_words import read_gym
from engine.loading.plates import plates_for
from engine.reading.values import Act
from engine.values.exercise import Equipment, Loading
from engine.values.load import Load, Unit

MASS = re.compile(r"(\d{1,4}(?:[.,]\d{1,3})?)\s*(kg|lb)?", re.IGNORECASE)


def plates(turn: Turn, act: Act) -> None:
    """Nothing; the plates for a side are said."""
    target = _target(turn, act)
    if target is None:
        turn.say(needs("a load", "plates 102.5"))
        return
    gym = read_gym(turn.preferences.gym, turn.unit).gym if turn.preferences.gym else default_gym(turn.unit)
    bar = gym.bar(_equipment(turn, act))
    turn.say(no_bar() if bar is None else plates_card(target, bar.empty(), plates_for(target, bar, gym.plates)))


def _equipment(turn: Turn, act: Act) -> Equipment:
    name = act.exercise or session_of(turn).latest_exercise
    exercise = turn.catalogue.get(name) if name else None
    return exercise.equipment if exercise is not None and exercise.loading is Loading.BAR else Equipment.BARBELL


def _target(turn: Turn, act: Act) -> Load | None:
    """The load told, else that of the next set."""
    found = MASS.search(act.text)
    if found is not None:
        unit = Unit(found[2].casefold()) if found[2] else turn.unit
        return Load(Decimal(found[1].replace(",", ".")), unit)
    following = session_of(turn).next_up()
    return following.rest[0].load if following is not None else None
