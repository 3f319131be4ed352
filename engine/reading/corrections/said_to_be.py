"""Words that say what a set was: "was", "were", "is", in all languages."""

from __future__ import annotations

from engine.reading.corrections.so_many import ALL_OF_THEM
from engine.reading.prepare import Prepared
from engine.reading.words.cues import CUES_OF, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.lexicon import plain_word
from engine.reading.words.phrasebook import phrasebook
from engine.reading.words.pieces import Piece, first_word, is_one_word, last_word


def is_be(piece: Piece) -> bool:
    """Whether the word is "was", "were" or "is"."""
    if piece.kind not in BE_KINDS or is_cued(piece.text, ALL_OF_THEM) or _is_unreal(piece) or _is_to_come(piece):
        return False  # "were all" is one of the phrases that say it; "all" alone says how many
    return plain_word(last_word(piece)).replace("'", "") in phrasebook().copulas


def in_full(told: Prepared) -> list[Piece]:
    """The pieces with all words of those that are phrases: "det var" in Swedish, where the text is "det"."""
    return [
        piece._replace(text=told.cleaned[piece.start : piece.end].lower())
        if piece.kind is K.FILLER and not is_one_word(piece)
        else piece
        for piece in told.spoken
    ]


def _is_unreal(piece: Piece) -> bool:
    """ "could have been" says what was not."""
    return piece.kind is K.NEVER and "unreal" in CUES_OF[first_word(piece)]


def _is_to_come(piece: Piece) -> bool:
    """ "next is" tells of no set that stands."""
    return piece.kind is K.FUTURE and "next" in CUES_OF[first_word(piece)]


BE_KINDS = frozenset((K.FILLER, K.EACH, K.FUTURE, K.NEVER, K.ASKS, K.PLAIN, K.NOT, K.DENY))
