"""Loads without a unit behind sets of today that told another unit than the writer counts in."""

from __future__ import annotations

import pytest

from tests.bot.chatting import said

SQUAT, BENCH, PULL = "barbell back squat", "barbell bench press", "pull-up"


@pytest.mark.parametrize(
    ("messages", "last"),
    [
        (["bench 185 lbs 3x8", "190x6"], (BENCH, 6, "190 lb")),
        (["bench 185lb x8", "bench 195 5 4"], (BENCH, 4, "195 lb")),
        (["bench 185lb x8", "8 at 190"], (BENCH, 8, "190 lb")),
        (["bench 185lb x8", "190", "6"], (BENCH, 6, "190 lb")),
        (["pull ups +45lb 5", "+50 4"], (PULL, 4, "50 lb")),
        (["bench 185lb x8", "100x8"], (BENCH, 8, "100 kg")),
        (["bench 185lb x8", "190kg x1"], (BENCH, 1, "190 kg")),
        (["bench 185lb x8", "squat 140x5"], (SQUAT, 5, "140 kg")),
        (["bench 60x8", "units lb", "bench 135x8"], (BENCH, 8, "135 lb")),
        (["squat 100x5", "units lb", "225x5"], (SQUAT, 5, "225 lb")),
        (["bench 80x8", "units lb", "bench 105x10"], (BENCH, 10, "105 lb")),
        (["units lb", "bench 80kg x8", "85x6"], (BENCH, 8, "80 kg")),
    ],
)
def test_a_load_that_only_fits_in_the_unit_of_todays_sets_is_meant_in_it(begun, messages, last):
    begun.says("ana", *messages)

    assert begun.log("ana")[-1] == last


@pytest.mark.parametrize("after", ["150x8", "3x8 135"])
def test_a_load_that_fits_better_in_the_unit_of_todays_sets_is_asked(begun, after):
    begun.says("ana", "bench 185lb x8")

    asked = said(begun.says("ana", after))

    assert " kg" in asked
    assert " lb" in asked
    assert len(begun.log("ana")) == 1


def test_reps_behind_a_load_of_either_unit_ask_for_it(begun):
    begun.says("ana", "bench 185lb x8", "135", "6")

    assert begun.log("ana") == [(BENCH, 8, "185 lb")]
