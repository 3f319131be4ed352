"""Marks taken off sets that stand: "last wasn't to failure", "the 30x6 was no warm-up", "set 2 was a work set".

told   = clause ( "," clause )*        some clause of them takes a mark off
clause = part DENYING little* MARK | DENYING little* MARK [ "on" part ] | part "was" WORK-SET | part mark | remark
         | TAKE-AWAY [ "the" ] ( EFFORT | FAILURE ) [ "off" part ] | TAKE-AWAY "the" WARM-UP "off" part

Only sets that carry the mark lose it. Where none of those meant does, the words are a remark.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import NamedTuple

from engine.reading.corrections.correcting import Told
from engine.reading.corrections.deletes import asks_away, is_cue
from engine.reading.corrections.marks import is_spoken_of, mark, marks_of
from engine.reading.corrections.parts import Part, part_told, says_all
from engine.reading.corrections.said_to_be import is_be
from engine.reading.latest_sets import latest_of_it, run_of_it
from engine.reading.marks.marks_in_remarks import is_effort_alone, mark_denied
from engine.reading.values import Correction
from engine.reading.words.cues import any_cued, is_cued
from engine.reading.words.kinds import DENYING, K
from engine.reading.words.pieces import Piece, kinds_of
from engine.values.sets import SetDone, SetKind, SetRecord

MARKS = frozenset((K.FAILURE, K.MISS, K.DROP, K.WARMUP))
RATED = frozenset((K.RPE, K.RIR, K.RESERVE, K.EFFORT))
SPEAKING = MARKS | RATED | {K.NOTE, K.WORKING}
ASKED = frozenset((K.QUESTION, K.FUTURE, K.TOMORROW, K.STORY, K.PLANNED))
CUTS = frozenset((K.COMMA, K.STOP, K.DASH, K.OPEN, K.CLOSE))
BETWEEN = frozenset((K.FILLER, K.OF, K.GOT, K.SETS))
BESIDE = BETWEEN | frozenset((K.LAST, K.FIRST, K.MIDDLE, K.FROM_LAST, K.EXTREME, K.ORDINAL, K.NUMBER, K.NAME, K.BOTH,
                              K.AND, K.KG, K.LB, K.EACH, K.FOR, K.AT, K.REMAINING, K.OTHERS, K.NOT_DATE,
                              K.NOTE))  # fmt: skip
TELLING = BESIDE - BETWEEN - {K.NOTE} | {K.TIMES, K.COUNT, K.DATE, K.EFFORT, K.FAILURE, K.WARMUP, K.MISS, K.DROP}
NOTHING_MORE = frozenset((K.FILLER, K.OTHERS))
NONE_OF_THEM, ALSO = frozenset(("noneof",)), frozenset(("those", "that", "the", "hedge"))
AN = frozenset(("an",))
MOST_BETWEEN = 4


class Off(NamedTuple):
    """A mark that is denied, and the pieces around the words that do; `whole`: of none of them it is true; `latest`: of
    the latest it is not.
    """

    kind: K
    others: list[Piece]
    whole: bool = False
    latest: bool = False


def unmarked(told: Told) -> Correction | None:
    """The sets meant, without the mark that they did not earn; None where no mark that stands is denied."""
    kinds = told.kinds()
    if kinds.isdisjoint(SPEAKING) or not kinds.isdisjoint(ASKED) or told.pieces[0].kind is K.ASKS:
        return None
    return _taken_away(told) if asks_away(told) else _denied_of(told)


def _denied_of(told: Told) -> Correction | None:
    """The sets meant without the marks that are denied, and with those told beside them."""
    clauses = _clauses(told.pieces)
    found = [_denied(clause) for clause in clauses]
    if not any(found):
        return None
    part = Part()
    for clause, off in zip(clauses, found, strict=True):
        if off is None:
            if not _stands_beside(told, clause, part):
                return None
            continue
        part = _part_of(off.others, told, part)
        if part.missing or part.named_unknown or not _is_plain(off.others, part):
            return None
        for record in _meant(told, off, part):
            told.set_to(record, _without(told.now(record), off.kind))
    return told.correction()


def _clauses(pieces: Sequence[Piece]) -> list[list[Piece]]:
    out: list[list[Piece]] = [[]]
    for piece in pieces:
        if piece.kind in CUTS:
            out.append([])
        else:
            out[-1].append(piece)
    return [clause for clause in out if clause]


def _denied(clause: Sequence[Piece]) -> Off | None:
    """The mark that the clause denies: told as one remark, "wasn't to failure", or in pieces, "was no warm-up"."""
    for at, piece in enumerate(clause):
        others = [*clause[:at], *clause[at + 1 :]]
        if (kind := mark_denied(piece)) is not None:
            return Off(kind, others)
        if piece.kind is K.WORKING and _is_a_work_set(clause, at):
            return Off(K.WARMUP, others, latest=True)
        if piece.kind in DENYING or is_cued(piece.text, NONE_OF_THEM):
            behind = _mark_behind(clause, at)
            others = [] if behind is None else [*clause[:at], *clause[behind + 1 :]]
            if behind is not None and (_was(clause[: behind + 1]) or NOTHING_MORE.issuperset(kinds_of(others))):
                whole = at == 0 and is_cued(piece.text.split()[0], NONE_OF_THEM)
                return Off(clause[behind].kind, others, whole)
    return None


def _was(pieces: Sequence[Piece]) -> bool:
    """Whether a verb says what the sets were: "wasn't a warm-up"; "didn't warm up properly" tells of the day."""
    return any(is_be(piece) or is_be(piece._replace(kind=K.NOT)) for piece in pieces)


def _mark_behind(clause: Sequence[Piece], at: int) -> int | None:
    """The place of the mark that is denied here; "not all to failure" denies it of nobody knows which."""
    for place in range(at + 1, min(at + 2 + MOST_BETWEEN, len(clause))):
        piece = clause[place]
        if piece.kind in MARKS:
            return place
        if (piece.kind not in BETWEEN and not is_be(piece)) or says_all(piece):
            return None
    return None


def _is_a_work_set(clause: Sequence[Piece], at: int) -> bool:
    """ "was a work set", and no denial of one; "only the 100 was a work set" says more of the others."""
    ahead = clause[:at]
    tied = any(map(is_be, ahead)) and not any(piece.kind in DENYING or piece.kind is K.ONLY for piece in ahead)
    told = len(clause[at].text.split()) > 1 or (at and (clause[at - 1].kind is K.SETS or _is_an(clause[at - 1])))
    return tied and bool(told)


def _is_an(piece: Piece) -> bool:
    return any_cued(piece.text.split()[-1:], AN)


def _part_of(others: list[Piece], told: Told, before: Part) -> Part:
    """What the words around the denial point at; those of the clause before where they point at nothing."""
    part = part_told(others, told.context, by_value=True)
    return part if part.points or part.missing or part.named_unknown else before


def _is_plain(others: Sequence[Piece], part: Part) -> bool:
    """Whether all words around the denial point, or say nothing."""
    if any(piece.kind is K.NUMBER and piece not in part.used for piece in others):
        return False
    return all(piece.kind in BESIDE or is_be(piece) or is_cued(piece.text, ALSO) for piece in others)


def _stands_beside(told: Told, clause: Sequence[Piece], part: Part) -> bool:
    """Whether a clause beside the denial tells of nothing else; a mark in it is put on the sets that it points at."""
    marks = marks_of(clause)
    if not marks or is_spoken_of(clause):
        return TELLING.isdisjoint([piece.kind for piece in clause])
    own = part_told(clause, told.context)
    if own.missing or own.named_unknown or any(p.kind is K.NUMBER and p not in own.used for p in clause):
        return False
    return mark(told, marks, own if own.points else part)


def _meant(told: Told, off: Off, part: Part) -> list[SetRecord]:
    """The sets that carry the mark, among those pointed at, or else those that "that" and "those" may mean."""
    if part.points or off.latest:
        reached = part.reached(told.context, told.plural)
        reached = reached if part.points or told.plural else reached[-1:]
        return [record for record in reached if _has(told.now(record), off.kind)]
    run = run_of_it(told.context)
    marked = [record for record in run if _has(told.now(record), off.kind)]
    if off.whole or told.plural or len(marked) < 2:
        return marked
    if off.kind in (K.FAILURE, K.MISS):
        return [record for record in marked if record is run[-1]]
    latest = latest_of_it(told.context)
    return latest if all(_has(told.now(record), off.kind) for record in latest) else []


def _has(done: SetDone, kind: K) -> bool:
    carried = {
        K.FAILURE: done.failure,
        K.MISS: done.missed,
        K.DROP: done.kind is SetKind.DROP,
        K.WARMUP: done.kind is SetKind.WARMUP,
        K.EFFORT: done.effort is not None,
    }
    return carried[kind]


def _without(done: SetDone, kind: K) -> SetDone:
    if kind is K.FAILURE:
        return replace(done, failure=False)
    if kind is K.EFFORT:
        return replace(done, effort=None)
    if kind is K.MISS:
        return replace(done, missed=False, reps=max(done.reps, 1))  # a missed single told no rep
    return replace(done, kind=SetKind.WORK)


def _taken_away(told: Told) -> Correction | None:
    """ "remove the rpe", "take the failure off the last": the mark, and no set."""
    rest = [piece for piece in told.pieces if not is_cue(piece, told)]
    at = next((at for at, piece in enumerate(rest) if is_effort_alone(piece) or piece.kind in MARKS), None)
    if at is None or (rest[at].kind in MARKS and not _is_of_the_mark(rest, at)):
        return None
    others = [piece for piece in (*rest[:at], *rest[at + 1 :]) if piece.kind not in (K.ASSISTED, K.STOP)]
    part = part_told(others, told.context, by_value=True)
    if part.missing or part.named_unknown or K.SETS in {one.kind for one in others} or not _is_plain(others, part):
        return None
    kind = rest[at].kind if rest[at].kind in MARKS else K.EFFORT
    for record in part.reached(told.context, plural=True):
        if _has(told.now(record), kind):
            told.set_to(record, _without(told.now(record), kind))
    return told.correction()


def _is_of_the_mark(rest: Sequence[Piece], at: int) -> bool:
    """Whether it is the mark that is to go, and not the sets that carry it: "remove the warm-ups"."""
    return rest[at].kind is K.FAILURE or any(piece.kind is K.ASSISTED for piece in rest[at + 1 :])
