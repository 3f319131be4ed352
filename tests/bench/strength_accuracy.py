"""How well current strength is estimated, on invented athletes whose strength is known.

Run: python tests/bench/strength_accuracy.py [athletes a group]
"""

from __future__ import annotations

import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

from tests.engine.strength.judged import GROUPS, Judged, JudgedLoads, judge, judge_loads

NOT_TUNED_ON = 90_000
"""The first seed: the filter's constants were chosen on athletes 50 000 to 50 020."""
COLUMNS = ("error", "rms", "bias", "last set", "+ called", "better", "in 90 %", "width")


def main() -> None:
    athletes = int(sys.argv[1]) if len(sys.argv) > 1 else 40
    print(f"{athletes} invented athletes a group; errors in % of the true maximum.")
    print("last set: Epley of the last set; + called: with the reserve told; better: than the better of the two.")
    print(f"{'group':<15}" + "".join(f"{name:>10}" for name in COLUMNS))
    for name, habits in GROUPS.items():
        print(f"{name:<15}" + _line(judge([habits], athletes, NOT_TUNED_ON)))
    print(f"{'all':<15}" + _line(judge(list(GROUPS.values()), athletes, NOT_TUNED_ON)))

    print("\nThe load for a target, a day ahead; errors in %.")
    print(f"{'group':<15}{'asked':>10}{'learning':>10}{'last day':>10}")
    for name, habits in GROUPS.items():
        print(f"{name:<15}" + _loads_line(judge_loads([habits], athletes, NOT_TUNED_ON)))
    print(f"{'all':<15}" + _loads_line(judge_loads(list(GROUPS.values()), athletes, NOT_TUNED_ON)))


def _loads_line(one: JudgedLoads) -> str:
    return "".join(f"{100 * share:>10.1f}" for share in (one.working, one.learning, one.last_session))


def _line(one: Judged) -> str:
    shares = (one.error, one.rms, one.bias, one.last_set, one.last_set_called, one.better_by, one.covered, one.width)
    return "".join(f"{100 * share:>10.1f}" for share in shares)


if __name__ == "__main__":
    main()
