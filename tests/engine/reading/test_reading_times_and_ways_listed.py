"""Times and distances with slashes between them are those of single sets, and never reps; a lift that stands still has
no distance. Common practice, no source.
"""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import readings, said

LISTED = """
farmers 42 20m/20m/15m              => farmer's walk 2×20 m at 42 kg each, 15 m at 42 kg each
farmers 42 20/20/15m                => farmer's walk 2×20 m at 42 kg each, 15 m at 42 kg each
farmers 42 20-20-15m                => farmer's walk 2×20 m at 42 kg each, 15 m at 42 kg each
farmers 42 30s/25s                  => farmer's walk 30 s at 42 kg each, 25 s at 42 kg each
sandbag carry 55 30m/25m            => sandbag carry 30 m at 55 kg, 25 m at 55 kg
sled push 85 20m/20m/15m            => sled push 2×20 m at 85 kg, 15 m at 85 kg
suitcase carry 32 20m/20m x2        => suitcase carry 2×20 m at 32 kg
walking lunge 22 20m/20m x3         => walking lunge 3×20 m at 22 kg each
plank 65/45/30s                     => plank 65 s, 45 s, 30 s
suitcase carry 32 20m/20m           => ask: suitcase carry 20 m at 32 kg | suitcase carry 2×20 m at 32 kg
bench 62 20m                        => ask:
bench 3x20m                         => ask:
squat 102 20m/20m                   => ask:
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(LISTED))
def test_times_and_distances_are_no_reps(text: str, context: Context, meant: str) -> None:
    assert said(text, context).strip() == meant


@pytest.mark.parametrize("text", ["farmers walk same again (8) in 30s last in 30s", "farmers walk same in 30s 30s"])
def test_times_behind_the_same_again_are_read_without_an_error(text: str) -> None:
    assert said(text)


@pytest.mark.parametrize(
    "text",
    [
        "deads; plank then 100 by max -> +20: skip x my mate 15; 20+80kg,",
        "righ\r\nt*2 platesx12@delete-+20>12/03+seat 4 with left: 100 with delete=delete) ",
        "smith\n",
        "dips +20: 8, 7 +10",
    ],
)
def test_loads_and_lines_with_nothing_ahead_of_them_are_read_without_an_error(text: str) -> None:
    assert said(text)
