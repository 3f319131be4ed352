"""Whether the compiled reader comes to the outcomes of the plain one, and in what share of its time.

usage: compiled_reader.py [FOLDER] [--count N] [--rounds N]

FOLDER is what `sh deploy/compile.sh` made; without one the reader is compiled here first, which takes minutes. Both
read the same generated messages, each in a process of its own; the exit status is 1 where an outcome differs.
"""

from __future__ import annotations

import argparse
import json
import os
import subprocess
import sys
import tempfile
import time
from itertools import islice
from pathlib import Path
from statistics import median

TOP = Path(__file__).resolve().parents[2]
MOST_SHOWN = 20


def outcomes(count: int, rounds: int) -> None:
    """Prints which reader this is, what each message comes to, and the median seconds of one message: lines of JSON."""
    import engine.reading.read
    from engine.catalogue.catalogue import catalogue
    from tests.bench.generated_messages import LONGEST, messages, pasted_week

    known = catalogue()
    cases = list(islice(messages(5), count))
    cases += [(pasted_week()[:LONGEST], context) for _, context in cases[:6]]
    print(json.dumps(sys.modules["engine.reading.read"].__file__))
    for text, context in cases:
        print(json.dumps(repr(engine.reading.read(text, context, known))))
    taken: list[list[float]] = [[] for _ in cases]
    for _ in range(rounds):
        for at, (text, context) in enumerate(cases):
            start = time.perf_counter()
            engine.reading.read(text, context, known)
            taken[at].append(time.perf_counter() - start)
    print(json.dumps(median(map(median, taken))))


def told_in(folder: Path, count: int, rounds: int) -> list[str]:
    """What the product in this folder says of the messages, line by line."""
    command = [
        sys.executable,
        "-m",
        "tests.bench.compiled_reader",
        "--say",
        "--count",
        str(count),
        "--rounds",
        str(rounds),
    ]
    known = {**os.environ, "PYTHONPATH": str(TOP)}
    said = subprocess.run(command, cwd=folder, env=known, check=True, capture_output=True, text=True)
    return [json.loads(line) for line in said.stdout.splitlines()]


def compare(folder: Path, count: int, rounds: int) -> int:
    plain_from, *plain, plain_time = told_in(TOP, count, rounds)
    compiled_from, *compiled, compiled_time = told_in(folder, count, rounds)
    if not plain_from.endswith(".py") or compiled_from.endswith(".py"):
        print(f"{folder} holds no compiled reader: sh deploy/compile.sh {folder}", file=sys.stderr)
        return 1
    other = [(one, two) for one, two in zip(plain, compiled, strict=True) if one != two]
    for one, two in other[:MOST_SHOWN]:
        print(f"plain:    {one}\ncompiled: {two}\n")
    print(f"{len(plain)} messages, {len(other)} read differently")
    print(f"median of one: plain {float(plain_time) * 1e6:.0f} us, compiled {float(compiled_time) * 1e6:.0f} us")
    return int(bool(other))


def main() -> int:
    options = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    options.add_argument("folder", nargs="?", type=Path)
    options.add_argument("--count", type=int, default=10_000)
    options.add_argument("--rounds", type=int, default=5)
    options.add_argument("--say", action="store_true", help=argparse.SUPPRESS)
    chosen = options.parse_args()
    if chosen.say:
        outcomes(chosen.count, chosen.rounds)
        return 0
    if chosen.folder is not None:
        return compare(chosen.folder.resolve(), chosen.count, chosen.rounds)
    with tempfile.TemporaryDirectory() as made:
        folder = Path(made) / "compiled"
        subprocess.run([sys.executable, TOP / "deploy" / "compile.py", folder], check=True, capture_output=True)
        return compare(folder, chosen.count, chosen.rounds)


if __name__ == "__main__":
    sys.exit(main())
