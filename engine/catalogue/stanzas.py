"""Stanzas: the shape of the files in `exercises/`.

stanza  = NAME newline field*                   (the name stands at the margin)
field   = INDENT label ":" text newline         (a label may stand twice; each text is kept)

A line that starts with "#" and an empty line say nothing.

barbell back squat
  names: squat, back squat, sq
  prime: quads, glutes
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from engine.catalogue.problems import MalformedData


@dataclass(frozen=True, slots=True)
class Field:
    label: str
    text: str
    line: int

    @property
    def listed(self) -> tuple[str, ...]:
        """The text as a list: its pieces between commas."""
        return tuple(piece.strip() for piece in self.text.split(",") if piece.strip())


@dataclass(frozen=True, slots=True)
class Stanza:
    name: str
    file: str
    line: int
    fields: tuple[Field, ...]

    def every(self, label: str) -> tuple[Field, ...]:
        return tuple(field for field in self.fields if field.label == label)

    def first(self, label: str) -> Field | None:
        return next(iter(self.every(label)), None)


def parse_stanzas(file: str, text: str) -> tuple[Stanza, ...]:
    """The stanzas of one file, in its order.

    Errors: MalformedData for a field before any name, or a line that is neither name nor field.
    """
    stanzas: list[Stanza] = []
    for number, line in said_lines(text):
        if line[0] not in " \t":
            stanzas.append(Stanza(_name(file, number, line), file, number, ()))
            continue
        field = _field(file, number, line)
        if not stanzas:
            raise MalformedData(file, number, line.strip(), "an exercise's name first", "the name at the margin")
        last = stanzas.pop()
        stanzas.append(Stanza(last.name, file, last.line, (*last.fields, field)))
    return tuple(stanzas)


def said_lines(text: str) -> Iterator[tuple[int, str]]:
    """The lines that say something, each with its number from 1, without trailing space or comment lines."""
    for number, line in enumerate(text.splitlines(), start=1):
        if line.strip() and not line.lstrip().startswith("#"):
            yield number, line.rstrip()


def _name(file: str, number: int, line: str) -> str:
    if ":" in line or line != line.lower():
        raise MalformedData(
            file, number, line, "a name in lower case, or an indented field", "two spaces before a field"
        )
    return line


def _field(file: str, number: int, line: str) -> Field:
    label, colon, text = line.strip().partition(":")
    if not colon or not text.strip():
        raise MalformedData(file, number, line.strip(), "a label, a colon and a text", "prime: quads, glutes")
    return Field(label.strip(), text.strip(), number)
