"""Old logs taken over from a document, shown for approval before anything is recorded.

The open question holds where the document stands in the inbox and a print of what was shown: at the approval it is read
again, and shown again where it would come out otherwise now (a shorthand taught, a unit changed).
"""

from __future__ import annotations

import hashlib
from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date, datetime, time, timedelta

from bot import zones
from bot.replies import imports as replies
from bot.replies.trouble import stale_button
from bot.sessions import forget_plan
from bot.turn import Turn
from engine.catalogue.catalogue import normalise
from engine.imports.columns import unit_of
from engine.imports.document import read_log
from engine.imports.doubles import not_yet, notes_not_yet
from engine.imports.values import DateOrder, Habits, OldLog, OldNote, OldSet
from engine.sheets.unreadable import Unreadable
from engine.values.ids import ExerciseName
from engine.values.load import Unit
from storage.envelopes import InboundId
from storage.records import ChangeKind, Question, QuestionId, QuestionState

IMPORT = "import"
OPEN_FOR = timedelta(days=1)
NOON = time(12)
YES = frozenset(
    ("take over", "take it over", "import", "yes", "y", "ok", "okay", "yes please", "save", "save it", "do it")
)
NO = frozenset(("cancel", "/cancel", "no", "n", "forget it", "never mind", "don't", "do not"))


SAID_AROUND = frozenset(
    (
        "those",
        "these",
        "they",
        "they're",
        "are",
        "it's",
        "its",
        "it",
        "is",
        "in",
        "all",
        "the",
        "loads",
        "weights",
        "no",
    )
)
MONTH_FIRST = frozenset(("month first", "month/day", "mm/dd", "m/d", "month day", "american dates", "us dates"))
DAY_FIRST = frozenset(("day first", "day/month", "dd/mm", "d/m", "day month", "european dates"))


@dataclass(frozen=True, slots=True)
class ReadAs:
    """How the bare dates and loads of a document are read; None: by her own habit."""

    order: DateOrder | None = None
    unit: Unit | None = None


def received(turn: Turn, name: str, content: bytes) -> bool:
    """Whether the document was an old log, or none of any kind; it is shown, and waits for approval."""
    try:
        log = _read(turn, name, content, ReadAs())
    except Unreadable as unreadable:
        turn.say(replies.unreadable(unreadable.problem))
        return True
    if log is None:
        return False
    _offer(turn, name, log, turn.event, ReadAs())
    return True


def answered(turn: Turn, question: Question, text: str) -> bool:
    """Whether the words approved or declined an old log, or said how it is to be read."""
    said = " ".join(text.casefold().split()).rstrip(".!")
    read_as = _read_otherwise(_read_as(question), said)
    if said in YES:
        _take_over(turn, question)
    elif said in NO:
        _cancel(turn, question)
    elif read_as is not None:
        _show_again(turn, question, read_as)
    return said in YES or said in NO or read_as is not None


def _read_otherwise(before: ReadAs, said: str) -> ReadAs | None:
    """What the words say of the document's dates or loads; None where they say nothing of them."""
    told = " ".join(word for word in said.replace("’", "'").split() if word not in SAID_AROUND)
    if told in MONTH_FIRST or told in DAY_FIRST:
        return replace(before, order=DateOrder.MONTH_FIRST if told in MONTH_FIRST else DateOrder.DAY_FIRST)
    unit = unit_of(told)
    return replace(before, unit=unit) if unit is not None else None


def _read_as(question: Question) -> ReadAs:
    order, unit = question.payload.get("order"), question.payload.get("unit")
    return ReadAs(DateOrder(order) if order else None, Unit(unit) if unit else None)


def _show_again(turn: Turn, question: Question, read_as: ReadAs) -> None:
    name = question.payload["name"]
    event = turn.store.inbox.get(InboundId(question.payload["inbound"]))
    log = _read(turn, name, event.document, read_as) if event is not None and event.document is not None else None
    turn.store.questions.close(question, QuestionState.ANSWERED)
    if event is None or log is None:
        turn.say(replies.gone(name))
    else:
        _offer(turn, name, log, event.id, read_as)


def tapped_yes(turn: Turn, arguments: list[str]) -> None:
    """Nothing; the old log behind the button is taken over, unless that is settled."""
    question = _question(turn, arguments)
    if question is not None:
        _take_over(turn, question)


def tapped_no(turn: Turn, arguments: list[str]) -> None:
    """Nothing; the old log behind the button is left, unless that is settled."""
    question = _question(turn, arguments)
    if question is not None:
        _cancel(turn, question)


