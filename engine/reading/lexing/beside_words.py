"""Words of more than one sense that the words beside them settle.

with    = "w" "/" , not glued behind a number            row 3x12 w/ pull ups 3x7: a link; "60x5w/80x5" is a warm-up
between = "between" [ words ] name                       pull ups 11 9 9 between my squats: done in turn with them
well    = name "right" , at the end of its clause        squats done right! : how it was done, and no side
        | "right" name , of a lift of both sides         right bench 3x5 80 : no side either
place   = "at" [ words ] heading                         at the gym pull ups 10 8 7: leads to no load
code    = "w3d1", "w3 d1"                                which session it was, ahead of its lifts
heading = short word "." NUMBER                          wk. 3: no end of a sentence
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from engine.catalogue.catalogue import Catalogue
from engine.reading.days.day_starts import DATE_KINDS
from engine.reading.lexing.months_too import MONTHS_TOO, may_be_a_date, tells_a_date
from engine.reading.marks.roughly import is_between
from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import CUES_OF, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role, is_one_word, kinds_in_order, places_in, places_of
from engine.values.exercise import Equipment, Exercise, Loading

WITH = "w"
RIGHT = "right"
SESSION = re.compile(r"(?:wk?|s)\d{1,2}[dj]\d")
WEEK_OF_IT, DAY_OF_IT = re.compile(r"[ws]\d"), re.compile(r"[dj]\d")
"""A session by its week and day, in one word or in two."""
ENDS = frozenset((None, K.STOP, K.COMMA, K.LINE, K.QUESTION, K.AND))
AHEAD_OF_LIFTS = frozenset((K.NAME, K.PLAIN, K.COMMA, K.STOP, K.DASH, K.LINE, K.HEADING))
POINTING = frozenset(("that", "those"))


def with_words_settled(pieces: list[Piece], catalogue: Catalogue) -> list[Piece]:
    """The pieces, with words of more than one sense put to the one that they have here."""
    settled: dict[int, Piece] = {}
    taken: set[int] = set()
    told_well: bool | None = None
    for at in places_in(OF_TWO_SENSES, kinds_in_order(pieces)):
        piece = pieces[at]
        if piece.kind is K.SLASH and at and _is_with(pieces, at):
            settled[at - 1] = pieces[at - 1]._replace(text="with", end=piece.end)
            taken.add(at)
        elif piece.kind is K.STOP and _is_short(pieces, at):
            taken.add(at)
        elif (kind := _other_kind(pieces, at)) is not None:
            settled[at] = piece._replace(kind=kind)
        elif piece.kind is K.HEADING:
            settled |= _at_a_place(pieces, at)
        elif piece.kind is K.RIGHT and (_says_how(pieces, at) or _says_well(pieces, at)):
            told_well = _has_no_sides(pieces, catalogue) if told_well is None else told_well
            settled[at] = piece._replace(kind=K.FILLER) if told_well else piece
    if not settled and not taken:
        return pieces
    return [settled.get(at, piece) for at, piece in enumerate(pieces) if at not in taken]


OF_TWO_SENSES = frozenset((K.SLASH, K.STOP, K.PLAIN, K.REST, K.RIGHT, K.HEADING))
CUTTING_OFF = frozenset((K.AND, K.COMMA, K.STOP))


def _other_kind(pieces: Sequence[Piece], at: int) -> K | None:
    """The kind that a code for a session or a "between" has here, where it is another one."""
    if pieces[at].kind is K.PLAIN:
        return K.FILLER if _is_a_session(pieces, at) else None
    return K.SUPERSET if pieces[at].kind is K.REST and _heads_a_lift(pieces, at) else None


def with_months(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with names of lifts that are months beside a day put to those: "until 20 dec"; and an "oh" ahead of
    others, cut off from them, to what people say.
    """
    named = places_of(K.NAME, kinds_in_order(pieces))
    for at in [at for at in named if _is_said(pieces, at)]:
        pieces = [*pieces[:at], pieces[at]._replace(kind=K.FILLER, names=()), *pieces[at + 1 :]]
    months = [at for at in named if MONTHS_TOO[pieces[at].text]]
    return _dated(pieces, months) if months else pieces


def _dated(pieces: list[Piece], months: Sequence[int]) -> list[Piece]:
    for at in reversed(months):
        open_end = may_be_a_date(pieces, at)
        if open_end or tells_a_date(pieces, at):
            month = pieces[at]._replace(kind=K.MONTH, names=(), told=MONTHS_TOO[pieces[at].text])
            doubt = [pieces[at]._replace(kind=K.UNCLEAR, names=())] if open_end else []
            pieces = [*pieces[: at - len(doubt)], *doubt, *pieces[at - len(doubt) : at], month, *pieces[at + 1 :]]
    return pieces


def _is_said(pieces: Sequence[Piece], at: int) -> bool:
    """ "oh, bench 80x5", "oh yeah bench 80x5", "oh yesterday bench 80x5"; "oh 3x5 40" is the lift."""
    if "slip" not in CUES_OF[pieces[at].text] or (at and pieces[at - 1].kind not in BEFORE_WHAT_IS_SAID):
        return False
    behind = kind_at(pieces, at + 1)
    me = at + 1 < len(pieces) and "me" in CUES_OF[pieces[at + 1].text]
    return (
        behind in CUTTING_OFF
        or me
        or (behind in GOING_ON and any(piece.kind is K.NAME for piece in pieces[at + 1 : at + 1 + MOST_SAID]))
    )


