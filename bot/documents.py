"""A document: a plan, or an old log; shown before anything is taken over."""

from __future__ import annotations

from bot.planning import receive_document
from bot.replies.trouble import document_trouble
from bot.turn import Turn


def received(turn: Turn) -> None:
    """Nothing; the document is read and answered."""
    document = turn.inbound.document
    if document is None or document.content is None:
        turn.say(document_trouble(document.name if document else "", document.trouble if document else ""))
        return
    receive_document(turn, document.name, document.content)
