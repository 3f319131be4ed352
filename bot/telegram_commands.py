"""What Telegram shows of the bot before anyone types: its commands and its descriptions.

The list is what is shown, not what is allowed: rights are checked where a command is handled.
Source for the limits (command 32, description of a command 256, description 512, short description 120 characters):
Telegram Bot API, BotCommand, setMyDescription, setMyShortDescription.
"""

from __future__ import annotations

ATHLETE_COMMANDS = (
    ("today", "Today's session, or another day's: /today fri"),
    ("plan", "See your plan, or send a new one"),
    ("undo", "Take back the last change"),
    ("week", "This week so far"),
    ("settings", "Unit, time zone, reminders, coach access"),
    ("privacy", "What is kept; export and delete"),
    ("help", "Examples of what to type"),
)
COACH_COMMANDS = (
    ("digest", "Your clients' week, those needing a look first"),
    ("clients", "List, invite, remove"),
    ("plan", "See or replace a client's plan"),
    ("undo", "Take back the last change"),
    ("settings", "Unit, time zone, reminders"),
    ("privacy", "What is kept; export and delete"),
    ("help", "Examples of what to type"),
)

DESCRIPTION = (
    "Text me your sets, like row 3x12 55, and I answer with what to lift next and why. Send a plan as text, CSV or "
    "XLSX; a coach can follow along if you agree. I am a bot and give no medical advice: new to training, pregnant, "
    "injured or ill, ask a licensed professional first."
)
SHORT_DESCRIPTION = "Logs sets you text and answers with what to lift next and why."


def commands_for(*, athlete: bool, coach: bool) -> tuple[tuple[str, str], ...]:
    """The commands to show to someone in these roles; one in both sees both lists, the athlete's first."""
    shown = dict(ATHLETE_COMMANDS) if athlete else {}
    if coach:
        shown |= {name: does for name, does in COACH_COMMANDS if name not in shown}
    return tuple(shown.items())
