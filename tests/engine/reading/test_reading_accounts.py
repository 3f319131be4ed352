"""Every number of a message has its place, or the message is asked about or left unread."""

from __future__ import annotations

import pytest

from engine.reading import read
from engine.reading.values import Asked, Context, Logged, NoSets
from engine.reading.wording import describe
from tests.engine.reading.saying import KNOWN, said, situation

IN_HAND = situation(doing="push-up")


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        pytest.param("my left knee hurts on squats 4/10", "no sets, pain", id="my left knee hurts on squats 4/10"),
        pytest.param("shoulder 3/10 after bench", "no sets, pain", id="shoulder 3/10 after bench"),
        pytest.param("knee 6/10 after squats", "no sets, pain", id="knee 6/10 after squats"),
        pytest.param(
            "squat 3x5 100 knee pain 3/10", "barbell back squat 3×5 at 100 kg, pain", id="squat 3x5 100 knee pain 3/10"
        ),
        pytest.param(
            "squat 3x5 100, shoulder 2/10", "barbell back squat 3×5 at 100 kg, pain", id="squat 3x5 100, shoulder 2/10"
        ),
        pytest.param(
            "bench 3x8 60 (elbow pain 3/10)",
            "barbell bench press 3×8 at 60 kg, pain",
            id="bench 3x8 60 (elbow pain 3/10)",
        ),
        pytest.param("right hip was 5/10 on deadlifts", "no sets, pain", id="right hip was 5/10 on deadlifts"),
        pytest.param(
            "lower back 0/10, deadlift 140 5 5",
            "conventional deadlift 2×5 at 140 kg",
            id="lower back 0/10, deadlift 140 5 5",
        ),
        pytest.param(
            "deadlift 3x5 120 felt 7/10", "conventional deadlift 3×5 at 120 kg", id="deadlift 3x5 120 felt 7/10"
        ),
        pytest.param("bench 60 8/10", "barbell bench press 8 at 60 kg, 10 at 60 kg", id="bench 60 8/10"),
        pytest.param("pull ups 8/10", "pull-up 8, 10", id="pull ups 8/10"),
    ],
)
def test_a_scale_of_ten_is_no_set(text: str, meant: str) -> None:
    assert said(text) == meant


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        pytest.param("squat 3x5 3xx", "ask: barbell back squat 3×5 at 3 kg", id="squat 3x5 3xx"),
        pytest.param("squat 3x5 @", "ask: barbell back squat 3×5", id="squat 3x5 @"),
        pytest.param("squat 3x5 100 #2", "ask: ", id="squat 3x5 100 #2"),
        pytest.param("squat 3x5 100 = 1500", "ask: ", id="squat 3x5 100 = 1500"),
        pytest.param("bench 3x8 60 rpe 11", "ask: ", id="bench 3x8 60 rpe 11"),
        pytest.param("bench 3x8 60 rpe 42", "ask: ", id="bench 3x8 60 rpe 42"),
        pytest.param("squat 3x5 1500", "ask: barbell back squat 3×5 at 1500 kg", id="squat 3x5 1500"),
        pytest.param("squat 3x5 2025", "ask: barbell back squat 3×5 at 2025 kg", id="squat 3x5 2025"),
        pytest.param("squat 3x5 100 2010", "ask: ", id="squat 3x5 100 2010"),
        pytest.param("squat 3x5 4010", "ask: barbell back squat 3×5", id="squat 3x5 4010"),
        pytest.param("bench 3x8 60 8", "ask: ", id="bench 3x8 60 8"),
        pytest.param("squat 100 3x5 4", "ask: barbell back squat 3×5 at 100 kg, 4 at 100 kg", id="squat 100 3x5 4"),
        pytest.param("pull ups 3x8 6", "ask: ", id="pull ups 3x8 6"),
        pytest.param("plank 3x45s 50", "ask: plank 3×45 s, 50 s", id="plank 3x45s 50"),
        pytest.param("bench 3x8 60 x6", "ask: ", id="bench 3x8 60 x6"),
        pytest.param(
            "bench 3x8 60 + 3", "ask: barbell bench press 3×8 at 60 kg, 3 at 60 kg rest-pause", id="bench 3x8 60 + 3"
        ),
        pytest.param("bench 70 3x8 80", "ask: ", id="bench 70 3x8 80"),
        pytest.param("bench 80 3x5 @ 100kg", "ask: ", id="bench 80 3x5 @ 100kg"),
        pytest.param("squat 100x5 @ 120", "ask: ", id="squat 100x5 @ 120"),
        pytest.param("bench 3x8 60 20m", "ask: barbell bench press 3×8 at 60 kg", id="bench 3x8 60 20m"),
        pytest.param(
            "squat 5x5 100 25 minutes", "ask: barbell back squat 5×5 at 100 kg", id="squat 5x5 100 25 minutes"
        ),
        pytest.param("squat 3x5 100 drop", "ask: barbell back squat 3×5 at 100 kg", id="squat 3x5 100 drop"),
        pytest.param(
            "leg extension 50x12 > 8", "ask: leg extension 12 at 50 kg, 8 at 50 kg drop", id="leg extension 50x12 > 8"
        ),
        pytest.param("bench x 3x8 60", "ask: barbell bench press 3 at 60 kg, 8 at 60 kg", id="bench x 3x8 60"),
        pytest.param("@7 pull ups 3x8", "ask: pull-up 3×8 at +7 kg", id="@7 pull ups 3x8"),
        pytest.param("squat 05 3x5 100", "ask: barbell back squat 4×5 at 100 kg", id="squat 05 3x5 100"),
        pytest.param("squat 3x5 1?5", "ask: ", id="squat 3x5 1?5"),
        pytest.param("squat 1e309 5", "ask: ", id="squat 1e309 5"),
        pytest.param("squat 3x5 9q9", "ask: ", id="squat 3x5 9q9"),
        pytest.param("squat 0 5", "ask: ", id="squat 0 5"),
        pytest.param("0 squat 100", "ask: ", id="0 squat 100"),
        pytest.param("squat 100 5 0 5", "ask: ", id="squat 100 5 0 5"),
        pytest.param("did 2 of 3 sets of bench", "ask: ", id="did 2 of 3 sets of bench"),
        pytest.param("bench 5 reps short", "ask: barbell bench press 5", id="bench 5 reps short"),
        pytest.param("squat 100 two reps short", "ask: barbell back squat 2 at 100 kg", id="squat 100 two reps short"),
        pytest.param(
            "missed the last one, squat 3x5 100",
            "ask: barbell back squat 2×5 at 100 kg, 4 at 100 kg missed",
            id="missed the last one, squat 3x5 100",
        ),
        pytest.param("sandbag shoulder 40 5", "ask: sandbag carry 5 at 40 kg", id="sandbag shoulder 40 5"),
        pytest.param("squat quads 100 5", "ask: barbell back squat 5 at 100 kg", id="squat quads 100 5"),
        pytest.param(
            "80 5 grommet, squat 100 5", "ask: barbell back squat 5 at 100 kg", id="80 5 grommet, squat 100 5"
        ),
        pytest.param(
            "db curl 12kg 3x10 7", "ask: dumbbell curl 3×10 at 12 kg each, 7 at 12 kg each", id="db curl 12kg 3x10 7"
        ),
        pytest.param("squat 140kg + 4 x 5", "ask: ", id="squat 140kg + 4 x 5"),
    ],
)
def test_a_number_without_a_place_asks(text: str, meant: str) -> None:
    assert said(text) == meant


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        pytest.param(
            "squat 5x5 100 in 25 minutes", "barbell back squat 5×5 at 100 kg", id="squat 5x5 100 in 25 minutes"
        ),
        pytest.param("squat 3x5 100 3010", "barbell back squat 3×5 at 100 kg", id="squat 3x5 100 3010"),
        pytest.param("squat 3x5 tempo 3-1-0 100", "barbell back squat 3×5 at 100 kg", id="squat 3x5 tempo 3-1-0 100"),
        pytest.param("squat 3x5 tempo 3010 100", "barbell back squat 3×5 at 100 kg", id="squat 3x5 tempo 3010 100"),
        pytest.param("squat tempo 3 1 0 3x5 100", "barbell back squat 3×5 at 100 kg", id="squat tempo 3 1 0 3x5 100"),
        pytest.param("bench short rest 60 8 8", "barbell bench press 2×8 at 60 kg", id="bench short rest 60 8 8"),
        pytest.param(
            "squat 3x5 100, left glute cramped on set 2",
            "barbell back squat 3×5 at 100 kg, pain",
            id="squat 3x5 100, left glute cramped on set 2",
        ),
        pytest.param("7am session - ohp 3x8 40", "barbell overhead press 3×8 at 40 kg", id="7am session - ohp 3x8 40"),
        pytest.param(
            "40 min session, only deadlift 5x3 140",
            "conventional deadlift 5×3 at 140 kg",
            id="40 min session, only deadlift 5x3 140",
        ),
        pytest.param(
            "#1 squat 100x5\n#2 bench 80x5",
            "barbell back squat 5 at 100 kg; barbell bench press 5 at 80 kg",
            id="#1 squat 100x5 / #2 bench 80x5",
        ),
        pytest.param(
            "1/ squat 100 5 5 5\n2/ rdl 80 8 8",
            "barbell back squat 3×5 at 100 kg; romanian deadlift 2×8 at 80 kg",
            id="1/ squat 100 5 5 5 / 2/ rdl 80 8 8",
        ),
        pytest.param(
            "1a) ohp 40 3x8\n1b) chins 3x6",
            "barbell overhead press 3×8 at 40 kg; chin-up 3×6",
            id="1a) ohp 40 3x8 / 1b) chins 3x6",
        ),
        pytest.param(
            "round 1: kb swing 24k 15\nround 2: kb swing 24k 12",
            "kettlebell swing 15 at 24 kg, 12 at 24 kg",
            id="round 1: kb swing 24k 15 / round 2: kb swing 24k 12",
        ),
        pytest.param("csr 45 3x10 pad on 6", "chest-supported row 3×10 at 45 kg each", id="csr 45 3x10 pad on 6"),
        pytest.param("pull ups (bw 81.4) 8 8 7", "pull-up 2×8, 7", id="pull ups (bw 81.4) 8 8 7"),
        pytest.param(
            "5 people here, squat 3x5 100", "barbell back squat 3×5 at 100 kg", id="5 people here, squat 3x5 100"
        ),
    ],
)
def test_a_number_with_its_word_is_left_aside(text: str, meant: str) -> None:
    assert said(text) == meant


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        pytest.param("squat 80 5 each leg", "ask: barbell back squat 5 at 80 kg", id="squat 80 5 each leg"),
        pytest.param("leg press 100 10 each leg", "leg press 10 at 100 kg", id="leg press 100 10 each leg"),
        pytest.param(
            "deadlift 100 5 per side",
            "ask: conventional deadlift 5 at 100 kg | conventional deadlift 5 at 220 kg",
            id="deadlift 100 5 per side",
        ),
        pytest.param(
            "bench 35 a side x 8",
            "ask: barbell bench press 8 at 35 kg | barbell bench press 8 at 90 kg",
            id="bench 35 a side x 8",
        ),
        pytest.param(
            "squat 95x5x3 right hip pinching",
            "barbell back squat 3×5 at 95 kg, pain",
            id="squat 95x5x3 right hip pinching",
        ),
        pytest.param(
            "bench 3x8 60 left pec tight", "barbell bench press 3×8 at 60 kg", id="bench 3x8 60 left pec tight"
        ),
        pytest.param(
            "kb snatch 16k 8 each side x 4", "kettlebell snatch 4×8 at 16 kg", id="kb snatch 16k 8 each side x 4"
        ),
        pytest.param("step ups 20kg 10 each leg x3", "step-up 3×10 at 20 kg each", id="step ups 20kg 10 each leg x3"),
        pytest.param("db curl 12 3x10 each arm", "dumbbell curl 3×10 at 12 kg each", id="db curl 12 3x10 each arm"),
        pytest.param("reverse lunge 14s 8+8 x3", "ask: ", id="reverse lunge 14s 8+8 x3"),
        pytest.param(
            "sl rdl 20kg 8/side x3", "single-leg romanian deadlift 3×8 at 20 kg each", id="sl rdl 20kg 8/side x3"
        ),
        pytest.param(
            "single arm pulldown 20kg 10/10 per arm x3",
            "single-arm lat pulldown 3×10 at 20 kg",
            id="single arm pulldown 20kg 10/10 per arm x3",
        ),
        pytest.param(
            "single arm pulldown 10/arm x3 20kg",
            "single-arm lat pulldown 3×10 at 20 kg",
            id="single arm pulldown 10/arm x3 20kg",
        ),
        pytest.param(
            "cable glute kickback 12.5 3 x 15/15",
            "cable glute kickback 3×15 at 12.5 kg",
            id="cable glute kickback 12.5 3 x 15/15",
        ),
        pytest.param("pistol squat 5/5 x3", "pistol squat 3×5", id="pistol squat 5/5 x3"),
        pytest.param("bench 80 8/8 x3", "ask: barbell bench press 6×8 at 80 kg", id="bench 80 8/8 x3"),
    ],
)
def test_sides_are_kept_or_asked(text: str, meant: str) -> None:
    assert said(text) == meant


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        pytest.param("chin ups assisted 20 8", "chin-up 8 at −20 kg", id="chin ups assisted 20 8"),
        pytest.param("dips assisted 15 8 8", "dip 2×8 at −15 kg", id="dips assisted 15 8 8"),
        pytest.param("assisted dips 20kg 8 8", "dip 2×8 at −20 kg", id="assisted dips 20kg 8 8"),
        pytest.param("weighted pull ups 20 8 8", "pull-up 2×8 at +20 kg", id="weighted pull ups 20 8 8"),
        pytest.param("pull ups weighted 12.5 5 5 5", "pull-up 3×5 at +12.5 kg", id="pull ups weighted 12.5 5 5 5"),
        pytest.param(
            "pull ups weighted 10 8 7",
            "ask: pull-up 10, 8, 7 | pull-up 8 at +10 kg, 7 at +10 kg",
            id="pull ups weighted 10 8 7",
        ),
        pytest.param("weighted dips 5 8 8 8", "ask: dip 3×8 at +5 kg | dip 5, 3×8", id="weighted dips 5 8 8 8"),
        pytest.param("weighted pull ups 3x8", "pull-up 3×8", id="weighted pull ups 3x8"),
        pytest.param(
            "pull ups 8 @ bw, 6 @ +5, 5 @ +10",
            "pull-up 8, 6 at +5 kg, 5 at +10 kg",
            id="pull ups 8 @ bw, 6 @ +5, 5 @ +10",
        ),
        pytest.param("dips +10kg 8 8, bw 14", "dip 2×8 at +10 kg, 14", id="dips +10kg 8 8, bw 14"),
    ],
)
def test_weights_added_or_taken_off(text: str, meant: str) -> None:
    assert said(text) == meant


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        pytest.param(
            "farmers carry 24 40m 40m 40m", "farmer's walk 3×40 m at 24 kg each", id="farmers carry 24 40m 40m 40m"
        ),
        pytest.param("farmers walk 2x28 30m x2", "farmer's walk 2×30 m at 28 kg each", id="farmers walk 2x28 30m x2"),
        pytest.param("suitcase carry 24 30m 30m", "suitcase carry 2×30 m at 24 kg", id="suitcase carry 24 30m 30m"),
        pytest.param("sled push 100 20m x4", "sled push 4×20 m at 100 kg", id="sled push 100 20m x4"),
        pytest.param("wall sit 1min 30", "wall sit 90 s", id="wall sit 1min 30"),
        pytest.param("plank 1 min 20 s, 1 min", "plank 80 s, 60 s", id="plank 1 min 20 s, 1 min"),
        pytest.param("hollow hold 3 times 30 seconds", "hollow hold 3×30 s", id="hollow hold 3 times 30 seconds"),
        pytest.param("dead hang 75 s + 60 s", "dead hang 75 s, 60 s", id="dead hang 75 s + 60 s"),
    ],
)
def test_carries_and_holds(text: str, meant: str) -> None:
    assert said(text) == meant


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        pytest.param("left knee twinged on the last one", "no sets, pain", id="left knee twinged on the last one"),
        pytest.param("that one felt heavy", "no sets", id="that one felt heavy"),
        pytest.param("the seated one", "no sets", id="the seated one"),
        pytest.param("the other one was easy", "no sets", id="the other one was easy"),
        pytest.param("no one else here", "no sets", id="no one else here"),
        pytest.param("bench 100 for one", "barbell bench press 1 at 100 kg", id="bench 100 for one"),
        pytest.param("that one, 3 reps in the tank", "no sets", id="that one, 3 reps in the tank"),
    ],
)
def test_one_counts_only_where_it_counts(text: str, meant: str) -> None:
    assert said(text, IN_HAND) == meant


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        pytest.param("bodyweight 1e309", "no sets", id="bodyweight 1e309"),
        pytest.param("bodyweight 0", "no sets", id="bodyweight 0"),
        pytest.param("pause until 30 feb", "no sets", id="pause until 30 feb"),
        pytest.param("pause 99", "no sets", id="pause 99"),
        pytest.param("weight 64", "no sets", id="weight 64"),
    ],
)
def test_a_request_half_said_is_no_set(text: str, meant: str) -> None:
    assert said(text, IN_HAND) == meant


