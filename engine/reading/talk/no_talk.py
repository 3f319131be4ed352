"""Sentences of sets with a remark or two, told by their kinds and words to hold no talk: "bench 3x8 80, felt good".

Most remarks are of this kind, and a pasted workout has one on each line. A sentence is passed here where none of the
rules of talk can reach it; all else is left to those rules.
"""

from __future__ import annotations

from functools import lru_cache

from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook, spoken
from engine.reading.words.pieces import ROLE, Piece, Role, kinds_in_order, places_in, places_of

SET_KINDS = frozenset(
    (K.NAME, K.NUMBER, K.TIMES, K.COMMA, K.AT, K.SLASH, K.COLON, K.THEN, K.AND, K.KG, K.LB, K.EFFORT, K.WARMUP,
     K.WORKING, K.LAST, K.FAILURE, K.REST, K.FILLER, K.NOTE)
)  # fmt: skip
"""Kinds that make no talk by themselves."""
FIXED = frozenset((K.NUMBER, K.TIMES, K.COMMA, K.AT, K.SLASH, K.COLON, K.NAME))
WORDS = SET_KINDS - FIXED
TELLING = ("perhaps", "weighs", "span", "people", "things", "fixture", "heading")
STATES = ("taken", "free")
"""Cues of what numbers count, or of what is on for a day; of a state the first word tells."""


def holds_no_talk(sentence: list[Piece], kinds: set[K]) -> bool:
    """Whether no clause of the sentence, which is of these kinds, can be talk."""
    if not kinds <= SET_KINDS:
        return False
    order = kinds_in_order(sentence)
    told = [spoken(sentence[at].text) for at in places_in(WORDS, order)]
    if not _telling().isdisjoint(told) or _may_tell_how_often(sentence, order, told):
        return False
    return not any([_is_fixture(sentence[at]) for at in places_of(K.NAME, order)])


def _may_tell_how_often(sentence: list[Piece], kinds: list[K], words: list[str]) -> bool:
    """ "3x a week": a word, and no number, behind the "x"."""
    if phrasebook().cues["often"].isdisjoint(words):
        return False
    told_so = places_of(Role.TIMES, list(map(ROLE, sentence)))
    crossed = [*places_of(K.TIMES, kinds), *told_so]
    return not SIGNED.issuperset([kind for at in crossed for kind in kinds[at + 1 : at + 2]])


SIGNED = frozenset((K.NUMBER,))


def _is_fixture(name: Piece) -> bool:
    """ "3 benches": a lift's name in the plural may be what it is done on."""
    return name.end - name.start == len(name.text) + len("es") and f"{name.text}es" in phrasebook().cues["fixture"]


@lru_cache(maxsize=1)
def _telling() -> frozenset[str]:
    cues = phrasebook().cues
    states = {state.split()[0] for cue in STATES for state in cues[cue]}
    return frozenset(states.union(*(cues[cue] for cue in TELLING)))
