"""Slips of the thumb are mended where one name is near, and only there."""

from __future__ import annotations

import pytest

from engine.catalogue.catalogue import catalogue
from engine.catalogue.typos import remainders


@pytest.mark.parametrize(
    ("typed", "meant"),
    [
        pytest.param("sqaut", ("barbell back squat",), id="neighbours swapped"),
        pytest.param("benhc", ("barbell bench press",), id="neighbours swapped at the end"),
        pytest.param("bech", ("barbell bench press",), id="a letter left out"),
        pytest.param("squatt", ("barbell back squat",), id="a letter typed twice"),
        pytest.param("squar", ("barbell back squat",), id="the key beside"),
        pytest.param("dpis", ("dip",), id="a swap in a short word"),
        pytest.param("rld", ("romanian deadlift",), id="a swap in three letters"),
        pytest.param("romaniandeadlfit", ("romanian deadlift",), id="joined and swapped"),
        pytest.param("bulgraian splt squats", ("bulgarian split squat",), id="a slip in each of two words"),
        pytest.param("dedalfit", ("conventional deadlift",), id="two slips in a long word"),
        pytest.param("lef press", ("leg press",), id="a short word beside a known one"),
        pytest.param("incline pres", ("incline barbell bench press", "incline dumbbell bench press"), id="both owners"),
        pytest.param("Overhed-Pres", ("barbell overhead press",), id="hyphen and capitals do not hinder"),
        pytest.param("kniebuege", ("barbell back squat",), id="a slip in another language"),
        pytest.param("leg press", ("leg press",), id="no slip at all"),
    ],
)
def test_a_slip_is_mended(typed: str, meant: tuple[str, ...]) -> None:
    assert catalogue().closest(typed) == meant


@pytest.mark.parametrize(
    "typed",
    [
        pytest.param("plan", id="plan is no plank"),
        pytest.param("plans", id="nor are plans"),
        pytest.param("tank", id="tank is no bank"),
        pytest.param("tug", id="tug is no tgu"),
        pytest.param("rdk", id="a letter changed in three"),
        pytest.param("back", id="back is no hack"),
        pytest.param("sets", id="sets are no deads"),
        pytest.param("last raise", id="last is no lat"),
        pytest.param("bad dips", id="bad dips are no bar dips"),
        pytest.param("dl2", id="a word with a digit is left alone"),
        pytest.param("bp2 press", id="beside a known word too"),
        pytest.param("hello there", id="talk"),
        pytest.param("reaction", id="two slips with another first letter"),
        pytest.param("bych prxss", id="two slips in a short word"),
        pytest.param("", id="nothing"),
        pytest.param("a b c d e f g h", id="more words than any name"),
        pytest.param("x" * 4000, id="one endless word"),
    ],
)
def test_talk_is_no_slip(typed: str) -> None:
    assert catalogue().closest(typed) == ()


def test_no_ordinary_word_is_taken_for_a_name() -> None:
    known = catalogue()

    assert known.typos.ordinary
    assert {word: known.closest(word) for word in known.typos.ordinary if known.closest(word)} == {}


def test_every_one_letter_slip_in_a_long_name_comes_back_or_asks() -> None:
    """No lost letter may lead to a single exercise that is another one."""
    known = catalogue()
    astray = []
    for name in known.exercises:
        for at in range(len(name)):
            slipped = name[:at] + name[at + 1 :]
            found = known.closest(slipped)
            if len(found) == 1 and name not in found:
                astray.append((slipped, found))

    assert astray == []


def test_remainders_meet_where_two_words_are_one_slip_apart() -> None:
    assert set(remainders("row", 1)) & set(remainders("rwo", 1))
    assert set(remainders("curl", 1)) & set(remainders("crul", 1))
    assert not set(remainders("row", 1)) & set(remainders("dip", 1))
