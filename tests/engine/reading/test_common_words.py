"""The commonest words of a log in each language: sets, reps, loads, hands, warm-ups, days, failure, main lifts.

The words are from memory, not from a source. 2026-03-04 is a Wednesday.
"""

from __future__ import annotations

from datetime import datetime
from importlib.resources import files

import pytest

from engine.catalogue.catalogue import catalogue
from engine.reading import read
from engine.reading.values import Context, Logged
from engine.reading.wording import describe
from engine.reading.words.kinds import K
from engine.reading.words.lexicon import lexicon, plain_word
from engine.values.load import Unit

NOW = datetime(2026, 3, 4, 18)  # noqa: DTZ001  # local, as contexts keep it
SQUAT, BENCH = "barbell back squat", "barbell bench press"
FIVES, EIGHTS = f"{SQUAT} 3×5 at 100 kg", f"{BENCH} 3×8 at 60 kg"
RAISE, WARM = "dumbbell lateral raise 3×12 at 8 kg each", f"{SQUAT} 5 at 60 kg warmup"
FAILED, PULLS = f"{BENCH} 8 at 60 kg to failure", "pull-up 8"
LYING, LUNGE = "lying leg curl 3×10 at 40 kg", "dumbbell lunge 3×10 at 12 kg each"
PRESS, ROW, PULLDOWN = "leg press 3×10 at 150 kg", "barbell row 3×8 at 60 kg", "lat pulldown 3×10 at 50 kg"

