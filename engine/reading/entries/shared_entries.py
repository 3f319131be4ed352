"""Whose the numbers are that stand behind several names: each one's, one part each, or in doubt.

shared = name ( joined name )* [ "both" ] numbers [ "each" ]     "curls and pushdowns, both 3x15": each one's
       | name ( joined name )* parts                             "squat and bench 3x5, 100 and 80": one part each
joined = "and" | "+" | "/" | "with"
Where a joining word alone says so, and in "bench 80x8 + pulldown 60x10 x3", the numbers are shared in doubt: asked.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from engine.reading.entries.entry import Entry
from engine.reading.entries.reps_ahead_of_a_name import may_count_the_next
from engine.reading.entries.shared_sets import SAID_TOGETHER, ends_with_each, shared_clause, shares
from engine.reading.words.ahead import kind_at
from engine.reading.words.clauses import Clause
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, MOST_SETS, Piece, Role

SILENT = frozenset(
    (
        K.FILLER,
        K.NOTE,
        K.THEN,
        K.COLON,
        K.OPEN,
        K.CLOSE,
        K.DASH,
        K.EACH,
        K.OF,
        K.BOTH,
        K.SAME,
        K.VARIANT,
        K.AND,
        K.WARMUP,
        K.WORKING,
    )
)
SHARING = frozenset((K.BOTH, K.EACH))
SO_OFTEN = frozenset((Role.SETS, Role.TIMES))
APART = frozenset((K.COMMA, K.LINE, K.STOP, K.THEN, K.QUESTION))


def share_both(found: Sequence[Entry], kinds: set[K]) -> None:
    """ "curls and pushdowns, both 3x15": the numbers are each one's."""
    shared = not kinds.isdisjoint(SHARING)
    for place, entry in enumerate(found):
        if shared:
            _share_each(found, place)
        if _share_out(found, place):
            continue
        said = entry.both or (K.BOTH in kinds and any(piece.kind is K.BOTH for piece in entry.pieces))
        if said or (place and ends_with_each(entry.pieces)):
            _share_back(found, place)
        elif place and _is_joined(found[place - 1], entry):
            found[place - 1].pieces = list(entry.pieces)
            found[place - 1].shared_in_doubt = True


def _share_each(found: Sequence[Entry], place: int) -> None:
    """ "ohp 40 / chins bw, 3x6 each": a load each, and the counts of both."""
    shared = shared_clause(found[place].pieces)
    for other in found[:place] if shared else ():
        kinds = [piece.kind for piece in other.pieces]
        if kinds.count(K.NUMBER) + kinds.count(K.BODY) == 1 and K.TIMES not in kinds:
            other.pieces += shared


def _share_out(found: Sequence[Entry], place: int) -> bool:
    """ "squat and bench 3x5, 100 and 80": the same sets at a load each; or a pair each."""
    pieces = found[place].pieces
    if not pieces or pieces[0].kind not in SAID_TOGETHER:
        return False
    first = place
    while first and not found[first - 1].has_numbers and found[first - 1].names:
        first -= 1
    parts = shares(pieces, place - first + 1) if first < place else []
    for one, part in zip(found[first : place + 1], parts, strict=False):
        one.pieces = part
    return bool(parts)


def _share_back(found: Sequence[Entry], place: int) -> None:
    """The numbers are those of the names in front, too, as far back as none has its own."""
    for other in reversed(found[:place]):
        if other.has_numbers:
            break
        other.pieces = list(found[place].pieces)


def _is_joined(first: Entry, second: Entry) -> bool:
    """Whether two names were joined by a word, and numbers stand behind the second alone."""
    joined = bool(second.pieces) and second.pieces[0].kind in (K.AND, K.PLUS, K.SLASH)
    joined = joined or (bool(first.pieces) and first.pieces[-1].kind is K.WITH)
    if not joined:
        return False
    silent = all(one.kind in SILENT or one.kind in (K.WITH, K.SUPERSET) for one in first.pieces)
    return second.has_numbers and bool(first.names) and silent


ON_A_LIFT = frozenset(("onlift",))
MOST_OF_A_GROUP = 3


def ends_before_a_name(clause: Clause, part: Clause, end: int) -> bool:
    """ "bench 3x8 80 after 3x10 12 flies", "squat 3x5 100 - 3 sets of 10 on pulldowns": two groups, and the second may
    be that of the name behind them.
    """
    if may_count_the_next(clause, end):
        return True  # "bench 80x8 10 dips x3"
    last_name = clause.names[-1]
    bare = end == last_name and bool(clause.counts) and clause.counts[-1] < last_name
    if not bare:
        return False
    kinds = [piece.kind for piece in part.pieces]
    linked = is_cued(clause.pieces[last_name - 1].text, ON_A_LIFT)
    return kinds.count(K.TIMES) > 1 or (linked and kinds.count(K.NUMBER) > MOST_OF_A_GROUP)


