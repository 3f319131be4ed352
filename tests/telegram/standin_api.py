"""The Bot API's methods on chats kept in memory, judged by the documented limits. No HTTP here."""

from __future__ import annotations

import itertools
import json
import time
from collections import defaultdict
from collections.abc import Callable
from datetime import datetime
from typing import Any

from tests.telegram.standin_markup import CannotParse, plain
from tests.telegram.standin_values import BOT, Refusal, Shown, private

TEXT_LIMIT, CAPTION_LIMIT = 4096, 1024
REACTIONS = ("👍", "👎", "❤")


class BotApi:
    """Methods are named m_ and the API's own name in lower case; each takes the call's parameters."""

    def __init__(self, clock: Callable[[], datetime], per_chat: float | None, record: bool) -> None:
        self.clock = clock
        self.per_chat = per_chat
        self.record = record
        self.chats: dict[int, list[Shown]] = defaultdict(list)
        self.reactions: dict[tuple[int, int], str] = {}
        self.commands: dict[str, Any] = {}
        self.answered_taps: set[str] = set()
        self.left: list[int] = []
        self.blocked: set[int] = set()
        self.forgotten: set[tuple[int, int]] = set()
        self.files: dict[str, bytes] = {}
        # Apart on purpose: what people's messages are called must not depend on how often the bot spoke.
        self.message_ids = itertools.count(1)
        self.bot_message_ids = itertools.count(100_001)
        self._last_sent: dict[int, float] = {}

    def m_getme(self, _: dict[str, Any]) -> Any:
        return BOT

    def m_deletewebhook(self, params: dict[str, Any]) -> Any:
        assert str(params.get("drop_pending_updates", "false")).lower() != "true", "messages would be lost"
        return True

    def m_sendmessage(self, params: dict[str, Any]) -> Any:
        return self._shown(params, self._judged(params, "text", TEXT_LIMIT))

    def m_senddocument(self, params: dict[str, Any]) -> Any:
        return self._send_file(params, "document")

    def m_sendphoto(self, params: dict[str, Any]) -> Any:
        return self._send_file(params, "photo")

    def _send_file(self, params: dict[str, Any], field_name: str) -> Any:
        upload = params[field_name]
        file = (upload.filename, upload.file.read())
        return self._shown(params, self._judged(params, "caption", CAPTION_LIMIT), file=file)

    def m_editmessagetext(self, params: dict[str, Any]) -> Any:
        shown = self._editable(params)
        if shown.file is not None:
            raise Refusal(400, "Bad Request: there is no text in the message to edit")
        return self._edited(shown, params, self._judged(params, "text", TEXT_LIMIT))

    def m_editmessagecaption(self, params: dict[str, Any]) -> Any:
        return self._edited(self._editable(params), params, self._judged(params, "caption", CAPTION_LIMIT))

    def m_setmessagereaction(self, params: dict[str, Any]) -> Any:
        chat, message = self._reachable(params), int(params["message_id"])
        emoji = json.loads(params["reaction"])[0]["emoji"]
        if emoji not in REACTIONS:
            raise Refusal(400, "Bad Request: REACTION_INVALID")
        if (chat, message) in self.forgotten:
            raise Refusal(400, "Bad Request: message to react not found")
        self.reactions[chat, message] = emoji
        return True

    def m_answercallbackquery(self, params: dict[str, Any]) -> Any:
        tap = str(params["callback_query_id"])
        if tap in self.answered_taps:
            raise Refusal(400, "Bad Request: query is too old and response timeout expired or query ID is invalid")
        self.answered_taps.add(tap)
        return True

    def m_getfile(self, params: dict[str, Any]) -> Any:
        content = self.files.get(params["file_id"])
        if content is None:
            raise Refusal(400, "Bad Request: invalid file_id")
        if len(content) > 20 * 2**20:
            raise Refusal(400, "Bad Request: file is too big")
        return {"file_id": params["file_id"], "file_unique_id": "u", "file_path": params["file_id"]}

    def m_setmycommands(self, params: dict[str, Any]) -> Any:
        self.commands[str(params.get("scope", "default"))] = json.loads(params["commands"])
        return True

    def m_deletemycommands(self, params: dict[str, Any]) -> Any:
        self.commands.pop(str(params.get("scope", "default")), None)
        return True

    def m_setmydescription(self, params: dict[str, Any]) -> Any:
        if len(params.get("description", "")) > 512:
            raise Refusal(400, "Bad Request: description is too long")
        return True

    def m_setmyshortdescription(self, params: dict[str, Any]) -> Any:
        if len(params.get("short_description", "")) > 120:
            raise Refusal(400, "Bad Request: short description is too long")
        return True

    def m_leavechat(self, params: dict[str, Any]) -> Any:
        self.left.append(int(params["chat_id"]))
        return True

    def _reachable(self, params: dict[str, Any]) -> int:
        chat = int(params["chat_id"])
        if chat in self.blocked:
            raise Refusal(403, "Forbidden: bot was blocked by the user")
        return chat

    def _judged(self, params: dict[str, Any], field_name: str, limit: int) -> str:
        """The words that a chat would show."""
        text = str(params.get(field_name) or "")
        if params.get("parse_mode") == "HTML":
            try:
                text = plain(text)
            except CannotParse as trouble:
                raise Refusal(400, f"Bad Request: can't parse entities: {trouble}") from None
        text = text.strip()
        if not text and field_name == "text":
            raise Refusal(400, "Bad Request: message text is empty")
        if len(text.encode("utf-16-le")) // 2 > limit:
            what = "message" if field_name == "text" else "message caption"
            raise Refusal(400, f"Bad Request: {what} is too long")
        return text

    def _shown(self, params: dict[str, Any], text: str, file: tuple[str, bytes] | None = None) -> Any:
        chat = self._reachable(params)
        self._flood(chat)
        buttons = _buttons(params)
        shown = Shown(chat, next(self.bot_message_ids), text, buttons, [text], file)
        shown.silent = str(params.get("disable_notification")).lower() == "true"
        if self.record:
            self.chats[chat].append(shown)
        return self._as_message(shown)

    def _flood(self, chat: int) -> None:
        now = time.monotonic()
        if self.per_chat and now - self._last_sent.get(chat, -1e9) < self.per_chat:
            raise Refusal(429, "Too Many Requests: retry after 1", retry_after=1)
        self._last_sent[chat] = now

    def _editable(self, params: dict[str, Any]) -> Shown:
        chat, message = self._reachable(params), int(params["message_id"])
        for shown in self.chats[chat]:
            if shown.id == message and (chat, message) not in self.forgotten:
                return shown
        raise Refusal(400, "Bad Request: message to edit not found")

    def _edited(self, shown: Shown, params: dict[str, Any], text: str) -> Any:
        buttons = _buttons(params)
        if (text, buttons) == (shown.text, shown.buttons):
            raise Refusal(
                400,
                "Bad Request: message is not modified: specified new message content and reply markup are exactly the"
                " same as a current content and reply markup of the message",
            )
        shown.text, shown.buttons = text, buttons
        shown.versions.append(text)
        return self._as_message(shown)

    def _as_message(self, shown: Shown) -> dict[str, Any]:
        return {
            "message_id": shown.id,
            "date": self.date(),
            "chat": private(shown.chat),
            "from": BOT,
            "text": shown.text,
        }

    def date(self) -> int:
        return int(self.clock().timestamp())


def _buttons(params: dict[str, Any]) -> list[list[dict[str, Any]]]:
    markup = json.loads(params.get("reply_markup") or "{}")
    rows: list[list[dict[str, Any]]] = markup.get("inline_keyboard", [])
    for button in itertools.chain.from_iterable(rows):
        if not 1 <= len(button["callback_data"].encode()) <= 64:
            raise Refusal(400, "Bad Request: BUTTON_DATA_INVALID")
    return rows
