"""The Telegram Bot API, and the only module that knows the chat library.

Fetches updates and files, sends, edits and reacts; each of the platform's errors becomes a value or an exception of
`bot.delivery`, so that nobody else has to know them.
"""

from __future__ import annotations

import json
import logging
from collections.abc import Callable, Sequence
from dataclasses import replace
from datetime import datetime, timedelta
from typing import Any

import httpx
from telegram import (
    Bot,
    BotCommandScopeChat,
    InlineKeyboardButton,
    InlineKeyboardMarkup,
    InputFile,
    LinkPreviewOptions,
    Message,
)
from telegram.constants import ReactionEmoji
from telegram.error import (
    BadRequest,
    Conflict,
    Forbidden,
    InvalidToken,
    NetworkError,
    RetryAfter,
    TelegramError,
    TimedOut,
)
from telegram.request import BaseRequest, HTTPXRequest, RequestData

from bot.delivery import (
    Blocked,
    Delivered,
    OtherPoller,
    Outcome,
    OutOfReach,
    Parcel,
    Refused,
    TryLater,
    Unsure,
    WrongToken,
)
from bot.messages import Button, Document, OutgoingKind
from bot.telegram_commands import ATHLETE_COMMANDS, DESCRIPTION, SHORT_DESCRIPTION
from bot.telegram_text import CAPTION_LIMIT, Part, cleaned, escaped, parts, utf16_units
from bot.telegram_updates import LARGEST_FILE, LISTENED, Arrived, arrived

log = logging.getLogger(__name__)

POOL = 12  # small on purpose: the HTTP pool walks all its connections on each request
NO_PREVIEW = LinkPreviewOptions(is_disabled=True)
NEVER_LEFT = (httpx.ConnectError, httpx.ConnectTimeout, httpx.PoolTimeout, httpx.UnsupportedProtocol)
"""Failures before the request was written: certainly not delivered."""


class _Untouched(HTTPXRequest):
    """Keeps the answer to getUpdates as it came.

    The library would build its own objects from it, and refuse the whole batch for one update it cannot parse.
    """

    body: bytes = b""

    async def do_request(
        self,
        url: str,
        method: str,
        request_data: RequestData | None = None,
        read_timeout: Any = BaseRequest.DEFAULT_NONE,
        write_timeout: Any = BaseRequest.DEFAULT_NONE,
        connect_timeout: Any = BaseRequest.DEFAULT_NONE,
        pool_timeout: Any = BaseRequest.DEFAULT_NONE,
    ) -> tuple[int, bytes]:
        code, body = await super().do_request(
            url, method, request_data, read_timeout, write_timeout, connect_timeout, pool_timeout
        )
        if code != 200:
            return code, body
        self.body = body
        return code, b'{"ok": true, "result": []}'


