"""Which number is which in an answer: load or effort, sets or reps, the result of a range, the set told again."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from engine.reading.answers.answering import Answering, exercises, settle, settled
from engine.reading.answers.parts import names_parts, reps_by_parts
from engine.reading.answers.words import PLACE_FILLERS, place_of, says_effort, says_load, weighing_words
from engine.reading.gaps import filled
from engine.reading.prepare import prepare
from engine.reading.read import read_sets
from engine.reading.values import Answer, Doubt, Logged, Reading, Settled, StillOpen
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_SETS, Piece, Role
from engine.values.ids import ExerciseName
from engine.values.load import Load
from engine.values.sets import SetDone


def in_the_gap(told: Answering) -> Answer | None:
    """ "105", "125 kg sorry": the number that could not be read, or all of them; the message is read again so."""
    numbers = told.numbers()
    if told.asked.readings or told.asked.doubt is not Doubt.NUMBERS or told.names() or not numbers:
        return None
    if any(piece.kind is K.TIMES for piece in told.prepared.pieces):
        text = f"{told.asked.term} {told.text}" if filled(told.asked.text, "1") and told.asked.term else ""
    else:
        text = filled(told.asked.text, _said_of(numbers[0], told)) if len(numbers) == 1 else ""
    outcome = read_sets(prepare(text, told.context, told.catalogue), told.context, told.catalogue) if text else None
    if not isinstance(outcome, Logged) or outcome.unread:
        return None
    return Settled(replace(outcome, on=told.asked.on or outcome.on, pain=told.asked.pain))


def _said_of(number: Piece, told: Answering) -> str:
    """The number as typed, with the unit of a load: sets and reps stand in the message already."""
    typed = str(number.value) if number.spelled else told.prepared.cleaned[number.start : number.end]
    return (
        f"{number.value}{number.unit.value}" if number.unit else str(number.value) if number.role in COUNTED else typed
    )


COUNTED = frozenset((Role.SETS, Role.REPS))


def by_effort_or_load(told: Answering) -> Answer | None:
    if told.asked.doubt is Doubt.NUMBERS:
        return _by_effort(told)
    if told.asked.doubt is not Doubt.EFFORT_OR_LOAD:
        return None
    kinds = {piece.kind for piece in told.prepared.pieces} | {piece.kind for piece in told.prepared.spoken}
    roles = {piece.role for piece in told.numbers()}
    words = {near for word in told.words for near in weighing_words().near(word)} | set(told.words)
    wants_effort = bool(kinds & {K.RPE, K.RIR, K.EFFORT} or says_effort(words))
    wants_load = bool(Role.LOAD in roles or kinds & {K.KG, K.LB} or says_load(words))
    if wants_effort == wants_load:
        return None
    chosen = [reading for reading in told.asked.readings if any(one.effort for one in reading.sets) == wants_effort]
    return settle(told, chosen)


def _by_effort(told: Answering) -> Answer | None:
    """ "that is rpe", "the 9 is effort": the only reading with efforts, and with those that are told."""
    rated = [reading for reading in told.asked.readings if any(one.effort for one in reading.sets)]
    kinds = {piece.kind for piece in (*told.prepared.pieces, *told.prepared.spoken)}
    if len(rated) != 1 or not (kinds & {K.RPE, K.RIR, K.EFFORT} or says_effort(told.words)):
        return None
    known = {one.effort.rpe for one in rated[0].sets if one.effort is not None}
    values = {number.value for number in told.numbers()}
    values |= {effort.rpe for piece in told.prepared.pieces for effort in piece.efforts}
    return settled(told, rated[0].sets) if values <= known else None


def by_number(told: Answering) -> Answer | None:
    """ "12 kg", "10 reps", "9": a number that only one reading has in that place."""
    numbers = told.numbers()
    kinds = {piece.kind for piece in told.prepared.pieces}
    if told.asked.doubt is Doubt.RANGE and names_parts(told.prepared.pieces):
        return _by_parts(told)
    if told.asked.doubt is Doubt.HOW_MANY and (counted := _so_many(told, numbers, kinds)) is not None:
        return counted
    if K.COUNT in kinds and told.asked.doubt is not Doubt.RANGE:
        return _by_count_word(told, numbers)
    numbers += [_as_reps(piece) for piece in told.prepared.pieces if piece.kind is K.COUNT]
    if not numbers or kinds & {K.TIMES, K.NAME, K.FOR} or len(numbers) > 3:
        return None
    chosen = list(told.asked.readings)
    for number in numbers:
        chosen = [reading for reading in chosen if has(reading, _labelled(number, told))]
    if told.asked.doubt is Doubt.RANGE:
        return _reps_told(told, numbers) or settle(told, chosen)
    return settle(told, chosen)


def _so_many(told: Answering, numbers: list[Piece], kinds: set[K]) -> Answer | None:
    """ "4", "4 sets", "4 triples": so many of the sets whose count was not told, beside those that were."""
    if kinds & {K.NAME, K.AT, K.WITH} or len(numbers) > 1 or not told.asked.readings:
        return None
    only_one = 0 < len(told.words) <= LONGEST_ONE and is_cued(told.words[-1], ONE)  # "just one"
    only_one = only_one and not numbers
    if not only_one and (not numbers or numbers[0].role not in COUNTING or numbers[0].value % 1):
        return None
    count = 1 if only_one else int(numbers[0].value)
    fewer, more = (Counter(reading.sets) for reading in told.asked.readings[:2])
    several = next((one for one in more if more[one] != fewer[one]), None)
    named = next((piece.told for piece in told.prepared.pieces if piece.kind is K.COUNT), 0)
    if several is None or not 1 <= count <= MOST_SETS or (named and named != several.reps):
        return None
    sets = told.asked.readings[0].sets
    first = sets.index(several)
    others = [one for one in sets if one != several]
    return settled(told, [*others[:first], *[several] * count, *others[first:]])


ONE, LONGEST_ONE = frozenset(("an",)), 2
COUNTING = frozenset((Role.BARE, Role.SETS, Role.TIMES))


def _by_parts(told: Answering) -> Answer:
    """ "8 on the first two, 7 then 6"; where the parts do not fit the sets, the question stands."""
    sets = told.asked.readings[0].sets
    reps = reps_by_parts(told.prepared.pieces, len(sets))
    if reps is None:
        return StillOpen(told.asked)
    return settled(told, [replace(one, reps=count) for one, count in zip(sets, reps, strict=True)])


def _as_reps(piece: Piece) -> Piece:
    return piece._replace(kind=K.NUMBER, value=Decimal(piece.told), role=Role.REPS)


def _labelled(number: Piece, told: Answering) -> Piece:
    """ "12 is the weight", "the reps are 10": the role in a word of its own."""
    if number.role is not Role.BARE or len(told.numbers()) != 1:
        return number
    if says_load(told.words):
        return number._replace(role=Role.LOAD)
    reps = any(piece.kind is K.REPS for piece in told.prepared.pieces)
    return number._replace(role=Role.REPS) if reps else number


def _by_count_word(told: Answering, numbers: list[Piece]) -> Answer | None:
    """ "triples", "three fives": the reps in a word, perhaps with the sets before it."""
    reps = next(piece.told for piece in told.prepared.pieces if piece.kind is K.COUNT)
    chosen = [reading for reading in told.asked.readings if {one.reps for one in reading.sets} == {reps}]
    if len(numbers) == 1:
        chosen = [reading for reading in chosen if len(reading.sets) == numbers[0].value]
    return settle(told, chosen)


def has(reading: Reading, number: Piece) -> bool:
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
        if number.role in (Role.BARE, Role.REPS, Role.PLURAL) and number.value == int(number.value)
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
        return settled(told, [replace(one, reps=reps[0]) for one in sets])
    if len(reps) == len(sets):
        return settled(told, [replace(one, reps=count) for one, count in zip(sets, reps, strict=True)])
    return None


def restated(told: Answering) -> Answer | None:
    """The whole set told again: the exercise asked about, or without a name."""
    if not told.numbers() or not told.asked.readings or _names_a_place(told):
        return None
    if _settles_nothing(told):
        return StillOpen(told.asked, again=True)
    asked_about = list(dict.fromkeys(name for reading in told.asked.readings for name in exercises(reading)))
    named = told.names()
    if named and not named & set(asked_about):
        return None
    doing = next((name for name in asked_about if name in named), asked_about[0])
    loads = _loads_beyond_doubt(told)
    context = replace(told.context, doing=doing, plan=(), recent=(), last={**told.context.last, **loads})
    outcome = read_sets(prepare(told.text, context, told.catalogue), context, told.catalogue)
    if not isinstance(outcome, Logged):
        return None
    if len(asked_about) > 1 and not named:
        return None
    if not named and told.asked.doubt is Doubt.NUMBERS and _shares_no_number(told, outcome.sets):
        return StillOpen(told.asked, again=True)
    chosen = [reading for reading in told.asked.readings if _same_numbers(reading.sets, outcome.sets)]
    return settled(told, chosen[0].sets) if len(chosen) == 1 else settled(told, with_known_load(outcome.sets, told))


def _shares_no_number(told: Answering, sets: Sequence[SetDone]) -> bool:
    """ "60x8" to a curl 14x12: it is not that set told again, and of which lift it is nobody says."""
    asked = {number for reading in told.asked.readings for one in reading.sets for number in _numbers_of(one)}
    return bool(asked) and all(asked.isdisjoint(_numbers_of(one)) for one in sets)


def _numbers_of(done: SetDone) -> set[Decimal]:
    return {Decimal(done.reps), *([abs(done.load.amount)] if done.load is not None else [])}


def _settles_nothing(told: Answering) -> bool:
    """ "12", "15", "make it 15" to leg press 12x10: a load or reps, put right or not, or the next set."""
    numbers = told.numbers()
    alone = len(numbers) == 1 and numbers[0].role is Role.BARE and not told.names() and not told.tells_sets()
    return alone and told.asked.doubt is Doubt.NUMBERS


def _names_a_place(told: Answering) -> bool:
    """ "2", where the choices are shown with their numbers: the second of them, and no set of two."""
    place = place_of(" ".join(word for word in told.words if word not in PLACE_FILLERS))
    return place is not None and place >= 0 and told.asked.doubt is Doubt.NUMBERS


def _loads_beyond_doubt(told: Answering) -> dict[ExerciseName, Load]:
    """The load of each exercise that all readings of it agree on: what is asked about is no evidence for an answer."""
    loads: dict[ExerciseName, set[Load | None]] = {}
    for reading in told.asked.readings:
        for one in reading.sets:
            loads.setdefault(one.exercise, set()).add(one.load)
    return {name: load for name, found in loads.items() if len(found) == 1 and (load := next(iter(found))) is not None}


def with_known_load(sets: Sequence[SetDone], told: Answering) -> tuple[SetDone, ...]:
    """Sets told again without a load keep the load that the question already had."""
    loads = {one.load for reading in told.asked.readings for one in reading.sets}
    known = next(iter(loads)) if len(loads) == 1 else None
    return tuple(replace(one, load=known) if one.load is None else one for one in sets)


def _same_numbers(left: Sequence[SetDone], right: Sequence[SetDone]) -> bool:
    told = [(one.reps, one.seconds, one.metres, one.load.amount if one.load else None) for one in left]
    return told == [(one.reps, one.seconds, one.metres, one.load.amount if one.load else None) for one in right]
