"""What became of a group, told behind it in other words: "3x8 40, well, 8 8 5", "3x8 40, actually 8 8 5".

told = SETS "x" REPS LOAD WORDS reps reps ...       as many reps as sets, none of them more than was said at first
The words are cues of the language files ("relisted", "slip", "mean"); the reps are put in brackets, as results are.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook, spoken
from engine.reading.words.pieces import Piece, Role, kinds_in_order, places_of

SAYING = ("relisted", "slip", "mean")
WORDY = frozenset((K.COMMA, K.FILLER, K.PLAIN, K.THEN, K.DASH, K.FOR, K.NOTE, K.STOP))
TURNING = frozenset(("or", "but", "so"))
LOADED = frozenset((K.AT, K.WITH))
ENDS = frozenset((None, K.COMMA, K.STOP, K.LINE, K.FILLER, K.NOTE, K.PLAIN, K.EFFORT))
LONGEST, MOST_SETS = 5, 10
SIGNS = ",;.-–—"


def with_results_relisted(pieces: list[Piece], cleaned: str) -> list[Piece]:
    """The pieces, with the reps that tell a group before them once more in brackets."""
    for at in places_of(K.TIMES, kinds_in_order(pieces)):
        behind = _behind_a_group(pieces, at)
        start = _behind_words(pieces, behind, cleaned) if behind else 0
        if start and _are_its_reps(pieces, at, start):
            end = start + int(pieces[at - 1].value)
            first, last = pieces[start], pieces[end - 1]
            opens = first._replace(kind=K.OPEN, text="(", end=first.start)
            closes = last._replace(kind=K.CLOSE, text=")", start=last.end)
            return [*pieces[:behind], opens, *pieces[start:end], closes, *pieces[end:]]
    return pieces


def _behind_a_group(pieces: Sequence[Piece], at: int) -> int:
    """The place behind "3x8 40", "40 3x8" or "3x8 at 40"; 0 where no such group stands there."""
    numbers = kind_at(pieces, at - 1) is K.NUMBER and kind_at(pieces, at + 1) is K.NUMBER
    if not numbers or not 1 < pieces[at - 1].value <= MOST_SETS:
        return 0
    behind = at + 2
    if kind_at(pieces, behind) in LOADED and kind_at(pieces, behind + 1) is K.NUMBER:
        return behind + 2
    if kind_at(pieces, behind) is K.NUMBER:
        return behind + 1
    return behind if kind_at(pieces, at - 2) is K.NUMBER else 0


def _behind_words(pieces: Sequence[Piece], at: int, cleaned: str) -> int:
    """The place behind words that tell it otherwise; 0 where others stand there."""
    end = at
    while kind_at(pieces, end) in WORDY and end - at < LONGEST:
        end += 1
    if end == at or kind_at(pieces, end) is not K.NUMBER:
        return 0
    said = cleaned[pieces[at].start : pieces[end].start].translate(str.maketrans(SIGNS, " " * len(SIGNS))).split()
    words = [spoken(word) for word in said]
    cues = phrasebook().cues
    words = words[1:] if words and is_cued(words[0], TURNING) else words  # "or rather"
    return end if words and any(" ".join(words) in cues[cue] for cue in SAYING) else 0


def _are_its_reps(pieces: Sequence[Piece], at: int, start: int) -> bool:
    sets, reps = int(pieces[at - 1].value), pieces[at + 1].value
    told = pieces[start : start + sets]
    if len(told) < sets or any(one.kind is not K.NUMBER or one.role is not Role.BARE for one in told):
        return False
    fewer = all(0 < one.value <= reps for one in told) and any(one.value < reps for one in told)
    return fewer and kind_at(pieces, start + sets) in ENDS
