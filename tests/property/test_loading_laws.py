"""Laws of loading, against a search through every choice of plates."""

from __future__ import annotations

from decimal import Decimal
from itertools import product

from hypothesis import given
from hypothesis import strategies as st

from engine.loading import Bar, Plates, gym_in_words, plates_for, read_gym, warm_ups
from engine.loading.exercises import _loadable
from engine.loading.gym import default_gym
from engine.loading.mass import counts
from engine.loading.masses import Masses
from engine.loading.plates import HEAVIEST_SIDE, bar_totals
from engine.values.exercise import Equipment, Loading
from engine.values.load import Basis, Load, Unit

BAR = Bar(Load(Decimal(20), Unit.KG))
units = st.sampled_from(Unit)
sizes = st.sampled_from(("0.5", "1.25", "2.5", "5", "10", "15", "20", "25", "35", "45"))


@st.composite
def stocks(draw: st.DrawFn) -> Plates:
    """A few pairs of a few plates, of one unit or mixed."""
    kinds = draw(st.lists(st.tuples(sizes, units), max_size=4, unique=True))
    return Plates(tuple((Load(Decimal(size), unit), draw(st.integers(0, 3))) for size, unit in kinds))


def every_way(plates: Plates) -> list[tuple[Load, ...]]:
    """All choices of plates that fit on one side, by exhaustion."""
    takes = product(*(range(held + 1) for _, held in plates.pairs))
    ways = [tuple(size for (size, _), n in zip(plates.pairs, take, strict=True) for _ in range(n)) for take in takes]
    return [way for way in ways if sum(map(counts, way)) <= HEAVIEST_SIDE]


def total(side: tuple[Load, ...]) -> int:
    return counts(BAR.mass) + 2 * sum(map(counts, side))


@given(stocks())
def test_every_total_that_can_be_loaded_is_found_and_no_other(plates: Plates) -> None:
    assert set(bar_totals(BAR, plates)) == {total(side) for side in every_way(plates)}


@given(stocks(), st.data())
def test_the_plates_told_weigh_what_was_asked_with_as_few_as_can_be(plates: Plates, data: st.DataObject) -> None:
    side = data.draw(st.sampled_from(every_way(plates)))
    target = Load((Decimal(total(side)) / 10**11).quantize(Decimal("0.001")), Unit.KG)
    near = 70_000_000  # a target is told to a thousandth of a kilogram

    found = plates_for(target, BAR, plates).exact

    assert found is not None
    assert abs(total(found.side) - counts(target)) <= near
    assert len(found.side) == min(
        len(way)
        for way in every_way(plates)
        if abs(total(way) - counts(target)) <= near and total(way) == total(found.side)
    )


@given(stocks(), st.integers(0, 4000))
def test_what_is_told_below_and_above_is_the_nearest_on_its_side(plates: Plates, tenths: int) -> None:
    target = Load(Decimal(tenths) / 10, Unit.KG)
    totals = {total(side) for side in every_way(plates)}

    answer = plates_for(target, BAR, plates)

    if answer.exact is None:
        below = max((mass for mass in totals if mass < counts(target)), default=None)
        above = min((mass for mass in totals if mass > counts(target)), default=None)
        assert (answer.below and total(answer.below.side)) == below
        assert (answer.above and total(answer.above.side)) == above


@given(
    st.lists(st.integers(-2000, 20000), min_size=1, max_size=30, unique=True),
    st.integers(-3000, 30000),
    units,
)
def test_the_three_answers_agree_with_each_other(row: list[int], tenths: int, unit: Unit) -> None:
    loadable = Masses(tuple(sorted(counts(Load(Decimal(mass) / 10, unit, Basis.BODY)) for mass in row)))
    target = Load(Decimal(tenths) / 10, unit, Basis.BODY)
    down, up, nearest = loadable.at_most(target), loadable.at_least(target), loadable.nearest(target)

    assert down is None or down <= target
    assert up is None or target <= up
    assert nearest in (down, up)
    assert all(abs(nearest.amount - target.amount) <= abs(Decimal(mass) / 10 - target.amount) for mass in row)
    assert down is None or loadable.at_most(down) == down == loadable.at_least(down)


@given(st.sampled_from((Loading.BAR, Loading.PER_HAND, Loading.STACK, Loading.PLATES)), units, st.integers(0, 400))
def test_a_ramp_rises_and_stays_under_the_work(loading: Loading, unit: Unit, amount: int) -> None:
    equipment = Equipment.DUMBBELL if loading is Loading.PER_HAND else Equipment.BARBELL
    loadable = _loadable(loading, equipment, default_gym(unit), unit)
    work = loadable.nearest(Load(Decimal(amount), unit))
    bar = Load(Decimal(20 if unit is Unit.KG else 45), unit) if loading is Loading.BAR else None

    loads = [step.load for step in warm_ups(work, loadable, bar)]

    assert loads == sorted(set(loads), key=lambda load: load.amount)
    assert all(load < work and loadable.nearest(load) == load for load in loads)


gym_texts = st.lists(
    st.sampled_from(
        ("bar", "collars", "plates", "dumbbells", "stack", "20", "2.5", "x2", "-", "by", "add", "kg", "lb", ";")
    )
    | st.text(max_size=4),
    max_size=12,
).map(" ".join)


@given(gym_texts, units)
def test_no_words_about_equipment_raise_and_what_was_read_reads_back(text: str, unit: Unit) -> None:
    read = read_gym(text, unit)

    assert read_gym(gym_in_words(read.gym), unit).gym == read.gym
