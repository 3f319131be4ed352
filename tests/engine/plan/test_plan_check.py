"""What is found in a plan before anyone lifts it, on which line, and that it never blocks unless it must."""

import dataclasses

import pytest

from engine.catalogue.catalogue import catalogue
from engine.plan import parse_plan
from engine.plan.check import check_plan
from engine.values.exercise import Equipment
from engine.values.ids import ExerciseName
from engine.values.load import Unit
from engine.values.plan import Reps
from engine.values.problem import Severity


def checked(text, **given):
    parsed = parse_plan(text, catalogue(), Unit.KG)

    assert parsed.plan is not None, [str(problem) for problem in parsed.problems]
    return check_plan(parsed.plan, catalogue(), lines=dict(parsed.slot_lines), **given)


QUIET = """plan: quiet, 6 weeks, deload week 6
target lats 3-6
day mon: pull
chin-up 3x5 at +5 kg, then +2.5 kg, rest 2 min
day thu: push
barbell bench press 3x8 at 60 kg, then +2.5 kg, rest 2 min"""


def test_a_plan_with_nothing_to_say_about_it():
    assert checked(QUIET) == ()


@pytest.mark.parametrize(
    ("text", "severity", "line", "words"),
    [
        pytest.param(
            "target side delts 12-18\nmon: a\ndumbbell lateral raise 3x15 at 8 kg, then +1 kg",
            Severity.WARNING,
            4,
            ("side delts: 3 sets", "12-18", "more side delts"),
            id="too few weekly sets",
        ),
        pytest.param(
            "target side delts 1-2\nmon: a\ndumbbell lateral raise 3x15 at 8 kg, then +1 kg",
            Severity.WARNING,
            4,
            ("side delts: 3 sets", "1-2", "less side delts"),
            id="too many weekly sets",
        ),
        pytest.param(
            "target calves 4-8\nmon: a\ndumbbell lateral raise 3x15 at 8 kg, then +1 kg",
            Severity.WARNING,
            0,
            ("calves: 0 sets", "more calves"),
            id="a muscle nothing works has no line",
        ),
        pytest.param(
            "mon: a\nromanian deadlift 4x8 at 80 kg, then +2.5 kg\ntue: b\nseated leg curl 3x10 at 40 kg, then +5 kg",
            Severity.WARNING,
            5,
            ("hamstrings", "the day after", "2 reps in reserve"),
            id="long-length work the day after",
        ),
        pytest.param(
            "mon: a\npush-up 3x max\ntue: b\nbarbell bench press 3x8 at 60 kg, then +2.5 kg",
            Severity.WARNING,
            5,
            ("took chest", "to failure"),
            id="failure the day before the muscle's next work",
        ),
        pytest.param(
            "mon: a\nbarbell bench press 2x max at 60 kg, +1 rep each set",
            Severity.WARNING,
            3,
            ("to maximum reps", "spotter or safety pins"),
            id="failure under a bar",
        ),
        pytest.param(
            "mon: a\nbarbell back squat 20x10 at 60 kg, then +2.5 kg, rest 5 min",
            Severity.WARNING,
            3,
            ("minutes", "up to 90"),
            id="a long session",
        ),
        pytest.param(
            "mon: a\nbarbell row 3x8 at 20 kg, then +2.5 kg",
            Severity.NOTE,
            3,
            ("+2.5 kg on 20 kg is 12 %", "2 to 10 %"),
            id="a step over a tenth",
        ),
        pytest.param(
            "mon: a\nbarbell row 9x3 at 60 kg, then +2.5 kg",
            Severity.NOTE,
            3,
            ("1-5 reps", "another rep range"),
            id="all in one rep range",
        ),
    ],
)
def test_findings(text, severity, line, words):
    found = [problem for problem in checked(f"plan: x, 6 weeks\n{text}") if problem.severity is severity]

    matching = [problem for problem in found if all(word in str(problem) for word in words)]
    assert matching, [str(problem) for problem in found]
    assert matching[0].line == line


def test_a_long_block_without_a_deload_is_noted():
    (note,) = [
        one for one in checked(QUIET.replace("6 weeks, deload week 6", "12 weeks")) if "without a deload" in one.read
    ]

    assert note.severity is Severity.NOTE


def test_weeks_that_even_out_are_only_noted():
    found = checked(
        "plan: x, 6 weeks\ntarget lats 3-5\nweek A\nmon: a\nchin-up 6x5 at +5 kg, then +2.5 kg\n"
        "week B\nmon: a\nchin-up 2x5 at +5 kg, then +2.5 kg"
    )

    assert {problem.severity for problem in found if "lats" in problem.read} == {Severity.NOTE}


def test_the_last_day_of_a_week_is_looked_at_beside_the_first_of_the_next():
    text = (
        "plan: x, {} weeks\nmon: a\nromanian deadlift 4x8 at 80 kg, then +2.5 kg\n"
        "sun: b\nromanian deadlift 4x8 at 90 kg"
    )

    assert any("day after" in problem.read for problem in checked(text.format(4)))
    assert not any("day after" in problem.read for problem in checked(text.format(1)))


def test_days_without_a_weekday_are_not_held_to_any_spacing():
    found = checked(
        "plan: x, 4 weeks\nday 1\nromanian deadlift 4x8 at 80 kg, then +2.5 kg\n"
        "day 2\nromanian deadlift 4x8 at 90 kg, then +2.5 kg"
    )

    assert found == ()


def test_equipment_that_is_not_there_is_told_with_a_swap():
    found = checked(QUIET, equipment=(Equipment.DUMBBELL, Equipment.BODY_WEIGHT))

    (warning,) = found
    assert warning.read == "barbell bench press"
    assert catalogue().exercises[ExerciseName(warning.try_instead)].equipment in (
        Equipment.DUMBBELL,
        Equipment.BODY_WEIGHT,
    )


def test_unknown_names_and_impossible_numbers_are_errors():
    plan = parse_plan(QUIET, catalogue(), Unit.KG).plan
    assert plan is not None
    kind = plan.blocks[0].kinds[0]
    day = kind.days[0]
    odd = tuple(
        dataclasses.replace(day.slots[0], **changed)
        for changed in (
            {"exercise": ExerciseName("wing flap")},
            {"sets": 0},
            {"target": Reps(0)},
            {"rest_seconds": 90_000},
        )
    )
    bad = dataclasses.replace(
        plan,
        blocks=(
            dataclasses.replace(
                plan.blocks[0], kinds=(dataclasses.replace(kind, days=(dataclasses.replace(day, slots=odd),)),)
            ),
        ),
    )
    errors = [problem.read for problem in check_plan(bad, catalogue()) if problem.severity is Severity.ERROR]

    assert errors == ["wing flap", "0 sets", "Reps(count=0)", "rest 90000 s"]
