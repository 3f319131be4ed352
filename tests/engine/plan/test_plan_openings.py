"""What stands behind "plan:": every part is read, or named as not read; none goes into the name in silence."""

from __future__ import annotations

import pytest

from engine.catalogue.catalogue import catalogue
from engine.plan.printing import print_plan
from engine.plan.text import parse_plan
from engine.values.load import Unit
from engine.values.problem import Severity

DAY = "\nday mon: a\ndumbbell lateral raise 3x12-15 at 8 kg, then +1 kg"


def parsed(opening):
    return parse_plan(opening + DAY, catalogue(), Unit.KG)


def targets(plan):
    return {muscle.value: (int(one.low), int(one.high)) for muscle, one in plan.targets.items()}


@pytest.mark.parametrize(
    ("opening", "name", "weeks", "asked"),
    [
        pytest.param("plan: base, 6 weeks, target side delts 6-10", "base", 6, {"side delts": (6, 10)}, id="behind"),
        pytest.param("plan: base, target chest 8-12 sets, 6 weeks", "base", 6, {"chest": (8, 12)}, id="between"),
        pytest.param(
            "plan: base, 6 weeks, target lats 8-10, chest 6-9", "base", 6, {"lats": (8, 10), "chest": (6, 9)}, id="two"
        ),
        pytest.param("plan: base, 6 weeks, targets: chest: 6-10", "base", 6, {"chest": (6, 10)}, id="with colons"),
        pytest.param("base (6 weeks, target chest 6-10)", "base", 6, {"chest": (6, 10)}, id="a title"),
        pytest.param("plan: base 6 weeks, target chest 6", "base", 6, {"chest": (6, 6)}, id="weeks with the name"),
        pytest.param(
            "plan: base\nblock: build, 6 weeks, target chest 6-10", "base", 6, {"chest": (6, 10)}, id="a block"
        ),
        pytest.param("plan: target practice, 6 weeks", "target practice", 6, {}, id="a name of that word"),
        pytest.param("plan: push, pull, legs, 6 weeks", "push, pull, legs", 6, {}, id="a name of several parts"),
        pytest.param('plan: "base, 3 days a week", 6 weeks', "base, 3 days a week", 6, {}, id="a name in quotes"),
    ],
)
def test_each_part_is_read(opening, name, weeks, asked):
    read = parsed(opening)

    assert read.problems == ()
    assert (read.plan.name, read.plan.blocks[0].weeks, targets(read.plan)) == (name, weeks, asked)
    assert parse_plan(print_plan(read.plan, catalogue()), catalogue(), Unit.KG).plan == read.plan


@pytest.mark.parametrize(
    ("opening", "unread"),
    [
        ("plan: base, 6 weeks, 3 days a week", "3 days a week"),
        ("plan: base, 3 days a week, 6 weeks", "3 days a week"),
        ("plan: base, 6 weeks, side delts 6-10", "side delts 6-10"),
        ("plan: base, 6 weeks, for the summer", "for the summer"),
    ],
)
def test_what_is_not_read_is_named_and_no_part_of_the_name(opening, unread):
    read = parsed(opening)

    assert read.plan.name == "base"
    assert [(one.line, one.read, one.severity) for one in read.problems] == [(1, unread, Severity.WARNING)]
    assert "weeks, deload weeks or targets" in read.problems[0].expected


@pytest.mark.parametrize(
    "opening", ["plan: base, 6 weeks, target side delts", "plan: base, 6 weeks, target elbows 6-9"]
)
def test_a_target_that_cannot_be_read_is_an_error(opening):
    read = parsed(opening)

    assert read.plan is None
    assert [one.line for one in read.errors] == [1]


def test_a_name_that_would_read_as_its_length_keeps_its_quotes():
    read = parsed('plan: "base 6 weeks", 4 weeks')

    assert read.plan.name == "base 6 weeks"
    assert parse_plan(print_plan(read.plan, catalogue()), catalogue(), Unit.KG).plan == read.plan
