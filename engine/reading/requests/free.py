"""Requests told in no fixed order: the words that make them stand anywhere in a short sentence.

skip    = LEAVE name ... OUT | name ... SKIP | NOT name TODAY
swap    = name OUT name IN | [ name ] INSTEAD-OF name ... [ name ] | "rather" name "than" name | name ... name "instead"
history = name and LAST-TIME, asked or on their own | name HISTORY
done    = the gym, the session, I  FINISHED
repeat  = AGAIN words around it, with at most one number of sets

Each part in capitals is a cue of the language files. A sentence with other numbers in it is
none of these.
"""

from __future__ import annotations

from collections.abc import Sequence, Set

from engine.reading.entries.names import narrowed
from engine.reading.requests.again import is_a_sum, one_to_make
from engine.reading.values import Act, Context
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import MOST_WORDS_OF_A_PHRASE, Phrasebook, spoken
from engine.reading.words.pieces import Piece, Role
from engine.values.ids import ExerciseName

LONGEST = 12
MOST_UNKNOWN = 4
COUNTED = frozenset((K.NUMBER, K.COUNT, K.TIMES))
TALK = frozenset((K.PAIN, K.STORY, K.OTHERS, K.SAYING, K.UNRELATED, K.YESTERDAY, K.DATE, K.TOMORROW))


def told_freely(words: Sequence[str], pieces: Sequence[Piece], context: Context, book: Phrasebook) -> Act | None:
    """The request that the sentence makes, by its cues; None where it makes none."""
    if len(words) > LONGEST or any(piece.kind in COUNTED for piece in pieces):
        return None
    if book.cued.isdisjoint(words) and not any(piece.kind in (K.ARROW, K.TODAY) for piece in pieces):
        return None
    named = [piece for piece in pieces if piece.kind is K.NAME]
    if not named:
        return None
    phrase = f" {' '.join(words)} "
    return (
        _history(phrase, pieces, named, context, book)
        or _swap(phrase, pieces, named, context, book)
        or _skip(words, pieces, named, context, book)
        or _left_out_today(pieces, named, context, book)
        or _taken(phrase, pieces, named, context, book)
    )


def asked_freely(words: Sequence[str], pieces: Sequence[Piece], book: Phrasebook) -> Act | None:
    """What is on today, what comes next, how the week went: asked with any words that only ask."""
    asks = not book.cues["askword"].isdisjoint(words) or any(piece.kind is K.QUESTION for piece in pieces)
    if len(words) < 2 or len(words) > LONGEST or not asks:
        return None
    if any(piece.kind in COUNTED or piece.kind is K.NAME for piece in pieces):
        return None
    if any(" ".join(words[:length]) in book.cues["exclaims"] for length in (2, 3)):
        return None  # "what a day"
    for name in ("today", "next", "week"):
        core, around = book.cues[f"asked{name}"], book.cues[f"around{name}"]
        if not core.isdisjoint(words) and all(word in core or word in around for word in words):
            return Act(name)
    return None


def asked_of_a_day(words: Sequence[str], pieces: Sequence[Piece], book: Phrasebook) -> Act | None:
    """ "what should i lift tomorrow", "what about wednesday", "tomorrow?": the session of one day to come."""
    days = [piece.text for piece in pieces if piece.kind in DAYS_TO_COME]
    if len(days) != 1:
        return None
    others = [word for word in words if word not in days[0].split()]
    if not others:
        asked = pieces[-1].kind is K.QUESTION
    else:
        which, around = book.cues["askwhich"], book.cues["aroundtoday"]
        asked = not which.isdisjoint(others) and all(word in around or word in which for word in others)
    return Act("today", text=days[0]) if asked else None


DAYS_TO_COME = frozenset((K.TOMORROW, K.WEEKDAY))