class Telegram:
    """One bot's connection. Open it, then use it from one event loop, then close it."""

    def __init__(self, token: str, api: str = "https://api.telegram.org", timeout: float = 10.0) -> None:
        certificates = {"verify": httpx.create_ssl_context()}  # slow to load, so once for both
        self._updates = _Untouched(
            connection_pool_size=1, read_timeout=timeout, connect_timeout=timeout, httpx_kwargs=certificates
        )
        calls = HTTPXRequest(
            POOL,
            read_timeout=timeout,
            write_timeout=timeout,
            connect_timeout=timeout,
            pool_timeout=timeout,
            httpx_kwargs=certificates,
        )
        self._bot = Bot(
            token,
            base_url=f"{api.rstrip('/')}/bot",
            base_file_url=f"{api.rstrip('/')}/file/bot",
            request=calls,
            get_updates_request=self._updates,
        )

    async def open(self) -> str:
        """The bot's user name, with a webhook that may be left over taken off (nothing pending is dropped).

        Errors: WrongToken, OutOfReach.
        """
        try:
            await self._bot.initialize()
            await self._bot.delete_webhook(drop_pending_updates=False)
        except TelegramError as error:
            raise _trouble(error) from None  # the library's own message quotes the token
        return self._bot.username

    async def close(self) -> None:
        await self._bot.shutdown()

    async def present(self) -> None:
        """Tell the platform the bot's commands and what it is for; a failure is logged and harms nothing."""
        try:
            await self._bot.set_my_commands(ATHLETE_COMMANDS)
            await self._bot.set_my_description(DESCRIPTION)
            await self._bot.set_my_short_description(SHORT_DESCRIPTION)
        except TelegramError as error:
            log.warning("commands and description not set: %s", error)

    async def show_commands(self, chat: int, commands: tuple[tuple[str, str], ...]) -> bool:
        """Whether the chat shows these commands now; none: the default ones."""
        scope = BotCommandScopeChat(chat)
        try:
            if commands:
                return await self._bot.set_my_commands(commands, scope=scope)
            return await self._bot.delete_my_commands(scope=scope)
        except TelegramError as error:
            log.warning("a chat's commands not set: %s", error)
            return False

    async def updates(self, offset: int | None, wait: timedelta, clock: Callable[[], datetime]) -> tuple[Arrived, ...]:
        """The next updates in the platform's order, waiting for one; asking with an offset confirms all before it.

        Errors: WrongToken, OtherPoller, OutOfReach.
        """
        try:
            await self._bot.get_updates(offset=offset, timeout=wait, allowed_updates=LISTENED)
            batch = json.loads(self._updates.body)["result"]
        except TelegramError as error:
            raise _trouble(error) from None
        except (ValueError, KeyError, TypeError) as error:
            raise OutOfReach(f"the answer to getUpdates is not the platform's: {error!r}") from None
        now = clock()
        return tuple(arrived(raw, now=now, username=self._bot.username) for raw in batch)

    async def answer_tap(self, tap: str) -> None:
        """Stop the tapped button's spinner. The platform forgets taps quickly, so a refusal means nothing."""
        try:
            await self._bot.answer_callback_query(tap)
        except TelegramError as error:
            log.debug("tap not answered: %s", error)

    async def leave(self, group: int) -> None:
        """Say that groups are no place for this, and go."""
        try:
            await self._bot.send_message(group, "I only work in private chats: training logs are personal.")
        except TelegramError as error:
            log.debug("nothing said before leaving: %s", error)
        try:
            await self._bot.leave_chat(group)
        except TelegramError as error:
            log.warning("group not left: %s", error)

    async def fetch(self, document: Document) -> Document:
        """The document with its content, or with why it cannot be had.

        Errors: OutOfReach when it is worth another try.
        """
        try:
            file = await self._bot.get_file(document.reference)
            content = bytes(await file.download_as_bytearray())
        except (BadRequest, InvalidToken) as error:  # a file that is gone answers 404, like a wrong token
            log.warning("document not fetched: %s", error)
            return Document(document.name, None, trouble="Not saved: I could not fetch the file. Send it again.")
        except TelegramError as error:
            raise _trouble(error) from None
        if len(content) > LARGEST_FILE:
            return Document(document.name, None, trouble="Not saved: I can fetch files up to 20 MB.")
        return Document(document.name, content)

    async def deliver(self, parcel: Parcel) -> Outcome:
        """What became of one message, edit or reaction."""
        match parcel.outgoing.kind:
            case OutgoingKind.SEND:
                return await self._send(parcel)
            case OutgoingKind.EDIT:
                return await self._edit(parcel)
            case OutgoingKind.REACT:
                return await self._react(parcel)

    async def _send(self, parcel: Parcel) -> Outcome:
        every = parts(parcel.outgoing)
        outcome: Outcome = Refused("nothing to send: no words and no file")
        for done, part in enumerate(every[parcel.parts :], start=parcel.parts):
            outcome = await self._send_part(parcel, part)
            if isinstance(outcome, TryLater):
                return replace(outcome, parts=done)
            if isinstance(outcome, Blocked | Refused):
                return outcome
        return outcome

    async def _send_part(self, parcel: Parcel, part: Part) -> Outcome:
        try:
            message = await self._call_send(parcel, part, html=True)
        except BadRequest as error:
            if not _says(error, "can't parse entities"):
                return _outcome(error, repeatable=False)
            try:
                message = await self._call_send(parcel, part, html=False)
            except TelegramError as again:
                return _outcome(again, repeatable=False)
        except TelegramError as error:
            return _outcome(error, repeatable=False)
        return Delivered(message.message_id)

    async def _call_send(self, parcel: Parcel, part: Part, *, html: bool) -> Message:
        text, mode = _written(part.text, html=html)
        keyboard = _keyboard(parcel.outgoing.buttons) if part.last else None
        silent = parcel.outgoing.silent
        if part.attachment is None:
            return await self._bot.send_message(
                parcel.chat,
                text,
                parse_mode=mode,
                link_preview_options=NO_PREVIEW,
                disable_notification=silent,
                reply_markup=keyboard,
            )
        file = InputFile(part.attachment.content, filename=part.attachment.name)
        if part.attachment.picture:
            return await self._bot.send_photo(
                parcel.chat, file, caption=text, parse_mode=mode, disable_notification=silent, reply_markup=keyboard
            )
        return await self._bot.send_document(
            parcel.chat, file, caption=text, parse_mode=mode, disable_notification=silent, reply_markup=keyboard
        )

    async def _edit(self, parcel: Parcel) -> Outcome:
        """Edits are safe to repeat. One that cannot be made becomes a new message; its words may stand nowhere else."""
        every = parts(parcel.outgoing)
        if parcel.target is None or parcel.outgoing.attachment is not None or len(every) != 1:
            return await self._send(parcel)
        try:
            await self._call_edit(parcel, parcel.target, html=True)
        except BadRequest as error:
            return await self._edit_otherwise(parcel, parcel.target, error)
        except TelegramError as error:
            return _outcome(error, repeatable=True)
        return Delivered(parcel.target)

    async def _edit_otherwise(self, parcel: Parcel, target: int, refusal: BadRequest) -> Outcome:
        if _says(refusal, "message is not modified"):
            return Delivered(target)
        if not _says(refusal, "can't parse entities", "there is no text in the message"):
            return await self._send(parcel)
        try:
            await self._call_edit(parcel, target, html=False, caption=_says(refusal, "there is no text"))
        except BadRequest:
            return await self._send(parcel)
        except TelegramError as error:
            return _outcome(error, repeatable=True)
        return Delivered(target)

    async def _call_edit(self, parcel: Parcel, target: int, *, html: bool, caption: bool = False) -> None:
        text, mode = _written(parcel.outgoing.text, html=html)
        keyboard = _keyboard(parcel.outgoing.buttons)
        if caption:
            if utf16_units(text) > CAPTION_LIMIT:
                raise BadRequest("caption is too long")
            await self._bot.edit_message_caption(parcel.chat, target, caption=text, reply_markup=keyboard)
            return
        await self._bot.edit_message_text(
            text, parcel.chat, target, parse_mode=mode, link_preview_options=NO_PREVIEW, reply_markup=keyboard
        )

    async def _react(self, parcel: Parcel) -> Outcome:
        """A reaction that cannot be set is said in words, where there are any."""
        outgoing = parcel.outgoing
        if outgoing.message is None:
            return Refused("a reaction to no message")
        try:
            await self._bot.set_message_reaction(parcel.chat, outgoing.message, ReactionEmoji.THUMBS_UP)
        except BadRequest as error:
            if outgoing.text:
                return await self._send(parcel)
            return _outcome(error, repeatable=True)
        except TelegramError as error:
            return _outcome(error, repeatable=True)
        return Delivered(None)


