"""The reps of each set, told by parts in an answer: "8 on the first two, 7 then 6", "8s but 6 on the last".

answer = group { group }     group = reps [ part ] | part reps     part = ( "first" | "last" ) [ NUMBER ]

A group without a part has one set where there are several of them, and all that are left where it stands alone.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role

MOST_REPS = 100
REPS = frozenset((Role.BARE, Role.REPS, Role.PLURAL))


@dataclass(slots=True)
class Group:
    """So many reps, in as many sets as its part says; 0: no part was told."""

    reps: int
    sets: int = 0
    last: bool = False


def names_parts(pieces: Sequence[Piece]) -> bool:
    """Whether reps are told for the first or the last of the sets."""
    return any(piece.kind in (K.FIRST, K.LAST) for piece in pieces)


def reps_by_parts(pieces: Sequence[Piece], count: int) -> list[int] | None:
    """The reps of each of `count` sets; None where the parts do not make so many."""
    groups = _groups(pieces)
    if not groups or not all(1 <= group.reps <= MOST_REPS for group in groups):
        return None
    open_groups = [group for group in groups if not group.sets]
    left = count - sum(group.sets for group in groups)
    if len(open_groups) == 1:
        open_groups[0].sets = left
    else:
        for group in open_groups:
            group.sets = 1
    groups.sort(key=lambda group: group.last)
    told = [group.reps for group in groups for _ in range(group.sets)]
    return told if len(told) == count and all(group.sets > 0 for group in groups) else None


def _groups(pieces: Sequence[Piece]) -> list[Group]:
    groups: list[Group] = []
    part, last = 0, False  # the part told ahead of its reps: "last one 6"
    for at, piece in enumerate(pieces):
        if piece.kind is K.NUMBER and _counts_a_part(pieces, at):
            continue
        if piece.kind is K.NUMBER:
            if piece.role not in REPS or piece.value != int(piece.value):
                return []
            groups.append(Group(int(piece.value), part, last))
            part, last = 0, False
        elif piece.kind in (K.FIRST, K.LAST):
            sets = _sets_of(pieces, at)
            if groups and not groups[-1].sets and _on_it(pieces, at):
                groups[-1].sets, groups[-1].last = sets, piece.kind is K.LAST
            else:
                part, last = sets, piece.kind is K.LAST
    return groups


def _counts_a_part(pieces: Sequence[Piece], at: int) -> bool:
    """ "first two": the number counts sets."""
    return at > 0 and pieces[at - 1].kind in (K.FIRST, K.LAST) and (pieces[at].spelled or pieces[at].role is Role.SETS)


def _sets_of(pieces: Sequence[Piece], at: int) -> int:
    counted = at + 1 < len(pieces) and pieces[at + 1].kind is K.NUMBER and _counts_a_part(pieces, at + 1)
    return int(pieces[at + 1].value) if counted else 1


def _on_it(pieces: Sequence[Piece], at: int) -> bool:
    """ "8 on the first two": the part belongs to the reps in front of it."""
    linked = pieces[at].text.startswith(("on", "for", "in"))
    return linked or (at > 0 and pieces[at - 1].text.split()[:1] in (["on"], ["for"], ["in"]))
