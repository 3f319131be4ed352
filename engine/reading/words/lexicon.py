"""The words people use around their sets, in ten languages, each with what it does in a set line.

The words stand in `languages/`, one file a language. A line is `meaning: word, word, longer phrase`; a meaning may
carry a
number (`number 3: three`, `weekday 0: monday`). A word belongs to the first file and line that claims it, English
first;
a longer phrase goes before a shorter one; words in brackets stand for one another, or for none, as in `log (this|it)`.
To add a language, add a file: its name is all that code needs.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from functools import lru_cache
from importlib.resources import files
from importlib.resources.abc import Traversable

from engine.catalogue.phrases import fold_accents
from engine.reading.words.kinds import K, Kind
from engine.reading.words.token_shapes import Shape
from engine.reading.words.tokens import clean, tokenize

FIRST_LANGUAGE = "en.txt"


@dataclass(frozen=True, slots=True)
class Meaning:
    kind: K
    value: int | None = None


@dataclass(frozen=True, slots=True)
class Lexicon:
    """Shape: `phrases` by folded words joined with spaces; `begun`: what longer phrases begin with, word by word.

    `spelled`: words by their accents, where another language's word is the same without: "très" is no "tres", three.
    `also_weekdays` are days of the week whose word an earlier meaning claims: "quinta" is fifth, and Thursday.
    """

    phrases: Mapping[str, Meaning]
    begun: frozenset[str]
    also_weekdays: Mapping[str, int]
    spelled: Mapping[str, Meaning]


class MalformedWords(ValueError):
    """A line of a language file that cannot be used."""

    def __init__(self, file: str, line: int, text: str) -> None:
        super().__init__(f"{file}, line {line}: read “{text}”, expected “meaning: word, word”, as in “sets: set, sets”")


@lru_cache(maxsize=8_192)
def plain_word(word: str) -> str:
    """The word as the lexicon keeps it: lower case, no accents."""
    return word if word.isascii() else fold_accents(word)


@lru_cache(maxsize=1)
def lexicon() -> Lexicon:
    """The words of all languages, read once.

    Errors: MalformedWords, naming file and line.
    """
    names = sorted(entry.name for entry in _folder().iterdir() if entry.name.endswith(".txt"))
    names.sort(key=lambda name: name != FIRST_LANGUAGE)
    return assemble([(name, _text_of(name)) for name in names])


@lru_cache(maxsize=1)
def first_words() -> frozenset[str]:
    """The single words of the first language alone.

    Errors: MalformedWords, naming file and line.
    """
    phrases = assemble([(FIRST_LANGUAGE, _text_of(FIRST_LANGUAGE))]).phrases
    return frozenset(word for phrase in phrases for word in phrase.split())


def _folder() -> Traversable:
    return files("engine.reading") / "languages"


def _text_of(file: str) -> str:
    return (_folder() / file).read_text(encoding="utf-8")


def assemble(texts: list[tuple[str, str]]) -> Lexicon:
    """The lexicon of these files, each a name and a text, in order of precedence.

    Errors: MalformedWords, naming file and line.
    """
    phrases: dict[str, Meaning] = {}
    also_weekdays: dict[str, int] = {}
    spellings: dict[str, str] = {}
    spelled: dict[str, Meaning] = {}
    for file, text in texts:
        for meaning, words in _said(file, text):
            phrase, written = " ".join(map(plain_word, words)), " ".join(words)
            first = phrases.setdefault(phrase, meaning)
            if meaning.kind is K.WEEKDAY and first.kind is K.ORDINAL and meaning.value is not None:
                also_weekdays[phrase] = meaning.value
            if spellings.setdefault(phrase, written) != written and meaning != first and len(words) == 1:
                spelled.setdefault(written, meaning)
    for phrase, meaning in [(phrase, meaning) for phrase, meaning in phrases.items() if "'" in phrase]:
        bare = phrase.replace("'", "")  # "thats", "couldnt": typed on a telephone
        phrases.setdefault(bare, meaning)
    kept = {word: meaning for word, meaning in spelled.items() if len(word) > 1}  # "à" is a little word of many
    return Lexicon(phrases, _begun(phrases), also_weekdays, kept)


def _begun(phrases: Iterable[str]) -> frozenset[str]:
    """All that is said before a phrase is whole: "in" and "in the" of "in the tank"."""
    return frozenset(phrase[:at] for phrase in phrases for at, letter in enumerate(phrase) if letter == " ")


def _said(file: str, text: str) -> Iterator[tuple[Meaning, list[str]]]:
    for number, line in enumerate(text.splitlines(), start=1):
        if not line.strip() or line.startswith("#"):
            continue
        label, colon, listed = line.partition(":")
        name, _, value = label.strip().partition(" ")
        if name in PHRASEBOOK:
            continue
        if not colon or name not in Kind._value2member_map_ or (value and not value.isdigit()):
            raise MalformedWords(file, number, line)
        meaning = Meaning(Kind(name), int(value) if value else None)
        for phrase in (way for written in listed.split(",") for way in ways_of(written)):
            words = _written_words(phrase)
            if words:
                yield meaning, words


def ways_of(written: str) -> list[str]:
    """The phrases that one stands for whose brackets hold words to choose from."""
    before, opened, rest = written.partition("(")
    if not opened:
        return [written]
    choices, _, behind = rest.partition(")")
    return [before + choice + way for choice in choices.split("|") for way in ways_of(behind)]


def _written_words(phrase: str) -> list[str]:
    """The words of a phrase with their accents."""
    return [token.text for token in tokenize(clean(phrase)) if token.shape in WORDLIKE]


PHRASEBOOK = ("say", "head", "cue")
"""Lines of a language file that hold whole phrases; `phrasebook` reads them."""

WORDLIKE = (Shape.WORD, Shape.NUMBER, Shape.ORDINAL)
