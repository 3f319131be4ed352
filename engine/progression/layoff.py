"""Time away lowers the first session back.

0 to 14 days 100 %, 15 to 28 days 95 %, 29 to 56 days 90 %, then 85 % and past twelve weeks 80 %, rounded down.
These shares are ours, between published anchors; common practice, no source. The anchors: up to four weeks strength is
readily kept (Mujika & Padilla 2001, Med Sci Sports Exerc 33:1297); four to eight weeks take 7 to 12 % (in Izquierdo et
al. 2007, J Strength Cond Res 21:768); what ten weeks took was back after about five (Halonen et al. 2024, Scand J Med
Sci Sports).

Decided: days count from the last day the exercise was trained in any session, deload weeks included: a missed week by
itself changes nothing. Only the first session back is lowered; from then on the rule goes on, and the ceiling on one
step makes the way back gradual.
"""

from __future__ import annotations

from datetime import date
from decimal import Decimal

FULL = Decimal(1)
UNTOUCHED = 14
"""The last day away that costs nothing."""

SHARES = ((UNTOUCHED, FULL), (28, Decimal("0.95")), (56, Decimal("0.90")), (84, Decimal("0.85")))
"""The last day away of each share; past them all `LONG`."""

LONG = Decimal("0.80")


def days_away(last_trained: date | None, today: date) -> int:
    """Days since the exercise was last trained; 0 where it never was."""
    return 0 if last_trained is None else max(0, (today - last_trained).days)


def layoff_share(days: int) -> Decimal:
    """The share of the load that a session after so many days away takes."""
    return next((share for last, share in SHARES if days <= last), LONG)
