"""What the rules for one thing would take half of: it is asked about, and nothing is changed.

told in part = effort ( cut | "but" ) place [ "was" ] NUMBER         "rpe 8 but the last was 10": reps, or an effort
             | place effort ( cut | "and" ) place NUMBER             "first two rpe 7, last 9": the same
             | one set less, or more ( cut | "and" ) place NUMBER    "one less set and the last was 4"
             | SETS "were" "only" NUMBER ( cut | "and" ) place NUMBER
             | DELETE any ( cut | "and" ) ADD whole set              "delete squat and add bench 80x4"
             | DELETE that "and" whole set                           "delete that and 85x6"
             | COUNTS AS WARMUP ( cut | "and" ) NUMBER               "count as warmup and 7 reps"
             | PAIR ( cut | "and" ) place "was" NUMBER               "4x8, last was 6"
             | load SWAPPED                                          "the weights are swapped"
             | NUMBER "were" in a unit                               "2 were in pounds"
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from engine.reading.corrections.correcting import cue_at
from engine.reading.corrections.parts import MOST_PARTS, is_all
from engine.reading.corrections.said_to_be import is_be
from engine.reading.marks.sets_called_warm_ups import COUNTS_AS
from engine.reading.prepare import Prepared
from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import any_cued, is_cued
from engine.reading.words.kinds import PLACING, K
from engine.reading.words.phrasebook import phrasebook, spoken_words
from engine.reading.words.pieces import Piece, Role, kinds_of

CUTS = frozenset((K.COMMA, K.STOP, K.DASH, K.AND, K.EXCEPT))
ANDS = frozenset(("andword", "but"))
RATED = frozenset((K.RPE, K.RIR, K.EFFORT, K.LEFT, K.RESERVE))
OF_AN_EFFORT = RATED | {K.RESERVE_LEFT, K.NUMBER, K.FILLER}
BESIDE_A_NUMBER = PLACING | {K.NUMBER, K.SETS, K.FILLER, K.COMMA, K.RESERVE_LEFT, K.STOP, K.REPS}
ONE_MORE, UNITS = frozenset((K.ANOTHER, K.MORE)), frozenset((K.KG, K.LB))
FEWER, ADDS, LOADS, REPS = (frozenset((cue,)) for cue in ("fewer", "addsets", "loadword", "repword"))
OF_A_PLACE = PLACING | {K.SETS, K.NAME}
NEW_SETS = frozenset((K.NAME, K.TIMES))
THAT = frozenset(("that", "those"))
AN, TOP = frozenset(("an",)), 10


def is_told_in_part(prepared: Prepared) -> bool:
    """Whether more is told than the rules for one correction take, or it is not clear of which number."""
    if K.TIMES in prepared.told:
        return _deletes_and_adds(prepared) or _tells_a_pair_and_what_was(prepared)
    if not UNITS.isdisjoint(prepared.told) and _so_many_in_a_unit(prepared.spoken):
        return True
    if K.NUMBER not in prepared.told:
        return _swaps_loads(prepared)
    if prepared.told.isdisjoint(OF_A_PLACE):
        return _calls_it_a_warm_up(prepared)
    ahead, behind = _at_the_joint(prepared.spoken)
    if not ahead or not behind:
        return False
    if _goes_on_with_bare_numbers(ahead, behind):
        return True
    if _places_a_number(behind):
        return _rates(ahead, behind) or _tells_how_many(ahead, prepared)
    return _places_a_number(ahead) and _counts_away_or_more(behind, prepared)


def _calls_it_a_warm_up(prepared: Prepared) -> bool:
    """ "count as warmup and 7 reps": the set before with so many reps, or one more."""
    ahead, behind = _at_the_joint(prepared.spoken) if K.WARMUP in prepared.told else ((), ())
    if not ahead or ahead[-1].kind is not K.WARMUP or any(map(is_be, ahead)) or len(_numbers(behind)) != 1:
        return False
    words = prepared.cleaned[: ahead[-1].start].lower().split()
    return any_cued(words, COUNTS_AS) and prepared.told.isdisjoint(NEW_SETS)


def _at_the_joint(pieces: Sequence[Piece]) -> tuple[Sequence[Piece], Sequence[Piece]]:
    joint = next((at for at in range(1, len(pieces)) if _joins(pieces[at]) and not _is_of_fewer(pieces, at)), 0)
    return pieces[:joint], pieces[joint + 1 :]


def _is_of_fewer(pieces: Sequence[Piece], at: int) -> bool:
    """ "una serie menos" is a set less; "todas menos la última" excepts one."""
    return any(piece.kind is K.SETS for piece in pieces[max(0, at - 2) : at]) and is_cued(pieces[at].text, FEWER)


def _joins(piece: Piece) -> bool:
    return piece.kind in CUTS or is_cued(piece.text, ANDS)


def _places_a_number(behind: Sequence[Piece]) -> bool:
    """Whether a place and a bare number, and nothing else, stand behind: "the last was 4", "set 3 was 9"."""
    numbers = [piece for piece in behind if piece.kind is K.NUMBER]
    placed = any(piece.kind in PLACING for piece in behind)
    numbered = len(numbers) > 1 and any(a.kind is K.SETS and b.kind is K.NUMBER for a, b in pairwise(behind))
    told = len(numbers) - (not placed)
    bare = bool(numbers) and numbers[-1].role in (Role.BARE, Role.REPS)
    return (
        (placed or numbered)
        and told == 1
        and bare
        and all(piece.kind in BESIDE_A_NUMBER or is_be(piece) for piece in behind)
    )


def _rates(ahead: Sequence[Piece], behind: Sequence[Piece]) -> bool:
    """ "rpe 8, last one 9": an effort, or the reps; "all rpe 8 but the last 9" has a rule of its own."""
    if any(map(is_all, ahead)) and any(piece.kind in PLACING for piece in behind):
        return False
    rated = any(piece.kind in RATED for piece in ahead) and all(piece.kind in OF_AN_EFFORT for piece in ahead)
    number = next(piece for piece in reversed(behind) if piece.kind is K.NUMBER)
    more = len(_numbers(ahead)) > 1 and not any(map(is_be, ahead))
    counted = more or number.role is Role.REPS
    return rated and not counted and number.value <= TOP


def _goes_on_with_bare_numbers(ahead: Sequence[Piece], behind: Sequence[Piece]) -> bool:
    """ "first two rpe 7, last 9", "first rpe 7, second 8, last 9": efforts as well, or reps."""
    first, then = kinds_of(ahead), kinds_of(behind)
    if OF_A_PLACE.isdisjoint(first) or OF_A_PLACE.isdisjoint(then) or any(map(is_be, behind)):
        return False
    if K.NAME in first and len(_numbers(ahead)) > 1:
        return False  # "squat 100 5 5 rpe 8, bench 8"
    told = pairwise([*ahead[-1:], *behind])
    bare = [piece for before, piece in told if _is_bare(piece) and before.kind is not K.SETS]
    return not RATED.isdisjoint(first) and RATED.isdisjoint(then) and any(piece.value <= TOP for piece in bare)


def _is_bare(piece: Piece) -> bool:
    return piece.kind is K.NUMBER and piece.role is Role.BARE and not piece.spelled


def _tells_how_many(ahead: Sequence[Piece], prepared: Prepared) -> bool:
    """ "one less set", "one more set", "sets were only 3"."""
    if _counts_away_or_more(ahead, prepared):
        return True
    numbers = _numbers(ahead)
    counted = ahead[0].kind is K.SETS or (ahead[0].kind is K.FILLER and "sets" in ahead[0].text.split())
    return counted and len(numbers) == 1 and any(piece.kind is K.ONLY or is_be(piece) for piece in ahead[1:])


def _counts_away_or_more(pieces: Sequence[Piece], prepared: Prepared) -> bool:
    """ "one less set", "1 set fewer", "one more set"; "less rest" counts none."""
    sets = any(piece.kind is K.SETS or (piece.kind is K.NUMBER and piece.role is Role.SETS) for piece in pieces)
    more = any(a.kind in ONE_MORE and b.kind is K.SETS for a, b in pairwise(pieces))
    words = prepared.cleaned[pieces[0].start : pieces[-1].end].lower().split()
    return len(_numbers(pieces)) <= 1 and (more or (sets and any_cued(words, FEWER)))


def _numbers(pieces: Sequence[Piece]) -> list[Piece]:
    return [piece for piece in pieces if piece.kind is K.NUMBER]


def _so_many_in_a_unit(pieces: Sequence[Piece]) -> bool:
    """ "2 were in pounds", "one was in lb": which, nobody can say."""
    first = pieces[0]
    counted = first.kind is K.NUMBER and first.role is not Role.LOAD and first.value <= MOST_PARTS
    one = first.kind is K.FILLER and is_cued(first.text, AN)
    if not (counted or one) or len(pieces) < 2 or not is_be(pieces[1]):
        return False
    return all(piece.kind in UNITS or piece.kind in (K.FILLER, K.STOP) for piece in pieces[2:])


def _swaps_loads(prepared: Prepared) -> bool:
    """ "the weights are swapped": those of sets, or of lifts; "reps and weight swapped" tells both."""
    words = [word for word, _ in spoken_words(prepared.tokens)]
    if not any_cued(words, LOADS) or any_cued(words, REPS):
        return False
    cues = phrasebook().cues["swapped"]
    return any(cue_at(words, at, cues) for at in range(len(words)))


def _deletes_and_adds(prepared: Prepared) -> bool:
    words, cues = [word for word, _ in spoken_words(prepared.tokens)], phrasebook().cues
    if not cue_at(words, 0, cues["delete"]):
        return False
    ahead, behind = _at_the_joint(prepared.spoken)
    adds = any(piece.kind is K.ADDED or is_cued(piece.text, ADDS) for piece in behind[:2])
    if any(piece.kind is K.NAME for piece in ahead):
        return adds
    joined = kind_at(prepared.spoken, len(ahead)) is K.AND and K.NAME not in prepared.told
    return (adds or joined) and K.DROP not in prepared.told and _points_back(ahead)


def _points_back(ahead: Sequence[Piece]) -> bool:
    """ "delete that", "delete the last set"; "lose the belt" and "take 10kg off" are of no set."""
    said = any(piece.kind in PLACING or is_cued(piece.text, THAT) for piece in ahead)
    return said and K.NUMBER not in [piece.kind for piece in ahead]


def _tells_a_pair_and_what_was(prepared: Prepared) -> bool:
    """ "4x8, last was 6": those that stand, or as many more."""
    if prepared.told.isdisjoint(PLACING):
        return False
    ahead, behind = _at_the_joint(prepared.spoken)
    pair = [piece.kind for piece in ahead if piece.kind is not K.FILLER] == [K.NUMBER, K.TIMES, K.NUMBER]
    return pair and not any(map(is_be, ahead)) and any(map(is_be, behind)) and _places_a_number(behind)
