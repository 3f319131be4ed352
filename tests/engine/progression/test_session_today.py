"""Today's session from plan and log: exposures, swaps, skips, what is due, and the next set."""

from __future__ import annotations

from dataclasses import replace

import pytest

from engine.catalogue.catalogue import catalogue
from engine.progression.explain import prescribed
from engine.progression.exposures import records_of
from engine.progression.sessions import (
    Athlete,
    Choices,
    Skip,
    Swap,
    assign,
    due_on,
    exposures,
    next_in_order,
    progress,
    session_for,
)
from engine.values.ids import ExerciseName
from engine.values.plan import Block, FindIt, PlannedDay, Slot, WeekKind
from engine.values.prescription import Held, Verdict
from engine.values.schemes import LoadStep, TopSetBackOff
from engine.values.sets import SetRecord
from tests.engine.progression.logged import BARBELL, BODY, kg, records
from tests.engine.progression.planned_week import (
    BLOCK,
    CURL,
    DAY_A,
    PRESS,
    PUSH_UP,
    ROW,
    SQUAT,
    log,
    on,
    slot,
    undated,
    weeks,
)

LONG = replace(BLOCK, weeks=8, deload_weeks=(4,))
DAYS = weeks(*range(1, 9), block=LONG)


def day(week: int, at: int) -> PlannedDay:
    return DAYS[3 * (week - 1) + at]


def athlete(entries: tuple[SetRecord, ...], **more: object) -> Athlete:
    return Athlete(entries, lambda name: BODY if name == PUSH_UP else BARBELL, **more)  # type: ignore[arg-type]


def asked(planned: PlannedDay, entries: tuple[SetRecord, ...], days_in: int, **more: object) -> list[str]:
    """What each slot of a day asks on a date, on one line each."""
    who = athlete(entries, **more)
    sessions = assign(DAYS, entries, who.choices)
    slots = session_for(planned, sessions, on(days_in), who)
    return [f"{one.prescription.exercise} {prescribed(one.prescription)}" for one in slots if not one.skipped]


FIRST_WEEK = log((0, PRESS, "42.5: 6 6 6"), (0, ROW, "55: 12 12 12"), (0, PUSH_UP, "body: 12 10"))


