"""One walk over the pieces of one exercise: its numbers in chunks, each with its marks."""

from __future__ import annotations

from collections.abc import Callable
from itertools import pairwise

from engine.reading.chunks.announced_sets import load_announced
from engine.reading.chunks.chunks import Chunks, load_of_one_set
from engine.reading.chunks.counts_ahead import count_ahead, counts_of_each, list_counted
from engine.reading.chunks.counts_of_names import count_named, doubt_how_many
from engine.reading.chunks.lists import gather_loads, pair_lists, share_reps, split_total
from engine.reading.chunks.one_end import tells_one_end
from engine.reading.chunks.results import RATING
from engine.reading.chunks.sets_lettered import with_sets_lettered
from engine.reading.chunks.shares import PERCENT, ShareChunks
from engine.reading.chunks.sides import SIDES
from engine.reading.chunks.steps import tells_a_load
from engine.reading.chunks.sums import BEHIND_THE_END
from engine.reading.marks.equipment_talk import is_talked_of
from engine.reading.words.cues import CUES_OF, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook
from engine.reading.words.pieces import (
    BEHIND_A_LEAD,
    BEHIND_A_WARM_UP_NAMED,
    HEADING,
    MOST_LOADED_REPS,
    MOST_SETS,
    NAME_BEHIND_THE_LEAD,
    ROLE,
    TEXT,
    Piece,
    Role,
    kinds_in_order,
)
from engine.values.load import Unit
from engine.values.sets import SetKind


