"""No secret reaches a log, whichever way it gets into a record."""

from __future__ import annotations

import io
import logging
from collections.abc import Iterator
from urllib.parse import quote

import pytest

from bot.redact import HIDDEN, Redacting

TOKEN = "987654321:AAHsecretSECRETsecretSECRETsecretSE"
ODD = "odd-secret/of+ours"


@pytest.fixture
def logged() -> Iterator[tuple[logging.Logger, io.StringIO]]:
    stream = io.StringIO()
    handler = logging.StreamHandler(stream)
    handler.setFormatter(logging.Formatter("%(levelname)s %(message)s"))
    handler.addFilter(Redacting([ODD]))
    logger = logging.getLogger("tests.redact")
    logger.addHandler(handler)
    logger.propagate = False
    yield logger, stream
    logger.removeHandler(handler)


def _raise() -> None:
    try:
        raise ConnectionError(f"https://api.telegram.org/bot{TOKEN}/getMe")
    except ConnectionError as error:
        raise RuntimeError(f"no luck with {ODD}") from error


@pytest.mark.parametrize(
    ("message", "arguments"),
    [
        pytest.param(f"POST https://api.telegram.org/bot{TOKEN}/sendMessage", (), id="in the message"),
        pytest.param("POST %s done in %d ms", (f"https://api.telegram.org/bot{TOKEN}/x", 3), id="in an argument"),
        pytest.param("got %r", ([f"bot{TOKEN}"],), id="inside an argument"),
        pytest.param(f"path={quote(TOKEN, safe='')}", (), id="percent-encoded"),
        pytest.param("%d apples %s", (TOKEN, "x"), id="arguments that do not fit the format"),
        pytest.param(f"password {ODD}", (), id="another secret of ours"),
        pytest.param(f"password {quote(ODD, safe='')}", (), id="another secret, percent-encoded"),
    ],
)
def test_a_secret_is_hidden(
    logged: tuple[logging.Logger, io.StringIO], message: str, arguments: tuple[object, ...]
) -> None:
    logger, stream = logged
    logger.warning(message, *arguments)

    assert HIDDEN in stream.getvalue()
    assert "secret" not in stream.getvalue().lower()


def test_tracebacks_and_their_causes_are_clean(logged: tuple[logging.Logger, io.StringIO]) -> None:
    logger, stream = logged
    try:
        _raise()
    except RuntimeError:
        logger.exception("failed", stack_info=True)

    assert "ConnectionError: https://api.telegram.org/bot[token]/getMe" in stream.getvalue()
    assert "no luck with [token]" in stream.getvalue()
    assert TOKEN not in stream.getvalue()


@pytest.mark.parametrize(
    "harmless",
    [
        pytest.param("row 3x12 55 at 18:05", id="a set and a time"),
        pytest.param("listening on 127.0.0.1:8081", id="a port"),
        pytest.param("2026-03-02T18:05:00+00:00", id="an instant"),
    ],
)
def test_what_is_no_secret_stays(logged: tuple[logging.Logger, io.StringIO], harmless: str) -> None:
    logger, stream = logged
    logger.warning("%s", harmless)

    assert stream.getvalue() == f"WARNING {harmless}\n"
