"""Headings of a plan: blocks, weeks that alternate, days, deloads, targets; and lines that go on or are mended."""

from decimal import Decimal

import pytest

from engine.catalogue.catalogue import catalogue
from engine.plan import mend, parse_plan, print_plan
from engine.values.load import Unit
from engine.values.muscles import Muscle
from engine.values.plan import Deload, VolumeTarget, Weekday
from engine.values.problem import Severity

ROW = "barbell row 3x8 at 40 kg, then +2.5 kg"
CURL = "barbell curl 3x8-12 at 20 kg, then +1 kg"


def parsed(text):
    return parse_plan(text, catalogue(), Unit.KG)


def plan(text):
    found = parsed(text)

    assert found.plan is not None, [str(problem) for problem in found.problems]
    return found.plan


def expected(text):
    found = parsed(text)

    assert found.plan is None
    return [(problem.line, problem.expected) for problem in found.errors]


@pytest.mark.parametrize(
    ("heading", "weeks", "deloads"),
    [
        pytest.param("plan: back, 8 weeks, deload week 8", 8, (8,), id="weeks and a deload"),
        pytest.param("Plan - back; 6 weeks; deload weeks 3, 6", 6, (3, 6), id="deload weeks with a comma"),
        pytest.param("plan: back, 6-week, deload every 3 weeks", 6, (3, 6), id="deload every so often"),
        pytest.param("plan: back, 4 weeks\nweek 4: deload", 4, (4,), id="deload on a line of its own"),
        pytest.param("plan: back, 4 weeks\ndeload week 2 and 4", 4, (2, 4), id="deload line"),
        pytest.param("plan: back", 8, (), id="eight weeks where none are told"),
        pytest.param("back\n5 weeks, deload week 5", 5, (5,), id="a length on its own line"),
    ],
)
def test_plan_line(heading, weeks, deloads):
    block = plan(f"{heading}\nday mon: back\n{ROW}").blocks[0]

    assert (block.weeks, block.deload_weeks) == (weeks, deloads)


@pytest.mark.parametrize(
    ("words", "shares"),
    [
        pytest.param("deload at 60 % of sets and 85 % of load", ("0.6", "0.85"), id="both shares"),
        pytest.param("deload: half the sets, 80% load", ("0.5", "0.8"), id="half, in words"),
        pytest.param("deload at 80 % of the load", ("0.5", "0.8"), id="one told, the other usual"),
    ],
)
def test_deload_shares(words, shares):
    block = plan(f"plan: x, 4 weeks, deload week 4, {words}\n{ROW}").blocks[0]

    assert block.deload == Deload(*map(Decimal, shares))


def test_weeks_that_alternate():
    found = plan(
        f"plan: turn, 8 weeks\nweek A: full body\nmon: all\n{ROW}\n{CURL}\n"
        f"week B: split\nmon: upper\n{ROW}\nthu\n{CURL}"
    )
    block = found.blocks[0]

    assert [kind.label for kind in block.kinds] == ["full body", "split"]
    assert [day.weekday for day in block.kinds[1].days] == [Weekday.MON, Weekday.THU]
    assert block.kinds[1].days[1].label == "Thursday"
    assert block.kind_of(3).label == "full body"


@pytest.mark.parametrize(
    ("weeks", "kinds", "count"),
    [
        pytest.param(("week 1", "week 2"), ["1", "2"], 2, id="numbers, and as many weeks as numbers"),
        pytest.param(("weeks 1-3: volume", "week 4: light"), ["volume"] * 3 + ["light"], 4, id="a span of weeks"),
        pytest.param(("odd weeks: full", "even weeks: split"), ["full", "split"], 8, id="odd and even"),
        pytest.param(("week B: two", "week A: one"), ["one", "two"], 8, id="letters go in their order"),
    ],
)
def test_week_kinds(weeks, kinds, count):
    block = plan("\n".join(f"{week}\nday mon\n{ROW}" for week in weeks)).blocks[0]

    assert [kind.label for kind in block.kinds] == kinds
    assert block.weeks == count


