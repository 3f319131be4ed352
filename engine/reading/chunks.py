"""The numbers of one exercise, gathered into chunks: what stands around one "x", with the marks that belong to it.

chunk  = factor ( "x" factor )* [ "+" NUMBER ]* mark*         80x5   3x12   60x8x3   70x9/9/6   60x8+3+2
factor = NUMBER ( ( "/" | "-" | "," ) NUMBER )* | "bar" | "bw"     glued; or in brackets: (70,75,80)x6
mark   = "@" NUMBER | "with" NUMBER | effort | failure | miss | "drop" | side | warm-up | "x2" | "three times"
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field
from decimal import Decimal

from engine.reading.kinds import K
from engine.reading.pieces import Piece, Role
from engine.reading.segments import HEADING
from engine.values.effort import Effort
from engine.values.sets import SetKind, Side

JOINERS = frozenset((K.SLASH, K.DASH, K.COMMA))
MOST_SETS_BY_REPEAT = 5
PLUS_ENDS = frozenset((K.PARTIAL,))
GAPS = frozenset((K.FILLER, K.EACH, K.OF, K.CLOSE))


@dataclass(slots=True)
class Chunk:
    """Shape: `factors` in the order written, each one or several numbers; None stands for what is carried on ("x8")."""

    factors: list[tuple[Piece, ...]]
    joiner: K | None = None
    plus: list[Piece] = field(default_factory=list)
    at: tuple[Piece, ...] = ()
    at_sign: bool = False
    efforts: tuple[Effort, ...] = ()
    effort_apart: bool = False
    failure: bool = False
    missed: bool = False
    missed_rep: int | None = None
    times: int | None = None
    side: Side | None = None
    kind: SetKind | None = None
    spoken_for: bool = False
    """The pair was linked by "for": load first, then reps."""
    before: K | None = None
    """The separator that stood before it."""
    counted: bool = False
    """The reps were written as a word that names them: a triple, fives."""
    in_brackets: bool = False

    @property
    def size(self) -> int:
        return len(self.factors)


CARRIED: tuple[Piece, ...] = ()


@dataclass(slots=True)
class Chunks:
    """What one exercise's pieces come to. `loose`: numbers that found no place."""

    found: list[Chunk] = field(default_factory=list)
    notes: list[Piece] = field(default_factory=list)
    loose: list[Piece] = field(default_factory=list)
    failure_ahead: bool = False
    last_to_failure: bool = False
    rest_pause: bool = False
    drops_ahead: bool = False
    each: bool = False
    dumbbells: bool = False
    assisted: bool = False
    added: bool = False
    body: bool = False
    barred: bool = False
    same_load: bool = False
    maximum: bool = False
    result_from: int | None = None
    work_from: int | None = None
    total: bool = False
    equipment: K | None = None
    plates: bool = False
    pins: bool = False
    band: bool = False
    stated: tuple[int, int] | None = None
    """Sets and reps told again in words: "60x3x5 plan says 5 triples"."""


