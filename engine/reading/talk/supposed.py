"""Sets of a sentence that begins with "if" or the like: "if bench 3x5 80 feels ok next week i'll go 82.5".

supposed = IF [ word ] LIFT ...       beside a time to come or a plan it tells no sets, and else it is asked about
IF is a cue of the language files ("conditional"); "if anyone asks, bench 3x5 80" is none of them.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, is_one_word

IF = frozenset(("conditional",))
AHEAD = frozenset((K.FUTURE, K.TOMORROW))
LINKS = frozenset((K.FILLER, K.OTHERS, K.GOT))


def may_be_supposed(pieces: Sequence[Piece]) -> bool:
    """Whether a sentence begins so, with a lift right behind the word, or one word away."""
    if not pieces or not is_cued(pieces[0].text, IF) or not is_one_word(pieces[0]):
        return False
    return kind_at(pieces, 1) is K.NAME or (kind_at(pieces, 1) in LINKS and kind_at(pieces, 2) is K.NAME)


def is_supposed(sentence: Sequence[Piece]) -> bool:
    """Whether it goes on to a time to come, or a plan."""
    return may_be_supposed(sentence) and any(piece.kind in AHEAD for piece in sentence)
