"""Runs the bot on Telegram: poll, store, handle, send, tick; until told to stop.

    poll     fetch updates and commit them to the inbox; only the next poll, after the commit, confirms them
    handle   each chat's events in their order, one transaction each, chats side by side
    send     what the outbox holds, after the commit that put it there (outbox_sender)
    tick     what is due (reminders, summaries) into the outbox

All of it lives in the database: a process killed between any two steps goes on where it was.
"""

from __future__ import annotations

import asyncio
import gc
import logging
import signal
import sys
import threading
from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import datetime
from typing import Protocol

from bot.chats import Chats
from bot.clock import now
from bot.delivery import OtherPoller, OutOfReach, WrongToken
from bot.menus import Menus
from bot.outbox_sender import Sender
from bot.pace import Limits
from bot.poller import Poller
from bot.redact import TOKEN, log_to
from bot.telegram_adapter import Telegram
from bot.telegram_updates import SOURCE
from bot.ticker import ticking
from bot.writer import Writer
from engine.catalogue.catalogue import catalogue
from engine.reading import read
from engine.reading.days.dates import load_days_in_words
from engine.reading.values import Context
from storage.database import Database, open_database

log = logging.getLogger(__name__)

DONE, FAILED, MISCONFIGURED, CONFLICT = 0, 1, 2, 3
NO_TOKEN = (
    "CHALKWIRE_TOKEN is not set. Ask @BotFather in Telegram for a bot token and set it: CHALKWIRE_TOKEN=123:ABC..."
)
BAD_SHAPE = "CHALKWIRE_TOKEN is no bot token: expected digits, a colon and 35 letters, as @BotFather sends them."
WRONG = "Telegram does not know the bot of CHALKWIRE_TOKEN. Copy the token again from @BotFather (/mybots, API Token)."
TWO = "Another process fetches this bot's messages. Stop it first, or use a second token: one bot, one process."
LAST_WORDS = 5.0
"""Seconds that messages under way get to arrive when the process is told to stop."""

MENUS_EVERY = 3600.0
LONGEST_PAUSE = 30.0


@dataclass(frozen=True, slots=True)
class ServeSettings:
    """`api` is the Bot API server; `poll_seconds` how long it may hold a poll open (its own limit is 50)."""

    token: str = field(repr=False)
    database: str
    api: str = "https://api.telegram.org"
    poll_seconds: float = 30.0
    tick_seconds: float = 20.0
    call_seconds: float = 10.0
    limits: Limits = Limits()  # noqa: RUF009 (frozen)


class Product(Protocol):
    """What `bot.handle` offers."""

    def handle_next(self, source: str, chat: int) -> bool: ...

    def tick(self, now: datetime) -> int: ...


def run(
    settings: ServeSettings,
    product: Callable[[Database], Product],
    clock: Callable[[], datetime] = now,
) -> int:
    """Serve until SIGTERM or SIGINT; the exit code: 0 stopped, 2 not set up right, 3 two processes for one bot."""
    redacting = log_to(secrets=[settings.token])
    if not settings.token:
        return _complain(NO_TOKEN)
    if not TOKEN.fullmatch(settings.token):
        return _complain(BAD_SHAPE)
    try:
        database = open_database(settings.database)
    except Exception as error:
        log.debug("database not opened", exc_info=True)
        return _complain(redacting.clean(f"Cannot open the database {settings.database}: {error}"), FAILED)
    writer = Writer(database)
    threading.Thread(target=_load_ahead, daemon=True).start()
    try:
        return asyncio.run(_Server(settings, writer, product(database), clock).serve())
    except Exception:
        log.exception("stopped by a fault; everything received so far is stored")
        return FAILED
    finally:
        writer.close()
        database.close()


def _load_ahead() -> None:
    """What readings need and load once, so that no message waits for it, and no full collection walks it. (What is in
    hand at that moment is kept with it, which is little.)
    """
    read("squat 3x5 100", Context(), catalogue())
    load_days_in_words()
    gc.freeze()


def _complain(words: str, code: int = MISCONFIGURED) -> int:
    print(words, file=sys.stderr)
    return code


class _Server:
    def __init__(
        self, settings: ServeSettings, writer: Writer, product: Product, clock: Callable[[], datetime]
    ) -> None:
        self._writer = writer
        self._product = product
        self._clock = clock
        self._telegram = Telegram(settings.token, settings.api, settings.call_seconds)
        self._sender = Sender(SOURCE, self._telegram, writer, clock, settings.limits)
        self._chats = Chats(SOURCE, self._telegram, writer, product, self._sender.wake)
        self._poller = Poller(self._telegram, writer, self._chats, clock, settings.poll_seconds)
        self._menus = Menus(SOURCE, self._telegram, writer)
        self._ticker = ticking((self._tick, settings.tick_seconds), (self._menus.refresh, MENUS_EVERY))

    async def serve(self) -> int:
        work = asyncio.create_task(self._work())
        for name in (signal.SIGTERM, signal.SIGINT):
            asyncio.get_running_loop().add_signal_handler(name, work.cancel)
        try:
            await work
        except asyncio.CancelledError:
            log.info("stopped")
        except WrongToken:
            return _complain(WRONG)
        except OtherPoller:
            return _complain(TWO, CONFLICT)
        return DONE

    async def _work(self) -> None:
        try:
            username = await self._connected()
            log.info("serving as @%s", username)
            await self._telegram.present()
            await self._served()
        finally:
            await self._telegram.close()

    async def _connected(self) -> str:
        """The bot's user name, as soon as the platform answers."""
        pause = 1.0
        while True:
            try:
                return await self._telegram.open()
            except OutOfReach as trouble:
                if pause == 1.0:
                    log.warning("cannot reach Telegram yet, trying again until it answers: %s", trouble)
                await asyncio.sleep(max(pause, trouble.seconds))
                pause = min(LONGEST_PAUSE, pause * 2)

    async def _served(self) -> None:
        sending = asyncio.create_task(self._sender.run())
        polling = asyncio.create_task(self._poller.run())
        self._ticker.start()
        try:
            await self._chats.resume()
            ended, _ = await asyncio.wait({sending, polling}, return_when=asyncio.FIRST_COMPLETED)
            for task in ended:
                task.result()  # neither ends by itself: raises what ended it
        finally:
            self._ticker.shutdown(wait=False)
            polling.cancel()
            await self._chats.finish()
            self._sender.stop()
            await asyncio.wait({sending}, timeout=LAST_WORDS)
            sending.cancel()

    async def _tick(self) -> None:
        if await self._writer.call(lambda: self._product.tick(self._clock())):
            self._sender.wake()
