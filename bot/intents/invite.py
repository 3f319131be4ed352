"""invite: a code that links one athlete, with her consent."""

from __future__ import annotations

import hashlib
import string

from bot.replies.coaching import invited
from bot.turn import Turn
from engine.reading.values import Act
from storage.records import Role

LETTERS = string.ascii_letters + string.digits
LENGTH = 12


def invite(turn: Turn, act: Act) -> None:
    """Nothing; the code is said, and the person is a coach from now on."""
    turn.store.people.set_roles(turn.athlete, sorted({*turn.me.roles, Role.COACH}, key=lambda role: role.value))
    code = invitation_code(turn.memory.secret, turn.athlete, turn.event)
    turn.store.coaching.invite(turn.athlete, code, turn.at)
    turn.say(invited(code))


def invitation_code(secret: bytes, coach: int, event: int) -> str:
    """A code nobody can guess; the same message gives the same code, so a redelivery changes nothing."""
    digest = hashlib.blake2b(f"{coach}:{event}".encode(), key=secret, digest_size=LENGTH).digest()
    return "".join(LETTERS[byte % len(LETTERS)] for byte in digest)
