"""What people ask for, and talk that only sounds like it."""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import said, situation


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    [
        pytest.param("today", situation(), "request: today", id="today"),
        pytest.param("what's on today?", situation(), "request: today", id="what's on today?"),
        pytest.param("/today fri", situation(), "request: today", id="/today fri"),
        pytest.param("what should i lift tomorrow", situation(), "request: today", id="what should i lift tomorrow"),
        pytest.param("what about wednesday?", situation(), "request: today", id="what about wednesday?"),
        pytest.param("tomorrow?", situation(), "request: today", id="tomorrow?"),
        pytest.param("was muss ich morgen machen?", situation(), "request: today", id="was muss ich morgen machen?"),
        pytest.param("/help", situation(), "request: help", id="/help"),
        pytest.param("/next", situation(), "request: next", id="/next"),
        pytest.param("whats next?", situation(), "request: next", id="whats next?"),
        pytest.param("next exercise", situation(), "request: next", id="next exercise"),
        pytest.param("nxet", situation(), "request: next", id="nxet"),
        pytest.param("done", situation(), "request: done", id="done"),
        pytest.param("that's it for today", situation(), "request: done", id="that's it for today"),
        pytest.param("all done as planned", situation(), "request: done as planned", id="all done as planned"),
        pytest.param(
            "as planned",
            situation(doing="barbell row", plan=[("barbell row", 3, 8, "60")]),
            "request: done barbell row as planned",
            id="as planned",
        ),
        pytest.param(
            "as planned except last set 6",
            situation(doing="barbell row", plan=[("barbell row", 3, 8, "60")]),
            "barbell row 2×8 at 60 kg, 6 at 60 kg",
            id="as planned except last set 6",
        ),
        pytest.param("undo", situation(), "request: undo", id="undo"),
        pytest.param("scratch that", situation(), "request: undo", id="scratch that"),
        pytest.param("redo", situation(), "request: redo", id="redo"),
        pytest.param("back to kg", situation(unit="lb"), "request: units", id="back to kg"),
        pytest.param("put it back", situation(), "request: redo", id="put it back"),
        pytest.param("no wait put that one back", situation(), "request: redo", id="no wait put that one back"),
        pytest.param("nah put the last one back", situation(), "request: redo", id="nah put the last one back"),
        pytest.param("hang on that was right", situation(), "request: redo", id="hang on that was right"),
        pytest.param("oops didnt mean to undo", situation(), "request: redo", id="oops didnt mean to undo"),
        pytest.param("same", situation(), "request: repeat", id="same"),
        pytest.param("another one", situation(), "request: repeat", id="another one"),
        pytest.param("3 more", situation(doing="barbell row"), "request: repeat 3", id="3 more"),
        pytest.param("two more sets", situation(doing="barbell row"), "request: repeat 2", id="two more sets"),
        pytest.param(
            "skip rows", situation(plan=[("barbell row", 3, 8, "60")]), "request: skip barbell row", id="skip rows"
        ),
        pytest.param("skip this", situation(doing="plank"), "request: skip plank", id="skip this"),
        pytest.param(
            "swap bench for push ups",
            situation(),
            "request: swap barbell bench press push-up",
            id="swap bench for push ups",
        ),
        pytest.param(
            "swap bench with dips", situation(), "request: swap barbell bench press dip", id="swap bench with dips"
        ),
        pytest.param(
            "replace squat with leg press",
            situation(),
            "request: swap barbell back squat leg press",
            id="replace squat with leg press",
        ),
        pytest.param(
            "can i do hack squats instead of squats",
            situation(),
            "request: swap barbell back squat hack squat",
            id="can i do hack squats instead of squats",
        ),
        pytest.param(
            "squat rack is busy, swap squat for leg press",
            situation(),
            "request: swap barbell back squat leg press",
            id="squat rack is busy, swap squat for leg press",
        ),
        pytest.param("why", situation(), "request: why", id="why"),
        pytest.param("why 82.5?", situation(), "request: why", id="why 82.5?"),
        pytest.param("why squat", situation(), "request: why barbell back squat", id="why squat"),
        pytest.param("plan", situation(), "request: plan", id="plan"),
        pytest.param("show my plan", situation(), "request: plan", id="show my plan"),
        pytest.param("week", situation(), "request: week", id="week"),
        pytest.param("how was my week", situation(), "request: week", id="how was my week"),
        pytest.param("what a week", situation(), "no sets", id="what a week"),
        pytest.param("weekly summary", situation(), "request: week", id="weekly summary"),
        pytest.param("volume", situation(), "request: volume", id="volume"),
        pytest.param("history squat", situation(), "request: history barbell back squat", id="history squat"),
        pytest.param(
            "what did i squat last time?",
            situation(),
            "request: history barbell back squat",
            id="what did i squat last time?",
        ),
        pytest.param("bench last time?", situation(), "request: history barbell bench press", id="bench last time?"),
        pytest.param("best deadlift", situation(), "request: best conventional deadlift", id="best deadlift"),
        pytest.param("what's my squat pr", situation(), "request: best barbell back squat", id="what's my squat pr"),
        pytest.param("rest 2 min", situation(), "request: rest 120", id="rest 2 min"),
        pytest.param("rest 90", situation(), "request: rest 90", id="rest 90"),
        pytest.param("bodyweight 82.4", situation(), "request: bodyweight", id="bodyweight 82.4"),
        pytest.param("pause until friday", situation(), "request: pause 2025-03-21", id="pause until friday"),
        pytest.param("pause for 2 weeks", situation(), "request: pause 2025-03-28", id="pause for 2 weeks"),
        pytest.param("pause until 1 april", situation(), "request: pause 2025-04-01", id="pause until 1 april"),
        pytest.param("i'm back", situation(), "request: resume", id="i'm back"),
        pytest.param("remind me at 18:30", situation(), "request: remind 2025-03-14 18:30:00", id="remind me at 18:30"),
        pytest.param("remind me 18:00 mon wed fri", situation(), "request: remind", id="remind me 18:00 mon wed fri"),
        pytest.param(
            "remind me in 20 min", situation(), "request: remind 2025-03-14 18:40:00", id="remind me in 20 min"
        ),
        pytest.param("units lb", situation(), "request: units", id="units lb"),
        pytest.param("use kg", situation(), "request: units", id="use kg"),
        pytest.param("export", situation(), "request: export", id="export"),
        pytest.param("erase everything", situation(), "request: erase", id="erase everything"),
        pytest.param("help", situation(), "request: help", id="help"),
        pytest.param("privacy", situation(), "request: privacy", id="privacy"),
        pytest.param("settings", situation(), "request: settings", id="settings"),
        *(
            pytest.param(text, situation(), "request: teach preacher curl", id=text)
            for text in (
                "pc for me means preacher curl",
                "pc is preacher curl btw",
                "btw pc = preacher curl",
                "ok so pc means preacher curl",
                "pc to me is preacher curl",
                "pc is preacher curl not power clean",
                "preacher curl = pc",
                "lets say pc for preacher curl",
                "whenever i type pc, log preacher curl",
                "i write pc for preacher curl",
            )
        ),
        pytest.param("fp means floor press", situation(), "request: teach floor press", id="fp means floor press"),
        pytest.param(
            "when i say press i mean ohp",
            situation(),
            "request: teach barbell overhead press",
            id="when i say press i mean ohp",
        ),
        pytest.param(
            "new exercise: cable hip flexion",
            situation(),
            "request: add_exercise",
            id="new exercise: cable hip flexion",
        ),
        pytest.param(
            "note: left hip tight after warm up", situation(), "request: note", id="note: left hip tight after warm up"
        ),
        pytest.param(
            "move session to thursday", situation(), "request: move 2025-03-20", id="move session to thursday"
        ),
        pytest.param("snooze 20 min", situation(), "request: snooze", id="snooze 20 min"),
        pytest.param("quiet", situation(), "request: quiet", id="quiet"),
        pytest.param("check my plan", situation(), "request: check", id="check my plan"),
        pytest.param("plan preview week 6", situation(), "request: preview", id="plan preview week 6"),
        pytest.param(
            "what if i swap squat for leg press",
            situation(),
            "request: what_if",
            id="what if i swap squat for leg press",
        ),
        pytest.param("more side delts", situation(), "request: more", id="more side delts"),
        pytest.param("clients", situation(), "request: clients", id="clients"),
        pytest.param("digest", situation(), "request: digest", id="digest"),
        pytest.param("digest ann", situation(), "request: digest", id="digest ann"),
        pytest.param("invite", situation(), "request: invite", id="invite"),
        pytest.param("plan for ann", situation(), "request: plan_for", id="plan for ann"),
        pytest.param("note to ann: great week", situation(), "request: note_to", id="note to ann: great week"),
        pytest.param("ann: +2 sets side delts", situation(), "request: adjust", id="ann: +2 sets side delts"),
        pytest.param("accept K3J9", situation(), "request: accept", id="accept K3J9"),
        pytest.param("forget press", situation(), "request: forget", id="forget press"),
        pytest.param("repeat the last set", situation(), "request: repeat", id="repeat the last set"),
        pytest.param("delete my data", situation(), "request: erase", id="delete my data"),
        pytest.param("next week will be hard", situation(), "no sets", id="next week will be hard"),
        pytest.param("i'm so done with this gym", situation(), "no sets", id="i'm so done with this gym"),
        pytest.param("today was rough", situation(), "no sets", id="today was rough"),
        pytest.param("what a session", situation(), "no sets", id="what a session"),
        pytest.param(
            "help me out here mate, rack is stuck", situation(), "no sets", id="help me out here mate, rack is stuck"
        ),
        pytest.param("the plan is 5x5 at 90", situation(), "no sets", id="the plan is 5x5 at 90"),
        pytest.param("history of rome", situation(), "no sets", id="history of rome"),
    ],
)
def test_requests(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant
