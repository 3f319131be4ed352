"""The time a session takes against sessions that were timed."""

from __future__ import annotations

import pytest

from engine.plan.session_time import rest_seconds, session_seconds
from engine.values.ids import ExerciseName
from engine.values.plan import Reps, Slot
from engine.values.schemes import Hold
from tests.engine.volume.invented import EXERCISES
from tests.external.sources import from_memory, published, row

TIMED = published("Schoenfeld et al.", 2019, "Med Sci Sports Exerc 51:94, sessions of 13 minutes")
TIMED_THREE = from_memory("Schoenfeld et al.", 2019, "Med Sci Sports Exerc 51:94, three sets of each")
ACSM = published("Ratamess et al.", 2009, "ACSM position stand, Med Sci Sports Exerc 41(3):687-708")
SQUAT = ExerciseName("squat")
NAMES = tuple(
    ExerciseName(name)
    for name in ("bench press", "overhead press", "row", "pulldown", "squat", "leg press", "leg extension")
)


def seven(sets: int, rest: int) -> list[Slot]:
    return [Slot(name, sets, Reps(10), Hold(), rest_seconds=rest) for name in NAMES]


@pytest.mark.parametrize(
    ("source", "slots", "worked_out", "reported", "tolerance"),
    [
        row("RST-07", TIMED, seven(1, 120), 15.5, 13, 0.20),
        row("RST-08", TIMED_THREE, seven(3, 90), 40.5, 40, 0.15),
    ],
)
def test_minutes_of_a_session(source, slots, worked_out, reported, tolerance):
    minutes = session_seconds(slots, EXERCISES) / 60

    assert minutes == pytest.approx(worked_out), source
    assert minutes == pytest.approx(reported, rel=tolerance)


@pytest.mark.parametrize(("source", "reps", "low", "high"), [row("RST-01", ACSM, reps, 180, 300) for reps in (1, 3, 5)])
def test_heavy_sets_rest_as_published(source, reps, low, high):
    assert low <= rest_seconds(Slot(SQUAT, 3, Reps(reps), Hold())) <= high, source
