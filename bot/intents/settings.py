"""settings: how things stand for her, and the words that change each."""

from __future__ import annotations

from bot import onboarding
from bot.preferences import DIGEST, REACTIONS, SUMMARY
from bot.replies.settings import Known, settings_card, switched
from bot.schedule import replan
from bot.turn import Turn
from engine.reading.values import Act
from storage.records import ChangeKind

SWITCHES = {"summary": SUMMARY, "digest": DIGEST, "reactions": REACTIONS}
ON, OFF = ("on", "yes", "start"), ("off", "no", "stop")


def settings(turn: Turn, act: Act) -> None:
    """Nothing; the settings are shown, or the one named is changed."""
    words = act.text.casefold().split()
    if words and words[0] == "zone":
        onboarding.set_zone(turn, act.text.split(" ", 1)[1] if " " in act.text else "")
    elif len(words) >= 2 and words[0] in SWITCHES and (words[1] in ON or words[1] in OFF):
        _switch(turn, words[0], words[1] in ON)
    else:
        turn.say(settings_card(_known(turn)))


def _switch(turn: Turn, name: str, on: bool) -> None:
    change = turn.begin(ChangeKind.SETTING, f"{name} {'on' if on else 'off'}")
    turn.store.settings.put(change, SWITCHES[name], on)
    replan(turn)
    turn.say(switched(name, on))


def _known(turn: Turn) -> Known:
    own = turn.preferences
    coaches = [turn.store.people.get(link.coach).name for link in turn.store.coaching.coaches(turn.athlete)]
    settled = [(one.term, one.answer) for one in turn.store.taught.settled(turn.athlete)]
    settled += list(turn.store.taught.shorthands(turn.athlete).items())
    return Known(own, turn.now, coaches, settled)
