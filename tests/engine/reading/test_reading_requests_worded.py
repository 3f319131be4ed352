"""The ways in which lifters word their requests: terse, polite, chatty, with a reason, a time or a slip of the thumb.

The clock of these tables says Friday the 14th of March 2025, 18:20.
"""

from __future__ import annotations

from collections.abc import Mapping

import pytest
from _pytest.mark.structures import ParameterSet

from tests.engine.reading.saying import said, situation

ON_TODAY = (
    ("barbell bench press", 4, 8, "70"),
    ("seated cable row", 3, 12, "55"),
    ("preacher curl", 3, 10, "25"),
    ("lying leg curl", 3, 12, "40"),
    ("standing calf raise", 4, 15, "60"),
    ("dumbbell lateral raise", 3, 15, "9"),
    ("barbell back squat", 3, 5, "100"),
)
BENCHING = situation(doing="barbell bench press", plan=ON_TODAY, last={"barbell bench press": "70"})


def rows(table: Mapping[str, str]) -> list[ParameterSet]:
    """What is meant, and the ways of saying it, parted by lines and bars."""
    ways = [
        (way.strip(), meant) for meant, told in table.items() for line in told.splitlines() for way in line.split("|")
    ]
    return [pytest.param(way, meant, id=way) for way, meant in ways if way]


