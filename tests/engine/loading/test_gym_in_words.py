"""Equipment told in words and told back."""

from __future__ import annotations

from decimal import Decimal

import pytest

from engine.loading.gym import KG_GYM, LB_GYM, Gym, loads
from engine.loading.gym_words import gym_in_words, read_gym
from engine.values.exercise import Equipment
from engine.values.load import Load, Unit


def kg(*amounts: str | int) -> tuple[Load, ...]:
    return loads(Unit.KG, *amounts)


@pytest.mark.parametrize(
    ("words", "bar", "empty"),
    [
        pytest.param("bar 20 kg", Equipment.BARBELL, "20 kg", id="a bar"),
        pytest.param("bar 45 lb", Equipment.BARBELL, "45 lb", id="in another unit"),
        pytest.param("bar 15", Equipment.BARBELL, "15 kg", id="in the athlete's unit"),
        pytest.param("EZ bar: 7,5 kg", Equipment.EZ_BAR, "7.5 kg", id="a curved bar, a decimal comma"),
        pytest.param("bar 20 kg; collars 2.5 kg", Equipment.BARBELL, "25 kg", id="two collars count"),
        pytest.param("collars 2.5 kg; bar 15 kg", Equipment.BARBELL, "20 kg", id="in any order"),
        pytest.param("collars 2.5 kg\ncollars 0", Equipment.BARBELL, "20 kg", id="no collars any more"),
    ],
)
def test_bars(words: str, bar: Equipment, empty: str) -> None:
    read = read_gym(words, Unit.KG)

    found = read.gym.bar(bar)

    assert read.problems == ()
    assert found is not None
    assert str(found.empty()) == empty


def test_plates_are_told_in_pairs() -> None:
    read = read_gym("plates 25x1 20 x 2, 10×3 pairs 5 2.5 kg", Unit.KG)

    assert read.problems == ()
    assert read.gym.plates.pairs == tuple(zip(kg(25, 20, 10, 5, "2.5"), (1, 2, 3, 8, 8), strict=True))


@pytest.mark.parametrize(
    ("words", "sizes"),
    [
        pytest.param("dumbbells 2-10 by 2", kg(2, 4, 6, 8, 10), id="a row"),
        pytest.param("dumbbells 2 to 7 by 2, 9 11.5", kg(2, 4, 6, 9, "11.5"), id="a row and single ones"),
        pytest.param("dumbbells 5-15 by 5 lb", loads(Unit.LB, 5, 10, 15), id="a row takes its step's unit"),
        pytest.param("dumbbell 8, 8, 10", kg(8, 10), id="told twice, held once"),
    ],
)
def test_dumbbells(words: str, sizes: tuple[Load, ...]) -> None:
    read = read_gym(words, Unit.LB if "lb" in words else Unit.KG)

    assert read.problems == ()
    assert read.gym.dumbbells == sizes


def test_a_stack_with_what_hangs_on_it() -> None:
    stack = read_gym("stack 5-60 by 5, add 2.5, add 1.25", Unit.KG).gym.stack

    assert (stack.first, stack.step, stack.top) == kg(5, 5, 60)
    assert stack.add_ons == kg("2.5", "1.25")


@pytest.mark.parametrize(
    ("words", "line", "try_instead"),
    [
        pytest.param("plates many", 1, "plates 25x1 20x2 10x2 5x2 2.5x2 1.25x2", id="no masses"),
        pytest.param("bar 20 kg\nbar", 2, "bar 20 kg", id="nothing told"),
        pytest.param("bar 20 25", 1, "bar 20 kg", id="two masses for one bar"),
        pytest.param("dumbbells 2-24", 1, "dumbbells 2-24 by 2, 27.5", id="a row without its step"),
        pytest.param("dumbbells 1-4000 by 0.1", 1, "dumbbells 2-24 by 2, 27.5", id="more sizes than a rack holds"),
        pytest.param("dumbbells 9-2 by 1", 1, "dumbbells 2-24 by 2, 27.5", id="a row that falls"),
        pytest.param("stack 5", 1, "stack 5-100 by 5, add 2.5", id="a stack of one"),
        pytest.param("treadmill 3", 1, "plates 25x1 20x2 10x2 5x2 2.5x2 1.25x2", id="something else"),
        pytest.param("plates 0x4", 1, "plates 25x1 20x2 10x2 5x2 2.5x2 1.25x2", id="a plate of no mass"),
    ],
)
def test_what_cannot_be_read_says_what_to_write(words: str, line: int, try_instead: str) -> None:
    (problem,) = read_gym(words, Unit.KG).problems

    assert (problem.line, problem.try_instead) == (line, try_instead)


def test_a_bad_part_costs_no_good_one() -> None:
    read = read_gym("bar 15 kg; plates none; dumbbells 5 10", Unit.KG)

    assert len(read.problems) == 1
    assert read.gym.dumbbells == kg(5, 10)
    assert read.gym.plates == KG_GYM.plates


@pytest.mark.parametrize("gym", [KG_GYM, LB_GYM], ids=["kilograms", "pounds"])
@pytest.mark.parametrize("more", ["", "collars 2.5 kg; plates 25x1 20x0 45 lb x 2", "dumbbells 2-6 by 1; bar 15 lb"])
def test_a_gym_told_reads_back(gym: Gym, more: str) -> None:
    mine = read_gym(more, Unit.KG, gym).gym

    read = read_gym(gym_in_words(mine), Unit.LB)

    assert (read.gym, read.problems) == (mine, ())


def test_a_gym_told_is_a_gym_to_load_with() -> None:
    read = read_gym("plates 25x1 20x2", Unit.KG)

    assert dict(read.gym.plates.pairs)[Load(Decimal(20), Unit.KG)] == 2
