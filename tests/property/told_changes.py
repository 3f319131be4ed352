"""Sets with words between or behind them that change them, that count something else, or that are easily misread.

Each has its truth: the sets that may be recorded, if any are; where nobody can know them, only a question is right.
The words are from memory, and not taken from the lists that reading itself goes by.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from random import Random

from engine.values.load import plain
from engine.values.sets import SetDone
from tests.property import told_words as words
from tests.property.told_messages import Teller, Told

CHANGES = {
    "en": ("minus one on the last", "skipped the last set", "apart from the last", "of which two were warm-ups",
           "didn't finish the last one", "one short on the last set", "not counting the first", "repeated twice",
           "the last two a bit lighter", "missed the last set", "plus a few more", "left out the second",
           "first one with a spotter only"),
    "de": ("letzten Satz ausgelassen", "ohne den letzten", "außer beim letzten", "davon zwei zum Aufwärmen",
           "letzter Satz abgebrochen", "den ersten nicht gezählt"),
    "es": ("sin la última", "excepto la última", "me salté la última", "de las cuales dos de calentamiento"),
    "fr": ("sauf la dernière", "sans la dernière", "sauté la dernière", "dont deux d'échauffement"),
    "it": ("tranne l'ultima", "senza l'ultima", "saltata l'ultima", "di cui due di riscaldamento"),
    "nl": ("behalve de laatste", "laatste overgeslagen", "zonder de laatste", "waarvan twee warming-up"),
    "pl": ("oprócz ostatniej", "pominąłem ostatnią serię", "bez ostatniej", "z czego dwie na rozgrzewkę"),
    "pt": ("exceto a última", "pulei a última", "sem a última", "das quais duas de aquecimento"),
    "ru": ("кроме последнего", "последний пропустил", "без последнего", "из них два разминка"),
    "sv": ("utom sista", "hoppade över sista", "utan sista", "varav två uppvärmning"),
}  # fmt: skip
"""What these leave of the sets is known to the writer alone."""
INSTEAD = {
    "en": ("instead of {k}", "not {k}", "rather than {k}"),
    "de": ("statt {k}", "nicht {k}"),
    "es": ("en vez de {k}", "no {k}"),
    "fr": ("au lieu de {k}", "pas {k}"),
    "it": ("invece di {k}", "non {k}"),
    "nl": ("in plaats van {k}", "niet {k}"),
    "pl": ("zamiast {k}", "nie {k}"),
    "pt": ("em vez de {k}", "não {k}"),
    "ru": ("вместо {k}", "не {k}"),
    "sv": ("istället för {k}", "inte {k}"),
}
"""Behind these stands a number that was not done."""
ONLY_LAST = {
    "en": ("last set only {k}", "only {k} on the last", "got {k} on the last"),
    "de": ("letzter Satz nur {k}", "beim letzten nur {k}"),
    "es": ("la última solo {k}", "última {k}"),
    "fr": ("la dernière seulement {k}", "dernière {k}"),
    "it": ("l'ultima solo {k}",),
    "nl": ("laatste set maar {k}",),
    "pl": ("ostatnia tylko {k}",),
    "pt": ("a última só {k}",),
    "ru": ("последний только {k}",),
    "sv": ("sista bara {k}",),
}
SPREAD = {
    "en": "{n} reps in {s} sets at {w}kg",
    "de": "{n} Wdh in {s} Sätzen mit {w}kg",
    "es": "{n} reps en {s} series con {w}kg",
    "fr": "{n} reps en {s} séries à {w}kg",
    "it": "{n} ripetizioni in {s} serie con {w}kg",
    "nl": "{n} herhalingen in {s} sets met {w}kg",
    "pt": "{n} reps em {s} séries com {w}kg",
    "sv": "{n} reps på {s} set med {w}kg",
}


def _group(dice: Random) -> tuple[Teller, str, list[SetDone]]:
    lift = dice.choice(words.ON_A_BAR)
    teller = Teller(dice, dice.choice([code for code in words.LANGUAGES if code in lift.said]), lift)
    n, r, load = dice.randint(3, 5), dice.randint(5, 12), teller.heavy()
    x, w = teller.times.strip(), plain(load)
    text = dice.choice((f"{n}{x}{r} {w}kg", f"{w}kg {n}{x}{r}", f"{w}kg {' '.join([str(r)] * n)}"))
    return teller, f"{teller.name} {text}", [teller.one(r, load)] * n


def changed(dice: Random) -> Told:
    """A group, and words that change it in a way that no number tells."""
    teller, text, _ = _group(dice)
    return Told(f"{text}{_gap(dice)}{teller.word(CHANGES)}", (), ways=("changed",))


def instead(dice: Random) -> Told:
    """A group, and a number that was not done."""
    teller, text, sets = _group(dice)
    k = sets[0].reps + dice.choice((-1, 1, 2))
    return Told(f"{text}{_gap(dice)}{teller.word(INSTEAD).format(k=k)}", tuple(sets), ways=("instead",))


def only_last(dice: Random) -> Told:
    """A group whose last set came to fewer reps."""
    teller, text, sets = _group(dice)
    k = sets[0].reps - dice.randint(1, 3)
    told = [*sets[:-1], replace(sets[-1], reps=k)]
    return Told(f"{text}, {teller.word(ONLY_LAST).format(k=k)}", tuple(told), ways=("only last",))


def between(dice: Random) -> Told:
    """A remark that holds a number, between two sets."""
    lift = dice.choice(words.ON_A_BAR)
    teller = Teller(dice, dice.choice([code for code in words.LANGUAGES if code in lift.said]), lift)
    sign = teller.times.strip()
    load = teller.heavy() + 40
    sets = [teller.one(dice.randint(3, 12), load + 5 * at) for at in range(2)]
    told = [f"{plain(one.load.amount)}{sign}{one.reps}" for one in sets if one.load is not None]
    remark = teller.word(words.REMARKS_WITH_A_NUMBER)
    sep = dice.choice((", ", "; ", ". ", "\n"))
    return Told(f"{teller.name} {told[0]}{sep}{remark}{sep}{told[1]}", tuple(sets), ways=("between", remark))


def spread(dice: Random) -> Told:
    """So many reps in all, over so many sets."""
    lift = dice.choice(words.ON_A_BAR)
    teller = Teller(dice, dice.choice([code for code in SPREAD if code in lift.said]), lift)
    s, r, load = dice.randint(2, 5), dice.randint(4, 10), teller.heavy()
    text = SPREAD[teller.language].format(n=s * r, s=s, w=plain(load))
    return Told(f"{teller.name} {text}", tuple([teller.one(r, load)] * s), ways=("spread",))


def counted_wrong(dice: Random) -> Told:
    """A count of sets that disagrees with the sets told behind it."""
    lift = dice.choice(words.ON_A_BAR)
    teller = Teller(dice, "en", lift)
    reps, load = teller.reps_list(3, 5), plain(teller.heavy())
    n = len(reps) + dice.choice((-1, 1, 2))
    ways = (f"{n} sets: {load}kg {' '.join(map(str, reps))}", f"{load}kg {'/'.join(map(str, reps))}, {n} sets")
    return Told(f"{teller.name} {dice.choice(ways)}", (), ways=("counted wrong",))


def _gap(dice: Random) -> str:
    return dice.choice((", ", " ", " - ", "; ", ". "))


CHANGED_FORMS: tuple[Callable[[Random], Told], ...] = (changed, instead, only_last, between, spread, counted_wrong)
