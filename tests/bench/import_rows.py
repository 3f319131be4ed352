"""Old logs through the whole path, in rows a second: document in, preview out, approved, recorded, undone.

    python tests/bench/import_rows.py [--rows 5000] [--url URL]

Every kind of source: a sheet of one row a set (.csv, .csv in another code page with decimal commas, .xlsx, .xlsx with
some loads as formulas), a row an exercise with lists of reps, a column an exercise, and a diary in plain text; with
notes on every twentieth row. The goal is 1,000 rows a second for preview and approval together.
"""

from __future__ import annotations

import argparse
import io
import time
from datetime import UTC, date, datetime, timedelta

from openpyxl import Workbook

from bot.handle import Product
from bot.messages import Document, Inbound, InboundKind
from storage.database import open_database

LIFTS = ("bench press", "Squat (Barbell)", "barbell row", "RDL", "pull-ups", "ohp", "lat pulldown", "leg press")
FIRST = date(2016, 1, 4)
A_DAY = 20
NOW = datetime(2026, 6, 1, 12, tzinfo=UTC)


def rows(count: int) -> list[tuple[str, str, int, float, str]]:
    return [
        (
            (FIRST + timedelta(days=3 * (number // A_DAY))).isoformat(),
            LIFTS[number // 5 % len(LIFTS)],
            5 + number % 6,
            40 + number % 40 * 0.5,
            "felt good" if number % A_DAY == 0 else "",
        )
        for number in range(count)
    ]


def as_csv(count: int) -> bytes:
    lines = ["date,exercise,reps,weight,notes", *(",".join(map(str, row)) for row in rows(count))]
    return "\n".join(lines).encode()


def as_workbook(count: int) -> bytes:
    book = Workbook(write_only=True)
    page = book.create_sheet()
    page.append(["date", "exercise", "reps", "weight", "notes"])
    for row in rows(count):
        page.append(list(row))
    kept = io.BytesIO()
    book.save(kept)
    return kept.getvalue()


def as_formulas(count: int) -> bytes:
    """Loads as formulas without results: none of them is taken, each is told."""
    book = Workbook(write_only=True)
    page = book.create_sheet()
    page.append(["date", "exercise", "reps", "weight"])
    for place, (on, lift, reps, load, _) in enumerate(rows(count)):
        page.append([on, lift, reps, f"={load}+0" if place % A_DAY == 0 else load])
    kept = io.BytesIO()
    book.save(kept)
    return kept.getvalue()


def as_code_page(count: int) -> bytes:
    lines = ["Дата;Упражнение;Повторения;Вес (кг)"]
    lines += [f"{on};{lift};{reps};{str(load).replace('.', ',')}" for on, lift, reps, load, _ in rows(count)]
    return "\n".join(lines).encode("cp1251")


def as_lists(count: int) -> bytes:
    lines = ["date,exercise,sets,reps,weight"]
    lines += [f'{on},{lift},3,"{reps},{reps},{reps - 1}",{load}' for on, lift, reps, load, _ in rows(count)]
    return "\n".join(lines).encode()


def as_columns(count: int) -> bytes:
    """A row is a cell here: one day and one exercise."""
    lines = ["date,squat,bench press,barbell row,ohp"]
    days = [(FIRST + timedelta(days=place)).isoformat() for place in range(-(-count // 4))]
    lines += [f"{on},100x5,{60 + place % 9}x8,3x8 60,40x{3 + place % 7}" for place, on in enumerate(days)]
    return "\n".join(lines).encode()


def as_diary(count: int) -> bytes:
    lines, day = [], ""
    for on, lift, reps, load, note in rows(count):
        if on != day:
            lines += ["", on]
            day = on
        lines.append(f"{lift} {load}x{reps} {note}".strip())
    return "\n".join(lines).encode()


class Chat:
    """One athlete, timed. The product is warm: names and words are read before the clock starts."""

    def __init__(self, url: str) -> None:
        self.product = Product(open_database(url))
        self.number = 0
        self.say("squat 3x5 100")

    def say(self, text: str, document: Document | None = None) -> float:
        self.number += 1
        kind = InboundKind.MESSAGE if document is None else InboundKind.DOCUMENT
        at = NOW + timedelta(seconds=self.number)
        inbound = Inbound("bench", 1, str(self.number), kind, self.number, text, at, "ana", document)
        started = time.perf_counter()
        self.product.receive(inbound)
        return time.perf_counter() - started


def main() -> None:
    arguments = argparse.ArgumentParser(description=__doc__)
    arguments.add_argument("--rows", type=int, default=5_000)
    arguments.add_argument("--url", default="sqlite://")
    asked = arguments.parse_args()
    print(f"{asked.rows} rows            preview  approval   again    undo   rows a second (preview + approval)")
    for name, content in (
        ("log.csv", as_csv(asked.rows)),
        ("cp1251.csv", as_code_page(asked.rows)),
        ("lists.csv", as_lists(asked.rows)),
        ("columns.csv", as_columns(asked.rows)),
        ("log.xlsx", as_workbook(asked.rows)),
        ("formulas.xlsx", as_formulas(asked.rows)),
        ("log.txt", as_diary(asked.rows)),
    ):
        chat = Chat(asked.url)
        document = Document(name, content)
        preview = chat.say("", document)
        approval = chat.say("take over")
        again = chat.say("", document)
        undo = chat.say("undo")
        speed = asked.rows / (preview + approval)
        print(f"{name:<16} {preview:>9.2f}s {approval:>8.2f}s {again:>6.2f}s {undo:>6.2f}s {speed:>9,.0f}")


if __name__ == "__main__":
    main()
