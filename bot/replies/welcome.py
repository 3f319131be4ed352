"""First contact in words. Source of the screening advice: the general pattern of pre-participation screening (ACSM
2015 update): established disease, symptoms or a wish for hard effort go to a professional first. Wording ours."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime

from bot.messages import Button
from bot.replies.dates import clock
from bot.replies.reply import UNDO, Reply, row
from bot.replies.trouble import quoted
from engine.values.load import Unit

CAUTION = "Not medical advice. New to training, pregnant, injured or ill: ask a licensed professional first."


def hello(*, invited: bool = False) -> Reply:
    """Who the bot is, the cautions, and the first question; where a coach's invitation is the question, that alone."""
    intro = f"I'm a bot. Text me your sets; I say what to lift next and why.\n{CAUTION}"
    if invited:
        return Reply(intro)
    return Reply(
        f"{intro}\nWhich big city shares your clock? Or just start: row 3x12 55",
        row(Button("Skip", "v1:skip-zone")),
    )


def hello_again(unit: Unit) -> Reply:
    """For someone known already."""
    return Reply(f"Hello again. Bare numbers are {unit.value}. today shows your session, /help the rest.")


def cautions() -> Reply:
    """The cautions alone, after first words that were no /start."""
    return Reply(f"I'm a bot, hello. {CAUTION} /help shows what I read, /privacy what I keep.")


def ask_unit() -> Reply:
    """Which unit bare numbers are in."""
    return Reply("Which unit do you lift in?", row(Button("kg", "v1:first-unit:kg"), Button("lb", "v1:first-unit:lb")))


def zone_is(zone: str, now: datetime) -> Reply:
    """The zone, shown by its local time so that a wrong one is seen."""
    return Reply(f"Your clock: {zone}, now {clock(now)}. Wrong? Send: zone London", row(UNDO))


def zone_which(zones: Sequence[str], now: datetime) -> Reply:
    """Several zones go by that name; the first was taken, and the local time shows whether it is hers."""
    others = ", ".join(zone.rsplit("/", 1)[-1].replace("_", " ") for zone in zones[1:4])
    return Reply(f"Your clock: {zones[0]}, now {clock(now)}. If that is off, send: zone and one of {others}", row(UNDO))


def zone_unknown(text: str) -> Reply:
    """No zone by that name."""
    return Reply(
        f"I know no clock named {quoted(text)}. Nothing changed. Send a capital or big city nearby, like London, "
        "or skip: sets work without it.",
        row(Button("Skip", "v1:skip-zone")),
    )


def ready(unit: Unit) -> Reply:
    """All set."""
    return Reply(
        f"Ready, in {unit.value}. Send your plan as text or a file, or just type a set:\nrow 3x12 55\n"
        "/help has examples, /privacy what I keep."
    )
