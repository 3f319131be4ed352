"""Where the clauses of a text begin and end, by its signs and by words for a reason."""

from __future__ import annotations

import re

from engine.reading.words.phrasebook import Phrasebook
from engine.reading.words.tokens import Token

Words = list[tuple[str, Token]]
CUT = re.compile(r"(?<![,.;!?)])[,.;!?)]+\s+|\s[-–—(]+\s?|(?<!\s)\s*\(")
"""Each run of signs or spaces is begun at its first one only: begun at each, it takes the square of its length."""


def clauses_of(cleaned: str, words: Words, book: Phrasebook) -> list[tuple[int, int]]:
    """Where the clauses of the message begin and end."""
    cuts = [(found.start(), found.end()) for found in CUT.finditer(cleaned)]
    because = book.cues["because"]
    cuts += [(token.start, token.start) for word, token in words[2:] if word in because]
    starts = [0, *(end for _, end in sorted(cuts))]
    ends = [*(start for start, _ in sorted(cuts)), len(cleaned)]
    return [(start, end) for start, end in zip(starts, ends, strict=True) if cleaned[start:end].strip(" .,!?-()")]


def is_said(words: Words, book: Phrasebook) -> bool:
    """Whether these words are a phrase that asks for something all by themselves."""
    return " ".join([word for word, _ in words]) in book.said
