"""How long reading one message takes, beside one call of a general date parser on the same machine.

usage: reading_speed.py [CORPUS.jsonl] [--fuzz N] [--rounds N]

The corpus holds {"text", "context"?} lines, as `chalkwire read --jsonl` takes them; without one, our own messages are
timed. `--fuzz N` reads N generated messages and counts exceptions. Run on one quiet core: `taskset -c 0 python ...`.
"""

from __future__ import annotations

import argparse
import gc
import json
import random
import sys
import time
from datetime import datetime
from pathlib import Path
from statistics import median

sys.path.insert(0, str(Path(__file__).parents[2]))

from bot.read_command import context_from
from engine.catalogue.catalogue import catalogue
from engine.reading import read
from engine.reading.values import Context

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
    "one line of pairs": "bench " + "82.5x5, " * 600,
    "a pasted workout": "bench press 82.5kg 3x8 @8 felt good\nlateral raise 9s 15 15 12\n" * 70,
    "digits": "9" * 4_096,
    "letters": "squattt" * 600,
    "signs": "x/-+@(" * 700,
    "unknown words": "zwargl " * 600,
    "spaces": " " * 4_096,
}
SHARDS = [
    "bench",
    "squat",
    "row",
    "plank",
    "x",
    "×",
    "@",
    "/",
    "-",
    "+",
    ",",
    "(",
    ")",
    ":",
    ">",
    "½",
    "3x12",
    "80",
    "5",
    "1e309",
    "-0",
    "999999x999999",
    "52,5",
    "rpe",
    "rir",
    "kg",
    "lb",
    "s",
    "m",
    "plates",
    "bar",
    "bw",
    "drop",
    "wu",
    "failed",
    "3rd",
    "each",
    "L",
    "R",
    "for",
    "then",
    "rounds",
    "total",
    "sets",
    "not",
    "no",
    "sorry",
    "was",
    "last",
    "yesterday",
    "12/03",
    "tomorrow",
    "remind",
    "swap",
    "٣",
    "🏋",
    "\u200d",
]


def best_of(text: str, context: Context, rounds: int) -> float:
    """The median seconds of `rounds` readings of one message."""
    known = catalogue()
    taken = []
    for _ in range(rounds):
        start = time.perf_counter()
        read(text, context, known)
        taken.append(time.perf_counter() - start)
    return median(taken)


def date_parser_call(rounds: int) -> float:
    import dateparser

    taken = []
    for _ in range(rounds + 1):
        start = time.perf_counter()
        dateparser.parse("yesterday", languages=["en"])
        taken.append(time.perf_counter() - start)
    return median(taken[1:])


def fuzz(count: int) -> int:
    """How many of `count` generated messages raise."""
    dice, known, raised = random.Random(7), catalogue(), 0
    context = Context(now=datetime(2025, 3, 14, 18))  # noqa: DTZ001 — the athlete's local time
    for _ in range(count):
        text = "".join(dice.choice(SHARDS) + dice.choice(("", " ", "\n")) for _ in range(dice.randint(1, 20)))
        try:
            read(text, context, known)
        except Exception as slip:
            raised += 1
            print(f"raised {slip!r} on {text!r}")
    return raised


def main() -> int:
    options = argparse.ArgumentParser(description=__doc__)
    options.add_argument("corpus", nargs="?")
    options.add_argument("--fuzz", type=int, default=0)
    options.add_argument("--rounds", type=int, default=9)
    chosen = options.parse_args()
    cases = [(text, Context()) for text in OWN]
    if chosen.corpus:
        lines = [
            json.loads(line) for line in Path(chosen.corpus).read_text(encoding="utf-8").splitlines() if line.strip()
        ]
        cases = [(line["text"], context_from(line.get("context", {}))) for line in lines]
    for text, context in cases:
        read(text, context, catalogue())
    gc.freeze()  # as the commands do once all is loaded
    times = sorted(best_of(text, context, chosen.rounds) for text, context in cases)
    middle, tail = times[len(times) // 2], times[min(len(times) - 1, int(len(times) * 0.99))]
    parser = date_parser_call(chosen.rounds)
    print(f"{len(cases)} messages: median {middle * 1e6:.0f} us, 99th percentile {tail * 1e6:.0f} us")
    print(f"one date-parser call: {parser * 1e6:.0f} us, {parser / middle:.1f} times the median message")
    for name, text in LONG.items():
        whole, half = best_of(text[:4_096], Context(), 3), best_of(text[:2_048], Context(), 3)
        print(f"4,096 characters, {name:18} {whole * 1e3:6.2f} ms, half of it {half * 1e3:6.2f} ms")
    if chosen.fuzz:
        print(f"{chosen.fuzz} generated messages: {fuzz(chosen.fuzz)} raised")
    return 0


if __name__ == "__main__":
    sys.exit(main())
