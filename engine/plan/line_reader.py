"""Reads a plan line by line into a draft: which heading a line is, or which exercise it plans."""

from __future__ import annotations

import re
from dataclasses import replace

from engine.catalogue.catalogue import Catalogue
from engine.plan.cursor import Cursor
from engine.plan.draft import BlockDraft, DayDraft, KindDraft, PlanDraft, SlotDraft
from engine.plan.free_words import unquoted
from engine.plan.heading_words import (
    BLOCK,
    CLAUSE_LINE,
    PLAN,
    TARGETS,
    DayHeading,
    Opening,
    WeekHeading,
    read_day,
    read_opening,
    read_targets,
    read_week,
)
from engine.plan.lines import CleanLine
from engine.plan.names import Named, Unsure, exercise_named, muscle_named
from engine.plan.parts import Aim, Sets, Words
from engine.plan.slot import read_slot
from engine.plan.slot_line import begins_with_a_part, read_parts
from engine.values.load import Unit
from engine.values.muscles import Muscle
from engine.values.plan import VolumeTarget
from engine.values.problem import Severity

TITLE = re.compile(r"[^\d,;]{1,60}(?::|(?<!\w)day:?)$", re.IGNORECASE)
DAY_TITLE = re.compile(r"(?<!\w)day$", re.IGNORECASE)
BRACKETS = re.compile(r" ?[()] ?")
DELOAD_ALONE = re.compile(r"(?:a )?deload(?: weeks?)?\.?$", re.IGNORECASE)
MOST_WEEKLY_SETS = 100
OPENING_PARTS = "a name, weeks, deload weeks or targets; it was left out"


