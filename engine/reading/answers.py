"""An answer in words to an open question, typos and chat between included.

answer = "forget it" | which exercise | a number that only one reading has | the set told again | "second" | "yes"
A clear other set or request is no answer; talk leaves the question open.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

from engine.catalogue.catalogue import Catalogue, normalise
from engine.reading.answer_words import EFFORT_WORDS, LOAD_WORDS, PLACE_FILLERS, PLACES, SHORT_FOR
from engine.reading.kinds import K
from engine.reading.phrasebook import phrasebook, spoken_words
from engine.reading.pieces import Piece, Role
from engine.reading.prepare import Prepared, prepare
from engine.reading.read import question_of, read, read_sets
from engine.reading.resolve import BASES
from engine.reading.slips import slips_of
from engine.reading.values import (
    Act,
    Answer,
    Asked,
    Context,
    Correction,
    Doubt,
    Dropped,
    Logged,
    NotAnAnswer,
    Reading,
    Settled,
    StillOpen,
)
from engine.reading.wording import label_of
from engine.values.ids import ExerciseName
from engine.values.load import Basis, Load
from engine.values.sets import SetDone

MOST_WORDS = 12


@dataclass(frozen=True, slots=True)
class Answering:
    """An answer under way."""

    text: str
    words: tuple[str, ...]
    prepared: Prepared
    asked: Asked
    context: Context
    catalogue: Catalogue

    def numbers(self) -> list[Piece]:
        """The numbers said; "the cable one" says none."""
        return [
            p
            for p in self.prepared.pieces
            if p.kind is K.NUMBER and not (p.spelled and p.value == 1 and p.role is Role.BARE)
        ]


def read_answer(text: str, asked: Asked, context: Context, catalogue: Catalogue) -> Answer:
    """What the message does to the open question."""
    book = phrasebook()
    prepared = prepare(text, context, catalogue)
    words = tuple(word for word, _ in spoken_words(prepared.tokens))
    if " ".join(words) in book.cues["forget"]:
        return Dropped()
    answering = Answering(text, words, prepared, asked, context, catalogue)
    if words and len(words) <= MOST_WORDS and "?" not in text:
        for way in WAYS:
            try:
                found = way(answering)
            except ValueError:  # a set or a load that cannot be answers nothing
                continue
            if found is not None:
                return found
    return _otherwise(answering)


def _otherwise(told: Answering) -> Answer:
    outcome = read(told.text, told.context, told.catalogue)
    if isinstance(outcome, Act | Correction):
        return NotAnAnswer()
    if isinstance(outcome, Logged | Asked) and any(piece.kind is K.NUMBER for piece in told.prepared.pieces):
        return NotAnAnswer()
    return StillOpen(told.asked)


def _settle(told: Answering, readings: Sequence[Reading]) -> Answer | None:
    """One reading left settles the question; fewer than before narrow it."""
    asked = told.asked
    if len(readings) == 1:
        return _settled(told, readings[0].sets)
    if 1 < len(readings) < len(asked.readings):
        rivals = [reading.sets for reading in readings]
        left = tuple(replace(reading, label=label_of(reading.sets, rivals)) for reading in readings)
        doubt = Doubt.NUMBERS if len({_exercises(reading) for reading in left}) == 1 else Doubt.EXERCISE
        return StillOpen(replace(asked, readings=left, doubt=doubt, question=question_of(doubt, asked.term, left)))
    return None


def _settled(told: Answering, sets: Sequence[SetDone]) -> Settled:
    asked = told.asked
    teaches = {}
    if asked.doubt is Doubt.EXERCISE and asked.term:
        doubtful = {one.exercise for reading in asked.readings for one in reading.sets}
        chosen = [one.exercise for one in sets if one.exercise in doubtful]
        if len(set(chosen)) == 1:
            teaches = {normalise(asked.term): chosen[0]}
    return Settled(Logged(tuple(sets), asked.on, asked.note, asked.pain, why="answered"), teaches)


def _exercises(reading: Reading) -> tuple[ExerciseName, ...]:
    return tuple(dict.fromkeys(one.exercise for one in reading.sets))


# ---- which exercise


def _completed(told: Answering) -> Answer | None:
    """Only the exercise was missing: the answer names it, and the numbers are read again with it."""
    named = [piece for piece in told.prepared.pieces if piece.kind is K.NAME]
    if told.asked.readings or not told.asked.text or len(named) != 1 or told.numbers():
        return None
    outcome = read_sets(
        prepare(f"{named[0].text} {told.asked.text}", told.context, told.catalogue), told.context, told.catalogue
    )
    if isinstance(outcome, Asked):
        return StillOpen(replace(outcome, on=told.asked.on or outcome.on, pain=told.asked.pain))
    if not isinstance(outcome, Logged):
        return None
    term = told.asked.term
    teaches = {normalise(term): outcome.sets[0].exercise} if term and told.asked.doubt is Doubt.UNKNOWN_NAME else {}
    return Settled(replace(outcome, on=told.asked.on or outcome.on, pain=told.asked.pain), teaches)


def _by_exercise(told: Answering) -> Answer | None:
    readings = told.asked.readings
    if told.numbers() and not any(piece.kind is K.NAME for piece in told.prepared.pieces):
        return None
    if len({_exercises(reading) for reading in readings}) < 2:
        return None
    if told.numbers() and any(piece.kind is K.TIMES for piece in told.prepared.pieces):
        return None
    named = {name for piece in told.prepared.pieces if piece.kind is K.NAME for name in piece.names}
    exact = [reading for reading in readings if named & set(_exercises(reading))]
    if len(exact) == 1:
        return _settle(told, exact)
    if named and not exact and (another := _another_exercise(told, named)) is not None:
        return another
    return _settle(told, _by_words(told, exact or list(readings)))


def _by_words(told: Answering, readings: list[Reading]) -> list[Reading]:
    """The readings whose exercise has most of the answer's words, where the words tell them apart."""
    names = {reading: _words_of(reading, told) for reading in readings}
    shared = frozenset.intersection(*names.values()) if names else frozenset()
    slips = slips_of(word for words in names.values() for word in words)
    said = {near for word in told.words for near in slips.near(word)} | set(told.words)
    scores = {reading: len(said & (words - shared)) for reading, words in names.items()}
    best = max(scores.values(), default=0)
    return [reading for reading, score in scores.items() if score == best] if best else []


