"""Words spelt as they are said: letters drawn out for joy, "lets gooo", and a feeling told loosely, "numb-ish".

drawn out = a word that no list knows, with the same letter three times running     finallyyy   heavyyy   yesss
loosely   = a word of feel or pain, then "-ish"                                     sore-ish    tight ish    numbish
cheer     = "let's" ( drawn-out word | "go" at the end of its clause )              lets gooo: nothing is planned
Behind a number "ish" tells that it was told roughly, and it stays for whoever asks about that.
"""

from __future__ import annotations

import re
from functools import lru_cache
from itertools import pairwise

from engine.reading.words.kinds import K
from engine.reading.words.lexicon import lexicon
from engine.reading.words.phrasebook import phrasebook
from engine.reading.words.pieces import Piece

DRAWN_OUT = re.compile(r"([^\W\d_])\1{2,}")
SHORTEST = 2
"""Letters of a word that drawing out leaves: "xxx" and "www" are none."""
FELT = frozenset((K.PAIN, K.SORE, K.NOTE))


def as_meant(plain: str) -> str:
    """The word of the lists that an unknown one stands for, where it is one spelt as it is said; else the word."""
    drawn = DRAWN_OUT.search(plain) is not None
    for spelt in (DRAWN_OUT.sub(r"\1", plain), DRAWN_OUT.sub(r"\1\1", plain)) if drawn else ():
        if len(spelt) >= SHORTEST and spelt in lexicon().phrases:
            return spelt
    for ending in _loose():
        meaning = lexicon().phrases.get(plain.removesuffix(ending)) if plain.endswith(ending) else None
        if meaning is not None and meaning.kind in FELT:
            return plain.removesuffix(ending)
    return plain


@lru_cache(maxsize=1)
def _loose() -> tuple[str, ...]:
    return tuple(sorted(phrasebook().cues["loosely"]))


SPELT_FREELY = frozenset((K.ALTERED, K.FUTURE))


def spelt_freely(pieces: list[Piece]) -> list[Piece]:
    """The pieces with loose endings and cheers put to what they say."""
    return _without_cheers(_without_loose_endings(pieces))


def _without_loose_endings(pieces: list[Piece]) -> list[Piece]:
    """The pieces with "-ish" made part of the word of feel or pain that it stands behind."""
    out: list[Piece] = []
    for piece in pieces:
        if piece.kind is K.ALTERED and piece.text in _loose() and out:
            dashed = out[-1].kind is K.DASH and out[-1].glued and piece.glued and len(out) > 1
            word = out[-2] if dashed else out[-1]
            if word.kind in FELT:
                out = [*out[: -1 - dashed], word._replace(end=piece.end)]
                continue
        out.append(piece)
    return out


def _without_cheers(pieces: list[Piece]) -> list[Piece]:
    """The pieces with "lets gooo" made a filler: who is glad of a set plans none."""
    out = list(pieces)
    for at, (lets, word) in enumerate(pairwise(pieces)):
        if lets.kind is not K.FUTURE or word.kind not in CHEERED:
            continue
        behind = pieces[at + 2].kind if at + 2 < len(pieces) else None
        ends = behind in CLAUSE_ENDS and word.text in phrasebook().cues["cheers"]
        if ends or DRAWN_OUT.search(word.text):
            out[at] = lets._replace(kind=K.FILLER)
    return out


CHEERED = frozenset((K.FILLER, K.PLAIN, K.NOTE))
CLAUSE_ENDS = frozenset((None, K.STOP, K.COMMA, K.LINE, K.OTHER_SIGN, K.CLOSE))
