"""Sets that were planned, are usual or are the best, told right behind hers: no more of them, or perhaps none.

behind   = set NOT-DONE sets                 "100x5 planned 105x5", "100x5 usually 105x5": asked
         | set [ word ] TOWARDS [ word ] sets                "100x5 on the way to 140x1", "100x5 ready for 105x5": asked
bracket  = set "(" PLANNED sets ")"          "100x5 (planned 105x5)", "100x5 (usual 105x5)": a remark
         | set "(" BEST sets ")"             "100x5 (best 110x5)", "100x5 (pb 110x5)": asked
estimate = sets "," [ word ]... RECKONED [ word ]... LOAD [ word ]...        "100x5, est. max about 115": a remark
reckoned = set RECKONED set | set "(" set RECKONED ")"         "110x1 e1rm 115x1", "110x1 (115x1 est)": a remark
A comma or a word between makes a clause of its own, for which the rules of talk hold.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.ahead import aside, kind_at
from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, Piece, Role, kinds_in_order, places_in

ENDS_OF_SETS = frozenset((K.NUMBER, K.KG, K.LB, K.REPS))
LINKS = frozenset((K.COLON, K.EQUALS, K.FILLER, K.FOR, K.OF))
CUES = ("notdone", "thebest", "towards")
WORDS = frozenset(
    (K.PLAIN, K.FILLER, K.NOTE, K.PLANNED, K.FUTURE, K.STORY, K.HEADING, K.ASKS, K.DENY, K.SAYING, K.SETTING)
)
FEW = 2
"""Little words in front of such a word, or behind it. Common practice, no source."""


def with_what_is_compared(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with such words as those of another time."""
    out = pieces
    for at in reversed(places_in(WORDS, kinds_in_order(pieces))):
        cues = CUES_OF[pieces[at].text]
        if "reckoned" in cues:
            estimate = _estimate_around(pieces, at) if out is pieces else (0, 0)
            told = pieces[estimate[0] : estimate[1]]
            whole = [aside(pieces[at])._replace(start=told[0].start, end=told[-1].end)] if told else []
            out = [*out[: estimate[0]], *whole, *out[estimate[1] :]] if whole else _without_what_is_reckoned(out, at)
            continue
        numbers = _numbers_behind(pieces, at) if at and not cues.isdisjoint(CUES) else 0
        if numbers:
            out = _told_apart(out, at, numbers, cues)
    return out


def _estimate_around(pieces: Sequence[Piece], at: int) -> tuple[int, int]:
    """Where a clause behind sets that tells an estimate begins and ends, "estimated max about 97"; 0 and 0 for none."""
    if "is" in CUES_OF[pieces[at].text] and pieces[at].kind is not K.SETTING:
        return 0, 0
    start, end = at, at
    while start and pieces[start - 1].kind not in CLAUSE_ENDS:
        start -= 1
    while kind_at(pieces, end) not in CLAUSE_ENDS:
        end += 1
    clause = pieces[start:end]
    loads = [one for one in clause if one.kind is K.NUMBER and one.role is not Role.UNREADABLE]
    if len(loads) != 1 or not OF_SETS.isdisjoint([one.kind for one in clause]):
        return 0, 0
    heavy = loads[0].role is Role.LOAD or (loads[0].role is Role.BARE and loads[0].value > MOST_LOADED_REPS)
    if not heavy or not any(one.kind is K.NUMBER for one in pieces[:start]):
        return 0, 0
    return start - (kind_at(pieces, start - 1) is K.ARROW), end


CLAUSE_ENDS = frozenset((None, K.COMMA, K.STOP, K.LINE, K.OPEN, K.CLOSE, K.THEN))
OF_SETS = frozenset((K.TIMES, K.NAME, K.REPS, K.SETS, K.COUNT))


def _without_what_is_reckoned(pieces: list[Piece], at: int) -> list[Piece]:
    """ "110x1 (115x1 est)", "110x1 e1rm 115x1": a remark; behind a comma, "110x1, 115x1 est", asked."""
    numbers = _numbers_behind(pieces, at)
    if numbers:
        parted = kind_at(pieces, at - 1) in SIGNS
        if kind_at(pieces, at - 1 - parted) not in ENDS_OF_SETS:
            return pieces
        ahead = at - (kind_at(pieces, at - 1) is K.ARROW)
        return [*pieces[:ahead], aside(pieces[at])._replace(end=pieces[numbers + 2].end), *pieces[numbers + 3 :]]
    start = at - PAIR
    if kind_at(pieces, at + 1) not in ENDS or [piece.kind for piece in pieces[max(0, start) : at]] != PAIRED:
        return pieces
    if start < 2 or pieces[start - 1].kind not in SIGNS or pieces[start - 2].kind not in ENDS_OF_SETS:
        return pieces
    told = aside(pieces[start]) if pieces[start - 1].kind is K.OPEN else pieces[start]._replace(kind=K.UNCLEAR)
    return [*pieces[:start], told, *pieces[at + 1 :]]


PAIR = 3
PAIRED = [K.NUMBER, K.TIMES, K.NUMBER]
SIGNS = frozenset((K.OPEN, K.COMMA, K.DASH, K.EQUALS, K.COLON, K.DROP, K.STOP, K.ARROW))
ENDS = frozenset((None, K.CLOSE, K.COMMA, K.STOP, K.LINE, K.SETTING))


def _told_apart(pieces: list[Piece], at: int, numbers: int, cues: frozenset[str]) -> list[Piece]:
    """The pieces, with the word there and those around it as one of another time; as they are where no set is ahead."""
    start = _behind_the_set(pieces, at) if "towards" in cues else at
    bracketed = start == at and kind_at(pieces, at - 1) is K.OPEN
    if start < 1 or kind_at(pieces, start - 1 - bracketed) not in ENDS_OF_SETS:
        return pieces
    word = pieces[at]
    if bracketed and "towards" not in cues:
        if "notdone" in cues:
            return [*pieces[:at], word._replace(kind=K.EARLIER, told=0), *pieces[at + 1 :]]
        return [*pieces[: at - 1], pieces[at - 1]._replace(kind=K.UNCLEAR), *pieces[at:]]
    if bracketed or (cues.isdisjoint(("notdone", "towards")) and word.kind not in NO_MARK):
        return pieces
    story = pieces[start]._replace(kind=K.STORY, end=pieces[numbers - 1].end, told=0)
    return [*pieces[:start], story, *pieces[numbers:]]


NO_MARK = frozenset((K.PLAIN, K.FILLER))


def _numbers_behind(pieces: Sequence[Piece], at: int) -> int:
    """The place of the pair behind the word there, with little words between; 0 where none stands."""
    end = at + 1
    while end <= at + FEW and kind_at(pieces, end) in LINKS:
        end += 1
    paired = kind_at(pieces, end) is K.NUMBER and K.TIMES in (kind_at(pieces, end + 1), kind_at(pieces, end + 2))
    return end if paired else 0


def _behind_the_set(pieces: Sequence[Piece], at: int) -> int:
    """The place of the first word behind the set in front, "on" of "100x5 on the way"; 0 where none stands there."""
    start = at
    while start > max(at - FEW, 0) and kind_at(pieces, start - 1) is K.FILLER:
        start -= 1
    return start if start > 1 else 0
