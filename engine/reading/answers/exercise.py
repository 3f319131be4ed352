"""Which exercise an answer names: by name, equipment or variant, alone or with the numbers told again."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace

from engine.catalogue.catalogue import Catalogue, normalise
from engine.reading.answers.answering import Answering, exercises, exercises_of, fixed_lifts, settle, settled
from engine.reading.answers.numbers import has, with_known_load
from engine.reading.answers.words import ANSWER_FILLERS, SHORT_FOR
from engine.reading.asking import question_of
from engine.reading.entries.names import EQUIPMENT, of_equipment
from engine.reading.prepare import prepare
from engine.reading.read import read_sets
from engine.reading.values import Answer, Asked, Doubt, Logged, Reading, Settled, StillOpen
from engine.reading.weighing.resolve import BASES
from engine.reading.wording import label_of
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook
from engine.reading.words.pieces import Piece, Role
from engine.reading.words.slips import slips_of
from engine.values.ids import ExerciseName
from engine.values.load import Basis, Load
from engine.values.sets import SetDone

MOST_SETS = 20
MOST_REPS = 30
"""A bare number above this is a load: "barbell but 60". Common practice, no source."""


def completed(told: Answering) -> Answer | None:
    """Only the exercise was missing: the answer names it, and the numbers are read again with it."""
    named = [piece for piece in told.prepared.pieces if piece.kind is K.NAME]
    if told.asked.readings or not told.asked.text or len(named) != 1 or told.asked.doubt is Doubt.NUMBERS:
        return None
    if told.numbers():
        return _completed_with_a_load(told, named[0])
    if not (told.explains() if told.asked.doubt is Doubt.UNKNOWN_NAME else told.only_names()):
        return None
    text = f"{_name_told(told) or named[0].text} {told.asked.text}"
    outcome = read_sets(prepare(text, told.context, told.catalogue), told.context, told.catalogue)
    if isinstance(outcome, Asked):
        return StillOpen(replace(outcome, on=told.asked.on or outcome.on, pain=told.asked.pain))
    if not isinstance(outcome, Logged):
        return None
    term = told.asked.term
    teaches = {normalise(term): outcome.sets[0].exercise} if term and told.asked.doubt is Doubt.UNKNOWN_NAME else {}
    return Settled(replace(outcome, on=told.asked.on or outcome.on, pain=told.asked.pain), teaches)


def _completed_with_a_load(told: Answering, name: Piece) -> Answer | None:
    """ "3x12", and then "leg press 100": the lift and the load that were missing."""
    number = told.numbers()[0]
    if len(told.numbers()) > 1 or number.role not in (Role.BARE, Role.LOAD) or told.tells_sets():
        return None
    load = told.prepared.cleaned[number.start : number.end] + (number.unit.value if number.unit else "")
    outcome = read_sets(
        prepare(f"{name.text} {told.asked.text} {load}", told.context, told.catalogue), told.context, told.catalogue
    )
    fits = isinstance(outcome, Logged) and all(
        one.load is not None and abs(one.load.amount) == number.value for one in outcome.sets
    )
    if not fits or not isinstance(outcome, Logged) or outcome.unread:
        return None
    return Settled(replace(outcome, on=told.asked.on or outcome.on, pain=told.asked.pain))


def _name_told(told: Answering) -> str:
    """The longest end of the answer that is a name: "its a leg press" is no press."""
    words = [word for word in told.words if word not in ("please", "pls", "sorry", "one", "then")]
    ends = (" ".join(words[at:]) for at in range(len(words)))
    return next((end for end in ends if told.catalogue.owners(end)), "")


def by_exercise(told: Answering) -> Answer | None:
    """The equipment, the variant or the name; alone, or with the numbers told again."""
    if told.asked.doubt not in (Doubt.EXERCISE, Doubt.UNKNOWN_NAME) and not _differ(told.asked.readings):
        return None
    if told.heads_a_request():
        return None
    named = told.names()
    offered = [reading for reading in told.asked.readings if named & set(exercises(reading))]
    if named and not offered and (told.numbers() or (another := _another_exercise(told, named)) is not None):
        return None if told.numbers() else another
    several = None if offered or named else _among_owners(told)
    if several is not None:
        return several
    among = by_words(told, offered or list(told.asked.readings))
    chosen = offered if len(offered) == 1 else _by_phrase(told, among) or among
    if len(chosen) == 1 and not offered:
        chosen = [reading for reading in chosen if is_with_what_was_said(told, reading)]
    if len(chosen) != 1 and not named:
        others = [reading for reading in _not_offered(told) if is_with_what_was_said(told, reading)]
        chosen = by_words(told, others) or _by_equipment(told) or chosen
    if told.numbers():
        return _with_numbers(told, chosen[0]) or _of_its_others(told, chosen[0]) if len(chosen) == 1 else None
    return settle(told, chosen)


def _of_its_others(told: Answering, chosen: Reading) -> Answer | None:
    """ "dumbbell, 3 sets": the other reading of the lift's numbers that has those told; a reading of another lift that
    has them is not what was said.
    """
    rivals = [reading for reading in told.asked.behind if exercises(reading) == exercises(chosen)]
    fit = [reading for reading in rivals if all(has(reading, number) for number in told.numbers())]
    if len(fit) == 1:
        return settled(told, fit[0].sets)
    others = [reading for reading in told.asked.readings if reading is not chosen]
    counted = all(number.role is Role.SETS for number in told.numbers())
    return StillOpen(told.asked, again=True) if others and counted else None


def _by_phrase(told: Answering, among: Sequence[Reading]) -> list[Reading]:
    """ "bent over", "chest supported": words that make a name together with the one in doubt.

    Where they are all of the name of the only one `among` those offered, it is that: "machine" of two shoulder presses.
    """
    if not told.asked.term or not told.asked.readings:
        return []
    bare = " ".join(word for word in told.words if word not in ANSWER_FILLERS)
    clauses = [_bare_words(clause) for clause in told.text.casefold().split(",")]  # "standing, with the bar"
    said = dict.fromkeys((bare, " ".join(told.words), *clauses))
    ways = (told.catalogue.owners(f"{one} {told.asked.term}") for one in said if one)
    owners = next((found for found in ways if len(found) == 1), ()) or _mistyped(told, bare)
    whole = len(among) == 1 and {*bare.split()} <= {word for name in exercises(among[0]) for word in name.split()}
    if not owners or whole:
        return []
    offered = [reading for reading in told.asked.readings if owners[0] in exercises(reading)]
    return offered or [_renamed_reading(told, owners[0])]


def _mistyped(told: Answering, bare: str) -> tuple[ExerciseName, ...]:
    """The only lift of those offered that the word in front of the one in doubt is a slip away from: "siting"."""
    if " " in bare or len(bare) < SHORTEST_MISTYPED or told.numbers():
        return ()
    offered = {name for reading in told.asked.readings for name in exercises(reading)}
    near = [name for name in told.catalogue.closest(f"{bare} {told.asked.term}") if name in offered]
    return tuple(near) if len(near) == 1 else ()


SHORTEST_MISTYPED = 5


def _bare_words(clause: str) -> str:
    return " ".join(word for word in clause.split() if word not in ANSWER_FILLERS)


def _among_owners(told: Answering) -> Answer | None:
    """ "shoulder" for a press: a name of several lifts together with the one in doubt, so which of them is asked."""
    if not told.asked.term or not told.asked.readings or told.numbers():
        return None
    kits = {word for word in told.words if said_kits([word])}
    bare = " ".join(word for word in told.words if word not in ANSWER_FILLERS and word not in kits)
    owners = told.catalogue.owners(f"{bare} {told.asked.term}") if bare else ()
    fit = [one for one in (_renamed_reading(told, name) for name in owners) if is_with_what_was_said(told, one)]
    if len(owners) < 2 or not fit:
        return None
    if len(fit) == 1:
        return settled(told, fit[0].sets)
    rivals = [reading.sets for reading in fit[:MOST_OFFERED]]
    left = tuple(Reading(sets, 1 / len(rivals), label_of(sets, rivals)) for sets in rivals)
    asking = question_of(Doubt.EXERCISE, told.asked.typed or told.asked.term, left)
    return StillOpen(replace(told.asked, readings=left, question=asking))


MOST_OFFERED = 3


def _differ(readings: Sequence[Reading]) -> bool:
    return len({exercises(reading) for reading in readings}) > 1


def _not_offered(told: Answering) -> list[Reading]:
    """A reading for each other owner of the phrase in doubt."""
    offered = {name for reading in told.asked.readings for name in exercises(reading)}
    owners = told.catalogue.owners(told.asked.term) if told.asked.term else ()
    return [_renamed_reading(told, name) for name in owners if name not in offered]


def _by_equipment(told: Answering) -> list[Reading]:
    """The same lift with equipment that none of the owners of the phrase uses."""
    kinds = [piece.kind for piece in told.prepared.pieces if piece.kind in EQUIPMENT]
    owners = told.catalogue.owners(told.asked.term) if told.asked.term else ()
    if len(kinds) != 1 or not owners or not told.asked.readings:
        return []
    found = of_equipment(owners, kinds[0], told.asked.term, told.catalogue)
    return [_renamed_reading(told, found[0])] if len(found) == 1 else []


def _renamed_reading(told: Answering, name: ExerciseName) -> Reading:
    readings = told.asked.readings
    doubtful = {one.exercise for reading in readings for one in reading.sets}
    fixed = set.intersection(*(set(exercises(reading)) for reading in readings))
    owners = set(told.catalogue.owners(told.asked.term)) if told.asked.term else set()
    asked_about = doubtful - fixed if owners.isdisjoint(doubtful - fixed) else owners & doubtful - fixed
    sets = tuple(
        _renamed(one, name, told.catalogue) if one.exercise in asked_about or not _differ(readings) else one
        for one in readings[0].sets
    )
    return Reading(sets, readings[0].plausibility, name)


def _with_numbers(told: Answering, chosen: Reading) -> Answer | None:
    """ "3x12 with the barbell": the numbers told again with the exercise; they stand, where they are whole sets."""
    names = exercises(chosen)
    if len(names) != 1:
        return None
    if len(told.numbers()) == 1 and (not told.tells_sets() or _counts_sets(told, chosen)):
        return _with_one_number(told, chosen)
    loads = {one.load for one in chosen.sets}
    load = chosen.sets[0].load if len(loads) == 1 else None
    known = dict([(names[0], load)] if load is not None else [])
    context = replace(told.context, doing=names[0], plan=(), recent=(), last=known, best={})
    numbers = " ".join(_number_text(told))
    outcome = read_sets(prepare(numbers, context, told.catalogue), context, told.catalogue)
    if isinstance(outcome, Logged) and not outcome.unread and exercises_of(outcome.sets) == names:
        return settled(told, with_known_load(outcome.sets, told))
    told_before = [number for number in told.numbers() if has(chosen, number)]
    return settled(told, chosen.sets) if len(told_before) == len(told.numbers()) else None


def _counts_sets(told: Answering, chosen: Reading) -> bool:
    """ "barbell, 4 sets": so many of the sets told, where they are alike."""
    alone = told.numbers()[0].role is Role.SETS and not any(p.kind in SET_TELLING for p in told.prepared.pieces)
    return alone and len(set(chosen.sets)) == 1


SET_TELLING = frozenset((K.TIMES, K.FOR, K.AT, K.COUNT))


def _with_one_number(told: Answering, chosen: Reading) -> Answer | None:
    """ "dumbbell but 16kg" is another load; a number of which nothing tells what it counts leaves the question open."""
    number = told.numbers()[0]
    if has(chosen, number):
        return settled(told, chosen.sets)
    if number.role is Role.SETS:
        return settled(told, chosen.sets[:1] * int(number.value)) if 1 <= number.value <= MOST_SETS else None
    if number.role not in (Role.LOAD, Role.PLURAL) and not (number.role is Role.BARE and number.value > MOST_REPS):
        alone = len(chosen.sets) == 1 and number.role in (Role.BARE, Role.REPS) and number.value == int(number.value)
        return settled(told, [replace(chosen.sets[0], reps=int(number.value))]) if alone else _only(told, chosen)
    sets = [with_amount(one, number) for one in chosen.sets]
    return settled(told, [one for one in sets if one is not None]) if all(sets) else None


def _only(told: Answering, chosen: Reading) -> StillOpen:
    asked = replace(told.asked, readings=(chosen,))
    return StillOpen(replace(asked, question=question_of(asked.doubt, asked.typed or asked.term, asked.readings)))


def with_amount(one: SetDone, number: Piece) -> SetDone | None:
    """The set at the load that was said; None where it has none."""
    if one.load is None:
        return None
    return replace(one, load=Load(number.value, number.unit or one.load.unit, one.load.basis))


def _number_text(told: Answering) -> list[str]:
    """The parts of the answer that are no words for an exercise."""
    dropped = frozenset((K.NAME, K.VARIANT, K.PLAIN, K.FILLER, K.WITH, K.NOTE, *EQUIPMENT))
    text = told.prepared.cleaned
    return [text[piece.start : piece.end] for piece in told.prepared.spoken if piece.kind not in dropped]


def by_words(told: Answering, readings: list[Reading]) -> list[Reading]:
    """The readings whose exercise has most of the answer's words, where the words tell them apart."""
    names = {reading: _words_of(reading, told) for reading in readings}
    shared = frozenset.intersection(*names.values()) if len(names) > 1 else frozenset()
    slips = slips_of(word for words in names.values() for word in words)
    said = {near for word in told.words for near in slips.near(word)} | set(told.words)
    scores = {
        reading: 2 * len(said & (words - shared)) + _named(in_doubt(reading, told), said)
        for reading, words in names.items()
    }
    best = max(scores.values(), default=0)
    return [reading for reading, score in scores.items() if score == best] if best else []