def test_a_week_met_again_goes_on():
    block = plan(f"week 1 day mon: a\n{ROW}\nweek 1 day thu: b\n{CURL}\nweek 2 day mon: c\n{ROW}").blocks[0]

    assert [[day.label for day in kind.days] for kind in block.kinds] == [["a", "b"], ["c"]]


@pytest.mark.parametrize(
    ("heading", "days"),
    [
        pytest.param("day mon: press and pull", [(Weekday.MON, "press and pull")], id="weekday and label"),
        pytest.param("Monday - press", [(Weekday.MON, "press")], id="no word day"),
        pytest.param("tue", [(Weekday.TUE, "Tuesday")], id="a weekday alone"),
        pytest.param("day mon and thu: full", [(Weekday.MON, "full"), (Weekday.THU, "full")], id="two weekdays"),
        pytest.param(
            "Mon/Wed/Fri: full", [(Weekday.MON, "full"), (Weekday.WED, "full"), (Weekday.FRI, "full")], id="three"
        ),
        pytest.param("day 1: lower", [(None, "lower")], id="a number"),
        pytest.param("Day 2", [(None, "day 2")], id="a number alone"),
        pytest.param("day 1 (wed): lower", [(Weekday.WED, "lower")], id="number and weekday"),
        pytest.param("Push day", [(None, "Push day")], id="a title with the word day"),
        pytest.param("Upper body:", [(None, "Upper body")], id="a title with a colon"),
        pytest.param("## Upper body", [(None, "Upper body")], id="a markdown heading"),
        pytest.param('day: "3x3 day"', [(None, "3x3 day")], id="a label in quotes is no exercise"),
        pytest.param("", [(None, "day 1")], id="no heading at all"),
    ],
)
def test_day(heading, days):
    found = plan(f"plan: x\n{heading}\n{ROW}").blocks[0].kinds[0].days

    assert [(day.weekday, day.label) for day in found] == days


def test_a_day_and_its_exercise_may_stand_on_one_line():
    found = plan("plan: x\nmon: barbell row 3x8 at 40 kg\nwed and fri: plank 3x60s").blocks[0].kinds[0].days

    assert [(day.weekday, day.label, [slot.exercise for slot in day.slots]) for day in found] == [
        (Weekday.MON, "Monday", ["barbell row"]),
        (Weekday.WED, "Wednesday", ["plank"]),
        (Weekday.FRI, "Friday", ["plank"]),
    ]


@pytest.mark.parametrize(
    ("first", "name", "weeks"),
    [
        pytest.param("Winter block (6 weeks)", "Winter block", 6, id="a title with its length in brackets"),
        pytest.param("winter, 6 weeks, deload week 6", "winter", 6, id="no word plan"),
        pytest.param("# Winter", "Winter", 8, id="a markdown title"),
        pytest.param("Plan for winter\nlength: 6 weeks", "Plan for winter", 6, id="the length on its own line"),
        pytest.param("Push day", "plan", 8, id="a title that says day is a day"),
    ],
)
def test_the_first_line_names_the_plan(first, name, weeks):
    found = plan(f"{first}\n{ROW}")

    assert (found.name, found.blocks[0].weeks) == (name, weeks)


def test_weeks_and_days_by_number():
    block = plan(f"W1D1: lower\n{ROW}\nW1D2: upper\n{CURL}\nw2d1: lower\n{ROW}").blocks[0]

    assert [[day.label for day in kind.days] for kind in block.kinds] == [["lower", "upper"], ["lower"]]


def test_blocks_count_their_own_weeks_and_the_plan_counts_all():
    found = plan(
        f"plan: year, 10 weeks, deload weeks 6 and 10\nblock: build, 6 weeks\nmon: a\n{ROW}\n"
        f"block 2: peak\nmon: b\n{CURL}"
    )

    assert [(block.label, block.weeks, block.deload_weeks) for block in found.blocks] == [
        ("build", 6, (6,)),
        ("peak", 4, (4,)),
    ]


