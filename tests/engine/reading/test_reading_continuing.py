"""Sets that go on from the ones that stand, with talk between."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import log_after


@pytest.mark.parametrize(
    ("messages", "standing"),
    [],
)
def test_continuing(messages: tuple[str, ...], standing: str) -> None:
    assert log_after(*messages) == standing
