"""What was to be done and was not is no set; what came of it in the end is. Common practice, no source."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import readings, said

TOLD = """
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
