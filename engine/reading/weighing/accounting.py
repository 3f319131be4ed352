"""Whether a reading accounts for the whole message: every number and sign has its place, and nothing in it is odd.

A set is never recorded beside a number that found no place, nor with a number that no lifter means; such a message is
asked about, or left unread with its reason. Places are sets, reps, load, effort, time, distance, or a word that says
what else a number is: rest, tempo, seat, date, body weight, a label, a scale.
"""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from itertools import pairwise
from operator import itemgetter

from engine.reading.chunks.chunks import Chunks, numbers_in
from engine.reading.chunks.lists import is_their_sum
from engine.reading.marks.scales import is_bare_tempo
from engine.reading.values import Doubt
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook
from engine.reading.words.pieces import (
    COUNTED,
    MOST_LOADED_REPS,
    TEXT,
    Piece,
    Role,
    is_one_word,
    kinds_in_order,
    places_of,
)
from engine.values.exercise import Exercise, Loading, Measure
from engine.values.load import Basis, Load, Unit
from engine.values.muscles import Muscle
from engine.values.sets import SetDone, SetKind

MOST_LOADED_REPS_RECORDED = 100
"""More reps than this with a load are asked about. Common practice, no source."""

MOST_BODY_REPS_RECORDED = 300
"""More reps than this in one set without a load are asked about. Common practice, no source."""

MOST_SETS_RECORDED = 40
"""More sets than this of one exercise in one message are asked about. Common practice, no source."""

MOST_SETS_OF_A_MESSAGE = 120
"""More sets than this in one message are asked about. Common practice, no source."""

MOST_NUMBERS_OF_A_LIFT = 150
"""More numbers than this behind one name are not read: no list of sets is as long. Common practice, no source."""

SHORTEST_HOLD_RECORDED = 5
"""Seconds; a shorter hold is asked about: rather it was told in minutes. Common practice, no source."""

LONGEST_HOLD_RECORDED = 900
"""Seconds; a longer hold is asked about. Common practice, no source."""

TOLD_LOADS = frozenset((Role.LOAD, Role.PLURAL, Role.BAR, Role.BODY))


def unreadable(pieces: Sequence[Piece]) -> str:
    """The first number that cannot be read ("1?5", "1e309", "80qq"), as typed; empty where there is none."""
    for piece in pieces:
        if piece.role is Role.UNREADABLE:
            return piece.text
    return ""


FIRST = itemgetter(0)


def left_over(pieces: Sequence[Piece], chunks: Chunks, exercise: Exercise) -> bool:
    """Whether a number or a sign of these pieces found no place in the sets."""
    if chunks.loose or chunks.pins or chunks.dangling:
        return True
    if "0" in map(FIRST, map(TEXT, pieces)) and any(map(_is_day_or_code, pieces)):
        return True
    if K.FILLER in chunks.kinds and _tells_all(pieces):
        return True
    if exercise.measure is Measure.DISTANCE and (_goes_another_way(pieces) or _counts_ways(pieces)):
        return True
    if chunks.sides and not exercise.one_sided and exercise.loading is Loading.BAR:
        return True  # "squat 80 5 each leg"
    if Role.PLURAL in chunks.roles and _has_odd_plurals(pieces, chunks, exercise):
        return True
    if exercise.loading is Loading.BODY and (_heads_with_their_sum(chunks) or _may_be_her_weight(chunks)):
        return True
    return exercise.measure is Measure.REPS and _is_wordless_tempo(pieces, chunks, exercise)


def _has_odd_plurals(pieces: Sequence[Piece], chunks: Chunks, exercise: Exercise) -> bool:
    """ "bench 3x8 90s": rest, plates or dumbbells; "21s curls"."""
    if exercise.loading is Loading.BAR and any(map(_is_plural_load, numbers_in(chunks))):
        return True
    return exercise.prime[:1] == (Muscle.BICEPS,) and any(map(_is_of_three_sevens, pieces))


