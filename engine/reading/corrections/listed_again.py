"""The reps of all sets listed once more: "well, 5 5 4", "more like 5 5 4", "5 5 4 in the end", "reps: 5 5 4"."""

from __future__ import annotations

from engine.reading.corrections.correcting import Told, cue_at
from engine.reading.latest_sets import latest_of_it
from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import spoken
from engine.reading.words.pieces import MOST_LOADED_REPS, Piece, Role


def is_listed_again(told: Told) -> bool:
    """ "well, 5 5 4", "5 5 4 in the end", "reps: 5 5 4": as many reps as the latest message had sets."""
    numbers, latest = told.numbers(), latest_of_it(told.context)
    cues = told.book.cues["relisted"]
    heads = [length for at in range(2) if (length := cue_at(told.words, at, cues))]
    tails = [length for length in (3, 2, 1) if cue_at(told.words, len(told.words) - length, cues) == length]
    known = {word for said in cues for word in said.split()}
    plain = all(piece.kind in LISTING or known.issuperset(told_words(piece)) for piece in told.pieces)
    headed = told.pieces[0].kind is K.EQUALS
    headed = headed or ("repword" in CUES_OF[told.words[0]] and numbers[:1] == told.pieces[:1])
    counted = all(number.role in (Role.BARE, Role.REPS) and number.value <= MOST_LOADED_REPS for number in numbers)
    return len(numbers) == len(latest) > 1 and plain and counted and bool(headed or heads or tails)


LISTING = frozenset((K.NUMBER, K.FILLER, K.COMMA, K.STOP, K.NOTE, K.SLASH, K.DASH, K.REPS, K.COLON, K.EQUALS))


def told_words(piece: Piece) -> list[str]:
    return [spoken(word) for word in piece.text.split()]
