"""Counts, brackets and remarks among sets: what they count adds no set and loses none, or it is asked."""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import dialogues, log_after, readings, said

PLACES_OF_SESSIONS = """
squat 100 5 5 5 week 3 of 8                  => barbell back squat 3×5 at 100 kg
squat 100x5 5 4 day 2 of 4                   => barbell back squat 2×5 at 100 kg, 4 at 100 kg
Kniebeuge 100 5 5 5 Woche 3 von 8            => barbell back squat 3×5 at 100 kg
bänkpress 80 8 8 7 vecka 3 av 8              => barbell bench press 2×8 at 80 kg, 7 at 80 kg
bench 80 8 8 7 5 weeks out                   => barbell bench press 2×8 at 80 kg, 7 at 80 kg
"""

ANNOUNCED = """
squat 100x5 two warm up ones: 60x5, 80x5      => barbell back squat 5 at 100 kg, 5 at 60 kg warmup, 5 at 80 kg warmup
squat 100x5 3 light ones: 60x5, 60x5, 60x5         => barbell back squat 5 at 100 kg, 3×5 at 60 kg
squat 100x5 two back offs: 80x5, 80x5              => barbell back squat 5 at 100 kg, 2×5 at 80 kg
squat 100x5 3 lighter sets: 80x5, 80x5, 80x5       => barbell back squat 5 at 100 kg, 3×5 at 80 kg
squat 100x5 two attempts: 120x1, 125x1             => barbell back squat 5 at 100 kg, 1 at 120 kg, 1 at 125 kg
squat 100x5, two drops: 80x5, 60x5                 => barbell back squat 5 at 100 kg, 5 at 80 kg drop, 5 at 60 kg drop
squat 100x5 2 drop sets 80x5 60x5                  => barbell back squat 5 at 100 kg, 5 at 80 kg drop, 5 at 60 kg drop
squat 100x5 two more: 80x5, 80x4                   => barbell back squat 5 at 100 kg, 5 at 80 kg, 4 at 80 kg
squat 100x5 + 2 back offs 80x5 80x5                => barbell back squat 5 at 100 kg, 2×5 at 80 kg
squat 100x5 + 2 back offs 80x5                     => barbell back squat 5 at 100 kg, 2×5 at 80 kg
bench 3x5 100, 2 back offs 80x8, 80x8              => barbell bench press 3×5 at 100 kg, 2×8 at 80 kg
squat 100x5, 1 back off 80x8                       => barbell back squat 5 at 100 kg, 8 at 80 kg
squat 100x5 1 back off set: 80x8                   => barbell back squat 5 at 100 kg, 8 at 80 kg
Kniebeuge 100x5 zwei Backoff Sätze: 80x5, 80x5     => barbell back squat 5 at 100 kg, 2×5 at 80 kg
squat 100x5 2 backoffs 80x5                        => ask: barbell back squat 5 at 100 kg, 5 at 80 kg
squat 100x5 3 light ones: 60x5, 60x5               => ask: barbell back squat 5 at 100 kg, 2×5 at 60 kg
bench 80x8, 3 more: 80x8, 80x7                     => ask: barbell bench press 2×8 at 80 kg, 7 at 80 kg
"""

