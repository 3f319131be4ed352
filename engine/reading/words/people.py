"""Words that may be somebody's name, and what is told of the one named."""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece


def is_somebody(piece: Piece) -> bool:
    """ "tom did bench 3x8": a word that no list knows, and no adverb."""
    return piece.kind is K.PLAIN and piece.text.isalpha() and not piece.text.endswith("ly")


def verb_behind(pieces: Sequence[Piece], at: int) -> int:
    """The place of what the one told of there did: "did", "ha fatto"; 0 for nothing."""
    if at + 2 < len(pieces) and "auxthey" in CUES_OF[pieces[at + 1].text] and "did" in CUES_OF[pieces[at + 2].text]:
        return at + 2
    return at + 1 if at + 1 < len(pieces) and "theydo" in CUES_OF[pieces[at + 1].text] else 0
