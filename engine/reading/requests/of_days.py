"""Requests about another day or week, in no fixed order: the session on another day, and how last week went.

move = [ MODAL ] DO [ session ] [ "on" ] day [ "instead" ]        can we do this tomorrow instead, let's train friday
     | POSTPONE "it" [ "to" ] day                                 push it to friday
week = [ ask ] LAST-WEEK                                          how was last week, volume last week

A move tells an object ("this", "the session") or "instead"; the day is one to come.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta
from functools import lru_cache

from engine.reading.days.week_headings import A_WEEK
from engine.reading.days.when import day_told
from engine.reading.values import Act, Context
from engine.reading.words.kinds import K
from engine.reading.words.lexicon import lexicon
from engine.reading.words.phrasebook import Phrasebook, spoken
from engine.reading.words.pieces import Piece

LONGEST = 12
COUNTED = frozenset((K.NUMBER, K.COUNT, K.TIMES, K.NAME))
DAYS = frozenset((K.WEEKDAY, K.TOMORROW, K.FUTURE, K.MONTH, K.ORDINAL))


def of_another_day(words: Sequence[str], pieces: Sequence[Piece], context: Context, book: Phrasebook) -> Act | None:
    """The request that the sentence makes of another day; None where it makes none."""
    if not 1 < len(words) <= LONGEST or any(piece.kind in COUNTED for piece in pieces) or context.now is None:
        return None
    return _of_last_week(words, pieces, context.now.date(), book) or _moved(words, pieces, context, book)


def _of_last_week(words: Sequence[str], pieces: Sequence[Piece], today: date, book: Phrasebook) -> Act | None:
    """How last week went, or its volume; "last week was hard" asks for nothing."""
    named = [piece for piece in pieces if piece.kind is K.EARLIER and piece.told == A_WEEK]
    felt = [piece for piece in pieces if piece.kind in TELLING and piece.text not in VOLUME]
    if len(named) != 1 or felt:
        return None
    asked = book.cues["askedweek"] | book.cues["aroundweek"] | book.cues["askword"] | _words_of_last_week()
    muscle = " ".join(piece.text for piece in pieces if piece.kind is K.MUSCLE)
    others = [word for word in words if word not in asked and word not in VOLUME and word not in muscle.split()]
    asks = not {"was", "went"} & set(words) or not book.cues["askword"].isdisjoint(words)
    if others or not asks:
        return None
    last = today - timedelta(days=today.weekday() + 1)
    of_muscles = muscle or not (VOLUME - {"much"}).isdisjoint(words) or ("sets" in words and "how" in words)
    return Act("volume" if of_muscles else "week", when=last, text=muscle)


@lru_cache(maxsize=1)
def _words_of_last_week() -> frozenset[str]:
    """The words that name last week, in all languages."""
    phrases = lexicon().phrases.items()
    named = [phrase for phrase, meaning in phrases if meaning.kind is K.EARLIER and meaning.value == A_WEEK]
    return frozenset(spoken(word) for phrase in named for word in phrase.split()) | {"for", "of"}


TELLING = frozenset((K.NOTE, K.PAIN, K.SORE, K.OTHERS, K.STORY))
VOLUME = frozenset(("volume", "volumen", "muscle", "muscles", "much"))


def _moved(words: Sequence[str], pieces: Sequence[Piece], context: Context, book: Phrasebook) -> Act | None:
    postponed = _postponed(words, book)
    start = postponed or _done_on(words, book)
    day = day_told([piece for piece in pieces if piece.kind in DAYS], context)
    if not start or day is None or context.now is None or day <= context.now.date():
        return None
    rest = [word for word in words[start:] if not _names_a_day(word) and word not in AROUND]
    objects = [word for word in rest if word in OBJECTS]
    meant = bool(objects) or "instead" in words
    return Act("move", when=day, text=" ".join(words)) if meant and len(objects) == len(rest) else None


def _names_a_day(word: str) -> bool:
    meaning = lexicon().phrases.get(word)
    return word[:1].isdigit() or (meaning is not None and meaning.kind in DAYS)


def _postponed(words: Sequence[str], book: Phrasebook) -> int:
    """How many words of "push", "postpone", "can we push back" stand in front; 0 for none."""
    modal = _modal(words, book)
    told = words[modal:]
    return next((modal + n for n in (2, 1) if " ".join(told[:n]) in book.cues["postpone"]), 0)


def _done_on(words: Sequence[str], book: Phrasebook) -> int:
    """How many words of "can we do", "let's train" stand in front; 0 for none."""
    modal = _modal(words, book)
    return modal + 1 if modal and words[modal : modal + 1] and words[modal] in DOING else 0


def _modal(words: Sequence[str], book: Phrasebook) -> int:
    return next((n for n in (3, 2, 1) if " ".join(words[:n]) in book.cues["modal"]), 0)


DOING = frozenset(("do", "train", "have", "lift"))
OBJECTS = frozenset(
    ("this", "it", "that", "todays", "today", "session", "workout", "training", "everything", "all", "one", "gym",
     "these")
)  # fmt: skip
AROUND = frozenset(
    ("on", "to", "till", "until", "for", "the", "my", "next", "instead", "please", "then", "maybe", "of", "by", "a",
     "day", "just", "rather", "back")
)  # fmt: skip
