"""How long it takes to preview an eight-week block, to check it, and to place more sets in it.

Run: python tests/bench/plan_projection.py
"""

from __future__ import annotations

import sys
from datetime import date
from pathlib import Path
from statistics import median
from time import perf_counter

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

from engine.catalogue.catalogue import catalogue
from engine.loading.exercises import loadable_for
from engine.plan import parse_plan, print_plan
from engine.plan.check import check_plan
from engine.plan.projection import project
from engine.plan.weak_points import more_sets
from engine.values.load import Unit
from engine.values.muscles import Muscle

BOUND_MS = 50.0
MONDAY = date(2026, 3, 2)
BLOCK = """plan: four days, 8 weeks, deload week 8
target side delts 8-14
day mon: press
barbell overhead press 3x6 at 42.5 kg, add a set each week up to 5, then +2.5 kg, rest 3 min
incline dumbbell bench press 3x8-12 at 22 kg, then +2 kg, rest 2 min
dumbbell lateral raise 3x12-15 at 8 kg, then +1 kg, rest 90 s, swap cable lateral raise
push-up 2x max, +1 rep each set, standard: chest touches the floor
triceps pushdown 3x10-15 at 25 kg, then +2.5 kg, rest 60 s
plank 3x45 s, +5 s up to 60 s
day tue: squat
barbell back squat 3x5, 70/80/90 % of 120 kg, then +2.5 kg, rest 3 min
leg press 3x10 at 120 kg, then +5 kg, rest 2 min
seated leg curl 3x10-12 at 40 kg, then +5 kg, rest 90 s
standing calf raise 4x10-15 at 60 kg, then +5 kg, rest 60 s
hanging leg raise 3x10, +1 rep each set
day thu: pull
chin-up 3x max, 30 reps in all, then +2.5 kg, rest 2 min
seated cable row 3x10 at 50 kg, then +5 kg, rest 2 min
face pull 3x15-20 at 20 kg, then +2.5 kg, rest 60 s
cable lateral raise 2x15 at 5 kg, then +2.5 kg, rest 60 s
dumbbell curl 3x8-12 at 12 kg, then +2 kg, rest 60 s
day fri: hinge and bench
barbell bench press 1x5 at 80 kg, top set then 3 back-offs at 90 %, then +2.5 kg, rest 3 min
romanian deadlift 3x8 load for rpe 8, at 80 kg, rest 2 min
bulgarian split squat 3x10 at 14 kg, then +2 kg, rest 90 s
farmer's walk 3x40 m at 24 kg, +5 m up to 60 m, then +2 kg
"""


def loadable(name):
    return loadable_for(catalogue().exercises[name], None, Unit.KG)


def main() -> int:
    parsed = parse_plan(BLOCK, catalogue(), Unit.KG)
    plan = parsed.plan
    if plan is None:
        print(*parsed.problems, sep="\n")
        return 1
    slots = sum(len(day.slots) for day in plan.blocks[0].kinds[0].days)
    preview = _median_ms(lambda: project(plan, MONDAY, loadable), 15)
    print(f"preview of 8 weeks, {slots} slots a week: {preview:.1f} ms (bound {BOUND_MS:.0f} ms)")
    print(
        f"read {len(BLOCK.splitlines())} lines: "
        f"{_median_ms(lambda: parse_plan(BLOCK, catalogue(), Unit.KG), 15):.1f} ms"
    )
    print(f"print: {_median_ms(lambda: print_plan(plan), 15):.2f} ms")
    print(f"check: {_median_ms(lambda: check_plan(plan, catalogue()), 15):.2f} ms")
    for muscle, count in ((Muscle.SIDE_DELTS, 3), (Muscle.BICEPS, 6), (Muscle.QUADS, -3)):
        spent = _median_ms(lambda m=muscle, n=count: more_sets(plan, 0, m, n, catalogue()), 3)
        print(f"place {count:+d} sets {muscle.value}: {spent:.0f} ms")
    return int(preview > BOUND_MS)


def _median_ms(work, times: int) -> float:
    spent = []
    for _ in range(times):
        start = perf_counter()
        work()
        spent.append(1000 * (perf_counter() - start))
    return median(spent)


if __name__ == "__main__":
    raise SystemExit(main())
