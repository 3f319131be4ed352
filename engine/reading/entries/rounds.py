"""Rounds: several exercises done in turn so many times, and which exercises of a message belong to them.

rounds = "(" exercises ")" "x" NUMBER | NUMBER "x" "(" exercises ")"
       | NUMBER "rounds" [ ":" | "of" ] exercises     up to an empty line, or a "then" that begins a line or sentence
       | ( "circuit" | "superset" ) "x" NUMBER exercises
       | exercises NUMBER "rounds"                    where the words end their line or sentence: what stands ahead
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, Piece, Role

MOST_ROUNDS = 20
TAKEN_IN_TURN = frozenset((K.ROUNDS, K.SUPERSET, K.OPEN))
COUNTS = frozenset((K.NUMBER, K.COUNT, K.BAR))
SENTENCE_STARTS = frozenset((K.LINE, K.STOP))
ENDS = frozenset((K.LINE, K.STOP, K.COMMA, K.THEN, None))


class Rounds(NamedTuple):
    """How many rounds, and where in the message they begin and end."""

    times: int
    start: int
    end: int

    def of(self, pieces: Sequence[Piece]) -> int:
        """How often what these pieces tell was done."""
        place = next((piece.start for piece in pieces if piece.kind in COUNTS), -1)
        return self.times if self.start <= place < self.end else 1


def without_rounds(pieces: list[Piece]) -> tuple[list[Piece], Rounds | None]:
    """The pieces without "3 rounds of", and what it reaches over; None where no rounds are told."""
    pieces = _without_numbers_of_rounds(pieces)
    for at, piece in enumerate(pieces):
        if piece.kind is K.OPEN and (found := _bracketed(pieces, at)) is not None:
            return found
        if piece.kind is K.ROUNDS and at and _counts_rounds(pieces[at - 1]):
            return _reaching(pieces, at)
        if piece.kind in (K.ROUNDS, K.SUPERSET) and _is_multiplied(pieces, at):
            return _multiplied(pieces, at)
    return pieces, None


def _without_numbers_of_rounds(pieces: list[Piece]) -> list[Piece]:
    """ "bench 80x8 round 2 bench 80x7", "back for round 2. bench 80x8": which round it is, and no count of them."""
    out: list[Piece] = []
    at = 0
    while at < len(pieces):
        behind = [piece.kind for piece in pieces[at + 1 : at + 3]]
        numbered = pieces[at].kind is K.ROUNDS and (
            behind in ([K.NUMBER, K.NAME], [K.NUMBER, K.COLON]) or _heads_a_clause(pieces, at)
        )
        if numbered and out and not _counts_the_rounds(out) and pieces[at + 1].role is Role.BARE:
            out.append(pieces[at]._replace(kind=K.STOP))
            at += 2 + (behind[1] is K.COLON)
        else:
            out.append(pieces[at])
            at += 1
    return out


def _heads_a_clause(pieces: list[Piece], at: int) -> bool:
    """Whether "round 2" ends a clause ahead of all lifts and sets, of which another begins behind it."""
    kinds = [piece.kind for piece in pieces[at + 1 : at + 4]]
    return (
        kinds[:1] == [K.NUMBER]
        and kinds[1:] in ENDED_AHEAD_OF_A_LIFT
        and SETS.isdisjoint([piece.kind for piece in pieces[:at]])
    )


SETS = frozenset((K.NAME, K.NUMBER, K.TIMES, K.COUNT))
ENDED_AHEAD_OF_A_LIFT = ([K.STOP, K.NAME], [K.COMMA, K.NAME], [K.LINE, K.NAME], [K.DASH, K.NAME])


def _counts_the_rounds(ahead: list[Piece]) -> bool:
    """ "4 rounds of 5 chins": a count stands ahead, with nothing in front of it; or a line begins here."""
    if ahead[-1].kind is K.LINE:
        return True
    return ahead[-1].kind is K.NUMBER and (len(ahead) < 2 or ahead[-2].kind in ENDS)  # "80x8 round 2" has an x there


def _bracketed(pieces: list[Piece], at: int) -> tuple[list[Piece], Rounds] | None:
    """ "(bench 80x8, pulldown 60x10) x3", "3x (bench 80x8, pulldown 60x10)"; None where brackets hold fewer lifts."""
    ends = min(len(pieces), at + LONGEST_ROUND)
    close = next((place for place in range(at, ends) if pieces[place].kind is K.CLOSE), at)
    if [piece.kind for piece in pieces[at:close]].count(K.NAME) < LIFTS_IN_TURN:
        return None
    inside, ahead, behind = pieces[at + 1 : close], pieces[:at], pieces[close + 1 :]
    if [piece.kind for piece in behind[:2]] == [K.TIMES, K.NUMBER]:
        count, behind = behind[1], behind[2:]
    elif [piece.kind for piece in ahead[-2:]] == [K.NUMBER, K.TIMES]:
        count, ahead = ahead[-2], ahead[:-2]
    else:
        return None
    if not _counts_rounds(count):
        return None
    return ahead + inside + behind, Rounds(int(count.value), inside[0].start, pieces[close].start)


LIFTS_IN_TURN = 2
LONGEST_ROUND = 150
"""Pieces; more than anybody does in turn."""


def _is_multiplied(pieces: list[Piece], at: int) -> bool:
    """ "circuit x3:", "superset x 4" on a line of its own."""
    behind = pieces[at + 1 : at + 4]
    shape = [piece.kind for piece in behind[:2]] == [K.TIMES, K.NUMBER] and _counts_rounds(behind[1])
    return shape and len(behind) > 2 and behind[2].kind in (K.COLON, K.LINE)


def _multiplied(pieces: list[Piece], at: int) -> tuple[list[Piece], Rounds]:
    ahead, behind = pieces[:at], pieces[at + 3 :]
    return ahead + behind, Rounds(int(pieces[at + 2].value), pieces[at].start, _end(behind))


def _counts_rounds(piece: Piece) -> bool:
    return piece.kind is K.NUMBER and 1 <= piece.value <= MOST_ROUNDS


def _reaching(pieces: list[Piece], at: int) -> tuple[list[Piece], Rounds]:
    count = int(pieces[at - 1].value)
    start = at - 1 - (at >= 2 and pieces[at - 2].kind is K.TIMES)
    end = at + 1
    if end < len(pieces) and pieces[end].kind is K.PLUS:
        pieces = [*pieces[:end], pieces[end]._replace(kind=K.ALTERED), *pieces[end + 1 :]]  # "7 rounds + 3"
    while end < len(pieces) and pieces[end].kind in (K.COLON, K.OF):
        end += 1
    ahead, behind = pieces[:start], pieces[end:]
    heads = not ahead or ahead[-1].kind in SENTENCE_STARTS or end > at + 1
    after = behind[0].kind if behind else None
    if not _holds_sets(behind) or (after in ENDS and not heads and _holds_sets(ahead)):
        return ahead + behind, Rounds(count, 0, pieces[start].start)
    return ahead + behind, Rounds(count, pieces[_load_ahead(ahead)].start, _end(behind))


def _load_ahead(ahead: Sequence[Piece]) -> int:
    """The place of the load of what is done in rounds, "carry 30kg 3 rounds of 50m"; behind all of it where none is."""
    at = len(ahead) - 1
    while at >= max(0, len(ahead) - NEAR) and ahead[at].kind in BESIDE_A_LOAD:
        at -= 1
    load, before = (ahead[at], ahead[at - 1].kind) if at > 0 else (None, None)
    held = any(piece.kind is K.WITH for piece in ahead[max(0, at - 2) : max(0, at)])  # "with the 24"
    heavy = load is not None and (held or load.role in LOADS or load.value > MOST_LOADED_REPS)
    told = load is not None and load.kind is K.NUMBER and heavy
    return at if told and before in AHEAD_OF_A_LOAD else len(ahead)


LOADS = frozenset((Role.LOAD, Role.PLURAL))
BESIDE_A_LOAD = frozenset((K.EACH, K.COMMA, K.COLON, K.FILLER, K.KETTLEBELL, K.DUMBBELL))
AHEAD_OF_A_LOAD = frozenset((K.NAME, K.WITH, K.AT, K.COMMA, K.COLON, K.FILLER))
NEAR = 6
"""Pieces between a load and the count of rounds. Common practice, no source."""


def _holds_sets(pieces: Sequence[Piece]) -> bool:
    return any(piece.kind in COUNTS for piece in pieces)


def _end(behind: list[Piece]) -> int:
    """Where the rounds end: at an empty line or a "then" that begins a line or a sentence, once a set was told."""
    told = False
    for at, piece in enumerate(behind):
        told = told or piece.kind in COUNTS
        begins = at > 0 and behind[at - 1].kind in SENTENCE_STARTS
        if told and begins and piece.kind in (K.THEN, K.LINE):
            return piece.start
    return behind[-1].end + 1
