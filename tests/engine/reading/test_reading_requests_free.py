"""Requests in other words: told in any order, in other languages, and with a slip of the thumb in their first words."""

from __future__ import annotations

import pytest

from engine.reading import read
from engine.reading.values import Act
from tests.engine.reading.saying import KNOWN, said, situation

SQUATTING = situation(doing="barbell back squat")

IN_OTHER_WORDS = (
    ("drop calves today", "skip standing calf raise"),
    ("leaving out deadlifts today", "skip conventional deadlift"),
    ("leave deadlifts out today", "skip conventional deadlift"),
    ("no time for face pulls, skip them", "skip face pull"),
    ("can't be bothered with face pulls, skip", "skip face pull"),
    ("lass kreuzheben heute weg", "skip conventional deadlift"),
    ("kreuzheben heute weglassen", "skip conventional deadlift"),
    ("instead of squats i'll do leg press", "swap barbell back squat leg press"),
    ("leg press instead of squat please", "swap barbell back squat leg press"),
    ("i'd rather do leg press than squat", "swap barbell back squat leg press"),
    ("bench is taken, can i use the chest press instead", "swap barbell bench press machine chest press"),
    ("leg press has a queue, do front squats instead", "swap leg press barbell front squat"),
    ("queue at the leg press, front squats instead", "swap leg press barbell front squat"),
    ("scrap it", "undo"),
    ("statt kniebeugen mache ich beinpresse", "swap barbell back squat leg press"),
    ("presse à cuisses au lieu de squat", "swap barbell back squat leg press"),
    ("plan as text", "plan"),
    ("send me the plan as text", "plan"),
    ("was habe ich letztes mal beim kreuzheben gemacht?", "history conventional deadlift"),
    ("qué hice la última vez en sentadilla", "history barbell back squat"),
    ("что я делал в прошлый раз в приседе", "history barbell back squat"),
    ("bankdrücken verlauf", "history barbell bench press"),
    ("on holiday until next thursday, pause", "pause 2025-03-20"),
    ("im ill until monday, pause", "pause 2025-03-17"),
    ("pause, away until next week", "pause 2025-03-17"),
    ("pause my plan, back on the 24th", "pause 2025-03-24"),
    ("nächste woche urlaub, pause bis 24.3.", "pause 2025-03-24"),
    ("pausa até segunda", "pause 2025-03-17"),
    ("herinner me om 18:30", "remind 2025-03-14 18:30:00"),
    ("gym done ✅", "done"),
    ("im finished for today", "done"),
    ("leg day done", "done"),
    ("workout complete", "done"),
    ("and another one the same", "repeat"),
    ("another two sets like that", "repeat 2"),
    ("3 more sets like the last one", "repeat 3"),
    ("undooo plz", "undo"),
    ("annule le dernier", "undo"),
    ("show me the plan for today", "today"),
    ("what have i got on today", "today"),
    ("which exercise is next", "next"),
    ("how many sets have i done this week?", "week"),
    ("how's the week going so far", "week"),
    ("past front squats please", "history barbell front squat"),
    ("bench pr", "best barbell bench press"),
    ("squat stats", "history barbell back squat"),
    ("bench -> dips", "swap barbell bench press dip"),
    ("instead of bench can i do dips", "swap barbell bench press dip"),
    ("alternatives to bench?", "swap barbell bench press"),
    ("can i leave out bench today", "skip barbell bench press"),
    ("what's left today", "today"),
    ("what should i do now", "next"),
    ("finish workout", "done"),
    ("i'm back, resume", "resume"),
    ("remind me in an hour", "remind 2025-03-14 19:20:00"),
    ("on holiday till 1 april", "pause 2025-04-01"),
)


@pytest.mark.parametrize(("text", "meant"), [pytest.param(*row, id=row[0]) for row in IN_OTHER_WORDS])
def test_a_request_in_other_words(text: str, meant: str) -> None:
    assert said(text, SQUATTING) == f"request: {meant}"


NO_REQUESTS = (
    "did leg press instead of squat",
    "should i do leg press instead of squat?",
    "squats felt heavy last time",
    "almost done",
    "not done yet",
    "done with squats",
    "warm up done",
    "plan for friday is 5x3 at 140",
    "what if i cant get 5 reps at 100?",
    "replaced squat with leg press",
    "step",
    "great workout today",
    "how's the weather",
    "quiet in here today",
    "export beer",
    "join us",
    "done for",
    "again?",
    "last time squat felt awful",
    "drop in",
    "swap face pulls and curls for leg press",
)


@pytest.mark.parametrize("text", NO_REQUESTS)
def test_talk_that_sounds_like_a_request(text: str) -> None:
    assert said(text, SQUATTING) == "no sets"