class Chunker(ShareChunks):
    """One walk over the pieces of one exercise."""

    units: frozenset[Unit] = frozenset()

    def run(self) -> Chunks:
        roles = self.out.roles = set(map(ROLE, self.pieces))
        if Role.REPS in roles:
            self.pieces = with_sets_lettered(self.pieces)
        self.kinds = [*kinds_in_order(self.pieces), *BEHIND_THE_END]
        told = self.out.kinds = set(self.kinds)
        self.side_before = not told.isdisjoint(SIDES) and self._sides_stand_before()
        end = len(self.pieces)
        while self.at < end:
            piece = self.pieces[self.at]
            handler = HANDLERS.get(piece.kind)
            if handler is None:
                self.at += 1
            else:
                at = self.at
                handler(self, piece)
                if self.at == at:  # whatever reader of pieces takes none, the walk goes on, and it is asked
                    self.at, self.out.dangling = at + 1, True
        units = {piece.unit for piece in self.pieces if piece.unit is not None}
        if units or self.units:
            self._tell_unit(units)
        if not told <= LIKE_A_PLAIN_GROUP and tells_one_end(self.pieces, self.kinds):
            self.out.dangling = True
        return self._finished()

    def _finished(self) -> Chunks:
        """What the chunks come to together."""
        self._settle()
        if self.next_kind is SetKind.DROP:
            self._drop_behind()
        if self.shared and not tells_a_load(self.out.found):
            self.out.pins = True
        if K.COUNT in self.out.kinds:
            doubt_how_many(self.out, self.pieces)
        if self.out.total:
            split_total(self.out)
        elif len(self.out.found) > 1:
            self._settle_counts()
            said_of_all = not phrasebook().cues["all"].isdisjoint(map(TEXT, self.pieces))
            if said_of_all or K.BOTH in self.out.kinds:
                self.out.of_all = True
            pair_lists(self.out, said_of_all)
            share_reps(self.out)
        return self.out

    def _settle_counts(self) -> None:
        """Puts loads and counts that stand apart to the sets that they are of."""
        if K.COUNT in self.out.kinds or Role.PLURAL in self.out.roles:
            count_named(self.out)
        if Role.SETS in self.out.roles and len(self.out.found) > 3:
            counts_of_each(self.out)
        list_counted(self.out)
        if len(self.out.found) > 2:
            gather_loads(self.out)
            if Role.SETS in self.out.roles:
                load_announced(self.out)
                count_ahead(self.out)

    def _settle(self) -> None:
        """What only shows once all is told: warm-ups that did not come, places in the stack, which set was the last."""
        one_sided = bool(self.out.placed_reps) and self.side is not None  # "3x12, left only 10 on the last"
        self.out.dangling = self.out.dangling or self.warm_left > 0 or one_sided
        if self.warm_lead:
            self._doubt_warm_ups_behind_the_name()
        if self.warm_letters:
            self._doubt_letters()
        if self.warm_named:
            self._doubt_sets_behind_the_named()
        elif self.warm_headed is not None:
            self._doubt_sets_behind_the_first(self.warm_headed)
        if self.pins_told and (self.pins_told > 1 or not tells_a_load(self.out.found)):
            self.out.pins = True
        if 0 < self.last_at < len(self.out.found):
            self.out.last_ends_at = self.last_at

    def _tell_unit(self, told: set[Unit]) -> None:
        units = {*self.units, *told}
        if len(units) == 1:
            self.out.mixed_units = bool(told)
            self.out.unit = units.pop()

    def _drop_behind(self) -> None:
        """ "100x3, 80x8 drop": the set before the word is the drop, where it has a load of its own."""
        last = self._last()
        own = last is not None and load_of_one_set(last) > MOST_LOADED_REPS and len(self.out.found) > 1
        if last is not None and own:
            last.kind = SetKind.DROP
            self.out.dangling = self.out.dangling or self._falls_all_along()
        else:
            self.out.dangling = True

    def _falls_all_along(self) -> bool:
        """ "200x10, 150x10, 100x10 dropset": the last one, or all behind the first."""
        heads = [load for load in map(load_of_one_set, self.out.found) if load]
        return len(heads) > 2 and all(high > low for high, low in pairwise(heads[-3:]))

    def unit_word(self, piece: Piece) -> None:
        """ "lb: bench 135 5 5 5": a unit on its own; behind an unknown word its number was not understood."""
        self.out.dangling = self.out.dangling or (self.at > 0 and self._kind(-1) is K.PLAIN)
        self.units |= {Unit.KG if piece.kind is K.KG else Unit.LB}
        self.at += 1

    def separator_piece(self, piece: Piece) -> None:
        if self.kind is SetKind.WARMUP and self._ends_warm_up(piece):
            self.kind = None
        if piece.told == BEHIND_A_WARM_UP_NAMED:
            self._warm_up_named()
        if self.warm_left and piece.kind in (K.THEN, K.STOP):
            self.out.dangling, self.warm_left = True, 0  # "2 warm-ups 60x5, then 100x5": two of them, or two kinds
        if self.kind is SetKind.WARMUP and (piece.told in BEHIND_A_LEAD or self._work_follows_the_bar(piece)):
            self.warm_lead = len(self.out.found)
            self.warm_led = piece.told == NAME_BEHIND_THE_LEAD
        self.separator = piece.kind
        self.in_note = False
        self.at += 1

    def _ends_warm_up(self, separator: Piece) -> bool:
        if separator.kind is K.LINE:
            return not self._warm_up_is_heading()
        return separator.kind in (K.THEN, K.STOP) or (separator.kind is K.SLASH and not separator.glued)

    def _warm_up_is_heading(self) -> bool:
        """A line that says only "warm up" holds for the lines below it, up to "work"."""
        if self.pieces[0].kind is K.WARMUP and self.pieces[0].text == HEADING:
            return True
        works = K.WORKING in self.out.kinds
        if not (works and any(self.kinds[at] is K.WORKING for at in range(self.at, len(self.pieces)))):
            return not self.out.found
        return True

    def noted(self, piece: Piece) -> None:
        self.out.notes.append(piece)
        if piece.kind is K.VARIANT and K.SAME in (self._kind(-1), self._kind(-2)):
            self.out.dangling = True  # "60x8 same weight on incline": another lift, and no reps of it
        if self._kind(-1) is K.NUMBER and is_cued(piece.text, NEARLY) and self._kind() in ENDS_OF_A_REMARK:
            self.out.dangling = True  # "140x1 almost": was it made?
        if piece.text == PERCENT and self.takes_share(piece):
            self.out.notes.pop()
            self.number(self.pieces[self.at])
            return
        if piece.text == "short" and self._kind(-1) is K.NUMBER:
            self.out.pins = True  # a share of a target that is not known here
        if self.out.found and not piece.told and self._reps_told() and not self._rates_what_follows():
            self.in_note = True
        self.at += 1

    def _reps_told(self) -> bool:
        """Whether anything but a load was told: "with a 10kg plate on my back 12 12 10" goes on to its reps."""
        first = self.out.found[0]
        alone = len(self.out.found) == 1 and first.size == 1 and len(first.factors[0]) == 1
        return not alone or first.factors[0][0].role is not Role.LOAD or bool(first.at)

    def each(self, piece: Piece) -> None:
        """ "each", "per leg": the load of each hand, or the reps of each side."""
        self._tell_each(piece)
        self.out.dangling = self.out.dangling or self._counts_a_leg(piece)
        self.at += 1

    def ahead_of_number(self, piece: Piece) -> None:
        """ "8 8 8 for 3": joined to no load; "pull ups for 8, 7 and 6" begins a list; "8 7 6 na 85" tells its load."""
        if self._joins_load() or self._joins_counted_load():
            return
        if self._leads_a_set():
            self.in_note = False
            self.at += 1  # "belt on for 315 for 2"
            return
        last, number = self._last(), self.pieces[self.at + 1] if self._kind() is K.NUMBER else None
        loaded = number is not None and (
            number.role is Role.LOAD or (number.role is Role.BARE and "onto" in CUES_OF[piece.text])
        )
        if last is not None and not last.at and loaded:
            self.at_load(piece)
            return
        bare = bool(self.out.found) and number is not None and number.role is Role.BARE
        self.out.dangling = self.out.dangling or bare
        self.at += 1

    def _leads_a_set(self) -> bool:
        number = self.pieces[self.at + 1] if self._kind() is K.NUMBER else None
        heavy = number is not None and (number.role is Role.LOAD or number.value > MOST_LOADED_REPS)
        return heavy and self._kind(2) in (K.FOR, K.TIMES) and self._kind(3) is K.NUMBER

    def _joins_load(self) -> bool:
        """ "100 on the squat for 5": words stood between the load and its reps."""
        last, number = self._last(), self.pieces[self.at + 1] if self._kind() is K.NUMBER else None
        if (
            last is None
            or number is None
            or last.size != 1
            or last.at
            or len(last.factors[0]) != 1
            or self.separator not in (None, K.AND)
        ):
            return False
        load = last.factors[0][0]
        if number.role is not Role.BARE or not (load.role is Role.LOAD or load.value > MOST_LOADED_REPS):
            return False
        self.out.found.pop()
        self.at += 1
        last.factors.append(self.factor(None))
        last.spoken_for = True
        self._rest_of_chunk(last)
        return True

    def except_for(self, piece: Piece) -> None:
        """ "3x5 but the last set was 4", where "but last" is one phrase."""
        if self.out.found and piece.text == "but":
            self.last_set(piece)
        else:
            self.passed_word(piece)

    def first_of_them(self, piece: Piece) -> None:
        """ "5 reps on the first two and 4 on the last": so many sets of a group, which numbers cannot tell here."""
        if self._several_ahead() or self._warmed_up_with_several() or self._loaded_by_place():
            return
        if self._remarks_on_several():
            self.at += 2
            return
        counted = self._kind() is K.NUMBER and bool(self.out.found)
        felt = counted and self._kind(2) in (K.FILLER, K.NOTE) and self.pieces[self.at + 1].role is Role.BARE
        if felt:
            self.out.dangling = True  # "80x8, first 2 were easy": reps of it, or sets
            self.at += 2
            return
        several = counted and (self.pieces[self.at + 1].spelled or self._tells_how_many())
        marked = self._kind(1 + (self._kind() is K.SETS)) in RATING and self._group_told()  # "first set @8"
        self.out.dangling = self.out.dangling or several or marked
        self.passed_word(piece)

    def _tells_how_many(self) -> bool:
        """ "5x5 100, first 2 at 90": so many of the sets, or a set of two; "first 60x5" tells a load."""
        number = self.pieces[self.at + 1]
        return number.role is Role.BARE and number.value <= MOST_SETS and self._kind(2) not in (K.TIMES, K.FOR)

    def both(self, piece: Piece) -> None:
        """ "200x10 150x8 both x3"; ahead of numbers it shares them among lifts."""
        if self.out.found and self._kind() is not K.NUMBER and not self._tells_reps_of_all(piece):
            self._pass(self.at)
        self.at += 1

    def no_place(self, piece: Piece) -> None:
        """ "5 out of 10": of reps wanted, or a scale that no word names; "got 6 out of it", "slow out of the hole" say
        nothing more.
        """
        points = self._kind() is not None and is_cued(self.pieces[self.at + 1].text, POINTING)
        numbered = K.NUMBER in self.kinds[self.at + 1 : self._clause_end(self.at)]
        self.out.dangling = self.out.dangling or (numbered and not points)
        self.at += 1

    def flag(self, piece: Piece) -> None:
        if piece.kind is not K.ADDED or self._kind() not in ADDED_TO_SOMETHING:  # "added chalk"
            setattr(self.out, FLAGS[piece.kind], True)
        self.at += 1

    def equipment(self, piece: Piece) -> None:
        self.out.equipment = piece.kind
        self.out.equipment_open = is_talked_of(self.pieces, self.at)
        self.at += 1


