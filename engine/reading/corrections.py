"""Corrections in words: what they change among the sets that stand.

correction = slip value | value "i mean" | new "not" old | part "was" value | "make" part value | "only" NUMBER
           | "delete" part | "move it to" day | part effort | "that was" ( name | equipment | unit )
part       = "last" | "first" [ NUMBER ] | "set" NUMBER | "second set" | name | "all"

Rules: "X not Y" changes the sets that have Y; a bare number is the reps of the latest set, one with a unit, or that
only
fits a load, the load of its group; parts count within the exercise of the latest message, or the one named. Nothing is
added but sets of a larger count. What cannot be worked out changes nothing.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from engine.catalogue.catalogue import Catalogue
from engine.reading.correct_marks import marked_later
from engine.reading.correct_values import new_values
from engine.reading.correcting import MOST_WORDS, UNITS, Told, last_message, with_load
from engine.reading.kinds import K
from engine.reading.parts import Part, group_of, part_told, sets_of
from engine.reading.phrasebook import Phrasebook, phrasebook, spoken_words
from engine.reading.pieces import Piece, Role
from engine.reading.prepare import Prepared
from engine.reading.renaming import renamed
from engine.reading.values import Context, Correction
from engine.values.sets import SetRecord


def correction_of(prepared: Prepared, context: Context, catalogue: Catalogue) -> Correction | None:
    """The change asked for, worked out on the sets that stand; None where the message asks for none that can be
    told.
    """
    if not context.recent or "\n" in prepared.cleaned.strip():
        return None
    book = phrasebook()
    words = [word for word, _ in spoken_words(prepared.tokens)]
    if not words or len(words) > MOST_WORDS:
        return None
    told = Told(mended_words(words, prepared.spoken, book), prepared.pieces, prepared.spoken, context, catalogue, book)
    slips = 0
    while told.starts("slip") and slips < 3:
        del told.words[: told.starts("slip")]
        slips += 1
    for way in (_deleted, _moved, _not_that, _counted, _new_unit, marked_later, _new_exercise, new_values):
        try:
            found = way(told, slips > 0)
        except ValueError:  # a set or a load that cannot be: nothing is changed
            return None
        if found is not None:
            return found
    return None


def mended_words(words: list[str], pieces: Sequence[Piece], book: Phrasebook) -> list[str]:
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
    cued = (
        told.starts("move") or told.starts("be") or told.starts("make") or slipped or told.has("be") or told.has("move")
    )
    if not cued or told.has("others"):
        return None
    part = part_told(told.pieces, told.context, told.catalogue) or Part()
    moved = sets_of(part, told.context) if part.named else last_message(told.context)
    return Correction(moved=tuple(moved), moved_to=days[0]) if moved else None


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
    part = (
        part_told([piece for piece in told.pieces if piece.kind is not K.NUMBER], told.context, told.catalogue)
        or Part()
    )
    reached = part.places or (sets_of(part, told.context) if part.named else last_message(told.context))
    return _replaced(told, reached, new, old) or _replaced(told, sets_of(Part(), told.context), new, old)


def _replaced(told: Told, reached: Sequence[SetRecord], new: Piece, old: Piece) -> Correction | None:
    loads = [
        one
        for one in reached
        if one.done.load is not None and abs(one.done.load.amount) == old.value and one.done.load.amount
    ]
    reps = [
        one for one in reached if one.done.reps == old.value and one.done.seconds is None and one.done.metres is None
    ]
    typed_load = Role.LOAD in (new.role, old.role) or new.value != int(new.value)
    if loads and (typed_load or not reps):
        for record in loads:
            told.set_to(record, with_load(record.done, new))
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


def _counted(told: Told, slipped: bool) -> Correction | None:
    """ "only did 3", "leg press was only 2 sets", "it was 4 sets"."""
    numbers = told.numbers()
    if len(numbers) != 1 or any(
        piece.kind in (K.TIMES, K.AT, K.LAST, K.FIRST, K.ORDINAL, K.ANOTHER) for piece in told.pieces
    ):
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
    return [record for record in last_message(context) if record.done.exercise == last.done.exercise]


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
    for record in sets_of(part, told.context) if part.named else last_message(told.context):
        if record.done.load is not None:
            told.set_to(record, replace(record.done, load=replace(record.done.load, unit=unit)))
    return told.correction()


def _new_exercise(told: Told, slipped: bool) -> Correction | None:
    """ "that was incline", "i meant front squat", "it was dumbbells": the numbers stay."""
    if told.numbers() or any(piece.kind in (K.QUESTION, K.ASKS, K.FUTURE, K.TOMORROW) for piece in told.pieces):
        return None
    cued = slipped or told.starts("be") or told.has("mean") or told.starts("make") or _named_twice(told)
    if not cued or told.has("others"):
        return None
    new = renamed(told.pieces, last_message(told.context)[-1].done.exercise, told.context, told.catalogue)
    if new is None:
        return None
    basis = new.basis
    for record in last_message(told.context):
        if record.done.exercise == told.context.recent[-1].done.exercise:
            load = record.done.load
            moved = None if load is None else replace(load, basis=basis) if load.amount >= 0 else load
            told.set_to(record, replace(record.done, exercise=new.exercise, load=moved))
    return told.correction()


def _named_twice(told: Told) -> bool:
    """ "front squat not squat"."""
    kinds = [piece.kind for piece in told.pieces]
    return K.NOT in kinds and K.NAME in kinds


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
    head = mended_words(words, prepared.spoken, book)
    slip = any(" ".join(head[:length]) in book.cues["slip"] for length in (1, 2, 3))
    short = not any(piece.kind is K.NAME for piece in pieces) and len(pieces) <= 4
    meant = any(" ".join(head[at : at + 2]) in book.cues["mean"] for at in range(len(head)))
    return turned or meant or (slip and short and bool(pieces) and any(piece.kind is K.NUMBER for piece in pieces))
