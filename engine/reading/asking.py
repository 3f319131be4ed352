"""What is asked about a reading, and what is said where nothing of a message could be read as sets."""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.announced_lift import announces_a_lift
from engine.reading.days.day_pieces import WHY_NOT
from engine.reading.days.days_apart import TWO_DAYS
from engine.reading.entries.entry import Entry
from engine.reading.gaps import with_a_gap
from engine.reading.prepare import Prepared
from engine.reading.requests.weight import tells_a_change_of_weight
from engine.reading.values import Asked, Context, Doubt, NoSets, Outcome, Reading, Unread
from engine.reading.weighing.deciding import Part, combined
from engine.reading.wording import label_of
from engine.reading.words.kinds import K
from engine.reading.words.pieces import COUNTED, Role


def asked_of(
    parts: Sequence[Part], lost: Sequence[Part], told: Sequence[Entry], note: str | None, pain: bool, prepared: Prepared
) -> Asked:
    """The question between the readings that the parts come to together; nothing is recorded."""
    ways = combined(parts)
    rivals = [sets for sets, _ in ways]
    readings = tuple(Reading(sets, weight, label_of(sets, rivals)) for sets, weight in ways)
    doubtful = next((part for part in parts if part.doubt is not None and not part.is_bare_name), parts[0])
    doubt = doubtful.doubt or Doubt.NUMBERS
    day = next((entry.day for entry in told if entry.day is not None), None)
    unknown = doubtful.entry.modified_by if doubtful.entry is not None else ""
    passed = _passed(doubtful, prepared) if doubt is Doubt.WORDS else ""
    typed = unknown or passed or as_typed(doubtful.term, prepared)
    question = question_of(doubt, typed, readings)
    behind = parts[0].behind if len(parts) == 1 else ()
    unclear = next((words for part in parts if (words := _passed(part, prepared))), "")
    unclear = unclear if doubt is Doubt.EXERCISE else ""
    return Asked(question, readings, doubt, doubtful.term, day, note, pain, typed=typed, behind=behind, unclear=unclear)


def _passed(part: Part, prepared: Prepared) -> str:
    """The words in doubt as typed, where it is what they change that is not understood."""
    if part.chunks is None or not part.chunks.passed:
        return ""
    words = part.chunks.passed[0]
    return prepared.cleaned[words.start : words.end]


def question_of(doubt: Doubt, term: str, readings: Sequence[Reading]) -> str:
    """The question in words, with the choices in it; it says that nothing is saved."""
    choices = ", or ".join(reading.label for reading in readings)
    heads = {
        Doubt.EXERCISE: f"Which one is “{term}”" if term else "Which exercise was that",
        Doubt.NUMBERS: "Which number is which",
        Doubt.EFFORT_OR_LOAD: "Is the number behind @ the load or the effort",
        Doubt.RANGE: "How many reps did you do",
        Doubt.UNLIKELY_LOAD: "That is far from what you lift. Is it right",
        Doubt.UNUSUAL_LOAD: "That is an unusual load. Is it right",
        Doubt.UNKNOWN_NAME: f"I do not know “{term}”. Shall I save the rest",
        Doubt.NO_REPS: f"I read no reps of “{term}”. Shall I save the rest"
        if term and choices
        else "How many reps were that",
        Doubt.WHETHER: "Was that a set",
        Doubt.DAY: f"Are these sets of {term}",
        Doubt.MORE: "Are these more sets",
        Doubt.HOW_MANY: "How many sets were that",
        Doubt.WHICH_LOAD: "At which load was that",
        Doubt.WHOSE: f"Whose sets are these, yours or {term}’s",
        Doubt.WORDS: f"I do not understand “{term}” in it. Is this right without it",
    }
    if doubt is Doubt.UNKNOWN_NAME and not choices:
        return f"I do not know “{term}”. Which exercise is it? Nothing is saved yet."
    if doubt is Doubt.WORDS:
        return f"{heads[doubt]}: {choices}? Else send each set with its reps. Nothing is saved yet."
    return f"{heads[doubt]}? {choices}. Nothing is saved yet." if choices else f"{heads[doubt]}? Nothing is saved yet."


def nothing_read(lost: Sequence[Part], pain: bool, prepared: Prepared) -> Outcome:
    """What is asked or said of a message of which no part could be read; nothing is recorded."""
    part = lost[0]
    shown = prepared.cleaned.strip()
    typed = as_typed(part.term, prepared)
    if tells_a_change_of_weight(prepared):
        return NoSets(pain, (), "how what she weighs has changed")
    if part.doubt is Doubt.EXERCISE and part.entry is not None and _is_elsewhere(part.entry):
        return NoSets(pain, (), "talk with a number in it, and no exercise in hand")
    if part.doubt is Doubt.EXERCISE and K.NAME not in prepared.told and shown.endswith("?") and _wonders(prepared):
        return NoSets(pain, (), "a question about numbers, and no exercise named or in hand")
    elsewhere = any(piece.kind is K.UNRELATED for piece in prepared.pieces)
    if part.doubt is Doubt.UNKNOWN_NAME and part.entry is not None and not elsewhere and _is_whole_set(part):
        return Asked(
            question_of(Doubt.UNKNOWN_NAME, typed, ()),
            (),
            Doubt.UNKNOWN_NAME,
            part.term,
            pain=pain,
            text=_numbers_of(part, prepared),
            typed=typed,
        )
    if part.doubt is Doubt.EXERCISE:
        asked = "Which exercise was that? I have saved nothing yet."
        return Asked(asked, (), Doubt.EXERCISE, pain=pain, text=_numbers_of(part, prepared) if len(lost) == 1 else "")
    if part.doubt is Doubt.NO_REPS and _looks_like_sets(part) and not _only_announces(lost, prepared):
        told = typed or shown
        question = f"I could not read the numbers of “{told}”: {part.why}. Nothing is saved yet. {NUMBERS_AGAIN}"
        gap = with_a_gap(part.entry.pieces, prepared) if part.entry is not None and len(lost) == 1 else ""
        return Asked(question, (), Doubt.NUMBERS, part.term, None, None, pain, text=gap, typed=typed)
    if part.entry is not None and part.entry.no_day == WHY_NOT[TWO_DAYS]:
        question = f"Which sets were on which day? Nothing is saved yet. {SAY_IT_AGAIN}"
        return Asked(question, (), Doubt.NUMBERS, part.term, None, None, pain, typed=typed)
    return NoSets(pain, (Unread(shown, part.why),), part.why)


