"""The names of an old log: each met once, whatever the number of rows under it.

Order: what this athlete settled, a name or shorthand as written, the same with its bracket or tail in front ("row
(barbell)", "row, seated cable"), the same without its word for help ("assisted dip"), a slip of the thumb. A name of
several exercises stays open; nothing is guessed.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field

from engine.catalogue.catalogue import Catalogue, normalise
from engine.imports.values import NameMatch, WrittenName
from engine.reading.words.kinds import K
from engine.reading.words.lexicon import lexicon, plain_word
from engine.values.exercise import Exercise
from engine.values.ids import ExerciseName

BRACKET = re.compile(r"([^(\[]+)[(\[]([^)\]]+)[)\]]([^(\[]*)$")
TAIL = re.compile(r"\s*,\s*|\s+[-–—|:]\s+")
LONGEST = 80


@dataclass(frozen=True, slots=True)
class Met:
    match: NameMatch
    meant: tuple[ExerciseName, ...]


@dataclass(slots=True)
class Names:
    """The names met so far, in their order, with how often each."""

    catalogue: Catalogue
    taught: Mapping[str, ExerciseName]
    met: dict[str, Met] = field(default_factory=dict)
    counts: dict[str, int] = field(default_factory=dict)

    def exercise(self, written: str) -> Exercise | None:
        """The one exercise that a name means; None where it is open or unknown."""
        found = self.look_up(written)
        self.counts[written] = self.counts.get(written, 0) + 1
        return self.catalogue.exercises[found.meant[0]] if len(found.meant) == 1 else None

    def look_up(self, written: str) -> Met:
        """What a name means, without counting it."""
        if written not in self.met:
            self.met[written] = self._match(written)
        return self.met[written]

    def written(self) -> tuple[WrittenName, ...]:
        """The names that were counted; spellings that differ in case or signs alone are one."""
        merged: dict[str, WrittenName] = {}
        for name, count in self.counts.items():
            key = normalise(name)
            before = merged[key].lines if key in merged else 0
            first = merged[key].written if key in merged else name
            merged[key] = WrittenName(first, self.met[name].match, self.met[name].meant, before + count)
        return tuple(merged.values())

    def _match(self, written: str) -> Met:
        plain = normalise(written)
        if not plain or len(written) > LONGEST:
            return Met(NameMatch.UNKNOWN, ())
        if (settled := self.taught.get(plain)) is not None and settled in self.catalogue.exercises:
            return Met(NameMatch.AS_WRITTEN, (settled,))
        if (exact := ExerciseName(written)) in self.catalogue.exercises:
            # An export writes whole names: one that is another lift's shorthand too comes back as it was.
            return Met(NameMatch.AS_WRITTEN, (exact,))
        if owners := self.catalogue.owners(written):
            return _met(owners, NameMatch.AS_WRITTEN)
        for way in (*_reordered(written), *_unaided(written)):
            if owners := self.catalogue.owners(way):
                return _met(owners, NameMatch.REORDERED)
        return _met(self.catalogue.closest(written), NameMatch.MENDED)


def _met(meant: tuple[ExerciseName, ...], match: NameMatch) -> Met:
    if len(meant) == 1:
        return Met(match, meant)
    return Met(NameMatch.OPEN if meant else NameMatch.UNKNOWN, meant)


def _reordered(written: str) -> Iterator[str]:
    """ "row (barbell)" and "row, barbell" as "barbell row"; what stands behind a bracket stays behind."""
    if found := BRACKET.match(written):
        yield f"{found[2]} {found[1]} {found[3]}"
        yield f"{found[1]} {found[2]} {found[3]}"
    parts = [part for part in TAIL.split(written) if part]
    if len(parts) == 2:
        yield f"{parts[1]} {parts[0]}"
        yield f"{parts[0]} {parts[1]}"


def _unaided(written: str) -> Iterator[str]:
    """ "band assisted pull-up" as "pull-up": the word for help, and what stands ahead of it, left away."""
    parts = normalise(written).split()
    for place, part in enumerate(parts):
        if is_assisted(part):
            yield " ".join((*parts[:place], *parts[place + 1 :]))
            yield " ".join(parts[place + 1 :])


def is_assisted(written: str) -> bool:
    """Whether a name says that the load is help: "assisted pull-up"."""
    phrases = lexicon().phrases
    meanings = (phrases.get(plain_word(word)) for word in normalise(written).split())
    return any(meaning is not None and meaning.kind is K.ASSISTED for meaning in meanings)
