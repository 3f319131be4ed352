"""Numbers whose part is told by what stands between or around them.

pair   = LOAD "total" "(" HALF [ "each" ] ")" | HALF "each" "(" LOAD "total" ")"     the load of each hand, twice told
of     = NUMBER "à" NUMBER           "3 à 15", "3 à 50 s": so many sets of that; near one another they may be a range
open   = REPS "+" ( ":" | "(" ) NUMBER       "100x5+: 9": what the open set came to
often  = SINGLES "x" NUMBER          "150 singles x5": so many of them
parts  = REPS "(" NUMBER ( "+" NUMBER )+ ")"       "80x10 (6+4)" that add up to the reps: how they were made is asked
volume = sets "=" NUMBER "total"        "80x8 = 640 total": what the sets come to; any other number is asked about
complex = LIFT "and" LIFT ... REPS "+" REPS      "clean & jerk 60 2+1": each lift's, or a pause between: asked
place  = PAIR NUMBER "of" NUMBER     "80x8 1 of 3" counts sets, or tells some more: asked; so is "1+1 x5"
margin = RECORD "by" NUMBER          "PB by 2.5": how much was gained, and no part of the sets
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from math import prod

from engine.reading.words.ahead import aside, kind_at
from engine.reading.words.cues import CUES_OF, cues_told
from engine.reading.words.kinds import K
from engine.reading.words.pieces import (
    MOST_LOADED_REPS,
    MOST_SETS,
    ROLE,
    Piece,
    Role,
    kinds_in_order,
    places_in,
    places_of,
    texts_in_order,
)

LOADED = frozenset((Role.BARE, Role.LOAD))
LEAST_AHEAD = 2
"""The record, and the word for how much it was bettered by, ahead of the number."""
PARTED_BY = 2
"""From so many times the first number on, the second one ends no range of reps. Common practice, no source."""
TIMED = frozenset((Role.SECONDS, Role.METRES))


def with_parted_numbers(pieces: list[Piece], kinds: set[K]) -> list[Piece]:
    """The pieces, which are of these kinds, with each number put to the part that it tells."""
    if K.TOTAL in kinds:
        pieces = _with_totals_of_two(pieces) if K.EACH in kinds else _without_volumes(pieces)
    if K.FILLER in kinds or K.BY in kinds:
        pieces = _with_sets_of(pieces)
    if K.NOTE in kinds:
        pieces = _without_margins(pieces)
    if K.PLUS in kinds:
        pieces = _with_parts_in_doubt(_with_open_results(_with_complexes_in_doubt(pieces)))
    if K.TIMES in kinds and not kinds.isdisjoint((K.OF, K.PLUS)):
        pieces = _with_counts_in_doubt(pieces)
    if K.COUNT in kinds and K.TIMES in kinds:
        pieces = _with_counts_behind(pieces)
    return _with_loads_amid(pieces) if K.TIMES in kinds and Role.REPS in map(ROLE, pieces) else pieces


def _with_loads_amid(pieces: list[Piece]) -> list[Piece]:
    """ "8 reps @ 80 x 3 sets", "8 reps 80kg x 3": an x ahead of the load, too, as in "8 reps x 80kg x 3 sets"."""
    kinds = kinds_in_order(pieces)
    for at in reversed(places_of(K.TIMES, kinds)):
        lead = at - 2 if kinds[max(0, at - 2)] in LEADS_TO_A_LOAD else at - 1
        if lead > 0 and kinds[lead - 1] is kinds[at - 1] is kind_at(pieces, at + 1) is K.NUMBER:
            first = kind_at(pieces, lead - 2) is not K.TIMES
            if first and _tells_reps_load_and_sets(pieces[lead - 1], pieces[at - 1], pieces[at + 1 : at + 3]):
                pieces = [*pieces[:lead], pieces[at], pieces[at - 1]._replace(role=Role.LOAD), *pieces[at:]]
    return pieces


def _tells_reps_load_and_sets(reps: Piece, load: Piece, told: list[Piece]) -> bool:
    sets, behind = told[0], told[1].kind if len(told) > 1 else None
    counted = sets.role is Role.SETS or (sets.role is Role.BARE and behind in BEHIND_THE_SETS)
    heavy = load.role is Role.LOAD or (load.role is Role.BARE and load.value > reps.value)
    return reps.role is Role.REPS and counted and heavy and sets.value <= MOST_SETS


LEADS_TO_A_LOAD = frozenset((K.AT, K.WITH))
BEHIND_THE_SETS = frozenset((None, K.COMMA, K.LINE, K.STOP, K.NOTE, K.EFFORT, K.THEN, K.AT))


def _with_totals_of_two(pieces: list[Piece]) -> list[Piece]:
    """The pieces with a load told in total and for each hand made the load of each."""
    for at, piece in enumerate(pieces):
        if piece.kind is not K.TOTAL:
            continue
        numbers = [place for place in range(max(0, at - 4), min(len(pieces), at + 4)) if pieces[place].kind is K.NUMBER]
        for first, second in pairwise(numbers):
            told = pieces[first : second + 1]
            inside = first <= at <= second + 1 and {one.kind for one in told[1:-1]} <= BETWEEN
            if not inside or not {told[0].role, told[-1].role} <= LOADED:
                continue
            total, each = sorted((told[0], told[-1]), key=lambda one: -one.value)
            end = second + 1
            while kind_at(pieces, end) in AROUND:
                end += 1
            if total.value == 2 * each.value and K.EACH in [one.kind for one in pieces[first:end]]:
                load = each._replace(role=Role.LOAD, unit=each.unit or total.unit)
                hand = next(one for one in pieces[first:end] if one.kind is K.EACH)
                return [*pieces[:first], load, hand, *pieces[end:]]
    return pieces


BETWEEN = frozenset((K.TOTAL, K.OPEN, K.EACH, K.COMMA, K.EQUALS, K.FILLER, K.DASH, K.SLASH))
AROUND = frozenset((K.EACH, K.CLOSE, K.TOTAL, K.FILLER))


def _without_volumes(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with what the sets come to together as a remark, or in doubt where it is another number."""
    for at in reversed(places_of(K.EQUALS, kinds_in_order(pieces))):
        end = at + 2 + (kind_at(pieces, at + 2) in (K.KG, K.LB))
        if kind_at(pieces, at + 1) is not K.NUMBER or kind_at(pieces, end) is not K.TOTAL:
            continue
        start = next((place for place in range(at, 0, -1) if pieces[place - 1].kind in PARTING), 0)
        ahead = [one for one in pieces[start:at] if one.kind is K.NUMBER]
        if K.TIMES not in kinds_in_order(pieces[start:at]):
            continue
        fits = prod(one.value for one in ahead) == pieces[at + 1].value
        said = aside(pieces[at]) if fits else pieces[at]._replace(kind=K.ALTERED)
        pieces = [*pieces[:at], said._replace(end=pieces[end].end), *pieces[end + 1 :]]
    return pieces


