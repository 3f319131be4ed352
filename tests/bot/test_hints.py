"""Whatever a reply tells people to say must be understood when they say it: each hint, word for word."""

from __future__ import annotations

from datetime import datetime

import pytest

from engine.catalogue.catalogue import catalogue
from engine.reading import read
from engine.reading.values import Act, Context, Logged, Planned
from engine.values.ids import ExerciseName, SetId
from engine.values.plan import Reps
from engine.values.sets import SetRecord

NOW = datetime.fromisoformat("2026-03-04T18:00")
SQUAT = Planned(ExerciseName("barbell back squat"), 3, Reps(5), None)
HINTS = {
    "today": ("today", "today fri", "/today"),
    "next": ("next",),
    "done": ("done", "as planned"),
    "repeat": ("same",),
    "undo": ("undo", "/undo"),
    "redo": ("redo",),
    "skip": ("skip squat",),
    "swap": ("swap squat", "swap squat for leg press"),
    "move": ("move to fri",),
    "why": ("why", "why squat"),
    "plan": ("plan", "/plan", "plan text", "/plan text", "plan from monday"),
    "check": ("check",),
    "preview": ("preview 6", "preview"),
    "what_if": ("what if I swap squat for leg press", "what if i add 2 sets of lateral raise"),
    "more": ("more side delts", "+2 sets side delts"),
    "week": ("week",),
    "volume": ("volume", "volume calves"),
    "history": ("history squat",),
    "best": ("best squat",),
    "rest": ("rest 2 min", "rest 2"),
    "bodyweight": ("bodyweight 82", "bodyweight 82.5 kg"),
    "units": ("units lb", "units kg"),
    "remind": ("remind me 18:00 mon wed fri", "stop reminders"),
    "quiet": ("quiet 22:00 7:30",),
    "pause": ("pause until monday",),
    "resume": ("resume",),
    "settings": ("/settings", "zone London", "summary off", "summary on", "digest off", "reactions off"),
    "help": ("/help", "help"),
    "privacy": ("/privacy",),
    "export": ("export",),
    "erase": ("/deletedata", "delete my data"),
    "teach": ("bp means bench press",),
    "forget": ("forget bp", "forget row", "forget squat"),
    "add_exercise": ("new exercise: cable hip flexion, like leg extension",),
    "note": ("note: grip slipped on the last set",),
    "gym": ("my gym: plates 20x2, 10, 5", "my gym"),
    "plates": ("plates 102.5",),
    "warmup": ("warm up squat",),
    "invite": ("invite",),
    "clients": ("clients",),
    "digest": ("digest", "digest ann"),
    "plan_for": ("plan for ann",),
    "note_to": ("note to ann: keep the row at 55",),
    "adjust": ("ann: +2 sets side delts",),
    "accept": ("leave coach",),
    "start": ("/start",),
}


@pytest.mark.parametrize(
    ("name", "hint"), [pytest.param(name, hint, id=hint) for name, hints in HINTS.items() for hint in hints]
)
def test_a_hint_is_understood(name, hint):
    outcome = read(hint, Context(now=NOW, plan=(SQUAT,)), catalogue())

    assert isinstance(outcome, Act), outcome
    assert outcome.name == name


@pytest.mark.parametrize(
    "hint", [hint for name in ("forget", "settings", "accept", "plan", "help", "teach") for hint in HINTS[name]]
)
def test_a_hint_about_words_and_settings_is_no_correction_of_the_sets_just_logged(hint):
    logged = read("squat 3x5 100", Context(now=NOW), catalogue())
    assert isinstance(logged, Logged)
    sets = [SetRecord(SetId(at), one, NOW.date(), NOW, at, 1) for at, one in enumerate(logged.sets)]

    assert isinstance(read(hint, Context(now=NOW, recent=tuple(sets)), catalogue()), Act)
