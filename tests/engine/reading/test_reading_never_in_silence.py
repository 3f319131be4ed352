"""Numbers of other things, other people, other times: never a set; where they may be one, it is asked.

What is a set and what is talk is common practice, no source.
"""

from __future__ import annotations

import pytest

from engine.catalogue.catalogue import catalogue
from engine.reading import read
from engine.reading.values import Logged
from tests.engine.reading.saying import readings, said, situation, standing_after

KNOWN = catalogue()
NO_SETS = """
the pull up bar is 2.3 m high
3 benches for 40 lifters
3 of us share it
the deadlift platform costs 6 extra
too tired for squat 4x6 today
7 more minutes then i leave
2 sessions left this month
clara just squatted 92x4 beside me
my spreadsheet has squat 4x3 at 95 today
the template gives me bench 4x6 72
mi app me da sentadilla 4x3 92
almost deadlifted 152x3
theoretically bench 5x3 92
im idealfall, theoretisch bankdrücken 5x3 92
watched the girls squat 92x4
petra and jo did 4x6 52 on squat
my phone died, 4 percent
i squat 3 days a week
my nephew and his friends did 4x6 52 on squat
we got 3 new dumbbells
1 down, 3 to go
i am on set 2
4 out of 6 machines are broken
loading up 92 for a triple on squat
thinking 5x4 squat at 82
last block topped out at squat 132x2
no way im doing 4x10 squats today
did 22 sets today
"""
ASKED = """
40 sec plank is dull
4x6 squat is nasty
kniebeuge 4x6 92 ist brutal
my sister outlifted me, 14 push ups
mein bruder hat mich besiegt, 14 liegestütze
4 fellas on the bench
bench 4 goes at 105, got 2
deadlift 4 tries at 150, made 1
squat 4x5 92 if memory serves
bench 72x8, or was it 9
bench 72x8 or was that 9
bench 72x8 or maybe only 7
squat 3x5 75 percent
squat 3x5 75 %
next up: bench 72x8
leg press 3x11 150 is what the card says
back when i was 22, bench 92x4
{doing: leg press; last: leg press 150} added 20, got 11
squat 4x5 92 can't feel my legs
squat 4x5 92 too tired for more
squat 4x5 92 going to sleep now
squat 4x5 92 with some lighter ones
our average on bench is 92x4
bench 92x5 soon
today's menu: squat 4x5 92, bench 4x6 72
younger me would squat 152x4
70 push ups a day keep me fit
{doing: barbell bench press; last: barbell bench press 72} around 9
{doing: barbell bench press; last: barbell bench press 72} 9 or so
{doing: barbell bench press; last: barbell bench press 72} between 7 and 9
bench about 72 for 8
almost 22 pull ups
bench 3x8 72 more or less
bankdrücken 3x8 72, mehr oder weniger
squat 4x5 92, third set not done
squat 4x5 92 every second one lighter
squat 4x5 starting at 92 going up
bench 4x6 72 lost a rep on the last
superset 4 bench 62x8, pull ups 9
bench 72x8 should i go heavier?
bench 72x8 ok?
{doing: barbell bench press; last: barbell bench press 72} sets 2 & 4 9 reps
{doing: barbell bench press; last: barbell bench press 72} sets 2 to 3 9 reps
"""
RECORDED = """
superset 3 bench 62 9 8 8 => barbell bench press 9 at 62 kg, 2×8 at 62 kg
superset 3 bench 4x6 72, pull ups 9 => barbell bench press 4×6 at 72 kg; pull-up 9
bench with my uncle 4x6 72 => barbell bench press 4×6 at 72 kg
mit der freundin kniebeuge 4x5 92 => barbell back squat 4×5 at 92 kg
my kid was up late so only bench 4x6 72 => barbell bench press 4×6 at 72 kg
if someone asks: bench 4x6 72 => barbell bench press 4×6 at 72 kg
bench 4x6 72 how am i doing? => barbell bench press 4×6 at 72 kg
bench 4x6 72 what's next? => barbell bench press 4×6 at 72 kg
{doing: barbell bench press} two done, 72x8 72x7 => barbell bench press 8 at 72 kg, 7 at 72 kg
{doing: barbell bench press} did 3: 72x8, 72x8, 72x7 => barbell bench press 2×8 at 72 kg, 7 at 72 kg
squat 4x5 92 after 3 weeks off => barbell back squat 4×5 at 92 kg
squat 4x5 92 first time in 5 months => barbell back squat 4×5 at 92 kg
squat 4x5 92 then home, 25 min drive => barbell back squat 4×5 at 92 kg
after 12 min of cycling: squat 4x5 92 => barbell back squat 4×5 at 92 kg
squat 4x5 92, 75 percent effort => barbell back squat 4×5 at 92 kg
squat 72x5 82x5 92x5 going up => barbell back squat 5 at 72 kg, 5 at 82 kg, 5 at 92 kg
{doing: barbell bench press; last: barbell bench press 72} 9 reps and my arms are dead => barbell bench press 9 at 72 kg
dead 142x4 => conventional deadlift 4 at 142 kg
bench 4x6 72 bw 83 this morning => barbell bench press 4×6 at 72 kg
day 4/30 bench 4x6 72 => barbell bench press 4×6 at 72 kg
bench 4x6 72, rpe around 8 => barbell bench press 4×6 at 72 kg RPE 8
bench 4x6 72 after waiting 12 minutes => barbell bench press 4×6 at 72 kg
bench 92x4 beats my old 87x4 => barbell bench press 4 at 92 kg
bench 4x6 no idea what was on the bar => barbell bench press 4×6
woohoo bench 72x8 => barbell bench press 8 at 72 kg
push ups 32 => push-up 32
{doing: leg press; last: leg press 150} 11. quads on fire => leg press 11 at 150 kg
{doing: leg press; last: leg press 150} 11!! new best => leg press 11 at 150 kg
{doing: leg press; last: leg press 150} 11. 10. 9 => leg press 11 at 150 kg, 10 at 150 kg, 9 at 150 kg
bench 4x6 72 instead of 77 => barbell bench press 4×6 at 72 kg
{doing: barbell bench press; last: barbell bench press 72} 4x6 77 instead of 72 => barbell bench press 4×6 at 77 kg
4x6 bench @ 77 instead of 72 => barbell bench press 4×6 at 77 kg
bench 4x6 72 since 77 felt off => barbell bench press 4×6 at 72 kg
bench 4x6 72 as the 77s were taken => barbell bench press 4×6 at 72 kg
bench 4x6 72 on bench 5 => barbell bench press 4×6 at 72 kg
my friend cancelled so bench 4x6 72 alone => barbell bench press 4×6 at 72 kg
spotted a guy then did my own bench 4x6 72 => barbell bench press 4×6 at 72 kg
squat 4x5 92 in front of 9 people => barbell back squat 4×5 at 92 kg
{doing: barbell bench press; last: barbell bench press 72} 9 (bar hit my chin) => barbell bench press 9 at 72 kg
{doing: barbell bench press; last: barbell bench press 72} that set: 9 => barbell bench press 9 at 72 kg
bench 72x8 is a new pr => barbell bench press 8 at 72 kg
squat 5x5 week 3 92 => barbell back squat 5×5 at 92 kg
"""
BY_THE_PLAN = """
{plan: barbell bench press 3 8 72} squat 4x5 92 // bench as planned // leg press 3x9 150 => barbell back squat 4×5 at 92 kg; barbell bench press 3×8 at 72 kg; leg press 3×9 at 150 kg
{plan: barbell bench press 3 8 72} bench as planned, then pendlay row 62 10 9 => barbell bench press 3×8 at 72 kg; pendlay row 10 at 62 kg, 9 at 62 kg
{plan: barbell bench press 3 8 72, barbell back squat 4 5 92} bench and squat as planned => barbell bench press 3×8 at 72 kg; barbell back squat 4×5 at 92 kg
"""  # noqa: E501 — a message and its reading stand on one line


