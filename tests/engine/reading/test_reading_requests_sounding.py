"""What sounds like a request and is none: talk with its words, and sets told beside them."""

from __future__ import annotations

import pytest

from engine.reading import read
from engine.reading.values import Logged
from tests.engine.reading.saying import KNOWN, said
from tests.engine.reading.test_reading_requests_worded import BENCHING, rows

TALK = {
    "swap": """
        is hammer curl better than preacher curl? | what's the difference between hammer curls and preacher curls
        swapped my gym membership, now paying 30 a month | my mate swapped squats for leg press 3x10
        changed gyms last week, machines feel heavier here | switching jobs on monday, might train less
        trade you 2 sets of curls for a beer | replace the old plates at my gym please lol | switch off the lights
        instead of whining i lifted | they replaced the leg press, the new one has 400kg | swap sides after 10 reps?
        do i switch legs after 8?
    """,
    "skip": """
        skipped lunch today, feeling weak | skipped the gym on tuesday | jump rope skipping 10 min
        did 500 skips with the rope | skip rope for 5 minutes first? | my mate always skips legs
        should i skip leg day if im sore? | never skip leg day lol | why do people skip leg day
        i never skip calves | passed out on the sofa after that lol | no pain today | cant do 3x10 at 100 yet
    """,
    "today": """
        today was hard | today sucked | today was a good day | today i feel strong | what a day today
        no time today | today felt like 200kg | my wife's birthday today | gym is empty today
        hot today, 35 degrees in here | todays bodyweight 82.4 | todays weigh in 82.4 | today i want to try 100
        today i'm aiming for 5x5 at 100 | plan for today: 5x5 at 100 | rest day today
    """,
    "next": """
        next time 82.5 | next time i'll try 3x8 at 82.5 | next week deload | next week i'm at 5x5
        next guy squatted 200x5 lol | next to me a dude benched 140x3 | now what a set that was
        next month i'm competing | next monday i start at 6 | move on from bench in 2 weeks?
    """,
    "done": """
        done with 100 on bench one day i hope | done deal | well done me lol | well done!
        when am i done with this block? | i'm done with this gym, 60 a month is a joke | im so done with squats lol
        how do i know when im done? | almost done, 2 sets left | not done yet, 2 more to go | 2 sets done, 1 to go
        not done yet | nearly done | homework done, heading to the gym
    """,
    "undo": """
        i can't undo my belt | deleted my old app lol | cancelled my gym membership | strike a pose
        the last set was hard | the last one was a grind | erased 2 years of bad sleep last weekend | wrong gym lol
        cancel culture is weird | delete facebook hit the gym lawyer up
    """,
    "repeat": """
        same gym as always | same time tomorrow? | same time tomorrow at 6 | again so tired | never again | same old
        one more week to go | one more and i would have died | another day another dollar | another bad day
        another beer please | 2 more weeks of cutting | 3 more sets to go | 2 more exercises to go
        repeat offender lol | repeating this week next week? | can i do two more sets or is that too much?
        should i do one more set? | is one more set ok | same muscles sore as last week | bench again tomorrow
        ill do it again next week
    """,
    "week": """
        this week sucked | this week i'm on nights | rough week | what a week | my week was awful
        my week was hell at work | week 3 of cutting, 81.5kg | next week i'll do 5x5
        how many times a week should i squat? | how many days a week do you train
        how many sets a week is enough for chest? | 3 times a week is my max | i train 4 days a week
        ran 20k this week | last week was better | weekly shop done, gym at 6 | weekend!
    """,
    "pause": """
        pause 90s between sets | 3 min pause between | how long should i pause between sets | is 2 min break enough?
        took a break last week | back at it | gym is closed until monday | gym closed till monday
        my mate is away until monday, no spotter | monday is bench day | break a leg | coffee break
        broke the bar until it snapped lol | waiting until monday for my new belt
    """,
    "remind": """
        that reminds me of 2019 | remind me why i do this lol | at 7 i had a coffee | i train at 7
        training tomorrow at 7 | see you tomorrow at 7 | gym at 7 tomorrow | tomorrow 7am legs | in 20 min i'm off
        at the gym in 20 min | heading over at half six | gym opens at 7 | meet at 7pm? | my alarm went off at 5
        up at 5, lifted at 6 | pinged my hamstring
    """,
    "help": """
        can't help it lol | help arrived, 2 spotters | creatine helps | does creatine help?
        would belts help with squats | helping my brother move tomorrow | no help on the last one | helpful, thanks
        caffeine helped today
    """,
    "history": """
        last time was better | my last deadlift comp was in 2018 | what is a good deadlift for a beginner
        how do i deadlift | should i deadlift twice a week | how often should i deadlift
        what did you do last weekend | how was your last holiday | deadlift party tomorrow | who invented deadlifts
    """,
}

