"""Laws of old logs: no document makes the reader fail, what is written is read back equal, nothing is doubled."""

from __future__ import annotations

import csv
import io
from datetime import UTC, date, datetime, timedelta
from decimal import Decimal

from hypothesis import given, settings
from hypothesis import strategies as st

from engine.catalogue.catalogue import catalogue
from engine.imports.document import read_log
from engine.imports.doubles import not_yet
from engine.imports.values import Habits, OldLog, OldSet
from engine.reading.weighing.resolve import BASES
from engine.sheets.unreadable import Unreadable
from engine.values.effort import Effort
from engine.values.exercise import Measure
from engine.values.ids import SetId
from engine.values.load import Basis, Load, Unit, plain
from engine.values.sets import SetDone, SetKind, SetRecord, Side

TODAY = date(2026, 6, 1)
NOW = datetime(2026, 6, 1, tzinfo=UTC)
HABITS = Habits(Unit.KG, TODAY)
NAMES = sorted(catalogue().exercises)
HEADINGS = (
    *("date", "exercise", "reps", "load", "unit", "counts", "rpe", "rir"),
    *("seconds", "metres", "kind", "failure", "missed", "side"),
)
CELLS = st.one_of(
    st.sampled_from(
        [
            *("", "date", "exercise", "reps", "weight", "set 1", "sets", "2024-03-05", "5/3/2024", "31.2.24", "45356"),
            *("squat", "row", "8", "8,8,7", "3x8", "82,5", "1,250", "BW+10", "-", "1:30", "8-12", "rpe 8", "W", "yes"),
            *("1e309", "9" * 40, "٣", "½", "-20", "80/85", "kg", "plank", "farmer carry", "0", "60s", "Monday"),
        ]
    ),
    st.text(max_size=12),
)


@st.composite
def performed(draw: st.DrawFn) -> SetDone:
    """A set that somebody could have done, as the product would have recorded it."""
    exercise = catalogue().exercises[draw(st.sampled_from(NAMES))]
    basis = BASES.get(exercise.loading, Basis.TOTAL)
    least = -40 if basis is Basis.BODY else 0
    amount = Decimal(draw(st.integers(least * 4, 60 * 4))) / 4
    missed = draw(st.booleans())
    timed, carried = exercise.measure is Measure.TIME, exercise.measure is Measure.DISTANCE
    rir = Decimal(draw(st.integers(0, 20))) / 2
    return SetDone(
        exercise=exercise.name,
        reps=1 if timed or carried else draw(st.integers(0 if missed else 1, 60)),
        load=Load(amount, draw(st.sampled_from(Unit)), basis),
        effort=draw(st.none() | st.builds(Effort, st.just(rir), st.booleans())),
        seconds=Decimal(draw(st.integers(1, 600))) if timed else None,
        metres=Decimal(draw(st.integers(1, 400))) if carried else None,
        kind=draw(st.sampled_from(SetKind)),
        failure=draw(st.booleans()),
        missed=missed,
        side=draw(st.none() | st.sampled_from(Side)),
    )


def written(on: date, done: SetDone) -> list[str]:
    load, effort = done.load, done.effort
    assert load is not None
    return [
        on.isoformat(),
        done.exercise,
        str(done.reps),
        *(plain(load.amount), load.unit.value, load.basis.value),
        plain(effort.rpe) if effort and effort.as_rpe else "",
        plain(effort.rir) if effort and not effort.as_rpe else "",
        *("" if amount is None else plain(amount) for amount in (done.seconds, done.metres)),
        done.kind.value,
        "yes" if done.failure else "",
        "yes" if done.missed else "",
        done.side.value if done.side else "",
    ]


def as_csv(rows, delimiter: str = ",") -> bytes:
    out = io.StringIO()
    csv.writer(out, delimiter=delimiter).writerows(rows)
    return out.getvalue().encode("utf-8", "surrogatepass")


days = st.integers(0, 900).map(lambda back: TODAY - timedelta(days=back))
logs = st.lists(st.tuples(days, performed()), min_size=1, max_size=8)


def test_every_name_that_an_export_writes_is_read_back_as_that_lift():
    rows = [HEADINGS, *([TODAY.isoformat(), name, "5", *[""] * (len(HEADINGS) - 3)] for name in NAMES)]
    found = read_log("log.csv", as_csv(rows), HABITS, catalogue())

    assert found is not None
    assert [one.why for one in found.left_out if "which one" in one.why or "unknown" in one.why] == []


@settings(max_examples=60)
@given(logs, st.sampled_from(",;\t"))
def test_what_is_written_row_by_row_is_read_back_equal(sets, delimiter):
    rows = [HEADINGS, *(written(on, done) for on, done in sets)]
    found = read_log("log.csv", as_csv(rows, delimiter), HABITS, catalogue())

    assert found is not None
    lost = {one.line for one in found.left_out}
    assert all("times the next heaviest" in one.why for one in found.left_out)
    expected = sorted((one for line, one in enumerate(sets, start=2) if line not in lost), key=lambda one: one[0])
    assert [(one.on, one.done) for one in found.sets] == expected


def read_or_refuse(name: str, content: bytes) -> OldLog | None:
    """The old log, or None for what is none and for what is refused in words."""
    try:
        return read_log(name, content, HABITS, catalogue())
    except Unreadable:
        return None


@settings(max_examples=150)
@given(
    st.lists(st.lists(CELLS, max_size=6), max_size=12),
    st.sampled_from(("log.csv", "log.tsv", "log.txt", "log.md")),
    st.sampled_from((",", ";", "\t", "\n", " ")),
)
def test_no_table_or_text_makes_the_reader_fail(rows, name, delimiter):
    header = ["date", "exercise", "sets", "reps", "weight", "notes"]
    for content in (rows, [header, *rows]):
        text = "\n".join(delimiter.join(cells) for cells in content)
        found = read_or_refuse(name, text.encode("utf-8", "surrogatepass"))

        assert found is None or all(one.on <= TODAY for one in found.sets)


@settings(max_examples=60)
@given(st.binary(max_size=400), st.sampled_from(("log.csv", "log.txt", "log.xlsx", "log")))
def test_no_bytes_make_the_reader_fail(content, name):
    read_or_refuse(name, content)


@given(logs, st.data())
def test_taking_over_twice_is_taking_over_once(sets, data):
    old = [OldSet(line, on, done) for line, (on, done) in enumerate(sets)]
    first = not_yet(old, (), ())
    records = [_record(place, one) for place, one in enumerate(first)]
    kept = data.draw(st.lists(st.sampled_from(records), unique_by=lambda record: record.id))

    assert list(first) == old
    assert not_yet(old, records, ()) == ()
    assert not_yet(old, kept, records) == ()
    assert len(not_yet(old, kept, ())) == len(old) - len(kept)


def _record(place: int, one: OldSet) -> SetRecord:
    return SetRecord(SetId(place), one.done, one.on, NOW, place)
