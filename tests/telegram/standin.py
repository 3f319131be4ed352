"""A stand-in for the Telegram Bot API, over real HTTP on 127.0.0.1, for the project's tests and benchmarks.

Written from the public Bot API documentation. It keeps chats as the real server does (messages with ids, edits,
reactions, files), judges what a bot sends by the documented limits, and records every call. A test is the people: it
says, edits, taps, sends files, blocks; and it is the weather: refusals, floods, slow or lost answers.

    with StandIn() as server:
        server.says(7, "row 3x12 55")
        ... run a bot against server.url ...
        server.wait(lambda: server.sent(7))
"""

from __future__ import annotations

import asyncio
import itertools
import json
import threading
import time
from collections import defaultdict, deque
from collections.abc import Callable
from datetime import UTC, datetime
from typing import Any

from aiohttp import web

from tests.telegram.standin_api import BotApi
from tests.telegram.standin_values import BOT, TOKEN, Call, Fault, Refusal, person, private


class StandIn(BotApi):
    def __init__(
        self,
        *,
        token: str = TOKEN,
        clock: Callable[[], datetime] = lambda: datetime.now(UTC),
        latency: float = 0.0,
        per_chat: float | None = None,
        record: bool = True,
    ) -> None:
        """`per_chat`: seconds between messages to one chat, under which the server answers 429."""
        super().__init__(clock, per_chat, record)
        self.token = token
        self.latency = latency
        self.calls: list[Call] = []
        self.names: dict[int, str] = {}
        self.confirmed = 0
        self.on_call: Callable[[Call, str], None] = lambda call, phase: None
        self._faults: dict[str, deque[Fault]] = defaultdict(deque)
        self._pending: deque[dict[str, Any]] = deque()
        self._update_ids = itertools.count(1001)
        self._numbers = itertools.count(1)
        self._turn = 0
        self._updated = threading.Condition()
        self._loop = asyncio.new_event_loop()
        self._news: asyncio.Event | None = None
        self._thread = threading.Thread(target=self._loop.run_forever, daemon=True)

    # ------------------------------------------------------------- life and observation

    def __enter__(self) -> StandIn:
        self._thread.start()
        asyncio.run_coroutine_threadsafe(self._start(), self._loop).result(10)
        return self

    def __exit__(self, *_: object) -> None:
        asyncio.run_coroutine_threadsafe(self._stop(), self._loop).result(10)
        self._loop.call_soon_threadsafe(self._loop.stop)
        self._thread.join(10)
        self._loop.close()

    @property
    def url(self) -> str:
        return f"http://127.0.0.1:{self._port}"

    def wait(self, condition: Callable[[], Any], seconds: float = 15.0) -> Any:
        """What the condition gives once it is true; it is looked at after every call.

        Errors: AssertionError when it does not come true.
        """
        limit = time.monotonic() + seconds
        with self._updated:
            while not (found := condition()):
                left = limit - time.monotonic()
                assert left > 0, f"not seen within {seconds} s; calls: {self.summary()[-12:]}"
                self._updated.wait(min(left, 0.1))
        return found

    def summary(self) -> list[str]:
        return [f"{call.method} {call.params.get('text', '')!r} ok={call.ok}" for call in self.calls]

    def sent(self, chat: int) -> list[str]:
        """The texts a chat shows now, oldest first, the bot's only."""
        return [shown.text for shown in self.chats[chat]]

    def made(self, method: str) -> list[Call]:
        return [call for call in self.calls if call.method == method]

    @property
    def idle(self) -> bool:
        """Nothing waits to be fetched or confirmed."""
        return not self._pending

    # ------------------------------------------------------------- what people do

    def says(self, chat: int, text: str, **fields: Any) -> int:
        """The id of a message that a person sends."""
        message = self._message(chat, **fields)
        if text:
            message["text"] = text
        self.push({"message": message})
        return int(message["message_id"])

    def edits(self, chat: int, message: int, text: str) -> int:
        """The update number."""
        edited = self._message(chat, number=message, text=text, edit_date=self.date())
        return self.push({"edited_message": edited})

    def taps(self, chat: int, label: str, message: int | None = None) -> str:
        """The callback id of a tap on a button, of the last message that has buttons unless another is named."""
        shown = next(
            one for one in reversed(self.chats[chat]) if one.buttons and (message is None or one.id == message)
        )
        button = next(each for row in shown.buttons for each in row if each["text"].startswith(label))
        return self.taps_data(chat, shown.id, button["callback_data"])

    def taps_data(self, chat: int, message: int, data: str) -> str:
        tap = f"tap{next(self._update_ids)}"
        query = {
            "id": tap,
            "from": person(chat, self.names.get(chat, "")),
            "chat_instance": "1",
            "data": data,
            "message": {"message_id": message, "date": self.date(), "chat": private(chat), "from": BOT},
        }
        self.push({"callback_query": query})
        return tap

    def sends_file(
        self, chat: int, name: str, content: bytes, caption: str = "", size: int | None = None, **fields: Any
    ) -> int:
        file_id = f"file{next(self._update_ids)}"
        self.files[file_id] = content
        document = {
            "file_id": file_id,
            "file_unique_id": file_id,
            "file_name": name,
            "file_size": len(content) if size is None else size,
        }
        return self.says(chat, "", document=document, **({"caption": caption} if caption else {}), **fields)

    def blocks(self, chat: int) -> None:
        self.blocked.add(chat)
        self._membership(chat, "member", "kicked")

    def unblocks(self, chat: int) -> None:
        self.blocked.discard(chat)
        self._membership(chat, "kicked", "member")

    def joins_group(self, group: int) -> None:
        chat = {"id": group, "type": "supergroup", "title": "Club"}
        self._membership(7, "left", "member", chat=chat)

    def push(self, update: dict[str, Any], *, number: int | None = None) -> int:
        """The number of an update put at the end of what the bot will fetch."""
        whole = {"update_id": next(self._update_ids) if number is None else number, **update}
        self._in_loop(lambda: self._queue(whole))
        return int(whole["update_id"])

    def redeliver(self) -> None:
        """What was fetched comes again, as after a lost confirmation."""
        self._in_loop(lambda: self._pending.extendleft(reversed(self._history)))

    # ------------------------------------------------------------- the weather

    def fault(self, method: str, *faults: Fault) -> None:
        """The next calls of a method go wrong, one fault each."""
        self._in_loop(lambda: self._faults[method.lower()].extend(faults))

    def refuse(self, method: str, code: int, description: str, times: int = 1, **parameters: Any) -> None:
        self.fault(method, *[Fault(Refusal(code, description, **parameters))] * times)

    # ------------------------------------------------------------- the server

    async def _start(self) -> None:
        self._news = asyncio.Event()
        self._history: deque[dict[str, Any]] = deque(maxlen=1000)
        app = web.Application(client_max_size=64 * 2**20)
        app.router.add_route("*", "/bot{token}/{method}", self._serve)
        app.router.add_get("/file/bot{token}/{path:.+}", self._download)
        self._runner = web.AppRunner(app, access_log=None, shutdown_timeout=0.2)
        await self._runner.setup()
        site = web.TCPSite(self._runner, "127.0.0.1", 0)
        await site.start()
        self._port: int = self._runner.addresses[0][1]

    async def _stop(self) -> None:
        self._turn += 1
        assert self._news is not None
        self._news.set()
        await self._runner.cleanup()

    async def _serve(self, request: web.Request) -> web.StreamResponse:
        method = request.match_info["method"]
        params: dict[str, Any] = dict(request.query)
        if request.can_read_body:
            params.update(await request.json() if request.content_type == "application/json" else await request.post())
        call = Call(next(self._numbers), method, params, time.monotonic())
        if self.record:
            self.calls.append(call)
        self.on_call(call, "before")
        fault = self._next_fault(method)
        if self.latency and method != "getUpdates":
            await asyncio.sleep(self.latency)
        if fault is not None and not fault.done:
            body, code = await self._gone_wrong(request, fault)
        else:
            body, code = await self._carried_out(request, method, params)
            if fault is not None:
                await self._gone_wrong(request, fault)
        call.answer.append(body)
        self.on_call(call, "after")
        self._changed()
        if fault is not None and fault.garbage:
            return web.Response(text="<html>Bad gateway</html>", status=code)
        return web.json_response(body, status=code, dumps=json.dumps)

    def _next_fault(self, method: str) -> Fault | None:
        waiting = self._faults[method.lower()]
        return waiting.popleft() if waiting else None

    async def _gone_wrong(self, request: web.Request, fault: Fault) -> tuple[dict[str, Any], int]:
        if fault.seconds:
            await asyncio.sleep(fault.seconds)
        if fault.hang_up and request.transport is not None:
            request.transport.abort()
        refusal = fault.refusal or Refusal(502, "Bad Gateway")
        return refusal.body, refusal.code

    async def _carried_out(
        self, request: web.Request, method: str, params: dict[str, Any]
    ) -> tuple[dict[str, Any], int]:
        try:
            if request.match_info["token"] != self.token:
                raise Refusal(401, "Unauthorized")
            handler = getattr(self, "m_" + method.lower(), None)
            if handler is None:
                raise Refusal(404, "Not Found")
            result = handler(params)
            return {"ok": True, "result": await result if asyncio.iscoroutine(result) else result}, 200
        except Refusal as refusal:
            return refusal.body, refusal.code

    async def _download(self, request: web.Request) -> web.StreamResponse:
        call = Call(next(self._numbers), "download", {"path": request.match_info["path"]}, time.monotonic())
        self.calls.append(call)
        self.on_call(call, "before")
        fault = self._next_fault("download")
        if fault is not None:
            body, code = await self._gone_wrong(request, fault)
            return web.json_response(body, status=code)
        content = self.files.get(request.match_info["path"])
        return web.Response(status=404) if content is None else web.Response(body=content)

    # ------------------------------------------------------------- polling

    async def m_getupdates(self, params: dict[str, Any]) -> Any:
        assert json.loads(params["allowed_updates"]) == [
            "message",
            "edited_message",
            "callback_query",
            "my_chat_member",
        ]
        assert self._news is not None
        self._turn += 1
        turn = self._turn
        self._news.set()  # a newer poll ends an older one
        offset = int(params.get("offset") or 0)
        while self._pending and self._pending[0]["update_id"] < offset:
            self._history.append(self._pending.popleft())
            self.confirmed += 1
        limit = time.monotonic() + min(50.0, float(params.get("timeout") or 0))
        while not self._pending and (left := limit - time.monotonic()) > 0:
            self._news.clear()
            try:
                await asyncio.wait_for(self._news.wait(), left)
            except TimeoutError:
                break
            if turn != self._turn:
                raise Refusal(409, "Conflict: terminated by other getUpdates request; make sure that only one runs")
        return list(itertools.islice(self._pending, 100))

    def _message(self, chat: int, number: int | None = None, **fields: Any) -> dict[str, Any]:
        return {
            "message_id": next(self.message_ids) if number is None else number,
            "date": self.date(),
            "chat": private(chat),
            "from": person(chat, self.names.get(chat, "")),
            **fields,
        }

    def _membership(self, who: int, old: str, new: str, chat: dict[str, Any] | None = None) -> None:
        self.push(
            {
                "my_chat_member": {
                    "chat": chat or private(who),
                    "from": person(who, self.names.get(who, "")),
                    "date": self.date(),
                    "old_chat_member": {"user": BOT, "status": old},
                    "new_chat_member": {"user": BOT, "status": new},
                }
            }
        )

    def _queue(self, update: dict[str, Any]) -> None:
        self._pending.append(update)
        if self._news is not None:
            self._news.set()

    def _in_loop(self, work: Callable[[], object]) -> None:
        done: list[object] = []

        def run() -> None:
            work()
            done.append(None)
            self._changed()

        if not self._thread.is_alive():
            work()
            return
        self._loop.call_soon_threadsafe(run)
        limit = time.monotonic() + 10
        with self._updated:
            while not done and time.monotonic() < limit:
                self._updated.wait(0.1)

    def _changed(self) -> None:
        with self._updated:
            self._updated.notify_all()
