"""A plan projected forward, day by day, under stated assumptions."""

from datetime import UTC, date, datetime
from decimal import Decimal

import pytest

from engine.catalogue.catalogue import catalogue
from engine.loading.exercises import loadable_for
from engine.plan import parse_plan
from engine.plan.calendar import planned_days
from engine.plan.projection import Assumptions, project, success_share
from engine.progression.sessions import Choices, Skip, Swap, assign
from engine.values.ids import ExerciseName, SetId
from engine.values.load import Load, Unit, plain
from engine.values.plan import Metres, RepRange, Reps, Seconds
from engine.values.prescription import Exposure, Held
from engine.values.sets import SetDone, SetRecord

MONDAY = date(2026, 3, 2)


def plan_of(lines, weeks=8, extra=""):
    plan = parse_plan(f"plan: x, {weeks} weeks{extra}\nday mon: a\n{lines}", catalogue(), Unit.KG).plan

    assert plan is not None
    return plan


def loadable(name):
    return loadable_for(catalogue().exercises[name], None, Unit.KG)


def told(one):
    match one.target:
        case Reps(count) | Seconds(count) | Metres(count):
            goal = f"{count}"
        case RepRange(low, high):
            goal = f"{low}-{high}"
        case _:
            goal = "max"
    return goal if one.load is None else f"{goal}@{plain(one.load.amount)}"


def weeks_of(lines, weeks=8, extra="", **given):
    """For each week the sets of its first slot, alike ones once: ``3: 6@42.5``."""
    days = project(plan_of(lines, weeks, extra), MONDAY, loadable, **given)
    return [f"{len(day.asked[0].sets)}: {' '.join(dict.fromkeys(map(told, day.asked[0].sets)))}" for day in days]


@pytest.mark.parametrize(
    ("line", "weeks"),
    [
        pytest.param(
            "barbell overhead press 3x6 at 42.5 kg, add a set each week up to 5, then +2.5 kg",
            ["3: 6@42.5", "4: 6@42.5", "5: 6@42.5", "3: 6@45"],
            id="a set wave climbs and starts again heavier",
        ),
        pytest.param(
            "barbell row 3x8-10 at 40 kg, then +2.5 kg",
            ["3: 8-10@40", "3: 8-10@40", "3: 8-10@40", "3: 8-10@42.5"],
            id="a range is climbed a rep a session",
        ),
        pytest.param(
            "barbell row 3x8 at 40 kg, then +2.5 kg", ["3: 8@40", "3: 8@42.5", "3: 8@45", "3: 8@47.5"], id="load step"
        ),
        pytest.param("push-up 2x max, +2 reps each set", ["2: max", "2: 12", "2: 14", "2: 16"], id="rep goal from ten"),
        pytest.param(
            "barbell back squat 3x5, 70/80/90 % of 100 kg, then +5 kg",
            ["3: 5@70", "3: 5@80", "3: 5@90", "3: 5@72.5"],
            id="a percentage wave turns with a higher maximum",
        ),
        pytest.param(
            "plank 2x50 s, +5 s up to 60 s, then +2.5 kg",
            ["2: 50", "2: 55", "2: 60", "2: 50@2.5"],
            id="time, then load",
        ),
        pytest.param("barbell row 3x8 at 40 kg, no progression", ["3: 8@40"] * 4, id="hold"),
        pytest.param("barbell row 3x8, then +2.5 kg", ["3: 8"] * 4, id="a load to be found stays to be found"),
    ],
)
def test_if_all_reps_are_made(line, weeks):
    assert weeks_of(line, weeks=4) == weeks


def test_a_deload_week_is_lighter_and_moves_nothing():
    assert weeks_of("barbell row 4x8 at 40 kg, then +2.5 kg", 4, ", deload week 3") == [
        "4: 8@40",
        "4: 8@42.5",
        "2: 8@40",
        "4: 8@45",
    ]


def test_the_athletes_own_share_of_sessions_made_slows_it_down():
    line = "barbell row 3x8 at 40 kg, then +2.5 kg"
    every = weeks_of(line, 8)
    some = weeks_of(line, 8, assumptions=Assumptions(Decimal("0.75")))

    assert every[-1] == "3: 8@57.5"
    assert some[-1] == "3: 8@52.5"
    assert len(set(some)) == 6
    assert weeks_of(line, 8, assumptions=Assumptions(Decimal("0.75"))) == some


def test_what_is_assumed_is_said():
    assert Assumptions().in_words == "If all reps are made in every session"
    assert Assumptions(Decimal("0.8")).in_words == "If 80 % of the sessions are made, as up to now"
    with pytest.raises(ValueError):
        Assumptions(Decimal("1.2"))


def done(on, place, reps, load):
    sets = SetDone(ExerciseName("barbell row"), reps, Load(Decimal(load), Unit.KG))
    return SetRecord(SetId(place), sets, on, datetime(on.year, on.month, on.day, 18, tzinfo=UTC), place)