def asks_what_to_say(words: Sequence[str], pieces: Sequence[Piece], book: Phrasebook) -> Act | None:
    """ "help, i don't know what i can write here": somebody at a loss how to use the chat, and nothing else."""
    if len(words) < FEWEST_AT_A_LOSS or len(words) > LONGEST or any(piece.kind is K.NAME for piece in pieces):
        return None
    phrase = f" {' '.join(words)} "
    clueless = _holds(phrase, book.cues["clueless"])
    if not clueless or book.cues["tellsbot"].isdisjoint(words):
        return None
    known = book.cues["aroundhelp"] | book.cues["tellsbot"]
    return Act("help") if all(word in known for word in phrase.replace(f" {clueless} ", " ").split()) else None


FEWEST_AT_A_LOSS = 4
"""Words: "not sure what to write" says whom it asks; "no idea" says nothing."""


def lacks_time(words: Sequence[str], pieces: Sequence[Piece], book: Phrasebook) -> Act | None:
    """ "only 30 min today", "short on time, 25 mins": how long she has, and nothing that she did."""
    numbers = [piece for piece in pieces if piece.kind is K.NUMBER]
    if len(numbers) != 1 or len(words) > LONGEST or numbers[0].role is not Role.SECONDS:
        return None
    minutes = LEAST_OF_A_SESSION <= numbers[0].value <= MOST_OF_A_SHORT_ONE
    around = [word for word in words if not word[0].isdigit()]
    told = all(word in book.cues["aroundshort"] for word in around) and not book.cues["lackstime"].isdisjoint(around)
    return Act("short") if minutes and told else None


LEAST_OF_A_SESSION, MOST_OF_A_SHORT_ONE = 600, 5_400
"""Seconds: who has less than ten minutes trains no session, who has more than ninety lacks no time. Common practice, no
source.
"""


def is_done(words: Sequence[str], pieces: Sequence[Piece], book: Phrasebook) -> bool:
    """Whether the sentence says no more than that the session is over: "gym done", "I am finished for today"."""
    finished = book.cues["finished"]
    if finished.isdisjoint(words) or len(words) > LONGEST or words[-1] in UNENDED:
        return False
    if any(piece.kind in COUNTED or piece.kind in (K.NAME, K.QUESTION) for piece in pieces):
        return False
    parts = {part for piece in pieces if piece.kind is K.HEADING for part in piece.text.split()} - NO_SESSION
    return all(word in finished or word in book.cues["session"] or word in parts for word in words)


def undoes(words: Sequence[str], book: Phrasebook) -> bool:
    """Whether the latest set is to go, in any words that only point at it: "bin my last set"."""
    if book.cues["pointsback"].isdisjoint(words):
        return False
    length = _opening(words, book.cues["delete"])
    behind = words[length:]
    points = not book.cues["pointsback"].isdisjoint(behind)
    return length > 0 and points and all(word in book.cues["lastone"] for word in behind)


def _opening(words: Sequence[str], cues: Set[str]) -> int:
    """How many words the longest of these cues has that the words begin with; 0 where they begin with none."""
    for length in range(min(MOST_WORDS_OF_A_PHRASE, len(words)), 0, -1):
        if " ".join(words[:length]) in cues:
            return length
    return 0


UNENDED = frozenset(("for", "with", "and", "my", "the", "i", "is"))
"""Words that a sentence about a finished session does not end in."""
NO_SESSION = frozenset(
    ("warm", "warmup", "up", "week", "main", "accessories", "accessory", "lifts", "lift", "finisher")
)
"""Words of headings that are a part of a session, or more than one."""


