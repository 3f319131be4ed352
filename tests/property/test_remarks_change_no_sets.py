"""Whatever remark stands beside sets, in front or behind: the same sets are read, or it is asked; never other sets.

That remarks like these change no set is common practice, no source.
"""

from __future__ import annotations

import os
from collections.abc import Sequence
from functools import cache
from zlib import crc32

import pytest

from engine.catalogue.catalogue import catalogue
from engine.reading import read
from engine.reading.values import Context, Logged, Outcome
from engine.values.sets import SetDone
from tests.engine.reading.saying import NOW

KNOWN = catalogue()
HERE = Context(now=NOW)
SETS = """
squat 3x5 100
bench 80x8
bench 80kg 8 8 7
seated cable row 55kg 3x12
barbell row 3x12 55
deadlift 140x5 150x3 160x1
ohp 40 8 8 7
pull ups 10 8 7
dips +20 5x5
leg press 3x12 150, standing calf raise 3x15 60
lat pulldown 3x12 @ 55
front squat 60x9/9/6
bench 3x5 @ 82.5 @8
plank 60s
farmers carry 32s 40m
incline db press 30s x 10
squat 100x5
bench 85 for 5
3 sets of 10 at 60 on lat pulldown
hip thrust 5x100
leg extension 45x12>35x9
barbell curl 30x8+3+2
squat 100x5, 5, 4+miss
bench press: 60x8, x8, x7
single leg rdl 20kg 3x8 each side
romanian deadlift 90 3x8
squat warm up 60x5, then 100x5 x3
squat 225lb x5
bench 82,5x5
push ups 20 18 15
""".strip().splitlines()
REMARKS = """
felt good
felt heavy today
moved well
bar speed was great
grip was slipping
knees caved a bit
good depth
music was terrible
the gym was packed
had to wait for the rack
new shoes
new belt feels weird
forgot my belt
no belt
with belt
wraps on
straps used
chalk everywhere
slept badly
not much sleep
coffee did its job
ate too late
still sore from leg day
legs are toast
happy with that
very happy
not my best day
more in there
should have gone heavier
way too easy
easy peasy
hard as hell
last rep was ugly
last set was a grind
first set felt off
second set best
slow eccentric
paused at the bottom
touch and go
full range
camera on for my form check
coach was watching
coach says hi
my brother spotted me
with a spotter
thanks
lol
haha
phew
ok done
done for today
that's it for today
that's all
going home
off to the shower
now food
see you tomorrow
see you next week
let's go
nice
yay
ugh
meh
sorry for the late text
sorry for typos, gloves on
typing with chalky hands
finally
at last
first time back after flu
deload feels good
bit of a pump
huge pump
forearms fried
abs on fire
sweating like mad
hot in here
cold in here
rain outside
bus was late
the dog is waiting
quick session
short on time
rushed the rests
short rests
long rests
rested plenty
as told
like you said
just as written
per your note
on the new bar
on the old bar
on the platform
at home
in the garage
hotel gym
different gym today
the blue one
seat all the way down
wide stance
narrow stance
heels raised
elbows in
thumbless grip
mixed grip
hook grip
no straps
breathing off
lost my brace
lost balance a bit
left side weaker
right shoulder felt fine
no pain
knee felt fine
back is fine
nothing hurts
shoulder was happy
almost missed the last one
nearly failed
no misses
clean reps
all clean
all reps good
good reps
every rep solid
so so
will check the video
video later
photo later
what a day
best session in weeks
pr i think
new best
personal record
record!
tired
wiped out
so tired
didn't fail
no failed reps
not to failure
close to failure
just short of failure
thought i'd fail the last one
nearly missed the last rep
not a single miss
no drop sets
dumbbells were all taken
cables were taken
double espresso before
off to bed
week 3 of 8
see you on friday
see you thursday
will send the video
""".strip().splitlines()
REMARKS_WITH_NUMBERS = """
slept 5 h
slept only 4 hours
4 hours of sleep
rest 2 min
2 min rest
90s rest
rested 3 minutes
3 min between sets
rest was 2:30
took 45 min
took me 40 minutes
session 3 of 4
third session this week
day 2
week 5
week 3 of the block
it was 28 degrees
28°C in here
heart rate 140
hr 155
bodyweight 77.2
weighed 81.4 this morning
parked on level 3
locker 42
locker 117
bus 23 was late
seat on 4
seat 5
bench at 30 degrees
bench hole 3
tempo 3-1-0
3 sec down
2 s pause
5 minutes late
started at 18:10
started at 7
got here at 6.30
10 min bike before
ran 5 km before
walked 3k to the gym
2 coffees in
i'm 61
first time in 3 weeks
2 weeks off
3 days without training
gym closes at 9
kcal 2300
protein 140 g
150 g protein yesterday
80 % effort
about 70 %
felt like 8 out of 10
mood 7/10
energy 6 of 10
my brother does 140
used to do 120
did 110 once
my best is 130
old best 107.5
next week 5 more
next time 2.5 more
next week 105
next time 102.5
tomorrow 3x5 deadlift
tomorrow legs at 8
want 4 plates some day
goal is 150 by may
goal 140
belt hole 3
shoe size 43
song number 7
episode 12 on the headphones
rack 2
platform 3
2 people waiting
1 spotter
2 spotters
both knees fine
bar is 20
2.5 plates missing
paid 4 euros for water
drank 2 l
one arm felt weak
one hand taped
one side was slower
7 pm
done at 7 pm
€12 entry
12,50 € for a shake
$15 drop in
5 euro day pass
10 quid
took 1 h 10
took 1 hr
10k steps
2 beers last night
8/10 mood
6/10 energy
""".strip().splitlines()
BEHIND = "{sets}, {remark}"
BESIDE = (
    BEHIND,
    "{sets}. {remark}",
    "{sets} - {remark}",
    "{sets} ({remark})",
    "{sets}\n{remark}",
    "{remark}, {sets}",
    "{remark}. {sets}",
)


