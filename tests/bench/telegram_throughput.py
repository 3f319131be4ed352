"""Messages a second through the whole Telegram adapter, and its CPU per message, beside a plain echo bot's.

    python -m tests.bench.telegram_throughput [--rounds 3] [--messages 600] [--cases plain,durable,product]

plain      the chat library's own polling bot that echoes and keeps nothing
durable    our `serve` with a product that keeps one note a message: stored before confirmed, sent from the outbox
product    our `serve` with the real product, sets for an athlete without a plan

Each case runs in its own process against the stand-in on 127.0.0.1, the rounds interleaved; ratios are taken within a
round. "one": a message is sent when the last is answered. "many": 64 are under way, in 50 chats. The pace limits are
off for this measurement (they would hold every case at the platform's 25 messages a second).
"""

from __future__ import annotations

import argparse
import os
import statistics
import subprocess
import sys
import tempfile
import threading
import time
from collections import defaultdict
from dataclasses import dataclass
from pathlib import Path

from tests.telegram.standin import StandIn
from tests.telegram.standin_values import TOKEN, Call

ROOT = Path(__file__).resolve().parents[2]
CHATS = 50
LOADS = {"one": 1, "many": 64}


@dataclass(frozen=True)
class Measured:
    per_second: float
    median_ms: float
    p99_ms: float
    cpu_ms: float


class Load:
    """Keeps so many messages under way and notes how long each takes to its answer."""

    def __init__(self, server: StandIn, process: subprocess.Popen[bytes]) -> None:
        self._server = server
        self._process = process
        self._sent: dict[int, list[float]] = defaultdict(list)
        self._took: list[float] = []
        self._room = threading.Semaphore(0)
        server.on_call = self._saw

    def _saw(self, call: Call, phase: str) -> None:
        if call.method not in ("sendMessage", "editMessageText", "setMessageReaction") or phase != "after":
            return
        waiting = self._sent[int(call.params["chat_id"])]
        if waiting:
            self._took.append(time.perf_counter() - waiting.pop(0))
            self._room.release()

    def run(self, messages: int, window: int, first: int) -> Measured:
        self._took.clear()
        self._room = threading.Semaphore(window)
        cpu, began = _cpu(self._process.pid), time.perf_counter()
        for number in range(messages):
            assert self._room.acquire(timeout=30), f"no answer within 30 s; exit code {self._process.poll()}"
            chat = 1000 + number % CHATS
            self._sent[chat].append(time.perf_counter())
            self._server.says(chat, f"bench press {60 + (first + number) % 40} x {3 + number % 9}")
        for _ in range(window):
            assert self._room.acquire(timeout=30), f"no answer within 30 s; exit code {self._process.poll()}"
        wall = time.perf_counter() - began
        took = sorted(self._took)
        return Measured(
            messages / wall,
            1e3 * statistics.median(took),
            1e3 * took[int(0.99 * (len(took) - 1))],
            1e3 * (_cpu(self._process.pid) - cpu) / messages,
        )


def _cpu(pid: int) -> float:
    fields = Path(f"/proc/{pid}/stat").read_text().rsplit(")", 1)[1].split()
    return (int(fields[11]) + int(fields[12])) / os.sysconf("SC_CLK_TCK")


def _memory(pid: int) -> float:
    lines = Path(f"/proc/{pid}/status").read_text().splitlines()
    return next(int(line.split()[1]) / 1024 for line in lines if line.startswith("VmRSS"))


def _command(case: str, server: StandIn, folder: Path) -> list[str]:
    if case == "plain":
        return [sys.executable, "-m", "tests.bench.telegram_plain_echo", server.url, TOKEN]
    product = "echo" if case == "durable" else "real"
    return [
        *(sys.executable, "-m", "tests.telegram.bot_process", "--product", product, "--fast"),
        *("--database", f"sqlite:///{folder}/log.db", "--api", server.url),
    ]


def measure(case: str, messages: int) -> tuple[dict[str, Measured], float]:
    """One round of one case: a figure for each load, and the memory in MiB."""
    with StandIn() as server, tempfile.TemporaryDirectory() as folder:
        process = subprocess.Popen(_command(case, server, Path(folder)), cwd=ROOT, env={**os.environ, "NO_PROXY": "*"})
        if (os.cpu_count() or 1) > 1:
            os.sched_setaffinity(process.pid, {1})
            os.sched_setaffinity(0, {0})
        try:
            load = Load(server, process)
            load.run(100, 8, 0)  # warm-up
            found = {
                name: load.run(messages if window > 1 else messages // 3, window, 0) for name, window in LOADS.items()
            }
            return found, _memory(process.pid)
        finally:
            process.kill()
            process.wait()


def main() -> None:
    parser = argparse.ArgumentParser(description=(__doc__ or "").splitlines()[0])
    parser.add_argument("--rounds", type=int, default=3)
    parser.add_argument("--messages", type=int, default=600)
    parser.add_argument("--cases", default="plain,durable,product")
    given = parser.parse_args()
    cases = given.cases.split(",")
    rounds: list[dict[str, tuple[dict[str, Measured], float]]] = []
    for turn in range(given.rounds):
        order = cases[turn % len(cases) :] + cases[: turn % len(cases)]
        rounds.append({case: measure(case, given.messages) for case in order})
    print(
        f"{'case':10} {'load':6} {'msg/s':>7} {'p50 ms':>8} {'p99 ms':>8} {'CPU ms/msg':>11} {'ratio':>10} {'MiB':>6}"
    )
    for case in cases:
        for name in LOADS:
            rows = [each[case][0][name] for each in rounds]
            ratio = statistics.median(each[case][0][name].cpu_ms / each[cases[0]][0][name].cpu_ms for each in rounds)
            print(
                f"{case:10} {name:6} {statistics.median(row.per_second for row in rows):7.0f}"
                f" {statistics.median(row.median_ms for row in rows):8.2f}"
                f" {statistics.median(row.p99_ms for row in rows):8.2f}"
                f" {statistics.median(row.cpu_ms for row in rows):11.3f} {ratio:10.2f}"
                f" {statistics.median(each[case][1] for each in rounds):6.0f}"
            )


if __name__ == "__main__":
    main()