def again_told(words: Sequence[str], pieces: Sequence[Piece], context: Context, book: Phrasebook) -> Act | None:
    """The latest set again, once or so many times: "and another one the same", "another two sets like that"."""
    core, around = book.cues["again"], book.cues["aroundagain"]
    if len(core.intersection(words)) != sum(word in core for word in words) or len(words) > LONGEST:
        return None  # "again and again"
    if core.isdisjoint(words) or any(piece.kind in NO_REPEAT for piece in pieces):
        return None
    numbers = [piece for piece in pieces if piece.kind is K.NUMBER]
    counted = {part for piece in numbers for part in spoken(piece.text).split()}
    if len(numbers) > 1 or not all(word in core or word in around or word in counted for word in words):
        return None
    often = [piece.told for piece in pieces if piece.kind is K.ONCE]
    if len(often) == 1 and not numbers:
        return Act("repeat", count=often[0])
    if not numbers:
        return Act("repeat") if set(words) - {"more"} & core or "one" in words else None
    if any(piece.kind in (K.FOR, K.AT, K.WITH) for piece in pieces):
        return None  # "one more for 3" is a set of three
    return _so_many_again(numbers[0], pieces, context)


def _so_many_again(number: Piece, pieces: Sequence[Piece], context: Context) -> Act | None:
    if is_a_sum(number, pieces):
        return one_to_make(number, context)
    several = number.role is Role.SETS or (number.role is Role.BARE and number.value <= FEW_SETS)
    asked = any(piece.kind in (K.MORE, K.ANOTHER) for piece in pieces) or number.role is Role.SETS
    if number.role is not Role.SETS and (
        _counts_reps(number, pieces) or _is_as_many_as_before(number, pieces, context)
    ):
        return None  # "another 4", "another set of 3"; and "another 2" behind a double
    whole = number.value == int(number.value) and 1 <= number.value <= MOST_SETS
    return Act("repeat", count=int(number.value)) if several and asked and whole else None


def _counts_reps(number: Piece, pieces: Sequence[Piece]) -> bool:
    """Whether "another" and a number in figures tell one set: "another 5", "another set of 3"."""
    if any(piece.kind is K.MORE for piece in pieces):
        return False
    at = pieces.index(number)
    of_a_set = at > 0 and (pieces[at - 1].kind is K.OF or _is_set_of(pieces[at - 1]))
    return of_a_set or (not number.spelled and number.value > A_COUPLE)


def _is_set_of(piece: Piece) -> bool:
    return piece.kind is K.FILLER and piece.text.split()[0] == "set" and piece.end - piece.start > len("set")


A_COUPLE = 2
"""How many more sets a bare number in figures may ask for: "another 2". Common practice, no source."""


def _is_as_many_as_before(number: Piece, pieces: Sequence[Piece], context: Context) -> bool:
    """Whether the number is the reps of the latest set, give or take one, and nothing calls it sets."""
    if not context.recent or number.spelled or any(piece.kind in (K.MORE, K.SETS) for piece in pieces):
        return False
    return abs(context.recent[-1].done.reps - number.value) <= 1


FEW_SETS = 3
MOST_SETS = 20
NO_REPEAT = frozenset((K.NAME, K.TIMES, K.COUNT, K.QUESTION, K.AT, K.YESTERDAY, K.WEEKDAY, K.DATE, K.RESERVE))


def _holds(phrase: str, cues: frozenset[str]) -> str:
    """The longest cue in the phrase; empty where none is."""
    return max((cue for cue in cues if f" {cue} " in phrase), key=len, default="")


def _exercise(piece: Piece, context: Context) -> ExerciseName:
    return narrowed(piece.names, context)[0]


def _unknown(pieces: Sequence[Piece]) -> int:
    return sum(1 for piece in pieces if piece.kind is K.PLAIN)


def _history(
    phrase: str, pieces: Sequence[Piece], named: Sequence[Piece], context: Context, book: Phrasebook
) -> Act | None:
    if len(named) != 1 or any(piece.kind in (K.PAIN, K.OTHERS) for piece in pieces):
        return None
    last = _holds(phrase, book.cues["lasttime"])
    told = last or _holds(phrase, book.cues["history"])
    if not told or told == named[0].text:
        return None  # "log" alone is a lift, too
    others = len(phrase.split()) - len(told.split()) - len(named[0].text.split())
    asked = phrase.strip().split()[0] in book.cues["asking"] or any(piece.kind is K.QUESTION for piece in pieces)
    felt = any(piece.kind is K.NOTE for piece in pieces)
    if (asked and last) or (others <= 1 and not felt):
        return Act("history", exercise=_exercise(named[0], context))
    return None


