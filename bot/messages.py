"""What comes in from a chat and what goes out to one, in no platform's terms."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from datetime import datetime
from enum import Enum
from typing import Any


class InboundKind(Enum):
    MESSAGE = "message"
    EDIT = "edit"
    TAP = "tap"
    DOCUMENT = "document"
    GONE = "gone"  # the person blocked the bot
    BACK = "back"  # and came back


@dataclass(frozen=True, slots=True)
class Document:
    """A file a person sent. `content` None: not fetched; `trouble` says why it never will be, in words for the person.

    `reference` is where the platform keeps a file that is still to be fetched.
    """

    name: str
    content: bytes | None
    trouble: str = ""
    reference: str = ""


@dataclass(frozen=True, slots=True)
class Inbound:
    """One thing a person did.

    `key` is unique for the event at its source: the same event delivered again carries the same key.
    `message` is the id of the person's message (for an edit, of the message edited), or for a tap the id that the
    platform gave the bot's message whose button was tapped. `text` is the words, or for a tap the button's data.
    """

    source: str
    chat: int
    key: str
    kind: InboundKind
    message: int
    text: str
    at: datetime
    name: str = ""
    document: Document | None = None


@dataclass(frozen=True, slots=True)
class Button:
    """A tap that saves typing. `data` travels through the platform: ASCII, at most 32 bytes."""

    label: str
    data: str

    def __post_init__(self) -> None:
        if not (self.data.isascii() and 0 < len(self.data) <= 32):
            raise ValueError(f"button data must be 1 to 32 ASCII bytes, got {self.data!r}")
        if not 0 < len(self.label) <= 40:
            raise ValueError(f"button label must be 1 to 40 characters, got {self.label!r}")


class OutgoingKind(Enum):
    SEND = "send"
    EDIT = "edit"
    REACT = "react"


@dataclass(frozen=True, slots=True)
class Attachment:
    """A file that goes out; `picture` shows it in the chat instead of offering it for download."""

    name: str
    content: bytes
    picture: bool = False


@dataclass(frozen=True, slots=True)
class Outgoing:
    """One message, edit or reaction to one chat.

    `edits` is the outbox id of the message an edit changes; `message` the person's message that a reaction marks.
    `text` is plain words: the platform adapter escapes them. `prescribes` and `volume` are the machine-readable
    side of what the text states, in the shape of the replay contract. `reply` marks an answer to a live message: it
    goes out before anything unprompted.
    """

    kind: OutgoingKind
    text: str = ""
    buttons: Sequence[Sequence[Button]] = ()
    edits: int | None = None
    message: int | None = None
    silent: bool = False
    reply: bool = True
    attachment: Attachment | None = None
    prescribes: Sequence[Mapping[str, Any]] = ()
    volume: Mapping[str, Any] = field(default_factory=dict)
