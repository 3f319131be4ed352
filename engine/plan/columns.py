"""Columns of a table or sheet, met by the meaning of their headers, turned into the lines of a plan.

block | week | day | exercise | sets | reps | sets x reps | load | unit | rpe | rir | effort | progression | rest | ...

Headers are read in any case, with a unit in brackets ("load (kg)", "rest (s)"). A cell that is empty says nothing; for
block, week and day it means the one above. Rows before the header that hold one cell are lines of the plan.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date

from engine.plan.free_words import quoted
from engine.plan.lines import PlanLine
from engine.values.problem import Problem, Severity

HEADERS: Mapping[str, tuple[str, ...]] = {
    "block": ("block", "phase", "cycle", "mesocycle"),
    "week": ("week", "week kind", "wk", "weeks"),
    "day": ("day", "session", "workout", "training day", "weekday"),
    "exercise": ("exercise", "lift", "movement", "name", "exercises"),
    "sets": ("sets", "set", "no of sets", "number of sets"),
    "reps": (
        "reps",
        "rep",
        "repetitions",
        "target",
        "rep range",
        "reps or time",
        "time",
        "distance",
        "seconds",
        "metres",
    ),
    "work": (
        "sets x reps",
        "sets reps",
        "sets and reps",
        "sets by reps",
        "reps x sets",
        "setsxreps",
        "prescription",
        "volume",
        "work",
        "scheme",
    ),
    "load": ("load", "weight", "start", "start load", "starting load", "starting weight", "kg", "lb", "lbs"),
    "unit": ("unit", "units"),
    "rpe": ("rpe",),
    "rir": ("rir", "reps in reserve", "in reserve"),
    "effort": ("effort", "intensity"),
    "progression": ("progression", "progress", "how to progress", "step", "increase"),
    "rest": ("rest", "rest time", "rest between sets"),
    "cues": ("cues", "cue", "coaching cues", "technique"),
    "notes": ("notes", "note", "comments", "comment"),
    "swaps": ("swaps", "swap", "alternatives", "alternative", "substitutes", "instead"),
    "superset": ("superset", "supersets", "group", "pair", "order"),
    "standard": ("standard", "form standard", "form"),
    "tempo": ("tempo",),
}
FIELD_OF = {word: kind for kind, words in HEADERS.items() for word in words}
HEADER_UNIT = re.compile(
    r"[(\[/, ]+(kg|kgs|lb|lbs|s|sec|secs|seconds|min|mins|minutes|m|metres|meters)[)\]]?\s*$", re.I
)
NUMBER_ALONE = re.compile(r"\d+(?:[.,]\d+)?$")
RANGE_ALONE = re.compile(r"(\d+) ?[-–—] ?(\d+)$")
LETTER = re.compile(r"([A-Za-z])\d{0,2}$")
WEEK_WORD = re.compile(r"weeks?\b|odd|even", re.I)
DAY_WORD = re.compile(r"(day|session|workout|mon|tue|wed|thu|fri|sat|sun)", re.I)
MONTHS = ("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec")
MONTH = rf"(?:{'|'.join(MONTHS)})[a-z]*"
ISO_DATE = re.compile(r"(\d{4})-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])(?!\d)")
NAMED_DATE = re.compile(rf"(?:(\d{{1,2}})[-. /]+({MONTH})|({MONTH})[-. /]+(\d{{1,2}}))$", re.IGNORECASE)
FEWEST_FIELDS = 2


@dataclass(slots=True)
class Table:
    """`fields` maps a column to what it holds and its unit; `under` holds the headings of the last row."""

    fields: dict[int, tuple[str, str]] = field(default_factory=dict)
    under: dict[str, str] = field(default_factory=dict)
    warnings: list[Problem] = field(default_factory=list)

    def lines(self, number: int, cells: Sequence[str]) -> Iterator[PlanLine]:
        """The plan lines that a row makes: headings where they change, and the exercise."""
        cells = [cell.strip() for cell in cells]
        header = header_fields(cells)
        if header is not None:
            self.fields = header
            self._unknown(number, [cell for column, cell in enumerate(cells) if cell and column not in header])
            return
        filled = [cell for cell in cells if cell]
        if not self.fields or (len(filled) == 1 and not self._named(cells).get("exercise")):
            yield from (PlanLine(number, cell) for cell in filled)
            return
        row = self._named(cells)
        self._mend_dates(number, row)
        yield from self._headings(number, row)
        if row.get("exercise"):
            yield PlanLine(number, exercise_line(row, {name: unit for name, unit in self.fields.values()}))

    def _unknown(self, number: int, headers: Sequence[str]) -> None:
        """Columns that are not read are named: nothing of a sheet is left out without a word."""
        if headers:
            known = "exercise, sets, reps, load, progression, rest, cues or swaps"
            read, expected = ", ".join(headers), f"a header I know, such as {known}; not read"
            self.warnings.append(Problem(number, read, expected, "another header", Severity.WARNING))

    def _named(self, cells: Sequence[str]) -> dict[str, str]:
        row: dict[str, str] = {}
        for column, (name, _) in self.fields.items():
            if column < len(cells) and cells[column]:
                row[name] = f"{row[name]}, {cells[column]}" if name in row else cells[column]
        return row

    def _mend_dates(self, number: int, row: dict[str, str]) -> None:
        """Undo what spreadsheets do to 8-12 (the 12th of August), and take a date's weekday for the day."""
        column = "reps" if row.get("reps") else "work"
        reps = row.get(column, "")
        if made := as_rep_range(reps):
            row[column] = made
            expected = f"reps; the sheet made a date of them, taken as {made}"
            warning = Problem(number, reps, expected, made, Severity.WARNING)
            self.warnings.append(warning)
        row["day"] = as_weekday(row.get("day", ""))

    def _headings(self, number: int, row: Mapping[str, str]) -> Iterator[PlanLine]:
        """Lines for block, week and day where this row says another than the row above."""
        changed = False
        for name, heading in (("block", _block_line), ("week", _week_line), ("day", _day_line)):
            told = row.get(name)
            if told and (changed or told != self.under.get(name)):
                self.under[name] = told
                changed = True
                yield PlanLine(number, heading(told))


