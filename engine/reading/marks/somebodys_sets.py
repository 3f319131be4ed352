"""Somebody's sets beside her own, no comma between: "bench 80x5 (tom did 100x5)", "beat tom's 100x5 with bench 105x5".

behind = set [ REMARK ] [ "(" | "+" ] [ AS ] SOMEBODY [ DID ] set                  hers stand in front
ahead  = [ AS ] ( SOMEBODY "'s" | AS SOMEBODY DID ) set [ "with" | "i" DID ] LIFT   heads a line; hers stand behind
A comma is put between them, and where the bracket was, so that the rules for a clause about somebody hold
(`talk/whose.py`).
AS: "vs", "after", "beat", or "while" ahead of what somebody did. SOMEBODY: a word that no list knows, and not the
writer's own name.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import CUES_OF, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.people import is_somebody, possessor, verb_behind
from engine.reading.words.pieces import COUNTED, Piece, kinds_in_order, places_of

COMPARING = frozenset(("compared", "beats", "meanwhile", "andalso"))
LEADING = frozenset((K.NOT_DATE, K.EARLIER))
SIGNS = frozenset((K.OPEN, K.PLUS))
ADDING = frozenset((K.AND, K.THEN))
HEADS_A_CLAUSE = frozenset((K.COMMA, K.STOP, K.AND, K.PLUS, K.OPEN, K.LINE, K.SLASH))
ENDS_A_CLAUSE = frozenset((None, K.COMMA, K.STOP, K.CLOSE, K.LINE))
UNITS = frozenset((K.KG, K.LB))
ENDS_OF_SETS = UNITS | {K.NUMBER}
HER_TURN = frozenset((K.WITH, K.FILLER, K.AND, K.THEN))
REACH = 6
"""Pieces of a set and what is told beside it. Common practice, no source."""


def with_somebody_parted(pieces: list[Piece], called: str, cleaned: str) -> list[Piece]:
    """The pieces, with a comma between her sets and those of somebody named beside them."""
    kinds = kinds_in_order(pieces)
    own = called.casefold().split()
    commas: dict[int, bool] = {}
    out = pieces
    for at in places_of(K.PLAIN, kinds):
        if _is_named(pieces[at], own):
            out = _as_who_did_it(_said_of(out, at), at, cleaned)
            commas |= _commas(pieces, kinds, at)
    return _parted(out, commas) if commas else out


def _said_of(pieces: list[Piece], at: int) -> list[Piece]:
    """ ", tom did the same", ", tom also did 70x5": said of the one named there, and neither more sets of hers."""
    verb = verb_behind(pieces, at)
    if kind_at(pieces, at + 1) in ADDING and "also" in CUES_OF[pieces[at + 1].text]:
        return [*pieces[: at + 1], pieces[at + 1]._replace(kind=K.FILLER), *pieces[at + 2 :]]
    same = max(verb, at) + 1
    same += kind_at(pieces, same) is K.FILLER
    said = kind_at(pieces, same) is K.SAME and (same > at + 1 or kind_at(pieces, at - 1) is K.AND)
    if said and kind_at(pieces, at - 1) in HEADS_A_CLAUSE and kind_at(pieces, same + 1) in ENDS_A_CLAUSE:
        return [*pieces[:at], pieces[at]._replace(kind=K.OTHERS), *pieces[at + 1 :]]
    return pieces


def _as_who_did_it(pieces: list[Piece], at: int, cleaned: str) -> list[Piece]:
    """ "next to tom who did 100x5", "80x5, Tom got 100x5": the word there, or the one behind it, made another's."""
    who = at + 1 + (kind_at(pieces, at + 1) is K.COMMA)
    if who < len(pieces) and is_cued(pieces[who].text, RELATIVE):
        return (
            [*pieces[:who], pieces[who]._replace(kind=K.OTHERS), *pieces[who + 1 :]]
            if _who_did(pieces, who)
            else pieces
        )
    if kind_at(pieces, at - 1) not in AMID_A_SENTENCE or not _is_spelt_as_a_name(
        cleaned[pieces[at].start : pieces[at].end]
    ):
        return pieces
    verb = verb_behind(pieces, at)
    theirs = kinds_in_order(pieces[verb + 1 : verb + 1 + REACH]) if verb else []
    return [*pieces[:at], pieces[at]._replace(kind=K.OTHERS), *pieces[at + 1 :]] if theirs[:2] == A_PAIR else pieces


def _who_did(pieces: Sequence[Piece], who: int) -> bool:
    """ "who did 100x5", "die 100x5 gemacht hat"."""
    kinds = kinds_in_order(pieces)
    verb = verb_behind(pieces, who)
    start = (verb or who) + 1
    end = _end_of_what_was_done(kinds, start)
    return end > start and (verb > 0 or any(is_cued(piece.text, DONE) for piece in pieces[end : end + 2]))


