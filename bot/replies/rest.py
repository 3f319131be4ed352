"""Rest between sets."""

from __future__ import annotations

from datetime import datetime

from bot.messages import Button
from bot.replies.dates import clock
from bot.replies.receipt import Following, following_text
from bot.replies.reply import Reply, row
from bot.replies.session import rest_text
from bot.replies.structured import prescription_json
from engine.values.ids import ExerciseName


def resting(seconds: int, until: datetime) -> Reply:
    """When the rest ends."""
    return Reply(f"Rest {rest_text(seconds)}, until {clock(until)}.", row(Button("Stop", "v1:rest-stop")))


def stopped(*, ran: bool = True, lifts_left: bool = False) -> Reply:
    """No rest is running any more, or none was; `lifts_left`: "skip the rest" may have been of the rest of the day."""
    if ran:
        return Reply("Rest stopped.")
    hint = "To leave out what is left of today: skip today" if lifts_left else "To start one: rest 2 min"
    return Reply(f"No rest is running. Nothing changed. {hint}")


def over(following: Following | None, in_hand: ExerciseName | None) -> Reply:
    """The rest is over; the next set."""
    if following is None:
        return Reply("Rest over.")
    prescribes = [prescription_json(following.prescription)]
    return Reply(f"Rest over. {following_text(following, in_hand)}", prescribes=prescribes)
