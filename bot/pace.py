"""How fast messages may go out: so many a second in all, and a pause between unprompted ones to the same chat.

The platform allows about 30 messages a second in all and one a second to a chat, short bursts tolerated. We stay under
it: answers to a person may come in a burst, what nobody asked for keeps the pause.
Source: Telegram, Bots FAQ, "My bot is hitting limits".
"""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Limits:
    """Messages a second in all, at most so many at once; seconds between unprompted messages to one chat."""

    per_second: float = 25.0
    at_once: int = 8
    pause: float = 1.0


class Pace:
    """The state of the limits; `now` is any clock that only goes forward, in seconds."""

    def __init__(self, limits: Limits) -> None:
        self._limits = limits
        self._budget = limits.per_second
        self._asked = 0.0
        self._last: dict[int, float] = {}

    def allowed(self, now: float) -> int:
        """How many messages may go out right now."""
        self._budget = min(self._limits.per_second, self._budget + (now - self._asked) * self._limits.per_second)
        self._asked = now
        return int(self._budget)

    def wait(self, now: float) -> float:
        """Seconds until one more may go out."""
        return 0.0 if self.allowed(now) else (1.0 - self._budget) / self._limits.per_second

    def spend(self, count: int) -> None:
        self._budget -= count

    def turn(self, chat: int, now: float, *, unprompted: bool) -> float:
        """Seconds to wait before this message to the chat, its turn taken."""
        if len(self._last) > 4096:
            self._last = {each: at for each, at in self._last.items() if now - at < self._limits.pause}
        start = max(now, self._last.get(chat, -self._limits.pause) + self._limits.pause) if unprompted else now
        self._last[chat] = start
        return start - now
