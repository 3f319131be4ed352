"""What to do in the place of a lift, and a lift's best of all: "what else for rows, no rower", "best bench ever".

else = name and ELSE, and only words AROUND it; of what keeps her from it one word may be unknown
best = name and a word for the BEST and EVER, and only words AROUND them

Each part in capitals is a cue of the language files.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.entries.names import narrowed
from engine.reading.values import Act, Context
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import MOST_WORDS_OF_A_PHRASE, Phrasebook
from engine.reading.words.pieces import Piece
from engine.reading.words.tokens import Token
from engine.values.ids import ExerciseName

LONGEST = 16
MOST_UNKNOWN = 1
NO_WISH = frozenset((K.NUMBER, K.COUNT, K.TIMES, K.OTHERS, K.YESTERDAY, K.DATE, K.TOMORROW))

Words = Sequence[tuple[str, Token]]


def else_asked(words: Words, pieces: Sequence[Piece], context: Context, book: Phrasebook) -> Act | None:
    """A swap of the one lift named, where something else is asked for; what to do then is offered."""
    lift, others = _asked_of_one(words, pieces, context, book.cues["elsefor"])
    if lift is None or others is None:
        return None
    taken = {word for phrase in book.cues["taken"] for word in phrase.split()}
    known = book.cues["aroundelse"] | book.cues["aroundtaken"] | book.cues["please"] | taken
    unknown = [word for word in others if word not in known]
    return Act("swap", exercise=lift) if len(unknown) <= MOST_UNKNOWN else None


def best_ever(words: Words, pieces: Sequence[Piece], context: Context, book: Phrasebook) -> Act | None:
    """A lift's best of all; None where none is asked for."""
    lift, others = _asked_of_one(words, pieces, context, book.cues["ever"])
    if lift is None or others is None or book.cues["bestof"].isdisjoint(others):
        return None
    known = book.cues["bestof"] | book.cues["aroundbest"]
    return Act("best", exercise=lift) if known.issuperset(others) else None


def _asked_of_one(
    words: Words, pieces: Sequence[Piece], context: Context, phrases: frozenset[str]
) -> tuple[ExerciseName | None, list[str] | None]:
    """The one lift named, and the words beside it and beside one of these phrases; None for what is not there."""
    said = _beside_the_lift(words, pieces)
    if not said or not NO_WISH.isdisjoint([piece.kind for piece in pieces]):
        return None, None
    return _one_lift(pieces, context), _without_a_phrase(said, phrases)


def _beside_the_lift(words: Words, pieces: Sequence[Piece]) -> list[str]:
    named = [piece for piece in pieces if piece.kind is K.NAME]
    if not named or len(words) > LONGEST:
        return []
    return [word for word, token in words if not any(one.start <= token.start < one.end for one in named)]


def _one_lift(pieces: Sequence[Piece], context: Context) -> ExerciseName | None:
    """The lift named, once or by a wider name as well ("the cable row is taken, what else for rows"); else None."""
    named = [piece for piece in pieces if piece.kind is K.NAME]
    narrowest = min(named, key=lambda one: len(one.names))
    shared = all(not set(narrowest.names).isdisjoint(one.names) for one in named)
    return narrowed(narrowest.names, context)[0] if shared else None


def _without_a_phrase(said: Sequence[str], phrases: frozenset[str]) -> list[str] | None:
    """The other words, where one of the phrases is among them; None where none is."""
    for length in range(min(MOST_WORDS_OF_A_PHRASE, len(said)), 0, -1):
        for at in range(len(said) - length + 1):
            if " ".join(said[at : at + length]) in phrases:
                return [*said[:at], *said[at + length :]]
    return None