SAID = {
    "de": (
        ("Kniebeugen 3 Sätze à 5 mit 100 Kilo", FIVES),
        ("Bankdrücken 3 Sätze mit 8 Wiederholungen bei 60 kg", EIGHTS),
        ("Seitheben 3x12 8kg pro Hand", RAISE),
        ("Kniebeuge Aufwärmsatz 60x5", WARM),
        ("Bankdrücken 60kg x 8 bis zum Versagen", FAILED),
        ("Klimmzüge Körpergewicht 8", PULLS),
        ("Beinbeuger liegend 3x10 40kg", LYING),
        ("Ausfallschritte mit Kurzhanteln 3x10 12kg pro Seite", LUNGE),
        ("Beinpresse 3x10 150kg", PRESS),
    ),
    "es": (
        ("sentadilla 3 series de 5 con 100 kilos", FIVES),
        ("press de banca 3 series 8 repeticiones 60 kg", EIGHTS),
        ("elevaciones laterales 3x12 8kg cada mano", RAISE),
        ("sentadilla calentamiento 60x5", WARM),
        ("press banca 60kg x 8 al fallo", FAILED),
        ("dominadas peso corporal 8", PULLS),
        ("curl femoral tumbado 3x10 40kg", LYING),
        ("zancadas con mancuernas 3x10 12kg por lado", LUNGE),
        ("prensa 3x10 150kg", PRESS),
    ),
    "fr": (
        ("squat 3 séries de 5 à 100 kilos", FIVES),
        ("développé couché 3 séries 8 répétitions 60 kg", EIGHTS),
        ("élévations latérales 3x12 8kg chaque main", RAISE),
        ("squat échauffement 60x5", WARM),
        ("développé couché 60kg x 8 jusqu'à l'échec", FAILED),
        ("tractions poids du corps 8", PULLS),
        ("leg curl allongé 3x10 40kg", LYING),
        ("fentes haltères 3x10 12kg par jambe", LUNGE),
        ("presse à cuisses 3x10 150kg", PRESS),
    ),
    "pt": (
        ("agachamento 3 séries de 5 com 100 quilos", FIVES),
        ("supino 3 séries 8 repetições 60 kg", EIGHTS),
        ("elevação lateral 3x12 8kg cada mão", RAISE),
        ("agachamento aquecimento 60x5", WARM),
        ("supino 60kg x 8 até a falha", FAILED),
        ("barra fixa peso corporal 8", PULLS),
        ("mesa flexora 3x10 40kg", LYING),
        ("avanço com halteres 3x10 12kg por lado", LUNGE),
        ("puxada alta 3x10 50kg", PULLDOWN),
    ),
    "it": (
        ("squat 3 serie da 5 con 100 chili", FIVES),
        ("panca piana 3 serie 8 ripetizioni 60 kg", EIGHTS),
        ("alzate laterali 3x12 8kg per mano", RAISE),
        ("squat riscaldamento 60x5", WARM),
        ("panca piana 60kg x 8 a cedimento", FAILED),
        ("trazioni corpo libero 8", PULLS),
        ("leg curl sdraiato 3x10 40kg", LYING),
        ("affondi manubri 3x10 12kg per gamba", LUNGE),
        ("squat frontale 3x5 80kg", "barbell front squat 3×5 at 80 kg"),
    ),
    "ru": (
        ("присед 3 подхода по 5 с 100 кг", FIVES),
        ("жим лёжа 3 подхода 8 повторений 60 кг", EIGHTS),
        ("махи в стороны 3x12 8кг каждой рукой", RAISE),
        ("присед разминка 60x5", WARM),
        ("жим лёжа 60кг x 8 до отказа", FAILED),
        ("подтягивания свой вес 8", PULLS),
        ("сгибание ног лёжа 3x10 40кг", LYING),
        ("выпады с гантелями 3x10 12кг на ногу", LUNGE),
        ("жим ногами 3x10 150кг", PRESS),
    ),
    "nl": (
        ("squat 3 sets van 5 met 100 kilo", FIVES),
        ("bankdrukken 3 sets 8 herhalingen 60 kg", EIGHTS),
        ("zijwaarts heffen 3x12 8kg per hand", RAISE),
        ("squat opwarmen 60x5", WARM),
        ("bankdrukken 60kg x 8 tot falen", FAILED),
        ("optrekken lichaamsgewicht 8", PULLS),
        ("leg curl liggend 3x10 40kg", LYING),
        ("lunges met dumbbells 3x10 12kg per been", LUNGE),
        ("barbell roeien 3x8 60kg", ROW),
    ),
    "sv": (
        ("knäböj 3 set à 5 med 100 kilo", FIVES),
        ("sidolyft 3x12 8kg per hand", RAISE),
        ("knäböj uppvärmning 60x5", WARM),
        ("bänkpress 60kg x 8 till utmattning", FAILED),
        ("räckhäv 8", PULLS),
        ("liggande lårcurl 3x10 40kg", LYING),
        ("utfall med hantlar 3x10 12kg per ben", LUNGE),
        ("skivstångsrodd 3x8 60kg", ROW),
    ),
    "pl": (
        ("przysiad 3 serie po 5 z 100 kg", FIVES),
        ("wyciskanie leżąc 3 serie 8 powtórzeń 60 kg", EIGHTS),
        ("wznosy bokiem 3x12 8kg na rękę", RAISE),
        ("przysiad rozgrzewka 60x5", WARM),
        ("wyciskanie leżąc 60kg x 8 do upadku", FAILED),
        ("podciąganie masa ciała 8", PULLS),
        ("uginanie nóg leżąc 3x10 40kg", LYING),
        ("wykroki z hantlami 3x10 12kg na nogę", LUNGE),
        ("ściąganie drążka 3x10 50kg", PULLDOWN),
    ),
}


def logged(text: str) -> Logged:
    outcome = read(text, Context(now=NOW), catalogue())

    assert isinstance(outcome, Logged), outcome
    return outcome


@pytest.mark.parametrize(("text", "sets"), [pytest.param(*one, id=one[0]) for told in SAID.values() for one in told])
def test_common_words(text, sets):
    found = logged(text)

    assert describe(found.sets) == sets
    assert (found.note, found.unread, found.on) == (None, (), None)


