"""A request is done for all of what it says or for none of it: pauses, hours, days and exceptions."""

from __future__ import annotations

import pytest

from engine.reading import read
from engine.reading.values import Act, NoSets
from tests.engine.reading.saying import KNOWN, said, situation

DAY = situation(
    doing="barbell back squat",
    plan=[("barbell back squat", 3, 5, "100"), ("barbell bench press", 3, 8, "60"), ("hammer curl", 3, 10, "12")],
)


@pytest.mark.parametrize(
    ("text", "start", "until"),
    [
        ("pause next week", "2025-03-17", "2025-03-24"),
        ("no training next week", "2025-03-17", "2025-03-24"),
        ("pause nächste woche", "2025-03-17", "2025-03-24"),
        ("pause next month", "2025-04-01", "2025-05-01"),
        ("pause tomorrow", "2025-03-15", "2025-03-16"),
        ("pause three weeks from monday", "2025-03-17", "2025-04-07"),
        ("pause for 2 weeks starting monday", "2025-03-17", "2025-03-31"),
        ("taking two weeks off from monday", "2025-03-17", "2025-03-31"),
        ("i am away from friday for 10 days", "2025-03-21", "2025-03-31"),
        ("pause from monday to friday", "2025-03-17", "2025-03-22"),
        ("pause mon-fri", "2025-03-17", "2025-03-22"),
        ("pause through friday", None, "2025-03-22"),
        ("away 12-20 dec", "2025-12-12", "2025-12-21"),
        ("pause 12-20 december", "2025-12-12", "2025-12-21"),
        ("off from dec 12 to 20", "2025-12-12", "2025-12-21"),
        ("urlaub vom 12. bis 20. dezember", "2025-12-12", "2025-12-21"),
        ("pause from 12 dec until 20 dec", "2025-12-12", "2025-12-20"),
        ("on holiday from 20 dec to 3 jan", "2025-12-20", "2026-01-04"),
        ("pause from monday", "2025-03-17", None),
        ("pause for 1,5 weeks", None, "2025-03-25"),
        ("pause for a week and a half", None, "2025-03-25"),
        ("pause two and a half weeks", None, "2025-04-01"),
        ("pause for a fortnight", None, "2025-03-28"),
        ("taking two weeks off", None, "2025-03-28"),
        ("taking a couple of weeks off", None, "2025-03-28"),
        ("pause this week", None, "2025-03-17"),
        ("pause until next week", None, "2025-03-17"),
        ("pause until monday the 24th", None, "2025-03-24"),
        ("taking a few days off until monday", None, "2025-03-17"),
        ("pause until 20 dec", None, "2025-12-20"),
    ],
)
def test_a_pause_holds_for_the_days_told(text, start, until):
    found = read(text, DAY, KNOWN)

    assert isinstance(found, Act)
    assert found.name == "pause"
    assert (str(found.start or "") or None, str(found.when or "") or None) == (start, until)


