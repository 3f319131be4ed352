"""Whole sets that are done, with a plan right behind them and no sign between."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import said


@pytest.mark.parametrize(
    "text",
    [
        "squat 3x5 100 will do bench tomorrow",
        "squat 3x5 100 gonna bench tomorrow",
        "squat 3x5 100 bench tomorrow",
        "squat 3x5 100 need to do rows next week",
        "squat 3x5 100 deads next week",
        "squat 3x5 100 skipped rows",
        "squat 3x5 100 didn't do bench",
        "squat 3x5 100 no time for rows",
        "kniebeuge 3x5 100 bankdrücken morgen",
        "sentadilla 3x5 100 press banca mañana",
        "squat 3x5 100 développé couché demain",
        "squat 3x5 100 panca domani",
        "squat 3x5 100 bankdrukken morgen",
        "przysiad 3x5 100 martwy ciąg jutro",
        "agachamento 3x5 100 supino amanhã",
        "присед 3х5 100 жим лежа завтра",
        "knäböj 3x5 100 bänkpress imorgon",
    ],
)
def test_another_lift_that_is_planned_or_left_out_leaves_the_sets(text: str) -> None:
    assert said(text) == "barbell back squat 3×5 at 100 kg"


@pytest.mark.parametrize(
    "text",
    [
        "squat 3x5 100 tomorrow bench",
        "squat 3x5 100 next time deads",
        "squat 3x5 100 and bench tomorrow",
        "squat 3x5 100 tomorrow legs",
        "kniebeuge 3x5 100 morgen bankdrücken",
        "squat 3x5 100 demain développé couché",
        "squat 3x5 100, then 3x5 105 tomorrow",
    ],
)
def test_a_time_that_may_be_that_of_the_sets_is_asked_about(text: str) -> None:
    assert said(text) == "ask: barbell back squat 3×5 at 100 kg"


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("squat 100x5 today, 105x5 tomorrow", "barbell back squat 5 at 100 kg"),
        ("squat 100x5 tomorrow 105x5", "barbell back squat 5 at 100 kg"),
        ("squat 100x5, 105x5 tomorrow", "ask: barbell back squat 5 at 100 kg"),
        ("squat 100x5 and 105x5 tomorrow", "no sets"),
        ("squat 3x5 100 tomorrow", "no sets"),
        ("3x5 100 squat tomorrow", "no sets"),
        ("squat 3x5 100 tomorrow with a belt", "no sets"),
    ],
)
def test_a_heavier_set_of_tomorrow_leaves_that_of_today(text: str, meant: str) -> None:
    assert said(text) == meant
