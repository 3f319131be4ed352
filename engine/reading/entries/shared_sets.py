"""Sets told once for several lifts: "curls and pushdowns both 3x15/3x12", "squat and leg press 3x10, 80 and 160".

ahead  = [ "both" | "all" ] counts [ "each" ] [ ":" | "of" ] ( name [ load ] )+     "both 3x15: curls 20, hammers 10s"
shares = pair ( "/" | "and" | "," ) pair ...            a pair of sets and reps for each lift, in the order named
       | counts load ( "/" | "and" | "," ) load ...     the same counts for all, and a load for each
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook
from engine.reading.words.pieces import MOST_LOADED_REPS, Piece, Role

HEADS = frozenset((K.BOTH, K.FILLER, K.EACH, K.FOR))
BEHIND_COUNTS = HEADS | {K.COLON, K.OF, K.LINE, K.AND}
PARTING = frozenset((K.SLASH, K.AND, K.COMMA, K.PLUS))
LINKS = frozenset((K.AT, K.WITH, K.FILLER, K.COLON, K.BOTH, K.EACH, K.LINE))
SAID_TOGETHER = frozenset((K.AND, K.SLASH, K.PLUS, K.COMMA))


def counts_ahead(pieces: list[Piece]) -> tuple[list[Piece], list[Piece]]:
    """The sets and reps told ahead of all lifts ("both 3x15:"), and the pieces behind; empty where none are."""
    at = 0
    while at < len(pieces) and pieces[at].kind in HEADS:
        at += 1
    kinds = [piece.kind for piece in pieces[at : at + 3]]
    said = kinds == [K.NUMBER, K.OF, K.NUMBER] and pieces[at].role is Role.SETS
    if not said and kinds != [K.NUMBER, K.TIMES, K.NUMBER]:
        return [], pieces
    end = at + 3
    while end < len(pieces) and pieces[end].kind in BEHIND_COUNTS:
        end += 1
    told = [piece.kind for piece in (*pieces[:at], *pieces[at + 3 : end])]
    all_of_it = any(piece.text in phrasebook().cues["all"] for piece in pieces[:at])
    shared = all_of_it or K.COLON in told or K.BOTH in told or K.EACH in told
    named = end < len(pieces) and pieces[end].kind is K.NAME
    return (pieces[at : at + 3], pieces[end:]) if shared and named else ([], pieces)


def shares(pieces: Sequence[Piece], lifts: int) -> list[list[Piece]]:
    """The pieces of each lift, as many as `lifts`; empty where the numbers do not part so."""
    told = [piece for piece in pieces if piece.kind is not K.BOTH]
    while told and (told[0].kind in PARTING or told[0].kind is K.FILLER):
        del told[0]
    return _pairs(told, lifts) or _loads(_counts_first(told), lifts)


def _counts_first(told: list[Piece]) -> list[Piece]:
    """ "100/80/140 x5" as "x5 100/80/140": loads with the reps of all of them behind."""
    kinds = [piece.kind for piece in told[-2:]]
    loads = told[:-2]
    listed = kinds == [K.TIMES, K.NUMBER] and all(one.kind in PARTING or _is_load(one) for one in loads)
    if not listed or not loads or _is_load(told[-1]):
        return told
    return [told[-1]._replace(role=Role.REPS), *loads]


def _pairs(told: list[Piece], lifts: int) -> list[list[Piece]]:
    parts: list[list[Piece]] = [[]]
    for piece in told:
        if piece.kind in PARTING:
            parts.append([])
        else:
            parts[-1].append(piece)
    plain = all(_is_pair(part) for part in parts)
    return parts if len(parts) == lifts and plain else []


def _is_pair(part: list[Piece]) -> bool:
    kinds = [piece.kind for piece in part]
    return kinds[:3] == [K.NUMBER, K.TIMES, K.NUMBER] and kinds.count(K.TIMES) == 1


def _loads(told: list[Piece], lifts: int) -> list[list[Piece]]:
    start = len(told)
    loads: list[Piece] = []
    while start and (told[start - 1].kind in PARTING or _is_load(told[start - 1])):
        start -= 1
        if told[start].kind is K.NUMBER:
            loads.insert(0, told[start])
        if len(loads) == lifts:
            break
    head = told[:start]
    while head and (head[-1].kind in PARTING or head[-1].kind in LINKS):
        head.pop()
    counted = any(piece.kind in (K.TIMES, K.COUNT) or piece.role in (Role.SETS, Role.REPS) for piece in head)
    parted = [piece.kind for piece in told[start:]]
    if len(loads) != lifts or not counted or any(_is_load(piece) for piece in head) or len(parted) != 2 * lifts - 1:
        return []
    return [[*head, load] for load in loads]


def _is_load(piece: Piece) -> bool:
    if piece.kind is not K.NUMBER:
        return False
    return piece.role in (Role.LOAD, Role.PLURAL) or (piece.role is Role.BARE and piece.value > MOST_LOADED_REPS)


def without_count_ahead(ahead: list[Piece], behind: list[Piece]) -> list[Piece]:
    """ "3x db curl 12kg 10" counts sets; in "3x db curl 12kg 3x10" they are told again, else joined to nothing."""
    if [piece.kind for piece in ahead[-2:]] != [K.NUMBER, K.TIMES]:
        return ahead + behind
    kinds = [piece.kind for piece in behind]
    if K.NUMBER not in kinds:
        return ahead + behind
    if K.TIMES not in kinds:
        load_next = behind[kinds.index(K.NUMBER)].role is Role.LOAD
        return [*ahead[:-2], ahead[-2]._replace(role=Role.SETS), *behind] if load_next else ahead + behind
    counts = behind[kinds.index(K.TIMES) - 1]
    if counts.kind is K.NUMBER and counts.value == ahead[-2].value:
        return ahead[:-2] + behind
    return [*ahead[:-1], *behind]


def shared_clause(pieces: list[Piece]) -> list[Piece]:
    """ ", 3x12 each", ", both 3x12" at the end; empty where the pieces end otherwise."""
    commas = [at for at, piece in enumerate(pieces) if piece.kind is K.COMMA]
    last = pieces[commas[-1] :] if commas else []
    told = any(piece.kind is K.BOTH for piece in last) or (last and last[-1].kind is K.EACH and last[-1].text == "each")
    return last if told and any(piece.kind is K.TIMES or piece.role is Role.SETS for piece in last) else []


def ends_with_each(pieces: list[Piece]) -> bool:
    """ "3x8 each", of lifts; "each leg" is a side."""
    return bool(pieces) and pieces[-1].kind is K.EACH and pieces[-1].text in ("each", "apiece")
