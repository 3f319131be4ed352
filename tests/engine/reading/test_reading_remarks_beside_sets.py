"""What a remark beside sets says of a mark, of equipment or of the last number of a list: it changes no set in silence.

What lifters mean by such words is common practice, no source.
"""

from __future__ import annotations

import pytest

from engine.catalogue.catalogue import catalogue
from engine.reading import read
from engine.reading.values import Context, Logged
from tests.engine.reading.saying import readings, said, situation

NOT_MET = """
bench 3x5 80, didn't fail
bench 3x5 80, did not miss
bench 3x5 80, no failed reps
bench 3x5 80, zero misses
bench 3x5 80, not a single miss
bench 3x5 80, never failed
bench 3x5 80, not to failure
bench 3x5 80 (not quite to failure)
bench 3x5 80 close to failure
bench 3x5 80, last set almost to failure
bench 3x5 80, just short of failure
bench 3x5 80, stopped before failure
bench 3x5 80, thought i'd fail the last one
bench 3x5 80, nearly missed the last rep
bench 3x5 80, almost failed the 5th
bench 3x5 80, no drop sets
bench 3x5 80, nearly dropped it
bankdrücken 3x5 80, nicht bis zum versagen
bankdrücken 3x5 80, kein fehlversuch
press banca 3x5 80, sin fallo
press banca 3x5 80, casi al fallo
développé couché 3x5 80, presque à l'échec
supino 3x5 80, quase até a falha
panca piana 3x5 80, quasi a cedimento
жим лежа 3x5 80, почти до отказа
bankdrukken 3x5 80, bijna tot falen
bänkpress 3x5 80, nästan till failure
wyciskanie leżąc 3x5 80, prawie do upadku
"""


@pytest.mark.parametrize("text", [line for line in NOT_MET.splitlines() if line])
def test_a_mark_that_was_not_met_marks_no_set(text: str) -> None:
    assert said(text) == "barbell bench press 3×5 at 80 kg"


@pytest.mark.parametrize(
    ("text", "context", "outcome"),
    readings("""
bench 3x5 80 to failure                     => barbell bench press 3×5 at 80 kg to failure
bench 3x5 80, last set to failure           => barbell bench press 2×5 at 80 kg, 5 at 80 kg to failure
bench 3x5 80, not great, last to failure    => barbell bench press 2×5 at 80 kg, 5 at 80 kg to failure
bench 3x5 80, failed the last rep           => barbell bench press 2×5 at 80 kg, 4 at 80 kg missed
bench 80x5, 5, no belt, drop 60x8           => barbell bench press 2×5 at 80 kg, 8 at 60 kg drop
"""),
)
def test_a_mark_that_was_met_marks_its_set(text: str, context: Context, outcome: str) -> None:
    assert said(text, context) == outcome


@pytest.mark.parametrize(
    "text",
    [
        "bench 3x5 80, 2 reps short of failure",
        "bench 3x5 80, 2 shy of failure",
        "bench 3x5 80, stopped 2 reps before failure",
        "bench 3x5 80, 2 reps away from failure",
        "bench 3x5 80 (2 from failure)",
    ],
)
def test_reps_short_of_failure_are_reps_in_reserve(text: str) -> None:
    assert said(text) == "barbell bench press 3×5 at 80 kg 2 in reserve"


def test_one_short_of_failure_is_one_in_reserve() -> None:
    assert said("bench 3x5 80, one from failure") == "barbell bench press 3×5 at 80 kg 1 in reserve"


