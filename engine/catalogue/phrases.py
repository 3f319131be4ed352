"""What a person may call an exercise, brought into one spelling, so that "Push-Ups", "push ups" and "PUSH UP" meet.

Accents are folded on both sides: "jalón" meets "jalon". A phrase is brought into its spelling word by word: the
spelling of two words is the two spellings with a space between them. A reader may therefore fold each word of a message
once and join the folded words as it likes.
"""

from __future__ import annotations

import unicodedata
from functools import lru_cache
from itertools import chain

EDGES = ".,;:!?()[]{}<>*\"“”„«»'’‘`´•·…|"
HYPHENS = str.maketrans(dict.fromkeys("-‐‑‒–—−_/", " "))
DROPPED = str.maketrans(dict.fromkeys("'’‘`´\u00ad\u200b\u200c\u200d\u2060\ufeff\u200e\u200f"))
UNDECOMPOSED = str.maketrans({"ł": "l", "ø": "o", "đ": "d", "æ": "ae", "œ": "oe", "ı": "i"})
SIBILANT_PLURALS = ("sses", "ches", "shes", "xes")
SPELLED_ALIKE = {"calves": "calf", "tyre": "tire", "tyres": "tire"}
LEAST_PLURAL = 3


def normalise(text: str) -> str:
    """The spelling under which the catalogue keeps `text`: empty where nothing is left.

    Shape: lower case, no accents, single spaces, no hyphens, dots or apostrophes, English plurals made singular.
    It changes nothing the second time.
    """
    return " ".join(filter(None, map(_normal_word, text.split())))


@lru_cache(maxsize=16_384)
def _normal_word(word: str) -> str:
    return " ".join(map(_singular, folded_words(word)))


def folded_words(text: str) -> tuple[str, ...]:
    """The words of `text`, folded like a normalised phrase, but with plurals as they stand."""
    words = text.split()
    return _folded_word(words[0]) if len(words) == 1 else tuple(chain.from_iterable(map(_folded_word, words)))


@lru_cache(maxsize=16_384)
def _folded_word(word: str) -> tuple[str, ...]:
    """What is left of one word: several where a sign parted it, none where it was signs alone."""
    plain = word.lower() if word.isascii() else fold_accents(word)
    plain = plain.translate(DROPPED).replace("&", " and ").translate(HYPHENS)
    return tuple(left for part in plain.split() for left in _undotted(part.strip(EDGES)) if left)


def fold_accents(text: str) -> str:
    """The text in lower case, without accents, in compatibility form (full-width letters made plain, and so on)."""
    decomposed = unicodedata.normalize("NFKD", unicodedata.normalize("NFKC", text).casefold())
    bare = "".join(letter for letter in decomposed if not unicodedata.combining(letter))
    return unicodedata.normalize("NFC", bare).translate(UNDECOMPOSED)


def _undotted(word: str) -> list[str]:
    """ "r.d.l" is one word, "inc.bench" two; a number keeps its point."""
    if "." not in word or any(letter.isdigit() for letter in word):
        return [word]
    pieces = [piece for piece in (part.strip(EDGES) for part in word.split(".")) if piece]
    return ["".join(pieces)] if all(len(piece) == 1 for piece in pieces) else pieces


def _singular(word: str) -> str:
    if word in SPELLED_ALIKE:
        return SPELLED_ALIKE[word]
    if len(word) < LEAST_PLURAL or not word.endswith("s") or word.endswith("ss") or not word.isalpha():
        return word
    if word.endswith(SIBILANT_PLURALS):
        return word[:-2]
    if word.endswith("flyes"):
        return word[:-2]
    if word.endswith("ies") and len(word) > len("pies"):
        return word[:-3] + "y"
    return word[:-1]
