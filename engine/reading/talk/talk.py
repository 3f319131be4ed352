"""Talk that holds numbers but no sets: questions, plans, old bests, other people's lifts, lockers and run times.

A clause is talk where its cue stands ahead of its numbers ("going for 5x5"), or behind them without a comma ("squat 5x5
105 tomorrow"). What stands behind the sets in a clause of its own leaves them be ("bench 3x5 80, rows tomorrow").
"""

from __future__ import annotations

from itertools import pairwise

from engine.reading.talk.clauses_of_talk import (
    AHEAD,
    BEHIND,
    CLAUSE_ENDS,
    TOLD_OF,
    clauses_of,
    counted,
    parted_from_remarks,
    tells_a_whole_set,
    turns,
)
from engine.reading.talk.counts import counts_other_things
from engine.reading.talk.handed_plans import is_handed_for_later
from engine.reading.talk.list_ends import ends_a_list, may_end_a_list
from engine.reading.talk.no_talk import holds_no_talk
from engine.reading.talk.of_others import lift_of_somebody, names_a_lift, tells_something
from engine.reading.talk.only_meant import with_what_was_meant
from engine.reading.talk.plans_opened import (
    ends_a_planned_load,
    heads_a_plan,
    may_be_behind_a_plan,
    opens_plans,
)
from engine.reading.talk.secrets_told import tells_a_secret
from engine.reading.talk.somebody import had_me_do, somebody_did
from engine.reading.talk.statements import asks_or_waits, is_an_opinion, is_marked_planned, sets_a_machine
from engine.reading.talk.supposed import is_supposed
from engine.reading.talk.targets import result_in, target_of, tells_reps_alone
from engine.reading.talk.these_days import (
    LONG_DONE,
    may_be_of_now,
    turns_to_now,
    turns_to_today,
    turns_to_what_is_done,
)
from engine.reading.talk.times_ahead import done_before_a_plan, is_a_time_ahead, may_be_for_then, may_be_on
from engine.reading.talk.up_next import with_what_is_next
from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import CUES_OF, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook, spoken
from engine.reading.words.pieces import COUNTED, TOLD_IN_FIGURES, Piece, Role, kinds_in_order, kinds_of, places_in

POINTING = TOLD_OF | {K.SETS, K.REPS, K.BOTH}
SENTENCE_ENDS = frozenset((K.LINE, K.STOP, K.QUESTION))
OPENERS = frozenset((K.FILLER, K.NOTE, K.THEN, K.AND, K.DASH, K.OPEN, K.OTHER_SIGN, K.COMMA))
REACHING_BACK = BEHIND | {K.STORY, K.OTHERS}
CUES = (
    AHEAD
    | {K.PLAIN, K.FILLER, K.NOTE}
    | {K.ASKS, K.QUESTION, K.UNRELATED, K.STORY, K.DATE, K.PAIN, K.RESERVE_LEFT, K.NOT_DATE, K.HEADING, K.DENY}
)
REACHED = CUES | {K.SAME}
"""What may make talk of a sentence: the German "gleich" ahead of a lift is "in a moment", and no "same"."""


def without_talk(pieces: list[Piece]) -> tuple[list[Piece], bool]:
    """The pieces without the clauses that are talk, and whether any numbers went with them."""
    out: list[Piece] = []
    dropped = False
    whole_message = is_handed_for_later(pieces)
    wished: Piece | None = None
    for sentence, end in _sentences(with_what_is_next(pieces)):
        kept = [] if whole_message or is_supposed(sentence) or asks_or_waits(sentence) else _kept(sentence, end)
        if wished is not None and counted(kept) and not counted(out) and not names_a_lift(kept):
            kept = _in_doubt([wished._replace(start=kept[0].start, end=kept[0].start), *kept])
        wished = _lift_told_of(sentence, kept)
        if not kept and sentence and all(piece.kind in (K.NUMBER, K.TIMES) for piece in sentence):
            kept = _in_doubt(sentence)  # "12?"
        dropped = dropped or (kept is not sentence and counted(sentence) > counted(kept))
        if _announces_plans(sentence, end):
            whole_message = True
        out += kept
        if end is not None:
            out.append(end if end.kind is not K.QUESTION else end._replace(kind=K.STOP))
    return out, dropped


def _lift_told_of(sentence: list[Piece], kept: list[Piece]) -> Piece | None:
    """The lift that a sentence of talk leaves for the sets of the next one."""
    if counted(sentence):
        return _lift_of_a_wish(sentence) if not counted(kept) else None
    return lift_of_somebody(sentence) if not kept else None


def _lift_of_a_wish(sentence: list[Piece]) -> Piece | None:
    """ "wanted 62.5 on ohp, no chance. 55 it was": what is done behind a wish may be of its lift."""
    told = target_of(sentence)
    return next((piece for piece in reversed(told) if piece.kind is K.NAME), None)


