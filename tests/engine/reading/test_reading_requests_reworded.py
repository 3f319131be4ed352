"""Further ways of asking, and what sounds like them: written when the reader knew the others."""

from __future__ import annotations

import pytest

from engine.reading import read
from engine.reading.values import Logged
from tests.engine.reading.saying import KNOWN, said
from tests.engine.reading.test_reading_requests_worded import BENCHING, rows

REQUESTS = {
    "swap barbell back squat leg press": """
        all the racks are full so leg press instead of squat | could you put leg press in instead of squat?
        knees not having it, let's trade squats for the leg press | swap in leg press for squats please
        i'm going to do the leg press instead of squatting | wld it be ok to swap squats for leg press
        please change squats to leg press for today | swap squat w leg press
        no free rack. leg press instead of squats? | thinking leg press rather than squats today
        replace squat by leg press, lower back is tired | i want leg press instead of squats today thx
        switch out squats for leg press pls coach | any chance i can swap squats for leg press? busy gym
        beinpresse statt kniebeugen bitte | kann ich kniebeugen gegen beinpresse tauschen
        prensa en vez de sentadilla por favor | presse à cuisses à la place du squat stp
        leg press al posto dello squat | leg press no lugar do agachamento hoje
        leg press in plaats van squat graag | benpress istället för knäböj tack | вместо приседа жим ногами
    """,
    "skip dumbbell lateral raise": """
        skip lat raises, shoulders are cooked | not feeling lateral raises today, skip em
        i'll give lateral raises a miss | giving lat raises a miss today | gonna leave lateral raises out
        no lateral raises for me today | skip the lateral raises pls, gym closes soon
        lets just skip lateral raises | think i'll skip lat raises tonight | can't be bothered with lat raises, skip
        could we leave out lateral raises today? | skip lateral raises and move on
        i have to go soon so skip the lat raises | dbs are all taken, skip lateral raises
        lat raises can wait, skip them | please leave out the lateral raises | wont be doing lat raises today
        seitheben lass ich heute weg | seitheben heute nicht | hoy sin elevaciones laterales
        saute les élévations latérales | salta le alzate laterali | pula a elevação lateral | pomiń wznosy bokiem
        hoppa över sidolyft
    """,
    "today": """
        so what have we got today | what's cooking today coach | hey what am i on today?
        just arrived, show me today | what do you have for me today | what's my plan for today
        give me the plan for today please | whats on the plan today | what muscle today | wat r we doing today
        what r we training today? | can u show me todays workout pls | today's plan plz | which workout is it today
        do i train today? | whats on the agenda today | was ist heute angesagt | welche übungen heute?
        qué entreno hoy | qué ejercicios hay hoy | on fait quoi aujourd'hui | quelle séance aujourd'hui ?
        che allenamento c'è oggi? | quale scheda oggi | qual o treino hoje? | wat train ik vandaag
        jaki trening dziś | vilket pass idag | какая тренировка сегодня | coach whats the workout today
        quick one, what's on today? | remind me what we're doing today | hey, whats the plan for tonight
        what's today's training looking like
    """,
    "next": """
        what do we have next | what's next on the list | and after that? | whats up after this | ok done, next
        next thing pls | next exercise coach | give me next | which exercise comes next? | what's the next one
        what should i be doing next | nextt | all good, next | ok got it, next exercise | yo whats next
        alright whats next then | what am i supposed to do now | und jetzt? | nächste übung bitte
        was ist die nächste übung | qué ejercicio sigue | el siguiente por favor | c'est quoi après | prochain exo
        qual è il prossimo esercizio? | poi? | qual o próximo exercício | wat is de volgende oefening
        jakie następne ćwiczenie | vad är nästa övning | что следующее | right then whats next
        next exercise? this one's done | ok what should i do next | alright next please
        what do you have next for me
    """,
    "done": """
        ok thats me for the day | right, finished for today | im done, knackered | phew, done for today
        done! shower time | that's the workout done | all finished here, thanks | gym done, heading home
        finished early today | done, cheers coach | ok calling it a day, back is tired | wrap it up
        we can stop here | stop the workout | finish it here please | session complete | finally done | done and out
        thats it from me today | im finished, legs are jelly | training fertig, ab nach hause
        ich bin durch für heute | he terminado por hoy | se acabó por hoy | c'est fini pour aujourd'hui
        j'ai fini ma séance | ho finito per oggi, grazie | per oggi basta | terminei o treino | chega por hoje
        ik ben klaar voor vandaag | koniec treningu | passet är klart | на сегодня всё, спасибо
        thats me done coach, see you friday | all done for the day, off to eat | finished the session, feeling good
        done for tonight, wife is waiting | ok done. shattered
    """,
    "undo": """
        oh no undo that | undo my last one please | whoops, delete that | hmm wrong, undo | no no undo
        that's wrong, take it back | delete what i just sent | remove my last entry please | undo the last thing
        can you take that back | please remove that last set | erase that one | kill the last set
        that was for the wrong lift, undo | mistake, undo please | cancel last entry | i didn't mean to log that
        oops didn't mean that, undo | undo!! | pls undo | undo it pls thx | mach das bitte rückgängig
        bitte den letzten satz löschen | quita la última serie | borra lo último | annule la dernière
        supprime le dernier set | cancella l'ultimo | togli l'ultima serie | apaga o último | verwijder de laatste
        cofnij ostatnie | ta bort det sista | удали последнее | ah crap undo that one | no that was wrong, delete it
        sorry, remove that last one | undo the last set please, wrong weight | wait delete that
    """,
    "repeat": """
        same as the last one pls | same again mate | another set the same | and one more | one more set done
        did another one the same | same same | just did another | log another one please
        again, same weight same reps | same numbers again | repeat the last one | once again
        copy that for another set | yep same again | same set one more time | same set again please
        noch einmal das gleiche | gleicher satz nochmal | otra serie igual | una más igual | encore la même
        pareil encore | ancora una uguale | stessa serie | mais uma série igual | o mesmo de novo
        nog een set hetzelfde | jeszcze jedna seria tak samo | samma set igen | ещё один подход так же
        same again please coach | yep another one the same | one more just like it | repeat that one please
        same set once more
    """,
    "repeat 3": """
        3 more like that | three more of the same | same again x3 | 3 more sets same | another three sets like that
        did 3 more sets of that | three more sets | another 3 sets | add three more like it | noch drei sätze
        drei weitere sätze genauso | tres series más iguales | encore trois séries pareilles
        altre tre serie uguali | mais três séries iguais | nog drie sets | jeszcze trzy serie | tre set till
        ещё три подхода
    """,
    "week": """
        weekly numbers please | how did this week go | how's training been this week | what's my week like so far
        show me my weekly summary | how am i looking this week | this week's summary | hows it going this week
        what did i get done this week | how many sessions this week | week stats | end of week summary please
        can you sum up the week | quick week recap | could i see how my week went | wie sieht meine woche aus
        zusammenfassung der woche bitte | cómo llevo la semana | resumen de esta semana
        comment se passe ma semaine | le bilan de ma semaine | come sta andando la settimana | resumo desta semana
        hoe ziet mijn week eruit | podsumuj tydzień | sammanfatta veckan | как прошла неделя
        so how's my week looking | give me the weekly overview pls | can you show me how my week went
        hows the training week going | whats my week been like
    """,
    "pause 2025-03-17": """
        away this weekend, pause till monday | flu, so pause till mon | please pause my training until monday
        can you put me on pause until monday | freeze my plan until monday | sick in bed, no training until monday
        pls pause till monday, work trip | won't make it before monday, pause | not back until monday
        hold my plan until monday pls | taking it off until monday | got a fever, break until monday
        i'm out until monday | travelling, back monday | pause now until monday | until monday no training please
        bin bis montag krank | urlaub bis montag | de vacaciones hasta el lunes | descanso hasta el lunes
        vacances jusqu'à lundi | fais une pause jusqu'à lundi | ferie fino a lunedì | metti in pausa fino a lunedì
        de férias até segunda | coloca em pausa até segunda | vakantie tot maandag | zet op pauze tot maandag
        wakacje do poniedziałku | zrób przerwę do poniedziałku | semester till måndag | ta paus till måndag
        поставь на паузу до понедельника | в отпуске до понедельника | im going away, pause me until monday please
        got the flu, no training until monday | can you pause the plan until monday? family stuff
        taking a few days off until monday
    """,
    "pause 2025-03-24": """
        pause until march 24 | off until 24 march | pause till 24.3 | away until the 24th
        pause until monday the 24th
    """,
    "remind 2025-03-14 20:30:00": """
        remind me at 8:30pm | remind me at 8:30 | remind me at half eight | remind me at half past 8
        remind me at half 8 tonight | remind me at 20:30 please | remind me tonight at 8.30 | ping me 8:30pm pls
        nudge me at 20.30 | could you remind me to stretch at 8:30pm? | set a reminder for half eight
        at 8:30pm remind me please | remind me to do my session at 8:30 tonight | 8:30pm reminder please
        need a reminder at 8:30pm | can u ping me at 8:30 tonight | not now, remind me at 8:30pm
        driving, remind me at 8:30 | erinner mich um halb neun | erinnere mich bitte um 20:30
        erinnere mich heute abend um halb 9 | recuérdame a las 20:30 | recuérdame a las ocho y media
        rappelle-moi à 20h30 | rappelle-moi ce soir à 20h30 | ricordami alle 20:30 | ricordami alle otto e mezza
        me lembra às 20h30 | me lembre às oito e meia | herinner me om half negen | herinner me om 20:30
        przypomnij mi o 20:30 | påminn mig kl 20:30 | påminn mig halv nio | напомни в 20:30
    """,
    "remind 2025-03-16 09:00:00": """
        remind me sunday 9am | remind me on sunday morning at 9 | sunday at 9am remind me to train
        remind me sun 9am pls | can you remind me sunday at 9 in the morning | set a reminder sunday 9am
        erinnere mich sonntag um 9 | recuérdame el domingo a las 9 | rappelle-moi dimanche à 9h
        ricordami domenica alle 9 | me lembra domingo às 9h | herinner me zondag om 9 uur
        przypomnij mi w niedzielę o 9 | påminn mig på söndag kl 9 | напомни в воскресенье в 9 утра
    """,
    "help": """
        help me out | what do i do here | how do you use this | what is this bot | what can i do here
        can you explain how this works | how do i tell you my sets | how do i log my workout | what should i write
        what's possible here | show help | need some help here | i need a hand | help needed | how to use
        how to log | how do i use it | bitte hilfe | was kannst du alles | wie geht das hier | necesito ayuda
        cómo se usa | j'ai besoin d'aide | comment ça fonctionne | ho bisogno di aiuto | como uso isso
        hoe werkt het | jak to działa? | hur gör man | how do i use this thing | what can i type in here
        i'm new here, how does this work? | can you tell me what you can do | what are my options here
    """,
    "history barbell back squat": """
        what did i squat last session | squat numbers from last time | when did i squat last
        what was the weight on squats last time | what did i have on the bar for squats last time | past squats
        my squat history | show squats | how were squats last time | how much was squat last time
        what'd i squat last time | squats last time? | can i get my squat numbers
        what did i manage on squats last time | how did i do on squats last time | kniebeuge letztes mal?
        wie war kniebeuge letztes mal | cuánto hice en sentadilla la última vez | sentadilla la última vez
        combien au squat la dernière fois | squat la dernière fois ? | quanto ho fatto di squat l'ultima volta
        agachamento da última vez | squat vorige keer | przysiad ostatnim razem | knäböj förra gången
        присед в прошлый раз
    """,
    "done barbell bench press as planned": """
        all went to plan | everything as prescribed | stuck to the plan | did the lot as planned
        hit everything as planned | went exactly as planned | done, all as planned | all as per plan thanks
        genau nach plan | todo como estaba previsto | tout s'est passé comme prévu | tutto secondo i piani
        tudo conforme planejado | precies volgens plan | wszystko według planu | allt gick enligt plan
        всё сделал по плану
    """,
    "swap seated cable row lat pulldown": """
        cable's broken, pulldowns instead of rows please | swap cable rows for pulldowns
        can i do pulldowns instead of cable rows today? station is taken | seated cable row -> lat pulldown
        i'm gonna do pulldowns in place of cable rows
    """,
    "skip standing calf raise": """
        calves are cramping so skip calf raises | skip calf raises, got a train to catch
        no calf raises today, running late | i'd rather skip calf raises today | calf raises are out today
        skip the calf raises plz
    """,
    "repeat 2": """
        2 more of the same please | another two just like that | two more sets, same weight | twice more please
    """,
    "remind 2025-03-14 21:00:00": """
        remind me at 9 tonight please | can you ping me at 9pm | reminder at 21:00 pls
        got kids to bed first, remind me at 9pm | remind me to train at 9 this evening | set an alarm for 9pm
    """,
    "history conventional deadlift": """
        what did i get on deadlifts last time | how much did i deadlift last time, cant remember
        show me the last deadlift session | deads last time?
    """,
}

