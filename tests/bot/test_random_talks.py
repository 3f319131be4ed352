"""Random talks, seeded: whatever is said, undo restores what stood, redo brings it again, and replies tell the log.

A turn is sets, a correction, an answer, an edit, talk, undo or redo; the wordings are common practice, no source.
"""

from __future__ import annotations

import os
import re
from collections import Counter
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from datetime import date
from random import Random
from typing import Any

import pytest

from engine.catalogue.catalogue import catalogue
from engine.reading import read
from engine.reading.values import Asked, Context, Logged
from engine.values.ids import AthleteId
from engine.values.sets import SetDone
from storage.envelopes import Delivery
from tests.bot.chatting import BEGINNING, MONDAY, Chats, said, texts
from tests.databases import in_memory

TALKS, TURNS = 36 if os.environ.get("CHALKWIRE_TEST_THOROUGH") else 9, 25
KNOWN = catalogue()
LIFTS = ("squat", "bench", "deadlift", "ohp", "lat pulldown", "dips", "pull ups", "leg press", "row", "curl", "press")
SETS = (
    "{lift} {load}x{reps}", "{lift} 3x{reps} {load}", "{lift} {load} {reps} {reps} {less}", "{load}x{reps}", "{reps}",
    "same", "another {reps}", "{lift} 3x{reps} @ {load} rpe 8", "{lift} {load}x{reps}, {other} 3x10 {light}",
    "{lift} {load}x{reps}\n{other} {light}x12\n{other} {light}x10", "yesterday: {lift} {load}x{reps}",
    "{lift} {load}x{reps} knee hurts a bit", "{lift} {reps} {less}", "x2 more", "plank 45s", "{lift} 12x10",
    "{lift} {load}x{reps}, last set to failure", "{lift} {load}kg", "{lift} {load}x{reps} felt heavy",
)  # fmt: skip
CORRECTIONS = (
    "no, {less}", "sorry {load}", "that was {less} not {reps}", "{load} not {light}", "last one was {less}",
    "first two at {load}", "set 2 was {less}", "all at {load}", "only did 2", "4 sets not 3", "that was incline",
    "those were dumbbells", "that was yesterday", "scrap the last set", "delete set 1", "remove the {lift}",
    "the {lift} was {load}", "last set to failure", "that was rpe 9", "lbs not kg", "first one was a warm up",
    "make that {load}", "it was {load}x{less}", "i meant {lift}", "move it to tuesday", "delete that", "2nd was {less}",
)  # fmt: skip
ANSWERS = (
    "barbell", "the dumbbell one", "reps", "the first", "{load}", "cable", "{reps}", "forget it", "yes",
    "seated", "sets", "3 sets of {reps}", "kg",
)  # fmt: skip
TALK = ("phew", "what a day", "queue at the rack again", "knee hurts", "today", "week", "thanks!", "rest 2 min")


@dataclass(frozen=True)
class State:
    """The sets with their days in the order of the log, the words settled by answers, the settings."""

    sets: tuple[tuple[date, SetDone], ...]
    settled: tuple[tuple[str, str], ...]
    settings: Mapping[str, Any]


@dataclass(slots=True)
class Talk:
    """One person's talk."""

    chats: Chats
    dice: Random
    me: AthleteId
    told: list[str] = field(default_factory=list)
    places: list[int] = field(default_factory=list)
    """Where each of her messages stands among all that she sent."""

    def fill(self, words: str) -> str:
        dice = self.dice
        reps = dice.randint(4, 12)
        lift, other = dice.sample(LIFTS, 2)
        load = dice.choice((60, 62.5, 80, 100, 102.5, 17.5))
        light = dice.choice((20, 25, 42.5, 60))
        return words.format(lift=lift, other=other, load=load, light=light, reps=reps, less=reps - 1)

    def turn(self) -> list[Delivery]:
        """What went out because of a deed drawn by lot."""
        deed = self.dice.random()
        bank = SETS if deed < 0.4 or not self.told else CORRECTIONS if deed < 0.65 else ANSWERS if deed < 0.75 else TALK
        if self.told and deed > 0.85:
            return self.edit(self.dice.choice((SETS, SETS, CORRECTIONS, TALK)))
        return self.say(self.fill(self.dice.choice(bank)))

    def say(self, words: str) -> list[Delivery]:
        self.told.append(words)
        out = self.chats.says("ana", words)
        self.places.append(len(self.chats.parties["ana"].messages) - 1)
        return out

    def edit(self, bank: tuple[str, ...]) -> list[Delivery]:
        place = self.dice.randrange(max(0, len(self.told) - 4), len(self.told))
        self.told[place] = self.fill(self.dice.choice(bank))
        return self.chats.edits("ana", self.told[place], self.places[place])

    def edit_to_the_same(self) -> list[Delivery]:
        place = self.dice.randrange(len(self.told))
        return self.chats.edits("ana", self.told[place], self.places[place])

    def state(self) -> State:
        """What such talks change, but the notes, which chat may leave."""
        with self.chats.store() as store:
            records = sorted(store.sets.since(self.me, BEGINNING), key=lambda one: (one.place, one.id))
            sets = tuple((one.on, one.done) for one in records)
            settled = tuple(sorted((one.term, one.answer) for one in store.taught.settled(self.me)))
            return State(sets, settled, dict(store.settings.all(self.me)))


