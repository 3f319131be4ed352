"""The old number beside the new one: "82.5 not 80", "not 80 but 82.5", "4x6 not 3x6", "change 80 to 82.5"."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from engine.reading.corrections.correcting import UNITS, Told
from engine.reading.corrections.counts import group_of, set_count
from engine.reading.corrections.names import new_exercise
from engine.reading.corrections.parts import Part, sets_of
from engine.reading.corrections.restated import become, sets_read
from engine.reading.latest_sets import last_message, latest_of_it, run_of_it
from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, Piece, Role, kinds_of
from engine.values.effort import TOP_OF_SCALE
from engine.values.load import Basis, Unit
from engine.values.sets import SetDone, SetRecord

LINKS = frozenset((K.FOR, K.WITH, K.BY))
PARTING = frozenset((K.AND, K.COMMA, K.AT, K.WITH))
PAIR_AND_ANOTHER = 3
LEADS_OVER = LINKS | {K.ARROW, K.FILLER, K.KG, K.LB, K.REPS, K.PLAIN, K.DASH}


def old_and_new(told: Told, clause: Sequence[Piece], part: Part, numbers: Sequence[Piece]) -> bool:
    """Whether the sets that had the old values have the new ones."""
    place = next(at for at, piece in enumerate(clause) if piece.kind is K.NOT)
    behind = [piece for piece in clause[place:] if piece in numbers]
    units = [UNITS[piece.kind] for piece in clause if piece.kind in UNITS]
    if not behind or any(unit is not _unit_of_the_latest(told) for unit in units):  # "7 not 8 in pounds"
        return False
    if _names_both(clause[:place], clause[place:]):
        return _renamed_too(told, clause, place, numbers)
    return _numbers_changed(told, clause, place, part, numbers)


def _unit_of_the_latest(told: Told) -> Unit:
    load = told.context.recent[-1].done.load
    return load.unit if load is not None else told.context.unit


def _names_both(ahead: Sequence[Piece], behind: Sequence[Piece]) -> bool:
    """ "squat 100 not bench 80": a lift with what it was, and another with what it was not."""
    new, old = ([piece for piece in side if piece.kind is K.NAME] for side in (ahead, behind))
    return len(new) == len(old) == 1 and set(new[0].names).isdisjoint(old[0].names)


def _renamed_too(told: Told, clause: Sequence[Piece], place: int, numbers: Sequence[Piece]) -> bool:
    """Whether all the sets that have the other lift's name now had the old numbers, too."""
    names = [piece for piece in clause if piece.kind is K.NAME or piece is clause[place]]
    before = set(told.changes)
    if new_exercise(replace(told, pieces=names)) is None:
        return False
    renamed = [record for record, _ in told.changes.values() if record.id not in before]
    name = {record.id: told.now(record).exercise for record in renamed}
    bare = [piece for piece in clause if piece not in names or piece is clause[place]]
    if not _numbers_changed(told, bare, bare.index(clause[place]), Part(places=renamed), numbers):
        return False
    for record in renamed:
        told.set_to(record, replace(told.now(record), exercise=name[record.id]))
    kept = [(record.done.reps, record.done.load) for record in renamed]
    now = [(done.reps, done.load) for done in map(told.now, renamed)]
    return bool(renamed) and all(was != is_now for was, is_now in zip(kept, now, strict=True))


def _numbers_changed(told: Told, clause: Sequence[Piece], place: int, part: Part, numbers: Sequence[Piece]) -> bool:
    """Whether the sets that had the old numbers have the new ones."""
    behind = [piece for piece in clause[place:] if piece in numbers]
    ahead = [piece for piece in numbers if piece not in behind]
    if len(behind) == 1 and _tells_the_group_again(told, clause[:place], ahead[:-1], part):
        return change(told, part, ahead[-1], behind[0])
    if (other := _tells_another(clause, ahead, behind)) is not None:
        return change(told, part, ahead[-1], behind[0]) and _changed_with_another(told, clause, other)
    if any(piece.kind is K.TIMES for piece in clause) or len(numbers) != 2:
        return bool(ahead) and _sets_for_sets(told, clause[:place], clause[place:], part)
    old = behind[0]
    return change(told, part, next(number for number in numbers if number is not old), old)


