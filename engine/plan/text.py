"""A plan as plain lines, the way a coach types them on a phone.

plan: upper emphasis, 8 weeks, deload week 8
target side delts 12-18
week A: press
day mon: press and pull
barbell overhead press 3x6 at 42.5 kg, add a set each week up to 5, then +2.5 kg, rest 3 min
push-up 2x max, +1 rep each set, standard: chest touches the floor

One line an exercise (`slot_line.py`), the others are headings (`heading_words.py`); a line without an exercise goes on
with the one above it. What a plan leaves unsaid is in `defaults.py`. A line with an error is reported and costs no
other line; a plan with an error in it is not a plan yet. `mend` puts another line in its place.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from engine.catalogue.catalogue import Catalogue
from engine.plan.columns import without_tables
from engine.plan.draft import PlanDraft
from engine.plan.finish import UNNAMED, finished
from engine.plan.line_reader import LineReader
from engine.plan.lines import LONGEST_LINE, LONGEST_TEXT, MOST_LINES, PlanLine, clean, lines_of
from engine.values.load import Unit
from engine.values.plan import Plan
from engine.values.problem import Problem, Severity

EXAMPLE_PLAN = "plan: first block, 4 weeks\nday mon: full body\nbarbell back squat 3x5 at 60 kg, then +2.5 kg"


@dataclass(frozen=True, slots=True)
class ParsedPlan:
    """A plan that was read, or the lines of one that still need mending.

    Shape: `plan` is None where a problem is an error. `problems` are in the order of the lines.
    `lines` are what was sent (for a sheet: its rows as lines). `slot_lines` maps the place of a slot in the plan
    (block, kind, day, slot, each from 0) to its line.
    """

    plan: Plan | None
    problems: tuple[Problem, ...]
    lines: tuple[PlanLine, ...]
    slot_lines: tuple[tuple[tuple[int, int, int, int], int], ...] = ()

    @property
    def named(self) -> bool:
        """Whether the plan says its own name."""
        return self.plan is not None and self.plan.name != UNNAMED

    @property
    def errors(self) -> tuple[Problem, ...]:
        return tuple(problem for problem in self.problems if problem.severity is Severity.ERROR)


def parse_plan(text: str, catalogue: Catalogue, unit: Unit) -> ParsedPlan:
    """The plan that a text states, or its problems.

    Units: a load without a unit is in `unit`.
    Errors: none; whatever is typed comes back as a plan or as problems.
    """
    if len(text) > LONGEST_TEXT:
        limit = f"a plan of up to {LONGEST_TEXT} characters"
        return ParsedPlan(None, (Problem(0, f"{len(text)} characters", limit, "send one block at a time"),), ())
    return read_lines(lines_of(text), catalogue, unit)


def read_lines(lines: Sequence[PlanLine], catalogue: Catalogue, unit: Unit) -> ParsedPlan:
    """The plan that numbered lines state, or its problems."""
    if len(lines) > MOST_LINES:
        limit = f"a plan of up to {MOST_LINES} lines"
        return ParsedPlan(None, (Problem(0, f"{len(lines)} lines", limit, "send one block at a time"),), tuple(lines))
    draft = PlanDraft()
    reader = LineReader(draft, catalogue, unit)
    for line in without_tables(lines):
        if len(line.text) > LONGEST_LINE:
            draft.error(
                line.number, line.text[:40] + "…", f"a line of up to {LONGEST_LINE} characters", "a shorter line"
            )
        else:
            reader.read(clean(line))
    reader.close()
    plan, slot_lines = finished(draft)
    problems = tuple(sorted(draft.problems, key=lambda problem: problem.line))
    if plan is None and not any(problem.severity is Severity.ERROR for problem in problems):
        problems = (*problems, Problem(0, "", "a plan with at least one exercise", EXAMPLE_PLAN))
    return ParsedPlan(plan, problems, tuple(lines), slot_lines)


def mend(parsed: ParsedPlan, line: int, replacement: str, catalogue: Catalogue, unit: Unit) -> ParsedPlan:
    """The plan read again with a line mended; all other lines stay as sent.

    `replacement` may be the whole line, what the line lacks ("3x8"), or what should stand for the words that were not
    understood ("romanian deadlift"). The first of these that leaves the line without an error is taken.
    """
    tries = [_with_line(parsed, line, text) for text in _replacements(parsed, line, replacement)]
    read = [read_lines(lines, catalogue, unit) for lines in tries]
    return next((again for again in read if not _faults(again, line, parsed)), read[0])


def _faults(again: ParsedPlan, line: int, before: ParsedPlan) -> bool:
    """Whether the line still has an error, or mending it gave one to a line that had none."""
    clean_before = {problem.line for problem in before.errors}
    return any(problem.line == line or problem.line not in clean_before for problem in again.errors)


def _replacements(parsed: ParsedPlan, line: int, replacement: str) -> list[str]:
    old = next((sent.text for sent in reversed(parsed.lines) if sent.number == line), "")
    misread = [problem.read for problem in parsed.errors if problem.line == line and problem.read in old]
    for_words = [old.replace(read, replacement, 1) for read in misread if read]
    return [replacement, *for_words, *([f"{old}, {replacement}"] if old else [])]


def _with_line(parsed: ParsedPlan, line: int, text: str) -> tuple[PlanLine, ...]:
    """The lines with the last of this number replaced: a sheet's row may open a day before it names its exercise."""
    places = [place for place, sent in enumerate(parsed.lines) if sent.number == line]
    new = tuple(PlanLine(line, piece.text) for piece in lines_of(text))
    if not places:
        return (*parsed.lines, *new)
    return (*parsed.lines[: places[-1]], *new, *parsed.lines[places[-1] + 1 :])