def may_be_in_turn(first: Entry, second: Entry) -> bool:
    """ "bench 80x8 + pulldown 60x10 x3", "80x8 ss pulldown 60x10 3 sets": of both in turn, or of the last alone?"""
    cut = second.pieces[0].kind if second.pieces else None
    kinds = [piece.kind for piece in second.pieces]
    often = kinds[-3:] == [K.NUMBER, K.TIMES, K.NUMBER] and kinds.count(K.TIMES) > 1
    often = (
        often
        or kinds[-1:] == [K.ONCE]
        or kinds[-2:] == [K.NUMBER, K.TIMES]
        or any(piece.role in SO_OFTEN for piece in second.pieces[-2:])
    )
    if not often or cut in APART or not (first.names and second.names):
        return False
    told = [piece for piece in first.pieces if piece.kind is K.NUMBER]
    return len(told) == 2 and [piece.kind for piece in first.pieces].count(K.TIMES) == 1 and told[0].value > MOST_SETS


def share_same(entries: Sequence[Entry]) -> None:
    """ "squat 3x5 100, same for bench": a lift without numbers of its own was done as the one before it.

    "bench same" may be as last time, and is told as not read.
    """
    shared = False
    for before, entry in pairwise(entries):
        kinds = [piece.kind for piece in entry.pieces]
        same = next((piece for piece in entry.pieces if piece.kind is K.SAME), None)
        alone = same is not None and K.FOR in kinds and not same.told  # and no "same weight", "same as last time"
        goes_on = alone or (shared and set(kinds) <= {K.AND})  # "same for bench and row"
        if alone is False and same is not None and before.has_numbers and _changes_one_number(entry.pieces):
            entry.shared_in_doubt = True
        shared = goes_on and bool(entry.names and before.names) and before.has_numbers and not entry.has_numbers
        if shared:
            entry.pieces = list(before.pieces)
        elif alone and entry.names and before.names:
            told = _at_its_load(before.pieces, entry.pieces)
            entry.shared_in_doubt |= told is entry.pieces and _changes_one_number(entry.pieces)
            entry.pieces = told


def _at_its_load(before: Sequence[Piece], pieces: list[Piece]) -> list[Piece]:
    """ "ohp 40 3x8, same for bench with 60": the sets and reps of the lift before at the load told."""
    kinds = [piece.kind for piece in pieces]
    at = kinds.index(K.NUMBER) if kinds.count(K.NUMBER) == 1 and K.TIMES not in kinds else -1
    loaded = at >= 0 and (pieces[at].role is Role.LOAD or pieces[at].value > MOST_LOADED_REPS)
    place = _place_of_the_load(before) if loaded or (at > 0 and kinds[at - 1] in LEADING_TO_A_LOAD) else -1
    if place < 0:
        return pieces
    told = pieces[at]._replace(glued=before[place].glued)
    behind = place + 1 + (kind_at(before, place + 1) in UNITS)
    return [*before[:place], told, *before[behind:]]


def _place_of_the_load(pieces: Sequence[Piece]) -> int:
    """The place of the only load of sets that are told once, "40 3x8", "3x8 at 40", "80x5"; -1 for any others."""
    kinds = [piece.kind for piece in pieces]
    numbers = [at for at, kind in enumerate(kinds) if kind is K.NUMBER]
    if kinds.count(K.TIMES) != 1 or not set(kinds) <= OF_SETS_TOLD_ONCE:
        return -1
    paired = kinds.index(K.TIMES)
    if len(numbers) == A_PAIR:
        return numbers[0] if pieces[numbers[0]].value > MOST_LOADED_REPS else -1
    loads = [at for at in numbers if at not in (paired - 1, paired + 1)]
    return loads[0] if len(loads) == 1 else -1


A_PAIR = 2
LEADING_TO_A_LOAD = frozenset((K.AT, K.WITH))
UNITS = frozenset((K.KG, K.LB))
OF_SETS_TOLD_ONCE = UNITS | {K.NUMBER, K.TIMES, K.AT, K.WITH, K.COMMA, K.FILLER}


def _changes_one_number(pieces: Sequence[Piece]) -> bool:
    """ "then hammer curls same but 10": the sets of the lift before at another load, or with other reps."""
    kinds = [piece.kind for piece in pieces]
    turned = any(is_cued(piece.text, BUT) for piece in pieces)
    return turned and kinds.count(K.NUMBER) == 1 and K.TIMES not in kinds


BUT = frozenset(("but",))


def asks_for_reps(pieces: Sequence[Piece]) -> bool:
    """ "same weight on incline" stands ahead of a lift; "same weight as squat" only compares."""
    place = next((at for at, piece in enumerate(pieces) if piece.kind is K.SAME), None)
    ahead = pieces[place + 1 :] if place is not None else ()
    return bool(ahead) and all(piece.kind is K.FILLER and not is_cued(piece.text, COMPARING) for piece in ahead)


COMPARING = frozenset(("compared", "likewise"))
