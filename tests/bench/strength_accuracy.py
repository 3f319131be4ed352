"""How well current strength is estimated, on invented athletes whose strength is known.

Run: python tests/bench/strength_accuracy.py [athletes a group]
"""

from __future__ import annotations

import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

from tests.engine.strength.judged import GROUPS, judge

HEAD = f"{'group':<15}{'error':>7}{'rms':>7}{'bias':>7}{'last set':>10}{'+ called':>10}{'better':>8}{'(rms)':>7}{'in 90 %':>9}{'width':>7}"


def main() -> None:
    athletes = int(sys.argv[1]) if len(sys.argv) > 1 else 40
    print(f"{athletes} invented athletes a group; errors in % of the true maximum; better: than the better last-set value")
    print(HEAD)
    for name, habits in GROUPS.items():
        one = judge(habits, athletes, 50_000)
        print(
            f"{name:<15}{100 * one.error:>7.2f}{100 * one.rms:>7.2f}{100 * one.bias:>+7.2f}{100 * one.last_set:>10.2f}"
            f"{100 * one.last_set_called:>10.2f}{100 * one.better_by:>7.0f}%{100 * one.better_by_rms:>6.0f}%"
            f"{100 * one.covered:>8.1f}%{100 * one.width:>7.1f}"
        )


if __name__ == "__main__":
    main()
