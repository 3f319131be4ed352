"""How long an estimate of current strength takes on ten years of one lift. Run: python tests/bench/strength_speed.py"""

from __future__ import annotations

import sys
from pathlib import Path
from statistics import median
from time import perf_counter

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

from engine.strength.current import current_strength
from engine.strength.stall import trend
from tests.engine.volume.invented import BENCH, done, kg, records

BOUND_MS = 2.0
SESSIONS = 10 * 104


def main() -> int:
    log = records(
        *((7 * n // 2, (done(BENCH, 5, kg(str(60 + n // 20)), rir=str(n % 4)),) * 4) for n in range(SESSIONS))
    )
    today = log[-1].on
    estimate = _median_ms(lambda: current_strength(log, BENCH, today))
    judged = _median_ms(lambda: trend(log, BENCH, today))
    print(f"current strength from {len(log)} sets: {estimate:.2f} ms (bound {BOUND_MS} ms); its trend: {judged:.2f} ms")
    return int(estimate > BOUND_MS)


def _median_ms(work) -> float:
    spent = []
    for _ in range(50):
        start = perf_counter()
        work()
        spent.append(1000 * (perf_counter() - start))
    return median(spent)


if __name__ == "__main__":
    raise SystemExit(main())
