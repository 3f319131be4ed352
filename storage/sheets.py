"""A person's standing records as CSV, for a spreadsheet.

A cell that a spreadsheet would take for a formula gets an apostrophe before it.
"""

from __future__ import annotations

import csv
import io
from collections.abc import Iterable, Mapping, Sequence
from typing import Any

from sqlalchemy import Table, select

from engine.values.ids import AthleteId
from engine.values.load import Load, plain
from engine.values.sets import SetRecord
from storage.facts import standing
from storage.mapping import SET_COLUMNS, load_of, set_record
from storage.tables import BODY_WEIGHTS, NOTES, PLANS, SETS
from storage.work import Work

SET_HEADINGS = (
    *("date", "exercise", "reps", "load", "unit", "counts", "rpe", "rir", "seconds", "metres", "kind"),
    *("failure", "missed", "side", "logged at"),
)
FORMULA_STARTS = ("=", "+", "-", "@", "\t", "\r")


def sheets(work: Work, athlete: AthleteId) -> Mapping[str, str]:
    """File name to CSV text, in the order of the days."""
    return {
        "sets.csv": _csv(SET_HEADINGS, map(_set_cells, _sets(work, athlete))),
        "notes.csv": _csv(
            ("date", "exercise", "pain", "shared", "note"),
            (
                (row.on_day.isoformat(), row.exercise or "", _yes(row.pain), _yes(row.shared), _words(row.text))
                for row in _rows(work, NOTES, athlete)
            ),
        ),
        "body-weights.csv": _csv(
            ("date", "load", "unit"),
            (
                (row.on_day.isoformat(), *_load_cells(load_of(row.thousandths, row.unit, row.basis))[:2])
                for row in _rows(work, BODY_WEIGHTS, athlete)
            ),
        ),
        "plans.csv": _csv(
            ("starts on", "name", "plan"),
            (
                (row.starts_on.isoformat(), _words(row.name), _words(row.text))
                for row in _rows(work, PLANS, athlete, day="starts_on")
            ),
        ),
    }


def _sets(work: Work, athlete: AthleteId) -> Iterable[SetRecord]:
    query = select(*SET_COLUMNS).where(standing(SETS, athlete)).order_by(SETS.c.on_day, SETS.c.place, SETS.c.id)
    return map(set_record, work.connection.execute(query))


def _rows(work: Work, table: Table, athlete: AthleteId, day: str = "on_day") -> Iterable[Any]:
    query = select(table).where(standing(table, athlete)).order_by(table.c[day], table.c.id)
    return work.connection.execute(query)


def _set_cells(record: SetRecord) -> tuple[str, ...]:
    done, effort = record.done, record.done.effort
    return (
        record.on.isoformat(),
        done.exercise,
        str(done.reps),
        *_load_cells(done.load),
        plain(effort.rpe) if effort and effort.as_rpe else "",
        plain(effort.rir) if effort and not effort.as_rpe else "",
        "" if done.seconds is None else plain(done.seconds),
        "" if done.metres is None else plain(done.metres),
        done.kind.value,
        _yes(done.failure),
        _yes(done.missed),
        "" if done.side is None else done.side.value,
        record.at.isoformat(),
    )


def _load_cells(load: Load | None) -> tuple[str, str, str]:
    return ("", "", "") if load is None else (plain(load.amount), load.unit.value, load.basis.value)


def _yes(flag: bool) -> str:
    return "yes" if flag else ""


def _words(text: str) -> str:
    return f"'{text}" if text.startswith(FORMULA_STARTS) else text


def _csv(headings: Sequence[str], rows: Iterable[Sequence[str]]) -> str:
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow(headings)
    writer.writerows(rows)
    return out.getvalue()
