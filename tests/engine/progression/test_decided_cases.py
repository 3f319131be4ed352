"""What every rule does with logs that are not what was asked. Common practice, no source: decisions of this project."""

from __future__ import annotations

import pytest

from engine.values.plan import FindIt, MaxReps, Slot
from engine.values.prescription import Verdict
from engine.values.schemes import DoubleProgression, Hold, LoadStep, RepGoal, SetWave
from tests.engine.progression.logged import BODY, after, asks, between, kg, slot

WAVE = slot(SetWave(5, kg("2.5")), sets=3, target=6, load="42.5")
DOUBLE = slot(DoubleProgression(kg("2.5")), sets=3, target=between(8, 12), load="40")
STEP = slot(LoadStep(kg("2.5")), sets=3, target=5, load="100")
MAXES = slot(RepGoal(), sets=3, target=MaxReps(), load=None)
FOUND = slot(LoadStep(kg("2.5")), sets=3, target=5, load=FindIt())


@pytest.mark.parametrize(
    ("planned", "sessions", "asked", "verdict"),
    [
        pytest.param(WAVE, ("42.5: 6 6 5",), "3×6 at 42.5 kg", Verdict.REPEAT, id="wave: a miss repeats the turn"),
        pytest.param(
            WAVE, ("42.5: 6 6 6", "42.5: 6 6 6 4"), "4×6 at 42.5 kg", Verdict.REPEAT, id="wave: a miss later in it"
        ),
        pytest.param(WAVE, ("42.5: 6 6",), "3×6 at 42.5 kg", Verdict.REPEAT, id="wave: a set skipped repeats the turn"),
        pytest.param(WAVE, ("42.5: 6 6 6 6 6",), "4×6 at 42.5 kg", Verdict.ADD_SET, id="wave: extra sets skip no turn"),
        pytest.param(
            WAVE, ("42.5: 6 6 6", "40: 6 6 6 6"), "4×6 at 42.5 kg", Verdict.REPEAT, id="wave: lighter repeats the turn"
        ),
        pytest.param(WAVE, ("45: 6 6 6",), "4×6 at 45 kg", Verdict.ADD_LOAD, id="wave: heavier goes on from there"),
        pytest.param(
            DOUBLE, ("40: 12 11 7",), "3×8-12 at 40 kg", Verdict.REPEAT, id="double: under the range is a miss"
        ),
        pytest.param(
            DOUBLE, ("40: 12 12",), "3×8-12 at 40 kg", Verdict.REPEAT, id="double: a set skipped holds the load"
        ),
        pytest.param(
            DOUBLE,
            ("40: 12 12 12 6",),
            "3×8-12 at 42.5 kg",
            Verdict.ADD_LOAD,
            id="double: a weak extra set costs nothing",
        ),
        pytest.param(
            DOUBLE, ("40: 11 12 12 12",), "3×8-12 at 42.5 kg", Verdict.ADD_LOAD, id="double: the best sets count"
        ),
        pytest.param(
            DOUBLE,
            ("40: 12 12 12", "40: 12 12 12"),
            "3×8-12 at 42.5 kg",
            Verdict.ADD_REPS,
            id="double: lighter than asked asks again",
        ),
        pytest.param(
            DOUBLE,
            ("40: 9 9 9", "45: 9 8 8"),
            "3×8-12 at 45 kg",
            Verdict.ADD_LOAD,
            id="double: heavier inside the range goes on there",
        ),
        pytest.param(
            DOUBLE, ("40: 7 7 7",) * 4, "3×8-12 at 40 kg", Verdict.REPEAT, id="double: never comes down by itself"
        ),
        pytest.param(
            STEP,
            ("100: 5 5 5", "110: 5 5 5"),
            "3×5 at 112.5 kg",
            Verdict.ADD_LOAD,
            id="step: heavier and made goes on from there",
        ),
        pytest.param(
            STEP,
            ("100: 5 5 5", "110: 5 4 3"),
            "3×5 at 102.5 kg",
            Verdict.REPEAT,
            id="step: heavier and missed stays at what was asked",
        ),
        pytest.param(
            STEP,
            ("100: 5 5 4", "100: 5 5 4", "100: 5 5"),
            "3×5 at 100 kg",
            Verdict.REPEAT,
            id="step: a session cut short ends the run of misses",
        ),
        pytest.param(
            STEP,
            ("100: 5 5 4", "100: 5 5 4", "100: 5 5 5", "102.5: 5 5 4"),
            "3×5 at 102.5 kg",
            Verdict.REPEAT,
            id="step: misses count only in a row",
        ),
        pytest.param(
            STEP,
            ("100: 5 5 4",) * 3 + ("100: 5 5 4",),
            "3×5 at 90 kg",
            Verdict.REPEAT,
            id="step: a reset ignored stands",
        ),
        pytest.param(
            STEP,
            ("100: 5 5 4",) * 3 + ("90: 5 5 4",) * 3,
            "3×5 at 80 kg",
            Verdict.RESET,
            id="step: three more misses reset again",
        ),
        pytest.param(
            STEP, ("80: 5 5 5",), "3×5 at 82.5 kg", Verdict.ADD_LOAD, id="step: the first session decides the start"
        ),
        pytest.param(FOUND, (), "3×5", Verdict.FIND_LOAD, id="find it: nothing before the first session"),
        pytest.param(
            FOUND, ("70: 5 5 5",), "3×5 at 72.5 kg", Verdict.ADD_LOAD, id="find it: the first working load is the start"
        ),
        pytest.param(
            FOUND,
            ("40: 5; 60: 5; 70: 5 5 5",),
            "3×5 at 72.5 kg",
            Verdict.ADD_LOAD,
            id="find it: a ramp up to it is passed over",
        ),
        pytest.param(
            MAXES,
            ("body: 12 10 9", "body: 13 9 10"),
            "14, 2×11",
            Verdict.ADD_REPS,
            id="goal: a set that misses keeps its goal",
        ),
        pytest.param(
            MAXES,
            ("body: 12 10 9", "body: 13 11"),
            "14, 12, 10",
            Verdict.ADD_REPS,
            id="goal: a set skipped keeps its goal",
        ),
        pytest.param(MAXES, ("body: 12 10",), "13, 11, max", Verdict.ADD_REPS, id="goal: a set never done has none"),
        pytest.param(MAXES, ("body: 12 10 9 8 8",), "13, 11, 10", Verdict.ADD_REPS, id="goal: extra sets get none"),
        pytest.param(
            MAXES, ("body: 12 10 9", "body: 5 5 5"), "13, 11, 10", Verdict.REPEAT, id="goal: a bad day changes nothing"
        ),
        pytest.param(
            MAXES,
            ("body: 12 10 9", "body-20: 20 20 20"),
            "13, 11, 10",
            Verdict.REPEAT,
            id="goal: sets with help set no goal",
        ),
    ],
)
def test_decided(planned: Slot, sessions: tuple[str, ...], asked: str, verdict: Verdict) -> None:
    loadable = {"loadable": BODY} if planned is MAXES else {}

    assert asks(planned, *sessions, **loadable) == asked
    assert after(planned, *sessions, **loadable).verdict is verdict


