"""Reasons go by what a session was really asked, and name whatever moved the number. Decisions of this project."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from decimal import Decimal

import pytest

from engine.loading import Loadable
from engine.loading.exercises import _loadable
from engine.loading.gym import KG_GYM, LB_GYM
from engine.progression import prescribe
from engine.progression.change import Change, change_since
from engine.progression.explain import prescribed
from engine.values.exercise import Equipment, Loading
from engine.values.load import Load, Unit
from engine.values.plan import Deload, FindIt, MaxReps, Seconds, Slot
from engine.values.prescription import Exposure, Held, Prescription
from engine.values.schemes import (
    DoubleProgression,
    LoadStep,
    PercentageWave,
    RepGoal,
    RepTotal,
    SetWave,
    TimeOrDistance,
    TopSetBackOff,
)
from tests.engine.progression.logged import BARBELL, BODY, DUMBBELLS, MONDAY, after, between, kg, logged, slot

LB_BARBELL: Loadable = _loadable(Loading.BAR, Equipment.BARBELL, LB_GYM, Unit.LB)
STACK: Loadable = _loadable(Loading.STACK, Equipment.CABLE, KG_GYM, Unit.KG)
STEP = slot(LoadStep(kg("2.5")), load="85")
DOUBLE = slot(DoubleProgression(kg("2.5")), target=between(8, 12), load="40")
WAVE = slot(SetWave(5, kg("2.5")), target=6, load="42.5")
TOTAL = slot(RepTotal(30, kg("2.5")), target=MaxReps(), load="60")
MAXES = slot(RepGoal(), target=MaxReps(), load="100")
PLANK = slot(TimeOrDistance(Decimal(5), Decimal(50), kg(5)), target=Seconds(Decimal(50)), load=None)


def days(*sessions: tuple[int, str]) -> tuple[Exposure, ...]:
    return tuple(logged(text, MONDAY + timedelta(days=day)) for day, text in sessions)


def on_day(planned: Slot, day: int, *sessions: tuple[int, str], loadable: Loadable = BARBELL) -> Prescription:
    return prescribe(planned, days(*sessions), today=MONDAY + timedelta(days=day), loadable=loadable)


@pytest.mark.parametrize(
    ("planned", "sessions", "asked", "reason"),
    [
        # Three weeks away: the session on day 28 asked 95 % of what the rule stands at.
        pytest.param(
            STEP,
            ((0, "85: 5 5 5"), (28, "82.5: 5 5 3")),
            "3×5 at 82.5 kg",
            "5, 5, 3 at 82.5 kg on Mon 30 Mar, short of 5, so nothing goes up. No more than the 82.5 kg just missed.",
            id="missed after time away",
        ),
        pytest.param(
            STEP,
            ((0, "85: 5 5 5"), (28, "82.5: 5 5 5")),
            "3×5 at 87.5 kg",
            "All 3 sets of 5 made on Mon 30 Mar at the 82.5 kg asked, so it goes on to 87.5 kg.",
            id="made after time away",
        ),
        pytest.param(
            STEP,
            ((0, "85: 5 5 5"), (28, "80: 5 5 5")),
            "3×5 at 87.5 kg",
            "The sets made on Mon 30 Mar were lighter than the 82.5 kg asked (80 kg); 87.5 kg is still to come.",
            id="lighter still after time away",
        ),
        pytest.param(
            STEP,
            ((0, "85: 5 5 5"), (28, "82.5: 5 5")),
            "3×5 at 82.5 kg",
            "2 of 3 sets done at 82.5 kg on Mon 30 Mar, so nothing goes up. "
            "No more than the 82.5 kg of last time until all sets are made.",
            id="cut short after time away",
        ),
        pytest.param(
            DOUBLE,
            ((0, "40: 12 12 12"), (28, "40: 10 10 9")),
            "3×8-12 at 42.5 kg",
            "10, 10, 9 on Mon 30 Mar at the 40 kg asked, so it goes on to 42.5 kg.",
            id="double: in the range after time away",
        ),
        pytest.param(
            WAVE,
            ((0, "42.5: 6 6 6"), (28, "40: 6 6 6 6")),
            "4×6 at 42.5 kg",
            "All 4 sets of 6 made on Mon 30 Mar at the 40 kg asked, so it goes on to 42.5 kg.",
            id="wave: made after time away",
        ),
        pytest.param(
            TOTAL,
            ((0, "60: 10 10 8"), (28, "57.5: 10 10 10")),
            "3×max at 60 kg, 30 in all",
            "30 reps in all made on Mon 30 Mar at the 57.5 kg lifted, so it goes on to 60 kg.",
            id="total: reached after time away",
        ),
        pytest.param(
            TOTAL,
            ((0, "60: 10 10 8"), (7, "50: 10 9 8")),
            "3×max at 55 kg, 30 in all",
            "27 reps in all at 50 kg on Mon 9 Mar of the 30 asked, so nothing goes up. "
            "That would be more than 10 % over the 50 kg last lifted, so 55 kg for now.",
            id="total: counts the reps done lighter",
        ),
        pytest.param(
            MAXES,
            ((0, "100: 12 10 9"), (28, "95: 12 12 12")),
            "13 at 100 kg, 11 at 100 kg, 10 at 100 kg",
            "12, 12, 12 on Mon 30 Mar at the 95 kg asked, so the goals at 100 kg stand.",
            id="goal: a lighter session after time away sets none",
        ),
        pytest.param(
            MAXES,
            ((0, "100: 12 10 9"), (7, "95: 14 12 12")),
            "13 at 100 kg, 11 at 100 kg, 10 at 100 kg",
            "The sets on Mon 9 Mar were lighter than the 100 kg asked (95 kg), so the same goals stand.",
            id="goal: lighter of her own",
        ),
        pytest.param(
            STEP,
            ((0, "85: 5 5 5"), (7, "60: 5 5 5"), (14, "65: 5 5 5")),
            "3×5 at 70 kg",
            "All 3 sets of 5 made on Mon 16 Mar at the 65 kg asked, so it goes on to 87.5 kg. "
            "That would be more than 10 % over the 65 kg last lifted, so 70 kg for now.",
            id="the way back up under the ceiling",
        ),
        pytest.param(
            STEP,
            ((0, "85: 5 5 5"), (28, "90: 5 5 5")),
            "3×5 at 92.5 kg",
            "All 3 sets of 5 made at 90 kg on Mon 30 Mar, so the load goes up 2.5 kg.",
            id="heavier than asked after time away",
        ),
        pytest.param(
            DOUBLE,
            ((0, "40: 12 12 12"), (28, "45: 10 10 9")),
            "3×8-12 at 45 kg",
            "45 kg was lifted on Mon 30 Mar, more than the 40 kg asked, so it goes on from there.",
            id="double: heavier than asked after time away",
        ),
        pytest.param(
            STEP,
            ((0, "70: 5 5 4"),),
            "3×5 at 70 kg",
            "5, 5, 4 on Mon 2 Mar, short of 5, so it goes on from 70 kg.",
            id="a first session lighter than the plan",
        ),
        pytest.param(
            STEP,
            ((0, "85: 5 5 5"), (7, "85: 5 5 5")),
            "3×5 at 87.5 kg",
            "The sets made on Mon 9 Mar were lighter than the 87.5 kg asked (85 kg), so 87.5 kg is asked again.",
            id="lighter than asked, nothing over it",
        ),
    ],
)
def test_a_session_is_judged_by_what_it_was_asked(
    planned: Slot, sessions: tuple[tuple[int, str], ...], asked: str, reason: str
) -> None:
    given = on_day(planned, sessions[-1][0] + 7, *sessions)

    assert (prescribed(given), given.reason) == (asked, reason)


def test_the_next_step_of_a_session_held_back_is_the_way_back() -> None:
    given = on_day(STEP, 28, (0, "85: 5 5 5"))

    assert given.next_step == "Make these, and it goes back up to 87.5 kg, no more than 10 % at a time."


@pytest.mark.parametrize(
    ("planned", "session", "loadable", "asked", "said"),
    [
        pytest.param(
            slot(DoubleProgression(kg(5)), target=between(10, 12), load="45"),
            "45: 12 12 12",
            STACK,
            "3×10-12 at 47.5 kg",
            "The plan's +5 kg is more than 10 % of 45 kg.",
            id="the ceiling holds back the plan's own step",
        ),
        pytest.param(
            slot(SetWave(3, kg(10)), target=6, load="60"),
            "60: 6 6 6",
            BARBELL,
            "3×6 at 65 kg",
            "The plan's +10 kg is more than 10 % of 60 kg.",
            id="in a set wave",
        ),
        pytest.param(
            slot(TopSetBackOff(kg(10), 2), sets=1, load="70"),
            "70: 5; 62.5: 5 5",
            BARBELL,
            "5 at 75 kg, 2×5 at 67.5 kg",
            "The plan's +10 kg is more than 10 % of 70 kg.",
            id="in a top set",
        ),
        pytest.param(
            slot(DoubleProgression(kg("0.5")), target=between(12, 15), load="8"),
            "8: 15 15 15",
            DUMBBELLS,
            "3×12-15 at 9 kg",
            "The plan's +0.5 kg cannot be loaded.",
            id="a step too small to load",
        ),
    ],
)
def test_a_step_that_is_not_the_plans_says_why(
    planned: Slot, session: str, loadable: Loadable, asked: str, said: str
) -> None:
    given = after(planned, session, loadable=loadable)

    assert prescribed(given) == asked
    assert said in given.reason


def test_a_deload_says_nothing_of_a_steep_step_it_does_not_take() -> None:
    light = slot(DoubleProgression(kg(1)), target=between(12, 15), load="8")

    given = after(light, "8: 15 15 15", loadable=DUMBBELLS, deload=Deload())

    assert "expect fewer reps" not in given.reason


@pytest.mark.parametrize(
    ("share", "asked"),
    [
        # The nearest that can be loaded: the number of the plan is a target.
        pytest.param("0.85", "3×5 at 120 kg", id="85 % of 140 is 119, the nearest is 120"),
        pytest.param("0.75", "3×5 at 105 kg", id="75 % is 105"),
        pytest.param("0.80", "3×5 at 112.5 kg", id="80 % is 112, the nearest is 112.5"),
    ],
)
def test_percentages_are_rounded_to_the_nearest(share: str, asked: str) -> None:
    wave = slot(PercentageWave(kg(140), (Decimal(share), Decimal("0.9")), kg(5)), load=None)

    assert prescribed(after(wave)) == asked


@pytest.mark.parametrize(
    ("given", "said"),
    [
        pytest.param(
            after(slot(LoadStep(kg("2.5"), misses=2), load="80"), "80: 5 5 4", "80: 5 4 4"),
            "so the load comes down 10 % from 80 kg to 70 kg (72 kg, rounded down).",
            id="a reset",
        ),
        pytest.param(
            after(slot(LoadStep(kg("2.5")), load="100"), "100: 5 5 5", today=MONDAY + timedelta(days=21)),
            "takes 95 % of the load (97.375 kg, rounded down).",
            id="time away",
        ),
    ],
)
def test_rounding_of_more_than_half_a_step_is_named(given: Prescription, said: str) -> None:
    assert said in given.reason


def test_a_wave_that_was_too_light_to_raise_the_maximum_says_so() -> None:
    wave = slot(PercentageWave(kg(140), (Decimal("0.9"),), kg("2.5")), load=None)

    given = after(wave, "110: 5 5 5")

    assert given.reason.startswith(
        "The last set made 5 on Mon 2 Mar, at 110 kg: too light to raise the training maximum."
    )


def test_the_bound_in_seconds_tells_the_load_and_the_time_to_come() -> None:
    given = after(PLANK, loadable=BODY)

    assert given.next_step == "Make 3×50 s, then it is 3×50 s with +5 kg."


@pytest.mark.parametrize(
    ("planned", "sessions", "asked", "reason", "next_step"),
    [
        pytest.param(
            STEP,
            (),
            "3×5 at 185 lb",
            "First session of this exercise in the block: the plan starts at 185 lb. "
            "The plan says 85 kg: 185 lb is the nearest that can be loaded.",
            "Make 3×5 at 185 lb to go to 190 lb.",
            id="the plan's load",
        ),
        pytest.param(
            STEP,
            ("185lb: 5 5 5",),
            "3×5 at 190 lb",
            "All 3 sets of 5 made on Mon 2 Mar, so the load goes up 5 lb.",
            "Make 3×5 at 190 lb to go to 195 lb.",
            id="its step",
        ),
        pytest.param(
            slot(PercentageWave(kg(140), (Decimal("0.85"),), kg(5)), load=None),
            (),
            "3×5 at 265 lb",
            "Session 1 of 1 in the wave: 85 % of a training maximum of 310 lb.",
            "Make 3×5, the last set above all, and the training maximum goes up 10 lb.",
            id="a training maximum",
        ),
        pytest.param(
            replace(STEP, load=FindIt()),
            (),
            "3×5",
            "No load is planned: work up to one that fits the reps, and the log decides from then on.",
            "Make 3×5, and the load goes up 5 lb from there.",
            id="a load to be found",
        ),
        pytest.param(
            STEP,
            ("85: 5 5 5",),
            "3×5 at 190 lb",
            "All 3 sets of 5 made on Mon 2 Mar, so the load goes up 5 lb.",
            "Make 3×5 at 190 lb to go to 195 lb.",
            id="a log in the other unit",
        ),
    ],
)
def test_a_plan_in_kilograms_is_asked_and_explained_in_pounds(
    planned: Slot, sessions: tuple[str, ...], asked: str, reason: str, next_step: str
) -> None:
    given = after(planned, *sessions, loadable=LB_BARBELL, unit=Unit.LB)

    assert (prescribed(given), given.reason, given.next_step) == (asked, reason, next_step)


@pytest.mark.parametrize(
    ("pounds", "kilograms"),
    [("5", "2.5"), ("2.5", "1.25"), ("10", "5"), ("1", "0.5"), ("15", "7.5")],
)
def test_steps_of_the_other_unit_become_usual_ones(pounds: str, kilograms: str) -> None:
    # 2.5 kg for 5 lb and so on: common practice, no source.
    found = replace(STEP, load=FindIt(), scheme=LoadStep(Load(Decimal(pounds), Unit.LB)))

    assert f"goes up {kilograms} kg from there" in after(found, unit=Unit.KG).next_step


@pytest.mark.parametrize(
    ("planned", "sessions", "over", "change"),
    [
        pytest.param(STEP, ("85: 5 5 5",), {}, Change.HEAVIER, id="a step up"),
        pytest.param(STEP, ("85: 5 5 4",), {}, Change.SAME, id="the same again"),
        pytest.param(
            STEP, ("85: 5 5 5",), {"today": MONDAY + timedelta(days=28)}, Change.LIGHTER, id="after time away"
        ),
        pytest.param(STEP, ("85: 5 5 5",), {"deload": Deload()}, Change.LIGHTER, id="a deload"),
        pytest.param(STEP, ("85: 5 5 5", "deload 75: 5 5"), {}, Change.HEAVIER, id="after a deload"),
        pytest.param(STEP, (), {}, None, id="never lifted"),
        pytest.param(STEP, ("85: 5 5 5", "90: 5 5 4"), {}, Change.LIGHTER, id="lighter than she dared"),
        pytest.param(
            slot(PercentageWave(kg(140), (Decimal("0.75"), Decimal("0.85")), kg(5)), load=None),
            ("105: 5 5 5",),
            {},
            Change.HEAVIER,
            id="a wave of percentages rises",
        ),
        pytest.param(
            slot(TopSetBackOff(kg(5), 2), sets=1, load="70"),
            ("70: 5; 62.5: 5 5",),
            {},
            Change.HEAVIER,
            id="the top set decides",
        ),
    ],
)
def test_heavier_or_lighter_than_last_lifted(
    planned: Slot, sessions: tuple[str, ...], over: dict[str, object], change: Change | None
) -> None:
    assert change_since(after(planned, *sessions, **over)) is change  # type: ignore[arg-type]


def held(*sessions: tuple[int, str], told: int, over: int) -> tuple[Exposure, ...]:
    """Sessions with pain from one day on, over on another."""
    return tuple(
        replace(one, hurt=told <= day < over, held=told < day < over)
        for (day, _), one in zip(sessions, days(*sessions), strict=True)
    )


@pytest.mark.parametrize(
    ("sessions", "day", "pain", "asked", "reason"),
    [
        pytest.param(
            held((0, "80: 5 5 5"), (7, "82.5: 5 5 5"), told=0, over=99),
            14,
            True,
            "3×5 at 80 kg",
            "No more than last time is asked. You told of pain here, so nothing is pushed: "
            "stop if it hurts, and have a professional look at it.",
            id="lifting more than asked while it hurts moves nothing",
        ),
        pytest.param(
            held((0, "80: 5 5 5"), (7, "82.5: 5 5 5"), (14, "80: 5 5 5"), told=0, over=18),
            21,
            False,
            "3×5 at 80 kg",
            "First session since the pain you told of: no more than the 80 kg on Mon 16 Mar.",
            id="the first session after it",
        ),
        pytest.param(
            held((0, "80: 5 5 5"), (7, "80: 5 5 5"), (21, "80: 5 5 5"), told=0, over=18),
            28,
            False,
            "3×5 at 82.5 kg",
            "All 3 sets of 5 made on Mon 23 Mar at the 80 kg asked, so it goes on to 82.5 kg.",
            id="from there it goes on",
        ),
        pytest.param(
            held((0, "80: 5 5 5"), (7, "60: 5 5 5"), (14, "60: 5 5 5"), told=0, over=18),
            21,
            False,
            "3×5 at 60 kg",
            "First session since the pain you told of: no more than the 60 kg on Mon 16 Mar.",
            id="no more than was lifted while it hurt",
        ),
        pytest.param(
            held((0, "80: 5 5 5"), (7, "60: 5 5 3"), (14, "60: 5 3 3"), (21, "60: 5 5 5"), told=0, over=18),
            28,
            False,
            "3×5 at 65 kg",
            "All 3 sets of 5 made on Mon 23 Mar at the 60 kg asked, so it goes on to 82.5 kg. "
            "That would be more than 10 % over the 60 kg last lifted, so 65 kg for now.",
            id="misses while it hurt bring no restart",
        ),
    ],
)
def test_pain_that_was_told_is_remembered(
    sessions: tuple[Exposure, ...], day: int, pain: bool, asked: str, reason: str
) -> None:
    planned = slot(LoadStep(kg("2.5"), misses=2), load="80")

    given = prescribe(planned, sessions, today=MONDAY + timedelta(days=day), loadable=BARBELL, pain=pain)

    assert (prescribed(given), given.reason) == (asked, reason)
    assert given.evidence[-1] == sessions[-1].sets[-1].id


def test_a_load_first_found_while_it_hurt_is_known_from_then_on() -> None:
    found = replace(STEP, load=FindIt())
    sessions = held((7, "60: 5 5 5"), told=0, over=99)

    given = prescribe(found, sessions, today=MONDAY + timedelta(days=14), loadable=BARBELL, pain=True)

    assert prescribed(given) == "3×5 at 60 kg"
    assert given.held == (Held.PAIN,)
