"""A request is that request, whatever question is open: nothing is recorded or taught by it, and the question waits."""

from __future__ import annotations

from datetime import timedelta

import pytest

from tests.bot.chatting import PLAN, said

BEGUN = ("/start", "London", "kg", PLAN, "bench 3x5 60", "squat 3x5 90")
REQUESTS = (
    "best bench",
    "bench pr",
    "/best bench",
    "best press",
    "history bench",
    "show me bench history",
    "last overhead press",
    "how much did I bench",
    "why squat",
    "why bench",
    "next",
    "today",
    "today fri",
    "week",
    "volume",
    "volume chest",
    "volume 1",
    "bench volume",
    "next bench",
    "today bench",
    "plan bench",
    "session bench",
    "plan",
    "check",
    "preview 6",
    "what if I swap squat for leg press",
    "warm up squat",
    "plates 60",
    "my gym",
    "help",
    "settings",
    "week please",
    "ok, best bench",
)
SETS_ASKED = {
    "which lift": "press 3x8 40",
    "which of many lifts": "curl 3x8 10",
    "a range": "bench 3x8-10 60",
    "an unlikely load": "squat 3x5 900",
    "a name not known": "flurb press 3x8 40",
    "whose": "tom: bench 3x8 60",
    "one number or another": "bench 60 3x8 or 9",
}
OTHERS = {
    "what to swap in": (*BEGUN, "swap leg extension"),
    "a proposal": (*BEGUN, "more quads"),
}


def open_now(chats, who="ana"):
    me = chats.person(who).id
    with chats.store() as store:
        question = store.questions.open(me, chats.at)
    return question.id if question is not None else None


def stands(chats):
    standing = dict(chats.standing("ana"))
    standing.pop("notes")
    return standing


def asks(chats, request):
    """The answer to a request; no time passes, so that the question does not expire."""
    at = chats.at
    answer = said(chats.says("ana", request))
    chats.at = at
    return answer


def asked(chats, *texts):
    chats.says("ana", *texts)
    found = open_now(chats)
    assert found is not None, f"{texts[-1]} asks nothing"
    return found


@pytest.mark.parametrize("words", [pytest.param(words, id=what) for what, words in SETS_ASKED.items()])
def test_a_request_beside_a_question_about_sets_changes_nothing(chats, words):
    question, before = asked(chats, *BEGUN, words), stands(chats)
    wrong = []
    for request in REQUESTS:
        answer = asks(chats, request)
        if stands(chats) != before or open_now(chats) != question or "Saved." in answer:
            wrong.append((request, answer))
            break

    assert wrong == []


@pytest.mark.parametrize("opening", [pytest.param(words, id=what) for what, words in OTHERS.items()])
def test_a_request_beside_any_other_question_changes_nothing(chats, opening):
    question, before = asked(chats, *opening), stands(chats)
    wrong = []
    for request in REQUESTS:
        answer = asks(chats, request)
        if stands(chats) != before or open_now(chats) != question:
            wrong.append((request, answer))
            break

    assert wrong == []


def test_a_request_beside_an_offered_swap_changes_nothing(chats):
    plan = "plan: x, 4 weeks\nday mon: a\nrdl 3x8 at 80 kg\nday tue: b\nleg extension 3x12 at 40 kg"
    chats.says("ana", "/start", "London", "kg", plan, "rdl 3x8 80")
    chats.at += timedelta(days=1)
    question, before = asked(chats, "swap leg extension for nordic curl"), stands(chats)
    for request in (*REQUESTS, "best nordic curl", "history sissy squat", "why leg extension"):
        asks(chats, request)

        assert (stands(chats), open_now(chats)) == (before, question), request


@pytest.mark.parametrize(
    "request_", ["best bench", "history", "why squat", "next", "today", "week", "volume chest", "help"]
)
@pytest.mark.parametrize("opening", [("/start",), ("/start", "London")], ids=["the clock", "the unit"])
def test_a_request_is_no_answer_to_the_first_questions(chats, opening, request_):
    question = asked(chats, *opening)
    before = stands(chats)
    chats.says("ana", request_)

    assert (stands(chats), open_now(chats)) == (before, question)


