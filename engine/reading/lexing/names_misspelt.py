"""Names met with a slip of the thumb: unknown words, alone or with the words beside them, mended by the catalogue.

Only words that no list knows are mended, and only a few windows of a message are tried, so that a long text stays
cheap. What vouches for a mistyped word is any word of a name, whatever else it says: "straight arm puldown".
"""

from __future__ import annotations

from collections.abc import Iterator
from functools import lru_cache

from engine.catalogue.catalogue import Catalogue
from engine.catalogue.phrases import normalise
from engine.catalogue.typos import LONGEST_MENDED, remainders
from engine.catalogue.word_order import LITTLE
from engine.reading.words.kinds import K
from engine.reading.words.lexicon import plain_word
from engine.reading.words.pieces import COUNTED, Piece, is_one_word
from engine.values.ids import ExerciseName

PERHAPS_A_NAME = frozenset((K.MUSCLE, K.UNRELATED))
""" "lat puls": where both are told, a name may be mistyped although all words are known."""
MOST_WORDS = 5
MOST_UNKNOWN = 16
MOST_MENDED = 6
LONGEST_TALK = 12
TWO_SLIPS_FROM = 8
SHORTEST = 3
SHORTEST_JOINED = 6
NEIGHBOURS = frozenset(
    (
        K.PLAIN,
        K.NAME,
        K.NOTE,
        K.VARIANT,
        K.DUMBBELL,
        K.BARBELL,
        K.CABLE,
        K.MACHINE,
        K.KETTLEBELL,
        K.JOINT,
        K.MUSCLE,
        K.HEADING,
        K.EACH,
        K.LAST,
    )
)


def mended(pieces: list[Piece], cleaned: str, catalogue: Catalogue) -> list[Piece]:
    """The pieces with mistyped names found: each window of unknown words that is near a name becomes that name."""
    unknown = [at for at, piece in enumerate(pieces) if _may_be_slipped(pieces, at, piece)]
    if not unknown or (len(pieces) > LONGEST_TALK and not any(piece.kind in COUNTED for piece in pieces)):
        return pieces
    near = {text: _is_near(text, catalogue) for text in {pieces[at].text for at in unknown[:MOST_UNKNOWN]}}
    slipped = [at for at in unknown[:MOST_UNKNOWN] if near[pieces[at].text]][:MOST_MENDED]
    out = list(pieces)
    tried: dict[str, tuple[ExerciseName, ...]] = {}
    for at in reversed(slipped):
        if at < len(out) and out[at].kind is not K.NAME:
            _mend_at(out, at, cleaned, catalogue, tried)
    return out


def _may_be_slipped(pieces: list[Piece], at: int, piece: Piece) -> bool:
    """An unknown word, or one of something else between a part of the body and numbers: "lat puls 3x10 50"."""
    if piece.kind is K.PLAIN:
        return len(piece.text) >= SHORTEST
    if piece.kind is not K.UNRELATED or not 0 < at < len(pieces) - 1:
        return False
    return pieces[at - 1].kind is K.MUSCLE and pieces[at + 1].kind in COUNTED and is_one_word(piece)


def _is_near(word: str, catalogue: Catalogue) -> bool:
    """Whether the word may be a slip away from a word of any name; most words are not, and cost a few look-ups."""
    typed = plain_word(word)
    if len(typed) > LONGEST_MENDED:
        return False
    left = _left_of(typed)
    indexes = [index.remainders for index in (catalogue.typos, catalogue.own_typos) if index is not None]
    return any([not index.keys().isdisjoint(left) for index in indexes])


@lru_cache(maxsize=2_048)
def _left_of(typed: str) -> frozenset[str]:
    return frozenset(remainders(typed, 2 if len(typed) >= TWO_SLIPS_FROM else 1))


def _mend_at(
    out: list[Piece], at: int, cleaned: str, catalogue: Catalogue, tried: dict[str, tuple[ExerciseName, ...]]
) -> None:
    for start, end in _windows(out, at, catalogue):
        text = cleaned[out[start].start : out[end - 1].end]
        if text not in tried:
            joined = end - start == 2 and len(text) > SHORTEST_JOINED and _may_be_one_word(out[start:end], catalogue)
            tried[text] = catalogue.closest(text) or (catalogue.closest(text.replace(" ", "")) if joined else ())
        owners = tried[text]
        if owners:
            first = out[start]
            name = first._replace(kind=K.NAME, names=owners, end=out[end - 1].end, text=text.lower())
            out[start:end] = [name]
            return


def _may_be_one_word(words: list[Piece], catalogue: Catalogue) -> bool:
    """Whether none of the words means something of its own: "best squat" is no "beltsquat", nor "bln press" another
    press; "squat zbs" is no "squats".
    """
    first, last = words
    if last.kind is K.NAME or (first.kind is K.NAME and len(last.text) <= SHORTEST):
        return False
    return not any(normalise(plain_word(word.text)) in catalogue.typos.ordinary for word in words)


def _windows(out: list[Piece], at: int, catalogue: Catalogue) -> Iterator[tuple[int, int]]:
    """The runs of words around `at`, longest first."""
    low = at
    while low > 0 and at - low < MOST_WORDS - 1 and _goes_on(out, low - 1, catalogue):
        low -= 1
    high = at + 1
    while high < len(out) and high - at < MOST_WORDS and _goes_on(out, high, catalogue):
        high += 1
    for length in range(min(MOST_WORDS, high - low), 0, -1):
        for start in range(max(low, at - length + 1), min(at, high - length) + 1):
            if _may_end(out[start], catalogue) and _may_end(out[start + length - 1], catalogue):
                yield start, start + length


def _goes_on(out: list[Piece], at: int, catalogue: Catalogue) -> bool:
    """Whether a name may go on here: a word, or between two pieces a little one or a hyphen ("kh-bankdruekcen")."""
    piece = out[at]
    if _may_end(piece, catalogue):
        return True
    if not 0 < at < len(out) - 1:
        return False
    return is_hyphen(out, at) or piece.kind is K.AND or plain_word(piece.text) in LITTLE


def _may_end(piece: Piece, catalogue: Catalogue) -> bool:
    """Whether a name may begin or end with it; "face puls" and "face plus" end with a word of something else, a slip
    from "pulls".
    """
    if is_word_of_names(piece, catalogue):
        return True
    other = piece.kind is K.UNRELATED or (piece.kind is K.AND and len(piece.text) > SHORTEST)
    return other and is_one_word(piece) and _is_near(piece.text, catalogue)


def is_hyphen(out: list[Piece], at: int) -> bool:
    """Whether it is a dash with no space around it, between two pieces."""
    return out[at].kind is K.DASH and out[at].glued and 0 < at < len(out) - 1 and out[at + 1].glued


def is_word_of_names(piece: Piece, catalogue: Catalogue) -> bool:
    """Whether a name may begin, go on and end with it: "straight", whatever it says elsewhere, is a word of names."""
    return piece.kind in NEIGHBOURS or is_of_names(piece.text, catalogue)


def is_of_names(text: str, catalogue: Catalogue) -> bool:
    """Whether all these words stand in names, and say something there."""
    words = plain_word(text).split()
    said = [word.isalpha() and word in catalogue.typos.words and word not in LITTLE for word in words]
    return bool(said) and all(said)  # a line end has no words
