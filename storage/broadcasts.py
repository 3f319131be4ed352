"""One text to everyone who can be reached, in the lane that never delays a reply."""

from __future__ import annotations

from datetime import datetime

from sqlalchemy import func, insert, select

from storage.envelopes import Lane, OutboxState, StoredOutgoing
from storage.queue_mapping import outgoing_columns
from storage.records import BroadcastId, BroadcastProgress
from storage.tables.people import PEOPLE
from storage.tables.queues import BROADCASTS, OUTBOX
from storage.work import Work

PAGE = 1000


class Broadcasts:
    def __init__(self, work: Work) -> None:
        self._work = work

    def start(self, outgoing: StoredOutgoing, at: datetime) -> BroadcastId:
        """The broadcast, with a message in the outbox for every reachable person."""
        run = self._work.connection.execute
        broadcast = run(insert(BROADCASTS).values(text=outgoing.text, at=at).returning(BROADCASTS.c.id)).scalar_one()
        row = {
            **outgoing_columns(outgoing),
            "lane": Lane.BROADCAST.value,
            "broadcast_id": broadcast,
            "at": at,
            "state": OutboxState.NEW.value,
            "attempts": 0,
            "error": "",
        }
        last = 0
        reachable = select(PEOPLE.c.id, PEOPLE.c.source, PEOPLE.c.chat).where(PEOPLE.c.reachable).order_by(PEOPLE.c.id)
        while people := run(reachable.where(PEOPLE.c.id > last).limit(PAGE)).all():
            run(
                insert(OUTBOX),
                [{**row, "athlete_id": id, "source": source, "chat": chat} for id, source, chat in people],
            )
            last = people[-1].id
        return BroadcastId(broadcast)

    def progress(self, broadcast: BroadcastId) -> BroadcastProgress:
        """How many of its messages wait, were sent, or came to nothing."""
        query = select(OUTBOX.c.state, func.count()).where(OUTBOX.c.broadcast_id == broadcast).group_by(OUTBOX.c.state)
        counts = {OutboxState(state): count for state, count in self._work.connection.execute(query)}
        waiting = counts.get(OutboxState.NEW, 0) + counts.get(OutboxState.SENDING, 0)
        sent = counts.get(OutboxState.SENT, 0)
        return BroadcastProgress(waiting, sent, sum(counts.values()) - waiting - sent)
