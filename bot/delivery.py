"""The seam to a chat platform: what can become of a message that goes out, what carries it, and what can be wrong."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Protocol

from bot.messages import Outgoing


@dataclass(frozen=True, slots=True)
class Delivered:
    """The platform took it; `message` is the id it gave (None for a reaction)."""

    message: int | None


@dataclass(frozen=True, slots=True)
class Blocked:
    """The person blocked the bot or closed the account: nothing more can reach this chat."""


@dataclass(frozen=True, slots=True)
class Refused:
    """The platform will never take this message."""

    why: str


@dataclass(frozen=True, slots=True)
class TryLater:
    """Worth another try after `seconds`: surely not delivered, or harmless to repeat.

    `everyone`: other messages would fare no better until then. `exact`: the platform named the time itself, so it is
    not stretched on repeats. `parts` of a long message that went out before need not go again.
    """

    why: str
    seconds: float
    everyone: bool = False
    exact: bool = False
    parts: int = 0


@dataclass(frozen=True, slots=True)
class Unsure:
    """It may or may not have arrived: nobody answered in time."""

    why: str


Outcome = Delivered | Blocked | Refused | TryLater | Unsure


@dataclass(frozen=True, slots=True)
class Parcel:
    """One outgoing message with all that a platform must know to carry it.

    `target` is the platform's id of the message that an edit changes; None: that message never got an id.
    `parts` of it went out in an earlier try.
    """

    chat: int
    outgoing: Outgoing
    target: int | None = None
    parts: int = 0


class WrongToken(Exception):
    """The platform knows no bot with this token."""


class OtherPoller(Exception):
    """Somebody else fetches this bot's updates."""


class OutOfReach(Exception):
    """The platform did not answer, or asked for a pause of `seconds`."""

    def __init__(self, why: str, seconds: float = 0.0) -> None:
        super().__init__(why)
        self.seconds = seconds


class Carrier(Protocol):
    """A chat platform, seen from the outbox."""

    async def deliver(self, parcel: Parcel) -> Outcome: ...
