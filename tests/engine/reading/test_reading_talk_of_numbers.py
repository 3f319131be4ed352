"""Numbers in talk that are no sets: plans, questions, other people, machines, hours, prices; and sets told
among such talk.
"""

from __future__ import annotations

import pytest

from engine.reading import read
from engine.reading.values import Logged
from tests.engine.reading.saying import KNOWN, said
from tests.engine.reading.test_reading_requests_worded import BENCHING, rows

TALK = {
    "no sets": """
        tomorrow squats 5x5 at 105 | tmrw i want to do bench 3x8 82.5 | aiming for 100x5 next week
        planning 3x10 on rows on friday | gonna try 110x3 on monday | want to hit 120 for a triple by summer
        goal: 100kg bench x 5 | my goal is 5x5 at 100 | target for june: 140x1 | maybe ill do 3x12 tonight
        might try 4x6 at 85 later | thinking of 5x3 at 90 | thinking about running 5x5
        should i go 3x8 at 80 or 82.5? | would 4x10 at 60 be too much? | could i do 5x5 at 80?
        is 80x8 good for a beginner | what about 3x15 at 20 for laterals? | how about 4x8?
        do you think 85x5 is doable? | how many sets, 3 or 4? | how long to rest between 5x5 sets?
        what's 100 lb in kg | whats 225 lb in kilos | what is 80% of 120? | how much is 3 plates
        can you do 3x8 with bands? | why 3x12 and not 4x8 | my brother squats 180x5
        my wife did 60x5 on bench today | a guy next to me did 200x3 | she benched 60x8, amazing
        he pulled 250x1 like nothing | dad did 3x10 pushups today | coach squatted 150x5 in front of me
        training partner hit 120x3 bench | the kid next to me repped 100x10 | the girl in the next rack did 90x5
        saw someone squat 250x5 | watched a dude bench 180x2 | back in 2015 i benched 130x2
        in my twenties i squatted 180x3 | used to bench 120x5 | when i was 20 i did 3x10 at 100
        years ago i pulled 220x1 | my old best is 140x3 | my pr is 120x1 from 2019 | pb 140x2 from last summer
        best ever deadlift 220x1 | 1rm is 130 | my max bench is 110 | old max was 150x1
        82.3kg on the scale this morning | down to 82.3 kg | lost 3 kg in 4 weeks | gained 2kg since xmas
        locker 23 again | locker 12x8 is jammed | took locker 45 | my locker code is 4512 | ran 5k in 25 min
        ran 10 km this morning | 5k run this morning 24:30 | 20 min on the bike | walked 10000 steps
        rowed 2000m for warmup | 30 min cardio done | slept 6h | only slept 5 hours | ate 3 eggs and 200g of rice
        200g protein yesterday | 2 scoops of preworkout | kids were up at 4, so tired | my kids are 3 and 5
        my son turned 5 today | rested 3 min between sets | resting 2 min | took 5 min rest | rest times were 3 min
        2-3 min rest between all sets | membership is 45 a month | paid 30 for a day pass | new belt cost 120
        gym shirt 25 euros, shoes 110 | gym opens at 6 | gym closes at 22 | gym is open 6-22
        open 8 to 20 on weekends | they close at 9 on fridays | machine 7 is broken | bike 12 is the good one
        leg press number 3 is out of order | treadmill 4 squeaks | bench 3 is free | bench 2 and 3 are taken
        rack 2 is free | squat rack 1 is taken | only 2 squat racks here | 30 people in here
        waited 15 min for the squat rack | there are 3 guys on the bench | gym is 3 km away | class starts at 18:30
        meeting at 7, gym after | off at 6, gym at 7 | up since 5 | room 3x12 is the yoga room | parked on level 3
        it's 35 degrees in here | temperature 12 x colder than last year | turning 40 in 3 weeks
        3 weeks until the meet | meet in 12 weeks | week 3 of the diet | day 5 without sugar
        my shoulder hurts since 3 days | knee was at 6/10 pain yesterday | physio said 3x15 band work daily
        physio gave me 3x10 rotations to do at home | coach wants me to do 5x5 at 100 next week
        coach says 3x8 from now on | coach said to rest 3 min | the plan says 4x8 at 70
        plan says 3x12 but im tired | it says 3x12 here, is that right? | my program calls for 5x5 at 85%
        read that 10x10 is great for growth | they say 3x10 is best for size | an article said 5x5 builds strength
        old plan was 3x10 | usually squat 3x a week | i always do 3 sets of 10 | i never do more than 5 sets
        i can do 10 pull ups | i can squat 140 for 5 | i can only do 2 pull ups | couldnt do 100x5 last month
        missed 140 at the comp in march | hope to get 12 reps next time | need 2 more kilos to hit 100
        i'd love to do 100x10 | wish i could do 20 pullups | imagine 300x5 | if i hit 100x5 i'll buy cake
        if i do 3x8 today i get cake | 100x5 would be nice | 3x5 with 100 sounds scary | 5x5 looks hard on paper
        2 for 1 on protein bars today | bought 2x20kg plates | my new dumbbells are 2x24kg
        home gym has 2x20 and 4x10 plates | the bar weighs 15kg here | smith bar is 12 kg
        dumbbells only go up to 30 | they only have 20s and 30s | stack ends at 100 | seat 4 on the leg press
        seat height 5 and pad 3 | i'm 180cm and 82kg | hr was 160 | blood pressure 130/85 | resting hr 52
        score was 3-1 last night | we won 3x2 lol | game at 5 | watched 3 episodes last night
        playing 5 a side tonight | morgen kniebeugen 5x5 mit 100 | ist 3x10 besser als 4x8?
        mein bruder drückt 140x3 | schließfach 3x14 klemmt | früher hab ich 120x5 gedrückt
        mañana sentadilla 5x5 a 100 | es mejor 3x10 o 4x8? | mi hermano hace 140x3 en banca | taquilla 3x14 atascada
        demain squat 5x5 à 100 | est-ce que 3x10 est mieux que 4x8 ? | mon frère a fait 140x3 au développé couché
        domani squat 5x5 a 100 | meglio 3x10 o 4x8? | mio fratello fa 140x3 di panca
        amanhã agachamento 5x5 com 100 | é melhor 3x10 ou 4x8? | morgen squat 5x5 met 100 | is 3x10 beter dan 4x8?
        mijn broer deed 140x3 bench | jutro przysiad 5x5 100 | czy 3x10 jest lepsze niż 4x8?
        imorgon knäböj 5x5 100 | är 3x10 bättre än 4x8? | завтра присед 5x5 100 | что лучше 3x10 или 4x8?
        gym was packed, 40 people in 1 room | my trainer has 3 kids and squats 200
        they have 12 benches and 3 platforms | the 20s are missing | the 30s are both taken | only 5 plates left lol
        broke 2 nails today | burned 500 kcal | did 8000 steps | heart rate hit 170 | 45 min in traffic
        2 hours at the dentist | paid 3 euros for water | gym is 15 min away | back in 5 | back in 5 min | brb 2 min
        give me 5 | be there at 6 | there by 7 | 7 days a week is too much | day 3 of fasting | 3rd week of cutting
        down 2 kg this month | bodyfat is 15% | i'm 34 and feel old | born in 90 | my squat was 140 when i was 25
        last year i pulled 200 for 3 | first comp was in 2012 | comp in 3 weeks | 6 weeks out
        need new shoes size 44 | can you do 5 plates? | what weight is 3 plates | does 3x5 build muscle
        do i need to do 5 sets | how many reps should i do at 80 | is 3 min rest too long | can 60 year olds do 5x5
        my daughter did her first pullup | he failed 150 | saw a guy curl 80 lol
        the old guy next to me did 20 dips | tom said 5x5 is dead | the app says 3x8 | read 10 pages today
        watched 2 episodes while resting | ordered 2 pizzas | cheat day tomorrow, 2 burgers
        drank 3 litres of water | 2 litres of water so far | 2 scoops today | gained 4 pounds on holiday
        stairs: 4 floors | elevator broken, 5 floors | parking level 2 | locker 101 | lock code 3 4 5
        wifi is gym2020 | song at 120 bpm | playlist is 2h long | treadmill 5 is dead | bench 4 squeaks
        rack 2 has no pins | only rack 3 left | machine 12 out of order | bike seat at 7 | set the seat to 4
        seat 4, pad 2 | mirror broke into 100 pieces | first time here in 2 months | haven't been here for 3 weeks
        missed 2 sessions | 2 sessions missed this week | 3 sessions this week so far | 4 weeks of training done
        cant lift 100 yet | hope i get 100 someday | 100 is my dream | someday 3 plates | next goal 2 plates
        coach put me on 3x5 | he wants me to do 3x5 | they want 5x5 from me | plan b: 3x5
        supposed to do 5x5 tonight | ask me in 10 min | wait 5 min | 5 min break | do 60s planks help?
        schon 3 kaffee heute | nur 2 racks hier | gerät 4 ist kaputt | bank 3 ist frei | seit 5 wach
        mache das 3x die woche | nächste woche 3x5 mit 90 | meine frau schafft 60x5 | solo hay 2 racks
        la máquina 4 está rota | entreno 4 días a la semana | il n'y a que 2 racks
        je m'entraîne 4 fois par semaine | ci sono solo 2 rack | mi alleno 3 volte a settimana | só tem 2 racks
        treino 4x por semana | ik train 4x per week | er zijn maar 2 racks | są tylko 2 stojaki
        trenuję 4 razy w tygodniu | jag tränar 4 gånger i veckan | тренируюсь 3 раза в неделю | тут всего 2 стойки
    """,
}

