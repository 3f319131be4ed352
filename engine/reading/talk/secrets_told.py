"""Passwords and the like, which may be spelt as a lift with its numbers: "the wifi password is bench5x5".

secret = SECRET ... ( IS | "called" | ":" | "@" | "#" ) LIFT       SECRET ... LIFT with its number glued to it
A lift that a word for a password heads otherwise is left to the rules of words that nobody knows.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.cues import CUES_OF, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece

SECRETS = frozenset(("secret",))
NAMING = frozenset((K.COLON, K.AT, K.OTHER_SIGN))


def tells_a_secret(ahead: Sequence[Piece], number: Piece) -> bool:
    """Whether the lift in front of the first number of a clause is what something else is called."""
    name = next((at for at, piece in enumerate(ahead) if piece.kind is K.NAME), 0)
    if not name or not any(is_cued(piece.text, SECRETS) for piece in ahead[:name]):
        return False
    link = ahead[name - 1]
    return number.glued or link.kind in NAMING or not CUES_OF[link.text].isdisjoint(("is", "named"))
