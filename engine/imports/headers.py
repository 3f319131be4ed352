"""What a column is called and what a cell may say in words, in the languages of `headers/`, one file a language.

A line is `field: header, header`; `is value: word, word` names what words in a cell, and units behind a header, mean;
`filler: word, word` those of a header that mean nothing alone. A header belongs to the first file and line that claims
it, English first. To add a language, add a file: its name is all that code needs.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from enum import Enum
from functools import lru_cache
from importlib.resources import files

from engine.catalogue.phrases import fold_accents

FIRST_LANGUAGE = "en.txt"
FILLER = "filler"
NOT_A_WORD = re.compile(r"[^\w%]+|_")


class Field(Enum):
    """What a column holds."""

    DATE = "date"
    DAY = "day"  # a date where its cells are dates
    EXERCISE = "exercise"
    SETS = "sets"
    SET_NUMBER = "set number"
    REPS = "reps"
    WORK = "work"  # sets, reps and perhaps the load in one cell
    LOAD_REPS = "load x reps"  # both in one cell, in the order that the header says
    REPS_LOAD = "reps x load"
    REPS_SETS = "reps x sets"
    LOAD = "load"
    UNIT = "unit"
    RPE = "rpe"
    RIR = "rir"
    EFFORT = "effort"
    NOTES = "notes"
    SECONDS = "seconds"
    DURATION = "duration"  # of the set where the exercise is a hold, else of whatever
    METRES = "metres"
    DISTANCE = "distance"  # of the set where the exercise is a carry
    KIND = "kind"
    WARMUP = "warmup"
    FAILURE = "failure"
    MISSED = "missed"
    SIDE = "side"
    COUNTS = "counts"  # what the load counts: total, per hand, body, stack
    PLANNED = "planned"  # what only a plan has a column for


class Says(Enum):
    """What a cell in words says."""

    WORK = "work"
    WARMUP = "warmup"
    DROP = "drop"
    REST_PAUSE = "rest-pause"
    FAILURE = "failure"
    YES = "yes"
    NO = "no"
    LEFT = "left"
    RIGHT = "right"
    BODY = "body"
    BAND = "band"
    EACH = "each"
    NOTHING = "nothing"
    REPS = "reps"
    TOTAL = "total"
    KG = "kg"
    LB = "lb"
    SECONDS = "seconds"
    MINUTES = "minutes"
    METRES = "metres"
    KILOMETRES = "kilometres"
    YARDS = "yards"
    FEET = "feet"
    MILES = "miles"


UNITS = frozenset(
    (
        *(Says.KG, Says.LB, Says.SECONDS, Says.MINUTES),
        *(Says.METRES, Says.KILOMETRES, Says.YARDS, Says.FEET, Says.MILES),
    )
)


@dataclass(frozen=True, slots=True)
class Words:
    """Shape: `fields` gives a header's field and its rank among the headers of that field (0 goes first)."""

    fields: Mapping[str, tuple[Field, int]]
    says: Mapping[str, frozenset[Says]]
    fillers: frozenset[str] = frozenset()


class MalformedHeaders(ValueError):
    """A line of a header file that cannot be used."""

    def __init__(self, file: str, line: int, text: str) -> None:
        expected = "expected “field: header, header”, as in “reps: reps, rep”"
        super().__init__(f"{file}, line {line}: read “{text}”, {expected}")


@lru_cache(maxsize=8_192)
def plain_header(text: str) -> str:
    """A header or a word of a cell as the files keep it: lower case, no accents, words of letters and figures alone."""
    return " ".join(NOT_A_WORD.sub(" ", fold_accents(text)).split())


@lru_cache(maxsize=1)
def words() -> Words:
    """The words of all languages, read once.

    Errors: MalformedHeaders, naming file and line.
    """
    folder = files("engine.imports") / "headers"
    names = sorted(entry.name for entry in folder.iterdir() if entry.name.endswith(".txt"))
    names.sort(key=lambda name: name != FIRST_LANGUAGE)
    return assemble([(name, (folder / name).read_text(encoding="utf-8")) for name in names])


def assemble(texts: list[tuple[str, str]]) -> Words:
    """The words of these files, each a name and a text, in order of precedence.

    Errors: MalformedHeaders, naming file and line.
    """
    fields: dict[str, tuple[Field, int]] = {}
    says: dict[str, frozenset[Says]] = {}
    fillers: set[str] = set()
    for meaning, word, rank in (found for file, text in texts for found in _listed(file, text)):
        if isinstance(meaning, Field):
            fields.setdefault(word, (meaning, rank))
        elif isinstance(meaning, Says):
            says[word] = says.get(word, frozenset()) | {meaning}
        else:
            fillers.add(word)
    return Words(fields, says, frozenset(fillers))


def _listed(file: str, text: str) -> Iterator[tuple[Field | Says | str, str, int]]:
    for number, line in enumerate(text.splitlines(), start=1):
        if not line.strip() or line.startswith("#"):
            continue
        label, colon, listed = line.partition(":")
        meaning = _meaning(label.strip())
        if meaning is None or not colon:
            raise MalformedHeaders(file, number, line)
        for rank, word in enumerate(listed.split(",")):
            if plain_header(word):
                yield meaning, plain_header(word), rank


def _meaning(label: str) -> Field | Says | str | None:
    if label == FILLER:
        return label
    if label.startswith("is "):
        value = label.removeprefix("is ")
        return Says(value) if value in Says._value2member_map_ else None
    return Field(label) if label in Field._value2member_map_ else None


def units_said(word: str) -> frozenset[Says]:
    """The units that a word may name; empty where it names none."""
    return said(word) & UNITS


@lru_cache(maxsize=8_192)
def said(cell: str) -> frozenset[Says]:
    """What a cell in words says; empty where its words are none of ours."""
    return words().says.get(plain_header(cell), frozenset())
