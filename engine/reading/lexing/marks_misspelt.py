"""Words that mark sets met with a slip of the thumb: "warmpu", "to failrue", "10 eahc side", "2 in resreve".

A word that no list knows and that is one slip from one word that marks sets is read as that word; of short words only
where its letters changed places or one came twice. Nobody slips on the first letter of a long word but to swap it.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import lru_cache

from engine.catalogue.catalogue import Catalogue
from engine.catalogue.phrases import normalise
from engine.reading.words.kept import Kept
from engine.reading.words.kinds import K
from engine.reading.words.lexicon import first_words, lexicon, plain_word
from engine.reading.words.phrasebook import phrasebook
from engine.reading.words.pieces import Piece
from engine.reading.words.slips import Slips, letter_came_twice, letters_swapped, slips_of
from engine.reading.words.token_shapes import Shape
from engine.reading.words.tokens import Token

MARKING = frozenset(
    (K.WARMUP, K.WORKING, K.FAILURE, K.MISS, K.DROP, K.REST_PAUSE, K.ASSISTED, K.ADDED, K.BODY, K.EACH, K.LEFT,
     K.RIGHT, K.RESERVE, K.RESERVE_LEFT, K.LAST, K.FIRST, K.ORDINAL, K.FROM_LAST, K.SECONDS, K.MINUTES, K.METRES,
     K.SAME, K.BOTH, K.ANOTHER, K.TOTAL, K.PARTIAL, K.SUPERSET, K.ROUNDS, K.PLANNED, K.EXCEPT, K.BAND, K.REST,
     K.PAUSE, K.TEMPO, K.PAIN, K.DENY, K.SORE, K.JOINT, K.MUSCLE, K.TOMORROW, K.WITH, K.BAR, K.PLATE)
)  # fmt: skip
SHORTEST_MENDED = 4
FREE_SLIP_FROM = 6
FREE_SLIP_ABROAD_FROM = 9
"""Letters; of a shorter word of another language English words are too near: "strange" is no bar. Common practice, no
source.
"""


@lru_cache(maxsize=1)
def _marks() -> Slips:
    return slips_of(phrase for phrase, meaning in lexicon().phrases.items() if meaning.kind in MARKING)


@lru_cache(maxsize=1)
def _known_words() -> frozenset[str]:
    """Every word of the language files; each means something somewhere, and is no slip."""
    book = phrasebook()
    phrases = (*lexicon().phrases, *book.said, *book.heads, *(phrase for cue in book.cues.values() for phrase in cue))
    return frozenset(word for phrase in phrases for word in phrase.split())


def _meant(word: str) -> str:
    """The one word that marks sets and that this one is a slip of; empty where there is none, or several."""
    if not word.isalpha() or len(word) < SHORTEST_MENDED or word in _known_words():
        return ""
    near = [known for known in _marks().near(word) if known != word and _is_slip(word, known)]
    nearest = [known for known in near if letters_swapped(word, known) or letter_came_twice(word, known)] or near
    alone = {lexicon().phrases.get(known) for known in nearest}
    return nearest[0] if len(nearest) == 1 or (len(alone) == 1 and None not in alone) else ""


MEANT = Kept(_meant)


def _is_slip(word: str, known: str) -> bool:
    if letters_swapped(word, known):
        return True
    if len(word) < (FREE_SLIP_FROM if known in first_words() else FREE_SLIP_ABROAD_FROM) or word[0] != known[0]:
        return letter_came_twice(word, known)
    return not (word.endswith("s") and word[:-1] == known) and not (known.endswith("s") and known[:-1] == word)


def with_marks_mended(tokens: Sequence[Token], pieces: Sequence[Piece], catalogue: Catalogue) -> list[Token] | None:
    """The tokens with each unknown word that is a slip of a mark spelt right; None where none is."""
    meant = {
        piece.start: right
        for piece in pieces
        if piece.kind is K.PLAIN
        and (right := MEANT[plain_word(piece.text)])
        and not _is_of_names(piece.text, catalogue)
    }
    if not meant:
        return None
    return [
        token._replace(text=meant[token.start]) if token.start in meant and token.shape is Shape.WORD else token
        for token in tokens
    ]


def _is_of_names(word: str, catalogue: Catalogue) -> bool:
    """Whether the word belongs to the names of exercises, or is a slip of one: names are mended behind the marks."""
    plain = plain_word(word)
    if normalise(plain) in catalogue.typos.ordinary or plain in catalogue.typos.words:
        return True
    return bool(catalogue.closest(plain))