def said_kits(words: Iterable[str]) -> set[str]:
    """The equipment that the words name, in full: "db" is the dumbbell."""
    said = set(words)
    return {kit for kit, short in SHORT_FOR.items() if kit in said or said & short}


def is_with_what_was_said(told: Answering, reading: Reading) -> bool:
    """Whether the reading's lift is done with the equipment that the answer names; so is any where it names none."""
    kits = said_kits(told.words)
    for name in in_doubt(reading, told):
        exercise = told.catalogue.get(name)
        done_with = exercise.equipment.value if exercise is not None else ""
        if not kits or done_with in kits or set(told.words) & {*done_with.split(), *name.split()} & BARS_AND_KITS:
            return True
    return False


BARS_AND_KITS = frozenset((*SHORT_FOR, "bar", "smith"))


def in_doubt(reading: Reading, told: Answering) -> tuple[ExerciseName, ...]:
    """The reading's lifts without those that all readings have: "bar" is no word on the squat told beside the row."""
    return tuple(name for name in exercises(reading) if name not in fixed_lifts(told.asked.readings))


def _named(names: Sequence[ExerciseName], said: set[str]) -> int:
    """Whether the exercise bears the word in its name: "db" is the dumbbell lunge before the walking one."""
    full = said | {word for word, short in SHORT_FOR.items() if said & short}
    return int(any(word in full for name in names for word in name.split() if word in SHORT_FOR))


