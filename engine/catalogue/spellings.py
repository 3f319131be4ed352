"""All the ways to write a name.

From a phrase in a data file follow: German ae, oe, ue for its dots; the short forms ("db" for dumbbell) and, where a
phrase has one, what it is short for; all in one word ("legpress"); and, for English names, the equipment said before it
("cable pushdown", "dumbbell lunge"), which at a shared name leaves only the owners that use that equipment.
"""

from __future__ import annotations

import unicodedata
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from engine.catalogue.phrases import folded_words, normalise
from engine.catalogue.problems import MalformedData
from engine.values.exercise import Equipment, Exercise
from engine.values.ids import ExerciseName

Owners = tuple[ExerciseName, ...]
ShortForms = Mapping[str, tuple[str, ...]]

UMLAUTS = str.maketrans({"ä": "ae", "ö": "oe", "ü": "ue"})
SAID_BEFORE = tuple(
    equipment
    for equipment in Equipment
    # "bw pull ups" says what was loaded, and nobody says "strongman implement yoke".
    if equipment not in (Equipment.BODY_WEIGHT, Equipment.STRONGMAN)
)
MOST_WORDS_AFTER_EQUIPMENT = 3


@dataclass(frozen=True, slots=True)
class Named:
    """A phrase with all its owners, and where that stands."""

    phrase: str
    owners: Owners
    file: str
    line: int
    is_english: bool


def all_spellings(
    named: Sequence[Named], exercises: Mapping[ExerciseName, Exercise], short_forms: ShortForms
) -> dict[str, Owners]:
    """Every normalised spelling with its owners. What a file writes out goes before what follows from other names.

    Errors: MalformedData for a phrase that two lines give to different owners.
    """
    written = _written(named)
    found = dict(written)
    for name in named:
        for spelling in spellings(name.phrase, short_forms):
            found.setdefault(spelling, written[normalise(name.phrase)])
    for name in named:
        long = _written_out(normalise(name.phrase), short_forms)
        several = name.is_english and " " in long
        for spelling in _shortened(long, short_forms) if several else ():
            found.setdefault(spelling, written[normalise(name.phrase)])
    for name in named:
        for phrase, owners in _with_equipment(name, exercises) if name.is_english else ():
            for spelling in _shortened(normalise(phrase), short_forms):
                found.setdefault(spelling, owners)
    return found


def _written(named: Sequence[Named]) -> dict[str, Owners]:
    first: dict[str, Named] = {}
    for name in named:
        before = first.setdefault(normalise(name.phrase), name)
        is_listed_full_name = name.phrase in name.owners and name.owners[0] in before.owners
        if set(before.owners) != set(name.owners) and not is_listed_full_name:
            read = f"{name.phrase} ({before.file}, line {before.line}, gives it to {', '.join(before.owners)})"
            raise MalformedData(name.file, name.line, read, "one place for a phrase", "all owners in names/shared.txt")
    return {spelling: name.owners for spelling, name in first.items()}


def _with_equipment(name: Named, exercises: Mapping[ExerciseName, Exercise]) -> Iterator[tuple[str, Owners]]:
    plain = normalise(name.phrase)
    for equipment in SAID_BEFORE:
        owners = tuple(owner for owner in name.owners if exercises[owner].equipment is equipment)
        if owners and equipment.value not in plain and len(plain.split()) <= MOST_WORDS_AFTER_EQUIPMENT:
            yield f"{equipment.value} {plain}", owners


def spellings(phrase: str, short_forms: ShortForms) -> Iterator[str]:
    """Every normalised spelling of one phrase, the plain one first.

    Shape: `short_forms` maps a normalised piece of a name to the shorter ways of writing it ("dumbbell" to "db").
    """
    umlauts = normalise(unicodedata.normalize("NFC", phrase).lower().translate(UMLAUTS))
    for plain in dict.fromkeys((normalise(phrase), umlauts)):
        for spelling in _shortened(plain, short_forms):
            yield spelling
            yield spelling.replace(" ", "")
    # Written as one word, an inner plural stands: "farmerswalk".
    yield normalise("".join(folded_words(phrase)))


def _written_out(spelling: str, short_forms: ShortForms) -> str:
    """The spelling with its one-word short forms written out: "incline db press" is the incline dumbbell press."""
    long = {shorts[0]: piece for piece, shorts in short_forms.items() if " " not in shorts[0]}
    return " ".join(long.get(word, word) for word in spelling.split())


def _shortened(spelling: str, short_forms: ShortForms) -> tuple[str, ...]:
    found: tuple[str, ...] = (spelling,)
    for piece, shorts in short_forms.items():
        if f" {piece} " in f" {spelling} ":
            found += tuple(
                f" {name} ".replace(f" {piece} ", f" {short} ").strip() for name in found for short in shorts
            )
    return found
