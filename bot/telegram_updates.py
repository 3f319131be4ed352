"""One update as Telegram's server writes it, to what a person did.

Works on the plain JSON objects: a field or a kind of update that a newer server adds is passed over, and an update that
makes no sense is reported by its number alone, so that nothing a server sends can stop the updates behind it.

A shared location arrives as the message "/location LATITUDE LONGITUDE". What the bot cannot read (a photo, a voice
message) arrives as a document that was never fetched and says why. A photo's caption is a message like any other.
"""

from __future__ import annotations

import logging
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import PurePosixPath
from typing import Any

from bot.messages import Document, Inbound, InboundKind
from bot.telegram_text import cleaned

log = logging.getLogger(__name__)

SOURCE = "telegram"
LISTENED = ("message", "edited_message", "callback_query", "my_chat_member")
"""The kinds of update we ask for. Source: Bot API, getUpdates, allowed_updates (it sticks, so it is always sent)."""

LARGEST_FILE = 20 * 1024 * 1024  # Source: Bot API, getFile: bots download up to 20 MB
READABLE = (".txt", ".md", ".csv", ".tsv", ".xlsx")
UNREADABLE = {
    "photo": "photos",
    "voice": "voice messages",
    "audio": "audio",
    "video": "videos",
    "video_note": "video messages",
    "animation": "animations",
    "sticker": "stickers",
    "contact": "contacts",
    "poll": "polls",
    "venue": "places",
    "story": "stories",
    "dice": "dice",
}
INSTEAD = "Type sets like row 3x12 55; send a plan as text, CSV or XLSX."


@dataclass(frozen=True, slots=True)
class Arrived:
    """One update. `tap` is the id to answer a tapped button by; `leave` a group that the bot was put into."""

    update: int
    inbound: Inbound | None = None
    tap: str | None = None
    leave: int | None = None


def arrived(raw: Mapping[str, Any], *, now: datetime, username: str = "") -> Arrived:
    """What one update says; `now` stands in where the server gives no time (taps)."""
    update = int(raw["update_id"])
    try:
        return _arrived(update, raw, now, username)
    except (LookupError, TypeError, ValueError, AttributeError, ArithmeticError, OSError) as trouble:
        log.warning("update %d passed over, not understood: %r", update, trouble)
        return Arrived(update)


def _arrived(update: int, raw: Mapping[str, Any], now: datetime, username: str) -> Arrived:
    if "message" in raw:
        return _message(update, raw["message"], username)
    if "edited_message" in raw:
        return _edit(update, raw["edited_message"])
    if "callback_query" in raw:
        return _tap(update, raw["callback_query"], now)
    if "my_chat_member" in raw:
        return _membership(update, raw["my_chat_member"])
    return Arrived(update)


def _message(update: int, message: Mapping[str, Any], username: str) -> Arrived:
    if _is_foreign(message):
        return _not_private(update, message)
    text = _text(message)
    key = f"{update}.{message['date']}"
    if document := message.get("document"):
        return Arrived(update, _inbound(key, InboundKind.DOCUMENT, message, text, document=_document(document)))
    if text:
        return Arrived(update, _inbound(key, InboundKind.MESSAGE, message, _own_command(text, username)))
    if location := message.get("location"):
        place = f"/location {float(location['latitude']):.6f} {float(location['longitude']):.6f}"
        return Arrived(update, _inbound(key, InboundKind.MESSAGE, message, place))
    kind = next((words for field, words in UNREADABLE.items() if field in message), None)
    if kind is None:
        return Arrived(update)  # a service message: pinned, timer changed, and so on
    if album := message.get("media_group_id"):
        key = f"album.{album}"  # one answer for the whole album: its other pictures carry the same key
    unread = Document(kind, None, trouble=f"I can't read {kind}. {INSTEAD}")
    return Arrived(update, _inbound(key, InboundKind.DOCUMENT, message, "", document=unread))


def _edit(update: int, message: Mapping[str, Any]) -> Arrived:
    text = _text(message)
    if _is_foreign(message) or not text:
        return Arrived(update)  # a moving location, a changed picture: no words to read again
    edited_at = message.get("edit_date", message["date"])
    return Arrived(update, _inbound(f"{update}.{edited_at}", InboundKind.EDIT, message, text, at=edited_at))


