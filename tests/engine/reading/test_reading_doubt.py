"""When a reading is recorded and when it is asked: the named thresholds, and what moves with them."""

from __future__ import annotations

import pytest

from engine.reading import read
from engine.reading.values import Asked, Doubt, Logged
from engine.reading.weighing import deciding, history
from tests.engine.reading.saying import KNOWN, load, said, situation

OPEN_PAIR = "db curl 12x10"
LIFTED = situation(last={"barbell bench press": "80", "lat pulldown": "50"})


@pytest.mark.parametrize(
    ("context", "meant"),
    [
        pytest.param(
            situation(), "ask: dumbbell curl 10 at 12 kg each | dumbbell curl 12 at 10 kg each", id="nothing known asks"
        ),
        pytest.param(
            situation(last={"dumbbell curl": "12"}),
            "dumbbell curl 10 at 12 kg each",
            id="the load of last time settles it",
        ),
        pytest.param(
            situation(plan=[("dumbbell curl", 3, 12, "10")]),
            "dumbbell curl 12 at 10 kg each",
            id="the planned load settles it",
        ),
        pytest.param(
            situation(last={"dumbbell curl": "11"}),
            "ask: dumbbell curl 10 at 12 kg each | dumbbell curl 12 at 10 kg each",
            id="a last load near both settles nothing",
        ),
    ],
)
def test_a_light_pair_is_settled_by_what_is_known(context, meant) -> None:
    assert said(OPEN_PAIR, context) == meant


def test_a_settled_habit_of_the_writer_reads_light_pairs_her_way() -> None:
    from dataclasses import replace

    assert said(OPEN_PAIR, replace(situation(), load_first=True)) == "dumbbell curl 10 at 12 kg each"
    assert said(OPEN_PAIR, replace(situation(), load_first=False)) == "dumbbell curl 12 at 10 kg each"


def test_lower_thresholds_would_record_what_is_asked(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(deciding, "ENOUGH", 0.3)
    assert said(OPEN_PAIR).startswith("ask: ")

    monkeypatch.setattr(deciding, "CLEAR_BY", 0.0)
    assert not said(OPEN_PAIR).startswith("ask: ")


def test_higher_thresholds_would_ask_what_is_recorded(monkeypatch: pytest.MonkeyPatch) -> None:
    settled = situation(last={"dumbbell curl": "12"})
    assert said(OPEN_PAIR, settled) == "dumbbell curl 10 at 12 kg each"

    monkeypatch.setattr(deciding, "ENOUGH", 0.99)
    assert said(OPEN_PAIR, settled).startswith("ask: ")


def test_the_weight_kept_for_none_of_these_asks_of_a_lone_odd_reading(monkeypatch: pytest.MonkeyPatch) -> None:
    odd = "squat 5x1000"
    assert isinstance(read(odd, situation(), KNOWN), Asked)

    monkeypatch.setattr(deciding, "NONE_OF_THESE", 0.0)
    assert isinstance(read(odd, situation(), KNOWN), Logged)


@pytest.mark.parametrize(
    ("bound", "farther", "text"),
    [
        pytest.param("FAR_ABOVE", 4, "bench 3x5 240", id="how many times the heaviest known"),
        pytest.param("FAR_BELOW", 11, "lat pulldown 3x10 5", id="what part of the heaviest known"),
    ],
)
def test_farther_bounds_would_record_a_load_that_is_asked(
    monkeypatch: pytest.MonkeyPatch, bound: str, farther: int, text: str
) -> None:
    assert isinstance(read(text, LIFTED, KNOWN), Asked)

    monkeypatch.setattr(history, bound, farther)
    assert isinstance(read(text, LIFTED, KNOWN), Logged)


@pytest.mark.parametrize(
    ("text", "asked"),
    [
        pytest.param("bench 3x5 239", False, id="under three times the heaviest is recorded"),
        pytest.param("bench 3x5 240", True, id="three times the heaviest asks"),
        pytest.param("lat pulldown 3x10 5.5", False, id="over a tenth is recorded"),
        pytest.param("lat pulldown 3x10 5", True, id="a tenth asks"),
    ],
)
def test_a_load_far_from_history_asks(text: str, asked: bool) -> None:
    from engine.reading import read

    context = situation(last={"barbell bench press": "80", "lat pulldown": "50"})
    outcome = read(text, context, KNOWN)

    assert isinstance(outcome, Asked if asked else Logged)


def test_the_question_says_what_it_is_about() -> None:
    from engine.reading import read

    asked = read("leg curl 4x10 35", situation(), KNOWN)

    assert isinstance(asked, Asked)
    assert asked.doubt is Doubt.EXERCISE
    assert asked.term == "leg curl"
    assert [one.label for one in asked.readings] == ["lying leg curl", "seated leg curl"]
    assert "Nothing is saved yet" in asked.question


def test_the_heaviest_ever_counts_as_history() -> None:
    from dataclasses import replace

    from engine.reading import read
    from engine.values.ids import ExerciseName

    bench = ExerciseName("barbell bench press")
    context = replace(situation(last={bench: "60"}), best={bench: load(bench, "100")})

    assert isinstance(read("bench 3x5 190", context, KNOWN), Logged)
    assert isinstance(read("bench 3x5 300", context, KNOWN), Asked)


@pytest.mark.parametrize(
    "text",
    [
        "skull crusher 3x10 275",
        "db lateral raise 3x12 80",
        "ohp 3x5 425",
        "barbell curl 8 8 8 at 187",
        "bench 3x5 725",
        "leg ext 3x13 475",
    ],
)
def test_more_than_anyone_lifts_of_a_lift_is_asked(text: str) -> None:
    outcome = read(text, situation(), KNOWN)

    assert isinstance(outcome, Asked)
    assert "unusual load" in outcome.question


@pytest.mark.parametrize("text", ["skull crusher 3x10 60", "db lateral raise 3x12 24", "ohp 3x5 110", "shrug 3x10 180"])
def test_what_strong_lifters_lift_is_recorded(text: str) -> None:
    assert isinstance(read(text, situation(), KNOWN), Logged)


def test_the_lift_in_hand_is_offered_where_its_movement_is_named() -> None:
    outcome = read("rows 3x9 62", situation(doing="pendlay row"), KNOWN)

    assert isinstance(outcome, Asked)
    assert outcome.readings[0].sets[0].exercise == "pendlay row"
