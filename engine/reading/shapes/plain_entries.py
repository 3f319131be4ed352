"""The shortest road: an entry of plain numbers in one of the forms that most sets are told in.

entry = [ separator ] form [ effort ] [ remark ] [ separator ]      an effort or a remark behind one group or one pair
form  = SETS "x" REPS LOAD | LOAD SETS "x" REPS | SETS "x" REPS ( "@" | "with" ) LOAD      3x8 60     3x8 at 60
      | LOAD REPS [ sign ] REPS ...        sign: "," "/"                     60 8 8 7     60 8/8/7     60/8/8/7
      | LOAD "x" REPS [ sign ] LOAD "x" REPS ...    sign: "," LINE           80x5, 85x3
      | REPS "x" LOAD [ sign ] REPS "x" LOAD ...                             5x82.5 4x82.5
      | REPS "@" LOAD [ "," REPS "@" LOAD ] ...                              8@60, 7@60
      | LOAD "x" REPS [ "," ] REPS ... | LOAD "x" REPS "x" SETS              60x8,8,7     100x5x3
      | 2 "x" LOAD SETS "x" REPS                                             of what two hands hold: 2x24kg 3x10
      | REPS [ sign ] REPS ... | SETS "x" REPS                               of a lift of the body: 9 8 7

In these forms no number can be anything else: a LOAD has its unit, or is more than anyone counts in reps; it is told
for a pair ("30s") of what two hands hold, or as what is added ("+10") to the body. So there is one reading, and it is
the one that the walk over chunks comes to; all else is left to that walk.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from decimal import Decimal
from typing import NamedTuple

from engine.reading.chunks.choices import BODY_COUNTS, HELD_AT_ONCE, LOADED_COUNTS, Traits
from engine.reading.chunks.lists import is_their_sum
from engine.reading.marks.effort_spans import BETWEEN_TWO
from engine.reading.marks.scales import is_bare_tempo
from engine.reading.shapes.plain import Group
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_SETS, Piece, Role
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
PLAIN_ROLES = frozenset((Role.BARE, Role.LOAD, Role.PLURAL, Role.CHANGE))
SHARES = frozenset(("%", "short"))
"""Remarks that say how much of something was done."""
IN_BOTH_HANDS = 2
PIECES_OF_A_PAIR = 4
FEWEST_RISING = 3
"""So many bare numbers that rise behind "8s" may be loads."""
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
    behind = end
    end = _without_remarks(pieces, start, end)
    remarked = end < behind
    effort, end = _effort_behind(pieces, start, end)
    form = FORMS.get(tuple(kinds[start:end]))
    if form is None or ((remarked or effort is not None) and not form.is_alone):
        return None
    told = pieces[start:end]
    numbers = [piece for piece in told if piece.kind is K.NUMBER]
    if len([number for number in numbers if number.role in PLAIN_ROLES]) < len(numbers):
        return None
    if not all([_is_plain(number) for number in numbers]) or not _are_apart(told, form.is_joined):
        return None
    return PlainNumbers(numbers, form.groups, form.prior, effort)


def _without_remarks(pieces: Sequence[Piece], start: int, end: int) -> int:
    """Where these pieces end without the remarks behind them: "felt heavy"."""
    while end - 1 > start and pieces[end - 1].kind is K.NOTE and _says_how_it_was(pieces[end - 1]):
        end -= 1
        while end - 1 > start and pieces[end - 1].kind in AROUND:
            end -= 1
    return end


def _says_how_it_was(note: Piece) -> bool:
    """Whether the remark leaves the sets what they are: "almost" does not, nor does a share, a tempo or
    what may name another lift, "narrow".
    """
    plain = not note.told and note.text not in SHARES and not is_bare_tempo(note)
    return plain and not is_cued(note.text, OF_THE_SETS)


OF_THE_SETS = frozenset(("nearly", "waybehind"))


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


def _counts_at_load(numbers: Sequence[Piece], traits: Traits) -> list[Group] | None:
    return None if traits.body or _may_be_effort(numbers[-1]) else _counts_and_load(numbers, traits)


def _load_and_counts(numbers: Sequence[Piece], traits: Traits) -> list[Group] | None:
    load, sets, reps = numbers
    return _group(sets, reps, load, traits)


def _load_reps_and_sets(numbers: Sequence[Piece], traits: Traits) -> list[Group] | None:
    load, reps, sets = numbers
    return _group(sets, reps, load, traits) if sets.value <= reps.value and not traits.body else None


def _load_and_list(numbers: Sequence[Piece], traits: Traits) -> list[Group] | None:
    return None if traits.body else _listed(numbers, traits)


def _joined_list(numbers: Sequence[Piece], traits: Traits) -> list[Group] | None:
    """Numbers at a slash, or at a comma that may touch them: of a lift done on one side they may be those of each."""
    return None if traits.one_sided else _listed(numbers, traits)


def _group(sets: Piece, reps: Piece, load: Piece, traits: Traits) -> list[Group] | None:
    if not _is_load(load, traits) or not _counts_reps(reps) or not _counts_sets(sets):
        return None
    if traits.two_implements and sets.value in HELD_AT_ONCE:
        return None  # "2x24 ...": perhaps a pair of them
    return [Group(int(sets.value), int(reps.value), load)]


def _listed(numbers: Sequence[Piece], traits: Traits) -> list[Group] | None:
    load, *reps = numbers
    if traits.body and load.role is Role.BARE:
        bare = all([number.role is Role.BARE and number.value in BODY_REPS for number in numbers])
        counted = bare and not is_their_sum(load, reps)
        return [Group(1, int(number.value), None) for number in numbers] if counted else None
    if not reps or not _is_load(load, traits) or not all([_counts_reps(number) for number in reps]):
        return None
    if load.role is Role.PLURAL and len(reps) >= FEWEST_RISING and reps[0].value < reps[-1].value:
        return None  # "8s: 12 14 16"
    return [Group(1, int(number.value), load) for number in reps]


def _paired(numbers: Sequence[Piece], traits: Traits) -> list[Group] | None:
    firsts, seconds = numbers[::2], numbers[1::2]
    if traits.body:
        sets, each = firsts[0], seconds[0]
        counted = len(seconds) == 1 and _counts_sets(sets) and each.role is Role.BARE and each.value in BODY_REPS
        return [Group(int(sets.value), int(each.value), None)] if counted else None
    if traits.two_implements and any([first.value in HELD_AT_ONCE for first in firsts]):
        return _held_in_both_hands(numbers, traits)
    return _each_at(firsts, seconds, traits) or _each_at(seconds, firsts, traits)


def _held_in_both_hands(numbers: Sequence[Piece], traits: Traits) -> list[Group] | None:
    """ "2x24kg 3x10"."""
    if len(numbers) != PIECES_OF_A_PAIR:
        return None
    pair, load, sets, reps = numbers
    held = pair.role is Role.BARE and pair.value == IN_BOTH_HANDS and load.role is Role.LOAD
    return _group(sets, reps, load, traits) if held else None


def _reps_at_loads(numbers: Sequence[Piece], traits: Traits) -> list[Group] | None:
    loads = numbers[1::2]
    return None if traits.body or any(map(_may_be_effort, loads)) else _each_at(loads, numbers[::2], traits)


def _each_at(loads: Sequence[Piece], reps: Sequence[Piece], traits: Traits) -> list[Group] | None:
    """A set at each load."""
    if len({load.unit for load in loads}) > 1 or not all([_is_load(load, traits) for load in loads]):
        return None
    if not all([_counts_reps(number) for number in reps]):
        return None
    return [Group(1, int(number.value), load) for load, number in zip(loads, reps, strict=True)]


def _may_be_effort(number: Piece) -> bool:
    """ "@2.5"."""
    return number.role is Role.BARE and number.value <= TOP_OF_SCALE


def _is_load(number: Piece, traits: Traits) -> bool:
    role = number.role
    if traits.body:
        return role is Role.CHANGE and number.value > 0
    if role is Role.CHANGE or number.value <= 0:
        return False
    if role is Role.PLURAL:
        return traits.two_implements
    return role is Role.LOAD or number.value not in LOADED_COUNTS


def _counts_reps(number: Piece) -> bool:
    return number.role is Role.BARE and number.value in LOADED_REPS


def _counts_sets(number: Piece) -> bool:
    return number.role is Role.BARE and number.value in SET_COUNTS


class PlainForm(NamedTuple):
    """`prior`: how likely it is before anything is known.

    `is_alone`: an effort or a remark behind it is that of all its sets. `is_joined`: a comma may touch the numbers on
    both sides, and tells the same.
    """

    groups: Form
    prior: float = PLAINLY
    is_alone: bool = False
    is_joined: bool = False


N, X = K.NUMBER, K.TIMES
FEWEST_BEFORE_AN_AT = 4
"""Pieces of an "x" between two numbers, and of an effort behind a sign."""
FORMS: dict[tuple[K, ...], PlainForm] = {
    **{(N,) * count: PlainForm(_listed) for count in range(1, MOST_LISTED + 1)},
    **{
        (*head, *(sign, N) * count): PlainForm(_joined_list, is_joined=True)
        for sign in (K.COMMA, K.SLASH)
        for head in ((N,), (N, N))
        for count in range(1, MOST_LISTED)
    },
    **{(N, X, N) * count: PlainForm(_paired, is_alone=count == 1) for count in range(1, MOST_PAIRS + 1)},
    **{
        (*(N, X, N, sign) * count, N, X, N): PlainForm(_paired)
        for sign in (K.COMMA, K.LINE)
        for count in range(1, MOST_PAIRS)
    },
    **{(N, X, N) + (K.COMMA, N) * count: PlainForm(_load_and_list, is_joined=True) for count in range(1, MOST_LISTED)},
    **{(N, X, N) + (N,) * count: PlainForm(_load_and_list) for count in range(2, MOST_LISTED)},
    **{(N, K.AT, N, K.COMMA) * count + (N, K.AT, N): PlainForm(_reps_at_loads) for count in range(MOST_PAIRS)},
    (N, X, N, X, N): PlainForm(_load_reps_and_sets, is_alone=True),
    (N, X, N, N): PlainForm(_counts_and_load, is_alone=True),
    (N, N, X, N): PlainForm(_load_and_counts, is_alone=True),
    (N, X, N, K.AT, N): PlainForm(_counts_at_load, RATHER, is_alone=True),
    (N, X, N, K.WITH, N): PlainForm(_counts_and_load, RATHER, is_alone=True),
}
