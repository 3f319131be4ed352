"""Sets told as people tell a story, and words that look like names and are none."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import said, situation


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        pytest.param("skipped the hack squat but did leg press, 3 sets of 11 at 150", "leg press 3×11 at 150 kg",
                     id="but turns the talk"),
        pytest.param("my mate did 3x5 110 but i did bench 3x5 72.5", "barbell bench press 3×5 at 72.5 kg",
                     id="somebody else, but"),
        pytest.param("ausgelassen: rudern, aber bankdrücken 3x5 72,5", "barbell bench press 3×5 at 72.5 kg", id="aber"),
        pytest.param("couldn't train today, had 4x6 squats on the list", "no sets", id="what was on the list"),
        pytest.param("couldnt train, had squats 4x6 lined up", "no sets", id="without its apostrophe"),
        pytest.param("two sets of lat pulldowns at 47.5, eleven reps each", "lat pulldown 2×11 at 47.5 kg",
                     id="a name inside its sets"),
        pytest.param("benched a plate a side for 9, 9 and 7", "barbell bench press 2×9 at 60 kg, 7 at 60 kg",
                     id="a plate a side"),
        pytest.param("curls on the ez bar, 27.5 kilos, 11 then 9", "ez-bar curl 11 at 27.5 kg, 9 at 27.5 kg",
                     id="the bar tells which"),
        pytest.param("bench on the smith machine 3x9 55", "smith machine bench press 3×9 at 55 kg", id="the machine"),
        pytest.param("bench 3x9 55 incline", "incline barbell bench press 3×9 at 55 kg", id="behind the sets"),
        pytest.param("walking lunges 3x14 bodyweight", "walking lunge 3×14", id="nothing in the hands"),
        pytest.param("pull ups 3x7, finished off with dips 3x9", "pull-up 3×7; dip 3×9", id="off takes nothing off"),
        pytest.param("incline dumbbell press 3x9 22kg", "incline dumbbell bench press 3×9 at 22 kg each",
                     id="short forms written out"),
        pytest.param("ok thats squat 5 at 117.5", "barbell back squat 5 at 117.5 kg", id="thats"),
        pytest.param("bench 72.5x5 one in the tank", "barbell bench press 5 at 72.5 kg 1 in reserve", id="one"),
        pytest.param("bench felt off but still got 3 sets of 6 at 70", "barbell bench press 3×6 at 70 kg",
                     id="a lift that felt off is no pain"),
        pytest.param("my knee felt off, squat 3x5 95", "barbell back squat 3×5 at 95 kg, pain", id="a knee is"),
    ],
)  # fmt: skip
def test_prose(text: str, meant: str) -> None:
    assert said(text) == meant


@pytest.mark.parametrize("sets", ["drei Sätze mit neun", "3 Sätze mit 9", "tre set med nio", "three sets with nine"])
def test_reps_behind_with(sets: str) -> None:
    assert said(f"bench {sets}, 70 kilo") == "barbell bench press 3×9 at 70 kg"


@pytest.mark.parametrize("text", ["best squat 145x5", "rows with the trap bar 3x8 65", "sam row 55x8"])
def test_a_word_that_makes_another_lift_of_it_is_asked(text: str) -> None:
    assert said(text).startswith("ask: ")


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("squat 5x82½", "barbell back squat 5 at 82.5 kg"),
        ("ohp 32½x5", "barbell overhead press 5 at 32.5 kg"),
        ("bench 60x7½", "barbell bench press 7 at 60 kg"),
        ("pull ups 11, 9 and a half, 8", "pull-up 11, 9, 8"),
    ],
)
def test_halves_of_loads_and_of_reps(text: str, meant: str) -> None:
    assert said(text) == meant


@pytest.mark.parametrize(
    "text", ["2nd set 9 reps", "second set 9", "3rd: 9", "2nd set: 9 reps"]
)  # fmt: skip
def test_a_numbered_set_of_the_lift_in_hand(text: str) -> None:
    context = situation(doing="barbell bench press", last={"barbell bench press": "70"})

    assert said(text, context) == "barbell bench press 9 at 70 kg"


@pytest.mark.parametrize("label", ["A1.", "A1)", "a1:", "1a)", "2b)", "B2."])
def test_labels_of_supersets(label: str) -> None:
    assert said(f"{label} bench 3x5 70") == "barbell bench press 3×5 at 70 kg"
    assert said(f"A1. squat 3x5 95, {label} pull ups 9 8") == "barbell back squat 3×5 at 95 kg; pull-up 9, 8"


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("squat one forty for three", "barbell back squat 3 at 140 kg"),
        ("squat one forty five kilos for two", "barbell back squat 2 at 145 kg"),
        ("bench one hundred five for three", "barbell bench press 3 at 105 kg"),
        ("bench sixty two kilos for eight", "barbell bench press 8 at 62 kg"),
        ("bench sixty eight eight seven", "barbell bench press 2×8 at 60 kg, 7 at 60 kg"),
        ("press banca ochenta y cinco kilos 3x6", "barbell bench press 3×6 at 85 kg"),
        ("sentadilla ciento veinte kilos 3x5", "barbell back squat 3×5 at 120 kg"),
        ("supino oitenta e cinco kg 3x6", "barbell bench press 3×6 at 85 kg"),
        ("wyciskanie osiemdziesiąt pięć kg 3x6", "barbell bench press 3×6 at 85 kg"),
        ("жим лежа восемьдесят пять кг 3x6", "barbell bench press 3×6 at 85 kg"),
    ],
)
def test_numbers_in_several_words(text: str, meant: str) -> None:
    assert said(text) == meant


def test_a_hundred_told_short_that_may_be_two_numbers_is_not_recorded() -> None:
    assert said("squat one forty, 5 5 5").startswith("ask: ")


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("bench 80 5 5 5+ got 9", "barbell bench press 2×5 at 80 kg, 9 at 80 kg"),
        ("bench 90x3+ got 6", "barbell bench press 6 at 90 kg"),
    ],
)
def test_what_came_of_an_open_set(text: str, meant: str) -> None:
    assert said(text) == meant


@pytest.mark.parametrize(
    "text",
    [
        "erst kniebeuge 3x5 95, danach dips 9 8",
        "primero sentadilla 3x5 95, luego fondos 9 8",
        "d'abord squat 3x5 95, ensuite dips 9 8",
        "prima squat 3x5 95, poi dip 9 8",
        "primeiro agachamento 3x5 95, depois dips 9 8",
        "eerst squat 3x5 95, daarna dips 9 8",
        "först knäböj 3x5 95, sen dips 9 8",
        "najpierw przysiad 3x5 95, potem dipy 9 8",
        "сначала присед 3x5 95, потом брусья 9 8",
        "squat,3x5,95. dips 9,8",
    ],
)
def test_first_this_then_that(text: str) -> None:
    assert said(text) == "barbell back squat 3×5 at 95 kg; dip 9, 8"
