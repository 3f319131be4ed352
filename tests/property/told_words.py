"""What lifters of ten languages call their lifts, and the words they put around their sets: written down by hand, and
not taken from the lists that reading itself goes by.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import NamedTuple

LANGUAGES = ("en", "de", "es", "fr", "it", "nl", "pl", "pt", "ru", "sv")


class Names(NamedTuple):
    """What one exercise is called, by language; `shown` is its name in the catalogue."""

    shown: str
    said: Mapping[str, tuple[str, ...]]


ON_A_BAR = (
    Names(
        "barbell bench press",
        {
            "en": ("bench", "bench press", "bp"),
            "de": ("Bankdrücken",),
            "es": ("press de banca", "press banca"),
            "fr": ("développé couché", "DC"),
            "it": ("panca piana",),
            "nl": ("bankdrukken",),
            "pl": ("wyciskanie leżąc",),
            "pt": ("supino", "supino reto"),
            "ru": ("жим лежа", "жим лёжа"),
            "sv": ("bänkpress", "bänk"),
        },
    ),
    Names(
        "barbell back squat",
        {
            "en": ("squat", "squats", "back squat"),
            "de": ("Kniebeugen", "Kniebeuge"),
            "es": ("sentadilla", "sentadillas"),
            "fr": ("squat",),
            "it": ("squat",),
            "nl": ("squat",),
            "pl": ("przysiad", "przysiady"),
            "pt": ("agachamento",),
            "ru": ("присед", "приседания"),
            "sv": ("knäböj",),
        },
    ),
    Names(
        "conventional deadlift",
        {
            "en": ("deadlift", "deads", "dl"),
            "de": ("Kreuzheben",),
            "es": ("peso muerto",),
            "fr": ("soulevé de terre", "sdt"),
            "it": ("stacco", "stacco da terra"),
            "nl": ("deadlift",),
            "pl": ("martwy ciąg",),
            "pt": ("levantamento terra",),
            "ru": ("становая", "становая тяга"),
            "sv": ("marklyft",),
        },
    ),
    Names("barbell overhead press", {"en": ("ohp", "overhead press", "military press")}),
    Names("lat pulldown", {"en": ("pulldown", "lat pulldown"), "de": ("Latzug",), "es": ("jalón al pecho",)}),
    Names("leg press", {"en": ("leg press",), "de": ("Beinpresse",), "fr": ("presse à cuisses",), "sv": ("benpress",)}),
)
"""Lifts whose loads lie above what anyone counts as reps."""

IN_THE_HANDS = (
    Names("dumbbell bench press", {"en": ("db bench", "dumbbell bench press"), "de": ("KH-Bankdrücken",)}),
    Names("hammer curl", {"en": ("hammer curls", "hammer curl"), "de": ("Hammercurls",), "es": ("curl martillo",)}),
)
ON_ONE_SIDE = (Names("bulgarian split squat", {"en": ("bulgarian split squat", "bss")}),)
WITH_THE_BODY = (
    Names(
        "pull-up",
        {
            "en": ("pull ups", "pullups", "pull-ups"),
            "de": ("Klimmzüge",),
            "es": ("dominadas",),
            "fr": ("tractions",),
            "it": ("trazioni",),
            "nl": ("optrekken",),
            "pl": ("podciąganie",),
            "pt": ("barra fixa",),
            "ru": ("подтягивания",),
        },
    ),
    Names("dip", {"en": ("dips",), "de": ("Dips",), "es": ("fondos",), "ru": ("брусья",)}),
)
HELD = (
    Names("plank", {"en": ("plank", "planks"), "de": ("Plank",), "es": ("plancha",), "pl": ("deska",)}),
    Names("side plank", {"en": ("side plank",)}),
)
CARRIED = (Names("farmer's walk", {"en": ("farmers walk", "farmer carry", "farmers carry")}),)

SETS_OF = {
    "en": ("{n} sets of {r} at {w}", "{n} sets of {r} with {w}", "{n} sets, {r} reps, {w}", "{w}, {n} sets of {r}"),
    "de": ("{n} Sätze à {r} mit {w}", "{n} Sätze mit {r} Wdh bei {w}", "{n} Sätze {r} Wdh {w}"),
    "es": ("{n} series de {r} con {w}", "{n} series de {r} a {w}", "{n} series de {r} repeticiones con {w}"),
    "fr": ("{n} séries de {r} à {w}", "{n} séries de {r} avec {w}", "{n} séries de {r} répétitions à {w}"),
    "it": ("{n} serie da {r} con {w}", "{n} serie da {r} a {w}", "{n} serie x {r} ripetizioni con {w}"),
    "nl": ("{n} sets van {r} met {w}", "{n} setjes van {r} op {w}", "{n} sets van {r} herhalingen met {w}"),
    "pl": ("{n} serie po {r} z {w}", "{n} serie po {r} powtórzeń {w}", "{n} serie po {r} na {w}"),
    "pt": ("{n} séries de {r} com {w}", "{n} séries de {r} repetições com {w}"),
    "ru": ("{n} подхода по {r} с {w}", "{n} подхода по {r} повторений {w}", "{n} по {r} с {w}"),
    "sv": ("{n} set med {r} på {w}", "{n} set om {r} med {w}", "{n} set {r} reps {w}"),
}
WITH = {
    "en": ("at", "with", "w", "@"),
    "de": ("mit", "bei", "@"),
    "es": ("con", "a", "@"),
    "fr": ("à", "avec", "@"),
    "it": ("con", "a", "@"),
    "nl": ("met", "op", "@"),
    "pl": ("z", "na", "@"),
    "pt": ("com", "@"),
    "ru": ("с", "@"),
    "sv": ("med", "på", "@"),
}
IN_RESERVE = {
    "en": (
        "{k} in the tank",
        "had {k} left",
        "left {k} in",
        "{k} reps in reserve",
        "{k} left in the tank",
        "could have done {k} more",
        "{k} more in me",
        "with {k} left",
    ),
    "de": ("{k} im Tank", "{k} Wdh in Reserve", "noch {k} im Tank", "{k} wären noch gegangen", "hatte noch {k} übrig"),
    "es": ("{k} en reserva", "{k} en la recámara", "me quedaban {k}", "dejé {k} en reserva"),
    "fr": ("{k} en réserve", "il m'en restait {k}", "gardé {k} en réserve", "{k} reps en réserve"),
    "it": ("{k} di riserva", "{k} in riserva", "ne avevo ancora {k}", "me ne restavano {k}"),
    "nl": ("{k} in reserve", "{k} in de tank", "had er nog {k} over", "nog {k} over"),
    "pl": ("{k} w zapasie", "zostały {k} w zapasie", "miałem jeszcze {k} w zapasie"),
    "pt": ("{k} de reserva", "{k} em reserva", "sobraram {k}", "deixei {k} na reserva"),
    "ru": ("{k} в запасе", "осталось {k} в запасе", "мог ещё {k}", "ещё {k} в запасе"),
    "sv": ("{k} i reserv", "{k} kvar i tanken", "hade {k} kvar", "hade {k} i reserv"),
}
TO_FAILURE = {
    "en": ("to failure", "till failure", "all to failure"),
    "de": ("bis Muskelversagen", "bis zum Versagen", "alle bis Versagen"),
    "es": ("al fallo", "hasta el fallo", "todas al fallo"),
    "fr": ("à l'échec", "jusqu'à l'échec"),
    "it": ("a cedimento", "fino al cedimento"),
    "nl": ("tot falen", "tot spierfalen"),
    "pl": ("do upadku", "do załamania"),
    "pt": ("até a falha", "até falhar"),
    "ru": ("до отказа", "в отказ"),
    "sv": ("till failure", "till utmattning"),
}
LAST_TO_FAILURE = {
    "en": ("last to failure", "last set to failure", "last one to failure", "the last one to failure"),
    "de": ("letzter bis Versagen", "letzter Satz bis Muskelversagen", "der letzte bis zum Versagen"),
    "es": ("el último al fallo", "la última al fallo", "última serie al fallo"),
    "fr": ("la dernière à l'échec", "dernière série à l'échec", "le dernier à l'échec"),
    "it": ("l'ultima a cedimento", "ultima serie a cedimento", "ultima a cedimento"),
    "nl": ("laatste tot falen", "laatste set tot falen", "de laatste tot falen"),
    "pl": ("ostatnia do upadku", "ostatnia seria do upadku"),
    "pt": ("última até a falha", "a última até a falha", "última série até a falha"),
    "ru": ("последний до отказа", "последний подход до отказа", "последний в отказ"),
    "sv": ("sista till failure", "sista setet till failure", "den sista till failure"),
}
LAST_WITH = {
    "en": ("{k} left on the last", "last one {k} in the tank", "last set rir {k}", "last @{e}", "last set rpe {e}"),
    "de": ("letzter Satz RIR {k}", "letzter RPE {e}", "beim letzten {k} im Tank"),
    "es": ("última RIR {k}", "la última con {k} en reserva", "último RPE {e}"),
    "fr": ("dernière RPE {e}", "la dernière avec {k} en réserve"),
    "it": ("ultima RIR {k}", "l'ultima con {k} di riserva"),
    "nl": ("laatste set rpe {e}", "laatste met {k} in reserve"),
    "pl": ("ostatnia RIR {k}", "ostatnia z {k} w zapasie"),
    "pt": ("última RPE {e}", "a última com {k} de reserva"),
    "ru": ("последний RPE {e}", "в последнем {k} в запасе"),
    "sv": ("sista RPE {e}", "sista med {k} i reserv"),
}
YESTERDAY = {
    "en": "yesterday",
    "de": "gestern",
    "es": "ayer",
    "fr": "hier",
    "it": "ieri",
    "nl": "gisteren",
    "pl": "wczoraj",
    "pt": "ontem",
    "ru": "вчера",
    "sv": "igår",
}
WEEKDAYS = {
    "en": ("monday", "tuesday", "wed", "thursday", "fri", "sat", "sunday"),
    "de": ("Montag", "Dienstag", "Mittwoch", "Donnerstag", "Freitag", "Samstag", "Sonntag"),
    "es": ("el lunes", "el martes", "el miércoles", "el jueves", "el viernes", "el sábado", "el domingo"),
    "fr": ("lundi", "mardi", "mercredi", "jeudi", "vendredi", "samedi", "dimanche"),
    "it": ("lunedì", "martedì", "mercoledì", "giovedì", "venerdì", "sabato", "domenica"),
    "nl": ("maandag", "dinsdag", "woensdag", "donderdag", "vrijdag", "zaterdag", "zondag"),
    "pl": ("poniedziałek", "wtorek", "środa", "czwartek", "piątek", "sobota", "niedziela"),
    "pt": ("segunda-feira", "terça-feira", "quarta-feira", "quinta-feira", "sexta-feira", "sábado", "domingo"),
    "ru": ("понедельник", "вторник", "среда", "четверг", "пятница", "суббота", "воскресенье"),
    "sv": ("måndag", "tisdag", "onsdag", "torsdag", "fredag", "lördag", "söndag"),
}
REMARKS = {
    "en": ("felt good", "easy", "grindy", "felt heavy", "bar speed ok", "used a belt", "tired today", "form was off"),
    "de": ("ging gut", "schwer", "leicht", "müde heute", "mit Gürtel", "Technik war gut"),
    "es": ("fácil", "pesado", "buena técnica", "con cinturón", "muy cansado"),
    "fr": ("facile", "lourd", "bonnes sensations", "avec ceinture", "fatigué"),
    "it": ("facile", "pesante", "buona tecnica", "con cintura", "stanco"),
    "nl": ("ging lekker", "zwaar", "makkelijk", "met riem", "moe vandaag"),
    "pl": ("lekko", "ciężko", "dobra technika", "z pasem", "zmęczony"),
    "pt": ("fácil", "pesado", "boa técnica", "com cinto", "cansado"),
    "ru": ("легко", "тяжело", "хорошая техника", "с поясом", "устал"),
    "sv": ("lätt", "tungt", "bra teknik", "med bälte", "trött"),
}
REMARKS_WITH_A_NUMBER = {
    "en": (
        "phone at 4%",
        "rest 90s",
        "2 min rest",
        "seat 4",
        "slept 5 hours",
        "took 45 min",
        "gym closes at 9",
        "day 3 of the cut",
        "bus in 5 minutes",
        "hr 150",
        "3s pause",
        "tempo 3-1-0",
        "@ 3-1-0 tempo",
        "locker 12",
        "done by 7pm",
        "battery 12%",
        "back home at 21:30",
        "2 guys waiting for the rack",
        "bodyweight 77.2",
        "week 3 done",
        "30 degrees in here",
        "3 min between sets",
        "10 min walk after",
        "ran 5k before",
    ),
    "de": ("90s Pause", "Handy bei 4%", "5 Stunden geschlafen", "Sitz 4", "2 min Pause", "Puls 150", "Schrank 12"),
    "es": ("descanso 90s", "dormí 5 horas", "asiento 4", "2 min de descanso", "móvil al 4%", "taquilla 12"),
    "fr": ("repos 2 min", "90s de repos", "dormi 5 heures", "siège 4", "batterie à 4%"),
    "it": ("recupero 90s", "dormito 5 ore", "sedile 4", "2 min di recupero", "batteria al 4%"),
    "nl": ("rust 2 min", "90s rust", "5 uur geslapen", "stoel 4", "batterij 4%"),
    "pl": ("przerwa 2 min", "spałem 5 godzin", "siedzenie 4", "bateria 4%"),
    "pt": ("descanso 90s", "dormi 5 horas", "banco 4", "bateria 4%"),
    "ru": ("отдых 2 мин", "спал 5 часов", "сиденье 4", "батарея 4%"),
    "sv": ("vila 2 min", "sov 5 timmar", "säte 4", "batteri 4%"),
}
PAINS = {
    "en": ("left knee twinge", "shoulder pinching", "sharp pain in my elbow", "lower back tweaked"),
    "de": ("Knie schmerzt", "Schulter zwickt"),
    "es": ("me duele la rodilla", "molestia en el hombro"),
    "fr": ("mal au genou", "douleur à l'épaule"),
    "it": ("mi fa male il ginocchio", "dolore alla spalla"),
    "nl": ("pijn in de knie", "schouder doet pijn"),
    "pl": ("ból kolana", "boli mnie bark"),
    "pt": ("dor no joelho", "dor no ombro"),
    "ru": ("болит колено", "боль в плече"),
    "sv": ("ont i knät", "smärta i axeln"),
}
OPENINGS = {
    "en": (
        "ok so",
        "today:",
        "done:",
        "alright,",
        "logging this late,",
        "late log:",
        "forgot to log this,",
        "leg day:",
    ),
    "de": ("heute:", "so,", "fertig:"),
    "es": ("hoy:", "bueno,", "hoy hice"),
    "fr": ("aujourd'hui :", "bon,"),
    "it": ("oggi:", "allora,"),
    "nl": ("vandaag:", "zo,"),
    "pl": ("dziś:", "dzisiaj:"),
    "pt": ("hoje:", "então,"),
    "ru": ("сегодня:", "так,"),
    "sv": ("idag:", "så,"),
}
PER_SIDE = {
    "en": ("each side", "per leg", "each leg", "a side", "/side"),
    "de": ("pro Seite", "je Bein"),
    "es": ("por pierna", "cada lado"),
}
PER_HAND = {
    "en": ("each hand", "per hand", "each", "p/h"),
    "de": ("je Hand", "pro Hand"),
    "es": ("por mano", "cada mano"),
}
WARMED_UP = {
    "en": ("warm up", "wu", "warmup"),
    "de": ("Aufwärmen",),
    "es": ("calentamiento",),
    "fr": ("échauffement",),
    "it": ("riscaldamento",),
    "nl": ("opwarmen",),
    "pl": ("rozgrzewka",),
    "pt": ("aquecimento",),
    "ru": ("разминка",),
    "sv": ("uppvärmning",),
}