def _is_of_three_sevens(piece: Piece) -> bool:
    """ "21s curls": seven half reps, seven others and seven full ones; or dumbbells of 21."""
    return piece.role is Role.PLURAL and piece.value == THREE_SEVENS


THREE_SEVENS = 21


def _counts_ways(pieces: Sequence[Piece]) -> bool:
    """ "farmers with the 24s, 3 times", "sled push 100 x3": so often, and how far or how long is not told."""
    told = [piece for piece in pieces if piece.kind is K.NUMBER]
    often = any(piece.role is Role.TIMES for piece in told) or (K.TIMES in [piece.kind for piece in pieces])
    return often and WAYS.isdisjoint([piece.role for piece in told])


WAYS = frozenset((Role.METRES, Role.SECONDS, Role.NOT_A_SET, Role.PLURAL))


def _goes_another_way(pieces: Sequence[Piece]) -> bool:
    """ "40 yards": a way that is not told in metres."""
    roles = {piece.role for piece in pieces}
    return Role.NOT_A_SET in roles and Role.METRES not in roles


def _heads_with_their_sum(chunks: Chunks) -> bool:
    """ "100 push ups: 40, 30, 20, 10": the first number is what the others come to."""
    if not all([chunk.size == 1 for chunk in chunks.found]):
        return False
    told = numbers_in(chunks)
    bare = told[0].role in (Role.BARE, Role.REPS) if told else False  # "+30: 11/10/9" adds weight
    return bare and is_their_sum(told[0], told[1:])


def _is_plural_load(number: Piece) -> bool:
    """ "90s"; "8s" count reps."""
    return number.role is Role.PLURAL and number.value > MOST_LOADED_REPS


def _tells_all(pieces: Sequence[Piece]) -> bool:
    """ "all three at 82.5", "all sets 8 reps": so many sets, and which number counts them is not said."""
    for at, piece in enumerate(pieces):
        if piece.kind in COUNTED:
            return False
        if not (piece.text == EVERY or piece.text in phrasebook().cues["all"]) or piece.kind is not K.FILLER:
            continue
        behind = pieces[at + 1] if at + 1 < len(pieces) else piece
        words = not is_one_word(piece)
        if (behind.kind is K.NUMBER and behind.spelled) or (words and not _is_grouped(pieces)):
            return True
    return False


def _is_grouped(pieces: Sequence[Piece]) -> bool:
    return K.TIMES in [piece.kind for piece in pieces] or [piece.kind for piece in pieces].count(K.NUMBER) > 2


EVERY = "every"


def _may_be_her_weight(chunks: Chunks) -> bool:
    """ "pull ups 82kg 3x8"."""
    if chunks.added:
        return False
    told = [*numbers_in(chunks), *[number for chunk in chunks.found for number in chunk.at]]
    loads = [number for number in told if number.role is Role.LOAD]
    return any(number.value >= MOST_ADDED_WITHOUT_A_SIGN[number.unit or Unit.KG] for number in loads)


def _is_day_or_code(piece: Piece) -> bool:
    """ "02": nobody writes reps or loads with a zero in front."""
    return piece.kind is K.NUMBER and len(piece.text) > 1 and piece.text[0] == "0" and piece.text.isdigit()


def _is_wordless_tempo(pieces: Sequence[Piece], chunks: Chunks, exercise: Exercise) -> bool:
    """Four digits taken for a tempo with no word to them, where no load was told: they may be anything."""
    if K.NOTE not in chunks.kinds or exercise.loading is Loading.BODY:
        return False
    if not any([is_bare_tempo(pieces[at]) for at in places_of(K.NOTE, kinds_in_order(pieces))]):
        return False
    told = any(number.role in TOLD_LOADS or number.value > MOST_LOADED_REPS_RECORDED for number in numbers_in(chunks))
    return not told and not any(chunk.at for chunk in chunks.found) and len(numbers_in(chunks)) < LEAST_WITH_A_LOAD


FURTHEST_FALL = Decimal("0.5")
"""A set at less than this share of the load of the set before it, no drop and no warm-up, is asked about: rather a
number is missing, or its unit is another one. Common practice, no source."""

