"""Requests in nine languages besides English, as the tables of English ones."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import said
from tests.engine.reading.test_reading_requests_worded import BENCHING, rows

REQUESTS = {
    "swap barbell bench press dumbbell bench press": """
        tausche bankdrücken gegen kurzhantel bankdrücken | statt bankdrücken kurzhantel bankdrücken bitte
        kann ich statt bankdrücken kurzhantelbankdrücken machen | bankdrücken durch kurzhantelbankdrücken ersetzen
        ersetze bankdrücken durch kurzhantelbankdrücken | cambia press banca por press banca con mancuernas
        remplace le développé couché par développé couché haltères
        je peux faire développé couché haltères à la place du développé couché ?
        sostituisci panca piana con panca manubri | posso fare panca manubri al posto della panca piana
        troca supino por supino com halteres | posso fazer supino com halteres em vez de supino
        vervang bench door db bench | kan ik db bench doen in plaats van bench | zamień bench na db bench
        byt bänkpress mot hantelpress | замени жим лёжа на жим гантелей
    """,
    "skip lying leg curl": """
        beinbeuger auslassen | beincurls heute auslassen bitte | überspringe beinbeuger | beinbeuger überspringen
        heute keine beinbeuger | lass beinbeuger weg | salta el curl femoral | hoy no hago curl femoral
        sáltate el curl femoral | saute le leg curl | passe le leg curl aujourd'hui | pas de leg curl aujourd'hui
        salta il leg curl | oggi niente leg curl | pula a mesa flexora | hoje sem mesa flexora | leg curl overslaan
        sla leg curls over | pomiń leg curl | hoppa över lårcurl | пропустить сгибания ног
    """,
    "skip barbell bench press": """
        diese übung auslassen | saltar este | passer cet exercice | salta questo | pular este | deze overslaan
        pomiń to ćwiczenie | hoppa över | пропусти
    """,
    "today": """
        was steht heute an | was mache ich heute? | was trainiere ich heute | heute
        zeig mir das training von heute | que toca hoy | qué me toca hoy? | qué hago hoy | entrenamiento de hoy
        qu'est-ce que je fais aujourd'hui ? | séance du jour | cosa faccio oggi | allenamento di oggi
        che si fa oggi | o que tem hoje | treino de hoje | qual é o treino de hoje?
        wat staat er vandaag op het programma | training van vandaag | co dziś robię | co dzisiaj
        dzisiejszy trening | vad är det idag | dagens pass | что сегодня | тренировка на сегодня
        что у меня сегодня?
    """,
    "next": """
        nächste | was kommt als nächstes | was jetzt? | weiter | siguiente | siguiente ejercicio | qué sigue
        y ahora qué | suivant | exercice suivant | c'est quoi la suite | et maintenant ? | prossimo
        prossimo esercizio | e adesso? | cosa viene dopo | próximo | próximo exercício | e agora? | qual é o próximo
        volgende | volgende oefening | wat nu | wat is de volgende | następne | następne ćwiczenie | co teraz
        co dalej | nästa | nästa övning | vad är nästa | дальше | следующее | что дальше | следующее упражнение
    """,
    "done": """
        fertig | fertig für heute | das war's für heute | schluss für heute | bin fertig | terminado | he terminado
        listo por hoy | ya está por hoy | he acabado por hoy | fini | fini pour aujourd'hui | j'ai terminé
        c'est tout pour aujourd'hui | séance terminée | finito per oggi | ho finito | allenamento finito
        basta per oggi | terminei | acabei por hoje | treino terminado | é só por hoje | klaar | klaar voor vandaag
        ik ben klaar | dat was het voor vandaag | skończone | skończyłem na dziś | koniec | koniec na dzisiaj | klar
        klar för idag | jag är klar | färdig | готово | закончил | закончил на сегодня | на сегодня всё
    """,
    "undo": """
        rückgängig | rückgängig machen | mach das rückgängig | letzten satz löschen | lösch das | deshacer
        deshaz eso | borra la última serie | borra eso | annule | annule ça | annuler la dernière série
        supprime la dernière série | annulla | annulla l'ultima serie | cancella l'ultima serie | desfazer
        desfaz isso | apaga a última série | ongedaan maken | maak ongedaan | verwijder de laatste set | cofnij
        cofnij to | usuń ostatnią serię | ångra | ångra det | ta bort sista setet | отмена | отменить
        отмени последний | удали последний подход
    """,
    "repeat": """
        nochmal | noch mal das gleiche | nochmal dasselbe | das gleiche nochmal | wiederholen | otra vez
        otra igual | lo mismo | repite | repetir | encore une fois | la même chose | pareil | encore une pareille
        ancora | ancora una | uguale | stessa cosa | mais uma | mais uma igual | de novo | o mesmo | nog een keer
        hetzelfde | nog een | nog eens hetzelfde | jeszcze raz | to samo | jeszcze jedna | powtórz | en till
        samma igen | en gång till | samma | ещё раз | то же самое | повтори | ещё один такой же
    """,
    "repeat 2": """
        noch zwei | noch 2 sätze | noch zwei davon | dos más | otras dos iguales | encore deux | encore 2 pareilles
        altre due | ancora due | mais duas | mais 2 iguais | nog twee | nog 2 keer | jeszcze dwie | jeszcze 2 razy
        ещё два | ещё два раза
    """,
    "week": """
        meine woche | wie war meine woche | wie läuft die woche | wochenübersicht | woche | zeig mir die woche
        mi semana | cómo va mi semana | resumen de la semana | resumen semanal | semana | ma semaine
        bilan de la semaine | résumé de la semaine | comment va ma semaine | la mia settimana
        riepilogo della settimana | riassunto settimanale | com'è andata la settimana | minha semana
        resumo da semana | como foi minha semana | mijn week | weekoverzicht | hoe was mijn week | mój tydzień
        podsumowanie tygodnia | jak mój tydzień | min vecka | veckan | hur ser veckan ut | моя неделя | итоги недели
        как моя неделя
    """,
    "pause 2025-03-17": """
        pausiere bis montag | pause bis montag | bis montag pause | mach pause bis montag | pausa hasta el lunes
        pausa hasta lunes | pausar hasta el lunes | pause jusqu'à lundi | en pause jusqu'à lundi
        pausa fino a lunedì | in pausa fino a lunedì | pausa até segunda | pausar até segunda-feira
        pauze tot maandag | pauzeer tot maandag | pauza do poniedziałku | przerwa do poniedziałku | paus till måndag
        pausa till måndag | пауза до понедельника | перерыв до понедельника
    """,
    "remind 2025-03-14 19:00:00": """
        erinnere mich um 19 uhr | erinnere mich um 7 | erinner mich um 19:00 | erinnerung um 19 uhr
        recuérdame a las 7 | recuérdame a las 19:00 | recordatorio a las 19h | rappelle-moi à 19h
        rappelle moi à 19h00 | rappel à 19h | ricordami alle 19 | ricordamelo alle 19:00 | promemoria alle 19
        me lembra às 19h | lembre-me às 19:00 | lembrete às 19h | herinner me om 19 uur | herinner mij om 19:00
        herinnering om 19 uur | przypomnij mi o 19 | przypomnij o 19:00 | przypomnienie o 19 | påminn mig kl 19
        påminn mig klockan 19 | påminnelse 19:00 | напомни мне в 19 | напомни в 19:00 | напомни в 7 вечера
    """,
    "remind 2025-03-15 07:00:00": """
        erinnere mich morgen um 7 | erinnere mich morgen früh um 7 uhr | recuérdame mañana a las 7
        rappelle-moi demain à 7h | ricordami domani alle 7 | me lembra amanhã às 7h | herinner me morgen om 7 uur
        przypomnij mi jutro o 7 | påminn mig imorgon kl 7 | напомни мне завтра в 7
    """,
    "help": """
        hilfe | hilf mir | was kannst du | wie funktioniert das | befehle | ayuda | ayúdame | qué puedes hacer
        cómo funciona | aide | aide-moi | que sais-tu faire | comment ça marche | aiuto | aiutami | cosa sai fare
        come funziona | ajuda | me ajuda | o que você faz | como funciona | hulp | help mij | wat kan je
        hoe werkt dit | pomoc | pomóż | co potrafisz | jak to działa | hjälp | hjälp mig | vad kan du
        hur funkar det | помощь | помоги | что ты умеешь | как это работает
    """,
    "history conventional deadlift": """
        was war mein letztes kreuzheben | kreuzheben letztes mal | wie viel kreuzheben letztes mal
        was hab ich letztes mal beim kreuzheben gemacht | kreuzheben verlauf
        cuánto hice de peso muerto la última vez | qué hice la última vez en peso muerto | historial de peso muerto
        peso muerto última vez | combien au soulevé de terre la dernière fois | historique soulevé de terre
        dernier soulevé de terre | soulevé de terre la dernière fois | quanto ho fatto di stacco l'ultima volta
        storico stacco | ultimo stacco | stacco l'ultima volta | quanto fiz no levantamento terra da última vez
        histórico levantamento terra | último levantamento terra | wat deed ik vorige keer met deadlift
        vorige keer deadlift | deadlift geschiedenis | ile zrobiłem ostatnio w martwym ciągu | martwy ciąg ostatnio
        vad tog jag i marklyft senast | marklyft förra gången | marklyft historik
        сколько я сделал становую в прошлый раз | становая в прошлый раз | история становой
    """,
    "done barbell bench press as planned": """
        wie geplant | alles wie geplant | según lo planeado | como estaba planeado | comme prévu | tout comme prévu
        come previsto | come da programma | como planejado | conforme o plano | zoals gepland | volgens plan
        zgodnie z planem | jak w planie | som planerat | enligt plan | по плану | всё по плану
    """,
}


@pytest.mark.parametrize(("text", "meant"), rows(REQUESTS))
def test_a_request_is_heard_in_every_language(text: str, meant: str) -> None:
    assert said(text, BENCHING) == f"request: {meant}"