@pytest.mark.parametrize(
    ("text", "why"),
    [
        pytest.param("31/02 bench 60 3x5", "there is no such day", id="31/02 bench 60 3x5"),
        pytest.param("feb 30: bench 60 3x5", "there is no such day", id="feb 30: bench 60 3x5"),
        pytest.param("32/13: squat 100x5", "there is no such day", id="32/13: squat 100x5"),
        pytest.param("29.02.2025 squat 100x5", "there is no such day", id="29.02.2025 squat 100x5"),
        pytest.param("2025-13-01 squat 100x5", "there is no such day", id="2025-13-01 squat 100x5"),
        pytest.param("squat 80 5 on 0000-00-00", "there is no such day", id="squat 80 5 on 0000-00-00"),
        pytest.param("squat 3x5 100 on 31 april", "there is no such day", id="squat 3x5 100 on 31 april"),
        pytest.param("squat 80 5 on 9999-12-31", "that day is still ahead", id="squat 80 5 on 9999-12-31"),
        pytest.param("squat 100x5 on march 20 2030", "that day is still ahead", id="squat 100x5 on march 20 2030"),
        pytest.param("01/01/2031 squat 100x5", "that day is still ahead", id="01/01/2031 squat 100x5"),
        pytest.param("bench 3x5 60 on 1 march 1990", "that day is too long ago", id="bench 3x5 60 on 1 march 1990"),
        pytest.param(
            "bodyweight 1e309", "a body weight needs one number, for instance: bodyweight 80.5", id="bodyweight 1e309"
        ),
        pytest.param(
            "pause until 30 feb",
            "a pause needs a day it goes from or until, or a length: pause until 24 june, pause 2 weeks from monday",
            id="pause until 30 feb",
        ),
    ],
)
def test_what_cannot_be_recorded_is_left_unread_with_its_reason(text: str, why: str) -> None:
    outcome = read(text, situation(), KNOWN)

    assert isinstance(outcome, NoSets)
    assert [(one.text, one.why) for one in outcome.unread] == [(text, why)]


