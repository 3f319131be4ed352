"""Whatever a remark begins with right behind the last number of sets, it changes none of them in silence.

That remarks like these tell no set is common practice, no source; the words are from memory.
"""

from __future__ import annotations

import os

import pytest

from engine.catalogue.catalogue import catalogue
from engine.reading import read
from engine.reading.values import Asked, Context, Logged, Outcome
from tests.engine.reading.saying import NOW

KNOWN = catalogue()
HERE = Context(now=NOW)
SETS = ("squat 3x5 100", "squat 100x5", "bench 60 8 8 7", "pull ups 3x8")
OPENERS = """
feet up, leg went dead, legs shaking, leg day done, arm fell asleep, arms dead, hand slipped, hands sweaty,
left knee weird, right elbow clicked, knees cracking, knee caved in, back rounded, lower back tight, hips shot up,
hip felt off, chest pump, shoulder popped, shoulders tired, elbows flared, wrists bent, ankles stiff, neck tight,
head hurts, ears ringing, eyes closed, belly full, quads on fire, glutes fired, hamstrings tight, calves cramping,
forearms pumped, abs cramping, grip gone, grip failed, belt slipped, belt on, straps on, wraps loose, sleeves on,
shoes untied, chalk helped, chalk gone, bar bent, bar drifted forward, bar was oily, bar slipped, bar path good,
bench was wobbly, rack was taken, collars loose, clips missing, seat too low, seat high, cable stuck,
handle slippery, machine was broken, mat slipped, floor slippery, mirror fogged, music off, music too loud, radio on,
song was great, playlist on point, headphones died, phone rang, timer broke, watch died, gym packed, gym empty,
gym closing soon, coach watching, coach was there, brother helped, mate spotted me, spotter helped, some guy staring,
kid crying, dog barking, crowd cheering, pump was crazy, pumped, tired, exhausted, sleepy, hungry, thirsty, dizzy,
angry, happy, bored, scared, proud, sore today, stiff, weak today, strong today, fast today, slow today, heavy today,
light today, easy, hard, tough, brutal, smooth, shaky, ugly, clean, solid, perfect, terrible, great, fine,
sweat everywhere, water break, coffee kicked in, breakfast too big, lunch was late, dinner waiting, sleep was bad,
stress at work, weather hot, hot in here, cold hands, rain outside, sun was out, rushed it, paused each one,
bounced a little, cheated a bit, grinded the last, struggled, moved well, flew up, felt light, felt like death,
slept badly, forgot my belt, lost balance, almost died, nearly dropped it, needed a break, should have stopped,
must sleep more, going home, took forever, had to wait, got interrupted, broke my nail, ripped a callus,
bit my tongue, tore a callus, last one slow, first one slow, second one easy, third felt bad, one was ugly,
half asleep, single file, top set, max effort, pr today, new best, old shoes, same as always, again slow, again,
not bad, no belt, no sleep, never again, too easy, too much, very hard, so hard, just ok, still sick,
maybe heavier next, finally, today sucked, march weather, may be sick, month of pain, time flew, rest was short,
reps were ugly, rep quality bad, weight felt light, load was fine, extra sweaty, full range, deep, wide stance,
paused, strict, controlled, at home, in the garage, on the platform, with my brother, with straps, for fun, to depth,
after work, before work, and dead, but slow, then home, than expected, like butter, because tired, while sick,
up and down, down and out, off day, out of breath, under slept, by feel, through the pain, every rep slow,
each rep paused, all easy, either way good, none missed, several breaks, many breaks, few breaks, a bit tired,
an effort, the usual, my back is tight, your program is hard, our gym is cold, it was hard, he watched, she helped,
they laughed, we laughed, i died, i'm dead, you were right, this was hard, that was hard, these were hard,
those were hard, there was a queue, here it is hot, who cares, what a day, why so heavy, how hard, cats on the mat,
dogs barking, racks all taken, bars all taken, women watching, men watching, kids running around, girls laughing,
boys shouting, friends came, teammates cheering, deep breaths, points for effort, lights out, doors open,
windows open, nights of bad sleep, calls from work, texts from mum, jokes between, tears, blisters, bruises,
calluses ripped, nails broke, socks wet, shirts wet, gloves on, chains rattled, boxes everywhere, chairs in the way,
füße rutschen, beine tot, bein eingeschlafen, arm tut weh, rücken müde, knie knacken, griff schwach,
gürtel vergessen, stange rutschig, musik laut, halle voll, schlecht geschlafen, müde heute, hunger, schwer heute,
leicht, kumpel geholfen, gente mirando, piernas muertas, brazo dormido, espalda cansada, rodilla rara, agarre flojo,
barra doblada, música mala, gimnasio lleno, dormí mal, cansado hoy, hambre, pesado hoy, fácil, manos sudadas,
jambes mortes, bras endormi, dos fatigué, genou bizarre, prise faible, barre tordue, musique nulle, salle pleine,
mal dormi, fatigué, faim, lourd, facile, mains moites, pieds qui glissent, gente intorno, gambe morte,
braccio addormentato, schiena stanca, ginocchio strano, presa debole, bilanciere storto, musica brutta,
palestra piena, dormito male, stanco, fame, pesante oggi, mani sudate, piedi scivolati, gente olhando, pernas mortas,
braço dormente, costas cansadas, joelho estranho, pegada fraca, barra torta, academia cheia, dormi mal, com fome,
pesado, mãos suadas, pés escorregando, benen dood, arm slaapt, rug moe, knie raar, grip zwak, stang krom,
muziek slecht, sportschool vol, slecht geslapen, moe vandaag, honger, zwaar, handen zweterig, voeten gleden,
ben döda, arm somnade, rygg trött, knä konstigt, grepp svagt, stång böjd, musik dålig, gymmet fullt, sov dåligt,
trött idag, hungrig, tungt idag, händer svettiga, fötter gled, nogi martwe, ręka zdrętwiała, plecy zmęczone,
kolano dziwne, chwyt słaby, sztanga krzywa, muzyka słaba, siłownia pełna, źle spałem, zmęczony, głodny,
ciężko dzisiaj, dłonie spocone, stopy się ślizgały, ноги мертвые, рука онемела, спина устала, колено болит,
хват слабый, гриф кривой, музыка плохая, зал полный, плохо спал, устал, голод, тяжело сегодня, ладони вспотели,
ступни скользили
"""
MAY_COUNT = """
fingers went numb, fingers slipping, thumbs sore, people watching, people staring at me, spotters everywhere,
guys talking next to me, songs all terrible, pads slipped, holes in my shoes, clicks in the shoulder, feet slipped,
feet cramping, steps were bad, hours of sleep low, hour late, minutes felt long, side hurt a bit, plates rattling,
plate fell off, pin stuck, work was long, thought about quitting, wanted more, could do more, will go up,
two were ugly, monday blues, friday vibes, week was long, day was long, sets felt long, set was hard, total mess,
as planned, both sides even, when will it end, beers last night, coffees today many, drinks last night,
machines all taken, plates all taken, dumbbells all taken, breaths between, stars, days off helped, days of rest,
weeks off, months off, finger taub, finger rutschen, leute schauen zu, stunden gewartet, uhr kaputt,
schritte unsauber, minuten gewartet, dedos dormidos, personas mirando, horas de sueño pocas, pasos malos,
minutos largos, doigts engourdis, gens qui regardent, personnes autour, heures de sommeil, minutes trop longues,
dita intorpidite, persone che guardano, ore di sonno poche, passi storti, dedos dormentes, pessoas olhando,
horas de sono, vingers gevoelloos, mensen kijken, uur gewacht, uren gewacht, stappen slecht, fingrar domnade,
folk tittar, personer tittar, timmar väntat, steg dåliga, palce zdrętwiały, ludzi patrzy, osób patrzy,
godzin snu mało, kroków dużo, пальцы онемели, человек смотрели, людей много, часов сна мало, шагов много,
минут долго
"""
"""Of these the first word may be what the number counts, or how the sets were meant: they may be asked about."""


