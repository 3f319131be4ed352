"""Numbers put together in other ways than they stand: three bare ones, pairs apart or turned, a load between."""

from __future__ import annotations

from collections.abc import Iterator

from engine.reading.chunks.choices import Traits, may_be_reps
from engine.reading.chunks.chunks import Chunk, Chunks
from engine.reading.values import Context
from engine.reading.weighing.history import Known
from engine.reading.weighing.pairs_apart import pairs_apart
from engine.reading.weighing.turned_pairs import with_pairs_turned
from engine.reading.weighing.ways import UNSETTLED, is_told_load, may_be_effort
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_SETS, Role
from engine.values.exercise import Exercise

AS_LIKELY = 1.0


def told_otherwise(
    chunks: Chunks, exercise: Exercise, known: Known, context: Context
) -> Iterator[tuple[Chunks, float]]:
    """The chunks with their numbers put together in other ways, each with how likely it is."""
    traits = Traits.of(exercise)
    counted = _three_bare(chunks, traits)
    if counted is not None:
        yield counted, UNSETTLED
        return
    pairs = pairs_apart(chunks, traits, context.unit)
    if pairs is not None:
        yield pairs.chunks, UNSETTLED
    other = with_pairs_turned(chunks, exercise, known) or _load_between(chunks, traits)
    if other is not None:
        yield other, AS_LIKELY


def _load_between(chunks: Chunks, traits: Traits) -> Chunks | None:
    """ "dips 8 +20kg x3": eight without and three with it, or three sets of eight; here told as sets x reps."""
    found = chunks.found
    if not traits.body or [chunk.size for chunk in found] != [1, 2] or found[1].before not in NO_SIGN:
        return None
    reps, (load, sets) = found[0].factors[0], (found[1].factors[0], found[1].factors[1])
    if len(reps) != 1 or len(load) != 1 or len(sets) != 1 or not may_be_reps(reps[0], traits):
        return None
    fewer = sets[0].role is Role.BARE and 1 < sets[0].value <= MOST_TIMES and sets[0].value < reps[0].value
    if not fewer or reps[0].role not in (Role.BARE, Role.REPS) or load[0].role not in (Role.CHANGE, Role.LOAD):
        return None
    return chunks.with_found([Chunk([sets, reps]), Chunk([load])])


NO_SIGN = (None, K.WITH, K.AT)
MOST_TIMES = 5
"""So many sets at most are told as times of one. Common practice, no source."""


def _three_bare(chunks: Chunks, traits: Traits) -> Chunks | None:
    """ "4 6 70": sets, reps and load, or two sets' reps and their load; here told as sets x reps."""
    if len(chunks.found) != 3 or traits.body or traits.timed:
        return None
    plain = [
        chunk
        for chunk in chunks.found
        if chunk.size == 1 and chunk.before is None and not chunk.counted and chunk.side is None
    ]
    if len(plain) != 3 or plain[0].at or plain[1].at or (plain[2].at and not may_be_effort(plain[2])):
        return None
    sets, reps, load = (chunk.factors[0][0] for chunk in plain)
    bare = all(len(chunk.factors[0]) == 1 for chunk in plain) and sets.role is reps.role is Role.BARE
    if not bare or not is_told_load(load, traits) or not may_be_reps(reps, traits) or not 2 <= sets.value <= MOST_SETS:
        return None
    return chunks.with_found([Chunk([(sets,), (reps,)]), plain[2]])
