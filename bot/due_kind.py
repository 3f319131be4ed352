"""One kind of message that goes out on its own: when it is next due for a person, and what it does then."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import date, datetime, time, timedelta

from bot import zones
from bot.envelopes import wrap_outgoing
from bot.memory import Memory
from bot.messages import Outgoing, OutgoingKind
from bot.preferences import Preferences
from bot.replies.reply import Reply
from engine.values.ids import AthleteId
from storage.envelopes import Lane, OutboxId
from storage.records import Due, Person
from storage.store import Store


@dataclass(frozen=True, slots=True)
class Moment:
    """One person at one instant, with all that is known of her."""

    store: Store
    memory: Memory
    person: Person
    preferences: Preferences
    at: datetime

    @property
    def now(self) -> datetime:
        """The instant by her clock, naive."""
        return zones.local(self.at, self.preferences.zone)

    @property
    def today(self) -> date:
        return self.now.date()

    @property
    def is_paused(self) -> bool:
        begins, until = self.preferences.paused_from, self.preferences.paused_until
        return until is not None and (begins or self.today) <= self.today < until

    def send(self, reply: Reply, *, silent: bool, about: Sequence[AthleteId] = ()) -> OutboxId:
        """The id of a message nobody asked for just now; `about`: the other people whose records it tells."""
        outgoing = Outgoing(
            OutgoingKind.SEND,
            reply.text,
            reply.buttons,
            silent=silent,
            reply=False,
            attachment=reply.attachment,
            prescribes=reply.prescribes,
            volume=reply.volume,
        )
        return self.store.outbox.add(
            self.person.id,
            wrap_outgoing(outgoing),
            self.at,
            lane=Lane.UNPROMPTED,
            about=about[0] if len(about) == 1 else None,
            beside=about if len(about) > 1 else (),
        )


@dataclass(frozen=True, slots=True)
class Coming:
    """What comes next: at which wall time, and for which local day it counts (the two differ over quiet hours)."""

    day: date
    at: datetime


@dataclass(frozen=True, slots=True)
class Kind:
    """`next_at` tells what comes next for a person, None for never; kinds without it are planned one by one.

    `run` says whether there was anything to send. `useful_for` is how late it may still go out.
    """

    name: str
    run: Callable[[Moment, Due], bool]
    next_at: Callable[[Moment], Coming | None] | None
    useful_for: timedelta


def next_weekday(now: datetime, weekday: int, at: time) -> datetime:
    """The next wall time of a weekday (Monday is 0) strictly after now."""
    day = now.date() + timedelta(days=(weekday - now.weekday()) % 7)
    wall = datetime.combine(day, at)
    return wall if wall > now else wall + timedelta(days=7)


def next_weekly(now: datetime, weekday: int, at: time, quiet: tuple[time, time]) -> Coming:
    """The next of a weekly message, also one that quiet hours put off to now: it still counts for its own day."""
    latest = now.date() - timedelta(days=(now.weekday() - weekday) % 7)
    days = (latest, latest + timedelta(days=7), latest + timedelta(days=14))
    coming = (Coming(day, out_of_quiet(datetime.combine(day, at), quiet)) for day in days)
    return next(one for one in coming if one.at > now)


def out_of_quiet(wall: datetime, quiet: tuple[time, time]) -> datetime:
    """The same wall time, or the end of the quiet hours that it falls in."""
    start, end = quiet
    over_midnight = start > end
    inside = (wall.time() >= start or wall.time() < end) if over_midnight else start <= wall.time() < end
    if not inside:
        return wall
    day = wall.date() + timedelta(days=1) if over_midnight and wall.time() >= start else wall.date()
    return datetime.combine(day, end)
