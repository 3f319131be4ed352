"""Numbers with their units as a coach types them: 42.5 kg, 52,5kg, 90 s, 2:30, 1½ min, 8-12.

A decimal comma counts where no space follows it. Words are read in any case.
"""

from __future__ import annotations

from decimal import Decimal

from engine.values.load import Unit

NUMBER = r"\d{1,6}(?:[.,]\d{1,3}(?!\d))?"
DASH = r" ?(?:-|–|—|to) ?"
UNIT = r"(?:kgs?|kilos?|kilogram(?:me)?s?|k|кг|lbs?|pounds?|#)(?!\w)"
TIMES = r"[x×✕*х]"
SECONDS = r"(?:seconds?|secs?|s|\"|″)(?!\w)"
MINUTES = r"(?:minutes?|mins?|m(?:in)?|'|′)(?!\w)"
METRES = r"(?:metres?|meters?|mtrs?|m)(?!\w)"
YARDS = r"(?:yards?|yds?)(?!\w)"
KILOMETRES = r"(?:kilomet(?:re|er)s?|km)(?!\w)"

POUND_SIGNS = frozenset("lp#")
METRES_A_YARD = Decimal("0.9144")
"""Exact by definition of the international yard. Source: NIST SP 811 (2008), appendix B."""
SECONDS_A_MINUTE = 60


def number(typed: str) -> Decimal:
    """The number typed, with a decimal point or comma."""
    return Decimal(typed.replace(",", "."))


def unit_of(typed: str | None) -> Unit | None:
    """The unit typed; None where none was."""
    if not typed:
        return None
    return Unit.LB if typed[0].lower() in POUND_SIGNS else Unit.KG


def share(percent: str) -> Decimal:
    """A percentage as a share: 70 is 0.7."""
    return number(percent) / 100


def span(low: str, high: str | None) -> tuple[Decimal, bool]:
    """The number typed or the middle of the two, and whether there were two."""
    if high is None:
        return number(low), False
    return (number(low) + number(high)) / 2, True
