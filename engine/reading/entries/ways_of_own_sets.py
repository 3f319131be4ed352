"""A way of lifting that has sets of its own beside those of a lift is a lift: "squat 3x5 100, front 3x5 70"."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from engine.catalogue.catalogue import Catalogue
from engine.reading.entries.way_of_the_last import of_the_last_group
from engine.reading.entries.ways import (
    WAYS,
    lifts_with,
    tells_a_way,
)
from engine.reading.entries.ways_ahead_of_sets import Heads
from engine.reading.entries.ways_amid import of_some_groups
from engine.reading.entries.ways_behind_sets import ENDS, behind_their_sets, with_more_reps
from engine.reading.entries.ways_of_placed_sets import of_placed_sets
from engine.reading.words.ahead import kind_at
from engine.reading.words.kinds import K
from engine.reading.words.pieces import (
    Piece,
    kinds_in_order,
    places_in,
    places_of,
)


def with_ways_of_own_sets(pieces: list[Piece], catalogue: Catalogue) -> list[Piece]:
    """The pieces, with each way that has whole sets of its own made the name of its lift."""
    out: list[Piece] = []
    start = 0
    walk = Heads(catalogue)
    kinds = kinds_in_order(pieces)
    for end in (*places_of(K.LINE, kinds), len(pieces)):
        line, told = pieces[start:end], kinds[start:end]
        named = None
        if _may_tell_a_way(told):
            named = _named(line, walk.lift, catalogue)
            if named is None and told.count(K.NAME) > 1 and _may_tell_a_way_amid(told):
                named = _lift_by_lift(line, walk.lift, catalogue)
        out += walk.again(line) if walk.way_above and not named else ()
        out += walk.past(line, named) if named else walk.through(line, pieces[end + 1 : end + 4])
        out += pieces[end : end + 1]
        start = end + 1
    return out


def _named(line: list[Piece], above: Piece | None, catalogue: Catalogue) -> list[Piece] | None:
    """The line with the ways behind its sets made names; None where none stand there. `above` is the lift before it."""
    named = of_placed_sets(line, catalogue) or behind_their_sets(line, catalogue) or with_more_reps(line, catalogue)
    return named or of_some_groups(line, catalogue) or of_the_last_group(line, above, catalogue)


def _lift_by_lift(line: list[Piece], above: Piece | None, catalogue: Catalogue) -> list[Piece] | None:
    """ "pull ups 8 neutral, 6 wide, dips 10": the same for each lift of a line; None where no way stands behind any."""
    starts = _lifts_of(line, catalogue)
    if len(starts) < 2:
        return None
    out: list[Piece] = []
    found = False
    for start, end in pairwise((0, *starts[1:], len(line))):
        last = end
        while last > start and line[last - 1].kind in PARTING_LIFTS:
            last -= 1
        named = _named(line[start:last], above, catalogue)
        found = found or named is not None
        out += [*(line[start:last] if named is None else named), *line[last:end]]
    return out if found else None


def _may_tell_a_way(kinds: Sequence[K]) -> bool:
    """Whether a word that may be a way stands there, or a name that does not head the numbers of a part."""
    if not WAYS.isdisjoint(kinds):
        return True
    named = places_of(K.NAME, kinds)
    return any(
        [
            at + 1 == len(kinds) or kinds[at + 1] is not K.NUMBER or (at and kinds[at - 1] not in PARTING_LIFTS)
            for at in named
        ]
    )


def _may_tell_a_way_amid(kinds: Sequence[K]) -> bool:
    """Whether a word stands right behind a number, and ahead of a sign or the end."""
    behind = [at for at in places_in(ENDS, kinds) if at and kinds[at - 1] is K.NUMBER]
    return any([at + 1 == len(kinds) or kinds[at + 1] in PARTING_LIFTS for at in behind])


def _lifts_of(line: Sequence[Piece], catalogue: Catalogue) -> list[int]:
    """The places of the names that are lifts of their own, and no way of the one before."""
    starts: list[int] = []
    for at in places_of(K.NAME, kinds_in_order(line)):
        lift = line[starts[-1]] if starts else None
        if lift is not None and (kind_at(line, at - 1) not in PARTING_LIFTS or _is_a_way(line[at], lift, catalogue)):
            continue
        starts.append(at)
    return starts


def _is_a_way(name: Piece, lift: Piece, catalogue: Catalogue) -> bool:
    return bool(lifts_with(name, lift, catalogue)) or tells_a_way(name, lift, catalogue)


PARTING_LIFTS = frozenset((K.COMMA, K.THEN, K.AND, K.STOP, K.PLUS, K.SLASH))
