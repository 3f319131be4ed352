"""my gym: bar 15 kg; plates 20x2, 10, 5; dumbbells 2 - 30 by 2: what can be loaded, so that every target can be."""

from __future__ import annotations

from bot.preferences import GYM
from bot.replies.loading import gym_card, gym_set
from bot.sessions import forget_plan
from bot.turn import Turn
from engine.loading.gym import default_gym
from engine.loading.gym_words import gym_in_words, read_gym
from engine.reading.values import Act
from storage.records import ChangeKind


def gym(turn: Turn, act: Act) -> None:
    """Nothing; the gym is shown, or what was told of it is kept."""
    known = read_gym(turn.preferences.gym, turn.unit).gym if turn.preferences.gym else default_gym(turn.unit)
    told = act.text.strip(" :")
    if not told:
        turn.say(gym_card(gym_in_words(known)))
        return
    read = read_gym(told, turn.unit, known)
    if read.gym != known:
        change = turn.begin(ChangeKind.SETTING, "your gym")
        turn.store.settings.put(change, GYM, gym_in_words(read.gym))
        forget_plan(turn)
    turn.say(gym_set(gym_in_words(read.gym), read.problems, changed=read.gym != known))
