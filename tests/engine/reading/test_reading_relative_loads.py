"""Loads told against the last time, in every language."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import said, situation

LAST = situation(last={"barbell bench press": "70", "pull-up": "10"})


@pytest.mark.parametrize(
    "text",
    [
        "bench last weight + 2.5 5 5 5",
        "bench 2.5 more than last time 3x5",
        "bench 3x5, up 2.5 from last time",
        "bench 3x5 last time plus 2.5",
        "bench 2.5kg heavier than last week, 3x5",
        "bankdrücken 2,5 mehr als letztes mal 3x5",
        "press banca 2,5 más que la última vez 3x5",
        "développé couché 2,5 de plus que la dernière fois 3x5",
        "panca 2,5 in più dell'ultima volta 3x5",
        "supino 2,5 a mais que da última vez 3x5",
        "bankdrukken 2,5 meer dan vorige keer 3x5",
        "bänkpress 2,5 mer än förra gången 3x5",
        "wyciskanie 2,5 więcej niż ostatnio 3x5",
        "жим лежа на 2,5 больше чем в прошлый раз 3x5",
        "bench 2.5 heavier: 5 5 5",
        "bench 2,5 more: 5 5 5",
        "bench 2.5 up, 5 5 5",
        "bench went up 2.5, 5 5 5",
        "bench upped it by 2.5kg: 5 5 5",
    ],
)
def test_more_than_last_time(text: str) -> None:
    assert said(text, LAST) == "barbell bench press 3×5 at 72.5 kg"


@pytest.mark.parametrize(
    "text",
    [
        "bench 3x5 at 5 less than last time",
        "bench 5 down from last time, 3x5",
        "bench last weight - 5, 3x5",
        "bench 5 kg less, 5 5 5",
        "bench went down 5: 5 5 5",
        "bankdrücken 5 kg weniger: 5 5 5",
    ],
)
def test_less_than_last_time(text: str) -> None:
    assert said(text, LAST) == "barbell bench press 3×5 at 65 kg"


def test_a_change_counts_from_the_last_time_and_not_from_the_plan() -> None:
    context = situation(last={"barbell bench press": "70"}, plan=[("barbell bench press", 3, 5, "75")])

    assert said("bench 2.5 more than last time 3x5", context) == "barbell bench press 3×5 at 72.5 kg"


@pytest.mark.parametrize(
    "text",
    [
        pytest.param("squat 2.5 more than last time 3x5", id="no last time is known"),
        pytest.param("pull ups 2 more than last time, 10 8", id="reps or weight"),
    ],
)
def test_a_change_that_cannot_be_told_is_asked(text: str) -> None:
    assert said(text, LAST).startswith("ask: ")


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        pytest.param("bench 70 6 6 6, one rep more than last time", "barbell bench press 3×6 at 70 kg", id="a remark"),
        pytest.param("bench 3x5 75, last time 70", "barbell bench press 3×5 at 75 kg", id="what was before"),
        pytest.param("last time bench 3x5 70", "no sets", id="a story"),
        pytest.param(
            "bench same weight as last time, 6 6 5", "barbell bench press 2×6 at 70 kg, 5 at 70 kg", id="same"
        ),
    ],
)
def test_the_last_time_without_a_change(text: str, meant: str) -> None:
    assert said(text, LAST) == meant
