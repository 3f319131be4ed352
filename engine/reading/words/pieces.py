"""Pieces of a message: numbers with their unit or role, names of exercises, and words with what they do in a set line.

number = NUMBER [ "," digits ] [ unit | role ]      role: reps, sets, times; a letter glued on: 24k 30s 9r 12F 18e 40m
name   = the longest run of words that the catalogue (or this athlete) knows
word   = the longest phrase of the lexicon; anything else is PLAIN
"""

from __future__ import annotations

from collections.abc import Callable, Container, Iterable, Mapping, Sequence
from datetime import date
from decimal import Decimal
from itertools import compress, repeat
from operator import eq, itemgetter
from typing import NamedTuple, TypeVar

from engine.reading.words.kinds import K
from engine.reading.words.roles import Role as Role
from engine.reading.words.tokens import CROSS, Token
from engine.values.effort import Effort
from engine.values.ids import ExerciseName
from engine.values.load import Unit

NOTHING = Decimal(0)
HEADING = "a heading"
"""The text of a word for warming up that heads the sets below it."""


class Piece(NamedTuple):
    """`told` is the number that a word's meaning carries; `spelled`: the number was written as a word."""

    kind: K
    start: int
    end: int
    glued: bool
    text: str
    value: Decimal = NOTHING
    role: Role = Role.BARE
    unit: Unit | None = None
    names: tuple[ExerciseName, ...] = ()
    told: int = 0
    failure: bool = False
    spelled: bool = False
    efforts: tuple[Effort, ...] = ()
    day: date | None = None


UNTOLD = (Role.BARE, None, (), 0, False, False, (), None)
"""The fields of a piece from `role` on, where nothing is told of them."""


def number_piece(token: Token, value: Decimal) -> Piece:
    """A bare number. (Most pieces are numbers and signs: a tuple made directly takes half as long.)"""
    _, text, start, end, glued, _ = token
    return tuple.__new__(Piece, (K.NUMBER, start, end, glued, text, value, *UNTOLD))


def sign_piece(kind: K, token: Token) -> Piece:
    """A sign or a line end."""
    _, text, start, end, glued, _ = token
    return tuple.__new__(Piece, (kind, start, end, glued, text, NOTHING, *UNTOLD))


def word_piece(kind: K, token: Token, end: int, told: int) -> Piece:
    """A word, or a phrase up to `end`, and the number that its meaning carries."""
    _, text, start, _, glued, _ = token
    fields = (kind, start, end, glued, text, NOTHING, Role.BARE, None, (), told, False, False, (), None)
    return tuple.__new__(Piece, fields)


def name_piece(token: Token, end: int, text: str, names: tuple[ExerciseName, ...]) -> Piece:
    """The name of an exercise, and those it may name."""
    fields = (K.NAME, token.start, end, token.glued, text, NOTHING, Role.BARE, None, names, 0, False, False, (), None)
    return tuple.__new__(Piece, fields)


# Passes over a whole message ask these first, and then look only at the places that may concern them: a field taken of
# all pieces at once takes a fifth of a look at each.
KIND: Callable[[Piece], K] = itemgetter(Piece._fields.index("kind"))
TEXT: Callable[[Piece], str] = itemgetter(Piece._fields.index("text"))
ROLE: Callable[[Piece], Role] = itemgetter(Piece._fields.index("role"))
TOLD: Callable[[Piece], int] = itemgetter(Piece._fields.index("told"))


def is_one_word(piece: Piece) -> bool:
    """Whether the piece was typed as it reads: "up", and not "up to" or "ups", which show the same text."""
    return piece.end - piece.start == len(piece.text)


def first_word(piece: Piece) -> str:
    """The first word of the piece; empty for a line end, which has none."""
    return next(iter(piece.text.split()), "")


def last_word(piece: Piece) -> str:
    """The last word of the piece; empty for a line end, which has none."""
    return next(reversed(piece.text.split()), "")


def kinds_of(pieces: Iterable[Piece]) -> set[K]:
    """The kinds that these pieces are of."""
    return set(map(KIND, pieces))


def kinds_in_order(pieces: Iterable[Piece]) -> list[K]:
    """The kind of each piece."""
    return list(map(KIND, pieces))


def texts_in_order(pieces: Iterable[Piece]) -> list[str]:
    """The text of each piece."""
    return list(map(TEXT, pieces))


T = TypeVar("T")


def places_in(wanted: Container[T], told: Sequence[T]) -> list[int]:
    """The places of some kinds, or some roles, among those of a message."""
    return list(compress(range(len(told)), map(wanted.__contains__, told)))


