"""Words that may change the sets and that no rule reads: the message is asked about and quotes them; remarks are not.

Numbers that are unlikely beside the others are asked about too. Common practice, no source.
"""

from __future__ import annotations

import pytest

from engine.reading import read
from engine.reading.values import Asked, Doubt, Logged
from tests.engine.reading.saying import KNOWN, said, situation

DEADLIFT = "conventional deadlift 3×6 at 120 kg"


@pytest.mark.parametrize(
    ("text", "quoted"),
    [
        ("deadlift 3x6 120 minus one on the last", "minus one on the last"),
        ("deadlift 3x6 120 one short on the last set", "one short on the last set"),
        ("deadlift 3x6 120, skipped the last set", "skipped the last set"),
        ("deadlift 3x6 120, didn't do the last one", "didn't do the last one"),
        ("deadlift 3x6 120, repeat", "repeat"),
        ("deadlift 3x6 120 each time", "each time"),
        ("deadlift 3x6 120 of which the first light", "of which the first light"),
        ("deadlift 3x6 120, last one with a spin", "last one with a spin"),
        ("deadlift 3x6 120 apart from the last", "apart from the last"),
        ("deadlift 3x6 120 skipped the last one", "skipped the last one"),
        ("deadlift 3x6 120. the last two a bit lighter", "two a bit lighter"),
        ("deadlift 3x6 120 plus a few more", "plus a few more"),
        ("martwy ciąg 3x6 120 bez ostatniej", "ostatniej"),
        ("становая 3х6 120, без последнего", "последнего"),
        ("Kreuzheben 3x6 120, letzten Satz ausgelassen", "letzten Satz ausgelassen"),
        ("Kreuzheben 3x6 120 ohne den letzten Satz", "den letzten Satz"),
        ("peso muerto 3x6 120 sin la última", "la última"),
        ("peso muerto 3x6 120 excepto la última", "excepto la última"),
        ("soulevé de terre 3x6 120 sauf la dernière", "sauf la dernière"),
        ("stacco 3x6 120, saltata l'ultima", "saltata l'ultima"),
        ("deadlift 3x6 120, laatste overgeslagen", "laatste overgeslagen"),
        ("martwy ciąg 3x6 120, pominąłem ostatnią serię", "pominąłem ostatnią serię"),
        ("levantamento terra 3x6 120, pulei a última", "pulei a última"),
        ("становая 3х6 120, последний пропустил", "последний пропустил"),
        ("marklyft 3x6 120, hoppade över sista", "hoppade över sista"),
    ],
)
def test_words_that_may_change_the_sets_are_asked_about_and_quoted(text: str, quoted: str) -> None:
    outcome = read(text, situation(), KNOWN)

    assert isinstance(outcome, Asked)
    assert (outcome.doubt, outcome.typed) == (Doubt.WORDS, quoted)
    assert quoted in outcome.question
    assert "Nothing is saved yet" in outcome.question
    assert said(text) == f"ask: {DEADLIFT}"


@pytest.mark.parametrize(
    "text",
    [
        "deadlift 3x6 120, last set felt heavy",
        "deadlift 3x6 120, last one slow",
        "deadlift 3x6 120 last 3 reps slow",
        "deadlift 3x6 120 the first easy",
        "deadlift 3x6 120, left knee twinge on the last set",
        "deadlift 3x6 120 grip gave out on the last one",
        "deadlift 3x6 120, not easy",
        "deadlift 3x6 120, middle one sloppy",
        "deadlift 3x6 120, the heaviest felt smooth",
        "Kreuzheben 3x6 120, letzter Satz schwer",
        "peso muerto 3x6 120, la última pesada",
        "становая 3х6 120, последний тяжело",
    ],
)
def test_a_remark_about_one_of_the_sets_is_no_reason_to_ask(text: str) -> None:
    assert said(text).removesuffix(", pain") == DEADLIFT


