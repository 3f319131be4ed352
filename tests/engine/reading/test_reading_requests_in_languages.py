"""The commonest requests in nine languages beside English."""

from __future__ import annotations

import pytest

from engine.reading import read
from engine.reading.values import Act
from tests.engine.reading.saying import KNOWN, said, situation

DAY = situation(
    doing="barbell back squat",
    plan=[("barbell back squat", 3, 5, "100"), ("barbell bench press", 3, 8, "60"), ("leg press", 3, 10, "120")],
)
REQUESTS = """
volume: sätze diese woche | series esta semana | séries cette semaine | séries esta semana | serie questa settimana
volume: подходы за неделю | sets deze week | set denna vecka | serie w tym tygodniu
today: was steht heute an | was ist heute dran | heute | qué toca hoy | hoy | que hago hoy | aujourd'hui
today: c'est quoi aujourd'hui | séance du jour | oggi | cosa faccio oggi | cosa c'è oggi | vandaag
today: wat moet ik vandaag | wat staat er vandaag | dzisiaj | co dziś | co dzisiaj robię | hoje
today: o que tem hoje | treino de hoje | сегодня | что сегодня | idag | vad ska jag göra idag | dagens pass
next: was kommt als nächstes | weiter | siguiente | qué sigue | suivant | et après | prossimo | avanti
next: volgende | następne | co dalej | próximo | e agora | дальше | что дальше | nästa | vad är nästa
done: fertig | bin fertig | wie geplant | listo | terminé | según el plan | fini | c'est fini
done: comme prévu | finito | fatto | come previsto | klaar | ik ben klaar | volgens plan | gotowe
done: skończyłem | zgodnie z planem | terminei | feito | como planejado | готово | закончил | по плану
done: klar | jag är klar | enligt plan
skip: kniebeuge auslassen | überspringe kniebeugen | lass die kniebeugen aus | salta la sentadilla
skip: saltar sentadilla | sin sentadilla hoy | passer le squat | saute le squat | pas de squat aujourd'hui
skip: salta squat | salta lo squat | sla squat over | skip squat | pomiń przysiad | opuść przysiady
skip: pula o agachamento | pular agachamento | пропусти присед | пропустить приседания | hoppa över knäböj
skip: skippa knäböj
undo: rückgängig | letzten satz löschen | deshacer | borra la última | annuler | annule
undo: supprime la dernière série | annulla | cancella l'ultima serie | ongedaan maken
undo: verwijder laatste set | cofnij | usuń ostatnią serię | desfazer | apaga a última série | отмена
undo: удали последний подход | ångra | ta bort sista setet
redo: wiederherstellen
pause: pause bis montag | pause nächste woche | pause ab montag | zwei wochen pause
pause: pause zwei wochen ab montag | pause für 1,5 wochen | nächste woche kein training
pause: pausa hasta el lunes | pausa la próxima semana | pausa dos semanas | pausa desde el lunes
pause: dos semanas de pausa desde el lunes | sin entrenar la próxima semana | pause jusqu'à lundi
pause: pause la semaine prochaine | pause de deux semaines | pause deux semaines à partir de lundi
pause: pas d'entraînement la semaine prochaine | pausa fino a lunedì | pausa la prossima settimana
pause: pausa due settimane | pausa da lunedì | pauze tot maandag | pauze volgende week | twee weken pauze
pause: pauze vanaf maandag | pauza do poniedziałku | pauza w przyszłym tygodniu | przerwa dwa tygodnie
pause: przerwa od poniedziałku | pausa até segunda | pausa semana que vem | pausa de duas semanas
pause: pausa a partir de segunda | пауза до понедельника | пауза на следующей неделе | перерыв две недели
pause: пауза с понедельника | pausa till måndag | paus nästa vecka | paus två veckor | paus från måndag
resume: bin zurück | wieder da | bin wieder da | ya volví | he vuelto | estoy de vuelta | reanudar
resume: je suis de retour | de retour | reprendre | sono tornato | riprendi | ik ben terug | weer terug
resume: wróciłem | wznów | voltei | estou de volta | я вернулся | вернулся | jag är tillbaka | tillbaka
swap: tausche kniebeuge gegen beinpresse | kniebeuge durch beinpresse ersetzen
swap: statt kniebeuge beinpresse | cambia sentadilla por prensa | sustituye sentadilla por prensa
swap: remplace squat par presse | échange squat contre presse à cuisses | cambia squat con leg press
swap: sostituisci squat con pressa | wissel squat voor beenpers | vervang squat door leg press
swap: zamień przysiad na prasę | zamień przysiad na leg press | troca agachamento por leg press
swap: замени присед на жим ногами | byt knäböj mot benpress | ersätt knäböj med benpress
rest: pause 2 min | timer 2 min | starte einen timer 2 min | timer aus | timer stoppen | descanso 2 min
rest: temporizador 2 min | para el temporizador | temporizador apagado | repos 2 min | minuteur 2 min
rest: chrono 2 min | arrête le minuteur | stop chrono | riposo 2 min | timer 2 min | ferma il timer
rest: rust 2 min | timer 2 min | timer uit | stop timer | odpoczynek 2 min | minutnik 2 min
rest: zatrzymaj minutnik | descanso 2 min | timer 2 min | para o timer | desliga o timer | отдых 2 мин
rest: таймер 2 мин | выключи таймер | стоп таймер | vila 2 min | timer 2 min | stoppa timern | timer av
quiet: keine nachrichten nach 21 uhr | keine nachrichten zwischen 22 und 7 uhr
quiet: sin mensajes después de las 21 | no me escribas después de las 21 | pas de messages après 21h
quiet: pas de message entre 22h et 7h | niente messaggi dopo le 21 | geen berichten na 21 uur
quiet: bez wiadomości po 21 | sem mensagens depois das 21 | без сообщений после 21
quiet: inga meddelanden efter 21
remind: erinnere mich um 18 uhr | recuérdame a las 18 | rappelle-moi à 18h | ricordami alle 18
remind: herinner me om 18 uur | przypomnij mi o 18 | me lembra às 18 | напомни в 18 | påminn mig kl 18
repeat: nochmal | noch ein satz | otra igual | otra serie | encore une | une autre série | un'altra uguale
repeat: ancora | nog een keer | nog een set | jeszcze jedna | jeszcze raz | mais uma | mais uma série
repeat: ещё раз | ещё один подход | en till | ett set till
help: hilfe | ayuda | aide | aiuto | help | pomoc | ajuda | помощь | hjälp
week: meine woche | mi semana | ma semaine | la mia settimana | mijn week | mój tydzień | minha semana
week: моя неделя | min vecka
why: warum | por qué | pourquoi | perché | waarom | dlaczego | por quê | почему | varför
"""


