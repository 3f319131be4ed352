"""/start: first contact, or an invitation accepted."""

from __future__ import annotations

from bot import onboarding, welcome
from bot.intents.accept import offer
from bot.replies.welcome import hello, hello_again
from bot.turn import Turn
from engine.reading.values import Act


def start(turn: Turn, act: Act) -> None:
    """Nothing; she is greeted, or asked for consent to a coach."""
    known = turn.preferences.welcomed
    if not known:
        welcome.mark(turn)
        if not act.text.strip():
            onboarding.ask_for(turn, onboarding.ASK_ZONE)
        turn.say(hello(invited=bool(act.text.strip())))
    elif not act.text.strip():
        turn.say(hello_again(turn.unit))
    if act.text.strip():
        offer(turn, act.text.strip())
