"""Weekly volume and volume load against published counting and trade arithmetic."""

from __future__ import annotations

from decimal import Decimal

import pytest

from engine.strength.mass import volume_load
from engine.strength.set_estimate import SetEstimate, estimate
from engine.values.load import Basis
from engine.values.muscles import Muscle
from engine.values.plan import VolumeTarget
from engine.values.sets import SetKind
from engine.volume.muscle_week import RepBand, Standing
from engine.volume.tally import SECONDARY, rep_band, tally
from tests.engine.volume.invented import (
    BENCH,
    CURL,
    DUMBBELL_PRESS,
    EXERCISES,
    EXTENSION,
    LEG_EXTENSION,
    LEG_PRESS,
    ONE_ARM_ROW,
    OVERHEAD,
    PULL_UP,
    PULLDOWN,
    ROW,
    SQUAT,
    done,
    kg,
    records,
)
from tests.external.sources import PRACTICE, published, row

PELLAND = published("Pelland et al.", 2024, "preprint, 67 studies, n = 2058")
BAZ_VALLE = published("Baz-Valle et al.", 2022, "J Hum Kinet 81:199-210")
SCHOENFELD = published("Schoenfeld, Ogborn & Krieger", 2017, "J Sports Sci 35:1073-1082")
IVERSEN = published("Iversen et al.", 2021, "Sports Med 51:2079")


@pytest.mark.parametrize(("source", "direct", "indirect"), [row("VOL-06", PELLAND, "1", "0.5")])
def test_what_a_set_counts(source, direct, indirect):
    week = tally(records((0, (done(BENCH, 8, kg("60")),))), EXERCISES)

    assert week[Muscle.CHEST].fractional == Decimal(direct), source
    assert week[Muscle.TRICEPS].fractional == Decimal(indirect) == SECONDARY


@pytest.mark.parametrize(
    ("source", "sets", "muscle", "direct", "fractional"),
    [
        row("VOL-07", PELLAND, ((BENCH, 4), (OVERHEAD, 3), (EXTENSION, 3)), Muscle.TRICEPS, "3", "6.5"),
        row("VOL-08", PELLAND, ((ROW, 5), (PULLDOWN, 4), (CURL, 3)), Muscle.BICEPS, "3", "7.5"),
        row("VOL-09", PELLAND, ((SQUAT, 4), (LEG_PRESS, 3), (LEG_EXTENSION, 3)), Muscle.QUADS, "10", "10"),
    ],
)
def test_a_week_counted_by_hand(source, sets, muscle, direct, fractional):
    log = records(*((2 * day, (done(lift, 8, kg("40")),) * number) for day, (lift, number) in enumerate(sets)))
    week = tally(log, EXERCISES)

    assert week[muscle].direct == Decimal(direct), source
    assert week[muscle].fractional == Decimal(fractional), source


@pytest.mark.parametrize(("source", "kind"), [row("VOL-10", BAZ_VALLE, SetKind.WARMUP)])
def test_warm_ups_count_nothing(source, kind):
    with_warm_ups = tally(
        records((0, (done(CURL, 8, kg("10"), kind=kind),) * 5 + (done(CURL, 8, kg("20")),))), EXERCISES
    )

    assert with_warm_ups == tally(records((0, (done(CURL, 8, kg("20")),))), EXERCISES), source


@pytest.mark.parametrize(
    ("source", "sets", "low", "high", "standing"),
    [
        row("VOL-05 low", BAZ_VALLE, 11, "12", "20", Standing.BELOW),
        row("VOL-05 advised", BAZ_VALLE, 12, "12", "20", Standing.WITHIN),
        row("VOL-05 advised, upper end", BAZ_VALLE, 20, "12", "20", Standing.WITHIN),
        row("VOL-05 high", BAZ_VALLE, 21, "12", "20", Standing.ABOVE),
        row("VOL-03 fewest", SCHOENFELD, 4, "5", "9", Standing.BELOW),
        row("VOL-03 middle", SCHOENFELD, 5, "5", "9", Standing.WITHIN),
        row("VOL-03 most", SCHOENFELD, 10, "5", "9", Standing.ABOVE),
        row("VOL-13", IVERSEN, 4, "4", "20", Standing.WITHIN),
        row("VOL-13 too few", IVERSEN, 3, "4", "20", Standing.BELOW),
    ],
)
def test_published_ranges_serve_as_targets(source, sets, low, high, standing):
    target = {Muscle.BICEPS: VolumeTarget(Decimal(low), Decimal(high))}
    week = tally(records((0, (done(CURL, 10, kg("20")),) * sets)), EXERCISES, target)

    assert week[Muscle.BICEPS].standing is standing, source


@pytest.mark.parametrize(
    ("source", "one", "lift", "kilograms"),
    [
        row("TRD-01 three sets", PRACTICE, (done(BENCH, 5, kg("100")),) * 3, BENCH, "1500"),
        row("TRD-01 four sets", PRACTICE, (done(BENCH, 5, kg("100")),) * 4, BENCH, "2000"),
        row("TRD-01 five sets", PRACTICE, (done(BENCH, 5, kg("100")),) * 5, BENCH, "2500"),
        row("TRD-01 heavier", PRACTICE, (done(BENCH, 5, kg("102.5")),) * 3, BENCH, "1537.5"),
        row("TRD-14", PRACTICE, (done(ONE_ARM_ROW, 10, kg("20", Basis.PER_HAND)),) * 3, ONE_ARM_ROW, "1200"),
        row("TRD-15", PRACTICE, (done(PULL_UP, 5, kg("10", Basis.BODY)),), PULL_UP, "450"),
        row("EQP-31", PRACTICE, (done(DUMBBELL_PRESS, 10, kg("30", Basis.PER_HAND)),), DUMBBELL_PRESS, "600"),
    ],
)
def test_volume_load(source, one, lift, kilograms):
    loads = [volume_load(performed, lift, kg("80")) for performed in one]

    assert sum(load for load in loads if load is not None) == Decimal(kilograms), source


@pytest.mark.parametrize(("source", "sets"), [row("TRD-14", PRACTICE, 3)])
def test_sets_told_for_both_sides_count_once(source, sets):
    week = tally(records((0, (done(ONE_ARM_ROW, 10, kg("20", Basis.PER_HAND)),) * sets)), EXERCISES)

    assert week[Muscle.LATS].direct == sets, source


@pytest.mark.parametrize(("source", "amount"), [row("EQP-31", PRACTICE, "30")])
def test_a_pairs_maximum_is_told_per_hand(source, amount):
    found = estimate(done(DUMBBELL_PRESS, 1, kg(amount, Basis.PER_HAND)), DUMBBELL_PRESS)

    assert isinstance(found, SetEstimate)
    assert found.load == kg(amount, Basis.PER_HAND), source


@pytest.mark.parametrize(
    ("source", "reps", "band"),
    [
        row("bands", PRACTICE, 5, RepBand.HEAVY),
        row("bands", PRACTICE, 6, RepBand.MODERATE),
        row("bands", PRACTICE, 12, RepBand.MODERATE),
        row("bands", PRACTICE, 15, RepBand.LIGHT),
        row("bands", PRACTICE, 25, RepBand.VERY_LIGHT),
    ],
)
def test_rep_bands(source, reps, band):
    assert rep_band(reps) is band, source
