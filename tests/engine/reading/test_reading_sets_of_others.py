"""Sets of somebody else behind one's own, in the same breath: theirs are left out, or it is asked whose they are."""

from __future__ import annotations

from dataclasses import replace

import pytest

from engine.reading import read
from engine.reading.values import Asked, Doubt, Logged
from tests.engine.reading.saying import KNOWN, readings, said, situation


@pytest.mark.parametrize(
    ("text", "known", "meant"),
    readings("""
row machine 45x9 plus my sister 30x9 => machine row 9 at 45 kg
{doing: good morning} my mate did rdl, 3x8 90kg => ask: romanian deadlift 3×8 at 90 kg
{doing: good morning} my mate did rdl too. 3x8 90kg => ask: romanian deadlift 3×8 at 90 kg
{doing: good morning} coach made me do rdl, felt good, 3x8 90kg => ask: romanian deadlift 3×8 at 90 kg
bench 3x5 60, mate did rdl, 3x8 70 => ask: barbell bench press 3×5 at 60 kg; romanian deadlift 3×8 at 70 kg
my mate benched, squat 3x5 100 => barbell back squat 3×5 at 100 kg
squat 3x5 100, my mate spotted, 3x3 110 => barbell back squat 3×5 at 100 kg, 3×3 at 110 kg
squat 95x4 + my uncle 140x2 => barbell back squat 4 at 95 kg
squat 95x4 and he 140x2 => barbell back squat 4 at 95 kg
squat 95x4 / my uncle 140x2 => barbell back squat 4 at 95 kg
squat 95x4 (my uncle 140x2) => barbell back squat 4 at 95 kg
squat 95x4 my uncle 140x2 => barbell back squat 4 at 95 kg
squat 95x4, 95x4 and my cousin same => barbell back squat 2×4 at 95 kg
squat 3x4 95 plus his 3x4 140 => barbell back squat 3×4 at 95 kg
me 95x4 squat him 140x2 => barbell back squat 4 at 95 kg
pull ups 9 8, and my wife 4 3 => pull-up 9, 8
squat 95x4 he counted 5 => barbell back squat 4 at 95 kg
Kniebeuge 95x4 und mein Bruder 140x2 => barbell back squat 4 at 95 kg
sentadilla 95x4 y mi hermano 140x2 => barbell back squat 4 at 95 kg
squat 95x4 et mon frère 140x2 => barbell back squat 4 at 95 kg
knäböj 95x4 och min bror 140x2 => barbell back squat 4 at 95 kg
squat 95x4 with my brother, 95x4, 95x3 => barbell back squat 2×4 at 95 kg, 3 at 95 kg
squat 95x4 my brother spotted, 97.5x3 => barbell back squat 4 at 95 kg, 3 at 97.5 kg
squat 95x4, mate => barbell back squat 4 at 95 kg
some young lads were all doing 4x10 hack squats. I did leg press 3x12 120 => leg press 3×12 at 120 kg
people were doing 4x10 on the hack squat. I did 5x5 squats with 110 => barbell back squat 5×5 at 110 kg
juniors were doing 5x3 snatch at 50 => no sets
the bench was busy, so i was doing dips 3x10 => dip 3×10
we were doing 3x8 bench 60 => barbell bench press 3×8 at 60 kg
music was doing my head in, bench 3x8 60 => barbell bench press 3×8 at 60 kg
"""),
)
def test_sets_of_somebody_else_are_left_out(text: str, known: object, meant: str) -> None:
    assert said(text) == meant


