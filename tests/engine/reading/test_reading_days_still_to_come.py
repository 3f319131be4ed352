"""Sets of a weekday that comes sooner than it was last, behind sets of today: left out. Common practice, no source."""

from __future__ import annotations

from dataclasses import replace

import pytest

from engine.reading import read
from engine.reading.values import Logged
from tests.engine.reading.saying import KNOWN, NOW, said, situation

THURSDAY = replace(situation(), now=NOW.replace(day=13))
SQUAT = "barbell back squat 3×5 at 100 kg"


@pytest.mark.parametrize(
    "ahead",
    [
        ". bench friday 3x5 80",
        ", bench friday 3x5 80",
        ". friday: bench 3x5 80",
        " and bench on friday 3x5 80",
        ", saturday bench 3x5 80, ohp 3x5 40",
        "\nbench sunday 3x5 80",
        ". bankdrücken freitag 3x5 80",
        ". press banca viernes 3x5 80",
        ". développé couché vendredi 3x5 80",
        ". panca venerdì 3x5 80",
        ". bankdrukken vrijdag 3x5 80",
        ". wyciskanie leżąc w piątek 3x5 80",
        ". supino na sexta 3x5 80",
        ". жим лежа в пятницу 3x5 80",
        ". bänkpress på fredag 3x5 80",
    ],
)
def test_sets_of_a_day_to_come_behind_those_of_today_are_left_out_and_said(ahead):
    outcome = read(f"squat 3x5 100{ahead}", THURSDAY, KNOWN)

    assert said(f"squat 3x5 100{ahead}", THURSDAY) == SQUAT
    assert isinstance(outcome, Logged)
    assert "80" in outcome.unread[0].text


@pytest.mark.parametrize(
    "past",
    [", bench wednesday 3x5 80", ", last friday bench 3x5 80", ". friday's bench 3x5 80", ". did bench friday 3x5 80"],
)
def test_sets_of_a_day_that_is_over_are_of_that_day(past):
    outcome = read(f"squat 3x5 100{past}", THURSDAY, KNOWN)

    assert isinstance(outcome, Logged)
    assert len(outcome.days) == len(outcome.sets) == 6
