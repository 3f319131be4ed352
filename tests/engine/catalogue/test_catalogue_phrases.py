"""However a name is written, it comes to one spelling."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from engine.catalogue.catalogue import catalogue, normalise

words = st.text(alphabet=st.characters(codec="utf-8", exclude_categories=["Cs"]), max_size=12)


@pytest.mark.parametrize(
    ("written", "spelling"),
    [
        pytest.param("Push-Ups", "push up", id="hyphen is a space, plural is singular"),
        pytest.param("PUSH  UPS", "push up", id="case and spaces do not matter"),
        pytest.param("push\u2011ups", "push up", id="a hyphen that does not break is a hyphen"),
        pytest.param("leg presses", "leg press", id="presses are a press"),
        pytest.param("press", "press", id="press is no plural"),
        pytest.param("crunches", "crunch", id="crunches are a crunch"),
        pytest.param("flyes", "fly", id="flyes are a fly"),
        pytest.param("flies", "fly", id="flies are a fly"),
        pytest.param("carries", "carry", id="carries are a carry"),
        pytest.param("calves", "calf", id="calves are a calf"),
        pytest.param("bss", "bss", id="a shorthand with a double s stays"),
        pytest.param("bs", "bs", id="two letters stay"),
        pytest.param("rdls", "rdl", id="a shorthand has a plural too"),
        pytest.param("farmer’s walk", "farmer walk", id="a curly apostrophe goes"),
        pytest.param("farmers walk", "farmer walk", id="a missing apostrophe meets it"),
        pytest.param("c&j", "c and j", id="an ampersand is and"),
        pytest.param("r.d.l.", "rdl", id="dots between letters go"),
        pytest.param("inc.bench", "inc bench", id="a dot between words is a space"),
        pytest.param("bench:.press", "bench press", id="punctuation before a dot goes"),
        pytest.param("bench:", "bench", id="punctuation at the edge goes"),
        pytest.param("(bench)", "bench", id="brackets at the edge go"),
        pytest.param("Jalón", "jalon", id="accents fold"),
        pytest.param("développé couché", "developpe couche", id="accents written apart fold"),
        pytest.param("martwy ciąg", "martwy ciag", id="a tail folds"),
        pytest.param("wałek", "walek", id="a stroke folds"),
        pytest.param("жим лёжа", "жим лежа", id="two dots in Cyrillic fold"),
        pytest.param("ｂｅｎｃｈ", "bench", id="full-width letters are letters"),
        pytest.param("be\u200bnch", "bench", id="an unseen space inside a word goes"),
        pytest.param("22.5", "22.5", id="a number keeps its point"),
        pytest.param(" – ", "", id="nothing is left of a dash"),
    ],
)
def test_one_spelling(written: str, spelling: str) -> None:
    assert normalise(written) == spelling


@given(words)
def test_the_second_time_changes_nothing(text: str) -> None:
    assert normalise(normalise(text)) == normalise(text)


@given(words, words)
def test_words_fold_one_by_one(left: str, right: str) -> None:
    apart = " ".join(filter(None, (normalise(left), normalise(right))))

    assert normalise(f"{left} {right}") == apart


@pytest.mark.parametrize(
    ("written", "owner"),
    [
        pytest.param("pushups", "push-up", id="written as one word"),
        pytest.param("LegPress", "leg press", id="joined with capitals"),
        pytest.param("farmerswalks", "farmer's walk", id="joined with a plural inside"),
        pytest.param("Klimmzuege", "pull-up", id="German with ue"),
        pytest.param("Klimmzuge", "pull-up", id="German without its dots"),
        pytest.param("KLIMMZÜGE", "pull-up", id="German in capitals"),
        pytest.param("liegestuetze", "push-up", id="German in ASCII"),
        pytest.param("elevacao lateral", "dumbbell lateral raise", id="Portuguese without accents"),
        pytest.param("ЖИМ ЛЁЖА", "barbell bench press", id="Russian in capitals"),
        pytest.param("db goblet squat", "goblet squat", id="dumbbell said though it need not be"),
        pytest.param("inc db curl", "incline dumbbell curl", id="two short forms in one name"),
        pytest.param("cable pushdowns", "triceps pushdown", id="the equipment said before a name"),
        pytest.param("dumbbell incline press", "incline dumbbell bench press", id="equipment settles a shared name"),
        pytest.param("1-arm lat pulldown", "single-arm lat pulldown", id="a digit for single"),
        pytest.param("hang clean", "hang clean", id="a full name wins over a word in it"),
    ],
)
def test_every_way_to_write_it_meets_its_owner(written: str, owner: str) -> None:
    assert catalogue().owners(written) == (owner,)
