"""A question or a wish right behind whole sets: "bench 3x8 80 should i go up?", "squat 5x5 100 can't feel my legs".

Whether the sets were done is asked, unless the question is a request, which speaks of a session under way ("what's
next?"), or wonders at what was done ("how am i doing?").
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.cues import CUES_OF, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook, spoken_words
from engine.reading.words.pieces import COUNTED, Piece
from engine.reading.words.tokens import tokenize

NO_SETS_OF_HERS = frozenset(
    (K.ASKS, K.FUTURE, K.TOMORROW, K.STORY, K.OTHERS, K.SAYING, K.NEVER, K.PLAIN, K.QUESTION, K.STOP, K.LINE)
)
LEAST_OF_SETS = 2


def sets_before_a_question(pieces: Sequence[Piece]) -> tuple[list[Piece], Sequence[Piece]]:
    """The pieces ahead of a question that ends the message, and the question; empty where none stands behind sets."""
    first = next((at for at, piece in enumerate(pieces) if piece.kind is K.ASKS), 0)
    first = first or _remark(pieces) or _last_words(pieces)
    ahead, behind = list(pieces[:first]), pieces[first:]
    kinds = [piece.kind for piece in ahead]
    told = kinds[:1] == [K.NAME] and NO_SETS_OF_HERS.isdisjoint(kinds) and (K.TIMES in kinds or _lists(kinds))
    whole = told and len([kind for kind in kinds if kind in COUNTED]) >= LEAST_OF_SETS and "or" not in _texts(ahead)
    asks = COUNTED.isdisjoint([piece.kind for piece in behind]) and K.NAME not in [piece.kind for piece in behind]
    return (ahead, behind) if whole and asks else ([], ())


def _lists(kinds: Sequence[K]) -> bool:
    """ "bench 60 8 8 7 wanted more": numbers and nothing else, behind which a wish begins."""
    return LISTING.issuperset(kinds[1:])


LISTING = frozenset((K.NUMBER, K.COMMA, K.SLASH, K.DASH))


def _remark(pieces: Sequence[Piece]) -> int:
    """The place of words that one cannot or will not do more, with others behind them; 0 where none stand there."""
    for at, piece in enumerate(pieces[:-1]):
        wish = piece.kind is K.FUTURE and not piece.told and "next" not in CUES_OF[piece.text.split()[0]]
        unable = piece.kind is K.NEVER and is_cued(piece.text.split()[0], UNABLE)
        if wish or unable:
            behind = [one.kind for one in pieces[at + 1 :]]
            return at if behind[0] in WORDS and OF_ANOTHER_DAY.isdisjoint(behind) else 0
    return 0


UNABLE = frozenset(("unable", "toomuch", "nearly", "thinking"))
WORDS = frozenset(
    (K.FILLER, K.NOTE, K.PLAIN, K.MORE, K.UNRELATED, K.MUSCLE, K.JOINT, K.PAIN, K.SORE, K.RESERVE_LEFT, K.ANOTHER)
)
OF_ANOTHER_DAY = frozenset((K.TOMORROW, K.DATE, K.WEEKDAY, K.OTHERS, K.QUESTION))


def _last_words(pieces: Sequence[Piece]) -> int:
    """The place of the words without a number that end in a question mark: "bench 3x8 80 ok?"."""
    if not pieces or pieces[-1].kind is not K.QUESTION:
        return 0
    at = len(pieces) - 1
    while at and pieces[at - 1].kind in (K.FILLER, K.NOTE):
        at -= 1
    return at


def _texts(pieces: Sequence[Piece]) -> set[str]:
    return {piece.text for piece in pieces}


def is_a_request(question: Sequence[Piece], cleaned: str) -> bool:
    """Whether the question asks for something that only makes sense in a session, or is asked about what was done."""
    if not question:
        return False
    words = " ".join(word for word, _ in spoken_words(tokenize(cleaned[question[0].start :])))
    return words in phrasebook().said or words in phrasebook().cues["wonders"]
