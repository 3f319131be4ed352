"""What Telegram's server makes of HTML: the plain text, or its complaint. Source: Bot API, HTML style."""

from __future__ import annotations

import re

TAGS = frozenset(
    ("b", "strong", "i", "em", "u", "ins", "s", "strike", "del", "span", "tg-spoiler", "a", "tg-emoji", "tg-time")
) | {"code", "pre", "blockquote"}
TAG = re.compile(r"<(/?)([a-z-]+)([^<>]*)>")
ENTITY = re.compile(r"&(lt|gt|amp|quot|#\d+|#x[0-9a-fA-F]+);")
NAMED = {"lt": "<", "gt": ">", "amp": "&", "quot": '"'}


class CannotParse(ValueError):
    pass


def plain(text: str) -> str:
    """The text after entities are parsed.

    Errors: CannotParse, worded as the server words it.
    """
    open_tags: list[str] = []
    out: list[str] = []
    at = 0
    while at < len(text):
        if text[at] == "<":
            at = _tag(text, at, open_tags)
        elif text[at] == "&" and (entity := ENTITY.match(text, at)):
            out.append(_character(entity[1]))
            at = entity.end()
        else:
            out.append(text[at])
            at += 1
    if open_tags:
        raise CannotParse(f'can\'t find end tag corresponding to start tag "{open_tags[-1]}"')
    return "".join(out)


def _tag(text: str, at: int, open_tags: list[str]) -> int:
    tag = TAG.match(text, at)
    if tag is None or tag[2] not in TAGS:
        raise CannotParse(f'unsupported start tag "{text[at + 1 : at + 12]}" at byte offset {at}')
    if not tag[1]:
        open_tags.append(tag[2])
    elif not open_tags or open_tags.pop() != tag[2]:
        raise CannotParse(f'unmatched end tag at byte offset {at}, expected "</b>", found "</{tag[2]}>"')
    return tag.end()


def _character(name: str) -> str:
    if name.startswith("#x"):
        return chr(int(name[2:], 16))
    return chr(int(name[1:])) if name.startswith("#") else NAMED[name]
