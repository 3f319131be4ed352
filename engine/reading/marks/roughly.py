"""Numbers told roughly, which are asked: "around 7", "about 80 for 8", "nearly 20 pull ups", "between 6 and 8".

rough = ( ROUGHLY | NEARLY ) NUMBER | BETWEEN NUMBER "and" NUMBER
Words in capitals are cues of the language files.
"""

from __future__ import annotations

from functools import lru_cache

from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook, spoken
from engine.reading.words.pieces import Piece, Role, kinds_in_order, places_in

OF_A_SET = frozenset((Role.BARE, Role.REPS, Role.LOAD, Role.SETS))
WORDS = frozenset((K.FILLER, K.PLAIN, K.NOTE, K.REST, K.RESERVE_LEFT, K.NOT_DATE, K.WITH, K.OF, K.ADDED))


def with_rough_numbers(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with words that leave a number open made words that change the sets."""
    out = list(pieces)
    for at, piece in enumerate(pieces[:-1]):
        if piece.kind not in WORDS:
            continue
        behind = pieces[at + 1 : at + 4]
        rough = _is_about(piece) and behind[0].kind is K.NUMBER and behind[0].role in OF_A_SET
        ranged = is_between(piece) and [one.kind for one in behind] == [K.NUMBER, K.AND, K.NUMBER]
        stepped = piece.kind is K.ADDED and OPENING.issuperset([one.kind for one in pieces[:at]]) and _is_bare(behind)
        if rough or ranged or stepped:
            out[at] = piece._replace(kind=K.ALTERED)
    return out


def _is_about(piece: Piece) -> bool:
    word, cues = spoken(piece.text), phrasebook().cues
    return word in cues["roughly"] or word in cues["nearly"]


def is_between(piece: Piece) -> bool:
    """Whether the word says that something lies between two others."""
    return spoken(piece.text) in phrasebook().cues["between"]


def _is_bare(behind: list[Piece]) -> bool:
    """ "added 10, got 12": how much of what was added, and to which load, is not told."""
    kinds = [one.kind for one in behind[:2]]
    return kinds in ([K.NUMBER, K.COMMA], [K.NUMBER, K.AND], [K.NUMBER, K.THEN]) and behind[0].role is Role.BARE


OPENING = frozenset((K.FILLER, K.THEN, K.AND))


def may_be_rough(pieces: list[Piece], kinds: set[K]) -> bool:
    """Whether such a word stands among the pieces, which are of these kinds."""
    if kinds.isdisjoint(WORDS):
        return False
    if K.ADDED in kinds:
        return True
    return not _leaving_open().isdisjoint([spoken(pieces[at].text) for at in places_in(WORDS, kinds_in_order(pieces))])


@lru_cache(maxsize=1)
def _leaving_open() -> frozenset[str]:
    cues = phrasebook().cues
    return cues["roughly"] | cues["nearly"] | cues["between"]
