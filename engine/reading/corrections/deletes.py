"""Sets taken away: "delete the last two", "remove the 85", "the squat never happened"."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace
from decimal import Decimal
from itertools import pairwise

from engine.reading.corrections.correcting import Told, cue_at
from engine.reading.corrections.days import OF_A_DAY
from engine.reading.corrections.parts import MOST_PARTS, SPANS, Part, part_told, says_all, sets_of
from engine.reading.corrections.remaining import PLACES
from engine.reading.corrections.reps_away import reps_asked_away
from engine.reading.corrections.sets_by_mark import MARKED_SO, SEVERAL
from engine.reading.latest_sets import run_of_it
from engine.reading.marks.marks_in_remarks import is_effort_alone
from engine.reading.values import Correction
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.lexicon import plain_word
from engine.reading.words.pieces import Piece, Role
from engine.values.sets import SetDone, SetKind

WEAK = frozenset(
    ("drop", "strike", "kill", "cut", "lose", "clear", "cancel", "forget", "bin", "undo", "take", "ignore", "throw")
)
"""Words that delete only where nothing else is said: "drop to 60", "cut the last set short" do not."""
AWAY = frozenset(("out", "off", "away", "back"))
AGAIN = frozenset(("again", "then"))
NOT_DELETED = frozenset((K.TIMES, K.EFFORT, K.QUESTION, K.FUTURE, K.TOMORROW, K.STORY, K.NEVER))
ABOUT_DELETES = frozenset(
    (K.FILLER, K.NAME, K.LAST, K.FIRST, K.MIDDLE, K.FROM_LAST, K.EXTREME, K.ORDINAL, K.SETS, K.NUMBER, K.BOTH, K.OF,
     K.AND, K.WARMUP, K.KG, K.LB, K.COMMA, K.STOP, K.TODAY, K.DATE, K.ONLY, K.WORKING, K.REPS, K.AT, K.DASH, K.NOT_DATE)
)  # fmt: skip


def deleted(told: Told) -> Correction | None:
    """The sets pointed at, away."""
    told = _without_reason(told)
    undone = told.has("undone")
    if not (asks_away(told) or undone) or _means_something_else(told, undone) or reps_asked_away(told):
        return None
    named = [piece for piece in told.pieces if piece.kind is K.NAME]
    if len(named) > 1 and {piece.kind for piece in told.pieces if not is_cue(piece, told)} <= SEVERAL_LIFTS:
        return _of_several(named, told)
    counts, pieces = _counts(_with_places_listed(told.pieces))
    counts = counts or int(_says_one(told))
    part = part_told(pieces, told.context, by_value=True)
    _named_by_the_end(part, pieces, told)
    _of_a_mark(part, pieces, told)
    if part.missing or part.named_unknown or not (part.points or counts) or _one_of_many(part, counts, pieces, told):
        return None
    run = part.whole and not part.places and not part.named
    reached = run_of_it(told.context) if run else part.reached(told.context)
    if counts and not part.places:
        reached = (sets_of(part, told.context) if part.named else run_of_it(told.context))[-counts:]
    return Correction(removed=tuple(dict.fromkeys(reached))) if reached else None


def _says_one(told: Told) -> bool:
    """ "remove one": one set, as "remove one set" says it, and not all of the latest message."""
    return deletes(told) and len(told.pieces) == VERB_AND_ONE and is_cued(told.pieces[-1].text, AN)


VERB_AND_ONE, AN = 2, frozenset(("an",))


def _named_by_the_end(part: Part, pieces: Sequence[Piece], told: Told) -> None:
    """ "get rid of the pushdowns": the only lift of the day whose name ends so, where none is called just that."""
    if not part.named_unknown:
        return
    last = told.context.recent[-1].on
    done = dict.fromkeys(record.done.exercise for record in told.context.recent if record.on == last)
    ends = {piece.text for piece in pieces if piece.kind is K.NAME}
    alike = [lift for lift in done if any(lift.endswith(f" {end}") for end in ends)]
    if len(ends) == 1 and len(alike) == 1:
        part.named, part.named_unknown = alike[0], False


SEVERAL_LIFTS = frozenset((K.NAME, K.AND, K.COMMA, K.FILLER, K.BOTH, K.STOP, K.TODAY))


def _of_several(named: Sequence[Piece], told: Told) -> Correction | None:
    """ "delete the squat and the press": the sets of the day of each; None where one of them has none."""
    parts = [part_told([piece], told.context) for piece in named]
    if any(part.named is None for part in parts):
        return None
    removed = [record for part in parts for record in sets_of(part, told.context)]
    return Correction(removed=tuple(dict.fromkeys(removed)))


def _without_reason(told: Told) -> Told:
    """ "take out the last set, too many": why the set is to go, behind a comma, tells of no set."""
    kinds = [piece.kind for piece in told.pieces]
    if K.COMMA not in kinds or not (told.starts("delete") or _taken_out(_head(told))):
        return told
    at = kinds.index(K.COMMA)
    if _counts_what_is_left(told, told.pieces[:at], told.pieces[at + 1 :]):
        return _head(told)
    reasoned = not PLACES.isdisjoint(kinds[:at]) and not REASONS.isdisjoint(kinds[at:])
    return replace(told, pieces=told.pieces[:at]) if reasoned and TELLING.isdisjoint(kinds[at:]) else told


def counts_otherwise(told: Told) -> bool:
    """ "take the last one off, only one happened" where two would be left: what is to go does not fit what was done."""
    kinds = [piece.kind for piece in told.pieces]
    if K.COMMA not in kinds or K.ONLY not in kinds or not (told.starts("delete") or _taken_out(_head(told))):
        return False
    ahead, behind = told.pieces[: kinds.index(K.COMMA)], told.pieces[kinds.index(K.COMMA) + 1 :]
    ones = [piece._replace(kind=K.NUMBER, value=Decimal(1)) if piece.text == ONE else piece for piece in behind]
    numbers = [piece for piece in ones if piece.kind is K.NUMBER]
    if len(numbers) != 1 or PLACES.isdisjoint(kinds) or not {piece.kind for piece in ones} <= COUNTING:
        return False
    return numbers[0].role is not Role.REPS and not _counts_what_is_left(told, ahead, ones)


ONE = "one"


def _head(told: Told) -> Told:
    """What is told ahead of the first comma."""
    at = next((at for at, piece in enumerate(told.pieces) if piece.kind is K.COMMA), len(told.pieces))
    text = " ".join(piece.text for piece in told.pieces[:at])
    return replace(told, pieces=told.pieces[:at], words=told.words[: max(1, len(text.split()))])


def _counts_what_is_left(told: Told, ahead: list[Piece], behind: list[Piece]) -> bool:
    """ "take the last one off, only three happened": as many as stand once that set is gone, and no reps."""
    numbers = [piece for piece in behind if piece.kind is K.NUMBER]
    if len(numbers) != 1 or PLACES.isdisjoint([piece.kind for piece in ahead]):
        return False
    if not {piece.kind for piece in behind} <= COUNTING or not any(piece.kind in SAYING_SO for piece in behind):
        return False
    part = part_told(ahead, told.context)
    stand = (len(run_of_it(told.context)), len(sets_of(part, told.context)))
    return any(numbers[0].value == count - len(part.places) for count in stand)


SAYING_SO = frozenset((K.ONLY, K.GOT, K.SETS, K.FILLER))
COUNTING = SAYING_SO | {K.NUMBER, K.PLAIN, K.STOP, K.NOTE, K.OF, K.ALTERED}
REASONS = frozenset((K.PLAIN, K.NOTE, K.OTHERS, K.UNRELATED, K.PARTIAL, K.HALF))
TELLING = PLACES | {K.NUMBER, K.COUNT, K.NAME, K.KG, K.LB, K.TIMES, K.QUESTION, K.NEVER, K.EFFORT}


def doubled(told: Told) -> Correction | None:
    """ "sent that twice": the latest message again, where the one before told the very same sets."""
    context = told.context
    messages = list(dict.fromkeys(record.message for record in context.recent))
    if len(messages) < 2 or not told.has("doubled") or told.kinds() & {K.NUMBER, K.QUESTION, K.NAME}:
        return None
    before, latest = ([one for one in context.recent if one.message == message] for message in messages[-2:])
    same = [(one.done, one.on) for one in before] == [(one.done, one.on) for one in latest]
    return Correction(removed=tuple(latest)) if same else None


def asks_away(told: Told) -> bool:
    """Whether the message begins or ends as one that wants sets away does."""
    return told.starts("delete") > 0 or _verb_last(told) or _taken_out(told)


def _one_of_many(part: Part, counts: int, pieces: list[Piece], told: Told) -> bool:
    """ "remove the bench set" where there are several."""
    single = any(piece.kind is K.SETS and not piece.text.endswith("s") for piece in pieces)
    return single and not part.places and not counts and len(part.reached(told.context)) > 1


def deletes(told: Told) -> bool:
    """Whether the message wants something away, and says so plainly."""
    asked = (told.starts("delete") > 0 and told.words[0] not in WEAK) or _verb_last(told)
    asked = asked or (K.COMMA in told.kinds() and _taken_out(_head(told)))
    return asked and K.TIMES not in told.kinds()


def _verb_last(told: Told) -> bool:
    """ "letzten Satz löschen": the verb at the end."""
    return bool(told.words) and told.words[-1] not in WEAK and cue_at(told.words[-1:], 0, told.book.cues["delete"]) > 0


def _taken_out(told: Told) -> bool:
    words = told.words[:-1] if told.words[-1] in AGAIN and len(told.words) > 1 else told.words
    away = told.book.cues["takenaway"]
    return words[0] in told.book.cues["takes"] and (words[-1] in AWAY or words[-1] in away)


def _means_something_else(told: Told, undone: bool) -> bool:
    kinds = told.kinds()
    if kinds & (NOT_DELETED - {K.NEVER} if undone else NOT_DELETED) or any(map(is_effort_alone, told.pieces)):
        return True
    weak = told.words[0] in WEAK and not undone and AWAY.isdisjoint(told.words[1:2])
    pointed = told.words[1:2] in (["the"], ["that"], ["my"])  # "drop the 60", and not "drop to 60"
    if weak and not pointed and any(number.role is Role.BARE and number.value > 10 for number in told.numbers()):
        return True
    others = [
        piece
        for at, piece in enumerate(told.pieces)
        if piece.kind not in ABOUT_DELETES
        and not (at and piece.kind in CARRIED)
        and not is_cue(piece, told)
        and not _links_to_a_lift(told.pieces, at)
    ]
    return bool(others) if weak or undone else any(piece.kind is not K.NOTE for piece in others)


def _links_to_a_lift(pieces: Sequence[Piece], at: int) -> bool:
    """ "everything for chins", "alles bei Kniebeugen"."""
    return pieces[at].kind in (K.FOR, K.WITH) and at + 1 < len(pieces) and pieces[at + 1].kind is K.NAME


def is_cue(piece: Piece, told: Told) -> bool:
    """Whether the word asks for something away: "delete", "out"."""
    cues = told.book.cues["delete"] | told.book.cues["undone"]
    cues |= told.book.cues["takes"] | told.book.cues["takenaway"] if _taken_out(told) else frozenset()
    known = {word for phrase in cues for word in phrase.split()} | AWAY | (AGAIN if _taken_out(told) else set())
    return all(plain_word(word).replace("'", "") in known for word in piece.text.split())


def _with_places_listed(pieces: list[Piece]) -> list[Piece]:
    """ "sets 2 and 3", "sets 1, 2": which sets, and no number of them."""
    at = next(
        (at for at, piece in enumerate(pieces) if piece.kind is K.NUMBER and piece.role is Role.SETS), len(pieces)
    )
    listed = pieces[at::2]
    joined = all(piece.kind in (K.AND, K.COMMA, K.DASH) or is_cued(piece.text, SPANS) for piece in pieces[at + 1 :: 2])
    if len(listed) < 2 or not joined or any(piece.kind is not K.NUMBER for piece in listed):
        return pieces
    if any(one.value >= other.value or other.role is not Role.BARE for one, other in pairwise(listed)):
        return pieces
    sets = pieces[at]._replace(kind=K.SETS, text="sets", role=Role.BARE)
    return [*pieces[:at], sets, pieces[at]._replace(role=Role.BARE), *pieces[at + 1 :]]


def _counts(pieces: list[Piece]) -> tuple[int, list[Piece]]:
    """ "one bench set", "two sets": how many from the end; and the pieces without that number."""
    sets = any(piece.kind is K.SETS for piece in pieces)
    if sets and any(piece.text == "one" for piece in pieces):
        return 1, pieces
    for at, piece in enumerate(pieces):
        ends = piece.kind is K.NUMBER and at == len(pieces) - 1 and at and pieces[at - 1].kind in (K.LAST, K.FIRST)
        if ends and piece.role is Role.BARE and piece.value <= MOST_PARTS:
            return 0, [*pieces[:at], piece._replace(spelled=True)]
        if piece.kind is not K.NUMBER or (at and pieces[at - 1].kind in (K.LAST, K.FIRST, K.SETS)):
            continue
        if piece.role is Role.SETS or (piece.spelled and sets):
            return int(piece.value), [*pieces[:at], *pieces[at + 1 :]]
        if piece.spelled and piece.value == 1:
            return 0, [*pieces[:at], *pieces[at + 1 :]]
    return 0, pieces


def _of_a_mark(part: Part, pieces: list[Piece], told: Told) -> None:
    """ "the warm-ups", "the drops", "the miss": the sets that carry the mark; of several, "the drop" is none."""
    mark = next((piece for piece in pieces[1:] if piece.kind in CARRIED), None)
    if mark is None or part.places:
        return
    part.places = [record for record in sets_of(part, told.context) if CARRIED[mark.kind](record.done)]
    several = mark.kind is K.WARMUP or mark.text.rstrip().endswith("s") or mark.told == SEVERAL or part.both
    part.missing = part.missing or not part.places or (len(part.places) > 1 and not several)


CARRIED: Mapping[K, Callable[[SetDone], bool]] = {
    **MARKED_SO,
    K.WARMUP: lambda done: done.kind is SetKind.WARMUP,
}


def names_the_whole_day(told: Told) -> bool:
    """ "delete monday's session", "remove all sets of tuesday": the day, and no part of it."""
    behind = [piece for piece in told.pieces if not is_cue(piece, told)]
    return bool(behind) and all(_is_whole(piece) for piece in behind)


def _is_whole(piece: Piece) -> bool:
    """Whether the word is of a whole day's sets; "set" is of one."""
    if piece.kind is K.SETS:
        return len(piece.text) > len("set") and piece.text != "satz"
    return piece.kind in (K.FILLER, K.OF, K.BOTH) or says_all(piece) or piece.text in OF_A_DAY