TALK = {
    "no sets": """
        swapping my shoes brb | my mate skips leg day | should i skip leg day | i skipped school once lol
        the next guy is waiting for my bench | next year i want 200 | not next week either | today is gonna be hell
        how was your week | how was your day today | what a lovely week | how long is a week of deload
        this week is a mess | week off was nice | done is better than perfect | done with work, off to the gym
        almost done here | is it done yet? | nothing is ever done | how do you undo a tight knot | same old story
        same gym different day | same time as yesterday | again and again | one more coffee then
        pausing netflix to lift | can i pause between reps? | paused my subscription | remind me again why we squat
        my phone reminds me all the time | he reminded me of my brother | someone helped me rack it
        deadlift is my favourite | how is deadlift different from rdl | history class was boring
        what do people deadlift on average | is my squat deep enough | plan b then | the plan was pizza
        gym on monday | monday at 7? | at 8:30 i have a meeting | tomorrow 7am flight | 3 more days until holiday
        2 more weeks | locker 8 again | the 24s are gone | gym was 3 km from the hotel | paid 12 for parking
        rested 4 min between all sets today | ran 6k before work | my wife ran 10k | kid is 8 today
        he got 12 reps, i watched | treadmill 3 is broken again | leg press 2 is free | bench 1 is taken
        squat rack 3 is open | there are 2 racks here | only 3 benches in this gym | open until 22 | up since 4
        trained until 9 | i train 5x a week | squat 2x a week | bench 3x per week is enough | gym 4 times a week
        a 3 week holiday was nice | barbell here weighs 15 | plates go up to 25 | if i get 5x5 at 100 i'll be happy
        would have got 100x6 but no spotter | wanted 5x5 today but gym was closed | goal was 3x10 but didn't go
        hoping for 120x2 on sunday | maybe 85x5 next time | coach wants 4x4 at 90 | brother did 4x10 at 60
        he does 3x12 | old record 160x1 | when i was fit i did 20 pull ups | can i do 3x20 instead of 5x5?
        is 100x5 strong for my age | what's the point of 5x5 | how heavy is 4x12 meant to be
    """,
}