@pytest.mark.parametrize(
    ("text", "whose"),
    [
        ("squat 95x4 for me and 140x2 for my uncle", "my uncle"),
        ("squat 95x4, 140x2 my uncle", "my uncle"),
        ("squat 95x4, 140x2 by my uncle", "my uncle"),
        ("squat 95x4 me, 140x2 him", "somebody else"),
        ("squat 95x4 plus three for my sister", "my sister"),
        ("squat 3x5 60 for tove", "tove"),
        ("squat 3x5 60, tove's", "tove"),
        ("squat 3x5 60, not mine", "somebody else"),
        ("log for tove: squat 3x5 60", "tove"),
        ("tove - squat 3x5 60", "tove"),
        ("my daughter's first squat: 3x5 60", "daughter"),
        ("coach's numbers: squat 3x5 60", "coach"),
        ("tove's session: squat 3x5 60", "tove"),
        ("helped tove with squat 3x5 60", "tove"),
        ("squat 100x5 spotted him 140x5", "somebody else"),
        ("kniebeuge 3x5 60 für paul", "paul"),
        ("присед 3х5 60 для димы", "димы"),
        ("knäböj 3x5 60 åt erik", "erik"),
    ],
)
def test_sets_told_as_those_of_somebody_are_asked(text: str, whose: str) -> None:
    outcome = read(text, situation(), KNOWN)

    assert isinstance(outcome, Asked)
    assert outcome.doubt is Doubt.WHOSE
    assert f"{whose}’s" in outcome.question


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("squat 95x4 could have made 6", "barbell back squat 4 at 95 kg"),
        ("squat 95x4 would have been 5 with a belt", "barbell back squat 4 at 95 kg"),
        ("squat 95x4 could have been 100x4", "barbell back squat 4 at 95 kg"),
        ("squat 95x4 should be good for 105x4", "barbell back squat 4 at 95 kg"),
        ("squat 95x4 and tomorrow bench 60x8", "barbell back squat 4 at 95 kg"),
        ("squat 95x4 +2.5 next time", "barbell back squat 4 at 95 kg"),
        ("squat 4x6 95 +2.5 next week", "barbell back squat 4×6 at 95 kg"),
        ("squat 95x4 next time 100", "barbell back squat 4 at 95 kg"),
        ("squat 95x4 next time", "no sets"),
        ("squat 4x6 95 tomorrow", "no sets"),
        ("squat going for 95x4 then 100x4", "no sets"),
    ],
)
def test_what_may_come_behind_a_set_leaves_the_set(text: str, meant: str) -> None:
    assert said(text) == meant


@pytest.mark.parametrize(
    "text",
    [
        "my granddaughter does 35kg for 9 on that bench thing, amazing",
        "my father in law squats 95 for 4",
        "my stepson did bench 55x6",
        "my other half did squats 55x9",
        "my older sister deadlifts 95x4",
        "our caretaker can bench 95x4",
        "the fella on the next rack squatted 175x4",
        "two lads squatted 145x4",
        "my dog could squat 55x6",
        "meine kleine Schwester schafft 55x6 Kniebeuge",
        "der Hausmeister schafft 95x4 Kniebeuge",
        "mi nieto hace 35x9 press banca",
        "mon petit fils fait 35x9 développé couché",
        "mio nipotino fa 35x9 panca",
        "mijn kleinzoon doet 35x9 bankdrukken",
        "mój wnuk robi 35x9 wyciskanie",
        "meu neto faz 35x9 supino",
        "мой внук жмет 35х9",
        "mitt barnbarn gör 35x9 bänkpress",
    ],
)
def test_what_relatives_and_others_lift_is_no_set_of_hers(text: str) -> None:
    assert said(text) == "no sets"


@pytest.mark.parametrize(
    "text", ["tom got 95x4 on bench", "my comeback got 95x4 bench", "the caretaker got 95x4 on bench"]
)
def test_a_word_that_may_be_somebody_is_asked_about(text: str) -> None:
    outcome = read(text, situation(), KNOWN)

    assert isinstance(outcome, Asked)
    assert outcome.doubt is Doubt.WHOSE


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("somehow got 95x4 on bench", "barbell bench press 4 at 95 kg"),
        ("my coach made me do 3x9 squats at 55", "barbell back squat 3×9 at 55 kg"),
        ("my sister spotted me on bench 75x4", "barbell bench press 4 at 75 kg"),
        ("bench with my older sister 3x9 55", "barbell bench press 3×9 at 55 kg"),
        ("the stairs did me in, squat 3x4 95", "barbell back squat 3×4 at 95 kg"),
        ("a nap did wonders: bench 3x9 55", "barbell bench press 3×9 at 55 kg"),
    ],
)
def test_others_told_of_beside_her_own_sets_leave_them_hers(text: str, meant: str) -> None:
    assert said(text) == meant