@pytest.mark.parametrize(
    ("text", "context", "outcome"),
    readings("""
bench 3x8 60, dumbbells were all taken      => barbell bench press 3×8 at 60 kg
bench 3x8 60, cables were taken             => barbell bench press 3×8 at 60 kg
bench 3x8 60, smith machine was taken       => barbell bench press 3×8 at 60 kg
bench 3x8 60, kettlebell fell on my foot    => barbell bench press 3×8 at 60 kg
squat 3x5 90 smith was free                 => ask: barbell back squat 3×5 at 90 kg | smith machine squat 3×5 at 90 kg
bench 80x8, the machine squeaks             => ask: barbell bench press 8 at 80 kg | machine chest press 8 at 80 kg
bench 3x8 60 on the smith was easy          => smith machine bench press 3×8 at 60 kg
curls 3x10 30, ez bar was free              => ez-bar curl 3×10 at 30 kg
lat pulldown 3x10 50, one arm felt weak     => lat pulldown 3×10 at 50 kg
lat pulldown 3x10 50, one arm               => single-arm lat pulldown 3×10 at 50 kg
lat pulldown 3x10 50, one arm at a time     => single-arm lat pulldown 3×10 at 50 kg
bench 80x8, machine by the window           => ask: barbell bench press 8 at 80 kg | machine chest press 8 at 80 kg
bench 80x8, machine                         => machine chest press 8 at 80 kg
bench 80x8 on the machine by the window     => machine chest press 8 at 80 kg
bench 30x8, dumbbells felt great            => dumbbell bench press 8 at 30 kg each
leg press 3x10 150, the blue machine        => leg press 3×10 at 150 kg
"""),
)
def test_equipment_that_only_a_remark_names_is_not_what_was_lifted(text: str, context: Context, outcome: str) -> None:
    assert said(text, context) == outcome


@pytest.mark.parametrize(
    ("text", "context", "outcome"),
    readings("""
bench 80x8, 8, 7 slept badly                => barbell bench press 2×8 at 80 kg, 7 at 80 kg
bench 80x8, 7 slept badly                   => barbell bench press 8 at 80 kg, 7 at 80 kg
bench 80x8, 8, 7 F slept badly              => barbell bench press 2×8 at 80 kg, 7 at 80 kg to failure
bench 80x8, 8, 7 miss slept badly           => barbell bench press 2×8 at 80 kg, 7 at 80 kg missed
bench 80: 8, 8, 7 coffee did its job        => barbell bench press 2×8 at 80 kg, 7 at 80 kg
bankdrücken 80x8, 8, 7 schlecht geschlafen  => barbell bench press 2×8 at 80 kg, 7 at 80 kg
bench 80x8, 8, 7 tomorrow rest              => ask: barbell bench press 2×8 at 80 kg, 7 at 80 kg
bench 80x8, 8, 4 hours sleep                => barbell bench press 2×8 at 80 kg
bench 80x8, 8, 3 guys watching              => barbell bench press 2×8 at 80 kg
bench 80x8, 8, 7 close to failure           => barbell bench press 2×8 at 80 kg, 7 at 80 kg
bench 80x8, 8, 7 coach was happy            => ask: barbell bench press 2×8 at 80 kg, 7 at 80 kg
bench 80x8, 8, 7 short of failure           => ask: barbell bench press 2×8 at 80 kg, 7 at 80 kg
bench 80x8, 8, locker 12                    => barbell bench press 2×8 at 80 kg
"""),
)
def test_words_behind_the_last_number_of_a_list_take_no_set_away(text: str, context: Context, outcome: str) -> None:
    assert said(text, context) == outcome


@pytest.mark.parametrize(
    ("text", "context", "outcome"),
    readings("""
bench 80x8, session 3 of 4                  => barbell bench press 8 at 80 kg
week 3 of 8: squat 3x5 100                  => barbell back squat 3×5 at 100 kg
bench 80x8 2 weeks off                      => barbell bench press 8 at 80 kg
3 days without training, bench 80x8         => barbell bench press 8 at 80 kg
bench 80x8, 1 spotter                       => barbell bench press 8 at 80 kg
podciąganie 10 8 7, trening 3 z 4           => pull-up 10, 8, 7
pull ups 10 8 7, got here at 6.30           => pull-up 10, 8, 7
pull ups 10 8 7, back at 5                  => pull-up 10, 8, 7
pull ups 10 8 7, started at 7               => ask: pull-up 10, 8, 7
pull ups 10 8 7 at 10                       => pull-up 10 at +10 kg, 8 at +10 kg, 7 at +10 kg
plank 60s, i'm 61                           => plank 60 s
dips +20 5x5 off to the shower              => dip 5×5 at +20 kg
pull ups 10kg off 8 8                       => pull-up 2×8 at −10 kg
happy with that: pull ups 10 8 7            => pull-up 10, 8, 7
pull ups with 10: 8 7                       => pull-up 8 at +10 kg, 7 at +10 kg
squat 100x5, double espresso before         => barbell back squat 5 at 100 kg
squat 100x5, a double at 110                => barbell back squat 5 at 100 kg, 2 at 110 kg
"""),
)
def test_numbers_of_a_remark_are_no_sets_and_no_load(text: str, context: Context, outcome: str) -> None:
    assert said(text, context) == outcome


