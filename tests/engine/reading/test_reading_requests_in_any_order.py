"""Requests whose words stand in any order: a rest, time off, quiet hours, something else for a lift, a best of all."""

from __future__ import annotations

import pytest

from engine.reading import read
from engine.reading.values import Act
from tests.engine.reading.saying import KNOWN, Conversation, said, standing_after
from tests.engine.reading.test_reading_requests_worded import BENCHING, rows

REQUESTS = {
    "rest 120": """
        start a 2 minute timer | 2 min timer please | can you run a 2 min countdown | count down 2 min
        need a 2 min rest now | gimme 2 mins rest | 2 minutes on the clock please | tell me when 2 min are up
        let me know when 2 minutes have passed | could you time 2 minutes for me | 2 min breather please
        start a 2 min tiemr | strat a 2 min timer | another 2 min rest pls
    """,
    "rest 90": """
        90 sec rest pls | 90s break please | set the clock, 90 seconds | 90 sec timer now | 90 sec rets please
        i want 90 seconds of rest | 1 min 30 timer
    """,
    "rest 60": "one minute rest please | give me a minute of rest | a minute on the timer",
    "pause 2025-03-28": """
        taking 2 weeks off | 2 weeks off please | having two weeks off | i'm off for 2 weeks | off for two weeks
        need a break of two weeks | won't train for 2 weeks | not training for the next two weeks
        two weeks of holiday | i'll be away two weeks | takng 2 weeks off | taking 2 wekes off
    """,
    "pause 2025-03-21": """
        taking a week off | going on holiday for a week | off for a whole week | no training for a week
    """,
    "pause 2025-03-17": """
        taking the week off | away untl monday | out of town till monday | won't be training until monday
    """,
    "quiet": """
        no messages after 10pm | don't text me after 9 | no pings before 8 am please | do not message me after 21:30
        no notifications between 10pm and 7 | no reminders after 9 | please don't write to me before 7
        stop texting me after 10 at night | no mesages after 9pm | silence after 22:00 | messages off after 10
    """,
    "swap seated cable row": """
        the rower's broken, what else for rows | what else can i do for rows? | something else for rows please
        what could replace rows
        any alternative to rows | the bar is gone so what else for rows
    """,
    "swap barbell row": "no barbell row here, what else",
    "swap leg press": """
        leg press is out of order, what instead | what other exercise for leg press | what to do instead of leg press
    """,
    "undo": """
        take back what i just logged | remove what i logged pls | delete the thing i just entered
        scrap what i just put in | take bakc what i just logged | take back what i just loged
    """,
    "best barbell bench press": """
        best bench ever | my best bench of all time | heaviest bench i've ever done | what's my biggest bench to date
        all time best bench | bench max so far
    """,
}

TALK = {
    "no sets": """
        90 sec rest | 2 min rest between sets | rested 2 min | took a 3 min rest | is 2 min rest enough?
        training for 2 weeks now | i'm back for two weeks | took two weeks off | after two weeks off | rest of the week
        two weeks off was great | gym for 30 days | no coffee after 3 | felt like the best bench ever
        what else | that was my best bench | no bench after monday | give me a minute
    """
}

QUIET = {
    "after 21:00": "no messages after 9pm | no texts after 9 | quiet after 9 | don't ping me past 21:00",
    "before 08:00": "don't text me before 8 | no messages before 8am",
    "22:00 07:00": "quiet 10 to 7 | no messages between 10pm and 7 | quiet 22:00 7:00 | don't text me from 10 until 7",
    "09:00 17:00": "quiet 9:00 to 17:00",
}


@pytest.mark.parametrize(("text", "meant"), rows(REQUESTS))
def test_a_request_is_heard_in_any_order(text: str, meant: str) -> None:
    assert said(text, BENCHING) == f"request: {meant}"


@pytest.mark.parametrize(("text", "meant"), rows(TALK))
def test_what_is_only_told_asks_for_nothing(text: str, meant: str) -> None:
    assert said(text, BENCHING) == meant


@pytest.mark.parametrize(("text", "meant"), rows(QUIET))
def test_a_bare_hour_at_which_quiet_begins_is_one_of_the_evening(text: str, meant: str) -> None:
    assert request_text(text) == meant


def request_text(text: str) -> str:
    """What the request carries on."""
    outcome = read(text, BENCHING, KNOWN)
    return outcome.text if isinstance(outcome, Act) else ""


@pytest.mark.parametrize(
    "text",
    [
        "no coffee after 3",
        "no messages after 10",
        "no training after 8",
        "no rest after 8",
        "sorry late, gym at 9",
        "oops, train at 9",
        "oops missed the bus, home at 10",
        "no spotter until 8",
    ],
)
def test_an_hour_of_the_day_behind_a_slip_corrects_no_set(text: str) -> None:
    talk = Conversation()
    talk.say("squat 3x5 100")
    before = list(talk.log)

    talk.say(text)

    assert talk.log == before


@pytest.mark.parametrize(
    "text",
    ["no messages between 22:00 and 7", "no texts between 10pm and 7", "no messages between 22 and 6 please"],
)
def test_quiet_between_two_hours_corrects_no_set(text: str) -> None:
    assert standing_after(f"bench 80x8 | {text}") == "barbell bench press 8 at 80 kg"