SELDOM = len(SETS) // 5
OPEN = ("at last", "no misses", "bus was late", "just as written", "on the old bar")
"""Remarks that may be of something else: which set was the last, and what was late."""


def beside(remark: str, sets: Sequence[str], forms: Sequence[str]) -> list[tuple[str, str]]:
    """Sets and a message that tells them beside the remark: all in the first form, and in each other form a fifth of
    them, which are others for each remark and form; with CHALKWIRE_TEST_THOROUGH all in all.
    """
    first = 0 if os.environ.get("CHALKWIRE_TEST_THOROUGH") else crc32(remark.encode())
    return [
        (told, form.format(sets=told, remark=remark))
        for place, form in enumerate(forms)
        for at, told in enumerate(sets)
        if not place or not first or (at + first + place) % SHARE == 0
    ]


SHARE = 5


def read_beside(remark: str) -> tuple[dict[str, Outcome], list[str]]:
    """The messages in which a remark changes the sets beside it, in silence, and those that end in it and are asked
    about."""
    other: dict[str, Outcome] = {}
    asked: list[str] = []
    for sets, text in beside(remark, SETS, BESIDE):
        outcome = read(text, HERE, KNOWN)
        if not isinstance(outcome, Logged):
            asked += [text] if text == BEHIND.format(sets=sets, remark=remark) else []
        elif outcome.sets != _alone(sets):
            other[text] = outcome
    return other, asked


@cache
def _alone(sets: str) -> tuple[SetDone, ...]:
    outcome = read(sets, HERE, KNOWN)
    assert isinstance(outcome, Logged), sets
    return tuple(outcome.sets)


@pytest.mark.parametrize("remark", REMARKS + REMARKS_WITH_NUMBERS)
def test_a_remark_beside_sets_changes_none_and_without_numbers_seldom_costs_a_question(remark: str) -> None:
    other, asked = read_beside(remark)

    assert other == {}
    assert len(asked) <= SELDOM or remark in (*OPEN, *REMARKS_WITH_NUMBERS)