@pytest.mark.parametrize(
    "text",
    [
        pytest.param("deadlift 120x6, not 7", id="not another number"),
        pytest.param("deadlift 120x6 instead of 7", id="instead of"),
        pytest.param("deadlift 120x6 rather than 125x6", id="rather than a whole set"),
        pytest.param("deadlift 3x6 instead of 4x6 120", id="instead of a group"),
        pytest.param("peso muerto 3x6 120, no 125", id="a no that is no setting"),
        pytest.param("deadlift 120 20 reps in 4 sets", id="reps spread over sets"),
        pytest.param("Kreuzheben 20 Wdh in 4 Sätzen mit 120", id="spread, in German"),
        pytest.param("становая 20 повторов за 4 подхода 120", id="spread, in Russian"),
        pytest.param("push ups 60 reps total in 4 sets", id="a total and its sets"),
        pytest.param("push ups 10 sets, 60 reps", id="more reps than anyone does"),
        pytest.param("deadlift 120: 30 reps in sets of 6", id="a total behind a load"),
        pytest.param("deadlift 120x6, another two", id="two more of what"),
        pytest.param("peso muerto 120x6, otras dos", id="two more, in Spanish"),
        pytest.param("deadlift 120x6, nog twee", id="two more, in Dutch"),
        pytest.param("marklyft 120x6 två till", id="two more, in Swedish"),
        pytest.param("leg press 3x(180x10, 140x8)", id="a count ahead of two sets in brackets"),
        pytest.param("leg press 180x10 140x8 both x3", id="both repeated"),
        pytest.param("leg press 3x10 180 each set dropped to 140 for 8", id="a drop behind each set"),
        pytest.param("leg press 180x10, 140x10, 100x10 dropset", id="which of them dropped"),
        pytest.param("deadlift 3x6 120 with warm up", id="a warm-up besides"),
        pytest.param("deadlift 3x6 120, missed the last set", id="a missed set"),
        pytest.param("deadlift 3x6 120, missed last rep on second set", id="a missed rep of one set"),
        pytest.param("deadlift 60x6 90x6 120x6 (last one work)", id="which of them is work"),
        pytest.param("pull ups / dips 3x8", id="two lifts and a slash"),
        pytest.param("deadlift 120 plus 15 x 6", id="a load put on another"),
        pytest.param("deadlift 120 6 6 6, missed the last set", id="a missed set of a list"),
        pytest.param("deadlift 3x6 mit dutzendacht kg", id="a unit whose number nobody knows"),
        pytest.param("lat pulldown 3x8 60 + cable fly 3x12 15, last set of each to failure", id="the last of each"),
        pytest.param("bench 80x8 + lat pulldown 60x10 x3", id="of both in turn, or of the last"),
        pytest.param("bench 80x8 ss lat pulldown 60x10 3 sets each", id="a superset and so many sets"),
        pytest.param("bench 80x8/lat pulldown 60x10 3x", id="a slash and so many times"),
        pytest.param("90 push ups: 40, 30, 20", id="what all come to, ahead of them"),
        pytest.param("pull ups ladder 1 to 6", id="a ladder from here to there"),
        pytest.param("deadlift 120x6 (maybe 7)", id="perhaps one more"),
        pytest.param("deadlift 120 x 8 x 3 x 2", id="four numbers that fall too fast"),
        pytest.param("deadlift 120 3 8", id="three bare numbers"),
        pytest.param("deadlift 3x6 60 + bar", id="a load and the bar"),
        pytest.param("bench 3x6 90 feet up last 2", id="how the last two were done"),
        pytest.param("stacco 6 da 120, 4 da 130", id="reps or loads, in Italian"),
        pytest.param("pull ups 8 7 6 + 2 kipping", id="more of what nobody knows"),
        pytest.param("deadlift 4x6 120, third set rpe 9", id="the effort of one set in the middle"),
        pytest.param("deadlift 4x6 120, last 2 rpe 9", id="the effort of two of them"),
        pytest.param("deadlift went from 120x6 to 125x6", id="from one set to another"),
        pytest.param("bench 3x8 80kg after 3x10 14kg flies", id="a group that stands between two names"),
        pytest.param("plank 45s on 15s off x 6", id="on and off"),
        pytest.param("farmers walk 40s 30 yards", id="a way in yards"),
        pytest.param("all three at 120 deadlift", id="all three of them"),
        pytest.param("deadlift all sets 6 reps 120", id="all sets, nobody knows how many"),
        pytest.param("deadlift 1st-3rd set 120x6", id="a span of sets"),
        pytest.param("deadlift first set 120x6, the rest 120x5", id="the rest of the sets"),
        pytest.param("6 rounds + 2 push ups of 10 push ups", id="rounds and a part of one"),
    ],
)
def test_what_no_rule_reads_is_asked(text: str) -> None:
    assert said(text).startswith("ask: ")


