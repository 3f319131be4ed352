"""From a message to its reply, through the whole product, with 100,000 sets stored.

    python tests/bench/message_to_reply.py [--sets 100000] [--athletes 1] [--messages 200] [--url URL]

One athlete on an eight-week plan texts sets; the log holds ten years of her training before it (or of several).
Prints the median and the 95th percentile in milliseconds, the commit included, and a profile with --profile.
"""

from __future__ import annotations

import argparse
import cProfile
import pstats
import random
import statistics
import tempfile
import time
from datetime import UTC, date, datetime, timedelta
from decimal import Decimal
from pathlib import Path

from bot.handle import Product
from bot.messages import Inbound, InboundKind
from engine.catalogue.catalogue import catalogue
from engine.values.ids import ExerciseName
from engine.values.load import Load, Unit
from engine.values.sets import SetDone
from storage.database import Database, open_database
from storage.records import ChangeKind

PLAN = """plan: steady, 8 weeks
day mon: one
barbell back squat 3x5 at 100 kg, then +2.5 kg
barbell bench press 3x5 at 80 kg, then +2.5 kg
seated cable row 3x10-12 at 55 kg, then +2.5 kg
day wed: two
romanian deadlift 3x8 at 90 kg, then +2.5 kg
barbell overhead press 3x6 at 45 kg, add a set each week up to 5, then +2.5 kg
lat pulldown 3x10-12 at 55 kg, then +2.5 kg
day fri: three
front squat 3x5 at 80 kg, then +2.5 kg
incline bench press 3x8 at 60 kg, then +2.5 kg
hammer curl 3x10-12 at 14 kg, then +1 kg"""
DAYS = {
    0: ["squat 3x5 100", "bench 80 5", "5", "5", "cable row 55 12 11 10"],
    2: ["rdl 3x8 90", "ohp 45 6 6 6", "pulldown 55kg 12 11 10"],
    4: ["front squat 3x5 80", "incline bench 60x8x3", "hammer curls 14kg 12", "11", "10"],
}
START = datetime(2026, 1, 5, 18, tzinfo=UTC)


def fill(database: Database, product: Product, sets: int, athletes: int) -> None:
    """Ten years of sets before the plan begins."""
    chance = random.Random(7)
    names = [name for name, one in catalogue().exercises.items() if one.loading.value == "bar"][:30]
    each = sets // athletes
    for chat in range(1, athletes + 1):
        with database.transaction() as store:
            person = store.people.create("bench", chat, f"athlete {chat}", START)
        per_day = max(1, each // 1500)
        for at in range(0, each, per_day):
            day = date(2016, 1, 4) + timedelta(days=int(at / each * 3600))
            done = [one_set(chance, names) for _ in range(per_day)]
            with database.transaction() as store:
                change = store.changes.begin(person.id, ChangeKind.IMPORT, "old sets", START)
                store.sets.add(change, done, on=day, at=START, message=0)


def one_set(chance: random.Random, names: list[ExerciseName]) -> SetDone:
    return SetDone(chance.choice(names), chance.randint(3, 12), Load(Decimal(chance.randint(16, 60)) * 5 / 2, Unit.KG))


def texts(weeks: int) -> list[tuple[datetime, str]]:
    said = [(START - timedelta(hours=1), PLAN)]
    for week in range(weeks):
        for day, lines in DAYS.items():
            at = START + timedelta(days=7 * week + day)
            said += [(at + timedelta(minutes=5 * place), line) for place, line in enumerate(lines)]
    return said


def main() -> None:
    parser = argparse.ArgumentParser()
    parser.add_argument("--sets", type=int, default=100_000)
    parser.add_argument("--athletes", type=int, default=1)
    parser.add_argument("--weeks", type=int, default=8)
    parser.add_argument("--url")
    parser.add_argument("--profile", action="store_true")
    options = parser.parse_args()
    with tempfile.TemporaryDirectory() as folder:
        database = open_database(options.url or f"sqlite:///{Path(folder) / 'bench.db'}")
        product = Product(database)
        fill(database, product, options.sets, options.athletes)
        times: list[float] = []
        work: list[float] = []
        profile = cProfile.Profile()
        for number, (at, text) in enumerate(texts(options.weeks)):
            inbound = Inbound("bench", 1, f"m{number}", InboundKind.MESSAGE, number + 1, text, at, "athlete 1")
            if options.profile:
                profile.enable()
            start, worked = time.perf_counter(), time.process_time()
            product.receive(inbound)
            times.append(1000 * (time.perf_counter() - start))
            work.append(1000 * (time.process_time() - worked))
            profile.disable()
        with database.transaction() as store:
            failed = store.inbox.failures()
            athlete = store.people.find("bench", 1)
            stand = store.sets.count(athlete.id) if athlete else 0
            print(f"{stand} sets of the athlete stand, {len(failed)} failed")
        database.close()
        measured = times[2:]
        worst = statistics.quantiles(measured, n=20)[-1]
        print(f"message to reply: median {statistics.median(measured):.2f} ms, 95th {worst:.2f} ms")
        print(f"of it this process's own work: median {statistics.median(work[2:]):.2f} ms, {len(measured)} messages")
        if options.profile:
            pstats.Stats(profile).sort_stats("cumulative").print_stats(45)


if __name__ == "__main__":
    main()
