"""Requests with a reason, a politeness or a slip around them; body weights, plans and other people's sets told."""

from __future__ import annotations

import pytest

from engine.reading import read
from engine.reading.values import Act, Asked, Context, Doubt, Logged
from tests.engine.reading.saying import KNOWN, said, situation, standing_after

PLAN = [("seated cable row", 3, 10, "55"), ("barbell curl", 3, 10, "30"), ("leg press", 3, 10, "120")]
TODAY = situation(doing="leg press", plan=PLAN)

TAKEN_BACK = (
    "can u delete that last one",
    "could you scrap my last set pls",
    "remove the one i just logged",
    "bin that last entry",
)


@pytest.mark.parametrize("text", TAKEN_BACK)
def test_the_latest_set_is_taken_back_in_any_words_that_point_at_it(text: str) -> None:
    assert said(text, TODAY) == "request: undo"


@pytest.mark.parametrize("text", ["delete my account", "remove the pad", "cut my hair last week"])
def test_other_things_are_not_taken_back(text: str) -> None:
    assert said(text, TODAY) != "request: undo"


LEFT_OUT = (
    ("no bench today", "barbell bench press"),
    ("not doing rows today", "seated cable row"),
    ("can't squat today", "barbell back squat"),
    ("heute kein Bankdrücken", "barbell bench press"),
    ("hoy no hago sentadillas", "barbell back squat"),
    ("pas de squat aujourd'hui", "barbell back squat"),
    ("oggi niente panca", "barbell bench press"),
    ("vandaag geen squat", "barbell back squat"),
    ("dziś bez przysiadów", "barbell back squat"),
    ("hoje sem agachamento", "barbell back squat"),
    ("сегодня без приседа", "barbell back squat"),
    ("ingen bänkpress idag", "barbell bench press"),
)


@pytest.mark.parametrize(("text", "lift"), [pytest.param(*row, id=row[0]) for row in LEFT_OUT])
def test_what_is_not_done_today_is_skipped(text: str, lift: str) -> None:
    assert said(text, TODAY) == f"request: skip {lift}"


@pytest.mark.parametrize("text", ["no bench today?", "did no bench today", "no bench today, shoulder hurts"])
def test_a_question_a_story_and_pain_skip_nothing(text: str) -> None:
    assert said(text, TODAY).startswith("no sets")


REASONED = (
    ("leg press is broken, swap it for hack squat", "swap leg press hack squat"),
    ("cable row taken, swap that with pulldowns", "swap seated cable row lat pulldown"),
    ("swap rows for pulldowns", "swap seated cable row lat pulldown"),
    ("when did i last deadlift and how much?", "history conventional deadlift"),
    ("how heavy did i squat last time", "history barbell back squat"),
)


@pytest.mark.parametrize(("text", "meant"), [pytest.param(*row, id=row[0]) for row in REASONED])
def test_a_lift_is_the_one_of_the_reason_or_of_the_plan(text: str, meant: str) -> None:
    assert said(text, situation(plan=PLAN)) == f"request: {meant}"


def test_a_mistyped_lift_of_today_is_skipped_and_told() -> None:
    outcome = read("skip crls", TODAY, KNOWN)

    assert isinstance(outcome, Act)
    assert (outcome.name, outcome.exercise, outcome.mended) == ("skip", "barbell curl", "skip curls")
    assert said("skip crls", situation()) == "no sets"


@pytest.mark.parametrize("text", ["weighed 78.6 today", "bw: 81", "i am 81 kg", "i'm 81kg"])
def test_a_body_weight_has_a_weighing_word_or_a_unit(text: str) -> None:
    assert said(text, TODAY) == "request: bodyweight"


@pytest.mark.parametrize("text", ["i am 30", "i'm 42", "i am 30 years old"])
def test_an_age_is_neither_a_weight_nor_a_set(text: str) -> None:
    assert said(text, TODAY).startswith("no sets")


@pytest.mark.parametrize(
    "text", ["saturday: deadlift 3x5 140 (planned)", "bench 3x8 60 geplant", "squat 5x5 100 kg (plan)"]
)
def test_sets_marked_as_planned_are_no_sets(text: str) -> None:
    assert said(text, TODAY) == "no sets"


def test_sets_done_as_planned_are_sets() -> None:
    assert said("leg press 3x10 120 as planned", TODAY) == "leg press 3×10 at 120 kg"


