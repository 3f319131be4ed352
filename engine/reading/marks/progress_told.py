"""How far the sets have come, told behind them: "80 8 8 7, 3 done", "8 8, that makes two", "8 8 7, 2 to go".

done  = ( "," | "(" | "." ) NUMBER SO-FAR | COMES-TO NUMBER      as many as were told say nothing more; else it is asked
ahead = NUMBER [ "more" ] [ word ] TO-GO                                nothing of it was done yet
left  = NUMBER "sets" "left" | YET-TO-COME NUMBER "sets"           the same
A number that ends a list with commas stays one of its reps: "8, 8, 6 done".
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.marks.efforts import OF_SETS
from engine.reading.words.ahead import aside, kind_at
from engine.reading.words.cues import cues_told, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import ROLE, Piece, Role, kinds_in_order, places_of, texts_in_order

SO_FAR, COMES_TO, TO_GO = frozenset(("sofar",)), frozenset(("comesto",)), frozenset(("togo",))
YET_TO_COME = frozenset(("yettocome",))
CUES = SO_FAR | COMES_TO | TO_GO | YET_TO_COME
LABEL = 9
"""What the languages' files label phrases for so far with."""
MOST = 12
"""So many sets of a lift are counted so. Common practice, no source."""
APART = frozenset((K.COMMA, K.STOP, K.OPEN, K.LINE, K.DASH))
ENDS = frozenset((None, K.COMMA, K.STOP, K.LINE, K.CLOSE, K.AND, K.THEN))
SAYING_AHEAD = frozenset((K.UNRELATED, K.FUTURE, K.PLAIN))
SAYING = SAYING_AHEAD | {K.FILLER, K.NOTE, K.MORE, K.LEFT, K.RESERVE, K.RESERVE_LEFT}
ALL = "all"


def with_progress_told(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with counts of sets done put so that they are compared to those told, and those ahead left out."""
    kinds = kinds_in_order(pieces)
    if SAYING.isdisjoint(kinds) or not _may_tell_progress(pieces, kinds):
        return pieces
    if not any([_beside(kinds, at) and _counts(pieces[at]) for at in places_of(K.NUMBER, kinds)]):
        return pieces
    out: list[Piece] = []
    at = 0
    while at < len(pieces):
        behind = _told_here(pieces, at, out) if _counts(pieces[at]) else at
        if behind == at:
            out.append(pieces[at])
        at = max(behind, at + 1)
    return out


def _may_tell_progress(pieces: Sequence[Piece], kinds: Sequence[K]) -> bool:
    """Whether a word that tells how far the sets have come stands among the pieces."""
    if not CUES.isdisjoint(cues_told(texts_in_order(pieces))):
        return True
    if not LEFT.isdisjoint(kinds) and (Role.SETS in map(ROLE, pieces) or K.MORE in kinds):
        return True
    return LABEL in [pieces[at].told for at in places_of(K.NOTE, kinds)]


def _beside(kinds: Sequence[K], at: int) -> bool:
    """Whether words that may say so stand beside the number here."""
    return not SAYING.isdisjoint(kinds[at + 1 : at + 2]) or (at > 0 and kinds[at - 1] in SAYING)


def _counts(piece: Piece) -> bool:
    counts = piece.kind is K.NUMBER and piece.role in (Role.BARE, Role.SETS)
    return counts and 0 < piece.value <= MOST and piece.value == int(piece.value)


def _told_here(pieces: Sequence[Piece], at: int, out: list[Piece]) -> int:
    """The place behind what the number here tells of how far it is; `at` where it tells nothing of it."""
    number, behind = pieces[at], at + 1 + (kind_at(pieces, at + 1) is K.MORE)
    counted = kind_at(pieces, behind) is K.PLAIN and _ends(pieces, behind + 2) and behind + 1 < len(pieces)
    if counted and is_cued(pieces[behind + 1].text, TO_GO):
        out.append(aside(number)._replace(end=pieces[behind + 1].end))  # "3 exercises left"
        return behind + 2
    if kind_at(pieces, behind) in SAYING_AHEAD and is_cued(pieces[behind].text, TO_GO) and _ends(pieces, behind + 1):
        if out and out[-1].kind is K.ANOTHER:
            out[-1] = out[-1]._replace(kind=K.FILLER)  # "nog 2 sets te gaan"
        out.append(aside(number)._replace(end=pieces[behind].end))
        return behind + 1
    if _is_still_ahead(pieces, at, out) or _are_more_sets(pieces, at):
        out.append(aside(number)._replace(end=pieces[behind - 1].end))
        return behind
    if number.role is not Role.BARE or behind > at + 1:
        return at
    comes_to = bool(out) and out[-1].kind is K.FILLER and is_cued(out[-1].text, COMES_TO)
    so_far = behind < len(pieces) and _says_so_far(pieces[behind])
    ends = _ends(pieces, behind + so_far)
    if not ends or not (comes_to or (so_far and kind_at(out, len(out) - 1) in APART and not _ends_a_list(out))):
        return at
    while out and out[-1].kind is K.FILLER:
        out.pop()  # "that makes"
    out.append(number._replace(kind=K.FILLER, text=ALL))
    out.append(number._replace(role=Role.SETS))
    return behind + so_far


def _is_still_ahead(pieces: Sequence[Piece], at: int, before: Sequence[Piece]) -> bool:
    """ "2 sets left", "quedan 2 series": of sets alone; reps left are those in reserve."""
    if pieces[at].role is not Role.SETS:
        return False
    left = kind_at(pieces, at + 1) in LEFT and _ends(pieces, at + 2)
    return left or (bool(before) and _ends(pieces, at + 1) and is_cued(before[-1].text, YET_TO_COME))


def _are_more_sets(pieces: Sequence[Piece], at: int) -> bool:
    """ "2 more sets in me": sets that could have been done."""
    more = kind_at(pieces, at + 1) is K.MORE and pieces[at + 1].told == OF_SETS
    return more and kind_at(pieces, at + 2) in LEFT


LEFT = frozenset((K.LEFT, K.RESERVE, K.RESERVE_LEFT))


def _says_so_far(piece: Piece) -> bool:
    return is_cued(piece.text, SO_FAR) or (piece.kind is K.NOTE and piece.told == LABEL)


def _ends(pieces: Sequence[Piece], at: int) -> bool:
    return kind_at(pieces, at) in ENDS


def _ends_a_list(before: Sequence[Piece]) -> bool:
    """Whether the number here stands behind "8," of a list with commas, and no pair."""
    return len(before) > 2 and before[-1].kind is K.COMMA and before[-2].kind is K.NUMBER and before[-3].kind is K.COMMA
