"""First contact: the cautions once, whatever comes first; and no open question swallows a set, pain or a request."""

from __future__ import annotations

from datetime import timedelta

import pytest

from tests.bot.chatting import PLAN, buttons, said, texts

CAUTION = "Not medical advice."


def code_of(chats):
    return said(chats.says("kit", "/start", "invite")).split("/start ")[1].split()[0]


@pytest.mark.parametrize(
    "first",
    [
        pytest.param(["/start"], id="start"),
        pytest.param(["/start", "/start"], id="start twice"),
        pytest.param(["squat 3x5 100"], id="a set"),
        pytest.param(["squat 3x5 100", "/start"], id="a set, then start"),
        pytest.param(["row 3x10 60"], id="a set in doubt"),
        pytest.param(["hello there"], id="talk"),
        pytest.param(["my knee hurts"], id="pain"),
        pytest.param(["today"], id="a request"),
        pytest.param(["undo"], id="undo"),
        pytest.param([PLAN], id="a plan"),
        pytest.param(["/privacy"], id="privacy"),
        pytest.param(["erase", "keep my data"], id="erase, thought better of"),
    ],
)
def test_the_cautions_are_said_exactly_once(chats, first):
    out = []
    for words in [*first, "London", "kg", "squat 90x5", "what a day", "today"]:
        out += chats.says("ana", words)

    assert said(out).count(CAUTION) == 1


def test_after_a_file_sent_first_the_cautions_come_with_her_first_words(chats):
    out = chats.sends("ana", "plan.txt", PLAN.encode())
    out += chats.says("ana", "squat 90x5")

    assert "Plan saved" in said(out)
    assert said(out).count(CAUTION) == 1


def test_an_invited_athlete_gets_the_cautions_and_one_question_at_a_time(chats):
    code = code_of(chats)
    out = chats.says("ana", f"/start {code}")

    assert said(out).count(CAUTION) == 1
    assert "city" not in said(out)
    assert set(buttons(out)) == {"Accept", "Not now"}


def test_the_first_message_is_short(chats):
    (hello,) = texts(chats.says("ana", "/start"))

    assert "I'm a bot" in hello
    assert hello.count("?") == 1


# ---- the first questions


@pytest.mark.parametrize(
    ("answers", "zone", "unit"),
    [
        pytest.param(["London", "kg"], "Europe/London", "kg", id="both answered"),
        pytest.param(["berlin", "lbs"], "Europe/Berlin", "lb", id="in her own spelling"),
        pytest.param(["Europe/Berlin", "pounds"], "Europe/Berlin", "lb", id="by the zone's name"),
        pytest.param(["skip", "skip"], None, None, id="both skipped"),
        pytest.param(["tap: v1:skip-zone", "tap: v1:first-unit:lb"], None, "lb", id="by taps"),
        pytest.param(["Nowhereville", "Paris", "kg"], "Europe/Paris", "kg", id="an unknown town, then a known one"),
    ],
)
def test_the_first_questions_are_answered_or_passed_over(chats, answers, zone, unit):
    chats.says("ana", "/start")
    for answer in answers:
        chats.taps("ana", answer.removeprefix("tap: ")) if answer.startswith("tap: ") else chats.says("ana", answer)
    settings = chats.standing("ana")["settings"]

    assert settings.get("zone") == zone
    assert settings.get("unit") == unit


def broken_plan(chats):
    chats.says("ana", "plan: one, 4 weeks\nday mon: legs\nbench press at 50 kg")


def invited(chats):
    chats.says("ana", "hello", f"/start {code_of(chats)}")


def plan_asked_for(chats):
    code = said(chats.says("ana", "invite")).split("/start ")[1].split()[0]
    chats.says("ben", "hello", f"/start {code}", "yes")
    chats.says("ana", "plan for ben")


OPENED = {
    "zone": lambda chats: chats.says("ana", "/start"),
    "zone, tried": lambda chats: chats.says("ana", "/start", "Nowhereville"),
    "unit": lambda chats: chats.says("ana", "/start", "London"),
    "reading": lambda chats: chats.says("ana", "hello", "press 3x8 40"),
    "erase": lambda chats: chats.says("ana", "hello", "erase"),
    "consent": invited,
    "swap": lambda chats: chats.says("ana", "hello", PLAN, "swap squat"),
    "proposal": lambda chats: chats.says("ana", "hello", PLAN, "more quads"),
    "plan for": plan_asked_for,
    "mending": broken_plan,
}
"""One question open with Ana, each of another kind."""


