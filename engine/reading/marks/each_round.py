"""How far one round is, told beside how often it was done: "once round the house is 35m, did it three times".

round = ( "one" | "each" | "once" | "a" ... ) WORD+ IS DISTANCE      of each of them; the words are a remark
"""

from __future__ import annotations

from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import ROLE, Piece, Role, places_in

FAR = frozenset((Role.METRES, Role.SECONDS))
WORDS = frozenset((K.FILLER, K.PLAIN, K.NOTE, K.EACH, K.ROUNDS, K.UNRELATED, K.FIRST, K.SETTING, K.LAST))
OPENING = frozenset((K.COMMA, K.STOP, K.LINE, K.DASH, K.OPEN, K.COLON, K.NAME, K.THEN, K.AND))
ONE_OF_THEM = frozenset(("an", "every", "the", "oneround"))
BEING = frozenset(("is", "was"))
MOST_WORDS = 6
"""Words of a round; more are a sentence of their own. Common practice, no source."""


def with_rounds_told(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with words that tell what a distance is of made filler words."""
    out: list[Piece] | None = None
    for at in places_in(FAR, list(map(ROLE, pieces))):
        start = _start_of_a_round(pieces, at) if pieces[at].kind is K.NUMBER else at
        if start < at:
            out = list(pieces) if out is None else out
            out[start:at] = [piece._replace(kind=K.FILLER) for piece in pieces[start:at]]
    return pieces if out is None else out


def _start_of_a_round(pieces: list[Piece], at: int) -> int:
    """Where the words begin that say what the distance there is of; its own place for none."""
    if at < 2 or not is_cued(pieces[at - 1].text, BEING):
        return at
    start = at - 1
    while start > max(0, at - MOST_WORDS) and _is_a_word(pieces[start - 1]):
        start -= 1
    opened = start == 0 or pieces[start - 1].kind in OPENING
    said = pieces[start : at - 1]
    return start if opened and len(said) > 1 and (said[0].kind is K.EACH or _is_one(said[0])) else at


def _is_a_word(piece: Piece) -> bool:
    return piece.kind in WORDS or _is_one(piece)


def _is_one(piece: Piece) -> bool:
    """ "one length", "a lap", "once round", "the lap"; "once" is eleven in Spanish, too."""
    return is_cued(piece.text, ONE_OF_THEM)
