"""What `chalkwire read --jsonl` answers where no set is told."""

from __future__ import annotations

import io
import json

import pytest

from bot.read_command import read_lines


def answers(*texts: str, unit: str = "kg") -> list[dict[str, object]]:
    lines = [json.dumps({"id": text, "text": text, "context": {"unit": unit}}) for text in texts]
    sink = io.StringIO()
    read_lines(io.StringIO("\n".join(lines)), sink)
    return [json.loads(line) for line in sink.getvalue().splitlines()]


@pytest.mark.parametrize(
    ("text", "unit", "weight", "told"),
    [
        ("weighed 78.6 today", "kg", 78.6, "kg"),
        ("weighed in at 81,4 this morning", "kg", 81.4, "kg"),
        ("bw: 180", "lb", 180, "lb"),
        ("bodyweight 83.2 kg", "lb", 83.2, "kg"),
    ],
)
def test_a_body_weight_told_is_no_set(text, unit, weight, told):
    (answer,) = answers(text, unit=unit)

    assert answer == {"id": text, "outcome": "no-sets", "bodyweight": weight, "unit": told}


def test_a_request_for_the_body_weight_stays_one():
    (answer,) = answers("/bodyweight")

    assert answer["outcome"] == "action"
