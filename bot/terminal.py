"""The chat in a terminal: the same product, one line a message, buttons as numbers behind a colon.

    row 3x12 55        a message                :1              the first button of the last reply
    :edit row 3x12 60  edits the last message   :send plan.txt  sends a document
    :as kit            be somebody else         :quit           leave (quit, exit, Ctrl-D)

With standard input not a terminal it reads lines and prints replies plainly.
"""

from __future__ import annotations

import sys
import tempfile
import threading
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from datetime import UTC, datetime
from pathlib import Path

from bot import clock
from bot.demo import DEMO_ATHLETE, seed
from bot.handle import Product
from bot.messages import Document, Inbound, InboundKind
from bot.product_settings import database_url, user_data_directory
from bot.terminal_view import hint, shown
from engine.reading.days.dates import load_days_in_words
from storage.database import Database, open_database
from storage.envelopes import Delivery, OutboxId, OutboxState
from storage.records import Person

SOURCE = "terminal"
TICK_SECONDS = 5
WAITING = 50
"""At most so many messages that came meanwhile are shown."""
LARGEST_DOCUMENT = 20 * 1024 * 1024


class Terminal:
    """One person at the keyboard at a time; the others' messages wait in the database."""

    def __init__(self, database: Database, product: Product, name: str, now: Callable[[], datetime]) -> None:
        self._database = database
        self._product = product
        self._now = now
        self._last: Delivery | None
        self._messages: list[int]
        self.be(name)

    def be(self, name: str) -> None:
        """Nothing; this person is at the keyboard from now on."""
        self.name = name
        self._chat = self._chat_of(name)
        self._messages = []
        self._last = None
        self._seen = self._shown_last()

    def _chat_of(self, name: str) -> int:
        """A chat number for a name: the one in use, or a new one."""
        with self._database.transaction() as store:
            people = [person for person in store.people.everyone() if person.source == SOURCE]
        known = [person.chat for person in people if person.name.casefold() == name.casefold()]
        return known[0] if known else max((person.chat for person in people), default=0) + 1

    def _person(self) -> Person | None:
        with self._database.transaction() as store:
            return store.people.find(SOURCE, self._chat)

    def _shown_last(self) -> OutboxId:
        person = self._person()
        if person is None:
            return OutboxId(0)
        with self._database.transaction() as store:
            last = store.outbox.latest(person.id, WAITING)
        shown_before = [delivery.id for delivery in last if delivery.state is OutboxState.SENT]
        return max(shown_before, default=OutboxId(0))

    def enter(self, line: str) -> Iterator[str]:
        """What is printed for one line typed."""
        if not line.strip():
            return
        if line.startswith(":"):
            yield from self._command(line[1:].strip())
            return
        number = self._number()
        if not line.startswith("/start"):
            self._messages.append(number)
        yield from self._receive(InboundKind.MESSAGE, number, line.replace("\\n", "\n"))

    def _command(self, said: str) -> Iterator[str]:
        word, _, rest = said.partition(" ")
        if word.isdecimal():
            yield from self._tap(int(word))
        elif word == "edit" and self._messages:
            yield from self._receive(InboundKind.EDIT, self._messages[-1], rest.replace("\\n", "\n"))
        elif word == "send":
            yield from self._send(rest.strip())
        elif word == "as" and rest.strip():
            self.be(rest.strip())
            yield f"You are {self.name} now."
            yield from self.news()
        else:
            yield hint()

    def _tap(self, number: int) -> Iterator[str]:
        buttons = [button for row in self._last.outgoing.buttons for button in row] if self._last else []
        if not 1 <= number <= len(buttons) or self._last is None:
            yield f"No button {number}: the last reply has {len(buttons)}."
            return
        yield from self._receive(InboundKind.TAP, self._last.id, buttons[number - 1][1])

    def _send(self, name: str) -> Iterator[str]:
        path = Path(name).expanduser()
        if not path.is_file():
            yield f"No file {name} here. Nothing sent."
            return
        if path.stat().st_size > LARGEST_DOCUMENT:
            yield f"{name} is over 20 MB. Nothing sent."
            return
        number = self._number()
        self._messages.append(number)
        yield from self._receive(InboundKind.DOCUMENT, number, "", Document(path.name, path.read_bytes()))

    def _number(self) -> int:
        """Message numbers grow with the clock, so that a new process goes on where the last one stopped."""
        number = int(self._now().timestamp() * 1000)
        return max(number, (self._messages[-1] + 1) if self._messages else 0)

    def _receive(self, kind: InboundKind, message: int, text: str, document: Document | None = None) -> Iterator[str]:
        now = self._now()
        key = f"{self._chat}:{kind.value}:{message}:{now.timestamp()}"
        self._product.receive(Inbound(SOURCE, self._chat, key, kind, message, text, now, self.name, document))
        yield from self.news()

    def news(self) -> Iterator[str]:
        """What came for this person since last time."""
        person = self._person()
        if person is None:
            return
        with self._database.transaction() as store:
            fresh = store.outbox.after(self._seen, person.id)
            for delivery in fresh:
                store.outbox.mark_sent(delivery.id, delivery.id, self._now())
        for delivery in fresh:
            self._seen = delivery.id
            if delivery.outgoing.kind != "react":
                self._last = delivery if delivery.outgoing.buttons else self._last
            yield shown(delivery)

    def tick(self) -> Iterator[str]:
        """What has fallen due meanwhile."""
        self._product.tick(self._now())
        yield from self.news()


