"""Corrections in words: what they change among the sets that stand.

correction = slip value | value "i mean" | new "not" old | part "was" value | "make" part value | "only" NUMBER
           | "delete" part | "move it to" day | part effort | "that was" ( name | equipment | unit )
part       = "last" | "first" [ NUMBER ] | "set" NUMBER | "second set" | name | "all"

Rules: "X not Y" changes the sets that have Y; a bare number is the reps of the latest set, one with a unit, or that only
fits a load, the load of its group; parts count within the exercise of the latest message, or the one named. Nothing is
added but sets of a larger count. What cannot be worked out changes nothing.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from decimal import Decimal

from engine.catalogue.catalogue import Catalogue
from engine.reading.kinds import K
from engine.reading.parts import Part, group_of, part_told, sets_of
from engine.reading.phrasebook import Phrasebook, phrasebook, spoken_words
from engine.reading.pieces import Piece, Role
from engine.reading.prepare import Prepared
from engine.reading.renaming import renamed
from engine.reading.values import Context, Correction
from engine.values.load import Basis, Load, Unit
from engine.values.sets import SetDone, SetKind, SetRecord

MOST_WORDS = 14
MOST_LOADED_REPS = 30
UNITS = {K.KG: Unit.KG, K.LB: Unit.LB}


@dataclass(slots=True)
class Told:
    """A correction under way: its words, its pieces, the sets it may reach."""

    words: list[str]
    pieces: list[Piece]
    spoken: list[Piece]
    context: Context
    catalogue: Catalogue
    book: Phrasebook
    changes: dict[int, tuple[SetRecord, SetDone]] = field(default_factory=dict)

    def starts(self, cue: str) -> int:
        """How many words of the beginning are this cue; 0 for none."""
        for length in (5, 4, 3, 2, 1):
            if length <= len(self.words) and " ".join(self.words[:length]) in self.book.cues[cue]:
                return length
        return 0

    def has(self, cue: str) -> bool:
        return any(
            " ".join(self.words[at : at + length]) in self.book.cues[cue]
            for at in range(len(self.words))
            for length in (1, 2, 3)
            if at + length <= len(self.words)
        )

    def numbers(self) -> list[Piece]:
        return [piece for piece in self.pieces if piece.kind is K.NUMBER]

    def set_to(self, record: SetRecord, done: SetDone) -> None:
        self.changes[record.id] = (record, done)

    def correction(self) -> Correction | None:
        changed = tuple((record, done) for record, done in self.changes.values() if record.done != done)
        return Correction(changed=changed) if changed else None


def correction_of(prepared: Prepared, context: Context, catalogue: Catalogue) -> Correction | None:
    """The change asked for, worked out on the sets that stand; None where the message asks for none that can be told."""
    if not context.recent or "\n" in prepared.cleaned.strip():
        return None
    book = phrasebook()
    words = [word for word, _ in spoken_words(prepared.tokens)]
    if not words or len(words) > MOST_WORDS:
        return None
    told = Told(_mended(words, prepared.spoken, book), prepared.pieces, prepared.spoken, context, catalogue, book)
    slips = 0
    while told.starts("slip") and slips < 3:
        del told.words[: told.starts("slip")]
        slips += 1
    for way in (_deleted, _moved, _not_that, _counted, _new_unit, _marked, _new_exercise, _new_values):
        found = way(told, slips > 0)
        if found is not None:
            return found
    return None


def _mended(words: list[str], pieces: Sequence[Piece], book: Phrasebook) -> list[str]:
    unknown = {piece.text for piece in pieces if piece.kind is K.PLAIN}
    return [book.slips.near(word)[0] if word in unknown else word for word in words]


# ---- ways to correct


def _deleted(told: Told, slipped: bool) -> Correction | None:
    if not told.starts("delete") or any(piece.kind in (K.TIMES, K.EFFORT) for piece in told.pieces):
        return None
    part = part_told(told.pieces, told.context, told.catalogue)
    if part is None or not (part.named or part.places or part.last):
        return None
    if len(told.numbers()) > (1 if part.places or part.last else 0):
        return None
    reached = part.places or (group_of(part, told.context)[-1:] if part.last else sets_of(part, told.context))
    return Correction(removed=tuple(reached)) if reached else None


def _moved(told: Told, slipped: bool) -> Correction | None:
    days = [piece.day for piece in told.pieces if piece.kind is K.DATE and piece.day is not None]
    if len(days) != 1 or told.numbers():
        return None
    if told.context.now is not None and days[0] > told.context.now.date():
        return None
    cued = told.starts("move") or told.starts("be") or told.starts("make") or slipped or told.has("be") or told.has("move")
    if not cued or told.has("others"):
        return None
    part = part_told(told.pieces, told.context, told.catalogue) or Part()
    moved = sets_of(part, told.context) if part.named else _last_message(told.context)
    return Correction(moved=tuple(moved), moved_to=days[0]) if moved else None


def _last_message(context: Context) -> list[SetRecord]:
    last = context.recent[-1]
    return [record for record in context.recent if record.message == last.message] if last.message else [last]


def _not_that(told: Told, slipped: bool) -> Correction | None:
    """ "82.5 not 80", "not 80 but 82.5"."""
    place = next((at for at, piece in enumerate(told.pieces) if piece.kind is K.NOT), None)
    numbers = told.numbers()
    if place is None or len(numbers) != 2 or any(piece.kind is K.TIMES for piece in told.pieces):
        return None
    behind = [piece for piece in told.pieces[place:] if piece.kind is K.NUMBER]
    if not behind:
        return None
    old = behind[0]
    new = next(number for number in numbers if number is not old)
    if Role.SETS in (new.role, old.role):
        return _of_count(told, int(new.value))
    part = part_told([piece for piece in told.pieces if piece.kind is not K.NUMBER], told.context, told.catalogue) or Part()
    reached = part.places or (sets_of(part, told.context) if part.named else _last_message(told.context))
    return _replaced(told, reached, new, old) or _replaced(told, sets_of(Part(), told.context), new, old)


def _replaced(told: Told, reached: Sequence[SetRecord], new: Piece, old: Piece) -> Correction | None:
    loads = [one for one in reached if one.done.load is not None and abs(one.done.load.amount) == old.value and one.done.load.amount]
    reps = [one for one in reached if one.done.reps == old.value and one.done.seconds is None and one.done.metres is None]
    typed_load = Role.LOAD in (new.role, old.role) or new.value != int(new.value)
    if loads and (typed_load or not reps):
        for record in loads:
            told.set_to(record, _with_load(record.done, new))
    elif reps and not typed_load:
        for record in reps:
            told.set_to(record, replace(record.done, reps=int(new.value)))
    else:
        for record in reached:
            _replace_rare(told, record, new, old)
    return told.correction()


def _replace_rare(told: Told, record: SetRecord, new: Piece, old: Piece) -> None:
    done = record.done
    if done.seconds == old.value:
        told.set_to(record, replace(done, seconds=new.value))
    elif done.metres == old.value:
        told.set_to(record, replace(done, metres=new.value))
    elif done.effort is not None and old.value in (done.effort.rpe, done.effort.rir) and new.value <= 10:
        rir = 10 - new.value if done.effort.as_rpe else new.value
        told.set_to(record, replace(done, effort=replace(done.effort, rir=rir)))


def _with_load(done: SetDone, new: Piece) -> SetDone:
    old = done.load
    unit = new.unit or (old.unit if old else Unit.KG)
    sign = -1 if old is not None and old.amount < 0 < new.value else 1
    basis = old.basis if old else Basis.TOTAL
    return replace(done, load=Load(sign * new.value, unit, basis))


def _counted(told: Told, slipped: bool) -> Correction | None:
    """ "only did 3", "leg press was only 2 sets", "it was 4 sets"."""
    numbers = told.numbers()
    if len(numbers) != 1 or any(piece.kind in (K.TIMES, K.AT, K.LAST, K.FIRST, K.ORDINAL, K.ANOTHER) for piece in told.pieces):
        return None
    number = numbers[0]
    only = told.has("only")
    cued = only or slipped or told.starts("be") or told.starts("make") or told.has("mean") or told.has("be")
    if not cued or number.value != int(number.value) or number.value < 1:
        return None
    part = part_told([p for p in told.pieces if p.kind is not K.NUMBER], told.context, told.catalogue) or Part()
    group = _counted_group(part, told.context)
    if number.role is Role.SETS:
        return _of_count(told, int(number.value))
    if only and number.role is Role.BARE and len(group) > 1 and number.value < len(group):
        return _of_count(told, int(number.value))
    return None


def _counted_group(part: Part, context: Context) -> list[SetRecord]:
    if part.named:
        return group_of(part, context)
    last = context.recent[-1]
    return [record for record in _last_message(context) if record.done.exercise == last.done.exercise]


def _of_count(told: Told, count: int) -> Correction | None:
    part = part_told([p for p in told.pieces if p.kind is not K.NUMBER], told.context, told.catalogue) or Part()
    group = _counted_group(part, told.context)
    if not group or not 1 <= count <= 20:
        return None
    if count < len(group):
        return Correction(removed=tuple(group[count:]))
    if count > len(group):
        return Correction(added=(group[-1].done,) * (count - len(group)))
    return None


def _new_unit(told: Told, slipped: bool) -> Correction | None:
    """ "lbs not kg", "that was in pounds": the numbers stay."""
    units = [piece.kind for piece in told.pieces if piece.kind in UNITS]
    if not units or told.numbers() or len(told.words) > 8:
        return None
    alone = len(told.pieces) == 1
    turned = any(piece.kind is K.NOT for piece in told.pieces)
    if not (alone or turned or slipped or told.has("be") or told.has("mean") or told.starts("make")):
        return None
    place = next((at for at, piece in enumerate(told.pieces) if piece.kind is K.NOT), -1)
    kept = [piece.kind for at, piece in enumerate(told.pieces) if piece.kind in UNITS and not (0 <= place < at)]
    unit = UNITS[kept[0]] if kept else next(one for kind, one in UNITS.items() if kind is not units[0])
    part = part_told(told.pieces, told.context, told.catalogue) or Part()
    for record in sets_of(part, told.context) if part.named else _last_message(told.context):
        if record.done.load is not None:
            told.set_to(record, replace(record.done, load=replace(record.done.load, unit=unit)))
    return told.correction()


MARKS = (K.EFFORT, K.FAILURE, K.WARMUP, K.MISS, K.DROP)


def _marked(told: Told, slipped: bool) -> Correction | None:
    """Effort, failure, a warm-up or a miss told later, and no new numbers with it."""
    marks = [piece for piece in told.pieces if piece.kind in MARKS]
    part = part_told(told.pieces, told.context, told.catalogue) or Part()
    if len(marks) != 1 or any(p.kind in (K.TIMES, K.QUESTION, K.FUTURE, K.TOMORROW, K.ASKS) for p in told.pieces):
        return None
    if told.has("others") or len(told.numbers()) > part.used_numbers or not _only_marks(told.pieces):
        return None
    mark = marks[0]
    for record in _marked_sets(told, part, mark):
        told.set_to(record, _with_mark(record.done, mark))
    return told.correction()


def _only_marks(pieces: Sequence[Piece]) -> bool:
    return all(piece.kind in ABOUT_MARKS for piece in pieces)


ABOUT_MARKS = frozenset(
    (*MARKS, K.FILLER, K.NUMBER, K.LAST, K.FIRST, K.SETS, K.ORDINAL, K.NAME, K.STOP, K.COMMA, K.OF, K.REPS, K.NOTE, K.BOTH, K.AND,
     K.COLON, K.GOT, K.DASH, K.COUNT, K.ONLY, K.WITH, K.RESERVE_LEFT, K.WORKING)
)  # fmt: skip


def _marked_sets(told: Told, part: Part, mark: Piece) -> list[SetRecord]:
    if part.places:
        return part.places
    group = group_of(part, told.context) if part.named else _last_message(told.context)
    if part.last or mark.kind in (K.FAILURE, K.MISS):
        return group[-1:]
    return group


def _with_mark(done: SetDone, mark: Piece) -> SetDone:
    if mark.kind is K.EFFORT:
        return replace(done, effort=mark.efforts[0])
    if mark.kind is K.FAILURE:
        return replace(done, failure=True)
    if mark.kind is K.MISS:
        return replace(done, missed=True)
    return replace(done, kind=SetKind.DROP if mark.kind is K.DROP else SetKind.WARMUP)


def _new_exercise(told: Told, slipped: bool) -> Correction | None:
    """ "that was incline", "i meant front squat", "it was dumbbells": the numbers stay."""
    if told.numbers() or any(piece.kind in (K.QUESTION, K.ASKS, K.FUTURE, K.TOMORROW) for piece in told.pieces):
        return None
    cued = slipped or told.starts("be") or told.has("mean") or told.starts("make") or _named_twice(told)
    if not cued or told.has("others"):
        return None
    new = renamed(told.pieces, _last_message(told.context)[-1].done.exercise, told.context, told.catalogue)
    if new is None:
        return None
    basis = new.basis
    for record in _last_message(told.context):
        if record.done.exercise == told.context.recent[-1].done.exercise:
            load = record.done.load
            moved = None if load is None else replace(load, basis=basis) if load.amount >= 0 else load
            told.set_to(record, replace(record.done, exercise=new.exercise, load=moved))
    return told.correction()


def _named_twice(told: Told) -> bool:
    """ "front squat not squat"."""
    kinds = [piece.kind for piece in told.pieces]
    return K.NOT in kinds and K.NAME in kinds


def _new_values(told: Told, slipped: bool) -> Correction | None:
    """A new number for the latest set, for a part, or for each of several parts."""
    if any(piece.kind in (K.QUESTION, K.ASKS, K.FUTURE, K.TOMORROW, K.ANOTHER, K.SAME, K.MORE) for piece in told.pieces):
        return None
    if told.has("others") or any(piece.role is Role.CHANGE for piece in told.numbers()):
        return None
    make, be, mean = told.starts("make"), told.has("be"), told.has("mean")
    everything = _all_told(told)
    if not (slipped or make or be or mean or everything) or not told.numbers():
        return None
    for clause in _split(told.pieces):
        if any(piece.kind is K.NUMBER for piece in clause) and not _apply(told, clause, slipped or bool(make) or mean, everything):
            return None
    return told.correction()


ALL_WORDS = frozenset(("all", "alle", "todas", "todos", "toutes", "tous", "tutte", "tutti", "все", "alla", "wszystkie", "each", "every", "them"))


def _all_told(told: Told) -> bool:
    return told.words[0] in ALL_WORDS if told.words else False


def _split(pieces: Sequence[Piece]) -> list[list[Piece]]:
    """The parts of "first two were 70, last at 65"."""
    out: list[list[Piece]] = [[]]
    for at, piece in enumerate(pieces):
        behind = pieces[at + 1 :]
        if piece.kind in (K.COMMA, K.AND, K.STOP) and any(p.kind is K.NUMBER for p in out[-1]) and any(p.kind is K.NUMBER for p in behind):
            out.append([])
        else:
            out[-1].append(piece)
    return out


def _apply(told: Told, clause: list[Piece], cued: bool, everything: bool) -> bool:
    part = part_told(clause, told.context, told.catalogue) or Part()
    if part.named_unknown:
        return False
    numbers = [piece for piece in clause if piece.kind is K.NUMBER and piece not in part.number_pieces]
    if part.named and not part.known_today:
        return False
    if any(piece.kind is K.TIMES for piece in clause):
        return _apply_pair(told, part, numbers) if cued and len(numbers) == 2 else False
    if len(numbers) != 1:
        return False
    return _apply_one(told, clause, part, numbers[0], everything)


def _apply_pair(told: Told, part: Part, numbers: list[Piece]) -> bool:
    """ "no, 82.5x4": the load and the reps of the latest set."""
    load, reps = numbers
    if reps.value != int(reps.value) or not 0 < reps.value <= 100 or load.value <= 10 and load.role is not Role.LOAD:
        return False
    reached = part.places or group_of(part, told.context)[-1:]
    for record in reached:
        told.set_to(record, replace(_with_load(record.done, load), reps=int(reps.value)))
    return bool(reached)


def _apply_one(told: Told, clause: list[Piece], part: Part, number: Piece, everything: bool) -> bool:
    linked = any(piece.kind in (K.AT, K.WITH) for piece in clause)
    group = part.places or (group_of(part, told.context) if part.named else _last_message(told.context))
    latest = told.context.recent[-1].done.exercise
    group = [record for record in group if part.places or part.named or record.done.exercise == latest]
    if not group:
        return False
    if _is_load(number, linked, group[-1].done):
        whole = group if not part.last else group_of(part, told.context)[-1:]
        for record in whole:
            told.set_to(record, _with_load(record.done, number))
        return True
    return _apply_reps(told, part, number, group, everything)


def _is_load(number: Piece, linked: bool, done: SetDone) -> bool:
    if number.role in (Role.REPS, Role.SECONDS, Role.METRES, Role.SETS):
        return False
    fits_reps = number.value == int(number.value) and 0 < number.value <= MOST_LOADED_REPS
    body = done.load is not None and done.load.basis is Basis.BODY and done.load.amount == 0
    if body and number.role is Role.BARE and not linked:
        return False
    return number.role is Role.LOAD or linked or not fits_reps


def _apply_reps(told: Told, part: Part, number: Piece, group: list[SetRecord], everything: bool) -> bool:
    if number.value != int(number.value) or number.value < 1 or number.role is Role.SETS:
        return False
    several = everything or any(word in ("those", "they", "these", "all", "each") for word in told.words)
    whole = part.places or (group if several else (group_of(part, told.context) if part.named else group)[-1:])
    for record in whole:
        told.set_to(record, _with_amount(record.done, number))
    return True


def _with_amount(done: SetDone, number: Piece) -> SetDone:
    if done.seconds is not None or number.role is Role.SECONDS:
        return replace(done, seconds=Decimal(number.value))
    if done.metres is not None:
        return replace(done, metres=Decimal(number.value))
    return replace(done, reps=int(number.value))


def is_correcting(prepared: Prepared, context: Context) -> bool:
    """Whether the message begins or ends as a correction does, so that its numbers are no new sets."""
    if not context.recent or "\n" in prepared.cleaned.strip():
        return False
    book = phrasebook()
    words = [word for word, _ in spoken_words(prepared.tokens)]
    if not words or len(words) > MOST_WORDS:
        return False
    pieces = [piece for piece in prepared.pieces if piece.kind is not K.FILLER]
    turned = any(piece.kind is K.NOT for piece in pieces) and sum(1 for piece in pieces if piece.kind is K.NUMBER) >= 2
    head = _mended(words, prepared.spoken, book)
    slip = any(" ".join(head[:length]) in book.cues["slip"] for length in (1, 2, 3))
    short = not any(piece.kind is K.NAME for piece in pieces) and len(pieces) <= 4
    meant = any(" ".join(head[at : at + 2]) in book.cues["mean"] for at in range(len(head)))
    return turned or meant or (slip and short and bool(pieces) and any(piece.kind is K.NUMBER for piece in pieces))

