"""The short road past days and marks: plain sets are read as the long road reads them."""

from __future__ import annotations

from hypothesis import given, settings
from hypothesis import strategies as st

from engine.catalogue.catalogue import catalogue
from engine.reading.gathering import gathered, gathered_with_care
from engine.reading.lexing.lexer import Lexer
from engine.reading.values import Context
from engine.reading.words.pieces import kinds_of
from engine.reading.words.tokens import clean, tokenize
from tests.engine.reading.saying import NOW

PARTS = (
    "bench", "squat", "leg press", "3", "8", "12", "100", "82.5", "4010", "30s", "45 sec", "60kg", "7am", "1:30", "40m",
    "x", " x ", ", ", ",", "@", " @ ", " ", " ", "5k", "10%", "two", "half", "*",
)  # fmt: skip


@settings(max_examples=400)
@given(st.lists(st.sampled_from(PARTS), min_size=1, max_size=12).map("".join))
def test_plain_sets_are_gathered_alike_on_both_roads(text: str) -> None:
    pieces = Lexer(tokenize(clean(text)), catalogue(), {}).run()
    kinds, context = kinds_of(pieces), Context(now=NOW)

    assert gathered(pieces, kinds, context) == gathered_with_care(pieces, kinds, context)
