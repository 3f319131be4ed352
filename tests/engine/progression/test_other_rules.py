"""The rules beyond the first four. All arithmetic here: common practice, no source, unless a row says more."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal

import pytest

from engine.progression.explain import prescribed
from engine.values.effort import Effort
from engine.values.load import Load, Unit
from engine.values.plan import FindIt, MaxReps, Metres, Seconds, Slot
from engine.values.prescription import Held, Verdict
from engine.values.schemes import EffortTarget, PercentageWave, RepTotal, TimeOrDistance, TopSetBackOff
from tests.engine.progression.logged import BARBELL, BODY, after, asks, between, kg, slot

TWO_IN_RESERVE = Effort(Decimal(2))

TOTAL = slot(RepTotal(30, kg("2.5")), sets=3, target=MaxReps(), load="60")
BODY_TOTAL = slot(RepTotal(30, None), sets=3, target=MaxReps(), load=None)
WAVE = slot(PercentageWave(kg(140), (Decimal("0.7"), Decimal("0.8"), Decimal("0.9")), kg("2.5")), load=None)
TOP = slot(TopSetBackOff(kg("2.5"), back_offs=3, back_off_reps=8), sets=1, target=5, load="100")
BY_EFFORT = slot(EffortTarget(TWO_IN_RESERVE), sets=3, target=5, load=FindIt())
PLANK = slot(TimeOrDistance(Decimal(5), Decimal(40), kg(5)), sets=3, target=Seconds(Decimal(30)), load=None)
CARRY = slot(TimeOrDistance(Decimal(10), Decimal(40), None), sets=2, target=Metres(Decimal(30)), load="30")


@pytest.mark.parametrize(
    ("planned", "sessions", "asked", "verdict"),
    [
        pytest.param(
            TOTAL, ("60: 12 10 7",), "3×max at 60 kg, 30 in all", Verdict.REPEAT, id="total: short of it stays"
        ),
        pytest.param(
            TOTAL, ("60: 12 10 8",), "3×max at 62.5 kg, 30 in all", Verdict.ADD_LOAD, id="total: reached goes up"
        ),
        pytest.param(
            TOTAL, ("60: 10 8 6 6",), "3×max at 62.5 kg, 30 in all", Verdict.ADD_LOAD, id="total: extra sets count"
        ),
        pytest.param(
            TOTAL, ("60: 16 15",), "3×max at 62.5 kg, 30 in all", Verdict.ADD_LOAD, id="total: fewer sets may reach it"
        ),
        pytest.param(
            TOTAL,
            ("60: 12 10 8", "60: 15 15"),
            "3×max at 62.5 kg, 30 in all",
            Verdict.REPEAT,
            id="total: lighter asks again",
        ),
        pytest.param(
            TOTAL,
            ("60: 9 9 9", "65: 12 10 8"),
            "3×max at 67.5 kg, 30 in all",
            Verdict.ADD_LOAD,
            id="total: reached heavier goes on there",
        ),
        pytest.param(
            TOTAL,
            ("60: 5 5 5; 70: 8 8",),
            "3×max at 62.5 kg, 30 in all",
            Verdict.ADD_LOAD,
            id="total: heavier sets count towards it",
        ),
        pytest.param(WAVE, (), "3×5 at 97.5 kg", Verdict.START, id="wave: 70 % of 140 is 98, the nearest is 97.5"),
        pytest.param(
            WAVE,
            ("97.5: 5 5 5",),
            "3×5 at 112.5 kg",
            Verdict.FOLLOW,
            id="wave: 80 % of 140 is 112, so 112.5",
        ),
        pytest.param(
            WAVE,
            ("97.5: 5 5 5", "110: 5 5 4"),
            "3×5 at 125 kg",
            Verdict.FOLLOW,
            id="wave: a miss within it changes nothing",
        ),
        pytest.param(
            WAVE,
            ("97.5: 5 5 5", "110: 5 5 5", "125: 5 5 5"),
            "3×5 at 100 kg",
            Verdict.ADD_LOAD,
            id="wave: a turn made raises the maximum",
        ),
        pytest.param(
            WAVE,
            ("97.5: 5", "110: 5", "125: 5 5 4"),
            "3×5 at 87.5 kg",
            Verdict.RESET,
            id="wave: the last set short lowers it",
        ),
        pytest.param(
            WAVE,
            ("97.5: 5", "110: 5", "125: 5 5"),
            "3×5 at 97.5 kg",
            Verdict.FOLLOW,
            id="wave: a set skipped leaves it",
        ),
        pytest.param(
            WAVE,
            ("97.5: 5", "110: 5", "125: 5 4 5; 60: 20"),
            "3×5 at 100 kg",
            Verdict.ADD_LOAD,
            id="wave: the last heavy set decides",
        ),
        pytest.param(
            WAVE,
            ("97.5: 5", "110: 5", "100: 5 5 5"),
            "3×5 at 97.5 kg",
            Verdict.FOLLOW,
            id="wave: lighter than asked raises nothing",
        ),
        pytest.param(TOP, (), "5 at 100 kg, 3×8 at 90 kg", Verdict.START, id="top set: back-offs at 90 %"),
        pytest.param(
            TOP, ("100: 5; 90: 8 8 8",), "5 at 102.5 kg, 3×8 at 92.5 kg", Verdict.ADD_LOAD, id="top set: made goes up"
        ),
        pytest.param(
            TOP,
            ("100: 4; 90: 8 8 8",),
            "5 at 100 kg, 3×8 at 90 kg",
            Verdict.REPEAT,
            id="top set: back-offs do not save a miss",
        ),
        pytest.param(
            TOP,
            ("100: 5; 90: 6",),
            "5 at 102.5 kg, 3×8 at 92.5 kg",
            Verdict.ADD_LOAD,
            id="top set: back-offs skipped cost nothing",
        ),
        pytest.param(
            TOP, ("100: 4; 90: 8",) * 3, "5 at 90 kg, 3×8 at 80 kg", Verdict.RESET, id="top set: three misses reset it"
        ),
        pytest.param(PLANK, ("body: 30s 30s 30s",), "3×35 s", Verdict.ADD_REPS, id="time: all made grows"),
        pytest.param(PLANK, ("body: 30s 30s 25s",), "3×30 s", Verdict.REPEAT, id="time: one short repeats"),
        pytest.param(PLANK, ("body: 30s 30s",), "3×30 s", Verdict.REPEAT, id="time: a set skipped repeats"),
        pytest.param(PLANK, ("body: 38s 38s 38s",), "3×40 s", Verdict.ADD_REPS, id="time: never past the bound"),
        pytest.param(
            PLANK,
            ("body: 45s 40s 40s",),
            "3×30 s with +5 kg",
            Verdict.ADD_LOAD,
            id="time: the bound adds load and starts over",
        ),
        pytest.param(
            CARRY,
            ("30: 30m 30m", "30: 40m 40m"),
            "2×40 m at 30 kg",
            Verdict.REPEAT,
            id="distance: without a step it stays at the bound",
        ),
        pytest.param(
            CARRY,
            ("30: 30m 30m", "35: 30m 30m"),
            "2×40 m at 35 kg",
            Verdict.ADD_LOAD,
            id="distance: heavier goes on from there",
        ),
    ],
)
def test_rule(planned: Slot, sessions: tuple[str, ...], asked: str, verdict: Verdict) -> None:
    loadable = BODY if planned in (BODY_TOTAL, PLANK) else BARBELL

    assert asks(planned, *sessions, loadable=loadable) == asked
    assert after(planned, *sessions, loadable=loadable).verdict is verdict


def test_a_total_without_a_step_grows_past_what_was_reached() -> None:
    asked = after(BODY_TOTAL, "body: 12 11 9", loadable=BODY)

    assert asked.reason == "32 reps in all on Mon 2 Mar, so 33 are asked next."
    assert asked.next_step == "Reach 33 reps in all, and the total goes up 1 rep."


def test_a_wave_that_turned_says_what_became_of_the_maximum() -> None:
    asked = after(WAVE, "97.5: 5 5 5", "110: 5 5 5", "125: 5 5 5")

    assert asked.reason == (
        "The last set made 5 on Mon 16 Mar, so the training maximum goes up to 142.5 kg. "
        "Session 1 of 3 in the wave: 70 % of a training maximum of 142.5 kg."
    )


@pytest.mark.parametrize(
    ("sessions", "strength", "asked"),
    [
        pytest.param((), None, "3×5", id="nothing known: the load is to be found"),
        # 100 kg x 5 with two in reserve is seven to failure: the target again, so the same load.
        pytest.param(("100: 5@2 5@2 5@2",), None, "3×5 at 100 kg", id="on target stays"),
        pytest.param(("100: 5@1 5@1 5@1",), None, "3×5 at 97.5 kg", id="harder than the target comes down"),
        pytest.param(("100: 5@3 5@3 5@3",), None, "3×5 at 102.5 kg", id="easier than the target goes up"),
        pytest.param(("100: 5 5 5",), None, "3×5 at 95 kg", id="an effort not told counts as none left"),
        pytest.param(("100: x0",), None, "3×5 at 77.5 kg", id="no rep made: as after a failed attempt"),
        pytest.param(("100: 5@2 5@2; 130: x0",), None, "3×5 at 100 kg", id="a failed attempt above is passed over"),
        pytest.param(("100: 5@2 5@2 5@2",), kg(130), "3×5 at 107.5 kg", id="an estimate given goes first"),
        pytest.param(("100: 5@2 5@2 5@2",), kg(200), "3×5 at 110 kg", id="no more than 10 % over what was lifted"),
    ],
)
def test_the_load_follows_strength(sessions: tuple[str, ...], strength: Load | None, asked: str) -> None:
    assert prescribed(after(BY_EFFORT, *sessions, strength=strength)) == asked


def test_body_weight_work_by_effort_stays_at_what_was_done() -> None:
    asked = after(replace(BY_EFFORT, load=None), "body: 5@4 5@4 5@4", loadable=BODY)

    assert prescribed(asked) == "3×5"
    assert asked.verdict is Verdict.HOLD


@pytest.mark.parametrize(
    ("rir", "low", "high"),
    [
        # At a target of 8: 7 reported asks 2.5 kg more, 8 the same, 9 asks 2.5 kg less.
        # Source: the load response published by Helms et al. (accessory lifts), read in a secondary source.
        pytest.param(3, "102.5", "105", id="RPE 7 against 8"),
        pytest.param(2, "100", "100", id="RPE 8 against 8"),
        pytest.param(1, "95", "97.5", id="RPE 9 against 8"),
    ],
)
def test_the_response_to_effort_has_the_published_direction_and_size(rir: int, low: str, high: str) -> None:
    asked = after(BY_EFFORT, f"100: 5@{rir} 5@{rir} 5@{rir}").sets[0].load

    assert asked is not None
    assert Decimal(low) <= asked.amount <= Decimal(high)


def test_a_target_with_a_range_is_loaded_for_its_top() -> None:
    ranged = slot(EffortTarget(Effort(Decimal(0))), sets=1, target=between(5, 10), load="100")

    # Epley 1985 and Brzycki 1993 agree at ten reps: 133.3 kg once is 100 kg ten times. The mean of seven is near.
    asked = after(ranged, strength=Load(Decimal("133.3"), Unit.KG)).sets[0].load

    assert asked in (kg(100), kg("102.5"))


def test_back_offs_of_a_step_too_steep_say_so() -> None:
    light = slot(TopSetBackOff(kg("2.5"), back_offs=1), sets=1, target=5, load="20")

    asked = after(light, "20: 5; 20: 5")

    assert asked.held == (Held.ROUNDING,)
    assert [one.load for one in asked.sets] == [kg("22.5"), kg(20)]
