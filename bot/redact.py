"""Keeps secrets out of every log line: one filter, and the set-up that puts it on every handler.

HTTP libraries log whole addresses, and the chat platform's addresses hold the bot's token; exceptions quote it too.
"""

from __future__ import annotations

import logging
import re
import sys
from collections.abc import Iterable
from typing import TextIO
from urllib.parse import quote

HIDDEN = "[token]"
TOKEN = re.compile(r"\d+(?::|%3A)[A-Za-z0-9_-]{30,}", re.IGNORECASE)
"""A bot token as the platform issues it, plain or percent-encoded."""

QUIETER = {
    "httpx": logging.WARNING,  # each request, with its address, at INFO
    "httpcore": logging.WARNING,
    "telegram": logging.WARNING,
    "apscheduler": logging.ERROR,  # a warning for each tick that comes while a long one still runs
}


class Redacting(logging.Filter):
    """Rewrites each record, its traceback included, before a handler sees it."""

    def __init__(self, secrets: Iterable[str] = ()) -> None:
        super().__init__()
        spelled = {form for secret in secrets if len(secret) >= 8 for form in (secret, quote(secret, safe=""))}
        self._secrets = sorted(spelled, key=len, reverse=True)
        self._traceback = logging.Formatter()

    def clean(self, text: str) -> str:
        for secret in self._secrets:
            text = text.replace(secret, HIDDEN)
        return TOKEN.sub(HIDDEN, text)

    def filter(self, record: logging.LogRecord) -> bool:
        record.msg, record.args = self.clean(_message(record)), None
        if record.exc_info:
            # A formatter would render the exception again from exc_info, past this filter.
            record.exc_text = self._traceback.formatException(record.exc_info)
            record.exc_info = None
        if record.exc_text:
            record.exc_text = self.clean(record.exc_text)
        if record.stack_info:
            record.stack_info = self.clean(record.stack_info)
        return True


def _message(record: logging.LogRecord) -> str:
    try:
        return record.getMessage()
    except (TypeError, ValueError):  # wrong arguments for the format: logging would print both, unfiltered
        return f"{record.msg} {record.args}"


def log_to(stream: TextIO | None = None, *, secrets: Iterable[str] = (), level: int = logging.INFO) -> Redacting:
    """Send all logging to `stream` (standard error if None), every handler behind one redacting filter."""
    redacting = Redacting(secrets)
    root = logging.getLogger()
    handler = logging.StreamHandler(stream or sys.stderr)
    handler.setFormatter(logging.Formatter("%(asctime)s %(levelname)s %(name)s: %(message)s"))
    root.addHandler(handler)
    root.setLevel(level)
    for name, least in QUIETER.items():
        logging.getLogger(name).setLevel(least)
    logging.captureWarnings(True)
    for each in (*root.handlers, *_other_handlers()):
        each.addFilter(redacting)
    return redacting


def _other_handlers() -> Iterable[logging.Handler]:
    for logger in list(logging.root.manager.loggerDict.values()):
        if isinstance(logger, logging.Logger):
            yield from logger.handlers
