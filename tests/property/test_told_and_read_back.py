"""Whatever form a lifter gives to known sets, they are read back, or asked about with them among the readings.

The forms, the words and what stands around them are in `told_messages`, `told_words` and `told_dress`, two lifts and
sets in words in `told_together`, several habits at once in `told_combined`, words that change the sets or are misread
with ease in `told_changes`: they follow how people write in public training diaries of ten languages (common practice,
no source). CHALKWIRE_TEST_THOROUGH reads many more of them.
"""

from __future__ import annotations

import os
from collections import defaultdict
from collections.abc import Sequence
from random import Random

from hypothesis import given, settings
from hypothesis import strategies as st

from engine.catalogue.catalogue import catalogue
from engine.reading import read
from engine.reading.values import Asked, Context, Logged, Outcome
from engine.values.sets import SetDone
from tests.engine.reading.saying import NOW
from tests.property.told_changes import CHANGED_FORMS
from tests.property.told_combined import combined
from tests.property.told_dress import message
from tests.property.told_messages import Told
from tests.property.told_together import TOGETHER_FORMS

KNOWN = catalogue()
THOROUGH = bool(os.environ.get("CHALKWIRE_TEST_THOROUGH"))
EXAMPLES = 20_000 if THOROUGH else 200
MESSAGES = 60_000 if THOROUGH else 3_000
MOST_QUESTIONS = 0.01
"""The share of plain messages that may be asked about."""


@given(st.randoms(use_true_random=False))
@settings(max_examples=EXAMPLES)
def test_what_was_told_is_read_back_or_asked_about_and_never_other_sets(dice: Random) -> None:
    told = message(dice)
    outcome = _read(told)

    if isinstance(outcome, Logged):
        assert _by_lift(outcome.sets) == _by_lift(told.sets), told
        assert (outcome.on, outcome.pain, outcome.unread) == (told.on, told.pain, ()), told
    else:
        assert isinstance(outcome, Asked), told


def test_plain_messages_are_seldom_asked_about() -> None:
    asked, wrong = 0, []
    for seed in range(MESSAGES):
        told = message(Random(seed))
        outcome = _read(told)
        asked += isinstance(outcome, Asked)
        if not isinstance(outcome, Asked) and not _is_right(outcome, told):
            wrong.append(told)

    assert not wrong
    assert asked < MESSAGES * MOST_QUESTIONS


@given(st.randoms(use_true_random=False))
@settings(max_examples=EXAMPLES)
def test_words_that_change_the_sets_are_read_so_or_asked_about(dice: Random) -> None:
    told = dice.choice(CHANGED_FORMS)(dice)
    outcome = _read(told)

    if isinstance(outcome, Logged):
        assert told.sets, told
        assert _is_right(outcome, told), told
    else:
        assert isinstance(outcome, Asked), told


def test_sets_of_two_lifts_and_sets_in_words_are_read_back() -> None:
    asked = 0
    for seed in range(MESSAGES // 3):
        for form in TOGETHER_FORMS:
            told = form(Random(seed))
            outcome = _read(told)
            asked += isinstance(outcome, Asked)

            assert isinstance(outcome, Asked) or _is_right(outcome, told), told
    assert asked < MESSAGES * MOST_QUESTIONS


@given(st.randoms(use_true_random=False))
@settings(max_examples=EXAMPLES)
def test_habits_that_stand_together_never_make_other_sets(dice: Random) -> None:
    told = combined(dice)
    outcome = _read(told)

    assert isinstance(outcome, Asked) or _is_right(outcome, told), told


def test_habits_that_stand_together_are_seldom_asked_about() -> None:
    asked = 0
    for seed in range(MESSAGES // 3):
        told = combined(Random(seed))
        outcome = _read(told)
        asked += isinstance(outcome, Asked)

        assert isinstance(outcome, Asked) or _is_right(outcome, told), told
    assert asked < MESSAGES // 3 * MOST_QUESTIONS


def _read(told: Told) -> Outcome:
    return read(told.text, Context(told.unit, NOW), KNOWN)


def _is_right(outcome: Outcome, told: Told) -> bool:
    if not isinstance(outcome, Logged):
        return False
    return (_by_lift(outcome.sets), outcome.on, outcome.pain) == (_by_lift(told.sets), told.on, told.pain)


def _by_lift(sets: Sequence[SetDone]) -> dict[str, list[object]]:
    """What counts of the sets, in order within each lift: the unit of no load tells nothing."""
    found: dict[str, list[object]] = defaultdict(list)
    for one in sets:
        load = one.load if one.load is not None and one.load.amount else None
        left = None if one.effort is None else one.effort.rir
        marks = (one.kind, one.failure, one.missed, one.side)
        found[one.exercise].append((one.reps, load, left, one.seconds, one.metres, marks))
    return dict(found)