@pytest.mark.parametrize(
    "text",
    [
        "squat 95x4, joris deed 140",
        "kniebeuge 95x4, jonas hat 140 gemacht",
        "sentadilla 95x4, pablo hizo 140",
        "squat 95x4, julien a fait 140",
        "squat 95x4, luca ha fatto 140x2",
        "agachamento 95x4, tiago fez 140",
        "knäböj 95x4, erik körde 140",
        "przysiad 95x4, kuba zrobił 140",
    ],
)
def test_what_somebody_of_no_list_did_behind_her_sets_is_left_out(text: str) -> None:
    assert said(text) == "barbell back squat 4 at 95 kg"


@pytest.mark.parametrize(
    "text",
    [
        "luca ha fatto squat 3x5 100",
        "erik körde knäböj 3x5 100",
        "julien a fait squat 3x5 100",
        "дима сделал присед 3х5 100",
    ],
)
def test_somebody_of_no_list_in_front_of_a_lift_is_asked_about(text: str) -> None:
    outcome = read(text, situation(), KNOWN)

    assert isinstance(outcome, Asked)
    assert outcome.doubt is Doubt.WHOSE


@pytest.mark.parametrize(
    "text", ["вечером сделал присед 3х5 100", "imorse körde jag knäböj 3x5 100", "утром сделала присед 3х5 100"]
)
def test_an_hour_in_front_of_what_was_done_is_nobody(text: str) -> None:
    assert said(text) == "barbell back squat 3×5 at 100 kg"


@pytest.mark.parametrize(
    "text",
    [
        "bench 80x5 (tom did 100x5)",
        "bench 80x5 tom did 3x5 100",
        "bench 80x5 easy (tom did 100x5)",
        "bench 80x5 (tom benched 100x5)",
        "bank 80x5 (paul hat 100x5)",
        "panca 80x5 (luca ha fatto 100x5)",
        "bench me 80x5 tom 100x5",
    ],
)
def test_what_a_named_person_did_beside_her_sets_is_left_out(text: str) -> None:
    assert said(text) == "barbell bench press 5 at 80 kg"


def test_her_sets_go_on_behind_a_bracket_about_somebody() -> None:
    assert said("bench 80x5 (tom did 100x5) 80x4") == "barbell bench press 5 at 80 kg, 4 at 80 kg"


@pytest.mark.parametrize(
    "text",
    [
        "bench 80x5 (anna got 50x8)",
        "bench 80x5 tom 85x5",
        "bench 80x5 (tom 85x5)",
        "bench 80x5 tom 3x5 85",
        "bench 80kg x 5 tom 85kg x 5",
        "bench 80x5 + tom 85x5",
        "bench 80x5 after tom did 100x5",
        "bench 80x5 vs tom 85x5",
        "bench 80x5 vs tom's 85x5",
        "bench 80x5 beat tom’s 75x5",
        "beat tom's 75x5 with bench 80x5",
        "after tom's 100x5 bench 80x5",
        "after tom did 100x5 bench 80x5",
        "bank 80x5 paul 100x5",
    ],
)
def test_what_a_word_that_may_be_somebody_stands_before_is_not_saved_unasked(text: str) -> None:
    outcome = read(text, situation(), KNOWN)

    assert isinstance(outcome, Asked)
    assert said(text) == "ask: barbell bench press 5 at 80 kg"


@pytest.mark.parametrize(
    "word", ["belt", "beltless", "smooth", "paused", "wobbly", "wraps", "topset", "finally", "pr", "lol"]
)
def test_a_remark_between_two_sets_leaves_both(word: str) -> None:
    both = "barbell bench press 5 at 80 kg, 5 at 85 kg"

    assert said(f"bench 80x5 {word} 85x5") == said(f"bench 80x5 ({word} 85x5)") == both