def header_fields(cells: Sequence[str]) -> dict[int, tuple[str, str]] | None:
    """The columns of a header row by what they hold, with the unit of each; None where the row is no header."""
    found: dict[int, tuple[str, str]] = {}
    for column, cell in enumerate(cells):
        unit = HEADER_UNIT.search(cell)
        name = " ".join(re.sub(r"[^a-z ]", " ", cell[: unit.start()].lower() if unit else cell.lower()).split())
        if name in FIELD_OF:
            implied = name if name in ("kg", "lb", "lbs", "seconds", "metres") else ""
            found[column] = (FIELD_OF[name], unit[1].lower() if unit else implied)
    names = {name for name, _ in found.values()}
    return found if "exercise" in names and len(names) >= FEWEST_FIELDS else None


def as_weekday(cell: str) -> str:
    """The weekday of a date; any other cell as it is."""
    try:
        return date.fromisoformat(cell[:10]).strftime("%a").lower()
    except ValueError:
        return cell


def as_rep_range(cell: str) -> str | None:
    """The rep range that a spreadsheet took for a date; None for any other cell."""
    if match := ISO_DATE.match(cell):
        low, high = sorted((int(match[2]), int(match[3])))
    elif match := NAMED_DATE.match(cell):
        month, other = match[2] or match[3], match[1] or match[4]
        low, high = sorted((MONTHS.index(month[:3].lower()) + 1, int(other)))
    else:
        return None
    return f"{low}-{high}"


def exercise_line(row: Mapping[str, str], units: Mapping[str, str]) -> str:
    """The line of a plan that says what a row says."""
    tag = LETTER.match(row.get("superset", ""))
    first = f"{tag[1].upper()}1 {row['exercise']}" if tag else row["exercise"]
    parts = [f"{first} {_work(row, units)}".strip(), _load(row, units), _effort(row)]
    if row.get("superset") and not tag:
        parts.append(f"superset with {row['superset']}")
    parts.append(row.get("progression", ""))
    parts.append(_rest(row, units))
    parts.extend(_free("cue", row.get("cues", "")))
    parts.extend(_free("cue", row.get("notes", "")))
    parts.append(f"tempo {row['tempo']}" if row.get("tempo") else "")
    parts.append(f"swap {row['swaps']}" if row.get("swaps") else "")
    parts.extend(_free("standard", row.get("standard", "")))
    return ", ".join(part for part in parts if part)


def _work(row: Mapping[str, str], units: Mapping[str, str]) -> str:
    sets, reps = row.get("sets", ""), row.get("reps", "")
    if row.get("work"):
        return " ".join(part for part in (row["work"], sets and f"{sets} sets", reps and f"{reps} reps") if part)
    if reps and units.get("reps") and NUMBER_ALONE.match(reps):
        reps = f"{reps} {units['reps']}"
    if sets and reps:
        return f"{sets}x{reps}" if NUMBER_ALONE.match(sets) else f"{sets} {reps}"
    return f"{sets} sets" if NUMBER_ALONE.match(sets) else sets or reps


def _load(row: Mapping[str, str], units: Mapping[str, str]) -> str:
    load = row.get("load", "")
    unit = row.get("unit", "") or units.get("load", "")
    if NUMBER_ALONE.match(load.lstrip("+-−")):
        sign = "" if load[0].isdigit() else load[0]
        return f"at {sign}{load.lstrip('+-−')} {unit}".strip()
    return load


def _effort(row: Mapping[str, str]) -> str:
    told = [
        f"{scale} {row[scale]}" if row[scale][0].isdigit() else row[scale] for scale in ("rpe", "rir") if row.get(scale)
    ]
    effort = row.get("effort", "")
    return ", ".join([*told, *([f"@{effort}" if NUMBER_ALONE.match(effort) else effort] if effort else [])])


def _rest(row: Mapping[str, str], units: Mapping[str, str]) -> str:
    rest = row.get("rest", "")
    if not rest or rest.lower().startswith("rest"):
        return rest
    bare = NUMBER_ALONE.match(rest) or RANGE_ALONE.match(rest)
    return f"rest {rest} {units.get('rest', '')}".strip() if bare else f"rest {rest}"


def _free(word: str, cell: str) -> list[str]:
    return [f"{word}: {quoted(piece.strip())}" for piece in re.split(r"[;\n]", cell) if piece.strip()]


def _block_line(told: str) -> str:
    return told if told.lower().startswith(("block", "phase")) else f"block: {told}"


def _week_line(told: str) -> str:
    return told if WEEK_WORD.match(told) else f"week {told}"


def _day_line(told: str) -> str:
    return told if DAY_WORD.match(told) else f"day {told}" if len(told) <= FEWEST_FIELDS else f"day: {told}"


def without_tables(lines: Sequence[PlanLine]) -> Iterator[PlanLine]:
    """The lines with those of a table drawn in text (cells between upright strokes) turned into plan lines."""
    table: Table | None = None
    for line in lines:
        text = line.text.strip()
        if not (text.startswith("|") and text.count("|") > 1):
            table = None
            yield line
            continue
        table = table or Table()
        cells = text.strip("|").split("|")
        if not all(set(cell.strip()) <= set("-: ") for cell in cells):
            yield from table.lines(line.number, cells)