def _swap(
    phrase: str, pieces: Sequence[Piece], named: Sequence[Piece], context: Context, book: Phrasebook
) -> Act | None:
    if _unknown(pieces) > MOST_UNKNOWN or _is_talk(pieces, book):
        return None
    if len(named) == 1:
        return _instead_of_this(phrase, named[0], context, book)
    if len(named) != 2:
        return None
    leaving = _out_for_another(pieces, named, book)
    if leaving is not None:
        return Act("swap", exercise=_exercise(leaving[0], context), to=_exercise(leaving[1], context))
    words = set(phrase.split())
    asked = any(piece.kind is K.ASKS and not _asks_leave(piece, phrase, book) for piece in pieces)
    asked = asked or not words.isdisjoint(PAST)
    old = None if asked else _behind_instead(phrase, pieces, book) or _behind_than(phrase, named)
    old = (
        old
        or _before_instead(phrase, named)
        or _before_an_arrow(pieces)
        or _before_the_verb(words, phrase, named, book)
    )
    if old is None:
        return None
    new = next((piece for piece in named if piece is not old), None)
    if new is None or new.names == old.names:
        return None
    return Act("swap", exercise=_exercise(old, context), to=_exercise(new, context))


def _out_for_another(pieces: Sequence[Piece], named: Sequence[Piece], book: Phrasebook) -> tuple[Piece, Piece] | None:
    """ "squat out, leg press in": the lift that goes and the one that comes; None where other words stand there."""
    told = [spoken(piece.text) for piece in pieces if piece.kind not in (K.NAME, K.COMMA, K.AND, K.STOP, K.THEN)]
    out, into = book.cues["goesout"], book.cues["comesin"]
    if len(told) != len(named) or named[0].names == named[1].names:
        return None
    if told[0] in out and told[1] in into:
        return named[0], named[1]
    return (named[1], named[0]) if told[0] in into and told[1] in out else None


PAST = frozenset(("did", "done", "was", "were", "went", "used", "had", "not"))


def _instead_of_this(phrase: str, new: Piece, context: Context, book: Phrasebook) -> Act | None:
    """ "dumbbell bench instead of this": for the lift in hand."""
    cue = _holds(phrase, book.cues["insteadof"])
    points = bool(cue) and phrase.rpartition(f" {cue} ")[2].strip() in THIS
    lift = _exercise(new, context)
    wanted = points and context.doing not in (None, lift) and PAST.isdisjoint(phrase.split())
    return Act("swap", exercise=context.doing, to=lift) if wanted else None


THIS = frozenset(("this", "this one", "it", "that", "these", "that one"))


def _asks_leave(piece: Piece, phrase: str, book: Phrasebook) -> bool:
    """Whether a word that asks begins "can i", "kann ich"; a piece shows only the first word of its phrase."""
    first = spoken(piece.text.split()[0])
    return any(cue.split()[0] == first and f" {cue} " in phrase for cue in book.cues["may"])


NO_WISH = frozenset(("did", "done", "went", "used", "should", "why", "how", "would", "when"))


def _behind_instead(phrase: str, pieces: Sequence[Piece], book: Phrasebook) -> Piece | None:
    """The lift right behind "instead of": the one to be swapped."""
    cue = _holds(phrase, book.cues["insteadof"])
    if not cue:
        return None
    first = cue.split()[0]
    place = next((at for at, one in enumerate(pieces) if one.kind is K.NOT and spoken(one.text) == first), None)
    behind = [] if place is None else [one for one in pieces[place + 1 : place + 3] if one.kind is K.NAME]
    return behind[0] if behind else None


