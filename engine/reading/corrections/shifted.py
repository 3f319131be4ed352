"""Reps told as more or fewer than before: "one rep less on each", "add a rep to the last set".

Loads are told so too, with their unit or half a unit: "added 5 kg to both of those", "the last one was 2.5kg lighter",
"all +2.5". A whole number without one may be of either: asked.

told = [ "add" ] ( NUMBER | "a" ) "rep" [ "less" | "more" ] ( "on" | "to" ) part       part: last, set 2, each, all
"""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal

from engine.reading.corrections.correcting import Told
from engine.reading.corrections.parts import Part, part_told
from engine.reading.values import Correction
from engine.reading.words.cues import any_cued, is_cued
from engine.reading.words.kinds import PLACING, K
from engine.reading.words.pieces import Piece, Role, texts_in_order

FEWER = frozenset(("fewer", "minus"))
ADDING = frozenset(("add", "plus", "extra"))
EXTRA = frozenset(("extra",))
TAKING = frozenset(("take", "minus"))
MOST_CHANGED = 5
"""How many reps somebody may have miscounted. Common practice, no source."""
ABOUT = frozenset(
    (K.NUMBER, K.REPS, K.MORE, K.EACH, K.LAST, K.FIRST, K.MIDDLE, K.ORDINAL, K.FROM_LAST, K.SETS, K.FILLER, K.BOTH,
     K.OF, K.ADDED, K.EXTRA, K.ANOTHER, K.FOR, K.STOP, K.NAME, K.GOT)
)  # fmt: skip


def shifted(told: Told) -> Correction | None:
    """The sets pointed at, with so many reps more or fewer."""
    kinds = told.kinds()
    words = set(told.words)
    fewer = any_cued(words, FEWER) or any_cued(told.words[:1], TAKING)
    more = bool(kinds & {K.MORE, K.ANOTHER}) or any_cued(told.words[:1], ADDING)
    more = more or any_cued(words, EXTRA)
    short = any(map(_is_short, told.pieces))
    of_reps = short or K.REPS in kinds or any(number.role is Role.REPS for number in told.numbers())
    if not of_reps:
        return _heavier(told)
    fewer = fewer or short
    if fewer is more or not all(p.kind in ABOUT or is_cued(p.text, FEWER) or _is_short(p) for p in told.pieces):
        return None
    part = part_told([piece for piece in told.pieces if piece.role is not Role.REPS], told.context)
    counts = [int(piece.value) for piece in told.numbers() if piece not in part.used and piece.value % 1 == 0] or [1]
    if part.missing or part.named_unknown or not (part.points or K.EACH in kinds) or len(counts) != 1:
        return None
    by = -counts[0] if fewer else counts[0]
    reached = part.reached(told.context, plural=True)
    if not 1 <= abs(by) <= MOST_CHANGED or any(record.done.reps + by < 1 for record in reached):
        return None
    for record in reached:
        told.set_to(record, replace(told.now(record), reps=told.now(record).reps + by))
    return told.correction()


def _is_short(piece: Piece) -> bool:
    """ "a rep short"."""
    return piece.kind is K.UNCLEAR and is_cued(piece.text.split()[0], REP)


REP = frozenset(("repword",))
HEAVIER = frozenset(("heavier", "up", "heavyword"))
LIGHTER = frozenset(("lighter", "off", "down", "lightword"))
ADDED = frozenset(("add", "plus"))
POINTING = frozenset(("those", "that", "all"))
POINTING_KINDS = frozenset((K.BOTH, K.LAST))
ALL = frozenset(("all",))
STEPS = frozenset((Role.BARE, Role.LOAD, Role.CHANGE))
BE = frozenset(("was", "were", "is", "are"))
KNOWN = ADDED | FEWER | TAKING | HEAVIER | LIGHTER | POINTING | BE
LINKS = frozenset(("to", "from", "of", "on"))
BESIDE_A_LOAD = ABOUT | {K.KG, K.LB, K.AT, K.WITH, K.PLUS}
MOST_OF_A_LOAD = 2
"""A change is at most half of the load. Common practice, no source."""


def _heavier(told: Told) -> Correction | None:
    """The sets pointed at, at a load so much heavier or lighter."""
    step = _step(told)
    number = told.numbers()[0] if step else None
    if step is None or number is None or (number.unit is None and number.value % 1 == 0):
        return None
    part, by = step
    for record in part.reached(told.context, plural=told.plural or part.whole):
        load = told.now(record).load
        if load is None or number.unit not in (None, load.unit) or abs(by) * MOST_OF_A_LOAD > load.amount:
            return None
        told.set_to(record, replace(told.now(record), load=replace(load, amount=load.amount + by)))
    return told.correction()


def is_by_an_open_step(told: Told) -> bool:
    """ "add 1 to all", "all +5": of the loads or of the reps, nobody can say."""
    step = _step(told)
    return step is not None and told.numbers()[0].unit is None


def _step(told: Told) -> tuple[Part, Decimal] | None:
    """The sets pointed at, and by how much they were more or less, whatever it is of."""
    words, kinds, numbers = set(told.words), told.kinds(), told.numbers()
    if K.QUESTION in kinds or len(numbers) != 1 or numbers[0].role not in STEPS:
        return None
    up, down = _directions(told, numbers[0])
    if up is down or not all(piece.kind in BESIDE_A_LOAD or _is_known(piece.text) for piece in told.pieces):
        return None
    part = part_told([piece for piece in told.pieces if piece.kind is not K.NUMBER], told.context)
    points = bool(part.places) or any_cued(words, POINTING) or not kinds.isdisjoint(POINTING_KINDS)
    if part.missing or part.named_unknown or not points:
        return None
    return part, abs(numbers[0].value) if up else -abs(numbers[0].value)


def _directions(told: Told, number: Piece) -> tuple[bool, bool]:
    """Whether the words or the sign say that it was more, and less."""
    words, first = {*told.words, *texts_in_order(told.pieces)}, told.words[0]
    if number.role is Role.CHANGE or told.pieces[0].kind is K.PLUS:
        return number.value > 0, number.value < 0
    be = any_cued(words, BE) or told.pieces[0].kind in PLACING  # "last one 10kg lighter"
    whole = is_cued(first, ALL) or told.pieces[0].kind is K.BOTH  # "all 2.5kg heavier"
    up = is_cued(first, ADDED) or ((be or whole) and any_cued(words, HEAVIER | ADDED))
    down = is_cued(first, TAKING) or ((be or whole) and any_cued(words, LIGHTER | FEWER))
    light = any_cued(words, LIGHTER)  # "todas 2,5 más ligeras"
    up = (up or K.MORE in told.kinds()) and not light
    return up, down


def _is_known(text: str) -> bool:
    return all(word in LINKS or is_cued(word, KNOWN) for word in text.split())
