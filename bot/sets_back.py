"""Sets deleted in words and wanted back, and sets wanted away that are gone already.

"Undo" goes a step back, whatever it was; "delete it" speaks of the latest message's sets, and "put it back" of sets
that were deleted, also where no undo took them.
"""

from __future__ import annotations

from datetime import timedelta

from bot import steps, zones
from bot.replies.correction import changed_long_ago, deleted_already, nothing_left
from bot.replies.reply import Reply
from bot.turn import Turn
from bot.words import WORD
from engine.reading.words.cues import any_cued
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import spoken
from engine.reading.words.token_walk import KNOWN
from storage.records import Change, ChangeKind

ERASING = frozenset(("erasing",))
STEPPING = frozenset(("stepping",))
ANOTHER_SESSION = timedelta(hours=12)


def latest_deletion(turn: Turn) -> Change | None:
    """The latest step, where it took sets away in words lately."""
    step = steps.latest_undoable(turn)
    return step if step is not None and step.kind is ChangeKind.DELETE and not is_long_ago(turn, step) else None


def is_long_ago(turn: Turn, step: Change) -> bool:
    """Whether the step is of another session, so that "it" is hardly what it did."""
    return turn.at - step.at >= ANOTHER_SESSION


def asks_for_a_step(turn: Turn) -> bool:
    """Whether the message speaks of steps, "undo", "redo that", and not of sets."""
    return any_cued(_words(turn), STEPPING)


def gone_already(turn: Turn) -> Reply | None:
    """What is said to "delete it" where nothing of this session's latest message is left: undone or deleted already;
    and to "scrap the last set" where the latest step was of none: a body weight is no set.
    """
    words = _words(turn)
    step = steps.latest_undoable(turn)
    if any(_says_sets(word) for word in words) and (step is None or not _is_of_sets(turn, step)):
        return nothing_left(step.label if step is not None else "")
    if not any_cued(words, ERASING) or any_cued(words, STEPPING):
        return None
    if steps.latest_undone(turn) is not None:
        return nothing_left(step.label if step is not None else "")
    if step is None:
        return None
    if is_long_ago(turn, step):
        return changed_long_ago(step.label, zones.local(step.at, turn.preferences.zone).date(), turn.today)
    return deleted_already(step.label) if step.kind is ChangeKind.DELETE else None


def _says_sets(word: str) -> bool:
    meaning = KNOWN[word].meaning
    return meaning is not None and meaning.kind is K.SETS


def _is_of_sets(turn: Turn, step: Change) -> bool:
    touched = turn.store.changes.touched(step)
    return bool(touched.added or touched.removed)


def _words(turn: Turn) -> list[str]:
    return [spoken(word) for word in WORD.findall(turn.inbound.text.casefold())]
