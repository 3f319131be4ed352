"""A coach's clients by name."""

from __future__ import annotations

from bot.turn import Turn
from bot.words import person_named
from storage.records import Person


def clients_of(turn: Turn) -> tuple[Person, ...]:
    """Everyone who consented to this coach, by name."""
    links = turn.store.coaching.clients(turn.athlete)
    people = [turn.store.people.get(link.athlete) for link in links]
    return tuple(sorted(people, key=lambda person: person.name.casefold()))


def client_named(turn: Turn, text: str) -> tuple[Person | None, str]:
    """The client whose name the text begins with, and the words behind the name."""
    people = clients_of(turn)
    place = person_named(text, [person.name for person in people])
    if place is None:
        return None, text
    rest = text.strip().split(" ", 1)
    return people[place], rest[1].lstrip(" :") if len(rest) > 1 else ""


def asked_about(turn: Turn, text: str) -> tuple[Person, str]:
    """Whom a question is about, and the other words: a client named first or last in it, else the one who asks."""
    words = text.replace(":", " ").split()
    names = {person.name.casefold(): person for person in clients_of(turn)} if words else {}
    for place in (-1, 0):
        person = names.get(words[place].casefold()) if words else None
        if person is not None:
            rest = words[:-1] if place == -1 else words[1:]
            return person, " ".join(rest)
    return turn.me, text
