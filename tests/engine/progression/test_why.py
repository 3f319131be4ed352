"""The five lines of why."""

from __future__ import annotations

from engine.progression import prescribe
from engine.progression.explain import why
from engine.values.plan import FindIt, MaxReps
from engine.values.schemes import DoubleProgression, LoadStep, RepGoal
from tests.engine.progression.logged import BARBELL, BODY, MONDAY, WEEK, after, between, kg, slot, weekly


def test_why_tells_the_ask_the_reason_the_sets_and_the_next_step() -> None:
    planned = slot(DoubleProgression(kg("2.5")), target=between(8, 12), load="40")
    sessions = weekly("40: 10 10 9", "40: 12; 42.5: 12 12")
    asked = prescribe(planned, sessions, today=MONDAY + 2 * WEEK, loadable=BARBELL)

    assert why(asked, [record for exposure in sessions for record in exposure.sets]) == (
        "barbell row: 3×8-12 at 42.5 kg",
        "All 3 sets of 12 made on Mon 9 Mar, so the load goes up 2.5 kg. Back to 8 reps.",
        "Mon 9 Mar: 12 at 40 kg; 12, 12 at 42.5 kg",
        "Make 3×12 to go to 45 kg.",
    )


def test_why_before_the_first_session() -> None:
    asked = after(slot(LoadStep(kg("2.5")), load=FindIt()))

    assert why(asked, ()) == (
        "barbell row: 3×5",
        "No load is planned: work up to one that fits the reps, and the log decides from then on.",
        "Make 3×5, and the load goes up 2.5 kg from there.",
    )


def test_why_of_body_weight_names_no_load() -> None:
    planned = slot(RepGoal(), target=MaxReps(), load=None)
    sessions = weekly("body: 12 10 9")
    asked = prescribe(planned, sessions, today=MONDAY + WEEK, loadable=BODY)

    lines = why(asked, sessions[0].sets)

    assert lines[0] == "barbell row: 13, 11, 10"
    assert lines[2] == "Mon 2 Mar: 12, 10, 9"


def test_why_is_never_longer_than_five_lines() -> None:
    planned = slot(LoadStep(kg("2.5")))
    sessions = weekly("100: 5 5 5", "102.5: 5 5 4", "102.5: 5 4 4", "102.5: 5 4 3")
    asked = prescribe(planned, sessions, today=MONDAY + 40 * WEEK, loadable=BARBELL)

    assert len(why(asked, [record for exposure in sessions for record in exposure.sets])) <= 5
