"""How many sets of a name of reps, where the count stands behind the load: "doubles at 120 x3", "triples 100 x 5".

named = REPS-NAME [ "at" ] LOAD "x" NUMBER         the name tells the reps, so the number counts sets
A number that is the reps themselves may tell them once more: "fives at 100x5" is asked, and so are several pairs
behind one name, but for singles, which no number tells once more, and for pairs that all have the reps of the name.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.chunks.chunks import Chunk, Chunks
from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, MOST_SETS, Piece, Role
from engine.values.effort import TOP_OF_SCALE

MOST_PLURAL_REPS = 12
"""More in "8s at 60 x3" is rather a pair of dumbbells. Common practice, no source."""


def doubt_how_many(chunks: Chunks, pieces: Sequence[Piece]) -> None:
    """ "triples at 120", "100 for sets of 5": more than one, and nobody says how many."""
    named = [at for at, chunk in enumerate(chunks.found) if chunk.counted]
    if len(named) != 1 or chunks.total or chunks.spread or Role.SETS in chunks.roles:
        return
    one, places = chunks.found[named[0]], _loads_beside(chunks.found, named[0])
    loads = [*one.at, *(one.factors[0] if one.size == PAIR else ())]
    loads += [load for at in places for load in chunks.found[at].factors[0]]
    ends = max(named + places)
    alone = len(loads) == 1 and _is_load(loads[0]) and one.times is None and chunks.found[ends].times is None
    behind = chunks.found[ends + 1 : ends + 2]
    listed = bool(behind) and behind[0].size == 1 and not behind[0].at  # "fives: 100 5 5 5"
    if alone and not listed and _names_several(one.factors[-1][-1], pieces):
        chunks.how_many = ends


def _loads_beside(found: Sequence[Chunk], place: int) -> list[int]:
    """The places of loads that stand alone right before or behind a name of reps."""
    places: list[int] = []
    for step in (-1, 1):
        at = place + step
        while 0 <= at < len(found) and found[at].size == 1 and not found[at].at and _is_load(found[at].factors[0][-1]):
            places.append(at)
            at += step
    return places


PAIR = 2
ONE = frozenset(("an", "onecount"))


def _names_several(name: Piece, pieces: Sequence[Piece]) -> bool:
    """ "triples", and no "triple" or "einen Dreier"."""
    at = next((at for at, piece in enumerate(pieces) if piece.start == name.start), 0)
    before = pieces[at - 1].text if at else ""
    return ONE.isdisjoint(CUES_OF[name.text] | CUES_OF[before])


def count_named(chunks: Chunks) -> None:
    """Makes sets of so many reps of each such name and the pairs behind it."""
    found = chunks.found
    for at in reversed(range(len(found) - 1)):
        _doubt_last_of_loads(chunks, at)
        pairs = _pairs_behind(found, at) if _names_reps(found[at]) else 0
        reps = found[at].factors[0][0] if pairs else None
        if reps is None:
            continue
        told = [chunk.factors[1][0].value for chunk in found[at + 1 : at + 1 + pairs]]
        if pairs > 1 and all(count == reps.value for count in told):
            continue  # "triples 100x3, 110x3, 120x3"
        chunks.dangling = chunks.dangling or (reps.value > 1 and (pairs > 1 or told[0] == reps.value))
        chunks.dangling = chunks.dangling or found[at + 1].before is not None  # "doubles, 120 x3"
        chunks.dangling = chunks.dangling or max(told) > MOST_SETS * (1 + (reps.value == 1))
        counted = [_counted(chunk, reps) for chunk in found[at + 1 : at + 1 + pairs]]
        counted[0].before = found[at].before
        found[at : at + 1 + pairs] = counted


def _doubt_last_of_loads(chunks: Chunks, at: int) -> None:
    """ "doubles at 110, 120, 130 x3": three sets at the last of the loads, or three reps."""
    head, behind = chunks.found[at], chunks.found[at + 1 :]
    if not head.counted or head.size != 1:
        return
    loads = [one.value for one in head.at]
    for chunk in behind:
        if loads and chunk.x_apart and _is_pair(chunk) and chunk.factors[0][0].value > loads[-1]:
            reps = head.factors[0][0].value
            chunks.dangling = chunks.dangling or chunk.factors[1][0].value not in (reps, 0)
        if chunk.size != 1 or chunk.at or len(chunk.factors[0]) != 1 or not _is_load(chunk.factors[0][0]):
            return
        loads.append(chunk.factors[0][0].value)


def _is_load(number: Piece) -> bool:
    return number.role is Role.LOAD or (number.role is Role.BARE and number.value > MOST_LOADED_REPS)


def _names_reps(chunk: Chunk) -> bool:
    if chunk.size != 1 or chunk.at or len(chunk.factors[0]) != 1:
        return False
    reps = chunk.factors[0][0]
    return chunk.counted or (reps.role is Role.PLURAL and reps.value <= MOST_PLURAL_REPS)


def _pairs_behind(found: Sequence[Chunk], at: int) -> int:
    """How many pairs of a load and a count stand behind the name there, the first of them right behind it."""
    behind = found[at + 1 :]
    if behind[0].before not in (None, K.COMMA if at == 0 and not found[at].at else None):
        return 0
    return next((place for place, chunk in enumerate(behind) if not _is_pair(chunk)), len(behind))


def _is_pair(chunk: Chunk) -> bool:
    if chunk.size != 2 or chunk.times is not None or chunk.plus or chunk.spoken_for:
        return False
    if chunk.at and not (chunk.at_sign and chunk.at[0].value <= TOP_OF_SCALE):
        return False
    load, count = chunk.factors
    if len(load) != 1 or len(count) != 1 or count[0].role is not Role.BARE:
        return False
    return _is_load(load[0])


def _counted(pair: Chunk, reps: Piece) -> Chunk:
    """ "120 x3" of doubles as three sets of two."""
    counted = pair.as_often(int(pair.factors[1][0].value))
    counted.factors = [pair.factors[0], (reps._replace(role=Role.REPS),)]
    return counted
