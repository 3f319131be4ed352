"""A plan that is listed above what was done of it is no sets; one alone is asked about."""

from __future__ import annotations

import pytest

from engine.reading import read
from engine.reading.said_apart import said_apart
from engine.reading.values import Asked, Context, Logged, Outcome
from tests.engine.reading.saying import KNOWN, readings, said, situation

SECTIONS = """
planned: // squat 3x5 102 // bench 3x8 72 // done: // squat 3x5 97 // bench 2x8 72 => \
barbell back squat 3×5 at 97 kg; barbell bench press 2×8 at 72 kg
planned // squat 3x5 102 // actual // squat 3x5 97       => barbell back squat 3×5 at 97 kg
target: squat 3x5 102 // actual: 3x5 97                  => barbell back squat 3×5 at 97 kg
squat // planned: 3x5 102 // actual: 102x5 102x5 97x5    => barbell back squat 2×5 at 102 kg, 5 at 97 kg
coach plan: // squat 3x5 @ 102 // my sets: 102x5 102x4   => barbell back squat 5 at 102 kg, 4 at 102 kg
goal: // squat 3x5 102 // reality: // squat 3x5 97       => barbell back squat 3×5 at 97 kg
geplant: // Kniebeuge 3x5 102 // gemacht: // Kniebeuge 3x5 97 => barbell back squat 3×5 at 97 kg
plan: // sentadilla 3x5 102 // hecho: // sentadilla 3x5 97 => barbell back squat 3×5 at 97 kg
план: // присед 3х5 102 // сделал: // присед 3х5 97      => barbell back squat 3×5 at 97 kg
plan: // squat 3x5 102 // bench 3x8 72 // done: // 3x5 97 // 3x8 67 => \
ask: barbell back squat 3×5 at 102 kg; barbell bench press 3×8 at 72 kg, 3×5 at 97 kg, 3×8 at 67 kg
todays plan // squat 3x5 102                             => ask: barbell back squat 3×5 at 102 kg
todays workout: // squat 3x5 102                         => barbell back squat 3×5 at 102 kg
planned: bench 3x8 72                                     => ask: barbell bench press 3×8 at 72 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(SECTIONS))
def test_what_was_planned_above_what_was_done(text: str, context: Context, meant: str) -> None:
    assert said(text, context).strip() == meant


@pytest.mark.parametrize("head", ["today's program:", "todays plan"])
def test_a_heading_asks_for_nothing(head: str) -> None:
    text = f"{head}\nsquat 3x5 102\nresults:\nsquat 102 5 5 4"

    meant = said_apart(text, read(text, situation(), KNOWN), situation(), KNOWN)

    assert [one.reps for one in only(meant).sets] == [5, 5, 4]


def only(meant: tuple[Outcome, ...]) -> Logged:
    """The one thing that was meant, which is sets."""
    (told,) = meant
    assert isinstance(told, Logged)
    return told


def test_a_plan_is_nobody() -> None:
    outcome = read("planned: bench 3x8 72", situation(), KNOWN)

    assert isinstance(outcome, Asked)
    assert outcome.question.startswith("Did you do that?")
