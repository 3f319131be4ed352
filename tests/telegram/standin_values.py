"""What the stand-in for the Bot API is made of: calls, answers, faults, and messages as a chat shows them."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any

TOKEN = "424242:AAtest-TOKEN_0123456789abcdefghijkl"
BOT = {"id": 424242, "is_bot": True, "first_name": "Stand-in", "username": "standin_bot"}


class Refusal(Exception):
    """An answer that is no success."""

    def __init__(self, code: int, description: str, **parameters: Any) -> None:
        super().__init__(description)
        self.body: dict[str, Any] = {"ok": False, "error_code": code, "description": description}
        if parameters:
            self.body["parameters"] = parameters
        self.code = code


@dataclass(frozen=True)
class Fault:
    """What goes wrong with one call. `done`: the call takes effect all the same, only its answer is lost."""

    refusal: Refusal | None = None
    seconds: float = 0.0
    hang_up: bool = False
    done: bool = False
    garbage: bool = False


@dataclass
class Shown:
    """A message as the chat shows it."""

    chat: int
    id: int
    text: str
    buttons: list[list[dict[str, Any]]]
    versions: list[str]
    file: tuple[str, bytes] | None = None
    silent: bool = False


@dataclass(frozen=True)
class Call:
    """One request, in the order they came; `answer` is what was returned in the end."""

    number: int
    method: str
    params: Mapping[str, Any]
    at: float
    answer: list[dict[str, Any]] = field(default_factory=list)

    @property
    def ok(self) -> bool:
        return bool(self.answer and self.answer[0].get("ok"))


def person(chat: int, name: str = "") -> dict[str, Any]:
    return {"id": chat, "is_bot": False, "first_name": name or f"Lifter {chat}"}


def private(chat: int) -> dict[str, Any]:
    return {"id": chat, "type": "private", "first_name": f"Lifter {chat}"}
