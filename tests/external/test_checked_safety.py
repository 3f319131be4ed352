"""Warning signs in a message against published signs at which exercise stops. The wording of replies is ours."""

from __future__ import annotations

import pytest

from bot.replies.pain import is_urgent
from engine.catalogue.catalogue import catalogue
from engine.reading.read import read
from engine.reading.values import Act, Asked, Context, Correction, Logged, NoSets
from tests.external.sources import PRACTICE, published, row

GETP = published("ACSM", None, "Guidelines for Exercise Testing and Prescription: signs, and criteria to stop")


def tells_pain(text: str) -> bool:
    found = read(text, Context(), catalogue())
    match found:
        case Logged() | Asked() | NoSets():
            return found.pain
        case Act() | Correction():
            return False


@pytest.mark.parametrize(
    ("source", "text"),
    [
        row("SAFE-01 pain", GETP, "chest pain on the last set"),
        row("SAFE-01 tightness", GETP, "chest tightness after squats"),
        row("SAFE-02 blacked out", GETP, "blacked out after squats"),
        row("SAFE-02 fainted", GETP, "nearly fainted on the last rep"),
        row("SAFE-03 dizzy", GETP, "felt dizzy and had to sit"),
        row("SAFE-05", GETP, "squat 100x5, heart racing, palpitations"),
        row("SAFE-04 short", GETP, "short of breath at rest"),
    ],
)
def test_a_sign_that_stops_exercise_is_heard_and_is_urgent(source, text):
    assert tells_pain(text), source
    assert is_urgent(text), source


@pytest.mark.parametrize("source", [row("SAFE-08", PRACTICE)])
def test_ordinary_soreness_is_no_warning_sign(source):
    text = "quads sore today 4/10 after squats yesterday"

    assert not tells_pain(text), source
    assert not is_urgent(text)
