"""Which of the standing sets a correction speaks of.

part  = "last [two]" | "first [two]" | "set" NUMBER | ORDINAL | "middle one" | "second to last" | "the 60" | name
      | "all" [ "but" part ] | "both" | "the warm ups"
Parts count within the exercise of the latest set message, or the one named, on that day, over all its messages. A
number points where it stands in front of "was", or beside effort, and a set has it as its load, or alone as its reps.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from decimal import Decimal
from itertools import pairwise

from engine.reading.corrections.said_to_be import is_be
from engine.reading.corrections.sets_before import sets_before
from engine.reading.corrections.sets_by_mark import MARKED_SO, by_mark
from engine.reading.corrections.sets_having import at_the_extreme, having
from engine.reading.corrections.so_many import (
    ALL_OF_THEM,
    MARKING,
    THE_OR_THOSE,
    counted_and_marked,
    counted_behind_all,
    ends_behind_reps,
    is_both,
    marks_follow,
    so_many_stand,
)
from engine.reading.latest_sets import latest_of_it, run_of_it, two_latest
from engine.reading.values import Context
from engine.reading.words.cues import CUES_OF, is_cued
from engine.reading.words.kinds import PLACING, K
from engine.reading.words.pieces import Piece, Role, first_word
from engine.values.ids import ExerciseName
from engine.values.sets import SetRecord

MOST_PARTS = 12
COUNTED_IN_WORDS = {"two": 2, "2": 2, "three": 3, "3": 3}
SINGLE = frozenset(("that one", "this one"))


@dataclass(slots=True)
class Part:
    """`places`: the sets pointed at one by one; `named`: the exercise that was said; `used`: the pieces that point.

    `missing`: something was pointed at that no set is.
    """

    named: ExerciseName | None = None
    named_unknown: bool = False
    whole: bool = False
    both: bool = False
    missing: bool = False
    single: bool = False
    places: list[SetRecord] = field(default_factory=list)
    used: list[Piece] = field(default_factory=list)

    @property
    def points(self) -> bool:
        return bool(self.named or self.places or self.whole or self.both)

    def reached(self, context: Context, plural: bool = False) -> list[SetRecord]:
        """The sets that are meant, where a change is for all of a group."""
        if self.places:
            return self.places
        if self.both:
            return two_latest(context)
        if self.named:
            return sets_of(self, context)
        if self.single:
            return latest_of_it(context)[-1:]
        return run_of_it(context) if self.whole or plural else latest_of_it(context)


def sets_of(part: Part, context: Context) -> list[SetRecord]:
    """All sets of the day of the exercise named, or of the latest one."""
    last = context.recent[-1]
    exercise = part.named or last.done.exercise
    same = [record for record in context.recent if record.done.exercise == exercise]
    day = same[-1].on if same else last.on
    return [record for record in same if record.on == day]


def part_told(pieces: Sequence[Piece], context: Context, by_value: bool = False) -> Part:
    """What these pieces point at; `by_value` lets numbers point anywhere, not only in front of "was"."""
    part = Part()
    _name(part, pieces, context)
    group = sets_of(part, context)
    for at, piece in enumerate(pieces):
        _place(part, pieces, at, group)
        if is_all(piece):
            part.whole = True
            _counted_whole(part, pieces[at + 1 :], group, context)
        elif is_cued(piece.text, THE_OR_THOSE):
            _those_counted(part, pieces[at:], group, context)
        elif is_both(piece):
            part.both = True
        elif piece.text in SINGLE:
            part.single = True
        elif piece.kind in MARKED_SO:
            _marked(part, pieces, at, group)
    _ended(part, pieces, group)
    if part.both and part.places and part.places == group[-1:]:
        part.places = group[-2:]  # "both last sets"
    _by_value(part, pieces, group, by_value)
    _excepted(part, pieces, context)
    return part


def _ended(part: Part, pieces: Sequence[Piece], group: list[SetRecord]) -> None:
    """ "everything before 100": all sets up to the one that is told."""
    if part.whole and (ended := sets_before(pieces, group)) is not None:
        part.used.append(ended[0])
        part.places, part.missing = ended[1], part.missing or not ended[1]


def _place(part: Part, pieces: Sequence[Piece], at: int, group: list[SetRecord]) -> None:
    """One set pointed at by its place, or several."""
    piece = pieces[at]
    if piece.kind in (K.LAST, K.FIRST):
        _end(part, pieces, at, group)
    elif piece.kind is K.SETS and piece not in part.used:
        _numbered(part, pieces, at, group)
    elif piece.kind is K.ORDINAL:
        _point(part, piece.told, group)
    elif piece.kind is K.FROM_LAST:
        _point(part, len(group) + 1 - piece.told, group)
    elif piece.kind is K.MIDDLE:
        _point(part, len(group) // 2 + 1 if len(group) % 2 else 0, group)
    elif piece.kind is K.EXTREME:
        _extreme(part, piece, group)


def _marked(part: Part, pieces: Sequence[Piece], at: int, group: list[SetRecord]) -> None:
    """ "the miss was 187.5", "the last drop was 40": the sets with the mark, in place of what the place alone is."""
    tied = at + 1 < len(pieces) and is_be(pieces[at + 1])
    if not (tied or (at and pieces[at - 1].kind in PLACES)):
        return
    found = by_mark(pieces, at, group)
    if found is None:
        return
    if found.place is not None:
        part.places = [record for record in part.places if record not in _placed(found.place, group)]
    part.places += found.sets
    part.missing = part.missing or found.missing


def _placed(place: Piece, group: list[SetRecord]) -> list[SetRecord]:
    """The sets that the place alone points at."""
    alone = Part()
    _place(alone, [place], 0, group)
    return alone.places


def _counted_whole(part: Part, pieces: Sequence[Piece], group: list[SetRecord], context: Context) -> None:
    """ "all three were", "all 3 to failure": so many sets, and no reps."""
    number, behind = counted_behind_all(pieces)
    verb = next((at for at, piece in enumerate(behind) if is_be(piece)), -1)
    if number is None:
        return
    marked = marks_follow(behind)
    another = 1 < number.value <= len(group) and any(piece.kind is K.NUMBER for piece in behind)
    if not (0 <= verb <= MOST_BETWEEN or another or marked):
        return  # "all three at 37.5" tells of so many sets; "all 8" of reps
    part.used.append(number)
    part.missing = part.missing or number.value > len(group)
    part.missing = part.missing or (marked and number.value not in (len(group), *so_many_stand(context)))
    part.places = group[-int(number.value) :]


def _those_counted(part: Part, pieces: Sequence[Piece], group: list[SetRecord], context: Context) -> None:
    """ "those two were", "las tres al fallo": so many sets, and no reps."""
    behind = pieces[1:]
    number = counted_and_marked(behind, context)
    if number is not None or not is_cued(pieces[0].text, THOSE):
        part.used += [] if number is None else [number]
        part.places += [] if number is None else group[-int(number.value) :]
        return
    number = behind[0] if behind and behind[0].kind is K.NUMBER else None
    if number is None or not 1 < number.value <= MOST_PARTS or number.role not in (Role.BARE, Role.SETS):
        return
    told = len(behind) > 1 and is_be(behind[1])
    if number.spelled or number.role is Role.SETS or (told and number.value <= len(group)):
        part.used.append(number)
        part.missing = part.missing or number.value > len(group)
        part.places = group[-int(number.value) :]


THOSE = frozenset(("those",))


def counts_too_many(pieces: Sequence[Piece], context: Context) -> bool:
    """ "all three were", where only two stand, and "first 2 at 90" where one does."""
    numbered = [(at, a, b) for at, (a, b) in enumerate(pairwise(pieces)) if b.kind is K.NUMBER]
    said = any(map(is_be, pieces)) or not MARKING.isdisjoint([piece.kind for piece in pieces])
    told = said and any(is_all(a) for _, a, _ in numbered)
    first = any(_are_first(a, b, pieces[at + 2 :]) for at, a, b in numbered)
    return (told or first) and part_told(pieces, context).missing


MOST_BETWEEN = 3
"""How many words may stand between "all three" and "were": "all three of those sets were"."""


def is_all(piece: Piece) -> bool:
    """Whether the word says "all"."""
    return piece.kind is not K.LAST and says_all(piece)


def says_all(piece: Piece) -> bool:
    """Whether it begins with a word for all."""
    return is_cued(first_word(piece), ALL_OF_THEM)


def _name(part: Part, pieces: Sequence[Piece], context: Context) -> None:
    """The exercise named; where several are, the one that was done."""
    named = [piece.names for piece in pieces if piece.kind is K.NAME]
    if not named:
        return
    done = [record.done.exercise for record in reversed(context.recent)]
    found = (next((exercise for exercise in done if exercise in names), None) for names in named)
    part.named = next((exercise for exercise in found if exercise is not None), None)
    part.named_unknown = part.named is None


def _end(part: Part, pieces: Sequence[Piece], at: int, group: list[SetRecord]) -> None:
    """ "last", "last two", "first 3"; "second to last" has been read already."""
    piece = pieces[at]
    if piece in part.used:
        return
    count = next((COUNTED_IN_WORDS[word] for word in piece.text.split() if word in COUNTED_IN_WORDS), 1)
    after = pieces[at + 1] if at + 1 < len(pieces) else None
    behind = pieces[at + 2].kind if at + 2 < len(pieces) else None
    counts = after is not None and after.kind is K.NUMBER and _counts_sets(after, behind)
    counts = counts and not _is_put_right(after, pieces[at + 2 : at + 4])
    counts = counts or ends_behind_reps(pieces, at, len(group))
    if after is not None and counts and (_is_so_many(after, group) or _are_first(piece, after, pieces[at + 2 :])):
        count = int(after.value)
        part.used.append(after)
    part.used.append(piece)
    if count > len(group):
        part.missing = True
    found = group[-count:] if piece.kind is K.LAST else group[:count]
    part.places = [*part.places, *(record for record in found if record not in part.places)]


def _are_first(piece: Piece, number: Piece, behind: Sequence[Piece]) -> bool:
    """ "first 2 at 90": so many sets, where fewer stand; "first set 8 at 90" tells reps."""
    tied = bool(behind) and (behind[0].kind in (K.AT, K.WITH) or is_be(behind[0]))
    several = piece.kind is K.FIRST and len(piece.text.split()) == 1 and number.value <= MOST_FIRST
    return several and tied and any(one.kind is K.NUMBER for one in behind)


MOST_FIRST = 5


def _is_put_right(number: Piece | None, behind: Sequence[Piece]) -> bool:
    """ "last set 4 not 5": the number is what the set came to; "last two not 5 but 4" counts sets."""
    bare = number is not None and number.role is Role.BARE and not number.spelled
    return bare and [piece.kind for piece in behind] in PUT_RIGHT


def _is_so_many(number: Piece, group: list[SetRecord]) -> bool:
    """Whether there are so many sets; "last set 8, not 9" tells reps."""
    return number.spelled or number.role is Role.SETS or number.value <= len(group)


def _counts_sets(number: Piece, behind: K | None) -> bool:
    if number.role not in (Role.BARE, Role.SETS) or not 1 <= number.value <= MOST_PARTS or behind is K.TIMES:
        return False
    return number.spelled or number.role is Role.SETS or behind is not None


SPANS = frozenset(("upto", "through"))
PLACES = PLACING | {K.EXTREME}
PUT_RIGHT = ([K.NOT, K.NUMBER], [K.DENY, K.NUMBER])


def _numbered(part: Part, pieces: Sequence[Piece], at: int, group: list[SetRecord]) -> None:
    """ "set 2", "set number 2", "sets 2 and 3"."""
    if at and pieces[at - 1].kind in PLACES:
        return
    plural = pieces[at].text.endswith("s") and pieces[at].text != "s"
    numbers = _listed(pieces[at + 1 :], plural)
    if len(numbers) < (2 if plural else 1):
        return
    if not plural:
        numbers += _joined(pieces, pieces.index(numbers[-1]) + 1)
    part.used += [pieces[at], *numbers]
    for number in numbers:
        _point(part, int(number.value), group)


def _listed(pieces: Sequence[Piece], several: bool) -> list[Piece]:
    """The numbers that follow at once; only the first, unless several are announced."""
    numbers: list[Piece] = []
    spans = False
    parted = True
    for piece in pieces:
        if piece.kind is K.NUMBER and not parted:
            break  # "sets 2 and 3 10 reps"
        parted = piece.kind is not K.NUMBER
        if piece.kind is K.NUMBER and piece.role is Role.BARE and piece.value == int(piece.value):
            if spans and numbers and piece.value - numbers[-1].value <= MOST_PARTS:
                first = int(numbers[-1].value) + 1
                numbers += [piece._replace(value=Decimal(place)) for place in range(first, int(piece.value))]
            numbers.append(piece)
            if not several:
                break
        elif piece.kind not in (K.AND, K.COMMA, K.SETTING) and not _spans(piece):
            break
        spans = _spans(piece)  # "sets 1 to 3"
    return numbers


def _joined(pieces: Sequence[Piece], at: int) -> list[Piece]:
    """ "set 1 and 2 were 6", "delete set 2 and 3": the second place."""
    if at + 1 >= len(pieces) or pieces[at].kind not in (K.AND, K.COMMA):
        return []
    number, behind = pieces[at + 1], pieces[at + 2 : at + 3]
    ends = is_be(behind[0]) if behind else at > 2 and pieces[at].kind is K.AND
    return [number] if number.kind is K.NUMBER and number.role is Role.BARE and ends else []


def _point(part: Part, place: int, group: list[SetRecord]) -> None:
    if 1 <= place <= len(group):
        part.places = [*part.places, group[place - 1]]
    else:
        part.missing = True


def _extreme(part: Part, piece: Piece, group: list[SetRecord]) -> None:
    """ "the heaviest", "the lightest one"; none where two are as heavy."""
    found = at_the_extreme(group, heaviest=bool(piece.told))
    part.missing = part.missing or len(found) != 1
    part.places = [*part.places, *found]


def _by_value(part: Part, pieces: Sequence[Piece], group: list[SetRecord], anywhere: bool) -> None:
    verb = next((at for at, piece in enumerate(pieces) if is_be(piece)), None)
    if verb is None and not anywhere:
        return
    ahead = pieces if anywhere else pieces[:verb]
    told_behind = anywhere or any(piece.kind in TOLD_BEHIND for piece in pieces[verb or 0 :])
    among, by_place = part.places or group, False
    for number in ahead if told_behind else ():
        if number.kind is not K.NUMBER or number in part.used:
            continue
        part.used.append(number)
        by_place = by_place or number.role is Role.SETS
        if by_place:
            for place in _up_to(number, ahead, part):
                _point(part, place, group)
            continue
        found = having(number, among)
        part.missing = part.missing or not found
        part.places = [*(one for one in part.places if among is group), *found]


def _up_to(number: Piece, pieces: Sequence[Piece], part: Part) -> range:
    """The place, or all of "sets 1 to 3" behind its first."""
    at, last = pieces.index(number), int(number.value)
    first = pieces[at - 2] if at > 1 and _spans(pieces[at - 1]) else number
    joined = first in part.used and 0 < last - first.value <= MOST_PARTS
    return range(int(first.value) + 1 if joined else last, last + 1)


def _spans(piece: Piece) -> bool:
    return piece.kind is K.DASH or is_cued(piece.text, SPANS)


TOLD_BEHIND = frozenset((K.NUMBER, K.COUNT, K.EFFORT, K.WARMUP, K.FAILURE, K.MISS, K.DROP, K.NAME, K.VARIANT,
                         K.DUMBBELL, K.BARBELL, K.CABLE, K.MACHINE, K.KETTLEBELL, K.KG, K.LB))  # fmt: skip


def _excepted(part: Part, pieces: Sequence[Piece], context: Context) -> None:
    """ "all but the last": the others."""
    place = next((at for at, p in enumerate(pieces) if p.kind is K.EXCEPT or "but" in CUES_OF[p.text]), None)
    if place is None or not part.whole or not part.places or not any(map(is_all, pieces[:place])):
        return
    if pieces[place].kind is K.EXCEPT and any(
        piece.kind in (K.NOTE, K.PLANNED) and not is_all(piece) for piece in pieces[:place]
    ):
        return  # "all good except the last set, only got 3": what stands behind is of that one
    group = run_of_it(context) if part.named is None else sets_of(part, context)
    part.places = [record for record in group if record not in part.places]
    part.missing = part.missing or not part.places