SETS = {
    "3": """
        log bench 3x8 80 | can you log squats 3x5 100 please | please note row 3x12 55 | put down row 3x12 55 for me
        done for today! last was bench 3x6 75 | that's it for bench: 80x8 80x8 80x7 | last thing today row 3x12 55
        skipped legs, bench 3x8 80 | no squats today but bench 3x8 80 | instead of squats i did leg press 3x12 160
        leg press 3x12 160 instead of squats | swapped squats for leg press 3x12 160
        racks full so leg press 3x12 160 | got there at 7, bench 3x8 80 | with my brother today, bench 3x8 80
        tomorrow squats. today bench 3x8 80 | bench 3x8 80 then 20 min run | 3 coffees and bench 3x8 80
        slept 4h, bench 3x6 75 | week 2 bench 3x8 80 | 2 min rest: bench 80 8 8 7 | squat 3x5 100 with my mate
        squat 3x5 100, mate filmed it | the usual: bench 3x8 80 | same weight 3x8 | swapped to db bench 3x10 30
        switched to dips: 10 9 8 | instead of curls i did hammers 3x12 14 | help, i forgot to log bench 3x8 80
        week 3: bench 3x8 80 | today bench went 80x8 80x8 80x7 | pause bench 3x5 75 | more rows 3x12 55
        move on to rows 3x12 55 | ok so bench 3x8 80 today | what a session: squat 3x5 100
        not my day, bench 3x6 75 | no pump but bench 3x8 80 | no spotter, bench 3x6 80 | no belt, squat 3x5 100
        without belt squat 3x5 100 | managed 3x5 100 on squats | wanted to quit but bench 3x8 80
        heading out, bench 3x8 80 | before work: bench 3x8 80 | since monday my elbow is ok, bench 3x8 80
        up at 5, bench 3x8 80 | only go up to 30 here so db bench 3x12 30
    """,
    "2": """
        write down bench 80x8 80x7 | gym closes at 10 so just bench 2x8 80 | skip the warmup, 80x8 80x8
        rest of the sets 80x8 80x8 | only 2x8 80 today, bad sleep | just 2x8 80 today
        had to stop early, squat 2x5 100 | had to leave, squat 2x5 100 only | could only do 2x5 100 on squats
        would have done more but squat 2x5 100 | gotta go, squat 2x5 100 | 1 more to go, 80x8 80x8
        3 guys waiting so quick 2x8 80
    """,
    "6": """
        done: squat 3x5 100, bench 3x8 80
    """,
    "1": """
        my brother did 100x5 and i did 80x5 | wanted 85x5, got 85x4 | aimed for 12 got 10 at 60 on bench
        bench 80x8, next time 82.5 | today's top set 90x3 bench | help from spotter on last rep, bench 80x8
        rested 3 min, 80x8 | next set 80x8 done | same again 80x8 | again: 80x8 | skipped rest, 80x8
        last time 77.5, today 80x8 | last time i got 7, today 80x8 | finish: 80x8 | let's go! bench 100x5
        ok next one bench 82.5x5 | can't believe it, bench 100x5 | how about that, bench 100x5!
        should have rested more, squat 100x3 | would have loved more, 80x6 | want more next time, 80x6 today
        need to sleep more, 80x6 | going home now, last set 80x6 | after 5 min rest 80x8 | my third set was 80x7
        went up to 82.5x5 | went up to 85 for 3 | kids screaming, 80x8 | my wife watched, bench 100x5
        coach said go for it, squat 110x3 | he said i looked strong, 100x5 bench
    """,
    "4": """
        wanted 5x5 at 85 but only got 4x5 bench
    """,
}


@pytest.mark.parametrize(("text", "meant"), rows(REQUESTS))
def test_a_request_is_heard_in_further_words(text: str, meant: str) -> None:
    assert said(text, BENCHING) == f"request: {meant}"


@pytest.mark.parametrize(("text", "meant"), rows(TALK))
def test_talk_is_no_request_and_no_set(text: str, meant: str) -> None:
    assert said(text, BENCHING).removesuffix(", pain") == meant


@pytest.mark.parametrize(("text", "count"), rows(SETS))
def test_sets_beside_the_words_of_requests_are_recorded(text: str, count: str) -> None:
    outcome = read(text, BENCHING, KNOWN)

    assert isinstance(outcome, Logged)
    assert len(outcome.sets) == int(count)
