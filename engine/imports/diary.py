"""An old log from a diary in plain text: days with their dates, lifts, sets as people write them.

A line that opens with a date opens a day. A line that is only a name holds for the lines of numbers below it. Every
line is read as a chat message of that day would be, and is taken whole or left out with its reason; words without sets
are kept as notes.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from datetime import date, datetime, time

from engine.catalogue.catalogue import Catalogue
from engine.imports.dates import Day, date_order, days_of, is_settled
from engine.imports.diary_days import DiaryLine, Opening, diary_lines, is_label
from engine.imports.entries import Entries, Entry, old_log, refuse_too_long
from engine.imports.names import Names
from engine.imports.pain import tells_pain
from engine.imports.said_sets import is_unit_assumed, odd_measure, why_not
from engine.imports.values import Habits, OldLog, OldNote
from engine.reading import read
from engine.reading.prepare import prepare
from engine.reading.values import Act, Asked, Context, Doubt, Logged, NoSets, Outcome
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece
from engine.values.ids import ExerciseName
from engine.values.load import Basis, Load, plain
from engine.values.sets import SetDone, SetKind

NOON = time(12)
NO_DATE = "no date above it"
MOST = 0.5
MOST_LINES = 10_000
CARRIED = re.compile(r"[x×]\s*\d", re.IGNORECASE)
OPENS_NOTE = frozenset((K.NOTE, K.PAIN, K.SORE, K.JOINT, K.MUSCLE, K.DENIED, K.DENY, K.NOT))
NOTED = frozenset((K.NOTE, K.PAIN, K.SORE, K.JOINT))
REPEATS = frozenset((K.SAME, K.ANOTHER, K.MORE, K.EXTRA))
SAID_OF = frozenset((K.NOTE, K.FUTURE))
"""Beside these, "same" and "more" are talk: "felt heavy, more next time"."""
LABELS = frozenset((K.MUSCLE, K.HEADING, K.AND, K.PLUS, K.COMMA, K.SLASH, K.DASH, K.FILLER, K.OTHER_SIGN))
"""What names a session by what it trains: "legs", "chest and triceps"."""
KEEPS = frozenset((K.WARMUP, K.WORKING, K.SUPERSET, K.THEN, K.AND, K.SETS))
"""Words between the name and its sets: the exercise stays in hand."""


def read_diary(text: str, habits: Habits, catalogue: Catalogue) -> OldLog | None:
    """The log that a diary holds; None where it is none: no dates gone by, or most of its sets stand under none.

    Errors: Unreadable for more lines than are read at once.
    """
    lines = diary_lines(text)
    written = [line.opens.written for line in lines if line.opens is not None and line.opens.written is not None]
    order = date_order(written, habits.unit, habits.today)
    if order is not None:
        order = habits.order or order
    days = days_of(written, order, habits.today)
    if _is_plan(text) or not any(isinstance(day, date) for day in days):
        return None
    refuse_too_long(len(lines), MOST_LINES)
    diary = _Diary(catalogue, habits, Names(catalogue, habits.taught))
    diary.run(lines, days)
    undated = sum(one.why == NO_DATE for one in diary.entries.left_out)
    told = len(diary.entries.left_out) + sum(bool(entry.sets) for entry in diary.entries.read)
    if told == 0 or undated > MOST * told:
        return None
    log = old_log(diary.entries, diary.names.written(), order, habits.unit if diary.assumed_unit else None)
    return replace(log, order_assumed=not is_settled(written))


def _is_plan(text: str) -> bool:
    return text.lstrip("\ufeff# \t\r\n").casefold().startswith(("plan:", "plan "))


@dataclass(slots=True)
class _Diary:
    """One walk down the lines.

    `doing` is the exercise in hand, `above` the last name that means no single one, `words` the line of unknown words
    that may be a name or a note: the lines below tell.
    """

    catalogue: Catalogue
    habits: Habits
    names: Names
    entries: Entries = field(default_factory=Entries)
    day: Day = NO_DATE
    doing: ExerciseName | None = None
    above: str = ""
    words: DiaryLine | None = None
    warming_up: bool = False
    last: dict[ExerciseName, Load] = field(default_factory=dict)
    assumed_unit: bool = False

    def run(self, lines: Sequence[DiaryLine], days: Sequence[Day]) -> None:
        resolved = iter(days)
        for line in lines:
            if line.opens is not None:
                self._open(line.opens, next(resolved) if line.opens.written is not None else None)
            if line.text:
                (self._sets if any(letter.isdigit() for letter in line.text) else self._words)(line)
        self._settle_words()

    def _open(self, opening: Opening, day: Day | None) -> None:
        self._settle_words()
        if day is not None:
            self.day = day
        elif isinstance(self.day, str) or self.day.weekday() != opening.weekday:
            self.day = f"the date is not told: {opening.text}"
        self._take_up(None)
        self.last = {}

    def _take_up(self, exercise: ExerciseName | None, above: str = "") -> None:
        self.warming_up = self.warming_up and exercise is not None and exercise == self.doing
        self.doing, self.above = exercise, above

    def _settle_words(self) -> None:
        """Unknown words with no sets below them were a note."""
        if self.words is not None:
            self._note(self.words)
            self.words = None

    def _words(self, line: DiaryLine) -> None:
        """A line without numbers: a name for the lines below, a heading, warm-ups to come, or a note."""
        self._settle_words()
        name = line.text.strip(" :*_#.-–")
        if self._names_one(name):
            return
        pieces = prepare(line.text, Context(), self.catalogue).pieces
        kinds = {piece.kind for piece in pieces}
        named = [piece.text for piece in pieces if piece.kind is K.NAME]
        if len(named) == 1 and K.PLAIN not in kinds and self._names_one(named[0]):
            if kinds & NOTED:
                self._note(line)
        elif kinds & REPEATS and self.doing is not None and not kinds & SAID_OF:
            self._leave_out(line, "which sets are meant?")
        elif _is_note(pieces):
            self._note(line)
        elif kinds & KEEPS and not named and K.PLAIN not in kinds:
            self.warming_up = K.WARMUP in kinds
        elif is_label(name) or kinds <= LABELS or line.opens is not None:
            self._take_up(None)
        else:
            self._take_up(None, name)
            self.words = line

    def _names_one(self, name: str) -> bool:
        """Whether the words name one exercise, which is then in hand."""
        meant = self.names.look_up(name).meant
        if len(meant) == 1:
            self.names.exercise(name)
            self._take_up(meant[0])
        return len(meant) == 1

    def _sets(self, line: DiaryLine) -> None:
        named = [piece for piece in prepare(line.text, Context(), self.catalogue).spoken if piece.kind is K.NAME]
        outcome = self._outcome(line.text, None if named else self.doing)
        if not (isinstance(outcome, Asked) and self.above):
            self._settle_words()
        match outcome:
            case Logged():
                self._logged(line, outcome, named)
            case Asked():
                self._asked(line, outcome)
            case NoSets(unread=unread) if unread:
                self._take_up(None)
                self._leave_out(line, unread[0].why)
            case NoSets() | Act(name="bodyweight"):
                self._note(line)
            case Act(name="week" | "rest"):
                pass
            case _:
                self._leave_out(line, "no sets that I can read")

    def _outcome(self, text: str, doing: ExerciseName | None) -> Outcome:
        """The line as said on its day, which may name its own exercise in words that are open, whatever is in hand.

        One that begins with "x" carries on with the load above it.
        """
        last = self.last.get(doing) if doing is not None else None
        if last is not None and last.basis is not Basis.BODY and CARRIED.match(text):
            text = f"{plain(last.amount)} {last.unit.value} {text}"
        today = self.day if isinstance(self.day, date) else self.habits.today
        now = datetime.combine(today, NOON)
        context = Context(self.habits.unit, now, doing, last=self.last, taught=self.habits.taught)
        return read(text, context, self.catalogue)

    def _logged(self, line: DiaryLine, logged: Logged, named: Sequence[Piece]) -> None:
        self._count(named, logged)
        self._take_up(logged.sets[-1].exercise)
        trouble = why_not(logged, self.day if isinstance(self.day, date) else None)
        if trouble is None and not named:
            trouble = odd_measure(logged.sets, self.catalogue.exercises[logged.sets[-1].exercise])
        if trouble is not None or not isinstance(self.day, date):
            self._leave_out(line, trouble or "")
            return
        self.last |= {done.exercise: done.load for done in logged.sets if done.load is not None}
        self.assumed_unit |= is_unit_assumed(line.text, logged.sets)
        notes = (OldNote(line.number, self.day, logged.note, self.doing, logged.pain),) if logged.note else ()
        sets = tuple(_as_warm_up(done) if self.warming_up else done for done in logged.sets)
        self.entries.read.append(Entry(line.number, line.text, self.day, sets, notes))

    def _count(self, named: Sequence[Piece], logged: Logged) -> None:
        """Count the names of a line, where each has its exercise."""
        told = dict.fromkeys(done.exercise for done in logged.sets)
        names = dict.fromkeys(piece.text for piece in named)
        if len(names) == len(told):
            for name in names:
                if len(self.names.look_up(name).meant) == 1:
                    self.names.exercise(name)

    def _asked(self, line: DiaryLine, asked: Asked) -> None:
        """Nothing is taken from a line in doubt, nor from those of numbers below it while no other name is told."""
        named = tuple(dict.fromkeys(done.exercise for reading in asked.readings for done in reading.sets))
        if asked.doubt not in (Doubt.EXERCISE, Doubt.UNKNOWN_NAME):
            self._take_up(named[0] if len(named) == 1 else None)
            self._leave_out(line, why_not(asked, None) or "")
            return
        open_name = asked.term or (self.above if not named else "")
        self.words = None
        if not open_name:
            self._leave_out(line, why_not(asked, None) or "")
            return
        self.names.exercise(open_name)
        meant = self.names.look_up(open_name).meant or named
        self._take_up(None, open_name)
        why = f"which {open_name}: {' or '.join(meant)}?" if meant else f"unknown exercise “{open_name}”"
        self._leave_out(line, why, open_name)

    def _leave_out(self, line: DiaryLine, why: str, name: str = "") -> None:
        undated = isinstance(self.day, str)
        self.entries.leave_out(line.number, line.text, str(self.day) if undated else why, "" if undated else name)

    def _note(self, line: DiaryLine) -> None:
        if isinstance(self.day, date) and not is_label(line.text):
            note = OldNote(line.number, self.day, line.text, self.doing, tells_pain(line.text, self.catalogue))
            self.entries.read.append(Entry(line.number, line.text, self.day, (), (note,)))


def _is_note(pieces: Sequence[Piece]) -> bool:
    """Whether words without sets are a note by what they say; a label of a session is none."""
    kinds = {piece.kind for piece in pieces}
    opens = bool(pieces) and pieces[0].kind in OPENS_NOTE and not kinds <= LABELS
    return opens or bool(kinds & REPEATS and kinds & SAID_OF)


def _as_warm_up(done: SetDone) -> SetDone:
    return replace(done, kind=SetKind.WARMUP) if done.kind is SetKind.WORK else done
