"""What a look-up in the catalogue costs. Run: python tests/bench/catalogue_lookup.py"""

from __future__ import annotations

import sys
import time
from collections.abc import Callable
from pathlib import Path
from statistics import median, quantiles

sys.path.insert(0, str(Path(__file__).parents[2]))

from engine.catalogue.catalogue import catalogue, normalise
from engine.values.ids import ExerciseName

ROUNDS = 200
SLIPS = ("sqaut", "bnech press", "bulgraian splt squats", "romaniandeadlfit", "hammer crls", "lat pulldwon")
TALK = ("this was a good one", "the machine by the window", "hello", "plan for tomorrow", "tank", "my left knee")


def measure(name: str, work: Callable[[str], object], phrases: tuple[str, ...]) -> None:
    seconds = []
    for _ in range(ROUNDS):
        for phrase in phrases:
            start = time.perf_counter()
            work(phrase)
            seconds.append(time.perf_counter() - start)
    worst = quantiles(seconds, n=100)[98]
    print(f"{name:34} median {median(seconds) * 1e6:7.2f} us   99th percentile {worst * 1e6:7.2f} us")


def main() -> None:
    start = time.perf_counter()
    known = catalogue()
    print(
        f"{len(known.exercises)} exercises, {len(known.phrases)} phrases, read in {time.perf_counter() - start:.3f} s"
    )
    names = tuple(known.exercises)
    measure("normalise a name", normalise, names)
    measure("owners of a name", known.owners, names)
    measure("closest to a slip", known.closest, SLIPS)
    measure("closest to talk", known.closest, TALK)
    shorthands = {"press": ExerciseName("barbell overhead press"), "hf": ExerciseName("leg extension")}
    own = [known.exercises[ExerciseName("leg extension")]]
    measure("with an athlete's own names", lambda _: known.with_own(own, shorthands), ("",))


if __name__ == "__main__":
    main()
