"""The short roads of the token pattern: what most messages are made of is met early, and read as it always was."""

from __future__ import annotations

import re
from unicodedata import normalize

from hypothesis import given, settings
from hypothesis import strategies as st

from engine.reading.words import tokens
from engine.reading.words.tokens import PATTERN, clean, cut, tokenize, told

SHORT_ROADS = ("plainnumber", "plaintimes", "plainword")
ROADS = PATTERN.pattern.split("\n  | ")
FIRST, *OTHERS = (road for road in ROADS[1:] if not any(f"<{short}>" in road for short in SHORT_ROADS))
LONG_ROAD = re.compile("\n  | ".join([f"\\ ?+(?:{FIRST}", *OTHERS]), PATTERN.flags)
FRAGMENTS = (
    "x", "X", "х", "×", "c", "z", "s", "m", "kg", "kgs", "lb", "кг", "bw", "bar", "sec", "h", "min", "st", "th", "max",
    "amrap", "o", "½", " ", "  ", "\n", ",", ".", "/", "-", "'", '"', ":", ";", "@", "&", "é", "ß", "K", "ſ", "1", "12",
    "3", "80", "5", "bench", "a", "ab", "abc", "xx", "xxx", "D3", "_", "#", "%", "°", "٣", "ª", "²", "1h", "30", "am",
    "l", "r", "?", "!", "(", ")", "82.5", "=", ">", "->", "=>", "nd", "rd", "la", "de", "4e", "2a", "º", "-й",
)  # fmt: skip
PARTS = (
    "x5",
    "x",
    "x10,",
    "x1½",
    "xx",
    "x.5",
    "*",
    "*2",
    "×",
    "5×",
    "a1",
    "(b2",
    "e1,",
    "A2",
    "80",
    "80x",
    "kgx5",
    "sx5",
)
texts = st.one_of(
    st.lists(st.sampled_from(FRAGMENTS), max_size=12).map("".join),
    st.lists(st.sampled_from((*PARTS, *FRAGMENTS)), max_size=8).map(" ".join),
    st.text(max_size=30),
)


def by_the_long_road(cleaned: str) -> list[tuple[object, ...]]:
    found: list[tuple[object, ...]] = []
    for match in LONG_ROAD.finditer(cleaned):
        group = match.lastgroup or ""
        found.append((*told(group, match[group])[:2], *match.span(group), told(group, match[group])[2]))
    return found


@settings(max_examples=400)
@given(texts)
def test_the_short_roads_read_as_the_long_one(text: str) -> None:
    cleaned = clean(normalize("NFC", text))

    read = [(token.shape, token.text, token.start, token.end, token.value) for token in tokenize(cleaned)]

    assert read == by_the_long_road(cleaned)


@settings(max_examples=1_000)
@given(texts)
def test_parts_between_spaces_hold_the_tokens_of_the_whole(text: str) -> None:
    cleaned = clean(normalize("NFC", text))

    assert tokenize(cleaned) == cut(cleaned)


def test_the_long_road_knows_no_short_one() -> None:
    assert not set(SHORT_ROADS) & set(LONG_ROAD.groupindex)
    assert set(SHORT_ROADS) <= set(tokens.GROUPS)
