"""What is known of a person before her words are read."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from datetime import date, datetime, timedelta

from bot.messages import InboundKind
from bot.sessions import session_of, session_on
from bot.turn import Turn
from bot.words import WORD
from engine.reading.announced_lift import lift_announced, sets_to_come
from engine.reading.announced_load import LoadTold, is_near_enough, load_told
from engine.reading.values import Context, Planned
from engine.reading.weighing.resolve import BASES
from engine.reading.weighing.units_of_today import unit_meant
from engine.reading.words.cues import any_cued
from engine.reading.words.phrasebook import spoken
from engine.values.exercise import Measure
from engine.values.ids import ExerciseName
from engine.values.load import Basis, Load
from engine.values.prescription import Prescription
from engine.values.sets import SetRecord
from storage.records import ChangeKind
from storage.sets import was_changed

IN_HAND_FOR = timedelta(hours=5)
"""After this long without a set nothing is in hand any more: a bare number then needs a name. Common practice."""


def context_of(turn: Turn) -> Context:
    """The context of a message said now."""
    session = session_of(turn)
    recent = turn.store.sets.recent(turn.athlete, turn.today)
    announced, load, to_come = _announced_since(turn, recent)
    doing = announced[0] if len(announced) == 1 else None if announced else in_hand(turn, recent)
    lifts = announced or ((doing,) if doing else ())
    load = _in_its_unit(turn, lifts, load, recent) if load is not None else None
    return Context(
        unit=turn.unit,
        now=turn.now,
        doing=doing,
        plan=tuple(planned(one) for one in session.prescriptions),
        last=turn.store.sets.last_loads(turn.athlete),
        best=turn.store.sets.best_loads(turn.athlete),
        recent=recent,
        amended=bool(recent) and was_changed(recent[-1]),
        undone=_was_just_undone(turn),
        chosen=_was_just_chosen(turn),
        taught=_taught(turn),
        load_first=turn.preferences.load_first,
        named=len(announced) == 1 or _swapped_in(turn, recent) is not None,
        announced=announced if len(announced) > 1 else (),
        told=_loads_told(turn, lifts, load, recent) if load is not None else {},
        to_come=to_come,
        moved=load is not None and load.open,
        called=turn.me.name,
    )


def _was_just_undone(turn: Turn) -> bool:
    """Whether a step was undone a short while ago, and nothing was changed since; looked up where it may matter."""
    if turn.inbound.kind is not InboundKind.MESSAGE or len(turn.inbound.text) > LONGEST_UNDO:
        return False
    words = [spoken(word) for word in WORD.findall(turn.inbound.text.casefold())]
    told_over = len(words) > 1 and len(set(words)) == 1  # "undo undo"
    if not told_over and not any_cued(words, UNDOING_FURTHER):
        return False
    step = turn.store.changes.to_redo(turn.athlete)
    return step is not None and step.undone_at is not None and turn.at - step.undone_at < JUST_UNDONE


def _was_just_chosen(turn: Turn) -> bool:
    """Whether the latest change is an answer to a question; looked up where a lone number may be another choice."""
    text = turn.inbound.text
    numbers = [word for word in text.split() if word.strip(".,!").isdecimal()]
    if turn.inbound.kind is not InboundKind.MESSAGE or len(text) > LONGEST_CHOICE or len(numbers) != 1:
        return False
    latest = turn.store.changes.to_undo(turn.athlete)
    return latest is not None and latest.kind is ChangeKind.ANSWER


LONGEST_CHOICE = 24
LONGEST_UNDO = 60
JUST_UNDONE = timedelta(minutes=10)
"""How long "that one too" goes on with an undo. Common practice, no source."""
UNDOING_FURTHER = frozenset(("undofurther", "undoforegoing"))


def _taught(turn: Turn) -> Mapping[str, ExerciseName]:
    """Her shorthands, and the words whose meaning an answer of hers settled."""
    settled = {one.term: ExerciseName(one.answer) for one in turn.store.taught.settled(turn.athlete)}
    return settled | dict(turn.memory.own_of(turn.store, turn.athlete)[1])


def context_of_edit(turn: Turn, standing: Sequence[SetRecord], day: date, said_at: datetime) -> Context:
    """The context of an edited message: as it was said at first (`said_at`), with its own sets out of the way.

    What it was about is known from the sets it made: their exercise is in hand, at the load they had.
    """
    session = session_of(turn) if day == turn.today else session_on(turn, day)
    now = context_of(turn)
    own = {record.id for record in standing}
    others = tuple(record for record in now.recent if record.id not in own)
    loads = {record.done.exercise: record.done.load for record in standing if record.done.load is not None}
    before = [record for record in others if not standing or record.place < standing[0].place]
    return replace(
        now,
        now=said_at,
        doing=standing[0].done.exercise if standing else before[-1].done.exercise if before else None,
        plan=tuple(planned(one) for one in session.prescriptions),
        last={**now.last, **loads},
        recent=others,
        amended=False,
    )


def planned(prescription: Prescription) -> Planned:
    """A prescription as far as reading needs it: the first set's target and load stand for all."""
    first = prescription.sets[0]
    return Planned(prescription.exercise, len(prescription.sets), first.target, first.load)