COUNTED_LISTS_OF_REPS = """
bench 72kg 3 sets: 9 reps, 8 reps, 6 reps          => barbell bench press 9 at 72 kg, 8 at 72 kg, 6 at 72 kg
bench 72 3 sets 9 reps, 8 reps, 6 reps             => barbell bench press 9 at 72 kg, 8 at 72 kg, 6 at 72 kg
3 sets bench 72kg, 9 reps 8 reps 6 reps            => barbell bench press 9 at 72 kg, 8 at 72 kg, 6 at 72 kg
bench 72kg 3 Sätze: 9 Wdh, 8 Wdh, 6 Wdh            => barbell bench press 9 at 72 kg, 8 at 72 kg, 6 at 72 kg
dips 3 sets 13 reps and 11 reps and 9 reps         => dip 13, 11, 9
pull ups 3 sets 9 reps, 7, 6                       => pull-up 9, 7, 6
bench 3 sets 8 reps 62, 8 reps 67, 6 reps 72       => barbell bench press 8 at 62 kg, 8 at 67 kg, 6 at 72 kg
bench 3 sets 8 reps 82 (8 reps, 8 reps, 7 reps)    => barbell bench press 2×8 at 82 kg, 7 at 82 kg
bench 3 sets 8 reps 82: 8 8 7                      => barbell bench press 2×8 at 82 kg, 7 at 82 kg
bench 3 sets 8 reps at 72, last set 6 reps         => barbell bench press 2×8 at 72 kg, 6 at 72 kg
bench 3 sets 8 reps 2 sets 6 reps 72               => barbell bench press 3×8 at 72 kg, 2×6 at 72 kg
bench 3 sets 8 reps 72 then 62 12 reps             => barbell bench press 3×8 at 72 kg, 12 at 62 kg
incline db 3 sets 10 reps 26                       => incline dumbbell bench press 3×10 at 26 kg each
bench 72 9 reps, 8 reps, 6 reps, 3 sets            => barbell bench press 9 at 72 kg, 8 at 72 kg, 6 at 72 kg
pull ups 4 sets: 9 reps, 7 reps, 6 reps            => ask: pull-up 4×9, 7, 6
pull ups 3 sets of 8 reps, 7 reps                  => ask: pull-up 3×8, 7
"""

COUNTED_PAST_A_REMARK = """
leg press 100x12 (each leg) x3           => leg press 3×12 at 100 kg
leg press 100 x 12 (pro Bein) x3         => leg press 3×12 at 100 kg
bench 80x5 (paused) x3                   => barbell bench press 3×5 at 80 kg
bench 80x5 paused x3                     => barbell bench press 3×5 at 80 kg
bench 80x5 w/ pause x3                   => barbell bench press 3×5 at 80 kg
bench 80x5 @8 x3                         => barbell bench press 3×5 at 80 kg RPE 8
bench 80x5 rpe8 x3                       => barbell bench press 3×5 at 80 kg RPE 8
bench 80x5 rir 2 x3                      => barbell bench press 3×5 at 80 kg 2 in reserve
squat 100x5 (belt) x3, 110x3             => barbell back squat 3×5 at 100 kg, 3 at 110 kg
bench 80x8 (easy) x7 (hard)              => barbell bench press 8 at 80 kg, 7 at 80 kg
bench 80x5 @7 x5 @8 x4 @9                => barbell bench press 5 at 80 kg RPE 7, 5 at 80 kg RPE 8, 4 at 80 kg RPE 9
bench 80x5 (easy) x4                     => ask: barbell bench press 4×5 at 80 kg
pull ups 8 (strict) x3                   => ask: pull-up 8, 3
bench 80x8 x2, x6 x1                     => barbell bench press 2×8 at 80 kg, 6 at 80 kg
bench 80x8 x2, x6 x2, x5 x1              => barbell bench press 2×8 at 80 kg, 2×6 at 80 kg, 5 at 80 kg
squat 60x8, x6 x2                        => ask: barbell back squat 8 at 60 kg, 2×6 at 60 kg
bench 100x5 x3 + 1 amrap 12              => barbell bench press 3×5 at 100 kg, 12 at 100 kg
bench 100x5 x2 + 1 set of amrap 9        => barbell bench press 2×5 at 100 kg, 9 at 100 kg
"""

