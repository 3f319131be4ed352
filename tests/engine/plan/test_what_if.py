"""Changes of a plan before they are made: what a swap or more sets would bring, and where more sets for a muscle go."""

from decimal import Decimal

import pytest

from engine.catalogue.catalogue import catalogue
from engine.plan import parse_plan, print_plan
from engine.plan.changes import slot_with_sets
from engine.plan.placing import Search
from engine.plan.printing import print_slot
from engine.plan.weak_points import more_sets
from engine.plan.what_if import if_sets_added, if_swapped
from engine.values.ids import ExerciseName
from engine.values.load import Load, Unit
from engine.values.muscles import Muscle
from engine.values.plan import FindIt, Reps, VolumeTarget
from engine.values.problem import Problem
from engine.values.schemes import LoadStep

WEEK = """plan: upper emphasis, 8 weeks, deload week 4
day mon: press and pull
barbell overhead press 3x6 at 42.5 kg, add a set each week up to 5, then +2.5 kg, rest 3 min
dumbbell lateral raise 3x12-15 at 8 kg, then +1 kg, rest 90 s, swap cable lateral raise
push-up 2x max, +1 rep each set
day tue: lower
romanian deadlift 4x8 at 80 kg, then +2.5 kg
seated leg curl 3x10 at 40 kg, then +5 kg
day thu: upper
cable lateral raise 2x15 at 5 kg, then +2.5 kg
barbell bench press 3x5 at 60 kg, then +2.5 kg
day fri: lower again
barbell back squat 3x5 at 60 kg, then +2.5 kg
lying leg curl 3x12 at 30 kg, then +5 kg"""


def plan(text=WEEK):
    found = parse_plan(text, catalogue(), Unit.KG)

    assert found.plan is not None, [str(problem) for problem in found.problems]
    return found.plan


def slots(of):
    return {slot.exercise: slot for kind in of.blocks[0].kinds for day in kind.days for slot in day.slots}


def swapped(old, new, of=None):
    return if_swapped(of or plan(), 0, ExerciseName(old), ExerciseName(new), catalogue(), Unit.KG)


def possible(answer):
    assert not isinstance(answer, Problem), str(answer)
    return answer


def with_more_sets(of, muscle, count):
    return possible(more_sets(of, 0, muscle, count, catalogue()))


def test_a_swap_is_worked_out_and_not_made():
    before = plan()
    found = possible(swapped("barbell back squat", "leg press", before))

    assert before == plan()
    slot = slots(found.plan)[ExerciseName("leg press")]
    assert (slot.sets, slot.target, slot.load) == (3, Reps(5), FindIt())
    assert slot.scheme == LoadStep(Load(Decimal("2.5"), Unit.KG))
    assert ExerciseName("barbell back squat") not in slots(found.plan)
    assert slots(found.plan)[ExerciseName("leg press")].swaps == ("barbell back squat",)


def test_a_swap_says_which_sets_move_between_muscles():
    found = possible(swapped("dumbbell lateral raise", "dumbbell rear delt fly"))
    changed = {muscle: (before, after) for muscle, before, after in found.muscles_changed}

    assert changed[Muscle.SIDE_DELTS][0] - changed[Muscle.SIDE_DELTS][1] == 3
    assert changed[Muscle.REAR_DELTS][1] - changed[Muscle.REAR_DELTS][0] == 3
    assert Muscle.QUADS not in changed


def test_a_swap_says_which_sessions_come_too_close():
    found = possible(swapped("dumbbell lateral raise", "conventional deadlift"))

    assert [caution.caution.after for caution in found.cautions_added] == ["romanian deadlift"]
    back = possible(swapped("conventional deadlift", "face pull", found.plan))
    assert len(back.cautions_gone) == 1
    assert not back.cautions_added


@pytest.mark.parametrize(
    ("old", "new", "words"),
    [
        pytest.param("plank", "hollow hold", "an exercise of upper emphasis", id="not in the plan"),
        pytest.param("push-up", "wing flap", "an exercise I know", id="unknown"),
        pytest.param("push-up", "plank", "counted like push-up", id="reps for time"),
    ],
)
def test_a_swap_that_cannot_be(old, new, words):
    found = swapped(old, new)

    assert isinstance(found, Problem)
    assert words in found.expected


def test_more_sets_say_what_they_cost():
    found = possible(if_sets_added(plan(), 0, ExerciseName("dumbbell lateral raise"), 2, catalogue()))

    assert next((muscle, after - before) for muscle, before, after in found.muscles_changed) == (
        Muscle.SIDE_DELTS,
        Decimal(2),
    )
    # Two sets of 13.5 reps at 3 s, and two rests of 90 s.
    ((place, before, after),) = found.minutes_changed
    assert (place.day, after - before) == (0, round((2 * 13.5 * 3 + 2 * 90) / 60))
    assert found.off_target({Muscle.SIDE_DELTS: VolumeTarget(Decimal(4), Decimal(7))}) == (Muscle.SIDE_DELTS,)