def _behind_than(phrase: str, named: Sequence[Piece]) -> Piece | None:
    return named[1] if " rather " in phrase and " than " in phrase else None


def _before_an_arrow(pieces: Sequence[Piece]) -> Piece | None:
    """ "bench -> dips"."""
    return pieces[0] if [piece.kind for piece in pieces] == [K.NAME, K.ARROW, K.NAME] else None


def _before_the_verb(words: set[str], phrase: str, named: Sequence[Piece], book: Phrasebook) -> Piece | None:
    """ "bankdrücken durch dips ersetzen": the verb at the end."""
    return named[0] if phrase.split()[-1] in book.cues["swapend"] and words.isdisjoint(PAST) else None


def _before_instead(phrase: str, named: Sequence[Piece]) -> Piece | None:
    """ "bench is taken, can i use the chest press instead"."""
    return named[0] if phrase.endswith(" instead ") and NO_WISH.isdisjoint(phrase.split()) else None


def _skip(
    words: Sequence[str], pieces: Sequence[Piece], named: Sequence[Piece], context: Context, book: Phrasebook
) -> Act | None:
    if any(piece.kind in TALK or piece.kind is K.QUESTION for piece in pieces) or _unknown(pieces) > MOST_UNKNOWN:
        return None
    modal = next((length for length in (3, 2, 1) if " ".join(words[:length]) in book.cues["modal"]), 0)
    told = words[modal:]
    leaves = bool(told) and (told[0] in book.cues["leave"] or " ".join(told[:2]) in book.cues["leave"])
    out = leaves and not book.cues["out"].isdisjoint(told[1:])
    behind = pieces[-1].kind is not K.NAME and not book.cues["leftout"].isdisjoint(words[1:])
    if not (out or behind):
        return None
    return Act("skip", exercise=_exercise(named[0], context))


def _left_out_today(pieces: Sequence[Piece], named: Sequence[Piece], context: Context, book: Phrasebook) -> Act | None:
    """ "no bench today", "not doing calves today": the lifts, the day and what leaves them out, and nothing else."""
    today = [piece for piece in pieces if piece.kind is K.TODAY]
    ignored = book.cues["please"] | {"or", "nor", "for"}
    others = [piece for piece in pieces if piece.kind not in LISTED and piece.text not in ignored]
    if len(today) != 1 or not others or others[-1].start > named[0].start:
        return None
    told = " ".join(spoken(word) for piece in others for word in piece.text.split())
    # A piece shows the first word of the phrase that it stands for: "not" of "not doing".
    if not any(cue == told or cue.startswith(f"{told} ") for cue in book.cues["nottoday"]):
        return None
    names = tuple(dict.fromkeys(_exercise(piece, context) for piece in named))
    return Act("skip", exercise=names[0], also=names[1:])


LISTED = frozenset((K.NAME, K.TODAY, K.AND, K.COMMA, K.STOP))


def _is_talk(pieces: Sequence[Piece], book: Phrasebook) -> bool:
    """Whether a word of another matter stands there; a queue at the machine is none."""
    return any(piece.kind in TALK and piece.text not in book.cues["taken"] for piece in pieces)


def _taken(
    phrase: str, pieces: Sequence[Piece], named: Sequence[Piece], context: Context, book: Phrasebook
) -> Act | None:
    """ "leg press machine is taken": the lift on something else, where it is on for today or in hand."""
    told = _holds(phrase, book.cues["taken"])
    lift = _exercise(named[0], context)
    wanted = lift == context.doing or any(slot.exercise == lift for slot in context.plan)
    if not told or not wanted or len(named) != 1 or _is_talk(pieces, book):
        return None
    named_in = len(named[0].text.split())
    others = [word for word in phrase.replace(f" {told} ", " ").split() if word not in book.cues["aroundtaken"]]
    return Act("swap", exercise=lift) if len(others) <= named_in else None
