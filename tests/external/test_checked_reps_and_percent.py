"""Repetitions against the share of the maximum: the handbook table."""

from __future__ import annotations

from decimal import Decimal

import pytest

from engine.loading.exercises import loadable_for
from engine.strength.one_rep_max import multiples
from engine.strength.rep_table import reps_at, share_of_maximum
from engine.values.load import Unit
from tests.engine.volume.invented import BENCH, kg
from tests.external.sources import from_memory, published, row

CHART = published("NSCA", None, "training load chart, Essentials of Strength Training and Conditioning")
BOOK = from_memory("NSCA", None, "Essentials of Strength Training and Conditioning, book table")
BARBELL = loadable_for(BENCH, None, Unit.KG)


@pytest.mark.parametrize(
    ("source", "reps", "percent"),
    [
        row("PCT-01", CHART, 1, 100),
        row("PCT-02", CHART, 2, 95),
        row("PCT-03", CHART, 3, 93),
        row("PCT-04", CHART, 4, 90),
        row("PCT-05", CHART, 5, 87),
        row("PCT-06", CHART, 6, 85),
        row("PCT-07", CHART, 7, 83),
        row("PCT-08", CHART, 8, 80),
        row("PCT-09", CHART, 9, 77),
        row("PCT-10", CHART, 10, 75),
    ],
)
def test_the_table(source, reps, percent):
    assert share_of_maximum(reps) == Decimal(percent) / 100, source
    assert reps_at(Decimal(percent) / 100) == reps


@pytest.mark.parametrize(
    ("source", "reps"),
    [row("PCT-11", CHART, 12), row("PCT-12", BOOK, 11), row("PCT-13", BOOK, 12), row("PCT-14", BOOK, 15)],
)
def test_where_the_sources_disagree_the_table_says_nothing(source, reps):
    assert share_of_maximum(reps) is None, source


@pytest.mark.parametrize(
    ("source", "reps", "percent"),
    [row("PCT-11", CHART, 12, 70), row("PCT-12", BOOK, 11, 70), row("PCT-14", BOOK, 15, 65)],
)
def test_past_ten_the_mean_of_seven_stays_near_the_tables(source, reps, percent):
    """Near: the tables differ from each other by three points."""
    assert abs(100 / multiples(Decimal(reps)).mean - percent) <= 5, source


@pytest.mark.parametrize(
    ("source", "maximum", "reps", "raw", "loadable"),
    [row("PCT-15", CHART, "100", 8, "80.0", "80"), row("PCT-16", CHART, "140", 5, "121.8", "120")],
)
def test_a_load_from_the_table(source, maximum, reps, raw, loadable):
    share = share_of_maximum(reps)

    assert share is not None
    assert Decimal(maximum) * share == Decimal(raw), source
    assert BARBELL.at_most(kg(raw)) == kg(loadable)