PARTING = frozenset((K.COMMA, K.STOP, K.LINE, K.THEN))


def _with_sets_of(pieces: list[Piece]) -> list[Piece]:
    """The pieces with "à" between two numbers made the sign that it stands for."""
    out = list(pieces)
    kinds = kinds_in_order(pieces)
    for at in places_in(SAYING_SETS_OF, kinds[:-1]):
        word = pieces[at]
        numbered = at > 0 and kinds[at - 1] is kinds[at + 1] is K.NUMBER
        if not numbered or "setsof" not in CUES_OF[word.text]:
            continue
        first, second = pieces[at - 1], pieces[at + 1]
        if first.role is Role.SETS or second.role in TIMED or _are_far_apart(first, second):
            out[at] = word._replace(kind=K.TIMES, text="x")
        elif first.role is second.role is Role.BARE and first.value < second.value:
            out[at] = word._replace(kind=K.ALTERED)
    return out


SAYING_SETS_OF = frozenset((K.FILLER, K.BY))


def _are_far_apart(sets: Piece, reps: Piece) -> bool:
    bare = sets.role is Role.BARE and reps.role in (Role.BARE, Role.REPS)
    return bare and sets.value <= MOST_SETS and (reps.value >= PARTED_BY * sets.value or reps.value == sets.value)


def _without_margins(pieces: Sequence[Piece]) -> list[Piece]:
    """The pieces without how much a record was bettered by."""
    out = list(pieces)
    if "margin" not in cues_told(texts_in_order(pieces)):
        return out
    for at in places_of(K.NUMBER, kinds_in_order(pieces)):
        if at < LEAST_AHEAD or "margin" not in CUES_OF[pieces[at - 1].text]:
            continue
        before, word, number = pieces[at - 2 : at + 1]
        beaten = "record" in CUES_OF[before.text] or (before.kind is K.NOTE and word.kind is K.BY)  # "new PR by 5 kg"
        if beaten and kind_at(pieces, at + 1) not in (K.TIMES, K.SLASH, K.AT):
            out[at] = aside(number)
            out[at - 1] = word._replace(kind=K.FILLER)
    return out


def _with_open_results(pieces: Sequence[Piece]) -> list[Piece]:
    """The pieces with the sign between an open set and what it came to made a word for that."""
    out = list(pieces)
    for at in range(2, len(pieces) - 1):
        plus, sign, number = pieces[at - 1 : at + 2]
        told = pieces[at - 2].kind is K.NUMBER and plus.kind is K.PLUS and plus.glued and number.kind is K.NUMBER
        if told and sign.kind in BEFORE_A_RESULT and number.role in COUNTS and kind_at(pieces, at + 2) in ENDS:
            out[at] = sign._replace(kind=K.GOT)
            if kind_at(pieces, at + 2) is K.CLOSE:
                out[at + 2] = pieces[at + 2]._replace(kind=K.FILLER)
    return out


