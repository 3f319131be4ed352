"""What she weighs, told as a request is: "bodyweight 81.4", "i am 81 kg", "peso 81 kg"."""

from __future__ import annotations

import re
from dataclasses import replace

from engine.reading.prepare import Prepared
from engine.reading.requests.said import Said
from engine.reading.values import Act
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook, spoken_words
from engine.reading.words.pieces import Role


def bodyweight(said: Said) -> Act | None:
    """The one number behind a word that says what it is."""
    numbers = said.numbers()
    if len(numbers) == 2 and DECIMAL_COMMA.search(said.rest):
        numbers = numbers[:1]  # "81,4" is one number: nobody has two weights
    if len(numbers) != 1 or numbers[0].role not in (Role.BARE, Role.LOAD) or not 30 <= numbers[0].value <= 700:
        return None
    others = [piece for piece in said.pieces if piece.kind not in BESIDE_A_WEIGHT]
    if others or (said.rest_words and not said.rest_words[0][0].isdigit() and len(said.rest_words) > 3):
        return None
    return Act("bodyweight", text=said.rest)


DECIMAL_COMMA = re.compile(r"\d,\d{1,2}\b")
BESIDE_A_WEIGHT = frozenset((K.NUMBER, K.TODAY, K.FILLER, K.COLON, K.KG, K.LB, K.STOP, K.COMMA))


def weighed(said: Said) -> Act | None:
    """ "i am 81 kg"; without a unit it may be an age."""
    told = bodyweight(said)
    united = any(piece.unit is not None for piece in said.numbers())
    return replace(told, name="bodyweight") if told is not None and united else None


def weight(said: Said) -> Act | None:
    """ "peso 81 kg", "waga 81,4": what she weighs, where no lift is on whose load it may be; 81.4 is no load."""
    told = bodyweight(said)
    number = next(iter(said.numbers()), None)
    if told is None or number is None:
        return None
    of_no_lift = number.unit is not None and said.context.doing is None
    return replace(told, name="bodyweight") if of_no_lift or _is_no_load(said) else None


def _is_no_load(said: Said) -> bool:
    """Whether no plates make this number: its last decimal is none of a quarter."""
    found = DECIMAL.search(said.rest)
    return found is not None and found[1] not in QUARTERS


DECIMAL = re.compile(r"\d[.,](\d{1,2})\b")
QUARTERS = frozenset(("0", "00", "25", "5", "50", "75"))


def tells_a_change_of_weight(prepared: Prepared) -> bool:
    """ "dropped 10 kilos", "5 kilo abgenommen": one number with a unit, a word of losing or gaining, and no lift."""
    numbers = [piece for piece in prepared.pieces if piece.kind is K.NUMBER]
    if len(numbers) != 1 or numbers[0].role is not Role.LOAD or not prepared.told.isdisjoint(SET_WORDS):
        return False
    words = [word for word, _ in spoken_words(prepared.tokens)]
    changes = phrasebook().cues["weightchange"]
    return any(" ".join(words[at : at + length]) in changes for at in range(len(words)) for length in (1, 2))


SET_WORDS = frozenset((K.NAME, K.TIMES, K.REPS, K.SETS, K.COUNT, K.SAME, K.ANOTHER, K.MORE))
