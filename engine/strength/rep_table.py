"""The handbook table of repetitions against the share of the maximum, 1 to 10 repetitions.

Source: load chart of the NSCA Essentials of Strength Training and Conditioning. Past 10 repetitions the chart and the
book's table disagree (12 repetitions: 70 or 67 %), so nothing is given there.
"""

from __future__ import annotations

from collections.abc import Mapping
from decimal import Decimal
from types import MappingProxyType

SHARES: Mapping[int, Decimal] = MappingProxyType(
    {
        1: Decimal("1.00"),
        2: Decimal("0.95"),
        3: Decimal("0.93"),
        4: Decimal("0.90"),
        5: Decimal("0.87"),
        6: Decimal("0.85"),
        7: Decimal("0.83"),
        8: Decimal("0.80"),
        9: Decimal("0.77"),
        10: Decimal("0.75"),
    }
)


def share_of_maximum(reps: int) -> Decimal | None:
    """The share of the maximum that can be lifted `reps` times; None outside 1 to 10."""
    return SHARES.get(reps)


def reps_at(share: Decimal) -> int | None:
    """The most repetitions the table allows at a share of the maximum; None above all of it or under its last line."""
    if share < SHARES[10]:
        return None
    possible = [reps for reps, limit in SHARES.items() if share <= limit]
    return max(possible, default=None)
