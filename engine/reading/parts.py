"""Which of the standing sets a correction speaks of.

part = "last [set]" | "first [two]" | "set" NUMBER | ORDINAL "set" | name
Parts count within the exercise of the latest set message, or the one named, on that day, over all its messages.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field

from engine.catalogue.catalogue import Catalogue
from engine.reading.kinds import K
from engine.reading.pieces import Piece, Role
from engine.reading.values import Context
from engine.values.ids import ExerciseName
from engine.values.sets import SetRecord

MOST_PARTS = 12


@dataclass(slots=True)
class Part:
    """`places`: the sets pointed at one by one; `named`: the exercise that was said; `number_pieces`: numbers that
    point.
    """

    named: ExerciseName | None = None
    named_unknown: bool = False
    known_today: bool = False
    last: bool = False
    places: list[SetRecord] = field(default_factory=list)
    number_pieces: list[Piece] = field(default_factory=list)

    @property
    def used_numbers(self) -> int:
        return len(self.number_pieces)


def sets_of(part: Part, context: Context) -> list[SetRecord]:
    """All sets of the day of the exercise named, or of the latest one."""
    last = context.recent[-1]
    exercise = part.named or last.done.exercise
    same = [record for record in context.recent if record.done.exercise == exercise]
    day = same[-1].on if same else last.on
    return [record for record in same if record.on == day]


def group_of(part: Part, context: Context) -> list[SetRecord]:
    """The sets that "last", "first two" and "set 2" count in."""
    return sets_of(part, context)


def part_told(pieces: Sequence[Piece], context: Context, catalogue: Catalogue) -> Part | None:
    """The part that these pieces point at; None where they point at nothing."""
    part = Part()
    _name(part, pieces, context)
    group = group_of(part, context)
    for at, piece in enumerate(pieces):
        if piece.kind in (K.LAST, K.FIRST):
            _end(part, pieces, at, group)
        elif piece.kind is K.SETS and at + 1 < len(pieces) and not piece.text.endswith("s"):
            _numbered(part, pieces[at + 1], group)
        elif piece.kind is K.ORDINAL:
            _point(part, piece.told, group)
    return part if part.named or part.named_unknown or part.places or part.last else None


def _name(part: Part, pieces: Sequence[Piece], context: Context) -> None:
    named = [piece.names for piece in pieces if piece.kind is K.NAME]
    if not named:
        return
    done = [record.done.exercise for record in reversed(context.recent)]
    part.named = next((exercise for exercise in done if exercise in named[0]), None)
    part.known_today = part.named is not None
    part.named_unknown = part.named is None


def _end(part: Part, pieces: Sequence[Piece], at: int, group: list[SetRecord]) -> None:
    """ "last", "last two", "first 3"."""
    count = 1
    after = pieces[at + 1] if at + 1 < len(pieces) else None
    behind = pieces[at + 2].kind if at + 2 < len(pieces) else None
    counts = (
        after is not None
        and after.kind is K.NUMBER
        and after.role in (Role.BARE, Role.SETS)
        and after.value <= MOST_PARTS
    )
    if (
        after is not None
        and counts
        and (after.spelled or after.role is Role.SETS or behind is not None)
        and behind is not K.TIMES
    ):
        count = int(after.value)
        part.number_pieces.append(after)
    if pieces[at].text in ("last", "first") and pieces[at].kind is K.LAST and count == 1:
        part.last = True
    part.places = group[-count:] if pieces[at].kind is K.LAST else group[:count]


def _numbered(part: Part, number: Piece, group: list[SetRecord]) -> None:
    if number.kind is K.NUMBER and number.role is Role.BARE and number.value == int(number.value):
        part.number_pieces.append(number)
        _point(part, int(number.value), group)


def _point(part: Part, place: int, group: list[SetRecord]) -> None:
    if 1 <= place <= len(group):
        part.places = [*part.places, group[place - 1]]
