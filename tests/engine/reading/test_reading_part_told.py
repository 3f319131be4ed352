"""A part of what was planned, sets by the clock, loads between reps, steps from the last time: each told in words."""

from __future__ import annotations

import pytest

from engine.reading import read
from engine.reading.values import Logged
from tests.engine.reading.saying import KNOWN, said, situation

SQUAT = "barbell back squat"
LAST = situation(last={SQUAT: "95"}, doing=SQUAT)


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("squat 2 of the 3 sets, 6 reps 90", f"{SQUAT} 2×6 at 90 kg"),
        ("4 of 5 sets done, 6 each at 90", f"{SQUAT} 4×6 at 90 kg"),
        ("Kniebeuge 2 von 3 Sätzen, je 6 mit 90", f"{SQUAT} 2×6 at 90 kg"),
        ("squat 90x6, 2 out of 3 sets", f"{SQUAT} 2×6 at 90 kg"),
        ("squat 3x6 90, did 2 of 3 sets", "ask: "),
    ],
)
def test_so_many_of_the_sets_were_done(text: str, meant: str) -> None:
    assert said(text, LAST) == meant


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("every 75s 6x2 90", f"{SQUAT} 6×2 at 90 kg"),
        ("squat 6x2 90 every 75s", f"{SQUAT} 6×2 at 90 kg"),
        ("squat every 3 minutes 4x3 90", f"{SQUAT} 4×3 at 90 kg"),
        ("alle 75s Kniebeuge 6x2 90", f"{SQUAT} 6×2 at 90 kg"),
        ("squat every 3 min 3 @ 90", f"ask: {SQUAT} 3 at 90 kg"),
    ],
)
def test_a_time_from_set_to_set_is_no_set(text: str, meant: str) -> None:
    assert said(text, LAST) == meant


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("dips 12 11, with 15kg 7 6", "dip 12, 11, 7 at +15 kg, 6 at +15 kg"),
        ("dips 12 11, 15kg 7 6", "dip 12, 11, 7 at +15 kg, 6 at +15 kg"),
        ("Klimmzüge ohne Gewicht 12 11, mit 15 kg 7 6", "pull-up 12, 11, 7 at +15 kg, 6 at +15 kg"),
        ("подтягивания без веса 12 11, с весом 15 кг 7 6", "pull-up 12, 11, 7 at +15 kg, 6 at +15 kg"),
        ("dips 12 11 15kg 7 6", "ask: dip 12, 11, 7 at +15 kg, 6 at +15 kg"),
        ("dips 12 11 with 15kg 7 6", "ask: dip 12 at +15 kg, 11 at +15 kg, 7, 6"),
    ],
)
def test_a_load_between_reps_of_the_body_is_that_of_the_reps_it_heads(text: str, meant: str) -> None:
    assert said(text) == meant


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("squat up 2.5 today. 6 6 6", f"{SQUAT} 3×6 at 97.5 kg"),
        ("squat up 5kg, 6 6 6", f"{SQUAT} 3×6 at 100 kg"),
        ("squat down 5: 6 6 6", f"{SQUAT} 3×6 at 90 kg"),
        ("squat up to 105, 6 6 6", f"{SQUAT} 3×6 at 105 kg"),
    ],
)
def test_a_step_behind_the_name_counts_from_the_last_time(text: str, meant: str) -> None:
    assert said(text, LAST) == meant


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("leg press 150x10 down to 120x9 then 90x8",
         "leg press 10 at 150 kg, 9 at 120 kg drop, 8 at 90 kg drop"),
        ("leg press 150x10, dropset 120x9, then 160x6",
         "leg press 10 at 150 kg, 9 at 120 kg drop, 6 at 160 kg"),
        ("squat 90 6 6 5 and a half", f"{SQUAT} 2×6 at 90 kg, 5 at 90 kg"),
        ("squat 70 80 90 x6", f"{SQUAT} 6 at 70 kg, 6 at 80 kg, 6 at 90 kg"),
        ("squat 70, 80 and 90 x6", f"{SQUAT} 6 at 70 kg, 6 at 80 kg, 6 at 90 kg"),
        ("squat 70 80 90x6", "ask: "),
        ("squat 90 for 6, straps on for 120 for 2", f"{SQUAT} 6 at 90 kg, 2 at 120 kg"),
        ("3s negatives, chin ups 6 5", "chin-up 6, 5"),
        ("tomorrow rest, today bench 4x6 70", "barbell bench press 4×6 at 70 kg"),
        ("on sat i did bench 4x6 70", "barbell bench press 4×6 at 70 kg on 2025-03-08"),
        ("bench on sun 4x6 70", "barbell bench press 4×6 at 70 kg on 2025-03-09"),
    ],
)  # fmt: skip
def test_what_stands_around_the_sets(text: str, meant: str) -> None:
    assert said(text) == meant


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("skip squat, rack is wobbling", f"request: skip {SQUAT}"),
        ("done for today, 3 coffees earned", "request: done"),
        ("done for today, squat 3x6 90", f"{SQUAT} 3×6 at 90 kg"),
    ],
)
def test_a_request_ahead_of_its_reason(text: str, meant: str) -> None:
    assert said(text, LAST) == meant


@pytest.mark.parametrize("words", ["also ohp", "then ohp the same", "ohp as well", "then ohp with the same weight"])
def test_a_lift_named_with_no_numbers_is_said_to_be_left_out(words):
    outcome = read(f"bench 60 3x12, {words}", situation(), KNOWN)

    assert isinstance(outcome, Logged)
    assert [one.text for one in outcome.unread] == ["ohp"]
