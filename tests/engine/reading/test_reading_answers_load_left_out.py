"""The load of sets that were asked about, since the number told for it could be none."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import standing_after

ASKED = "lat pulldown 3x11 5250"


@pytest.mark.parametrize(
    "answer",
    ["52.5", "i meant 52.5", "52.5 sorry fat fingers", "52.5 fat thumbs", "fat thumbs, 52.5", "52.5kg", "oops 52.5",
     "no, 52.5", "52,5", "ich meinte 52,5", "52.5 dicke finger", "perdón, 52.5", "52.5 vette duimen"],
)  # fmt: skip
def test_the_load_told_is_the_one_that_was_left_out(answer: str) -> None:
    assert standing_after(f"{ASKED} | {answer}") == "lat pulldown 3×11 at 52.5 kg"


@pytest.mark.parametrize("answer", ["my mate did 52.5", "52.5 or 55", "maybe 52.5", "3x10", "10 reps", "525", "rpe 8"])
def test_a_number_that_is_of_something_else_leaves_it_open(answer: str) -> None:
    assert standing_after(f"{ASKED} | {answer}") == ""


def test_the_number_of_a_choice_is_no_load() -> None:
    assert standing_after(f"{ASKED} | 1") == "lat pulldown 3×11"
