"""An answer in words to an open question, typos and chat between included.

answer = "forget it" | which exercise | a number that only one reading has | the set told again | "second" | "yes"
A request is no answer, whatever lift it names, and neither is a clear other set; talk leaves the question open.
"""

from __future__ import annotations

from collections.abc import Callable

from engine.catalogue.catalogue import Catalogue, normalise
from engine.reading.answers.amended import amended, is_of_the_open_sets
from engine.reading.answers.and_more import Answerer, answered_and_more
from engine.reading.answers.answering import Answering, settle, settled
from engine.reading.answers.exercise import by_exercise, by_words, completed
from engine.reading.answers.extent import by_extent
from engine.reading.answers.load_left_out import load_left_out, number_left_out
from engine.reading.answers.loads import load_in_doubt, may_be_of_the_open_set, puts_no_load_right
from engine.reading.answers.numbers import by_effort_or_load, by_number, in_the_gap, restated
from engine.reading.answers.one_by_one import one_by_one
from engine.reading.answers.words import PLACE_FILLERS, place_of
from engine.reading.answers.words_in_doubt import leaves_it_open, words_in_doubt
from engine.reading.prepare import Prepared, prepare
from engine.reading.read import read
from engine.reading.requests.requests import request_of
from engine.reading.values import (
    LOADS_IN_DOUBT,
    Act,
    Answer,
    Asked,
    Context,
    Correction,
    Doubt,
    Dropped,
    Logged,
    NotAnAnswer,
    StillOpen,
)
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import Phrasebook, phrasebook, spoken_words
from engine.reading.words.tokens import clean, tokenize

MOST_WORDS = 12


def read_answer(text: str, asked: Asked, context: Context, catalogue: Catalogue) -> Answer:
    """What the message does to the open question."""
    return _answered(text, asked, context, catalogue, read_answer)


def _answered_alone(text: str, asked: Asked, context: Context, catalogue: Catalogue) -> Answer:
    """What the words do by themselves: no more is looked for behind them, so that each joint is tried once."""
    return _answered(text, asked, context, catalogue, _answered_alone)


def _answered(text: str, asked: Asked, context: Context, catalogue: Catalogue, answer: Answerer) -> Answer:
    """What the message does; `answer` reads what is left of it."""
    book = phrasebook()
    prepared = prepare(text, context, catalogue)
    words = tuple(word for word, _ in spoken_words(prepared.tokens))
    if _drops(words, book):
        return Dropped()
    behind = _behind_a_pause(text, words, book)
    if behind is not None:
        return answer(behind, asked, context, catalogue) if behind else StillOpen(asked)
    answering = Answering(text, _without_denied(words, prepared), prepared, asked, context, catalogue)
    whole = answer is read_answer
    more = answered_and_more(prepared, asked, context, catalogue, _answered_alone) if whole else None
    if more is not None:
        return more
    each = one_by_one(text, prepared, asked, context, catalogue, answer)
    if each is not None:
        unmoved = isinstance(each, NotAnAnswer) or each == StillOpen(asked)
        return (amended(answering) or each) if unmoved else each
    found = _asks_for_something(answering, words) or _chosen(answering, words)
    if found is not None:
        return found
    meant = _behind_a_slip(prepared, book)
    return answer(meant, asked, context, catalogue) if meant else _otherwise(answering)


ASKING = frozenset(("week", "volume", "history", "preview", "next", "why"))
"""Words of requests that no lift, no number and no answer is told with."""
POINTING = frozenset(("it", "that", "this"))


def _asks_for_something(told: Answering, words: tuple[str, ...]) -> Answer | None:
    """No answer where the message is a request of its own: "best bench" chooses no bench. None where it may be one.

    A request that only slips of the thumb make is none, and to say what the word in doubt means is to answer.
    "Bench volume" asks for something too, in words that no request is told in: the question stays.
    """
    act = request_of(told.prepared, told.context, told.catalogue)
    if act is None or act.mended:
        return StillOpen(told.asked) if ASKING & set(words) and not told.numbers() else None
    points_back = act.text.casefold() in POINTING or normalise(act.text) == normalise(told.asked.term or "")
    return None if act.name == "teach" and points_back else NotAnAnswer()


def _chosen(told: Answering, words: tuple[str, ...]) -> Answer | None:
    if not words or len(words) > MOST_WORDS or "?" in told.text:
        return None
    plain = not told.names() and not any(piece.kind is K.TIMES for piece in told.prepared.pieces)
    only_yes = plain and told.asked.doubt in (
        Doubt.WHOSE,
        Doubt.WHETHER,
        Doubt.DAY,
    )  # a bare number is a set of the lift in hand
    only_yes = only_yes or told.asked.doubt is Doubt.MORE  # "it was 5x5" puts right those that stand
    if (puts_no_load_right(told) and not number_left_out(told.asked)) or leaves_it_open(told):
        return StillOpen(told.asked, again=True)
    loads = told.asked.doubt in LOADS_IN_DOUBT and bool(told.asked.readings)
    for way in (_yes_or_no,) if only_yes else WAYS_OF_LOADS if loads else WAYS:
        try:
            found = way(told)
        except ValueError:  # a set or a load that cannot be answers nothing
            continue
        if found is not None:
            return found
    return None


LAUGHS = frozenset(
    ("lol", "haha", "hah", "hahaha", "lmao", "oh", "ooh", "ah", "er", "erm", "um", "hm", "hmm", "ok", "okay")
)