QUESTIONS = [question for question in OPENED if question != "mending"]
SETS = ("squat 3x5 100", "bench 60x8, squat 55x12")


@pytest.mark.parametrize("words", SETS)
@pytest.mark.parametrize("question", QUESTIONS)
def test_no_question_swallows_a_set(chats, question, words):
    OPENED[question](chats)
    before = len(chats.log("ana"))
    chats.says("ana", words)

    assert len(chats.log("ana")) > before


@pytest.mark.parametrize("question", OPENED)
def test_no_question_swallows_pain(chats, question):
    OPENED[question](chats)
    out = chats.says("ana", "sharp pain in my left knee")

    assert "medical help" in said(out)
    assert any(pain for _, _, pain in chats.standing("ana")["notes"])


REQUESTS = [
    ("undo", ("Undone", "Nothing to undo", "Left out: “press 3x8 40”")),
    ("week", ("This week so far",)),
    ("next", ("Next", "No plan yet", "Barbell back squat", "Rest day")),
    ("rest 2 min", ("Rest 2 min",)),
    ("remind me 18:00 mon", ("Reminders at 18:00",)),
    ("note: slept badly", ("Note kept",)),
]


@pytest.mark.parametrize(("words", "answers"), REQUESTS, ids=[words for words, _ in REQUESTS])
@pytest.mark.parametrize("question", OPENED)
def test_no_question_swallows_a_request(chats, question, words, answers):
    OPENED[question](chats)
    out = said(chats.says("ana", words))

    assert any(answer in out for answer in answers), out


def test_a_line_of_the_plan_still_mends_it_after_a_request_between(chats):
    broken_plan(chats)
    chats.says("ana", "week", "my elbow hurts a little")
    out = chats.says("ana", "bench press 3x8 at 50 kg")

    assert "Plan saved" in said(out)


@pytest.mark.parametrize(
    ("question", "tap"),
    [
        pytest.param("reading", "v1:first-unit:kg", id="the unit, while a reading is open"),
        pytest.param("reading", "v1:skip-zone", id="the zone, while a reading is open"),
        pytest.param("reading", "v1:keep", id="keep my data, while a reading is open"),
        pytest.param("consent", "v1:skip-zone", id="the zone, while consent is open"),
    ],
)
def test_a_button_of_an_older_question_leaves_the_open_one_open(chats, question, tap):
    OPENED[question](chats)
    chats.taps("ana", tap)
    ana = chats.person("ana").id
    with chats.store() as store:
        still_open = store.questions.open(ana, chats.at)

    assert still_open is not None
    assert still_open.payload["kind"] == {"reading": "sets", "consent": "consent"}[question]


def test_an_answer_records_against_the_message_it_is_about(chats):
    chats.says("ana", "hello", "press 3x8 40", "overhead")
    asked_about = chats.parties["ana"].messages[-2]
    ana = chats.person("ana").id
    with chats.store() as store:
        sets = store.sets.of_message(ana, asked_about)

    assert [(one.done.exercise, one.done.reps) for one in sets] == [("barbell overhead press", 8)] * 3


def test_a_question_unanswered_for_hours_lapses(chats):
    chats.says("ana", "hello")
    pick = next(iter(buttons(chats.says("ana", "press 3x8 40")).values()))
    chats.at += timedelta(hours=4)
    chats.says("ana", "overhead")

    assert chats.log("ana") == []
    chats.taps("ana", pick)
    assert len(chats.log("ana")) == 3, "the button still names its reading"


@pytest.mark.parametrize(
    ("words", "log"),
    [
        pytest.param(("bench 135x8", "lbs"), [("barbell bench press", 8, "135 lb")], id="before any unit is asked for"),
        pytest.param(("london", "bench 135x8", "lb"), [("barbell bench press", 8, "135 lb")], id="as the answer"),
        pytest.param(("london", "bench 60kg x8", "lb"), [("barbell bench press", 8, "60 kg")], id="a unit was typed"),
        pytest.param(("london", "bench 60x8", "kg"), [("barbell bench press", 8, "60 kg")], id="the same unit"),
    ],
)
def test_a_unit_told_behind_the_first_sets_is_theirs(chats, words, log):
    chats.says("ana", "/start", *words)

    assert chats.log("ana") == log
