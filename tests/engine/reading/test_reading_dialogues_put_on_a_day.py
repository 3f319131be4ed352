"""Sets of a lift put on another day, behind verbs that put something somewhere."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import standing_after

STANDING = "squat 3x5 100 | chins 8 7 6"
HERE = "barbell back squat 3×5 at 100 kg; chin-up 8, 7, 6"
THERE = f"{HERE} on 2025-03-10"


@pytest.mark.parametrize(
    "said",
    ["put the chins on monday", "stick the chins under monday", "put chins on monday", "log the chins on monday",
     "book the chins under monday", "set the chins to monday", "move the chins to monday",
     "verschiebe die klimmzüge im untergriff auf montag", "trag die chins am montag ein", "leg die chins auf montag",
     "mueve las chins al lunes", "pon las chins el lunes", "mets les chins au lundi", "sposta le chins a lunedì",
     "metti le chins a lunedì", "zet de chins op maandag", "przenieś chins na poniedziałek",
     "wpisz chins na poniedziałek", "перенеси chins на понедельник", "запиши chins на понедельник",
     "flytta chins till måndag", "lägg chins på måndag"],
)  # fmt: skip
def test_a_lift_put_on_a_day_is_moved_there(said: str) -> None:
    assert standing_after(f"{STANDING} | {said}") == THERE


def test_yesterday_in_portuguese_is_a_day_to_move_to() -> None:
    assert standing_after(f"{STANDING} | põe as chins ontem") == f"{HERE} on 2025-03-13"


@pytest.mark.parametrize(
    "said", ["put the chins on the plan", "put deadlift on monday", "put 10kg on the chins", "set chins for tomorrow"]
)
def test_what_is_put_elsewhere_moves_nothing(said: str) -> None:
    assert standing_after(f"{STANDING} | {said}") == HERE
