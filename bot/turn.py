"""One event being answered: who, when, what is known, and the replies gathered so far.

Everything happens in the transaction of `store`; the replies are its outbox rows and are sent after its commit.
What is looked up is looked up once, on first use.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, datetime, timedelta
from functools import cached_property
from typing import Any

from bot import zones
from bot.envelopes import wrap_outgoing
from bot.memory import Memory
from bot.messages import Inbound, Outgoing, OutgoingKind
from bot.preferences import Preferences, preferences
from bot.replies.reply import Reply, own_undo
from engine.catalogue.catalogue import Catalogue
from engine.values.ids import AthleteId
from engine.values.load import Unit
from storage.envelopes import InboundId, Lane, OutboxId
from storage.records import Change, ChangeKind, Person
from storage.store import Store

FORGET, FORGET_AFTER = "forget", timedelta(minutes=15)
LEFT_OUT = "left out"
"""Under this name a turn keeps the words of a question that this message let lapse; TOLD once a reply named them."""
TOLD = ""
FAR_ABOVE = 8
"""A message with this many of the bot's below it has scrolled away: edit it and nobody sees it."""


class Turn:
    def __init__(
        self, store: Store, me: Person, inbound: Inbound, event: InboundId, memory: Memory, default_zone: str
    ) -> None:
        self.store = store
        self.me = me
        self.inbound = inbound
        self.event = event
        self.memory = memory
        self.default_zone = default_zone
        self.said: list[OutboxId] = []
        self.step: Change | None = None
        """The change this turn made last: what the Undo button of its replies takes back, and nothing else."""
        self.begun: Change | None = None
        """A change that the next one of hers goes on with, so that both are one step."""
        self.about: AthleteId | None = None
        """A client whose records the replies tell: they are erased with hers."""
        self.kinds: set[ChangeKind] = set()
        """The kinds of all changes that this turn made."""
        self.heading = ""
        """A line that stands over her next message: what a mistyped request was read as, what an edit took back."""
        self.beside: Sequence[AthleteId] = ()
        """Several clients whose records the replies tell: erased with any of them."""
        self.kept: dict[str, Any] = {}
        """What other modules looked up for this turn, by their own names."""

    @property
    def athlete(self) -> AthleteId:
        return self.me.id

    @property
    def at(self) -> datetime:
        """When it was said, as an instant."""
        return self.inbound.at

    @cached_property
    def preferences(self) -> Preferences:
        return preferences(self.memory.settings_of(self.store, self.athlete), self.default_zone)

    @property
    def unit(self) -> Unit:
        return self.preferences.unit

    @cached_property
    def now(self) -> datetime:
        """When it was said, by the person's clock, naive."""
        return zones.local(self.at, self.preferences.zone)

    @property
    def today(self) -> date:
        return self.now.date()

    @cached_property
    def catalogue(self) -> Catalogue:
        """The catalogue with her own exercises and shorthands."""
        return self.memory.catalogue_of(self.store, self.athlete)

    def begin(self, kind: ChangeKind, label: str) -> Change:
        """A change that undo can take back."""
        return self.begin_for(self.athlete, kind, label)

    def begin_for(self, athlete: AthleteId, kind: ChangeKind, label: str) -> Change:
        """A change that she makes in somebody's records: her own, or as a coach a client's."""
        by = self.athlete
        begun, self.begun = self.begun, None
        if begun is not None and athlete == self.athlete and kind is not ChangeKind.ASIDE:
            change = self.store.changes.relabel(begun, label, kind)
        else:
            change = self.store.changes.begin(athlete, kind, label, self.at, by=by, inbound=self.event)
        self.kinds.add(kind)
        if kind is not ChangeKind.ASIDE:
            self.step = change
        return change

    def erase_me(self, reply: Reply) -> None:
        """Nothing; every row of hers is gone, and a stranger in her chat is told so.

        The stranger's row is what carries the answer; it is erased as well, once the answer had time to go out.
        """
        self.store.belongings.erase(self.athlete)
        stranger = self.store.people.create(self.inbound.source, self.inbound.chat, "", self.at)
        self.me, self.event = stranger, InboundId(0)
        self.store.due.plan(stranger.id, FORGET, self.at.date(), self.at + FORGET_AFTER)
        outgoing = wrap_outgoing(Outgoing(OutgoingKind.SEND, reply.text))
        self.store.outbox.add(stranger.id, outgoing, self.at, lane=Lane.REPLY)

    def forget_lookups(self) -> None:
        """Nothing; a setting was changed, so what was read from the settings is read again."""
        self.store.kept.clear()
        for name in ("preferences", "now", "catalogue"):
            self.__dict__.pop(name, None)

    def say(self, reply: Reply, *, silent: bool = False) -> OutboxId:
        """The id of a new message to her."""
        return self._put(OutgoingKind.SEND, reply, silent=silent)

    def edit(self, message: OutboxId, reply: Reply) -> OutboxId:
        """The id of an edit of one of the bot's messages to her."""
        return self._put(OutgoingKind.EDIT, reply, edits=message)

    def react(self) -> OutboxId:
        """The id of a thumbs up on her message: stored as read."""
        return self._put(OutgoingKind.REACT, Reply(""), message=self.inbound.message)

    def _put(
        self,
        kind: OutgoingKind,
        reply: Reply,
        *,
        edits: OutboxId | None = None,
        message: int | None = None,
        silent: bool = False,
    ) -> OutboxId:
        text = reply.text
        if self.heading and kind is OutgoingKind.SEND:
            text, self.heading = f"{self.heading}\n{text}".rstrip(), ""
        outgoing = Outgoing(
            kind,
            text,
            own_undo(reply.buttons, self.step),
            edits=edits,
            message=message,
            silent=silent,
            attachment=reply.attachment,
            prescribes=reply.prescribes,
            volume=reply.volume,
        )
        sent = self.store.outbox.add(
            self.athlete,
            wrap_outgoing(outgoing),
            self.at,
            lane=Lane.REPLY,
            inbound=self.event,
            about=self.about,
            beside=self.beside,
        )
        self.said.append(sent)
        return sent

    def tell(self, athlete: AthleteId, reply: Reply, *, silent: bool = False) -> OutboxId:
        """The id of a message to somebody else (her coach, a client)."""
        outgoing = Outgoing(
            OutgoingKind.SEND, reply.text, reply.buttons, silent=silent, reply=False, attachment=reply.attachment
        )
        return self.store.outbox.add(
            athlete, wrap_outgoing(outgoing), self.at, lane=Lane.UNPROMPTED, inbound=self.event, about=self.athlete
        )