def test_targets():
    found = plan(f"plan: x\ntarget side delts 12-18\ntargets: lats 10 to 16 sets, rear delt: 8, hams 6-10\n{ROW}")

    assert found.targets == {
        Muscle.SIDE_DELTS: VolumeTarget(Decimal(12), Decimal(18)),
        Muscle.LATS: VolumeTarget(Decimal(10), Decimal(16)),
        Muscle.REAR_DELTS: VolumeTarget(Decimal(8), Decimal(8)),
        Muscle.HAMSTRINGS: VolumeTarget(Decimal(6), Decimal(10)),
    }


def test_lines_without_an_exercise_go_on_with_the_one_above():
    found = plan(
        "plan: x\n1) barbell row 3x8 at 40 kg\n   then +2.5 kg\n   rest 2 min\n   cue: flat back\n2) plank 3x45 s"
    )
    row, plank = found.blocks[0].kinds[0].days[0].slots

    assert (row.rest_seconds, row.cues) == (120, ("flat back",))
    assert plank.rest_seconds is None


def test_a_problem_on_a_line_that_goes_on_names_that_line():
    (problem,) = parsed(f"plan: x\nmon: a\n{ROW}\nrpe 14\n{CURL}").errors

    assert problem.line == 4


@pytest.mark.parametrize(
    "lines",
    [
        pytest.param("A1 barbell row 3x8\nA2 barbell curl 3x8", id="letters"),
        pytest.param("barbell row 3x8\nbarbell curl 3x8, superset with the above", id="with the above"),
        pytest.param("barbell row 3x8, superset with barbell curl\nbarbell curl 3x8", id="by name, before it comes"),
    ],
)
def test_supersets(lines):
    row, curl = plan(f"plan: x\n{lines}").blocks[0].kinds[0].days[0].slots

    assert row.group == curl.group == "A"


@pytest.mark.parametrize(
    ("text", "problem"),
    [
        pytest.param("", (0, "a plan with at least one exercise"), id="nothing"),
        pytest.param("plan: x, 4 weeks", (0, "a plan with at least one exercise"), id="no exercise"),
        pytest.param(f"plan: x, 4 weeks, deload week 6\n{ROW}", (1, "a week from 1 to 4"), id="a deload after the end"),
        pytest.param(f"plan: x, 0 weeks\n{ROW}", (2, "1 to 104 weeks"), id="no weeks"),
        pytest.param(f"plan: x\nplan: y\n{ROW}", (2, "one plan line"), id="two plan lines"),
        pytest.param(
            f"plan: x, 9 weeks\nblock: a, 4 weeks\n{ROW}\nblock: b, 4 weeks\n{ROW}",
            (1, "they make 8"),
            id="weeks that do not add up",
        ),
        pytest.param(
            f"plan: x\ntarget side delts 18-12\n{ROW}", (2, "a range of weekly sets"), id="a target upside down"
        ),
        pytest.param(f"plan: x\ntarget wings 10-12\n{ROW}", (2, "one of the muscles"), id="no such muscle"),
        pytest.param(f"week A\n{ROW}\nweek C\n{ROW}", (3, "week B before it"), id="a week left out"),
        pytest.param(
            f"mon: a\n{ROW}\nweek A\n{ROW}", (3, "every day of the block under a week"), id="days before weeks"
        ),
        pytest.param(
            "plan: x\nbarbell row 3x8, superset with plank", (2, "another exercise of this day"), id="no partner"
        ),
        pytest.param("deload sometime\nbarbell row 3x8", (1, "which week is the deload"), id="a deload without a week"),
    ],
)
def test_what_cannot_be_used_is_reported(text, problem):
    line, words = problem

    assert any(line == at and words in told for at, told in expected(text)), expected(text)