SETS = {
    "3": """
        swapped shoes, bench 3x8 80 | hammer curls instead, 3x10 14 | did hammer curls instead of preachers, 3x10 14
        did hammer curls 3x10 14 instead of preacher curls | swapped preacher curls for hammers 3x12 12kg
        preacher curls swapped for hammer curls: 12 12 10 @ 14 | i changed my mind, bench 3x5 80
        skipped breakfast, bench 3x8 80 | skipped warmup, bench 3x5 80 | no warmup, bench 80x5x3
        no belt today, squat 3x5 100 | not doing great today, bench 3x6 75 | no leg curls today but squat 3x5 100
        skip leg curls, squat 3x5 100 | skipped leg curls. squat 3x5 100 | no coffee today, 3x5 80
        today bench 3x8 80 | today: squat 3x5 100 | bench today 80x8 80x8 80x7 | today's sets: bench 80x8x3
        today's workout: squat 3x5 100 | today i did 3x8 80 on bench | today 3 sets of 8 at 80 on bench
        next up row 3x12 55 | next exercise row 3x12 55 | row next, 3x12 55
        moved on to row 3x12 55 | moving on: row 3x12 55 | done bench 3x8 80 | done 3x8 80 | 3x8 80 done
        bench done 3x8 80 | finished bench 80x8 80x8 80x6 | that's all for bench, 80x8 x3 | back squat 3x5 100
        got rid of my old shoes, squat 100x5x3 | same weight 8 8 7 | row again 3x12 55 | week 3 day 1 bench 3x8 80
        week 4: squat 3x5 100 | long week, bench 3x8 80 | first week back, bench 3x8 60 | deload week, bench 3x5 50
        pause squat 3x5 90 | paused bench 3x5 75 | bench with pause 3x5 75 | bench 3x5 75, 2s pause
        pause bench 75 5 5 5 | i had a break of 2 weeks, bench 3x8 60 | lunch break workout, bench 3x8 80
        bench 3x8 80 at 7am | 7am session: bench 3x8 80 | 6am squat 3x5 100 | god help me, 3x20 squats 80
        deadlift 3x5 140 same as last time
    """,
    "4": """
        bench taken so db bench 4x8 30
    """,
    "1": """
        skipped the last rep, bench 80x7 | next set 80x8 | next one 80x7 | then next bench 80x8
        finished with 80x12 on bench | last set done 80x6 | calling it a pr, 110x1 bench
        ok done for today, last one 80x6 | removed the belt, squat 100x5 | removed collars, 80x8 | went back to 80x8
        dropped back to 70x10 | the last set was awful, 80x5 | again 80x8 | same weight, 7 reps
        one more rep than last time, 80x9 | 2 sec pause on each, 75x5 | 90s pause, 80x8
        long pause today because of a call, bench 80x8 | short break then 80x8 | bench 80x8, rpe 7
        helped a guy spot, bench 80x8 | spotter helped on last rep, 80x8 | last set deadlift 140x5
        last deadlift 150x3
    """,
    "5": """
        today just bench 5x3 87.5 | tomorrow deads, today just bench 5x3 87.5
    """,
    "6": """
        session today: bench 3x8 80, row 3x12 55 | all done: bench 3x8 80, row 3x12 55
    """,
    "2": """
        next 2 sets 75x8 75x8 | finished the bench with 2x8 80 | im done for today, bench was 80x8 80x7
    """,
}


@pytest.mark.parametrize(("text", "sounds_like"), rows(TALK))
def test_talk_with_the_words_of_a_request_asks_for_nothing(text: str, sounds_like: str) -> None:
    assert said(text, BENCHING).removesuffix(", pain") == "no sets", f"it sounds like {sounds_like}"


@pytest.mark.parametrize(("text", "count"), rows(SETS))
def test_sets_told_with_the_words_of_a_request_are_recorded(text: str, count: str) -> None:
    outcome = read(text, BENCHING, KNOWN)

    assert isinstance(outcome, Logged)
    assert len(outcome.sets) == int(count)
