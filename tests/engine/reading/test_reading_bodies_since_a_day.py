"""How a part of the body has felt since a day: that day is none of the sets'. Common practice, no source."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import said


@pytest.mark.parametrize(
    "felt",
    [
        "quads still wrecked from tuesday",
        "legs fried from monday",
        "beine noch müde vom dienstag",
        "piernas destrozadas del martes",
        "jambes mortes depuis mardi",
        "gambe distrutte da martedì",
        "benen nog kapot van dinsdag",
        "nogi jeszcze zmęczone po wtorku",
        "pernas acabadas de terça",
        "ноги убиты после вторника",
        "benen slut efter tisdag",
    ],
)
def test_a_day_since_which_a_part_of_the_body_feels_so_is_not_the_sets_day(felt):
    assert said(f"{felt}, squat 3x5 95") == "barbell back squat 3×5 at 95 kg"


def test_a_day_that_sets_are_from_is_theirs():
    assert said("sets from tuesday: squat 3x5 95") == "barbell back squat 3×5 at 95 kg on 2025-03-11"
