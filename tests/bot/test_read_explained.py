"""`chalkwire read` for a person: every line true, in words, and enough for a report of a wrong reading."""

from __future__ import annotations

import json
import re

import pytest

from bot import read_command
from bot.read_explained import NUMBERS, explanation
from engine.catalogue.catalogue import catalogue
from engine.reading import read
from engine.reading.weighing.deciding import ENOUGH
from engine.reading.words.roles import Counted

NOW = "2026-03-02T18:00"
UNKNOWN = "I do not know “glorp”. Which exercise is it? Nothing is saved yet."
TALK = "talk: a question, a plan, a story or somebody else's lift"
NONE = "no numbers that could be sets"
OPEN = ("bench 90,5x5", "curl 10x20", "squat 100x3x5", "lateral raise 12x10", "squat 4x6-8 57.5")


def explained(text, **known):
    context = read_command.context_from({"now": NOW, **known})
    return explanation(text, read(text, context, catalogue()), catalogue(), context)


@pytest.mark.parametrize(
    ("text", "known", "lines"),
    [
        pytest.param(
            "squat 3x5 100",
            {},
            [
                "given     bare loads in kg, now 2026-03-02 18:00, no exercise in hand, no plan, no loads known",
                "pieces    “squat” barbell back squat",
                "          “3x5 100” numbers and signs",
                "outcome   would be saved: no other reading fits",
                "sets      barbell back squat 3×5 at 100 kg",
            ],
            id="a plain set",
        ),
        pytest.param(
            "bench 3x5 @8",
            {},
            [
                "outcome   would be saved: one reading is clear (at least 75% likely, and 50% ahead of the next)",
                "rejected  under 1% barbell bench press 3×5 at 8 kg: 8 kg is lighter than an empty bar",
            ],
            id="the rejected and why",
        ),
        pytest.param(
            "row 3x12 55",
            {},
            [
                "pieces    “row” barbell row or dumbbell row or seated cable row or machine row",
                "outcome   asked: no reading is clear; the best is 25% likely, 75% is needed (which exercise)",
            ],
            id="an open name",
        ),
        pytest.param(
            "3x8 60",
            {"doing": "barbell row", "unit": "lb"},
            [
                "given     bare loads in lb, now 2026-03-02 18:00, barbell row in hand, no plan, no loads known",
                "sets      barbell row 3×8 at 60 lb",
            ],
            id="what was in hand",
        ),
        pytest.param(
            "squat 5x1000",
            {"last": {"barbell back squat": 100}},
            [
                "given     bare loads in kg, now 2026-03-02 18:00, no exercise in hand, no plan, "
                "loads known of barbell back squat"
            ],
            id="what was known",
        ),
        pytest.param("sqaut 3x5 100", {}, ["pieces    “sqaut” barbell back squat, a slip mended"], id="a slip"),
        pytest.param(
            "squat 5x5 100 yesterday", {}, ["sets      2026-03-01: barbell back squat 5×5 at 100 kg"], id="a day"
        ),
        pytest.param(
            "yesterday\nsquat 3x5 100\ntoday\nbench 3x8 60\nglorp 3x8 20",
            {},
            [
                "sets      2026-03-01: barbell back squat 3×5 at 100 kg",
                "          2026-03-02: barbell bench press 3×8 at 60 kg",
                "not read  'glorp 3x8 20': unknown name “glorp”",
            ],
            id="several days, and a line not read",
        ),
        pytest.param(
            "glorp 3x8 20",
            {},
            ["question  I do not know “glorp”. Which exercise is it? Nothing is saved yet."],
            id="an unknown name",
        ),
        pytest.param("undo", {}, ["outcome   a request, nothing to save: undo"], id="a request"),
        pytest.param(
            "my mate benched 140x3",
            {},
            [f"outcome   nothing to save: {TALK}"],
            id="talk",
        ),
        pytest.param("", {}, ["pieces    none", f"outcome   nothing to save: {NONE}"], id="nothing"),
    ],
)
def test_an_explanation_says(text, known, lines):
    told = explained(text, **known).splitlines()

    assert [line for line in lines if line not in told] == []


@pytest.mark.parametrize(
    "text", ["bench 90,5x5", "curl 10x20", "squat 100x3x5", "lateral raise 12x10", "squat 4x6-8 57.5"]
)
def test_shares_of_a_question_are_no_more_than_a_whole(text):
    shares = [int(share) for share in re.findall(r"(\d+)% (?=[a-z])(?!is|likely)", explained(text))]

    assert 0 < sum(shares) <= 100
    assert max(shares) < 100 * ENOUGH


def test_every_way_to_spell_a_number_has_its_words():
    assert set(NUMBERS) == set(Counted)


def test_the_command_prints_it_with_what_is_known(capsys):
    status = read_command.run(["3x8 60", "--context", json.dumps({"doing": "barbell row"})])

    assert status == 0
    assert "barbell row 3×8 at 60 kg" in capsys.readouterr().out


def test_the_command_knows_the_day(capsys):
    read_command.run(["squat 3x5 100 yesterday"])

    assert re.search(r"“yesterday” the day \d{4}-\d\d-\d\d", capsys.readouterr().out)
