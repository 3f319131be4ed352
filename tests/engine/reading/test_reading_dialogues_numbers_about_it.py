"""What is said about the set before with numbers that are none of its own. Common practice, no source; words from
memory.
"""

from __future__ import annotations

from dataclasses import replace

import pytest

from engine.reading import read
from engine.reading.values import Asked, NoSets
from tests.engine.reading.saying import KNOWN, Conversation, dialogues, situation, standing_after

SAID = [
    "that was an 8/10", "that was an easy 8/10", "das war eine 8/10", "fue un 8/10", "c'était un 8/10",
    "that's 640 total", "that's 640kg volume", "thats a 5kg pr", "that was a 5kg pr", "das war ein 5kg pr",
    "c'était un record de 5kg", "thats a pr by 5kg", "last one was a pr by 2", "that was an 8 rep pr",
    "that's 80% of 100", "that's 10 sets of chest this week", "thats 3 sets of chest done", "that's 1x bodyweight",
    "that's 2x bw", "did 3 things wrong", "got 3 things wrong", "habe 3 sachen falsch gemacht", "hice 3 cosas mal",
    "did 2 mistakes", "letztes Mal 7", "letzte Woche waren es 7", "la semana pasada fueron 7",
    "la semaine dernière c'était 7", "la settimana scorsa erano 7", "na semana passada foram 7",
    "на прошлой неделе было 7", "vorige week was het 7", "förra veckan var det 7", "w zeszłym tygodniu było 7",
    "it was 7 last week", "that was a 5/5", "that was my 8 rep max",
    "8/10 hard", "effort 9/10", "that's 3 weeks in a row",
]  # fmt: skip

OPEN = [
    "that's 5 sets today", "that's 3 sets so far", "that's 5 sets done", "that was 8/10", "that was a 100kg pr",
    "that's a 10 rep pr", "it was 200kg in total", "that was a 7/8", "that was an 8/8", "that was my 5 rep max",
    "that was a 5rm", "that's 5 sets of bench today",
]  # fmt: skip

NEARBY = """
bench 80x8 | that was 85 => barbell bench press 8 at 85 kg
bench 80x8 | that was 82.5, a pr => barbell bench press 8 at 82.5 kg
bench 80x8 | that was 3 sets => barbell bench press 3×8 at 80 kg
bench 80x8 | bench 80x8 | that's 2 sets done => barbell bench press 2×8 at 80 kg
bench 3x8 80 | that's 24 total => barbell bench press 3×8 at 80 kg
bench 80x8 | that was 85 total => barbell bench press 8 at 85 kg
bench 80x8 | bench was 3 sets today => barbell bench press 3×8 at 80 kg
bench 80x8 | that was 2 days ago => barbell bench press 8 at 80 kg on 2025-03-12
bench 80x8 | that was 8/3 => barbell bench press 8 at 80 kg on 2025-03-08
bench 80x8 | it was 85, up from last week => barbell bench press 8 at 85 kg
bench 80x8 | 8 like last week => barbell bench press 2×8 at 80 kg
bench 80x8 | 8 wie letzte woche => barbell bench press 2×8 at 80 kg
bench 80x8 | last weight was 85 => barbell bench press 8 at 85 kg
bench 80x8 | previous was 7 => barbell bench press 7 at 80 kg
bench 80x8 | ne avevo ancora 2 => barbell bench press 8 at 80 kg 2 in reserve
bench 80x8 | hatte noch 2 => barbell bench press 8 at 80 kg 2 in reserve
"""


@pytest.mark.parametrize("told", SAID)
def test_what_is_said_about_a_set_changes_nothing(told):
    assert standing_after(f"bench 80x8 | {told}") == "barbell bench press 8 at 80 kg"


@pytest.mark.parametrize("told", OPEN)
def test_what_may_be_about_it_or_of_it_changes_nothing_yet_and_is_asked(told):
    conversation = Conversation()
    conversation.say("bench 80x8")
    outcome = read(told, replace(situation(), recent=tuple(conversation.log)), KNOWN)

    assert standing_after(f"bench 80x8 | {told}") == "barbell bench press 8 at 80 kg"
    assert isinstance(outcome, Asked) or (isinstance(outcome, NoSets) and outcome.unread)


@pytest.mark.parametrize(("told", "standing"), dialogues(NEARBY))
def test_numbers_of_the_set_itself_still_put_it_right(told, standing):
    assert standing_after(told) == standing


def test_the_load_of_both_hands_is_none_of_each():
    assert standing_after("dumbbell bench 30x8 | that's 60kg total") == "dumbbell bench press 8 at 30 kg each"