SETS = {
    "6": """
        log bench 85 3x4 and chins 6 6 5 pls
    """,
    "5": """
        tomorrow deads, today just bench 5x3 87.5
    """,
    "8": """
        every 90s 8x2 60kg
    """,
    "3": """
        90s rest, bench 3x8 80 | bench 3x8 80, 2 min rest | bench 3x8 80 with 3 min between
        slept 5h but bench 3x8 80 | bw 82.3, bench 3x8 80 | locker 12, bench 3x8 80 | ran 5k then squat 3x5 100
        20 min bike, then squat 3x5 100 | after a 5k run: squat 3x5 100 | kids were up at 4, still got bench 3x8 80
        gym closes at 9 so only bench 3x8 80 | machine 7 broken so db bench 3x10 30
        plan said 3x12 but did 3x10 55 row | was supposed to do 5x5 but only managed 3x5 80 bench
        please log bench 3x8 80 | pls add bench 80x8 80x8 80x6 | can you log bench 3x8 80
        could you put down 3x8 80 for bench please | can you note bench 3x8 80 thx | write down squat 3x5 100
        record squat 3x5 100 for me | log this: squat 3x5 100 | log squats 3x5 100kg, thanks
        put in 3x12 55 for row | note row 3x12 55 | just did 3x8 80 on bench | just finished bench 3x8 80, phew
        tomorrow legs, today bench 3x8 80 | next week i deload, today bench 3x8 80 | bench 3x8 80, tomorrow legs
        bench 3x8 80. going for 82.5 next time | bench 3x8 80, is that good? | bench 3x8 80, what's next
        bench 3x8 80, next time 82.5 | waited 15 min but squat 3x5 100 | it's 35 degrees but bench 3x8 80
        coach watching, bench 3x8 80 | with my mate today: bench 3x8 80 | bench 3x8 80 mate spotted me
        shoulder felt ok, bench 3x8 80 | squat 3x5 100 in 20 min | did my 3x8 80 bench at 6am
        6:30 session bench 3x8 80 | 3x8 80 as always on bench | trage ein: bankdrücken 3x8 80
        bitte eintragen bankdrücken 3x8 80 | apunta press banca 3x8 80 | note développé couché 3x8 80
        segna panca piana 3x8 80 | anota supino 3x8 80 | noteer bench 3x8 80 | zapisz bench 3x8 80
        skriv upp bänkpress 3x8 80 | запиши жим лёжа 3x8 80
    """,
    "2": """
        weighed 82.3 today. bench 80x8 80x8 | mate benched 120x3, me 80x8 80x8 | in the end 80x8 80x8
    """,
    "1": """
        my brother did 100x5, i did 80x8 | used to do 100x5, today 80x5 | my best is 100x5, got 100x4 today
        pb is 140x2, did 135x2 deadlift | wanted 100x5, got 100x4 | aimed for 8 got 6 at 80 | goal was 8, did 80x7
        hoped for 5 but 100x4 | add squat 100x5 | finally got bench 100x5! | yes!! 100x5 on bench
        new pb bench 105x3 | pr! 140x5 deadlift | well 80x8 then | guess what, 100x5 bench
    """,
    "4": """
        coach said 5x5, i did 4x5 80 bench
    """,
}


@pytest.mark.parametrize(("text", "meant"), rows(TALK))
def test_numbers_of_other_things_are_no_sets(text: str, meant: str) -> None:
    assert said(text, BENCHING).removesuffix(", pain") == meant


@pytest.mark.parametrize(("text", "count"), rows(SETS))
def test_a_story_around_sets_costs_none(text: str, count: str) -> None:
    outcome = read(text, BENCHING, KNOWN)

    assert isinstance(outcome, Logged)
    assert len(outcome.sets) == int(count)