def test_one_bad_line_costs_no_other():
    found = parsed(f"plan: x\nmon: a\n{ROW}\nrow 3x8\n{CURL}\nblorp 5x5")

    assert [problem.line for problem in found.errors] == [4, 6]
    mended = mend(
        mend(found, 4, "dumbbell row 3x8", catalogue(), Unit.KG), 6, "barbell back squat 5x5", catalogue(), Unit.KG
    )
    assert mended.plan is not None
    names = [slot.exercise for slot in mended.plan.blocks[0].kinds[0].days[0].slots]
    assert names == ["barbell row", "dumbbell row", "barbell curl", "barbell back squat"]


@pytest.mark.parametrize(
    ("broken", "answer", "line"),
    [
        pytest.param("row 3x8 at 40 kg", "dumbbell row", "dumbbell row 3x8 at 40 kg", id="a name for an open name"),
        pytest.param("barbell row at 40 kg", "3x8", "barbell row at 40 kg, 3x8", id="what was left out"),
        pytest.param("barbell row 3x8 @8", "rpe 8", "barbell row 3x8 rpe 8", id="words for words"),
        pytest.param("blorp", "barbell row 3x8", "barbell row 3x8", id="the whole line"),
    ],
)
def test_mending(broken, answer, line):
    found = mend(parsed(f"plan: x\nmon: a\n{broken}\n{CURL}"), 3, answer, catalogue(), Unit.KG)

    assert found.plan is not None
    assert found.lines[2].text == line
    assert len(found.plan.blocks[0].kinds[0].days[0].slots) == 2


def test_an_answer_that_mends_nothing_is_reported_as_it_was_sent():
    found = mend(parsed(f"plan: x\nmon: a\nrow 3x8\n{CURL}"), 3, "press 3x8", catalogue(), Unit.KG)

    assert found.plan is None
    assert found.errors[0].read == "press"


def test_warnings_and_notes_never_block():
    found = parsed("plan: x\nmon: a\nmon: b\ndumbell lateral rase 3x15 at 8 kg")

    assert {problem.severity for problem in found.problems} == {Severity.WARNING, Severity.NOTE}
    assert found.plan is not None


def test_each_slot_knows_its_line():
    found = parsed(f"plan: x\nweek A\nmon and thu: a\n{ROW}\n{CURL}\nweek B\ntue: b\n{CURL}")

    assert dict(found.slot_lines) == {
        (0, 0, 0, 0): 4,
        (0, 0, 0, 1): 5,
        (0, 0, 1, 0): 4,
        (0, 0, 1, 1): 5,
        (0, 1, 0, 0): 8,
    }


def test_the_printed_form():
    text = """plan: upper emphasis, 8 weeks, deload week 8
target side delts 12-18
day mon: press and pull
barbell overhead press 3x6 at 42.5 kg, add a set each week up to 5, then +2.5 kg, rest 3 min
A1 dumbbell lateral raise 3x12-15 at 8 kg per hand, then +1 kg, rest 90 s, swap cable lateral raise
A2 push-up 2x max, +1 rep each set, standard: chest touches the floor
day: arms
barbell curl 3x8, find the load, rpe 8, load for rpe 8, cue: "elbows still; slow"
plank 3x45 s, +5 s up to 60 s"""

    assert print_plan(plan(text)) == text


@pytest.mark.parametrize("label", ["maximum", "max effort", "amrap", "to failure"])
def test_a_day_may_be_named_after_effort(label):
    read = plan(f"plan: back, 8 weeks\nday mon: {label}\n{ROW}")
    day = read.blocks[0].kinds[0].days[0]

    assert (day.label, len(day.slots)) == (label, 1)
    assert plan(print_plan(read)) == read


def test_an_exercise_behind_its_day_may_ask_for_all_it_can():
    day = plan("plan: back, 8 weeks\nday mon: push-up 2x max").blocks[0].kinds[0].days[0]

    assert [slot.exercise for slot in day.slots] == ["push-up"]
