"""Times told in minutes and seconds in words, with or without a number. Common practice, no source."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import readings, said

TOLD = """
plank one minute ten, then 55 seconds => plank 70 s, 55 s
plank a minute ten => plank 70 s
plank one minute and ten seconds => plank 70 s
plank two minutes fifteen => plank 135 s
side plank one minute ten each side => side plank 70 s
plank 1 min 20 x 3 => plank 3×80 s
plank one minute ten one minute five => plank 70 s, 65 s
plank one minute ten times => plank 10×60 s
plank half a minute, then 20 seconds => plank 30 s, 20 s
plank one and a half minutes => plank 90 s
plank 2 and a half minutes => plank 150 s
plank 1 minute 30 rest, 1 min => plank 60 s
squat 3x5 100, one minute thirty rest => barbell back squat 3×5 at 100 kg
squat 3x5 100, rest half a minute => barbell back squat 3×5 at 100 kg
планка 1:20, потом минута => plank 80 s, 60 s
планка минута десять => plank 70 s
планка минуту => plank 60 s
планка полторы минуты => plank 90 s
присед 3х5 100, пауза минута тридцать => barbell back squat 3×5 at 100 kg
присед 3х5 100, отдых минута => barbell back squat 3×5 at 100 kg
unterarmstütz eine minute zehn, dann 55 sekunden => plank 70 s, 55 s
plank anderthalb minuten => plank 90 s
plancha un minuto diez, luego medio minuto => plank 70 s, 30 s
gainage une minute trente => plank 90 s
plank un minuto e dieci, poi un minuto e mezzo => plank 70 s, 90 s
plank een minuut tien, dan een halve minuut => plank 70 s, 30 s
deska minuta dziesięć, potem pół minuty => plank 70 s, 30 s
prancha um minuto e dez, depois meio minuto => plank 70 s, 30 s
planka en minut tio, sedan 55 sekunder => plank 70 s, 55 s
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(TOLD))
def test_a_time_in_words_is_one_time(text, context, meant) -> None:
    assert said(text, context) == meant