@pytest.mark.parametrize(
    ("session", "asked"),
    [
        pytest.param("40: w12; 100: 5 5 5", "3×5 at 102.5 kg", id="warm-ups are not looked at"),
        pytest.param("40: 12; 60: 8; 80: 5; 100: 5 5 5", "3×5 at 102.5 kg", id="nor is a ramp that nobody marked"),
        pytest.param("100: 5 5; 80: d8 d10", "3×5 at 100 kg", id="drops stand for no work set"),
        pytest.param("100: 5 5 r3 r2", "3×5 at 100 kg", id="rest-pause sets stand for none"),
        pytest.param("100: 5 5 x4", "3×5 at 100 kg", id="a missed set is short"),
        pytest.param("100: 5 5 x5", "3×5 at 100 kg", id="a set told as missed is short whatever its reps"),
        pytest.param("100: L5 R5 L5 R5 L5 R5", "3×5 at 102.5 kg", id="left and right are one set"),
        pytest.param("100: L5 R4 L5 R5 L5 R5", "3×5 at 100 kg", id="the weaker side decides"),
        pytest.param("?: 5 5 5", "3×5 at 100 kg", id="a load nobody told proves nothing"),
        pytest.param("220lb: 5 5 5", "3×5 at 102.5 kg", id="220 lb are taken for 100 kg"),
        pytest.param("215lb: 5 5 5", "3×5 at 100 kg", id="215 lb are 97.5 kg, and the step from there is 100"),
        pytest.param("101: 5 5 5", "3×5 at 102.5 kg", id="101 kg count as the 100 that can be loaded"),
    ],
)
def test_what_counts_of_a_session(session: str, asked: str) -> None:
    assert asks(STEP, session) == asked


@pytest.mark.parametrize(
    ("edited", "asked"),
    [
        pytest.param(("40: 12 12 12", "42.5: 8 8 8"), "3×8-12 at 42.5 kg", id="as logged"),
        pytest.param(
            ("40: 12 12 11", "42.5: 8 8 8"), "3×8-12 at 42.5 kg", id="week 1 edited down: what was lifted since stands"
        ),
        pytest.param(("40: 12 12 11",), "3×8-12 at 40 kg", id="week 2 undone as well"),
    ],
)
def test_an_edit_of_an_old_set_corrects_every_later_answer(edited: tuple[str, ...], asked: str) -> None:
    assert asks(DOUBLE, *edited) == asked


def test_a_held_slot_never_moves() -> None:
    held = slot(Hold(), sets=2, target=10, load="30")

    assert asks(held, "30: 10 10", "35: 10 10", "20: 10 10") == "2×10 at 22.5 kg"  # held, but near what was lifted
    assert after(held, "30: 10 10").verdict is Verdict.HOLD