def test_the_last_group_of_two_lifts_is_asked_where_the_second_is_named_behind_it() -> None:
    assert said("squat 3x5 100 - 3 sets of 10 at 60 on lat pulldown").startswith("ask: ")
    assert said("squat 3x5 100, 3 sets of 10 at 60 on lat pulldown") == (
        "barbell back squat 3×5 at 100 kg; lat pulldown 3×10 at 60 kg"
    )


def test_sets_taken_as_talk_beside_others_are_quoted() -> None:
    outcome = read("leg press 3x12 150, bench 3x5 60 tomorrow", situation(), catalogue())

    assert isinstance(outcome, Logged)
    assert [unread.text for unread in outcome.unread] == ["bench 3x5 60 tomorrow"]


def test_somebody_elses_sets_are_left_out_without_a_word() -> None:
    outcome = read("bench 3x5 80, my brother did bench 100x5", situation(), catalogue())

    assert isinstance(outcome, Logged)
    assert outcome.unread == ()


@pytest.mark.parametrize(
    ("text", "context", "outcome"),
    readings("""
tractions 10 8 7, très dur                  => pull-up 10, 8, 7
tractions 10 8 7, tres lourd                => pull-up 10, 8, 7
sentadilla tres series de 5 con 100         => barbell back squat 3×5 at 100 kg
bänkpress fem set om tio med nittio kg      => barbell bench press 5×10 at 90 kg
"""),
)
def test_a_word_is_that_of_its_own_spelling(text: str, context: Context, outcome: str) -> None:
    """ "très" is very, "tres" three: accents part words of two languages."""
    assert said(text, context) == outcome


@pytest.mark.parametrize(
    ("text", "context", "outcome"),
    readings("""
bench 80x8, missed my warm up               => barbell bench press 8 at 80 kg
missed my warm up, bench 80x8               => barbell bench press 8 at 80 kg
warm up took ages, bench 80x8               => barbell bench press 8 at 80 kg
extra warm up before, bench 80x8            => barbell bench press 8 at 80 kg
warm up, bench 80x8                         => barbell bench press 8 at 80 kg warmup
bench 80x8, missed the bus                  => barbell bench press 8 at 80 kg
bench 80x8, missed the gym                  => barbell bench press 8 at 80 kg
bench 80x8, failed the exam                 => ask: barbell bench press 8 at 80 kg
bench 80x8, failed miserably                => barbell bench press 8 at 80 kg missed
bench 80x8, missed the lockout              => barbell bench press 8 at 80 kg missed
bench 80x8, dropped my phone                => barbell bench press 8 at 80 kg
bench 80x8, dropped to 60x10                => barbell bench press 8 at 80 kg, 10 at 60 kg drop
bench 80 8 8 7, cluster of people at the rack => barbell bench press 2×8 at 80 kg, 7 at 80 kg
bench 80x8, total mess                      => barbell bench press 8 at 80 kg
squat 80x8, dumbbell rack is a mess         => barbell back squat 8 at 80 kg
plank 60s, extra long rest                  => plank 60 s
plank 60s, added chalk                      => plank 60 s
"""),
)
def test_a_mark_of_something_else_marks_no_set(text: str, context: Context, outcome: str) -> None:
    assert said(text, context) == outcome


