"""An edited message is read again as if it had been said so at first; its sets follow.

The sets keep the day of the original message. Text that is meant as sets but cannot be read, or can be read in
several ways, leaves the old sets standing until it is settled.
"""

from __future__ import annotations

from datetime import date, datetime

from bot import asking, edited_requests, talk, zones
from bot.context import context_of, context_of_edit
from bot.corrections import say
from bot.dispatch import dispatch
from bot.edited_steps import edited_step, step_of
from bot.recording import label_of, record
from bot.replies.correction import corrected, edit_unread, taken_back
from bot.replies.reply import Reply
from bot.sessions import forget_plan
from bot.turn import Turn
from engine.reading import read
from engine.reading.values import Act, Asked, Correction, Logged, NoSets
from engine.values.sets import SetRecord
from storage.records import ChangeKind, Question, QuestionState


def edited(turn: Turn) -> None:
    """Nothing; the records follow the new text, or stand where it says nothing new."""
    message = turn.inbound.message
    if _unchanged(turn):
        return
    step = step_of(turn)
    if step is None and edited_requests.made(turn):
        _request_edited(turn)
        return
    if step is not None and not turn.store.sets.of_message(turn.athlete, message):
        if not edited_step(turn, step):
            turn.say(edit_unread((), ""))
        return
    edited_sets(turn, message)


def _request_edited(turn: Turn) -> None:
    """What the request did is taken back, and the new words count as if first said so."""
    outcome = read(turn.inbound.text, context_of(turn), turn.catalogue)
    if isinstance(outcome, NoSets) and outcome.unread:
        turn.say(edit_unread((), outcome.unread[0].why))
        return
    turn.heading = taken_back(edited_requests.take_back(turn))
    edited_sets(turn, turn.inbound.message)
    if turn.heading:
        turn.say(Reply(""))


def edited_sets(turn: Turn, message: int) -> None:
    """Nothing; the sets of a message follow its new text."""
    about = turn.store.questions.about_message(turn.athlete, message)
    if about is not None and about.state is QuestionState.OPEN:
        turn.store.questions.close(about, QuestionState.DROPPED)
    standing = turn.store.sets.of_message(turn.athlete, message)
    day = turn.store.sets.day_of_message(turn.athlete, message)
    said_at = _said_at(turn)
    said_on = day or _day_of_question(about) or said_at.date()
    outcome = read(turn.inbound.text, context_of_edit(turn, standing, said_on, said_at), turn.catalogue)
    match outcome:
        case Logged():
            _replace(turn, standing, outcome, said_on)
        case Asked():
            asking.ask(turn, outcome, message, replaces=bool(standing))
        case NoSets(unread=unread) if unread:
            turn.say(edit_unread(standing, unread[0].why))
        case NoSets():
            _to_chat(turn, standing)
            _note_anew(turn, outcome, kept_before=not standing)
        case _:
            _said_anew(turn, standing, outcome)


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
    change = turn.begin(ChangeKind.EDIT, f"the edit to {label_of(logged.sets)}")
    notes = turn.store.notes.of_message(turn.athlete, turn.inbound.message)
    turn.store.notes.remove(change, [note.id for note in notes])
    turn.store.sets.remove(change, [one.id for one in standing])
    place = standing[0].place if standing else None
    after = record(turn, change, logged, turn.inbound.message, on=day, place=place)
    say(turn, standing, tuple(after), logged.unread)


def _to_chat(turn: Turn, standing: tuple[SetRecord, ...]) -> None:
    if not standing:
        return
    change = turn.begin(ChangeKind.EDIT, f"the edit that took {label_of([one.done for one in standing])} away")
    turn.store.sets.remove(change, [one.id for one in standing])
    notes = turn.store.notes.of_message(turn.athlete, turn.inbound.message)
    turn.store.notes.remove(change, [note.id for note in notes])
    forget_plan(turn)
    turn.say(corrected(standing, (), None, turn.today))


def _note_anew(turn: Turn, outcome: NoSets, *, kept_before: bool) -> None:
    """A note follows the new words of its message, and pain that an edit tells of is answered as if said now."""
    notes = turn.store.notes.of_message(turn.athlete, turn.inbound.message)
    if notes:
        change = turn.begin(ChangeKind.ASIDE, "the edited note")
        turn.store.notes.remove(change, [note.id for note in notes])
        forget_plan(turn)
    if outcome.pain or (notes and kept_before):
        talk.no_sets(turn, outcome)


def _said_anew(turn: Turn, standing: tuple[SetRecord, ...], outcome: Act | Correction) -> None:
    """An edit into an intent or a correction: its own sets go, then it counts as said now."""
    _to_chat(turn, standing)
    dispatch(turn, outcome)
