"""A request of which one part is not understood: nothing of it is done, and what it can take is said.

"skip squat tomorrow", "swap bench for dips on friday", "quiet from 22 to 7 except friday", "units lb for bench".
What stands behind a comma or a stop is rather a reason: "skip curls, will do them tomorrow".
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from engine.catalogue.catalogue import Catalogue
from engine.reading.days.hours_ahead import SPANS
from engine.reading.requests.swapped_for import settled_swap
from engine.reading.values import Act, Context
from engine.reading.words.cues import CUES_OF, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role, is_one_word

UNCLEAR = "unclear"
"""The name of a request that was heard and is not understood in full; its text says what such a request takes."""
CUTTING = frozenset((K.COMMA, K.STOP, K.DASH, K.OPEN, K.QUESTION))
DAYS_AHEAD = frozenset((K.TOMORROW, K.WEEKDAY, K.MONTH, K.DATE))
OF_TODAY = frozenset(("swap", "skip"))
OF_ONE_HOUR = frozenset(("remind", "snooze"))
TAKING_NO_EXCEPTION = frozenset(
    ("swap", "skip", "quiet", "remind", "rest", "units", "move", "undo", "repeat", "snooze")
)
MOST_HOURS = 1
TAKES = {
    "swap": "lifts are swapped on the day itself, for that day: send it then",
    "skip": "lifts are left out on the day itself, for that day: send it then",
    "quiet": "quiet hours are the same every day: two times, for instance quiet 22:00 7:30",
    "remind": "a reminder takes one hour, and the days it is for: remind me 18:00 mon wed fri",
    "rest": "a rest takes one length: rest 2 min",
    "units": "units hold for all lifts: units lb",
    "move": "a session moves to one day: move to friday",
    "snooze": "snooze takes one length or hour: snooze 20 min",
}
NO_EXCEPTION = "I can do it as a whole, and not with an exception: send what is to be done alone"


def in_full(found: Act, pieces: Sequence[Piece], context: Context, catalogue: Catalogue) -> Act:
    """The request, or what it can take where the words told one part more than it has."""
    clause = _clause(pieces)
    why = _left_over(found, clause, frozenset(piece.kind for piece in clause), context)
    return Act(UNCLEAR, text=why) if why else settled_swap(found, pieces, context, catalogue)


def _clause(pieces: Sequence[Piece]) -> Sequence[Piece]:
    """The pieces up to a sign that cuts; a comma within numbers cuts nothing."""
    for at, piece in enumerate(pieces):
        numbers = 0 < at < len(pieces) - 1 and pieces[at - 1].kind is pieces[at + 1].kind is K.NUMBER
        listed = 0 < at < len(pieces) - 1 and pieces[at - 1].kind is pieces[at + 1].kind is K.NAME
        if at and piece.kind in CUTTING and not numbers and not listed:
            return pieces[:at]
    return pieces


def _left_over(found: Act, clause: Sequence[Piece], kinds: frozenset[K], context: Context) -> str:
    name = found.name
    if K.EXCEPT in kinds and name in TAKING_NO_EXCEPTION and not found.also:
        return TAKES.get(name, NO_EXCEPTION) if name not in OF_TODAY else NO_EXCEPTION
    if name == "skip" and K.NAME in kinds and _tells_some_sets(clause, kinds):
        return SOME_SETS
    if name in OF_TODAY and any(_is_ahead(piece, context) for piece in clause):
        return TAKES[name]
    if name == "quiet" and K.WEEKDAY in kinds:
        return TAKES[name]
    if name == "units" and K.NAME in kinds:
        return TAKES[name]
    if name == "rest" and K.THEN in kinds:
        return TAKES[name]
    if name in OF_ONE_HOUR and _tells_several_hours(clause, kinds):
        return TAKES[name]
    return ""


def _tells_some_sets(clause: Sequence[Piece], kinds: frozenset[K]) -> bool:
    """ "skip a set of squat", "the last squat set", "half the squats": of the sets of a lift, and not all of them."""
    if not kinds.isdisjoint(PARTS):
        return True
    for before, piece in pairwise(clause):
        if piece.kind is K.SETS or "aset" in CUES_OF[piece.text]:
            return is_cued(before.text, SOME)
    # A piece shows the first word of the phrase that it stands for: "a" of "a set".
    return any("an" in CUES_OF[piece.text] and not is_one_word(piece) for piece in clause)


def counts_sets(pieces: Sequence[Piece], head: Sequence[str]) -> bool:
    """Whether so many sets are to be left out: "skip two sets of squat", "skip 3x5 squats"."""
    numbers = [piece for piece in pieces if piece.kind is K.NUMBER]
    kinds = [piece.kind for piece in pieces]
    scheme = kinds.count(K.NAME) == 1 and SCHEME.issuperset(kinds) and is_cued(head[0] if head else "", LEAVING)
    return bool(numbers) and (scheme or all(piece.role is Role.SETS for piece in numbers))


SCHEME = frozenset((K.NUMBER, K.TIMES, K.NAME, K.FILLER, K.OF, K.TODAY))
LEAVING = frozenset(("leftout",))
PARTS = frozenset((K.LAST, K.FIRST, K.MIDDLE, K.FROM_LAST, K.EXTREME, K.ORDINAL, K.HALF, K.ALTERED))
SOME = frozenset(("an", "vaguely", "acouple"))
SOME_SETS = "a lift is left out with all its sets: do fewer and log those you did, or send skip with the lift alone"


def _is_ahead(piece: Piece, context: Context) -> bool:
    """Whether the piece names a day that is not today, or a time to come: "friday", "next time"."""
    if piece.kind is K.WEEKDAY:
        return context.now is None or piece.told != context.now.weekday()
    next_one = piece.kind in (K.FUTURE, K.NOT_DATE) and ("next" in CUES_OF[piece.text] or bool(piece.told))
    return next_one or piece.kind in DAYS_AHEAD


def _tells_several_hours(clause: Sequence[Piece], kinds: frozenset[K]) -> bool:
    """ "at 6 or 7", "at 6 and at 8", "every day but sunday at 18:00"."""
    hours = [piece for piece in clause if piece.kind is K.NUMBER and piece.role in (Role.BARE, Role.NOT_A_SET)]
    apart = any({"or", "and", "but"} & CUES_OF[piece.text] for piece in clause)
    days = K.MONTH in kinds or K.SLASH in kinds
    several = len(hours) > MOST_HOURS and not days and (apart or K.AND in kinds)
    out = K.WEEKDAY in kinds and any("but" in CUES_OF[piece.text] for piece in clause)
    counted = any(
        clause[at].kind is K.NUMBER
        and SPANS & CUES_OF[behind.text]
        and not (at and "aheadby" in CUES_OF[clause[at - 1].text])
        for at, behind in enumerate(clause[1:])
    )
    return several or out or counted  # "2 days before", "every 2 days"
