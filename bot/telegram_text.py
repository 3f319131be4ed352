"""Plain words to what Telegram takes: escaping, its length limits, and one message cut into several.

Lengths are counted in UTF-16 units after entities are parsed, so escaping costs nothing and each emoji counts two.
Source: Telegram Bot API, sendMessage (text), sendDocument (caption).
"""

from __future__ import annotations

import html
import re
from collections.abc import Iterator
from dataclasses import dataclass

from bot.messages import Attachment, Outgoing

TEXT_LIMIT = 4096
CAPTION_LIMIT = 1024

UNSENDABLE = re.compile("[\x00\ud800-\udfff]")
"""NUL and lone halves of surrogate pairs: neither UTF-8 nor a database column takes them all."""


def cleaned(text: str) -> str:
    """The same words without characters that cannot be stored or sent."""
    return UNSENDABLE.sub("\N{REPLACEMENT CHARACTER}", text)


def escaped(text: str) -> str:
    """The same words as Telegram's HTML."""
    return html.escape(cleaned(text), quote=False)


def utf16_units(text: str) -> int:
    return len(text) + sum(1 for character in text if ord(character) > 0xFFFF)


@dataclass(frozen=True, slots=True)
class Part:
    """What one call sends: words, a file with the words as its caption, or a file alone.

    The last part has the buttons.
    """

    text: str
    attachment: Attachment | None
    last: bool


def parts(outgoing: Outgoing) -> tuple[Part, ...]:
    """One outgoing message as the calls it takes, in order; none if it holds nothing that Telegram would take."""
    attachment = outgoing.attachment
    text = cleaned(outgoing.text).strip()
    if attachment is not None and utf16_units(text) <= CAPTION_LIMIT:
        return (Part(text, attachment, last=True),)
    sent: list[tuple[str, Attachment | None]] = [(piece, None) for piece in pieces(text)]
    if attachment is not None:
        sent.insert(0, ("", attachment))  # the file first: the buttons belong under the words
    return tuple(Part(words, each, last=at == len(sent)) for at, (words, each) in enumerate(sent, start=1))


def pieces(text: str, limit: int = TEXT_LIMIT) -> tuple[str, ...]:
    """The text cut between lines into pieces of at most `limit` units; blank pieces are left out."""
    done: list[str] = []
    lines: list[str] = []
    room = limit
    for line in _short_lines(text, limit):
        width = utf16_units(line) + (1 if lines else 0)
        if width > room:
            done.append("\n".join(lines))
            lines, room, width = [], limit, utf16_units(line)
        lines.append(line)
        room -= width
    done.append("\n".join(lines))
    return tuple(stripped for piece in done if (stripped := piece.strip()))


def _short_lines(text: str, limit: int) -> Iterator[str]:
    """Lines none of which is wider than the limit: a long one is cut at a space, or else between two characters."""
    for line in text.split("\n"):
        while utf16_units(line) > limit:
            end = _fitting(line, limit)
            space = line.rfind(" ", 1, end)
            cut = space if space > end // 2 else end
            yield line[:cut]
            line = line[cut:].lstrip(" ")
        yield line


def _fitting(line: str, limit: int) -> int:
    """How many leading characters take at most `limit` units."""
    used = 0
    for at, character in enumerate(line):
        used += 2 if ord(character) > 0xFFFF else 1
        if used > limit:
            return at
    return len(line)