@pytest.mark.parametrize(
    "text", ["squat bar warm up 2x10, 3x5 100", "squat warm up bar 2x10, 3x5 100", "bench warm up bar x15, 3x8 60"]
)
def test_work_behind_a_warm_up_with_the_bar_is_asked(text: str) -> None:
    assert said(text).startswith("ask: ")
    assert said(text.replace(", ", " then ")).endswith("kg")
    assert "warmup" not in said(text.replace(", ", " then ")).rpartition(",")[2]


@pytest.mark.parametrize("text", ["deadlift 140x1 almost", "deadlift 140x1 (nearly)", "deadlift 130x1, 140x1 almost"])
def test_a_single_that_was_almost_is_asked(text: str) -> None:
    assert said(text).startswith("ask: ")


@pytest.mark.parametrize(
    ("text", "context", "outcome"),
    readings("""
bench 80x8, 8, 7 (squats felt easier)       => barbell bench press 2×8 at 80 kg, 7 at 80 kg
bench 80x8, 8, 7 (no rows today)            => barbell bench press 2×8 at 80 kg, 7 at 80 kg
100 for 5, three times (squats)             => barbell back squat 3×5 at 100 kg
bench 80x8 (tomorrow)                       => no sets
bench 80x8 (goal)                           => no sets
bench 80x8 (next time heavier)              => barbell bench press 8 at 80 kg
bench 80x8 (next time 82.5)                 => barbell bench press 8 at 80 kg
"""),
)
def test_what_brackets_say_of_other_lifts_and_times(text: str, context: Context, outcome: str) -> None:
    assert said(text, context) == outcome


@pytest.mark.parametrize(
    ("text", "context", "outcome"),
    readings("""
squat 3x5 100 (front squat)                 => barbell front squat 3×5 at 100 kg
bench 3x8 60 (close grip bench press)       => close-grip bench press 3×8 at 60 kg
bench 3x8 60 (close grip)                   => close-grip bench press 3×8 at 60 kg
row 60x8 (barbell row)                      => barbell row 8 at 60 kg
press 40x8 (overhead press)                 => barbell overhead press 8 at 40 kg
curl 3x10 12kg (hammer curl)                => hammer curl 3×10 at 12 kg each
squat 100x5 (squat)                         => barbell back squat 5 at 100 kg
bench 80x8 (rows)                           => ask: barbell bench press 8 at 80 kg
"""),
)
def test_the_lift_named_more_closely_in_brackets_is_the_one_done(text: str, context: Context, outcome: str) -> None:
    assert said(text, context) == outcome


@pytest.mark.parametrize(
    ("text", "context", "outcome"),
    readings("""
{doing: barbell bench press; last: barbell bench press 60} with dumbbells 20 10 => dumbbell bench press 10 at 20 kg each
{doing: barbell bench press} machine 40x8   => ask: barbell bench press 8 at 40 kg | machine chest press 8 at 40 kg
{doing: dumbbell bench press; last: dumbbell bench press 30} dumbbells 10 => dumbbell bench press 10 at 30 kg each
{doing: barbell bench press; last: barbell bench press 60} 8 8 => barbell bench press 2×8 at 60 kg
bench 80x8 (total)                          => ask: barbell bench press 8 at 80 kg
"""),
)
def test_equipment_named_with_a_lift_in_hand_is_what_was_lifted(text: str, context: Context, outcome: str) -> None:
    assert said(text, context) == outcome


@pytest.mark.parametrize(
    ("text", "context", "outcome"),
    readings("""
dips 3x8 bodyweight, 2x5 +10                => dip 3×8, 2×5 at +10 kg
chin ups 5x5 unweighted, 3x3 +20            => chin-up 5×5, 3×3 at +20 kg
dips 3x8 bodyweight                         => dip 3×8
"""),
)
def test_sets_told_to_be_without_weight_take_none_from_those_behind(text: str, context: Context, outcome: str) -> None:
    assert said(text, context) == outcome


@pytest.mark.parametrize("text", ["row x1, 2 plates, failed", "row x 1. up 2.5. 2 plates; failed"])
def test_a_miss_behind_plates_is_read_or_asked(text: str) -> None:
    assert said(text)