@pytest.mark.parametrize(
    "text",
    [
        pytest.param("squat 225x5 then 105x5", id="half the load and less"),
        pytest.param("deadlift 120 8/8/6 22 reps", id="a sum told as reps"),
        pytest.param("push ups 20 18 180", id="a digit too many"),
        pytest.param("pull ups 3x8 at 84kg", id="a load that may be her weight"),
        pytest.param("dips 180lb 3x8", id="her weight in pounds"),
        pytest.param("plank 3x1", id="a hold of a second"),
        pytest.param("bench 3x6 90s", id="seconds of rest, or dumbbells on a bar"),
        pytest.param("back extension 25x12x3", id="a list that falls too fast"),
    ],
)
def test_numbers_unlikely_beside_the_others_are_asked_about(text: str) -> None:
    assert said(text).startswith("ask: ")


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("squat 140x5 then 100x5", "barbell back squat 5 at 140 kg, 5 at 100 kg"),
        ("squat 20x10, 60x5, 140x3", "barbell back squat 10 at 20 kg, 5 at 60 kg, 3 at 140 kg"),
        ("squat 100 5 5 12", "barbell back squat 2×5 at 100 kg, 12 at 100 kg"),
        ("pull ups +50 3x3", "pull-up 3×3 at +50 kg"),
        ("weighted dips 55kg 3x4", "dip 3×4 at +55 kg"),
        ("leg press (180x10, 140x8) x2", "leg press 10 at 180 kg, 8 at 140 kg, 10 at 180 kg, 8 at 140 kg"),
        ("squat 100: 8 (x2) 6", "barbell back squat 2×8 at 100 kg, 6 at 100 kg"),
        ("squat 3x5 100 rest 90/120", "barbell back squat 3×5 at 100 kg"),
        ("leg press 180x10, triple drop 140x8 100x8",
         "leg press 10 at 180 kg, 8 at 140 kg drop, 8 at 100 kg drop"),
        ("1. squat 100x5 2. squat 100x4 3. squat 100x3",
         "barbell back squat 5 at 100 kg, 4 at 100 kg, 3 at 100 kg"),
        ("Kniebeuge 100x5 3 mal", "barbell back squat 3×5 at 100 kg"),
        ("squat 100x5 3 keer", "barbell back squat 3×5 at 100 kg"),
        ("pull ups 3x8 last 2 with a band", "pull-up 3×8"),
        ("(bench 80x8, lat pulldown 60x10) x3",
         "barbell bench press 3×8 at 80 kg; lat pulldown 3×10 at 60 kg"),
        ("3x (bench 80x8, lat pulldown 60x10)",
         "barbell bench press 3×8 at 80 kg; lat pulldown 3×10 at 60 kg"),
        ("round 1 bench 80x8 round 2 bench 80x7", "barbell bench press 8 at 80 kg, 7 at 80 kg"),
        ("pull ups 4/2/1/1", "pull-up 4, 2, 2×1"),
        ("dips bw+30 11/10/9", "dip 11 at +30 kg, 10 at +30 kg, 9 at +30 kg"),
        ("deadlift 120x6, 120x5 (+2 with help)", "conventional deadlift 6 at 120 kg, 5 at 120 kg"),
        ("deadlift 120, 3, 8", "conventional deadlift 3 at 120 kg, 8 at 120 kg"),
        ("Klimmzüge 8, 7, 6 + 3 negative", "pull-up 8, 7, 6"),
        ("Kreuzheben 1x140, 160 ging nicht", "conventional deadlift 1 at 140 kg, 0 at 160 kg missed"),
        ("stacco 1x140, 160 non salita", "conventional deadlift 1 at 140 kg, 0 at 160 kg missed"),
        ("deadlift singles at 140, 150, missed 160",
         "conventional deadlift 1 at 140 kg, 1 at 150 kg, 0 at 160 kg missed"),
        ("back ext 3x12 +10", "back extension 3×12 at +10 kg"),
        ("back extension 15x12x12", "back extension 15, 2×12"),
    ],
)  # fmt: skip
def test_what_is_likely_is_read(text: str, meant: str) -> None:
    outcome = read(text, situation(), KNOWN)

    assert isinstance(outcome, Logged)
    assert said(text) == meant
