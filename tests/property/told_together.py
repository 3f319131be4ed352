"""Sets of two lifts in one message, rounds of them, and sets spelled in words of ten languages; each with its truth.

The words are from memory, and not taken from the lists that reading itself goes by.
"""

from __future__ import annotations

from decimal import Decimal
from random import Random

from engine.values.load import plain
from tests.property import told_words as words
from tests.property.told_messages import Teller, Told

SPELLED = {
    "en": ("two three four five", "five six eight ten", "fifty sixty eighty ninety"),
    "de": ("zwei drei vier fünf", "fünf sechs acht zehn", "fünfzig sechzig achtzig neunzig"),
    "es": ("dos tres cuatro cinco", "cinco seis ocho diez", "cincuenta sesenta ochenta noventa"),
    "fr": ("deux trois quatre cinq", "cinq six huit dix", "cinquante soixante quatre-vingts quatre-vingt-dix"),
    "it": ("due tre quattro cinque", "cinque sei otto dieci", "cinquanta sessanta ottanta novanta"),
    "nl": ("twee drie vier vijf", "vijf zes acht tien", "vijftig zestig tachtig negentig"),
    "pl": (
        "dwie trzy cztery pięć",
        "pięć sześć osiem dziesięć",
        "pięćdziesiąt sześćdziesiąt osiemdziesiąt dziewięćdziesiąt",
    ),
    "pt": ("duas três quatro cinco", "cinco seis oito dez", "cinquenta sessenta oitenta noventa"),
    "ru": ("два три четыре пять", "пять шесть восемь десять", "пятьдесят шестьдесят восемьдесят девяносто"),
    "sv": ("två tre fyra fem", "fem sex åtta tio", "femtio sextio åttio nittio"),
}
"""Sets, reps and loads in words, by language; the same numbers in each."""
SETS, REPS, LOADS = (2, 3, 4, 5), (5, 6, 8, 10), (50, 60, 80, 90)
SENTENCES = {
    "en": ("{n} sets of {r} at {w} kilos", "{n} sets of {r} with {w} kg"),
    "de": ("{n} Sätze à {r} mit {w} Kilo", "{n} Sätze mit {r} Wiederholungen bei {w} kg"),
    "es": ("{n} series de {r} con {w} kilos", "{n} series de {r} repeticiones con {w} kg"),
    "fr": ("{n} séries de {r} à {w} kilos", "{n} séries de {r} répétitions avec {w} kg"),
    "it": ("{n} serie da {r} con {w} chili", "{n} serie da {r} ripetizioni a {w} kg"),
    "nl": ("{n} sets van {r} met {w} kilo", "{n} sets van {r} herhalingen op {w} kg"),
    "pl": ("{n} serie po {r} z {w} kg", "{n} serie po {r} powtórzeń na {w} kg"),
    "pt": ("{n} séries de {r} com {w} quilos", "{n} séries de {r} repetições com {w} kg"),
    "ru": ("{n} подхода по {r} с {w} кг", "{n} подхода по {r} повторений {w} кг"),
    "sv": ("{n} set med {r} på {w} kilo", "{n} set om {r} med {w} kg"),
}
ROUNDS = {
    "en": "{n} rounds: {a}, {b}",
    "de": "{n} Runden: {a}, {b}",
    "es": "{n} rondas: {a}, {b}",
    "pl": "{n} rundy: {a}, {b}",
}
TOGETHER = (
    "{a} / {b}",
    "{a}\n{b}",
    "{a}, {b}",
    "{a}; {b}",
    "{a} + {b}",
    "{a} and {b}",
    "{a} superset with {b}",
    "superset: {a}, {b}",
    "A1 {a}\nA2 {b}",
    "A1) {a}, A2) {b}",
    "{a} then {b}",
    "{a} | {b}",
)


def spelled_out(dice: Random) -> Told:
    """One lift told in words alone."""
    lift, language = dice.choice(words.ON_A_BAR[:3]), dice.choice(words.LANGUAGES)
    teller = Teller(dice, language, lift)
    n, r, w = (dice.randrange(4) for _ in range(3))
    sets, reps, loads = (table.split() for table in SPELLED[language])
    text = dice.choice(SENTENCES[language]).format(n=sets[n], r=reps[r], w=loads[w])
    told = [teller.one(REPS[r], Decimal(LOADS[w]))] * SETS[n]
    gap = dice.choice((" ", ": ", ", "))
    return Told(f"{teller.name}{gap}{text}", tuple(told), ways=("spelled", language))


def two_lifts(dice: Random) -> Told:
    """Two lifts, each with its sets, joined as people join them."""
    language = dice.choice([code for code in words.LANGUAGES if all(code in one.said for one in words.ON_A_BAR[:3])])
    first, second = dice.sample(words.ON_A_BAR[:3], 2)
    tellers = Teller(dice, language, first), Teller(dice, language, second)
    parts, told = [], []
    for teller in tellers:
        n, r, load = dice.randint(2, 5), dice.randint(3, 12), teller.heavy()
        reps, w, x = teller.reps_list(3, 4), plain(load), teller.times.strip()
        text, counts = dice.choice(((f"{n}{x}{r} {w}kg", [r] * n), (f"{w}kg {'/'.join(map(str, reps))}", reps)))
        parts.append(f"{teller.name} {text}")
        told += [teller.one(count, load) for count in counts]
    way = dice.choice(TOGETHER)
    return Told(way.format(a=parts[0], b=parts[1]), tuple(told), ways=("two lifts", way))


def rounds(dice: Random) -> Told:
    """Two lifts done in turn, so many times."""
    language = dice.choice(list(ROUNDS))
    first, second = dice.sample(words.ON_A_BAR[:3], 2)
    n, parts, each = dice.randint(2, 5), [], []
    for teller in (Teller(dice, language, first), Teller(dice, language, second)):
        r, load = dice.randint(3, 12), teller.heavy()
        parts.append(f"{teller.name} {plain(load)}kg x {r}")
        each.append(teller.one(r, load))
    text = ROUNDS[language].format(n=n, a=parts[0], b=parts[1])
    return Told(text, tuple(each * n), ways=("rounds", language))


TOGETHER_FORMS = (spelled_out, two_lifts, rounds)
