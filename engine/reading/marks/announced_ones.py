"""Sets counted and described ahead of their list: "three proper ones: 85x8, 85x7, 85x6", "2 heavy ones, 90x3 90x2".

ones = COUNT WORD+ [ "at" LOAD ] ( ":" | "," | nothing ) LIST      as many told in the list as the count says
Behind a colon that tells another number of them it is asked. Without one the words must say "ones", or "sets".
Right behind a set told in full the count is no other set: "100x5 two back offs: 80x5, 80x5".
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role, kinds_in_order, places_in

FEWEST, MOST = 2, 12
OPENING = frozenset((K.COMMA, K.THEN, K.AND, K.STOP, K.LINE, K.COLON, K.DASH, K.NAME, K.OPEN))
WORDS = frozenset((K.NOTE, K.PLAIN, K.FILLER, K.WORKING, K.ASKS, K.ONLY, K.ADDED, K.WARMUP, K.DROP, K.SETS, K.COUNT))
NAMING = frozenset((K.WORKING, K.SETS))
MADE_WORDS = frozenset((K.PLAIN, K.NOTE, K.SETS))
SEVERAL = 2
"""What the languages' files label words that name several such sets with."""
SIGNS = frozenset((K.COLON, K.COMMA, K.DASH))
PAIRING = frozenset((K.TIMES, K.FOR))
ENDS = frozenset((K.LINE, K.NAME, K.THEN, K.STOP, K.CLOSE, K.QUESTION))
NEAR, LONGEST = 6, 80
"""Words between a count and its list, and pieces of a list; more nobody tells so. Common practice, no source."""


def with_ones_announced(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with such a count made a word, or the list left in doubt."""
    out: list[Piece] | None = None
    kinds = kinds_in_order(pieces)
    for at in [word - 1 for word in places_in(WORDS, kinds) if word and kinds[word - 1] is K.NUMBER]:
        count = pieces[at]
        if count.role is Role.BARE and FEWEST <= count.value <= MOST and _opens(pieces, at):
            meant = _announced(pieces, at)
            if meant:
                out = list(pieces) if out is None else out
                out[at : at + len(meant)] = meant
    return pieces if out is None else out


def _opens(pieces: Sequence[Piece], at: int) -> bool:
    """Whether nothing but filler words stands between the count and a separator, or the set in front of it."""
    start = at - 1
    while start >= max(0, at - NEAR) and pieces[start].kind in (K.FILLER, K.ONLY):
        start -= 1
    if start < 0 or pieces[start].kind in OPENING:
        return True
    return pieces[start].kind is K.NUMBER and not pieces[at].glued


def _announced(pieces: Sequence[Piece], at: int) -> list[Piece]:
    """The count and its words as they are meant; empty where it announces nothing."""
    end = at + 1
    while end < min(len(pieces), at + NEAR) and pieces[end].kind in WORDS:
        end += 1
    words = pieces[at + 1 : end]
    loaded = end + 1 < len(pieces) and pieces[end].kind in (K.WITH, K.AT) and pieces[end + 1].kind is K.NUMBER
    end += 2 * loaded
    sign = pieces[end].kind if end < len(pieces) and pieces[end].kind in SIGNS else None
    named = any("oneset" in CUES_OF[word.text] or word.kind in NAMING or _names_several(word) for word in words)
    if not words or (sign is not K.COLON and not named):
        return []
    told = sets_listed(pieces, end + (sign is not None))
    if told == pieces[at].value:
        count = pieces[at]._replace(role=Role.SETS) if loaded else pieces[at]._replace(kind=K.FILLER)
        said = K.FILLER if sign is K.COLON else K.NOTE  # a remark would swallow a bare number behind it
        return [count, *[word._replace(kind=said) if word.kind in MADE_WORDS else word for word in words]]
    doubted = sign is K.COLON and told > 0 and named
    return [pieces[at]._replace(kind=K.UNCLEAR)] if doubted else []


def _names_several(word: Piece) -> bool:
    """ "back offs", "drops"."""
    return word.kind in (K.FILLER, K.DROP) and word.told == SEVERAL


def sets_listed(pieces: Sequence[Piece], at: int) -> int:
    """How many sets the list there tells, each a pair, or each a bare number."""
    end = at
    while end < min(len(pieces), at + LONGEST) and pieces[end].kind not in ENDS and not _names_several(pieces[end]):
        end += 1  # "3 top sets 100x5, 2 back offs 80x8": the next of them are others
    kinds = [piece.kind for piece in pieces[at:end]]
    pairs = sum(kind in PAIRING for kind in kinds)
    return (pairs or kinds.count(K.NUMBER)) if kinds[:1] == [K.NUMBER] else 0