def texts(table: str) -> list[str]:
    """One message a line."""
    return table.strip().splitlines()


@pytest.mark.parametrize("text", texts(NO_SETS))
def test_numbers_of_others_are_no_sets(text: str) -> None:
    assert said(text) == "no sets"
    assert said(text, situation("barbell bench press", last={"barbell bench press": "72"})) == "no sets"


@pytest.mark.parametrize(("text", "context", "meant"), readings("\n".join(f"{one} => " for one in texts(ASKED))))
def test_what_may_be_no_set_is_asked(text, context, meant) -> None:
    assert said(text, context).startswith("ask: ")


@pytest.mark.parametrize(("text", "context", "meant"), readings(f"{RECORDED.strip()}{BY_THE_PLAN}"))
def test_words_around_sets_cost_none(text, context, meant) -> None:
    assert said(text, context) == meant


def test_a_line_by_a_plan_that_has_none_of_it_is_quoted() -> None:
    outcome = read("squat 4x5 92\nbench as planned\nleg press 3x9 150", situation(), KNOWN)

    assert isinstance(outcome, Logged)
    assert [one.text for one in outcome.unread] == ["bench as planned"]


@pytest.mark.parametrize(
    ("text", "days"),
    [
        ("squat yesterday was 92x3, today 97x3", [13, 14]),
        ("squat: monday 92x3, wednesday 97x3", [10, 12]),
        ("squat 92x3 monday, 97x3 today", [10, 14]),
        ("monday squat 92x3, wednesday 97x3, today 102x3", [10, 12, 14]),
        ("kniebeuge gestern 92x3, heute 97x3", [13, 14]),
    ],
)
def test_each_day_keeps_its_sets(text: str, days: list[int]) -> None:
    outcome = read(text, situation(), KNOWN)

    assert isinstance(outcome, Logged)
    assert [day and day.day for day in outcome.days] == days


