"""One text to everyone who can be reached, in the lane that never delays a reply."""

from __future__ import annotations

from datetime import datetime

from storage.envelopes import StoredOutgoing
from storage.records import BroadcastId, BroadcastProgress
from storage.work import Work


class Broadcasts:
    def __init__(self, work: Work) -> None:
        self._work = work

    def start(self, outgoing: StoredOutgoing, at: datetime) -> BroadcastId:
        """The broadcast, with a message in the outbox for every reachable person."""
        raise NotImplementedError

    def progress(self, broadcast: BroadcastId) -> BroadcastProgress:
        """How many of its messages wait, were sent, or came to nothing."""
        raise NotImplementedError