@pytest.mark.parametrize(
    ("text", "unread"),
    [
        pytest.param("squat 80kg x 5\nbench 60kg x 5\n\ndeadlift", ["deadlift"], id="a name alone on its line"),
        pytest.param("squat 80 5, bench", ["bench"], id="a name alone behind a comma"),
        pytest.param("squat 5x5 102.5, bench same", ["bench"], id="a name with nothing but same"),
        pytest.param(
            "mon: squat 3x5 100\n31/02: bench 3x5 60\nwed: ohp 3x5 40",
            ["31/02: bench 3x5 60"],
            id="one day of a paste that cannot be",
        ),
        pytest.param("squat 3x5 100\nbench 3x5 1?5\nohp 3x5 40", ["bench 3x5 1?5"], id="one broken number of a paste"),
    ],
)
def test_one_bad_line_never_costs_the_good_ones(text: str, unread: list[str]) -> None:
    outcome = read(text, situation(), KNOWN)

    assert isinstance(outcome, Logged)
    assert [one.text for one in outcome.unread] == unread


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        pytest.param("3x8 10 min", "ask: barbell bench press 3×8 at 60 kg", id="a time without a word to it"),
        pytest.param("3x8 7", "ask: barbell bench press 3×8 at 7 kg", id="a number beside a group"),
        pytest.param("drop 3x8", "ask: barbell bench press 8 at 60 kg, 2×8 at 60 kg drop", id="a drop at one load"),
        pytest.param("8 8 8, felt 7", "ask: barbell bench press 3×8 at 60 kg", id="a number behind a word of feel"),
        pytest.param(
            "8 8 8 for 3", "ask: barbell bench press 2×8 at 60 kg, 8×3 at 60 kg", id="for, with no load to it"
        ),
        pytest.param(
            "8 8 8 3 more", "ask: barbell bench press 3×8 at 60 kg, 3 at 60 kg", id="more of what is not told"
        ),
        pytest.param("8 8 8 7", "barbell bench press 3×8 at 60 kg, 7 at 60 kg", id="one more set of a list belongs"),
    ],
)
def test_the_plan_and_the_last_load_never_hide_a_leftover(text: str, meant: str) -> None:
    context = situation(
        doing="barbell bench press", last={"barbell bench press": "60"}, plan=[("barbell bench press", 3, 8, "60")]
    )

    assert said(text, context) == meant


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("squat 4x5 95?", "barbell back squat 4×5 at 95 kg"),
        ("rdl 3x8 80?", "romanian deadlift 3×8 at 80 kg"),
        ("bench 60 8 8 7?", "barbell bench press 2×8 at 60 kg, 7 at 60 kg"),
        ("pull ups 10 9 8?", "pull-up 10, 9, 8"),
        ("squatting 100 for 5", "barbell back squat 5 at 100 kg"),
        ("still benching 80x5", "barbell bench press 5 at 80 kg"),
        ("age 51 and still deadlifting 140 for 3", "conventional deadlift 3 at 140 kg"),
    ],
)
def test_sets_that_may_be_none_are_asked_about(text: str, meant: str) -> None:
    outcome = read(text, situation(), KNOWN)

    assert isinstance(outcome, Asked)
    assert [describe(one.sets) for one in outcome.readings] == [meant]