def rows(table):
    """A line for each request: its name, a colon, and the ways of asking for it."""
    told = (line.partition(": ") for line in table.strip().splitlines())
    return [pytest.param(way, name, id=way) for name, _, ways in told for way in ways.split(" | ")]


@pytest.mark.parametrize(("text", "name"), rows(REQUESTS))
def test_the_commonest_requests_are_heard_in_each_language(text, name):
    assert said(text, DAY).startswith(f"request: {name}")


@pytest.mark.parametrize(
    ("text", "start", "until"),
    [
        ("pause zwei wochen ab montag", "2025-03-17", "2025-03-31"),
        ("pause für 1,5 wochen", None, "2025-03-25"),
        ("dos semanas de pausa desde el lunes", "2025-03-17", "2025-03-31"),
        ("pause la semaine prochaine", "2025-03-17", "2025-03-24"),
        ("pause deux semaines à partir de lundi", "2025-03-17", "2025-03-31"),
        ("pausa due settimane", None, "2025-03-28"),
        ("pauze vanaf maandag", "2025-03-17", None),
        ("przerwa dwa tygodnie", None, "2025-03-28"),
        ("pausa semana que vem", "2025-03-17", "2025-03-24"),
        ("пауза с понедельника", "2025-03-17", None),
        ("paus två veckor", None, "2025-03-28"),
    ],
)
def test_a_pause_is_as_long_as_told_in_each_language(text, start, until):
    found = read(text, DAY, KNOWN)

    assert isinstance(found, Act)
    assert (str(found.start or "") or None, str(found.when or "") or None) == (start, until)


@pytest.mark.parametrize(
    "text",
    [
        "9:30 uhr",
        "training seit 2 wochen",
        "na siłowni od 2 tygodni",
        "entreno desde hace dos semanas",
        "kniebeuge 3x5 100, pause 2 min",
        "repos 3 min, 100x5",
    ],
)
def test_no_request_is_made_of_talk_or_sets(text):
    assert not said(text, DAY).startswith("request: ")