def _sentences(pieces: list[Piece]) -> list[tuple[list[Piece], Piece | None]]:
    found: list[tuple[list[Piece], Piece | None]] = []
    start = 0
    for at in places_in(SENTENCE_ENDS, kinds_in_order(pieces)):
        found.append((pieces[start:at], pieces[at]))
        start = at + 1
    found.append((pieces[start:], None))
    return found


def _announces_plans(sentence: list[Piece], end: Piece | None) -> bool:
    """ "tomorrow:" on its own line: all that follows is a plan."""
    if end is None or not sentence or sentence[-1].kind is not K.COLON:
        return False
    planned = any(piece.kind in (K.FUTURE, K.TOMORROW) for piece in sentence)
    return planned and not counted(sentence)


def _kept(sentence: list[Piece], end: Piece | None) -> list[Piece]:
    asked = end is not None and end.kind is K.QUESTION
    kinds = kinds_of(sentence)
    if not asked and (CUES.isdisjoint(kinds) or holds_no_talk(sentence, kinds)):
        return sentence
    sentence = with_what_was_meant(sentence)
    clauses = clauses_of(sentence) if asked else parted_from_remarks(clauses_of(sentence))
    kept: list[Piece] = []
    plans = _names_a_past_time(clauses[0])
    named: Piece | None = None
    target: list[Piece] = []
    wished = False
    heard: list[Piece] = []
    for place, clause in enumerate(clauses):
        last = place == len(clauses) - 1
        heard = clauses[place - 1] if place and tells_something(clauses[place - 1]) else heard
        told = result_in(target, clause) if target else None
        if told is not None:
            kept += told
            plans, target = (False, []) if told else (plans, target)
            continue
        if place and clause and _tells_again(clause):
            clause = [clause[0]._replace(kind=K.FILLER), *clause[1:]] if turns(clause[0]) else clause
            plans, clause = False, _with_name(clause, named)
        elif place and counted(clause):
            plans = _goes_on_planning(plans, clauses[place - 1], clause)
            plans = plans and not (place == 1 and may_be_behind_a_plan(clauses[0], clause))
            if not plans and ends_a_list(kept, clause):
                kept += clause
                continue
        if plans or _is_talk(clause, asked and (last or len(clauses) == 1)):
            kept = [*_left_by(clause, kept, asked), *_left_out(clause)]
            kept = _in_doubt(kept) if kept and _tells_another_way(clause) else kept
            target = [] if plans else target_of(clause)
            plans = plans or opens_plans(clause)
            named = _name_for_what_was_done(clause)
            wished = wished or (counted(clause) > 1 and not AHEAD.isdisjoint([piece.kind for piece in clause]))
            continue
        theirs = lift_of_somebody(heard) if counted(clause) and not names_a_lift(clause) else None
        doubtful = theirs is not None or _is_doubtful(clause, clauses[place - 1], place, wished)
        kept += _in_doubt(_with_name(clause, theirs)) if doubtful else clause
    return kept


def _tells_another_way(clause: list[Piece]) -> bool:
    """ "80x8, or was it 7": what was told before may be otherwise."""
    words = [piece.text for piece in clause if piece.kind not in CLAUSE_ENDS]
    return words[:1] != [] and "or" in CUES_OF[words[0]] and counted(clause) > 0


def _names_a_past_time(clause: list[Piece]) -> bool:
    """ "in high school, i squatted 150x5": what the clauses behind it tell is long done."""
    times = [at for at, piece in enumerate(clause) if piece.kind is K.STORY and piece.told in LONG_DONE]
    if not times:
        return False
    headed = any(clause[at].told == TOLD_IN_FIGURES and kind_at(clause, at + 1) is K.COLON for at in times)
    kept = not counted(clause) and any("oldlog" in CUES_OF[piece.text] for piece in clause)
    return headed or kept or all(piece.kind in TELLING_A_TIME for piece in clause)


TELLING_A_TIME = frozenset((K.STORY, K.FILLER, K.COMMA, K.AND))


def _opens_a_story(clause: list[Piece]) -> bool:
    """ "back when i was 20": numbers of another time, and no lift yet."""
    told = [piece.kind for piece in clause if piece.kind is not K.FILLER]
    return told[:1] == [K.STORY] and {K.NAME, K.TIMES}.isdisjoint(told) and counted(clause) > 0


def _is_doubtful(clause: list[Piece], before: list[Piece], place: int, wished: bool) -> bool:
    """Sets listed behind words about somebody else; reps behind a wish ("wanted 100x5, 5"), at which load is not
    known.
    """
    listed = bool(place and clause) and clause[0].kind is K.COLON
    if place and may_be_of_now(before, clause):
        return True
    if place and (may_be_on(before, clause) or (place == 1 and may_be_behind_a_plan(before, clause))):
        return True
    if place == 1 and _opens_a_story(before) and names_a_lift(clause):
        return not any(piece.kind in (K.TODAY, K.DATE, K.NOTE) for piece in clause)
    return listed or (wished and tells_reps_alone(clause))


