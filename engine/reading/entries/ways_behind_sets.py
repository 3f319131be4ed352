"""Ways that stand each behind sets of their own: "bench 60x8 close grip, 70x5 normal", "pull ups 8 neutral 6 wide".

follows = lift sets way { parting sets way }    each way stands behind its sets
        | lift REPS way { REPS way }            the same of a lift of the body
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from engine.catalogue.catalogue import Catalogue
from engine.reading.entries.way_of_the_last import groups_of_sets
from engine.reading.entries.ways import (
    WAYS,
    is_of_the_body,
    lifts_with,
    tells_sets,
)
from engine.reading.marks.grips import is_a_grip
from engine.reading.words.ahead import kind_at
from engine.reading.words.kinds import K
from engine.reading.words.pieces import (
    Piece,
    Role,
    kinds_in_order,
    places_of,
)
from engine.values.ids import ExerciseName

BEHIND = frozenset((None, K.COMMA, K.THEN, K.AND, K.STOP, K.CLOSE, K.NUMBER))
ENDS = WAYS | {K.NAME, K.CLOSE}


def behind_their_sets(line: list[Piece], catalogue: Catalogue) -> list[Piece] | None:
    """The line, where it ends with a way, and two and more stand behind sets, not all of them of one lift."""
    line = _without_brackets(line) if line and line[-1].kind in ENDS else []
    first = next((at for at, piece in enumerate(line) if piece.kind is K.NAME), None)
    if first is None:
        return None
    lift = line[first]
    out: list[Piece] = line[: first + 1]
    lifts: list[tuple[ExerciseName, ...]] = []
    ways: list[int] = []
    counted = is_of_the_body(lift, catalogue) and _tells_reps_by_way(line, first + 1)
    told = counted
    for at in range(first + 1, len(line)):
        piece, follows = line[at], kind_at(line, at + 1)
        told = told or tells_sets(line, at)
        gripped = piece.kind is K.NOTE and is_a_grip(piece.text)  # "60 3x10, then 50 3x12 close grip": a remark
        names = () if gripped else lifts_with(piece, lift, catalogue)
        ahead = at - 1 - (piece.kind is K.BAR and line[at - 1].kind is K.FILLER)  # "25x10 straight bar"
        if names and not (told and line[ahead].kind is K.NUMBER and follows in BEHIND):
            return None
        if not names and piece.kind is K.NAME:
            return None
        out.append(piece._replace(kind=K.NAME, names=names) if names else piece)
        if names:
            lifts.append(names)
            ways.append(at)
        if names and follows is K.NUMBER:
            out.append(Piece(K.COMMA, piece.end, piece.end, True, ","))
    if len(set(lifts)) < 2 or len(groups_of_sets(line, first + 1, ways[0])) > 1:
        return None  # "squat 100x5, 80x5 front, 60x8 goblet": the first is of the lift itself
    out[first] = lift._replace(names=lifts[0])
    return [*line[:first], *_each_named(line, first, ways, lifts)] if counted else out


def with_more_reps(line: list[Piece], catalogue: Catalogue) -> list[Piece] | None:
    """ "pull ups 8 neutral, 6 wide, 5": how the last ones were done is asked."""
    end = len(line)
    while end and line[end - 1].kind in MORE_REPS:
        end -= 1
    reps = line[end:]
    if not reps or reps[-1].kind is not K.NUMBER or kind_at(line, end - 1) not in ENDS:
        return None
    named = behind_their_sets(line[:end], catalogue)
    first = next((at for at, piece in enumerate(line) if piece.kind is K.NAME), None)
    if named is None or first is None or not is_of_the_body(line[first], catalogue):
        return None
    return [*named, *reps, reps[-1]._replace(kind=K.UNCLEAR)]


MORE_REPS = frozenset((K.NUMBER, K.COMMA))


def _each_named(
    line: list[Piece], first: int, ways: Sequence[int], lifts: Sequence[tuple[ExerciseName, ...]]
) -> list[Piece]:
    """The numbers with their lift ahead of them: "neutral pull ups 8, wide pull ups 6"; of "6, 5 wide" the first may be
    of either way.
    """
    told: list[Piece] = []
    start = first + 1
    for way, names in zip(ways, lifts, strict=True):
        numbers = [piece for piece in line[start:way] if piece.kind is K.NUMBER]
        parted = any(piece.kind is K.COMMA for piece in line[start + 1 : way])
        told += [Piece(K.COMMA, numbers[0].start, numbers[0].start, True, ",")] if told else []
        told += [line[first]._replace(names=names), *numbers]
        told += [numbers[-1]._replace(kind=K.UNCLEAR)] if parted else []
        start = way + 1
    return told


def _tells_reps_by_way(line: Sequence[Piece], start: int) -> bool:
    """ "pull ups 8 neutral 6 wide": numbers in front of each way, from there to the end of the line."""
    told = [piece for piece in line[start:] if piece.kind is not K.COMMA]
    if not told or told[0].kind is not K.NUMBER or told[-1].kind is K.NUMBER:
        return False
    listed = all(one.kind is K.NUMBER or other.kind is K.NUMBER for one, other in pairwise(told))
    return listed and all(piece.role is Role.BARE if piece.kind is K.NUMBER else piece.kind in ENDS for piece in told)


def _without_brackets(line: list[Piece]) -> list[Piece]:
    """The line, without brackets that hold one word: "60x8 (close), 70x5 (wide)"."""
    kinds = kinds_in_order(line)
    around = [at for at in places_of(K.OPEN, kinds) if kinds[at + 2 : at + 3] == [K.CLOSE] and kinds[at + 1] in ENDS]
    gone = {place for at in around for place in (at, at + 2)}
    return [piece for at, piece in enumerate(line) if at not in gone] if gone else line
