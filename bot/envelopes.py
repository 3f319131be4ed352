"""Messages to the primitive rows that the inbox and the outbox keep, and back.

Both directions lose nothing: a message unwrapped again equals the one that was wrapped (a property test holds it).
"""

from __future__ import annotations

from typing import Any

from bot.messages import Attachment, Button, Document, Inbound, InboundKind, Outgoing, OutgoingKind
from storage.envelopes import Delivery, Lane, OutboxId, StoredInbound, StoredOutgoing


def wrap_inbound(inbound: Inbound, place: int = 0) -> StoredInbound:
    """The row for the inbox; `place` orders events of one chat where the platform numbers them."""
    document = inbound.document
    return StoredInbound(
        source=inbound.source,
        chat=inbound.chat,
        key=inbound.key,
        kind=inbound.kind.value,
        message=inbound.message,
        text=inbound.text,
        at=inbound.at,
        name=inbound.name,
        document_name=None if document is None else document.name,
        document=None if document is None else document.content,
        document_trouble="" if document is None else document.trouble,
        document_reference="" if document is None else document.reference,
        place=place,
    )


def unwrap_inbound(stored: StoredInbound) -> Inbound:
    """The event that was put into the inbox."""
    document = None
    if stored.document_name is not None:
        document = Document(stored.document_name, stored.document, stored.document_trouble, stored.document_reference)
    return Inbound(
        source=stored.source,
        chat=stored.chat,
        key=stored.key,
        kind=InboundKind(stored.kind),
        message=stored.message,
        text=stored.text,
        at=stored.at,
        name=stored.name,
        document=document,
    )


def wrap_outgoing(outgoing: Outgoing) -> StoredOutgoing:
    """The row for the outbox."""
    extras: dict[str, Any] = {}
    if outgoing.prescribes:
        extras["prescribes"] = [dict(each) for each in outgoing.prescribes]
    if outgoing.volume:
        extras["volume"] = dict(outgoing.volume)
    attachment = outgoing.attachment
    return StoredOutgoing(
        kind=outgoing.kind.value,
        text=outgoing.text,
        buttons=[[(button.label, button.data) for button in row] for row in outgoing.buttons],
        extras=extras,
        edits=None if outgoing.edits is None else OutboxId(outgoing.edits),
        message=outgoing.message,
        silent=outgoing.silent,
        attachment_name=None if attachment is None else attachment.name,
        attachment=None if attachment is None else attachment.content,
        attachment_is_picture=attachment is not None and attachment.picture,
    )


def lane_of(outgoing: Outgoing) -> Lane:
    """Answers go before anything unprompted."""
    return Lane.REPLY if outgoing.reply else Lane.UNPROMPTED


def unwrap_outgoing(delivery: Delivery) -> Outgoing:
    """The message that was put into the outbox."""
    stored = delivery.outgoing
    attachment = None
    if stored.attachment_name is not None and stored.attachment is not None:
        attachment = Attachment(stored.attachment_name, stored.attachment, stored.attachment_is_picture)
    return Outgoing(
        kind=OutgoingKind(stored.kind),
        text=stored.text,
        buttons=tuple(tuple(Button(label, data) for label, data in row) for row in stored.buttons),
        edits=stored.edits,
        message=stored.message,
        silent=stored.silent,
        reply=delivery.lane is Lane.REPLY,
        attachment=attachment,
        prescribes=tuple(stored.extras.get("prescribes", ())),
        volume=stored.extras.get("volume", {}),
    )