HOW_FAR = """
bench 80 8 8 7, 3 done                   => barbell bench press 2×8 at 80 kg, 7 at 80 kg
bench 80 8 8 7 that makes 3              => barbell bench press 2×8 at 80 kg, 7 at 80 kg
bench 80x8, 80x8, that's two             => barbell bench press 2×8 at 80 kg
bench 80 8 8 7, 3 in the bag             => barbell bench press 2×8 at 80 kg, 7 at 80 kg
bench 80 8 8 7, 3 so far                 => barbell bench press 2×8 at 80 kg, 7 at 80 kg
bench 80, 8, 8, 6 done                   => barbell bench press 2×8 at 80 kg, 6 at 80 kg
bench 80 8 8 7, 2 so far                 => ask: barbell bench press 2×8 at 80 kg, 7 at 80 kg
bench 80 8 8 7, 2 to go                  => barbell bench press 2×8 at 80 kg, 7 at 80 kg
bench 80 8 8, still 2 to do              => barbell bench press 2×8 at 80 kg
bench 80 8 8, 2 remaining                => barbell bench press 2×8 at 80 kg
bench 80x8, 80x8, 2 sets                 => barbell bench press 2×8 at 80 kg
bench 80x8 80x8 80x8 (3 sets)            => barbell bench press 3×8 at 80 kg
bench 80x8, 80x8, 4 sets in all          => ask: barbell bench press 5×8 at 80 kg
bench 80x8, 75x8, 2 sets                 => ask: barbell bench press 8 at 80 kg, 2×8 at 75 kg
squat 100x5, 80x8 2 sets                 => barbell back squat 5 at 100 kg, 2×8 at 80 kg
bench 80x8, that makes 4 sets            => barbell bench press 4×8 at 80 kg
bench 80x8, 2 sets left                  => barbell bench press 8 at 80 kg
press banca 80x8, quedan 2 series        => barbell bench press 8 at 80 kg
bänkpress 80x8, 2 set kvar               => barbell bench press 8 at 80 kg
bankdrukken 80x8, nog 2 sets te gaan     => barbell bench press 8 at 80 kg
жим лежа 80х8, осталось 2 подхода        => barbell bench press 8 at 80 kg
bankdrücken 80x8, noch 2 Sätze           => ask: barbell bench press 3×8 at 80 kg
press banca 80x8, 8, 7, las 3 limpias    => barbell bench press 2×8 at 80 kg, 7 at 80 kg
"""

