"""A message cut at its names: which numbers belong to which exercise.

message = [ lead ] ( name numbers )+ | ( numbers name )+ | numbers
Numbers without a name belong to the name before them; at the head of a message to the exercise in hand, or to the name
that ends the clause ("3x10 60 bench"). An unknown word in front of numbers is no filler: those are nobody's.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import date
from itertools import pairwise

from engine.reading.days.day_pieces import WHY_NOT
from engine.reading.days.headings import CLOCKED_KINDS, is_against_the_clock, without_headings
from engine.reading.entries.entry import Entry
from engine.reading.entries.leads import is_aside, leads_to, rises_to_the_lift, stands_between_sets, warms_up
from engine.reading.entries.names_behind import with_names_behind
from engine.reading.entries.reps_ahead_of_a_name import counts_a_lift_of_the_body
from engine.reading.entries.rounds import TAKEN_IN_TURN, without_rounds
from engine.reading.entries.shared_entries import (
    asks_for_reps,
    ends_before_a_name,
    may_be_in_turn,
    share_both,
    share_same,
)
from engine.reading.entries.shared_sets import counts_ahead, without_count_ahead
from engine.reading.entries.ways import named_closer, words_of
from engine.reading.marks.warmed_up import tells_what_was_done
from engine.reading.words.clauses import Clause, clause_of, clauses
from engine.reading.words.kinds import K
from engine.reading.words.modifiers import COUNTS, MODIFYING, is_placing, modifier_of
from engine.reading.words.phrasebook import phrasebook
from engine.reading.words.pieces import (
    BEHIND_A_WARM_UP_NAMED,
    BEHIND_THE_LEAD,
    HEADING,
    LIST_IN_DOUBT,
    NAME_BEHIND_THE_LEAD,
    Piece,
    Role,
    kinds_in_order,
    kinds_of,
)
from engine.values.ids import ExerciseName

MODES = frozenset((K.WARMUP, K.WORKING))
SIGNS = frozenset(
    (K.SAME, K.LINE, K.COMMA, K.STOP, K.COLON, K.DASH, K.OTHER_SIGN, K.THEN, K.AND, K.PLUS, K.FILLER, K.WITH)
)
BESIDE_THE_SETS = frozenset((K.COMMA, K.STOP, K.DASH))
PARTING_LINES = frozenset((K.LINE, K.STOP, K.THEN, K.AND))
UNKNOWN_BETWEEN = frozenset((K.PLAIN, K.VARIANT, K.DASH, K.NOTE, K.PAUSE, K.ADDED, K.ASSISTED))


@dataclass(slots=True)
class Segmenter:
    entries: list[Entry] = field(default_factory=list)
    lead: Entry = field(default_factory=Entry)
    current: Entry | None = None
    day: date | None = None
    no_day: str = ""
    told: set[K] = field(default_factory=set)
    """The kinds of all pieces of the message."""
    day_alone: bool = False
    """The day was the last thing told: it is that of what stands above it."""
    warming_up: Piece | None = None
    """A line that said only "warm up": it holds for the exercises below it, up to "work"."""

    def run(self, pieces: list[Piece]) -> list[Entry]:
        """The entries in the order told, the nameless lead first."""
        self.told = kinds_of(pieces)
        pieces, rounds = (pieces, None) if self.told.isdisjoint(TAKEN_IN_TURN) else without_rounds(pieces)
        self._gather(pieces)
        share_both(self.entries, self.told)
        if K.SAME in self.told:
            share_same(self.entries)
        if any(entry.has_numbers for entry in self.entries) and not self.lead.names and is_aside(self.lead.pieces):
            self.lead = Entry()
        found = [entry for entry in (self.lead, *self.entries) if entry.has_numbers or self._has_no_numbers(entry)]
        self._day_behind(found)
        if rounds is not None:
            for entry in found:
                entry.rounds = rounds.of(entry.pieces)
        return found

    def _gather(self, pieces: list[Piece]) -> None:
        dated = K.DATE in self.told
        cut = clauses(pieces)
        for clause in cut if self.told.isdisjoint(PARTING_LINES) else with_names_behind(cut):
            if dated and not _tells_days_apart(clause):
                self._days(clause)
            if not clause.names:
                self._nameless(clause)
            elif len(clause.names) == 1:
                self._named(clause)
            else:
                self._several(clause)

    def _has_no_numbers(self, entry: Entry) -> bool:
        """Whether an entry without numbers is told all the same, by its name alone or as the one before."""
        entry.no_reps = K.SAME in self.told and bool(entry.names) and asks_for_reps(entry.pieces)
        return entry.no_reps or self._is_bare(entry)

    def _is_bare(self, entry: Entry) -> bool:
        entry.bare = bool(entry.names) and all(piece.kind in SIGNS for piece in entry.pieces)
        entry.by_the_plan = K.PLANNED in self.told and any(piece.kind is K.PLANNED for piece in entry.pieces)
        return (entry.bare or (entry.by_the_plan and bool(entry.names))) and any(
            other.has_numbers for other in self.entries
        )

    def _days(self, clause: Clause) -> None:
        if K.DATE not in kinds_in_order(clause.pieces):
            return
        for piece in clause.pieces:
            if piece.kind is K.DATE:
                self.day, self.no_day = piece.day, WHY_NOT.get(piece.told, "")
                self.day_alone = not clause.names and not clause.counts
                if clause.cut is not None and clause.cut.kind is K.LINE and not clause.names and not clause.counts:
                    self.current = None

    def _day_behind(self, found: list[Entry]) -> None:
        for entry in found if self.day_alone else ():
            if entry.day is None and not entry.no_day:
                entry.day, entry.no_day = self.day, self.no_day

    def _open(self, names: tuple[ExerciseName, ...], phrase: str) -> Entry:
        self.current = Entry(names, phrase, day=self.day, no_day=self.no_day)
        self.day_alone = False
        if self.warming_up is not None:
            self.current.pieces.append(self.warming_up)
        if not self.lead.has_numbers and any(piece.kind is K.MISS for piece in self.lead.pieces):
            self.current.pieces += self.lead.pieces  # "missed the last one, squat 3x5 100"
            self.lead = Entry()
        self.entries.append(self.current)
        return self.current

    def _mode(self, clause: Clause) -> None:
        if any(piece.kind is K.UNRELATED or (piece.kind is K.NOTE and piece.told) for piece in clause.pieces):
            return  # "warm-up 10 min treadmill, bench 80 3x5"
        for piece in clause.pieces:
            if piece.kind is K.WARMUP and not tells_what_was_done(piece):
                self.warming_up = piece._replace(text=HEADING)
            elif piece.kind is K.WORKING:
                self.warming_up = None

    def _nameless(self, clause: Clause) -> None:
        if not clause.pieces and clause.cut is None:
            return
        if not clause.counts:
            if not self.told.isdisjoint(MODES):
                self._mode(clause)
        elif unknown := self._unknown_head(clause):
            self.current = Entry(unknown=unknown, day=self.day, no_day=self.no_day)
            self.entries.append(self.current)
        self.day_alone = self.day_alone and not clause.counts
        if clause.counts and self._is_of_another_day():
            self._goes_on_another_day()
        target = self.current or self.lead
        target.day, target.no_day = target.day or self.day, target.no_day or self.no_day
        if clause.cut is not None:
            led = target.warm_up_led and clause.cut.kind in (K.COMMA, K.AND)
            target.pieces.append(clause.cut._replace(told=BEHIND_A_WARM_UP_NAMED) if led else clause.cut)
        target.warm_up_led = False
        target.pieces += clause.pieces

    def _is_of_another_day(self) -> bool:
        """ "squat yesterday 100x3, today 105x3": the day last told is another one than that of the sets before."""
        current = self.current
        return current is not None and current.has_numbers and current.day is not None and self.day != current.day

    def _goes_on_another_day(self) -> None:
        """Opens the same lift for the numbers of that day."""
        before = self.current
        if before is not None:
            self._open(before.names, before.phrase)

    def _unknown_head(self, clause: Clause) -> str:
        """The unknown words in front of the clause's first number; empty where none stand there, or where they are
        the reason of what follows: "kids awake so only 2 sets".
        """
        words: list[str] = []
        for piece in clause.pieces[: clause.counts[0]]:
            if piece.kind in (K.PLAIN, K.UNRELATED) and len(piece.text) > 1:
                words.append(piece.text)
            elif words and piece.text in phrasebook().cues["so"]:
                words = []
        return " ".join(words)

    def _behind_other_sets(self, clause: Clause) -> Clause:
        """The clause from its name on, where whole sets in front of it are of the lift before; else as it is."""
        at = clause.names[0]
        if not stands_between_sets(clause.pieces, at):
            return clause
        self._nameless(clause_of(clause.cut, clause.pieces[:at]))
        start = clause.pieces[at].start
        return clause_of(Piece(K.COMMA, start, start, True, ","), clause.pieces[at:])

    def _named(self, clause: Clause) -> None:
        clause = self._behind_other_sets(clause)
        at = clause.names[0]
        if self._goes_on_before(clause, at):
            clause = clause_of(None, clause.pieces[at:])
            at = 0
        name = clause.pieces[at]
        rest = without_count_ahead(clause.pieces[:at], clause.pieces[at + 1 :])
        beside = clause.cut is not None and clause.cut.kind in BESIDE_THE_SETS
        if beside and at == 0 and not clause.counts and self._tells_how(name, clause.pieces[1:]):
            return
        if beside and self._tells_how_the_last_was(clause, at):
            return
        if not clause.counts and self._names_the_lead(clause):
            self.lead.names, self.lead.phrase = name.names, name.text
            self.lead.day, self.lead.no_day = self.lead.day or self.day, self.lead.no_day or self.no_day
            self.lead.pieces += [*([clause.cut] if clause.cut is not None else []), *rest]
            self.current = self.lead
            return
        ahead = (
            clause.name_last or warms_up(self.lead.pieces) or leads_to(self.lead.pieces, clause.cut, clause.pieces, at)
        )
        takes_lead = ahead and self.lead.has_numbers and self.current is None and not self.lead.names
        entry = self._open(self._owners(name, clause.cut), name.text)
        entry.modified_by = modifier_of(clause.pieces, at, clause.cut)
        entry.doubtful = bool(entry.modified_by)
        if takes_lead and (clause.cut is None or clause.cut.kind is not K.LINE or not clause.name_last):
            entry.pieces += self.lead.pieces
            self.lead = Entry()
        entry.led = bool(clause.counts) and clause.counts[0] < at
        entry.led_up_to = entry.led and rises_to_the_lift(clause.pieces, at)
        if clause.cut is not None:
            told = NAME_BEHIND_THE_LEAD if entry.led else BEHIND_THE_LEAD
            entry.pieces.append(clause.cut._replace(told=told) if takes_lead else clause.cut)
        entry.pieces += rest
        entry.warm_up_led = entry.led and K.WARMUP in self.told and clause.name_last
        entry.both = any(piece.kind is K.BOTH for piece in rest)
        entry.shared_in_doubt |= clause.cut is not None and clause.cut.told == LIST_IN_DOUBT

    def _owners(self, name: Piece, cut: Piece | None) -> tuple[ExerciseName, ...]:
        """ "incline bench, bench on hole 3, 4x8": the word may speak of the lift just named, which had no sets yet."""
        before = self.current
        if before is None or before.has_numbers or cut is None or cut.kind is K.LINE:
            return name.names
        part = set(name.text.split()) < set(before.phrase.split())
        return tuple(dict.fromkeys((*before.names, *name.names))) if part else name.names

    def _goes_on_before(self, clause: Clause, at: int) -> bool:
        """ "bench 80: 8, 8, 7 fly 15: 12, 12": the bare number in front of the next name is the last one's."""
        listed = self.current is not None and self.current.names and self.current.has_numbers
        lone = at == 1 and clause.pieces[0].kind is K.NUMBER and clause.pieces[0].role in (Role.BARE, Role.REPS)
        if not listed or not lone or clause.cut is None or clause.cut.kind is not K.COMMA or self.current is None:
            return False
        if not clause.counts or clause.counts[-1] < at or self.current.led:
            return False
        self.current.pieces += [clause.cut, clause.pieces[0]]
        return True

    def _names_the_lead(self, clause: Clause) -> bool:
        """ "100 for 5, three times, squats": a bare name behind the numbers of a message that named none."""
        return (
            self.current is None and self.lead.has_numbers and clause.cut is not None and clause.cut.kind is not K.LINE
        )

    def _several(self, clause: Clause) -> None:
        """More than one name between two separators: cut before each, or behind each where the names stand last."""
        cuts = self._cuts(clause)
        doubtful, days_apart = not cuts, _tells_days_apart(clause)
        bounds = [0, *cuts, len(clause.pieces)] if cuts else [0, *clause.names[1:], len(clause.pieces)]
        for start, end in pairwise(bounds):
            part = clause_of(clause.cut, clause.pieces[start:end])
            if days_apart:
                self._days(part)
            if len(part.names) == 1 and self._specified(clause, start):
                continue
            if len(part.names) == 1:
                self._named(part)
                if self.current is not None:
                    beside = self._beside_another(clause, start)
                    self.current.doubtful = self.current.doubtful or doubtful or bool(beside)
                    self.current.modified_by = beside or self.current.modified_by
                    self.current.shared_in_doubt |= ends_before_a_name(clause, part, end)

    def _specified(self, clause: Clause, at: int) -> bool:
        """ "bench 60x8 (close grip bench)": the lift named again, and more closely, in brackets behind its numbers."""
        if clause.counts and clause.counts[-1] < at and self._tells_how(clause.pieces[at], clause.pieces[at + 1 :]):
            return True
        around = [piece.kind for piece in clause.pieces[max(0, at - 1) : at + 2]]
        current = self.current
        if current is None or around != [K.OPEN, K.NAME, K.CLOSE] or not current.has_numbers:
            return False
        again, movement = clause.pieces[at], current.phrase.split()[-1]
        closer = tuple(name for name in again.names if movement in name.split())
        if closer or movement in again.text.split() or not set(current.names).isdisjoint(again.names):
            current.names, current.phrase = closer or again.names, again.text
        else:
            current.doubtful, current.modified_by = True, again.text
        return True

    def _tells_how_the_last_was(self, clause: Clause, at: int) -> bool:
        """ "pull ups 10, 8, 7 neutral grip": of the last, or of all."""
        lone = at == 1 and clause.counts == [0] and clause.pieces[0].role in (Role.BARE, Role.REPS)
        current = self.current
        if current is None or not lone or clause.cut is None or not self._tells_how(clause.pieces[at], []):
            return False
        current.pieces += [clause.cut, clause.pieces[0], *clause.pieces[2:]]
        current.shared_in_doubt = True
        return True

    def _tells_how(self, again: Piece, behind: Sequence[Piece]) -> bool:
        """ "deadlift 3x5 100, sumo", "bench 3x8 80 close grip": a name behind the numbers that only says which of the
        lifts of that movement it was, as "pushdown 3x12 25 rope" says nothing new.
        """
        current = self.current
        if current is None or not current.has_numbers or not current.names:
            return False
        closer = named_closer(again, current.phrase, current.names)
        if not closer or not set(words_of(again.text)).isdisjoint(words_of(current.names[0])[-1:]):
            return False
        if set(closer).isdisjoint(current.names):
            current.names = closer
        current.pieces += behind
        return True

    def _cuts(self, clause: Clause) -> list[int]:
        first_count = clause.counts[0] if clause.counts else len(clause.pieces)
        if clause.names[0] < first_count:
            last = clause.names[-1]
            led = counts_a_lift_of_the_body(clause, last)
            return [*clause.names[1:-1], last - 1] if led else clause.names[1:]
        if clause.names[-1] > clause.counts[-1]:
            return [at + 1 for at in clause.names[:-1]]
        return []

    def _beside_another(self, clause: Clause, start: int) -> str:
        """The words of two names with nothing, unknown words or a place between them ("calves on leg press"): they
        say one thing that the catalogue does not know. Empty where they say two.
        """
        at = next((name for name in clause.names if name >= start), 0)
        place = clause.names.index(at)
        if place == 0:
            return ""
        between = clause.pieces[clause.names[place - 1] + 1 : at]
        if not all(piece.kind in UNKNOWN_BETWEEN or is_placing(piece) for piece in between):
            return ""
        return " ".join(piece.text for piece in clause.pieces[clause.names[place - 1] : at + 1])


