"""A plan printed, read back and projected gives the same numbers."""

from datetime import date

from hypothesis import HealthCheck, given, settings

from engine.catalogue.catalogue import catalogue
from engine.loading.exercises import loadable_for
from engine.plan import parse_plan, print_plan
from engine.plan.check import check_plan
from engine.plan.projection import project
from engine.values.load import Unit
from tests.property.strategies import plans

MONDAY = date(2026, 3, 2)
SLOW = settings(max_examples=40, suppress_health_check=list(HealthCheck))


def loadable(name):
    return loadable_for(catalogue().exercises[name], None, Unit.KG)


@SLOW
@given(plans)
def test_printing_and_reading_change_no_projection_and_no_finding(plan):
    again = parse_plan(print_plan(plan), catalogue(), Unit.KG).plan

    assert again is not None
    assert project(again, MONDAY, loadable, last_week=3) == project(plan, MONDAY, loadable, last_week=3)
    assert check_plan(again, catalogue()) == check_plan(plan, catalogue())


@SLOW
@given(plans)
def test_every_slot_of_every_day_is_asked_for(plan):
    projected = project(plan, MONDAY, loadable, last_week=2)

    for day in projected:
        assert [asked.exercise for asked in day.asked] == [slot.exercise for slot in day.planned.day.slots]
        assert all(asked.sets for asked in day.asked)
