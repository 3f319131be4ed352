"""Numbers as they are typed, against babel: what it takes for ten times as much must never be recorded so."""

from __future__ import annotations

from decimal import Decimal

import pytest
from babel.numbers import NumberFormatError, format_decimal, parse_decimal

from engine.catalogue.catalogue import catalogue
from engine.reading.read import read
from engine.reading.values import Asked, Context, Logged
from tests.external.sources import PRACTICE, published, row

CLDR = published("Unicode CLDR", None, "number patterns, as babel carries them")


def loads_logged(text: str) -> list[Decimal]:
    found = read(text, Context(), catalogue())
    return [one.load.amount for one in found.sets if one.load is not None] if isinstance(found, Logged) else []


@pytest.mark.parametrize(
    ("source", "typed", "locale", "amount"),
    [
        row("LIB-01", CLDR, "62,5", "de", "62.5"),
        row("LIB-02 strict", CLDR, "62.5", "en_US", "62.5"),
        row("comma in French", CLDR, "102,5", "fr", "102.5"),
        row("quarter kilograms", CLDR, "61,25", "es", "61.25"),
    ],
)
def test_a_decimal_mark_of_either_kind_is_read(source, typed, locale, amount):
    assert parse_decimal(typed, locale=locale, strict=True) == Decimal(amount), source
    assert loads_logged(f"bench press {typed} kg x 5") == [Decimal(amount)]


@pytest.mark.parametrize(
    ("source", "typed", "locale"), [row("LIB-02", CLDR, "62,5", "en_US"), row("LIB-03", CLDR, "62.5", "de")]
)
def test_what_babel_reads_tenfold_when_not_strict_we_never_do(source, typed, locale):
    assert parse_decimal(typed, locale=locale) == 625, source
    with pytest.raises(NumberFormatError):
        parse_decimal(typed, locale=locale, strict=True)
    assert loads_logged(f"bench press {typed} kg x 5") == [Decimal("62.5")]


@pytest.mark.parametrize(("source", "text"), [row("LIB-04", PRACTICE, "bench press 62,5 kg x 5")])
def test_a_comma_is_a_decimal_mark_or_a_question(source, text):
    found = read(text, Context(), catalogue())

    assert isinstance(found, Logged | Asked), source
    assert Decimal(625) not in loads_logged(text)


@pytest.mark.parametrize("locale", ["de", "fr", "es", "en_GB"])
def test_loads_as_each_locale_writes_them_are_read_back(locale):
    for amount in ("27.5", "62.5", "81.25", "102.5", "142.5"):
        typed = format_decimal(Decimal(amount), locale=locale)
        assert loads_logged(f"bench press {typed} kg x 5") == [Decimal(amount)], typed
