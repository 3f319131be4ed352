"""Whole runs of the four rules most plans are made of, session by session, each done as it was asked.

The runs are trade arithmetic, common practice, no source.
"""

from __future__ import annotations

import pytest

from engine.values.plan import MaxReps, Slot
from engine.values.schemes import DoubleProgression, LoadStep, RepGoal, SetWave
from tests.engine.progression.logged import BARBELL, BODY, after, asks, between, kg, slot

WAVE = slot(SetWave(5, kg("2.5")), sets=3, target=6, load="42.5")
DOUBLE = slot(DoubleProgression(kg("2.5")), sets=3, target=between(8, 12), load="40")
STEP = slot(LoadStep(kg("2.5")), sets=3, target=5, load="100")
MAXES = slot(RepGoal(), sets=3, target=MaxReps(), load=None)


@pytest.mark.parametrize(
    ("planned", "sessions", "asked"),
    [
        pytest.param(
            WAVE,
            ("42.5: 6 6 6", "42.5: 6 6 6 6", "42.5: 6 6 6 6 6", "45: 6 6 6"),
            ("3×6 at 42.5 kg", "4×6 at 42.5 kg", "5×6 at 42.5 kg", "3×6 at 45 kg", "4×6 at 45 kg"),
            id="set wave: 3, 4, 5 sets at one load, then 3 sets heavier",
        ),
        pytest.param(
            DOUBLE,
            ("40: 10 9 8", "40: 12 11 10", "40: 12 12 11", "40: 12 12 12", "42.5: 9 8 8"),
            ("3×8-12 at 40 kg",) * 4 + ("3×8-12 at 42.5 kg",) * 2,
            id="double progression: the load moves once every set is at the top",
        ),
        pytest.param(
            STEP,
            ("100: 5 5 5", "102.5: 5 5 4", "102.5: 5 5 5", "105: 5 4 4", "105: 5 5 4", "105: 5 5 4", "92.5: 5 5 5"),
            (
                "3×5 at 100 kg",
                "3×5 at 102.5 kg",
                "3×5 at 102.5 kg",
                "3×5 at 105 kg",
                "3×5 at 105 kg",
                "3×5 at 105 kg",
                "3×5 at 92.5 kg",
                "3×5 at 95 kg",
            ),
            id="load step: up when made, the same after a miss, down after three",
        ),
        pytest.param(
            MAXES,
            ("body: 12 10 9", "body: 13 11 10", "body: 14 11 11"),
            ("3×max", "13, 11, 10", "14, 12, 11", "15, 2×12"),
            id="rep goal: one more on each set over the same set last time",
        ),
    ],
)
def test_a_run_asks(planned: Slot, sessions: tuple[str, ...], asked: tuple[str, ...]) -> None:
    loadable = BODY if planned is MAXES else BARBELL

    assert tuple(asks(planned, *sessions[:done], loadable=loadable) for done in range(len(sessions) + 1)) == asked


@pytest.mark.parametrize(
    ("planned", "sessions", "reason", "next_step"),
    [
        pytest.param(
            DOUBLE,
            ("40: 12 12 12",),
            "All 3 sets of 12 made on Mon 2 Mar, so the load goes up 2.5 kg. Back to 8 reps.",
            "Make 3×12 to go to 45 kg.",
            id="range filled",
        ),
        pytest.param(
            DOUBLE,
            ("40: 12 12 11",),
            "12, 12, 11 on Mon 2 Mar: not every set reached 12 yet, so 40 kg stays.",
            "Make 3×12 to go to 42.5 kg.",
            id="range not filled",
        ),
        pytest.param(
            WAVE,
            ("42.5: 6 6 6",),
            "All 3 sets of 6 made on Mon 2 Mar, so one set more at 42.5 kg.",
            "Make 4×6 to go to 5×6.",
            id="a set more",
        ),
        pytest.param(
            WAVE,
            ("42.5: 6 6 6", "42.5: 6 6 6 6", "42.5: 6 6 6 6 6"),
            "All 5 sets of 6 made on Mon 16 Mar, so the load goes up 2.5 kg and the sets go back to 3.",
            "Make 3×6 to go to 4×6.",
            id="the wave turns",
        ),
        pytest.param(
            STEP,
            ("100: 5 5 4", "100: 5 5 4", "100: 5 4 3"),
            "3 sessions in a row missed, the last on Mon 16 Mar, so the load comes down 10 % from 100 kg to 90 kg.",
            "Make 3×5 at 90 kg to go to 92.5 kg.",
            id="reset",
        ),
        pytest.param(
            STEP,
            (),
            "First session of this exercise in the block: the plan starts at 100 kg.",
            "Make 3×5 at 100 kg to go to 102.5 kg.",
            id="start",
        ),
    ],
)
def test_a_reason_a_lifter_understands(planned: Slot, sessions: tuple[str, ...], reason: str, next_step: str) -> None:
    asked = after(planned, *sessions)

    assert (asked.reason, asked.next_step) == (reason, next_step)


def test_evidence_is_the_sets_of_the_session_it_rests_on() -> None:
    asked = after(DOUBLE, "40: 12 12 12", "42.5: 8 8 8")

    assert len(asked.evidence) == 3
    assert sorted(asked.evidence) == list(asked.evidence)