def _behind_a_pause(text: str, words: tuple[str, ...], book: Phrasebook) -> str | None:
    """What stands behind "hang on, ..." or "lol hang on"; None where the message begins otherwise. A pause names no
    exercise.
    """
    starts = [0, *range(1, len(words))] if words and words[0] in LAUGHS else [0]
    for start in starts:
        for length in (4, 3, 2, 1):
            end = start + length
            if " ".join(words[start:end]) in book.cues["wait"] and len(words) >= end:
                tokens = spoken_words(tokenize(clean(text)))
                return text[tokens[end - 1][1].end :].strip(" ,.;:!-")
    return None


def _behind_a_slip(prepared: Prepared, book: Phrasebook) -> str:
    """What stands behind "i meant ...", however often it is said; empty where nothing does."""
    spoken = spoken_words(prepared.tokens)
    words, start = [word for word, _ in spoken], 0
    while length := next((n for n in (3, 2, 1) if " ".join(words[start : start + n]) in book.cues["mean"]), 0):
        start += length
    return prepared.cleaned[spoken[start - 1][1].end :].strip(" ,.;:!-") if 0 < start < len(words) else ""


def _drops(words: tuple[str, ...], book: Phrasebook) -> bool:
    """ "never mind", "oh forget about it then", with slips."""
    bare = list(words)
    polite = book.cues["polite"] | book.cues["slip"]
    while len(bare) > 1 and bare[0] in polite and " ".join(bare) not in book.cues["forget"]:
        bare.pop(0)
    while len(bare) > 1 and bare[-1] in book.cues["polite"] and " ".join(bare) not in book.cues["forget"]:
        bare.pop()
    return bool(book.slips.mended(bare, book.cues["forget"]))


def _denied(told: Answering) -> Answer | None:
    """ "not the barbell": the others are left."""
    first = told.prepared.pieces[0] if told.prepared.pieces else None
    if first is None or first.kind is not K.NOT or told.numbers() or len(told.asked.readings) < 2:
        return None
    if len(told.words) < len(spoken_words(told.prepared.tokens)):
        return None  # something is left beside what is denied
    denied = by_words(told, list(told.asked.readings))
    left = [reading for reading in told.asked.readings if reading not in denied]
    return settle(told, left) or StillOpen(told.asked)


def _without_denied(words: tuple[str, ...], prepared: Prepared) -> tuple[str, ...]:
    """ "barbell not dumbbell", "not the dumbbell, barbell": the words that are not denied."""
    place = next((at for at, p in enumerate(prepared.pieces) if p.kind is K.NOT), None)
    if place is None:
        return words
    pieces = prepared.pieces
    end = next((at for at in range(place, len(pieces)) if pieces[at].kind in (K.COMMA, K.STOP, K.AND)), len(pieces))
    start = pieces[place].start
    stop = pieces[end].start if end < len(pieces) else len(prepared.cleaned)
    kept = [word for word, token in spoken_words(prepared.tokens) if not start <= token.start < stop]
    return tuple(kept) if kept else words


def _otherwise(told: Answering) -> Answer:
    outcome = read(told.text, told.context, told.catalogue)
    if told.asked.readings and told.asked.doubt in LOADS_IN_DOUBT and may_be_of_the_open_set(told, outcome):
        return StillOpen(told.asked, again=True)
    if isinstance(outcome, Correction) and is_of_the_open_sets(told) and _is_of_days_ago(outcome, told):
        return StillOpen(told.asked, again=True)
    if isinstance(outcome, Act | Correction):
        return NotAnAnswer()
    if isinstance(outcome, Asked) and not outcome.readings and outcome.doubt is Doubt.EXERCISE:
        return StillOpen(told.asked)  # numbers without a lift are no clear other set
    if isinstance(outcome, Logged | Asked) and any(piece.kind is K.NUMBER for piece in told.prepared.pieces):
        return NotAnAnswer()
    return StillOpen(told.asked)


def _is_of_days_ago(found: Correction, told: Answering) -> bool:
    """Whether a correction reaches no set of today: of a lift that the question holds too, it is rather of that."""
    return told.context.now is not None and all(record.on < told.context.now.date() for record in found.reached)


def _by_place(told: Answering) -> Answer | None:
    place = place_of(" ".join(word for word in told.words if word not in PLACE_FILLERS))
    if place is None or not told.asked.readings:
        return None
    readings = told.asked.readings
    if place >= len(readings):
        return StillOpen(told.asked, again=True) if told.asked.doubt is Doubt.NUMBERS else None
    return settled(told, readings[place].sets)


def _yes_or_no(told: Answering) -> Answer | None:
    book = phrasebook()
    said = " ".join(told.words)
    if len(told.asked.readings) != 1 and told.asked.doubt not in LOADS_IN_DOUBT:
        return None
    if said in book.cues["yes"] and told.asked.readings:
        return settled(told, told.asked.readings[0].sets)
    return Dropped() if said in book.cues["no"] else None


WAYS: tuple[Callable[[Answering], Answer | None], ...] = (
    in_the_gap,
    load_left_out,
    completed,
    by_extent,
    _yes_or_no,
    _denied,
    by_exercise,
    words_in_doubt,
    by_effort_or_load,
    by_number,
    restated,
    _by_place,
    amended,
)
WAYS_OF_LOADS: tuple[Callable[[Answering], Answer | None], ...] = (
    _yes_or_no,
    _denied,
    by_exercise,
    load_in_doubt,
    _by_place,
)
