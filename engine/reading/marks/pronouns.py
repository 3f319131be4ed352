"""Words that are "he" in one language and something else in another: Italian "il petto", Dutch "er zat", Spanish "he".

he = "il" VERB | "er", not ahead of a word that only follows the Dutch one | "he", not ahead of a participle
monday = "mon", not ahead of a lift that only French names so, "mon développé couché", nor of what hurts: "mon genou",
         Italian "mi fa male", nor of the last set: Spanish "mi última serie"
The word itself is a cue of the other language: "article" with what must follow it for a person, and so on.
"""

from __future__ import annotations

from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook, spoken
from engine.reading.words.pieces import Piece, is_one_word, kinds_in_order, places_in

OF_TWO_LANGUAGES = frozenset((K.OTHERS, K.WEEKDAY))
TWO_SENSES = frozenset(("hearticle", "hethere", "hehave", "mymonday"))
OF_HER_BODY = frozenset((K.JOINT, K.MUSCLE, K.PAIN))
VERBS = frozenset(("theydo", "auxthey", "hedoes"))


def with_pronouns_settled(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with such words as little words where they speak of nobody."""
    out = pieces
    for at in places_in(OF_TWO_LANGUAGES, kinds_in_order(pieces)[:-1]):
        cues = CUES_OF[pieces[at].text]
        if not cues.isdisjoint(TWO_SENSES) and is_one_word(pieces[at]) and _is_nobody(cues, pieces[at + 1]):
            out = [*out[:at], out[at]._replace(kind=K.FILLER), *out[at + 1 :]]
    return out


def _is_nobody(cues: frozenset[str], after: Piece) -> bool:
    if "mymonday" in cues:
        if after.kind in OF_HER_BODY or after.kind is K.LAST:
            return True
        return after.kind is K.NAME and "mylift" in CUES_OF[after.text.split()[0]]
    if "hearticle" in cues:
        return after.kind is not K.NUMBER and VERBS.isdisjoint(CUES_OF[after.text])
    if "hethere" in cues:
        return "behindthere" in CUES_OF[after.text]
    return spoken(after.text).endswith(_participle_ends())


def _participle_ends() -> tuple[str, ...]:
    return tuple(phrasebook().cues["participleends"])
