"""A load that was changed on the way, told with the sets it was changed for: "dropped to 80 on the last".

message = MOVED ( NUMBER place | place [ "to" ] NUMBER )      the cue is left out: "80 on the last", "the last at 80"
"""

from __future__ import annotations

import re

from engine.catalogue.catalogue import Catalogue
from engine.reading.prepare import Prepared, prepare
from engine.reading.values import Context
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import MOST_WORDS_OF_A_PHRASE, phrasebook, spoken_words

PLACES = frozenset((K.LAST, K.FIRST, K.ORDINAL, K.MIDDLE, K.FROM_LAST, K.SETS))
NO_MOVE = frozenset((K.NAME, K.TIMES, K.COUNT, K.QUESTION, K.LINE, K.OTHERS, K.PLANNED))
LONGEST = 14
TO_A_LOAD = re.compile(r"\s(?:to|at|with)\s(?=[\d.,]+\s?(?:kgs?|lbs?)?\s*[.!]?$)", re.IGNORECASE)


def without_move(prepared: Prepared, context: Context, catalogue: Catalogue) -> Prepared | None:
    """The message without the words that say how its load came about; None where it begins with none."""
    told = prepared.told
    if told.isdisjoint(PLACES) or not told.isdisjoint(NO_MOVE) or K.NUMBER not in told:
        return None
    words = spoken_words(prepared.tokens)
    cues = phrasebook().cues["loadmoved"]
    for length in range(min(MOST_WORDS_OF_A_PHRASE, len(words) - 1), 0, -1):
        if len(words) <= LONGEST and " ".join([word for word, _ in words[:length]]) in cues:
            rest = prepared.cleaned[words[length][1].start :]
            return prepare(TO_A_LOAD.sub(" at ", rest), context, catalogue)
    return None
