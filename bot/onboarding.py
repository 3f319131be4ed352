"""The first questions: whose clock, which unit. Each can be skipped, and none ever swallows a set."""

from __future__ import annotations

import re
from datetime import timedelta

from bot.coachs_clients import clients_of
from bot.context import context_of
from bot.corrections import correct
from bot.preferences import UNIT, ZONE
from bot.replies.welcome import ask_unit, ready, zone_is, zone_unknown, zone_which
from bot.schedule import plan_person
from bot.turn import Turn
from bot.words import UNIT_WORDS
from bot.zones import zone_named
from engine.reading import read
from engine.reading.announced_lift import lift_announced
from engine.reading.values import Context, Correction, NoSets
from engine.values.load import Unit
from storage.records import ChangeKind, Question, QuestionState

OPEN_FOR = timedelta(days=2)
ASK_ZONE, ASK_UNIT, WHICH_ZONE = "zone", "unit", "which zone"
LONGEST_ANSWER = 40
MOST_WORDS = 1


def ask_for(turn: Turn, kind: str, **more: object) -> None:
    """Nothing; a question of the first contact is open."""
    turn.store.questions.ask(turn.athlete, {"kind": kind, **more}, at=turn.at, expires_at=turn.at + OPEN_FOR)


def answered(turn: Turn, question: Question, text: str) -> bool:
    """Whether the words answered a question of the first contact; sets and intents go their own way."""
    said = text.strip().casefold()
    kind = question.payload["kind"]
    latest = turn.store.sets.latest(turn.athlete)
    begun = latest is not None and latest.at > question.asked_at
    if begun and not zone_named(text) and not (kind == ASK_UNIT and said in UNIT_WORDS):
        return False  # she has begun to train: what she says now is of her sets, and "lbs" is their unit
    if kind == ASK_UNIT and said in UNIT_WORDS:
        _close(turn, question)
        if begun:
            _correct_the_sets(turn, UNIT_WORDS[said])
        choose_unit(turn, UNIT_WORDS[said].value)
        return True
    if kind in (ASK_ZONE, ASK_UNIT) and said in ("skip", "later", "no"):
        _close(turn, question)
        skip(turn, kind)
        return True
    if kind not in (ASK_ZONE, WHICH_ZONE) or len(said) > LONGEST_ANSWER:
        return False
    if said in UNIT_WORDS:  # told before it was asked; the clock stays open
        choose_unit(turn, UNIT_WORDS[said].value)
        return True
    outcome = read(text, context_of(turn), turn.catalogue)
    if not isinstance(outcome, NoSets) or outcome.pain or outcome.unread or _names_no_town(turn, text):
        return False
    return _zone_answer(turn, question, text)


def _names_no_town(turn: Turn, text: str) -> bool:
    """ "bench", whose sets follow, or a client's name: no town of that name is asked for again."""
    if any(one.name.casefold() == text.strip().casefold() for one in clients_of(turn)):
        return True
    return bool(lift_announced(text, Context(turn.unit, turn.now), turn.catalogue)) and not zone_named(text)


def _correct_the_sets(turn: Turn, unit: Unit) -> None:
    """The sets of her latest message, where she typed no unit: they were read before she told it."""
    meant = read(turn.inbound.text, context_of(turn), turn.catalogue)
    latest = turn.store.sets.latest(turn.athlete)
    if not isinstance(meant, Correction) or latest is None:
        return
    typed = turn.store.inbox.of_message(turn.inbound.source, turn.inbound.chat, latest.message)
    united = any(UNIT_TYPED.search(version.text) for version in typed)
    if not united and unit is not turn.unit:
        correct(turn, meant)


UNIT_TYPED = re.compile(r"\d\s*(?:kg|kilo|lb|pound|#)", re.IGNORECASE)


def _zone_answer(turn: Turn, question: Question, text: str) -> bool:
    found = zone_named(text)
    if not found:
        # Talk is no town: only one word on its own, once, is taken for a try at one.
        if question.payload.get("tried") or len(text.split()) > MOST_WORDS or not text.replace(" ", "").isalpha():
            return False
        turn.store.questions.update(question, {**question.payload, "tried": True})
        turn.say(zone_unknown(text))
        return True
    _close(turn, question)
    set_zone(turn, text)
    return True


def set_zone(turn: Turn, text: str) -> None:
    """Nothing; her clock is set to the zone named, or she is asked which."""
    found = zone_named(text)
    if not found:
        turn.say(zone_unknown(text))
        return
    first_time = not turn.preferences.zone_known
    change = turn.begin(ChangeKind.SETTING, f"the clock of {found[0]}")
    turn.store.settings.put(change, ZONE, found[0])
    turn.forget_lookups()
    plan_person(turn.store, turn.memory, turn.me, turn.preferences, turn.at)
    turn.say(zone_which(found, turn.now) if len(found) > 1 else zone_is(found[0], turn.now))
    if first_time and UNIT not in turn.store.settings.all(turn.athlete):
        ask_for(turn, ASK_UNIT)
        turn.say(ask_unit())


def choose_unit(turn: Turn, unit: str) -> None:
    """Nothing; the unit is set and the bot is ready."""
    change = turn.begin(ChangeKind.SETTING, f"units {unit}")
    turn.store.settings.put(change, UNIT, unit)
    turn.forget_lookups()
    turn.say(ready(turn.unit))


def skip(turn: Turn, kind: str) -> None:
    """Nothing; the question is passed over."""
    if kind == ASK_ZONE:
        ask_for(turn, ASK_UNIT)
        turn.say(ask_unit())
    else:
        turn.say(ready(turn.unit))


def _close(turn: Turn, question: Question) -> None:
    turn.store.questions.close(question, QuestionState.ANSWERED)
