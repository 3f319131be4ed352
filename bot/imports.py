"""Old logs taken over from a document, shown for approval before anything is recorded."""

from __future__ import annotations

from bot.turn import Turn
from engine.plan.text import ParsedPlan
from storage.records import Question

IMPORT = "import"


def received(turn: Turn, name: str, content: bytes, parsed: ParsedPlan) -> bool:
    """Whether the document was an old log."""
    return False


def answered(turn: Turn, question: Question, text: str) -> bool:
    """Whether the words approved or declined an old log."""
    return False
