"""Rows of the inbox and the outbox to values and back."""

from __future__ import annotations

from typing import Any

from sqlalchemy import Row, Select, select

from engine.values.ids import AthleteId
from storage.envelopes import (
    Delivery,
    InboundId,
    InboundState,
    Lane,
    OutboxId,
    OutboxState,
    StoredInbound,
    StoredOutgoing,
)
from storage.tables.queues import INBOUND, OUTBOX

_EDITED = OUTBOX.alias("edited")
DELIVERIES: Select[Any] = select(OUTBOX, _EDITED.c.platform_message.label("edits_platform_message")).outerjoin_from(
    OUTBOX, _EDITED, _EDITED.c.id == OUTBOX.c.edits
)
"""Outbox rows as `delivery` reads them."""


def sayable(text: str) -> str:
    """The text without what no database keeps: NUL characters and half surrogate pairs become replacement marks."""
    return text.replace("\x00", "\N{REPLACEMENT CHARACTER}").encode("utf-8", "replace").decode("utf-8")


def inbound_columns(event: StoredInbound) -> dict[str, Any]:
    """The columns of an event as it came."""
    return {
        "source": event.source,
        "key": event.key,
        "chat": event.chat,
        "kind": event.kind,
        "message": event.message,
        "text": sayable(event.text),
        "at": event.at,
        "name": sayable(event.name),
        "document_name": None if event.document_name is None else sayable(event.document_name),
        "document": event.document,
        "document_trouble": event.document_trouble,
        "document_reference": event.document_reference,
        "place": event.place,
        "state": InboundState.NEW.value,
        "error": "",
    }


def stored_inbound(row: Row[Any]) -> StoredInbound:
    """The event of an inbound row."""
    names = set(INBOUND.c.keys()) - {"athlete_id", "id", "state", "received_at", "handled_at", "document"}
    fields = {name: row._mapping[name] for name in names}
    return StoredInbound(
        **fields,
        document=row._mapping.get("document"),
        id=InboundId(row.id),
        state=InboundState(row.state),
    )


def outgoing_columns(outgoing: StoredOutgoing) -> dict[str, Any]:
    """The columns of what is to be sent."""
    return {
        "kind": outgoing.kind,
        "text": sayable(outgoing.text),
        "buttons": [[list(button) for button in line] for line in outgoing.buttons],
        "extras": dict(outgoing.extras),
        "edits": outgoing.edits,
        "message": outgoing.message,
        "silent": outgoing.silent,
        "attachment_name": outgoing.attachment_name,
        "attachment": outgoing.attachment,
        "attachment_is_picture": outgoing.attachment_is_picture,
    }


def delivery(row: Row[Any]) -> Delivery:
    """The delivery of a row of DELIVERIES."""
    outgoing = StoredOutgoing(
        kind=row.kind,
        text=row.text,
        buttons=tuple(tuple((label, data) for label, data in line) for line in row.buttons),
        extras=row.extras,
        edits=None if row.edits is None else OutboxId(row.edits),
        message=row.message,
        silent=row.silent,
        attachment_name=row.attachment_name,
        attachment=row.attachment,
        attachment_is_picture=row.attachment_is_picture,
    )
    return Delivery(
        id=OutboxId(row.id),
        athlete=AthleteId(row.athlete_id),
        source=row.source,
        chat=row.chat,
        outgoing=outgoing,
        lane=Lane(row.lane),
        state=OutboxState(row.state),
        attempts=row.attempts,
        at=row.at,
        inbound=None if row.inbound is None else InboundId(row.inbound),
        platform_message=row.platform_message,
        edits_platform_message=row.edits_platform_message,
        sent_at=row.sent_at,
        error=row.error,
    )
