"""A load of one end of a ramp, told behind sets that were counted together: "5x5 up to 100", "top set 100", "from 60".

end = sets "x" reps ... RAMP [ "at" | "to" | "set" ] LOAD          RAMP: a cue of the language files
At which loads the others were done nobody can say: it is asked. "3x5 100, top set 110x1" tells a set of its own.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.cues import CUES_OF, cues_told
from engine.reading.words.kinds import K
from engine.reading.words.pieces import (
    MOST_LOADED_REPS,
    MOST_SETS,
    Piece,
    Role,
    kinds_in_order,
    places_of,
    texts_in_order,
)

BETWEEN = frozenset((K.FILLER, K.WITH, K.AT, K.SETS, K.COLON))
RAMP = "ramp"
GOES_ON = frozenset((K.TIMES, K.FOR, K.NUMBER))


def tells_one_end(pieces: Sequence[Piece], kinds: Sequence[K | None]) -> bool:
    """Whether such a load stands among these pieces, which are of these kinds, behind a group."""
    return RAMP in cues_told(texts_in_order(pieces)) and _told_behind_a_group(pieces, kinds)


def _told_behind_a_group(pieces: Sequence[Piece], kinds: Sequence[K | None]) -> bool:
    if K.COMMA in kinds:  # "5,5,5,3,1 up to 120"
        told = [piece for piece in pieces if piece.kind is not K.COMMA]
        return _told_behind_a_group(told, [*kinds_in_order(told), None])
    crossed = [at for at in places_of(K.TIMES, kinds) if _counts_sets(pieces, kinds, at)]
    listed = [at for at in places_of(K.NUMBER, kinds) if _ends_a_run(pieces, kinds, at)]
    group = min((*crossed, *listed), default=len(pieces))
    return any(_is_an_end(pieces, kinds, at) for at in places_of(K.NUMBER, kinds) if at > group + 1)


def _ends_a_run(pieces: Sequence[Piece], kinds: Sequence[K | None], at: int) -> bool:
    """ "5 5 5": the last of several reps."""
    run = pieces[max(0, at + 1 - LEAST_OF_A_RUN) : at + 1]
    told = len(run) == LEAST_OF_A_RUN and set(kinds[at + 1 - LEAST_OF_A_RUN : at + 1]) == {K.NUMBER}
    return told and all(one.role is Role.BARE and one.value <= MOST_LOADED_REPS for one in run)


LEAST_OF_A_RUN = 3


def _counts_sets(pieces: Sequence[Piece], kinds: Sequence[K | None], at: int) -> bool:
    sets = pieces[at - 1] if at and kinds[at - 1] is K.NUMBER else None
    return sets is not None and sets.role in (Role.BARE, Role.SETS) and 1 < sets.value <= MOST_SETS


def _is_an_end(pieces: Sequence[Piece], kinds: Sequence[K | None], at: int) -> bool:
    load = pieces[at]
    heavy = load.role is Role.LOAD or (load.role is Role.BARE and load.value > MOST_LOADED_REPS)
    if not heavy or kinds[at + 1] in GOES_ON:
        return False
    back = at - 1
    while kinds[back] in BETWEEN and RAMP not in CUES_OF[pieces[back].text]:
        back -= 1
    return RAMP in CUES_OF[pieces[back].text]