def test_her_own_name_before_a_set_leaves_it_hers() -> None:
    mine = replace(situation(), called="Tove")

    assert said("bench 80x5 tove 85x5", mine) == "barbell bench press 5 at 80 kg, 5 at 85 kg"


@pytest.mark.parametrize(
    "text",
    [
        "squat 100x5, mia did 70x5",
        "squat 100x5 mia did 70x5",
        "squat 100x5 (mia only did 70x5)",
        "squat 100x5, max did 140x5",
        "squat 100x5, dan did 140x5",
        "squat 100x5, may squatted 70x5",
        "squat 100x5, marco ha fatto 140x5",
        "squat 100x5 per gjorde 140x5",
        "squat 100x5 while tom did 140x5",
        "squat 100x5 when tom was doing 140x5",
        "squat 100x5 but tom only did 70x5",
        "squat 100x5 so tom did 140 for 5",
        "squat 100x5 while tom did triples at 140",
        "while tom did 140x5 i did squat 100x5",
        "kniebeuge 100x5 aber paul machte 140x5",
        "sentadilla 100x5 mientras pablo hizo 140x5",
        "squat 100x5 mentre luca ha fatto 140x5",
        "squat 100x5 maar joris deed 140x5",
        "agachamento 100x5 enquanto tiago fez 140x5",
        "knäböj 100x5 medan erik gjorde 140x5",
        "squat 100x5, tom did the same",
        "squat 100x5, tom also did 70x5",
        "squat 100x5 and tom the same",
    ],
)
def test_what_somebody_did_meanwhile_or_whose_name_is_a_word_is_left_out(text: str) -> None:
    assert said(text) == "barbell back squat 5 at 100 kg"


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("squat 100x5 mia 70x5", "barbell back squat 5 at 100 kg"),
        ("after tom did 140x5 i did squat 100x5", "barbell back squat 5 at 100 kg"),
        ("squat 100x5 terwijl joris 140x5 deed", "barbell back squat 5 at 100 kg"),
        ("squat 100x5 vs my mate's 60x5", "barbell back squat 5 at 100 kg"),
        ("squat 100x5 the neighbour's 60x5", "barbell back squat 5 at 100 kg"),
        ("squat 100x5, 70x5 for tom", "barbell back squat 5 at 100 kg, 5 at 70 kg"),
        ("squat 100x5 (me), 70x5 (tom)", "barbell back squat 5 at 100 kg, 5 at 70 kg"),
        ("squat 100x5 me, 70x5 by tom", "barbell back squat 5 at 100 kg, 5 at 70 kg"),
    ],
)
def test_what_may_be_somebodys_beside_her_sets_is_asked(text: str, meant: str) -> None:
    assert said(text) == f"ask: {meant}"


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("squat 100x5 dan 110x5", "barbell back squat 5 at 100 kg, 5 at 110 kg"),
        ("kniebeuge 100x5 max 110x5", "barbell back squat 5 at 100 kg, 5 at 110 kg"),
        ("squat 100x5, ma ho fatto 110x5", "barbell back squat 5 at 100 kg, 5 at 110 kg"),
        ("la mia panca 60x8", "barbell bench press 8 at 60 kg"),
        ("squat 100x5, 70x5 for fun", "barbell back squat 5 at 100 kg, 5 at 70 kg"),
        ("squat 100x5 but then did 105x5", "barbell back squat 5 at 100 kg, 5 at 105 kg"),
    ],
)
def test_such_words_name_nobody_where_they_are_words(text: str, meant: str) -> None:
    assert said(text) == meant


def test_what_an_unknown_word_is_said_to_have_done_is_quoted() -> None:
    outcome = read("squat 100x5, psyched did 105x5", situation(), KNOWN)

    assert isinstance(outcome, Logged)
    assert [one.text for one in outcome.unread] == ["psyched did 105x5"]


