"""A million generated messages read without an exception, and how long the slowest took.

usage: reading_fuzz.py [--count N] [--seed N]

Prints each exception with its message; the exit status is 1 where there was one.
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

sys.path.insert(0, str(Path(__file__).parents[2]))

from engine.catalogue.catalogue import catalogue
from engine.reading import read
from engine.reading.dates import said_freely
from engine.values.load import Unit
from tests.bench.generated_messages import NOW, messages

MOST_SHOWN = 20


def main() -> int:
    options = argparse.ArgumentParser(description=__doc__)
    options.add_argument("--count", type=int, default=1_000_000)
    options.add_argument("--seed", type=int, default=7)
    chosen = options.parse_args()
    known, outcomes, slowest, taken, raised = catalogue(), Counter[str](), (0.0, ""), 0.0, 0
    for text, context in islice(messages(chosen.seed), 20):
        read(text, context, known)  # loads the words of all languages
    said_freely("the 3rd of march", NOW, Unit.KG)  # loads the date parser
    gc.freeze()  # as the commands do once all is loaded
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
