"""How long reading a plan takes as its text grows, kind texts and unkind ones. Run: python tests/bench/plan_text.py"""

from __future__ import annotations

import sys
from pathlib import Path
from time import perf_counter

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

from engine.catalogue.catalogue import catalogue
from engine.plan import parse_plan
from engine.values.load import Unit

LINE = "A1 dumbbell lateral raise 3x12-15 at 8 kg, then +1 kg, rest 90 s, cue: slow down, swap cable lateral raise\n"
UNKIND = {
    "digits": "9" * 1000,
    "commas": "1," * 500,
    "shares": "70 % then " * 100,
    "cues": "cue: a, " * 125,
    "downs": "after 3 misses down down down " * 33,
    "words": "a " * 500,
    "weeks": "weeks 1 and " * 80,
    "quotes": 'cue: "' * 160,
    "names": "barbell back squat " * 50,
}


def main() -> int:
    for lines in (25, 100, 400):
        text = f"plan: long, 8 weeks\nday mon: a\n{LINE * lines}"
        print(f"{lines} exercise lines: {_ms(text):.1f} ms, {_ms(text) / lines:.3f} ms a line")
    for name, one in UNKIND.items():
        short, long = _ms(one), _ms(one * 2)
        print(f"one line of {name}: {len(one)} characters {short:.1f} ms, twice as long {long:.1f} ms")
    return 0


def _ms(text: str) -> float:
    parse_plan(text, catalogue(), Unit.KG)
    start = perf_counter()
    parse_plan(text, catalogue(), Unit.KG)
    return 1000 * (perf_counter() - start)


if __name__ == "__main__":
    raise SystemExit(main())
