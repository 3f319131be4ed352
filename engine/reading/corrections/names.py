"""Another exercise, another unit, or reps and load the other way round, for sets that stand."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from engine.reading.corrections.correcting import Told
from engine.reading.corrections.parts import Part, part_told, sets_of
from engine.reading.corrections.renaming import NewName, renamed
from engine.reading.corrections.restated import sets_read
from engine.reading.corrections.said_to_be import is_be
from engine.reading.corrections.whole_names import is_all_it_was, without_denied
from engine.reading.entries.names import EQUIPMENT
from engine.reading.latest_sets import latest_of_it, run_of_it, two_latest
from engine.reading.values import Correction
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece
from engine.values.ids import ExerciseName
from engine.values.load import Basis, Load
from engine.values.sets import SetDone, SetRecord

MOST_SWAPPED_REPS = 30
MOST_PLAIN = 2
NEWLY_NAMED = frozenset((K.NAME, K.VARIANT, *EQUIPMENT))
ABOUT_NAMES = NEWLY_NAMED | frozenset(
    (K.FILLER, K.NOT, K.LAST, K.FIRST, K.MIDDLE, K.FROM_LAST, K.ORDINAL, K.BOTH, K.SETS, K.NOTE, K.AND, K.COMMA,
     K.STOP, K.PLAIN, K.PAUSE, K.WITH, K.OF, K.HEADING, K.ONLY, K.FOR, K.DENY, K.NUMBER, K.OTHERS, K.DASH, K.ARROW)
)  # fmt: skip


def new_exercise(told: Told) -> Correction | None:
    """ "that was incline", "i meant front squat", "the leg press was hack squat": the numbers stay."""
    if not _names_anew(told):
        return None
    part = part_told(told.pieces, told.context)
    if part.missing or any(number not in part.used for number in told.numbers()):
        return None
    named = _old_name(told)
    old = named or told.context.recent[-1].done.exercise
    told_anew = [p for p in without_denied(_asserted(told), old) if p.kind is not K.NOT]
    rest = [p for p in told_anew if not (named and p.kind is K.NAME and named in p.names)]
    if not is_all_it_was(told, [p for p in rest if p.kind in NEWLY_NAMED and old not in p.names]):
        return None
    new = renamed(rest, old, told.context, told.catalogue)
    if new is None:
        return None
    for record in _meant(told, part, named):
        if record.done.exercise == old:
            told.set_to(record, with_name(told.now(record), new))
    return told.correction()


def _names_anew(told: Told) -> bool:
    kinds = set(told.kinds()) - ({K.JOINT} if _is_another_sort(told) else set())
    if not kinds & (NEWLY_NAMED | {K.PLAIN, K.NOTE, K.PAUSE}) or not kinds <= ABOUT_NAMES | {K.FUTURE, K.ASKS, K.NEVER}:
        return False
    verbs = [piece for piece in told.pieces if is_be(piece)]
    if any(p.kind in (K.FUTURE, K.ASKS, K.NEVER) and p not in verbs for p in told.pieces) or told.of_others():
        return False
    if told.pieces[0].kind is K.ASKS or told.unknown() > MOST_PLAIN:
        return False
    turned = K.NOT in kinds and (K.NAME in kinds or len(kinds.intersection(EQUIPMENT)) > 1 or _is_another_sort(told))
    return (
        _is_held(told)
        or told.slipped
        or told.has("mean")
        or told.starts("make") > 0
        or turned
        or _says_what_it_was(told)
    )


def _is_another_sort(told: Told) -> bool:
    """ "front not back": a sort of the lift, and the sort that it was not."""
    kinds = [piece.kind for piece in told.pieces if piece.kind not in (K.COMMA, K.FILLER)]
    return len(kinds) == len((K.VARIANT, K.NOT, K.JOINT)) and kinds[1] is K.NOT and {kinds[0], kinds[2]} <= SORTS


SORTS = frozenset((K.VARIANT, K.JOINT))
"""A back squat is named by a part of the body."""


def _asserted(told: Told) -> list[Piece]:
    """The pieces without equipment that is denied: "dumbbells, not barbell"."""
    at = next((at for at, piece in enumerate(told.pieces) if piece.kind is K.NOT), len(told.pieces))
    denied = next((piece for piece in told.pieces[at:] if piece.kind in EQUIPMENT), None)
    return [piece for piece in told.pieces if piece is not denied]


def _is_held(told: Told) -> bool:
    """ "with dumbbells", and no more: how the sets before were done."""
    kinds = [piece.kind for piece in told.pieces if piece.kind not in (K.STOP, K.FILLER)]
    return kinds[:1] == [K.WITH] and len(kinds) == 2 and kinds[1] in EQUIPMENT


def _says_what_it_was(told: Told) -> bool:
    """Whether another lift is told behind "was": "the rack was taken" tells none."""
    verb = next((at for at, piece in enumerate(told.pieces) if is_be(piece)), None)
    if verb is None:
        return False
    named = any(piece.kind in NEWLY_NAMED for piece in told.pieces[verb:])
    plain = any(piece.kind is K.PLAIN for piece in told.pieces)
    return (named and not plain) or (plain and not any(piece.kind in NEWLY_NAMED for piece in told.pieces))


def _old_name(told: Told) -> ExerciseName | None:
    """The name that was wrong: the one done, in front of "was" or behind "not", where another is told too."""
    done = {record.done.exercise for record in told.context.recent}
    named = [(at, p) for at, p in enumerate(told.pieces) if p.kind is K.NAME]
    place = next((at for at, p in enumerate(told.pieces) if p.kind is K.NOT), None)
    ordered = sorted(named, key=lambda one: place is not None and one[0] < place)
    for _, piece in ordered:
        told_too = any(p.kind in NEWLY_NAMED | {K.PAUSE, K.NOTE, K.PLAIN} and p is not piece for p in told.pieces)
        if told_too and (chosen := _latest_done(piece, told, done)) is not None:
            return chosen
    return None


def _latest_done(piece: Piece, told: Told, done: set[ExerciseName]) -> ExerciseName | None:
    found = [record.done.exercise for record in reversed(told.context.recent)]
    return next((name for name in found if name in piece.names and name in done), None)


def _meant(told: Told, part: Part, named: ExerciseName | None) -> Sequence[SetRecord]:
    if part.places:
        return part.places
    if named is not None:
        return sets_of(Part(named=named), told.context)
    if part.both:
        return two_latest(told.context)
    return run_of_it(told.context)


def with_name(done: SetDone, new: NewName) -> SetDone:
    """The same set under another name; its load on the basis of the new lift, and none where the body was all."""
    load = done.load
    if load is not None and load.basis is Basis.BODY and load.amount == 0 and new.basis is not Basis.BODY:
        load = None
    moved = None if load is None else replace(load, basis=new.basis) if load.amount >= 0 else load
    return replace(done, exercise=new.exercise, load=moved)


def renamed_and_restated(told: Told) -> Correction | None:
    """ "i meant front squat 100x5": name and numbers of the latest message; behind a mere "no" only where its numbers
    are told once more.
    """
    meant = told.has("mean") or told.starts("make") or told.starts("be")
    if not (meant or told.slipped) or K.TIMES not in told.kinds():
        return None
    part = part_told(told.pieces, told.context)
    latest = latest_of_it(told.context)
    names = [piece for piece in told.pieces if piece.kind is K.NAME]
    if not part.named_unknown or len(names) != 1 or told.kinds() & {K.QUESTION, K.FUTURE, K.TOMORROW, K.NOT}:
        return None
    new = renamed(told.pieces, latest[0].done.exercise, told.context, told.catalogue)
    sets = sets_read(told.pieces, new.exercise, told.context, told.catalogue) if new else ()
    if new is None or len(sets) != len(latest):
        return None
    if not meant and not all(_are_alike(record.done, done) for record, done in zip(latest, sets, strict=True)):
        return None
    for record, done in zip(latest, sets, strict=True):
        told.set_to(record, replace(done, load=done.load or with_name(record.done, new).load))
    return told.correction()


def _are_alike(old: SetDone, new: SetDone) -> bool:
    """Whether the reps and the load are the same, or the new load was not told."""
    loads = old.load is None or new.load is None or (old.load.amount, old.load.unit) == (new.load.amount, new.load.unit)
    return loads and (old.reps, old.seconds, old.metres) == (new.reps, new.seconds, new.metres)


def swapped(told: Told) -> Correction | None:
    """ "other way round": reps and load, or sets and reps, changed places."""
    if not told.has("swapped") or told.numbers() or K.QUESTION in told.kinds():
        return None
    part = part_told([piece for piece in told.pieces if piece.kind in (K.NAME, K.LAST, K.FIRST)], told.context)
    group = part.reached(told.context, told.plural)
    turned = [_turned(record.done) for record in group]
    if all(one is not None for one in turned):
        for record, one in zip(group, turned, strict=True):
            told.set_to(record, one or record.done)
        return told.correction()
    return _counts_turned(told, group)


def _turned(done: SetDone) -> SetDone | None:
    load = done.load
    if load is None or load.basis is Basis.BODY or load.amount != int(load.amount):
        return None
    if not 0 < load.amount <= MOST_SWAPPED_REPS or done.reps < 1:
        return None
    return replace(done, reps=int(load.amount), load=Load(done.reps + load.amount * 0, load.unit, load.basis))


def _counts_turned(told: Told, group: Sequence[SetRecord]) -> Correction | None:
    """ "3x5" that was 5x3."""
    reps = {record.done.reps for record in group}
    if len(reps) != 1 or len(group) < 2 or not 1 <= (count := reps.pop()) <= 20:
        return None
    done = [replace(record.done, reps=len(group)) for record in group]
    for record, one in zip(group[:count], done, strict=False):
        told.set_to(record, one)
    told.removed += group[count:]
    told.added += [done[0]] * max(0, count - len(group))
    return told.correction()
