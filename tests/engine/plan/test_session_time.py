"""Minutes of a session: sets x reps x seconds a rep, and the rests between."""

import pytest

from engine.catalogue.catalogue import catalogue
from engine.plan import parse_plan
from engine.plan.session_time import session_seconds
from engine.values.load import Unit

LIFTS = (
    "barbell back squat", "leg press", "leg extension", "barbell bench press", "barbell overhead press",
    "lat pulldown", "seated cable row",
)  # fmt: skip


def seconds(lines):
    plan = parse_plan(f"plan: x\n{lines}", catalogue(), Unit.KG).plan

    assert plan is not None
    return session_seconds(plan.blocks[0].kinds[0].days[0].slots, catalogue().exercises)


def test_seven_single_sets_of_ten_with_two_minutes_between_take_15_and_a_half_minutes():
    # Worked out for the single-set session of Schoenfeld et al. 2019, which took its athletes 13 minutes.
    assert seconds("\n".join(f"{lift} 1x10, rest 2 min" for lift in LIFTS)) == 15.5 * 60


@pytest.mark.parametrize(
    ("lines", "expected"),
    [
        pytest.param("barbell row 1x10", 30, id="one set has no rest"),
        pytest.param("barbell row 3x10, rest 60 s", 3 * 30 + 2 * 60, id="rests stand between sets"),
        pytest.param("barbell row 3x8-12, rest 60 s", 3 * 30 + 2 * 60, id="the middle of a range"),
        pytest.param("plank 2x60 s, rest 30 s", 2 * 60 + 30, id="seconds as they are"),
        pytest.param("barbell row 2x3", 2 * 9 + 180, id="heavy sets rest three minutes"),
        pytest.param("barbell row 2x10", 2 * 30 + 90, id="moderate sets rest a minute and a half"),
        pytest.param("barbell row 2x20", 2 * 60 + 60, id="light sets rest a minute"),
        pytest.param("bulgarian split squat 1x10", 60, id="one side after the other takes twice as long"),
        pytest.param(
            "barbell back squat 1x5 at 100 kg, top set then 3 back-offs at 90 %, then +2.5 kg, rest 2 min",
            4 * 15 + 3 * 120,
            id="back-offs are sets too",
        ),
        pytest.param(
            "A1 barbell curl 3x10, rest 60 s\nA2 triceps pushdown 3x10, rest 60 s",
            6 * 30 + 2 * 60,
            id="a superset rests once a round",
        ),
    ],
)
def test_session_time(lines, expected):
    assert seconds(lines) == expected