@pytest.mark.parametrize(
    "text",
    [
        "squat 100x5 coach wants 110x5",
        "squat 100x5 my coach wanted 110x5",
        "squat 100x5 coach showed 140x5",
        "squat 100x5 next to a guy doing 180x5",
        "squat 100x5 app says 110x5",
        "squat 100x5 the plan said 110x5",
        "squat 100x5 everyone else did 140x5",
        "squat 100x5 (planned 105x5)",
        "squat 100x5 (usually 110x5)",
        "squat 100x5 was meant to be 105x5",
        "squat 100x5 vs her 60x5",
        "squat 100x5 vs my mate 60x5",
        "squat 100x5 hers was 60x5",
        "squat 100x5 was supposed to be 105x5",
        "squat 100x5 skipped 105x5",
        "kniebeuge 100x5 mein trainer wollte 110x5",
        "sentadilla 100x5 mi entrenador quiere 110x5",
        "squat 100x5 mon coach veut 110x5",
        "squat 100x5 mijn coach wil 110x5",
        "agachamento 100x5 meu treinador quer 110x5",
        "присед 100х5 тренер хочет 110х5",
        "knäböj 100x5 appen säger 110x5",
        "kniebeuge 100x5 (geplant 105x5)",
        "squat 100x5 (prévu 105x5)",
    ],
)
def test_what_was_wanted_planned_or_shown_right_behind_a_set_is_no_set(text: str) -> None:
    assert said(text) == "barbell back squat 5 at 100 kg"


@pytest.mark.parametrize("text", ["squat 100x5 planned 105x5", "squat 100x5 best 110x5", "squat 100x5 usually 110x5"])
def test_what_is_planned_or_the_best_right_behind_a_set_is_asked(text: str) -> None:
    assert said(text) == "ask: barbell back squat 5 at 100 kg"


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("squat 100x5 pb 110x5", "barbell back squat 5 at 100 kg, 5 at 110 kg"),
        ("squat 100x5 video 105x5", "barbell back squat 5 at 100 kg, 5 at 105 kg"),
        ("squat 95x4 my brother spotted me for 97.5x3", "barbell back squat 4 at 95 kg, 3 at 97.5 kg"),
        ("squat 95x4 coach made me do 97.5x3", "barbell back squat 4 at 95 kg, 3 at 97.5 kg"),
        ("squat 100x5 i mean 105x5", "barbell back squat 5 at 105 kg"),
        ("squat 3x5 60 for time", "barbell back squat 3×5 at 60 kg"),
        ("squat 3x5 60, not bad", "barbell back squat 3×5 at 60 kg"),
    ],
)
def test_words_that_make_no_sets_of_others_leave_hers(text: str, meant: str) -> None:
    assert said(text) == meant


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("squat 100x5 en joris 140x5", "barbell back squat 5 at 100 kg"),
        ("przysiad 100x5 i kuba 140x5", "barbell back squat 5 at 100 kg"),
        ("sentadilla 60x5 de mi cliente", "barbell back squat 5 at 60 kg"),
    ],
)
def test_somebody_told_with_little_words_of_other_languages_is_asked_about(text: str, meant: str) -> None:
    assert said(text) == f"ask: {meant}"


@pytest.mark.parametrize(
    "behind",
    [
        "building to 140x1",
        "on the way to 140x1",
        "ready for 105x5",
        "should do 105x5",
        "couldn't 105x5",
        "tried 105x5",
        "equals 115x1",
    ],
)
def test_what_a_set_is_on_the_way_to_is_asked(behind: str) -> None:
    assert said(f"squat 100x5 {behind}") == "ask: barbell back squat 5 at 100 kg"


@pytest.mark.parametrize("between", ["close grip", "without belt", "tried a belt"])
def test_ways_between_two_sets_leave_both(between: str) -> None:
    assert said(f"bench 80x5 {between} 75x5").endswith("5 at 75 kg")
