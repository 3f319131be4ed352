"""How long reading one message takes, beside one call of a general date parser on the same machine.

usage: reading_speed.py [CORPUS.jsonl] [--rounds N]

The corpus holds {"text", "context"?} lines, as `chalkwire read --jsonl` takes them; without one, our own messages are
timed. Run on one quiet core: `taskset -c 0 python ...`.

The reader keeps what it worked out of single words, as a running bot does; it keeps nothing of whole messages. So
that no message lives on its own last reading, the messages of a round take turns in a new order. Beside that stands
what a first reading takes: a new process reads every other message, then the rest once.
"""

from __future__ import annotations

import argparse
import gc
import json
import multiprocessing
import random
import sys
import time
from collections.abc import Sequence
from pathlib import Path
from statistics import median

sys.path.insert(0, str(Path(__file__).parents[2]))

from bot.read_command import context_from
from engine.catalogue.catalogue import catalogue
from engine.reading import read
from engine.reading.values import Context
from tests.bench.generated_messages import pasted_week

OWN = (
    "bench 4x6 77.5 @8",
    "deadlift 120x5, 140x3, 150x2 grip slipped",
    "pull ups 9 8 7; dips 14 12 11",
    "lat raise 9s 15 14 12 last one to failure",
    "Kniebeuge 4x8 87,5 kg",
    "what should i do tomorrow, 3x10 or 5x5?",
    "swap squat for leg press",
    "squat 90x5\nbench 70 8 8 7\nrow 4x10 55",
)
LONG = {
    "a pasted week": pasted_week(),
    "lines of two lifts": "bench press 82.5kg 3x8 @8 felt good\nlateral raise 9s 15 15 12\n" * 70,
    "one line of pairs": "bench " + "82.5x5, " * 600,
    "groups side by side": "row 3x8 60, " * 400,
    "single sets": "ohp 40 8\n" * 500,
    "numbers": "1 2 3 4 5 6 7 8 9 " * 300,
    "names": "bench squat row " * 300,
    "slips": "banch sqaut rwo " * 300,
    "digits": "9" * 4_096,
    "letters": "squattt" * 600,
    "signs": "x/-+@(" * 700,
    "unknown words": "zwargl " * 600,
    "questions": "bench 3x5 100? " * 300,
    "spaces": " " * 4_096,
}
LONGEST = 4_096

Case = tuple[str, Context]


def seconds(text: str, context: Context) -> float:
    """What one reading takes."""
    known = catalogue()
    start = time.perf_counter()
    read(text, context, known)
    return time.perf_counter() - start


def in_turns(cases: Sequence[Case], rounds: int) -> list[float]:
    """The median seconds of each message over `rounds`, each in an order of its own."""
    dice = random.Random(7)
    taken: list[list[float]] = [[] for _ in cases]
    for _ in range(rounds):
        for at in dice.sample(range(len(cases)), len(cases)):
            taken[at].append(seconds(*cases[at]))
    return [median(times) for times in taken]


def at_first(cases: Sequence[Case], rounds: int) -> list[float]:
    """The median seconds of each message's first reading in a new process that has read the others."""
    taken: list[list[float]] = [[] for _ in cases]
    dice = random.Random(7)
    with multiprocessing.get_context("fork").Pool(1, maxtasksperchild=1) as processes:
        for _ in range(rounds):
            order = dice.sample(range(len(cases)), len(cases))
            for half in (order[::2], order[1::2]):
                others = [cases[at] for at in order if at not in half]
                for at, spent in zip(half, processes.apply(_first, (others, [cases[at] for at in half])), strict=True):
                    taken[at].append(spent)
    return [median(times) for times in taken]


def _first(others: Sequence[Case], cases: Sequence[Case]) -> list[float]:
    read("squat 3x5 100", Context(), catalogue())
    gc.freeze()
    for text, context in others:
        read(text, context, catalogue())
    return [seconds(text, context) for text, context in cases]


def date_parser_call(rounds: int) -> float:
    import dateparser

    taken = []
    for _ in range(rounds + 1):
        start = time.perf_counter()
        dateparser.parse("yesterday", languages=["en"])
        taken.append(time.perf_counter() - start)
    return median(taken[1:])


def best_of(text: str, rounds: int = 3) -> float:
    """The least seconds of a few readings."""
    return min(seconds(text, Context()) for _ in range(rounds))


def _shares(times: Sequence[float]) -> str:
    ranked = sorted(times)
    middle, tail = median(ranked), ranked[min(len(ranked) - 1, int(len(ranked) * 0.99))]
    return f"median {middle * 1e6:.0f} us, 99th percentile {tail * 1e6:.0f} us"


def main() -> int:
    options = argparse.ArgumentParser(description=__doc__)
    options.add_argument("corpus", nargs="?")
    options.add_argument("--rounds", type=int, default=9)
    chosen = options.parse_args()
    cases = [(text, Context()) for text in OWN]
    if chosen.corpus:
        lines = [
            json.loads(line) for line in Path(chosen.corpus).read_text(encoding="utf-8").splitlines() if line.strip()
        ]
        cases = [(line["text"], context_from(line.get("context", {}))) for line in lines]
    first = at_first(cases, chosen.rounds)
    for text, context in cases:
        read(text, context, catalogue())
    gc.freeze()  # as the commands do once all is loaded
    times, parser = in_turns(cases, chosen.rounds), date_parser_call(chosen.rounds)
    print(f"{len(cases)} messages in turns: {_shares(times)}")
    print(f"first reading of each:  {_shares(first)}")
    print(f"one date-parser call: {parser * 1e6:.0f} us, {parser / median(times):.1f} times the median message")
    for name, text in LONG.items():
        whole, half = (best_of(text[:end]) for end in (LONGEST, LONGEST // 2))
        print(f"4,096 characters, {name:20} {whole * 1e3:6.2f} ms, half of it {half * 1e3:6.2f} ms")
    return 0


if __name__ == "__main__":
    sys.exit(main())
