"""Pain in words that are no message of sets: whether they tell of any, and whether it is of the whole day.

"barbell, and my elbow hurts" answers a question and tells of pain. "back is sore today", "shoulder hurts since
yesterday" speak of days and of no lift; "elbow hurts" in the midst of the sets is of the lift in hand.
"""

from __future__ import annotations

from engine.catalogue.catalogue import Catalogue
from engine.reading.marks.pain import tells_pain
from engine.reading.prepare import prepare
from engine.reading.values import Context
from engine.reading.words.kinds import K

DAYS = frozenset((K.TODAY, K.YESTERDAY, K.WEEKDAY, K.LAST_WEEKDAY, K.DAYS_AGO, K.WEEKS_AGO, K.LAST_TIME))


def pain_is_told(text: str, context: Context, catalogue: Catalogue) -> bool:
    """Whether the words tell of pain now."""
    return tells_pain(prepare(text, context, catalogue).pieces)


def is_of_whole_days(text: str, context: Context, catalogue: Catalogue) -> bool:
    """Whether the words name a day, or one since when."""
    return not prepare(text, context, catalogue).told.isdisjoint(DAYS)