@pytest.mark.parametrize(
    ("entries", "days_in", "session"),
    [
        pytest.param(
            (), 0, ["overhead press 3×6 at 42.5 kg", "barbell row 3×8-12 at 55 kg", "push-up 2×max"], id="the first"
        ),
        pytest.param(
            FIRST_WEEK,
            7,
            ["overhead press 4×6 at 42.5 kg", "barbell row 3×8-12 at 57.5 kg", "push-up 13, 11"],
            id="the next week",
        ),
        pytest.param(
            log((1, PRESS, "42.5: 6 6 6"), (1, ROW, "55: 12 12 12"), (1, PUSH_UP, "body: 12 10")),
            7,
            ["overhead press 4×6 at 42.5 kg", "barbell row 3×8-12 at 57.5 kg", "push-up 13, 11"],
            id="done a day late it counts all the same",
        ),
        pytest.param(
            FIRST_WEEK,
            14,
            ["overhead press 4×6 at 42.5 kg", "barbell row 3×8-12 at 57.5 kg", "push-up 13, 11"],
            id="a week missed changes nothing",
        ),
        pytest.param(
            FIRST_WEEK,
            28,
            ["overhead press 4×6 at 40 kg", "barbell row 3×8-12 at 52.5 kg", "push-up 13, 11"],
            id="four weeks missed lower the first session back",
        ),
        pytest.param(
            (*FIRST_WEEK, *log((2, ROW, "80: 12 12 12"))),
            7,
            ["overhead press 4×6 at 42.5 kg", "barbell row 3×8-12 at 57.5 kg", "push-up 13, 11"],
            id="the row of another day is another progression",
        ),
        pytest.param(
            (*FIRST_WEEK, *log((7, PRESS, "42.5: 6 6 6 6"))),
            7,
            ["overhead press 4×6 at 42.5 kg", "barbell row 3×8-12 at 57.5 kg", "push-up 13, 11"],
            id="today's own sets do not move today's ask",
        ),
    ],
)
def test_what_a_day_asks(entries: tuple[SetRecord, ...], days_in: int, session: list[str]) -> None:
    assert asked(day(days_in // 7 + 1, 0), entries, days_in) == session


def test_a_deload_week_is_lighter_and_the_week_after_goes_on() -> None:
    entries = (*FIRST_WEEK, *log((21, PRESS, "37.5: 6 6"), (21, ROW, "50: 8 8")))

    assert asked(day(4, 0), FIRST_WEEK, 14)[0] == "overhead press 2×6 at 37.5 kg"
    assert asked(day(5, 0), entries, 28)[0] == "overhead press 4×6 at 42.5 kg"


def test_two_sessions_of_one_date_are_one_exposure() -> None:
    entries = log((0, PRESS, "42.5: 6 6"), (0, PRESS, "42.5: 6"))

    found = exposures(DAY_A.slots[0], day(2, 0), assign(DAYS, entries), on(7))

    assert [len(exposure.sets) for exposure in found] == [3]


def test_a_session_split_over_two_dates_is_one_exposure_on_the_last() -> None:
    heavy = replace(DAY_A, slots=(slot(PRESS, LoadStep(kg(5)), 2, 5, "60"), slot(SQUAT, LoadStep(kg(5)), 2, 5, "90")))
    days = weeks(1, 2, block=Block("one", 2, (WeekKind("usual", (heavy,)),)))
    entries = log((0, PRESS, "60: 5 5"), (1, SQUAT, "90: 5 5"))

    sessions = assign(days, entries)

    assert [len(exposures(one, days[1], sessions, on(7))) for one in heavy.slots] == [1, 1]


def test_a_new_block_starts_from_its_own_loads_unless_it_says_find_it() -> None:
    def block(label: str, *slots: Slot) -> Block:
        return Block(label, 2, (WeekKind("usual", (replace(DAY_A, slots=slots),)),))

    stated = slot(PRESS, LoadStep(kg("2.5")), 3, 5, "60")
    found = slot(ROW, LoadStep(kg("2.5")), 3, 5, FindIt())
    days = (
        *weeks(1, 2, block=block("old", stated, found)),
        *weeks(1, 2, block=block("new", stated, found), start=on(14)),
    )
    entries = log((0, PRESS, "60: 5 5 5"), (0, ROW, "50: 5 5 5"))
    sessions = assign(days, entries)

    new = session_for(days[2], sessions, on(14), athlete(entries))

    assert [prescribed(one.prescription) for one in new] == ["3×5 at 60 kg", "3×5 at 52.5 kg"]


def test_alternating_weeks_that_differ_progress_apart() -> None:
    light = replace(DAY_A, slots=(slot(PRESS, LoadStep(kg("2.5")), 3, 10, "30"),))
    heavy = replace(DAY_A, slots=(slot(PRESS, LoadStep(kg("2.5")), 3, 5, "40"),))
    days = weeks(1, 2, 3, 4, block=Block("one", 4, (WeekKind("a", (heavy,)), WeekKind("b", (light,)))))
    entries = log((0, PRESS, "40: 5 5 5"), (7, PRESS, "30: 10 10 10"))
    sessions = assign(days, entries)

    asked_next = [session_for(days[at], sessions, on(7 * at), athlete(entries))[0].prescription for at in (2, 3)]

    assert [prescribed(one) for one in asked_next] == ["3×5 at 42.5 kg", "3×10 at 32.5 kg"]


@pytest.mark.parametrize(
    ("done", "shares"),
    [
        pytest.param("80: 5 4; 50: 12 12 11", [[5, 4], [12, 12, 11]], id="as asked"),
        pytest.param("80: 5; 50: 12 12 11", [[5], [12, 12, 11]], id="one heavy set left out"),
        pytest.param("80: 5 5 5; 50: 12 12", [[5, 5, 5], [12, 12]], id="one heavy set more"),
        pytest.param("80: 5 12; 50: 12 12 11", [[5, 12], [12, 12, 11]], id="repetitions move no set"),
        pytest.param("50: 12 12 12", [[], [12, 12, 12]], id="the heavy sets left out"),
        pytest.param("80: 5 4", [[5, 4], []], id="the light sets left out"),
        pytest.param("40: 6; 60: 3; 80: 5 5; 50: 12 12 12", [[6, 3, 5, 5], [12, 12, 12]], id="a ramp nobody marked"),
        pytest.param("95: 5 5; 65: 12 12 12", [[5, 5], [12, 12, 12]], id="both heavier by now"),
    ],
)
def test_one_exercise_in_two_slots_is_shared_out_by_loads_and_numbers_of_sets(
    done: str, shares: list[list[int]]
) -> None:
    heavy, light = slot(ROW, LoadStep(kg(5)), 2, 5, "80"), slot(ROW, LoadStep(kg(5)), 3, 12, "50")
    planned = replace(day(1, 0), day=replace(DAY_A, slots=(heavy, light)))
    sets = records(done, exercise=ROW)

    assert [[r.done.reps for r in records_of(one, planned, sets)] for one in (heavy, light)] == shares


def test_a_swap_takes_the_load_last_used_for_the_other_exercise() -> None:
    dip = ExerciseName("machine row")
    entries = (*FIRST_WEEK, *log((3, dip, "70: 10 10 9")))
    choices = Choices(swaps=(Swap(on(7), ROW, dip),))

    slots = session_for(day(2, 0), assign(DAYS, entries, choices), on(7), athlete(entries, choices=choices))
    swapped = slots[1].prescription

    assert (swapped.exercise, prescribed(swapped), swapped.verdict) == (dip, "3×8-12 at 70 kg", Verdict.FOLLOW)
    assert swapped.reason == "Instead of barbell row, at the load last used for it on Thu 5 Mar."


def test_a_swap_to_something_never_done_is_to_be_found() -> None:
    choices = Choices(swaps=(Swap(on(7), ROW, ExerciseName("machine row")),))

    assert asked(day(2, 0), FIRST_WEEK, 7, choices=choices)[1] == "machine row 3×8-12"


def test_sets_of_a_swapped_in_exercise_do_not_advance_the_slot() -> None:
    other = ExerciseName("machine row")
    choices = Choices(swaps=(Swap(on(7), ROW, other),))
    entries = (*FIRST_WEEK, *log((7, PRESS, "42.5: 6 6 6 6"), (7, other, "70: 12 12 12")))

    assert asked(day(3, 0), entries, 14, choices=choices)[1] == "barbell row 3×8-12 at 57.5 kg"


def test_a_skip_is_marked_and_holds_for_its_date_only() -> None:
    choices = Choices(skips=(Skip(on(7), ROW),))

    assert len(asked(day(2, 0), FIRST_WEEK, 7, choices=choices)) == 2
    assert len(asked(day(3, 0), FIRST_WEEK, 14, choices=choices)) == 3


@pytest.mark.parametrize("hurts", [SQUAT, PRESS])
def test_a_swap_never_lifted_may_hurt_too(hurts: ExerciseName) -> None:
    choices = Choices(swaps=(Swap(on(7), PRESS, SQUAT),))
    who = athlete(FIRST_WEEK, pain={hurts: ((on(0), on(20)),)}, choices=choices)

    slots = session_for(day(2, 0), assign(DAYS, FIRST_WEEK, choices), on(7), who)

    assert slots[0].prescription.exercise == SQUAT
    assert slots[0].prescription.verdict is Verdict.FIND_LOAD
    assert (Held.PAIN in slots[0].prescription.held) is (hurts == SQUAT)


def test_a_swap_of_body_weight_asks_for_no_load_to_be_found() -> None:
    entries = (*FIRST_WEEK, *log((3, PUSH_UP, "?: 20 18")))
    choices = Choices(swaps=(Swap(on(7), PRESS, PUSH_UP),))

    slots = session_for(day(2, 0), assign(DAYS, entries, choices), on(7), athlete(entries, choices=choices))

    assert slots[0].prescription.reason == f"Instead of {PRESS}, as last done on Thu 5 Mar."


@pytest.mark.parametrize(
    ("swapped", "to", "asks"),
    [
        pytest.param(ROW, "nordic curl", "3×8-12", id="the body is the load"),
        pytest.param(ROW, "band pull-apart", "3×8-12", id="a band has none to tell"),
        pytest.param(ROW, "plank", "3×30 s", id="a hold lasts, it counts no repetitions"),
        pytest.param(ROW, "farmer's walk", "3×20 m", id="a carry goes its way"),
    ],
)
def test_a_swap_never_done_goes_without_load_where_the_catalogue_says_so(
    swapped: ExerciseName, to: str, asks: str
) -> None:
    choices = Choices(swaps=(Swap(on(7), swapped, ExerciseName(to)),))
    who = athlete(FIRST_WEEK, choices=choices, exercises=catalogue().exercises)

    slots = session_for(day(2, 0), assign(DAYS, FIRST_WEEK, choices), on(7), who)
    asked_for = slots[1].prescription

    assert prescribed(asked_for) == asks
    assert (asked_for.verdict is Verdict.FIND_LOAD) is (to == "farmer's walk")
    if to != "farmer's walk":
        assert asked_for.reason == (
            f"Instead of {swapped}, without added load: you have not done it within a year, so see how it goes."
        )


def test_a_hold_swapped_in_again_lasts_what_it_last_lasted() -> None:
    plank = ExerciseName("plank")
    entries = (*FIRST_WEEK, *log((3, plank, "?: 45s 40s")))
    choices = Choices(swaps=(Swap(on(7), ROW, plank),))
    who = athlete(entries, choices=choices, exercises=catalogue().exercises)

    slots = session_for(day(2, 0), assign(DAYS, entries, choices), on(7), who)

    assert prescribed(slots[1].prescription) == "3×40 s"


def test_the_load_of_a_lift_swapped_in_does_not_hang_on_how_many_sets_the_wave_asks() -> None:
    other = ExerciseName("machine row")
    entries = (*FIRST_WEEK, *log((3, other, "70: 6 6 6; 50: 6")))
    choices = Choices(swaps=(Swap(on(7), PRESS, other),))

    slots = session_for(day(2, 0), assign(DAYS, entries, choices), on(7), athlete(entries, choices=choices))

    assert prescribed(slots[0].prescription) == "4×6 at 70 kg"


def test_pain_that_is_over_lets_the_movement_go_on_from_where_it_stood() -> None:
    entries = (*FIRST_WEEK, *log((7, ROW, "60: 12 12 12"), (14, ROW, "55: 12 12 12")))
    told = {ROW: ((on(1), on(15)),)}

    slots = session_for(day(5, 0), assign(DAYS, entries), on(21), athlete(entries, pain=told))

    assert prescribed(slots[1].prescription) == "3×8-12 at 55 kg"
    assert slots[1].prescription.held == (Held.AFTER_PAIN,)


def test_pain_holds_the_movement_it_was_told_of_alone() -> None:
    slots = session_for(day(2, 0), assign(DAYS, FIRST_WEEK), on(7), athlete(FIRST_WEEK, pain={ROW: ((on(0), on(20)),)}))

    assert [one.prescription.held for one in slots] == [(), (Held.PAIN,), ()]


@pytest.mark.parametrize(
    ("entries", "days_in", "due"),
    [
        pytest.param((), 0, ["press and pull"], id="on its date"),
        pytest.param((), 1, [], id="a rest day"),
        pytest.param(log((1, SQUAT, "100: 5 5 5")), 2, [], id="moved to the day before: done"),
        pytest.param(log((3, CURL, "25: 8 8 8")), 4, [], id="half of it done before: moved"),
        pytest.param(log((2, PUSH_UP, "body: 9")), 7, ["press and pull"], id="another week's does not count"),
        pytest.param(log((1, SQUAT, "100: 5")), 1, ["legs"], id="begun on a rest day"),
        pytest.param(log((0, SQUAT, "100: 5")), 0, ["legs", "press and pull"], id="what is begun comes first"),
    ],
)
def test_what_is_due(entries: tuple[SetRecord, ...], days_in: int, due: list[str]) -> None:
    assert [one.day.label for one in due_on(DAYS, assign(DAYS, entries), on(days_in))] == due


@pytest.mark.parametrize(
    ("entries", "label", "week"),
    [
        pytest.param((), "press and pull", 1, id="the first"),
        pytest.param(log((0, PRESS, "42.5: 6")), "legs", 1, id="the second"),
        pytest.param(log((0, SQUAT, "100: 5")), "press and pull", 1, id="what was passed over in its week"),
        pytest.param(
            log((0, PRESS, "40: 6"), (1, SQUAT, "90: 5"), (2, CURL, "20: 8")), "press and pull", 2, id="next week"
        ),
    ],
)
def test_what_is_next_in_order(entries: tuple[SetRecord, ...], label: str, week: int) -> None:
    days = undated(1, 2, 3)

    following = next_in_order(days, assign(days, entries))

    assert following is not None
    assert (following.day.label, following.week) == (label, week)
    assert due_on(days, assign(days, entries), on(20)) == (following,)


def test_nothing_is_next_when_the_plan_is_done() -> None:
    days = undated(1)
    entries = log((0, PRESS, "40: 6"), (1, SQUAT, "90: 5"), (2, CURL, "20: 8"))

    assert next_in_order(days, assign(days, entries)) is None


@pytest.mark.parametrize(
    ("entries", "following"),
    [
        pytest.param((), "overhead press set 1 of 3: 6 at 42.5 kg", id="nothing done"),
        pytest.param(
            log((0, PRESS, "20: w10; 42.5: 6")),
            "overhead press set 2 of 3: 6 at 42.5 kg",
            id="a warm-up does not count",
        ),
        pytest.param(log((0, PRESS, "42.5: 6 6 6")), "barbell row set 1 of 3: 8-12 at 55 kg", id="the next lift"),
        pytest.param(log((0, ROW, "55: 8")), "barbell row set 2 of 3: 8-12 at 55 kg", id="the lift in hand goes on"),
        pytest.param(
            log((0, ROW, "55: 8 8 8")), "overhead press set 1 of 3: 6 at 42.5 kg", id="then what was passed over"
        ),
        pytest.param(
            log((0, PRESS, "42.5: 6 6 6 6")), "barbell row set 1 of 3: 8-12 at 55 kg", id="an extra set changes nothing"
        ),
        pytest.param(
            log((0, PRESS, "42.5: 6 6 6"), (0, ROW, "55: 8 8 8"), (0, PUSH_UP, "body: 9 9")), None, id="all done"
        ),
    ],
)
def test_the_next_set(entries: tuple[SetRecord, ...], following: str | None) -> None:
    session = session_for(day(1, 0), assign(DAYS, entries), on(0), athlete(entries))

    found = progress(session, entries).next

    assert (None if found is None else f"{found.today.prescription.exercise} {found}") == following


def test_a_superset_takes_turns() -> None:
    pair = (
        slot(PRESS, LoadStep(kg(5)), 2, 5, "60", group="A"),
        slot(ROW, LoadStep(kg(5)), 2, 5, "70", group="A"),
        slot(SQUAT, LoadStep(kg(5)), 1, 5, "90"),
    )
    planned = replace(day(1, 0), day=replace(DAY_A, slots=pair))
    order, done = [], log()
    for _ in range(5):
        session = session_for(planned, assign((planned,), done), on(0), athlete(done))
        following = progress(session, done).next
        assert following is not None
        order.append(following.today.slot.exercise)
        done = (*done, *records("60: 5", on(0), following.today.slot.exercise))

    assert order == [PRESS, ROW, PRESS, ROW, SQUAT]


def test_a_skipped_lift_is_never_next() -> None:
    choices = Choices(skips=(Skip(on(0), PRESS),))
    session = session_for(day(1, 0), (), on(0), athlete((), choices=choices))

    found = progress(session, ()).next

    assert found is not None
    assert found.today.slot.exercise == ROW


def test_back_offs_follow_the_top_set_really_done() -> None:
    top = slot(SQUAT, TopSetBackOff(kg(5), back_offs=2, back_off_reps=8), 1, 5, "100")
    planned = replace(day(1, 0), day=replace(DAY_A, slots=(top,)))
    done = log((0, SQUAT, "60: w5; 110: 5"))

    found = progress(session_for(planned, assign((planned,), done), on(0), athlete(done)), done)

    assert str(found.next) == "set 2 of 3: 8 at 100 kg"  # 90 % of 110 is 99, the nearest is 100