NEARLY = frozenset(("nearly",))
ENDS_OF_A_REMARK = frozenset((None, K.COMMA, K.STOP, K.LINE, K.CLOSE))
ADDED_TO_SOMETHING = frozenset((K.PLAIN, K.NOTE, K.UNRELATED, K.REST, K.PAUSE, K.WARMUP, K.SETTING))
LIKE_A_PLAIN_GROUP = frozenset((K.NUMBER, K.TIMES, K.COMMA, K.AT, K.LINE, K.EFFORT, None))
POINTING = frozenset(("that", "those"))
FLAGS = {
    K.ADDED: "added",
    K.EXTRA: "added",
    K.MAX: "maximum",
    K.TOTAL: "total",
    K.UNCLEAR: "pins",
}
HANDLERS: dict[K, Callable[[Chunker, Piece], None]] = {
    K.NUMBER: Chunker.number,
    K.LAST: Chunker.last_set,
    K.SAME: Chunker.again,
    K.ANOTHER: Chunker.again,
    K.TIMES: Chunker.carried,
    K.TIMES_WORD: Chunker.times_word,
    K.BY: Chunker.plus,
    K.AT: Chunker.at_load,
    K.WITH: Chunker.at_load,
    K.EFFORT: Chunker.effort,
    K.FAILURE: Chunker.failure,
    K.MISS: Chunker.miss,
    K.PLUS: Chunker.plus,
    K.EACH: Chunker.each,
    K.KG: Chunker.unit_word,
    K.LB: Chunker.unit_word,
    K.SETS: Chunker.sets_word,
    K.MORE: Chunker.behind_number,
    K.FOR: Chunker.ahead_of_number,
    K.EQUALS: Chunker.equals,
    K.OUT_OF: Chunker.no_place,
    K.NOT_DATE: Chunker.till,
    K.BOTH: Chunker.both,
    K.EXCEPT: Chunker.except_for,
    K.FIRST: Chunker.first_of_them,
    K.OTHER_SIGN: Chunker.numbered,
    K.ASSISTED: Chunker.help_told,
    K.BAND: Chunker.band_told,
    K.BAR: Chunker.bar,
    K.BODY: Chunker.body,
    K.COUNT: Chunker.count_word,
    K.ONCE: Chunker.once,
    K.DROP: Chunker.drop,
    K.ARROW: Chunker.arrow,
    K.COLON: Chunker.colon,
    K.ORDINAL: Chunker.ordinal_set,
    K.WARMUP: Chunker.warm_up,
    K.REST_PAUSE: Chunker.rest_pause,
    K.FILLER: Chunker.filler,
    K.WORKING: Chunker.working,
    K.LEFT: Chunker.sided,
    K.RIGHT: Chunker.sided,
    K.GOT: Chunker.got,
    K.ONLY: Chunker.only,
    K.PLAIN: Chunker.noted,
    K.NOTE: Chunker.noted,
    K.PAIN: Chunker.noted,
    K.SORE: Chunker.noted,
    K.JOINT: Chunker.noted,
    K.MUSCLE: Chunker.noted,
    K.DENIED: Chunker.noted,
    K.DENY: Chunker.denied,
    K.UNRELATED: Chunker.noted,
    K.SETTING: Chunker.noted,
    K.VARIANT: Chunker.noted,
    K.PARTIAL: Chunker.noted,
    K.DUMBBELL: Chunker.equipment,
    K.BARBELL: Chunker.equipment,
    K.CABLE: Chunker.equipment,
    K.MACHINE: Chunker.equipment,
    K.KETTLEBELL: Chunker.equipment,
    K.PIN: Chunker.pin,
    K.PLATE: Chunker.plate,
    K.SIDE_PLATES: Chunker.plate,
    K.OPEN: Chunker.bracket,
    K.CLOSE: Chunker.bracket,
    **dict.fromkeys((K.COMMA, K.LINE, K.STOP, K.THEN, K.AND, K.SLASH, K.DASH), Chunker.separator_piece),
    **dict.fromkeys(FLAGS, Chunker.flag),
    **dict.fromkeys((K.NOT, K.ALTERED, K.MIDDLE, K.FROM_LAST, K.EXTREME, K.ROUNDS), Chunker.passed_word),
}
