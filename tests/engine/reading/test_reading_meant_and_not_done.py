"""What was to be done and was not is no set; what came of it in the end is. Common practice, no source."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import readings, said

TOLD = """
no squat 5x5 100 today, gym closed => ask: barbell back squat 5×5 at 100 kg
kein squat 5x5 100 heute => ask: barbell back squat 5×5 at 100 kg
had squat 5x5 100 today but ran out of time => ask: barbell back squat 5×5 at 100 kg
hatte heute kniebeuge 5x5 100 aber studio zu => ask: barbell back squat 5×5 at 100 kg
squat 5x5 100 but gym closed => ask: barbell back squat 5×5 at 100 kg
присед 5х5 100 но зал закрыт => ask: barbell back squat 5×5 at 100 kg
squat 5x5 100, skipped it => ask: barbell back squat 5×5 at 100 kg
kniebeuge 5x5 100, ausgelassen => ask: barbell back squat 5×5 at 100 kg
had squat 5x5 100 today but it was hard => barbell back squat 5×5 at 100 kg
squat 5x5 100, skipped warm up => barbell back squat 5×5 at 100 kg
no belt, squat 5x5 100 => barbell back squat 5×5 at 100 kg
должен был присед 5х5 100, но зал закрыт => no sets
планировал присед 5х5 100, но спина болела => no sets
iba a hacer sentadilla 5x5 100 pero el gimnasio estaba cerrado => no sets
j'aurais dû faire squat 5x5 100 mais la salle était fermée => no sets
j'allais faire squat 5x5 100 mais c'était fermé => no sets
avrei dovuto fare squat 5x5 100, ma ero stanco => no sets
miałem zrobić przysiad 5x5 100, ale siłownia zamknięta => no sets
ia fazer agachamento 5x5 100 mas estava fechado => no sets
skulle köra knäböj 5x5 100 men gymmet var stängt => no sets
squat 5x5 100 was planned but the gym was shut => no sets
kniebeuge 5x5 100 war geplant, aber keine zeit => no sets
squat 5x5 100 was on today but gym closed => no sets
today squat 5x5 100 was on but gym closed => no sets
squat 5x5 100 was on the menu but no time => no sets
squat 5x5 100 was the idea but i was too tired => no sets
had squat 5x5 100 planned but gym closed => no sets
i intended squat 5x5 100 but no rack => no sets
squat 5x5 100 didn't happen, gym closed => no sets
ging squat 5x5 100 doen, maar geen tijd => no sets
zou squat 5x5 100 doen maar rek bezet => no sets
squat 5x5 100 was de bedoeling maar geen rek => no sets
squat 5x5 100 ging niet door => no sets
kniebeuge 5x5 100 stand heute an, aber studio zu => no sets
hatte kniebeuge 5x5 100 geplant, aber studio zu => no sets
kniebeuge 5x5 100 fiel aus, studio zu => no sets
knäböj 5x5 100 blev inställt => no sets
knäböj 5x5 100 var tanken men gymmet stängt => no sets
skulle knäböj 5x5 100 idag men gymmet stängt => no sets
squat 5x5 100 était prévu mais salle fermée => no sets
j'avais prévu squat 5x5 100 mais salle fermée => no sets
sentadilla 5x5 100 estaba previsto pero no tuve tiempo => no sets
tenía planeado sentadilla 5x5 100 pero gimnasio cerrado => no sets
squat 5x5 100 era in programma ma palestra chiusa => no sets
agachamento 5x5 100 era para hoje mas academia fechada => no sets
przysiad 5x5 100 był zaplanowany ale brak czasu => no sets
planowałem przysiad 5x5 100 ale brak czasu => no sets
присед 5х5 100 был в плане но зал закрыт => no sets
присед 5х5 100 не состоялся, зал закрыт => no sets
squat 5x5 100 was on fire today => barbell back squat 5×5 at 100 kg
squat 5x5 100 heating was on today but still cold => barbell back squat 5×5 at 100 kg
squat 5x5 100, belt was my idea => barbell back squat 5×5 at 100 kg
squat 5x5 100 the bet was called off => barbell back squat 5×5 at 100 kg
bench 80x5 ging goed => barbell bench press 5 at 80 kg
bench 80x5 had 2 left => barbell bench press 5 at 80 kg 2 in reserve
squat 5x5 100 was the plan and done => barbell back squat 5×5 at 100 kg
kniebeuge 5x5 100 stand heute an, erledigt => barbell back squat 5×5 at 100 kg
squat 5x5 100 was on today but did 5x3 90 => barbell back squat 5×3 at 90 kg
had squat 5x5 100 planned but did 5x3 90 => barbell back squat 5×3 at 90 kg
wilde squat 5x5 100 doen maar deed 5x3 90 => barbell back squat 5×3 at 90 kg
ville köra knäböj 5x5 100 men gjorde 5x3 90 => barbell back squat 5×3 at 90 kg
plan was 5x5 100 ended up 3x5 90 squat => barbell back squat 3×5 at 90 kg
squat plan was 5x5 100 did 3x5 90 => barbell back squat 3×5 at 90 kg
supposed to do 3x8 did 3x6 bench 70 => barbell bench press 3×6 at 70 kg
quería hacer 3x8 hice 3x6 press banca 70 => barbell bench press 3×6 at 70 kg
хотел 3х8 сделал 3х6 жим лежа 70 => barbell bench press 3×6 at 70 kg
squat 5x5 100 moved to friday => no sets
moved squat 5x5 100 to friday => no sets
kniebeuge 5x5 100 auf freitag verschoben => no sets
squat 5x5 100 reporté à vendredi => no sets
sentadilla 5x5 100 aplazada al viernes => no sets
knäböj 5x5 100 flyttad till fredag => no sets
przysiad 5x5 100 przełożony na piątek => no sets
присед 5х5 100 перенес на пятницу => no sets
squat 5x5 100 moved well => barbell back squat 5×5 at 100 kg
squat 5x5 100 moved to bench 3x5 80 => barbell back squat 5×5 at 100 kg; barbell bench press 3×5 at 80 kg
squat 5x5 100 but the gym was freezing => barbell back squat 5×5 at 100 kg
squat 5x5 100 was planned but did 5x3 90 => barbell back squat 5×3 at 90 kg
должен был присед 5х5 100, но сделал 5х3 90 => barbell back squat 5×3 at 90 kg
je devais faire squat 5x5 100 mais j'ai fait 5x3 90 => barbell back squat 5×3 at 90 kg
iba a hacer sentadilla 5x5 100 pero hice 5x3 90 => barbell back squat 5×3 at 90 kg
miałem zrobić przysiad 5x5 100 ale zrobiłem 5x3 90 => barbell back squat 5×3 at 90 kg
je voulais faire 4x8 au développé couché, finalement 3x8 à 70 => barbell bench press 3×8 at 70 kg
wollte 4x8 bankdrücken, am ende 3x8 mit 70 => barbell bench press 3×8 at 70 kg
quería 4x8 press banca, al final 3x8 con 70 => barbell bench press 3×8 at 70 kg
volevo 4x8 panca, alla fine 3x8 a 70 => barbell bench press 3×8 at 70 kg
wanted 4x8 bench, in the end 3x8 at 70 => barbell bench press 3×8 at 70 kg
хотел 4х8 жим лежа, в итоге 3х8 70 => barbell bench press 3×8 at 70 kg
squat 3x5 100, finally 110x3 => barbell back squat 3×5 at 100 kg, 3 at 110 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(TOLD))
def test_what_was_to_be_done_is_no_set_and_what_came_of_it_is(text, context, meant) -> None:
    assert said(text, context) == meant