LEAST_FAR_OFF_REPS = 21
FAR_OFF = Decimal("2.5")
"""At one load, so many reps that are more than this many times those of any other set are asked about: rather they are
a sum, or a digit too many. Common practice, no source."""

MOST_REPS_OF_A_LIFT = 300
"""More reps than this in the equal sets of one group are asked about. Common practice, no source."""

MOST_ADDED_WITHOUT_A_SIGN = {Unit.KG: 50, Unit.LB: 110}
"""From here on a load told of a lift of the body, with no "+" and no word for it, may be what she weighs. Common
practice, no source."""

LEAST_WITH_A_LOAD = 3
"""Sets, reps and a load are three numbers; fewer do not hold a load of their own."""


def odd(sets: Sequence[SetDone], pieces: Sequence[Piece]) -> Doubt | None:
    """What is so unlikely about the sets, read of these pieces, that they are asked about; None where nothing is."""
    for one in sets:
        loaded = one.load is not None and one.load.amount > 0
        if one.reps > (MOST_LOADED_REPS_RECORDED if loaded else MOST_BODY_REPS_RECORDED):
            return Doubt.NUMBERS
        if one.seconds is not None and not SHORTEST_HOLD_RECORDED <= one.seconds <= LONGEST_HOLD_RECORDED:
            return Doubt.NUMBERS
    return _odd_together(sets, pieces) if len(sets) > 1 else None


def _odd_together(sets: Sequence[SetDone], pieces: Sequence[Piece]) -> Doubt | None:
    """What is unlikely about sets beside each other: a load that falls too far, reps that no other set comes near."""
    work = [one for one in sets if one.kind is SetKind.WORK and one.seconds is None and one.metres is None]
    falls = any(before.exercise == one.exercise and _falls(before.load, one.load) for before, one in pairwise(work))
    if falls and not any(piece.unit is not None for piece in pieces):
        return Doubt.UNUSUAL_LOAD  # a unit that was written says that the number is meant so
    if len(sets) == 2 and len(work) == 2 and _may_count_sets(work, pieces):
        return Doubt.NUMBERS
    reps = sorted([one.reps for one in work if one.side is None], reverse=True)
    if len(reps) > 1 and reps[0] >= LEAST_FAR_OFF_REPS and reps[0] > FAR_OFF * reps[1]:
        most = next(one for one in work if one.reps == reps[0])
        if any(one.load == most.load and one.exercise == most.exercise for one in work if one is not most):
            return Doubt.NUMBERS
    return None


def _may_count_sets(sets: Sequence[SetDone], pieces: Sequence[Piece]) -> bool:
    """ "bench 80 3 8": two sets whose reps rise, or three sets of eight."""
    first, second = sets
    loaded = first.load is not None and first.load.amount > 0 and first.load == second.load
    kinds = [piece.kind for piece in pieces]
    bare = BARE_NUMBERS.issuperset(kinds) and kinds.count(K.NUMBER) == LEAST_WITH_A_LOAD and first.side is None
    return loaded and bare and first.reps <= FEW_SETS and first.reps * 2 <= second.reps


BARE_NUMBERS = frozenset((K.NUMBER, K.SLASH, K.COLON))
FEW_SETS = 5


def _falls(before: Load | None, load: Load | None) -> bool:
    if before is None or load is None or before is load or not 0 < load.amount < before.amount:
        return False
    return load.basis is not Basis.BODY and load.unit is before.unit and load.amount < before.amount * FURTHEST_FALL


def too_many(sets: Sequence[SetDone]) -> bool:
    """Whether one group comes to more reps than anyone does of a lift, "10 sets, 50 reps", or a set of it to more than
    anyone does with a load, and no load was told: "deadlift 5 of 120".
    """
    if any([one.load is None and one.reps > MOST_LOADED_REPS for one in sets]):
        return True
    return len(sets) * sets[0].reps > MOST_REPS_OF_A_LIFT and len({one.reps for one in sets}) == 1
