"""What a line that cannot be read is told to try: a remedy of the same meaning, never a progression made a cue."""

from __future__ import annotations

import pytest

from engine.catalogue.catalogue import catalogue
from engine.plan.text import mend, parse_plan
from engine.values.load import Unit
from engine.values.schemes import TopSetBackOff

PLAN = "plan: base, 4 weeks\nday mon: a\n{}"


def first_error(line):
    return parse_plan(PLAN.format(line), catalogue(), Unit.KG).errors[0]


@pytest.mark.parametrize(
    ("line", "remedy"),
    [
        pytest.param("chin-up total 30 reps", "chin-up 3 sets, 30 reps in all", id="a total of reps without sets"),
        pytest.param("push-up max reps", "push-up 2x max", id="maximum reps without sets"),
        pytest.param("bench press 8 reps at 60 kg", "barbell bench press 3x8", id="reps without sets"),
        pytest.param("deadlift 3x5 at 100 kg, then + kg", "then +2.5 kg", id="a step without its number"),
        pytest.param("deadlift 3x5 at 100 kg, +", "then +2.5 kg", id="a bare plus"),
        pytest.param("squat 3x5 at 100 kg, wave", "75/85/95 % of 140 kg, then +2.5 kg", id="a wave without numbers"),
        pytest.param(
            "squat 3x5 at 100 kg, back-offs", "top set then 2 back-offs of 8 at 85 %, then +2.5 kg", id="bare"
        ),
        pytest.param("plank 3x40 s, up to", "+5 s up to 60 s", id="a bound alone"),
    ],
)
def test_the_remedy_means_what_was_typed(line, remedy):
    assert first_error(line).try_instead == remedy


@pytest.mark.parametrize(
    "line",
    ["chin-up total 30 reps", "push-up max reps", "bench press 8 reps at 60 kg", "deadlift 3x5 at 100 kg, then + kg"],
)
def test_the_remedy_mends_the_line(line):
    parsed = parse_plan(PLAN.format(line), catalogue(), Unit.KG)
    mended = mend(parsed, 3, parsed.errors[0].try_instead, catalogue(), Unit.KG)

    assert mended.errors == ()


@pytest.mark.parametrize(
    "words", ["+", "then +", "+ kg", "wave loading", "back-off", "progress slowly", "rpe", "total"]
)
def test_no_progression_becomes_a_cue(words):
    assert not first_error(f"squat 3x5 at 100 kg, {words}").try_instead.startswith("cue")


@pytest.mark.parametrize(
    "behind",
    [
        pytest.param("back-off 2x8 at 85 %", id="back-off in front"),
        pytest.param("back-offs: 2x8 at 85 %", id="with a colon"),
        pytest.param("then back off sets 2x8 @ 85%", id="in three words"),
        pytest.param("2 back-offs of 8 at 85 %", id="the number in front"),
    ],
)
def test_back_offs_are_read_whichever_way_round(behind):
    parsed = parse_plan(PLAN.format(f"squat 1x5 at 80 kg, {behind}, then +2.5 kg"), catalogue(), Unit.KG)
    assert parsed.plan is not None
    scheme = parsed.plan.blocks[0].kinds[0].days[0].slots[0].scheme

    assert isinstance(scheme, TopSetBackOff)
    assert (scheme.back_offs, scheme.back_off_reps, str(scheme.share)) == (2, 8, "0.85")
