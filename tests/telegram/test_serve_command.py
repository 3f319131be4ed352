"""The command itself, as an operator starts it: `python -m bot serve`, told by the environment."""

from __future__ import annotations

import os
import signal
import subprocess
import sys
from pathlib import Path

from tests.telegram.standin import StandIn
from tests.telegram.standin_values import TOKEN

ROOT = Path(__file__).resolve().parents[2]


def _serve(folder: Path, **environment: str) -> subprocess.Popen[str]:
    return subprocess.Popen(
        [sys.executable, "-m", "bot", "serve", "--db", str(folder / "log.db")],
        cwd=ROOT,
        env={**os.environ, "NO_PROXY": "127.0.0.1", "CHALKWIRE_TOKEN": "", **environment},
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        text=True,
    )


def test_serve_answers_a_set_and_stops_when_told(server: StandIn, tmp_path: Path) -> None:
    with _serve(tmp_path, CHALKWIRE_TOKEN=TOKEN, CHALKWIRE_TELEGRAM_API=server.url) as process:
        try:
            server.says(7, "bench press 3x8 60")
            server.wait(lambda: any("60" in text for text in server.sent(7)), 30)
            process.send_signal(signal.SIGTERM)
            output = process.communicate(timeout=15)[0]
        finally:
            process.kill()

    assert process.returncode == 0
    assert TOKEN not in output


def test_serve_without_a_token_says_where_to_get_one(tmp_path: Path) -> None:
    with _serve(tmp_path) as process:
        output = process.communicate(timeout=30)[0]

    assert process.returncode == 2
    assert "@BotFather" in output
    assert len(output.strip().splitlines()) == 1