def entries(pieces: list[Piece], kinds: set[K] | None = None) -> list[Entry]:
    """The message's exercises in the order told, each with its numbers. `kinds`: those of the pieces, where known."""
    told = kinds_of(pieces) if kinds is None else kinds
    alone = _one_exercise(pieces, told)
    if alone is not None:
        return [alone]
    by_the_clock = not told.isdisjoint(CLOCKED_KINDS) and is_against_the_clock(pieces)
    pieces = without_headings(pieces)
    shared, behind = counts_ahead(pieces)
    found = Segmenter().run(behind) if shared else []
    if len(found) > 1 and all(_wants_counts(entry) for entry in found):
        for entry in found:
            entry.pieces += shared
        return found
    found = Segmenter().run(pieces)
    for entry in found if by_the_clock else ():
        entry.shared_in_doubt = True
    for first, second in pairwise(found) if len(found) > 1 else ():
        second.shared_in_doubt |= may_be_in_turn(first, second)
    return found


def _wants_counts(entry: Entry) -> bool:
    """A lift with a load, or with nothing to it: its sets and reps were told ahead."""
    kinds = [piece.kind for piece in entry.pieces]
    return bool(entry.names) and kinds.count(K.NUMBER) <= 1 and not {K.TIMES, K.COUNT} & set(kinds)


def _one_exercise(pieces: list[Piece], told: set[K]) -> Entry | None:
    """The plainest message: one name, then only numbers and their marks. It needs no cutting."""
    if not pieces or pieces[0].kind is not K.NAME:
        return None
    if len(pieces) > 1 and (pieces[1].kind in MODIFYING or pieces[1].kind is K.OPEN or is_placing(pieces[1])):
        return None
    if not told.isdisjoint(NEEDS_CUTTING) or told.isdisjoint(COUNTS):
        return None
    if [piece.kind for piece in pieces].count(K.NAME) > 1:
        return None
    return Entry(pieces[0].names, pieces[0].text, pieces[1:])


NEEDS_CUTTING = frozenset((K.PLAIN, K.UNRELATED, K.DATE, K.ROUNDS, K.BOTH, K.VARIANT, K.HEADING))


def _tells_days_apart(clause: Clause) -> bool:
    """ "squat 3x5 100 bench yesterday 3x5 80": a day right behind another name than the first is of that lift alone."""
    days = [at for at, kind in enumerate(kinds_in_order(clause.pieces)) if kind is K.DATE]
    return any(at - 1 in clause.names[1:] and at + 1 < len(clause.pieces) for at in days)
