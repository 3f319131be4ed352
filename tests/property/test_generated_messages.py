"""A few of the messages that `tests/bench/reading_fuzz.py` reads by the million: none of them raises."""

from __future__ import annotations

import os
from dataclasses import replace
from itertools import islice
from random import Random

import pytest

from engine.catalogue.catalogue import catalogue
from engine.reading import read
from engine.reading.chunks.chunker import Chunker
from engine.reading.chunks.chunks import Chunk, Chunks
from engine.reading.entries.segments import entries
from engine.reading.prepare import prepare
from engine.reading.requests.requests import asked_for, is_plainly_sets
from engine.reading.talk import talk
from engine.reading.values import Asked, Context, Correction, Logged, NoSets
from engine.reading.weighing import candidates, deciding
from engine.reading.words.phrasebook import phrasebook
from engine.reading.words.pieces import Piece
from tests.bench.generated_messages import messages

KNOWN = catalogue()
LONGEST_LINE = 200
MESSAGES = 5_000 if os.environ.get("CHALKWIRE_TEST_THOROUGH") else 500
AFTER_SETS = next(context for _, context in messages(1) if context.recent)


@pytest.mark.parametrize("seed", range(4))
def test_no_generated_message_raises(seed):
    outcomes = {type(read(text, context, KNOWN)) for text, context in islice(messages(seed), 500)}

    assert outcomes >= {Logged, Asked, NoSets}


def test_one_seed_gives_the_same_messages_again():
    assert list(islice(messages(3), 50)) == list(islice(messages(3), 50))


@pytest.mark.parametrize(
    "text", ["12", "first", "squat", "17.5 kg", "delete the squat", "set 2 was 6", "4 on the\nlast"]
)
def test_a_line_end_around_a_message_behind_sets_changes_nothing(text):
    context = replace(AFTER_SETS, plan=())

    assert read(f"{text}\n", context, KNOWN) == read(text, context, KNOWN)


@pytest.mark.parametrize("text", ["\n12", "\u2028squat", "first\n\n"])
def test_a_line_end_alone_points_at_no_set(text):
    assert not isinstance(read(text, AFTER_SETS, KNOWN), Correction)


CORRECTIONS = """
the 60x8 felt heavy|that 100x5 was a warm up|first one 70 the rest 80|62.5 not 60 and 7 not 8|no not yesterday but today
last two of the squats were 4|delete the last rep of the squat|move the squat to tuesday and the row to friday
squat 5 per leg each|bench with a close grip 60x8 as heavy as last time|it was dumbbells 25 each|set 2 was 7 reps not 8
"""


@pytest.mark.parametrize("text", [text for line in CORRECTIONS.strip().splitlines() for text in line.split("|")])
def test_a_line_end_at_any_place_of_a_correction_raises_nothing(text):
    words = text.split()
    broken = [" ".join(words[:at]) + "\n" + " ".join(words[at:]) for at in range(len(words) + 1)]

    assert all(read(told, AFTER_SETS, KNOWN) is not None for told in broken)


@pytest.mark.parametrize(
    "text",
    [
        "in the999999x999999 tank٣x٤ \u200bx +20 ①- ",
        "it was 7 not 8, 💪, and only 2 sets",
        "it was 7 not 8 (\ufe0f) and it was 80",
        "that was incline, 💪, yesterday",
    ],
)
def test_signs_and_clauses_without_letters_amid_a_correction_raise_nothing(text):
    assert read(text, AFTER_SETS, KNOWN) is not None


def test_the_messages_are_read_against_sets_that_stand_and_against_none():
    known = [context for _, context in islice(messages(2), 50)]

    assert Context() in known
    assert any(context.recent for context in known)


@pytest.mark.parametrize("seed", range(4))
def test_what_is_passed_over_as_plain_sets_asks_for_nothing(seed):
    plain = 0
    for text, context in islice(messages(seed), 500):
        prepared = prepare(text, context, KNOWN)
        if prepared.spoken and is_plainly_sets(prepared.spoken, prepared.told, phrasebook()):
            plain += 1

            assert asked_for(prepared, context, KNOWN) is None, text
    assert plain > 50


class Thorough(Chunker):
    """A walk that takes no number for plain."""

    def _plain(self, first: Piece) -> bool:
        return False


