"""What was planned of a lift, told beside what was done of it: "bench: planned 3x5 85, got 5 5 3".

planned = PLANNED numbers [ "," ] DONE numbers           bench planned 85x5, did 85x3
        | numbers PLANNED [ "," ] DONE numbers           bench 85x5 planned, got 85x3
        | sets "," PLANNED numbers                       bench 85x5 85x3, planned 85 3x5
        | sets "(" PLANNED numbers ")"                   a remark: bench 85x5 85x3 (planned 3x5)
got     = sets "," [ "only" ] GOT NUMBER "sets" [ word ]      squat 4x6 100, only got 3 sets in: three of them
The word becomes one of a wish, and what came of wishes is read by their rules (`talk/targets.py`).
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.marks.plan_sections import without_planned_sections
from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import COUNTED, Piece, Role, kinds_in_order, places_of

PLANNED, DID = frozenset(("markedplanned",)), frozenset(("did", "didso"))
PLANNING = frozenset((K.PLAIN, K.FUTURE, K.NEVER, K.HEADING))
"""Kinds of the words for a plan, or for what was wanted."""
PARTING = frozenset((K.COMMA, K.DASH, K.THEN))
DOING = frozenset((K.GOT, K.ONLY))
OF_A_PLAN = frozenset((K.NUMBER, K.COUNT, K.TIMES, K.KG, K.LB, K.AT, K.FOR, K.SETS, K.REPS, K.OF, K.FILLER, K.EFFORT))
MOST_PLANNED = 12
"""Plans of one message. Common practice, no source."""
REACH = 24
"""Pieces that what was planned takes, or what was done of it. Common practice, no source."""


def with_planned_told(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with each word for a plan that has what was done beside it made a word of a wish."""
    pieces = _with_sets_stopped(without_planned_sections(pieces))
    plain = places_of(K.PLAIN, kinds_in_order(pieces))
    places = [at for at in plain if is_cued(pieces[at].text, PLANNED)] if plain else []
    out = pieces
    for at in reversed(places[:MOST_PLANNED]):
        out = _told_apart(out, at)
    return out


