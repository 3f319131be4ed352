"""An edited message that was no set but a step: a correction in words, or the answer to a question.

It counts as if it had been said so at first: its step is taken back, the new words are read against the log as it was
before, and what they ask for is done; all in one change, which undo takes back whole.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

from bot.context import context_of
from bot.corrections import apply, in_order, say
from bot.recording import record
from bot.sessions import forget_session
from bot.set_json import asked_from_json
from bot.turn import Turn
from engine.reading import read, read_answer
from engine.reading.values import Context, Correction, NoSets, Settled
from engine.values.ids import SetId
from engine.values.sets import SetRecord
from storage.records import Change, ChangeKind

STEPS = (ChangeKind.CORRECTION, ChangeKind.DELETE, ChangeKind.MOVE, ChangeKind.ANSWER)


@dataclass(frozen=True, slots=True)
class Step:
    """What a message did: `first` when it was said, `last` when it was edited last (or the same)."""

    first: Change
    last: Change


def step_of(turn: Turn) -> Step | None:
    """The step in force that the edited message made when it was said; None where it made none."""
    versions = turn.store.inbox.of_message(turn.inbound.source, turn.inbound.chat, turn.inbound.message)
    made = [change for one in versions for change in turn.store.changes.of_inbound(turn.athlete, one.id)]
    in_force = [change for change in made if change.undone_at is None]
    return Step(in_force[0], in_force[-1]) if in_force and in_force[0].kind in STEPS else None


def edited_step(turn: Turn, step: Step) -> bool:
    """Whether the new words could stand for the step; False leaves everything as it is."""
    now = context_of(turn)
    standing = {one.id for one in now.recent}
    mine = [one for one in turn.store.changes.touched(step.last).added if one.id in standing]
    if step.first.kind is ChangeKind.ANSWER:
        return _answer(turn, mine, now)
    before = turn.store.changes.touched(step.first).removed
    others = [one for one in now.recent if one not in mine]
    recent = sorted([*others, *before], key=lambda one: (one.place, one.id))
    return _correction(turn, mine, before, replace(now, recent=tuple(recent)))


def _correction(turn: Turn, mine: Sequence[SetRecord], removed: Sequence[SetRecord], context: Context) -> bool:
    outcome = read(turn.inbound.text, context, turn.catalogue)
    if not isinstance(outcome, Correction) and not (isinstance(outcome, NoSets) and not outcome.unread):
        return False
    change = turn.begin(ChangeKind.EDIT, "the edit of a correction")
    turn.store.sets.remove(change, [one.id for one in mine])
    back = {one.id: _restored(turn, change, one) for one in removed}
    after: Sequence[SetRecord] = tuple(back.values())
    if isinstance(outcome, Correction):
        asked = _translated(outcome, back)
        reached = {one.id for one in asked.reached}
        corrected = apply(turn, change, asked, tuple(back.values()))
        after = in_order(tuple(back.values()), reached, corrected)
    forget_session(turn)
    say(turn, mine, after)
    return True


def _restored(turn: Turn, change: Change, one: SetRecord) -> SetRecord:
    """The set as it stood before the step, recorded again in its place."""
    return turn.store.sets.add(change, [one.done], on=one.on, at=one.at, message=one.message, place=one.place)[0]


def _translated(asked: Correction, back: Mapping[SetId, SetRecord]) -> Correction:
    """The correction, naming the sets recorded again where it names the ones they were."""
    return replace(
        asked,
        changed=tuple((back.get(one.id, one), done) for one, done in asked.changed),
        removed=tuple(back.get(one.id, one) for one in asked.removed),
        moved=tuple((back.get(one.id, one), day) for one, day in asked.moved),
    )


def _answer(turn: Turn, mine: Sequence[SetRecord], now: Context) -> bool:
    """The question is answered anew; its sets keep their message and day."""
    if not mine:
        return False
    question = turn.store.questions.about_message(turn.athlete, mine[0].message)
    if question is None or "asked" not in question.payload:
        return False
    others = tuple(one for one in now.recent if one not in mine)
    context = replace(now, recent=others)
    answer = read_answer(turn.inbound.text, asked_from_json(question.payload["asked"]), context, turn.catalogue)
    if not isinstance(answer, Settled):
        return False
    change = turn.begin(ChangeKind.EDIT, "the edit of an answer")
    turn.store.sets.remove(change, [one.id for one in mine])
    after = record(turn, change, answer.logged, mine[0].message, on=mine[0].on, place=mine[0].place)
    say(turn, mine, after)
    return True