@pytest.mark.parametrize("seed", range(4))
def test_numbers_taken_for_plain_are_gathered_as_by_the_whole_grammar(seed):
    plain = 0
    for text, context in islice(messages(seed), 500):
        for entry in entries(prepare(text, context, KNOWN).pieces):
            short, long = Chunker(list(entry.pieces)).run(), Thorough(list(entry.pieces)).run()
            plain += len(short.found)

            assert _as_told(short) == _as_told(long), text
    assert plain > 500


def _as_told(chunks: Chunks) -> dict[str, object]:
    return {**vars(chunks), "found": [{**vars(Chunk), **vars(chunk)} for chunk in chunks.found]}


@pytest.mark.parametrize("seed", range(4))
def test_sets_taken_for_plain_are_those_of_the_whole_grammar(seed, monkeypatch):
    lines = [(text, context) for text, context in islice(messages(seed), MESSAGES) if len(text) < LONGEST_LINE]
    short = [read(text, context, KNOWN) for text, context in lines]
    taken = []
    monkeypatch.setattr(candidates, "plain_groups", lambda chunks, *others: taken.append(chunks))
    monkeypatch.setattr(deciding, "plain_numbers", lambda pieces: None)
    long = [read(text, context, KNOWN) for text, context in lines]

    assert len(taken) > MESSAGES // 3
    for (text, _), one, other in zip(lines, short, long, strict=True):
        assert one == other, text


LIFTS = ("squat", "db bench", "lat raise", "curl", "pull ups", "bulgarian split squat", "goblet squat", "leg press")
LOADS = ("60", "32.5", "24", "20kg", "135lb", "30s", "12s", "+10", "-20", "8", "2.5")
REPS = ("3", "5", "8", "10", "12", "31", "7.5", "0")
BEHIND = ("", "", " felt heavy", ", easy", " @8", " @7 grindy", " 3010", "%", " short", ", then")
LISTING = (" ", ", ", ",", "/", " / ", "\n")
FORMS = (
    "{s}x{r} {l}",
    "{l} {s}x{r}",
    "{s}x{r} @ {l}",
    "{s}x{r} at {l}",
    "{l}x{r}x{s}",
    "{s}x{r}x{l}",
    "2x{l} {s}x{r}",
    "{l} {r}{j}{r}{j}{q}",
    "{l}{j}{r}{j}{q}{j}{r}",
    "{l}x{r}{j}{q}{j}{q}",
    "{r}{j}{q}{j}{r}",
    "{l}x{r}{j}{m}x{q}",
    "{r}x{l}{j}{q}x{m}",
    "{r}@{l}{j}{q}@{m}",
    "{l}x{r}, {l} felt good",
)


@pytest.mark.parametrize("form", FORMS)
def test_each_form_of_plain_numbers_comes_to_the_sets_of_the_whole_grammar(form, monkeypatch):
    dice, contexts = Random(form), [context for _, context in islice(messages(1), 20)]
    lines = [
        (f"{dice.choice(LIFTS)} {told}{dice.choice(BEHIND)}", dice.choice(contexts))
        for told in (_told(dice, form) for _ in range(150))
    ]
    short = [read(text, context, KNOWN) for text, context in lines]
    monkeypatch.setattr(candidates, "plain_groups", lambda *chunks: None)
    monkeypatch.setattr(deciding, "plain_numbers", lambda pieces: None)

    for (text, context), one in zip(lines, short, strict=True):
        assert one == read(text, context, KNOWN), text


@pytest.mark.parametrize("listed", ["60, 25, 20, 15", "60 25 20 15", "60/25/20/15", "60,25,20,15"])
def test_a_number_that_is_the_sum_of_those_behind_it_is_asked_about_in_every_form(listed):
    assert isinstance(read(f"push ups {listed}", Context(), KNOWN), Asked)


def _told(dice: Random, form: str) -> str:
    loads, reps = dice.choices(LOADS, k=2), dice.choices(REPS, k=2)
    return form.format(s=dice.choice("1235"), l=loads[0], m=loads[1], r=reps[0], q=reps[1], j=dice.choice(LISTING))


@pytest.mark.parametrize("seed", range(4))
def test_sentences_passed_as_no_talk_hold_none(seed, monkeypatch):
    told = [prepare(text, context, KNOWN).pieces for text, context in islice(messages(seed), MESSAGES)]
    short = [talk.without_talk(pieces) for pieces in told]
    cut = []
    monkeypatch.setattr(talk, "holds_no_talk", lambda sentence, *others: cut.append(sentence))
    long = [talk.without_talk(pieces) for pieces in told]

    assert len(cut) > MESSAGES // 3
    assert short == long
