"""What can be loaded for an exercise. Gym defaults: common practice, no source."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal

import pytest

from engine.loading import Loadable, Stack, empty_bar, loadable_for
from engine.loading.gym import KG_GYM, loads
from engine.values.exercise import Equipment, Exercise, FailureGuard, Length, Loading, Measure, Pattern
from engine.values.ids import ExerciseName
from engine.values.load import Basis, Load, Unit


def exercise(loading: Loading, equipment: Equipment) -> Exercise:
    return Exercise(
        name=ExerciseName("test lift"), prime=(), secondary=(), pattern=Pattern.ISOLATION, equipment=equipment,
        loading=loading, measure=Measure.REPS, one_sided=False, length=Length.MIDDLE, body_share=Decimal(0),
        guard=FailureGuard.NONE, swaps=(), cues=(),
    )  # fmt: skip


BARBELL = exercise(Loading.BAR, Equipment.BARBELL)
DUMBBELLS = exercise(Loading.PER_HAND, Equipment.DUMBBELL)
CABLE = exercise(Loading.STACK, Equipment.CABLE)
PULL_UP = exercise(Loading.BODY, Equipment.BODY_WEIGHT)
LEG_PRESS = exercise(Loading.PLATES, Equipment.MACHINE)
BAND = exercise(Loading.BAND, Equipment.BAND)
GOBLET = exercise(Loading.IMPLEMENT, Equipment.KETTLEBELL)


def told(load: Load | None) -> str | None:
    return None if load is None else str(load)


@pytest.mark.parametrize(
    ("lift", "unit", "amount", "down", "up", "nearest"),
    [
        pytest.param(BARBELL, Unit.KG, "61", "60 kg", "62.5 kg", "60 kg", id="a barbell goes by 2.5 kg"),
        pytest.param(BARBELL, Unit.KG, "61.25", "60 kg", "62.5 kg", "60 kg", id="equally near takes the lighter"),
        pytest.param(BARBELL, Unit.KG, "61.3", "60 kg", "62.5 kg", "62.5 kg", id="nearest may be above"),
        pytest.param(BARBELL, Unit.KG, "60", "60 kg", "60 kg", "60 kg", id="a loadable load is its own neighbour"),
        pytest.param(BARBELL, Unit.KG, "12", None, "20 kg", "20 kg", id="nothing under the empty bar"),
        pytest.param(BARBELL, Unit.LB, "137.5", "135 lb", "140 lb", "135 lb", id="a pound barbell goes by 5 lb"),
        pytest.param(DUMBBELLS, Unit.KG, "10.5", "10 kg", "12 kg", "10 kg", id="dumbbells by 1 kg to 10, then wider"),
        pytest.param(DUMBBELLS, Unit.LB, "52", "50 lb", "55 lb", "50 lb", id="pound dumbbells go by 5 lb"),
        pytest.param(CABLE, Unit.KG, "34", "32.5 kg", "35 kg", "35 kg", id="an add-on halves the stack's step"),
        pytest.param(CABLE, Unit.KG, "900", "152.5 kg", None, "152.5 kg", id="nothing over the whole stack"),
        pytest.param(LEG_PRESS, Unit.KG, "101", "100 kg", "102.5 kg", "100 kg", id="plates on a machine without a bar"),
        pytest.param(PULL_UP, Unit.KG, "0", "0 kg", "0 kg", "0 kg", id="plain body weight is loadable"),
        pytest.param(PULL_UP, Unit.KG, "6", "6 kg", "6 kg", "6 kg", id="a belt takes a dumbbell"),
        pytest.param(PULL_UP, Unit.KG, "53", "52.5 kg", "53.75 kg", "52.5 kg", id="a belt takes single plates"),
        pytest.param(PULL_UP, Unit.KG, "-12", "-12.5 kg", "-10 kg", "-12.5 kg", id="help goes by the stack"),
        pytest.param(BAND, Unit.KG, "7.3", "7 kg", "7.5 kg", "7.5 kg", id="bands by half a kilogram"),
        pytest.param(GOBLET, Unit.KG, "25", "24 kg", "26 kg", "24 kg", id="kettlebells by their own row"),
    ],
)
def test_what_can_be_loaded(
    lift: Exercise, unit: Unit, amount: str, down: str | None, up: str | None, nearest: str
) -> None:
    target = Load(Decimal(amount), unit, Basis.BODY if lift is PULL_UP else Basis.TOTAL)
    loadable = loadable_for(lift, None, unit)

    assert (told(loadable.at_most(target)), told(loadable.at_least(target)), told(loadable.nearest(target))) == (
        down, up, nearest,
    )  # fmt: skip


def test_the_answer_comes_in_the_targets_unit_and_basis() -> None:
    loadable = loadable_for(DUMBBELLS, None, Unit.LB)

    found = loadable.at_most(Load(Decimal(24), Unit.KG, Basis.PER_HAND))

    assert found == Load(Decimal("22.680"), Unit.KG, Basis.PER_HAND)  # 50 lb


@pytest.mark.parametrize("pounds", [45, 135, 185, 225, 315, 405])
def test_a_pound_load_told_in_rounded_kilograms_is_still_itself(pounds: int) -> None:
    told_in_kg = Load(Decimal(pounds), Unit.LB).in_unit(Unit.KG)
    loadable = loadable_for(BARBELL, None, Unit.LB)

    assert loadable.at_most(told_in_kg) == told_in_kg == loadable.at_least(told_in_kg)


def test_an_own_rack_takes_the_place_of_the_usual_one() -> None:
    mine = replace(KG_GYM, dumbbells=loads(Unit.KG, 8, 12, 16))
    loadable = loadable_for(DUMBBELLS, mine, Unit.KG)

    assert loadable.nearest(Load(Decimal(10), Unit.KG)) == Load(Decimal(8), Unit.KG)
    assert loadable.at_most(Load(Decimal("7.5"), Unit.KG)) is None


def test_what_was_worked_out_for_one_gym_is_never_told_of_another() -> None:
    other = replace(KG_GYM, dumbbells=loads(Unit.KG, *range(101, 101 + len(KG_GYM.dumbbells))))

    assert hash(other) == hash(KG_GYM)  # the cheap hash clashes on purpose
    assert loadable_for(DUMBBELLS, KG_GYM, Unit.KG).nearest(Load(Decimal(5), Unit.KG)).amount == 5
    assert loadable_for(DUMBBELLS, other, Unit.KG).nearest(Load(Decimal(5), Unit.KG)).amount == 101


def test_a_gym_of_the_same_equipment_is_worked_out_once() -> None:
    first: Loadable = loadable_for(BARBELL, KG_GYM, Unit.KG)

    assert loadable_for(BARBELL, replace(KG_GYM), Unit.KG) is first


@pytest.mark.parametrize(
    ("lift", "unit", "bar"),
    [
        # A men's bar weighs 20 kg. Source: IWF Technical and Competition Rules. 45 lb: common practice.
        pytest.param(BARBELL, Unit.KG, "20 kg", id="kilogram bar"),
        pytest.param(BARBELL, Unit.LB, "45 lb", id="pound bar"),
        pytest.param(exercise(Loading.BAR, Equipment.TRAP_BAR), Unit.KG, "25 kg", id="trap bar"),
        pytest.param(exercise(Loading.BAR, Equipment.STRONGMAN), Unit.KG, "20 kg", id="an unknown bar is the barbell"),
        pytest.param(CABLE, Unit.KG, None, id="a stack has no bar"),
    ],
)
def test_the_empty_bar(lift: Exercise, unit: Unit, bar: str | None) -> None:
    assert told(empty_bar(lift, None, unit)) == bar


def test_a_stack_that_falls_cannot_be() -> None:
    with pytest.raises(ValueError, match="expected it to rise"):
        Stack(first=Load(Decimal(50), Unit.KG), step=Load(Decimal(5), Unit.KG), top=Load(Decimal(10), Unit.KG))
