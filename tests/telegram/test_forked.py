"""A bot is settled only when nothing is on its way to it any more: what waits for that must not go on too soon."""

from __future__ import annotations

from pathlib import Path
from typing import Any, cast

from tests.telegram.forked import MortalBot
from tests.telegram.standin import StandIn

Rows = list[tuple[Any, ...]]


class Arriving:
    """A server and a database on which one message arrives: each look finds it a step further."""

    STEPS: tuple[tuple[bool, Rows, Rows], ...] = (
        (False, [], []),
        (True, [("new",)], []),
        (True, [("done",)], [(1,)]),
        (True, [("done",)], []),
    )
    url = ""

    def __init__(self, begun: int) -> None:
        self._step = begun

    def _look(self) -> tuple[bool, Rows, Rows]:
        step = min(self._step, len(self.STEPS) - 1)
        self._step += 1
        return self.STEPS[step]

    @property
    def idle(self) -> bool:
        return self._look()[0]

    def rows(self, query: str) -> Rows:
        _, inbound, outbox = self._look()
        return inbound if "inbound" in query else outbox


class Watched(MortalBot):
    def __init__(self, arriving: Arriving) -> None:
        super().__init__(cast("StandIn", arriving), Path(), iter(()))
        self._arriving = arriving

    def rows(self, query: str) -> Rows:
        return self._arriving.rows(query)


def test_a_message_that_arrives_while_one_looks_is_waited_for() -> None:
    settled = [Watched(Arriving(begun)).is_settled() for begun in range(len(Arriving.STEPS))]

    assert settled == [False, True, True, True]
