"""No regular expression of the reader repeats a repetition: each takes linear time, whatever the text."""

from __future__ import annotations

import importlib
import pkgutil
import re
from collections.abc import Iterator
from re import _constants as kinds  # type: ignore[attr-defined]
from re import _parser as parser  # type: ignore[attr-defined]

import pytest

import engine

REPEATS = (kinds.MAX_REPEAT, kinds.MIN_REPEAT, kinds.POSSESSIVE_REPEAT)
MANY = 10
"""A part that may come this often counts as repeated; an optional one, or one or two digits, do not."""


def _patterns() -> Iterator[tuple[str, re.Pattern[str]]]:
    for module in pkgutil.walk_packages(engine.__path__, "engine."):
        for name, value in vars(importlib.import_module(module.name)).items():
            if isinstance(value, re.Pattern):
                yield f"{module.name}.{name}", value


def repeats_a_repetition(pattern: re.Pattern[str]) -> bool:
    return _nested(parser.parse(pattern.pattern, pattern.flags & ~re.UNICODE), inside=False)


def _nested(parsed, inside: bool) -> bool:
    """Whether a part that comes many times holds another one; a group, a branch and a look-ahead are walked into."""
    for kind, argument in parsed:
        many = kind in REPEATS and argument[1] >= MANY
        if many and inside:
            return True
        if any(_nested(part, inside or many) for part in _parts(argument)):
            return True
    return False


def _parts(argument) -> Iterator[object]:
    if isinstance(argument, parser.SubPattern):
        yield argument
    elif isinstance(argument, list | tuple):
        for one in argument:
            yield from _parts(one)


def test_the_patterns_are_found():
    assert len(dict(_patterns())) > 5


@pytest.mark.parametrize(
    ("name", "pattern"), list(_patterns()), ids=lambda value: value if isinstance(value, str) else ""
)
def test_no_pattern_repeats_a_repetition(name, pattern):
    assert not repeats_a_repetition(pattern), name


@pytest.mark.parametrize("written", [r"(a+)+b", r"(?:x|y*)*", r"(\d+,)*", r"(?:[a-z]+(?:'[a-z]+)?)+", r"(?=(a*b)*)"])
def test_a_nested_one_is_told(written):
    assert repeats_a_repetition(re.compile(written))


@pytest.mark.parametrize("written", [r"a+b+", r"(?:ab)*c?", r"\d{1,2}(?:\.\d+)?", r"(?:[xX]{1,2})+"])
def test_a_plain_one_is_not(written):
    assert not repeats_a_repetition(re.compile(written))
