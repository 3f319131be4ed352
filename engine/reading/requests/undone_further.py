"""One step more taken back: "undo that one too", "undo again", and behind an undo "and the one before", "that one too".

further = ( UNDO | ERASE ) POINTING ... FURTHER | POINTING ... "too" | "and" POINTING ... FOREGOING

"Undo undo" is one step back, told over; behind an undo it is the undo undone.

Without a word for undoing, and with one that deletes, it must come behind an undo: else it is of some set, or of none.
"Again" alone may be one more set there: it is asked.
"""

from __future__ import annotations

from engine.reading.prepare import Prepared
from engine.reading.requests.part_read import UNCLEAR
from engine.reading.values import Act, Context
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook, spoken_words

LONGEST, MOST_TOLD_OVER = 9, 3
STEPS = frozenset(("undo", "redo"))
UNDO, ERASE, REDO = "undoverb", "erasing", "redoverb"
FURTHER, FOREGOING, POINTING, BESIDE = "undofurther", "undoforegoing", "undopointing", "undobeside"
LEADS, TOO = "undoleads", "undotoo"
AGAIN = "again may be one more undo or one more set: send undo, or same"


def undone_further(prepared: Prepared, context: Context) -> Act | None:
    """The request to take one step more back, or to bring one more back; None where the message makes none."""
    if not OF_SETS.isdisjoint(prepared.told):
        return None
    words = [word for word, _ in spoken_words(prepared.tokens[: LONGEST + 1])]
    if not words or len(words) > LONGEST or len(prepared.tokens) > LONGEST + 1:
        return None
    if 1 < len(words) <= MOST_TOLD_OVER and len(set(words)) == 1 and not context.undone:
        name = phrasebook().said.get(words[0], "")
        return Act(name) if name in STEPS else None
    cues = phrasebook().cues
    told = {
        name for name in (UNDO, ERASE, REDO, FURTHER, FOREGOING, POINTING, LEADS) if not cues[name].isdisjoint(words)
    }
    if not told & {FURTHER, FOREGOING} or not all(any(word in cues[name] for name in KNOWN) for word in words):
        return None
    if told & {UNDO, REDO}:
        return _stepping(told, context)
    if not context.undone:
        return None
    if ERASE in told or (POINTING in told and _goes_on(words, told)):
        return Act("undo", count=1)
    return Act(UNCLEAR, text=AGAIN) if told == {FURTHER} else None


OF_SETS = frozenset((K.NAME, K.TIMES))
"""Kinds that no such request holds; most messages do."""
KNOWN = (UNDO, ERASE, REDO, FURTHER, FOREGOING, POINTING, LEADS, BESIDE)


def _stepping(told: set[str], context: Context) -> Act | None:
    """ "undo again", "redo that one too"; "undo the one before" goes on only where something was just undone."""
    if FURTHER not in told and not context.undone:
        return None
    if FOREGOING in told and not context.undone:
        return None  # of the set before the last
    if REDO in told:
        return Act("redo")
    return Act("undo", count=1 if context.undone else None)


def _goes_on(words: list[str], told: set[str]) -> bool:
    """ "that one too", "and the one before", and no "one more", which is a set."""
    return not phrasebook().cues[TOO].isdisjoint(words) or (FOREGOING in told and LEADS in told)