def _tells_another(clause: Sequence[Piece], ahead: Sequence[Piece], behind: Sequence[Piece]) -> Piece | None:
    """The number beside an old and a new one that is parted from them: "7 not 8 and 85 kg", "7 reps and 85 not 80"."""
    if len(ahead) + len(behind) != PAIR_AND_ANOTHER or not ahead or K.TIMES in kinds_of(clause):
        return None
    other = (ahead[:-1] or behind[1:])[0]
    parting = clause[clause.index(other if other in behind else ahead[-1]) - 1]
    parted = parting.kind in PARTING or "andword" in CUES_OF[parting.text]
    return other if parted else None


def _changed_with_another(told: Told, clause: Sequence[Piece], other: Piece) -> bool:
    """Whether the other number is clear as one of the changed sets: from its unit, its word or its size."""
    changed = [record for record, done in told.changes.values() if record.done != done]
    before = clause[clause.index(other) - 1] if other is not clause[0] else None
    linked = before is not None and before.kind in (K.AT, K.WITH)
    if all(told.now(record).load != record.done.load for record in changed):
        for record in changed if other.role is Role.REPS and other.value >= 1 else ():
            told.set_to(record, replace(told.now(record), reps=int(other.value)))
        return bool(changed) and other.role is Role.REPS and other.value >= 1 and other.value % 1 == 0
    if not (other.role is Role.LOAD or ((linked or other.value > MOST_LOADED_REPS) and other.role is Role.BARE)):
        return False
    for record in changed:
        told.set_to(record, told.at_load(told.now(record), other))
    return True


def _tells_the_group_again(told: Told, ahead: Sequence[Piece], pair: Sequence[Piece], part: Part) -> bool:
    """ "bench 3x5 82.5 not 80" behind 3x5 at 80: the sets and reps that stand, and a new load behind them."""
    if len(pair) != 2 or [piece.kind for piece in ahead].count(K.TIMES) != 1:
        return False
    group = group_of(told, part)
    crossed = ahead[ahead.index(pair[0]) + 1].kind is K.TIMES
    return crossed and pair[0].value == len(group) and all(record.done.reps == pair[1].value for record in group)


def from_to(told: Told, clause: Sequence[Piece], part: Part, numbers: Sequence[Piece]) -> bool:
    """ "change 80 to 82.5", "80 -> 82.5"."""
    bare = [piece.kind for piece in clause] == [K.NUMBER, K.ARROW, K.NUMBER]
    swaps = "swapping" in CUES_OF[told.pieces[0].text]
    if len(numbers) != 2 or not (told.starts("make") or told.slipped or bare or swaps):
        return False
    first, last = (clause.index(number) for number in numbers)
    between = clause[first + 1 : last]
    if not any(
        piece.kind is K.ARROW or "into" in CUES_OF[piece.text] or (swaps and piece.kind in LINKS) for piece in between
    ):
        return False
    return all(piece.kind in LEADS_OVER for piece in between) and change(told, part, numbers[1], numbers[0])


def change(told: Told, part: Part, new: Piece, old: Piece) -> bool:
    """Whether any of the sets reached had the old number."""
    if Role.SETS in (new.role, old.role):
        return set_count(told, part, int(new.value))
    if any(_replaced(told, reached, new, old) for reached in _reaches(told, part)):
        return True
    if not part.points and _replaced(told, _with_the_load(told, old), new, old):
        return True
    return _counts_sets(told, part, new, old) and set_count(told, part, int(new.value))


def _counts_sets(told: Told, part: Part, new: Piece, old: Piece) -> bool:
    """ "did 4 of those, not 3": no set has the old number, and there are so many of them."""
    bare = all(number.role is Role.BARE and number.value == int(number.value) for number in (new, old))
    return bare and not part.places and not part.named_unknown and len(group_of(told, part)) == old.value


