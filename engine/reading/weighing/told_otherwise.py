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
    counted = _counted_first(chunks, traits)
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


def _counted_first(chunks: Chunks, traits: Traits) -> Chunks | None:
    """ "4 6 70", "70 | 4 | 6", "pull ups 3 8": sets and reps, or the reps of two sets; here told as sets x reps."""
    if traits.timed or not all(map(_is_bare, chunks.found)):
        return None
    if len(chunks.found) == 3 and not traits.body:
        return _three_bare(chunks, traits)
    if len(chunks.found) != 2 or not traits.body:
        return None
    one, other = chunks.found
    few = one.factors[0][0].value <= FEW_SETS and not one.at and not other.at and other.before in CELLS
    far = FAR * one.factors[0][0].value <= other.factors[0][0].value
    return _as_counts(chunks, one, other, (), traits) if few and far else None


def _three_bare(chunks: Chunks, traits: Traits) -> Chunks | None:
    """ "4 6 70", "70 | 4 | 6"."""
    first, second, third = chunks.found
    parted = {second.before, third.before}
    ahead = is_told_load(first.factors[0][0], traits)
    signs = CELLS if ahead else OR_A_LIST
    if first.at or second.at or len(parted) > 1 or not parted <= signs or (third.at and not may_be_effort(third)):
        return None
    load, one, other = (first, second, third) if ahead else (third, first, second)
    if not is_told_load(load.factors[0][0], traits) or (ahead and third.at):
        return None
    low, high = sorted((one.factors[0][0].value, other.factors[0][0].value))
    falls = one.factors[0][0].value == high > low
    if parted == {None} and not ahead:
        return _as_counts(chunks, one, other, (load,), traits)
    listed = not parted.isdisjoint(LISTING)
    if (falls and listed) or ((falls or listed) and FAR * low > high):
        return None  # "70, 8, 3", "70 6 6", "70 | 6 | 5": two sets
    return _as_counts(chunks, other, one, (load,), traits) if falls else _as_counts(chunks, one, other, (load,), traits)


def _as_counts(chunks: Chunks, sets: Chunk, reps: Chunk, load: tuple[Chunk, ...], traits: Traits) -> Chunks | None:
    count, each = sets.factors[0][0], reps.factors[0][0]
    told = count.role is each.role is Role.BARE and may_be_reps(each, traits) and 2 <= count.value <= MOST_SETS
    return chunks.with_found([Chunk([(count,), (each,)]), *load]) if told else None


LISTING = frozenset((None, K.COMMA, K.SLASH))
"""What stands between the reps of a list, as commas do; a line or a dash between numbers makes columns of them."""
FEW_SETS = 5
CELLS = frozenset((None, K.STOP, K.DASH))
OR_A_LIST = CELLS | {K.COMMA, K.SLASH}
"""Behind a load, or of the body alone, commas and slashes part the reps of sets: "80, 3, 8"."""
FAR = 2
"""So many times the reps of the one set those of the other hardly ever are. Common practice, no source."""


def _is_bare(chunk: Chunk) -> bool:
    return chunk.size == 1 and len(chunk.factors[0]) == 1 and not chunk.counted and chunk.side is None