def _in_its_unit(turn: Turn, lifts: Sequence[ExerciseName], told: LoadTold, recent: Sequence[SetRecord]) -> LoadTold:
    """The load told alone with its unit, where sets of today were told in another; open where it may be either."""
    latest = _latest(recent)
    if told.open or told.by or told.unit is not None or latest is None or latest.done.exercise not in lifts:
        return told
    unit = unit_meant(told.amount, latest.done.load, turn.unit)
    return told._replace(unit=unit, open=unit is None)


def _loads_told(
    turn: Turn, lifts: Sequence[ExerciseName], told: LoadTold, recent: Sequence[SetRecord]
) -> Mapping[ExerciseName, Load]:
    """The load told alone as that of each of the lifts; a change of it is one of the lift lifted last alone."""
    if told.open:
        return {}
    if not told.by:
        loads = _on_its_basis(turn, lifts, Load(told.amount, told.unit or turn.unit))
        held = {name for name in loads if _is_held_by_hand(turn, name)}
        latest = _latest(recent)
        near = latest is not None and is_near_enough(told.amount, latest.done.load)
        return {name: load for name, load in loads.items() if (near if told.near else name in held or not told.paired)}
    latest = _latest(recent)
    changed = told.beside(latest.done.load) if latest is not None and lifts == (latest.done.exercise,) else None
    return {latest.done.exercise: changed} if latest is not None and changed is not None else {}


def _is_held_by_hand(turn: Turn, lift: ExerciseName) -> bool:
    """Whether reps of the lift are done with something in each hand: elsewhere "30s" may be a time."""
    known = turn.catalogue.get(lift)
    return known is not None and known.measure is Measure.REPS and BASES.get(known.loading) is Basis.PER_HAND


def _on_its_basis(turn: Turn, lifts: Sequence[ExerciseName], load: Load) -> Mapping[ExerciseName, Load]:
    """The load told alone, as each of the lifts that it may be of is loaded; none for those done with the body."""
    bases = {name: BASES.get(known.loading, Basis.TOTAL) for name in lifts if (known := turn.catalogue.get(name))}
    return {name: replace(load, basis=basis) for name, basis in bases.items() if basis is not Basis.BODY}


Announced = tuple[tuple[ExerciseName, ...], LoadTold | None, int]


def _announced_since(turn: Turn, recent: Sequence[SetRecord]) -> Announced:
    """The lift that her words named since her latest set, with no sets of it: "bench", then "60x8"; several where it
    is open: "row". The load that they told, "bench 60", then "8"; and how many sets are to come.
    """
    latest = max((record.at for record in recent), default=None)
    notes = turn.store.notes.between(turn.athlete, turn.today, turn.today, pain=False)
    load: LoadTold | None = None
    for note in reversed(notes):
        if (latest is not None and note.at <= latest) or turn.at - note.at > IN_HAND_FOR:
            break
        if not note.message:
            continue
        plain = Context(turn.unit, turn.now, taught=_taught(turn))
        load = load or load_told(note.text, plain, turn.catalogue)
        found = lift_announced(note.text, plain, turn.catalogue)
        if found:
            return found, load, sets_to_come(note.text, plain, turn.catalogue)
    return (), load, 0


def in_hand(turn: Turn, recent: tuple[SetRecord, ...]) -> ExerciseName | None:
    """The exercise a bare number belongs to.

    It is the one logged last; once the plan's sets of it are done, the one that the receipt named as next. Before the
    first set of a session none is: the plan alone may not decide where a bare number goes. A lift swapped in since then
    was just named, so it is the one.
    """
    session, latest = session_of(turn), _latest(recent)
    swapped = _swapped_in(turn, recent)
    if swapped is not None:
        return swapped
    if latest is None or turn.at - latest.at > IN_HAND_FOR:
        return None
    if session.is_finished(latest.done.exercise):
        following = session.next_up()
        if following is not None:
            return following.prescription.exercise
    return latest.done.exercise


def _swapped_in(turn: Turn, recent: Sequence[SetRecord]) -> ExerciseName | None:
    """The lift that she swapped in since her latest set."""
    latest = _latest(recent)
    return session_of(turn).swapped_in_since(latest.at if latest is not None else None)


def _latest(recent: Sequence[SetRecord]) -> SetRecord | None:
    return max(recent, key=lambda record: (record.at, record.place), default=None)
