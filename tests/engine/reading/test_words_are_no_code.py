"""No module of the reader holds words of a language with letters of its own: they belong to the language files."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from pathlib import Path

READING = Path(__file__).parents[3] / "engine" / "reading"
ALLOWED = {
    ("said_apart", "CUT"),
    ("tokens", "SIGNS"),
    ("tokens", "POINT"),
    ("tokens", "UNITS_AHEAD"),
    ("tokens", "PATTERN"),
    ("tokens", "LOOKS_BESIDE"),
}
"""Signs, units beside signs, and patterns that cut a text before its words are known."""


def _lists(module: Path) -> Iterator[tuple[str, set[str]]]:
    """Each name that the module gives a value, with the texts in it that have letters outside ASCII."""
    for statement in ast.parse(module.read_text(encoding="utf-8")).body:
        if not isinstance(statement, ast.Assign | ast.AnnAssign) or statement.value is None:
            continue
        target = statement.targets[0] if isinstance(statement, ast.Assign) else statement.target
        texts = {one.value for one in ast.walk(statement.value) if isinstance(one, ast.Constant)}
        yield (
            ast.unparse(target),
            {
                text
                for text in texts
                if isinstance(text, str) and any(letter.isalpha() and not letter.isascii() for letter in text)
            },
        )


def test_words_with_letters_of_a_language_stand_in_its_file():
    found = {(module.stem, name): texts for module in READING.rglob("*.py") for name, texts in _lists(module) if texts}

    assert {place: texts for place, texts in found.items() if place not in ALLOWED} == {}


def test_every_exception_is_still_one():
    found = {(module.stem, name) for module in READING.rglob("*.py") for name, texts in _lists(module) if texts}

    assert found >= ALLOWED
