"""Pain by date, loads in her own unit, and what is heavier or lighter than last lifted, as the chat tells them."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime
from decimal import Decimal

import pytest

from bot.pain_spans import spans_of
from bot.replies.sets import change_text
from bot.replies.week import next_week
from engine.values.ids import ExerciseName
from engine.values.load import Load, Unit
from engine.values.plan import Reps
from engine.values.prescription import Held, Prescription, SetTarget, Verdict
from storage.records import Note, NoteId
from tests.bot.chatting import PLAN, said

SQUAT, ROW = ExerciseName("barbell back squat"), ExerciseName("barbell row")


def kg(amount: str) -> Load:
    return Load(Decimal(amount), Unit.KG)


def pain(day: int, exercise: ExerciseName | None = SQUAT) -> Note:
    return Note(NoteId(day), "it hurts", date(2026, 3, day), datetime(2026, 3, day, tzinfo=UTC), exercise, True)


def march(first: int, last: int) -> tuple[date, date]:
    return date(2026, 3, first), date(2026, 3, last)


@pytest.mark.parametrize(
    ("notes", "over", "spans"),
    [
        pytest.param([pain(2)], {SQUAT: "2026-03-16"}, {SQUAT: (march(2, 15),)}, id="until the day it was over"),
        pytest.param(
            [pain(2), pain(20)],
            {SQUAT: ["2026-03-09", "2026-03-28"]},
            {SQUAT: (march(2, 8), march(20, 27))},
            id="each time has its own end",
        ),
        pytest.param([pain(2), pain(5)], {SQUAT: ["2026-03-09"]}, {SQUAT: (march(2, 8), march(5, 8))}, id="told twice"),
        pytest.param([pain(2)], {SQUAT: ["2026-03-02"]}, {}, id="over the same day"),
        pytest.param([pain(2)], {}, {SQUAT: ((date(2026, 3, 2), date(2027, 3, 2)),)}, id="not over: held for a year"),
        pytest.param([pain(2, None)], {}, {}, id="of no lift"),
        pytest.param([pain(2)], {ROW: ["2026-03-03"]}, {SQUAT: ((date(2026, 3, 2), date(2027, 3, 2)),)}, id="another"),
    ],
)
def test_when_a_lift_hurt(notes, over, spans):
    assert dict(spans_of(notes, over)) == spans


def test_a_swap_never_lifted_that_hurts_leaves_the_chat_working(chats):
    chats.says("ana", "/start", "London", "kg", PLAN, "swap squat for leg press", "my knee hurts")

    assert "Leg press" in said(chats.says("ana", "today"))
    assert "Saved" in said(chats.says("ana", "leg press 100 5 5 5"))
    assert "Undone" in said(chats.says("ana", "undo"))


def asks(load: str, lifted: str | None, verdict: Verdict, held: tuple[Held, ...] = ()) -> Prescription:
    sets = (SetTarget(Reps(5), kg(load)),) * 3
    return Prescription(SQUAT, sets, verdict, "", "", held=held, lifted=None if lifted is None else kg(lifted))


@pytest.mark.parametrize(
    ("prescription", "told"),
    [
        pytest.param(asks("82.5", "80", Verdict.ADD_LOAD), [f"Next week: {SQUAT} 3×5 at 82.5 kg"], id="heavier"),
        pytest.param(
            asks("105", "90", Verdict.FOLLOW), [f"Next week: {SQUAT} 3×5 at 105 kg"], id="heavier by a percentage"
        ),
        pytest.param(
            asks("80", "85", Verdict.ADD_LOAD),
            [f"Next week: {SQUAT} lighter, 3×5 at 80 kg"],
            id="lighter after time off",
        ),
        pytest.param(asks("80", "80", Verdict.ADD_LOAD), [], id="as last time whatever the rule says"),
        pytest.param(
            asks("72.5", "80", Verdict.ADD_LOAD, (Held.DELOAD,)),
            ["Next week: deload, fewer sets and less load"],
            id="a deload",
        ),
        pytest.param(asks("80", None, Verdict.START), [], id="never lifted"),
    ],
)
def test_next_week_asks_by_what_was_lifted(prescription, told):
    assert next_week([prescription]).told(3) == told


@pytest.mark.parametrize(
    ("heavier", "told"),
    [
        pytest.param(("row",), "Next week up: row", id="one"),
        pytest.param(("row", "press"), "Next week up: row and press", id="two are both named"),
        pytest.param(("row", "press", "dip"), "Next week up: row and 2 more", id="more than the screen has room for"),
    ],
)
def test_a_week_with_many_changes_goes_by_name(heavier, told):
    lifts = [replace(asks("82.5", "80", Verdict.ADD_LOAD), exercise=ExerciseName(name)) for name in heavier]
    light = replace(asks("70", "80", Verdict.ADD_LOAD), exercise=ExerciseName("curl"))

    assert next_week([*lifts, light]).told(1) == [told, "Next week lighter: curl"]


def test_a_change_of_load_is_told_in_the_unit_it_has_now():
    assert change_text(Load(Decimal(185), Unit.LB), kg("85")) == "+1.1 kg"


def test_the_card_says_heavier_only_of_what_is_heavier(chats):
    chats.says("ana", "/start", "London", "kg", PLAN, "squat 90 5 5 5", "leg extension 50 12 12 12")
    chats.at = chats.at.replace(day=30)

    card = said(chats.says("ana", "today"))

    assert "Heavier than last time" not in card
    assert "Lighter than last time: barbell back squat" in card


def test_a_plan_in_kilograms_is_whole_pounds_to_a_lifter_in_pounds(chats):
    chats.says("ana", "/start", "London", "kg", PLAN, "units lb")

    assert "3×5 at 200 lb" in said(chats.says("ana", "today"))
    out = said(chats.says("ana", "why squat"))

    assert "Make 3×5 at 200 lb to go to 205 lb." in out
