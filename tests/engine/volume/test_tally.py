"""Weekly sets for each muscle."""

from __future__ import annotations

from decimal import Decimal

import pytest

from engine.values.effort import Effort
from engine.values.ids import AthleteId, ExerciseName
from engine.values.load import Basis
from engine.values.muscles import Muscle
from engine.values.plan import MaxReps, RepRange, Reps, Seconds, Slot, TrainingDay, VolumeTarget
from engine.values.schemes import Hold
from engine.values.sets import SetKind, Side
from engine.volume.muscle_week import RepBand, Standing
from engine.volume.tally import tally, tally_each, tally_plan, uncounted
from tests.engine.volume.invented import (
    BENCH,
    CURL,
    EXERCISES,
    EXTENSION,
    LATERAL,
    ONE_ARM_ROW,
    OVERHEAD,
    PLANK,
    PULL_UP,
    PULLDOWN,
    ROW,
    SQUAT,
    done,
    kg,
    records,
)


def test_direct_sets_count_one_and_secondary_half():
    week = tally(
        records(
            (0, (done(BENCH, 8, kg("60")),) * 4),
            (2, (done(OVERHEAD, 8, kg("40")),) * 3),
            (4, (done(EXTENSION, 12, kg("20")),) * 3),
        ),
        EXERCISES,
    )

    triceps = week[Muscle.TRICEPS]
    assert (triceps.direct, triceps.fractional, triceps.days, triceps.direct_days) == (3, Decimal("6.5"), 3, 1)
    assert week[Muscle.FRONT_DELTS].fractional == 5


def test_two_prime_movers_each_get_the_whole_set():
    week = tally(records((0, (done(ROW, 8, kg("60")),) * 5)), EXERCISES)

    assert (week[Muscle.LATS].direct, week[Muscle.MID_BACK].direct, week[Muscle.BICEPS].fractional) == (5, 5, 2.5)


@pytest.mark.parametrize(
    ("one", "counts"),
    [
        pytest.param(done(CURL, 10, kg("20")), "1", id="no effort told counts"),
        pytest.param(done(CURL, 10, kg("20"), rir="4"), "1", id="four in reserve counts"),
        pytest.param(done(CURL, 10, kg("20"), rir="4.5"), "0", id="more than four in reserve is not hard"),
        pytest.param(done(CURL, 10, kg("20"), rir="6", failure=True), "1", id="failure is hard whatever was said"),
        pytest.param(done(CURL, 10, kg("20"), kind=SetKind.WARMUP), "0", id="a warm-up never counts"),
        pytest.param(done(CURL, 10, kg("20"), kind=SetKind.DROP), "0", id="a drop belongs to its set"),
        pytest.param(done(CURL, 4, kg("20"), kind=SetKind.REST_PAUSE), "0", id="a rest-pause belongs to its set"),
        pytest.param(done(CURL, 0, kg("60"), missed=True), "0", id="nothing lifted counts nothing"),
        pytest.param(done(CURL, 3, kg("60"), missed=True), "1", id="a miss after some reps was hard"),
        pytest.param(done(CURL, 10, kg("20"), side=Side.LEFT), "0.5", id="one side alone is half a set"),
    ],
)
def test_only_hard_sets_count(one, counts):
    week = tally(records((0, (one,))), EXERCISES, {Muscle.BICEPS: VolumeTarget(Decimal(1), Decimal(2))})

    assert week[Muscle.BICEPS].direct == Decimal(counts)
    assert week[Muscle.BICEPS].days == (Decimal(counts) > 0)


def test_a_warm_up_leaves_no_trace():
    assert tally(records((0, (done(SQUAT, 10, kg("20"), kind=SetKind.WARMUP),))), EXERCISES) == {}


def test_left_and_right_told_apart_make_the_same_week_as_told_once():
    together = tally(records((0, (done(ONE_ARM_ROW, 10, kg("20", Basis.PER_HAND)),) * 3)), EXERCISES)
    sides = (
        done(ONE_ARM_ROW, 10, kg("20", Basis.PER_HAND), side=Side.LEFT),
        done(ONE_ARM_ROW, 10, kg("20", Basis.PER_HAND), side=Side.RIGHT),
    )
    apart = tally(records((0, sides * 3)), EXERCISES)

    assert together == apart
    assert together[Muscle.LATS].tonnage == 1200


def test_the_rep_mix_adds_up_to_the_fractional_sets():
    week = tally(
        records(
            (0, (done(BENCH, 5, kg("80")), done(BENCH, 6, kg("80")), done(BENCH, 13, kg("50")))),
            (1, (done(PLANK, 1, seconds="60"),)),
        ),
        EXERCISES,
    )

    assert week[Muscle.CHEST].reps == {RepBand.HEAVY: 1, RepBand.MODERATE: 1, RepBand.LIGHT: 1}
    assert week[Muscle.TRICEPS].reps == {RepBand.HEAVY: 0.5, RepBand.MODERATE: 0.5, RepBand.LIGHT: 0.5}
    assert week[Muscle.ABS].reps == {RepBand.UNCOUNTED: 1}
    assert week[Muscle.ABS].unweighed == 0