@pytest.mark.parametrize(
    "text",
    [
        "pause until monday except sunday",
        "pause reminders until monday but keep summaries",
        "pause 20 dec",
        "skip a set of squat",
        "drop the last set of squats",
        "skip some sets of squat",
        "skip two sets of squats",
        "skip 3x5 squats",
        "skip half the squats",
        "saltar una serie de sentadillas",
        "pause half a week",
        "pause a few days",
        "pause for two weeks until friday",
        "pause for 2 weeks and 3 days",
        "pause until monday and then friday",
        "pause every sunday",
        "pause until easter",
        "no messages after 9pm except sunday",
        "dont text me on sundays",
        "quiet from 22 to 7 except friday",
        "remind me at 6 except sunday",
        "remind me every day but sunday at 18:00",
        "remind me at 6 or 7",
        "remind me 2 days before at 6pm",
        "snooze until tomorrow",
        "start a timer for 2 minutes and then 1",
        "rest 2-3 min",
        "skip squat tomorrow",
        "skip squat on monday",
        "skip today and tomorrow",
        "skip this week",
        "skip all but dips",
        "swap squat for leg press tomorrow",
        "swap squat for leg press next time",
        "units lb for bench",
        "skip foos and squats",
    ],
)
def test_a_request_of_which_one_part_is_not_understood_is_told_so(text):
    found = read(text, DAY, KNOWN)

    assert isinstance(found, NoSets)
    assert [one.of_a_request for one in found.unread] == [True]


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("timer off", "rest"),
        ("turn off the timer", "rest"),
        ("turn the timer off", "rest"),
        ("no timer", "rest"),
        ("kill the timer", "rest"),
        ("back", "resume"),
        ("rest 1,5 min", "rest 90"),
        ("skip everything except squat", "skip barbell bench press"),
        ("skip all but bench", "skip barbell back squat"),
        ("no training this week", "pause 2025-03-17"),
        ("no squats today", "skip barbell back squat"),
        ("no squat tonight", "skip barbell back squat"),
        ("skip all sets of squat", "skip barbell back squat"),
        ("skip curls", "skip hammer curl"),
        ("remind me on 3 dec at 6pm", "remind 2025-12-03 18:00:00"),
        ("remind me 3 april at 6pm", "remind 2025-04-03 18:00:00"),
        ("snooze until 8pm", "snooze 2025-03-14 20:00:00"),
        ("skip squat, will do them tomorrow", "skip barbell back squat"),
        ("no time for squats, swap them for leg press", "swap barbell back squat leg press"),
    ],
)
def test_a_request_is_heard(text, meant):
    assert said(text, DAY) == f"request: {meant}"


@pytest.mark.parametrize(
    ("text", "hours"),
    [
        ("only message me between 8 and 20", "20:00 08:00"),
        ("message me only between 8am and 8pm", "20:00 08:00"),
        ("only messages after 8", "before 08:00"),
        ("only text me before 9", "after 21:00"),
        ("no messages before 7 or after 21", "21:00 07:00"),
        ("no messages after 21 or before 7", "21:00 07:00"),
    ],
)
def test_hours_with_messages_and_hours_without_are_told_apart(text, hours):
    found = read(text, DAY, KNOWN)

    assert isinstance(found, Act)
    assert (found.name, found.text) == ("quiet", hours)


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("20 dec: squat 3x5 100", "barbell back squat 3×5 at 100 kg on 2024-12-20"),
        ("12 dec\nbench 3x8 60", "barbell bench press 3×8 at 60 kg on 2024-12-12"),
        ("dec 12\nbench 3x8 60", "barbell bench press 3×8 at 60 kg on 2024-12-12"),
        ("sun 1 dec\nbench 3x8 60", "barbell bench press 3×8 at 60 kg on 2024-12-01"),
        ("squat 3x5 100 on 20 dec", "barbell back squat 3×5 at 100 kg on 2024-12-20"),
        ("move to 3 dec", "request: move 2025-12-03"),
        ("dec 3x8 60", "decline barbell bench press 3×8 at 60 kg"),
        ("on dec 8 8 8 at 60", "decline barbell bench press 3×8 at 60 kg"),
        ("bench 60x8, dec 50x8", "barbell bench press 8 at 60 kg; decline barbell bench press 8 at 50 kg"),
    ],
)
def test_december_beside_a_day_is_no_lift(text, meant):
    assert said(text, situation()) == meant


RAISING = situation(plan=[("dumbbell lateral raise", 3, 12, "9"), ("push-up", 2, None, None)])


@pytest.mark.parametrize(
    ("text", "lifts"),
    [
        ("skip raises and push ups", {"dumbbell lateral raise", "push-up"}),
        ("skip push ups and raises", {"dumbbell lateral raise", "push-up"}),
        ("skip raises", {"dumbbell lateral raise"}),
        ("swap raises for cable lateral raise", {"dumbbell lateral raise"}),
    ],
)
def test_a_word_of_one_planned_lift_names_it(text, lifts):
    found = read(text, RAISING, KNOWN)

    assert isinstance(found, Act)
    assert {found.exercise, *found.also} == lifts