@dataclass(slots=True)
class Chunker:
    """One walk over the pieces of one exercise."""

    pieces: list[Piece]
    out: Chunks = field(default_factory=Chunks)
    at: int = 0
    separator: K | None = None
    kind: SetKind | None = None
    next_kind: SetKind | None = None
    side: Side | None = None
    side_before: bool = False
    in_note: bool = False
    depth: int = 0

    def run(self) -> Chunks:
        self.side_before = self._sides_stand_before()
        if any(piece.role is Role.REPS and piece.kind is K.NUMBER for piece in self.pieces):
            self.pieces = [_as_sets(piece) for piece in self.pieces]
        while self.at < len(self.pieces):
            piece = self.pieces[self.at]
            handler = HANDLERS.get(piece.kind)
            if handler is None:
                self.at += 1
            else:
                handler(self, piece)
        if self.out.total:
            self._split_total()
        return self.out

    def _split_total(self) -> None:
        """ "40 total in sets of 8": five sets of eight; any other total is left without a place."""
        numbers = [number for chunk in self.out.found for factor in chunk.factors for number in factor]
        whole, each = (numbers + numbers)[:2] if len(numbers) in (1, 2) else (None, None)
        if whole is None or each is None or len(numbers) < 2 or each.value < 1 or whole.value % each.value:
            self.out.loose += numbers[:1]
            return
        sets = whole._replace(value=whole.value / each.value, role=Role.SETS)
        self.out.found = [Chunk([(sets,), (each._replace(role=Role.REPS),)])]

    def _kind(self, ahead: int = 1) -> K | None:
        at = self.at + ahead
        return self.pieces[at].kind if at < len(self.pieces) else None

    def _last(self) -> Chunk | None:
        return self.out.found[-1] if self.out.found else None

    # ---- numbers

    def number(self, piece: Piece) -> None:
        if self._repeats_last():
            return
        if self._goes_to_rest_pause(piece):
            return
        following = self._kind()
        if following is K.PARTIAL or (following is K.FILLER and self._kind(2) is K.PARTIAL):
            self._partials()
            return
        if self.in_note and following is not K.TIMES and self.separator is None and piece.role is Role.BARE:
            self.out.loose.append(piece)
            self.at += 1
            return
        self.chunk()

    def _repeats_last(self) -> bool:
        """ "(75 x7) 3x", "three times": a multiplier of the chunk before."""
        piece, last = self.pieces[self.at], self._last()
        if last is None or piece.value != int(piece.value):
            return False
        behind = last.in_brackets and self._kind() is K.TIMES and self._kind(2) not in (K.NUMBER, K.MAX, K.OPEN)
        if behind or (piece.role is Role.TIMES and last.size >= 2):
            last.times = int(piece.value)
            self.at += 2 if behind else 1
            return True
        return False

    def _goes_to_rest_pause(self, piece: Piece) -> bool:
        """ "(+4+2)" behind a chunk."""
        last = self._last()
        if last is None or piece.role is not Role.CHANGE or not self.depth or piece.value <= 0:
            return False
        last.plus.append(piece)
        self.at += 1
        while self._kind(0) is K.PLUS and self._kind() is K.NUMBER:
            last.plus.append(self.pieces[self.at + 1])
            self.at += 2
        return True

    def _partials(self) -> None:
        """ "12 + 4 partials": the four are a note."""
        self.out.notes.append(self.pieces[self.at])
        self.at += 2

    def chunk(self) -> None:
        chunk = Chunk([self.factor(None)], before=self.separator, in_brackets=self.depth > 0)
        self._rest_of_chunk(chunk)

    def _rest_of_chunk(self, chunk: Chunk) -> None:
        while self._joins_next(chunk):
            self.at += 1
            self._skip(GAPS)
            if self._kind(0) is K.MAX:
                self.out.maximum = True
                self.at += 1
                break
            chunk.factors.append(self._full_reps(self.factor(chunk)))
        if chunk.size == 1 and self._counted_next():
            chunk.factors.append((self._counted_piece(),))
            chunk.counted = True
        self._plus(chunk)
        if not self._restates(chunk):
            self._place(chunk)

    def _full_reps(self, numbers: tuple[Piece, ...]) -> tuple[Piece, ...]:
        """ "7½" reps: only the full ones count."""
        if not any(number.text.endswith("½") and number.role is Role.BARE for number in numbers):
            return numbers
        self.out.notes.append(numbers[-1])
        return tuple(number._replace(value=Decimal(int(number.value))) for number in numbers)

    def _restates(self, chunk: Chunk) -> bool:
        """ "100x3x5, five triples": sets and reps in words behind three factors settle which is which."""
        last = self._last()
        if last is None or last.size != 3 or chunk.size != 2 or self.separator is K.LINE:
            return False
        sets, reps = chunk.factors[0][0], chunk.factors[1][0]
        if not chunk.counted and sets.role is not Role.SETS:
            return False
        self.out.stated = int(sets.value), int(reps.value)
        return True

    def _joins_next(self, chunk: Chunk) -> bool:
        kind = self._kind(0)
        if kind is K.TIMES or kind is K.BY:
            return self._times_joins(chunk)
        if kind is K.OF and chunk.size == 1 and self._number_behind(1):
            return self._counts_of(chunk)
        if kind is K.FOR and chunk.size == 1 and self._number_behind(1):
            ahead = self.pieces[self.at + 1 + (self._kind(1) is K.FILLER)]
            chunk.spoken_for = ahead.role not in (Role.SECONDS, Role.SETS) or chunk.factors[0][0].role is Role.LOAD
            return chunk.spoken_for and ahead.role is not Role.SETS
        return kind is K.EACH and self._kind(1) is K.TIMES and self._times_joins(chunk, 1)

    def _counts_of(self, chunk: Chunk) -> bool:
        """ "3 sets of 8", "3 po 8": what stands before "of" counts sets."""
        head, counted = chunk.factors[0][-1], self.pieces[self.at + 1]
        if head.role is Role.SETS:
            return True
        if head.role is not Role.BARE or head.value > 10 or counted.kind is not K.NUMBER or counted.role not in (Role.BARE, Role.REPS):
            return False
        chunk.factors[0] = (head._replace(role=Role.SETS),)
        return True

    def _times_joins(self, chunk: Chunk, ahead: int = 0) -> bool:
        if not self._number_behind(ahead + 1):
            return False
        sign, number = self.pieces[self.at + ahead], self.pieces[self.at + ahead + 1]
        self.at += ahead
        if chunk.size < 2 or sign.glued or not number.glued or number.role is not Role.BARE:
            return True
        if number.value > MOST_SETS_BY_REPEAT:
            return False  # "60x8 x8 x7": the load is carried on
        chunk.times = int(number.value)
        if number.value == chunk.factors[-1][-1].value:
            self.out.loose.append(number)  # "60x5 x5": twice, or five times
        self.at += 2
        return False

    def _number_behind(self, ahead: int) -> bool:
        while self._kind(ahead) in GAPS:
            ahead += 1
        return self._kind(ahead) in (K.NUMBER, K.BAR, K.BODY, K.OPEN, K.MAX)

    def _counted_next(self) -> bool:
        return self._kind(0) is K.COUNT and self.pieces[self.at - 1].kind is K.NUMBER

    def _counted_piece(self) -> Piece:
        piece = self.pieces[self.at]
        self.at += 1
        return piece._replace(kind=K.NUMBER, value=Decimal(piece.count), role=Role.REPS)

    def factor(self, chunk: Chunk | None) -> tuple[Piece, ...]:
        if self._kind(0) is K.OPEN:
            return self._bracketed(chunk)
        first = self.pieces[self.at]
        self.at += 1
        if first.kind is K.BAR:
            return (first._replace(kind=K.NUMBER, role=Role.BAR),)
        if first.kind is K.BODY:
            return (first._replace(kind=K.NUMBER, role=Role.BODY),)
        numbers = [first]
        while self._joined_number(numbers, chunk):
            numbers.append(self.pieces[self.at + 1])
            if chunk is not None:
                chunk.joiner = self.pieces[self.at].kind
            self.at += 2
        return tuple(numbers)

    def _joined_number(self, numbers: list[Piece], chunk: Chunk | None) -> bool:
        sign, kind = self._kind(0), self._kind(1)
        if sign not in JOINERS or kind is not K.NUMBER:
            return False
        if not self.pieces[self.at].glued or not self.pieces[self.at + 1].glued:
            return False
        if sign is K.COMMA:
            return chunk is not None and self._kind(2) is not K.TIMES
        return self.pieces[self.at + 1].role is not Role.CHANGE

    def _bracketed(self, chunk: Chunk | None) -> tuple[Piece, ...]:
        """ "(70,75,80)" as one factor."""
        numbers: list[Piece] = []
        self.at += 1
        while self._kind(0) in (K.NUMBER, K.COMMA, K.SLASH, K.DASH):
            if self._kind(0) is K.NUMBER:
                numbers.append(self.pieces[self.at])
            self.at += 1
        if self._kind(0) is K.AT and numbers and chunk is not None and self._kind(1) is K.NUMBER:
            # "4 x (6 @ 70)": sets in front of a whole set
            chunk.at, chunk.at_sign = (self.pieces[self.at + 1],), True
            self.at += 2
        if self._kind(0) is K.TIMES and chunk is not None and self._kind(1) is K.NUMBER:
            return self._bracketed_pair(chunk, numbers)
        if self._kind(0) is K.CLOSE:
            self.at += 1
        return tuple(numbers)

    def _bracketed_pair(self, chunk: Chunk, numbers: list[Piece]) -> tuple[Piece, ...]:
        """ "3 x (50x9)": the number in front multiplies."""
        chunk.times = int(chunk.factors[0][0].value)
        chunk.factors[0] = tuple(numbers)
        second = self.pieces[self.at + 1]
        self.at += 2 + (self._kind(2) is K.CLOSE)
        return (second,)

    def _plus(self, chunk: Chunk) -> None:
        while self._kind(0) is K.PLUS and self._kind(1) is K.NUMBER and self._kind(2) is not K.PARTIAL:
            chunk.plus.append(self.pieces[self.at + 1])
            self.at += 2
        if self._kind(0) is K.PLUS and self._kind(1) in (K.GOT, None, K.COMMA, K.LINE, K.FILLER):
            self.out.maximum = True

    def _place(self, chunk: Chunk) -> None:
        chunk.kind = self.next_kind or self.kind
        self.next_kind = None
        if self.side is not None and self.side_before and chunk.factors and chunk.factors[-1][-1:] != ():
            chunk.side = self.side if chunk.factors[-1][-1].role is not Role.LOAD else None
        self.separator = None
        self.in_note = False
        chunk.failure = any(number.failure for factor in chunk.factors for number in factor)
        self.out.found.append(chunk)

    def carried(self, piece: Piece) -> None:
        """ "x8": the load is carried on; "(x3)": a multiplier."""
        if self._kind() not in (K.NUMBER, K.MAX):
            self.at += 1
            return
        last = self._last()
        if self.depth and last is not None and last.size >= 2 and self._kind(2) is K.CLOSE:
            last.times = int(self.pieces[self.at + 1].value)
            self.at += 2
            return
        if last is not None and self._repeats_typed(last):
            return
        if self._kind() is K.MAX:
            self.out.maximum = True
            self.at += 2
            return
        self.at += 1
        chunk = Chunk([CARRIED], before=self.separator)
        chunk.factors.append(self.factor(chunk))
        self._rest_of_chunk(chunk)

    def _repeats_typed(self, last: Chunk) -> bool:
        """ "40m x3", "30s each side x2": seconds and metres are repeated, never carried as a load."""
        number = self.pieces[self.at + 1]
        timed = last.factors[-1] and last.factors[-1][-1].role in (Role.SECONDS, Role.METRES, Role.PLURAL)
        if not timed or self.separator is K.LINE or last.times is not None or number.role is not Role.BARE:
            return False
        last.times = int(number.value)
        self.at += 2
        return True

    # ---- marks

    def at_load(self, piece: Piece) -> None:
        """ "@ 55", "with 55": a load, or for the sign perhaps an effort, told of the chunk before."""
        if piece.text == "w" and self.depth and self._kind() is K.CLOSE:
            self._bracketed_warm_up()
            return
        self.at += 1
        self._skip(frozenset((K.FILLER, K.COLON, K.OPEN, K.EACH)))
        sign = piece.kind is K.AT
        if self._kind(0) is not K.NUMBER:
            return
        last = self._last()
        role = self.pieces[self.at].role
        if role in (Role.REPS, Role.SETS, Role.TIMES, Role.SECONDS, Role.METRES) or self._kind() is K.TIMES:
            return
        numbers = self.factor(Chunk([CARRIED]))
        if last is None or last.at:
            head = numbers[0]._replace(role=Role.LOAD) if numbers[0].role is Role.BARE else numbers[0]
            self._place(Chunk([(head, *numbers[1:])], before=self.separator))
            return
        last.at, last.at_sign = numbers, sign
        if numbers[-1].failure:
            last.failure = True

    def _bracketed_warm_up(self) -> None:
        """ "60x5 (w)", or "(w) 60x5" ahead of the first."""
        last = self._last()
        if last is not None:
            last.kind = SetKind.WARMUP
        else:
            self.next_kind = SetKind.WARMUP
        self.at += 1

    def effort(self, piece: Piece) -> None:
        last = self._last()
        if last is None:
            self.out.found.append(Chunk([], efforts=piece.efforts))
        else:
            last.efforts += piece.efforts
            last.effort_apart = self.separator is not None
        self.at += 1

    def failure(self, piece: Piece) -> None:
        last = self._last()
        bracketed = self.depth > 0 and piece.text in ("f", "fail")
        if last is None:
            self.out.failure_ahead = True
        elif bracketed and last.size >= 2 and last.factors[-1][-1].value == 1:
            last.missed, last.missed_rep = True, 1
        elif self.pieces[self.at - 1].kind is K.LAST or self._last_said():
            self.out.last_to_failure = True
        elif self.separator is not None and self._kind() in (K.COLON, K.NUMBER):
            self.out.notes.append(piece)
        else:
            last.failure = True
        self.at += 1

    def _last_said(self) -> bool:
        return any(p.kind is K.LAST for p in self.pieces[max(0, self.at - 4) : self.at])

    def miss(self, piece: Piece) -> None:
        self.at += 1
        self._skip(frozenset((K.FILLER,)))
        rep = None
        if self._kind(0) is K.ORDINAL or (self._kind(0) is K.NUMBER and self._kind(1) is K.REPS):
            ordinal = self.pieces[self.at]
            rep = ordinal.count or int(ordinal.value)
            self.at += 1
            self._skip(frozenset((K.REPS, K.FILLER, K.COUNT)))
        last = self._last()
        if last is None:
            self.out.notes.append(piece)
        else:
            last.missed, last.missed_rep = True, rep

    def plus(self, piece: Piece) -> None:
        self.at += 1

    def bar(self, piece: Piece) -> None:
        self.out.barred = True
        if self._kind() is K.TIMES or self._kind() is K.NUMBER or (self._kind() is K.FOR and self._number_behind(2)):
            self.chunk()
        else:
            self.at += 1
            last = self._last()
            if last is not None and not last.at:
                last.at = (piece._replace(kind=K.NUMBER, role=Role.BAR),)

    def body(self, piece: Piece) -> None:
        self.out.body = True
        if self._kind() is K.TIMES and self._number_behind(2):
            self.chunk()
        else:
            self.at += 1

    def count_word(self, piece: Piece) -> None:
        chunk = Chunk([(self._counted_piece(),)], before=self.separator, counted=True)
        self._place(chunk)

    def once(self, piece: Piece) -> None:
        last = self._last()
        if last is not None:
            last.times = piece.count
        self.at += 1

    def drop(self, piece: Piece) -> None:
        if self.out.found:
            self.next_kind = SetKind.DROP
        else:
            self.out.drops_ahead = True
        self.at += 1

    def warm_up(self, piece: Piece) -> None:
        last = self._last()
        behind = last is not None and self._kind() in (K.CLOSE, K.COMMA, K.LINE, K.STOP, None, K.SLASH, K.THEN)
        if last is not None and behind and self.separator is None:
            last.kind = SetKind.WARMUP
        else:
            self.kind = SetKind.WARMUP
        self.at += 1

    def working(self, piece: Piece) -> None:
        self.kind = None
        if self.out.found and self.out.work_from is None:
            self.out.work_from = len(self.out.found)
        self.at += 1

    def separator_piece(self, piece: Piece) -> None:
        spaced_slash = piece.kind is K.SLASH and not piece.glued
        heads = piece.kind is K.LINE and self.kind is SetKind.WARMUP and not self._warm_up_is_heading()
        if self.kind is SetKind.WARMUP and (piece.kind in (K.THEN, K.STOP) or spaced_slash or heads):
            self.kind = None
        self.separator = piece.kind
        self.in_note = False
        self.at += 1

    def _warm_up_is_heading(self) -> bool:
        """A line that says only "warm up" holds for the lines below it, up to "work"."""
        if self.pieces[0].kind is K.WARMUP and self.pieces[0].text == HEADING:
            return True
        if not any(p.kind is K.WORKING for p in self.pieces[self.at :]):
            return not self.out.found
        return True

    def sided(self, piece: Piece) -> None:
        self.side = Side.LEFT if piece.kind is K.LEFT else Side.RIGHT
        last = self._last()
        if not self.side_before and last is not None and self.pieces[self.at - 1].kind in (K.NUMBER, K.REPS):
            last.side = self.side
        self.at += 1

    def _sides_stand_before(self) -> bool:
        """ "L 10 R 9" against "10 L 9 R": by what stands behind the last side."""
        for at in range(len(self.pieces) - 1, -1, -1):
            if self.pieces[at].kind in (K.LEFT, K.RIGHT):
                rest = self.pieces[at + 1 : at + 4]
                return any(piece.kind is K.NUMBER for piece in rest)
        return False

    def got(self, piece: Piece) -> None:
        """ "90x3+ got 6": the result counts."""
        if self.out.found and self._number_behind(1):
            self.out.result_from = len(self.out.found)
        self.at += 1

    def noted(self, piece: Piece) -> None:
        self.out.notes.append(piece)
        if piece.kind is K.PLAIN and self.out.found:
            self.in_note = True
        self.at += 1

    def flag(self, piece: Piece) -> None:
        setattr(self.out, FLAGS[piece.kind], True)
        self.at += 1

    def equipment(self, piece: Piece) -> None:
        self.out.equipment = piece.kind
        self.at += 1

    def plate(self, piece: Piece) -> None:
        """ "2 plates": the number before, or one, in plates a side."""
        last = self._last()
        self.out.plates = True
        if last is not None and last.size == 1 and len(last.factors[0]) == 1:
            number = last.factors[0][0]
            last.factors[0] = (number._replace(role=Role.LOAD, text="plates", unit=None),)
            if self._kind() is K.TIMES or self._kind() is K.FOR:
                self.at += 1
                self.out.found.pop()
                self._rest_of_plates(last)
                return
        self.at += 1

    def _rest_of_plates(self, chunk: Chunk) -> None:
        chunk.spoken_for = True
        self._rest_of_chunk(chunk)

    def bracket(self, piece: Piece) -> None:
        if piece.kind is K.OPEN:
            self.depth += 1
            if self._is_list_factor():
                self.chunk()
                self.depth -= 1
                return
        else:
            self.depth = max(0, self.depth - 1)
            last = self._last()
            if last is not None and self._kind() is K.TIMES and self._kind(2) is K.NUMBER and last.in_brackets:
                last.times = int(self.pieces[self.at + 2].value)
                self.at += 3
                return
        self.at += 1

    def _is_list_factor(self) -> bool:
        """ "(70,75,80)x6": only numbers and commas up to the bracket, and an x behind it."""
        at = self.at + 1
        while at < len(self.pieces) and self.pieces[at].kind in (K.NUMBER, K.COMMA, K.SLASH):
            at += 1
        closes = at + 1 < len(self.pieces) and self.pieces[at].kind is K.CLOSE
        several = at - self.at > 2
        return closes and several and self.pieces[at + 1].kind is K.TIMES

    def _skip(self, kinds: frozenset[K]) -> None:
        while self.at < len(self.pieces) and self.pieces[self.at].kind in kinds:
            self.out.each = self.out.each or self.pieces[self.at].kind is K.EACH
            self.at += 1