def test_tonnage_has_body_weight_where_it_is_known():
    log = records((0, (done(PULL_UP, 5, kg("10", Basis.BODY)),)), (1, (done(LATERAL, 10, kg("8", Basis.PER_HAND)),)))

    known = tally(log, EXERCISES, body_weight=kg("80"))
    unknown = tally(log, EXERCISES)

    assert (known[Muscle.LATS].tonnage, known[Muscle.LATS].unweighed) == (450, 0)
    assert (unknown[Muscle.LATS].tonnage, unknown[Muscle.LATS].unweighed) == (0, 1)
    assert known[Muscle.SIDE_DELTS].tonnage == 160


def test_easy_work_weighs_though_it_is_not_hard():
    week = tally(records((0, (done(SQUAT, 5, kg("60"), rir="8"),))), EXERCISES)

    assert (week[Muscle.QUADS].direct, week[Muscle.QUADS].days, week[Muscle.QUADS].tonnage) == (0, 0, 300)


@pytest.mark.parametrize(
    ("sets", "standing"),
    [
        pytest.param(9, Standing.BELOW, id="under the range"),
        pytest.param(10, Standing.WITHIN, id="its lower end belongs to it"),
        pytest.param(12, Standing.WITHIN, id="its upper end belongs to it"),
        pytest.param(13, Standing.ABOVE, id="over the range"),
    ],
)
def test_a_week_stands_below_within_or_above_its_target(sets, standing):
    target = VolumeTarget(Decimal(10), Decimal(12))
    week = tally(records((0, (done(CURL, 10, kg("20")),) * sets)), EXERCISES, {Muscle.BICEPS: target})

    assert week[Muscle.BICEPS].standing is standing


def test_a_target_nobody_trained_for_is_below_and_no_target_no_standing():
    week = tally(records((0, (done(CURL, 10),))), EXERCISES, {Muscle.CALVES: VolumeTarget(Decimal(6), Decimal(10))})

    assert week[Muscle.CALVES].standing is Standing.BELOW
    assert week[Muscle.BICEPS].standing is None
    assert list(week) == [Muscle.BICEPS, Muscle.CALVES]


def test_sets_of_an_unknown_exercise_are_named_and_cost_nothing_else():
    log = records((0, (done(CURL, 10),)))
    known = {name: one for name, one in EXERCISES.items() if name != "curl"}

    assert tally(log, known) == {}
    assert uncounted(log, known) == log


def test_several_athletes_are_counted_apart():
    ana, ben, cas = AthleteId(1), AthleteId(2), AthleteId(3)
    log = records((0, (done(PULL_UP, 5), done(CURL, 10), done(PULL_UP, 5))))
    weeks = tally_each(
        [(ana, log[0]), (ben, log[1]), (ben, log[2])],
        EXERCISES,
        {cas: {Muscle.QUADS: VolumeTarget(Decimal(4), Decimal(8))}},
        {ana: kg("70")},
    )

    assert (weeks[ana][Muscle.LATS].tonnage, weeks[ben][Muscle.LATS].tonnage) == (350, 0)
    assert weeks[ana][Muscle.BICEPS].fractional == Decimal("0.5")
    assert weeks[ben][Muscle.BICEPS].fractional == Decimal("1.5")
    assert weeks[cas][Muscle.QUADS].standing is Standing.BELOW


EIGHT = Reps(8)


def _slot(name: str, sets: int, target=EIGHT, rir=None):
    return Slot(ExerciseName(name), sets, target, Hold(), effort=None if rir is None else Effort(Decimal(rir)))


def test_a_planned_week_counts_its_slots_as_the_log_would():
    days = (
        TrainingDay("one", None, (_slot("bench press", 4), _slot("plank", 2, Seconds(Decimal(30))))),
        TrainingDay(
            "two",
            None,
            (_slot("bench press", 2, RepRange(12, 15)), _slot("curl", 3, MaxReps()), _slot("squat", 3, rir=6)),
        ),
    )
    week = tally_plan(days, EXERCISES)

    assert (week[Muscle.CHEST].direct, week[Muscle.CHEST].days) == (6, 2)
    assert week[Muscle.CHEST].reps == {RepBand.MODERATE: 4, RepBand.LIGHT: 2}
    assert week[Muscle.BICEPS].reps == {RepBand.UNCOUNTED: 3}
    assert Muscle.QUADS not in week


def test_a_planned_week_takes_its_sets_from_who_knows_the_week():
    week = tally_plan((TrainingDay("one", None, (_slot("bench press", 4),)),), EXERCISES, sets_of=lambda slot: 2)

    assert week[Muscle.CHEST].direct == 2


def test_pulldown_and_row_share_a_muscle():
    week = tally(records((0, (done(ROW, 8),) * 2 + (done(PULLDOWN, 10),) * 3)), EXERCISES)

    assert (week[Muscle.LATS].direct, week[Muscle.LATS].unweighed, week[Muscle.BICEPS].fractional) == (5, 5, 2.5)
