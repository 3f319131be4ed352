"""A word that counts things, right behind the last number of sets: the number stays theirs, or it is asked about."""

from __future__ import annotations

import pytest

from engine.catalogue.catalogue import catalogue
from engine.reading import read
from engine.reading.values import Asked, Context, Logged
from engine.values.sets import SetDone
from tests.engine.reading.saying import NOW

KNOWN = catalogue()
HERE = Context(now=NOW)


def sets_of(text: str) -> tuple[SetDone, ...]:
    outcome = read(text, HERE, KNOWN)
    assert isinstance(outcome, Logged), text
    return tuple(outcome.sets)


@pytest.mark.parametrize(
    ("text", "sets"),
    [
        ("deadlift 3x5 130 fingers went numb", "deadlift 3x5 130"),
        ("bench 3x8 60 spotters everywhere", "bench 3x8 60"),
        ("barbell row 3x8 60 thumbs sore", "barbell row 3x8 60"),
        ("bench 3x8 60 fingers", "bench 3x8 60"),
        ("squat 3x5 100 rep quality bad", "squat 3x5 100"),
        ("squat 3x5 100 sets felt long", "squat 3x5 100"),
        ("sumo 160x2 fingers went numb", "sumo 160x2"),
        ("squat 100x5 people staring", "squat 100x5"),
        ("squat 100x5 feet slipped", "squat 100x5"),
        ("squat 100x5 hours of sleep: few", "squat 100x5"),
        ("pull ups 3x8 songs all terrible", "pull ups 3x8"),
        ("bench 60 8 fingers numb", "bench 60x8"),
        ("bench 60 for 8 people watching", "bench 60x8"),
        ("bench 60/8 fingers numb", "bench 60x8"),
        ("bench 3 sets of 8 60 fingers numb", "bench 3x8 60"),
        ("bench 3x8 62.5 people watching", "bench 3x8 62.5"),
        ("bankdrücken 3x8 60 finger taub", "bench 3x8 60"),
        ("kniebeuge 100x5 leute schauen zu", "squat 100x5"),
        ("press banca 3x8 60 dedos dormidos", "bench 3x8 60"),
        ("développé couché 3x8 60 doigts engourdis", "bench 3x8 60"),
        ("panca 3x8 60 dita intorpidite", "bench 3x8 60"),
        ("bankdrukken 3x8 60 vingers gevoelloos", "bench 3x8 60"),
        ("wyciskanie 3x8 60 palce zdrętwiały", "bench 3x8 60"),
        ("supino 3x8 60 dedos dormentes", "bench 3x8 60"),
        ("жим лежа 3x8 60 пальцы онемели", "bench 3x8 60"),
        ("bänkpress 3x8 60 fingrar domnade", "bench 3x8 60"),
    ],
)
def test_a_number_that_counts_no_such_things_is_of_the_sets(text: str, sets: str) -> None:
    assert sets_of(text) == sets_of(sets)


@pytest.mark.parametrize(
    ("text", "sets"),
    [
        ("bench 3x8 60, 2 fingers wide grip", "bench 3x8 60"),
        ("bench 3x8 60 2 spotters", "bench 3x8 60"),
        ("bench 3x8 60 2 dedos más ancho", "bench 3x8 60"),
        ("bench 3x8 60 2 leute da", "bench 3x8 60"),
        ("bench 80x8 60 people watching", "bench 80x8"),
        ("press banca 3x8 60 20 personas", "bench 3x8 60"),
        ("bench 3x8 60 500 kcal", "bench 3x8 60"),
        ("bench 3x8 60 100 mm", "bench 3x8 60"),
        ("bench 3x8 60 80 bpm", "bench 3x8 60"),
        ("bench 3x8 60 2 hours", "bench 3x8 60"),
        ("bench 3x8 8000 steps", "bench 3x8"),
        ("bench 3 sets of 8 2 spotters", "bench 3x8"),
        ("pull ups 3x8 20 people in here", "pull ups 3x8"),
        ("bench 60 8 5 sets felt good", "bench 5x8 60"),
        ("squat 5x5 sets were fine", "squat 5x5"),
    ],
)
def test_a_measure_a_plain_small_count_and_people_beside_body_weight_are_counted(text: str, sets: str) -> None:
    assert sets_of(text) == sets_of(sets)


@pytest.mark.parametrize(
    ("text", "one", "other"),
    [
        ("bench 3x8 60 people watching", "bench 3x8", "bench 3x8 60"),
        ("bench 3 sets of 8 60 people watching", "bench 3x8", "bench 3x8 60"),
        ("dumbbell curl 3x12 12 fingers sore", "dumbbell curl 3x12", "dumbbell curl 3x12 12"),
        ("squat 3x5 100 songs played", "squat 3x5", "squat 3x5 100"),
        ("squat 5x5 100 minutes felt long", "squat 5x5", "squat 5x5 100"),
        ("squat 100 5 5 5 people staring", "squat 100 5 5", "squat 100 5 5 5"),
        ("bench 60 8 8 7 fingers numb", "bench 60 8 8", "bench 60 8 8 7"),
        ("bench 60 8 8 7 days off helped", "bench 60 8 8", "bench 60 8 8 7"),
        ("bench 60 8 8 7 weeks off", "bench 60 8 8", "bench 60 8 8 7"),
        ("pull ups 3x8 sets felt long", "pull ups 8x3", "pull ups 3x8"),
        ("bankdrücken 3x8 60 leute schauen zu", "bench 3x8", "bench 3x8 60"),
        ("press banca 3x8 60 personas mirando", "bench 3x8", "bench 3x8 60"),
        ("développé couché 3x8 60 personnes autour", "bench 3x8", "bench 3x8 60"),
        ("panca 3x8 60 persone che guardano", "bench 3x8", "bench 3x8 60"),
        ("bankdrukken 3x8 60 mensen kijken", "bench 3x8", "bench 3x8 60"),
        ("wyciskanie 3x8 60 osób patrzy", "bench 3x8", "bench 3x8 60"),
        ("supino 3x8 60 pessoas olhando", "bench 3x8", "bench 3x8 60"),
        ("жим лежа 3x8 60 человек смотрят", "bench 3x8", "bench 3x8 60"),
        ("bänkpress 3x8 60 personer tittar", "bench 3x8", "bench 3x8 60"),
    ],
)
def test_a_number_that_may_be_either_is_asked_about_with_both(text: str, one: str, other: str) -> None:
    outcome = read(text, HERE, KNOWN)

    assert isinstance(outcome, Asked)
    assert [tuple(reading.sets) for reading in outcome.readings] == [sets_of(one), sets_of(other)]


@pytest.mark.parametrize(
    "text", ["bench 60 8 8 7 wanted more", "pull ups 10 8 7 wanted more", "squat 100x5 thought about quitting"]
)
def test_sets_with_a_wish_or_a_thought_right_behind_them_are_asked_about(text: str) -> None:
    assert isinstance(read(text, HERE, KNOWN), Asked)
