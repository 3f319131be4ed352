"""The sets of one row: counts, loads, effort and marks put together, or the reason why not.

A hold's bare number is seconds, a carry's metres; the sets of a row share what is told once.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from decimal import Decimal

from engine.imports.columns import unit_of
from engine.imports.counts import CannotBe, SetColumn, metres_in, reps_in, seconds_in, set_count, spread
from engine.imports.efforts import Scale, efforts_in
from engine.imports.headers import Field, Says, said
from engine.imports.loads import LoadColumn, Loads, loads_in
from engine.imports.numbers import Comma
from engine.imports.old_rows import Cell, Cells, Row
from engine.imports.said_sets import SaidSets, is_unit_assumed
from engine.values.effort import Effort
from engine.values.exercise import Exercise, Measure
from engine.values.load import Basis, Load, Unit
from engine.values.sets import SetDone, SetKind, Side

FEWEST_METRES = 5
"""A bare number below this beside a carry may count its trips. Common practice, no source."""
EMPTY = Cell("")
TELL_LOADS = frozenset((Field.WORK, Field.REPS, Field.SETS))
ONCE = frozenset((Field.REPS, Field.WORK, Field.SETS, Field.SET_NUMBER, Field.NOTES))
KINDS = {
    Says.WARMUP: SetKind.WARMUP,
    Says.DROP: SetKind.DROP,
    Says.REST_PAUSE: SetKind.REST_PAUSE,
    Says.WORK: SetKind.WORK,
}
BASES = {basis.value: basis for basis in Basis}


@dataclass(frozen=True, slots=True)
class TableHabits:
    """What the whole table settles for its rows."""

    unit: Unit
    sets: SetColumn
    comma: Comma
    effort: Scale | None
    session_times: bool = False
    """The column of times is filled beside lifts counted in reps, too: it may be the time of day, or the session's."""


@dataclass(frozen=True, slots=True)
class RowSets:
    """The sets of a row, words of it that are kept as a note, and whether a load had no unit."""

    sets: tuple[SetDone, ...]
    words: tuple[str, ...] = ()
    assumed_unit: bool = False


def row_sets(row: Row, exercise: Exercise, assisted: bool, habits: TableHabits, said_sets: SaidSets) -> RowSets:
    """The sets of a row.

    Errors: CannotBe, with the reason in words.
    """
    if not row.sets:
        return _sets(row.cells, exercise, assisted, habits, said_sets)
    whole_row: dict[Field, Cell] = {kind: cell for kind, cell in row.cells.items() if kind not in ONCE}
    each = [_sets({**whole_row, **cells}, exercise, assisted, habits, said_sets) for cells in row.sets]
    if any(len(one.sets) != 1 for one in each):
        raise CannotBe("more than one set in the column of a set")
    if Field.SETS in row.cells and set_count(row.cells[Field.SETS].text) != len(each):
        raise CannotBe(f"{row.cells[Field.SETS].text} sets, but {len(each)} told")
    words = tuple(word for one in each for word in one.words)
    return RowSets(tuple(one.sets[0] for one in each), words, any(one.assumed_unit for one in each))


def _sets(cells: Cells, exercise: Exercise, assisted: bool, habits: TableHabits, said_sets: SaidSets) -> RowSets:
    counted = _counted(cells, exercise, habits, said_sets)
    loads = _loads(cells, exercise, assisted, habits)
    sets = _with_loads(counted, loads, bool(_text(cells, Field.LOAD)))
    sets, words = _with_effort(_marked(cells, sets), cells, habits)
    said_here = " ".join(cell.text + cell.unit for kind, cell in cells.items() if kind in TELL_LOADS)
    bare = not loads.named or is_unit_assumed(said_here, counted)
    return RowSets(sets, words, bare and _unit_told(cells) is None)


def _text(cells: Cells, kind: Field) -> str:
    return cells.get(kind, EMPTY).text


def _counted(cells: Cells, exercise: Exercise, habits: TableHabits, said_sets: SaidSets) -> tuple[SetDone, ...]:
    """The sets with their reps, seconds and metres; loads only where the same cell tells them."""
    if work := _text(cells, Field.WORK):
        return _agreeing(_said(work, Field.WORK, cells, exercise, habits, said_sets), cells)
    reps = _text(cells, Field.REPS)
    timed = _timed(cells, exercise, habits)
    if not reps or (reps == "0" and timed is not None and exercise.measure is not Measure.REPS):
        return _untold(cells, timed, exercise, habits, said_sets)
    listed = reps_in(reps)
    if listed is None:
        return _said(reps, Field.REPS, cells, exercise, habits, said_sets)
    counts = spread(listed, _sets_told(cells, habits))
    if 0 in counts and Says.YES not in said(_text(cells, Field.MISSED)):
        raise CannotBe("0 reps")
    sets = [_one(count, exercise, timed) for count in counts]
    if listed.failed:
        sets[-1] = replace(sets[-1], failure=True)
    return tuple(sets)


