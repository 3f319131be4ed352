"""Words that may be of a set that stands or of one more: what is sure is put right, the rest is asked in words.

told = FIRST NUMBER remark cut* NUMBER      "first four fine, then 3": the one set behind them; of several it is open
     | ( MISS | FAILURE | TOP-SET ) "was" load [ "x" reps ]     where no set that stands has the mark or the load
     | "all" NUMBER "reps" remark                               where no set has so many, or they are marked
     | LAST NUMBER "+" NUMBER                                   behind sets that were told together
     | PREVIOUS "was" NUMBER                                    the latest, or the one before it
     | ( ONLY | GOT ) NUMBER THEREON                            "only got 5 on that one": of the set just told
     | [ ONLY | GOT ] NUMBER+ cut place NUMBER                   "only 7, last one 6" behind sets told together
     | sets "x" NUMBER [ load ] cut place NUMBER                the same, where it is the load of those that stand
Words in capitals are kinds of pieces or cues of the language files.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from engine.reading.corrections.nothing_changed import CONFIRMED, OF_ONE_MORE, REPS_APART, WHICH_SET, nothing_changed
from engine.reading.corrections.parts import Part, says_all, sets_of
from engine.reading.corrections.said_to_be import in_full, is_be
from engine.reading.latest_sets import last_message, latest_of_it, run_of_it
from engine.reading.prepare import Prepared
from engine.reading.values import Context, Correction, NoSets
from engine.reading.words.cues import CUES_OF, is_cued
from engine.reading.words.kinds import PLACING, K
from engine.reading.words.phrasebook import phrasebook, spoken_words
from engine.reading.words.pieces import MOST_LOADED_REPS, Piece, Role, kinds_of, may_count_reps
from engine.values.load import Basis
from engine.values.sets import SetDone, SetRecord

LONGEST = 14
LONGEST_POINTER = 4
CUTS = frozenset((K.COMMA, K.STOP, K.DASH, K.THEN, K.AND, K.ONLY, K.GOT))
OF_A_PLACE = frozenset(
    (K.LAST, K.ORDINAL, K.FROM_LAST, K.MIDDLE, K.SETS, K.EXTREME, K.FIRST, K.NAME, K.AT, K.WITH, K.KG, K.LB, K.EFFORT,
     K.RPE, K.RIR, K.QUESTION, K.EACH, K.MORE, K.REST, K.TIMES, K.NOT, K.RESERVE)
)  # fmt: skip
LOADED = frozenset((K.AT, K.WITH, K.KG, K.LB, K.NAME, K.TIMES))
SUBJECTS = frozenset((K.MISS, K.FAILURE, K.EXTREME))
BESIDE_A_SUBJECT = SUBJECTS | {K.FILLER, K.SETS, K.NOTE}
BESIDE_GOT = frozenset((K.ONLY, K.GOT, K.NUMBER, K.REPS, K.FILLER, K.STOP, K.COMMA, K.SETS, K.OF,
                        K.NOTE, K.NOT_DATE))  # fmt: skip
DONE = frozenset(("did", "finished"))
ENDING_IT = frozenset((K.COMMA, K.STOP, K.DASH, K.AND))
BESIDE_A_PLACE = frozenset((K.FILLER, K.SETS, K.ONLY, K.GOT, K.REPS, K.STOP))
CROSSED, CROSSED_AT_A_LOAD = frozenset((K.NUMBER, K.TIMES, K.AT, K.WITH, K.FILLER, K.KG, K.LB)), 3
REMAINING, PREVIOUS, TOP_SET = (frozenset((cue,)) for cue in ("remaining", "previousone", "topset"))
MOST_FIRST, NEAR = 12, 3


def set_or_one_more(prepared: Prepared, context: Context) -> Correction | NoSets | None:
    """What the words put right for sure, or why nothing is changed; None where they are no such words."""
    kinds, pieces = prepared.told, prepared.spoken
    if K.NUMBER not in kinds or not context.recent or len(pieces) > LONGEST:
        return None
    if K.FIRST in kinds and (found := _behind_the_first(prepared, context)) is not None:
        return found
    if _leaves_apart(prepared, context):
        return nothing_changed(prepared, REPS_APART)
    if K.TIMES not in kinds and pieces[0].kind is K.FILLER and says_all(pieces[0]):
        return _of_all_reps(prepared, context)
    if (K.ONLY in kinds or K.GOT in kinds) and kinds <= BESIDE_GOT:
        return _on_that_set(prepared, context)
    verb = next((at for at, piece in enumerate(pieces) if is_be(piece)), 0)
    if verb and _is_of_a_set_that_is_none(pieces, verb, context):
        return nothing_changed(prepared, OF_ONE_MORE)
    if verb and K.TIMES not in kinds and _says_previous(pieces[:verb]) and len(run_of_it(context)) > 1:
        return nothing_changed(prepared, WHICH_SET)
    return None


def _leaves_apart(prepared: Prepared, context: Context) -> bool:
    kinds, pieces = prepared.told, prepared.spoken
    if K.EACH in kinds and _tells_of_each(pieces, context):
        return True
    return (K.PLUS in kinds and _adds_to_the_last(pieces, context)) or _tells_one_and_the_last(prepared, context)


def _tells_one_and_the_last(prepared: Prepared, context: Context) -> bool:
    """ "only 7, last one 6" behind 3x8: what those came to, or two sets more; and "2x12 at 55, last one 6" behind 2x12
    at 55.
    """
    if PLACING.isdisjoint(prepared.told):
        return False
    pieces = in_full(prepared)  # "det var" is one piece
    place = next((at for at, piece in enumerate(pieces) if piece.kind in PLACING), 0)
    cut = next((at for at in reversed(range(place)) if pieces[at].kind in ENDING_IT), 0)
    head, tail = pieces[:cut], pieces[cut + 1 :]
    placed = [piece for piece in tail if piece.kind not in BESIDE_A_PLACE]
    latest = latest_of_it(context)
    if len(latest) < 2 or [piece.kind in PLACING for piece in placed] != [True, False]:
        return False
    if placed[1].kind is not K.NUMBER or not may_count_reps(placed[1]) or any(map(is_be, head)):
        return False
    return _lists_reps(head) or _tells_again(head, latest) or _tells_a_load(head)


def _tells_of_each(pieces: Sequence[Piece], context: Context) -> bool:
    """ "7 reps each" behind 3x8: each of them, or one set more."""
    told = [piece for piece in pieces if piece.kind not in (K.REPS, K.STOP)]
    plain = [piece.kind for piece in told] == [K.NUMBER, K.EACH] and " " not in told[1].text
    latest = latest_of_it(context)
    near = plain and abs(told[0].value - latest[-1].done.reps) <= NEAR  # "30 each" may be what each hand held
    load = latest[-1].done.load
    held = load is not None and load.basis is Basis.PER_HAND
    return near and not held and may_count_reps(told[0]) and len(latest) > 1


def _tells_a_load(head: Sequence[Piece]) -> bool:
    """ "82.5, last one 7"."""
    numbers = [piece for piece in head if piece.kind is K.NUMBER]
    loaded = len(numbers) == 1 and (numbers[0].role is Role.LOAD or numbers[0].value > MOST_LOADED_REPS)
    plain = kinds_of(head) <= CROSSED and not any(map(says_all, head))
    return loaded and plain and numbers[0].role in (Role.LOAD, Role.BARE)


def _lists_reps(head: Sequence[Piece]) -> bool:
    """ "only 7", "7, 6"; "only did 2" counts sets, and "all 8" tells of each."""
    numbers = [piece for piece in head if piece.kind is K.NUMBER]
    counts = any(is_cued(piece.text, DONE) or says_all(piece) for piece in head if piece.kind is K.FILLER)
    return bool(numbers) and kinds_of(head) <= BESIDE_GOT and not counts and all(map(may_count_reps, numbers))


def _tells_again(head: Sequence[Piece], latest: Sequence[SetRecord]) -> bool:
    """ "2x12", "2x12 at 55", as many as stand, and at their load."""
    numbers = [piece.value for piece in head if piece.kind is K.NUMBER]
    load = latest[-1].done.load
    same = len(numbers) < CROSSED_AT_A_LOAD or (load is not None and load.amount in numbers)
    crossed = K.TIMES in kinds_of(head) <= CROSSED
    return crossed and bool(numbers) and numbers[0] == len(latest) and same


def _behind_the_first(prepared: Prepared, context: Context) -> Correction | NoSets | None:
    """ "first four fine, then 3": the last of five is 3. "First two as planned, only got 3" is open."""
    pieces = prepared.spoken
    at = next((at for at, piece in enumerate(pieces) if piece.kind is K.FIRST), None)
    if at is None:
        return None
    cut = next((place for place in range(at, len(pieces)) if _cuts(pieces[place])), len(pieces))
    head, tail = pieces[:cut], pieces[cut:]
    counts = [piece for piece in head if piece.kind is K.NUMBER]
    reps = [piece for piece in tail if piece.kind is K.NUMBER]
    if len(counts) != 1 or len(reps) != 1 or not _counts_the_first(head, at, counts[0]) or not may_count_reps(reps[0]):
        return None
    if not OF_A_PLACE.isdisjoint(kinds_of(tail)) or any(is_cued(piece.text, REMAINING) for piece in tail):
        return None
    group, done = run_of_it(context), context.recent[-1].done
    if counts[0].value + 1 == len(group):
        return _with_reps(group[-1], int(reps[0].value)) if _counts_in_reps(done) else None
    return nothing_changed(prepared, REPS_APART)


def _cuts(piece: Piece) -> bool:
    return piece.kind in CUTS or "but" in CUES_OF[piece.text]


def _counts_the_first(head: Sequence[Piece], at: int, number: Piece) -> bool:
    """ "first two fine", "les quatre premières bien": how many sets, and a remark; "first 8" tells reps."""
    place = head.index(number)
    others = [piece for piece in head if piece.kind not in (K.FIRST, K.NUMBER, K.SETS)]
    beside = abs(place - at) == 1 and number.role in (Role.BARE, Role.SETS)
    remarked = any(piece.start > number.start and piece.kind is not K.TIMES for piece in others)
    plain = LOADED.isdisjoint(kinds_of(others)) and not any(map(is_be, others[-1:]))
    return beside and plain and 1 < number.value <= MOST_FIRST and (remarked or number.spelled)


def _counts_in_reps(done: SetDone) -> bool:
    return done.seconds is None and done.metres is None


def _with_reps(record: SetRecord, reps: int) -> Correction | NoSets:
    if record.done.reps == reps:
        return NoSets(why=CONFIRMED)
    return Correction(changed=((record, replace(record.done, reps=reps)),))


def _is_of_a_set_that_is_none(pieces: Sequence[Piece], verb: int, context: Context) -> bool:
    """ "failed set was 110x1", "my top set was 110x1": where nothing missed stands and nothing at that load, it may be
    a set more, and no other number of one that stands.
    """
    ahead, behind = pieces[:verb], pieces[verb + 1 :]
    kinds = kinds_of(ahead)
    marked = not kinds.isdisjoint((K.MISS, K.FAILURE))
    topped = K.EXTREME in kinds or any(is_cued(piece.text, TOP_SET) for piece in ahead)
    at = next((at for at, piece in enumerate(behind) if piece.kind is K.NUMBER), -1)
    if not (marked or topped) or not kinds <= BESIDE_A_SUBJECT or at < 0 or K.NOT in kinds_of(behind):
        return False
    crossed = [piece.kind for piece in behind[at + 1 : at + 3]] == [K.TIMES, K.NUMBER]
    load, group = behind[at], sets_of(Part(), context)
    if any(one.done.load is not None and one.done.load.amount == load.value for one in group):
        return False
    if marked and any(one.done.missed or one.done.failure for one in group):
        return False
    if not marked:
        return crossed and all(one.done.reps != behind[at + 2].value for one in group)
    return crossed or load.role is Role.LOAD or load.value > MOST_LOADED_REPS


def _of_all_reps(prepared: Prepared, context: Context) -> NoSets | None:
    """ "all 8 reps easy" says what stands; "all 5 reps to failure" behind eights is of no set that does."""
    pieces = prepared.spoken
    numbers = [at for at, piece in enumerate(pieces) if piece.kind is K.NUMBER]
    if (
        numbers != [1]
        or pieces[1].role is not Role.REPS
        or not _goes_on(pieces)
        or not LOADED.isdisjoint(prepared.told)
    ):
        return None
    alike = all(one.done.reps == pieces[1].value for one in latest_of_it(context))
    marked = not prepared.told.isdisjoint((K.FAILURE, K.MISS, K.WARMUP, K.DROP))
    return NoSets(why=CONFIRMED) if alike and not marked else nothing_changed(prepared, REPS_APART)


def _goes_on(pieces: Sequence[Piece]) -> bool:
    return any(piece.kind not in (K.STOP, K.COMMA) for piece in pieces[2:])


def _adds_to_the_last(pieces: Sequence[Piece], context: Context) -> bool:
    """ "last set 7 + 1" behind 3x8: the last of them and a rep with help, or one set more."""
    told = [piece.kind for piece in pieces if piece.kind not in (K.FILLER, K.SETS, K.COLON)]
    return told[:4] == [K.LAST, K.NUMBER, K.PLUS, K.NUMBER] and len(last_message(context)) > 1


def _says_previous(ahead: Sequence[Piece]) -> bool:
    """ "previous", "the previous set"."""
    pointing = [piece for piece in ahead if is_cued(piece.text, PREVIOUS)]
    return len(pointing) == 1 and all(piece.kind in (K.FILLER, K.SETS) for piece in ahead if piece is not pointing[0])


def _on_that_set(prepared: Prepared, context: Context) -> Correction | NoSets | None:
    """ "only got 5 reps there", "only 5 on that one": the set just told; of several it is open which."""
    numbers = [piece for piece in prepared.spoken if piece.kind is K.NUMBER]
    if len(numbers) != 1 or not may_count_reps(numbers[0]) or not _points_at_it(prepared):
        return None
    latest = latest_of_it(context)
    if not _counts_in_reps(latest[-1].done):
        return None
    return _with_reps(latest[-1], int(numbers[0].value)) if len(latest) == 1 else nothing_changed(prepared, REPS_APART)


def _points_at_it(prepared: Prepared) -> bool:
    """Whether the words begin or end with those that point at a set: "there", "on that one"."""
    words = [word for word, _ in spoken_words(prepared.tokens)]
    pointers = phrasebook().cues["thereon"]
    lengths = range(1, min(LONGEST_POINTER, len(words)) + 1)
    return any(" ".join(words[-length:]) in pointers or " ".join(words[:length]) in pointers for length in lengths)
