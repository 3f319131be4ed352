"""Ways of lifting behind some groups of sets, and not behind the last alone: "squat 100x5, 80x5 front, 70x8".

line  = lift group [ way ] { parting group [ way ] }

A group without a way ahead of those that have one is of the lift itself. Behind one it may go on with the way or be of
the lift again: asked.
"""

from __future__ import annotations

from itertools import pairwise

from engine.catalogue.catalogue import Catalogue
from engine.reading.entries.way_of_the_last import ENDS_OF_SETS, PARTING, TELLING, groups_of_sets
from engine.reading.entries.ways import lifts_with
from engine.reading.words.ahead import kind_at
from engine.reading.words.kinds import K
from engine.reading.words.pieces import AGAIN_OR_SO, Piece, kinds_in_order
from engine.values.ids import ExerciseName

FEWEST = 2
BEHIND_A_WAY = frozenset((None, K.CLOSE, K.EFFORT, K.AT, *PARTING))


def of_some_groups(line: list[Piece], catalogue: Catalogue) -> list[Piece] | None:
    """The line, with the ways behind their sets made names, and the lift named again behind them; None where no group
    before the last has a way of its own, or all have.
    """
    kinds = kinds_in_order(line)
    first = kinds.index(K.NAME) if K.NAME in kinds else len(kinds)
    if TELLING.isdisjoint(kinds[first + 1 : -1]) or len(line[first].names) != 1:
        return None
    starts = groups_of_sets(line, first + 1, len(line))
    if len(starts) < FEWEST or any(kind_at(line, start - 1) not in PARTING for start in starts[1:]):
        return None
    ways = [_way(line, start, end, line[first], catalogue) for start, end in pairwise([*starts, len(line)])]
    told = [names for _, names in ways if names]
    if NO_WAY in ways or len(told) in (0, len(ways)) or (ways[-1][1] and len(told) == 1):
        return None
    return _named(line, starts, ways)


NO_WAY = (-1, ())
Way = tuple[int, tuple[ExerciseName, ...]]
"""Where the way of a group stands, and the lifts that it names; 0 and none where it has none."""


def _way(line: list[Piece], start: int, end: int, lift: Piece, catalogue: Catalogue) -> Way:
    """The way behind the group; NO_WAY where something else is told there."""
    found = [at for at in range(start, end) if line[at].kind in TELLING]
    if not found:
        return 0, ()
    at = found[0]
    names = lifts_with(line[at], lift, catalogue)
    bracketed = kind_at(line, at - 1) is K.OPEN and kind_at(line, at + 1) is K.CLOSE
    behind = bracketed or line[at - 1].kind in ENDS_OF_SETS
    if len(found) > 1 or not names or names == lift.names or not behind or kind_at(line, at + 1) not in BEHIND_A_WAY:
        return NO_WAY
    return at, names


def _named(line: list[Piece], starts: list[int], ways: list[Way]) -> list[Piece]:
    first = starts[0] - 1
    while line[first].kind is not K.NAME:
        first -= 1
    lift = line[first]
    out = list(line)
    named = {start: way for start, way in zip(starts, ways, strict=True)}
    if ways[0][1]:
        out[first] = lift._replace(names=ways[0][1])
        out[ways[0][0]] = line[ways[0][0]]._replace(kind=K.NOTE, names=())
    for at, names in ways[1:]:
        if names:
            out[at] = line[at]._replace(kind=K.NAME, names=names)
    told: list[Piece] = []
    so = bool(ways[0][1])
    for at, piece in enumerate(out):
        if at in named and at != starts[0]:
            if so and not named[at][1]:
                told.append(lift._replace(start=piece.start, end=piece.start, told=AGAIN_OR_SO))
                so = False
            so = so or bool(named[at][1])
        told.append(piece)
    return told
