"""A small table that stands below its lift, its columns parted by blanks or commas, is read row by row."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import said


@pytest.mark.parametrize(
    "text",
    [
        "Squat\nset reps kg\n1 5 100\n2 5 100\n3 4 100",
        "Squat:\nset  reps  kg\n1  5  100\n2  5  100\n3  4  100",
        "Squat\nset,reps,kg\n1,5,100\n2,5,100\n3,4,100",
        "Kniebeuge\nSatz Wdh kg\n1 5 100\n2 5 100\n3 4 100",
    ],
)
def test_numbered_rows_are_a_set_each(text) -> None:
    assert said(text) == "barbell back squat 2×5 at 100 kg, 4 at 100 kg"


def test_counts_of_sets_are_counts_and_the_next_lift_is_none_of_its_rows() -> None:
    text = "Squat\nsets reps weight\n3 5 100\nBench 3x8 80"
    assert said(text) == "barbell back squat 3×5 at 100 kg; barbell bench press 3×8 at 80 kg"


def test_a_row_that_does_not_fit_saves_nothing() -> None:
    assert "barbell" not in said("Squat\nset reps kg\n1 5\n2 5 100")
