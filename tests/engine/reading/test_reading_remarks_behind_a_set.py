"""Numbers of a remark behind a set, or sent after it: a rest, what was left, a rating, a setting. None of them is a set."""

# ruff: noqa: E501 — banks of remarks

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, readings, said, situation, standing_after

RESTS = """
bench 75x9 rest 4; bench 75x9, rested 2; bench 75x9 break 3; bench 75x9 resting 3; bench 75x9 break of 4; bench 75x9 rest 2.5
bench 75x9 rest 2-3; bench 75x9 (rest 4); bench 75x9 Pause 4; bench 75x9 pausiert 4; bench 75x9 Pause von 4; bench 75x9 descanso 3
bench 75x9, pausa de 3; bench 75x9 repos 3; bench 75x9 récup 4; bench 75x9 riposo 3; bench 75x9 recupero 4; bench 75x9 rust 3
bench 75x9 pauze 4; bench 75x9 przerwa 3; bench 75x9 intervalo 3; bench 75x9 отдых 3; bench 75x9 перерыв 4; bench 75x9 vila 3
"""
LEFT = """
bench 75x9 2 left in tank; bench 75x9, 2 in tank; bench 75x9 2 reps in tank; bench 75x9 nog 2 in tank; bench 75x9 2 i tank
bench 75x9 2 w baku; bench 75x9 2 en tanque; bench 75x9 2 in serbatoio; bench 75x9 2 im tank; bench 75x9 2 в баке
"""
OF_ITS_REPS = """
bench 75x9 rep 7 slow; bench 75x9 rep 7 was slow; bench 75x9, rep 7 shaky; bench 75x9 first 4 reps fast
bench 75x9 last 2 reps spotted; bench 75x9, felt like 12 reps
"""


def texts(bank: str) -> list[str]:
    return [text.strip() for line in bank.strip().splitlines() for text in line.split(";")]


@pytest.mark.parametrize("text", texts(RESTS) + texts(OF_ITS_REPS))
def test_a_remark_behind_a_set_adds_none(text) -> None:
    assert said(text, situation()) == "barbell bench press 9 at 75 kg"


@pytest.mark.parametrize("text", texts(LEFT))
def test_what_was_left_in_the_tank_is_no_set(text) -> None:
    assert said(text, situation()) == "barbell bench press 9 at 75 kg 2 in reserve"


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    readings("""
bench 75x9 rest 3 75x8 rest 3 75x7 => barbell bench press 9, 8, 7 at 75 kg
bench 75 9 9 8 rest 3 => barbell bench press 2×9 at 75 kg, 8 at 75 kg
squat 3x5 100 rest 4 => barbell back squat 3×5 at 100 kg
pec deck 55x11 rest-pause 4 => pec deck 11 at 55 kg, 4 at 55 kg rest-pause
pec deck 55x11, rest, 4, rest, 3 => pec deck 11 at 55 kg, 4 at 55 kg rest-pause, 3 at 55 kg rest-pause
pec deck 55x11 rest 4 rest 3 => pec deck 11 at 55 kg, 4 at 55 kg rest-pause, 3 at 55 kg rest-pause
squat 80x5 pause 3x5 70 => barbell back squat 5 at 80 kg, 3×5 at 70 kg
"""),
)
def test_a_rest_stands_between_sets_and_a_rest_pause_has_its_word(text, context, meant) -> None:
    assert said(text, context).replace("9 at 75 kg, 8 at 75 kg, 7 at 75 kg", "9, 8, 7 at 75 kg") == meant


@pytest.mark.parametrize("text", ["bench 75x9 rest 8", "bench 75x9 3 rest", "bench 75x9, 70x9, rest 5"])
def test_a_rest_that_may_be_reps_is_asked(text) -> None:
    assert said(text, situation()).startswith("ask")


LATER = """
resting 4; rested 2; break 4; break of 3; przerwa 4; pausa 4; pauze 4; repos 4; riposo 4; intervalo 4; отдых 4; vilade 4; Pause 4
3 rest; 10/10 workout; 4/5 stars; 4/5 sterne; 2 apples and 3 dates; 3 eier; grip 3; spotter 2; energy 7; griff 2; agarre 2; prise 2
хват 2; chwyt 2; pegada 2; grepp 2; presa 2; it's 6 already; felt like 11 reps; rep 7 was slow; wdh 7 war langsam; repetición 7 lenta
powtórzenie 7 wolne; first 4 reps fast; erste 4 wdh schnell; last 2 reps spotted; 1 was assisted; 6 was assisted; 7.5 reps
6 solid ones; so 7 real ones; 1 fail
"""


@pytest.mark.parametrize("text", texts(LATER))
def test_a_remark_sent_after_a_set_adds_none(text) -> None:
    assert standing_after(f"bench 75x9 | {text}") == "barbell bench press 9 at 75 kg"


@pytest.mark.parametrize(
    ("told", "standing"),
    dialogues("""
bench 75x9 | easy 8 => barbell bench press 9 at 75 kg, 8 at 75 kg
bench 75x9 | 8 felt great => barbell bench press 9 at 75 kg, 8 at 75 kg
bench 75x9 | 8 good reps => barbell bench press 9 at 75 kg, 8 at 75 kg
bench 75x9 | 10/10 => barbell bench press 9 at 75 kg, 2×10 at 75 kg
bench 75x9 | last set 5 reps easy => barbell bench press 9 at 75 kg, 5 at 75 kg
bench 75x9 | 2 in tank => barbell bench press 9 at 75 kg 2 in reserve
bench 75x9 | had 3 left in tank => barbell bench press 9 at 75 kg 3 in reserve
bench 75x9 | count it as 7 => barbell bench press 7 at 75 kg
bench 75x9 | more like 7 => barbell bench press 7 at 75 kg
bench 75x9 | honestly only 7 => barbell bench press 7 at 75 kg
bench 75x9 | zähl es als 7 => barbell bench press 7 at 75 kg
bench 75x9 | más bien 7 => barbell bench press 7 at 75 kg
bench 75x9 | piuttosto 7 => barbell bench press 7 at 75 kg
bench 75x9 | tel het als 7 => barbell bench press 7 at 75 kg
bench 75x9 | licz jako 7 => barbell bench press 7 at 75 kg
bench 75x9 | mais para 7 => barbell bench press 7 at 75 kg
bench 75x9 | скорее 7 => barbell bench press 7 at 75 kg
bench 75x9 | räkna det som 7 => barbell bench press 7 at 75 kg
"""),
)
def test_sets_behind_a_set_stay_sets_and_what_it_really_was_puts_it_right(told: str, standing: str) -> None:
    assert standing_after(told) == standing
