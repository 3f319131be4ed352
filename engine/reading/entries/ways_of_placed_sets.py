"""A way of lifting told of the last or the first sets of a group: "bench 4x8 60, last two close grip".

line = lift group sign ( "last" | "first" ) [ COUNT ] way        group: 4x8 60    60 4x8    4x8 @60    4x8
     | lift group way "on the" ( "last" | "first" ) [ COUNT ]

So many of the sets are of the lift in that way. Where the group is told otherwise, it is asked about the word.
"""

from __future__ import annotations

from engine.catalogue.catalogue import Catalogue
from engine.reading.entries.way_of_the_last import PARTING, TELLING
from engine.reading.entries.ways import lifts_with
from engine.reading.marks.grips import moved_alike
from engine.reading.words.ahead import kind_at
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_SETS, Piece, kinds_in_order, places_in
from engine.values.ids import ExerciseName

PLACES = frozenset((K.LAST, K.FIRST))
BETWEEN = frozenset((K.NUMBER, K.FILLER, K.PLAIN, K.SETS, K.WITH))
SIGNS = PARTING | {K.DASH, K.OPEN}
ENDS = PARTING | {None, K.CLOSE}
N, X = K.NUMBER, K.TIMES
COUNT_AT = {(N, X, N): 0, (N, X, N, N): 0, (N, N, X, N): 1, (N, X, N, K.AT, N): 0, (N, X, N, K.WITH, N): 0}
"""The forms of a group, and the place of its count of sets."""


def of_placed_sets(line: list[Piece], catalogue: Catalogue) -> list[Piece] | None:
    """The line, with its group parted into the sets done in that way and the others; None where none are told."""
    kinds = kinds_in_order(line)
    places = places_in(PLACES, kinds)
    first = kinds.index(K.NAME) if K.NAME in kinds else len(line)
    if len(places) != 1 or first >= places[0] - 1:
        return None
    line, at = _with_way_behind(line, places[0], first)
    kinds, way = kinds_in_order(line), at + 1
    while kind_at(line, way) in BETWEEN:
        way += 1
    if kind_at(line, way) not in TELLING or kind_at(line, way + 1) not in ENDS:
        return None
    names = _lifts(line[way], line[first], catalogue)
    if not names or set(names) <= set(line[first].names):
        return None
    signed = kinds[at - 1] in SIGNS
    counts = [piece for piece in line[at + 1 : way] if piece.kind is K.NUMBER]
    parted = _parted(line[first + 1 : at - signed], counts)
    if parted is None:
        return [*line[:way], line[way]._replace(kind=K.ALTERED, names=()), *line[way + 1 :]]
    others, some = parted
    cut, lift = Piece(K.COMMA, line[at].start, line[at].start, True, ","), line[first]
    so = line[way]._replace(kind=K.NAME, names=names)
    told = [so, *some, cut, lift, *others] if kinds[at] is K.FIRST else [lift, *others, cut, so, *some]
    return [*line[:first], *told, *line[way + 1 + (kinds[at - 1] is K.OPEN) :]]


def _with_way_behind(line: list[Piece], at: int, first: int) -> tuple[list[Piece], int]:
    """The line with "close grip on the last" as "last close grip", and the place of its "last"."""
    behind, way = at + 1, at - 1
    while kind_at(line, behind) in (K.SETS, K.NUMBER):
        behind += 1
    while kind_at(line, way) in (K.FOR, K.FILLER):
        way -= 1
    if way <= first + 1 or kind_at(line, way) not in TELLING or kind_at(line, behind) not in ENDS:
        return line, at
    start, end = line[way].start, line[behind - 1].end
    turned = [piece._replace(start=start, end=end) for piece in (*line[at:behind], line[way])]
    return [*line[:way], *turned, *line[behind:]], way


def _lifts(way: Piece, lift: Piece, catalogue: Catalogue) -> tuple[ExerciseName, ...]:
    """The lifts that are meant: this one in that way, or another of its movement: "db curl, last two hammer"."""
    if way.kind is K.NAME and moved_alike(lift.names, way.names, catalogue):
        return lifts_with(way, lift, catalogue) or way.names
    return lifts_with(way, lift, catalogue)


def _parted(group: list[Piece], told: list[Piece]) -> tuple[list[Piece], list[Piece]] | None:
    """The group with the sets that are left, and with so many as were told; None where it does not tell as many."""
    place = COUNT_AT.get(tuple(kinds_in_order(group)))
    if place is None or len(told) > 1:
        return None
    some, all_of_them = int(told[0].value) if told else 1, group[place].value
    if not 1 <= some < all_of_them <= MOST_SETS:
        return None
    return _counting(group, place, int(all_of_them) - some), _counting(group, place, some)


def _counting(group: list[Piece], place: int, sets: int) -> list[Piece]:
    counted = group[place]._replace(value=group[place].value * 0 + sets, text=str(sets))
    return [*group[:place], counted, *group[place + 1 :]]
