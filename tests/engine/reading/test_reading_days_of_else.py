"""Days that are of something else than the sets beside them: of an illness, a plan, or sets that were beaten."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, datetime

import pytest

from engine.reading import read
from engine.reading.values import Asked, Doubt, Logged
from tests.engine.reading.saying import KNOWN, said, situation

SQUATS = "barbell back squat 3×5 at 100 kg"


@pytest.mark.parametrize(
    "text",
    [
        "sick 4 days ago, squat 3x5 100",
        "squat 3x5 100, donated blood 3 days ago",
        "squat 3x5 100, new shoes 2 days ago",
        "squat 3x5 100, started creatine 2 weeks ago",
        "kniebeuge 3x5 100, krank vor 2 tagen",
        "enfermo hace 4 días, sentadilla 3x5 100",
        "malade il y a 4 jours, squat 3x5 100",
        "sjuk för 4 dagar sedan, knäböj 3x5 100",
        "squat 3x5 100 and the rest on tuesday",
        "squat 3x5 100 bench tuesday",
        "squat 3x5 100 deads on tuesday",
        "squat 3x5 100 and upper on tuesday",
        "squat 3x5 100, comp saturday",
        "squat 3x5 100, yesterday sick",
        "kniebeuge 3x5 100, am montag geimpft",
        "sentadilla 3x5 100, ayer enfermo",
        "agachamento 3x5 100, ontem doente",
        "squat 3x5 100 et le reste mardi",
        "knäböj 3x5 100 och resten på tisdag",
        "kniebeuge 3x5 100 bankdrücken am dienstag",
        "sentadilla 3x5 100 press banca el martes",
        "agachamento 3x5 100 supino na terça",
        "knäböj 3x5 100 bänkpress på tisdag",
    ],
)
def test_a_day_that_may_be_of_something_else_is_asked_about(text: str) -> None:
    outcome = read(text, situation(), KNOWN)

    assert isinstance(outcome, Asked)
    assert outcome.doubt is Doubt.DAY
    assert said(text) == f"ask: {SQUATS}"


@pytest.mark.parametrize(
    "text",
    [
        "2 days ago: squat 3x5 100",
        "squat 3x5 100 2 days ago",
        "squat 2 days ago 3x5 100",
        "kniebeuge 3x5 100 vor 2 tagen",
        "hace 2 días sentadilla 3x5 100",
        "squat 3x5 100 il y a 2 jours",
        "há 2 dias agachamento 3x5 100",
        "för 2 dagar sedan knäböj 3x5 100",
        "присед 3х5 100 2 дня назад",
    ],
)
def test_days_counted_back_are_those_of_the_sets_they_stand_beside(text: str) -> None:
    assert said(text) == f"{SQUATS} on 2025-03-12"


@pytest.mark.parametrize(
    "text",
    [
        "beat yesterday's 100x5 with squat 105x5",
        "beat monday's 100x5, squat 105x5",
        "squat 105x5 vs yesterday's 100x5",
        "squat 105x5, up from monday's 100x5",
        "squat 105x5 beats tuesday 100x5",
        "squat 105x5 better than monday 100x5",
        "squat 105x5, up from 100x5 on monday",
        "squat 105x5 (was 100x5 monday)",
        "squat 105x5, was 100x5 on tuesday",
        "topped yesterday's 100x5 with squat 105x5",
        "improved on monday's 100x5 with 105x5 squat",
        "kniebeuge 105x5, mehr als gestern 100x5",
        "squat 105x5, meglio di ieri 100x5",
    ],
)
def test_what_another_day_came_to_is_no_set_beside_those_that_beat_it(text: str) -> None:
    assert said(text) == "barbell back squat 5 at 105 kg"


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("3x8 60 bench, 3x5 100 squat yesterday",
         "barbell bench press 3×8 at 60 kg; barbell back squat 3×5 at 100 kg on 2025-03-13"),
        ("bench 3x8 60 close grip on tuesday", "close-grip bench press 3×8 at 60 kg on 2025-03-11"),
        ("squat 3x5 100 2 min rest on tuesday", f"{SQUATS} on 2025-03-11"),
        ("squat 3x5 100, yesterday felt good", f"{SQUATS} on 2025-03-13"),
        ("squat 3x5 100 yesterday, wobbly", f"{SQUATS} on 2025-03-13"),
        ("dl: 60 kg*7,6,4 4 days ago", "conventional deadlift 7 at 60 kg, 6 at 60 kg, 4 at 60 kg on 2025-03-10"),
        ("squat 3x5 100, legs still dead from 2 days ago", SQUATS),
    ],
)  # fmt: skip
def test_words_beside_a_day_leave_the_sets_what_they_are(text: str, meant: str) -> None:
    assert said(text) == meant


@pytest.mark.parametrize(
    "text", ["squat 3x5 100 back on friday", "squat 3x5 100, exam friday", "party friday, squat 3x5 100"]
)
def test_a_day_that_is_today_is_not_asked_about(text: str) -> None:
    assert said(text) == SQUATS


@pytest.mark.parametrize(
    "text",
    [
        "took tuesday off, squat 3x5 100",
        "wednesday was off, squat 3x5 100",
        "mittwoch frei, kniebeuge 3x5 100",
        "el lunes descansé, sentadilla 3x5 100",
        "lundi off. squat 3x5 100",
        "lunedì riposo, squat 3x5 100",
        "maandag vrij, squat 3x5 100",
        "poniedziałek wolny, przysiad 3x5 100",
        "segunda folga, agachamento 3x5 100",
        "понедельник выходной, присед 3x5 100",
        "måndag ledigt, knäböj 3x5 100",
        "first session since tuesday: squat 3x5 100",
        "prima sessione da martedì: squat 3x5 100",
        "первая тренировка со вторника: присед 3x5 100",
        "första passet sedan tisdag: knäböj 3x5 100",
        "same as monday: squat 3x5 100",
        "gleich wie montag: kniebeuge 3x5 100",
        "uguale a lunedì: squat 3x5 100",
        "to samo co w poniedziałek: przysiad 3x5 100",
        "то же что в понедельник: присед 3x5 100",
        "still tired from monday: squat 3x5 100",
    ],
)
def test_a_day_off_and_one_that_is_compared_with_head_no_sets(text: str) -> None:
    assert said(text) == SQUATS


@pytest.mark.parametrize(
    "text",
    [
        "a week ago squat 3x5 100",
        "week ago today squat 3x5 100",
        "week ago: squat 3x5 100",
        "1 week ago squat 3x5 100",
        "vor einer woche kniebeuge 3x5 100",
        "hace una semana sentadilla 3x5 100",
        "il y a une semaine squat 3x5 100",
        "una settimana fa squat 3x5 100",
        "een week geleden squat 3x5 100",
        "tydzień temu przysiad 3x5 100",
        "há uma semana agachamento 3x5 100",
        "неделю назад присед 3x5 100",
        "för en vecka sedan knäböj 3x5 100",
    ],
)
def test_a_week_ago_is_a_day(text: str) -> None:
    assert said(text) == f"{SQUATS} on 2025-03-07"


@pytest.mark.parametrize(
    "text",
    [
        "vor 2 wochen kniebeuge 3x5 100",
        "hace dos semanas sentadilla 3x5 100",
        "il y a 2 semaines squat 3x5 100",
        "2 settimane fa squat 3x5 100",
        "2 weken geleden squat 3x5 100",
        "2 tygodnie temu przysiad 3x5 100",
        "2 semanas atrás agachamento 3x5 100",
        "2 недели назад присед 3x5 100",
        "för två veckor sedan knäböj 3x5 100",
    ],
)
def test_two_weeks_ago_is_a_day(text: str) -> None:
    assert said(text) == f"{SQUATS} on 2025-02-28"


@pytest.mark.parametrize("text", ["weeks ago squat 3x5 100", "some weeks ago i did squat 3x5 100"])
def test_weeks_without_a_number_are_a_story(text: str) -> None:
    assert said(text) == "no sets"


@pytest.mark.parametrize(
    "text",
    [
        "thurs: bench 1x8 80. sat: squat 1x5 100",
        "do: bank 1x8 80. sa: kniebeuge 1x5 100",
        "do: bank 1x8 80, sa: kniebeuge 1x5 100",
        "do: bankdrukken 1x8 80. za: squat 1x5 100",
    ],
)
def test_a_short_day_behind_the_sets_of_another_heads_its_own(text: str) -> None:
    saturday = datetime(2025, 3, 15, 18, 20)  # noqa: DTZ001 — the context's time is the athlete's local one
    told = read(text, replace(situation(), now=saturday), KNOWN)
    assert isinstance(told, Logged)
    assert told.days == (date(2025, 3, 13), date(2025, 3, 15))