class LineReader:
    """Shape: lines come in order through `read`; `close` after the last."""

    def __init__(self, draft: PlanDraft, catalogue: Catalogue, unit: Unit) -> None:
        self.draft, self.catalogue, self.unit = draft, catalogue, unit
        self.open_slot: CleanLine | None = None

    def read(self, line: CleanLine) -> None:
        """Take in the next line."""
        if not line.text:
            return
        if self.open_slot is not None and self._goes_on(line):
            self.open_slot = self.open_slot.with_more(line)
            return
        self.close()
        if not self._heading(line):
            self.open_slot = line

    def close(self) -> None:
        """Put away the exercise line that was still open."""
        line, self.open_slot = self.open_slot, None
        if line is None:
            return
        read = read_slot(line.text, line.line_of, self.catalogue, self.unit)
        self.draft.problems.extend(read.problems)
        day = self.draft.day(line.number)
        if read.slot is not None:
            day.slots.append(SlotDraft(read.slot, line.number, read.partner))
        elif any(problem.severity is Severity.ERROR for problem in read.problems):
            day.broken = True

    def _goes_on(self, line: CleanLine) -> bool:
        if line.is_heading or not begins_with_a_part(line.text):
            return False
        return not any(isinstance(placed.part, Words) for placed in read_parts(line.text, self.catalogue))

    def _heading(self, line: CleanLine) -> bool:
        """Whether the line was a heading; then it is in the draft."""
        cursor = Cursor(line.text)
        if cursor.take(PLAN):
            self._plan(read_opening(cursor.rest), line)
        elif match := cursor.take(BLOCK):
            self._block(read_opening(cursor.rest), match[1], line)
        elif cursor.take(TARGETS):
            self._targets(cursor.rest, line)
        elif cursor.sees(CLAUSE_LINE):
            self._clauses(line)
        elif week := read_week(cursor):
            self._week(week, line)
        elif day := read_day(line.text):
            self._day(day, line)
        else:
            return self._title(line)
        return True

    def _title(self, line: CleanLine) -> bool:
        """Whether the line is a bare title: of the plan where it comes first, else of a day."""
        first = self.draft.opening is None and not self.draft.blocks
        if first and self._titles_plan(line):
            return True
        words = read_parts(line.text, self.catalogue)
        if any(not isinstance(placed.part, Words) for placed in words):
            return False
        meant = exercise_named(line.text.rstrip(":"), self.catalogue)
        if isinstance(meant, Named) and not line.is_heading:
            return False
        names_nothing = isinstance(meant, Unsure) and not meant.candidates
        if not (line.is_heading or TITLE.match(line.text) or (first and (len(words) == 1 or names_nothing))):
            return False
        title = line.text.rstrip(": ")
        if first and not DAY_TITLE.search(title):
            self.draft.opening, self.draft.line = Opening(title), line.number
        else:
            self._day(DayHeading((), title), line)
        return True

    def _titles_plan(self, line: CleanLine) -> bool:
        """Whether the first line is a title with a length: "winter block (6 weeks)"."""
        opening = read_opening(BRACKETS.sub(",", line.text))
        if opening.weeks is None or not opening.name or any(sign.isdigit() for sign in opening.name):
            return False
        self.draft.opening, self.draft.line = opening, line.number
        self._rest_of(opening, line)
        return True

    def _plan(self, opening: Opening, line: CleanLine) -> None:
        if self.draft.told:
            self.draft.error(
                line.number, line.text, "one plan line, and there is one before it", "block: next, 4 weeks"
            )
            return
        before = self.draft.opening or Opening("")
        self.draft.opening = replace(
            opening,
            name=opening.name or before.name,
            weeks=before.weeks if opening.weeks is None else opening.weeks,
            deload_weeks=(*before.deload_weeks, *opening.deload_weeks),
        )
        self.draft.told, self.draft.line = True, line.number
        self._rest_of(opening, line)

    def _block(self, opening: Opening, number: str | None, line: CleanLine) -> None:
        name = opening.name or (f"block {number}" if number else "")
        self.draft.blocks.append(BlockDraft(replace(opening, name=name), line.number, told=True))
        self._rest_of(opening, line)

    def _rest_of(self, opening: Opening, line: CleanLine) -> None:
        """The targets that an opening told, and what of it was not read."""
        if opening.targets:
            self._targets(", ".join(opening.targets), line)
        for clause in opening.unread:
            self.draft.warn(line.number, clause, OPENING_PARTS, "8 weeks, deload week 8, target side delts 12-18")
        if opening.trouble:
            self.draft.error(
                line.number, opening.trouble, "weeks once, and deload weeks by number", "8 weeks, deload week 8"
            )

    def _clauses(self, line: CleanLine) -> None:
        opening = read_opening(line.text)
        block = self.draft.blocks[-1] if self.draft.blocks and self.draft.blocks[-1].told else None
        target = block.opening if block else self.draft.opening or Opening("")
        name = opening.name or " ".join(opening.unread)
        if opening.trouble or name or (opening.weeks and target.weeks):
            self.draft.error(line.number, line.text, "weeks once, and which week is the deload", "deload week 4")
            return
        self._rest_of(opening, line)
        merged = replace(
            target,
            weeks=target.weeks or opening.weeks,
            deload_weeks=(*target.deload_weeks, *opening.deload_weeks),
            deload_every=opening.deload_every or target.deload_every,
            sets_share=opening.sets_share or target.sets_share,
            load_share=opening.load_share or target.load_share,
        )
        if block:
            block.opening = merged
        else:
            self.draft.opening = merged

    def _week(self, week: WeekHeading, line: CleanLine) -> None:
        if DELOAD_ALONE.match(week.behind) and week.typed.isdigit():
            self._clauses(CleanLine(f"deload week {week.typed}", line.starts))
            return
        block = self.draft.block(line.number)
        if any(kind.tags is None for kind in block.kinds):
            self.draft.error(
                line.number, line.text, "every day of the block under a week", "week A before the first day"
            )
            return
        day = read_day(week.behind) if week.behind else None
        label = "" if day else unquoted(week.behind)
        known = next((kind for kind in block.kinds if kind.tags == week.tags), None)
        if known is None:
            known = KindDraft(label or week.typed, week.tags, line.number, week.typed[:1].isdigit())
        else:
            block.kinds.remove(known)
        block.kinds.append(known)
        if day:
            self._day(day, line)

    def _day(self, day: DayHeading, line: CleanLine) -> None:
        kind = self.draft.kind(line.number)
        if not day.quoted and self._is_exercise(day.label):
            # "mon: squat 3x5 at 100 kg": the day and its exercise on one line.
            self.open_slot = CleanLine(day.label, line.starts)
            day = replace(day, label="")
        label = day.label or (f"day {day.place}" if day.place and not day.weekdays else "")
        kind.days.append(DayDraft(label, day.weekdays, line.number))

    def _is_exercise(self, label: str) -> bool:
        """Whether a day's words are its exercise; "max effort" names a day, "push-up max" an exercise."""
        parts = [placed.part for placed in read_parts(label, self.catalogue)]
        if not any(isinstance(part, Sets | Aim) for part in parts):
            return False
        counted = any(sign.isdigit() for sign in label)
        return counted or any(isinstance(part, Words) and self.catalogue.owners(part.text) for part in parts)

    def _targets(self, text: str, line: CleanLine) -> None:
        example = "target side delts 12-18"
        clauses = read_targets(text)
        if not clauses:
            self.draft.error(line.number, line.text, "a muscle and its weekly sets", example)
        for clause in clauses:
            muscle = muscle_named(clause.words)
            if muscle is None:
                known = ", ".join(muscle.value for muscle in Muscle)
                self.draft.error(line.number, clause.words, f"one of the muscles: {known}", example)
            elif clause.low is None or clause.high is None or not 0 <= clause.low <= clause.high <= MOST_WEEKLY_SETS:
                self.draft.error(line.number, clause.words, "a range of weekly sets", example)
            else:
                self.draft.targets[muscle] = VolumeTarget(clause.low, clause.high)