def _reaches(told: Told, part: Part) -> Iterator[list[SetRecord]]:
    """Where the old number is looked for: the part meant; or the latest message, then all sets of its exercise."""
    if part.places:
        yield part.places
        return
    if part.named:
        yield sets_of(part, told.context)
        return
    if part.named_unknown:
        return
    yield (
        run_of_it(told.context) if told.plural and len(last_message(told.context)) == 1 else last_message(told.context)
    )
    yield sets_of(Part(), told.context)


def _with_the_load(told: Told, old: Piece) -> list[SetRecord]:
    """The sets of the day that were told with the old number as their load; reps are common to many lifts, so that
    those of a lift further back change only where it is named.
    """
    day = told.context.recent[-1].on
    on_it = [record for record in told.context.recent if record.on == day and record.done.load is not None]
    loaded = [record for record in on_it if record.done.load and record.done.load.amount == old.value]
    return [] if any(record.done.reps == old.value for record in loaded) else loaded


def _replaced(told: Told, reached: Sequence[SetRecord], new: Piece, old: Piece) -> bool:
    loads = [r for r in reached if r.done.load is not None and abs(r.done.load.amount) == old.value != 0]
    reps = [r for r in reached if r.done.reps == old.value and r.done.seconds is None and r.done.metres is None]
    typed_load = Role.LOAD in (new.role, old.role) or new.value != int(new.value) or old.value != int(old.value)
    typed_load = typed_load or (bool(loads) and new.role is old.role is Role.PLURAL)  # "12s not 10s"
    typed_load = typed_load or (new.role is Role.PLURAL and any(_is_in_hands(r.done) for r in loads))  # "14s not 12"
    typed_reps = Role.REPS in (new.role, old.role)
    chosen = loads if loads and not typed_reps and (typed_load or not reps) else [] if typed_load else reps
    if len({record.done.exercise for record in chosen}) > 1 and len({record.message for record in chosen}) > 1:
        return False
    for record in chosen:
        done = told.now(record)
        told.set_to(record, told.at_load(done, new) if chosen is loads else replace(done, reps=int(new.value)))
    if not chosen:
        for record in reached:
            told.set_to(record, _rare(told.now(record), new, old))
    return any(record.done != told.now(record) for record in reached)


def _is_in_hands(done: SetDone) -> bool:
    return done.load is not None and done.load.basis is Basis.PER_HAND


def _rare(done: SetDone, new: Piece, old: Piece) -> SetDone:
    if done.seconds == old.value:
        return replace(done, seconds=new.value)
    if done.metres == old.value:
        return replace(done, metres=new.value)
    if done.effort is not None and old.value in (done.effort.rpe, done.effort.rir) and new.value <= TOP_OF_SCALE:
        rir = TOP_OF_SCALE - new.value if done.effort.as_rpe else new.value
        return replace(done, effort=replace(done.effort, rir=rir))
    return done


def _sets_for_sets(told: Told, ahead: Sequence[Piece], behind: Sequence[Piece], part: Part) -> bool:
    """ "4x6 not 3x6", "45x5 not 45x6", "8 7 6 not 8 8 8"."""
    exercise = part.named or told.context.recent[-1].done.exercise
    read = [
        sets_read([piece for piece in side if piece not in part.used], exercise, told.context, told.catalogue)
        for side in (ahead, behind)
    ]
    new, old = read
    groups = [part.places] if part.places else [latest_of_it(told.context), sets_of(part, told.context)]
    for group in groups:
        if len(group) == len(old) and all(_fits(r.done, o) for r, o in zip(group, old, strict=True)):
            return become(told, group, new)
    alike = [r for r in sets_of(part, told.context) if len(old) == len(new) == 1 and _fits(r.done, old[0])]
    return bool(alike) and all(become(told, [record], new) for record in alike)


def _fits(done: SetDone, told: SetDone) -> bool:
    same_load = told.load is None or (done.load is not None and done.load.amount == told.load.amount)
    return same_load and (done.reps, done.seconds, done.metres) == (told.reps, told.seconds, told.metres)
