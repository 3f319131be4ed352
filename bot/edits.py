"""An edited message is read again as if it had been said so at first; its sets follow.

The sets keep the day of the original message. Text that is meant as sets but cannot be read, or can be read in
several ways, leaves the old sets standing until it is settled. So does text that only names a lift ("squat"), a plan,
or a request that does not say that the sets were never done ("today"); the reply says that they still stand.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import date, datetime

from bot import asking, edited_requests, pain, planning, talk, zones
from bot.context import context_of, context_of_edit
from bot.corrections import apply, in_order, say
from bot.dispatch import dispatch
from bot.edited_steps import edited_step, step_of
from bot.intents import plan_for
from bot.intents.repeat import NOTHING_TO_REPEAT, repeated
from bot.recording import by_day, label_of, note_beside, pained_lift, record
from bot.replies.correction import (
    corrected,
    edit_unread,
    no_sets_in_edit,
    plan_in_edit,
    same_sets,
    still_saved,
    taken_back,
)
from bot.replies.question import dropped
from bot.replies.reply import Reply
from bot.sessions import forget_plan, forget_session
from bot.turn import Turn
from engine.reading import read
from engine.reading.lifts_named import speaks_of_lifts
from engine.reading.values import Act, Asked, Context, Correction, Logged, NoSets, Outcome, Unread
from engine.values.ids import ExerciseName
from engine.values.sets import SetRecord
from storage.records import Change, ChangeKind, Question, QuestionState

OTHER_SETS = "a correction, but of no sets that this message told"


def edited(turn: Turn) -> None:
    """Nothing; the records follow the new text, or stand where it says nothing new."""
    message = turn.inbound.message
    if _unchanged(turn):
        return
    if planning.looks_like_plan(turn.inbound.text):
        _plan_edited(turn)
        return
    step = step_of(turn)
    if step is None and edited_requests.made(turn):
        _request_edited(turn)
        return
    if step is not None and not turn.store.sets.of_message(turn.athlete, message):
        if not edited_step(turn, step):
            turn.say(edit_unread((), nothing="Nothing changed."))
        return
    edited_sets(turn, message)


def _request_edited(turn: Turn) -> None:
    """What the request did is taken back, and the new words count as if first said so."""
    outcome = read(turn.inbound.text, context_of(turn), turn.catalogue)
    if isinstance(outcome, NoSets) and outcome.unread:
        turn.say(edit_unread((), outcome.unread, nothing="Nothing changed."))
        return
    turn.heading = taken_back(edited_requests.take_back(turn))
    edited_sets(turn, turn.inbound.message)
    if turn.heading:
        turn.say(Reply(""))


def _plan_edited(turn: Turn) -> None:
    """A plan counts as sent now; where the message told sets, those stand and the plan has to be sent by itself."""
    standing = turn.store.sets.of_message(turn.athlete, turn.inbound.message)
    if standing:
        turn.say(plan_in_edit(standing))
    elif not plan_for.told_whole(turn, turn.inbound.text):
        planning.receive_plan(turn, turn.inbound.text)


def edited_sets(turn: Turn, message: int) -> None:
    """Nothing; the sets of a message follow its new text."""
    about = turn.store.questions.about_message(turn.athlete, message)
    waited = about is not None and about.state is QuestionState.OPEN
    if about is not None and waited:
        turn.store.questions.close(about, QuestionState.DROPPED)
    standing = turn.store.sets.of_message(turn.athlete, message)
    day = turn.store.sets.day_of_message(turn.athlete, message)
    said_at = _said_at(turn)
    said_on = day or _day_of_question(about) or said_at.date()
    context = context_of_edit(turn, standing, said_on, said_at)
    outcome = _read_of_its_sets(turn, standing, context)
    match outcome:
        case Logged(unread=unread) if unread and _lifts(standing) - {one.exercise for one in outcome.sets}:
            turn.say(edit_unread(standing, unread))
        case Logged():
            _replace(turn, standing, outcome, said_on)
        case Asked():
            asking.ask(turn, outcome, message, replaces=bool(standing))
        case NoSets(unread=unread) if unread:
            turn.say(edit_unread(standing, unread))
        case NoSets():
            _tells_none(turn, standing, outcome, context)
            if about is not None and waited and not standing:
                turn.say(dropped(about.payload["text"]))
        case _:
            _said_anew(turn, standing, outcome, said_on)


def _read_of_its_sets(turn: Turn, standing: tuple[SetRecord, ...], context: Context) -> Outcome:
    """The new words read as if first said so; a correction in them is one of the message's own sets."""
    own = read(turn.inbound.text, replace(context, recent=standing), turn.catalogue) if standing else None
    if isinstance(own, Correction):
        return own
    outcome = read(turn.inbound.text, context, turn.catalogue)
    if own is not None and isinstance(outcome, Correction):
        return NoSets(unread=(Unread(turn.inbound.text, OTHER_SETS),), why=OTHER_SETS)
    return outcome


def _lifts(standing: Sequence[SetRecord]) -> set[ExerciseName]:
    return {record.done.exercise for record in standing}


def _unchanged(turn: Turn) -> bool:
    """Reactions and previews arrive as edits too: only other words count."""
    versions = turn.store.inbox.of_message(turn.inbound.source, turn.inbound.chat, turn.inbound.message)
    earlier = [version for version in versions if version.id != turn.event]
    return bool(earlier) and earlier[-1].text == turn.inbound.text