def may_count_reps(number: Piece) -> bool:
    """Whether a number is whole and no more than the reps that anybody does with a load, and told as nothing else."""
    whole = number.value % 1 == 0 and 0 < number.value <= MOST_LOADED_REPS
    return whole and number.role in (Role.BARE, Role.REPS)


def first_place(wanted: Container[T], told: Sequence[T]) -> int:
    """The place of the first of some kinds among those of a message; behind its end where it holds none."""
    return next(compress(range(len(told)), map(wanted.__contains__, told)), len(told))


def places_of(one: T, told: Sequence[T]) -> list[int]:
    """The places of one kind, or one text, among those of a message."""
    return list(compress(range(len(told)), map(eq, repeat(one), told))) if one in told else []


SIGN_KINDS = {
    "x": K.TIMES,
    "@": K.AT,
    "/": K.SLASH,
    "-": K.DASH,
    "+": K.PLUS,
    ",": K.COMMA,
    "(": K.OPEN,
    ")": K.CLOSE,
    ">": K.ARROW,
    ":": K.COLON,
    "=": K.EQUALS,
    ".": K.STOP,
    ";": K.STOP,
    "|": K.STOP,
    "!": K.STOP,
    "?": K.QUESTION,
    "&": K.AND,
    CROSS: K.MISS,
}
UNIT_ROLES: Mapping[K, tuple[Role, Unit | None]] = {
    K.KG: (Role.LOAD, Unit.KG),
    K.LB: (Role.LOAD, Unit.LB),
    K.SECONDS: (Role.SECONDS, None),
    K.MINUTES: (Role.SECONDS, None),
    K.METRES: (Role.METRES, None),
    K.SETS: (Role.SETS, None),
    K.REPS: (Role.REPS, None),
    K.TIMES_WORD: (Role.TIMES, None),
    K.FAR: (Role.NOT_A_SET, None),
}
LETTERS: Mapping[str, tuple[Role, Unit | None]] = {
    "s": (Role.PLURAL, None),
    "er": (Role.PLURAL, None),
    "r": (Role.REPS, None),
    "k": (Role.LOAD, Unit.KG),
    "m": (Role.METRES, None),
    "e": (Role.BARE, None),
    "ea": (Role.BARE, None),
    "f": (Role.BARE, None),
    "min": (Role.SECONDS, None),
}
NO_SUFFIX = frozenset(("x", "@", "/", "+", ":", ";", "(", ")", "\n", "|", "!"))
"""Signs behind a number that leave it as it is."""
LAST_OF_THE_REPS, LAST_OF_THE_SETS, LAST_ALONE = 1, 2, 3
"""What a LAST piece tells where it says "last rep", "last set" or "the last", and not "last one"."""
BEHIND_THE_LEAD = 1
"""What a separator tells where sets stood in front of it that go with the name behind it."""
TOLD_IN_FIGURES = 2
"""What a STORY piece tells where its time was counted: "ten years ago", "in 2015"."""
NAME_BEHIND_THE_LEAD = 3
"""The same, where the name stands behind numbers of its clause: "60x8, 70x5 on bench"."""
BEHIND_A_WARM_UP_NAMED = 6
"""What a separator tells behind a lift that sets stood in front of, with a word for warming up ahead of them."""
BEHIND_A_LEAD = frozenset((BEHIND_THE_LEAD, NAME_BEHIND_THE_LEAD))
LIST_IN_DOUBT = 2
"""What a separator tells where the numbers in front of it may go with the name behind it."""
WAY_IN_DOUBT = 2
"""What the name of a way tells where all sets in front of it may have been done so, and not the last alone."""
AGAIN_OR_SO = 4
"""What the name of a lift tells that was put in behind a way, where the sets may go on that way."""
BEHIND_OR_AHEAD = 5
"""What the name of a way tells between sets with no sign, which may be that of those before it or behind it."""
SETTING_OR_LIFT = 7
"""What a name tells where it and its number may be the setting of a bench or a cable: "incline 30"."""
WAY_OR_KIT = 3
"""What the name of a lift tells where it may be something worn, too: "belt"."""
SPACED_LETTERS = frozenset("sm")
DECIMAL_ENDINGS = frozenset(("5", "25", "75"))
SIXTY = Decimal(60)
COUNTED = frozenset((K.NUMBER, K.COUNT))
"""Kinds that tell how many: "8", "a double"."""
MOST_LOADED_REPS = 30
"""A number above this is a load, not reps of a loaded set. Common practice, no source."""
MOST_SETS = 10
"""A number up to this may count sets of one load. Common practice, no source."""
