"""A million generated messages read without an exception, and how long the slowest took.

usage: reading_fuzz.py [--count N] [--repeated N] [--seed N]

Prints each exception with its message; the exit status is 1 where there was one.

With `--repeated` it looks for texts that take long instead: a few fragments repeated to 4,096 characters, each also at
half that length, and the ten slowest printed. Twice the length should take about twice as long.
"""

from __future__ import annotations

import argparse
import gc
import sys
import time
import traceback
from collections import Counter
from itertools import islice
from pathlib import Path
from random import Random

sys.path.insert(0, str(Path(__file__).parents[2]))

from engine.catalogue.catalogue import catalogue
from engine.reading import read
from engine.reading.days.dates import said_freely
from engine.reading.values import Context
from engine.values.load import Unit
from tests.bench.generated_messages import ABSURD, COUNTS, LOADS, LONGEST, NAMES, NOW, SIGNS, WORDS, messages

MOST_SHOWN = 20
SLOWEST_SHOWN = 10
MOST_FRAGMENTS = 4
FRAGMENTS = (
    *NAMES,
    *COUNTS,
    *LOADS,
    *SIGNS,
    *WORDS,
    *ABSURD,
    "\n",
    ", ",
    " ",
    "; ",
    "\n\n",
    "- ",
    "1. ",
    "set 1: ",
    "@8 ",
)


def slowest_repeated(count: int, seed: int) -> list[tuple[float, float, str]]:
    """The slowest of so many texts of repeated fragments: seconds, seconds of half of it, and what is repeated."""
    dice, found = Random(seed), list[tuple[float, float, str]]()
    for _ in range(count):
        fragments = dice.choices(FRAGMENTS, k=dice.randint(1, MOST_FRAGMENTS))
        repeated = dice.choice(("", " ")).join(fragments) + dice.choice(("", " ", "\n", ", "))
        if repeated:
            found.append((_seconds(repeated, LONGEST), 0.0, repeated))
    found.sort(reverse=True)
    # What came first may have been held up by something else: the slowest are taken again.
    again = [(_least(text, LONGEST), _least(text, LONGEST // 2), text) for _, _, text in found[: 5 * SLOWEST_SHOWN]]
    return sorted(again, reverse=True)[:SLOWEST_SHOWN]


def _seconds(repeated: str, length: int) -> float:
    text = (repeated * (length // len(repeated) + 1))[:length]
    start = time.perf_counter()
    read(text, Context(), catalogue())
    return time.perf_counter() - start


def _least(repeated: str, length: int) -> float:
    return min(_seconds(repeated, length) for _ in range(3))


def main() -> int:
    options = argparse.ArgumentParser(description=__doc__)
    options.add_argument("--count", type=int, default=1_000_000)
    options.add_argument("--repeated", type=int, default=0)
    options.add_argument("--seed", type=int, default=7)
    chosen = options.parse_args()
    known, outcomes, slowest, taken, raised = catalogue(), Counter[str](), (0.0, ""), 0.0, 0
    for text, context in islice(messages(chosen.seed), 20):
        read(text, context, known)  # loads the words of all languages
    said_freely("the 3rd of march", NOW, Unit.KG)  # loads the date parser
    gc.freeze()  # as the commands do once all is loaded
    if chosen.repeated:
        for whole, half, text in slowest_repeated(chosen.repeated, chosen.seed):
            print(f"{whole * 1e3:6.2f} ms, half of it {half * 1e3:6.2f} ms: {text!r}")
        return 0
    for text, context in islice(messages(chosen.seed), chosen.count):
        start = time.perf_counter()
        try:
            outcomes[type(read(text, context, known)).__name__] += 1
        except Exception:
            raised += 1
            if raised <= MOST_SHOWN:
                print(f"raised on {text!r}\n{traceback.format_exc(limit=-3)}")
        spent = time.perf_counter() - start
        taken, slowest = taken + spent, max(slowest, (spent, text))
    print(f"{chosen.count} messages, seed {chosen.seed}: {raised} exceptions; {dict(outcomes.most_common())}")
    print(f"mean {taken / chosen.count * 1e6:.0f} us; slowest {slowest[0] * 1e3:.2f} ms, {len(slowest[1])} characters:")
    print(repr(slowest[1][:200]))
    return 1 if raised else 0


if __name__ == "__main__":
    sys.exit(main())
