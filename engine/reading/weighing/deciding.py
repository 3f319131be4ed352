"""One outcome from the candidate readings: a clear winner is recorded, anything else is asked.

A candidate's plausibility is its share of all candidates' weight, with a little left for "none of these".
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from datetime import date
from itertools import product
from math import prod
from types import MappingProxyType
from typing import NamedTuple

from engine.catalogue.catalogue import Catalogue
from engine.reading.chunks.chunker import Chunker
from engine.reading.chunks.chunks import Chunks
from engine.reading.entries.entry import Entry
from engine.reading.entries.names import exercises_meant
from engine.reading.shapes.plain import NotPlain
from engine.reading.shapes.plain_entries import PlainNumbers, plain_numbers
from engine.reading.values import Context, Doubt, Reading
from engine.reading.weighing.accounting import (
    MOST_NUMBERS_OF_A_LIFT,
    MOST_SETS_OF_A_MESSAGE,
    MOST_SETS_RECORDED,
    left_over,
    odd,
    too_many,
    unreadable,
)
from engine.reading.weighing.candidates import DO_NOT_ADD_UP, NOTHING_BESIDE, Candidate, plain_candidate
from engine.reading.weighing.history import Known, is_far_off, known_of
from engine.reading.weighing.hung_by_name import HUNG_BY
from engine.reading.weighing.planned_sets import sets_of_the_plan
from engine.reading.weighing.units_of_today import candidates_in_units_of_today, told_in_another_unit
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Role
from engine.values.exercise import Exercise, Loading
from engine.values.ids import ExerciseName
from engine.values.load import Load
from engine.values.sets import SetDone, SetKind

ENOUGH = 0.75
"""The plausibility from which a reading may be recorded. Common practice, no source; the tests show what moves with
it.
"""

CLEAR_BY = 0.5
"""How far it must lie above the next one."""

NONE_OF_THESE = 0.05
"""Weight kept for "it is none of these": a lone but odd reading is asked, too."""

NONE_BEFORE: Mapping[str, Load | None] = MappingProxyType({})
MOST_READINGS, MOST_OPEN = 9, 9
MOST_OF_ONE = 3


class Part(NamedTuple):
    """What one entry comes to: its readings, best first; `doubt` None where the first is clear."""

    readings: tuple[Reading, ...]
    doubt: Doubt | None
    term: str
    why: str = ""
    rejected: tuple[Reading, ...] = ()
    chunks: Chunks | None = None
    entry: Entry | None = None
    behind: tuple[Reading, ...] = ()
    """Other readings of the numbers of an exercise, asked about once the exercise is settled."""

    @property
    def is_bare_name(self) -> bool:
        """A name on a line of its own, without a number: nothing is lost but the name."""
        return self.entry is not None and not self.readings and self.entry.bare


def part_of(
    entry: Entry, context: Context, catalogue: Catalogue, before: Mapping[str, Load | None] = NONE_BEFORE
) -> Part:
    """The readings of one entry.

    Shape: `before` holds the latest load of each lift read just before it, the last one last, for "same weight".
    """
    if len(entry.pieces) > MOST_NUMBERS_OF_A_LIFT and _is_endless(entry):
        return Part((), Doubt.NO_REPS, entry.phrase, "more numbers than one exercise can have", entry=entry)
    if entry.by_the_plan and not entry.has_numbers:
        return _by_the_plan(entry, context, catalogue)
    plain = _plain_numbers(entry)
    if plain is not None:
        try:
            return _part(entry, NOTHING_BESIDE, plain, context, catalogue, before)
        except NotPlain:
            pass
    return _part(entry, _chunks_of(entry), None, context, catalogue, before)


def _by_the_plan(entry: Entry, context: Context, catalogue: Catalogue) -> Part:
    """ "bench as planned" beside lifts that tell their numbers."""
    sets = sets_of_the_plan(entry.names, context, catalogue)
    if not sets:
        return Part((), Doubt.NO_REPS, entry.phrase, "nothing of it is planned; send its sets", entry=entry)
    return Part((Reading(sets, 1.0),), None, entry.phrase, "as planned", entry=entry)


def _part(
    entry: Entry,
    chunks: Chunks,
    plain: PlainNumbers | None,
    context: Context,
    catalogue: Catalogue,
    before: Mapping[str, Load | None],
) -> Part:
    """The readings of one entry told by these chunks, or by plain numbers alone.

    Errors: NotPlain for numbers that are not so plain for an exercise that they may be about.
    """
    barred = _barred(entry, chunks)
    if barred is not None:
        return barred._replace(chunks=chunks)
    names = exercises_meant(entry, chunks, context, catalogue)
    if not names and entry.names:
        return Part((), Doubt.UNKNOWN_NAME, entry.phrase, f"no {entry.phrase} of that kind is known", (), chunks, entry)
    if not names:
        return Part((), Doubt.EXERCISE, "", "no exercise was named and none is in hand", (), chunks, entry)
    found: list[Candidate] = []
    why = ""
    known: dict[str, Known] = {}
    for name in names:
        exercise = catalogue.exercises.get(name)
        if exercise is None:
            continue
        known[name] = _known(name, context, chunks, before)
        if plain is not None:
            if told_in_another_unit(known[name], context):
                raise NotPlain
            ways, misfit = [plain_candidate(plain, exercise, known[name], context)], DO_NOT_ADD_UP
        else:
            ways, misfit = candidates_in_units_of_today(chunks, exercise, known[name], context)
        found += ways
        why = why or misfit
    in_hand = context.doing is not None
    return _decided(entry, chunks, found, names, why, known, catalogue.exercises, in_hand=in_hand)


def _plain_numbers(entry: Entry) -> PlainNumbers | None:
    """The numbers of an entry, where they are plain and its name says nothing of the weight."""
    if entry.phrase and HUNG_BY[entry.phrase]:
        return None
    return plain_numbers(entry.pieces)


def _chunks_of(entry: Entry) -> Chunks:
    """The numbers of an entry, with what the name says of the weight: "assisted pull up"."""
    chunks = Chunker(entry.pieces).run()
    hung = HUNG_BY[entry.phrase]
    chunks.assisted = chunks.assisted or K.ASSISTED in hung
    chunks.added = chunks.added or K.ADDED in hung
    return chunks


def _is_endless(entry: Entry) -> bool:
    return len([piece for piece in entry.pieces if piece.kind is K.NUMBER]) > MOST_NUMBERS_OF_A_LIFT


def _barred(entry: Entry, chunks: Chunks) -> Part | None:
    """What keeps an entry from being read at all: its day, a broken number, a name that nobody knows."""
    if entry.bare:
        return Part((), Doubt.NO_REPS, entry.phrase, "no numbers to it", entry=entry)
    if entry.no_reps:
        return Part((), Doubt.NO_REPS, entry.phrase, "no reps to it", entry=entry)
    if entry.no_day:
        return Part((), Doubt.NUMBERS, entry.phrase, entry.no_day, entry=entry)
    if Role.UNREADABLE in chunks.roles and (broken := unreadable(entry.pieces)):
        return Part((), Doubt.NO_REPS, entry.phrase, f"“{broken}” is no number I can read", entry=entry)
    if entry.unknown:
        return Part((), Doubt.UNKNOWN_NAME, entry.unknown, f"unknown name “{entry.unknown}”", entry=entry)
    return None


def _known(name: str, context: Context, chunks: Chunks, before: Mapping[str, Load | None]) -> Known:
    known = known_of(ExerciseName(name), context)
    same = [*before.values()][-1] if chunks.same_load and before else before.get(name)
    return Known(same, known.planned, known.heaviest, same, known.last, known.warmed_up) if same is not None else known


def _decided(
    entry: Entry,
    chunks: Chunks,
    found: list[Candidate],
    names: Sequence[str],
    why: str,
    known: dict[str, Known],
    exercises: Mapping[ExerciseName, Exercise],
    *,
    in_hand: bool,
) -> Part:
    if entry.rounds > 1:
        found = [_in_rounds(one, entry.rounds) for one in found]
    if not found:
        return Part((), Doubt.NO_REPS, entry.phrase, why or "no sets in it", (), chunks, entry)
    ranked, readings = _ranked(found)
    doubt = _doubt(entry, chunks, readings, ranked, known, exercises, in_hand=in_hand)
    if doubt is None:
        return Part(readings[:1], None, entry.phrase, why, readings[1:], chunks, entry)
    behind: tuple[Reading, ...] = ()
    if doubt is Doubt.EXERCISE:
        readings = _one_each(readings)
        behind = _as_open(readings[:MOST_OF_ONE], readings[MOST_OF_ONE:])
    return Part(readings[:MOST_OF_ONE], doubt, entry.phrase, why, readings[MOST_OF_ONE:], chunks, entry, behind)


def _as_open(shown: Sequence[Reading], rest: Sequence[Reading]) -> tuple[Reading, ...]:
    """Of the rest, the readings that leave the numbers of an exercise open, of which one reading is shown."""
    found: list[Reading] = []
    lifts = [reading.sets[0].exercise for reading in shown]
    for best in shown:
        lift = best.sets[0].exercise
        rivals = [reading for reading in rest if reading.sets[0].exercise == lift]
        total = best.plausibility + sum([one.plausibility for one in rivals])
        if rivals and lifts.count(lift) == 1 and 2 * best.plausibility - total < CLEAR_BY * total:
            found += rivals[: MOST_OF_ONE - 1]
    return tuple(found)


def _ranked(found: list[Candidate]) -> tuple[list[Candidate], tuple[Reading, ...]]:
    """The candidates, best first, and as readings that share what is likely."""
    if len(found) == 1:
        one = found[0]
        return found, (Reading(one.sets, one.weight / (one.weight + NONE_OF_THESE)),)
    ranked = sorted(found, key=lambda one: -one.weight)
    total = sum([one.weight for one in ranked]) + NONE_OF_THESE
    return ranked, tuple([Reading(one.sets, one.weight / total) for one in ranked])


def _in_rounds(one: Candidate, rounds: int) -> Candidate:
    return Candidate(one.sets * rounds, one.weight if len(one.sets) == 1 else one.weight * NONE_OF_THESE, one.doubt)


def _doubt(
    entry: Entry,
    chunks: Chunks,
    readings: Sequence[Reading],
    ranked: Sequence[Candidate],
    known: dict[str, Known],
    exercises: Mapping[ExerciseName, Exercise],
    *,
    in_hand: bool,
) -> Doubt | None:
    best = readings[0]
    next_best = readings[1].plausibility if len(readings) > 1 else 0.0
    if entry.doubtful and not _is_same_lift(entry, exercises[best.sets[0].exercise], best.sets[0]):
        return Doubt.UNKNOWN_NAME
    if not entry.names and not in_hand and not _is_told_by_its_load(entry, best):
        return Doubt.EXERCISE
    if best.plausibility < ENOUGH or best.plausibility - next_best < CLEAR_BY:
        several = len({reading.sets[0].exercise for reading in readings[:MOST_OF_ONE]}) > 1
        return Doubt.EXERCISE if several else _number_doubt(ranked, best, known)
    each = _each_once(best.sets)
    if entry.shared_in_doubt or ranked[0].unplaced or _oddly_sided(each, exercises):
        return Doubt.NUMBERS
    if left_over(entry.pieces, chunks, exercises[best.sets[0].exercise]) or too_many(best.sets):
        return Doubt.NUMBERS
    if chunks.passed:
        return Doubt.WORDS
    if (strange := odd(each, entry.pieces)) is not None:
        return strange
    far = [_far(one, known[one.exercise], exercises[one.exercise]) for one in each]
    return Doubt.UNLIKELY_LOAD if True in far else None


def _is_told_by_its_load(entry: Entry, best: Reading) -> bool:
    """Whether sets told without a name say by their load which planned lift they are of; bare reps never do."""
    load = best.sets[0].load
    if load is None or load.amount == 0:
        return False
    return any(piece.kind is K.NUMBER and piece.value == load.amount for piece in entry.pieces)


def _is_same_lift(entry: Entry, exercise: Exercise, first: SetDone) -> bool:
    """ "single arm pushdown": the same lift, one side at a time; with a bar or the whole body it would be another one.
    "banded pull ups" are helped, "banded squat 3x5 100" is made harder; a band instead of the weight is another lift.
    """
    words = entry.modified_by.split()
    if not words:
        return False
    if words[-1] in BANDS:
        loaded = exercise.loading is Loading.BAR and first.load is not None
        return loaded or exercise.loading in (Loading.BODY, Loading.BAND)
    whole = exercise.loading is Loading.BAR or (exercise.loading is Loading.BODY and not exercise.one_sided)
    return words[0] in ONE_SIDE and not whole


BANDS = frozenset(("band", "bands", "banded"))
ONE_SIDE = frozenset(("single", "one", "1", "sa", "sl"))


def _each_once(sets: Sequence[SetDone]) -> list[SetDone]:
    """The sets, those of one group once: they are one value."""
    return list({id(one): one for one in sets}.values()) if len(sets) > 1 else list(sets)


def _oddly_sided(sets: Sequence[SetDone], exercises: Mapping[ExerciseName, Exercise]) -> bool:
    """ "bench 8 8 2 left": a side of a lift that has none."""
    for one in sets:
        if one.side is not None:
            exercise = exercises[one.exercise]
            return exercise.loading is Loading.BAR and not exercise.one_sided
    return False


def _number_doubt(ranked: Sequence[Candidate], best: Reading, known: Mapping[str, Known]) -> Doubt:
    if len(ranked) > 1 or ranked[0].weak or ranked[0].unplaced:
        return ranked[0].doubt
    lifted = any(known[one.exercise].heaviest is not None for one in best.sets)
    return Doubt.UNLIKELY_LOAD if lifted else Doubt.UNUSUAL_LOAD


def _far(one: SetDone, known: Known, exercise: Exercise) -> bool:
    return one.load is not None and one.kind is SetKind.WORK and is_far_off(one.load, known, exercise)


def _one_each(readings: Sequence[Reading]) -> tuple[Reading, ...]:
    """The best reading of each exercise, then the rest."""
    seen: set[str] = set()
    first: list[Reading] = []
    rest: list[Reading] = []
    for reading in readings:
        name = reading.sets[0].exercise
        (rest if name in seen else first).append(reading)
        seen.add(name)
    return (*first, *rest)


def crowded(parts: Sequence[Part]) -> bool:
    """Whether the message tells more sets of a day than anyone does in one."""
    if sum([len(part.readings[0].sets) for part in parts if part.readings]) <= MOST_SETS_RECORDED:
        return False
    told = [part for part in parts if part.readings]
    of_lifts, of_days = Counter[tuple[date | None, ExerciseName]](), Counter[date | None]()
    for part in told:
        sets, day = part.readings[0].sets, _day(part)
        of_lifts[day, sets[0].exercise] += len(sets)
        of_days[day] += len(sets)
    return max(of_lifts.values()) > MOST_SETS_RECORDED or max(of_days.values()) > MOST_SETS_OF_A_MESSAGE


def _day(part: Part) -> date | None:
    return part.entry.day if part.entry is not None else None


def combined(parts: Sequence[Part]) -> list[tuple[tuple[SetDone, ...], float]]:
    """The whole message's readings: every way to settle the doubtful parts, the clear ones as they are."""
    ways = [part.readings for part in parts if part.readings]
    if sum(len(readings) > 1 for readings in ways) > MOST_OPEN:
        return []  # nobody answers so many questions: it is sent again with their names
    found = []
    for way in product(*ways) if prod(map(len, ways)) <= MOST_READINGS else _one_other_each(ways):
        weight = 1.0
        for reading in way:
            weight *= reading.plausibility
        found.append((tuple(one for reading in way for one in reading.sets), weight))
    return sorted(found, key=lambda one: -one[1])


def _one_other_each(ways: Sequence[Sequence[Reading]]) -> Iterator[tuple[Reading, ...]]:
    """Of too many ways to show them all: the first of each part, and each other one beside the first of the rest."""
    first = tuple(readings[0] for readings in ways)
    yield first
    for at, readings in enumerate(ways):
        for other in readings[1:]:
            yield (*first[:at], other, *first[at + 1 :])