@pytest.mark.parametrize("text", ["squat 3x5?", "row 3x12?", "is squat 4x5 95 too much?"])
def test_a_question_without_a_load_asks_nothing_back(text: str) -> None:
    assert isinstance(read(text, situation(), KNOWN), NoSets)


def test_a_lift_told_as_done_today_is_no_habit() -> None:
    assert said("benching 60x8 today", situation()) == "barbell bench press 8 at 60 kg"


@pytest.mark.parametrize(
    "text",
    [
        "dropped 7 kilos",
        "lost 4 kg since may",
        "4 kilo abgenommen",
        "he bajado 4 kilos",
        "j'ai perdu 4 kg",
        "ho perso 4 kg",
        "4 kg afgevallen",
        "schudłam 4 kg",
        "похудела на 4 кг",
        "perdi 4 kg",
        "gått ner 4 kg",
        "first 60 then 65 then 70 on sunday, too bold?",
        "60, 65, 70 - sensible?",
    ],
)
def test_talk_of_weights_that_nobody_lifted_is_no_set(text: str) -> None:
    outcome = read(text, situation(), KNOWN)

    assert isinstance(outcome, NoSets)
    assert outcome.unread == ()


@pytest.mark.parametrize(
    "text",
    ["peso 74 kg", "peso 74,3", "poids 74 kg", "gewicht 74,3", "weeg 74,3", "waga 74,3", "вес 74 кг", "vikt 74,3",
     "estou com 74 kg", "peso 74,3 hoy"],
)  # fmt: skip
def test_what_she_weighs_is_kept_in_all_languages(text: str) -> None:
    assert said(text, situation()) == "request: bodyweight"


@pytest.mark.parametrize("text", ["peso 65 kg", "gewicht 62,5 kg", "poids 65 kg"])
def test_a_weight_beside_a_lift_in_hand_may_be_its_load(text: str) -> None:
    assert said(text, IN_HAND) == "no sets"


@pytest.mark.parametrize(
    ("context", "words"),
    [
        (situation(), "an unusual load"),
        (situation(last={"barbell back squat": "100"}), "far from what you lift"),
    ],
    ids=["nothing known", "known"],
)
def test_a_load_far_off_is_measured_against_what_is_known(context: Context, words: str) -> None:
    outcome = read("squat 3x5 1000", context, KNOWN)

    assert isinstance(outcome, Asked)
    assert words in outcome.question