def _in_doubt(clause: list[Piece]) -> list[Piece]:
    """The clause so that it is asked about."""
    return [*clause, clause[-1]._replace(kind=K.UNCLEAR)]


def _goes_on_planning(plans: bool, before: list[Piece], clause: list[Piece]) -> bool:
    """Whether the numbers of a clause belong to a plan; `plans`: those before it did."""
    if is_a_time_ahead(before) and may_be_for_then(clause):
        return True
    if not names_a_lift(clause) and (heads_a_plan(before) or ends_a_planned_load(before, clause)):
        return True
    return plans and not any(is_cued(piece.text, DONE_INSTEAD) for piece in clause)


def _tells_again(clause: list[Piece]) -> bool:
    """Whether a clause behind talk tells what was done: "but did 3x5", "and i did", "today bench 5x3"."""
    if turns(clause[0]) or _is_my_turn(clause) or turns_to_today(clause):
        return True
    return turns_to_now(clause) or turns_to_what_is_done(clause)


def _tells_a_result(talk: list[Piece], kinds: set[K]) -> bool:
    """ "pin slipped on the 3rd so only 6": what a set came to, among words about something else."""
    pointed = K.ONLY in kinds and not {K.ORDINAL, K.LAST}.isdisjoint(kinds)
    return pointed and talk[-1].kind is K.NUMBER and kinds.isdisjoint(NOT_HERS)


NOT_HERS = frozenset((K.OTHERS, K.FUTURE, K.TOMORROW, K.ASKS, K.STORY, K.SAYING, K.NAME))


def _left_out(talk: list[Piece]) -> list[Piece]:
    """ "skipped the last set": which of the sets told it takes away is not known, so it stays as words that change
    them.
    """
    kinds = {piece.kind for piece in talk}
    if _tells_a_result(talk, kinds):
        return _in_doubt(talk)
    sets = any(piece.role is Role.SETS for piece in talk)  # "skipped 1 set"
    if {K.NEVER, K.NAME} & kinds != {K.NEVER} or (POINTING.isdisjoint(kinds) and not sets) or counted(talk) > sets:
        return []
    first = next(piece for piece in talk if piece.kind not in CLAUSE_ENDS)
    return [*[piece for piece in talk[:1] if piece is not first], first._replace(kind=K.ALTERED, end=talk[-1].end)]


def _left_by(talk: list[Piece], kept: list[Piece], asked: bool) -> list[Piece]:
    """What was kept before a clause that is talk, so far as it does not speak of that, too."""
    if not kept or (_reaches_back(talk, asked) and not turns(talk[0]) and not _is_whole(kept, talk)):
        return [] if asked or not kept else done_before_a_plan(kept, talk)
    return [*kept, *talk[:2], talk[1]._replace(kind=K.UNCLEAR)] if may_end_a_list(kept, talk) else kept


def _is_whole(kept: list[Piece], talk: list[Piece]) -> bool:
    """ "squat 3x5 90, 92.5 next week": behind sets with their load one number of a plan speaks of nothing before it."""
    return tells_a_whole_set(kept) and counted(talk) == 1 and not any(piece.kind is K.TIMES for piece in talk)


def _is_my_turn(clause: list[Piece]) -> bool:
    return clause[0].kind is K.AND and len(clause) > 1 and "me" in CUES_OF[clause[1].text]


DONE_INSTEAD = frozenset(("did", "instead"))


def _name_for_what_was_done(clause: list[Piece]) -> Piece | None:
    """The lift that a wish names, for what was done instead: "wanted bench 3x8 but did 3x6"; none of one left out."""
    if any(piece.kind is K.NEVER for piece in clause):
        return None
    return next((piece for piece in reversed(clause) if piece.kind is K.NAME), None)


def _with_name(clause: list[Piece], named: Piece | None) -> list[Piece]:
    if named is None or any(piece.kind is K.NAME for piece in clause):
        return clause
    return [clause[0], named._replace(start=clause[0].end, end=clause[0].end), *clause[1:]]


