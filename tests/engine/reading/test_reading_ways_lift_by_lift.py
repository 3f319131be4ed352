"""Ways told behind each set belong to their sets, whatever lift stands behind or ahead of them. Common practice."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import readings, said

TOLD = """
pull ups 8 neutral, 6 wide, chin ups 5 => neutral-grip pull-up 8; pull-up 6; chin-up 5
pull ups 8 neutral, 6 wide then dips 10 => neutral-grip pull-up 8; pull-up 6; dip 10
dips 10, pull ups 8 neutral, 6 wide => dip 10; neutral-grip pull-up 8; pull-up 6
squat 3x5 100, pull ups 8 neutral, 6 wide => barbell back squat 3×5 at 100 kg; neutral-grip pull-up 8; pull-up 6
bench 60x8 close grip, 70x5 normal, squat 3x5 90 => close-grip bench press 8 at 60 kg; barbell bench press 5 at 70 kg; barbell back squat 3×5 at 90 kg
squat 80x5 front, 100x5 back, bench 3x5 80 => barbell front squat 5 at 80 kg; barbell back squat 5 at 100 kg; barbell bench press 3×5 at 80 kg
squat 100x5, 80x5 front, bench 3x5 80 => barbell back squat 5 at 100 kg; barbell front squat 5 at 80 kg; barbell bench press 3×5 at 80 kg
klimmzüge 8 neutral, 6 breit, dips 10 => neutral-grip pull-up 8; pull-up 6; dip 10
klimmzüge 8 neutral, 6 breit => neutral-grip pull-up 8; pull-up 6
dominadas 8 neutras, 6 anchas => neutral-grip pull-up 8; pull-up 6
tractions 8 neutres, 6 larges => neutral-grip pull-up 8; pull-up 6
trazioni 8 neutre, 6 larghe => neutral-grip pull-up 8; pull-up 6
barra fixa 8 neutra, 6 aberta => neutral-grip pull-up 8; pull-up 6
optrekken 8 neutraal, 6 breed => neutral-grip pull-up 8; pull-up 6
podciąganie 8 neutralnie, 6 szeroko => neutral-grip pull-up 8; pull-up 6
push ups 20 incline, 15 decline => push-up 20, 15
push ups 20, 15 decline, dips 10 => push-up 20, 15; dip 10
squat 100x5, bench 60x8 => barbell back squat 5 at 100 kg; barbell bench press 8 at 60 kg
"""  # noqa: E501 — a line a message


@pytest.mark.parametrize(("text", "context", "meant"), readings(TOLD))
def test_ways_belong_to_their_sets(text, context, meant) -> None:
    assert said(text, context) == meant
