"""A stand-in for the Bot API and a bot that talks to it, for each test."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from tests.telegram.running import BotProcess
from tests.telegram.standin import StandIn


@pytest.fixture(autouse=True)
def _no_proxy(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("NO_PROXY", "127.0.0.1")


@pytest.fixture
def server() -> Iterator[StandIn]:
    with StandIn() as running:
        yield running


@pytest.fixture
def bot(server: StandIn, tmp_path: Path) -> Iterator[BotProcess]:
    with BotProcess(server, tmp_path) as running:
        yield running
