"""The ways that a line of numbers leaves open, each with how likely it is before anything is known."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from itertools import pairwise

from engine.reading.chunks.choices import (
    HELD_AT_ONCE,
    LOADS,
    Choice,
    FirstAs,
    PairAs,
    Traits,
    TripleAs,
    chosen,
    may_be_reps,
)
from engine.reading.chunks.chunks import Chunk, Chunks, numbers_in
from engine.reading.chunks.list_heads import heads_a_list, is_ladder
from engine.reading.shapes.one_factor import rises_behind_a_plural
from engine.reading.shapes.two_factors import counts_by_itself
from engine.reading.values import Context, Doubt
from engine.reading.weighing.evidence import LIGHTEST_BAR_KG, NEAR, falls_as_reps_do
from engine.reading.weighing.history import Known
from engine.reading.words.pieces import MOST_LOADED_REPS, MOST_SETS, Piece, Role
from engine.values.sets import SetKind

STEEPEST_LIST = 3
"""Reps of one list seldom fall below a third of the first ones: "25x15x3". Common practice, no source."""
LIGHT_PAIR = 20
FEW_SETS = 5
UNSETTLED = 0.5


# ---- choices


PLAIN_WAY = (1.0, Choice(), Doubt.NUMBERS)
PLAIN_PAIRS = ((1.0, PairAs.COUNTS),)
ONE, STEEPER = Decimal(1), Decimal("1.2")
"""How much steeper than the other side the loads of a chain of drops fall. Common practice, no source."""
FAR_BEHIND = 0.03
"""A way this much less likely than the likeliest is not tried. Common practice, no source."""


def choices(chunks: Chunks, traits: Traits, known: Known, context: Context) -> list[tuple[float, Choice, Doubt]]:
    """The open ways, each with how likely it is and what a question about it would be about."""
    found = chunks.found
    sizes = [len(chunk.factors) for chunk in found]
    ways: list[tuple[float, Choice, Doubt]] = [PLAIN_WAY]
    if 2 in sizes and (open_pairs := _open_pairs(found, traits)):
        pair_ways = _pair_ways(open_pairs, chunks, traits, known, context)
        if pair_ways is not PLAIN_PAIRS:
            ways = [(p * q, chosen(c, pair=as_), d) for p, c, d in ways for q, as_ in pair_ways]
    if 3 in sizes:
        triple_ways = _triple_ways(found[sizes.index(3)], traits, known)
        ways = [(p * q, chosen(c, triple=as_), d) for p, c, d in ways for q, as_ in triple_ways]
    if sizes[:1] == ONE_FACTOR and _first_is_open(chunks, traits):
        first_ways = _first_ways(chunks, traits, known, context)
        ways = [(p * q, chosen(c, first=as_), d) for p, c, d in ways for q, as_ in first_ways]
    elif sizes[:1] == ONE_FACTOR and _shares_may_rise(chunks, traits):
        shared = _shared_ways(chunks, known)
        ways = [(p * q, chosen(c, first=as_), d) for p, c, d in ways for q, as_ in shared]
    if True in [chunk.at_sign and may_be_effort(chunk) for chunk in found]:
        at_ways = _at_ways(chunks, traits, known)
        ways = [(p * q, chosen(c, at_is_effort=e), Doubt.EFFORT_OR_LOAD) for p, c, _ in ways for q, e in at_ways]
    if len(ways) == 1:
        return ways
    likeliest = max(way[0] for way in ways)
    return [way for way in ways if way[0] > likeliest * FAR_BEHIND]


ONE_FACTOR = [1]


def _open_pairs(found: Sequence[Chunk], traits: Traits) -> list[Chunk]:
    opened = [chunk for chunk in found if _is_open_pair(chunk, traits)]
    return [chunk for chunk in opened if not counts_by_itself(found, chunk)] if len(found) > 2 else opened


def _is_open_pair(chunk: Chunk, traits: Traits) -> bool:
    if len(chunk.factors) != 2 or traits.body or traits.timed or chunk.counted or chunk.at_same:
        return False
    left, right = chunk.factors
    if len(left) != 1 or len(right) != 1:
        return False
    (first,), (second,) = left, right
    bare = first.role is Role.BARE and second.role is Role.BARE
    return bare and may_be_reps(first, traits) and may_be_reps(second, traits)


def _load_told_elsewhere(chunks: Chunks, traits: Traits) -> bool:
    """Whether a load stands outside the open pairs, so that those count sets and reps."""
    held = traits.two_implements or traits.carried
    if held and any(_is_pair_of_implements(chunk, traits) for chunk in chunks.found):
        return True
    found = chunks.found
    if len(found) > 1 and len(found[0].factors) == 1 and not _announces(found[0]):
        return True
    behind_pairs = False
    for place, chunk in enumerate(found):
        if chunk.at and not may_be_effort(chunk):
            return True
        loads = len(chunk.factors) == 1 and True in [is_told_load(number, traits) for number in chunk.factors[0]]
        if loads and not (behind_pairs and _heads_reps_of_its_own(found, place)):
            return True
        behind_pairs = (behind_pairs or not place) and _may_be_load_and_reps(chunk)
    return chunks.same_load


def _heads_reps_of_its_own(found: Sequence[Chunk], place: int) -> bool:
    """ "25x8, 35x3, 45 6 6 5": a load and the reps of each set at it, where pairs too many for sets stand ahead."""
    behind = found[place + 1 : place + 2]
    return bool(behind) and behind[0].size == 1 and behind[0].before is None and not behind[0].at


def _may_be_load_and_reps(chunk: Chunk) -> bool:
    return chunk.size == 2 and len(chunk.factors[0]) == 1 and chunk.factors[0][0].value > MOST_SETS


def _announces(chunk: Chunk) -> bool:
    """ "3 sets: 30x10, 30x9, 30x9": a count of what follows, and no load."""
    return bool(chunk.factors[0]) and chunk.factors[0][-1].role is Role.SETS


def _is_pair_of_implements(chunk: Chunk, traits: Traits) -> bool:
    """ "2x24k": two implements, and so a load."""
    if chunk.size != 2 or not chunk.factors[0] or not (traits.two_implements or traits.carried):
        return False
    return chunk.factors[0][0].value in HELD_AT_ONCE and chunk.factors[1][0].role in LOADS


def _small_load_behind(pairs: Sequence[Chunk], chunks: Chunks) -> float:
    """How likely one small number behind sets x reps is the load ("3x12 8") and not another set's reps ("30x15,
    15").
    """
    if len(pairs) != 1 or len(chunks.found) != 2 or chunks.found[0] is not pairs[0] or chunks.found[1].size != 1:
        return 0.0
    if pairs[0].factors[0][0].value > MOST_SETS:
        return 0.0
    return 0.5 if chunks.found[1].before is not None else 1.0


def _pair_ways(
    pairs: Sequence[Chunk], chunks: Chunks, traits: Traits, known: Known, context: Context
) -> Sequence[tuple[float, PairAs]]:
    firsts = [chunk.factors[0][0].value for chunk in pairs]
    seconds = [chunk.factors[1][0].value for chunk in pairs]
    if _load_told_elsewhere(chunks, traits):
        alone = len(pairs) == len(chunks.found)
        return [(0.95, PairAs.COUNTS), (0.02, PairAs.LOAD_REPS)] if alone else PLAIN_PAIRS
    small = _small_load_behind(pairs, chunks)
    if small:
        return [(small, PairAs.COUNTS), (1.02 - small, PairAs.LOAD_REPS)]
    settled = _settled_pairs(chunks, traits) or _falling_loads(chunks, firsts, seconds)
    if settled is not None:
        return [(1.0, settled), (0.05, PairAs.COUNTS)]
    counts, load_first, load_last = _bare_pair_priors(firsts, seconds, traits, pairs[0].spoken_for)
    if context.load_first is not None and load_first and load_last:
        load_first, load_last = (0.9, 0.02) if context.load_first else (0.02, 0.9)
    if known.load is not None:
        load_first *= _nearness(firsts, known.load.amount)
        load_last *= _nearness(seconds, known.load.amount)
    return [(counts, PairAs.COUNTS), (load_first, PairAs.LOAD_REPS), (load_last, PairAs.REPS_LOAD)]


def _falling_loads(chunks: Chunks, firsts: Sequence[Decimal], seconds: Sequence[Decimal]) -> PairAs | None:
    """Which side of a chain of drops falls as loads do: "20x12, drop 15x10, 10x9"; reps fall less than loads."""
    if len(firsts) < 2 or not any(chunk.kind is SetKind.DROP for chunk in chunks.found):
        return None
    falls = [_fall(side) for side in (firsts, seconds)]
    if falls[0] > STEEPER * max(falls[1], ONE):
        return PairAs.LOAD_REPS
    return PairAs.REPS_LOAD if falls[1] > STEEPER * max(falls[0], ONE) else None


def _fall(side: Sequence[Decimal]) -> Decimal:
    """How many times the first is the last, where each is less than the one before it; 0 where they do not fall so."""
    falling = min(side) > 0 and all(high > low for high, low in pairwise(side))
    return side[0] / side[-1] if falling else Decimal(0)


def _settled_pairs(chunks: Chunks, traits: Traits) -> PairAs | None:
    """How the pairs beside the open ones are settled: 45x12>35x9>25x8 holds to one way. A "+" stands behind reps."""
    opened = [chunk.factors[0][0].value for chunk in chunks.found if _is_open_pair(chunk, traits)]
    behind = [chunk.factors[1][0].value for chunk in chunks.found if _is_open_pair(chunk, traits)]
    if any(chunk.plus and chunk.size == 2 for chunk in chunks.found) and max(opened) > MOST_SETS:
        return PairAs.LOAD_REPS
    carried_on = any(chunk.size == 2 and not chunk.factors[0] for chunk in chunks.found)
    if carried_on and min(opened) > MOST_SETS:
        return PairAs.LOAD_REPS  # "20x15, x12"
    for chunk in chunks.found:
        if chunk.size != 2 or _is_open_pair(chunk, traits) or not chunk.factors[0]:
            continue
        first, second = chunk.factors[0][0], chunk.factors[1][0]
        if is_told_load(first, traits) and min(opened) * (4 if max(opened) > MOST_SETS else 2) >= first.value:
            return PairAs.LOAD_REPS
        near = min(behind) * 4 >= second.value
        pair = first.value in HELD_AT_ONCE and (traits.two_implements or traits.carried)
        if is_told_load(second, traits) and near and not pair:
            return PairAs.REPS_LOAD
    return None


def is_told_load(number: Piece, traits: Traits) -> bool:
    return number.role in LOADS or (number.role is Role.BARE and not may_be_reps(number, traits))


def _bare_pair_priors(
    firsts: Sequence[Decimal], seconds: Sequence[Decimal], traits: Traits, spoken: bool
) -> tuple[float, float, float]:
    """How likely counts, load first and load last are for small pairs without another load."""
    most, most_second = max(firsts), max(seconds)
    light = traits.light or traits.two_implements
    if spoken:
        return 0.3, 0.4, 0.1
    if most > MOST_SETS:
        if (light and max(most, most_second) <= LIGHT_PAIR) or (most <= LIGHT_PAIR < most_second):
            return (0.1 if most_second <= FEW_SETS else 0.0), 0.45, 0.45
        return (0.1 if most_second <= FEW_SETS else 0.0), (0.9 if most >= LIGHTEST_BAR_KG else 0.3), 0.1
    repeated = len(firsts) > 1
    if light and traits.light and (most > FEW_SETS or repeated):
        return 0.3, 0.35, 0.35
    if repeated and most > FEW_SETS:
        return 0.4, 0.3, 0.3
    if most > 8 and most_second <= FEW_SETS:
        return 0.5, 0.2, 0.3
    return 1.0, 0.02, 0.02


NEAR_NOTHING = 0.05


def _nearness(loads: Sequence[Decimal], known: Decimal) -> float:
    """How much the last load speaks for these numbers as loads."""
    if known <= 0:
        return 1.0
    ratios = [load / known for load in loads]
    if all(Decimal("0.9") <= ratio <= Decimal("1.1") for ratio in ratios):
        return 8.0
    if all(NEAR[0] <= ratio <= NEAR[1] for ratio in ratios):
        return 1.5
    return NEAR_NOTHING


def _triple_ways(chunk: Chunk, traits: Traits, known: Known) -> list[tuple[float, TripleAs]]:
    first, second, third = (factor[0].value if factor else Decimal(0) for factor in chunk.factors)
    if traits.body:
        factors = (first, second, third)
        rising = first > 0 and not first >= second >= third
        fast = first > 0 and max(factors) > STEEPEST_LIST * min(factors)
        other = TripleAs.LOAD_REPS_SETS if first > third else TripleAs.SETS_REPS_LOAD
        return [(0.5, TripleAs.REPS_LIST), (0.5 if rising or fast else 0.1, other)]
    if chunk.factors[0] and is_told_load(chunk.factors[0][0], traits):
        return _big_first(second, third)
    ways = {
        TripleAs.SETS_REPS_LOAD: 0.4 if first <= MOST_SETS else 0.0,
        TripleAs.LOAD_REPS_SETS: 0.4 if third <= MOST_SETS else 0.0,
        TripleAs.REPS_LIST: 0.4 if first == second == third else 0.02,
        TripleAs.REPS_SETS_LOAD: 0.4 if first > MOST_SETS >= second else 0.0,
    }
    if first <= FEW_SETS < third and first < second:
        ways[TripleAs.SETS_REPS_LOAD] = 1.0
        ways[TripleAs.LOAD_REPS_SETS] *= 0.05
    elif first > MOST_SETS and third <= FEW_SETS <= second:
        ways[TripleAs.LOAD_REPS_SETS] = 1.0
        ways[TripleAs.REPS_SETS_LOAD] *= 0.05
    elif first > MOST_SETS and second <= FEW_SETS < third:
        ways[TripleAs.REPS_SETS_LOAD] = 1.0
    _weigh_by_load(ways, first, third, known)
    if known.load is not None and second == known.load.amount and second not in (first, third):
        # "12x8x3", where eight kilos are what this lift is done with: nobody can say which number is the load.
        ways[TripleAs.REPS_LOAD_SETS] = max(ways.values()) if third <= MOST_SETS else 0.0
        ways[TripleAs.SETS_LOAD_REPS] = max(ways.values()) if third > MOST_SETS >= first else 0.0
    return [(prior, way) for way, prior in ways.items() if prior > 0]


def _weigh_by_load(ways: dict[TripleAs, float], first: Decimal, third: Decimal, known: Known) -> None:
    if known.load is None:
        ways[TripleAs.REPS_LIST] *= 0.5
        return
    ways[TripleAs.LOAD_REPS_SETS] *= _nearness([first], known.load.amount)
    for way in (TripleAs.SETS_REPS_LOAD, TripleAs.REPS_SETS_LOAD):
        ways[way] *= _nearness([third], known.load.amount)


def _big_first(second: Decimal, third: Decimal) -> list[tuple[float, TripleAs]]:
    """100x3x5: five triples to most writers, three fives to one whole school. Nobody does fifteen triples."""
    if second < third and third > MOST_SETS:
        return [(1.0, TripleAs.LOAD_SETS_REPS)]
    if second < third:
        return [(0.5, TripleAs.LOAD_REPS_SETS), (0.5, TripleAs.LOAD_SETS_REPS)]
    return [(1.0, TripleAs.LOAD_REPS_SETS)]


def _shares_may_rise(chunks: Chunks, traits: Traits) -> bool:
    head = chunks.found[0].factors[0][0]
    if head.role is not Role.PLURAL or traits.body or traits.timed or traits.carried:
        return False
    return rises_behind_a_plural(chunks.found, head)


def _shared_ways(chunks: Chunks, known: Known) -> list[tuple[float, FirstAs]]:
    """ "8s: 12 14 16": dumbbells of eight and their reps, or eights with 12, 14 and 16."""
    head, *behind = [number.value for number in numbers_in(chunks)]
    if known.load is None:
        return [(UNSETTLED, FirstAs.LOAD), (UNSETTLED, FirstAs.SHARED)]
    near = [_nearness([head], known.load.amount), _nearness(behind, known.load.amount)]
    if known.load.amount in behind:
        near = [NEAR_NOTHING, near[1]]
    return [(UNSETTLED * near[0], FirstAs.LOAD), (UNSETTLED * near[1], FirstAs.SHARED)]


FIRST_AND_TIMES = 2


def _first_is_open(chunks: Chunks, traits: Traits) -> bool:
    """Whether a list of small bare numbers may begin with its load."""
    if traits.body or traits.timed or not chunks.found or chunks.same_load or chunks.found[0].size != 1:
        return False
    if chunks.body and not chunks.added:
        return False  # "calf raises bodyweight 20 18 16"
    plain_list = all([chunk.size == 1 and not chunk.at and not chunk.counted for chunk in chunks.found])
    if plain_list:
        numbers = numbers_in(chunks)
        counted = numbers[-1].role is Role.TIMES and len(numbers) == FIRST_AND_TIMES  # "20 8 times"
        bare = numbers[:-1] if counted else numbers
        return len(numbers) > 1 and all(one.role is Role.BARE and may_be_reps(one, traits) for one in bare)
    head = chunks.found[0].factors[0][0]
    return len(chunks.found) > 1 and chunks.found[1].size > 1 and head.role is Role.BARE and may_be_reps(head, traits)


def _first_ways(chunks: Chunks, traits: Traits, known: Known, context: Context) -> list[tuple[float, FirstAs]]:
    numbers = [number.value for number in numbers_in(chunks)]
    first, rest = numbers[0], numbers[1:]
    if not all(chunk.size == 1 for chunk in chunks.found):
        apart = chunks.found[1].before is not None  # "25 3x11 @8" and "25, 3x11 @8"
        return [(0.9, FirstAs.LOAD), (0.3 if apart and any(c.at for c in chunks.found) else 0.05, FirstAs.REPS)]
    if numbers_in(chunks)[-1].role is Role.TIMES and first <= MOST_LOADED_REPS:
        return [(UNSETTLED, FirstAs.LOAD), (UNSETTLED, FirstAs.REPS)]  # "20 8 times"
    if first in rest[1::2] and _parted_in_pairs(chunks):
        return [(UNSETTLED, FirstAs.REPS)]  # that each pair is a load and its reps is a candidate of its own
    if heads_a_list(chunks):
        return [(1.0, FirstAs.LOAD), (0.1, FirstAs.REPS)]
    slashed = len(numbers) == 2 and len(chunks.found) == 1
    load, reps = (UNSETTLED, UNSETTLED) if slashed and not traits.barbell else _list_priors(first, rest, traits)
    if known.load is not None and falls_as_reps_do(numbers):
        load, reps = (reps, reps) if first == known.load.amount else (load * NEAR_NOTHING, reps)
    elif known.load is not None:
        load *= _nearness([first], known.load.amount)
        reps *= 2.0
    return [(load, FirstAs.LOAD), (reps, FirstAs.REPS)]


def _parted_in_pairs(chunks: Chunks) -> bool:
    """ "16 10, 16 9": perhaps a load and its reps each time."""
    parted = [chunk.before is not None for chunk in chunks.found[1:]]
    return len(parted) % 2 == 1 and not any(parted[::2]) and all(parted[1::2])


def _list_priors(first: Decimal, rest: Sequence[Decimal], traits: Traits) -> tuple[float, float]:
    if (traits.barbell and first < LIGHTEST_BAR_KG) or is_ladder([first, *rest]):
        return 0.02, 1.0
    if first >= LIGHT_PAIR and first >= Decimal("1.6") * max(rest):
        return 1.0, 0.05
    if first < min(rest) and len(rest) > 1 and (traits.light or traits.two_implements):
        return 1.0, 0.1
    return 0.5, 0.5


def may_be_effort(chunk: Chunk) -> bool:
    """Whether what stands behind "@" is small enough for an effort."""
    at = chunk.at
    return chunk.at_sign and len(at) == 1 and at[0].role is Role.BARE and 1 <= at[0].value <= 10


def _at_ways(chunks: Chunks, traits: Traits, known: Known) -> list[tuple[float, bool]]:
    """(how likely, whether "@ N" is an effort) for N up to 10."""
    value = next(chunk.at[0].value for chunk in chunks.found if may_be_effort(chunk))
    told = any(
        number.role in LOADS or not may_be_reps(number, traits)
        for number in numbers_in(chunks)
        if number.role is not Role.CHANGE
    )
    if told or traits.body or traits.timed:
        return [(1.0, True), (0.02, False)]
    if known.load is not None and known.load.amount > 0:
        near = value / known.load.amount
        return [(1.0, True), (0.02, False)] if near < NEAR[0] else [(0.5, True), (0.5, False)]
    if traits.barbell:
        return [(1.0, True), (0.05, False)]
    return [(0.5, True), (0.5, False)]