def _agreeing(sets: tuple[SetDone, ...], cells: Cells) -> tuple[SetDone, ...]:
    """The sets, where a column of reps beside them says the same: one of the two may be what was planned.

    Errors: CannotBe.
    """
    reps = _text(cells, Field.REPS)
    listed = reps_in(reps) if reps else None
    told = tuple(done.reps for done in sets)
    if listed is not None and listed.reps not in (told, told[:1]):
        raise CannotBe(f"“{_text(cells, Field.WORK)}”, or reps {reps}?")
    return sets


def _untold(
    cells: Cells, timed: SetDone | None, exercise: Exercise, habits: TableHabits, said_sets: SaidSets
) -> tuple[SetDone, ...]:
    """The sets of a row without reps: so many times the seconds or metres, or what its cell of sets says."""
    if timed is not None and exercise.measure is not Measure.REPS:
        return (timed,) * (_sets_told(cells, habits) or 1)
    told = _text(cells, Field.SETS) or _text(cells, Field.SET_NUMBER)
    listed = reps_in(told) if told else None
    if listed is not None and listed.sets:
        return tuple(_one(count, exercise, timed) for count in listed.reps)
    if told and listed is None and Field.SETS in cells:
        return said_sets.of(told, exercise, _unit_told(cells))
    raise CannotBe("no reps")


def _said(
    text: str, kind: Field, cells: Cells, exercise: Exercise, habits: TableHabits, said_sets: SaidSets
) -> tuple[SetDone, ...]:
    stated = _sets_told(cells, habits)
    if text.isdecimal():
        counted = reps_in(text)
        return tuple(_one(count, exercise, None) for count in spread(counted, stated)) if counted else ()
    sets = said_sets.of(text, exercise, _unit_told(cells) or unit_of(cells[kind].unit))
    if stated is None or stated == len(sets):
        return sets
    if len(sets) == 1:
        return sets * stated
    raise CannotBe(f"{stated} sets, but {len(sets)} told")


def _sets_told(cells: Cells, habits: TableHabits) -> int | None:
    """How many sets the row states; None where it states none, or only which set it is."""
    told = _text(cells, Field.SETS) or _text(cells, Field.SET_NUMBER)
    if not told or habits.sets is SetColumn.NUMBERS or said(told.rstrip("0123456789")):
        return None
    if habits.sets is SetColumn.OPEN and told != "1":
        raise CannotBe(f"is {told} the number of sets, or which set it was?")
    listed = reps_in(told)
    return listed.sets if listed is not None and listed.sets else set_count(told)


def _timed(cells: Cells, exercise: Exercise, habits: TableHabits) -> SetDone | None:
    """A set with the seconds and metres that the row tells, where they can be of this exercise.

    Errors: CannotBe.
    """
    duration = _text(cells, Field.DURATION)
    if duration and habits.session_times and exercise.measure is Measure.TIME and not _text(cells, Field.SECONDS):
        raise CannotBe(f"is {duration} how long it was held, or a time of the session?")
    seconds = _amount(cells, Field.SECONDS) or (
        _amount(cells, Field.DURATION) if exercise.measure is Measure.TIME else None
    )
    metres = _amount(cells, Field.METRES) or (
        _amount(cells, Field.DISTANCE) if exercise.measure is Measure.DISTANCE else None
    )
    if seconds is None and metres is None:
        return None
    try:
        return SetDone(exercise.name, 1, None, seconds=seconds, metres=metres)
    except ValueError:
        raise CannotBe("no such length of time or way") from None


def _amount(cells: Cells, kind: Field) -> Decimal | None:
    cell = cells.get(kind)
    if cell is None or Says.NOTHING in said(cell.text):
        return None
    amount = (metres_in if kind in (Field.METRES, Field.DISTANCE) else seconds_in)(cell.text, cell.unit)
    if amount is None:
        raise CannotBe(f"{kind.value} “{cell.text}”")
    return amount or None


