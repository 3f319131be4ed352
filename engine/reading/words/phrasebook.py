"""Whole phrases of the language files: what people ask for, and the words that correct, delete, move or answer.

`say NAME: ...` is a whole message, `head NAME: ...` the beginning of one, `cue NAME: ...` a phrase inside one. Words in
brackets stand for one another, or for none: `how does (this|it) work (|please)` is four phrases.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import lru_cache
from importlib.resources import files

from engine.reading.words.lexicon import PHRASEBOOK, MalformedWords, plain_word, ways_of
from engine.reading.words.slips import Slips, slips_of
from engine.reading.words.token_shapes import Shape
from engine.reading.words.tokens import Token, clean, tokenize

FIRST_LANGUAGE = "en.txt"
MOST_WORDS_OF_A_PHRASE = 8


@dataclass(frozen=True, slots=True)
class Phrasebook:
    """Shape: `said` and `heads` map a phrase to the intent's name; `cues` maps a name to its phrases; words are
    plain.
    """

    said: Mapping[str, str]
    heads: Mapping[str, tuple[str, ...]]
    cues: Mapping[str, frozenset[str]]
    slips: Slips
    head_slips: Slips
    """The words of heads, apart: a head is only mended where what it needs stands behind it."""
    openers: frozenset[str]
    """First words of phrases and heads."""
    polite_openers: frozenset[str]
    """First words of what is said out of politeness, or of a slip."""
    lead_openers: frozenset[str]
    """First words of what asks for leave or tells a wish in front of a request."""
    cued: frozenset[str]
    """Words of the cues that make a request wherever they stand: without one of them none is looked for."""
    copulas: frozenset[str]
    """ "was", "were", "is" in all languages: the last words of the phrases that say what a set was."""


def spoken_words(tokens: list[Token]) -> list[tuple[str, Token]]:
    """The words and numbers of a message, plain and without apostrophes, each with its token."""
    shapes = (Shape.WORD, Shape.NUMBER, Shape.CLOCK, Shape.HOURS, Shape.ORDINAL)
    return [(spoken(token.text), token) for token in tokens if token.shape in shapes]


@lru_cache(maxsize=8_192)
def spoken(word: str) -> str:
    """The word as the phrasebook keeps it: plain, without apostrophes."""
    plain = plain_word(word).replace("'", "")
    return SPELT_SHORT.get(plain, plain)


SPELT_SHORT = {"u": "you", "ur": "your", "til": "until", "till": "until", "untill": "until", "wat": "what",
               "wot": "what", "r": "are", "wld": "would", "cld": "could", "shud": "should", "shld": "should",

               "wats": "whats", "wots": "whats"}  # fmt: skip
"""How words are spelt in a hurry: phrases and messages alike are kept in full."""


@lru_cache(maxsize=1)
def phrasebook() -> Phrasebook:
    """The phrases of all languages, read once.

    Errors: MalformedWords, naming file and line.
    """
    folder = files("engine.reading") / "languages"
    names = sorted(entry.name for entry in folder.iterdir() if entry.name.endswith(".txt"))
    names.sort(key=lambda name: name != FIRST_LANGUAGE)
    said: dict[str, str] = {}
    heads: dict[str, tuple[str, ...]] = {}
    cues: dict[str, set[str]] = {}
    for name in names:
        for kind, label, phrase in _lines(name, (folder / name).read_text(encoding="utf-8")):
            if kind == "say":
                said.setdefault(phrase, label)
            elif kind == "head":
                heads[phrase] = (*heads.get(phrase, ()), label)
            else:
                cues.setdefault(label, set()).add(phrase)
    typo_words = [*said, *(phrase for label in MENDED_CUES for phrase in cues[label])]
    openers = frozenset(phrase.split()[0] for phrase in (*said, *heads))
    copulas = frozenset(phrase.split()[-1] for phrase in cues["be"])
    labelled = {label: frozenset(found) for label, found in cues.items()}
    cued = frozenset(word for label in FREE_CUES for phrase in labelled[label] for word in phrase.split())
    polite = frozenset(phrase.split()[0] for label in ("polite", "slip") for phrase in labelled[label])
    leads = frozenset(phrase.split()[0] for label in LEAD_CUES for phrase in labelled[label])
    spelt_wrong = slips_of(typo_words), slips_of(heads)
    return Phrasebook(said, heads, labelled, *spelt_wrong, openers, polite, leads, cued, copulas)


LEAD_CUES = ("lead", "wish", "doing")


FREE_CUES = ("lasttime", "history", "insteadof", "instead", "leave", "leftout", "taken", "swapend", "goesout")


MENDED_CUES = (
    "slip",
    "tail",
    "mean",
    "be",
    "make",
    "delete",
    "move",
    "only",
    "forget",
    "yes",
    "wrongly",
    "swapped",
    "toomany",
    "doubled",
    "undone",
)


def _lines(file: str, text: str) -> list[tuple[str, str, str]]:
    found = []
    kept: dict[str, str] = {}
    for number, line in enumerate(text.splitlines(), start=1):
        kind, _, rest = line.partition(" ")
        if kind not in PHRASEBOOK:
            continue
        label, colon, listed = rest.partition(":")
        if not colon or not label.strip():
            raise MalformedWords(file, number, line)
        for phrase in (way for written in listed.split(",") for way in ways_of(written)):
            words = " ".join([said for word in phrase.split() if (said := _said(word, kept))])
            if words:
                found.append((kind, label.strip(), words))
    return found


def _said(word: str, kept: dict[str, str]) -> str:
    """One word of a phrase as it is spoken; the many phrases are made of few words."""
    if word not in kept:
        kept[word] = " ".join([said for said, _ in spoken_words(tokenize(clean(word)))])
    return kept[word]
