"""Numbers of sets that the lines of a message begin with, and no sign behind them: "bench", "1 80 8", "2 80 8".

rows = ( LINE | NAME ) 1 [ "-" | ":" ] NUMBER+ LINE 2 [ "-" | ":" ] NUMBER+ ...     counting up from one, line by line
Two rows of several numbers may tell "one set of eight, two of six" as well: asked. Where a single number that is no
reps stands behind each, the first ones are the reps: "1 100", "2 95".
"""

from __future__ import annotations

from engine.reading.words.ahead import kind_at
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, Piece, Role, kinds_in_order, places_of

FEWEST_SURE = 3
SIGNS = frozenset((K.DASH, K.COLON))
NUMBERING = frozenset((K.NUMBER, K.FILLER))
"""A number ahead of a load may have been taken for one of implements, which counts nothing: "2 80kg"."""
TYPED = frozenset((Role.SECONDS, Role.METRES, Role.REPS))


def without_row_numbers(pieces: list[Piece]) -> list[Piece]:
    """The pieces, of several lines, without such numbers."""
    kinds = kinds_in_order(pieces)
    gone: set[int] = set()
    doubtful = False
    rows: list[tuple[int, int]] = []
    for start, end in [*_lines(kinds), (len(pieces), len(pieces))]:
        behind = _behind_the_number(pieces, start, len(rows) + 1)
        if rows and not behind:
            numbers = [_numbers(kinds, place, stop) for place, stop in rows]
            if len(rows) > 1 and not _are_reps(pieces, rows):
                gone |= {at for place, _ in rows for at in range(place - 1 - (kinds[place - 1] in SIGNS), place)}
                glued = any(kinds[place - 1] is K.DASH and pieces[place].glued for place, _ in rows)
                doubtful = doubtful or glued or (len(rows) < FEWEST_SURE and max(numbers) > 1)
            rows = []
            behind = _behind_the_number(pieces, start, 1)
        if behind:
            rows.append((behind, end))
    if not gone:
        return pieces
    left = [piece for at, piece in enumerate(pieces) if at not in gone]
    return [*left, left[-1]._replace(kind=K.UNCLEAR, text="", start=left[-1].end)] if doubtful else left


def _lines(kinds: list[K]) -> list[tuple[int, int]]:
    """Where each line starts, behind the lift that it names, and where it ends."""
    ends = [*places_of(K.LINE, kinds), len(kinds)]
    starts = [0, *(end + 1 for end in ends[:-1])]
    return [(start + (kinds[start : start + 1] == [K.NAME]), end) for start, end in zip(starts, ends, strict=True)]


def _behind_the_number(pieces: list[Piece], at: int, place: int) -> int:
    """The place behind the number of that set at the start of a line; 0 where none stands there."""
    if kind_at(pieces, at) not in NUMBERING or pieces[at].value != place or pieces[at].role is not Role.BARE:
        return 0
    behind = at + 1 + (kind_at(pieces, at + 1) in SIGNS)
    return behind if kind_at(pieces, behind) is K.NUMBER else 0


def _numbers(kinds: list[K], start: int, end: int) -> int:
    return kinds[start:end].count(K.NUMBER)


def _are_reps(pieces: list[Piece], rows: list[tuple[int, int]]) -> bool:
    """ "1 100", "2 95", "3 90": a load behind each."""
    alone = all(end == place + 1 for place, end in rows)
    return alone and any(
        pieces[place].role not in TYPED and pieces[place].value > MOST_LOADED_REPS for place, _ in rows
    )