def _only_announces(lost: Sequence[Part], prepared: Prepared) -> bool:
    """ "bench 80kg, 3 sets": what the reps behind it are of."""
    return len(lost) == 1 and announces_a_lift(prepared.spoken, Context())


NUMBERS_AGAIN = "Send its sets, reps and load again"
SAY_IT_AGAIN = "Try each day in front of its lift: monday squat 100x5, tuesday squat 105x5"


def as_typed(term: str, prepared: Prepared) -> str:
    """The word in doubt as it stands in the message: names are known by their stems, "shrug" for "shrugs"."""
    found = next((piece for piece in prepared.pieces if piece.kind is K.NAME and piece.text == term), None)
    return term if found is None else prepared.cleaned[found.start : found.end]


def _numbers_of(part: Part, prepared: Prepared) -> str:
    """The part as typed, from its first number on."""
    numbers = [piece for piece in part.entry.pieces if piece.kind in COUNTED] if part.entry else []
    return prepared.cleaned[numbers[0].start :].strip() if numbers else ""


def _wonders(prepared: Prepared) -> bool:
    """ "70 then 75 then 80, too greedy?": the last clause asks, and counts nothing; "3x12 55?" may be sets."""
    kinds = [piece.kind for piece in prepared.spoken]
    last = next((at for at in range(len(kinds) - 1, -1, -1) if kinds[at] in CLAUSE_ENDS), -1)
    return last >= 0 and not COUNTED & set(kinds[last:]) and bool(WONDERING & set(kinds[last:]))


CLAUSE_ENDS = frozenset((K.COMMA, K.STOP, K.DASH, K.LINE, K.THEN))
WONDERING = frozenset((K.PLAIN, K.NOTE, K.ASKS, K.FILLER, K.FUTURE, K.OTHERS))
ELSEWHERE = frozenset((K.PLAIN, K.UNRELATED, K.FAR, K.PLATE))


MOST_SETS_OF_A_LIFT = 10
"""More sets than that, told alone, are those of a session. Common practice, no source."""


def _is_elsewhere(entry: Entry) -> bool:
    """Words of other things beside the numbers, and no load with its reps: "pulled 140x5 while they watched"."""
    kinds = {piece.kind for piece in entry.pieces}
    counted = [piece for piece in entry.pieces if piece.kind in COUNTED]
    if len(counted) == 1 and counted[0].role is Role.SETS and counted[0].value > MOST_SETS_OF_A_LIFT:
        return True  # "did 20 sets today"
    told = [piece.kind for piece in entry.pieces if piece.kind is not K.FILLER]
    paired = told[:3] == [K.NUMBER, K.TIMES, K.NUMBER]
    return not kinds.isdisjoint(ELSEWHERE) and not (paired and kinds.isdisjoint((K.UNRELATED, K.FAR, K.PLATE)))


def _is_whole_set(part: Part) -> bool:
    """Unknown words, then a set, and nothing else: an exercise that is not known."""
    if part.entry is None:
        return False
    kinds = [piece.kind for piece in part.entry.pieces]
    first = next((at for at, kind in enumerate(kinds) if kind is K.NUMBER), len(kinds))
    most = LONGEST_NAME if kinds.count(K.NUMBER) >= NUMBERS_OF_A_SET and kinds[:1] == [K.PLAIN] else LONGEST_IN_TALK
    return (
        K.TIMES in kinds
        and not ELSEWHERE & set(kinds[first:])
        and K.UNRELATED not in kinds
        and kinds.count(K.PLAIN) <= most
    )


LONGEST_IN_TALK, LONGEST_NAME = 3, 5
"""How many unknown words are taken for a name: more of them where sets, reps and a load stand behind them."""
NUMBERS_OF_A_SET = 3


def _looks_like_sets(part: Part) -> bool:
    """Whether an exercise was named with an "x" or several numbers behind it."""
    if part.entry is None or not part.entry.names:
        return False
    kinds = [piece.kind for piece in part.entry.pieces]
    counted = any(piece.role is Role.SETS for piece in part.entry.pieces)
    return counted or kinds.count(K.NUMBER) + kinds.count(K.BODY) > 1 or K.AT in kinds