def alike(sets: Iterable[SetDone]) -> Counter[tuple[object, ...]]:
    return Counter(
        (one.exercise, one.reps, one.seconds, _amount(one), one.kind, one.effort, one.failure, one.missed, one.side)
        for one in sets
    )


def _amount(one: SetDone) -> object:
    return str(one.load.amount) + one.load.unit.value if one.load is not None and one.load.amount else ""


def lines_of_sets(deliveries: list[Delivery], heads: tuple[str, ...]) -> list[str]:
    lines = [line for text in texts(deliveries) for line in text.splitlines()]
    return [line.removeprefix(head) for line in lines for head in heads if line.startswith(head)]


def read_back(line: str) -> list[SetDone]:
    bare = re.sub(r" (?:yesterday|tomorrow|[A-Z][a-z]{2} \d+ [A-Z][a-z]{2})$", "", line)
    outcome = read(bare, Context(now=MONDAY.replace(tzinfo=None)), KNOWN)
    if isinstance(outcome, Asked) and len(outcome.readings) == 1:
        return list(outcome.readings[0].sets)  # what nobody would lift or hold is read, and asked about
    assert isinstance(outcome, Logged), line
    assert outcome.sets, line
    return list(outcome.sets)


def assert_told_is_so(out: list[Delivery], before: State, after: State) -> None:
    """What a reply says that was, stood; what it says that is, stands."""
    for line in lines_of_sets(out, ("Was: ",)):
        assert alike(read_back(line)) <= alike(done for _, done in before.sets), line
    for line in lines_of_sets(out, ("Now: ", "Added: ")):
        assert alike(read_back(line)) <= alike(done for _, done in after.sets), line
    words = said(out)
    if any(line.startswith(("Changed.", "Deleted.", "Deleted:")) for line in words.splitlines()):
        assert before.sets != after.sets, words
    if before.sets != after.sets:
        assert any(word in words for word in ("Changed.", "Deleted", "Saved", "Added:", "Undone", "Back again")), words


def assert_undo_is_exact(talk: Talk, steps: list[State]) -> None:
    """Undo goes to where the latest step began, and redo back; pain told last is taken back alone."""
    stands = talk.state()
    out = said(talk.chats.says("ana", "undo"))
    alone = "the pain note" in out or "Left out" in out
    assert talk.state() == (stands if alone else steps[-1]), (talk.told, out)
    if "Left out" not in out:
        talk.chats.says("ana", "redo")
    assert talk.state() == stands, talk.told


def assert_all_can_be_undone_and_redone(talk: Talk, steps: list[State]) -> None:
    states = [*steps, talk.state()]
    if "the pain note" in said(talk.chats.says("ana", "undo")):
        talk.chats.says("ana", "undo")
    for state in reversed(states[1:-1]):
        assert talk.state() == state, talk.told
        talk.chats.says("ana", "undo")
    for state in states[1:]:
        talk.chats.says("ana", "redo")
        assert talk.state() == state, talk.told


@pytest.mark.parametrize("seed", range(TALKS))
def test_in_a_random_talk_undo_and_redo_are_exact_and_replies_agree_with_the_log(seed: int) -> None:
    database = in_memory()
    chats = Chats(database)
    chats.says("ana", "/start", "London", "kg")
    talk = Talk(chats, Random(seed), chats.person("ana").id)
    steps = [talk.state()]
    talk.chats.says("ana", "squat 3x5 100")
    stands = talk.state()
    for _ in range(TURNS):
        stood, out, stands = stands, talk.turn(), talk.state()
        assert_told_is_so(out, stood, stands)
        if "Undone: " in said(out):  # "delete that" behind sets
            assert stands == steps.pop(), talk.told
        elif stands != stood:
            steps.append(stood)
        again = talk.edit_to_the_same()
        assert (talk.state(), again) == (stands, []), talk.told
        if not steps:
            break  # all of the talk was taken back
        assert_undo_is_exact(talk, steps)
    if steps:
        assert_all_can_be_undone_and_redone(talk, steps)
    database.close()
