"""Words of courtesy around a request, which ask for nothing themselves: "please", "could you ... thanks"."""

from __future__ import annotations

from engine.reading.words.phrasebook import Phrasebook
from engine.reading.words.spoken_clauses import Words, is_said
from engine.reading.words.tokens import Token


def without_politeness(words: Words, book: Phrasebook) -> Words:
    """The words without those of courtesy at their ends; as they are, where nothing else is left."""
    start, end = 0, len(words)
    while start < end and words[start][0] in book.polite_openers and (step := _polite_at(words, start, book)):
        if is_said(words[start:end], book):
            break  # "now what"
        if words[start][0] == "no" and start + step < end and words[start + step][0] == "more":
            break  # "no more curls today"
        praised = (
            words[start][0] in PRAISE and start + step < end and _is_close(words[start + step - 1], words[start + step])
        )
        if praised:
            break
        start += step
    while end > start + 1 and words[end - 1][0] in book.cues["polite"] and not is_said(words[start:end], book):
        end -= 1
    bare = [one for one in words[start:end] if one[0] not in book.cues["please"]]
    return bare or words


PRAISE = frozenset(("great", "nice", "cool", "good", "well"))
"""Polite on their own ("great, undo"); right in front of a word they praise it ("great workout today")."""


def _is_close(word: tuple[str, Token], after: tuple[str, Token]) -> bool:
    return after[1].start - word[1].end <= 1


def _polite_at(words: Words, at: int, book: Phrasebook) -> int:
    for length in (3, 2, 1):
        if at + length < len(words):
            phrase = " ".join([word for word, _ in words[at : at + length]])
            if phrase in book.cues["polite"] or phrase in book.cues["slip"]:
                return length
    return 0
