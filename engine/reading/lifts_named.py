"""Whether words that tell no sets still speak of lifts, as "squat" or "bench, squat?" do."""

from __future__ import annotations

from engine.catalogue.catalogue import Catalogue
from engine.reading.entries.names import narrowed
from engine.reading.prepare import prepare
from engine.reading.values import Context
from engine.reading.words.kinds import K
from engine.values.ids import ExerciseName

NOT_DONE = frozenset((K.NEVER, K.NOT, K.DENY, K.OTHERS, K.UNRELATED, K.STORY, K.SAYING, K.FUTURE, K.TOMORROW))
"""What says that the sets were not done, or not by her: "no squat today", "my brother's squats"."""
WORDLESS = frozenset((K.STOP, K.COMMA, K.DASH, K.SLASH, K.LINE, K.QUESTION, K.OPEN, K.CLOSE))


def only_lift_named(text: str, context: Context, catalogue: Catalogue) -> ExerciseName | None:
    """The lift that the words name; None where they name none, several, or one that may be several."""
    named = [piece.names for piece in prepare(text, context, catalogue).spoken if piece.kind is K.NAME]
    found = {one for names in named for one in narrowed(names, context)}
    return found.pop() if len(found) == 1 else None


def speaks_of_lifts(text: str, context: Context, catalogue: Catalogue) -> bool:
    """Whether a lift is named and nothing says that it was not done; words that say nothing at all count too: "."."""
    told = prepare(text, context, catalogue).told
    return told <= WORDLESS or (K.NAME in told and told.isdisjoint(NOT_DONE))
