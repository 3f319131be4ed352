"""Plays a transcript through the product with the transcript's own clock and prints every reply.

The same `handle` as live, on a fresh database or one given. Whatever falls due between two lines is done in its
order before the later one. A person's times are by her own clock: UTC until she tells her zone.
"""

from __future__ import annotations

import json
import sys
from collections.abc import Iterator, Mapping
from datetime import date, datetime, timedelta
from pathlib import Path
from typing import Any, TextIO

from bot.product_settings import database_url
from bot.replies.structured import set_json
from bot.story import StoryError
from bot.story_player import NoSuchButton, StoryPlayer
from storage.database import Database, open_database
from storage.envelopes import Delivery

FORMER = timedelta(days=36525)


class Beside(Mapping[str, bytes]):
    """The files of a folder by name, read when asked for."""

    def __init__(self, folder: Path) -> None:
        self._folder = folder

    def __getitem__(self, name: str) -> bytes:
        path = self._folder / name
        if not path.is_file():
            raise KeyError(name)
        return path.read_bytes()

    def __iter__(self) -> Iterator[str]:
        return (path.name for path in self._folder.iterdir())

    def __len__(self) -> int:
        return sum(1 for _ in self)


def run(file: str, url: str | None, *, jsonl: bool, sets: str | None, pictures: str | None) -> int:
    """The exit status: 0 unless the product failed or a line could not be played."""
    path = Path(file)
    try:
        story = path.read_text(encoding="utf-8")
    except OSError as error:
        print(f"cannot read {file}: {error.strerror}", file=sys.stderr)
        return 2
    except UnicodeDecodeError:
        print(f"cannot read {file}: it is no UTF-8 text", file=sys.stderr)
        return 2
    database = open_database(database_url(url) if url else "sqlite://")
    replay = StoryPlayer(database, Beside(path.resolve().parent))
    status = 0
    try:
        for delivery in replay.play(story):
            show(replay, delivery, jsonl=jsonl, out=sys.stdout)
            _keep_file(delivery, pictures)
        failed = _failures(database, replay.now)
        if failed:
            print(f"the product failed on: {'; '.join(failed)}", file=sys.stderr)
            status = 1
    except (StoryError, NoSuchButton) as error:
        print(f"{file}: {error}", file=sys.stderr)
        status = 2
    if sets is not None:
        Path(sets).write_text("".join(f"{line}\n" for line in standing(replay)), encoding="utf-8")
    database.close()
    return status


def show(replay: StoryPlayer, delivery: Delivery, *, jsonl: bool, out: TextIO) -> None:
    """Nothing; one outgoing message is printed."""
    at = replay.wall_time(delivery)
    name = next((player.name for player in replay.players.values() if player.chat == delivery.chat), "?")
    if jsonl:
        print(json.dumps(as_json(delivery, name, at), ensure_ascii=False), file=out)
        return
    out.write(as_text(delivery, name, at))


def as_json(delivery: Delivery, name: str, at: datetime) -> dict[str, Any]:
    """One outgoing message as the contract has it; `at` is by the person's own clock."""
    outgoing = delivery.outgoing
    message = outgoing.edits if outgoing.edits is not None else outgoing.message
    line: dict[str, Any] = {
        "at": at.isoformat(timespec="minutes"),
        "to": name,
        "kind": outgoing.kind,
        "id": delivery.id if message is None else message,
        "text": outgoing.text,
        "buttons": [[label for label, _ in row] for row in outgoing.buttons],
    }
    if outgoing.silent:
        line["silent"] = True
    if outgoing.attachment_name is not None:
        line |= {"picture": True} if outgoing.attachment_is_picture else {"document": outgoing.attachment_name}
    return line | dict(outgoing.extras)


def as_text(delivery: Delivery, name: str, at: datetime) -> str:
    """One outgoing message for a person to read."""
    outgoing = delivery.outgoing
    verb = {"send": "to", "edit": "edit, to", "react": "thumbs up, to"}[outgoing.kind]
    head = f"{at:%Y-%m-%d %H:%M} {verb} {name}{' (silent)' if outgoing.silent else ''}\n"
    body = "".join(f"    {line}\n" for line in outgoing.text.splitlines())
    rows = "".join("    " + " ".join(f"[{label}]" for label, _ in row) + "\n" for row in outgoing.buttons)
    file = f"    (file {outgoing.attachment_name})\n" if outgoing.attachment_name else ""
    return head + body + file + rows


def standing(replay: StoryPlayer) -> Iterator[str]:
    """One JSON line for each set that stands, in the order of the log."""
    with replay.database.transaction() as store:
        for player in replay.players.values():
            person = store.people.find(replay.source, player.chat)
            if person is None:
                continue
            records = store.sets.recent(person.id, replay.now.date() - FORMER if replay.now else date.min)
            for record in sorted(records, key=lambda one: (one.place, one.id)):
                row = {"who": player.name, "date": record.on.isoformat(), **set_json(record.done)}
                yield json.dumps(row, ensure_ascii=False)


def _failures(database: Database, now: datetime | None) -> list[str]:
    """Events that could not be handled, and what was due and could not be done."""
    with database.transaction() as store:
        failed = [f"{row.text!r}: {row.error}" for row in store.inbox.failures()]
        still_due = store.due.next_at()
    if now is not None and still_due is not None and still_due <= now:
        failed.append(f"what was due at {still_due:%Y-%m-%d %H:%M} UTC: could not be done")
    return failed


def _keep_file(delivery: Delivery, pictures: str | None) -> None:
    outgoing = delivery.outgoing
    if pictures is None or outgoing.attachment is None or outgoing.attachment_name is None:
        return
    folder = Path(pictures)
    folder.mkdir(parents=True, exist_ok=True)
    (folder / f"{delivery.id}-{Path(outgoing.attachment_name).name}").write_bytes(outgoing.attachment)