def test_it_goes_on_from_the_log():
    plan = plan_of("barbell row 3x8 at 40 kg, then +2.5 kg", 4)
    log = [done(MONDAY, place, 8, "50") for place in range(3)]
    sessions = assign(planned_days(plan, MONDAY, MONDAY, date(2026, 4, 1)), log)

    days = project(plan, MONDAY, loadable, since=MONDAY, sessions=sessions)

    assert [(day.number, told(day.asked[0].sets[0])) for day in days] == [(2, "8@52.5"), (3, "8@55"), (4, "8@57.5")]
    assert days[0].asked[0].evidence == (SetId(0), SetId(1), SetId(2))


def begun(lines, *reps, choices=Choices()):  # noqa: B008 - frozen
    """What next week's session asks of each lift when today so many sets of the row at 40 kg are in."""
    plan = plan_of(lines, 2)
    log = [done(MONDAY, place, one, "40") for place, one in enumerate(reps)]
    sessions = assign(planned_days(plan, MONDAY, MONDAY, date(2026, 4, 1)), log, choices)
    (day,) = project(plan, MONDAY, loadable, since=MONDAY, sessions=sessions, choices=choices)
    return [told(one.sets[0]) for one in day.asked]


@pytest.mark.parametrize(
    ("reps", "asked"),
    [
        pytest.param((8,), "8@42.5", id="the sets still to do are made"),
        pytest.param((8, 8), "8@42.5", id="one still to do"),
        pytest.param((8, 8, 8), "8@42.5", id="all done"),
        pytest.param((8, 6), "8@40", id="one missed already"),
        pytest.param((8, 6, 8, 8), "8@42.5", id="one more than asked"),
    ],
)
def test_a_session_under_way_is_finished_as_assumed(reps, asked):
    assert begun("barbell row 3x8 at 40 kg, then +2.5 kg", *reps) == [asked]


def test_lifts_of_a_session_under_way_not_begun_yet_are_made_too_unless_skipped_or_swapped():
    lines = "barbell row 3x8 at 40 kg, then +2.5 kg\nbarbell curl 3x8 at 30 kg, then +2.5 kg"
    curl = ExerciseName("barbell curl")
    skipped = Choices(skips=(Skip(MONDAY, curl),))
    swapped = Choices(swaps=(Swap(MONDAY, curl, ExerciseName("hammer curl")),))

    assert begun(lines, 8) == ["8@42.5", "8@32.5"]
    assert begun(lines, 8, choices=skipped) == ["8@42.5", "8@30"]
    assert begun(lines, 8, choices=swapped) == ["8@42.5", "8@30"]


def test_it_ends_with_the_block_it_begins_in():
    text = (
        "plan: x\nblock: a, 2 weeks\nmon: d\nbarbell row 3x8 at 40 kg\n"
        "block: b, 2 weeks\nmon: d\nbarbell row 3x5 at 60 kg"
    )
    plan = parse_plan(text, catalogue(), Unit.KG).plan
    assert plan is not None

    assert [day.number for day in project(plan, MONDAY, loadable)] == [1, 2]
    assert [day.number for day in project(plan, MONDAY, loadable, since=date(2026, 3, 17))] == [4]
    assert [day.number for day in project(plan, MONDAY, loadable, last_week=3)] == [1, 2, 3]


def test_days_without_a_weekday_are_spread_over_their_week():
    text = "plan: x, 1 week\nday 1\nbarbell row 3x8 at 40 kg\nday 2\nbarbell curl 3x8 at 20 kg"
    plan = parse_plan(text, catalogue(), Unit.KG).plan
    assert plan is not None

    days = project(plan, MONDAY, loadable)

    assert [(day.on, day.asked[0].exercise) for day in days] == [
        (MONDAY, "barbell row"),
        (date(2026, 3, 5), "barbell curl"),
    ]


def test_a_deload_says_so():
    days = project(plan_of("barbell row 4x8 at 40 kg, then +2.5 kg", 2, ", deload week 2"), MONDAY, loadable)

    assert days[1].asked[0].held == (Held.DELOAD,)


def test_the_share_of_sessions_made():
    (slot,) = plan_of("barbell row 2x8 at 40 kg, then +2.5 kg").blocks[0].kinds[0].days[0].slots
    made = Exposure(MONDAY, (done(MONDAY, 1, 8, "40"), done(MONDAY, 2, 9, "40")))
    short = Exposure(MONDAY, (done(MONDAY, 1, 8, "40"), done(MONDAY, 2, 7, "40")))
    eased = Exposure(MONDAY, (done(MONDAY, 1, 8, "35"),), deload=True)

    assert success_share([(slot, (made, made, short, eased))]) == Decimal(2) / 3
    assert success_share([(slot, (eased,))]) is None
