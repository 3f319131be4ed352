"""A message and what it was read as, in one line of words, for tables of tests."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from decimal import Decimal

import pytest
from _pytest.mark.structures import ParameterSet

from engine.catalogue.catalogue import catalogue
from engine.reading import read, read_answer
from engine.reading.values import (
    Act,
    Asked,
    Context,
    Correction,
    Dropped,
    Logged,
    NoSets,
    Outcome,
    Planned,
    Settled,
    StillOpen,
)
from engine.reading.weighing.resolve import BASES
from engine.reading.wording import describe, numbers_of
from engine.values.ids import ExerciseName, SetId
from engine.values.load import Basis, Load, Unit
from engine.values.plan import MaxReps, Reps
from engine.values.sets import SetDone, SetRecord

NOW = datetime(2025, 3, 14, 18, 20)  # noqa: DTZ001 — the context's time is the athlete's local one
"""A Friday."""

KNOWN = catalogue()


def load(exercise: str, amount: str, unit: Unit = Unit.KG) -> Load:
    """A load on the basis of its exercise."""
    known = KNOWN.exercises[ExerciseName(exercise)]
    return Load(Decimal(amount), unit, BASES.get(known.loading, Basis.TOTAL))


def situation(
    doing: str = "",
    unit: str = "kg",
    last: Mapping[str, str] | None = None,
    plan: Sequence[tuple[str, int, int | None, str | None]] = (),
) -> Context:
    """What is known before the message. A planned slot is (exercise, sets, reps or None for maximum, load or None)."""
    slots = tuple(
        Planned(
            ExerciseName(name),
            sets,
            MaxReps() if reps is None else Reps(reps),
            None if amount is None else load(name, amount, Unit(unit)),
        )
        for name, sets, reps, amount in plan
    )
    loads = {ExerciseName(name): load(name, amount, Unit(unit)) for name, amount in (last or {}).items()}
    return Context(Unit(unit), NOW, ExerciseName(doing) if doing else None, slots, loads)


def said(text: str, context: Context | None = None) -> str:
    """The outcome in words: the sets, "ask: one | other", "request: name ...", or "no sets"."""
    return in_words(read(text, context or situation(), KNOWN))


def in_words(outcome: Outcome) -> str:
    match outcome:
        case Logged():
            told = describe(outcome.sets) + (f" on {outcome.on}" if outcome.on else "")
            return told + (", pain" if outcome.pain else "")
        case Asked():
            return "ask: " + " | ".join(sorted(describe(one.sets) for one in outcome.readings))
        case NoSets():
            return "no sets, pain" if outcome.pain else "no sets"
        case Act():
            words = [
                outcome.exercise,
                outcome.to,
                outcome.when,
                outcome.count,
                "as planned" if outcome.as_planned else "",
            ]
            return " ".join(["request:", outcome.name, *(str(one) for one in words if one)])
        case Correction():
            return "correction"


class Conversation:
    """One athlete's messages, one after the other, with the sets that stand; undo and edits are not its business."""

    def __init__(self) -> None:
        self.log: list[SetRecord] = []
        self.open: Asked | None = None
        self.now = NOW
        self.message = 0
        self.amended = False

    def say(self, text: str) -> None:
        self.message += 1
        self.now += timedelta(minutes=1)
        context = replace(situation(), now=self.now, recent=tuple(self.log), amended=self.amended)
        if self.open is not None:
            answer = read_answer(text, self.open, context, KNOWN)
            if isinstance(answer, StillOpen):
                self.open = answer.asked
                return
            self.open = None
            if isinstance(answer, Settled | Dropped):
                self._take(answer.logged if isinstance(answer, Settled) else NoSets())
                return
        self._take(read(text, context, KNOWN))

    def _take(self, outcome: Outcome) -> None:
        match outcome:
            case Logged():
                self._add(outcome.sets, outcome.on or self.now.date())
            case Asked():
                self.open = outcome
            case Correction():
                self._correct(outcome)
            case Act(name="repeat"):
                meant = [one.done for one in self.log if outcome.exercise in (None, one.done.exercise)]
                self._add(meant[-1:] * (outcome.count or 1), self.now.date())
            case _:
                pass

    def _add(self, sets: Sequence[SetDone], day: date) -> None:
        self.amended = False
        for one in sets:
            place = len(self.log) + 1
            number = SetId(1 + max((record.id for record in self.log), default=0))
            self.log.append(SetRecord(number, one, day, self.now.replace(tzinfo=UTC), place, self.message))

    def _correct(self, correction: Correction) -> None:
        changed = {record.id: done for record, done in correction.changed}
        removed = {record.id for record in correction.removed}
        self.amended = bool(changed)
        moved = {record.id: day for record, day in correction.moved}
        self.log = [
            replace(
                record,
                done=changed.get(record.id, record.done),
                on=moved.get(record.id, record.on),
            )
            for record in self.log
            if record.id not in removed
        ]
        if correction.added:
            self._add(correction.added, self.log[-1].on)

    def standing(self) -> str:
        """The log in words; a set of another day carries its date."""
        words = describe([record.done for record in self.log])
        days = sorted({record.on for record in self.log} - {self.now.date()})
        return words + "".join(f" on {day}" for day in days)

    def by_day(self) -> str:
        """The log in words, the sets of each day apart; those of an earlier day carry its date."""
        days = sorted({record.on for record in self.log}, reverse=True)
        told = [describe([record.done for record in self.log if record.on == day]) for day in days]
        return "; ".join(
            words if day == self.now.date() else f"{words} on {day}" for words, day in zip(told, days, strict=True)
        )