def _is_spelt_as_a_name(typed: str) -> bool:
    return typed.istitle() and typed.isalpha()


RELATIVE, DONE = frozenset(("relative",)), frozenset(("did", "theydo"))
AMID_A_SENTENCE = frozenset((K.COMMA, K.AND, K.DASH, K.OPEN))
A_PAIR = [K.NUMBER, K.TIMES]


def _is_named(word: Piece, own: Sequence[str]) -> bool:
    name = word._replace(text=possessor(word.text))
    cues = CUES_OF[name.text]  # "3x10 oder 4x8"
    known = (cues and "alsoaname" not in cues and name.text == word.text) or name.text in own
    return not known and is_somebody(name) and len(name.text) > 1


def _commas(pieces: Sequence[Piece], kinds: Sequence[K], at: int) -> dict[int, bool]:
    """The places of commas around the set of the one named there; whether each stands instead of the sign there."""
    verb = verb_behind(pieces, at)
    set_at = (verb or at) + 1
    end = _end_of_set(kinds, set_at) if not _did(pieces, verb) else _end_of_what_was_done(kinds, set_at)
    if end == set_at:
        return {}
    owned = possessor(pieces[at].text) != pieces[at].text
    at -= at > 0 and kinds[at - 1] is K.FILLER and "article" in CUES_OF[pieces[at - 1].text]  # "the neighbour's 60x5"
    leading = at > 0 and (kinds[at - 1] in LEADING or is_cued(pieces[at - 1].text, COMPARING))
    start = at - leading
    start -= leading and start > 0 and is_cued(pieces[start - 1].text, COMPARING)  # French "pendant que"
    signed = kind_at(pieces, start - 1) in SIGNS
    before = start - 1 - signed
    before -= before > 0 and kinds[before] is K.NOTE  # "80x5 easy (tom did 100x5)"
    paired = K.TIMES in kinds[max(0, before - REACH) : before + 1]
    if before >= 0 and kinds[before] in ENDS_OF_SETS and (paired or _did(pieces, verb)):
        closed = _closing(kinds, end) if signed and kinds[start - 1] is K.OPEN else {}
        return {start - 1: True, **closed} if signed else {start: False}
    heads = kind_at(pieces, start - 1) in (None, K.LINE)
    hers = _past_her_turn(pieces, end)
    told = heads and (owned or (verb and (leading or hers > end + 1)))
    named = kind_at(pieces, hers) is K.NAME and kind_at(pieces, hers + 1) is K.NUMBER
    return {end: False} if told and named else {}


def _past_her_turn(pieces: Sequence[Piece], at: int) -> int:
    """The place behind "with", "i did", "so i did" there."""
    end = at
    while end < at + LONGEST_TURN and kind_at(pieces, end) in HER_TURN:
        end += 1
    return end


LONGEST_TURN = 3


def _end_of_set(kinds: Sequence[K], at: int) -> int:
    """The place behind "100x5", "100 kg x 5", "3x5 100" there; the same one where no set stands."""
    told = [kind for kind in kinds[at : at + REACH] if kind not in UNITS]
    if told[:3] != [K.NUMBER, K.TIMES, K.NUMBER]:
        return at
    end = at
    while end < len(kinds) and kinds[end] in WITHIN_A_SET:
        end += 1
    return end


def _did(pieces: Sequence[Piece], verb: int) -> bool:
    """Whether somebody did it; "wobbly got 7" tells what a set of one's own came to."""
    return verb > 0 and "reached" not in CUES_OF[pieces[verb].text]


def _end_of_what_was_done(kinds: Sequence[K], at: int) -> int:
    """The place behind "triples at 140", "3 sets of 5 at 140", "90s" there; the same one where nothing is counted."""
    end = at
    while end < len(kinds) and kinds[end] in WITHIN_SETS:
        end += 1
    return end if not COUNTED.isdisjoint(kinds[at:end]) else at


WITHIN_A_SET = ENDS_OF_SETS | {K.TIMES, K.AT}
WITHIN_SETS = WITHIN_A_SET | COUNTED | {K.FOR, K.SETS, K.REPS, K.OF, K.WITH}


def _closing(kinds: Sequence[K], at: int) -> dict[int, bool]:
    """The bracket that closes behind the set, or behind a few words more."""
    for place in range(at, min(at + REACH, len(kinds))):
        if kinds[place] in (K.OPEN, K.LINE):
            break
        if kinds[place] is K.CLOSE:
            return {place: True}
    return {}


def _parted(pieces: list[Piece], commas: dict[int, bool]) -> list[Piece]:
    out: list[Piece] = []
    for at, piece in enumerate(pieces):
        if at not in commas:
            out.append(piece)
        elif commas[at]:
            out.append(piece._replace(kind=K.COMMA, text=","))
        else:
            out += [piece._replace(kind=K.COMMA, text=",", end=piece.start, names=()), piece]
    return out
