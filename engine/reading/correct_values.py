"""New numbers for sets that stand: the latest one, a part, or each of several parts."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from engine.reading.correcting import MOST_LOADED_REPS, Told, last_message, with_load
from engine.reading.kinds import K
from engine.reading.parts import Part, group_of, part_told
from engine.reading.pieces import Piece, Role
from engine.reading.values import Correction
from engine.values.effort import TOP_OF_SCALE, Effort
from engine.values.load import Basis
from engine.values.sets import SetDone, SetRecord


def new_values(told: Told, slipped: bool) -> Correction | None:
    """A new number for the latest set, for a part, or for each of several parts."""
    kinds = {piece.kind for piece in told.pieces}
    if kinds & NO_CORRECTION or (K.FUTURE in kinds and not told.starts("be")):
        return None
    if told.has("others") or any(piece.role is Role.CHANGE for piece in told.numbers()):
        return None
    make, be, mean = told.starts("make"), told.has("be"), told.has("mean")
    everything = _all_told(told)
    if not (slipped or make or be or mean or everything) or not told.numbers():
        return None
    for clause in _split(told.pieces):
        if any(piece.kind is K.NUMBER for piece in clause) and not _apply(
            told, clause, slipped or bool(make) or mean, everything
        ):
            return None
    return told.correction()


NO_CORRECTION = frozenset((K.QUESTION, K.ASKS, K.TOMORROW, K.ANOTHER, K.SAME, K.MORE))
ALL_WORDS = frozenset(
    (
        "all",
        "alle",
        "todas",
        "todos",
        "toutes",
        "tous",
        "tutte",
        "tutti",
        "все",
        "alla",
        "wszystkie",
        "each",
        "every",
        "them",
    )
)


def _all_told(told: Told) -> bool:
    return told.words[0] in ALL_WORDS if told.words else False


def _split(pieces: Sequence[Piece]) -> list[list[Piece]]:
    """The parts of "first two were 70, last at 65"."""
    out: list[list[Piece]] = [[]]
    for at, piece in enumerate(pieces):
        behind = pieces[at + 1 :]
        if (
            piece.kind in (K.COMMA, K.AND, K.STOP)
            and any(p.kind is K.NUMBER for p in out[-1])
            and any(p.kind is K.NUMBER for p in behind)
        ):
            out.append([])
        else:
            out[-1].append(piece)
    return out


def _apply(told: Told, clause: list[Piece], cued: bool, everything: bool) -> bool:
    part = part_told(clause, told.context, told.catalogue) or Part()
    if part.named_unknown:
        return False
    numbers = [piece for piece in clause if piece.kind is K.NUMBER and piece not in part.number_pieces]
    if part.named and not part.known_today:
        return False
    if any(piece.kind is K.TIMES for piece in clause):
        return _apply_pair(told, part, numbers) if cued and len(numbers) == 2 else False
    if len(numbers) != 1:
        return False
    return _apply_one(told, clause, part, numbers[0], everything)


def _apply_pair(told: Told, part: Part, numbers: list[Piece]) -> bool:
    """ "no, 82.5x4": the load and the reps of the latest set."""
    load, reps = numbers
    if reps.value != int(reps.value) or not 0 < reps.value <= 100 or (load.value <= 10 and load.role is not Role.LOAD):
        return False
    reached = part.places or group_of(part, told.context)[-1:]
    for record in reached:
        told.set_to(record, replace(with_load(record.done, load), reps=int(reps.value)))
    return bool(reached)


def _apply_one(told: Told, clause: list[Piece], part: Part, number: Piece, everything: bool) -> bool:
    linked = any(piece.kind in (K.AT, K.WITH) for piece in clause)
    group = part.places or (group_of(part, told.context) if part.named else last_message(told.context))
    latest = told.context.recent[-1].done.exercise
    group = [record for record in group if part.places or part.named or record.done.exercise == latest]
    if not group:
        return False
    signed = any(piece.kind is K.AT and piece.text == "@" for piece in clause)
    if signed and number.role is Role.BARE and 1 <= number.value <= TOP_OF_SCALE:
        for record in group:
            told.set_to(record, replace(record.done, effort=Effort.from_rpe(number.value)))
        return True
    if _is_load(number, linked, group[-1].done):
        whole = group if not part.last else group_of(part, told.context)[-1:]
        for record in whole:
            told.set_to(record, with_load(record.done, number))
        return True
    return _apply_reps(told, part, number, group, everything)


def _is_load(number: Piece, linked: bool, done: SetDone) -> bool:
    if number.role in (Role.REPS, Role.SECONDS, Role.METRES, Role.SETS):
        return False
    fits_reps = number.value == int(number.value) and 0 < number.value <= MOST_LOADED_REPS
    body = done.load is not None and done.load.basis is Basis.BODY and done.load.amount == 0
    if body and number.role is Role.BARE and not linked:
        return False
    return number.role is Role.LOAD or linked or not fits_reps


def _apply_reps(told: Told, part: Part, number: Piece, group: list[SetRecord], everything: bool) -> bool:
    if number.value != int(number.value) or number.value < 1 or number.role is Role.SETS:
        return False
    several = everything or any(word in ("those", "they", "these", "all", "each") for word in told.words)
    whole = part.places or (group if several else (group_of(part, told.context) if part.named else group)[-1:])
    for record in whole:
        told.set_to(record, _with_amount(record.done, number))
    return True


def _with_amount(done: SetDone, number: Piece) -> SetDone:
    if done.seconds is not None or number.role is Role.SECONDS:
        return replace(done, seconds=Decimal(number.value))
    if done.metres is not None:
        return replace(done, metres=Decimal(number.value))
    return replace(done, reps=int(number.value))
