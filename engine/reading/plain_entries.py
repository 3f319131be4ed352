"""The shortest road: an entry of plain numbers in one of the forms that most sets are told in.

entry = [ separator ] form [ effort ] [ separator ]          an effort behind one group or one pair: 3x8 60 @8
form  = SETS "x" REPS LOAD | LOAD SETS "x" REPS | SETS "x" REPS "@" LOAD      3x8 60
      | LOAD REPS REPS ...                                                   60 8 8 7
      | LOAD "x" REPS [ "," ] LOAD "x" REPS ...                              80x5, 85x3
      | LOAD "x" REPS "," REPS ... | LOAD "x" REPS "x" SETS                  60x8,8,7     100x5x3
      | REPS REPS ... | SETS "x" REPS                                        of a lift of the body: 9 8 7

In these forms no number can be anything else: a LOAD has its unit, or is more than anyone counts in reps. So there is
one reading, and it is the one that the walk over chunks comes to; all else is left to that walk.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from decimal import Decimal
from typing import NamedTuple

from engine.reading.choices import BODY_COUNTS, HELD_AT_ONCE, LOADED_COUNTS, MOST_SETS, Traits
from engine.reading.effort_spans import BETWEEN_TWO
from engine.reading.kinds import K
from engine.reading.pieces import Piece, Role
from engine.reading.shape_plain import Group
from engine.values.effort import TOP_OF_SCALE, Effort

AROUND = frozenset((K.LINE, K.COMMA, K.STOP, K.THEN, K.AND))
AHEAD = AROUND | {K.COLON, K.DASH, K.DATE}
MOST_LISTED = 8
MOST_PAIRS = 6
LONGEST = 4 * MOST_PAIRS
"""Pieces of the longest form, with as many separators around it as people write."""
SET_COUNTS = frozenset(Decimal(count) for count in range(1, MOST_SETS + 1))
LOADED_REPS = LOADED_COUNTS - {Decimal(0)}
BODY_REPS = BODY_COUNTS - {Decimal(0)}
PLAIN_ROLES = frozenset((Role.BARE, Role.LOAD))
PLAINLY, RATHER = 1.0, 0.95
"""A load behind "@" alone leaves a little to the other ways to read a pair."""

Form = Callable[[Sequence[Piece], Traits], "list[Group] | None"]


class PlainNumbers(NamedTuple):
    """The numbers of an entry, the form that they stand in, and how likely it is before anything is known."""

    numbers: list[Piece]
    form: Form
    prior: float
    effort: Effort | None

    def groups(self, traits: Traits) -> list[Group] | None:
        """The sets for an exercise of these traits; None where the form is not as plain for it."""
        if traits.timed or traits.carried or traits.explosive:
            return None
        found = self.form(self.numbers, traits)
        if found and self.effort is not None:
            found[0].effort = self.effort
        return found


def plain_numbers(pieces: Sequence[Piece]) -> PlainNumbers | None:
    """The numbers of these pieces, where they stand in one of the plain forms and nothing stands beside them."""
    if len(pieces) > LONGEST:
        return None
    kinds = [piece.kind for piece in pieces]
    start, end = 0, len(kinds)
    while start < end and kinds[start] in AHEAD:
        start += 1
    while start < end and kinds[end - 1] in AROUND:
        end -= 1
    if start == end:
        return None
    effort, end = _effort_behind(pieces, start, end)
    form = FORMS.get(tuple(kinds[start:end]))
    if form is None or (effort is not None and not form.is_rated):
        return None
    told = pieces[start:end]
    numbers = [piece for piece in told if piece.kind is K.NUMBER]
    if len([number for number in numbers if number.role in PLAIN_ROLES]) < len(numbers):
        return None
    if not all([_is_plain(number) for number in numbers]) or not _are_apart(told, form.is_joined):
        return None
    return PlainNumbers(numbers, form.groups, form.prior, effort)


def _effort_behind(pieces: Sequence[Piece], start: int, end: int) -> tuple[Effort | None, int]:
    """The effort that ends these pieces, and where what it is told of ends."""
    last = pieces[end - 1]
    if last.kind is K.EFFORT and len(last.efforts) == 1 and last.told != BETWEEN_TWO:
        return last.efforts[0], end - 1
    signed = end - start > FEWEST_BEFORE_AN_AT and pieces[end - 2].kind is K.AT
    if signed and last.role is Role.BARE and 1 <= last.value <= TOP_OF_SCALE and last.kind is K.NUMBER:
        return Effort.from_rpe(last.value), end - 2
    return None, end


def _is_plain(number: Piece) -> bool:
    return not number.spelled and not number.failure and number.text[-1] != "½"


def _are_apart(told: Sequence[Piece], is_joined: bool) -> bool:
    """Whether no sign joins what stands beside it but an "x", which stands as near to the one as to the other.

    Shape: `is_joined`: a comma may join, too.
    """
    for at, piece in enumerate(told):
        if piece.kind is K.TIMES and piece.glued is not told[at + 1].glued:
            return False
        if piece.kind is K.COMMA and not is_joined and told[at + 1].glued:
            return False
    return True


def _counts_and_load(numbers: Sequence[Piece], traits: Traits) -> list[Group] | None:
    sets, reps, load = numbers
    return _group(sets, reps, load, traits)


def _load_and_counts(numbers: Sequence[Piece], traits: Traits) -> list[Group] | None:
    load, sets, reps = numbers
    return _group(sets, reps, load, traits)


def _load_reps_and_sets(numbers: Sequence[Piece], traits: Traits) -> list[Group] | None:
    load, reps, sets = numbers
    return _group(sets, reps, load, traits) if sets.value <= reps.value else None


def _load_and_list(numbers: Sequence[Piece], traits: Traits) -> list[Group] | None:
    return None if traits.body else _listed(numbers, traits)


def _group(sets: Piece, reps: Piece, load: Piece, traits: Traits) -> list[Group] | None:
    if traits.body or not _is_load(load) or not _counts_reps(reps) or not _counts_sets(sets):
        return None
    if traits.two_implements and sets.value in HELD_AT_ONCE:
        return None  # "2x24 ...": perhaps a pair of them
    return [Group(int(sets.value), int(reps.value), load)]


def _listed(numbers: Sequence[Piece], traits: Traits) -> list[Group] | None:
    if traits.body:
        bare = all([number.role is Role.BARE and number.value in BODY_REPS for number in numbers])
        return [Group(1, int(number.value), None) for number in numbers] if bare else None
    load, *reps = numbers
    if not reps or not _is_load(load) or not all([_counts_reps(number) for number in reps]):
        return None
    return [Group(1, int(number.value), load) for number in reps]


def _paired(numbers: Sequence[Piece], traits: Traits) -> list[Group] | None:
    loads, reps = numbers[::2], numbers[1::2]
    if traits.body:
        sets, each = loads[0], reps[0]
        counted = len(reps) == 1 and _counts_sets(sets) and each.role is Role.BARE and each.value in BODY_REPS
        return [Group(int(sets.value), int(each.value), None)] if counted else None
    if len({load.unit for load in loads}) > 1:
        return None
    if not all([_is_load(load) for load in loads]) or not all([_counts_reps(number) for number in reps]):
        return None
    return [Group(1, int(number.value), load) for load, number in zip(loads, reps, strict=True)]


def _is_load(number: Piece) -> bool:
    return number.value > 0 and (number.role is Role.LOAD or number.value not in LOADED_COUNTS)


def _counts_reps(number: Piece) -> bool:
    return number.role is Role.BARE and number.value in LOADED_REPS


def _counts_sets(number: Piece) -> bool:
    return number.role is Role.BARE and number.value in SET_COUNTS


class PlainForm(NamedTuple):
    """`prior`: how likely it is before anything is known. `is_rated`: an effort behind it is that of all its sets.

    `is_joined`: a comma in it may touch the numbers on both sides, and tells the same.
    """

    groups: Form
    prior: float = PLAINLY
    is_rated: bool = False
    is_joined: bool = False


N, X = K.NUMBER, K.TIMES
FEWEST_BEFORE_AN_AT = 4
"""Pieces of an "x" between two numbers, and of an effort behind a sign."""
FORMS: dict[tuple[K, ...], PlainForm] = {
    **{(N,) * count: PlainForm(_listed) for count in range(1, MOST_LISTED + 1)},
    **{(N, K.COMMA) * count + (N,): PlainForm(_listed) for count in range(1, MOST_LISTED)},
    **{(N, X, N) * count: PlainForm(_paired, is_rated=count == 1) for count in range(1, MOST_PAIRS + 1)},
    **{(N, X, N, K.COMMA) * count + (N, X, N): PlainForm(_paired) for count in range(1, MOST_PAIRS)},
    **{(N, X, N) + (K.COMMA, N) * count: PlainForm(_load_and_list, is_joined=True) for count in range(1, MOST_LISTED)},
    (N, X, N, X, N): PlainForm(_load_reps_and_sets, is_rated=True),
    (N, X, N, N): PlainForm(_counts_and_load, is_rated=True),
    (N, N, X, N): PlainForm(_load_and_counts, is_rated=True),
    (N, X, N, K.AT, N): PlainForm(_counts_and_load, RATHER, is_rated=True),
}
