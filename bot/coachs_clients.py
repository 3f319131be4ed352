"""A coach's clients by name."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import replace

from bot.turn import Turn
from bot.words import person_named
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
        behind = said[len(person.name) :]
        if said.casefold().startswith(person.name.casefold()) and not behind[:1].isalnum():
            turn.about = person.id
            return person, behind.lstrip(" :,")
    place = person_named(said, [person.name for person in people])
    if place is None:
        return None, text
    turn.about = people[place].id
    return people[place], said.partition(" ")[2].lstrip(" :")


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
