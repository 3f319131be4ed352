"""What can become of a message that goes out, and what carries it: the seam between the outbox and a platform."""

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
    """Surely not delivered; worth another try after `seconds`. `flood`: the platform asked everyone to slow down."""

    seconds: float
    flood: bool = False


@dataclass(frozen=True, slots=True)
class Unsure:
    """It may or may not have arrived: nobody answered in time."""


Delivery = Delivered | Blocked | Refused | TryLater | Unsure


@dataclass(frozen=True, slots=True)
class Parcel:
    """One outgoing message with all that a platform must know to carry it.

    `target` is the platform's id of the message that an edit changes; None: that message never got an id.
    """

    chat: int
    outgoing: Outgoing
    target: int | None = None


class Carrier(Protocol):
    """A chat platform, seen from the outbox."""

    async def deliver(self, parcel: Parcel) -> Delivery: ...
