"""All the reps that a set could have had are a remark, and no set of so many. Common practice; words from memory."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import readings, said

DONE = "barbell bench press 5 at 80 kg"
TOLD = """
bankdrücken 80x5 hatte 8 drauf
bankdrücken 80x5, 8 wären drin gewesen
bankdrücken 80x5 8 wären gegangen
bankdrücken 80x5 8 möglich
bankdrücken 80x5 hätte 8 geschafft
bankdrücken 80x5 hatte 12 wdh drauf
bench 80x5 8 in me
bench 80x5 8 possible
bench 80x5 8 were doable
bench 80x5, 8 was there
bench 80x5 could've hit 8
press banca 80x5 daba para 8
press banca 80x5 tenía para 8
press banca 80x5 podría haber hecho 8
développé couché 80x5 j'aurais pu en faire 8
développé couché 80x5 8 possibles
développé couché 80x5 j'en avais 8
panca piana 80x5 ne avevo 8
panca piana 80x5 8 nelle gambe
supino 80x5 dava pra 8
supino 80x5 podia ter feito 8
bankdrukken 80x5 had er 8 in
bankdrukken 80x5 8 zat erin
bänkpress 80x5 hade 8 inne
bänkpress 80x5 hade klarat 8
wyciskanie leżąc 80x5 mogłem zrobić 8
wyciskanie leżąc 80x5 8 by poszło
жим лежа 80x5 мог бы сделать 8
жим лежа 80x5 хватило бы на 8
bankdrukken 80x5 had er geen zin in
développé couché 80x5 j'en avais marre
supino 80x5 não dava mais
"""


@pytest.mark.parametrize("text", TOLD.strip().splitlines())
def test_reps_that_were_possible_are_no_set(text) -> None:
    assert said(text) == DONE


BESIDE = """
bankdrücken 80x8 hatte noch 2 drauf => barbell bench press 8 at 80 kg 2 in reserve
bankdrücken 80x5 da gingen noch 2 => barbell bench press 5 at 80 kg 2 in reserve
bench 80x5 could have done 2 more => barbell bench press 5 at 80 kg 2 in reserve
press banca 80x5 daba para 2 más => barbell bench press 5 at 80 kg 2 in reserve
développé couché 80x5 deux de plus possibles => barbell bench press 5 at 80 kg 2 in reserve
bench 80x5 2 more possible => barbell bench press 5 at 80 kg 2 in reserve
supino 80x5 aguentava mais 2 => barbell bench press 5 at 80 kg 2 in reserve
panca piana 80x5 ne avevo altre 2 => barbell bench press 5 at 80 kg 2 in reserve
жим лежа 80x5 смог бы ещё 2 => barbell bench press 5 at 80 kg 2 in reserve
squat 100x5 was good for a pr => barbell back squat 5 at 100 kg
bankdrücken 80x8 hätte 10 geschafft, rdl 3x5 90 => barbell bench press 8 at 80 kg; romanian deadlift 3×5 at 90 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(BESIDE))
def test_what_was_left_and_what_is_done_stays(text, context, meant) -> None:
    assert said(text, context) == meant


def test_fewer_reps_behind_a_set_with_a_word_for_what_was_left_are_asked() -> None:
    assert said("bench 80x8 6 in reserve").startswith("ask:")