def _written(text: str, *, html: bool) -> tuple[str, str | None]:
    return (escaped(text), "HTML") if html else (cleaned(text), None)


def _keyboard(rows: Sequence[Sequence[Button]]) -> InlineKeyboardMarkup | None:
    if not rows:
        return None
    return InlineKeyboardMarkup(
        [[InlineKeyboardButton(button.label, callback_data=button.data) for button in row] for row in rows]
    )


def _says(error: TelegramError, *phrases: str) -> bool:
    return any(phrase in error.message.lower() for phrase in phrases)


def _seconds(error: RetryAfter) -> float:
    pause = error.retry_after
    return pause.total_seconds() if isinstance(pause, timedelta) else float(pause)


def _trouble(error: TelegramError) -> Exception:
    if isinstance(error, InvalidToken):
        return WrongToken()
    if isinstance(error, Conflict):
        return OtherPoller(error.message)
    return OutOfReach(error.message, _seconds(error) if isinstance(error, RetryAfter) else 0.0)


def _outcome(error: TelegramError, *, repeatable: bool) -> Outcome:
    """What a failed call means for the message it carried; `repeatable`: doing it twice is like doing it once."""
    if isinstance(error, RetryAfter):
        return TryLater("flood control", _seconds(error), everyone=True, exact=True)
    if isinstance(error, Forbidden):
        return Blocked()
    if isinstance(error, InvalidToken):
        return TryLater(
            "the token was refused", 60.0, everyone=True
        )  # the poll loop ends the process; the row must outlive it
    if isinstance(error, NetworkError) and not isinstance(error, BadRequest):
        return _after_network_error(error, repeatable=repeatable)
    return Refused(error.message)


def _after_network_error(error: NetworkError, *, repeatable: bool) -> Outcome:
    cause = error.__cause__
    # An answer that says the server failed (5xx) has no cause: the request was refused, not lost, unless it timed out
    # further in. That a refused request was not carried out is common practice, no source.
    answered = cause is None and not isinstance(error, TimedOut) and not _says(error, "timeout", "timed out")
    if isinstance(cause, NEVER_LEFT):
        return TryLater(error.message, 1.0, everyone=True)
    if answered:
        return TryLater(error.message, 2.0)
    return TryLater(error.message, 2.0) if repeatable else Unsure(error.message)