def run(*, name: str, url: str | None, demo: bool) -> int:
    """The exit status of a chat."""
    with _database(url, demo) as (database, now):
        product = Product(database, clock.machine_zone())
        who = DEMO_ATHLETE if demo and name == "me" else name
        if demo:
            seed(database, now(), clock.machine_zone())
        terminal = Terminal(database, product, who, now)
        if not sys.stdin.isatty():
            return _plain(terminal)
        threading.Thread(target=load_days_in_words, daemon=True).start()  # while she reads the first words
        return _edited(terminal, demo)


@contextmanager
def _database(url: str | None, demo: bool) -> Iterator[tuple[Database, Callable[[], datetime]]]:
    """A demo keeps nothing: its database goes when it ends, unless one is named."""
    with tempfile.TemporaryDirectory() as folder:
        where = f"sqlite:///{Path(folder) / 'demo.db'}" if demo and url is None else database_url(url)
        database = open_database(where)
        try:
            yield database, clock.now
        finally:
            database.close()


LEAVING = frozenset((":quit", "quit", "exit"))
"""In a messenger "quit" stops the messages; at a prompt it means what it means at every prompt."""


def leaves(line: str) -> bool:
    """Whether a line typed at the terminal leaves the chat."""
    return line.strip().lower() in LEAVING


def _plain(terminal: Terminal) -> int:
    line = None
    for line in sys.stdin:
        if leaves(line):
            break
        for text in terminal.enter(line.rstrip("\n")):
            print(text, flush=True)
    if line is None:
        print(hint())
    return 0


def _edited(terminal: Terminal, demo: bool) -> int:
    from apscheduler.schedulers.background import BackgroundScheduler
    from prompt_toolkit import PromptSession
    from prompt_toolkit.history import FileHistory, InMemoryHistory
    from prompt_toolkit.patch_stdout import patch_stdout

    directory = user_data_directory()
    directory.mkdir(parents=True, exist_ok=True, mode=0o700)
    history = InMemoryHistory() if demo else FileHistory(str(directory / "history"))
    session: PromptSession[str] = PromptSession(history=history)

    def tick() -> None:
        for text in terminal.tick():
            print(text)

    scheduler = BackgroundScheduler(timezone=UTC, job_defaults={"misfire_grace_time": None, "coalesce": True})
    scheduler.add_job(tick, "interval", seconds=TICK_SECONDS)
    print(hint(demo=demo))
    with patch_stdout():
        scheduler.start()
        try:
            while not leaves(line := session.prompt(f"{terminal.name}> ").rstrip()):
                for text in terminal.enter(line):
                    print(text)
        except EOFError:
            pass
        finally:
            scheduler.shutdown(wait=False)
    return 0