def _words_of(reading: Reading, told: Answering) -> frozenset[str]:
    words: set[str] = set()
    for name in _exercises(reading):
        words |= set(name.replace("-", " ").replace("'", "").split())
        exercise = told.catalogue.get(name)
        if exercise is not None:
            words |= set(exercise.equipment.value.split()) | SHORT_FOR.get(exercise.equipment.value, set())
    return frozenset(words)


def _another_exercise(told: Answering, named: set[ExerciseName]) -> Answer | None:
    """An exercise that was not among those offered, though it owns the same phrase."""
    owners = set(told.catalogue.owners(told.asked.term)) if told.asked.term else set()
    # A name mended from a slip must at least own the phrase in doubt: "teh barbell oen" is no new exercise.
    typed = {
        name for piece in told.prepared.pieces if piece.kind is K.NAME for name in told.catalogue.owners(piece.text)
    }
    chosen = named & owners or named & typed
    if told.asked.doubt not in (Doubt.EXERCISE, Doubt.UNKNOWN_NAME) or len(chosen) != 1 or not told.asked.readings:
        return None
    new = next(iter(chosen))
    doubtful = {one.exercise for reading in told.asked.readings for one in reading.sets}
    fixed = set.intersection(*(set(_exercises(reading)) for reading in told.asked.readings))
    sets = [
        _renamed(one, new, told.catalogue) if one.exercise in doubtful - fixed else one
        for one in told.asked.readings[0].sets
    ]
    return _settled(told, sets)


def _renamed(one: SetDone, name: ExerciseName, catalogue: Catalogue) -> SetDone:
    exercise = catalogue.get(name)
    basis = BASES.get(exercise.loading, Basis.TOTAL) if exercise else Basis.TOTAL
    load = replace(one.load, basis=basis) if one.load is not None and one.load.amount >= 0 else one.load
    return replace(one, exercise=name, load=load)


# ---- which numbers


def _by_effort_or_load(told: Answering) -> Answer | None:
    if told.asked.doubt is not Doubt.EFFORT_OR_LOAD:
        return None
    kinds = {piece.kind for piece in told.prepared.pieces} | {piece.kind for piece in told.prepared.spoken}
    roles = {piece.role for piece in told.numbers()}
    words = set(told.words)
    wants_effort = bool(kinds & {K.RPE, K.RIR, K.EFFORT} or words & EFFORT_WORDS)
    wants_load = bool(Role.LOAD in roles or kinds & {K.KG, K.LB} or words & LOAD_WORDS)
    if wants_effort == wants_load:
        return None
    chosen = [reading for reading in told.asked.readings if any(one.effort for one in reading.sets) == wants_effort]
    return _settle(told, chosen)


def _by_number(told: Answering) -> Answer | None:
    """ "12 kg", "10 reps", "9": a number that only one reading has in that place."""
    numbers = told.numbers()
    kinds = {piece.kind for piece in told.prepared.pieces}
    if K.COUNT in kinds:
        return _by_count_word(told, numbers)
    if not numbers or kinds & {K.TIMES, K.NAME, K.FOR} or len(numbers) > 3:
        return None
    chosen = list(told.asked.readings)
    for number in numbers:
        chosen = [reading for reading in chosen if _has(reading, number)]
    if told.asked.doubt is Doubt.RANGE:
        return _reps_told(told, numbers) or _settle(told, chosen)
    if told.asked.doubt is Doubt.UNLIKELY_LOAD and len(numbers) == 1:
        return _load_told(told, numbers[0])
    return _settle(told, chosen)