def test_a_name_put_right_holds_for_the_row_of_sets_that_had_it() -> None:
    assert standing_after("incline bench 62x9 | 8 | 8 | that was flat bench").startswith(
        "barbell bench press 9 at 62 kg"
    )


def test_a_lift_out_and_another_in_is_a_swap() -> None:
    assert said("bench out, dips in") == "request: swap barbell bench press dip"
    assert said("beinpresse rein, kniebeuge raus") == "request: swap barbell back squat leg press"


def test_a_load_and_reps_without_a_lift_are_never_passed_over() -> None:
    assert said("pulled 142x4 while they stared") == "ask: "


LISTED_TO_THE_LAST = """
bench 70x9, 8, 7 last one was hard => barbell bench press 9 at 70 kg, 8 at 70 kg, 7 at 70 kg
bench 70 x 9 9 8 last set was ugly => barbell bench press 2×9 at 70 kg, 8 at 70 kg
bench 70x9, 9, 7 on the last => barbell bench press 2×9 at 70 kg, 7 at 70 kg
squat 95 for 6, then 5, 4 last set => barbell back squat 6 at 95 kg, 5 at 95 kg, 4 at 95 kg
bench 3x9 70, 7 on the last => barbell bench press 2×9 at 70 kg, 7 at 70 kg
3 sets farmers carry 25m 30kg => farmer's walk 3×25 m at 30 kg each
4 sets sled push 15m 90kg => sled push 4×15 m at 90 kg
2 sets farmers carry 40s 30kg => farmer's walk 2×40 s at 30 kg each
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(LISTED_TO_THE_LAST))
def test_no_set_of_a_list_makes_room_for_its_last_and_ways_stay_ways(text, context, meant) -> None:
    assert said(text, context) == meant


RESULTS_OF_SEVERAL = """
bench 4x7 72, got all 7 => barbell bench press 4×7 at 72 kg
bench 4 sets of 7 at 72, got 7 on all => barbell bench press 4×7 at 72 kg
bench 4x7 72, got 7 7 6 6 => barbell bench press 2×7 at 72 kg, 2×6 at 72 kg
squat 95x6, got 5 => barbell back squat 5 at 95 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(RESULTS_OF_SEVERAL))
def test_a_result_that_all_sets_came_to_loses_none_of_them(text, context, meant) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize("text", ["bench 4x7 72 got 5", "bench 72x7x4, got 6", "bench 4x7 72, got 7 6"])
def test_fewer_results_than_sets_are_asked_about(text: str) -> None:
    assert said(text).startswith("ask")


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        pytest.param("bench 80 another, last set", "no sets", id="another set without a number ahead of the last one"),
        pytest.param("60, another (rest 90 band", "ask: ", id="another set without a number ahead of its help"),
        pytest.param(
            "bench 2 plates / 15 another two sets like that @ 25 another one",
            "ask: ",
            id="another behind announced sets",
        ),
        pytest.param(
            "pull ups +10 5 5, another, bw", "ask: pull-up 3×5 at +10 kg", id="another set with a load of its own"
        ),
        pytest.param("dips 100 assist x", "ask: dip 100", id="help, and a cross with nothing behind it"),
        pytest.param(
            "bench 80x5, x3 per side x3",
            "ask: barbell bench press 5 at 180 kg, 3×3 at 180 kg | barbell bench press 5 at 80 kg, 3×3 at 80 kg",
            id="reps of each side of a load carried on",
        ),
        pytest.param(
            "row+each side*24k+135lb*five*100)", "ask: ", id="a cross behind a cluster that is repeated already"
        ),
        pytest.param("bench 100x5 (was 95", "barbell bench press 5 at 100 kg", id="a bracket that the text ends in"),
        pytest.param(
            "squat s① 80x5, s② 80x5", "ask: barbell back squat 5 at 80 kg", id="a circled digit counts no set"
        ),
    ],
)
def test_no_text_that_breaks_off_or_tells_no_number_stops_the_reader(text: str, meant: str) -> None:
    assert said(text) == meant
