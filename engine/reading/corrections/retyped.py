"""A load typed with a digit twice or its point left out, and typed once more: 288 kg, then "28kg lol"."""

from __future__ import annotations

from decimal import Decimal

from engine.reading.corrections.correcting import Told
from engine.reading.latest_sets import latest_of_it
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role
from engine.values.load import plain
from engine.values.sets import SetDone

FAR_OFF = 3
"""How many times the load typed again the load that stands must be. Common practice, no source."""
LEAST_OF_A_LOAD, FAR_FROM_REPS = 20, 2
"""A bare number is such a load from 20 on and above twice the reps told. Common practice, no source."""
BESIDE = frozenset((K.NUMBER, K.KG, K.LB, K.FILLER, K.STOP, K.COMMA, K.DASH, K.AT))


def is_load_retyped(number: Piece, done: SetDone) -> bool:
    """Whether the number is the load of the set with the slip in it put right; a bare one must be unlikely as reps."""
    old = done.load
    if old is None or number.value <= 0 or old.amount < FAR_OFF * number.value:
        return False
    bare = number.role is Role.BARE
    if bare and (number.value < LEAST_OF_A_LOAD or number.value <= FAR_FROM_REPS * done.reps):
        return False
    typed, again = _digits(old.amount), _digits(number.value)
    if "." in str(number.value) and typed == again:
        return True
    twice = (at for at in range(len(typed) - 1) if typed[at] == typed[at + 1] != ZERO)
    return any(typed[:at] + typed[at + 1 :] == again for at in twice)


def is_retyped_alone(told: Told) -> bool:
    """Whether the message is such a load with its unit, and no more: no set is told by a load alone."""
    numbers = told.numbers()
    if len(numbers) != 1 or numbers[0].role is not Role.LOAD or not told.kinds() <= BESIDE:
        return False
    return all(is_load_retyped(numbers[0], record.done) for record in latest_of_it(told.context))


ZERO = "0"
"""100 may well be followed by 10."""


def _digits(amount: Decimal) -> str:
    return plain(amount).replace(".", "")
