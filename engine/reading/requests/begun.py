"""Messages that begin as a request and cannot be read as one: never sets, whatever numbers follow.

"bodyweight 1e309", "pause until 30 feb": what the request needs is said instead.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.prepare import Prepared
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import MOST_WORDS_OF_A_PHRASE, phrasebook, spoken_words
from engine.reading.words.pieces import Role, is_one_word

NEEDS = {
    "bodyweight": "a body weight needs one number, for instance: bodyweight 80.5",
    "weighed": "a body weight needs its unit or a word, for instance: bodyweight 80.5",
    "pause": "a pause needs a day it goes from or until, or a length: pause until 24 june, pause 2 weeks from monday",
    "remind": "a reminder needs a time, for instance: remind me at 18:00",
    "snooze": "snooze needs a time, for instance: snooze 20 min",
    "volume": "volume takes a muscle or a week, for instance: volume chest, volume last week",
    "rest": "a rest takes one length, for instance: rest 2 min",
    "skip": "today's session or lifts of it can be left out on the day itself: skip today, skip squat",
    "quiet": "quiet hours need two times, for instance: quiet 22:00 7:30",
}
ALSO_SETS = frozenset(("bw", "back on", "back in"))
"""Beginnings of a request that sets begin with, too: "bw 12 10 8"."""
SETS_TOLD = frozenset((K.NAME, K.TIMES))


def begun_request(prepared: Prepared) -> str:
    """What the request that the message begins needs; empty where it begins none."""
    if prepared.told & SETS_TOLD or prepared.told.isdisjoint(NUMBERS_AND_DAYS):
        return ""
    if _is_a_rest(prepared):
        return NEEDS["rest"]
    words = [word for word, _ in spoken_words(prepared.tokens[: MOST_WORDS_OF_A_PHRASE + 1])]
    intent = _begun(words)
    if not intent or not _may_be(intent, words, prepared):
        return ""
    numbers = sum(piece.kind is K.NUMBER for piece in prepared.spoken)
    if intent == "weighed" and not (len(prepared.spoken) <= MOST_OF_AN_AGE and prepared.spoken[-1].kind is K.NUMBER):
        return ""
    return NEEDS[intent] if intent not in ("bodyweight", "weighed") or numbers == 1 else ""


def _is_a_rest(prepared: Prepared) -> bool:
    """ "rested 5", "pausa 3": a word for resting and a number, and nothing else."""
    if K.REST not in prepared.told or not prepared.told <= OF_A_REST or prepared.spoken[0].kind is not K.REST:
        return False
    numbers = [piece for piece in prepared.spoken if piece.kind is K.NUMBER]
    if K.AND in prepared.told and is_cued(prepared.spoken[0].text, BETWEEN):
        return False  # "between 7 and 9"
    bare = all(piece.role is Role.BARE and piece.value <= LONGEST_REST for piece in numbers)
    return 0 < len(numbers) <= MOST_OF_A_REST and bare and K.COMMA not in prepared.told


def _may_be(intent: str, words: Sequence[str], prepared: Prepared) -> bool:
    """Whether such a request may be meant, where its beginning begins other messages as well."""
    numbers = sum(piece.kind is K.NUMBER for piece in prepared.spoken)
    match intent:
        case "pause":
            of_a_rep = prepared.spoken[0].kind is K.PAUSE and not is_one_word(prepared.spoken[0])
            return not of_a_rep and (numbers > 0 or len(words) >= LEAST_OF_A_PAUSE)  # "pause at the bottom"
        case "skip":
            return words[0] in phrasebook().cues["leftout"] and not prepared.told.isdisjoint(DAYS)
        case "rest":
            return 0 < numbers <= MOST_OF_A_REST and prepared.told <= OF_A_REST
        case _:
            return numbers > 0


DAYS = frozenset((K.WEEKDAY, K.TOMORROW, K.FUTURE, K.NOT_DATE, K.TODAY))
BETWEEN = frozenset(("between",))
MOST_OF_A_REST = 2
LONGEST_REST = 10
"""Minutes, told without their unit. Common practice, no source."""
OF_A_REST = frozenset((K.REST, K.NUMBER, K.COMMA, K.DASH, K.HALF, K.FILLER, K.FOR, K.SLASH, K.AND))
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
