"""Names put into the longer ones that a slip of the thumb beside them hides: "safety bra squat", "close rip bench".

The mistyped word says something in one of the languages, so that no list is without it. It stands right beside a name;
two words at least are spelt right, and together they are a slip from a name.
"""

from __future__ import annotations

from collections.abc import Iterator

from engine.catalogue.catalogue import Catalogue
from engine.catalogue.phrases import folded_words
from engine.reading.lexing.names_misspelt import SHORTEST, is_hyphen, is_of_names
from engine.reading.words.kinds import K
from engine.reading.words.lexicon import plain_word
from engine.reading.words.pieces import Piece, kinds_in_order, places_of

LEAST_WORDS = 3
MOST_BESIDE = 3


def with_longer_names(pieces: list[Piece], cleaned: str, catalogue: Catalogue) -> list[Piece]:
    """The pieces with each name that a mistyped word beside it makes longer put together with it."""
    if not any([_stands_by_an_odd_word(pieces, at, catalogue) for at in places_of(K.NAME, kinds_in_order(pieces))]):
        return pieces
    out = list(pieces)
    at = 0
    while at < len(out):
        longer = _longer(out, at, cleaned, catalogue) if out[at].kind is K.NAME else None
        if longer is not None:
            start, end, name = longer
            out[start:end] = [name]
            at = start
        at += 1
    return out if len(out) < len(pieces) else pieces


def _stands_by_an_odd_word(pieces: list[Piece], at: int, catalogue: Catalogue) -> bool:
    """Whether a name may be longer; most stand by themselves."""
    ahead, behind = at - 1, at + 1
    if ahead >= 0 and _is_odd(pieces[ahead - is_hyphen(pieces, ahead)], catalogue):
        return True
    behind += behind < len(pieces) and is_hyphen(pieces, behind)
    return behind < len(pieces) and _is_odd(pieces[behind], catalogue)


def _longer(out: list[Piece], at: int, cleaned: str, catalogue: Catalogue) -> tuple[int, int, Piece] | None:
    for start, end in _windows(out, at, catalogue):
        typed = cleaned[out[start].start : out[end - 1].end]
        names = catalogue.closest(typed) if len(folded_words(typed)) >= LEAST_WORDS else ()
        if names:
            first = out[start]
            return start, end, first._replace(kind=K.NAME, names=names, end=out[end - 1].end, text=typed.lower())
    return None


def _windows(out: list[Piece], at: int, catalogue: Catalogue) -> Iterator[tuple[int, int]]:
    """The runs of words that begin or end with the name and hold an odd word beside it, longest first."""
    odd = at - 1 - is_hyphen(out, at - 1) if at else -1
    if odd >= 0 and _is_odd(out[odd], catalogue):
        low = odd
        while low and odd - low < MOST_BESIDE and _goes_on(out, low - 1, catalogue):
            low -= 1
        yield from ((start, at + 1) for start in range(low, odd + 1))
    odd = at + 1 + (at + 1 < len(out) and is_hyphen(out, at + 1))
    if odd < len(out) and _is_odd(out[odd], catalogue):
        high = odd + 1
        while high < len(out) and high - odd <= MOST_BESIDE and _goes_on(out, high, catalogue):
            high += 1
        yield from ((at, end) for end in range(high, odd, -1))


def _goes_on(out: list[Piece], at: int, catalogue: Catalogue) -> bool:
    return is_of_names(out[at].text, catalogue) or is_hyphen(out, at)


def _is_odd(piece: Piece, catalogue: Catalogue) -> bool:
    """Whether it is a word long enough to be mended, and none of a name, or none but for two letters swapped."""
    if piece.kind is K.PLAIN or piece.kind is K.NAME or not piece.text.isalpha():
        return False
    word = plain_word(piece.text)
    if len(word) < SHORTEST or not word.isalpha():
        return False
    return word not in catalogue.typos.words or bool(catalogue.typos.swapped(word))