def test_sets_of_a_lift_that_the_plan_lacks_come_in_where_they_crowd_least():
    triceps = ExerciseName("triceps pushdown")
    found = possible(if_sets_added(plan(), 0, triceps, 2, catalogue()))
    added = slots(found.plan)[triceps]

    assert (added.sets, found.cautions_added) == (2, ())
    assert dict((one, after - before) for one, before, after in found.muscles_changed)[Muscle.TRICEPS] == 2
    # No other day would bring fewer cautions, nor a shorter longest session.
    assert max(found.after.minutes.values()) == max(found.before.minutes.values())


@pytest.mark.parametrize(
    ("lift", "more"),
    [
        pytest.param("triceps pushdown", -2, id="nothing to take off"),
        pytest.param("sky hook", 2, id="an exercise that nobody knows"),
        pytest.param("triceps pushdown", 99, id="more than a slot holds"),
    ],
)
def test_sets_that_cannot_be_added(lift, more):
    assert isinstance(if_sets_added(plan(), 0, ExerciseName(lift), more, catalogue()), Problem)


@pytest.mark.parametrize(
    ("line", "more", "expected"),
    [
        pytest.param("barbell row 3x8 at 40 kg", 2, "barbell row 5x8", id="plain sets"),
        pytest.param(
            "barbell row 3x8 at 40 kg, sets 3 to 5", 1, "4x8 at 40 kg, add a set each week up to 6", id="a wave"
        ),
        pytest.param(
            "barbell row 1x5 at 60 kg, top set then 2 back-offs", 1, "top set then 3 back-offs", id="more back-offs"
        ),
        pytest.param(
            "barbell row 1x5 at 60 kg, top set then 2 back-offs",
            -2,
            "1x5 at 60 kg, +2.5 kg when",
            id="no back-offs left",
        ),
        pytest.param("barbell row 3x8 at 40 kg", -3, None, id="no sets left"),
    ],
)
def test_sets_added_to_a_slot(line, more, expected):
    (slot,) = plan(f"plan: x\n{line}").blocks[0].kinds[0].days[0].slots
    changed = slot_with_sets(slot, more)

    if expected is None:
        assert changed is None
    else:
        assert changed is not None
        assert expected in print_slot(changed, catalogue())


def test_more_sets_for_a_weak_point_go_where_they_crowd_least():
    found = with_more_sets(plan(), Muscle.SIDE_DELTS, 3)

    assert found.description == ("+1 set dumbbell lateral raise (press and pull); +2 sets cable lateral raise (upper)")
    assert slots(found.plan)[ExerciseName("cable lateral raise")].sets == 4
    assert [pair[2] - pair[1] for pair in found.what_if.muscles_changed if pair[0] is Muscle.SIDE_DELTS] == [3]
    assert found.what_if.cautions_added == ()


def test_a_muscle_that_nothing_works_gets_a_new_slot():
    found = with_more_sets(plan(), Muscle.CALVES, 4)

    (placed,) = found.placed
    assert placed.new
    assert Muscle.CALVES in catalogue().exercises[placed.exercise].prime
    assert parse_plan(print_plan(found.plan), catalogue(), Unit.KG).plan == found.plan


def test_sets_come_off_where_they_crowd_most():
    found = with_more_sets(plan(), Muscle.HAMSTRINGS, -4)

    assert sum(placed.sets for placed in found.placed) == -4
    assert len(found.what_if.cautions_added) == 0


@pytest.mark.parametrize(
    ("muscle", "count"),
    [
        pytest.param(Muscle.SIDE_DELTS, 0, id="no sets"),
        pytest.param(Muscle.SIDE_DELTS, 40, id="far too many"),
        pytest.param(Muscle.CALVES, -1, id="none to take away"),
        pytest.param(Muscle.CALVES, 1, id="a new slot for a single set"),
    ],
)
def test_sets_that_have_nowhere_to_go(muscle, count):
    assert isinstance(more_sets(plan(), 0, muscle, count, catalogue()), Problem)


def test_each_week_kind_gets_its_sets():
    text = (
        "plan: x, 8 weeks\nweek A: one\nmon: a\nbarbell curl 2x8 at 20 kg\n"
        "week B: two\ntue: b\nbarbell curl 3x8 at 20 kg"
    )
    found = with_more_sets(plan(text), Muscle.BICEPS, 1)

    assert found.description == "+1 set barbell curl (one, a); +1 set barbell curl (two, b)"


MUSCLES = (Muscle.CHEST, Muscle.HAMSTRINGS, Muscle.SIDE_DELTS, Muscle.GLUTES, Muscle.BICEPS)
CASES = [(muscle, count) for muscle in MUSCLES for count in (-4, -2, -1, 1, 3, 5)]


@pytest.mark.parametrize(("muscle", "count"), [pytest.param(m, n, id=f"{n:+d} {m.value}") for m, n in CASES])
def test_no_way_is_better_than_the_one_found(muscle, count):
    search = Search(plan().blocks[0], 0, 0, muscle, count, catalogue())
    ways = list(search.ways())
    best = search.best()

    if not ways:
        assert best is None
    else:
        assert best in ways
        assert search.cost(best) == min(map(search.cost, ways))