WHAT_IS_COUNTED = """
squat 10 reps x 3 sets x 60              => barbell back squat 3×10 at 60 kg
squat 10r x 3s x 60                      => barbell back squat 3×10 at 60 kg
squat 5 x 3 sets x 100kg                 => barbell back squat 3×5 at 100 kg
squat 5 reps x 3 x 100                   => barbell back squat 3×5 at 100 kg
squat 3 sets x 10 reps x 60              => barbell back squat 3×10 at 60 kg
squat 60 x 3 sets x 10 reps              => barbell back squat 3×10 at 60 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(WHAT_IS_COUNTED))
def test_words_say_which_number_counts_sets(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


SAID_OF_ALL = """
bench 80x8, 80x8, all 8                  => barbell bench press 2×8 at 80 kg
bench 80 8 8 8 all 8                     => barbell bench press 3×8 at 80 kg
bench 80x8, 80x8, both 8                 => barbell bench press 2×8 at 80 kg
bench 80x8, 8 both 4                     => ask: barbell bench press 2×8 at 80 kg
bench 60x8 40x10 both 4                  => ask: barbell bench press 8 at 60 kg, 10 at 40 kg
bench 80 8 7 6 all 8                     => ask: barbell bench press 8 at 80 kg, 7 at 80 kg, 6 at 80 kg
bench 80x8, 75x8 both 3 sets             => ask: barbell bench press 8 at 80 kg, 3×8 at 75 kg
kniebeuge 100x5, 100x5 beide 4           => ask: barbell back squat 2×5 at 100 kg
sentadilla 100x5, 100x5 las dos 4        => ask: barbell back squat 2×5 at 100 kg
knäböj 100x5 100x5 båda 5                => barbell back squat 2×5 at 100 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(SAID_OF_ALL))
def test_a_number_behind_both_or_all_is_no_set_more(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(("text", "context", "meant"), readings(COUNTED_LISTS_OF_REPS))
def test_a_count_ahead_of_listed_reps_adds_no_sets(text: str, context: Context, meant: str) -> None:
    assert said(text, context).strip() == meant


@pytest.mark.parametrize(("text", "context", "meant"), readings(COUNTED_PAST_A_REMARK))
def test_an_x_behind_a_remark_counts_the_set_before_it(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(("text", "context", "meant"), readings(HOW_FAR))
def test_how_far_the_sets_have_come_adds_none(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(("text", "context", "meant"), readings(PLACES_OF_SESSIONS))
def test_which_session_it_was_takes_no_set_in_front_of_it(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(("text", "context", "meant"), readings(ANNOUNCED))
def test_a_count_ahead_of_its_list_is_no_set(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


SAID_OF_ITS_SPEED = """
leg extension 60x12, 45x10 straight away           => leg extension 12 at 60 kg, 10 at 45 kg drop
leg extension 60x12, 45x10, no rest                => leg extension 12 at 60 kg, 10 at 45 kg drop
leg extension 60x12, 45x10 back to back            => leg extension 12 at 60 kg, 10 at 45 kg drop
leg extension 3x12 60, 45x10 right after           => leg extension 3×12 at 60 kg, 10 at 45 kg drop
leg extension 60x12 right into 45x10               => leg extension 12 at 60 kg, 10 at 45 kg drop
Beinstrecker 60x12, 45x10 direkt danach            => leg extension 12 at 60 kg, 10 at 45 kg drop
leg extension 60x12, 70x10 straight away           => leg extension 12 at 60 kg, 10 at 70 kg
bench 80x8, 80x8, no rest                          => barbell bench press 2×8 at 80 kg
squat 100x5, 80x8 no break at work                 => barbell back squat 5 at 100 kg, 8 at 80 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(SAID_OF_ITS_SPEED))
def test_a_lighter_set_that_came_at_once_is_a_drop_wherever_that_is_said(
    text: str, context: Context, meant: str
) -> None:
    assert said(text, context) == meant


VERBS_OF_SOMETHING_ELSE = """
bench 80x8 missed breakfast                        => ask: barbell bench press 8 at 80 kg
bench 80x8 missed lunch                            => ask: barbell bench press 8 at 80 kg
bench 80x8 failed exam                             => ask: barbell bench press 8 at 80 kg
bänkpress 100x1 missade bussen                     => ask: barbell bench press 1 at 100 kg
bench 80x8 missed lockout                          => barbell bench press 8 at 80 kg missed
snatch 80 missed forward                           => snatch 0 at 80 kg missed
bankdrücken 80 8 7 mal sehen                       => barbell bench press 8 at 80 kg, 7 at 80 kg
bankdrücken 80 8 8 8 mal wieder schwer             => barbell bench press 3×8 at 80 kg
bankdrücken 80 8 3 mal                             => barbell bench press 3×8 at 80 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(VERBS_OF_SOMETHING_ELSE))
def test_a_word_joined_to_the_sets_may_speak_of_something_else(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


SEVERAL_OF_THEM = """
squat triples at 120 | 4                           => barbell back squat 4×3 at 120 kg
squat 120 triples | four sets                      => barbell back squat 4×3 at 120 kg
bench 100 for sets of 5 | did 4                    => barbell bench press 4×5 at 100 kg
deadlift singles @ 180 | just one                  => conventional deadlift 1 at 180 kg
squat 100x5, then triples at 120 | 3               => barbell back squat 5 at 100 kg, 3×3 at 120 kg
Kniebeuge Dreier mit 120 | 5                       => barbell back squat 5×3 at 120 kg
squat triples at 120 | 4x3                         => barbell back squat 4×3 at 120 kg
squat triples at 120 | forget it                   =>
squat a triple at 120                              => barbell back squat 3 at 120 kg
squat triples at 120, 125, 130                     => barbell back squat 3 at 120 kg, 3 at 125 kg, 3 at 130 kg
squat 3 triples at 120                             => barbell back squat 3×3 at 120 kg
"""


@pytest.mark.parametrize(("told", "standing"), dialogues(SEVERAL_OF_THEM))
def test_sets_named_in_the_plural_without_a_count_are_asked_for_it(told: str, standing: str) -> None:
    assert log_after(*told.split(" | ")) == standing


def test_a_number_with_several_points_is_no_day_and_breaks_nothing() -> None:
    assert said("squat 82.582.582.582.5") == "ask: "


TIMES_BESIDE_HOLDS = """
20 min plank: 3x60                                 => plank 3×60 s
plank 20 min 3x60                                  => plank 3×60 s
plank 5 min: 60 60 60 60 60                        => plank 5×60 s
bench 30 min: 3x8 80                               => barbell bench press 3×8 at 80 kg
plank 60s, five minutes to closing                 => plank 60 s
plank 60s, two minutes late                        => plank 60 s
plank 60s, 5s better than monday                   => plank 60 s
plank 60s, 10s longer than last time               => plank 60 s
plank 60s, 5 seconds off my pr                     => plank 60 s
plank 60s, 20 seconds short of my best             => plank 60 s
plank 60s, last 20s shaking                        => plank 60 s
plank 60s, first 30s easy                          => plank 60 s
plank 3x60s, had 5 minutes left                    => plank 3×60 s
plank 60s five minutes after breakfast             => ask: plank 60 s
plank 60s only 20s left                            => ask: plank 60 s
plank 60s, 30s in was hard                         => ask: plank 60 s
plank 3x60 5 min                                   => ask: plank 3×60 s
plank 3 min, 5 min                                 => plank 180 s, 300 s
plank 60s, 45s                                     => plank 60 s, 45 s
bänkpress 80x8, det blev bara 4                    => barbell bench press 4 at 80 kg
bench 80x8, got only 4                             => barbell bench press 4 at 80 kg
bankdrukken 80x8, het werden er maar 4             => barbell bench press 4 at 80 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(TIMES_BESIDE_HOLDS))
def test_a_time_beside_holds_and_a_result_are_no_set_more(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


MADE_OR_MISSED = """
bench 100, 3 of 4 made                             => ask: barbell bench press 3 at 100 kg
bench 100 made 3 of 4                              => ask: barbell bench press 3 at 100 kg
bench 100 for 3 of 5                               => ask: barbell bench press 3 at 100 kg
snatch 60 made 3/5                                 => ask: snatch 3 at 60 kg
snatch 60 3 of 5 attempts                          => ask: snatch 3 at 60 kg
deadlift 150 3 attempts                            => ask: conventional deadlift 3 at 150 kg
bench 3 of 8 at 60                                 => barbell bench press 3×8 at 60 kg
deadlift 5 singles at 150, missed two              => ask: conventional deadlift 3×1 at 150 kg, 2×0 at 150 kg missed
deadlift 5 singles at 150, failed 2                => ask: conventional deadlift 3×1 at 150 kg, 2×0 at 150 kg missed
deadlift 5 singles at 150 missed the last          => conventional deadlift 4×1 at 150 kg, 0 at 150 kg missed
pull ups 35 good, 32 miss                          => ask: pull-up 35, 0 at +32 kg missed
pull ups 35kg good, 40kg miss                      => pull-up 1 at +35 kg, 0 at +40 kg missed
snatch 35 good, 32 miss                            => snatch 1 at 35 kg, 0 at 32 kg missed
"""

CUT_SHORT_OR_HELPED = """
squat 3x8 100 stopped after second set because of pain => ask: barbell back squat 3×8 at 100 kg
squat 3x8 100, had to stop after the second set        => ask: barbell back squat 3×8 at 100 kg
squat 3x8 100 ended after the second                   => ask: barbell back squat 3×8 at 100 kg
squat 100x8, 8 stopped after second set                => barbell back squat 2×8 at 100 kg
squat 3x8 100 belt on after second set                 => barbell back squat 3×8 at 100 kg
lateral raise 10kg 12 12 12 partials 6                 => ask: dumbbell lateral raise 3×12 at 10 kg each
bench 80 8 8 6 forced reps 2                           => ask: barbell bench press 2×8 at 80 kg, 6 at 80 kg
lateral raise 10kg 12 12 12 + 6 partials               => dumbbell lateral raise 3×12 at 10 kg each
bench 80 8 8 6 2 partials, 5                           => barbell bench press 2×8 at 80 kg, 6 at 80 kg, 5 at 80 kg
pull ups 8 8 (8 assisted)                              => ask: pull-up 3×8
pull ups 8 8 (6 with band)                             => ask: pull-up 2×8, 6
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(MADE_OR_MISSED))
def test_tries_that_were_made_or_missed_are_counted_or_asked_about(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(("text", "context", "meant"), readings(CUT_SHORT_OR_HELPED))
def test_sets_cut_short_and_reps_that_were_helped_are_asked_about(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


REMARKS_THAT_COUNT = """
bench 80x8, 8, 7, all 3 smooth                     => barbell bench press 2×8 at 80 kg, 7 at 80 kg
squat 100x5 x3, all 3 the same                     => barbell back squat 3×5 at 100 kg
pull ups 8 8 7, all 3 smooth                        => pull-up 2×8, 7
bench 80x8, 8, 7, rep 7 was a grinder              => barbell bench press 2×8 at 80 kg, 7 at 80 kg
bench 80x8, 8, 7 with the 20kg bar                 => barbell bench press 2×8 at 80 kg, 7 at 80 kg
bench 80 8 8 7 3 exercises left                    => barbell bench press 2×8 at 80 kg, 7 at 80 kg
pull ups 8 8 7, at 7 in the morning                => pull-up 2×8, 7
bench 80x8, 8, 7 was 77.5 last week                => barbell bench press 2×8 at 80 kg, 7 at 80 kg
bench 80 8 8 7 (5/3/1 day)                         => barbell bench press 2×8 at 80 kg, 7 at 80 kg
pull ups 8 8 7, 5s week                            => pull-up 2×8, 7
bench 80x8, 8, 7, up 2 reps                        => ask: barbell bench press 2×8 at 80 kg, 7 at 80 kg, 2 at 80 kg
bench 80x8, 8, 7, 2 rep pr                         => ask: barbell bench press 2×8 at 80 kg, 7 at 80 kg, 2 at 80 kg
bench 80x8, 8, 7, 2 fewer than planned             => ask: barbell bench press 2×8 at 80 kg, 7 at 80 kg, 2 at 80 kg
bench 80x8, 8, 7, 1 bad rep                        => ask: barbell bench press 2×8 at 80 kg, 7 at 80 kg, 1 at 80 kg
bench 80x8, 8, 7, 1 notch tighter                  => ask: barbell bench press 2×8 at 80 kg, 7 at 80 kg, 1 at 80 kg
bench 80x8, 8, 7, 2 advil                          => ask: barbell bench press 2×8 at 80 kg, 7 at 80 kg, 2 at 80 kg
bench 80 8 8 7 old pr 82.5x8                       => ask: barbell bench press 2×8 at 80 kg, 7 at 80 kg
bench 80x8, 8, 7, bar 20                           => ask: barbell bench press 2×8 at 80 kg, 7 at 80 kg
bench 80 8 8 7 without the bar                     => ask: barbell bench press 2×8 at 80 kg, 7 at 80 kg
squat 3x5 100, last one at 9                       => ask: barbell back squat 2×5 at 100 kg, 9 at 100 kg
bench 80x8, first 2 were easy                      => ask: barbell bench press 8 at 80 kg
pull ups 8 8 7, done at 6                          => ask: pull-up 2×8, 7
bench 80x8, 8, 3 pathetic                          => ask: barbell bench press 2×8 at 80 kg, 3 at 80 kg
bench 80x8 (2 ugly)                                => ask: barbell bench press 8 at 80 kg, 2 at 80 kg
bench 80x8 (8 of 10)                               => ask: barbell bench press 8 at 80 kg, 8×10 at 80 kg
bench 80x8 (1 cheat)                               => ask: barbell bench press 8 at 80 kg, 1 at 80 kg
bench 80x8 (7 last week)                           => barbell bench press 8 at 80 kg
bench 80x8, 8, 6 pathetic                          => barbell bench press 2×8 at 80 kg, 6 at 80 kg
bench 100x5, 3, 2 ugly                             => barbell bench press 5 at 100 kg, 3 at 100 kg, 2 at 100 kg
bench 80x8, 8, 3 reps                              => barbell bench press 2×8 at 80 kg, 3 at 80 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(REMARKS_THAT_COUNT))
def test_a_remark_that_counts_something_else_adds_no_set_unasked(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant
