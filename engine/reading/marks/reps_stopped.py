"""A rep or a load that was not made, told by how it ended: "190x2, third died at the knee", "pinned on the fifth".

stopped = ( ORDINAL | "last rep" | "rep" NUMBER ) [ little words ] ENDED   as "missed the third" is
        | ENDED [ little words ] ( ORDINAL | "last" | NUMBER )                "stuck on 6", where five were made
        | LOAD ENDED [ where ]                                              "140x3, 150 died on my chest"
The words of `ENDED` are misses only there; anywhere else they tell what the day was like.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import LAST_OF_THE_REPS, MOST_LOADED_REPS, Piece, Role, kinds_in_order, places_in

ENDED = frozenset(("repended",))
MAY_END = frozenset((K.PLAIN, K.NOTE, K.MISS, K.FILLER))
LITTLE = frozenset((K.FILLER, K.ONLY, K.GOT, K.REPS, K.AND))
WHERE = frozenset((K.FILLER, K.AT, K.WITH, K.REPS, K.SETTING, K.JOINT, K.MUSCLE, K.NOTE))
PARTING = frozenset((K.COMMA, K.STOP, K.LINE, K.THEN, K.AND, K.DASH, K.OPEN, K.CLOSE))
AHEAD_OF_IT = PARTING | {K.NUMBER, K.COUNT, K.KG, K.LB, K.REPS, K.FILLER, K.GOT, K.ONLY, K.EFFORT}
""" "legs died on the third" and "phone died" are of something else."""
REACH = 6
"""Pieces between a rep and the word for its end. Common practice, no source."""
HOW, STILL_MADE = frozenset(("howmissed",)), frozenset(("stillmade",))


def with_reps_stopped(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with such words made misses, and each ahead of the rep that it is told of."""
    if not any([_tells_an_end(pieces[at]) for at in places_in(MAY_END, kinds_in_order(pieces))]):
        return pieces
    out: list[Piece] = []
    for at, piece in enumerate(pieces):
        if piece.kind not in MAY_END or not _tells_an_end(piece):
            of_a_miss = piece.kind is K.SETTING and piece.told == AT_REP and out and out[-1].kind is K.MISS
            out.append(piece._replace(kind=K.REPS, told=0) if of_a_miss else piece)
            continue
        miss = piece._replace(kind=_kind_of_the_end(pieces, at), told=0)
        rep = _rep_ahead(out)
        if rep is not None:
            of_the_last = _rep_of_the_last_set(out, rep)
            if of_the_last is not None:
                out[of_the_last:] = [miss, *out[of_the_last : rep + 1]]
                continue
            told, out = out[rep], out[:rep]
            elsewhere = miss._replace(kind=K.UNCLEAR) if _is_second(told) else miss
            out += [miss, told] if _is_the_next_rep(out, told) else [told, elsewhere]
        else:
            ended = piece.kind is K.MISS or _names_a_rep(pieces, at) or _ends_a_number(pieces, at)
            asked = not ended and piece.told == NOT_MADE and _ends_a_pair(pieces, at)
            out.append(miss if ended else piece._replace(kind=K.ALTERED if asked else piece.kind, told=0))
    return out


def _tells_an_end(piece: Piece) -> bool:
    phrase = piece.kind is K.NOTE and piece.told in (ENDED_SO, NOT_MADE)
    return phrase or piece.kind is K.MISS or is_cued(piece.text, ENDED)


ENDED_SO, NOT_MADE, AT_REP = 8, 14, 2
"""How the languages' files label phrases for it, for "didn't go", and for "on rep" in front of a number."""


def _kind_of_the_end(pieces: Sequence[Piece], at: int) -> K:
    """A miss; words that are asked about where it may have been made after all: "third stalled a bit, but got it"."""
    if pieces[at].kind is K.MISS:
        return K.MISS
    behind = pieces[at + 1 : at + 1 + REACH]
    turning = behind[1:2] if behind and behind[0].kind is K.COMMA else behind[:0]
    ends = next((place for place, piece in enumerate(behind) if piece.kind in PARTING), len(behind))
    softened = any(is_cued(piece.text, STILL_MADE) for piece in [*behind[:ends], *turning])
    return K.UNCLEAR if softened else K.MISS


def _rep_ahead(before: Sequence[Piece]) -> int | None:
    """Where the rep stands in front that ended so; little words may stand between."""
    for at in range(len(before) - 1, max(-1, len(before) - 1 - REACH), -1):
        piece = before[at]
        if piece.kind in (K.ORDINAL, K.LAST) or _is_second(piece):
            return at
        if piece.kind not in LITTLE:
            return None
    return None


def _rep_of_the_last_set(before: Sequence[Piece], at: int) -> int | None:
    """ "5, 5, 4, the fifth in the last set missed": where the rep stands in front of its set."""
    if before[at].kind is not K.LAST or before[at].told == LAST_OF_THE_REPS:
        return None
    rep = at - 1
    while rep > 0 and at - rep < REACH and before[rep].kind in BEFORE_THE_SET:
        rep -= 1
    last_rep = rep > 0 and before[rep].kind is K.LAST and K.REPS in [piece.kind for piece in before[rep:at]]
    return rep if rep > 0 and (before[rep].kind is K.ORDINAL or last_rep) else None


BEFORE_THE_SET = LITTLE | {K.WITH, K.OF, K.AT}


def _is_second(piece: Piece) -> bool:
    """ "200x1, second died": no time."""
    return piece.kind is K.SECONDS and piece.text == SECOND


SECOND = "second"


def _is_the_next_rep(before: Sequence[Piece], told: Piece) -> bool:
    """Whether one set is told, and an ordinal can only be of its reps: "190x2, third", and no "third set"."""
    if told.kind is K.LAST:
        return True
    reps, place = _reps_of_one_set(before), 2 if told.kind is K.SECONDS else told.told
    if reps < 0 and _reps_of_a_list(before, place) == place - 1:
        return True
    return not told.text.endswith(SET) and place in (reps, reps + 1) and (reps, place) != A_SECOND_SINGLE


def _reps_of_one_set(before: Sequence[Piece]) -> int:
    """The reps of the one set told in front; -1 where there are none, or several."""
    numbers: list[Piece] = []
    for piece in reversed(before):
        if piece.kind in (K.LINE, K.NAME):
            break
        if piece.kind is K.NUMBER:
            numbers.append(piece)
    loaded = len(numbers) == A_PAIR and numbers[1].value > MOST_LOADED_REPS
    if not numbers or not (len(numbers) == 1 or loaded) or numbers[0].value > MOST_LOADED_REPS:
        return -1
    return int(numbers[0].value)


def _reps_of_a_list(before: Sequence[Piece], place: int) -> int:
    """The reps of the last of several sets, where so many sets are not told that the place may be one of them or the
    next: "80 5 5 4, the fifth"; -1 elsewhere.
    """
    told: list[Piece] = []
    for piece in reversed(before):
        if piece.kind not in OF_A_LIST:
            break
        if piece.kind is K.NUMBER:
            told.append(piece)
    reps = [one for one in told if one.value <= MOST_LOADED_REPS]
    listed = len(told) > A_PAIR and len(told) - len(reps) <= 1 and told[0] in reps
    return int(reps[0].value) if listed and place > len(reps) + 1 else -1


OF_A_LIST = frozenset((K.NUMBER, K.COMMA, K.FILLER, K.AND, K.KG, K.LB, K.SLASH, K.DASH))
A_PAIR = 2
A_SECOND_SINGLE = (1, 2)
""" "200x1, second died": of the set, or the next one?"""
SET = ("set", "go", "run", "trip", "length", "attempt", "try")


def _names_a_rep(pieces: Sequence[Piece], at: int) -> bool:
    """ "stuck on 6", "pinned on the fifth", "died halfway on the last rep"."""
    if not at or pieces[at - 1].kind not in AHEAD_OF_IT:
        return False
    behind = at + 1
    while behind < len(pieces) and behind <= at + REACH and _tells_where(pieces[behind]):
        behind += 1
    if behind >= len(pieces):
        return False
    rep = pieces[behind]
    counts = rep.kind is K.NUMBER and rep.role in (Role.BARE, Role.REPS) and rep.value <= MOST_LOADED_REPS
    alone = behind + 1 == len(pieces) or pieces[behind + 1].kind in PARTING
    return rep.kind in (K.LAST, K.ORDINAL) or (counts and alone and behind > at + 1)


def _tells_where(piece: Piece) -> bool:
    return piece.kind in WHERE or is_cued(piece.text, HOW)


def _ends_a_number(pieces: Sequence[Piece], at: int) -> bool:
    """ "140x3, 150 died on my chest", "50x5, 6 died halfway": a number that stands alone, and no other behind it."""
    if at < LEAST_AHEAD or pieces[at - 1].kind is not K.NUMBER:
        return False
    ahead = pieces[at - 2]
    if ahead.kind not in PARTING | {K.FILLER, K.REPS, K.SETTING} and not _is_a_load_of(ahead, pieces[at - 1]):
        return False
    for piece in pieces[at + 1 :]:
        if piece.kind in PARTING:
            break
        if not _tells_where(piece):
            return False
    return pieces[at - 1].role in (Role.LOAD, Role.BARE, Role.REPS)


def _ends_a_pair(pieces: Sequence[Piece], at: int) -> bool:
    """ "squat 100x5 didn't go": none of the reps, or fewer of them."""
    alone = at + 1 == len(pieces) or pieces[at + 1].kind in PARTING
    ahead = [piece.kind for piece in pieces[max(0, at - LONGEST_PAIR) : at]]
    return alone and ahead[-1:] == [K.NUMBER] and K.TIMES in ahead


LONGEST_PAIR = 4
"""Pieces from the x on: "3x5 100", "3x5 @ 100"."""


def _is_a_load_of(ahead: Piece, number: Piece) -> bool:
    """ "deadlift 140 didn't go": the load of a lift, and no reps."""
    heavy = number.role is Role.LOAD or (number.role is Role.BARE and number.value > MOST_LOADED_REPS)
    return ahead.kind is K.NAME and heavy


LEAST_AHEAD = 2
