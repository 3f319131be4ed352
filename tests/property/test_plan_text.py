"""What we print of a plan we can read, and no text makes the reader raise."""

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from engine.catalogue.catalogue import catalogue
from engine.plan import parse_plan, print_plan
from engine.values.load import Unit
from engine.values.problem import Severity
from tests.property.strategies import plans

SLOW = settings(max_examples=60, suppress_health_check=list(HealthCheck))


@SLOW
@given(plans, st.sampled_from(Unit))
def test_a_plan_printed_is_read_back_as_the_same_plan(plan, unit):
    printed = print_plan(plan)
    read = parse_plan(printed, catalogue(), unit)

    assert [str(problem) for problem in read.errors] == [], printed
    assert read.plan == plan, printed


PIECES = """
plan: block day week target deload mon A1 row bench press curl plank 3x8 3x max 8-12 at kg lb
+2.5 then up to % of rest min s m
rpe rir cue: swap standard: superset with , ; : | # - * @ ( ) " “ ” ½ 5 10 60 140 0 999999
each week when all reps are made
after misses down top set back-offs reps in all load for no progression add a set squat 3x5 side delts 12-18 8 weeks
"""
pieces = st.sampled_from(PIECES.split())
plan_like = st.lists(pieces | st.just("\n"), max_size=60).map(" ".join)


@settings(max_examples=400)
@given(st.text(max_size=300) | plan_like, st.sampled_from(Unit))
def test_no_text_makes_the_reader_raise(text, unit):
    read = parse_plan(text, catalogue(), unit)

    has_error = any(problem.severity is Severity.ERROR for problem in read.problems)
    assert (read.plan is None) == has_error


@settings(max_examples=200)
@given(plan_like, st.sampled_from(Unit))
def test_what_was_read_and_printed_stays_the_same(text, unit):
    read = parse_plan(text, catalogue(), unit)
    if read.plan is None:
        return
    again = parse_plan(print_plan(read.plan), catalogue(), unit)

    assert again.plan == read.plan