@pytest.mark.parametrize(
    ("words", "answer", "logged"),
    [
        pytest.param("press 3x8 40", "bench", ("barbell bench press", 8, "40 kg"), id="a lift"),
        pytest.param("press 3x8 40", "the bench one", ("barbell bench press", 8, "40 kg"), id="the one"),
        pytest.param("press 3x8 40", "overhead", ("barbell overhead press", 8, "40 kg"), id="a variant"),
        pytest.param("press 3x8 40", "1", None, id="a number of the list"),
        pytest.param("press 3x8 40", "the first", None, id="the first"),
        pytest.param("press 3x8 40", "the second one please", None, id="the second"),
        pytest.param("press 3x8 40", "bench today", ("barbell bench press", 8, "40 kg"), id="a lift today"),
        pytest.param("press 3x8 40", "i meant bench", ("barbell bench press", 8, "40 kg"), id="what was meant"),
        pytest.param(
            "press 3x8 40", "press means bench press", ("barbell bench press", 8, "40 kg"), id="what it means"
        ),
        pytest.param("press 3x8 40", "log it as bench", ("barbell bench press", 8, "40 kg"), id="logged as"),
        pytest.param("press 3x8 40", "hang on, bench", ("barbell bench press", 8, "40 kg"), id="after a pause"),
        pytest.param("bench 3x8-10 60", "10 9 8", ("barbell bench press", 8, "60 kg"), id="what came of a range"),
        pytest.param("squat 3x5 900", "90", ("barbell back squat", 5, "90 kg"), id="the load meant"),
        pytest.param(
            "squat 3x5 900", "no 90 kg", ("barbell back squat", 5, "90 kg"), id="the load meant, with its unit"
        ),
        pytest.param("tom: bench 3x8 60", "mine", ("barbell bench press", 8, "60 kg"), id="whose"),
    ],
)
def test_a_true_answer_is_taken(chats, words, answer, logged):
    question = asked(chats, *BEGUN, words)
    before = len(chats.log("ana"))
    chats.says("ana", "week", answer)

    assert open_now(chats) != question
    assert len(chats.log("ana")) > before
    assert logged is None or chats.log("ana")[-1] == logged


@pytest.mark.parametrize(("answer", "unit"), [("kg", "kg"), ("lb", "lb"), ("pounds", "lb")])
def test_the_unit_is_answered_after_a_request(chats, answer, unit):
    chats.says("ana", "/start", "London", "week", answer, "bench 5x60")

    assert chats.log("ana")[-1][2].endswith(unit)


def test_what_a_new_question_crowds_out_is_named(chats):
    chats.says("ana", *BEGUN)
    chats.says("ana", "press 3x8 40")

    assert "Still not saved, never answered: “press 3x8 40”" in said(chats.says("ana", "swap leg extension"))
    assert "Still not saved" not in said(chats.says("ana", "today"))


def test_what_the_next_set_lets_lapse_is_named_once(chats):
    chats.says("ana", *BEGUN, "press 3x8 40")
    out = said(chats.says("ana", "squat 90x5"))

    assert out.count("Still not saved, never answered: “press 3x8 40”") == 1


def test_undo_beside_a_question_takes_the_latest_change_and_says_that_the_question_waits(chats):
    question = asked(chats, *BEGUN, "press 3x8 40")
    answer = said(chats.says("ana", "undo"))

    assert "Undone: barbell back squat" in answer
    assert "Still asked, and not saved: “press 3x8 40”" in answer
    assert open_now(chats) == question


def test_undo_beside_a_question_on_a_day_without_changes_leaves_out_what_is_asked_about(chats):
    chats.says("ana", *BEGUN)
    chats.at += timedelta(days=1)
    asked(chats, "press 3x8 40")
    answer = said(chats.says("ana", "undo"))

    assert answer.startswith("Left out: “press 3x8 40”. Nothing was saved for it. undo once more takes back ")
    assert answer.count("press 3x8 40") == 1
    assert open_now(chats) is None
    assert len(chats.log("ana")) == 6


def test_undo_without_a_question_speaks_of_none(chats):
    chats.says("ana", *BEGUN)

    assert "Still asked" not in said(chats.says("ana", "undo"))


def test_a_correction_of_what_stands_leaves_the_question_open(chats):
    question = asked(chats, *BEGUN, "press 3x8 40")
    chats.says("ana", "squat was 92.5")

    assert open_now(chats) == question
    chats.says("ana", "overhead press")
    assert ("barbell back squat", 5, "92.5 kg") in chats.log("ana")
    assert chats.log("ana").count(("barbell overhead press", 8, "40 kg")) == 3


def test_a_bare_number_beside_a_question_asks_the_same_again(chats):
    question = asked(chats, "/start", "London", "kg", "curl 12x10")
    out = said(chats.says("ana", "10 reps"))

    assert open_now(chats) == question
    assert "Which" in out
