"""Documents as the import tests write them, and the sets they come to in a few words."""

from __future__ import annotations

import io
from collections.abc import Sequence
from datetime import date

from openpyxl import Workbook

from engine.catalogue.catalogue import catalogue
from engine.imports.document import read_log
from engine.imports.values import Habits, OldLog
from engine.values.load import Unit, plain
from engine.values.sets import SetDone, SetKind

TODAY = date(2026, 6, 1)


def read(name: str, content: str | bytes, unit: Unit = Unit.KG, taught=None, today: date = TODAY) -> OldLog | None:
    content = content.encode() if isinstance(content, str) else content
    return read_log(name, content, Habits(unit, today, taught or {}), catalogue())


def log_of(name: str, content: str | bytes, unit: Unit = Unit.KG, **known) -> OldLog:
    found = read(name, content, unit, **known)

    assert found is not None
    return found


def sheet(header: str, *rows: str) -> str:
    """A table whose cells are parted by bars, as a file parted by tabs."""
    return "\n".join(line.replace("|", "\t") for line in (header, *rows))


def workbook(*sheets: Sequence[Sequence[object]]) -> bytes:
    book = Workbook(write_only=True)
    for rows in sheets:
        page = book.create_sheet()
        for row in rows:
            page.append(list(row))
    kept = io.BytesIO()
    book.save(kept)
    return kept.getvalue()


def said(log: OldLog) -> list[str]:
    """Each set as: day of the month and month, exercise, set."""
    return [f"{one.on.day}.{one.on.month}. {one.done.exercise} {in_short(one.done)}" for one in log.sets]


def in_short(done: SetDone) -> str:
    load = "" if done.load is None else f"@{plain(done.load.amount)}{done.load.unit.value}"
    parts = [f"{done.reps}{load}"]
    parts += [] if done.seconds is None else [f"{plain(done.seconds)}s"]
    parts += [] if done.metres is None else [f"{plain(done.metres)}m"]
    parts += [] if done.effort is None else [f"rir {plain(done.effort.rir)}"]
    parts += [] if done.kind is SetKind.WORK else [done.kind.value]
    parts += ["failure"] if done.failure else []
    parts += ["missed"] if done.missed else []
    return " ".join(parts)


def left_out(log: OldLog) -> list[tuple[int, str]]:
    return [(one.line, one.why) for one in log.left_out]
