"""An answer where several lifts of a message are in doubt: one is settled at a time, and the others stay open.

"row 3x10 60, curl 3x12 14" asks which row; "barbell" answers that alone, and which curl it was is asked next. A part
for each, "cable, dumbbell" or "db curls and cable row", settles them all.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from typing import NamedTuple, assert_never

from engine.catalogue.catalogue import Catalogue
from engine.reading.asking import question_of
from engine.reading.prepare import Prepared
from engine.reading.values import (
    Answer,
    Asked,
    Context,
    Doubt,
    Dropped,
    Logged,
    NotAnAnswer,
    Reading,
    Settled,
    StillOpen,
)
from engine.reading.wording import label_of
from engine.reading.words.kinds import K
from engine.values.ids import ExerciseName
from engine.values.sets import SetDone

PARTING = frozenset((K.COMMA, K.AND, K.LINE, K.SLASH, K.STOP))
Answers = Callable[[str, Asked, Context, Catalogue], Answer]


class Open(NamedTuple):
    """A lift in doubt: what it may be, and the places of its sets."""

    names: tuple[ExerciseName, ...]
    places: tuple[int, ...]


def lifts_in_doubt(asked: Asked) -> list[Open]:
    """The lifts of the message that are open, in the order told; none where its numbers are open, too."""
    readings = asked.readings
    if asked.doubt is not Doubt.EXERCISE or not readings or not _differ_in_lifts_alone(readings):
        return []
    found: dict[frozenset[ExerciseName], Open] = {}
    for place in range(len(readings[0].sets)):
        names = tuple(dict.fromkeys(reading.sets[place].exercise for reading in readings))
        before = found.get(frozenset(names), Open(names, ()))
        found[frozenset(names)] = before._replace(places=(*before.places, place))
    return [one for one in found.values() if len(one.names) > 1]


def _differ_in_lifts_alone(readings: Sequence[Reading]) -> bool:
    told = {
        tuple((one.reps, one.seconds, one.metres, one.load.amount if one.load else None) for one in reading.sets)
        for reading in readings
    }
    return len(told) == 1


def first_in_doubt(asked: Asked, catalogue: Catalogue) -> Asked:
    """The question about the first of several lifts in doubt; as it stands where only one is."""
    told = lifts_in_doubt(asked)
    return _about(asked, told[0], catalogue) if len(told) > 1 or _is_told_twice(asked, told) else asked


def _is_told_twice(asked: Asked, told: Sequence[Open]) -> bool:
    """Whether one name stands for sets in several places, each of which the readings settle apart."""
    return len(told) == 1 and len(asked.readings) > len(told[0].names)


def with_first_settled(asked: Asked, sets: Sequence[SetDone], catalogue: Catalogue) -> Settled | StillOpen:
    """The question with the first lift in doubt settled to these sets: the next one is asked, or all are known."""
    return _with_settled(asked, lifts_in_doubt(asked)[0], sets, catalogue)


def one_by_one(
    text: str, prepared: Prepared, asked: Asked, context: Context, catalogue: Catalogue, answer: Answers
) -> Answer | None:
    """What the words do to the lifts in doubt, where there are several; None where there are not."""
    told = lifts_in_doubt(asked)
    beside = bool(told) and sum(len(one.places) for one in told) < len(asked.readings[0].sets)
    if len(told) < 2 and not beside and not _is_told_twice(asked, told):
        return None

    def said_of(words: str, one: Open) -> Answer:
        found = answer(words, _about(asked, one, catalogue), context, catalogue)
        other = isinstance(found, Settled) and not _may_be(found, one, catalogue)
        return StillOpen(asked) if other else found

    parts = [text] * len(told) if K.BOTH in prepared.told else _parts(prepared)
    if len(parts) == len(told) and (each := _each_settled(asked, told, parts, said_of, catalogue)) is not None:
        return each
    found = [(one, said_of(text, one)) for one in _named_first(told, prepared)]
    moved = (_of_all(asked, one, of_one, catalogue) for one, of_one in found)
    first = found[0][1]
    untouched = StillOpen(asked, again=first.again) if isinstance(first, StillOpen) else first
    return next((one for one in moved if one is not None), untouched if len(told) > 1 else None)


def _of_all(asked: Asked, one: Open, found: Answer, catalogue: Catalogue) -> Answer | None:
    """What an answer about one lift does to the whole question; None for one that leaves it as it is."""
    match found:
        case Settled(logged, teaches):
            left = _with_settled(asked, one, logged.sets, catalogue)
            if isinstance(left, Settled):
                return replace(left, teaches=teaches)
            return replace(left, asked=replace(left.asked, learnt=(*asked.learnt, *teaches.items())))
        case Dropped():
            return found
        case StillOpen(left_open, again):
            narrowed = _narrowed(asked, one, left_open, catalogue)
            return StillOpen(narrowed, again=again) if narrowed != asked else None
        case NotAnAnswer():
            return None
        case _:
            assert_never(found)


def _narrowed(asked: Asked, one: Open, left: Asked, catalogue: Catalogue) -> Asked:
    """The question with what is left of one lift: fewer that it may be, or other numbers of it."""
    if left.readings == _about(asked, one, catalogue).readings:
        return asked
    sets = {reading.sets[0].exercise: reading.sets for reading in left.readings}
    kept = [reading for reading in asked.readings if reading.sets[one.places[0]].exercise in sets]
    told = [
        replace(reading, sets=_in_place_of(reading.sets, one.places, sets[reading.sets[one.places[0]].exercise]))
        for reading in kept
    ]
    rivals = [reading.sets for reading in told]
    return (
        replace(asked, readings=tuple(replace(one, label=label_of(one.sets, rivals)) for one in told))
        if told
        else asked
    )


def _may_be(found: Settled, one: Open, catalogue: Catalogue) -> bool:
    """Whether what was settled moves as one of those in doubt does: "db curls" is no word on the row."""
    settled = {catalogue.exercises[done.exercise].pattern for done in found.logged.sets}
    return settled <= {catalogue.exercises[name].pattern for name in one.names}


def _parts(prepared: Prepared) -> list[str]:
    """The words between the commas; none where numbers are told."""
    cuts = [piece for piece in prepared.spoken if piece.kind in PARTING]
    if not cuts or K.NUMBER in prepared.told:
        return []
    starts, ends = [0, *(cut.end for cut in cuts)], [*(cut.start for cut in cuts), len(prepared.cleaned)]
    told = (prepared.cleaned[start:end].strip() for start, end in zip(starts, ends, strict=True))
    return [part for part in told if part]


def _each_settled(
    asked: Asked,
    told: Sequence[Open],
    parts: Sequence[str],
    said_of: Callable[[str, Open], Answer],
    catalogue: Catalogue,
) -> Settled | None:
    """All lifts, where each part settles one of those that are left."""
    left, result = list(told), asked
    teaches: dict[str, ExerciseName] = {}
    for part in parts:
        answers = ((one, said_of(part, one)) for one in left)  # the first that the part fits
        one, found = next(((one, found) for one, found in answers if isinstance(found, Settled)), (None, None))
        if one is None or not isinstance(found, Settled):
            return None
        left.remove(one)
        teaches |= found.teaches
        settled = _with_settled(result, one, found.logged.sets, catalogue)
        if isinstance(settled, Settled):
            return replace(settled, teaches=teaches) if not left else None
        result = settled.asked
    return None


def _named_first(told: Sequence[Open], prepared: Prepared) -> Sequence[Open]:
    """The lift that the words name, alone: "the curl was dumbbell" is no word on the row."""
    named = {name for piece in prepared.pieces if piece.kind is K.NAME for name in piece.names}
    meant = [one for one in told if not named.isdisjoint(one.names)]
    return meant if len(meant) == 1 else told


def _about(asked: Asked, one: Open, catalogue: Catalogue) -> Asked:
    """The question about that lift alone, with a reading for each that it may be."""
    base = {name: _first_with(asked.readings, name, one.places[0]) for name in one.names}
    rivals = [tuple(_named_as(base[name], place, one.places[0]) for place in one.places) for name in one.names]
    readings = tuple(Reading(sets, 1 / len(rivals), label_of(sets, rivals)) for sets in rivals)
    term, typed = _called(asked, one, catalogue)
    question = question_of(asked.doubt, typed or term, readings)
    return replace(asked, readings=readings, term=term, typed=typed, question=question)


def _called(asked: Asked, one: Open, catalogue: Catalogue) -> tuple[str, str]:
    """The name that is open, as it is known and as it was typed."""
    known = bool(asked.term) and set(one.names) <= set(catalogue.owners(asked.term))
    return (asked.term, asked.typed) if known else (_shared(one.names, catalogue), "")


def _first_with(readings: Sequence[Reading], name: ExerciseName, place: int) -> Reading:
    return next(reading for reading in readings if reading.sets[place].exercise == name)


def _named_as(reading: Reading, place: int, like: int) -> SetDone:
    """The set as the lift of another place: both are told by one name."""
    done, lift = reading.sets[place], reading.sets[like]
    if done.exercise == lift.exercise or done.load is None or lift.load is None:
        return replace(done, exercise=lift.exercise)
    return replace(done, exercise=lift.exercise, load=replace(done.load, basis=lift.load.basis))


def _shared(names: Sequence[ExerciseName], catalogue: Catalogue) -> str:
    """The longest end of all names that is a name of all of them: "curl"."""
    words = names[0].split()
    ends = (" ".join(words[at:]) for at in range(len(words)))
    return next((end for end in ends if set(names) <= set(catalogue.owners(end))), "")


def _with_settled(asked: Asked, one: Open, sets: Sequence[SetDone], catalogue: Catalogue) -> Settled | StillOpen:
    """The question with these sets for that lift: settled, where nothing else is open."""
    told = dict.fromkeys(_in_place_of(reading.sets, one.places, sets) for reading in asked.readings)
    if len(told) == 1:
        return Settled(Logged(next(iter(told)), asked.on, asked.note, asked.pain, why="answered"))
    rivals = list(told)
    left = replace(asked, readings=tuple(Reading(way, 1 / len(rivals), label_of(way, rivals)) for way in rivals))
    term, typed = _called(left, lifts_in_doubt(left)[0], catalogue)
    question = question_of(asked.doubt, typed or term, left.readings)
    return StillOpen(replace(left, term=term, typed=typed, question=question))


def _in_place_of(told: Sequence[SetDone], places: Sequence[int], sets: Sequence[SetDone]) -> tuple[SetDone, ...]:
    """The sets of a reading with those of the lift put for what stood there."""
    if len(sets) == len(places):
        by_place = dict(zip(places, sets, strict=True))
        return tuple(by_place.get(place, done) for place, done in enumerate(told))
    rest = [done for place, done in enumerate(told) if place not in places]
    ahead = sum(place not in places for place in range(places[0]))
    return (*rest[:ahead], *sets, *rest[ahead:])
