"""Messages that begin as a request and cannot be read as one: never sets, whatever numbers follow.

"bodyweight 1e309", "pause until 30 feb": what the request needs is said instead.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.prepare import Prepared
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import MOST_WORDS_OF_A_PHRASE, phrasebook, spoken_words

NEEDS = {
    "bodyweight": "a body weight needs one number, for instance: bodyweight 80.5",
    "weighed": "a body weight needs its unit or a word, for instance: bodyweight 80.5",
    "pause": "a pause needs one day ahead or one length, for instance: pause until 24 june, pause 2 weeks from monday",
    "remind": "a reminder needs a time, for instance: remind me at 18:00",
    "snooze": "snooze needs a time, for instance: snooze 20 min",
    "volume": "volume takes a muscle or a week, for instance: volume chest, volume last week",
    "quiet": "quiet hours need two times, for instance: quiet 22:00 7:30",
}
ALSO_SETS = frozenset(("bw", "back on", "back in"))
"""Beginnings of a request that sets begin with, too: "bw 12 10 8"."""
SETS_TOLD = frozenset((K.NAME, K.TIMES))


def begun_request(prepared: Prepared) -> str:
    """What the request that the message begins needs; empty where it begins none."""
    if prepared.told & SETS_TOLD or prepared.told.isdisjoint(NUMBERS_AND_DAYS):
        return ""
    words = [word for word, _ in spoken_words(prepared.tokens[: MOST_WORDS_OF_A_PHRASE + 1])]
    intent = _begun(words)
    if not intent or (K.NUMBER not in prepared.told and (intent != "pause" or len(words) < LEAST_OF_A_PAUSE)):
        return ""
    numbers = sum(piece.kind is K.NUMBER for piece in prepared.spoken)
    if intent == "weighed" and not (len(prepared.spoken) <= MOST_OF_AN_AGE and prepared.spoken[-1].kind is K.NUMBER):
        return ""
    return NEEDS[intent] if intent not in ("bodyweight", "weighed") or numbers == 1 else ""


NUMBERS_AND_DAYS = frozenset((K.NUMBER, K.PAUSE, K.REST, K.NOT_DATE, K.WEEKDAY, K.TOMORROW, K.FUTURE))
LEAST_OF_A_PAUSE = 3
"""Words: "pause until easter" asks for a pause, "back squats" for none."""
MOST_OF_AN_AGE = 3
""" "i am 30": pieces."""


def _begun(words: Sequence[str]) -> str:
    book = phrasebook()
    if not words or words[0] not in book.openers:
        return ""
    for length in range(min(MOST_WORDS_OF_A_PHRASE, len(words)), 0, -1):
        head = " ".join(words[:length])
        named = next((intent for intent in book.heads.get(head, ()) if intent in NEEDS), "")
        if named == "volume" and length > 1:
            continue  # "sets for 8" may tell of sets
        if named and head not in ALSO_SETS:
            return named
    return ""