def _question(turn: Turn, arguments: list[str]) -> Question | None:
    """The question behind a button; one that another question crowded out is still good."""
    number = int(arguments[0]) if len(arguments) == 1 and arguments[0].isdecimal() else 0
    question = turn.store.questions.get(turn.athlete, QuestionId(number))
    if question is None or question.payload.get("kind") != IMPORT:
        turn.say(stale_button())
        return None
    if question.state is QuestionState.ANSWERED or question.expires_at <= turn.at:
        turn.say(replies.settled_before(question.payload["name"]))
        return None
    return question


def _read(turn: Turn, name: str, content: bytes, read_as: ReadAs) -> OldLog | None:
    settled = {normalise(one.term): ExerciseName(one.answer) for one in turn.store.taught.settled(turn.athlete)}
    habits = Habits(read_as.unit or turn.unit, turn.today, settled, read_as.order)
    return read_log(name, content, habits, turn.catalogue)


def _offer(turn: Turn, name: str, log: OldLog, inbound: InboundId, read_as: ReadAs) -> None:
    sets, notes = _fresh(turn, log)
    if not log.sets:
        turn.say(replies.nothing_read(name, log))
    elif not sets and not notes:
        turn.say(replies.nothing_new(name, log))
    else:
        payload = {"kind": IMPORT, "name": name, "inbound": inbound, "print": _print(log)}
        payload |= {"order": read_as.order.value} if read_as.order is not None else {}
        payload |= {"unit": read_as.unit.value} if read_as.unit is not None else {}
        question = turn.store.questions.ask(
            turn.athlete, payload, at=turn.at, expires_at=turn.at + OPEN_FOR, message=turn.inbound.message
        )
        turn.say(replies.preview(name, log, sets, notes, question.id))


def _print(log: OldLog) -> str:
    """A text that is the same for what would record the same."""
    told = repr((log.sets, log.notes, len(log.left_out)))
    return hashlib.sha256(told.encode("utf-8", "surrogatepass")).hexdigest()


def _fresh(turn: Turn, log: OldLog) -> tuple[tuple[OldSet, ...], tuple[OldNote, ...]]:
    """What of an old log is not in the log yet."""
    if not log.sets:
        return (), ()
    days = _days(log.sets, log.notes)
    first, last = min(days), max(days)
    standing = turn.store.sets.between(turn.athlete, first, last)
    changes = turn.store.changes
    imports = [changes.touched(change) for change in changes.in_force(turn.athlete, ChangeKind.IMPORT)]
    imported = [record for touched in imports for record in touched.added]
    notes = turn.store.notes.between(turn.athlete, first, last)
    return not_yet(log.sets, standing, imported), notes_not_yet(log.notes, [(note.on, note.text) for note in notes])


def _take_over(turn: Turn, question: Question) -> None:
    name = question.payload["name"]
    event = turn.store.inbox.get(InboundId(question.payload["inbound"]))
    read_as = _read_as(question)
    log = _read(turn, name, event.document, read_as) if event is not None and event.document is not None else None
    turn.store.questions.close(question, QuestionState.ANSWERED)
    if event is None or log is None:
        turn.say(replies.gone(name))
    elif _print(log) != question.payload["print"]:
        _offer(turn, name, log, event.id, read_as)
    else:
        _record(turn, name, log)


def _record(turn: Turn, name: str, log: OldLog) -> None:
    """Nothing; all that is new stands in the log, by one change."""
    sets, notes = _fresh(turn, log)
    if not sets and not notes:
        turn.say(replies.nothing_new(name, log))
        return
    change = turn.begin(ChangeKind.IMPORT, f"the old log {name}")
    instants = _instants(turn, _days(sets, notes))
    turn.store.sets.add_past(change, [(one.done, one.on, instants[one.on]) for one in sets])
    for note in notes:
        turn.store.notes.add(
            change, note.text, on=note.on, at=instants[note.on], exercise=note.exercise, pain=note.pain
        )
    forget_plan(turn)
    for exercise in {one.done.exercise for one in sets if one.on == turn.today}:
        turn.store.lift_lines.drop(turn.athlete, turn.today, exercise)
    turn.say(replies.taken_over(name, sets, notes, len(log.sets) - len(sets), len(log.left_out)))


def _days(sets: Sequence[OldSet], notes: Sequence[OldNote]) -> list[date]:
    return [one.on for one in sets] + [note.on for note in notes]


def _instants(turn: Turn, days: Sequence[date]) -> dict[date, datetime]:
    """Noon of each day by her clock, never later than now: when a set was done on it nobody told."""
    zone = turn.preferences.zone
    return {day: min(zones.instant(datetime.combine(day, NOON), zone), turn.at) for day in set(days)}


def _cancel(turn: Turn, question: Question) -> None:
    turn.store.questions.close(question, QuestionState.ANSWERED)
    turn.say(replies.cancelled(question.payload["name"]))
