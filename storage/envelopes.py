"""What waits in the inbox and the outbox, in primitive fields: storage knows no chat and no bot type."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from datetime import datetime
from enum import Enum
from typing import Any, NewType

from engine.values.ids import AthleteId

InboundId = NewType("InboundId", int)
OutboxId = NewType("OutboxId", int)
"""Unique over the whole database, so that an edit can name the message it changes."""


SEND, EDIT, REACT = "send", "edit", "react"
"""The kinds of outgoing message."""


BESIDE = "beside"
"""The key, among what an outgoing message carries beside its text, of the people whose records it tells together."""

TAP = "tap"
"""The kind of inbound event whose `message` is one of the bot's."""


class InboundState(Enum):
    NEW = "new"
    DONE = "done"
    FAILED = "failed"


@dataclass(frozen=True, slots=True)
class StoredInbound:
    """One event from a chat. `key` is unique at its `source`.

    `place` orders events of one chat where the platform numbers them (an update id); 0: order of arrival.
    `document_reference` is where the platform keeps a document whose content is still to be fetched.
    `id`, `state`, `error` are storage's; leave them at their defaults when putting.
    """

    source: str
    chat: int
    key: str
    kind: str
    message: int
    text: str
    at: datetime
    name: str = ""
    document_name: str | None = None
    document: bytes | None = None
    document_trouble: str = ""
    document_reference: str = ""
    place: int = 0
    id: InboundId = InboundId(0)
    state: InboundState = InboundState.NEW
    error: str = ""


class Lane(Enum):
    """Replies overtake what nobody asked for; broadcasts come last."""

    REPLY = 0
    UNPROMPTED = 1
    BROADCAST = 2


class OutboxState(Enum):
    NEW = "new"
    SENDING = "sending"  # claimed until its lease ends
    SENT = "sent"
    UNKNOWN = "unknown"  # may have been delivered: never sent again
    FAILED = "failed"  # refused for good
    DROPPED = "dropped"  # the chat went away


@dataclass(frozen=True, slots=True)
class StoredOutgoing:
    """One message, edit or reaction: `kind` is SEND, EDIT or REACT.

    Shape: `buttons` is rows of (label, data); `extras` holds what is JSON-able beside the text (prescribes, volume).
    `edits` is the outbox id of the message changed, `message` the person's message that a reaction marks.
    """

    kind: str
    text: str = ""
    buttons: Sequence[Sequence[tuple[str, str]]] = ()
    extras: Mapping[str, Any] = field(default_factory=dict)
    edits: OutboxId | None = None
    message: int | None = None
    silent: bool = False
    attachment_name: str | None = None
    attachment: bytes | None = None
    attachment_is_picture: bool = False


@dataclass(frozen=True, slots=True)
class Delivery:
    """An outgoing message as it stands in the outbox.

    `platform_message` is the id the platform gave it once sent; `edits_platform_message` that of the message it edits
    (None: that one was never known to be sent, so send this as a new message).
    """

    id: OutboxId
    athlete: AthleteId
    source: str
    chat: int
    outgoing: StoredOutgoing
    lane: Lane
    state: OutboxState
    attempts: int
    at: datetime
    inbound: InboundId | None = None
    platform_message: int | None = None
    edits_platform_message: int | None = None
    sent_at: datetime | None = None
    error: str = ""