BEFORE_A_RESULT = frozenset((K.COLON, K.OPEN, K.EQUALS, K.ARROW))
COUNTS = frozenset((Role.BARE, Role.REPS))
ENDS = frozenset((None, K.COMMA, K.STOP, K.LINE, K.CLOSE))


def _with_counts_behind(pieces: Sequence[Piece]) -> list[Piece]:
    """The pieces with "singles x5" told as five singles."""
    out = list(pieces)
    for at in range(len(pieces) - 2):
        name, times, sets = pieces[at : at + 3]
        counted = name.kind is K.COUNT and times.kind is K.TIMES and sets.kind is K.NUMBER and sets.role is Role.BARE
        alone = kind_at(pieces, at - 1) is not K.NUMBER or pieces[at - 1].value > MOST_LOADED_REPS
        if counted and alone and sets.value <= MOST_SETS and kind_at(pieces, at + 3) in ENDS | {K.AT, K.WITH, K.NUMBER}:
            out[at : at + 3] = [sets._replace(role=Role.SETS), times._replace(kind=K.OF, text="of"), name]
    return out


def _with_complexes_in_doubt(pieces: list[Piece]) -> list[Piece]:
    """The pieces with reps of each lift of a complex made unclear."""
    kinds = kinds_in_order(pieces)
    if K.NAME not in kinds:
        return pieces
    out = list(pieces)
    for at in places_of(K.PLUS, kinds):
        if kinds[at - 1 : at + 2] != [K.NUMBER, K.PLUS, K.NUMBER] or kind_at(pieces, at + 2) is K.TIMES:
            continue
        first, sign, second = pieces[at - 1 : at + 2]
        if max(first.value, second.value) > MOST_SETS:
            continue
        start = next((place for place in range(at, 0, -1) if kinds[place - 1] in PARTING), 0)
        name = next((place for place in range(at, start - 1, -1) if kinds[place] is K.NAME), -1)
        if name >= 0 and _are_several_lifts(pieces, name, start):
            out[at] = sign._replace(kind=K.UNCLEAR)
    return out


def _are_several_lifts(pieces: Sequence[Piece], name: int, start: int) -> bool:
    """ "clean and jerk", "power clean + jerk"."""
    ahead = name - 1 > start and pieces[name - 1].kind is K.PLUS and pieces[name - 2].kind is K.NAME
    behind = kind_at(pieces, name + 1) is K.PLUS and kind_at(pieces, name + 2) in (K.PLAIN, K.NOTE, K.NAME)
    joined = {" and " in one for one in pieces[name].names} == {True}
    return ahead or behind or joined


def _with_parts_in_doubt(pieces: Sequence[Piece]) -> list[Piece]:
    """The pieces with brackets that hold the parts of the reps before them asked about."""
    out = list(pieces)
    for at in range(1, len(pieces) - 4):
        if pieces[at].kind is not K.OPEN or pieces[at - 1].kind is not K.NUMBER:
            continue
        end = at + 1
        while kind_at(pieces, end) in (K.NUMBER, K.PLUS):
            end += 1
        parts = [one.value for one in pieces[at + 1 : end] if one.kind is K.NUMBER]
        signs = [one.kind for one in pieces[at + 1 : end]].count(K.PLUS)
        summed = len(parts) > 1 and signs == len(parts) - 1 and sum(parts) == pieces[at - 1].value
        if summed and kind_at(pieces, end) is K.CLOSE:
            return [*pieces[:at], pieces[at]._replace(kind=K.ALTERED, end=pieces[end].end), *pieces[end + 1 :]]
    return out


def _with_counts_in_doubt(pieces: Sequence[Piece]) -> list[Piece]:
    """The pieces with "80x8 1 of 3" and "60 1+1 x5" asked about."""
    for at in range(2, len(pieces) - 2):
        first, sign, second = pieces[at : at + 3]
        if first.kind is not K.NUMBER or second.kind is not K.NUMBER:
            continue
        behind = kind_at(pieces, at + 3)
        placed = sign.kind is K.OF and pieces[at - 1].kind is K.NUMBER and pieces[at - 2].kind is K.TIMES
        placed = placed and behind in ENDS and first.value < second.value <= MOST_SETS
        summed = sign.kind is K.PLUS and behind is K.TIMES and pieces[at - 1].kind is K.NUMBER
        summed = summed and max(first.value, second.value) <= MOST_SETS and kind_at(pieces, at - 2) is not K.TIMES
        if placed or summed:
            return [*pieces[:at], first._replace(kind=K.ALTERED, end=second.end), *pieces[at + 3 :]]
    return list(pieces)
