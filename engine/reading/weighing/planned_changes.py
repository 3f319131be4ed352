"""What was different from the plan: "as planned except set 2 only 7", "as planned, last one 8 @9", "but 2 sets".

change = [ place ] value+ | value "on" place
place  = "first" | "last" | ORDINAL | "set" NUMBER | ( "first" | "last" ) NUMBER
value  = reps | load | effort | "to failure"
A value with no place is told of all sets; reps never are. Anything else is no change that can be read: it is asked.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from engine.reading.words.kinds import K
from engine.reading.words.pieces import LAST_OF_THE_REPS, MOST_LOADED_REPS, Piece, Role
from engine.values.effort import TOP_OF_SCALE, Effort
from engine.values.load import HEAVIEST, Basis, Load
from engine.values.sets import SetDone

SECOND = "second"
PASSED = frozenset((K.FILLER, K.COMMA, K.ONLY, K.GOT, K.EXCEPT, K.AND, K.THEN, K.COLON, K.DASH, K.NOTE, K.STOP, K.NAME,
                    K.PLANNED, K.LINE, K.PLAIN, K.OPEN, K.CLOSE, K.DENIED,
                    K.DENY, K.PAIN, K.SORE, K.JOINT, K.MUSCLE, K.LEFT, K.RIGHT))  # fmt: skip
LINKS = frozenset((K.WITH, K.FOR, K.AT))


@dataclass(slots=True)
class Change:
    """Of which sets, counted from nought, and what: `None` where it is not told."""

    places: tuple[int, ...] | None = None
    reps: int | None = None
    load: Piece | None = None
    effort: Effort | None = None
    failure: bool = False

    @property
    def tells(self) -> bool:
        return self.reps is not None or self.load is not None or self.effort is not None or self.failure


class NoChange(Exception):
    """What was told is no change of planned sets that can be read."""


def with_changes(sets: Sequence[SetDone], pieces: Sequence[Piece], standing: int) -> tuple[SetDone, ...] | None:
    """The sets with what was told of them changed; None where it cannot be read, or nothing was told.

    Shape: so many sets from the first on stand already, and need not be told.
    """
    try:
        changes = _listed(pieces, len(sets)) or _changes(pieces, len(sets), standing)
        out = list(sets)
        for change in changes:
            for place in change.places if change.places is not None else range(len(out)):
                out[place] = _changed(out[place], change)
    except NoChange:
        return None
    return tuple(out) if changes else None


def _listed(pieces: Sequence[Piece], count: int) -> list[Change]:
    """ "as planned, 10 10 7": the reps of each set; empty where no such list was told."""
    told = [piece for piece in pieces if not _is_passed(piece) and piece.kind is not K.SLASH]
    whole = all(piece.kind is K.NUMBER and piece.role is Role.BARE and piece.value % 1 == 0 for piece in told)
    if not whole or len(told) != count or count == 1 or any(not 0 < piece.value <= MOST_LOADED_REPS for piece in told):
        return []
    return [Change(places=(place,), reps=int(piece.value)) for place, piece in enumerate(told)]


def _changes(pieces: Sequence[Piece], count: int, standing: int) -> list[Change]:
    """The changes told behind the word for the plan; those ahead of it say which sets went by it."""
    planned = next(at for at, piece in enumerate(pieces) if piece.kind is K.PLANNED)
    ahead = [piece for piece in pieces[:planned] if piece.kind is not K.REST]  # "first at 85, rest as planned"
    kept, before = _Reader(ahead, count).places_and_changes()
    changes = [*before, *_Reader(pieces[planned:], count).run()]
    named = [place for change in changes for place in change.places or ()]
    if len(set(named)) < len(named) or (kept and {*range(standing), *kept, *named} != set(range(count))):
        raise NoChange
    return changes


def _changed(one: SetDone, change: Change) -> SetDone:
    load = one.load if change.load is None else _load(one, change.load)
    return replace(
        one,
        reps=one.reps if change.reps is None else change.reps,
        load=load,
        effort=one.effort if change.effort is None else change.effort,
        failure=one.failure or change.failure,
    )


def _load(one: SetDone, told: Piece) -> Load:
    unit = told.unit or (one.load.unit if one.load else None)
    if unit is None or not 0 < told.value < HEAVIEST:
        raise NoChange
    return Load(told.value, unit, one.load.basis if one.load else Basis.TOTAL)


class _Reader:
    def __init__(self, pieces: Sequence[Piece], count: int) -> None:
        self.pieces = [piece for piece in pieces if not _is_passed(piece)]
        self.count, self.at = count, 0

    def run(self) -> list[Change]:
        """The changes, each of some of the sets.

        Errors: NoChange.
        """
        found: list[Change] = []
        place_first = self._place_stands_here()
        current = Change()
        while self.at < len(self.pieces):
            if self._place_stands_here():
                if place_first and current.tells:
                    found, current = [*found, current], Change()
                current.places = (*(current.places or ()), *self._place())
                if not place_first:
                    found, current = [*found, current], Change()
            else:
                self._value(current)
        if current.tells or current.places is not None:
            found.append(current)
        told = [change for change in found if change.tells]
        named = [place for change in told for place in change.places or ()]
        if len(told) < len(found) or len(set(named)) < len(named):
            raise NoChange
        if any(change.places is None and change.reps is not None for change in told):
            raise NoChange
        return told

    def places_and_changes(self) -> tuple[tuple[int, ...], list[Change]]:
        """What stands ahead of the word for the plan: sets that went by it, "first two as planned", or changes.

        Errors: NoChange.
        """
        if any(piece.kind is K.NUMBER and self.pieces[at - 1].kind in LINKS for at, piece in enumerate(self.pieces)):
            return (), self.run()
        found: tuple[int, ...] = ()
        while self.at < len(self.pieces) and self._place_stands_here():
            found += self._place()
        return found, []

    def _piece(self, ahead: int = 0) -> Piece | None:
        return self.pieces[self.at + ahead] if self.at + ahead < len(self.pieces) else None

    def _place_stands_here(self) -> bool:
        piece, behind = self._piece(), self._piece(1)
        if piece is None:
            return False
        if piece.kind is K.SETS:
            return behind is not None and behind.kind is K.NUMBER and behind.role is Role.BARE
        before = self.pieces[self.at - 1].kind if self.at else None
        second = piece.text == SECOND and piece.kind is K.SECONDS and before is not K.NUMBER
        return piece.kind in (K.FIRST, K.LAST, K.ORDINAL, K.EXCEPT) or second

    def _place(self) -> tuple[int, ...]:
        piece = self.pieces[self.at]
        self.at += 1
        if piece.kind is K.SETS:
            number = self.pieces[self.at]
            self.at += 1
            return self._at(int(number.value) - 1)
        if piece.text == SECOND and piece.kind is K.SECONDS:
            self._pass_sets()
            return self._at(1)
        if piece.kind is K.ORDINAL:
            self._pass_sets()
            return self._at(piece.told - 1)
        if piece.kind is K.LAST and piece.told == LAST_OF_THE_REPS:
            raise NoChange  # "the last rep"
        several = self._several()
        return tuple(range(several)) if piece.kind is K.FIRST else tuple(range(self.count - several, self.count))

    def _several(self) -> int:
        """ "the last 2 at 8": how many of them; one where a number alone stands behind, which tells what it came to."""
        number, behind = self._piece(), self._piece(1)
        if number is None or number.kind is not K.NUMBER or not 1 < number.value < self.count:
            self._pass_sets()
            return 1
        counts = number.role is Role.SETS or behind is None or behind.kind in LINKS or behind.kind is K.NUMBER
        if not counts:
            return 1
        self.at += 1
        return int(number.value)

    def _pass_sets(self) -> None:
        piece = self._piece()
        if piece is not None and piece.kind is K.SETS:
            self.at += 1

    def _at(self, place: int) -> tuple[int, ...]:
        if not 0 <= place < self.count:
            raise NoChange
        return (place,)

    def _value(self, change: Change) -> None:
        linked = False
        by_sign = False
        piece = self._piece()
        while piece is not None and piece.kind in LINKS:
            linked, by_sign = True, by_sign or piece.kind is K.AT
            self.at += 1
            piece = self._piece()
        if piece is None:
            raise NoChange
        self.at += 1
        if piece.kind is K.EFFORT and len(piece.efforts) == 1 and change.effort is None:
            change.effort = piece.efforts[0]
        elif piece.kind is K.FAILURE:
            change.failure = True
        elif piece.kind is K.NUMBER:
            self._number(change, piece, linked=linked, by_sign=by_sign)
        else:
            raise NoChange

    def _number(self, change: Change, piece: Piece, *, linked: bool, by_sign: bool) -> None:
        whole = piece.value == int(piece.value) and piece.value > 0
        if by_sign and change.reps is not None and 1 <= piece.value <= TOP_OF_SCALE and piece.role is Role.BARE:
            change.effort = Effort.from_rpe(piece.value)
        elif piece.role is Role.LOAD or (piece.role is Role.BARE and (piece.value > MOST_LOADED_REPS or not whole)):
            if change.load is not None or (piece.role is Role.BARE and not linked and change.places is None):
                raise NoChange
            change.load = piece
        elif piece.role in (Role.BARE, Role.REPS) and whole and change.reps is None:
            change.reps = int(piece.value)
        else:
            raise NoChange


def _is_passed(piece: Piece) -> bool:
    but_last = piece.kind is K.EXCEPT and piece.end - piece.start > len("but last") and piece.text == "but"
    return piece.kind in PASSED and not but_last
