"""Mistyped words at the head of a request: "swpa squat for leg press", "remid me at 18".

Only a word that no list knows is mended, one in a message, and only where no sets can be meant: no "x", and no numbers
beside a lift. Short words are mended where two neighbours were swapped, since another letter makes another word.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from functools import lru_cache

from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import Phrasebook, phrasebook
from engine.reading.words.pieces import Piece
from engine.reading.words.slips import Slips, slips_of
from engine.reading.words.tokens import Token

LONGEST_HEAD = 3
SHORT = 3
LONG_ENOUGH = 5
"""From so many letters on one may be another: "test" is no "rest". Common practice, no source."""
INFLECTED = ("d", "s", "r", "n", "ed", "es")
HELD_DOWN = re.compile(r"([^\W\d])\1+$|([^\W\d])\2{2,}")


def without_stress(word: str) -> str:
    """The word with letters that were held down told once: "undooo", "undoo", "neeext"."""
    return HELD_DOWN.sub(lambda held: held[1] or held[2], word)


def head_mended(
    words: Sequence[tuple[str, Token]], cleaned: str, pieces: Sequence[Piece], book: Phrasebook
) -> Iterator[tuple[str, bool]]:
    """The message with one mistyped word of its head put right, each way that makes a head, and whether that is sure:
    of a short word another letter makes another word, so lifts behind it have to bear it out.
    """
    kinds = {piece.kind for piece in pieces}
    if K.TIMES in kinds or {K.NUMBER, K.NAME} <= kinds or K.PLAIN not in kinds:
        return
    unknown = {piece.start for piece in pieces if piece.kind is K.PLAIN}
    for at, (word, token) in enumerate(words[:LONGEST_HEAD]):
        if token.start not in unknown or _is_known(word):
            continue
        for known in _near(word, book):
            if _begins_a_head([*(w for w, _ in words[:at]), known, *(w for w, _ in words[at + 1 :])], at, book):
                yield cleaned[: token.start] + known + cleaned[token.end :], _is_sure(word, known)
        return


def _near(word: str, book: Phrasebook) -> list[str]:
    if len(word) == SHORT:
        return sorted(known for known in book.head_slips.words if len(known) == SHORT and _turned(word, known))
    return [known for known in book.head_slips.near(word) if known != word and not _is_inflected(word, known)]


def _turned(word: str, known: str) -> bool:
    """Whether two neighbours were swapped."""
    return word != known and sorted(word) == sorted(known) and (word[0] == known[0] or word[-1] == known[-1])


def _is_inflected(word: str, known: str) -> bool:
    """ "replaced" tells what was done, and asks for nothing."""
    return word.startswith(known) and word[len(known) :] in INFLECTED


def _is_sure(word: str, known: str) -> bool:
    return len(word) != len(known) or len(known) >= LONG_ENOUGH or sorted(word) == sorted(known)


def is_sure_of_all(typed: Sequence[str], known: Sequence[str]) -> bool:
    """Whether each mistyped word can hardly be another one: "step" is no "stop", and "water" not "later"."""
    pairs, another = zip(typed, known, strict=True), phrasebook().cues["anotherword"]
    return all(one == other or (_is_sure(one, other) and one not in another) for one, other in pairs)


def _begins_a_head(words: Sequence[str], at: int, book: Phrasebook) -> bool:
    return any(" ".join(words[:length]) in book.heads for length in range(at + 1, LONGEST_HEAD + 2))


FREELY_TOLD = (
    "timing", "resting", "asksrest", "hushes", "messaging", "hushafter", "hushbefore", "taken", "elsefor", "pausing",
    "spanweeks", "ever", "bestof", "delete", "lastone", "untilday",
)  # fmt: skip
"""Cues whose words make a request wherever they stand."""
UNITS = ("mins", "secs", "minutes", "seconds", "minute")
LONGEST_TOLD = 12


def word_mended(words: Sequence[tuple[str, Token]], cleaned: str, pieces: Sequence[Piece]) -> Iterator[str]:
    """The message with its one mistyped word put right, each way that makes a word of a request told in any order."""
    unknown = [piece for piece in pieces if piece.kind is K.PLAIN and not _is_known(piece.text)]
    if len(unknown) != 1 or len(words) > LONGEST_TOLD or any(piece.kind is K.TIMES for piece in pieces):
        return
    typed = unknown[0]
    for known in _words_freely_told().near(typed.text.casefold()):
        if known != typed.text and not _is_inflected(typed.text, known) and _is_sure(typed.text, known):
            yield cleaned[: typed.start] + known + cleaned[typed.end :]


@lru_cache(maxsize=1)
def _words_freely_told() -> Slips:
    return slips_of((*UNITS, *(phrase for cue in FREELY_TOLD for phrase in phrasebook().cues[cue])))


@lru_cache(maxsize=1)
def _known() -> frozenset[str]:
    cues = phrasebook().cues.values()
    return frozenset(word for phrases in cues for phrase in phrases for word in phrase.split())


def _is_known(word: str) -> bool:
    return word.casefold().replace("'", "") in _known()