def remarks(bank: str) -> list[str]:
    return [" ".join(remark.split()) for remark in bank.split(",")]


def drawn(sets: str, bank: str) -> list[str]:
    """Every other remark, others for each of two of the sets; with CHALKWIRE_TEST_THOROUGH all of them."""
    whole = bool(os.environ.get("CHALKWIRE_TEST_THOROUGH"))
    return remarks(bank) if whole else remarks(bank)[SETS.index(sets) % SHARE :: SHARE]


SHARE = 2


def read_behind(sets: str, bank: str) -> dict[str, Outcome]:
    """What is read of the sets with each remark of the bank right behind them, where it is not what they are alone."""
    alone = read(sets, HERE, KNOWN)
    assert isinstance(alone, Logged)
    found = {remark: read(f"{sets} {remark}", HERE, KNOWN) for remark in drawn(sets, bank)}
    return {
        remark: outcome
        for remark, outcome in found.items()
        if not isinstance(outcome, Logged) or outcome.sets != alone.sets or outcome.on != alone.on
    }


@pytest.mark.parametrize("sets", SETS)
def test_a_remark_right_behind_sets_leaves_them_as_they_are(sets: str) -> None:
    assert read_behind(sets, OPENERS) == {}


@pytest.mark.parametrize("sets", SETS)
def test_what_may_count_something_is_asked_about_at_most(sets: str) -> None:
    other = read_behind(sets, MAY_COUNT)

    assert {remark: outcome for remark, outcome in other.items() if not isinstance(outcome, Asked)} == {}
