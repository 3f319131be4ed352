"""Spacing: the rule between sessions against the published time courses it rests on."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from decimal import Decimal
from zoneinfo import ZoneInfo

import pytest

from engine.volume.session_work import Session, Work, sessions_done, work_planned
from engine.volume.spacing import Ground, cautions, cautions_for, hours_between
from tests.engine.volume.invented import EXERCISES, EXTENSION, PUSHDOWN, SQUAT, done, kg, records
from tests.engine.volume.test_spacing import slot
from tests.external.sources import PRACTICE, published, row

NOSAKA = published("Nosaka & Sakamoto", 2001, "Med Sci Sports Exerc 33(1):22-29")
MORAN = published("Morán-Navarro et al.", 2017, "Eur J Appl Physiol 117:2387")
BADILLO = published("González-Badillo et al.", 2016, "Int J Sports Med 37:295")
PAREJA = published("Pareja-Blanco et al.", 2020, "J Strength Cond Res 34:2867")
MAEO = published("Maeo et al.", 2021, "Med Sci Sports Exerc 53:825, part 2")
BARONI = published("Baroni et al.", 2017, "J Strength Cond Res 31(8):2223")
HOUSE = published("House et al.", None, "abstract: trained men, 2 sets x 11 exercises at RPE 9 to 9.5, four days on")
TZDATA = published("IANA", None, "time zone database")

START = datetime(2026, 3, 2, 9, tzinfo=UTC)


def _last(lift, rir=None, failure=False, sets=3):
    return sessions_done(records((0, (done(lift, 10, kg("30"), rir=rir, failure=failure),) * sets)), UTC)


def _next(hours, lift=PUSHDOWN):
    ended = _last(EXTENSION)[0].at
    return Session("next", ended + timedelta(hours=hours), work_planned((slot(lift),)))


@pytest.mark.parametrize(
    ("source", "lift", "rir", "failure", "hours", "cautioned"),
    [
        row("LEN-10", NOSAKA, EXTENSION, None, True, 30, True),
        row("LEN-10 told as nothing in reserve", NOSAKA, EXTENSION, "0", False, 30, True),
        row("LEN-11", PRACTICE, EXTENSION, None, True, 50, False),
        row("LEN-12", BADILLO, EXTENSION, "4", False, 30, False),
        row("LEN-07 the day after", MORAN, PUSHDOWN, None, True, 24, True),
        row("LEN-07 short of failure", MORAN, PUSHDOWN, "5", False, 24, False),
        row("LEN-09 two days after", PAREJA, EXTENSION, None, True, 47, True),
        row("another muscle", PRACTICE, SQUAT, None, True, 24, False),
    ],
)
def test_the_rule_against_its_published_grounds(source, lift, rir, failure, hours, cautioned):
    assert bool(cautions_for(_next(hours), _last(lift, rir, failure), EXERCISES)) is cautioned, source


@pytest.mark.parametrize(("source", "hours"), [row("LEN-01", NOSAKA, 40)])
def test_work_at_long_length_outlasts_work_at_short_length(source, hours):
    long, short = (cautions_for(_next(hours), _last(lift, failure=True), EXERCISES) for lift in (EXTENSION, PUSHDOWN))

    assert long, source
    assert not short


@pytest.mark.parametrize(("source", "hours"), [row("part 2", MAEO, 30), row("LEN-03 at 72 h", BARONI, 70)])
def test_a_new_exercise_at_long_length_weighs_more_than_a_familiar_one(source, hours):
    new, familiar = (
        (Session("last", START, (Work(EXTENSION.name, Decimal(3), hours > 48, strange),)), _after(hours))
        for strange in (True, False)
    )

    assert cautions(new, EXERCISES), source
    assert not cautions(familiar, EXERCISES)


def _after(hours):
    return Session("next", START + timedelta(hours=hours), (Work(PUSHDOWN.name, Decimal(3)),))


@pytest.mark.parametrize(
    ("source", "rir", "sets"), [row("LEN-13", HOUSE, "0.5", 2), row("LEN-13 RPE 9", HOUSE, "1", 2)]
)
def test_hard_days_running_short_of_failure_are_not_cautioned_against(source, rir, sets):
    days = sessions_done(records(*((day, (done(EXTENSION, 8, kg("30"), rir=rir),) * sets) for day in range(4))), UTC)

    assert cautions(days, EXERCISES) == (), source


@pytest.mark.parametrize(
    ("source", "first", "second", "hours", "cautioned"),
    [
        row("LEN-14", TZDATA, "2025-03-08T09:00", "2025-03-10T09:00", 47.0, True),
        row("LEN-15", TZDATA, "2025-11-01T09:00", "2025-11-03T09:00", 49.0, False),
    ],
)
def test_hours_elapsed_across_a_change_of_clocks(source, first, second, hours, cautioned):
    zone = ZoneInfo("America/New_York")
    one, other = (datetime.fromisoformat(when).replace(tzinfo=zone) for when in (first, second))
    pair = (
        Session("a", one, (Work(EXTENSION.name, Decimal(3), failure=True),)),
        Session("b", other, (Work(PUSHDOWN.name, Decimal(3)),)),
    )

    assert hours_between(one, other) == hours, source
    assert bool(cautions(pair, EXERCISES)) is cautioned


@pytest.mark.parametrize("source", [row("ranking", PRACTICE)])
def test_failure_at_long_length_weighs_most(source):
    assert next(iter(Ground)) is Ground.LONG_FAILURE, source