BEFORE_WHAT_IS_SAID = frozenset((K.LINE, K.STOP, K.COMMA, K.FILLER, K.NUMBER, K.KG, K.LB, K.DASH))
GOING_ON = DATE_KINDS | {K.FILLER, K.THEN, K.ONLY, K.LAST, K.NOTE, K.ANOTHER}
MOST_SAID = 8


def _is_with(pieces: Sequence[Piece], at: int) -> bool:
    """Whether the slash belongs to "w/"; ahead of a set, "60x5 w/80x5", it may part a warm-up from what follows."""
    link = pieces[at - 1]
    if link.kind is not K.WITH or link.text != WITH or not pieces[at].glued:
        return False
    glued = link.glued and kind_at(pieces, at - 2) is K.NUMBER
    return not glued and kind_at(pieces, at + 1) is not None and kind_at(pieces, at + 2) is not K.TIMES


def _is_short(pieces: Sequence[Piece], at: int) -> bool:
    """ "wk. 3": a stop behind such a word, and a number behind that, ends no sentence."""
    heads = kind_at(pieces, at - 1) is K.HEADING and "shortweek" in CUES_OF[pieces[at - 1].text]
    return heads and pieces[at].glued and kind_at(pieces, at + 1) is K.NUMBER


def _is_a_session(pieces: Sequence[Piece], at: int) -> bool:
    """ "w3d1 squat", "w3 d1 squat", "wk 3 d1 squat": on the way to a lift, and no word that may change sets."""
    text, before, behind = pieces[at].text, kind_at(pieces, at - 1), kind_at(pieces, at + 1)
    if behind not in AHEAD_OF_LIFTS:
        return False
    if SESSION.fullmatch(text):
        return before in (None, K.LINE)
    if WEEK_OF_IT.fullmatch(text):
        return before in (None, K.LINE) and behind is K.PLAIN and bool(DAY_OF_IT.fullmatch(pieces[at + 1].text))
    if not DAY_OF_IT.fullmatch(text):
        return False
    counted = before is K.NUMBER and kind_at(pieces, at - 2) is K.HEADING
    return counted or (before is K.PLAIN and bool(WEEK_OF_IT.fullmatch(pieces[at - 1].text)))


def _heads_a_lift(pieces: Sequence[Piece], at: int) -> bool:
    """ "between my squats"; and not "between bench sets", which says when."""
    timed = kind_at(pieces, at - 1) is K.NUMBER and pieces[at - 1].role is Role.SECONDS  # "rest 2 min between squats"
    if not is_between(pieces[at]) or timed:
        return False
    name = at + 1
    while kind_at(pieces, name) in (K.FILLER, K.OF):
        name += 1
    return kind_at(pieces, name) is K.NAME and kind_at(pieces, name + 1) is not K.SETS


def _says_how(pieces: Sequence[Piece], at: int) -> bool:
    """ "squats done right!": the word at the end of its clause, behind a lift or what points to one."""
    piece = pieces[at]
    whole = piece.text == RIGHT and is_one_word(piece) and kind_at(pieces, at + 1) in ENDS
    return whole and (kind_at(pieces, at - 1) is K.NAME or (at > 0 and _points(pieces[at - 1].text)))


def _says_well(pieces: Sequence[Piece], at: int) -> bool:
    """ "right bench 3x5 80": the first word, and the arm or the leg of nothing that is done with both."""
    whole = pieces[at].text == RIGHT and is_one_word(pieces[at])
    return whole and (at == 0 or pieces[at - 1].kind is K.LINE) and kind_at(pieces, at + 1) in BEHIND_WELL


BEHIND_WELL = DATE_KINDS | {K.NAME, K.FILLER, K.THEN, K.LAST}


def _at_a_place(pieces: Sequence[Piece], at: int) -> dict[int, Piece]:
    """The "at" of "at the gym" as a word that leads to no load, by its place; empty where none stands there."""
    link = at - 1
    while at - link <= MOST_FILLERS and kind_at(pieces, link) is K.FILLER:
        link -= 1
    return {link: pieces[link]._replace(kind=K.FILLER)} if kind_at(pieces, link) is K.WITH else {}


MOST_FILLERS = 2


def _points(word: str) -> bool:
    return word == "done" or is_cued(word, POINTING)


def _has_no_sides(pieces: Sequence[Piece], catalogue: Catalogue) -> bool:
    """Whether no lift told is done on a side, or with something in each hand, and no left side is told."""
    kinds = kinds_in_order(pieces)
    if K.LEFT in kinds:
        return False
    named = [catalogue.exercises.get(name) for at in places_of(K.NAME, kinds) for name in pieces[at].names]
    return bool(named) and all(one is not None and _takes_both_sides(one) for one in named)


def _takes_both_sides(exercise: Exercise) -> bool:
    on_both = exercise.equipment in HELD_WITH_BOTH or exercise.loading is Loading.BODY
    return on_both and not exercise.one_sided


HELD_WITH_BOTH = frozenset((Equipment.BARBELL, Equipment.EZ_BAR, Equipment.TRAP_BAR, Equipment.SMITH_MACHINE))
