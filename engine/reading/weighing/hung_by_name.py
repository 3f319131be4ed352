"""What the name of an exercise says of weight on the body: "weighted dips", "tractions lestées", "assisted pull up"."""

from __future__ import annotations

from engine.reading.marks.weight_hung import HUNG, OFF
from engine.reading.words.cues import is_cued
from engine.reading.words.kept import Kept
from engine.reading.words.kinds import K
from engine.reading.words.lexicon import lexicon, plain_word


def _hung_by(phrase: str) -> frozenset[K]:
    meant = lexicon().phrases
    told = [meant.get(plain_word(word)) for word in phrase.split() if not is_cued(word, OFF)]
    return HUNG.intersection([one.kind for one in told if one is not None])


HUNG_BY = Kept(_hung_by)
"""Which of `K.ADDED` and `K.ASSISTED` a name says."""
