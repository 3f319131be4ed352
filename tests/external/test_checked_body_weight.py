"""Shares of body weight, and what body-weight work weighs, against published force-plate measurements."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal

import pytest

from engine.catalogue.catalogue import catalogue
from engine.strength.mass import resistance, volume_load
from engine.strength.rep_curve import log_multiple, reps_for
from engine.values.ids import ExerciseName
from engine.values.load import Basis
from tests.engine.volume.invented import PULL_UP, PUSH_UP, done, kg
from tests.external.sources import PRACTICE, from_memory, published, row

MIER = published("Mier et al.", 2014, "Int J Exerc Sci 7(2):161-168")
SUPRAK = from_memory("Suprak et al.", 2011, "J Strength Cond Res 25(2):497-503")
EBBEN = from_memory("Ebben et al.", 2011, "J Strength Cond Res 25(10):2891-2894")
VANDERBURGH = published("Vanderburgh & Edmonds", 1997, "J Strength Cond Res 11(4)")
DE_LEVA = from_memory("de Leva", 1996, "J Biomech 29:1223-1230, segment masses")
HUNDREDTH = Decimal("0.01")
BODY = kg("0", Basis.BODY)


@pytest.mark.parametrize(
    ("source", "share", "body", "kilograms"),
    [
        row("BW-01 up", MIER, "0.670", "80", "53.60"),
        row("BW-01 down", MIER, "0.746", "80", "59.68"),
        row("BW-02 up", MIER, "0.651", "60", "39.06"),
        row("BW-02 down", MIER, "0.703", "60", "42.18"),
        row("BW-03 up", MIER, "0.525", "80", "42.00"),
        row("BW-03 down", MIER, "0.601", "80", "48.08"),
        row("BW-04 up", MIER, "0.515", "60", "30.90"),
        row("BW-04 down", MIER, "0.566", "60", "33.96"),
        row("BW-05 up", SUPRAK, "0.6916", "80", "55.33"),
        row("BW-05 down", SUPRAK, "0.7504", "80", "60.03"),
        row("BW-06 up", SUPRAK, "0.5356", "80", "42.85"),
        row("BW-06 down", SUPRAK, "0.6180", "80", "49.44"),
        row("BW-07 regular", EBBEN, "0.64", "80", "51.2"),
        row("BW-07 knee", EBBEN, "0.49", "80", "39.2"),
        row("BW-08 lower", EBBEN, "0.70", "80", "56.0"),
        row("BW-08 higher", EBBEN, "0.74", "80", "59.2"),
        row("BW-09 lower", EBBEN, "0.55", "80", "44.0"),
        row("BW-09 higher", EBBEN, "0.41", "80", "32.8"),
    ],
)
def test_a_share_of_body_weight_in_kilograms(source, share, body, kilograms):
    found = resistance(BODY, replace(PUSH_UP, body_share=Decimal(share)), kg(body))

    assert found is not None
    assert abs(found - Decimal(kilograms)) <= HUNDREDTH, source


@pytest.mark.parametrize(
    ("source", "name", "low", "high"),
    [
        row("push-up, men's top position within one SD", MIER, "push-up", "0.632", "0.708"),
        row("push-up, women's top position within one SD", MIER, "push-up", "0.620", "0.682"),
        row("push-up", EBBEN, "push-up", "0.60", "0.70"),
        row("BW-11", VANDERBURGH, "pull-up", "1", "1"),
        row("BW-11 chin-up", VANDERBURGH, "chin-up", "1", "1"),
        row("squat less shanks and feet", DE_LEVA, "bodyweight squat", "0.87", "0.90"),
    ],
)
def test_the_catalogues_shares_lie_where_they_were_measured(source, name, low, high):
    found = catalogue().get(ExerciseName(name))

    assert found is not None
    assert Decimal(low) <= found.body_share <= Decimal(high), source


@pytest.mark.parametrize(
    ("source", "told", "kilograms"),
    [
        row("BW-11 added", VANDERBURGH, "10", "90"),
        row("BW-11 none", VANDERBURGH, "0", "80"),
        row("BW-13", PRACTICE, "-25", "55"),
    ],
)
def test_a_pull_up_lifts_the_body_and_what_hangs_on_it(source, told, kilograms):
    assert resistance(kg(told, Basis.BODY), PULL_UP, kg("80")) == Decimal(kilograms), source


@pytest.mark.parametrize(("source", "kilograms"), [row("TRD-15", PRACTICE, "450")])
def test_volume_load_with_a_belt(source, kilograms):
    assert volume_load(done(PULL_UP, 5, kg("10", Basis.BODY)), PULL_UP, kg("80")) == Decimal(kilograms), source


@pytest.mark.parametrize(("source", "exponent", "share"), [row("BW-12", VANDERBURGH, "-7.91", "0.529")])
def test_ten_percent_more_mass_costs_about_half_the_pull_ups(source, exponent, share):
    """Measured on pull-ups with added mass; our equations, from bench presses, find nearly the same loss."""
    assert abs(1 - Decimal("1.1") ** Decimal(exponent) - Decimal(share)) < Decimal("0.001"), source
    ten = log_multiple(10)[0]
    ours = reps_for(ten - float(Decimal("1.1").ln()))
    assert abs(ours - 10 * (1 - float(share))) <= 1.75
