"""A clause that tells nothing but a time to come, in front of a lift: what stands behind it is on for then, or may be.

alone  = ( TOMORROW | "next" session )            "tomorrow, bench 3x5 80", "next session, squat 3x5 102.5": a plan
headed = alone beside a workout or a heading      "gym tomorrow, bench 3x5 80": on for then, or done today
A muscle or a day of one is on for then, and another lift with its load was done today: "tomorrow legs, bench 3x5 80".
"""

from __future__ import annotations

from engine.catalogue.catalogue import catalogue
from engine.reading.talk.clauses_of_talk import BEHIND, counted, tells_a_whole_set
from engine.reading.words.cues import CUES_OF, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, kinds_of
from engine.values.exercise import Pattern

LINKS = frozenset((K.FILLER, K.COMMA, K.DASH))
HEADED = frozenset((K.HEADING, K.MUSCLE, K.JOINT))
OF_A_TIME = HEADED | {K.FUTURE, K.TOMORROW, K.DATE, K.WEEKDAY, K.THEN}
TODAY_AS_WELL = frozenset((K.TODAY, K.DATE, K.GOT, K.ONLY))
DONE = frozenset(("did", "didso", "instead"))


def is_a_time_ahead(clause: list[Piece]) -> bool:
    """Whether the clause tells a time to come and nothing else."""
    told = [piece for piece in clause if piece.kind not in LINKS or is_cued(piece.text, OF_TRAINING)]
    return bool(told) and all(map(_is_ahead, told))


def _heads_a_time_ahead(clause: list[Piece]) -> bool:
    """Whether the clause tells of training at a time to come, and no more."""
    kinds = {piece.kind for piece in clause if "is" not in CUES_OF[piece.text]} - LINKS
    wished = K.FUTURE in kinds and not kinds.isdisjoint(HEADED)  # "planning legs on friday"
    ahead = wished or any(_is_ahead(piece) or _is_later(piece) for piece in clause)
    return ahead and kinds <= OF_A_TIME


def may_be_for_then(clause: list[Piece]) -> bool:
    """Whether nothing in the clause behind it says that it is done."""
    return not any(piece.kind in TODAY_AS_WELL or is_cued(piece.text, DONE) for piece in clause)


def may_be_on(before: list[Piece], clause: list[Piece]) -> bool:
    """Whether the sets of the clause may be what the time in front of it is for."""
    if not _heads_a_time_ahead(before) or not may_be_for_then(clause) or not counted(clause):
        return False
    if any(is_cued(piece.text, OF_TRAINING) for piece in before) or not tells_a_whole_set(clause):
        return True
    cues = frozenset().union(*[CUES_OF[piece.text] for piece in before])
    return any(cue in cues and _holds(clause, lifts) for cue, lifts in DAYS)


def _holds(clause: list[Piece], lifts: frozenset[Pattern]) -> bool:
    """Whether the first lift of the clause is one of those."""
    named = next((piece for piece in clause if piece.kind is K.NAME and piece.names), None)
    exercise = catalogue().get(named.names[0]) if named is not None else None
    return exercise is not None and exercise.pattern in lifts


DAYS = (
    ("legday", frozenset((Pattern.SQUAT, Pattern.HINGE, Pattern.LUNGE))),
    ("pushday", frozenset((Pattern.HORIZONTAL_PUSH, Pattern.VERTICAL_PUSH))),
    ("pullday", frozenset((Pattern.HORIZONTAL_PULL, Pattern.VERTICAL_PULL))),
)
""" "tomorrow legs, squat 5x5 95": the lift is one of that day."""


def _is_ahead(piece: Piece) -> bool:
    return piece.kind is K.TOMORROW or (
        piece.kind is K.FUTURE and (piece.told > 0 or "next" in CUES_OF[piece.text.split()[0]])
    )


def _is_later(piece: Piece) -> bool:
    """ "gym later": a piece shows the first word of its phrase."""
    return piece.kind is K.FUTURE and is_cued(piece.text, OF_TRAINING)


OF_TRAINING = frozenset(("workout",))


def done_before_a_plan(kept: list[Piece], talk: list[Piece]) -> list[Piece]:
    """ "squat 100x5 today, 105x5 tomorrow": the sets of today; "squat 100x5, 105x5 tomorrow" may be a plan of both."""
    kinds = kinds_of(talk)
    if K.TIMES not in kinds or BEHIND.isdisjoint(kinds) or not tells_a_whole_set(kept) or _repeats(kept, talk):
        return []
    told = any(piece.kind in OF_A_DAY for piece in kept)
    return kept if told else [*kept, kept[-1]._replace(kind=K.UNCLEAR)]


def _repeats(kept: list[Piece], talk: list[Piece]) -> bool:
    """ "80x5, 80x5 tomorrow": a plan of equal sets."""
    planned = [piece.value for piece in talk if piece.kind is K.NUMBER]
    return [piece.value for piece in kept if piece.kind is K.NUMBER][-len(planned) :] == planned


OF_A_DAY = frozenset((K.DATE, K.TODAY))
