"""How long a week's tally takes: 30 sets a session, five sessions. Run: python tests/bench/volume_tally.py"""

from __future__ import annotations

import sys
from pathlib import Path
from statistics import median
from time import perf_counter

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

from engine.values.ids import AthleteId
from engine.values.load import Basis
from engine.volume.tally import tally, tally_each
from tests.engine.volume.invented import EXERCISES, done, kg, records

BOUND_MS = 1.0
CLIENTS = 50


def main() -> int:
    lifts = list(EXERCISES.values())
    session = tuple(done(lifts[n % len(lifts)], 5 + n % 9, kg("20", Basis.TOTAL)) for n in range(30))
    week = records(*((day, session) for day in (0, 1, 3, 4, 5)))
    clients = [(AthleteId(who), record) for who in range(CLIENTS) for record in week]
    one = _median_ms(lambda: tally(week, EXERCISES), 200)
    all_of_them = _median_ms(lambda: tally_each(clients, EXERCISES), 5)
    print(f"one week of {len(week)} sets: {one:.3f} ms (bound {BOUND_MS} ms)")
    print(f"{CLIENTS} weeks at once: {all_of_them:.1f} ms, {all_of_them / CLIENTS:.3f} ms a week")
    return int(one > BOUND_MS)


def _median_ms(work, times: int) -> float:
    spent = []
    for _ in range(times):
        start = perf_counter()
        work()
        spent.append(1000 * (perf_counter() - start))
    return median(spent)


if __name__ == "__main__":
    raise SystemExit(main())
