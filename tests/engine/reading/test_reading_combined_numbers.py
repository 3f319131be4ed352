"""Sets told with two or three habits at once: lists, counts ahead, efforts, drops, sides and notes beside them."""

from __future__ import annotations

from pathlib import Path

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import readings, said

COMBINED = Path(__file__).with_name("combined_numbers.txt")
TOLD = "\n".join(line for line in COMBINED.read_text(encoding="utf-8").splitlines() if line and line[0] != "#")


@pytest.mark.parametrize(("text", "context", "meant"), readings(TOLD))
def test_every_number_finds_its_place_or_is_asked_about(text: str, context: Context, meant: str) -> None:
    outcome = said(text, context)

    assert outcome.startswith("ask") if meant == "ask" else outcome == meant
