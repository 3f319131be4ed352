"""Words that may be somebody's name, and what is told of the one named."""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, is_one_word


def is_somebody(piece: Piece) -> bool:
    """ "tom did bench 3x8": a word that no list knows, and no adverb."""
    return piece.kind is K.PLAIN and piece.text.isalpha() and not piece.text.endswith("ly")


def verb_behind(pieces: Sequence[Piece], at: int) -> int:
    """The place of what the one told of there did: "did", "only did", "ha fatto", "was doing"; 0 for nothing."""
    at += at + 2 < len(pieces) and (pieces[at + 1].kind is K.ONLY or "also" in CUES_OF[pieces[at + 1].text])
    if at + 2 < len(pieces):
        helping, meant = CUES_OF[pieces[at + 1].text], CUES_OF[pieces[at + 2].text]
        if ("auxthey" in helping and "did" in meant) or ("was" in helping and "atit" in meant):
            return at + 2
    return at + 1 if at + 1 < len(pieces) and _does(pieces[at + 1]) else 0


def _does(piece: Piece) -> bool:
    """ "did", "also did"."""
    cues = CUES_OF[piece.text]
    return "theydo" in cues or ("also" in cues and not is_one_word(piece))


def possessor(text: str) -> str:
    """ "tom's": the name without its ending."""
    return next((text.removesuffix(ending) for ending in POSSESSIVES if text.endswith(ending)), text)


POSSESSIVES = ("'s", "’s")
