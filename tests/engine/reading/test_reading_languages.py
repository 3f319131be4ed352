"""Set messages in ten languages, and slips of the thumb."""

from __future__ import annotations

from datetime import timedelta

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import NOW, said, situation


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    [
        pytest.param(
            "Kniebeuge 3 Sätze à 8 mit 80",
            situation(),
            "barbell back squat 3×8 at 80 kg",
            id="Kniebeuge 3 Sätze à 8 mit 80",
        ),
        pytest.param(
            "Bankdrücken 80kg 3x8 Wdh", situation(), "barbell bench press 3×8 at 80 kg", id="Bankdrücken 80kg 3x8 Wdh"
        ),
        pytest.param(
            "Kreuzheben 5 Wdh mit 140 kg",
            situation(),
            "conventional deadlift 5 at 140 kg",
            id="Kreuzheben 5 Wdh mit 140 kg",
        ),
        pytest.param("Klimmzüge 3 mal 8", situation(), "pull-up 3×8", id="Klimmzüge 3 mal 8"),
        pytest.param(
            "Latziehen 3 Sätze 12 Wdh 50 kg",
            situation(),
            "lat pulldown 3×12 at 50 kg",
            id="Latziehen 3 Sätze 12 Wdh 50 kg",
        ),
        pytest.param(
            "KH-Curls je 14kg 3x10", situation(), "dumbbell curl 3×10 at 14 kg each", id="KH-Curls je 14kg 3x10"
        ),
        pytest.param(
            "gestern Bankdrücken 3x5 82,5",
            situation(),
            "barbell bench press 3×5 at 82.5 kg on 2025-03-13",
            id="gestern Bankdrücken 3x5 82,5",
        ),
        pytest.param(
            "Montag: Kniebeuge 5x5 100",
            situation(),
            "barbell back squat 5×5 at 100 kg on 2025-03-10",
            id="Montag: Kniebeuge 5x5 100",
        ),
        pytest.param(
            "Rudern 3x10 60 90s Pause",
            situation(doing="barbell row"),
            "barbell row 3×10 at 60 kg",
            id="Rudern 3x10 60 90s Pause",
        ),
        pytest.param(
            "Bankdrücken 60x10 Aufwärmen, dann 80 5 5 5",
            situation(),
            "barbell bench press 10 at 60 kg warmup, 3×5 at 80 kg",
            id="Bankdrücken 60x10 Aufwärmen, dann 80 5 5 5",
        ),
        pytest.param("meine Schulter tut weh", situation(), "no sets, pain", id="meine Schulter tut weh"),
        pytest.param(
            "Kniebeuge 3x5 100, keine Schmerzen",
            situation(),
            "barbell back squat 3×5 at 100 kg",
            id="Kniebeuge 3x5 100, keine Schmerzen",
        ),
        pytest.param("morgen Kniebeuge 5x5 100", situation(), "no sets", id="morgen Kniebeuge 5x5 100"),
        pytest.param(
            "Wie viele Sätze soll ich machen, 3x10 oder 4x8?",
            situation(),
            "no sets",
            id="Wie viele Sätze soll ich machen, 3x10 oder 4x8?",
        ),
        pytest.param(
            "sentadilla 3 series de 5 con 100 kg",
            situation(),
            "barbell back squat 3×5 at 100 kg",
            id="sentadilla 3 series de 5 con 100 kg",
        ),
        pytest.param(
            "press banca 4 x 8 a 60 kilos",
            situation(),
            "barbell bench press 4×8 at 60 kg",
            id="press banca 4 x 8 a 60 kilos",
        ),
        pytest.param(
            "dominadas 3x8 con lastre de 10 kg",
            situation(),
            "pull-up 3×8 at +10 kg",
            id="dominadas 3x8 con lastre de 10 kg",
        ),
        pytest.param(
            "ayer peso muerto 3x5 120",
            situation(),
            "conventional deadlift 3×5 at 120 kg on 2025-03-13",
            id="ayer peso muerto 3x5 120",
        ),
        pytest.param(
            "curl con barra 3x12 27,5 al fallo",
            situation(),
            "barbell curl 3×12 at 27.5 kg to failure",
            id="curl con barra 3x12 27,5 al fallo",
        ),
        pytest.param(
            "elevaciones laterales 3x15 8kg cada brazo",
            situation(),
            "dumbbell lateral raise 3×15 at 8 kg each",
            id="elevaciones laterales 3x15 8kg cada brazo",
        ),
        pytest.param("me duele el hombro", situation(), "no sets, pain", id="me duele el hombro"),
        pytest.param("plancha 3x45 seg", situation(), "plank 3×45 s", id="plancha 3x45 seg"),
        pytest.param(
            "développé couché 3 séries de 10 à 60 kg",
            situation(),
            "barbell bench press 3×10 at 60 kg",
            id="développé couché 3 séries de 10 à 60 kg",
        ),
        pytest.param("squat barre 5x5 à 90", situation(), "barbell back squat 5×5 at 90 kg", id="squat barre 5x5 à 90"),
        pytest.param(
            "tractions 3x8 lestées 5 kg", situation(), "pull-up 3×8 at +5 kg", id="tractions 3x8 lestées 5 kg"
        ),
        pytest.param(
            "hier soulevé de terre 3x5 130",
            situation(),
            "conventional deadlift 3×5 at 130 kg on 2025-03-13",
            id="hier soulevé de terre 3x5 130",
        ),
        pytest.param(
            "développé militaire 40 kg 8/8/7",
            situation(),
            "barbell overhead press 2×8 at 40 kg, 7 at 40 kg",
            id="développé militaire 40 kg 8/8/7",
        ),
        pytest.param("gainage 1 min", situation(), "plank 60 s", id="gainage 1 min"),
        pytest.param(
            "supino 3 séries de 10 com 60kg",
            situation(),
            "barbell bench press 3×10 at 60 kg",
            id="supino 3 séries de 10 com 60kg",
        ),
        pytest.param(
            "agachamento 4x8 80 kg", situation(), "barbell back squat 4×8 at 80 kg", id="agachamento 4x8 80 kg"
        ),
        pytest.param("barra fixa 8 7 6", situation(), "pull-up 8, 7, 6", id="barra fixa 8 7 6"),
        pytest.param(
            "rosca direta 3x12 27,5", situation(), "barbell curl 3×12 at 27.5 kg", id="rosca direta 3x12 27,5"
        ),
        pytest.param(
            "ontem levantamento terra 3x5 120",
            situation(),
            "conventional deadlift 3×5 at 120 kg on 2025-03-13",
            id="ontem levantamento terra 3x5 120",
        ),
        pytest.param(
            "panca piana 3 serie da 8 con 70 kg",
            situation(),
            "barbell bench press 3×8 at 70 kg",
            id="panca piana 3 serie da 8 con 70 kg",
        ),
        pytest.param("stacco 5x5 120", situation(), "conventional deadlift 5×5 at 120 kg", id="stacco 5x5 120"),
        pytest.param("trazioni 8 7 6", situation(), "pull-up 8, 7, 6", id="trazioni 8 7 6"),
        pytest.param(
            "alzate laterali 3x12 8 kg",
            situation(),
            "dumbbell lateral raise 3×12 at 8 kg each",
            id="alzate laterali 3x12 8 kg",
        ),
        pytest.param(
            "ieri panca 3x8 70", situation(), "barbell bench press 3×8 at 70 kg on 2025-03-13", id="ieri panca 3x8 70"
        ),
        pytest.param(
            "жим лежа 3 подхода по 8 по 70 кг",
            situation(),
            "barbell bench press 3×8 at 70 kg",
            id="жим лежа 3 подхода по 8 по 70 кг",
        ),
        pytest.param(
            "жим лежа 3 подхода по 8 с 70 кг",
            situation(),
            "barbell bench press 3×8 at 70 kg",
            id="жим лежа 3 подхода по 8 с 70 кг",
        ),
        pytest.param("присед 100 на 5", situation(), "barbell back squat 5 at 100 kg", id="присед 100 на 5"),
        pytest.param(
            "становая тяга 3х5 140", situation(), "conventional deadlift 3×5 at 140 kg", id="становая тяга 3х5 140"
        ),
        pytest.param("подтягивания 3 по 8", situation(), "pull-up 3×8", id="подтягивания 3 по 8"),
        pytest.param(
            "вчера жим лежа 3х8 70",
            situation(),
            "barbell bench press 3×8 at 70 kg on 2025-03-13",
            id="вчера жим лежа 3х8 70",
        ),
        pytest.param(
            "махи 12 кг 15 15 12",
            situation(),
            "dumbbell lateral raise 2×15 at 12 kg each, 12 at 12 kg each",
            id="махи 12 кг 15 15 12",
        ),
        pytest.param("болит плечо", situation(), "no sets, pain", id="болит плечо"),
        pytest.param(
            "bankdrukken 3 sets van 8 met 70 kg",
            situation(),
            "barbell bench press 3×8 at 70 kg",
            id="bankdrukken 3 sets van 8 met 70 kg",
        ),
        pytest.param("optrekken 8 7 6", situation(), "pull-up 8, 7, 6", id="optrekken 8 7 6"),
        pytest.param(
            "gisteren bankdrukken 3x8 70",
            situation(),
            "barbell bench press 3×8 at 70 kg on 2025-03-13",
            id="gisteren bankdrukken 3x8 70",
        ),
        pytest.param(
            "knäböj 3 set av 5 på 100 kg",
            situation(),
            "barbell back squat 3×5 at 100 kg",
            id="knäböj 3 set av 5 på 100 kg",
        ),
        pytest.param(
            "marklyft 5x120 3x140",
            situation(),
            "conventional deadlift 5 at 120 kg, 3 at 140 kg",
            id="marklyft 5x120 3x140",
        ),
        pytest.param("bänkpress 3x8 70", situation(), "barbell bench press 3×8 at 70 kg", id="bänkpress 3x8 70"),
        pytest.param(
            "igår knäböj 3x5 100",
            situation(),
            "barbell back squat 3×5 at 100 kg on 2025-03-13",
            id="igår knäböj 3x5 100",
        ),
        pytest.param(
            "przysiad 3 serie po 5 z 100 kg",
            situation(),
            "barbell back squat 3×5 at 100 kg",
            id="przysiad 3 serie po 5 z 100 kg",
        ),
        pytest.param("podciąganie 8 7 6", situation(), "pull-up 8, 7, 6", id="podciąganie 8 7 6"),
        pytest.param("wyciskanie 3x8 70", situation(), "barbell bench press 3×8 at 70 kg", id="wyciskanie 3x8 70"),
        pytest.param(
            "martwy ciąg 140 na 5", situation(), "conventional deadlift 5 at 140 kg", id="martwy ciąg 140 na 5"
        ),
        pytest.param(
            "wczoraj przysiad 5x5 100",
            situation(),
            "barbell back squat 5×5 at 100 kg on 2025-03-13",
            id="wczoraj przysiad 5x5 100",
        ),
    ],
)
def test_languages(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    [
        pytest.param("sqaut 3x5 100", situation(), "barbell back squat 3×5 at 100 kg", id="sqaut 3x5 100"),
        pytest.param("bnech 80x5", situation(), "barbell bench press 5 at 80 kg", id="bnech 80x5"),
        pytest.param("deadlfit 140x3", situation(), "conventional deadlift 3 at 140 kg", id="deadlfit 140x3"),
        pytest.param("lat puldown 3x12 50", situation(), "lat pulldown 3×12 at 50 kg", id="lat puldown 3x12 50"),
        pytest.param(
            "overhead pres 3x5 45", situation(), "barbell overhead press 3×5 at 45 kg", id="overhead pres 3x5 45"
        ),
        pytest.param("ohp 3x5 42.5kgs", situation(), "barbell overhead press 3×5 at 42.5 kg", id="ohp 3x5 42.5kgs"),
        pytest.param("BENCH 80X5 80X5", situation(), "barbell bench press 2×5 at 80 kg", id="BENCH 80X5 80X5"),
        pytest.param("Squat  3 x 5   100", situation(), "barbell back squat 3×5 at 100 kg", id="Squat 3 x 5 100"),
        pytest.param(
            "romanain deadlift 3x8 90", situation(), "romanian deadlift 3×8 at 90 kg", id="romanain deadlift 3x8 90"
        ),
        pytest.param(
            "bulgarain split squats 3x8 14s",
            situation(),
            "bulgarian split squat 3×8 at 14 kg each",
            id="bulgarain split squats 3x8 14s",
        ),
        pytest.param(
            "latreal raises 3x12 8", situation(), "dumbbell lateral raise 3×12 at 8 kg each", id="latreal raises 3x12 8"
        ),
        pytest.param("hip thurst 3x10 90", situation(), "barbell hip thrust 3×10 at 90 kg", id="hip thurst 3x10 90"),
        pytest.param("face plls 3x15 20", situation(), "face pull 3×15 at 20 kg", id="face plls 3x15 20"),
        pytest.param("front sqaut 3x5 70", situation(), "barbell front squat 3×5 at 70 kg", id="front sqaut 3x5 70"),
        pytest.param("chinups 8 7 6", situation(), "chin-up 8, 7, 6", id="chinups 8 7 6"),
        pytest.param("pushups 20 20", situation(), "push-up 2×20", id="pushups 20 20"),
        pytest.param(
            "reps 8 weight 55 bench", situation(), "barbell bench press 8 at 55 kg", id="reps 8 weight 55 bench"
        ),
        pytest.param(
            "bench press: sets: 3, reps: 10, weight: 60kg",
            situation(),
            "barbell bench press 3×10 at 60 kg",
            id="bench press: sets: 3, reps: 10, weight: 60kg",
        ),
        pytest.param(
            "bench weight 60 reps 10 sets 3",
            situation(),
            "barbell bench press 3×10 at 60 kg",
            id="bench weight 60 reps 10 sets 3",
        ),
    ],
)
def test_slips(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("жим лежа сотка на 5", "barbell bench press 5 at 100 kg"),
        ("присед сотку 3х5", "barbell back squat 3×5 at 100 kg"),
        ("жим лежа полтинник 3х10", "barbell bench press 3×10 at 50 kg"),
        ("ławka stówa na 5", "barbell bench press 5 at 100 kg"),
        ("ławka setka 3x5", "barbell bench press 3×5 at 100 kg"),
        ("zrobiłem 3x8 wyciskania na 80", "barbell bench press 3×8 at 80 kg"),
        ("podciągnięcia 10 8 7", "pull-up 10, 8, 7"),
        ("подтянулся 10 8 7", "pull-up 10, 8, 7"),
        ("отжался 20 раз", "push-up 20"),
        ("bankdrücken 80x8 2 wdh im tank", "barbell bench press 8 at 80 kg 2 in reserve"),
        ("panca 3x8 80, all'ultima solo 6", "barbell bench press 2×8 at 80 kg, 6 at 80 kg"),
    ],
)
def test_words_of_the_gym_are_loads_lifts_and_efforts(text: str, meant: str) -> None:
    """From memory."""
    assert said(text) == meant


@pytest.mark.parametrize(
    ("text", "days"),
    [
        ("antes de ayer sentadilla 3x5 100", 2),
        ("antes de ontem agachamento 3x5 100", 2),
        ("ieri l'altro squat 3x5 100", 2),
        ("3 dias atrás agachamento 3x5 100", 3),
        ("agachamento 3x5 100 3 dias atrás", 3),
    ],
)
def test_the_day_before_yesterday_is_no_yesterday(text: str, days: int) -> None:
    assert said(text) == f"barbell back squat 3×5 at 100 kg on {NOW.date() - timedelta(days=days)}"