@pytest.mark.parametrize(
    "text",
    [
        "tom: bench 3x8 60",
        "tom:\nbench 3x8 60",
        "tom:\nbench 3x8 60\nsquat 5x5 100",
        "squat 5x5 100\n\ntom:\nbench 3x8 60",
        "squat 5x5 100, tom: bench 3x8 60",
    ],
)
def test_sets_behind_a_name_are_asked_about(text: str) -> None:
    outcome = read(text, TODAY, KNOWN)

    assert isinstance(outcome, Asked)
    assert outcome.doubt is Doubt.WHOSE
    assert len(outcome.readings) == 1


@pytest.mark.parametrize(
    "text",
    [
        "tom: bench 3x8 60",
        "main: bench 3x8 60",
        "a: bench 3x8 60",
        "strength: bench 3x8 60",
        "tom:\nbench 3x8 60",
        "main:\nbench 3x8 60",
        "compounds:\nbench 3x8 60",
        "grundübungen:\nbankdrücken 3x8 60",
    ],
)
def test_ones_own_name_and_a_heading_are_not(text: str) -> None:
    assert isinstance(read(text, Context(called="Tom Barr"), KNOWN), Logged)


CORRECTED = (
    ("press banca 40x10 | 95 no 40", "barbell bench press 10 at 95 kg"),
    ("squat 5x100 | 105 no 100", "barbell back squat 5 at 105 kg"),
    ("deadlift 140x3 | another 3", "conventional deadlift 2×3 at 140 kg"),
)


@pytest.mark.parametrize(("told", "standing"), [pytest.param(*row, id=row[0]) for row in CORRECTED])
def test_no_between_numbers_and_another_with_the_same_reps(told: str, standing: str) -> None:
    assert standing_after(told) == standing


IN_A_HURRY = (
    ("wat next", "next"),
    ("im off til monday", "pause 2025-03-17"),
    ("whats the plan for fri", "today"),
    ("what's my warm up for squat", "warmup barbell back squat"),
    ("i lift in lbs", "units"),
    ("leg press machine is taken", "swap leg press"),
    ("leg press is busy, what else can i do", "swap leg press"),
    ("anything instead of rows", "swap seated cable row"),
    ("no more curls today", "skip barbell curl"),
    ("no curls or rows today", "skip barbell curl"),
    ("gym is closed, move to saturday", "move 2025-03-15"),
    ("all done bye", "done"),
)


@pytest.mark.parametrize(("text", "meant"), [pytest.param(*row, id=row[0]) for row in IN_A_HURRY])
def test_requests_written_in_a_hurry(text: str, meant: str) -> None:
    assert said(text, situation(plan=PLAN)) == f"request: {meant}"


@pytest.mark.parametrize("text", ["hip thrust machine is taken", "leg press was taken from me last year, gone"])
def test_a_taken_lift_that_is_not_on_swaps_nothing(text: str) -> None:
    assert said(text, situation(plan=PLAN)) == "no sets"


IN_LANGUAGES = (
    ("kannst du den letzten Satz löschen", "undo"),
    ("puedes borrar la última", "undo"),
    ("tu peux annuler la dernière", "undo"),
    ("puoi cancellare l'ultima", "undo"),
    ("kun je de laatste verwijderen", "undo"),
    ("możesz usunąć ostatnią serię", "undo"),
    ("pode apagar a última", "undo"),
    ("удали, пожалуйста, последний подход", "undo"),
    ("kan du ta bort sista setet", "undo"),
    ("Gewicht heute 81,4", "bodyweight"),
    ("ich bin 81 kg", "bodyweight"),
    ("hoy peso 81,4", "bodyweight"),
    ("je pèse 81,4 kg", "bodyweight"),
    ("ik weeg 81,4 kg", "bodyweight"),
    ("ważę 81,4 kg", "bodyweight"),
    ("мой вес 81,4", "bodyweight"),
    ("jag väger 81,4 kg", "bodyweight"),
    ("Beinpresse ist besetzt", "swap leg press"),
    ("la prensa está ocupada", "swap leg press"),
)


@pytest.mark.parametrize(("text", "meant"), [pytest.param(*row, id=row[0]) for row in IN_LANGUAGES])
def test_requests_asked_politely_weights_and_taken_lifts_in_languages(text: str, meant: str) -> None:
    assert said(text, TODAY) == f"request: {meant}"


POLITE = (
    ("squat 5x5 100 | can u delete that last one", "barbell back squat 4×5 at 100 kg"),
    ("squat 3x5 100 | could you make the last one 4 please", "barbell back squat 2×5 at 100 kg, 4 at 100 kg"),
)


@pytest.mark.parametrize(("told", "standing"), [pytest.param(*row, id=row[0]) for row in POLITE])
def test_a_polite_correction_reaches_what_a_plain_one_does(told: str, standing: str) -> None:
    assert standing_after(told) == standing
