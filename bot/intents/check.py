"""check: what is worth a look in the plan in force; check 60 min, check with dumbbells, check without cables."""

from __future__ import annotations

import re

from bot.replies.plans import findings, how_to
from bot.sessions import session_of
from bot.turn import Turn
from engine.plan.check import LONG_SESSION_MINUTES, check_plan
from engine.plan.text import parse_plan
from engine.reading.values import Act
from engine.values.exercise import Equipment

MINUTES = re.compile(r"\b(\d{2,3})\s*(?:min|mins|minutes)\b", re.IGNORECASE)
WITHOUT = re.compile(r"\b(?:without|no|except|but)\b", re.IGNORECASE)
OTHER_WORDS = {"bar": Equipment.BARBELL, "bodyweight": Equipment.BODY_WEIGHT, "smith": Equipment.SMITH_MACHINE}


def check(turn: Turn, act: Act) -> None:
    """Nothing; the findings are said, each with its line and a remedy."""
    in_force = session_of(turn).in_force
    if in_force is None:
        turn.say(how_to())
        return
    parsed = parse_plan(in_force.stored.text, turn.catalogue, turn.unit)
    minutes = MINUTES.search(act.text)
    found = check_plan(
        in_force.plan,
        turn.catalogue,
        lines=dict(parsed.slot_lines),
        equipment=equipment_named(act.text),
        minutes=int(minutes[1]) if minutes else LONG_SESSION_MINUTES,
    )
    turn.say(findings(in_force.plan, found))


def equipment_named(text: str) -> frozenset[Equipment] | None:
    """What there is to train with, by the words: what is named, or all but that; None where nothing is named."""
    said = text.casefold()
    words = {one.value: one for one in Equipment} | OTHER_WORDS
    named = frozenset(one for word, one in words.items() if re.search(rf"\b{word}s?\b", said))
    if not named:
        return None
    if WITHOUT.search(said):
        return frozenset(Equipment) - named
    return named | {Equipment.BODY_WEIGHT}