def _is_talk(clause: list[Piece], asked: bool) -> bool:
    if asked or _asks(clause):
        return True
    kinds = [piece.kind for piece in clause]
    cued = not AHEAD.isdisjoint(kinds)
    if COUNTED.isdisjoint(kinds):
        return cued
    if (
        is_an_opinion(clause)
        or (cued and _spelled_only(clause))
        or counts_other_things(clause, kinds)
        or sets_a_machine(clause, kinds)
    ):
        return True
    first_number = next(at for at, kind in enumerate(kinds) if kind in COUNTED)
    ahead, behind = kinds[:first_number], kinds[first_number:]
    if cued and not AHEAD.isdisjoint(ahead) and not had_me_do(clause[:first_number]):
        return True
    if SETS_ALONE.isdisjoint(kinds) and K.UNRELATED in (kinds if K.TIMES not in kinds else ahead):
        return not _is_the_reason(clause[:first_number])
    if ahead and _tells_of_none(clause[:first_number], ahead, clause[first_number]):
        return True
    if not BEHIND.isdisjoint(behind) or (K.STORY in behind and _was_long_ago(clause[first_number:])):
        return True
    return K.PLAIN in behind and is_marked_planned(clause[first_number:])


SETS_ALONE = frozenset((K.NAME, K.DROP))
"""What a word of something else makes no talk of: "last one ran into a drop, 20 for 15"."""


def _tells_of_none(ahead: list[Piece], kinds: list[K], number: Piece) -> bool:
    """Whether the words in front of a number make it somebody else's, one of a day ahead, or a password's."""
    if somebody_did(ahead) or _is_ahead(ahead, kinds):
        return True
    return K.PLAIN in kinds and tells_a_secret(ahead, number)


def _is_the_reason(ahead: list[Piece]) -> bool:
    """ "slept badly so 3x8 60": what the sets were like for."""
    so = phrasebook().cues["so"]
    return any(piece.text in so for piece in ahead) and AHEAD.isdisjoint([piece.kind for piece in ahead])


def _was_long_ago(behind: list[Piece]) -> bool:
    times = [piece for piece in behind if piece.kind is K.STORY]
    return any(piece.told == TOLD_IN_FIGURES or "longago" in CUES_OF[piece.text.split()[0]] for piece in times)


def _is_ahead(ahead: list[Piece], kinds: list[K]) -> bool:
    """ "friday i'm doing 5x3": a day, and what is on for it; "aim: squat 140x5"; "maybe squat 140x5"."""
    if ahead and "perhaps" in CUES_OF[ahead[0].text]:
        return True
    if PLACED.isdisjoint(kinds):
        return False
    heads = bool(ahead) and spoken(ahead[0].text) in phrasebook().cues["heading"]
    if heads and any(piece.kind in (K.COLON, K.DATE, K.WEEKDAY) for piece in ahead[1:]):
        return True
    if K.DATE not in kinds:
        return False
    for day, who, doing in zip(ahead, ahead[1:], ahead[2:], strict=False):
        if day.kind is K.DATE and who.text in ("i'm", "im", "we're") and doing.text in ("doing", "lifting", "hitting"):
            return True
    return any(day.kind is K.DATE and verb.text == "is" for day, verb in pairwise(ahead))


PLACED = frozenset((K.COLON, K.DATE, K.WEEKDAY))
"""Without one of them nothing is said to be on for a day, and nothing is headed."""


def _spelled_only(clause: list[Piece]) -> bool:
    """A number word among talk counts nothing: "my mate has two left feet"."""
    return all(piece.spelled for piece in clause if piece.kind is K.NUMBER)


def _asks(clause: list[Piece]) -> bool:
    for at, piece in enumerate(clause):
        if piece.kind is K.ASKS:
            return not (at and _tells_of_when(clause, at + 1))
        if piece.kind not in OPENERS:
            return False
    return False


def _tells_of_when(clause: list[Piece], at: int) -> bool:
    """ "this is 13.3.: squat 3x5 100", "this is from monday: ...": the day of what follows, and no question."""
    at += at < len(clause) and clause[at].kind in (K.FOR, K.NOT_DATE, K.FILLER)
    return [piece.kind for piece in clause[at : at + 2]] == [K.DATE, K.COLON]


def _reaches_back(clause: list[Piece], asked: bool) -> bool:
    """ "80x5, 80x5 tomorrow": the cue behind a number without a name speaks of the numbers before it too; what counts
    other things ("8 8 7 - 2 guys waiting", "8 8 7 (pulse 150)") speaks of nothing else.
    """
    kinds = [piece.kind for piece in clause]
    if not asked and REACHING_BACK.isdisjoint(kinds):
        return False
    if K.NAME in kinds or not any(kind in COUNTED for kind in kinds) or counts_other_things(clause, kinds):
        return False
    first_number = next(at for at, kind in enumerate(kinds) if kind in COUNTED)
    return SPEAKING_OF_IT.isdisjoint(kinds[:first_number])


SPEAKING_OF_IT = AHEAD | {K.ASKS, K.UNRELATED, K.PLAIN, K.WITH, K.WORKING}
"""Words in front of the number that it is told of: "10 8 7, exam at 9 tomorrow"."""