def _tap(update: int, query: Mapping[str, Any], now: datetime) -> Arrived:
    tap = str(query["id"])
    message, words = query.get("message"), query.get("data")
    if message is None or not words or _is_foreign(message):
        return Arrived(update, tap=tap)
    inbound = Inbound(
        source=SOURCE,
        chat=_id(message["chat"]),
        key=f"tap.{tap}",
        kind=InboundKind.TAP,
        message=_id(message, "message_id"),
        text=cleaned(str(words)),
        at=now,
        name=_name(query["from"]),
    )
    return Arrived(update, inbound, tap=tap)


def _membership(update: int, change: Mapping[str, Any]) -> Arrived:
    status = change["new_chat_member"]["status"]
    if change["chat"]["type"] != "private":
        present = status in ("member", "administrator", "restricted")
        return Arrived(update, leave=_id(change["chat"]) if present else None)
    kind = InboundKind.BACK if status == "member" else InboundKind.GONE
    inbound = Inbound(
        source=SOURCE,
        chat=_id(change["chat"]),
        key=f"{update}.{change['date']}",
        kind=kind,
        message=0,
        text="",
        at=_time(change["date"]),
        name=_name(change["from"]),
    )
    return Arrived(update, inbound)


def _inbound(
    key: str,
    kind: InboundKind,
    message: Mapping[str, Any],
    text: str,
    *,
    document: Document | None = None,
    at: int | None = None,
) -> Inbound:
    return Inbound(
        source=SOURCE,
        chat=_id(message["chat"]),
        key=key,
        kind=kind,
        message=_id(message, "message_id"),
        text=text,
        at=_time(message["date"] if at is None else at),
        name=_name(message["from"]),
        document=document,
    )


def _document(file: Mapping[str, Any]) -> Document:
    """Name and size come with the message and may be lost later, so both are judged before anything is fetched."""
    name = cleaned(str(file.get("file_name") or "document"))
    suffix = PurePosixPath(name).suffix.lower()
    plain = not suffix and str(file.get("mime_type", "")).startswith("text/")
    if suffix not in READABLE and not plain:
        kind = f"{suffix} files" if suffix else "this kind of file"
        return Document(name, None, trouble=f"Not saved: I can't read {kind}. Send CSV or XLSX, or paste the text.")
    size = int(file.get("file_size") or 0)
    if size > LARGEST_FILE:
        return Document(name, None, trouble=f"Not saved: the file has {size // 2**20} MB, I can fetch up to 20 MB.")
    return Document(name, None, reference=str(file["file_id"]))


def _is_foreign(message: Mapping[str, Any]) -> bool:
    return bool(message["chat"]["type"] != "private")


def _not_private(update: int, message: Mapping[str, Any]) -> Arrived:
    in_group = message["chat"]["type"] in ("group", "supergroup") and "left_chat_member" not in message
    return Arrived(update, leave=_id(message["chat"]) if in_group else None)


def _text(message: Mapping[str, Any]) -> str:
    return cleaned(str(message.get("text") or message.get("caption") or ""))


def _own_command(text: str, username: str) -> str:
    """`/today@our_bot fri` is `/today fri`."""
    word, space, rest = text.partition(" ")
    command, at, addressed = word.partition("@")
    if command.startswith("/") and at and addressed.lower() == username.lower():
        return command + space + rest
    return text


def _name(person: Mapping[str, Any]) -> str:
    names = (str(person.get("first_name") or ""), str(person.get("last_name") or ""))
    return cleaned(" ".join(name for name in names if name))


def _id(thing: Mapping[str, Any], field: str = "id") -> int:
    """Ids are below 2^52 by the platform's word; one that fits no database column is refused before it gets there."""
    number = int(thing[field])
    if not -(2**63) <= number < 2**63:
        raise ValueError(f"{field} {number} does not fit 64 bits")
    return number


def _time(seconds: int) -> datetime:
    return datetime.fromtimestamp(seconds, UTC)
