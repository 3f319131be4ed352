"""What a number counts beside a word for so often, so long or so far, and what stands beside it that is no work set."""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import readings, said

TIMES = """
plank 3 times 45 => plank 3×45 s
plank 3 sets of 45 => plank 3×45 s
plank 3 sets of 45 reps => plank 3×45
farmers walk 30s 40 secs => farmer's walk 40 s at 30 kg each
farmers walk 24s 1 min => farmer's walk 60 s at 24 kg each
farmers walk 40s 40s => farmer's walk 2×40 s
20 pushups every hour x5 => ask: push-up 5×20
20 liegestütze jede stunde x5 => ask: push-up 5×20
"""

ASKED = """
lat raises 10kg to failure x3 => ask: dumbbell lateral raise 3 at 10 kg each to failure
lat raises 10kg to failure x12 => dumbbell lateral raise 12 at 10 kg each to failure
bench 100kg x3 to failure => barbell bench press 3 at 100 kg to failure
bench 80 8+1 with spotter => barbell bench press 8 at 80 kg
"""

SAID = """
bench one oh five for three => barbell bench press 3 at 105 kg
squat two oh five x5 => barbell back squat 5 at 205 kg
oh squat 3x5 60 => overhead squat 3×5 at 60 kg
"""

WORK = "barbell bench press 10 at 40 kg warmup, 3×8 at 80 kg"


@pytest.mark.parametrize(("text", "context", "meant"), [*readings(TIMES), *readings(ASKED), *readings(SAID)])
def test_so_often_and_so_long(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


def test_reps_helped_beside_reps_after_a_breath_are_asked() -> None:
    assert said("bench 80 8+1 with spotter, 7+1").startswith("ask: ")


@pytest.mark.parametrize("text", ["bench, after warmup of 40x10, 3x8 80", "bench after warming up with 40x10, 3x8 80"])
def test_what_was_done_ahead_to_get_warm_is_no_work_set(text: str) -> None:
    told = said(text)

    assert told.startswith("ask: ")
    assert WORK in told
