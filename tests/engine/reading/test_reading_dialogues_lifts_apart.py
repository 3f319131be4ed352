"""Lifts that a correction leaves as they are, lifts that take each other's place, and one thing told of several."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after

LEFT_AS_THEY_ARE = """
squat 3x5 100 | bench 3x8 60 | move squat to yesterday, keep bench => barbell bench press 3×8 at 60 kg; barbell back squat 3×5 at 100 kg on 2025-03-13
squat 3x5 100 | bench 3x8 60 | keep bench and move squat to monday => barbell bench press 3×8 at 60 kg; barbell back squat 3×5 at 100 kg on 2025-03-10
squat 3x5 100 | bench 3x8 60 | move squat to yesterday, bench is right => barbell bench press 3×8 at 60 kg; barbell back squat 3×5 at 100 kg on 2025-03-13
squat 3x5 100 | bench 3x8 60 | move squat to yesterday but not bench => barbell bench press 3×8 at 60 kg; barbell back squat 3×5 at 100 kg on 2025-03-13
squat 3x5 100 | bench 3x8 60 | the squat but not the bench was yesterday => barbell bench press 3×8 at 60 kg; barbell back squat 3×5 at 100 kg on 2025-03-13
bench 3x8 60 | squat 3x5 100 | squat was 105, bench stays => barbell bench press 3×8 at 60 kg; barbell back squat 3×5 at 105 kg
bench 3x8 60 | squat 3x5 100 | delete squat, keep bench => barbell bench press 3×8 at 60 kg
bench 3x8 60 | squat 3x5 100 | delete bench, keep squat => barbell back squat 3×5 at 100 kg
bench 3x8 60 | squat 3x5 100 | delete squat not bench => barbell bench press 3×8 at 60 kg
squat 3x5 100 | bench 3x8 60 | move everything to monday but bench => barbell bench press 3×8 at 60 kg; barbell back squat 3×5 at 100 kg on 2025-03-10
bench 3x8 60 | squat 3x5 100 | rdl 3x8 80 | move everything to monday but bench and squat => barbell bench press 3×8 at 60 kg; barbell back squat 3×5 at 100 kg; romanian deadlift 3×8 at 80 kg on 2025-03-10
bench 3x8 60 | squat 3x5 100 | rdl 3x8 80 | keep bench and squat, rdl was yesterday => barbell bench press 3×8 at 60 kg; barbell back squat 3×5 at 100 kg; romanian deadlift 3×8 at 80 kg on 2025-03-13
bench 3x8 60 | squat 3x5 100 | rdl 3x8 80 | delete all except the squat => barbell back squat 3×5 at 100 kg
squat 3x5 100 | bench 3x8 60 | everything but bench was yesterday => barbell bench press 3×8 at 60 kg; barbell back squat 3×5 at 100 kg on 2025-03-13
bench 3x8 60 | squat 3x5 100 | all but bench were 75 => barbell bench press 3×8 at 60 kg; barbell back squat 3×5 at 75 kg
bench 3x8 60 | squat 3x5 100 | rdl 3x8 80 | all but bench were 75 => barbell bench press 3×8 at 60 kg; barbell back squat 3×5 at 100 kg; romanian deadlift 3×8 at 80 kg
bench 3x8 60 | squat 3x5 100 | everything was rpe 8 except the bench => barbell bench press 3×8 at 60 kg; barbell back squat 3×5 at 100 kg RPE 8
bench 3x8 60 | squat 3x5 100 | all good except the bench was 75 => barbell bench press 3×8 at 75 kg; barbell back squat 3×5 at 100 kg
bench 3x8 60 | squat 3x5 100 | everything was good but the bench was 75 => barbell bench press 3×8 at 75 kg; barbell back squat 3×5 at 100 kg
bench 3x8 60 | squat 3x5 100 | move the last to yesterday, keep the rest => barbell bench press 3×8 at 60 kg; barbell back squat 2×5 at 100 kg; barbell back squat 5 at 100 kg on 2025-03-13
bench 3x8 60 | that was incline, not bench => incline barbell bench press 3×8 at 60 kg
bench 3x8 60 | keep bench => barbell bench press 3×8 at 60 kg
squat 3x5 100 | bench 3x8 60 | that was 75, bench stays => barbell back squat 3×5 at 100 kg; barbell bench press 3×8 at 60 kg
kniebeuge 3x5 100 | kreuzheben 3x5 120 | kniebeuge war gestern, kreuzheben bleibt => conventional deadlift 3×5 at 120 kg; barbell back squat 3×5 at 100 kg on 2025-03-13
kniebeuge 3x5 100 | kreuzheben 3x5 120 | alles außer kreuzheben war gestern => conventional deadlift 3×5 at 120 kg; barbell back squat 3×5 at 100 kg on 2025-03-13
sentadilla 3x5 100 | peso muerto 3x5 120 | la sentadilla fue ayer, deja el peso muerto => conventional deadlift 3×5 at 120 kg; barbell back squat 3×5 at 100 kg on 2025-03-13
squat 3x5 100 | soulevé de terre 3x5 120 | le squat c'était hier, garde le soulevé de terre => conventional deadlift 3×5 at 120 kg; barbell back squat 3×5 at 100 kg on 2025-03-13
squat 3x5 100 | stacco 3x5 120 | squat era ieri, lascia lo stacco => conventional deadlift 3×5 at 120 kg; barbell back squat 3×5 at 100 kg on 2025-03-13
squat 3x5 100 | deadlift 3x5 120 | squat was gisteren, deadlift blijft => conventional deadlift 3×5 at 120 kg; barbell back squat 3×5 at 100 kg on 2025-03-13
przysiad 3x5 100 | martwy ciąg 3x5 120 | przysiad był wczoraj, martwy ciąg zostaw => conventional deadlift 3×5 at 120 kg; barbell back squat 3×5 at 100 kg on 2025-03-13
agachamento 3x5 100 | levantamento terra 3x5 120 | tudo menos o levantamento terra foi ontem => conventional deadlift 3×5 at 120 kg; barbell back squat 3×5 at 100 kg on 2025-03-13
присед 3x5 100 | становая 3x5 120 | присед был вчера, становую оставь => conventional deadlift 3×5 at 120 kg; barbell back squat 3×5 at 100 kg on 2025-03-13
knäböj 3x5 100 | marklyft 3x5 120 | knäböj var igår, behåll marklyft => conventional deadlift 3×5 at 120 kg; barbell back squat 3×5 at 100 kg on 2025-03-13
"""  # noqa: E501 — one dialogue a line

RENAMED = """
bench 3x8 60 | squat 3x5 100 | squat was bench and bench was squat => barbell back squat 3×8 at 60 kg; barbell bench press 3×5 at 100 kg
bench 3x8 60 | squat 3x5 100 | bench was squat, squat was bench => barbell back squat 3×8 at 60 kg; barbell bench press 3×5 at 100 kg
bench 3x8 60 | squat 3x5 100 | squat should be bench and vice versa => barbell back squat 3×8 at 60 kg; barbell bench press 3×5 at 100 kg
bench 3x8 60 | squat 3x5 100 | bench and squat are the wrong way round => barbell back squat 3×8 at 60 kg; barbell bench press 3×5 at 100 kg
bench 3x8 60 | squat 3x5 100 | i mixed up bench and squat => barbell back squat 3×8 at 60 kg; barbell bench press 3×5 at 100 kg
bench 3x8 60 | squat 3x5 100 | i swapped bench and squat => barbell bench press 3×8 at 60 kg; barbell back squat 3×5 at 100 kg
bench 3x8 60, squat 3x5 100 | bench was squat and squat was front squat => barbell back squat 3×8 at 60 kg; barbell front squat 3×5 at 100 kg
bench 3x8 60 | squat 3x5 100 | squat was bench, bench was squat and deadlift was rdl => barbell bench press 3×8 at 60 kg; barbell back squat 3×5 at 100 kg
bench 3x8 60 | squat 3x5 100 | squat was bench => barbell bench press 3×8 at 60 kg, 3×5 at 100 kg
bench 3x8 60 | squat 5x3 100 | squat was the other way round => barbell bench press 3×8 at 60 kg; barbell back squat 3×5 at 100 kg
curl 3x10 15 | 1 | bench 3x8 60 | curl was bench and bench was curl => barbell bench press 3×10 at 15 kg; barbell curl 3×8 at 60 kg
kreuzheben 3x5 120 | kniebeuge 3x8 100 | kniebeuge war kreuzheben und kreuzheben war kniebeuge => barbell back squat 3×5 at 120 kg; conventional deadlift 3×8 at 100 kg
kreuzheben 3x5 120 | kniebeuge 3x8 100 | ich habe kniebeuge und kreuzheben verwechselt => barbell back squat 3×5 at 120 kg; conventional deadlift 3×8 at 100 kg
peso muerto 3x5 120 | sentadilla 3x8 100 | sentadilla era peso muerto y peso muerto era sentadilla => barbell back squat 3×5 at 120 kg; conventional deadlift 3×8 at 100 kg
soulevé de terre 3x5 120 | squat 3x8 100 | squat c'était soulevé de terre et soulevé de terre c'était squat => barbell back squat 3×5 at 120 kg; conventional deadlift 3×8 at 100 kg
stacco 3x5 120 | squat 3x8 100 | squat era stacco e stacco era squat => barbell back squat 3×5 at 120 kg; conventional deadlift 3×8 at 100 kg
deadlift 3x5 120 | squat 3x8 100 | squat was deadlift en deadlift was squat => barbell back squat 3×5 at 120 kg; conventional deadlift 3×8 at 100 kg
przysiad 3x5 120 | martwy ciąg 3x8 100 | przysiad to był martwy ciąg, a martwy ciąg to był przysiad => conventional deadlift 3×5 at 120 kg; barbell back squat 3×8 at 100 kg
levantamento terra 3x5 120 | agachamento 3x8 100 | agachamento era levantamento terra e levantamento terra era agachamento => barbell back squat 3×5 at 120 kg; conventional deadlift 3×8 at 100 kg
становая 3x5 120 | присед 3x8 100 | присед был становая, а становая была присед => barbell back squat 3×5 at 120 kg; conventional deadlift 3×8 at 100 kg
marklyft 3x5 120 | knäböj 3x8 100 | knäböj var marklyft och marklyft var knäböj => barbell back squat 3×5 at 120 kg; conventional deadlift 3×8 at 100 kg
"""  # noqa: E501 — one dialogue a line

TALK_OF_MIXING = """
i always confuse bench and squat form
my coach mixed up bench and squat days
had bench and squat mixed today, tiring
bench and squat order mixed up
bench was before squat and vice versa
bench and squat weights are swapped
bench and squat reps are swapped
ich verwechsle bank und kniebeuge immer
ich habe die reihenfolge von bank und kniebeuge vertauscht
hice sentadilla y banca mezclé el orden
j'ai interverti l'ordre du squat et du développé couché
ho invertito l'ordine di panca e squat
ik heb de volgorde van bankdrukken en squat omgewisseld
zamieniłem kolejność: ławka i przysiad
troquei a ordem do supino e agachamento
я перепутал порядок: жим лежа и присед
jag blandade ihop ordningen på bänk och knäböj
""".strip().splitlines()

MIXED_UP = """
sorry i got bench and squat mixed up
bench and squat are swapped
ich habe bank und kniebeuge verwechselt, sorry
j'ai confondu développé couché et squat
ho scambiato panca e squat
pomyliłem ławkę i przysiad
troquei supino e agachamento
я перепутал жим лежа и присед
jag blandade ihop bänk och knäböj
""".strip().splitlines()

OF_EACH = """
bench 3x8 60 | squat 3x5 100 | the last of each was 4 => barbell bench press 2×8 at 60 kg, 4 at 60 kg; barbell back squat 2×5 at 100 kg, 4 at 100 kg
bench 3x8 60 | squat 3x5 100 | the last set of both was 4 => barbell bench press 2×8 at 60 kg, 4 at 60 kg; barbell back squat 2×5 at 100 kg, 4 at 100 kg
bench 3x8 60 | squat 3x5 100 | first of both was a warmup => barbell bench press 8 at 60 kg warmup, 2×8 at 60 kg; barbell back squat 5 at 100 kg warmup, 2×5 at 100 kg
bench 3x8 60, squat 3x5 100 | rdl 3x8 80 | the last of each was 4 => barbell bench press 3×8 at 60 kg; barbell back squat 3×5 at 100 kg; romanian deadlift 3×8 at 80 kg
bench 3x8 60 | squat 3x5 100 | rdl 3x8 80 | the last of each was 4 => barbell bench press 3×8 at 60 kg; barbell back squat 3×5 at 100 kg; romanian deadlift 3×8 at 80 kg
bench 3x8 60 | squat 3x5 100 | the last bench and the last squat were 4 => barbell bench press 2×8 at 60 kg, 4 at 60 kg; barbell back squat 2×5 at 100 kg, 4 at 100 kg
bench 3x8 60 | squat 3x5 100 | bench and squat were rpe 8 => barbell bench press 3×8 at 60 kg RPE 8; barbell back squat 3×5 at 100 kg RPE 8
bench 3x8 60 | squat 3x5 100 | bench and squat were 60 and 110 => barbell bench press 3×8 at 60 kg; barbell back squat 3×5 at 100 kg
bench 3x8 60 | squat 3x5 100 | bench and squat were yesterday => barbell bench press 3×8 at 60 kg; barbell back squat 3×5 at 100 kg on 2025-03-13
bench 3x8 60 | the last of each was 4 => barbell bench press 2×8 at 60 kg, 4 at 60 kg
kreuzheben 3x5 120 | kniebeuge 3x5 100 | der letzte von beiden war 4 => conventional deadlift 2×5 at 120 kg, 4 at 120 kg; barbell back squat 2×5 at 100 kg, 4 at 100 kg
peso muerto 3x5 120 | sentadilla 3x5 100 | la última de cada uno fue 4 => conventional deadlift 2×5 at 120 kg, 4 at 120 kg; barbell back squat 2×5 at 100 kg, 4 at 100 kg
soulevé de terre 3x5 120 | squat 3x5 100 | la dernière des deux était 4 => conventional deadlift 2×5 at 120 kg, 4 at 120 kg; barbell back squat 2×5 at 100 kg, 4 at 100 kg
stacco 3x5 120 | squat 3x5 100 | l'ultima di entrambi era 4 => conventional deadlift 2×5 at 120 kg, 4 at 120 kg; barbell back squat 2×5 at 100 kg, 4 at 100 kg
deadlift 3x5 120 | squat 3x5 100 | de laatste van beide was 4 => conventional deadlift 2×5 at 120 kg, 4 at 120 kg; barbell back squat 2×5 at 100 kg, 4 at 100 kg
martwy ciąg 3x5 120 | przysiad 3x5 100 | ostatnia z obu była 4 => conventional deadlift 2×5 at 120 kg, 4 at 120 kg; barbell back squat 2×5 at 100 kg, 4 at 100 kg
levantamento terra 3x5 120 | agachamento 3x5 100 | a última de cada um foi 4 => conventional deadlift 2×5 at 120 kg, 4 at 120 kg; barbell back squat 2×5 at 100 kg, 4 at 100 kg
становая 3x5 120 | присед 3x5 100 | последний в обоих был 4 => conventional deadlift 2×5 at 120 kg, 4 at 120 kg; barbell back squat 2×5 at 100 kg, 4 at 100 kg
marklyft 3x5 120 | knäböj 3x5 100 | sista på båda var 4 => conventional deadlift 2×5 at 120 kg, 4 at 120 kg; barbell back squat 2×5 at 100 kg, 4 at 100 kg
"""  # noqa: E501 — one dialogue a line


@pytest.mark.parametrize(("told", "standing"), dialogues(LEFT_AS_THEY_ARE))
def test_lifts_that_are_to_stay_are_never_reached(told: str, standing: str) -> None:
    assert standing_after(told) == standing


@pytest.mark.parametrize(("told", "standing"), dialogues(RENAMED))
def test_lifts_renamed_together_are_each_renamed_once(told: str, standing: str) -> None:
    assert standing_after(told) == standing


@pytest.mark.parametrize(("told", "standing"), dialogues(OF_EACH))
def test_what_is_told_of_each_reaches_each(told: str, standing: str) -> None:
    assert standing_after(told) == standing


@pytest.mark.parametrize("talk", TALK_OF_MIXING)
def test_an_order_a_form_or_days_mixed_up_swap_no_sets(talk: str) -> None:
    stands = "barbell back squat 3×5 at 100 kg; barbell bench press 3×8 at 80 kg"

    assert standing_after(f"squat 3x5 100 | bench 3x8 80 | {talk}") == stands


@pytest.mark.parametrize("told", MIXED_UP)
def test_two_lifts_mixed_up_change_places(told: str) -> None:
    swapped = "barbell bench press 3×5 at 100 kg; barbell back squat 3×8 at 80 kg"

    assert standing_after(f"squat 3x5 100 | bench 3x8 80 | {told}") == swapped