def _one(count: int, exercise: Exercise, timed: SetDone | None) -> SetDone:
    if timed is not None:
        return replace(timed, reps=count, missed=count == 0)
    if count == 0 or exercise.measure is Measure.REPS:
        return SetDone(exercise.name, count, None, missed=count == 0)
    if exercise.measure is Measure.TIME:
        return SetDone(exercise.name, 1, None, seconds=Decimal(count))
    if count < FEWEST_METRES:
        raise CannotBe(f"{count} metres, or trips?")
    return SetDone(exercise.name, 1, None, metres=Decimal(count))


def _loads(cells: Cells, exercise: Exercise, assisted: bool, habits: TableHabits) -> Loads:
    cell = cells.get(Field.LOAD, EMPTY)
    basis = BASES.get(_text(cells, Field.COUNTS))
    default = _unit_told(cells) or habits.unit
    return loads_in(cell.text, exercise, LoadColumn(default, habits.comma, basis, assisted))


def _unit_told(cells: Cells) -> Unit | None:
    """The unit that the row's own cell names, else the header of its load.

    Errors: CannotBe for a unit of another kind.
    """
    told = _text(cells, Field.UNIT)
    if told and unit_of(told) is None:
        raise CannotBe(f"unit “{told}”")
    return unit_of(told) if told else unit_of(cells.get(Field.LOAD, EMPTY).unit)


def _with_loads(sets: tuple[SetDone, ...], loads: Loads, told: bool) -> tuple[SetDone, ...]:
    """The sets under their loads; a load in the same cell as the reps stands, unless another column says otherwise."""
    each = loads.loads
    if len(each) > 1 and len(sets) == 1:
        sets *= len(each)
    if len(each) not in (1, len(sets)):
        raise CannotBe(f"{len(each)} loads for {len(sets)} sets")
    each = each if len(each) == len(sets) else each * len(sets)
    return tuple(_under(done, load, told) for done, load in zip(sets, each, strict=True))


def _under(done: SetDone, load: Load | None, told: bool) -> SetDone:
    own = done.load if done.load is not None and done.load.amount != 0 else None
    if own is None:
        return replace(done, load=load)
    if told and load is not None and load != own:
        raise CannotBe(f"load {load}, or {own}?")
    return done


def _marked(cells: Cells, sets: tuple[SetDone, ...]) -> tuple[SetDone, ...]:
    kind, side = _kind(cells), _side(_text(cells, Field.SIDE))
    marks = said(_text(cells, Field.KIND)) | said(_text(cells, Field.SET_NUMBER))
    failure = Says.FAILURE in marks or Says.YES in said(_text(cells, Field.FAILURE))
    missed = Says.YES in said(_text(cells, Field.MISSED))
    if kind is None and side is None and not failure and not missed:
        return sets
    return tuple(
        replace(
            done,
            kind=kind or done.kind,
            side=side or done.side,
            failure=failure or done.failure,
            missed=missed or done.missed,
        )
        for done in sets
    )


def _kind(cells: Cells) -> SetKind | None:
    if Says.YES in said(_text(cells, Field.WARMUP)) or Says.WARMUP in said(_text(cells, Field.WARMUP)):
        return SetKind.WARMUP
    marks = said(_text(cells, Field.KIND)) | said(_text(cells, Field.SET_NUMBER).rstrip("0123456789"))
    return next((kind for says, kind in KINDS.items() if says in marks), None)


def _side(cell: str) -> Side | None:
    told = said(cell)
    return Side.LEFT if Says.LEFT in told else Side.RIGHT if Says.RIGHT in told else None


def _with_effort(
    sets: tuple[SetDone, ...], cells: Cells, habits: TableHabits
) -> tuple[tuple[SetDone, ...], tuple[str, ...]]:
    words = []
    for kind, scale in ((Field.RPE, Scale.RPE), (Field.RIR, Scale.RIR), (Field.EFFORT, habits.effort)):
        cell = _text(cells, kind)
        if not cell or Says.NOTHING in said(cell) or cell == "-":
            continue
        efforts = efforts_in(cell, scale, len(sets))
        if efforts is None:
            words.append(f"{kind.value}: {cell}")
        else:
            sets = tuple(_at(done, effort) for done, effort in zip(sets, efforts, strict=True))
    return sets, tuple(words)


def _at(done: SetDone, effort: Effort | None) -> SetDone:
    return done if effort is None or done.effort is not None else replace(done, effort=effort)


def runs_of_sets(rows: Sequence[Row]) -> list[list[str]]:
    """The cells of the column of sets, for each day and exercise, in order."""
    runs: dict[tuple[str, str], list[str]] = {}
    for row in rows:
        if told := _text(row.cells, Field.SETS) or _text(row.cells, Field.SET_NUMBER):
            runs.setdefault((row.date, row.exercise), []).append(told)
    return list(runs.values())
