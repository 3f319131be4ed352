"""A load told with no reps, for the sets behind it: "65", "going up to 65", "dropping to 50", "+5kg", "took 5 off".

load   = [ words ] NUMBER [ words ]      the words move on to a load, or say nothing of it
       | GOING verb NUMBER               "gonna pull 150": any one word between
       | [ words ] THE NUMBER            "the 24", near the load that stands: what is held, and no reps
change = SIGNED NUMBER | ( RAISED | LOWERED ) NUMBER | NUMBER ( RAISED | LOWERED )

A bare number is a load above what anyone does reps with. A change is by half of the load that stands at most; behind a
word that leads to a load the number is the load itself. Where the load was moved and nothing says to what, "heavier
now", the reps behind it are asked about.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal
from typing import NamedTuple

from engine.catalogue.catalogue import Catalogue
from engine.reading.announced_lift import LONGEST, MOVING_ON, may_stand_beside, without_a_count
from engine.reading.prepare import Prepared, prepare
from engine.reading.values import Context
from engine.reading.words.cues import cues_told, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook, spoken_words
from engine.reading.words.pieces import MOST_LOADED_REPS, NOTHING, Piece, Role, is_one_word
from engine.values.load import HEAVIEST, Basis, Load, Unit

LEADING = frozenset((K.FILLER, K.WITH, K.AT, K.FOR, K.NOT_DATE))
SAYING_NOTHING = frozenset((K.FUTURE, K.FOR, K.BAR, K.MORE, K.BY, K.PLUS, K.ANOTHER))
PERHAPS_MOVING = frozenset(
    (K.PLAIN, K.UNRELATED, K.ADDED, K.ASSISTED, K.DROP, K.ALTERED, K.NOTE, K.EACH, K.GOT, K.HEADING, K.RESERVE)
)
TO_A_LOAD = MOVING_ON | {"toload"}
RAISED = frozenset(("up", "add", "raised", "plus", "heavier"))
LOWERED = frozenset(("down", "minus", "fewer", "lighter", "lowered", "loadoff"))
MOVES = RAISED | LOWERED | TO_A_LOAD
SAID = MOVES | {"me"}
MOST_OF_IT = 2
"""A change is by one part in so many of the load that stands. Common practice, no source."""


class LoadTold(NamedTuple):
    """Shape: `amount` in `unit`, the writer's own where that is None; `by`: 1 or -1 for a change, 0 for the load.
    `paired`: told as a pair, "the 26s", which is what each hand holds. `near`: it is a load only where it is near the
    one that stands. `open`: moved, and the amount was not told.
    """

    amount: Decimal
    unit: Unit | None
    by: int = 0
    paired: bool = False
    near: bool = False
    open: bool = False

    def beside(self, standing: Load | None) -> Load | None:
        """The load that is meant where this one stands; None for a change of none, or for one that is too much."""
        if standing is None or self.unit not in (None, standing.unit):
            return None
        if standing.basis is Basis.BODY and standing.amount != 0:
            return None  # "+5" behind ten kilos on the belt: five in all, or five more
        if standing.basis is not Basis.BODY and self.amount * MOST_OF_IT > standing.amount:
            return None
        return replace(standing, amount=standing.amount + self.by * self.amount)


def load_told(text: str, context: Context, catalogue: Catalogue) -> LoadTold | None:
    """The load, or the change of it, that a short message tells without any reps; None where it tells none."""
    if len(text) > LONGEST:
        return None
    prepared = prepare(text, context, catalogue)
    prepared = prepared._replace(spoken=[*without_a_count(prepared.spoken)])
    pieces = prepared.spoken
    numbers = [at for at, piece in enumerate(pieces) if piece.kind is K.NUMBER]
    if not numbers:
        return LoadTold(NOTHING, None, open=True) if _is_moved_openly(prepared) else None
    if len(numbers) != 1 or not all(map(_may_stand_beside, _without_verb(prepared, numbers[0]))):
        return None
    if _is_of_another_time(prepared, numbers[0]):
        return None
    number, by = pieces[numbers[0]], _moved_by(pieces, numbers[0])
    if by and 0 < abs(number.value) <= HEAVIEST:
        return LoadTold(abs(number.value), number.unit, by)
    paired = number.role is Role.PLURAL
    heavy = number.role is Role.LOAD or (number.role is Role.BARE and number.value > MOST_LOADED_REPS)
    near = not heavy and is_held_up([piece for piece in pieces if piece.kind is not K.WITH])
    told = LoadTold(number.value, number.unit, paired=paired, near=near)
    return told if (heavy or paired or near) and 0 < number.value < HEAVIEST else None


def is_held_up(pieces: Sequence[Piece]) -> bool:
    """ "the 24": an article and a number, and nothing else, which tells of a thing and of no reps."""
    told = [piece for piece in pieces if piece.kind is not K.STOP and not is_cued(piece.text, NOW)]
    alone = [piece.kind for piece in told] == [K.FILLER, K.NUMBER]
    return alone and told[1].role in (Role.BARE, Role.PLURAL) and is_cued(told[0].text, THE)


def is_near_enough(amount: Decimal, standing: Load | None) -> bool:
    """Whether it is at least half of the load that stands, and at most twice as much. Common practice, no source."""
    return standing is not None and standing.amount <= amount * MOST_OF_IT and amount <= standing.amount * MOST_OF_IT


THE, NOW = frozenset(("the",)), frozenset(("nowadays",))


def _without_verb(prepared: Prepared, number: int) -> Sequence[Piece]:
    """The pieces without the one word between "gonna" and the load: "gonna pull 150", "voy a intentar 110"."""
    pieces = prepared.spoken
    verb = number - 1
    if verb < 1 or pieces[verb].kind not in VERBS or pieces[verb - 1].kind is not K.FUTURE:
        return pieces
    words = prepared.cleaned[pieces[verb - 1].start : pieces[verb - 1].end].lower().split()
    return [*pieces[:verb], *pieces[verb + 1 :]] if "toload" in cues_told(words) else pieces


VERBS = frozenset((K.PLAIN, K.HEADING, K.GOT, K.UNRELATED))


def _is_moved_openly(prepared: Prepared) -> bool:
    """ "heavier now", "going lighter", "upping the weight": and not how heavy it felt."""
    pieces = prepared.spoken
    told = [cues_told(prepared.cleaned[piece.start : piece.end].lower().split()) for piece in pieces]
    moved = any(not cues.isdisjoint(BY_WORD) for cues in told)
    moved = moved or (any("loadword" in cues for cues in told) and any(not cues.isdisjoint(MOVED) for cues in told))
    return moved and all(
        piece.kind in LEADING_ON or not cues.isdisjoint(BESIDE_A_MOVE) for piece, cues in zip(pieces, told, strict=True)
    )


BY_WORD = frozenset(("heavier", "lighter"))
MOVED = frozenset(("raised", "lowered", "more", "fewer", "add", "loadlowered"))
BESIDE_A_MOVE = BY_WORD | MOVED | TO_A_LOAD | {"nowadays", "ofitsload", "loadword"}
LEADING_ON = frozenset((K.THEN, K.AND, K.STOP, K.FUTURE, K.SETS))


def _is_of_another_time(prepared: Prepared, number: int) -> bool:
    """ "110 next week", "next month 110", "110 someday"; "gonna try 65" is of the next set."""
    for at, piece in enumerate(prepared.spoken):
        if piece.kind is K.FUTURE and (at > number or not _cues(piece).isdisjoint(LATER)):
            return True
    words = [word for word, _ in spoken_words(prepared.tokens)]
    someday = phrasebook().cues["someday"]
    return any(" ".join(words[at:end]) in someday for at in range(len(words)) for end in range(at + 1, at + 1 + REACH))


LATER = frozenset(("next", "someday"))
REACH = 4
"""Words of the longest phrase for a time to come that is told without a count. Common practice, no source."""


def _moved_by(pieces: Sequence[Piece], at: int) -> int:
    """1 where the number is put on the load that stands, -1 where it is taken off, 0 where it is a load."""
    number = pieces[at]
    kinds = {piece.kind for piece in pieces}
    if K.NAME in kinds:
        return 0
    if number.role is Role.CHANGE:
        return 1 if number.value > 0 else -1
    if number.role not in (Role.BARE, Role.LOAD) or (at and _leads_to_a_load(pieces[at - 1])):
        return 0
    told = frozenset[str]().union(*map(_cues, pieces))
    raised = not told.isdisjoint(RAISED) or not kinds.isdisjoint((K.MORE, K.ADDED, K.PLUS, K.ANOTHER))
    return int(raised) - int(not told.isdisjoint(LOWERED))


def _leads_to_a_load(before: Piece) -> bool:
    """ "going to 65", "down to 55", of which the last is one phrase; "up 5" is a change."""
    return not is_one_word(before) or (before.kind in LEADING and _cues(before).isdisjoint(MOVES))


def _cues(piece: Piece) -> frozenset[str]:
    return cues_told((piece.text, *piece.text.split()))


def _may_stand_beside(piece: Piece) -> bool:
    if may_stand_beside(piece) or piece.kind in SAYING_NOTHING:
        return True
    return piece.kind in PERHAPS_MOVING and not _cues(piece).isdisjoint(SAID)
