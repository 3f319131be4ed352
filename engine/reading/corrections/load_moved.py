"""A load that was changed on the way, told with the sets it was changed for: "dropped to 80 on the last".

message = MOVED ( NUMBER place | place [ "to" ] NUMBER )      the cue is left out: "80 on the last", "the last at 80"
        | ( LOWERED | RAISED ) [ "by" ] NUMBER place          by so much, where it is at most half of the load
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from engine.catalogue.catalogue import Catalogue
from engine.reading.prepare import Prepared, prepare
from engine.reading.values import Context
from engine.reading.words.cues import any_cued, is_cued
from engine.reading.words.kinds import PLACING, K
from engine.reading.words.phrasebook import MOST_WORDS_OF_A_PHRASE, phrasebook, spoken_words
from engine.reading.words.pieces import Piece, Role
from engine.reading.words.tokens import Token
from engine.values.load import Unit

PLACES = PLACING | {K.SETS}
NO_MOVE = frozenset((K.NAME, K.TIMES, K.COUNT, K.QUESTION, K.LINE, K.OTHERS, K.PLANNED))
LONGEST = 14
Words = Sequence[tuple[str, Token]]
TO_A_LOAD = re.compile(r"\s(?:to|at|with)\s(?=[\d.,]+\s?(?:kgs?|lbs?)?\s*[.!]?$)", re.IGNORECASE)


def without_move(prepared: Prepared, context: Context, catalogue: Catalogue) -> Prepared | None:
    """The message without the words that say how its load came about; None where it begins with none."""
    told = prepared.told
    if told.isdisjoint(PLACES) or not told.isdisjoint(NO_MOVE) or K.NUMBER not in told:
        return None
    words = spoken_words(prepared.tokens)
    length = _length_of_cue(words) if len(words) <= LONGEST else 0
    if not length:
        return None
    rest = prepared.cleaned[words[length][1].start :]
    amount = _amount(prepared, words, length, context)
    if amount is not None:
        return prepare(_by(amount, prepared, words[:length], context), context, catalogue)
    return prepare(TO_A_LOAD.sub(" at ", rest), context, catalogue)


def is_by_an_open_amount(prepared: Prepared, context: Context) -> bool:
    """ "dropped 2 on the last": of the load or of the reps, nobody can say."""
    words = spoken_words(prepared.tokens)
    if prepared.told.isdisjoint(PLACES) or not prepared.told.isdisjoint(NO_MOVE) or len(words) > LONGEST:
        return False
    length = _length_of_cue(words)
    amount = _amount(prepared, words, length, context) if length else None
    reps = context.recent[-1].done.reps
    return amount is not None and amount.role is Role.BARE and amount.value <= reps


def _length_of_cue(words: Words) -> int:
    cues = phrasebook().cues["loadmoved"]
    lengths = range(min(MOST_WORDS_OF_A_PHRASE, len(words) - 1), 0, -1)
    return next((length for length in lengths if " ".join([word for word, _ in words[:length]]) in cues), 0)


def _amount(prepared: Prepared, words: Words, length: int, context: Context) -> Piece | None:
    """The number right behind the cue that tells by how much; None where it tells to which load."""
    start = words[length][1].start
    number = next((piece for piece in prepared.spoken if piece.start == start and piece.kind is K.NUMBER), None)
    load = context.recent[-1].done.load if context.recent else None
    if number is None or load is None or number.value * MOST_OF_A_LOAD > abs(load.amount):
        return None
    taken_off = length + 1 < len(words) and is_cued(words[length + 1][0], OFF)
    moved = any_cued([word for word, _ in words[:length]], LOWERED | RAISED) and words[length - 1][0] not in TO
    return number if moved or taken_off else None


def _by(amount: Piece, prepared: Prepared, cue: Words, context: Context) -> str:
    """The message as "take 10kg on the last" tells it."""
    load = context.recent[-1].done.load
    unit = amount.unit or (load.unit if load is not None else Unit.KG)
    verb = ADD if any_cued([word for word, _ in cue], RAISED) else TAKE
    if amount.role is Role.REPS:
        return f"{verb} {prepared.cleaned[amount.start :].strip()}"
    return f"{verb} {amount.value}{unit.value} {prepared.cleaned[amount.end :].strip()}"


ADD, TAKE = "add", "take"
MOST_OF_A_LOAD = 2
"""A change is at most half of the load. Common practice, no source."""
LOWERED, RAISED, OFF = frozenset(("loadcut",)), frozenset(("loadput",)), frozenset(("off",))
TO = ("to", "at")
