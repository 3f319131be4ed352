"""The place found for more sets is the best there is: held against every other way, on plans of all kinds."""

from itertools import islice

from hypothesis import HealthCheck, assume, given, settings
from hypothesis import strategies as st

from engine.catalogue.catalogue import catalogue
from engine.plan.placing import Search
from engine.values.muscles import Muscle
from tests.property.strategies import blocks

MOST_WAYS = 120
SLOW = settings(max_examples=30, suppress_health_check=list(HealthCheck))


@SLOW
@given(blocks(), st.data(), st.integers(-4, 5).filter(bool))
def test_no_way_is_better_than_the_one_found(block, data, count):
    exercises = catalogue().exercises
    trained = {muscle for day in block.kinds[0].days for slot in day.slots for muscle in exercises[slot.exercise].prime}
    muscle = data.draw(st.sampled_from(sorted(trained, key=list(Muscle).index)))
    search = Search(block, 0, 0, muscle, count, catalogue())
    ways = list(islice(search.ways(), MOST_WAYS + 1))
    assume(len(ways) <= MOST_WAYS)

    best = search.best()

    assert (best is None) == (not ways)
    if best is not None:
        assert search.cost(best) == min(map(search.cost, ways))


@SLOW
@given(blocks(), st.data(), st.integers(-4, 5).filter(bool))
def test_a_beginning_never_costs_more_than_an_end_of_it(block, data, count):
    search = Search(block, 0, 0, data.draw(st.sampled_from(Muscle)), count, catalogue())
    way = next(search.ways(), None)
    assume(way is not None)
    assert way is not None

    costs = [search.cost(way[:length]) for length in range(len(way) + 1)]
    assert costs == sorted(costs)