def _words_of(reading: Reading, told: Answering) -> frozenset[str]:
    words: set[str] = set()
    for name in in_doubt(reading, told):
        words |= set(name.replace("-", " ").replace("'", "").split())
        exercise = told.catalogue.get(name)
        if exercise is not None:
            words |= set(exercise.equipment.value.split()) | SHORT_FOR.get(exercise.equipment.value, set())
    return frozenset(words)


def _another_exercise(told: Answering, named: set[ExerciseName]) -> Answer | None:
    """An exercise that was not among those offered, though it owns the same phrase."""
    if " ".join(told.words[:GREETING]) in phrasebook().cues["greeting"]:
        return None  # "good morning all" names no lift before it is asked for
    owners = set(told.catalogue.owners(told.asked.term)) if told.asked.term else set()
    # A name mended from a slip must at least own the phrase in doubt: "teh barbell oen" is no new exercise.
    typed = {
        name for piece in told.prepared.pieces if piece.kind is K.NAME for name in told.catalogue.owners(piece.text)
    }
    chosen = named & owners or (named & typed if told.only_names() else set())
    if told.asked.doubt not in (Doubt.EXERCISE, Doubt.UNKNOWN_NAME) or len(chosen) != 1 or not told.asked.readings:
        return None
    return settled(told, _renamed_reading(told, next(iter(chosen))).sets)


GREETING = 2


def _renamed(one: SetDone, name: ExerciseName, catalogue: Catalogue) -> SetDone:
    exercise = catalogue.get(name)
    basis = BASES.get(exercise.loading, Basis.TOTAL) if exercise else Basis.TOTAL
    load = replace(one.load, basis=basis) if one.load is not None and one.load.amount >= 0 else one.load
    return replace(one, exercise=name, load=load)
