"""What storage costs in one message, with a long log and with many athletes.

    python tests/bench/storage_message.py [--sets 100000] [--athletes 200] [--url URL] [--rounds 200]

Prints medians and 95th percentiles in milliseconds for the whole transaction of a message (three sets), and for each
question put to the log on the way. Without --url: a SQLite file in a temporary folder.
"""

from __future__ import annotations

import argparse
import random
import statistics
import tempfile
import time
from collections import defaultdict
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from datetime import UTC, date, datetime, timedelta
from decimal import Decimal
from pathlib import Path

from engine.values.effort import Effort
from engine.values.ids import AthleteId, ExerciseName
from engine.values.load import Load, Unit
from engine.values.sets import SetDone
from storage.database import Database, open_database
from storage.envelopes import StoredInbound, StoredOutgoing
from storage.records import ChangeKind
from storage.store import Store

EXERCISES = tuple(ExerciseName(f"exercise {n:02}") for n in range(60))
IN_A_DAY = 25
START = date(2015, 1, 5)
AT = datetime(2026, 3, 2, 18, 5, tzinfo=UTC)
TODAY = AT.date()
FIRST_OWN_KEY = 10_000_000


class Times:
    def __init__(self) -> None:
        self.milliseconds: dict[str, list[float]] = defaultdict(list)

    @contextmanager
    def of(self, what: str) -> Iterator[None]:
        start = time.perf_counter()
        yield
        self.milliseconds[what].append(1000 * (time.perf_counter() - start))

    def report(self) -> None:
        for what, found in self.milliseconds.items():
            worst = statistics.quantiles(found, n=20)[-1]
            print(f"  {what:<28} median {statistics.median(found):7.3f}   95th {worst:7.3f}")


def a_set(chance: random.Random) -> SetDone:
    load = Load(Decimal(chance.randrange(40, 400)) / 2, chance.choice([Unit.KG, Unit.KG, Unit.LB]))
    return SetDone(chance.choice(EXERCISES), chance.randrange(1, 15), load, Effort(Decimal(2)))


def fill(database: Database, athlete: AthleteId, count: int, chance: random.Random) -> float:
    start = time.perf_counter()
    days = -(-count // IN_A_DAY)
    with database.transaction() as store:
        for n in range(days):
            on = TODAY - timedelta(days=max(1, round((days - n) * min(1.5, (TODAY - START).days / days))))
            change = store.changes.begin(athlete, ChangeKind.SETS, "sets", AT)
            store.sets.add(change, [a_set(chance) for _ in range(IN_A_DAY)], on=on, at=AT, message=n)
    return days * IN_A_DAY / (time.perf_counter() - start)


def message(database: Database, times: Times, chat: int, athlete: AthleteId, n: int, chance: random.Random) -> None:
    sets = [a_set(chance)] * 3
    with times.of("store the event"), database.transaction() as store:
        store.inbox.put([StoredInbound("telegram", chat, str(FIRST_OWN_KEY + n), "message", n, "row", AT)], AT)
        store.inbox.set_offset("telegram", n)
    with times.of("handle it, all in all"), database.transaction() as store:
        event = store.inbox.take_next("telegram", chat)
        assert event is not None
        ask(store, times, athlete, sets[0].exercise)
        with times.of("- add a change and 3 sets"):
            change = store.changes.begin(athlete, ChangeKind.SETS, "3 sets", AT, inbound=event.id)
            store.sets.add(change, sets, on=TODAY, at=AT, message=n)
        with times.of("- two messages out"):
            line = store.outbox.add(athlete, StoredOutgoing("send", "row: 12"), AT, inbound=event.id)
            store.outbox.add(athlete, StoredOutgoing("react", "ok", message=n), AT, inbound=event.id)
            store.lift_lines.put(athlete, TODAY, sets[0].exercise, line)
        store.inbox.done(event.id, AT)
    with times.of("claim and report a sent one"):
        with database.transaction() as store:
            claimed = store.outbox.claim("telegram", AT, lease=timedelta(minutes=1))
        with database.transaction() as store:
            for one in claimed:
                store.outbox.mark_sent(one.id, one.id, AT)
    with times.of("undo"), database.transaction() as store:
        store.changes.undo(athlete, AT)


def ask(store: Store, times: Times, athlete: AthleteId, exercise: ExerciseName) -> None:
    questions: dict[str, Callable[[], object]] = {
        "- person by chat": lambda: store.people.find("telegram", athlete),
        "- settings and shorthands": lambda: (store.settings.all(athlete), store.taught.shorthands(athlete)),
        "- plan and choices": lambda: (store.plans.at(athlete, TODAY), store.choices.between(athlete, TODAY, TODAY)),
        "- open question": lambda: store.questions.open(athlete, AT),
        "- recent sets": lambda: store.sets.recent(athlete, TODAY),
        "- last load of all exercises": lambda: store.sets.last_loads(athlete),
        "- best load of all exercises": lambda: store.sets.best_loads(athlete),
        "- history, last 8 days of it": lambda: store.sets.history(athlete, exercise, days=8),
        "- the week so far": lambda: store.sets.between(athlete, TODAY - timedelta(days=6), TODAY),
        "- eight weeks": lambda: store.sets.between(athlete, TODAY - timedelta(weeks=8), TODAY),
    }
    for what, question in questions.items():
        with times.of(what):
            question()


def run(url: str, sets: int, athletes: int, rounds: int) -> None:
    chance = random.Random(7)
    database = open_database(url)
    with database.transaction() as store:
        people = [store.people.create("telegram", chat, f"person {chat}", AT).id for chat in range(1, athletes + 1)]
    rate = fill(database, people[0], sets, chance)
    for person in people[1:]:
        fill(database, person, 500, chance)
    print(f"{url.split(':')[0]}: {sets} sets of one athlete, 500 of {athletes - 1} others; filled {rate:,.0f} sets/s")
    for who, athlete in (("the one with the long log", 0), ("the others", None)):
        times = Times()
        for n in range(rounds):
            chat = 1 if athlete == 0 else 2 + n % (athletes - 1)
            message(database, times, chat, people[chat - 1], n + (0 if athlete == 0 else rounds), chance)
        print(f" {who}:")
        times.report()
    with database.reading() as store:
        times = Times()
        for _ in range(20):
            with times.of("a week of 50 athletes"):
                store.sets.of_athletes(people[1:51], TODAY - timedelta(days=6), TODAY)
        times.report()
    database.close()


def main() -> None:
    options = argparse.ArgumentParser(description=__doc__)
    options.add_argument("--sets", type=int, default=100_000)
    options.add_argument("--athletes", type=int, default=200)
    options.add_argument("--rounds", type=int, default=200)
    options.add_argument("--url")
    given = options.parse_args()
    with tempfile.TemporaryDirectory() as folder:
        run(given.url or f"sqlite:///{Path(folder)}/log.db", given.sets, given.athletes, given.rounds)


if __name__ == "__main__":
    main()
