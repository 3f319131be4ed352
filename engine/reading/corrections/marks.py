"""Effort, failure, a warm-up or a miss told after the set."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from engine.reading.corrections.clauses import clauses
from engine.reading.corrections.correcting import Told
from engine.reading.corrections.kinds_of_sets import kind_told
from engine.reading.corrections.parts import Part, part_told, sets_of
from engine.reading.corrections.said_to_be import is_be
from engine.reading.corrections.sets_having import having
from engine.reading.corrections.what_remains import part_of
from engine.reading.latest_sets import names_several, run_of_it
from engine.reading.values import Correction
from engine.reading.words.cues import CUES_OF, is_cued
from engine.reading.words.kinds import DENYING, K
from engine.reading.words.phrasebook import spoken
from engine.reading.words.pieces import Piece, Role, first_word
from engine.reading.words.token_walk import KNOWN
from engine.values.sets import SetDone, SetKind, SetRecord

MARKS = frozenset((K.EFFORT, K.FAILURE, K.WARMUP, K.MISS, K.DROP))
ARTICLES = frozenset(("the", "on", "on the", "for", "for the", "that", "der", "die", "das", "el", "la", "le"))


def marked_later(told: Told) -> Correction | None:
    """Effort, failure, a warm-up or a miss told later, and no new numbers with it."""
    kinds = told.kinds()
    if (found := _of_a_pair(told) or _of_one_rep(told)) is not None:
        return found
    if kinds & NO_MARKS or told.of_others() or (K.ASKS in kinds and not _asserts(told.pieces)):
        return None
    for clause in clauses(told.pieces):
        if (
            not all(piece.kind in ABOUT_MARKS or is_be(piece) or _hedges(piece, told) for piece in clause)
            or not marks_of(clause)
            or is_spoken_of(clause)
        ):
            return None
        part = part_of(clause, told.context, told.pointed, by_value=_may_point(clause))
        if part.missing or part.named_unknown or names_several(clause, told.context):
            return None
        if any(p.kind is K.NUMBER and p not in part.used for p in clause):
            return None
        if (
            _asks_for_a_ramp(told, clause, part)
            or _leaves_lighter_work(told, clause, part)
            or _tells_how_it_was(clause, part)
            or not mark(told, marks_of(clause), part)
        ):
            return None
    return told.correction()


def is_spoken_of(clause: Sequence[Piece]) -> bool:
    """Whether the clause tells what the warm-up was like, or denies it: "warm up was easy", "the drop wasn't hard"."""
    if any(piece.kind in DENYING for piece in clause):
        return True
    verb = next((at for at, piece in enumerate(clause) if is_be(piece) or piece.kind is K.NOTE), 0)
    ahead, behind = clause[:verb], clause[verb:]
    says_how = len(behind) > 1 or (bool(behind) and behind[0].kind is K.NOTE)
    if any(piece.kind is K.DROP for piece in clause) and any("loadword" in CUES_OF[piece.text] for piece in clause):
        return True  # "drop the weight" is of what comes next
    subject = says_how and any(piece.kind is K.WARMUP for piece in ahead) and not marks_of(behind)
    return subject and all(piece.kind not in POINTERS for piece in clause)


POINTERS = frozenset((K.NUMBER, K.FIRST, K.LAST, K.ORDINAL, K.MIDDLE, K.FROM_LAST, K.EXTREME, K.BOTH, K.REMAINING))


def _hedges(piece: Piece, told: Told) -> bool:
    """ "i'd say", "probably": the mark is hers all the same."""
    pointing = is_cued(piece.text, THOSE) and not is_cued(piece.text, OBJECTS)  # "drop them" marks nothing
    if piece.kind is K.ASKS:
        return pointing  # "quelle due erano riscaldamento"
    hedges = told.book.cues["hedge"]
    return piece.kind is K.PLAIN and (pointing or all(spoken(word) in hedges for word in piece.text.split()))


THOSE, OBJECTS = frozenset(("those",)), frozenset(("objects",))


NO_MARKS = frozenset((K.TIMES, K.QUESTION, K.FUTURE, K.TOMORROW))
ABOUT_MARKS = MARKS | frozenset(
    (K.FILLER, K.NUMBER, K.LAST, K.FIRST, K.MIDDLE, K.FROM_LAST, K.EXTREME, K.SETS, K.ORDINAL, K.NAME, K.STOP,
     K.COMMA, K.OF, K.REPS, K.NOTE, K.BOTH, K.AND, K.COLON, K.GOT, K.DASH, K.ONLY, K.WITH, K.RESERVE_LEFT, K.WORKING,
     K.EXCEPT, K.REMAINING, K.FOR, K.AT, K.EACH, K.KG, K.LB, K.OPEN, K.CLOSE, K.OTHERS, K.NOT_DATE)
)  # fmt: skip


def _of_a_pair(told: Told) -> Correction | None:
    """ "60x10 was a warm up": the sets at that load with those reps."""
    verb = next((at for at, piece in enumerate(told.pieces) if is_be(piece)), 0)
    pair = [piece for piece in told.pieces[:verb] if piece.kind is K.NUMBER]
    behind = told.pieces[verb:]
    marks = marks_of(behind)
    if K.TIMES not in {piece.kind for piece in told.pieces[:verb]} or len(pair) != 2 or not marks:
        return None
    if not all(piece.kind in ABOUT_MARKS or is_be(piece) for piece in behind) or K.QUESTION in told.kinds():
        return None
    group = sets_of(part_told([piece for piece in told.pieces if piece.kind is K.NAME], told.context), told.context)
    at_load, with_reps = having(pair[0]._replace(role=Role.LOAD), group), pair[1].value
    part = Part(places=[record for record in at_load if record.done.reps == with_reps])
    return told.correction() if part.places and mark(told, marks, part) else None


def _of_one_rep(told: Told) -> Correction | None:
    """ "missed the 5th on that": the rep behind those that were made, of one set of so many."""
    reps = [piece.told for piece in told.pieces if piece.kind is K.ORDINAL]
    if _is_of_the_last_rep(told):
        latest = _set_of_the_rep(told)
        if latest is None or latest.done.missed or latest.done.seconds is not None or latest.done.reps < 1:
            return None
        told.set_to(latest, replace(latest.done, reps=latest.done.reps - 1, missed=True))
        return told.correction()
    if len(reps) != 1 or K.MISS not in told.kinds() or not told.kinds() <= ABOUT_A_MISS:
        return None
    latest = told.context.recent[-1]
    message = [record for record in told.context.recent if record.message == latest.message]
    group = [record for record in told.context.recent if record.done.exercise == latest.done.exercise]
    pointed = K.LAST in told.kinds() or (len(message) == 1 and any(word in POINTING for word in told.words))
    made = reps[0] - 1
    if not (pointed or (len(message) == 1 and reps[0] > len(group))) or latest.done.reps not in (made, made + 1):
        return None
    told.set_to(latest, replace(latest.done, reps=made, missed=True))
    return told.correction()


def _set_of_the_rep(told: Told) -> SetRecord | None:
    """The set that "the last rep of set 2" is of: the latest where none is told, None where it does not stand."""
    at = next(at for at, piece in enumerate(told.pieces) if piece.kind is K.LAST)
    part = part_told(told.pieces[at + 1 :], told.context)
    if part.missing or len(part.places) > 1:
        return None
    return part.places[0] if part.places else told.context.recent[-1]


def _is_of_the_last_rep(told: Told) -> bool:
    """ "missed the last rep": the last of those that were told; "last set, missed a rep" is of one behind them."""
    if K.MISS not in told.kinds() or not told.kinds() <= ABOUT_A_MISS:
        return False
    at = next((at for at, piece in enumerate(told.pieces) if piece.kind is K.LAST), None)
    if at is None:
        return False
    behind = [piece.kind for piece in told.pieces[at + 1 : at + 3]]
    of_a_set = behind[:1] == [K.OF] and not PLACED.isdisjoint(behind[1:])  # "failed the last of set 2"
    return of_a_set or any(map(_says_reps, told.pieces[at].text.split())) or behind[:1] == [K.REPS]


PLACED = frozenset((K.SETS, K.ORDINAL, K.FIRST, K.MIDDLE))


def _says_reps(word: str) -> bool:
    meaning = KNOWN[word].meaning
    return meaning is not None and meaning.kind is K.REPS


ABOUT_A_MISS = frozenset((K.MISS, K.ORDINAL, K.FILLER, K.REPS, K.LAST, K.FIRST, K.SETS, K.COMMA, K.STOP, K.OF,
                          K.NUMBER))  # fmt: skip


def _leaves_lighter_work(told: Told, clause: Sequence[Piece], part: Part) -> bool:
    """ "those two were warm-ups" behind 60, 80 and 100: rather the first two, and nobody can say."""
    if not any(piece.kind is K.WARMUP for piece in clause) or not any(is_cued(piece.text, THOSE) for piece in clause):
        return False
    loads = [record.done.load.kilograms() for record in part.places if record.done.load is not None]
    others = [record.done for record in sets_of(part, told.context) if record not in part.places]
    lightest = min(loads, default=None)
    return lightest is not None and any(
        done.kind is SetKind.WORK and done.load is not None and done.load.kilograms() < lightest for done in others
    )


def _asks_for_a_ramp(told: Told, clause: Sequence[Piece], part: Part) -> bool:
    """ "warm up", "warm up squat": no set is said to have been one."""
    if any(piece.kind is not K.WARMUP for piece in marks_of(clause)) or told.slipped or _is_pointed(part):
        return False
    return not told.starts("make") and not any(is_be(piece) or piece.text in POINTING for piece in clause)


def _tells_how_it_was(clause: Sequence[Piece], part: Part) -> bool:
    """ "the warmup was easy", "warm up was 10 min on the bike": of one that was not told, and no set was it."""
    return kind_told(clause) is not None and not part.places


def _is_pointed(part: Part) -> bool:
    return bool(part.places or part.whole or part.both)


POINTING = frozenset(("that", "those", "these", "this", "it", "they", "just", "only"))


def _asserts(pieces: Sequence[Piece]) -> bool:
    """Whether the word that may ask stands inside: "the last one is rpe 9"."""
    return all(piece.kind is not K.ASKS or (at and is_be(piece)) for at, piece in enumerate(pieces))


def _may_point(clause: Sequence[Piece]) -> bool:
    """Whether numbers beside the mark point at sets: "the 100 felt like rpe 9", "warm up was the 60"."""
    if any(is_be(piece) or "felt" in CUES_OF[first_word(piece)] for piece in clause):
        return True
    numbers = [at for at, piece in enumerate(clause) if piece.kind is K.NUMBER]
    return bool(numbers) and numbers[0] > 0 and _leads_to(clause[numbers[0] - 1])


def _leads_to(piece: Piece) -> bool:
    return piece.text in ARTICLES or piece.text.endswith(" the")


def marks_of(clause: Sequence[Piece]) -> list[Piece]:
    """The marks that the clause tells; "it was 7, no warm up" tells none."""
    return [piece for at, piece in enumerate(clause) if piece.kind in MARKS and not _is_denied(clause[:at])]


def _is_denied(ahead: Sequence[Piece]) -> bool:
    said = [piece for piece in ahead if piece.kind is not K.FILLER or is_be(piece)]
    return bool(said) and said[-1].kind in DENYING


def mark(told: Told, marks: Sequence[Piece], part: Part) -> bool:
    """Whether the sets that the part reaches carry these marks now."""
    for piece in marks:
        reached = _marked_sets(told, part, piece)
        efforts = piece.efforts if len(piece.efforts) == len(reached) else piece.efforts[:1] * len(reached)
        if len(piece.efforts) > 1 and len(piece.efforts) != len(reached):
            return False
        for at, record in enumerate(reached):
            given = piece._replace(efforts=efforts[at : at + 1])
            told.set_to(record, _with_mark(told.now(record), given))
    return bool(marks)


def marked_too(told: Told, marks: Sequence[Piece], part: Part) -> bool:
    """Whether the marks beside an old and a new number, "7 not 8, rpe 9", are on the sets that had the old one now; on
    no set where the numbers changed how many there are.
    """
    if not marks:
        return True
    pair = len(told.numbers()) == len(("old", "new"))  # "8 7 6 not 8 8 8, rpe 9" tells all three again
    changed = [record for record, done in told.changes.values() if record.done != done or not pair]
    part.places = [record for record in changed if record in sets_of(part, told.context)] or changed
    return bool(changed) and not (told.added or told.removed) and mark(told, marks, part)


def _marked_sets(told: Told, part: Part, piece: Piece) -> list[SetRecord]:
    group = part.reached(told.context, told.plural)
    if len(piece.efforts) > 1 and not part.points and len(run := run_of_it(told.context)) == len(piece.efforts):
        return run  # "rpe 7 8 9" behind three single sets
    alone = piece.kind in (K.FAILURE, K.MISS) and not _is_pointed(part)
    return group[-1:] if alone else group


def _is_single(done: SetDone) -> bool:
    """A single that is missed has no rep."""
    return done.reps == 1 and done.seconds is None and done.metres is None


def _with_mark(done: SetDone, piece: Piece) -> SetDone:
    if piece.kind is K.EFFORT:
        return replace(done, effort=piece.efforts[0])
    if piece.kind is K.FAILURE:
        return replace(done, failure=True)
    if piece.kind is K.MISS:
        return replace(done, missed=True, reps=0 if _is_single(done) else done.reps)
    return replace(done, kind=SetKind.DROP if piece.kind is K.DROP else SetKind.WARMUP)