def log_after(*messages: str) -> str:
    """The sets that stand after these messages, in words."""
    conversation = Conversation()
    for message in messages:
        conversation.say(message)
    return conversation.standing()


def dialogues(table: str) -> list[ParameterSet]:
    """A line for each dialogue: the messages, parted by bars, then "=>" and the sets that stand after them."""
    rows = []
    for line in table.strip().splitlines():
        told, _, standing = line.partition("=>")
        rows.append(pytest.param(told.strip(), standing.strip(), id=told.strip()))
    return rows


def readings(table: str) -> list[ParameterSet]:
    """A line for each message: the message, "=>" and what it is read as; two slashes part the lines of a message.

    What is known before it may stand in front in braces: "{unit: lb; doing: pull-up; last: pull-up 10} 8 8 7".
    """
    rows = []
    for line in table.strip().splitlines():
        told, _, meant = line.partition(" => ")
        known, _, text = told.strip().rpartition("} ")
        rows.append(pytest.param(text.replace(" // ", "\n"), _known_before(known), meant.strip(), id=told.strip()))
    return rows


def _known_before(told: str) -> Context:
    known = dict(one.strip().split(": ", 1) for one in told.strip("{ ").split(";") if one.strip())
    last = dict(one.strip().rsplit(" ", 1) for one in known.get("last", "").split(",") if one.strip())
    return situation(known.get("doing", ""), known.get("unit", "kg"), last, _planned(known.get("plan", "")))


def _planned(told: str) -> list[tuple[str, int, int | None, str | None]]:
    """ "pull-up 3 8 10, squat 3 5 -": lift, sets, reps, load."""
    slots = [one.strip().rsplit(" ", 3) for one in told.split(",") if one.strip()]
    return [(name, int(sets), int(reps), None if load == "-" else load) for name, sets, reps, load in slots]


def standing_after(told: str) -> str:
    """The sets that stand after messages parted by bars; two slashes part the lines of one message."""
    conversation = Conversation()
    for message in told.split(" | "):
        conversation.say(message.strip().replace(" // ", "\n"))
    return conversation.by_day()


__all__ = ["NOW", "Conversation", "dialogues", "load", "log_after", "numbers_of", "readings", "said", "situation",
           "standing_after"]  # fmt: skip
