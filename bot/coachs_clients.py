"""A coach's clients by name."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import replace

from rapidfuzz.distance import OSA

from bot.turn import Turn
from bot.words import behind_name, person_named
from storage.records import Person


def clients_of(turn: Turn) -> tuple[Person, ...]:
    """Everyone who consented to this coach, by name."""
    links = turn.store.coaching.clients(turn.athlete)
    people = told_apart([turn.store.people.get(link.athlete) for link in links])
    return tuple(sorted(people, key=lambda person: person.name.casefold()))


def told_apart(people: Sequence[Person]) -> list[Person]:
    """The same people; where several share a name each has a number behind it, so that none is meant by accident."""
    sharing = Counter(person.name.casefold() for person in people)
    numbers: Counter[str] = Counter()
    named = []
    for person in people:
        name = person.name.casefold()
        numbers[name] += 1
        named.append(replace(person, name=f"{person.name} {numbers[name]}") if sharing[name] > 1 else person)
    return named


def client_named(turn: Turn, text: str) -> tuple[Person | None, str]:
    """The client whose name the text begins with, whole or by a unique beginning, and the words behind the name."""
    people, said = clients_of(turn), text.strip()
    for person in sorted(people, key=lambda one: -len(one.name)):
        if (words := behind_name(said, person.name)) is not None:
            turn.about = person.id
            return person, words
    place = person_named(said, [person.name for person in people])
    if place is None:
        return None, text
    turn.about = people[place].id
    return people[place], said.partition(" ")[2].lstrip(" :")


def client_addressed(turn: Turn, text: str) -> tuple[Person | None, str]:
    """The client whose name the text begins with, in front of a colon (a whole one of a comma), and the words behind.

    A beginning of a name counts from three letters on: "A: bench 80x8" is a coach's own lift A.
    """
    who, colon, words = text.strip().partition(":")
    before, comma, behind = text.strip().lstrip("@").partition(",")
    if comma and before.casefold() in _names(turn):
        who, colon, words = before, comma, behind
    long_enough = len(who.strip()) >= SHORTEST_BEGINNING or who.strip().casefold() in _names(turn)
    client = client_named(turn, who)[0] if colon and long_enough and len(who.split()) <= MOST_WORDS_OF_A_NAME else None
    return (client, words.strip()) if client is not None else (None, text)


SHORTEST_BEGINNING = 3
MOST_WORDS_OF_A_NAME = 3


def _names(turn: Turn) -> frozenset[str]:
    return frozenset(person.name.casefold() for person in clients_of(turn))


def client_behind(turn: Turn, text: str) -> tuple[Person | None, str]:
    """The client whose whole name the text ends with, behind "for", and the words in front: "-1 set squat for ann"."""
    said = text.strip().rstrip(".!")
    for person in sorted(clients_of(turn), key=lambda one: -len(one.name)):
        if said.casefold().endswith(f" for {person.name.casefold()}"):
            turn.about = person.id
            return person, said[: -len(person.name) - len(" for ")].strip()
    return None, text


def client_within(turn: Turn, text: str) -> tuple[Person | None, str]:
    """The only client whose whole name is a word of the text, and the text without it: "what did ann squat"."""
    found = [(person, match) for person in clients_of(turn) if (match := _word(person.name).search(text))]
    if len(found) != 1:
        return None, text
    person, match = found[0]
    turn.about = person.id
    return person, f"{text[: match.start()].rstrip(' @')} {text[match.end() :].lstrip()}".strip()


def clients_amid(turn: Turn, text: str) -> Iterator[tuple[Person, str, str]]:
    """Each client whose whole name is a word of the text, the text in front of it and behind it."""
    for person in clients_of(turn):
        for match in _word(person.name).finditer(text):
            yield person, text[: match.start()].rstrip(" (["), text[match.end() :]


def _word(name: str) -> re.Pattern[str]:
    return re.compile(rf"(?<!\w){re.escape(name)}(?:['’]s)?(?!\w)", re.IGNORECASE)


def client_mistyped(turn: Turn, text: str) -> str:
    """The word in front of a colon that is one slip from a client's name, and nothing else; empty where none is."""
    who, colon, _ = text.strip().partition(":")
    said = who.strip().casefold()
    if not colon or not said.isalpha() or len(said) < SHORTEST_MISTYPED:
        return ""
    return who.strip() if any(OSA.distance(said, name, score_cutoff=1) == 1 for name in _names(turn)) else ""


SHORTEST_MISTYPED = 4


def asked_about(turn: Turn, text: str) -> tuple[Person, str]:
    """Whom a question is about, and the other words: a client named first or last in it, else the one who asks."""
    flat = " ".join(text.replace(":", " ").split())
    for person in sorted(clients_of(turn), key=lambda one: -len(one.name)):
        name, said = person.name.casefold(), flat.casefold()
        if said == name or said.endswith(f" {name}"):
            turn.about = person.id
            return person, flat[: -len(name)].rstrip()
        if said.startswith(f"{name} "):
            turn.about = person.id
            return person, flat[len(name) :].lstrip()
    return turn.me, text
