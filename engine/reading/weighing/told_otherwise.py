"""Numbers put together in other ways than they stand: three bare ones, pairs of a load and its reps, turned pairs."""

from __future__ import annotations

from collections.abc import Iterator

from engine.reading.chunks.choices import MOST_SETS, Traits, may_be_reps
from engine.reading.chunks.chunks import Chunk, Chunks
from engine.reading.values import Context
from engine.reading.weighing.history import Known
from engine.reading.weighing.pairs_apart import pairs_apart
from engine.reading.weighing.turned_pairs import with_pairs_turned
from engine.reading.weighing.ways import UNSETTLED, is_told_load, may_be_effort
from engine.reading.words.pieces import Role
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
    turned = with_pairs_turned(chunks, exercise, known)
    if turned is not None:
        yield turned, AS_LIKELY


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
