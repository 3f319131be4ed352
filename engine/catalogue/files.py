"""The catalogue's data files, read and checked against each other.

A name in a stanza belongs to that exercise alone. A name of several exercises stands in `names/shared.txt` (or in the
file of its language) with all its owners behind it, so that no clash happens by accident.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from importlib.resources import files
from importlib.resources.abc import Traversable

from engine.catalogue.entry import Entry, parse_entry
from engine.catalogue.phrases import normalise
from engine.catalogue.problems import MalformedData
from engine.catalogue.spellings import Named, Owners, all_spellings
from engine.catalogue.stanzas import parse_stanzas, said_lines
from engine.values.exercise import Exercise
from engine.values.ids import ExerciseName

SHARED = "shared.txt"
SHORT_FORMS = "short_forms.txt"
ORDINARY = "ordinary_words.txt"
EXAMPLE = "row: barbell row, dumbbell row"


@dataclass(frozen=True, slots=True)
class Data:
    exercises: Mapping[ExerciseName, Exercise]
    phrases: Mapping[str, Owners]
    ordinary: frozenset[str]


def read_data() -> Data:
    """The data that come with the program.

    Errors: MalformedData, naming file and line.
    """
    here = files("engine.catalogue")
    return assemble(_texts(here / "exercises"), _texts(here / "names"))


def assemble(exercise_files: Mapping[str, str], name_files: Mapping[str, str]) -> Data:
    """The exercises and phrases of these files, each a text under its file name.

    Errors: MalformedData for a line that cannot be used, a name that two exercises claim, an owner or swap that does
    not exist.
    """
    entries = [parse_entry(stanza) for file, text in exercise_files.items() for stanza in parse_stanzas(file, text)]
    exercises: dict[ExerciseName, Exercise] = {}
    for entry in entries:
        if entry.exercise.name in exercises:
            at = entry.stanza
            raise MalformedData(at.file, at.line, at.name, "a name that has no stanza yet", "one stanza for each name")
        exercises[entry.exercise.name] = entry.exercise
    for entry in entries:
        _check_swaps(entry, exercises)
    named = [*_listed_names(name_files, exercises), *_own_names(entries)]
    short_forms = dict(_listed(SHORT_FORMS, name_files.get(SHORT_FORMS, "")))
    ordinary = (word for _, line in said_lines(name_files.get(ORDINARY, "")) for word in normalise(line).split())
    return Data(exercises, all_spellings(named, exercises, short_forms), frozenset(ordinary))


def _texts(folder: Traversable) -> dict[str, str]:
    found = sorted((entry for entry in folder.iterdir() if entry.name.endswith(".txt")), key=lambda entry: entry.name)
    return {entry.name: entry.read_text(encoding="utf-8") for entry in found}


def _check_swaps(entry: Entry, exercises: Mapping[ExerciseName, Exercise]) -> None:
    for swap in entry.exercise.swaps:
        if swap not in exercises or swap == entry.exercise.name:
            line = next(field.line for field in entry.stanza.every("swaps"))
            raise MalformedData(entry.stanza.file, line, swap, "another exercise's full name", "swaps: leg press")


def _own_names(entries: list[Entry]) -> Iterator[Named]:
    for entry in entries:
        name, file = entry.exercise.name, entry.stanza.file
        yield Named(name, (name,), file, entry.stanza.line, is_english=True)
        for field in entry.names:
            yield from (Named(phrase, (name,), file, field.line, is_english=True) for phrase in field.listed)


def _listed_names(name_files: Mapping[str, str], exercises: Mapping[ExerciseName, Exercise]) -> Iterator[Named]:
    for file, text in name_files.items():
        if file in (SHORT_FORMS, ORDINARY):
            continue
        for number, line in said_lines(text):
            phrase, owners = _pair(file, number, line)
            for owner in owners:
                if owner not in exercises:
                    raise MalformedData(file, number, owner, "an exercise's full name", EXAMPLE)
            yield Named(phrase, tuple(map(ExerciseName, owners)), file, number, is_english=file == SHARED)


def _listed(file: str, text: str) -> Iterator[tuple[str, tuple[str, ...]]]:
    for number, line in said_lines(text):
        phrase, shorts = _pair(file, number, line)
        yield normalise(phrase), tuple(map(normalise, shorts))


def _pair(file: str, number: int, line: str) -> tuple[str, tuple[str, ...]]:
    phrase, colon, listed = line.partition(":")
    pieces = tuple(piece.strip() for piece in listed.split(",") if piece.strip())
    if not colon or not normalise(phrase) or not pieces:
        raise MalformedData(file, number, line, "a phrase, a colon and what it stands for", EXAMPLE)
    return phrase.strip(), pieces
