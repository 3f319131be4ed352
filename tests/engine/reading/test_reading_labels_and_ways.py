"""Lifts told by the label they were given, the bench that one lies on, and ways with the times they took."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import said

TIMES_OF_WAYS = """
farmers 34kg 25m in 17 sec x3 => farmer's walk 3×25 m in 17 s at 34 kg each
farmers 2x34kg 25m in 17s x3 => farmer's walk 3×25 m in 17 s at 34 kg each
farmers 34kg 3x25m in 17s => farmer's walk 3×25 m in 17 s at 34 kg each
farmers 34kg 25m 17s, 18s, 19s => farmer's walk 25 m in 17 s at 34 kg each, 25 m in 18 s at 34 kg each, \
25 m in 19 s at 34 kg each
farmers 3x25m @ 34kg in 17s, 18s, 18s => farmer's walk 25 m in 17 s at 34 kg each, 2×25 m in 18 s at 34 kg each
farmers 34kg 25m, 25m, 25m in 17s => farmer's walk 2×25 m at 34 kg each, 25 m in 17 s at 34 kg each
farmers 34kg 4x35s => farmer's walk 4×35 s at 34 kg each
"""


@pytest.mark.parametrize("line", [pytest.param(line, id=line) for line in TIMES_OF_WAYS.strip().splitlines()])
def test_a_time_is_of_the_way_it_stands_behind(line: str) -> None:
    text, _, meant = line.partition(" => ")

    assert said(text) == meant


@pytest.mark.parametrize("text", ["farmers 34kg 3x25m in 17s, 18s", "carries 34kg 2x25m in 17s"])
def test_times_that_do_not_fit_and_the_lift_of_a_time_are_asked_about(text: str) -> None:
    assert said(text).startswith("ask: ")


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        pytest.param(
            "A: bench\nB: pulldown\nA 70x9 70x8\nB 55x11 55x10",
            "barbell bench press 9 at 70 kg, 8 at 70 kg; lat pulldown 11 at 55 kg, 10 at 55 kg",
            id="labels given above, told below",
        ),
        pytest.param(
            "B1. pulldown B2. hammer curl\nB1 55 11 10\nB2 3x9 14",
            "lat pulldown 11 at 55 kg, 10 at 55 kg; hammer curl 3×9 at 14 kg each",
            id="given in one line",
        ),
        pytest.param(
            "A1 bench 3x9 70\nB1 pulldown 3x11 55\nA1 72.5x6",
            "barbell bench press 3×9 at 70 kg; lat pulldown 3×11 at 55 kg; barbell bench press 6 at 72.5 kg",
            id="a label told again goes on with its lift",
        ),
        pytest.param(
            "A1 bench 3x9 70\nA2 pulldown 3x11 55",
            "barbell bench press 3×9 at 70 kg; lat pulldown 3×11 at 55 kg",
            id="labels beside their numbers are only labels",
        ),
    ],
)
def test_a_label_stands_for_the_lift_it_was_given(text: str, meant: str) -> None:
    assert said(text) == meant


@pytest.mark.parametrize("bench", ["bench at 45°", "bench at 45 degrees", "bench on notch 4"])
def test_how_the_bench_was_set_is_no_lift(bench: str) -> None:
    assert said(f"incline db, {bench}, 22s: 11 9 8") == (
        "incline dumbbell bench press 11 at 22 kg each, 9 at 22 kg each, 8 at 22 kg each"
    )