def _as_sets(piece: Piece) -> Piece:
    """Where reps carry their letter ("12r"), a small "4s" counts sets."""
    small = piece.role is Role.PLURAL and piece.value <= 10
    return piece._replace(role=Role.SETS) if small else piece


FLAGS = {
    K.EACH: "each",
    K.REST_PAUSE: "rest_pause",
    K.ASSISTED: "assisted",
    K.ADDED: "added",
    K.EXTRA: "added",
    K.SAME: "same_load",
    K.MAX: "maximum",
    K.TOTAL: "total",
    K.PIN: "pins",
    K.BAND: "band",
}
HANDLERS: dict[K, Callable[[Chunker, Piece], None]] = {
    K.NUMBER: Chunker.number,
    K.TIMES: Chunker.carried,
    K.BY: Chunker.plus,
    K.AT: Chunker.at_load,
    K.WITH: Chunker.at_load,
    K.EFFORT: Chunker.effort,
    K.FAILURE: Chunker.failure,
    K.MISS: Chunker.miss,
    K.PLUS: Chunker.plus,
    K.BAR: Chunker.bar,
    K.BODY: Chunker.body,
    K.COUNT: Chunker.count_word,
    K.ONCE: Chunker.once,
    K.DROP: Chunker.drop,
    K.ARROW: Chunker.drop,
    K.WARMUP: Chunker.warm_up,
    K.WORKING: Chunker.working,
    K.LEFT: Chunker.sided,
    K.RIGHT: Chunker.sided,
    K.GOT: Chunker.got,
    K.PLAIN: Chunker.noted,
    K.NOTE: Chunker.noted,
    K.PAIN: Chunker.noted,
    K.SORE: Chunker.noted,
    K.JOINT: Chunker.noted,
    K.MUSCLE: Chunker.noted,
    K.DENIED: Chunker.noted,
    K.DENY: Chunker.noted,
    K.UNRELATED: Chunker.noted,
    K.SETTING: Chunker.noted,
    K.VARIANT: Chunker.noted,
    K.PARTIAL: Chunker.noted,
    K.DUMBBELL: Chunker.equipment,
    K.BARBELL: Chunker.equipment,
    K.CABLE: Chunker.equipment,
    K.MACHINE: Chunker.equipment,
    K.KETTLEBELL: Chunker.equipment,
    K.PLATE: Chunker.plate,
    K.SIDE_PLATES: Chunker.plate,
    K.OPEN: Chunker.bracket,
    K.CLOSE: Chunker.bracket,
    **dict.fromkeys((K.COMMA, K.LINE, K.STOP, K.THEN, K.AND, K.SLASH, K.DASH), Chunker.separator_piece),
    **dict.fromkeys(FLAGS, Chunker.flag),
}
