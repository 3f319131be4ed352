"""Starts bots quickly: each is forked from a process that has imported everything, and is a process of its own."""

from __future__ import annotations

import multiprocessing
import os
import sys
from collections.abc import Sequence
from multiprocessing.process import BaseProcess
from pathlib import Path

from tests.telegram.bot_process import main

FORKS = multiprocessing.get_context("forkserver")
# What the bot would import, and build out of its words, on its way.
WORDS = "tests.telegram.words_known"
LAZY = ("httpcore", "anyio._backends._asyncio", "sniffio", "sqlite3", "sqlalchemy.dialects.sqlite", "h11", "tzlocal")
FORKS.set_forkserver_preload(["__main__", "tests.telegram.bot_process", "bot.handle", WORDS, *LAZY])


def fork(options: Sequence[str], output: Path) -> BaseProcess:
    """A running bot; what it prints is appended to `output`."""
    process = FORKS.Process(target=_run, args=(list(options), str(output)))
    process.start()
    return process


def _run(options: list[str], output: str) -> None:
    log = os.open(output, os.O_WRONLY | os.O_CREAT | os.O_APPEND)
    os.dup2(log, 1)
    os.dup2(log, 2)
    sys.exit(main(options))
