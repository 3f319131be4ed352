"""Every way to read one exercise's numbers, each with how well it fits: the ambiguities, and what settles them.

What leaves a reading open, and how likely each way is before anything is known (common practice, no source):

  two small numbers          sets x reps; load x reps or reps x load on a light lift that is told without another load
  three numbers              by size; 100x3x5 and 10x10x10 stay open
  a falling list 14 12 9     the first may be the load
  @ and a small number       an effort where a load is known that the number is far from, else a load
  an effort behind a list    the last set's, or all sets'
  8-10                       the lower or the higher

Then evidence: the plan's slot, the load of last time, what the equipment can weigh.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from typing import NamedTuple

from engine.reading.chunks.aids import MOST_PLATES
from engine.reading.chunks.choices import (
    ON_THE_BODY,
    Choice,
    DoesNotFit,
    Traits,
    chosen,
)
from engine.reading.chunks.chunks import Chunk, Chunks, numbers_in
from engine.reading.shapes.plain import NotPlain, plain_groups
from engine.reading.shapes.plain_entries import PlainNumbers
from engine.reading.shapes.shapes import Shaper
from engine.reading.values import Context, Doubt
from engine.reading.weighing.at_pairs import ways_of_at_pairs
from engine.reading.weighing.changed_weights import told_with_a_weight
from engine.reading.weighing.evidence import evidence
from engine.reading.weighing.history import Known
from engine.reading.weighing.mixed_units import loads_in_mixed_units, with_units
from engine.reading.weighing.pairs_apart import pairs_apart
from engine.reading.weighing.resolve import resolved, resolved_groups
from engine.reading.weighing.told_otherwise import FAR, told_otherwise
from engine.reading.weighing.turned_pairs import may_be_turned
from engine.reading.weighing.ways import UNSETTLED, choices
from engine.reading.words.pieces import Piece
from engine.values.exercise import Equipment, Exercise, Loading
from engine.values.sets import SetDone, SetKind


class Candidate(NamedTuple):
    """Shape: `weight` compares candidates of one message; 1 is a plain, undoubted reading."""

    sets: tuple[SetDone, ...]
    weight: float
    doubt: Doubt = Doubt.NUMBERS
    weak: bool = False
    unplaced: bool = False
    """A number of it has no plain place, however well the sets fit what is known."""


Weighed = tuple[float, Choice]


def candidates(chunks: Chunks, exercise: Exercise, known: Known, context: Context) -> tuple[list[Candidate], str]:
    """The ways to read these numbers for this exercise, and why the others do not fit.

    Shape: readings that come to the same sets are one candidate.
    """
    if chunks.last_told:
        return _last_either_way(chunks, exercise, known, context)
    if chunks.maybe_times is not None:
        return _times_either_way(chunks, *chunks.maybe_times, exercise, known, context)
    if chunks.how_many is not None:
        return _so_many(chunks, chunks.how_many, exercise, known, context)
    if chunks.at_pairs or chunks.warm_either:
        either_way = _at_pairs_either_way if chunks.at_pairs else _warm_either_way
        return either_way(chunks, exercise, known, context)
    if chunks.plates and chunks.sled_is_nothing is None and exercise.equipment is not Equipment.BARBELL:
        return _plates_either_way(chunks, exercise, known, context)
    if chunks.mixed_units and exercise.loading not in ON_THE_BODY and (loads := loads_in_mixed_units(chunks)):
        return _in_units(chunks, loads, exercise, known, context)
    pairs = pairs_apart(chunks, Traits.of(exercise), context.unit)
    if pairs is not None and pairs.is_clear:
        chunks = pairs.chunks
    return _candidates(chunks, exercise, known, context)


def _candidates(chunks: Chunks, exercise: Exercise, known: Known, context: Context) -> tuple[list[Candidate], str]:
    traits = Traits.of(exercise)
    found: list[Candidate] = []
    why = DO_NOT_ADD_UP
    if traits.body and (chunks.added or chunks.assisted):
        _add_changed(found, chunks, exercise, known, context)
    if chunks.of_a_bar and not chunks.per_side and exercise.loading in HELD_BY_SIDES and not traits.one_sided:
        _add_per_side(found, chunks, exercise, known, context)
    for other, weight in told_otherwise(chunks, exercise, known, context):
        ways, why = candidates(other, exercise, known, context)
        for one in ways:
            _add(found, one._replace(weight=one.weight * weight))
    for way in choices(chunks, traits, known, context):
        try:
            for new in _by_way(way, chunks, traits, exercise, known, context):
                _add(found, new)
        except DoesNotFit as misfit:
            why = str(misfit)
    return found, why


DO_NOT_ADD_UP = "the numbers do not add up"
NOTHING_BESIDE = Chunks()
"""What is told beside plain numbers."""


def plain_candidate(plain: PlainNumbers, exercise: Exercise, known: Known, context: Context) -> Candidate:
    """The only way to read plain numbers for this exercise.

    Errors: NotPlain where they are not so plain for it.
    """
    traits = Traits.of(exercise)
    groups = plain.groups(traits)
    if groups is None or any([may_be_turned(one.count, one.reps, exercise, known) for one in groups]):
        raise NotPlain
    if len(groups) == PAIR and groups[0].count == groups[1].count == 1 and groups[0].reps * FAR <= groups[1].reps:
        raise NotPlain  # "80 3 8": two sets, or three of eight
    try:
        sets = tuple(resolved_groups(groups, NOTHING_BESIDE, exercise, known, context))
    except DoesNotFit as misfit:
        raise NotPlain from misfit
    return Candidate(sets, plain.prior * evidence(sets, NOTHING_BESIDE, exercise, known, traits))


def _by_way(
    way: tuple[float, Choice, Doubt],
    chunks: Chunks,
    traits: Traits,
    exercise: Exercise,
    known: Known,
    context: Context,
) -> list[Candidate]:
    """What the chunks come to where the open numbers are read this way.

    Errors: DoesNotFit.
    """
    prior, choice, doubt = way
    groups = plain_groups(chunks, choice, traits)
    if groups is not None:
        sets = tuple(resolved_groups(groups, chunks, exercise, known, context))
        return [Candidate(sets, prior * evidence(sets, chunks, exercise, known, traits), doubt)]
    shaper = Shaper(chunks, choice, traits)
    sets = tuple(resolved(shaper.run(), chunks, exercise, known, context))
    weight = prior * evidence(sets, chunks, exercise, known, traits)
    return [
        Candidate(alternative, weight * share, its_doubt or doubt, shaper.weak, shaper.unplaced)
        for alternative, share, its_doubt in _alternatives(shaper, chunks, exercise, known, context, choice, sets)
    ]


def _in_units(
    chunks: Chunks, loads: Sequence[Piece], exercise: Exercise, known: Known, context: Context
) -> tuple[list[Candidate], str]:
    """ "225x5 then 105kg x 4": with the units that the loads without one may have."""
    out: list[Candidate] = []
    why = ""
    for other, weight in with_units(chunks, loads, known, context.unit):
        ways, misfit = candidates(other, exercise, known, context)
        why = why or misfit
        out += [one._replace(weight=one.weight * weight) for one in ways]
    return out, why


def _plates_either_way(
    chunks: Chunks, exercise: Exercise, known: Known, context: Context
) -> tuple[list[Candidate], str]:
    """ "leg press 3 plates a side": what they weigh alone, or no load, as nobody knows what the sled weighs."""
    many = any(
        one.text == "plates" and one.value > MOST_PLATES for one in (*numbers_in(chunks), *_loads_behind(chunks))
    )
    out: list[Candidate] = []
    why = ""
    for counted in (True, False):
        other = chunks.with_found(chunks.found)
        other.sled_is_nothing = counted
        ways, misfit = candidates(other, exercise, known, context)
        why = why or misfit
        out += [one._replace(weight=one.weight * UNSETTLED, unplaced=one.unplaced or many) for one in ways]
    return out, why


def _loads_behind(chunks: Chunks) -> list[Piece]:
    return [load for chunk in chunks.found for load in chunk.at]


def _last_either_way(chunks: Chunks, exercise: Exercise, known: Known, context: Context) -> tuple[list[Candidate], str]:
    """ "8 8 8, last 4": one more set, or what the last of them came to."""
    place, found, why = chunks.last_told, list(chunks.found), ""
    out: list[Candidate] = []
    for kept in (found, found[: place - 1] + found[place:]):
        other = chunks.with_found(kept)
        other.last_told = 0
        ways, misfit = candidates(other, exercise, known, context)
        why = why or misfit
        out += [one._replace(weight=one.weight * UNSETTLED, unplaced=True) for one in ways]
    return out, why


def _times_either_way(
    chunks: Chunks, place: int, times: int, exercise: Exercise, known: Known, context: Context
) -> tuple[list[Candidate], str]:
    """ "80x5, x3": one more set, of three reps, or three sets of five."""
    found = list(chunks.found)
    repeated = found[:place] + found[place + 1 :]
    repeated[place - 1] = repeated[place - 1].as_often(times)
    out: list[Candidate] = []
    why = ""
    for kept in (found, repeated):
        other = chunks.with_found(kept)
        other.maybe_times = None
        ways, misfit = candidates(other, exercise, known, context)
        why = why or misfit
        out += [one._replace(weight=one.weight * UNSETTLED, unplaced=True) for one in ways]
    return out, why


def _so_many(
    chunks: Chunks, place: int, exercise: Exercise, known: Known, context: Context
) -> tuple[list[Candidate], str]:
    """ "triples at 120": the usual counts of sets; which of them, or another, is asked."""
    out: list[Candidate] = []
    why = ""
    for times in USUAL_COUNTS:
        found = list(chunks.found)
        found[place] = found[place].as_often(times)
        other = chunks.with_found(found)
        other.how_many = None
        ways, misfit = candidates(other, exercise, known, context)
        why = why or misfit
        out += [one._replace(doubt=Doubt.HOW_MANY, unplaced=True) for one in ways]
    return out, why


USUAL_COUNTS = (2, 3, 5)
"""Common practice, no source."""


def _at_pairs_either_way(
    chunks: Chunks, exercise: Exercise, known: Known, context: Context
) -> tuple[list[Candidate], str]:
    """ "80@8x5" as sets or as an effort, "5@70x3" as five sets or as three."""
    ways = [candidates(other, exercise, known, context) for other in ways_of_at_pairs(chunks)]
    out = [one for found, _ in ways for one in found]
    why = next((why for _, why in ways if why), "")
    return [one._replace(weight=one.weight * UNSETTLED, unplaced=True) for one in out] if len(out) > 1 else out, why


def _warm_either_way(chunks: Chunks, exercise: Exercise, known: Known, context: Context) -> tuple[list[Candidate], str]:
    """ "60x5 wu 80x5": the sets before the word were the warm-up, or those behind it."""
    out: list[Candidate] = []
    why = ""
    grouped = len(max(chunks.warm_either, key=len)) == len(chunks.found) and _tells_a_group(chunks.found)
    for places in chunks.warm_either:
        told = enumerate(chunks.found)
        other = chunks.with_found([chunk.as_warm_up() if at in places else chunk for at, chunk in told])
        other.warm_either = ()
        ways, misfit = candidates(other, exercise, known, context)
        why = why or misfit
        out += [one for one in ways if grouped or not _warms_up_above(one.sets)]
    return [one._replace(weight=one.weight * UNSETTLED, unplaced=True) for one in out] if len(out) > 1 else out, why


def _tells_a_group(found: Sequence[Chunk]) -> bool:
    """ "3x5 60, 80x3 warm up": sets that were counted together may be the work, whatever stands behind them."""
    joined = any(two.before is None and min(one.size, two.size) < PAIR for one, two in pairwise(found))
    return joined or any(one.size + bool(one.at) > PAIR for one in found)


PAIR = 2


def _warms_up_above(sets: tuple[SetDone, ...]) -> bool:
    """Whether every warm-up is heavier than all work: nobody warms up so."""
    work = [one.load.kilograms() for one in sets if one.load is not None and one.kind is SetKind.WORK]
    warm = [one.load.kilograms() for one in sets if one.load is not None and one.kind is SetKind.WARMUP]
    return bool(work) and bool(warm) and min(warm) > max(work)


def _add_changed(found: list[Candidate], chunks: Chunks, exercise: Exercise, known: Known, context: Context) -> None:
    """What is told of a lift that the body is changed by a weight for, with the number that may be that weight."""
    changed, weight = told_with_a_weight(chunks)
    for one in candidates(chunks.with_found(changed), exercise, known, context)[0] if changed else ():
        _add(found, one._replace(weight=one.weight * weight))


def _add_per_side(found: list[Candidate], chunks: Chunks, exercise: Exercise, known: Known, context: Context) -> None:
    """ "bench 35 a side x8": so much on each side of the bar, with the bar; "leg press 100 a side": twice that."""
    other = chunks.with_found(chunks.found)
    other.per_side = True
    for one in candidates(other, exercise, known, context)[0]:
        _add(found, one)


HELD_BY_SIDES = frozenset((Loading.BAR, Loading.PLATES))


def _add(found: list[Candidate], new: Candidate) -> None:
    """One more candidate; the weight of an equal one is added to it. (Comparing is cheaper here than hashing sets.)"""
    for place, known in enumerate(found):
        if known.sets == new.sets:
            found[place] = new._replace(weight=known.weight + new.weight)
            return
    found.append(new)


def _alternatives(
    shaper: Shaper,
    chunks: Chunks,
    exercise: Exercise,
    known: Known,
    context: Context,
    choice: Choice,
    sets: tuple[SetDone, ...],
) -> list[tuple[tuple[SetDone, ...], float, Doubt | None]]:
    """The reading itself, or two of it where it met a range, or an effort that may be one set's or all sets'."""
    if shaper.saw_range:
        other, doubt = chosen(choice, high_of_range=True), Doubt.RANGE
    elif shaper.saw_list_effort:
        other, doubt = chosen(choice, effort_for_all=False), Doubt.NUMBERS
    elif shaper.saw_load_behind:
        other, doubt = chosen(choice, load_for_all=False), Doubt.NUMBERS
    elif chunks.stated is not None and (len(sets), sets[0].reps) != chunks.stated:
        return []
    elif shaper.saw_sides:
        other, doubt = chosen(choice, sides_in_one=True), Doubt.NUMBERS
    else:
        return [(sets, UNSETTLED / 10, Doubt.NUMBERS)] if shaper.weak else [(sets, 1.0, None)]
    try:
        drafts = Shaper(chunks, other, shaper.traits).run()
        rival = tuple(resolved(drafts, chunks, exercise, known, context))
    except DoesNotFit:
        return [(sets, UNSETTLED, doubt)]
    return [(rival, UNSETTLED, doubt), (sets, UNSETTLED, doubt)]
