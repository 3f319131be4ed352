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
from engine.catalogue.phrases import normalise, spellings
from engine.catalogue.problems import MalformedData
from engine.catalogue.stanzas import parse_stanzas, said_lines
from engine.values.exercise import Exercise
from engine.values.ids import ExerciseName

Owners = tuple[ExerciseName, ...]

SHORT_FORMS = "short_forms.txt"
ORDINARY = "ordinary_words.txt"


@dataclass(frozen=True, slots=True)
class Data:
    exercises: Mapping[ExerciseName, Exercise]
    phrases: Mapping[str, Owners]
    ordinary: frozenset[str]


@dataclass(frozen=True, slots=True)
class Named:
    """A phrase with all its owners, and where that stands."""

    phrase: str
    owners: Owners
    file: str
    line: int


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
            raise MalformedData(
                entry.stanza.file, entry.stanza.line, entry.stanza.name, "a new name", "one stanza each"
            )
        exercises[entry.exercise.name] = entry.exercise
    for entry in entries:
        _check_swaps(entry, exercises)
    named = [*_listed_names(name_files, exercises), *_own_names(entries)]
    short_forms = dict(_listed(SHORT_FORMS, name_files.get(SHORT_FORMS, "")))
    ordinary = (word for _, line in said_lines(name_files.get(ORDINARY, "")) for word in normalise(line).split())
    return Data(exercises, _phrases(named, short_forms), frozenset(ordinary))


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
        yield Named(name, (name,), file, entry.stanza.line)
        for field in entry.names:
            yield from (Named(phrase, (name,), file, field.line) for phrase in field.listed)


def _listed_names(name_files: Mapping[str, str], exercises: Mapping[ExerciseName, Exercise]) -> Iterator[Named]:
    for file, text in name_files.items():
        if file in (SHORT_FORMS, ORDINARY):
            continue
        for number, line in said_lines(text):
            phrase, owners = _pair(file, number, line)
            for owner in owners:
                if owner not in exercises:
                    raise MalformedData(
                        file, number, owner, "an exercise's full name", "row: barbell row, dumbbell row"
                    )
            yield Named(phrase, tuple(ExerciseName(owner) for owner in owners), file, number)


def _listed(file: str, text: str) -> Iterator[tuple[str, tuple[str, ...]]]:
    for number, line in said_lines(text):
        phrase, shorts = _pair(file, number, line)
        yield normalise(phrase), tuple(map(normalise, shorts))


def _pair(file: str, number: int, line: str) -> tuple[str, tuple[str, ...]]:
    phrase, colon, listed = line.partition(":")
    pieces = tuple(piece.strip() for piece in listed.split(",") if piece.strip())
    if not colon or not normalise(phrase) or not pieces:
        raise MalformedData(
            file, number, line, "a phrase, a colon and what it stands for", "row: barbell row, dumbbell row"
        )
    return phrase.strip(), pieces


def _phrases(named: list[Named], short_forms: Mapping[str, tuple[str, ...]]) -> dict[str, Owners]:
    """Every spelling with its owners. What is written out in a file goes before what follows from a short form."""
    written: dict[str, Named] = {}
    for name in named:
        before = written.setdefault(normalise(name.phrase), name)
        is_listed_full_name = name.phrase in name.owners and name.owners[0] in before.owners
        if set(before.owners) != set(name.owners) and not is_listed_full_name:
            read = f"{name.phrase} ({before.file}, line {before.line}, gives it to {', '.join(before.owners)})"
            raise MalformedData(name.file, name.line, read, "one place for a phrase", "all owners in names/shared.txt")
    phrases = {spelling: name.owners for spelling, name in written.items()}
    for name in named:
        for spelling in spellings(name.phrase, short_forms):
            known = phrases.setdefault(spelling, name.owners)
            if known is not name.owners and spelling not in written and set(known) != set(name.owners):
                phrases[spelling] = tuple(dict.fromkeys((*known, *name.owners)))
    return phrases