def _day_of_question(about: Question | None) -> date | None:
    return date.fromisoformat(about.payload["on"]) if about is not None and "on" in about.payload else None


def _said_at(turn: Turn) -> datetime:
    """When the message was first sent, by her clock: what its "yesterday" is counted from."""
    versions = turn.store.inbox.of_message(turn.inbound.source, turn.inbound.chat, turn.inbound.message)
    return zones.local(versions[0].at, turn.preferences.zone) if versions else turn.now


def _replace(turn: Turn, standing: tuple[SetRecord, ...], logged: Logged, day: date) -> None:
    notes = turn.store.notes.of_message(turn.athlete, turn.inbound.message)
    same = not logged.unread and _are_the_same(standing, logged, day)
    if same and not (notes or logged.note or logged.pain):
        turn.say(same_sets(standing))
        return
    change = turn.begin(ChangeKind.EDIT, f"the edit to {label_of(logged.sets)}")
    turn.store.notes.remove(change, [note.id for note in notes])
    if same:
        note_beside(turn, change, logged, turn.inbound.message, day)
        forget_plan(turn)
        turn.say(same_sets(standing, beside=True))
    else:
        turn.store.sets.remove(change, [one.id for one in standing])
        place = standing[0].place if standing else None
        after = record(turn, change, logged, turn.inbound.message, on=day, place=place)
        say(turn, standing, tuple(after), logged.unread)
    if logged.pain and not any(note.pain for note in notes):
        pain.respond(turn, pained_lift(turn, logged))


def _are_the_same(standing: Sequence[SetRecord], logged: Logged, day: date) -> bool:
    told = [(on, done) for on, sets in by_day(logged, logged.on or day) for done in sets]
    return told == [(one.on, one.done) for one in standing]


def _tells_none(turn: Turn, standing: tuple[SetRecord, ...], outcome: NoSets, context: Context) -> None:
    """Words that still speak of lifts leave the sets standing; any others take them away."""
    if standing and speaks_of_lifts(turn.inbound.text, context, turn.catalogue):
        turn.say(no_sets_in_edit(turn.inbound.text, standing))
        return
    _take_away(turn, standing)
    _note_anew(turn, outcome, kept_before=not standing)


def _take_away(turn: Turn, standing: tuple[SetRecord, ...]) -> Change | None:
    """The change that took the sets away; None where none stood."""
    if not standing:
        return None
    change = turn.begin(ChangeKind.EDIT, f"the edit that took {label_of([one.done for one in standing])} away")
    turn.store.sets.remove(change, [one.id for one in standing])
    notes = turn.store.notes.of_message(turn.athlete, turn.inbound.message)
    turn.store.notes.remove(change, [note.id for note in notes])
    forget_plan(turn)
    turn.say(corrected(standing, (), None, turn.today, edited=True))
    return change


def _note_anew(turn: Turn, outcome: NoSets, *, kept_before: bool) -> None:
    """A note follows the new words of its message, and pain that an edit tells of is answered as if said now."""
    notes = turn.store.notes.of_message(turn.athlete, turn.inbound.message)
    if notes:
        change = turn.begin(ChangeKind.ASIDE, "the edited note")
        turn.store.notes.remove(change, [note.id for note in notes])
        forget_plan(turn)
    if outcome.pain or (notes and kept_before):
        talk.no_sets(turn, outcome)


def _said_anew(turn: Turn, standing: tuple[SetRecord, ...], outcome: Act | Correction, day: date) -> None:
    """An edit into an intent or a correction counts as said now; its sets go where it says that they were not done."""
    match outcome:
        case Correction() if standing:
            _corrected(turn, standing, outcome)
        case Act(name="undo") if standing:
            _take_away(turn, standing)
        case Act(name="repeat") if standing:
            again = repeated(turn, outcome, without=standing)
            if again is None:
                turn.say(edit_unread(standing, (Unread(turn.inbound.text, NOTHING_TO_REPEAT),)))
            else:
                _replace(turn, standing, again, day)
        case Act() if standing and not _stands_for(outcome, standing):
            turn.heading = still_saved(standing)
            dispatch(turn, outcome)
        case _:
            turn.begun = _take_away(turn, standing)  # what is asked for now is of the same step
            dispatch(turn, outcome)
            turn.begun = None


def _stands_for(asked: Act, standing: Sequence[SetRecord]) -> bool:
    """Whether what is asked for tells sets itself ("as planned"), or says that these were not done ("skip squat")."""
    if asked.name in ("skip", "swap"):
        return not _lifts(standing).isdisjoint((asked.exercise, *asked.also))
    return asked.as_planned


def _corrected(turn: Turn, standing: tuple[SetRecord, ...], asked: Correction) -> None:
    """ "no, 62.5" in place of "bench 3x8 60": the message's own sets are changed, in one step."""
    change = turn.begin(ChangeKind.EDIT, f"the edit to {label_of([one.done for one in standing])}")
    reached = {one.id for one in asked.reached}
    after = apply(turn, change, asked, standing)
    forget_session(turn)
    say(turn, standing, in_order(standing, reached, after))