MENDED = (
    ("swpa squat for leg press", "swap barbell back squat leg press"),
    ("swsp squat for leg press", "swap barbell back squat leg press"),
    ("replcae squat with leg press", "swap barbell back squat leg press"),
    ("untis lb", "units"),
    ("unis lb", "units"),
    ("remid me at 18:30", "remind 2025-03-14 18:30:00"),
    ("hisory squat", "history barbell back squat"),
    ("skpi curls", "skip barbell curl"),
    ("wyh squat", "why barbell back squat"),
    ("rset 90", "rest 90"),
    ("bodyweigth 82", "bodyweight"),
    ("pasue until monday", "pause 2025-03-17"),
)


@pytest.mark.parametrize(("text", "meant"), [pytest.param(*row, id=row[0]) for row in MENDED])
def test_a_mistyped_head_is_mended_where_what_it_needs_stands_behind(text: str, meant: str) -> None:
    assert said(text, SQUATTING) == f"request: {meant}"


@pytest.mark.parametrize(("text", "read_as"), [("untis lb", "units lb"), ("hisory squat", "history squat")])
def test_what_a_mended_request_was_read_as_is_told(text: str, read_as: str) -> None:
    outcome = read(text, SQUATTING, KNOWN)

    assert isinstance(outcome, Act)
    assert outcome.mended == read_as


@pytest.mark.parametrize(
    "text", ["test 90", "rwo 3x12 55", "swpa 3x12 55", "foget press", "tlel ann: great week", "water", "skin"]
)
def test_nothing_is_mended_into_sets_silence_or_a_message_to_somebody(text: str) -> None:
    assert not said(text, SQUATTING).startswith("request")


MOVES = (
    ("push it to monday", "2025-03-17"),
    ("push it back to monday please", "2025-03-17"),
    ("postpone it to sunday", "2025-03-16"),
    ("can you push today's workout to monday", "2025-03-17"),
    ("can we do this tomorrow instead", "2025-03-15"),
    ("can i do todays session tomorrow?", "2025-03-15"),
    ("let's train on sunday instead", "2025-03-16"),
    ("i'll do this tomorrow", "2025-03-15"),
    ("i want to do it next monday instead", "2025-03-17"),
)


@pytest.mark.parametrize(("text", "day"), MOVES)
def test_a_session_on_another_day(text, day):
    assert said(text, situation()) == f"request: move {day}"


@pytest.mark.parametrize(
    "text",
    [
        "i'll train tomorrow",
        "push day tomorrow",
        "can we do bench tomorrow",
        "tomorrow is busy",
        "i did this yesterday",
    ],
)
def test_talk_of_another_day_moves_nothing(text):
    outcome = read(text, situation(), KNOWN)

    assert not (isinstance(outcome, Act) and outcome.name == "move")


LAST_WEEK = (
    ("volume last week", "volume 2025-03-09"),
    ("last week's volume", "volume 2025-03-09"),
    ("how much volume last week?", "volume 2025-03-09"),
    ("how many sets last week", "volume 2025-03-09"),
    ("chest volume last week", "volume 2025-03-09"),
    ("how was last week", "week 2025-03-09"),
    ("summary of last week", "week 2025-03-09"),
    ("last week", "week 2025-03-09"),
    ("volumen letzte woche", "volume 2025-03-09"),
)


@pytest.mark.parametrize(("text", "meant"), LAST_WEEK)
def test_last_week_is_asked_about(text, meant):
    assert said(text, SQUATTING) == f"request: {meant}"


@pytest.mark.parametrize("text", ["last week was hard", "tired since last week", "letzte woche war hart"])
def test_talk_of_last_week_asks_for_nothing(text):
    assert said(text, SQUATTING) == "no sets"


def test_a_number_behind_volume_is_no_set():
    assert said("volume 4 march", SQUATTING) == "no sets"


MISTYPED_DAYS = (("todya", "today"), ("tdoay", "today"), ("agian", "repeat"), ("platse 100", "plates"))


@pytest.mark.parametrize(("text", "meant"), MISTYPED_DAYS)
def test_requests_of_one_mistyped_word(text, meant):
    assert said(text, SQUATTING) == f"request: {meant}"


@pytest.mark.parametrize(
    "text", ["i only have dumbbells today", "only dumbbells here", "just dumbbells today", "i have only dumbbells"]
)
def test_with_other_equipment_the_first_lift_that_needs_more_is_swapped(text):
    plan = [("dumbbell row", 3, 8, "20"), ("barbell bench press", 3, 8, "60")]

    assert said(text, situation(plan=plan)) == "request: swap barbell bench press"


@pytest.mark.parametrize("text", ["no pause", "no belt, no pause", "squat 3x5 100, no pause"])
def test_a_pause_denied_is_none_from_training(text: str) -> None:
    assert "pause" not in said(text, SQUATTING)