DAYS = {
    "Kniebeuge 3x5 100": {"gestern": 3, "vorgestern": 2, "Montag:": 2, "letzten Montag": 2, "vergangenen Mittwoch": 25},
    "sentadilla 3x5 100": {"ayer": 3, "anteayer": 2, "lunes:": 2, "el lunes pasado": 2, "el miércoles pasado": 25},
    "squat barre 3x5 100": {"hier": 3, "avant-hier": 2, "lundi :": 2, "lundi dernier": 2, "mercredi dernier": 25},
    "agachamento 3x5 100": {
        "ontem": 3,
        "anteontem": 2,
        "segunda:": 2,
        "segunda": 2,
        "segunda-feira:": 2,
        "quinta:": 26,
        "sexta:": 27,
        "segunda passada": 2,
        "quarta passada": 25,
        "na sexta passada": 27,
        "no domingo passado": 1,
    },
    "panca piana 3x5 100": {"ieri": 3, "l'altro ieri": 2, "lunedì:": 2, "lunedì scorso": 2, "mercoledì scorso": 25},
    "присед 3x5 100": {
        "вчера": 3,
        "позавчера": 2,
        "понедельник:": 2,
        "в прошлый понедельник": 2,
        "в прошлую среду": 25,
    },
    "bankdrukken 3x5 100": {
        "gisteren": 3,
        "eergisteren": 2,
        "maandag:": 2,
        "afgelopen maandag": 2,
        "vorige woensdag": 25,
    },
    "knäböj 3x5 100": {"igår": 3, "i förrgår": 2, "måndag:": 2, "i måndags": 2, "förra onsdagen": 25},
    "przysiad 3x5 100": {
        "wczoraj": 3,
        "przedwczoraj": 2,
        "w poniedziałek": 2,
        "zeszły wtorek": 3,
        "w zeszłą środę": 25,
    },
}


@pytest.mark.parametrize(
    ("text", "day"),
    [(f"{said} {told}", day) for told, days in DAYS.items() for said, day in days.items()],
)
def test_common_words_for_days(text, day):
    found = logged(text)

    assert found.on is not None
    assert (found.on.month, found.on.day) == (3 if day < 20 else 2, day)
    assert (len(found.sets), found.note) == (3, None)


@pytest.mark.parametrize("text", ["supino 60x8, segunda série 7", "supino 3x8 60\nterceira série com dor"])
def test_an_ordinal_of_a_set_is_no_day(text):
    outcome = read(text, Context(now=NOW), catalogue())

    assert not isinstance(outcome, Logged) or outcome.on is None


def test_no_phrase_swallows_the_unit_of_a_load():
    """ "60 кг на 8": a phrase that begins with a unit would leave the number to the unit of her settings."""
    phrases = lexicon().phrases
    units = {phrase for phrase, meaning in phrases.items() if meaning.kind in (K.KG, K.LB)}
    swallowing = {phrase for phrase, meaning in phrases.items() if phrase.split()[0] in units and phrase not in units}

    assert {phrases[phrase].kind for phrase in swallowing} <= {K.BODY}


def test_a_unit_stands_before_small_words():
    outcome = read("жим лёжа 60 кг на 8", Context(unit=Unit.LB, now=NOW), catalogue())

    assert isinstance(outcome, Logged)
    assert describe(outcome.sets) == f"{BENCH} 8 at 60 kg"


def test_no_other_word_of_any_language_takes_a_number_away():
    """ "fem set om tio": an uncle elsewhere is ten here; a number that is written out must stay one in its language."""
    taken = {}
    for file in files("engine.reading.languages").iterdir():
        for line in file.read_text(encoding="utf-8").splitlines() if file.name.endswith(".txt") else ():
            meaning, _, words = line.partition(":")
            if not meaning.startswith("number "):
                continue
            for word in (one.strip() for one in words.split(",")):
                kind = lexicon().phrases[plain_word(word)].kind if word.isalpha() else K.NUMBER_WORD
                if kind is not K.NUMBER_WORD:
                    taken[file.name, word] = kind

    assert taken == {("fr.txt", "sept"): K.MONTH}