def _by_count_word(told: Answering, numbers: list[Piece]) -> Answer | None:
    """ "triples", "three fives": the reps in a word, perhaps with the sets before it."""
    reps = next(piece.told for piece in told.prepared.pieces if piece.kind is K.COUNT)
    chosen = [reading for reading in told.asked.readings if {one.reps for one in reading.sets} == {reps}]
    if len(numbers) == 1:
        chosen = [reading for reading in chosen if len(reading.sets) == numbers[0].value]
    return _settle(told, chosen)


def _has(reading: Reading, number: Piece) -> bool:
    loads = {abs(one.load.amount) for one in reading.sets if one.load is not None}
    reps = {one.reps for one in reading.sets}
    match number.role:
        case Role.LOAD | Role.PLURAL:
            return number.value in loads
        case Role.REPS | Role.TIMES:
            return reps == {int(number.value)}
        case Role.SETS:
            return len(reading.sets) == number.value
        case _:
            return number.value in loads or number.value in reps


def _reps_told(told: Answering, numbers: list[Piece]) -> Answer | None:
    """The reps of a range: one number for all sets, or one for each."""
    sets = told.asked.readings[0].sets
    reps = [
        int(number.value)
        for number in numbers
        if number.role in (Role.BARE, Role.REPS) and number.value == int(number.value)
    ]
    if len(reps) != len(numbers) or not all(1 <= one <= 100 for one in reps):
        return None
    if len(reps) == 1:
        low, high = (
            min(one.reps for r in told.asked.readings for one in r.sets),
            max(one.reps for r in told.asked.readings for one in r.sets),
        )
        if not low <= reps[0] <= high:
            return None
        return _settled(told, [replace(one, reps=reps[0]) for one in sets])
    if len(reps) == len(sets):
        return _settled(told, [replace(one, reps=count) for one, count in zip(sets, reps, strict=True)])
    return None


def _load_told(told: Answering, number: Piece) -> Answer | None:
    """ "82.5 i mean": the load that was meant instead of the unlikely one."""
    if number.role not in (Role.BARE, Role.LOAD) or not told.asked.readings:
        return None
    sets = []
    for one in told.asked.readings[0].sets:
        if one.load is None:
            return None
        sets.append(replace(one, load=Load(number.value, number.unit or one.load.unit, one.load.basis)))
    return _settled(told, sets)


def _restated(told: Answering) -> Answer | None:
    """The whole set told again: the exercise asked about, or without a name."""
    if not told.numbers() or not told.asked.readings:
        return _first_telling(told)
    exercises = list(dict.fromkeys(name for reading in told.asked.readings for name in _exercises(reading)))
    named = {name for piece in told.prepared.pieces if piece.kind is K.NAME for name in piece.names}
    if named and not named & set(exercises):
        return None
    doing = next((name for name in exercises if name in named), exercises[0])
    loads = {
        name: one.load
        for reading in told.asked.readings
        for one in reading.sets
        for name in [one.exercise]
        if one.load is not None
    }
    context = replace(told.context, doing=doing, plan=(), recent=(), last={**told.context.last, **loads})
    outcome = read_sets(prepare(told.text, context, told.catalogue), context, told.catalogue)
    if not isinstance(outcome, Logged):
        return None
    if len(exercises) > 1 and not named:
        return None
    chosen = [reading for reading in told.asked.readings if _same_numbers(reading.sets, outcome.sets)]
    return _settled(told, chosen[0].sets) if len(chosen) == 1 else _settled(told, _with_known_load(outcome.sets, told))


def _with_known_load(sets: Sequence[SetDone], told: Answering) -> tuple[SetDone, ...]:
    """Sets told again without a load keep the load that the question already had."""
    loads = {one.load for reading in told.asked.readings for one in reading.sets}
    known = next(iter(loads)) if len(loads) == 1 else None
    return tuple(replace(one, load=known) if one.load is None else one for one in sets)


def _first_telling(told: Answering) -> Answer | None:
    return None


def _same_numbers(left: Sequence[SetDone], right: Sequence[SetDone]) -> bool:
    told = [(one.reps, one.seconds, one.metres, one.load.amount if one.load else None) for one in left]
    return told == [(one.reps, one.seconds, one.metres, one.load.amount if one.load else None) for one in right]


# ---- by place, yes and no


def _by_place(told: Answering) -> Answer | None:
    place = PLACES.get(" ".join(word for word in told.words if word not in PLACE_FILLERS))
    if place is None or not told.asked.readings:
        return None
    readings = told.asked.readings
    if place >= len(readings):
        return None
    return _settled(told, readings[place].sets)


def _yes_or_no(told: Answering) -> Answer | None:
    book = phrasebook()
    said = " ".join(told.words)
    if len(told.asked.readings) != 1 and told.asked.doubt is not Doubt.UNLIKELY_LOAD:
        return None
    if said in book.cues["yes"] and told.asked.readings:
        return _settled(told, told.asked.readings[0].sets)
    return Dropped() if said in book.cues["no"] else None


WAYS: tuple[Callable[[Answering], Answer | None], ...] = (
    _completed,
    _yes_or_no,
    _by_exercise,
    _by_effort_or_load,
    _by_number,
    _restated,
    _by_place,
)
