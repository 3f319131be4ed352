"""What sounds like a correction and is none: a set that was left out, and words that come days after the sets.

addition = slip { slip } ADDS ... whole set        "oh and a back off set 70x8", "wait, also 70x8", "oops forgot 70x8"
"""

from __future__ import annotations

from datetime import timedelta

from engine.reading.days.day_starts import DATE_KINDS
from engine.reading.prepare import Prepared
from engine.reading.values import Context
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook, spoken_words

MOST_SLIPS = 3
JUST_DONE = timedelta(days=1)
"""A bare "at 60" days later speaks of no set: lifts and days that are named do. Common practice, no source."""
NAMING = DATE_KINDS | {K.NAME, K.HEADING}


def adds_a_set(prepared: Prepared) -> bool:
    """Whether a whole set is told behind a slip and a word that adds it."""
    if K.TIMES not in prepared.told or K.NOT in prepared.told:
        return False
    cues = phrasebook().cues
    words = [word for word, _ in spoken_words(prepared.tokens[: MOST_SLIPS * 2 + 1])]
    for at, word in enumerate(words[: MOST_SLIPS + 1]):
        if word in cues["addsmore"]:
            return at > 0 or word in cues["leftbehind"]
        if word not in cues["slip"]:
            return False
    return False


def is_long_ago(prepared: Prepared, context: Context) -> bool:
    """Whether the latest sets are of days ago, and neither a lift nor a day is named."""
    if not context.recent or context.now is None or context.now.date() - context.recent[-1].on <= JUST_DONE:
        return False
    return prepared.told.isdisjoint(NAMING)