REQUESTS = {
    "swap preacher curl hammer curl": """
        do hammer curls in place of the preacher curls | swap preacher curls for hammer curls
        can i swap preacher curls with hammer curls | could you switch the preacher curls to hammer curls please
        hammer curls instead of preachers today | doing hammers rather than preacher curls
        preacher bench is taken, gonna do hammer curls instead of preacher curls
        replace preacher curls with hammers pls | replace preachers by hammer curls
        change preacher curls to hammer curls | let's do hammer curls instead of preacher curls
        wanna do hammer curls instead of preacher curl today, elbow hates it
        i'd rather do hammer curls than preacher curls | could i do hammer curls rather than preacher curl?
        mind if i do hammer curls instead of the preachers | is it ok to do hammer curls instead of preacher curls?
        sub hammer curls for preacher curls | sub out preacher curls for hammer curls
        swap out the preacher curls, hammer curls instead
        no preacher bench here so hammer curls instead of preacher curls
        instead of preacher curls can i do hammer curls | instead of preacher curl i'll do hammers
        instead of preachers, hammer curls please | swpa preacher curls for hammer curls
        swap preacher crls for hammer curls | exchange preacher curls for hammer curls thx
        take hammer curls in place of preacher curls | use hammer curls in lieu of preacher curls
        preacher curls -> hammer curls | trade preacher curls for hammer curls today
        switch preachers for hammers, machine's busy | swap the preacher curl out for a hammer curl
        would it be possible to swap preacher curls for hammer curls?
        ok so the preacher bench broke, swap preacher curls for hammer curls thanks
        hey can we swap preacher curls with hammer curls today? wrist is cranky
        gonna swap preacher curls for hammers | im swapping preacher curls for hammer curls today
        let me do hammer curls in place of preachers | swap exercise: preacher curls -> hammer curls
    """,
    "swap barbell bench press dumbbell bench press": """
        swap this for db bench | swap it for dumbbell bench | can i do db bench instead
        switch this to db bench pls | db bench instead of this | all racks taken, db bench instead of bench
        let's swap bench for db bench
    """,
    "skip lying leg curl": """
        skip the leg curls, machine's broken | skip leg curls | skip leg curls pls | can we skip leg curls today
        could you skip the leg curls please | i'd like to skip leg curls
        leg curl machine is broken, skip leg curls | gonna skip leg curls today | im skipping leg curls
        im gonna skip leg curls, hamstrings are toast | no leg curls today
        no leg curls today please, hammies fried | not doing leg curls today | i'm not doing leg curls
        won't do leg curls today | leave out the leg curls | leave the leg curls out today
        lets leave leg curls for today | let's skip leg curls | let me skip the leg curls | skip leg crls
        skpi leg curls | leg curls skip | leg curls: skip | leg curls skipped | skipped the leg curls
        skipped leg curls today, no time | gotta skip leg curls, running late | wanna skip leg curls
        is it ok to skip leg curls? | can i skip leg curls? knee's achy | ok to skip leg curls today?
        mind if i skip leg curls | no time for leg curls, skip | no time for leg curls today
        leg curl machine taken so skip it | need to skip leg curls thx
        please skip leg curls, someone's camping on it | omit leg curls | pass on leg curls today
        i'll pass on the leg curls | miss out leg curls today | forget leg curls today | cant do leg curls today
        leg curls not happening today | skip lying leg curl and go on
    """,
    "skip barbell bench press": """
        skip | skip this | skip this one please | skip it, shoulder feels off | can i skip this one
        let's skip this | gonna skip this one, rack's taken | pass | leave this one out | not doing this one today
    """,
    "today": """
        what's today | whats on today? | what do i have today | what am i doing today | what are we doing today
        what am i training today? | what should i do today | what's the plan today | whats the plan for today
        what's the plan | show me today | show today's session | show me today's workout please | todays workout
        today's session pls | today? | today | today please | what's my workout today | what's my session
        what have i got today | what have we got today coach | can you show me what's on today
        could you show me today's plan | can i see today's workout | give me today's workout
        send me todays session | ok im at the gym, what's today | just got here, what am i doing today?
        morning! what's on the menu today | morning coach, what do we have today? | which lifts today
        what lifts do i have today | which exercises today? | what exercises are on today | wats today | todya
        what's on | what is on the plan for this evening | what am i lifting tonight | tell me what to do today
        remind me what i'm doing today | what's in store today | list today's exercises | whats the session today
        show workout
    """,
    "next": """
        next | next one | next please | next pls | next exercise | whats next | what's next? | what is next
        what next | what now | what's up next | what comes next | what do i do next | what should i do next
        what should i lift next? | what am i doing next | what's the next exercise | what's the next lift
        which one's next | what's after this | what's after this one | what comes after this | now what
        ok now what | ok next | ok whats next | right, what's next | all sets done, next one please
        next exercise pls thx | show me the next exercise | show me what's next | give me the next one
        can i get the next exercise | could you tell me what's next | can we move on | let's move on | move on
        on to the next | on to the next one | moving on | nxt | nxet | whats nxt | what'snext
        ready for the next one | ready for next | go to the next exercise | next up?
    """,
    "done": """
        done | done for today | ok im done for today, 2 beers earned | im done | i'm done here | that's me done
        that's it for today | that's all for today | that's all folks | thats a wrap | thats me for today
        that'll do for today | all done | all done! | all done thanks | finished | finished for today | i'm finished
        im finished for the day | workout done | workout finished | workout complete | session done | session over
        session's over, off home | done and dusted | done, off to the shower | done. brutal one today
        calling it a day | calling it here | calling it | i'm calling it for today, elbow's toast
        gonna call it a day | let's call it a day | i'm out | im off home | im heading home
        gym closes in 5 min, so that's it for today | that was it | that was it for today, thx | ok that's it
        and that's a wrap for today | we're done | we are done here coach | finito | dnoe | end session
        end workout | finish workout | finish session please | stop here for today | close the session
        can you close the session | could you end today's workout please | done training | done lifting for today
        done with everything | done with the workout | i think im done for today | right that's me finished
        enough for today
    """,
    "undo": """
        undo | undo that | undo that pls | undo last | undo the last one | undo please | can you undo that
        could you undo the last set please | oops undo | oops, undo that one | ooops undo it | sorry undo that
        wait undo | no wait, undo that | take that back | take back the last one | take it back | scratch that
        scratch the last one | scratch the last set | delete that | delete that one | delete the last set
        delete last | remove that | remove the last set please | remove last entry | scrap that
        scrap that last set | cancel that | cancel the last one | cancel that last set thx | that was wrong, undo
        that was a mistake, delete it | wrong button, undo | typo, undo that | my bad, delete that last one
        get rid of that | get rid of the last set | strike that | strike the last one | revert | revert that
        nope, undo | undo, i miscounted | udno | undo taht | udno that pls | unod | delet last set | dont log that
        don't count that one | don't count the last set | that one doesn't count | please delete my last entry
        erase the last set
    """,
    "repeat": """
        same again | same again pls | same | same thing | same thing again | same as last | same as last set
        same as before | again | again please | and again | once more | one more | one more the same
        one more like that | one more set of the same | one more of those | another one | another | another set
        another set same | another of those | another one just like it | repeat | repeat that | repeat last set
        repeat the last set please | repeat last | same set again | same weight same reps | same weight and reps
        same reps same weight again | did that again | did the same again | did it again | just did the same
        exact same again | exactly the same again | ditto | ditto please | idem | log that again
        log the same again | log it again pls | add another one of those | add one more | add another set like that
        can you log the same again | can you repeat the last set | could you add another one like that please
        same agian | smae again | repaet | same again, tough | copy last set | copy the last one
    """,
    "repeat 2": """
        x2 more | 2 more | 2 more of those | two more like that | two more sets the same | 2 more sets | another 2
        another two sets | another two of those | same again x2 | same again twice | same again two times | same x2
        repeat x2 | repeat twice | repeat that twice | repeat 2 times | 2 more the same pls | two more same
        did two more of those | 2 more like that, felt ok | add 2 more sets | add two more of the same
        can you add two more like that | twice more | the same twice more
    """,
    "week": """
        how's my week | show me this week so far | how was my week | how is my week going | hows the week going
        how's this week looking | how does my week look | how's the week been | week | week? | my week | this week
        this week? | this week please | week so far | the week so far | week summary | weekly summary
        weekly summary pls | weekly report | week report | week overview | weekly overview please
        summary of the week | summary of this week | give me a summary of my week | give me the week | show week
        show my week | show me my week | show me the week please | show me this week | show this week
        could you show my week? | can you show me the week so far | can i see my week
        can i see this week's summary | could i get my weekly summary please | i'd like to see my week
        wanna see my week | let me see my week | let's see this week | let's see the week so far
        what did i do this week | what did i do this week so far? | what have i done this week
        what have i trained this week | what've i done so far this week | how much did i do this week
        how much have i done this week | how many sets have i done this week | what did this week look like
        tell me about my week | recap of the week | week recap | recap my week | review my week | weekly review
        wk summary | wek summary | hows my wek | how am i doing this week | sum up my week
    """,
    "pause 2025-03-17": """
        pause until monday | pause till monday | pause til monday pls | pause til mon | pause me until monday
        pause everything until monday | pause training until monday | pause my plan until monday
        pause the plan till monday please | can you pause until monday | could you pause it until monday please
        can we pause till monday | let's pause until monday | lets pause until next monday
        need to pause until monday, knee is sore | im sick, pause until monday | i'm away, pause until monday
        got a cold so pause till monday | on a trip, pause until monday thx | pause until monday, im ill
        gonna pause until monday | wanna pause until monday | i want to pause until monday
        i'd like to pause until monday | take a break until monday | taking a break until monday
        taking a break till monday | need a break until monday | i need a break till monday | break until monday
        having a break until monday | puase until monday | pause untill monday | pause until mondya
        until monday pause please | pause until 17 march | pause until the 17th | pause until 17/3
        pause until 17.3. | pause for 3 days | pause 3 days | pause for three days please | pause to monday
        hold everything until monday | hold until monday | put it on hold until monday
        put the plan on hold till monday | no training until monday | no gym until monday
        not training until monday | im off until monday | off till monday | back on monday | i'll be back monday
        will be back on monday | resting until monday | holiday until monday | on holiday until monday
        on vacation till monday
    """,
    "remind 2025-03-14 19:00:00": """
        remind me at 7 | remind me at 7pm | remind me at 7 pm please | remind me at 19:00 | remind me at 1900
        remind me 7pm | remind me today at 7 | remind me at 7 tonight | remind me tonight at 7
        remind me this evening at 7 | remind me in 40 min | remind me in 40 minutes | remind me in 40 mins pls
        remind me in 40m | can you remind me at 7 | could you remind me at 7pm please | can u remind me at 7?
        pls remind me at 7pm | please remind me to train at 7 | remind me to train at 7pm
        remind me to go to the gym at 7 | remind me to lift at 7pm | remind me at 7 to train | remind me at seven
        remind me at 7 o'clock | remind me at 7pm, got a meeting first | got a call now, remind me at 7
        busy right now, remind me in 40 min | stuck at work, can you remind me at 7pm | reminder at 7pm
        reminder 7pm | reminder for 7pm please | set a reminder for 7pm | set a reminder at 7
        set me a reminder for 7pm | set reminder 19:00 | give me a reminder at 7 | ping me at 7pm | ping me at 7
        ping me in 40 min | nudge me at 7pm | poke me at 7 | text me at 7pm | message me at 7 | write me at 7pm
        i want a reminder at 7pm | i'd like a reminder at 7 | i need a reminder at 7pm
        dont let me forget, remind me at 7 | let me know at 7pm | remnid me at 7pm | remind em at 7
        remimd me at 7pm | rmind me at 7pm
    """,
    "remind 2025-03-15 07:00:00": """
        remind me tomorrow 7am | remind me tomorrow at 7 | remind me tomorrow morning at 7 | remind me at 7 tomorrow
        remind me at 7am tomorrow please | remind me at 7 tomorrow morning | tomorrow 7am remind me
        tomorrow at 7 remind me please | can you remind me tomorrow at 7am to train | remind me saturday 7am
        remind me on saturday at 7am | remind me sat 7am | remind me tmrw 7am | remind me tmr at 7am
        reminder tomorrow 7am | set a reminder for tomorrow at 7am | set a reminder tomorrow 7am pls
        ping me tomorrow at 7am | nudge me tomorrow morning at 7 | not today, remind me tomorrow 7am
        too tired, remind me tomorrow at 7 | remidn me tomorrow 7am | remind me tomorow 7am
        remind me 7am tomorrow, gym opens then
    """,
    "remind 2025-03-15 06:30:00": """
        remind me tomorrow 6.30 | remind me tomorrow 6:30am | remind me tomorrow 630am | remind me tomorrow at 06:30
        remind me tomorrow half past six
    """,
    "help": """
        help | help me | help please | help pls | help! | help? | hlep | hepl | i need help | i need some help
        need help | can you help me | can you help | could you help me please | could you help? | how does this work
        how does this thing work? | how do i use this | how do i use this bot | how do you work | how does it work
        what can you do | what can you do for me? | what can i say | what can i ask you | what can i type
        what can i send | what commands are there | commands | list of commands | list commands | show commands
        show me the commands please | what are the commands | which commands do you know | what do you understand
        how do i log a set | how do i log sets? | how do i enter a set | how do i write sets | how do i record a set
        how do i send you my sets | how should i write my sets | how do i start | instructions | instructions please
        manual | menu | what are my options | show me what you can do | explain how this works
        tell me how this works | im lost, help | not sure how to do this, help pls | i don't know how this works
        im confused
    """,
    "history conventional deadlift": """
        what did i deadlift last time? | what did i deadlift last time | what did i do on deadlift last time
        what did i do for deads last time | what did i do last time on deadlifts | what was my last deadlift
        what was my last deadlift session | what were my last deadlifts | whats my last deadlift
        what were my deadlift numbers last time | last deadlift | last deadlift? | last deads | last deads?
        last time deadlift | last time on deads? | last deadlift session | last deadlift session pls
        deadlift last time | deadlift last time? | deadlift history | deadlift history please | history deadlift
        history of deadlift | history for deads | history of my deadlift pls | show deadlift history
        show me my deadlift history | show me my last deadlift | show me my deadlifts | show me deadlift
        show my deadlift progress | can you show me my deadlift history | could you show my last deadlifts please
        can i see my deadlift history | how much did i deadlift last time
        how much did i pull on deadlift last session | how heavy did i deadlift last time
        how many reps did i do on deadlift last time | how did deadlift go last time
        how did my deadlifts go last time? | how has my deadlift been going | how is my deadlift going
        how am i doing on deadlift | how are my deadlifts moving
        how's my deadlift | hows my deadlift doing | how's deadlift progress | deadlift progress | previous deadlift
        previous deadlift session | what weight did i use for deadlift last time
        what weight did i deadlift last time | which weight did i use on deads last time
        what did i lift last time on deadlift | what did i lift on deadlift last time, forgot
        forgot what i deadlifted last time, show me | remind me what i deadlifted last time
        what did i deadlift previously | what have i been deadlifting | wat did i deadlift last time
        waht did i deadlift last time | what did i deadlfit last time | when did i last deadlift
        when did i last do deadlifts | last deadlift weight
    """,
    "history barbell bench press": """
        last time? | what did i do on this last time | last time on this? | what was it last time
    """,
    "done barbell bench press as planned": """
        as planned | all as planned | done as planned | did it as planned | did as planned
        did everything as planned | exactly as planned | just as planned | as prescribed | all as prescribed
        as written | did it as written | as per plan | according to plan | all according to plan | went as planned
        everything went to plan | all sets as planned | all done as planned | did what it said
    """,
}


@pytest.mark.parametrize(("text", "meant"), rows(REQUESTS))
def test_a_request_is_heard_however_it_is_worded(text: str, meant: str) -> None:
    assert said(text, BENCHING) == f"request: {meant}"