def with_sets_got(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with "got 3 sets" behind sets and reps told as "only 3 sets"."""
    out = list(pieces)
    kinds = kinds_in_order(pieces)
    for at in places_of(K.GOT, kinds):
        number = pieces[at + 1] if at + 1 < len(pieces) else None
        counted = number is not None and number.kind is K.NUMBER and number.role is Role.SETS
        end = at + 2 + (kind_at(pieces, at + 2) is K.FILLER)
        if counted and K.TIMES in kinds[:at] and kind_at(pieces, end) in ENDS_OF_SETS:
            out[at] = pieces[at]._replace(kind=K.FILLER if kind_at(pieces, at - 1) is K.ONLY else K.ONLY)
    return out


ENDS_OF_SETS = frozenset((None, K.COMMA, K.STOP, K.LINE))


def _with_sets_stopped(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with as many sets of a plan as were done of it: "was meant to be 4x5 85, stopped after 3 sets"."""
    wish = next((at for at, piece in enumerate(pieces) if _is_a_wish(piece)), -1)
    stop = next((at for at in range(wish + 1, len(pieces)) if is_cued(pieces[at].text, STOPPED)), -1)
    kinds = kinds_in_order(pieces)
    if wish < 0 or stop < 0 or kinds.count(K.NAME) > 1:
        return pieces
    cut = next((at for at in range(stop, wish, -1) if kinds[at] in ENDS_OF_A_PLAN or is_cued(pieces[at].text, BUT)), -1)
    end = next((at for at in range(stop, len(pieces)) if kinds[at] in ENDS_OF_A_PLAN), len(pieces))
    counts = [piece for piece in pieces[cut:end] if piece.kind is K.NUMBER]
    sets = next((at for at in range(cut) if kinds[at : at + 3] == [K.NUMBER, K.TIMES, K.NUMBER]), -1)
    if len(counts) != 1 or counts[0].role is not Role.SETS or sets < 0 or kinds[:cut].count(K.NUMBER) > ONE_GROUP:
        return pieces
    if not counts[0].value < pieces[sets].value <= MOST_SETS:
        return pieces
    done = pieces[sets]._replace(value=counts[0].value, text=counts[0].text)
    told = [*pieces[:sets], done, *pieces[sets + 1 : cut]]
    note = pieces[cut + 1]._replace(kind=K.NOTE, end=pieces[end - 1].end, told=0)
    comma = pieces[cut]._replace(kind=K.COMMA, text=",")
    return [*[one for one in told if one.kind not in SAYING_A_PLAN], comma, note, *pieces[end:]]


def _is_a_wish(piece: Piece) -> bool:
    return piece.kind in (K.FUTURE, K.NEVER) or (piece.kind is K.PLAIN and is_cued(piece.text, PLANNED))


STOPPED, BUT = frozenset(("stopped",)), frozenset(("but",))
ENDS_OF_A_PLAN = frozenset((K.COMMA, K.DASH, K.STOP, K.LINE))
SAYING_A_PLAN = frozenset((K.FUTURE, K.NEVER, K.PLAIN, K.GOT, K.FILLER))
ONE_GROUP, MOST_SETS = 3, 10
"""Numbers of one group of sets, and sets of one lift that a plan asks for. Common practice, no source."""


def _told_apart(pieces: list[Piece], at: int) -> list[Piece]:
    wish = pieces[at]._replace(kind=K.FUTURE)
    behind = _up_to_the_line(pieces[at + 1 : at + 1 + REACH])
    close = _end_of_a_bracket(pieces, at, behind)
    if close:
        return [*pieces[: at - 1], wish._replace(kind=K.NOTE, end=pieces[close - 1].end), *pieces[close + 1 :]]
    result = next((place for place, piece in enumerate(behind) if _tells_what_was_done(piece)), -1)
    if result < 0:
        parted = at > 1 and pieces[at - 1].kind in PARTING and pieces[at - 2].kind in COUNTED
        return [*pieces[:at], wish, *pieces[at + 1 :]] if parted and _counts(behind[:1]) else pieces
    if not _counts([piece for piece in behind[result + 1 :] if piece.kind is not K.FILLER][:1]):
        return pieces
    if _counts(behind[:result]):
        return [*pieces[:at], wish, *pieces[at + 1 :]]
    start = at
    while start and pieces[start - 1].kind in OF_A_PLAN:
        start -= 1
    if not _counts(pieces[start:at]):
        return pieces
    ahead = pieces[start]
    return [*pieces[:start], wish._replace(start=ahead.start, end=ahead.start), *pieces[start:at], *pieces[at + 1 :]]


def _end_of_a_bracket(pieces: Sequence[Piece], at: int, behind: Sequence[Piece]) -> int:
    """The place where a bracket closes that tells the plan behind sets; 0 where none does."""
    if at < 2 or pieces[at - 1].kind is not K.OPEN or pieces[at - 2].kind not in COUNTED:
        return 0
    close = next((place for place, piece in enumerate(behind) if piece.kind is K.CLOSE), 0)
    told = close > 0 and all(piece.kind in OF_A_PLAN for piece in behind[:close]) and _counts(behind[:close])
    return at + 1 + close if told and kind_at(pieces, at + 2 + close) not in COUNTED else 0


def _up_to_the_line(pieces: Sequence[Piece]) -> Sequence[Piece]:
    return pieces[: next((at for at, piece in enumerate(pieces) if piece.kind is K.LINE), len(pieces))]


def _tells_what_was_done(piece: Piece) -> bool:
    return piece.kind in DOING or (piece.kind is K.FILLER and is_cued(piece.text, DID))


def _counts(pieces: Sequence[Piece]) -> bool:
    return any(piece.kind in COUNTED for piece in pieces)
