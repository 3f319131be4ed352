"""What an earlier session came to, told beside today's sets: it is a remark, and no set.

remark = EARLIER numbers      behind sets of today: "squat 100x5 (last week 95x5)", "up from 95x5", "vs 95x5"
       | numbers EARLIER      apart from them: "squat 100x5 (95x5 last time)"
       | STORY numbers        right behind sets of today: "80 8 8 7 old pr 82.5x8" is asked about
       | "(was" numbers ")"   | "(next time" numbers ")"
"""

from __future__ import annotations

from engine.reading.words.ahead import HOLDS_A_NUMBER, aside
from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.pieces import COUNTED, MOST_LOADED_REPS, Piece, Role

COMPARES = 2
"""What an EARLIER piece's `told` says of "up from", "vs"; the others name a time: "last week"."""
AHEAD = frozenset((K.FUTURE, K.TOMORROW))
LINKS = frozenset((K.FILLER, K.COLON, K.GOT, K.EQUALS, K.WITH, K.DASH))
OF_A_SET = COUNTED | frozenset(
    (K.TIMES, K.AT, K.WITH, K.REPS, K.SETS, K.OF, K.FOR, K.BY, K.SLASH, K.DASH, K.KG, K.LB, K.RPE, K.FILLER, K.BODY)
)
IN_A_LIST = frozenset((K.NUMBER, K.COMMA, K.TIMES))
APART = frozenset((K.OPEN, K.COMMA, K.STOP, K.LINE, K.DASH, K.THEN))
CLAUSE_ENDS = frozenset((None, K.LINE, K.STOP, K.COMMA, K.CLOSE))


def without_earlier_sets(pieces: list[Piece]) -> list[Piece]:
    """The pieces with what an earlier session came to set aside; words of one that stand alone open a story."""
    out: list[Piece] = []
    at = 0
    while at < len(pieces):
        piece = pieces[at]
        was = piece.kind is K.OPEN and at + 2 < len(pieces) and "was" in CUES_OF[pieces[at + 1].text]
        if was and _counts(out) and (behind := _past_the_sets(pieces, at + 2, out)):
            out += pieces[behind : behind + 1]
            at = behind + 1
            continue
        if piece.kind is K.OPEN and _brackets_what_comes(pieces, at) and _counts(out):
            at = _past_the_bracket(pieces, at, out)
            continue
        if piece.kind is K.STORY and out and out[-1].kind is K.NUMBER and (end := _past_the_sets(pieces, at + 1, out)):
            out[-1] = piece._replace(kind=K.UNCLEAR)  # "80 8 8 7 old pr 82.5x8": of another day, or of this one
            at = end
            continue
        if piece.kind is K.EARLIER:
            at = _remark(pieces, at, out)
            if at < len(pieces) and pieces[at].kind is K.STORY and out[-1].told == HOLDS_A_NUMBER:
                out.append(aside(pieces[at]))  # "up from 75 in march"
                at += 1
            continue
        out.append(pieces[at])
        at += 1
    return out


def _brackets_what_comes(pieces: list[Piece], at: int) -> bool:
    """ "(next time heavier)"; a bracket that says no more than "(tomorrow)" makes a plan of the sets before it."""
    inside = pieces[at + 1 : at + 2]
    if not inside or inside[0].kind not in AHEAD:
        return False
    behind = [piece.kind for piece in pieces[at + 2 :]]
    told = behind[: behind.index(K.CLOSE)] if K.CLOSE in behind else behind
    return not AHEAD.union((K.FILLER,)).issuperset(told)


def _past_the_bracket(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    """ "(next time 102.5)": what is to come, told beside the sets."""
    end = at + 1
    while end < len(pieces) and pieces[end].kind not in (K.CLOSE, K.LINE):
        end += 1
    out.append(aside(pieces[at + 1]))
    return end + (end < len(pieces) and pieces[end].kind is K.CLOSE)


def _counts(pieces: list[Piece]) -> bool:
    return any(piece.kind in COUNTED for piece in pieces)


def _remark(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    """The place behind a remark that begins or ends here."""
    piece = pieces[at]
    if out and out[-1].kind is K.NOTE and out[-1].told == HOLDS_A_NUMBER:
        out.append(aside(piece))  # "up from 95x5 last time"
        return at + 1
    if _counts(out):
        end = _past_the_sets(pieces, at + 1, out)
        if end:
            return end
    if piece.told != COMPARES and _ends_a_list(out):
        out.append(piece._replace(kind=K.UNCLEAR))  # "5, 5, 4 last session before the holidays"
    elif piece.told != COMPARES and _take_back(out):
        out.append(aside(piece))
    elif piece.told == COMPARES:
        out.append(piece._replace(kind=K.NOT_DATE))
    else:
        ends = (pieces[at + 1].kind if at + 1 < len(pieces) else None) in CLAUSE_ENDS
        out.append(piece._replace(kind=K.STORY if ends else K.SAYING, text="last"))
    return at + 1


def _past_the_sets(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    """The place behind the numbers that stand here, a remark in their place; 0 where none stand here."""
    start = at
    while at < len(pieces) and pieces[at].kind in LINKS:
        at += 1
    if at >= len(pieces) or pieces[at].kind not in COUNTED:
        return 0
    bracketed = pieces[start - 2].kind is K.OPEN or pieces[start - 1].kind is K.OPEN if start > 1 else False
    while at < len(pieces) and (pieces[at].kind in OF_A_SET or (bracketed and pieces[at].kind is K.COMMA)):
        at += 1
    more = at + 1 < len(pieces) and pieces[at].kind is K.COMMA and pieces[at + 1].kind is K.NUMBER
    out.append(pieces[start - 1]._replace(kind=K.UNCLEAR) if more else aside(pieces[start - 1]))
    return at


def _ends_a_list(out: list[Piece]) -> bool:
    """Whether the number here may be the last of the reps of today: "5, 5, 4"."""
    last = [piece.kind for piece in out[-4:]]
    if last[1:] != [K.NUMBER, K.COMMA, K.NUMBER] or last[0] not in IN_A_LIST:
        return False
    return all(one.role is Role.BARE and one.value <= MOST_LOADED_REPS for one in (out[-3], out[-1]))


def _take_back(out: list[Piece]) -> bool:
    """Takes away the numbers that end here, where a sign parts them from others in front of them."""
    start, was = len(out), False
    while start and out[start - 1].kind in OF_A_SET and out[start - 1].kind is not K.DASH and not was:
        start -= 1
        was = out[start].kind is K.FILLER and "was" in CUES_OF[out[start].text]  # "8, 8, 7 was 77.5 last week"
    if not _counts(out[start:]) or not start or not (was or out[start - 1].kind in APART) or not _counts(out[:start]):
        return False
    del out[start:]
    return True
